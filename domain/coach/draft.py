"""A coach's decision while it is being made; it belongs to one call of `hear`."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from domain.actions import Action, Answer
from domain.authority import may_order, own_clients
from domain.calendar import local_day
from domain.chosen import after_press
from domain.coach.waking import next_wake
from domain.coach_memory import CoachMemory, LastChange, Spoken, with_change, without_change
from domain.incoming import Assigned, AtAPress, Changed, FromCoach, JournalSent, PressedIn, Under, Undone
from domain.memory import Waiting
from domain.outcome import Change, CoachKept, Order, Outcome
from domain.parts import Notice, Part, Question, Say, Slot
from domain.state import Coach, CoachState
from domain.topics import Topic
from domain.understood import CoachTakenFor, TakenFor, Understood

CHANGES_KEPT = 20
"""How many changes «undo» goes back at most. The house's own choice."""


class Draft:
    """The growing decision on one coach's message at the moment `at` (aware, UTC)."""

    def __init__(self, state: CoachState, at: datetime, message: int) -> None:
        """Begin with `state`; `message` is the inbox number of what is being answered."""
        self.state = state
        self.at = at
        self.message = message
        self.understood: Understood | None = None
        """What the message was taken for."""
        self._before = state.memory
        self._changes: list[Change] = []
        self._parts: list[Part] = []
        self._buttons: list[Action] = []
        self._orders: list[Order] = []
        self._others: list[Say] = []
        self._under: Say | None = None

    @property
    def memory(self) -> CoachMemory:
        """The memory as changed so far."""
        return self.state.memory

    @property
    def number(self) -> int:
        """The coach's number."""
        return self.state.coach.number

    @property
    def today(self) -> date:
        """The coach's local day."""
        return self.day_of(self.at)

    def day_of(self, moment: datetime) -> date:
        """Return the coach's local day of a moment."""
        return local_day(moment, ZoneInfo(self.state.coach.zone))

    @property
    def names(self) -> tuple[tuple[int, str], ...]:
        """The number and the name of each client."""
        return own_clients(self.state)

    def name_of(self, client: int) -> str:
        """Return the name of one of the coach's clients."""
        return dict(self.names)[client]

    def take_for(self, taken_for: TakenFor | CoachTakenFor) -> None:
        """Note what the message was taken for as a whole."""
        self.understood = Understood(taken_for)

    def change(self, change: Change) -> None:
        """Decide on a change."""
        self._changes.append(change)

    def keep(self, coach: Coach) -> None:
        """Change the coach's own settings."""
        self.change(CoachKept(coach))
        self.state = replace(self.state, coach=coach)

    def remember(self, **updates: Any) -> None:
        """Change the memory."""
        self.state = replace(self.state, memory=self.memory.model_copy(update=updates))

    def say(self, *parts: Part) -> None:
        """Add parts to the one answer that the coach gets."""
        self._parts.extend(parts)

    def tell(self, person: int, *parts: Part) -> None:
        """Say something to somebody else."""
        self._others.append(Say(to=person, parts=parts))

    def notice(self, topic: Topic, **facts: Any) -> None:
        """Add a notice to the answer."""
        self.say(Notice(topic=topic, facts=facts))

    def offer(self, *buttons: Action) -> None:
        """Put buttons under the answer."""
        self._buttons.extend(buttons)

    def show_chosen(self, action: Action, under: Under | None) -> None:
        """Let the message in which `action` was pressed show that it was; see `after_press`.

        What is ordered from then on is reported there.
        """
        self._under = after_press(self.number, action, under)

    def order(self, client: int, incoming: FromCoach) -> None:
        """Put a decision on a client into that client's inbox; the client's own decision carries it out.

        Everything that a coach decides goes through here, and comes to nothing unless it is an own client.
        """
        if not may_order(self.state, client, incoming):
            self.notice("not your client")
            return
        shown = self._under
        if shown is not None and shown.edits is not None and isinstance(incoming, AtAPress):
            under = PressedIn(number=shown.edits, buttons=shown.buttons)
            incoming = incoming.model_copy(update={"under": under})
        self._orders.append(Order(client, incoming))
        exercise = getattr(incoming.wish, "exercise", "") if isinstance(incoming, Changed) else ""
        self.spoke_of(client, exercise)
        begins = isinstance(incoming, JournalSent) and incoming.step == "begin"
        if begins or isinstance(incoming, Changed | Assigned):
            self._remember_changes(with_change(self.memory, self.message, client))
        elif isinstance(incoming, Undone):
            self._remember_changes(without_change(self.memory, incoming.change, client))

    def _remember_changes(self, changes: Sequence[LastChange]) -> None:
        """Remember what «undo» can take back, the latest last."""
        self.remember(
            last_change=changes[-1] if changes else None, changed_before=tuple(changes[:-1][-CHANGES_KEPT:])
        )

    def spoke_of(self, client: int, exercise: str = "") -> None:
        """Remember of whom the coach speaks, and of which exercise."""
        self.remember(spoken=Spoken(client=client, exercise=exercise, at=self.at))

    def order_all(self, clients: Iterable[int], incoming: FromCoach) -> None:
        """Put the same decision into the inbox of several clients."""
        for client in clients:
            self.order(client, incoming)

    def ask(self, slot: Slot, about: dict[str, Any], facts: dict[str, Any], choices: Sequence[str]) -> None:
        """Ask the coach something; one question waits at a time, and one of who is meant."""
        number = self.memory.last_question + 1
        waiting = Waiting(number=number, slot=slot, message=self.message, asked_at=self.at, about=about)
        self.remember(last_question=number, **{"who" if slot == "who" else "waiting": waiting})
        self.say(Question(slot=slot, facts=facts))
        self._buttons.extend(Answer(question=number, text=choice, role="coach") for choice in choices)

    def say_again(self, say: Say) -> None:
        """Say something that is no answer to what is heard."""
        self._others.append(say)

    def outcome(self) -> Outcome:
        """Return the finished decision."""
        says: tuple[Say, ...] = ()
        if self._parts:
            says = (Say(to=self.state.coach.number, parts=tuple(self._parts), buttons=tuple(self._buttons)),)
        if self._under is not None:
            says = (*says, self._under)
        return Outcome(
            changes=tuple(self._changes),
            says=(*says, *self._others),
            orders=tuple(self._orders),
            memory=None if self.memory == self._before else self.memory,
            wake_at=next_wake(self.state, self.at),
            understood=self.understood,
        )
