"""Laws of a client's life, whatever is said, edited, pressed and decided, in whatever order."""

from collections import Counter
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

from hypothesis import example, given, settings
from hypothesis import strategies as st

from domain.actions import Remedy
from domain.calendar import local_day
from domain.client import hear, wake
from domain.incoming import (
    Assigned,
    CardWanted,
    Changed,
    Decided,
    Edited,
    FromChat,
    FromCoach,
    Heard,
    Pressed,
    Text,
    Told,
)
from domain.memory import ClientMemory
from domain.outcome import AlertSettled, Outcome
from domain.parts import Nudge, Part, Plan, Question, Reminder, TargetPart
from domain.state import ClientState
from domain.wishes import BackWish
from tests.domain.client.people import MARA, Life, at, kinds, noor

SAID = st.sampled_from(
    [
        *(
            "60x9",
            "row 60x10",
            "rdl 80x7",
            "14 x 10",
            "curls 12 reps",
            "rdl 9 reps",
            "45 s",
            "80",
            "10",
            "no",
            "yes",
        ),
        *(
            "goblet squat 20x10",
            "wall sit 50s",
            "row 60x9\nrdl 80x8\n14x11",
            "yesterday: rdl 80x8",
            "9999 x 900",
        ),
        *("on Monday row 60x9", "bench press 70x5", "leg press 100x8", "make that 9", "rdl was 82.5", "undo"),
        *("my right knee hurts", "row 60x9 but my shoulder hurts", "my knee is fine again", "I fainted"),
        *(
            "skip curls today",
            "can't make it today",
            "the rest tomorrow",
            "move it to Friday",
            "away till the 14th",
        ),
        *(
            "got the flu",
            "I'm back",
            "stop messaging me",
            "start reminders",
            "remind me at 21:30",
            "remind me at 6",
        ),
        *("I'm in Tokyo", "I'm in Denver", "I use pounds", "I use kg", "I have no dumbbells", "what's next?"),
        *("history of rows", "can you check my form?", "thanks", "?", "👍", "help", "never mind"),
        *(
            "that was yesterday",
            "rdl was on Monday",
            "all done",
            "can I do legs today instead?",
            "show me pull",
        ),
        *("can I swap today and Thursday?", "sorry, I had a stomach bug", "double shift today and tomorrow"),
        *("leave, no wait, what's next?", "my shoulder feels weird", "missed it, overtime"),
        *("not now", "in an hour", "remind me at 19:30 today", "remind me 2 hours later"),
    ]
)
HOURS = st.integers(0, 60)
DEEDS = st.one_of(
    st.tuples(st.just("says"), SAID),
    st.tuples(st.just("says"), SAID),
    st.tuples(st.just("edits"), SAID),
    st.tuples(st.just("replies"), st.tuples(st.integers(0, 20).map(str), SAID).map(" ".join)),
    st.tuples(st.just("presses"), st.integers(0, 20).map(str)),
    st.tuples(st.just("decides"), st.integers(0, 20).map(str)),
    st.tuples(st.just("coach"), st.sampled_from(["told", "card", "assigned", "put back"])),
)


class Watched(Life):
    """A life of which every outcome is checked as it comes."""

    def __init__(self, state: ClientState) -> None:
        """Begin with `state`, at the hour before the first reminder."""
        super().__init__(state)
        self.unasked: Counter[tuple[str, object]] = Counter()
        self.last_text = ""

    def _take(self, outcome: Outcome) -> tuple[Part, ...]:
        parts = super()._take(outcome)
        check_targets(parts, self.state)
        check_state(self.state)
        check_eagerness(parts, self.state)
        return parts

    def wakes(self, now: datetime) -> None:
        """Let all happen that is due until `now`; each waking must lead on.

        A reminder that the client has put off to that moment is not unasked.
        """
        while self.wake_at is not None and self.wake_at <= now:
            moment = self.wake_at
            was_wanted = self.state.memory.remind_again_at == moment
            parts = self._take(wake(self.state, moment))
            self._goes_on_after(moment)
            if parts and not was_wanted:
                day = local_day(moment, ZoneInfo(self.state.client.zone))
                self.unasked["any", day] += 1
                self.unasked["reminder", day] += any(isinstance(part, Reminder) for part in parts)
                assert self.unasked["any", day] <= 2
                assert self.unasked["reminder", day] <= 1

    def hear(self, incoming: FromChat | FromCoach, now: datetime) -> tuple[Part, ...]:
        """Let something come in; return the parts of the one answer."""
        self.heard += 1
        parts = self._take(hear(self.state, Heard(self.heard, now, incoming)))
        assert "urgent" not in kinds(parts) or kinds(parts) == ["urgent"]
        says = [say for say in self.outcome.says if say.to == self.state.client.number]
        assert len(says) == bool(parts)
        assert self.wake_at is None or self.wake_at >= now
        return parts

    def do(self, deed: tuple[str, str], now: datetime) -> None:
        """Do one thing at `now`, and check that it is answered."""
        kind, what = deed
        match kind:
            case "says":
                self.last_text = what
                parts = self.hear(Text(text=what), now)
                assert parts
            case "replies" if self.heard:
                to = int(what.partition(" ")[0]) % self.heard + 1
                self.last_text = what.partition(" ")[2]
                assert self.replies(self.last_text, to, now, to_bot=bool(int(what[0]) % 2))
            case "edits" if self.last_text:
                before, self.last_text = self.last_text, what
                edited = Edited(text=what, key="k", original=self.heard, before=before)
                assert bool(self.hear(edited, now)) == (before != what)
            case "presses" if self.buttons:
                action = list(self.buttons.values())[int(what) % len(self.buttons)]
                assert self.hear(Pressed(button="1:0", action=action), now)
            case "decides":
                self.decide(int(what), now)
            case "coach":
                self.from_coach(what, now)
            case _:
                pass

    def decide(self, choice: int, now: datetime) -> None:
        """The coach decides on an open alert; it is settled, and she is told."""
        if not self.state.alerts:
            return
        alert = self.state.alerts[choice % len(self.state.alerts)]
        remedies: tuple[Remedy, ...] = (
            "seen",
            "lift hold",
            "let train",
            "lighten",
            "swap",
            "rest more",
            "next programme",
            "keep on",
        )
        remedy = remedies[choice % len(remedies)]
        self.hear(Decided(coach=MARA.number, alert=alert.number, remedy=remedy), now)
        settled = [change for change in self.outcome.changes if isinstance(change, AlertSettled)]
        assert alert.number in {change.alert for change in settled}
        assert self.to_coach

    def from_coach(self, what: str, now: datetime) -> None:
        """The coach wants something of this client, and hears of it."""
        match what:
            case "told":
                assert self.hear(Told(coach=MARA.number, text="Well done."), now)
            case "card":
                self.hear(CardWanted(coach=MARA.number), now)
            case "assigned":
                self.hear(Assigned(coach=MARA.number, programme=7), now)
            case _:
                self.hear(Changed(coach=MARA.number, change=1, wish=BackWish(exercise="goblet squat")), now)
        assert self.to_coach


def check_targets(parts: tuple[Part, ...], state: ClientState) -> None:
    """Nothing is aimed for on what is set aside."""
    held = {hold.exercise for hold in state.holds}
    for part in parts:
        if isinstance(part, TargetPart):
            assert part.exercise not in held
        if isinstance(part, Plan):
            assert not [line for line in part.lines if line.exercise in held and line.target is not None]


def check_eagerness(parts: tuple[Part, ...], state: ClientState) -> None:
    """What was more than asked is told after all verdicts, and kept once, as long as sets of it stand."""
    said = kinds(parts)
    assert said.count("more than asked") <= 1
    if "more than asked" in said:
        assert "verdict" in said[: said.index("more than asked")]
        assert "verdict" not in said[said.index("more than asked") :]
    of = [(each.workout, each.what.exercise, each.what.rule) for each in state.memory.eager]
    assert len(set(of)) == len(of)
    standing = {(entry.workout, entry.set.exercise) for entry in state.entries}
    numbers = {workout for workout, _ in standing}
    for workout, exercise, _ in of:
        assert workout in numbers if exercise is None else (workout, exercise) in standing


def check_state(state: ClientState) -> None:
    """What is recorded fits together, and what is remembered survives being stored."""
    numbers = {record.number for record in state.workouts}
    assert {entry.workout for entry in state.entries} <= numbers
    assert len([record for record in state.workouts if record.state == "open"]) <= 1
    assert len({entry.number for entry in state.entries}) == len(state.entries)
    assert [entry.order for entry in state.entries] == sorted(entry.order for entry in state.entries)
    assert ClientMemory.model_validate_json(state.memory.model_dump_json()) == state.memory
    questions = state.memory.questions
    assert len({question.number for question in questions}) == len(questions)


@settings(max_examples=150, deadline=None)
@given(st.lists(st.tuples(HOURS, DEEDS), max_size=25))
@example(  # a nudge of the day that has just ended
    [*((hours, ("says", "60x9")) for hours in (14, 4, 60, 60)), (0, ("says", "move it to Friday"))]
)
def test_whatever_happens_each_message_has_one_answer_and_time_goes_on(
    deeds: list[tuple[int, tuple[str, str]]],
) -> None:
    life = Watched(noor())
    now = at(2, 6)
    for hours, deed in deeds:
        now += timedelta(hours=hours)
        life.wakes(now)
        life.do(deed, now)
    life.wakes(now + timedelta(days=30))


MOVES = st.sampled_from(
    [
        "can't make it today",
        "move it to Friday",
        "moving today to Sunday",
        "away till the 20th",
        "I'm back",
        "got the flu",
    ]
)
BARE = {"Pull": "row 60x9\nrdl 80x7\ncurls 14x10", "Legs": "goblet squat 20x10\nwall sit 45s"}


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.integers(4, 80), st.none() | MOVES), max_size=20))
def test_moving_and_pausing_never_change_the_order_of_the_rotation(
    deeds: list[tuple[int, str | None]],
) -> None:
    """The client does whatever workout the bot shows; between them anything is moved."""
    life = Watched(noor())
    now = at(2, 6)
    for hours, move in deeds:
        now += timedelta(hours=hours)
        life.wakes(now)
        if move is not None:
            life.do(("says", move), now)
            continue
        shown = [part for part in life.hear(Text(text="what's next?"), now) if isinstance(part, Plan)]
        if shown:
            life.do(("says", BARE[shown[0].workout]), now)
    done = [record.name for record in life.state.workouts if record.state == "done"]
    assert all(before != after for before, after in pairwise(done))
    assert done[:1] in ([], ["Pull"])


def test_a_question_about_a_missed_workout_comes_with_the_reminder_of_a_daily_programme() -> None:
    life = Watched(noor("Daily\nTrain every day in turn: A\n\nA\n1. Leg press, 8-12 reps\n"))
    life.wakes(at(2, 21))
    moment = at(3, 8).astimezone(UTC)
    assert life.wake_at == moment
    parts = life._take(wake(life.state, moment))
    assert kinds(parts) == ["question", "reminder", "plan"]
    assert isinstance(parts[0], Question)
    assert not any(isinstance(part, Nudge) for part in parts)
