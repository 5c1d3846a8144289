"""A client's decision while it is being made.

A draft belongs to one call of `hear` or `wake` and never leaves it: it gathers changes and parts of the
answer, and keeps the state as the changes so far make it, so that each rule sees what the one before decided.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from domain.actions import Action, Answer, Treat
from domain.calendar import local_day
from domain.client.apply import apply
from domain.client.remedies import remedies_for
from domain.journal import Alert, AlertReason
from domain.memory import ClientMemory, Waiting
from domain.outcome import AlertRaised, Change, Outcome
from domain.parts import AlertPart, Notice, Part, Question, Safety, Say, Slot, Topic, Weight
from domain.state import Client, ClientState


class Draft:
    """The growing decision on one client at the moment `at` (aware, UTC)."""

    def __init__(self, state: ClientState, at: datetime, message: int = 0) -> None:
        """Begin with `state`; `message` is the inbox number of what is being answered, 0 for none."""
        self.state = state
        self.at = at
        self.message = message
        self.zone = ZoneInfo(state.client.zone)
        self._before = state.memory
        self._changes: list[Change] = []
        self._parts: list[Part] = []
        self._buttons: list[Action] = []
        self._others: list[Say] = []

    @property
    def client(self) -> Client:
        """The client, settings as changed so far."""
        return self.state.client

    @property
    def memory(self) -> ClientMemory:
        """The memory as changed so far."""
        return self.state.memory

    @property
    def today(self) -> date:
        """The client's local day."""
        return local_day(self.at, self.zone)

    @property
    def local(self) -> datetime:
        """The client's local date and time, without an offset."""
        return self.at.astimezone(self.zone).replace(tzinfo=None)

    @property
    def is_empty(self) -> bool:
        """Whether nothing is said to the client yet."""
        return not self._parts

    def change(self, change: Change) -> None:
        """Decide on a change."""
        self._changes.append(change)
        self.state = apply(self.state, change)

    def remember(self, **updates: Any) -> None:
        """Change the memory."""
        memory = self.memory.model_copy(update=updates)
        self.state = replace(self.state, memory=memory)

    def number(self, counter: str) -> int:
        """Count `counter` of the memory up, and return its new value."""
        value = int(getattr(self.memory, counter)) + 1
        self.remember(**{counter: value})
        return value

    def say(self, *parts: Part) -> None:
        """Add parts to the one answer that the client gets."""
        self._parts.extend(parts)

    def notice(self, topic: Topic, **facts: Any) -> None:
        """Add a notice to the answer."""
        self.say(Notice(topic=topic, facts=facts))

    def offer(self, *buttons: Action) -> None:
        """Put buttons under the answer, each action once."""
        self._buttons.extend(each for each in buttons if each not in self._buttons)

    def ask(self, slot: Slot, about: dict[str, Any], facts: dict[str, Any], choices: Sequence[str]) -> None:
        """Ask the client something; the answer completes `about`. One question waits at a time."""
        number = self.number("last_question")
        self.remember(
            waiting=Waiting(number=number, slot=slot, message=self.message, asked_at=self.at, about=about)
        )
        self.say(Question(slot=slot, facts=facts))
        self.offer(*(Answer(question=number, text=choice) for choice in choices))

    def tell_coach(self, *parts: Part, buttons: tuple[Action, ...] = (), weight: Weight = "alert") -> None:
        """Say something to the coach, as a message of its own."""
        self._others.append(Say(to=self.client.coach.number, parts=parts, buttons=buttons, weight=weight))

    def open_alert(self, reason: AlertReason, exercise: str | None = None) -> Alert | None:
        """Return the open alert of this reason and exercise, if there is one."""
        for alert in self.state.alerts:
            if alert.reason == reason and alert.exercise == exercise:
                return alert
        return None

    def alert(self, reason: AlertReason, exercise: str | None, evidence: dict[str, Any]) -> None:
        """Raise an alert and bring it to the coach, with the remedies that fit as buttons.

        A stall comes to the coach with the caution on pain and joints.
        """
        number = self.number("last_alert")
        self.change(
            AlertRaised(Alert(number=number, reason=reason, exercise=exercise, evidence=evidence, at=self.at))
        )
        parts: list[Part] = [
            AlertPart(reason=reason, client=self.client.name, exercise=exercise, evidence=evidence)
        ]
        if reason == "stall":
            parts.append(Safety(where=None, exercise=exercise))
        remedies = remedies_for(self.state, reason, exercise)
        self.tell_coach(
            *parts,
            buttons=tuple(
                Treat(client=self.client.number, alert=number, remedy=remedy) for remedy in remedies
            ),
        )

    def take_changes_of(self, other: "Draft") -> None:
        """Take over what `other` decided to record and to remember, but nothing of what it says."""
        self._changes.extend(other._changes)
        self.state = other.state

    def outcome(self, wake_at: datetime | None, weight: Weight = "answer") -> Outcome:
        """Return the finished decision."""
        says = list(self._others)
        if self._parts:
            own = Say(
                to=self.client.number,
                parts=tuple(self._parts),
                buttons=tuple(self._buttons),
                weight=weight,
            )
            says.insert(0, own)
        return Outcome(
            changes=tuple(self._changes),
            says=tuple(says),
            memory=None if self.memory == self._before else self.memory,
            wake_at=wake_at,
        )
