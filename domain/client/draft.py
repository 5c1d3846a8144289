"""A client's decision while it is being made.

A draft belongs to one call of `hear` or `wake` and never leaves it: it gathers changes and parts of the
answer, and keeps the state as the changes so far make it, so that each rule sees what the one before decided.
"""

from collections.abc import Sequence
from copy import copy
from dataclasses import replace
from datetime import date, datetime
from typing import Any, Self
from zoneinfo import ZoneInfo

from domain.actions import Action, Answer, Write
from domain.calendar import local_day
from domain.chosen import after_press
from domain.client.apply import apply
from domain.client.putting_before import put_before_coach
from domain.erasure import FORGET_AFTER
from domain.incoming import FromCoach, PressedIn, ReplyTo, Under
from domain.journal import Alert, AlertReason, Entry
from domain.memory import Brought, ClientMemory, Waiting
from domain.outcome import AlertNoted, AlertRaised, AlertSettled, Change, Erased, Order, Outcome
from domain.parts import AlertPart, CameOf, File, Notice, Part, Question, Safety, Say, Slot, Urgent, Weight
from domain.pictures import ProgrammeProgress, Progress
from domain.state import Client, ClientState
from domain.topics import Topic
from domain.understood import Meant, Of

AT_ONCE: frozenset[AlertReason] = frozenset({"pain", "urgent"})
"""What is brought to the coach at any hour."""

SET_SLOTS: frozenset[Slot] = frozenset({"exercise", "date", "confirm", "unit", "load", "reps", "seconds"})


def kind_of(slot: Slot) -> str:
    """Return the kind of question that asks for `slot`: all that is asked of sets is one kind."""
    return "sets" if slot in SET_SLOTS else slot


class Draft:
    """The growing decision on one client at the moment `at` (aware, UTC)."""

    def __init__(
        self, state: ClientState, at: datetime, message: int = 0, answered: datetime | None = None
    ) -> None:
        """Begin with `state`; `message` is the inbox number of what is being answered, 0 for none.

        The client reads the answer at `answered` (aware, UTC): at once, where that is not given.
        """
        self.start = state
        self.state = state
        self.at = at
        self.message = message
        self.answered = answered or at
        self.zone = ZoneInfo(state.client.zone)
        self.reply: ReplyTo | None = None
        """The earlier message that is answered by this one, if it is a reply."""
        self.pointed_at: tuple[Entry, ...] = ()
        """The entries that a correction is about, and no others, where the client has pointed at them."""
        self.edits: int | None = None
        """The number in the outbox of the earlier message in whose place the answer is said, if it can be."""
        self.pressed_in: PressedIn | None = None
        """The coach's message in which the order was given by a button: what comes of it is shown there."""
        self.meant: tuple[Meant, ...] = ()
        """The exercises that words of the coach's were found to mean."""
        self._under: Say | None = None
        self._changes: list[Change] = []
        self._parts: list[Part] = []
        self._buttons: list[Action] = []
        self._others: list[Say] = []
        self._orders: list[Order] = []

    def trial(self) -> Self:
        """Return a copy on which something can be tried; this one stays as it is."""
        tried = copy(self)
        tried._changes, tried._parts = [*self._changes], [*self._parts]
        tried._buttons, tried._others = [*self._buttons], [*self._others]
        tried._orders = [*self._orders]
        return tried

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
    def read_on(self) -> date:
        """The client's local day on which the answer is read."""
        return max(self.today, local_day(self.answered, self.zone))

    def is_stale(self, on: date) -> bool:
        """Return whether a day that is still to come will be over by the time that the client reads of it."""
        return self.today <= on < self.read_on

    @property
    def local(self) -> datetime:
        """The client's local date and time, without an offset."""
        return self.at.astimezone(self.zone).replace(tzinfo=None)

    @property
    def decided(self) -> tuple[int, ClientMemory]:
        """What the state depends on: how many changes were decided, and the memory."""
        return len(self._changes), self.memory

    def note_meant(self, of: Of, names: tuple[str, ...]) -> None:
        """Note which exercises words of the coach's mean, as it was found last."""
        if names or not any(each.of == of and each.means for each in self.meant):
            self.meant = (*(each for each in self.meant if each.of != of), Meant(of, means=names))

    @property
    def is_empty(self) -> bool:
        """Whether nothing is said to the client yet."""
        return not self._parts

    @property
    def has_caution(self) -> bool:
        """Whether the answer so far speaks of pain or a warning sign."""
        return self.says(Safety) or self.says(Urgent)

    def says(self, kind: type[Part]) -> bool:
        """Return whether the answer has a part of that kind."""
        return any(isinstance(part, kind) for part in self._parts)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The answer so far."""
        return tuple(self._parts)

    def offers(self, kind: type[Answer]) -> bool:
        """Return whether there are buttons of that kind under the answer."""
        return any(isinstance(button, kind) for button in self._buttons)

    @property
    def offered(self) -> int:
        """How many buttons there are under the answer so far."""
        return len(self._buttons)

    def says_of(self, topic: Topic) -> bool:
        """Return whether the answer has a notice on that topic."""
        return any(isinstance(part, Notice) and part.topic == topic for part in self._parts)

    @property
    def writing(self) -> Write:
        """The button with which the coach writes to this client, about no alert."""
        return Write(client=self.client.number, alert=0, name=self.client.name)

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

    def say_only(self, *parts: Part) -> None:
        """Let the answer be just this, whatever was to be in it."""
        self._parts = list(parts)
        self._buttons = []

    def notice(self, topic: Topic, **facts: Any) -> None:
        """Add a notice to the answer."""
        self.say(Notice(topic=topic, facts=facts))

    def offer(self, *buttons: Action) -> None:
        """Put buttons under the answer, each action once."""
        self._buttons.extend(each for each in buttons if each not in self._buttons)

    def ask(self, slot: Slot, about: dict[str, Any], facts: dict[str, Any], choices: Sequence[str]) -> None:
        """Ask the client something; the answer completes `about`.

        One question about sets waits at a time, and one of each other kind; a new one takes the place of the
        old.
        """
        number = self.number("last_question")
        question = Waiting(number=number, slot=slot, message=self.message, asked_at=self.at, about=about)
        others = (each for each in self.memory.questions if kind_of(each.slot) != kind_of(slot))
        self.remember(questions=(*others, question))
        self.repeat(question, facts, choices)

    def repeat(self, question: Waiting, facts: dict[str, Any], choices: Sequence[str]) -> None:
        """Say a question that waits, so that its earlier buttons still answer it."""
        kind = kind_of(question.slot)
        said = [each for each in self._parts if isinstance(each, Question) and kind_of(each.slot) == kind]
        # One of its kind that was asked in the same breath gives way.
        self._parts = [each for each in self._parts if each not in said]
        gone = {each.number for each in said}
        self._buttons = [each for each in self._buttons if getattr(each, "question", None) not in gone]
        self.say(Question(slot=question.slot, number=question.number, facts=facts))
        self.offer(*(Answer(question=question.number, text=choice) for choice in choices))

    def question(self, kind: str) -> Waiting | None:
        """Return the open question of that kind, if there is one: `sets`, or a slot that is not of sets."""
        return next((each for each in self.memory.questions if kind_of(each.slot) == kind), None)

    def drop_question(self, question: Waiting | None) -> None:
        """Let a question no longer wait."""
        left = tuple(
            each for each in self.memory.questions if question is None or each.number != question.number
        )
        if left != self.memory.questions:
            self.remember(questions=left)

    def show_chosen(self, action: Action, under: Under | None, *, taken: bool = True) -> None:
        """Let the message in which `action` was pressed show that it was; see `after_press`."""
        if self.edits is None:
            self._under = after_press(self.client.number, action, under, taken=taken)

    @property
    def _in_place(self) -> int | None:
        """What the answer takes the place of; none where it is not to be overlooked, or is no mere text."""
        is_text = not any(isinstance(part, File | Progress | ProgrammeProgress) for part in self._parts)
        return self.edits if is_text and not self.has_caution else None

    def tell(self, person: int, *parts: Part, buttons: tuple[Action, ...] = ()) -> None:
        """Say something to somebody who is neither the client nor the coach now."""
        self._others.append(Say(to=person, parts=parts, buttons=buttons))

    def tell_coach(
        self,
        *parts: Part,
        buttons: tuple[Action, ...] = (),
        weight: Weight = "alert",
        instead_of: int | None = None,
    ) -> None:
        """Say something to the coach; a reply to it is about this client.

        It is a message of its own, or stands instead of the answer to the order of the number `instead_of`;
        only the first answer to a press goes under the button's message.
        """
        about = tuple(
            part.model_copy(update={"of": self.client.number})
            if isinstance(part, Notice | AlertPart)
            else part
            for part in parts
        )
        edits, pressed_in = None, self.pressed_in
        if pressed_in is not None and weight == "answer" and all(isinstance(each, Notice) for each in about):
            about = tuple(CameOf(notice=each) for each in about if isinstance(each, Notice))
            anew = {each.kind for each in buttons}
            left = (each for each in pressed_in.buttons if each.kind not in anew)
            edits, buttons = pressed_in.number, (*left, *buttons)
            self.pressed_in = None
        coach = self.client.coach.number
        self._others.append(
            Say(to=coach, parts=about, buttons=buttons, weight=weight, edits=edits, instead_of=instead_of)
        )

    def has_told(self, topic: Topic) -> bool:
        """Return whether somebody else is told of that topic."""
        return any(
            isinstance(part, Notice) and part.topic == topic for say in self._others for part in say.parts
        )

    def open_alert(self, reason: AlertReason, exercise: str | None = None) -> Alert | None:
        """Return the open alert of this reason and exercise, if there is one."""
        for alert in self.state.alerts:
            if alert.reason == reason and alert.exercise == exercise:
                return alert
        return None

    def alert(self, reason: AlertReason, exercise: str | None, evidence: dict[str, Any]) -> None:
        """Raise an alert; what cannot wait is brought to the coach in the same breath."""
        number = self.number("last_alert")
        alert = Alert(number=number, reason=reason, exercise=exercise, evidence=evidence, at=self.at)
        self.change(AlertRaised(alert))
        self.note_brought(Brought(alert=number))
        if reason in AT_ONCE:
            self.bring_to_coach(alert)

    def note_evidence(self, alert: Alert, **facts: Any) -> None:
        """Add to what an open alert knows."""
        self.change(AlertNoted(alert.number, {**alert.evidence, **facts}))

    def note_brought(self, *notes: Brought) -> None:
        """Note of open alerts when they were brought to the coach, and no longer of settled ones."""
        noted = {each.alert: each for each in (*self.memory.brought, *notes)}
        still_open = (alert.number for alert in self.state.alerts)
        self.remember(brought=tuple(noted[number] for number in still_open if number in noted))

    def was_brought(self, alert: Alert) -> bool:
        """Return whether the coach has heard of an open alert."""
        return all(each.at is not None for each in self.memory.brought if each.alert == alert.number)

    def was_brought_again(self, alert: Alert) -> bool:
        """Return whether the coach has heard of an open alert twice."""
        return any(each.again for each in self.memory.brought if each.alert == alert.number)

    def bring_to_coach(
        self, *alerts: Alert, lead: tuple[Part, ...] = (), again: bool = False, full: bool = False
    ) -> None:
        """Tell the coach of alerts in one message, with the remedies that fit as buttons.

        A stall comes to the coach with the caution on pain and joints.
        """
        parts, buttons = put_before_coach(self.state, alerts, self.today, full=full)
        self.note_brought(*(Brought(alert=each.number, at=self.at, again=again) for each in alerts))
        self.tell_coach(*lead, *parts, buttons=buttons)

    def go_on(self, order: FromCoach) -> None:
        """Go on with something long in a decision of its own, after whatever comes in meanwhile."""
        self._orders.append(Order(self.client.number, order))

    def settle(self, *alerts: Alert) -> None:
        """Settle alerts that what the client did has overtaken."""
        for alert in alerts:
            self.change(AlertSettled(alert.number, "seen", self.client.number, self.at))

    @property
    def is_erased(self) -> bool:
        """Whether everything about the client is to go."""
        return any(isinstance(change, Erased) for change in self._changes)

    def farewell(self) -> Outcome:
        """Return the last decision about a client, who is erased: nothing else of it is kept."""
        last = self.outcome(self.at + FORGET_AFTER)
        erased = tuple(change for change in self._changes if isinstance(change, Erased))
        return replace(last, changes=erased, memory=None)

    def outcome(self, wake_at: datetime | None, weight: Weight = "answer") -> Outcome:
        """Return the finished decision."""
        says = list(self._others)
        if self._parts:
            own = Say(
                to=self.client.number,
                parts=tuple(self._parts),
                buttons=tuple(self._buttons),
                weight=weight,
                edits=self._in_place,
            )
            says.insert(0, own)
        if self._under is not None:
            says.insert(bool(self._parts), self._under)
        return Outcome(
            changes=tuple(self._changes),
            says=tuple(says),
            orders=tuple(self._orders),
            memory=None if self.memory == self.start.memory else self.memory,
            wake_at=wake_at,
        )
