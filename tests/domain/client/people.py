"""An invented client on a small programme, and a way to let outcomes take effect without a store."""

from dataclasses import replace
from datetime import UTC, date, datetime, time
from functools import cache
from zoneinfo import ZoneInfo

from domain.actions import Action
from domain.client import hear, wake
from domain.client.apply import apply
from domain.equipment import default_equipment
from domain.incoming import Edited, FromChat, FromCoach, Heard, Pressed, ReplyTo, Text
from domain.journal import Entry
from domain.memory import ClientMemory
from domain.outcome import Outcome, Recorded
from domain.parts import AlertPart, Part, Question
from domain.sheet import read_sheet
from domain.state import Client, ClientState, Coach, StoredProgramme

ZONE = ZoneInfo("Europe/Amsterdam")
MARA = Coach(number=1, name="Mara", zone="Europe/Lisbon", unit="kg")

SHEET = """\
Harbour Base
Train every 3 days in turn: Pull, Legs
Review after 2 rounds. If strength has not risen, switch to Harbour Light
Tell me after 3 workouts without a beat

Pull
1. Seated cable row, 8-10 reps
2. Romanian deadlift, 6-8 reps
   if the lower back is a problem: Back extension, 10-15 reps
3. Hammer curl, 8-12 reps
   no dumbbells: Cable curl, 8-12 reps

Legs
1. Goblet squat, 8-12 reps
2. Wall sit, hold 30-60 seconds
"""


@cache  # many lives begin with the same sheet, and reading it takes longer than what most of them try
def stored(sheet: str = SHEET, number: int = 7) -> StoredProgramme:
    """Return a sheet as a stored programme."""
    programme = read_sheet(sheet).programme
    assert programme is not None
    return StoredProgramme(number=number, version=1, programme=programme)


def noor(sheet: str = SHEET, *, remind_at: time = time(8), lacking: tuple[str, ...] = ()) -> ClientState:
    """Return a client who begins on Monday 2 March 2026 and is reminded at 8, in Amsterdam."""
    client = Client(
        number=2,
        name="Noor",
        coach=MARA,
        unit="kg",
        zone="Europe/Amsterdam",
        remind_at=remind_at,
        starts=date(2026, 3, 2),
        equipment=default_equipment("kg").model_copy(update={"lacking": lacking}),
        programme=stored(sheet),
    )
    return ClientState(client=client, memory=ClientMemory(welcomed=True), programmes=(stored(sheet),))


def at(day: int, hour: int = 18, minute: int = 0, month: int = 3) -> datetime:
    """Return a moment of 2026, given in Amsterdam's time."""
    return datetime(2026, month, day, hour, minute, tzinfo=ZONE).astimezone(UTC)


class Life:
    """A client's life: each thing that happens, with what came of it."""

    def __init__(self, state: ClientState | None = None) -> None:
        """Begin with `state`."""
        self.state = state or noor()
        self.wake_at: datetime | None = at(2, 6)
        self.outcome = Outcome()
        self.buttons: dict[str, Action] = {}
        self.heard = 0
        self._made: list[Entry] = []
        self._asked: dict[int, tuple[int, ...]] = {}

    def says(self, text: str, when: datetime) -> tuple[Part, ...]:
        """Let the client say something; return the parts of the answer."""
        return self.hears(Text(text=text), when)

    def edits(self, text: str, before: str, original: int, when: datetime) -> tuple[Part, ...]:
        """Let the client edit message `original`."""
        made = [entry for entry in self._made if entry.message == original]
        places = {entry.order[0] for entry in made} & {entry.number for entry in made}
        edited = Edited(text=text, key="k", before=before, original=original, places=tuple(sorted(places)))
        return self.hears(edited, when)

    def replies(self, text: str, to: int, when: datetime, *, to_bot: bool = False) -> tuple[Part, ...]:
        """Let the client reply to message `to`, or to the answer that the bot gave to it."""
        places = tuple(sorted({entry.order[0] for entry in self._made if entry.message == to}))
        questions = self._asked.get(to, ()) if to_bot else ()
        return self.hears(
            Text(text=text, reply=ReplyTo(message=to, places=places, questions=questions)), when
        )

    def presses(self, label: str, when: datetime) -> tuple[Part, ...]:
        """Let the client press a button of the last answer."""
        return self.hears(Pressed(button="1:0", action=self.buttons[label]), when)

    def hears(self, incoming: FromChat | FromCoach, when: datetime) -> tuple[Part, ...]:
        """Let something come in, after all that fell due before it; return the parts of the answer."""
        self.passes_to(when)
        self.heard += 1
        return self._take(hear(self.state, Heard(self.heard, when, incoming)))

    def passes_to(self, when: datetime) -> list[Part]:
        """Let time pass; return the parts of all that was said to the client on the way."""
        said: list[Part] = []
        while self.wake_at is not None and self.wake_at <= when:
            moment = self.wake_at
            said += self._take(wake(self.state, moment))
            self._goes_on_after(moment)
        return said

    @property
    def alert_reasons(self) -> list[str]:
        """The reasons of the alerts that the last outcome brings to the coach."""
        return [part.reason for part in self.to_coach if isinstance(part, AlertPart)]

    @property
    def workout_state(self) -> str:
        """How the latest workout stands."""
        return self.state.workouts[-1].state

    @property
    def to_coach(self) -> tuple[Part, ...]:
        """What the coach is told by the last outcome."""
        return tuple(part for say in self.outcome.says if say.to == MARA.number for part in say.parts)

    def _goes_on_after(self, moment: datetime) -> None:
        assert self.wake_at is None or self.wake_at > moment

    def _take(self, outcome: Outcome) -> tuple[Part, ...]:
        assert outcome.stuck == ()
        for change in outcome.changes:
            self.state = apply(self.state, change)
            if isinstance(change, Recorded):
                self._made.append(change.entry)
        if isinstance(outcome.memory, ClientMemory):
            self.state = replace(self.state, memory=outcome.memory)
        self.wake_at = outcome.wake_at
        self.outcome = outcome
        own = [say for say in outcome.says if say.to == self.state.client.number]
        self.buttons |= {getattr(action, "text", ""): action for say in own for action in say.buttons}
        parts = tuple(part for say in own for part in say.parts)
        self._asked[self.heard] = tuple(part.number for part in parts if isinstance(part, Question))
        return parts


def kinds(parts: tuple[Part, ...] | list[Part]) -> list[str]:
    """Return the kinds of parts; of a notice its topic."""
    return [getattr(part, "topic", part.kind) for part in parts]
