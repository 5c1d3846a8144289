"""What is remembered of a client's conversation between two messages; the journal keeps what lasts."""

from datetime import date, datetime
from decimal import Decimal
from typing import Any, Literal

from pydantic import Field

from domain.actions import Taken, TriedResult
from domain.brought_in import BroughtIn
from domain.frozen import Frozen
from domain.journal import Entry, WorkoutRecord
from domain.parts import Eager, Slot
from domain.pictures import Points
from domain.planned import PauseAhead, Plans, Swapped, Turn
from domain.readiness import Matter
from domain.sets import TrainingSet
from domain.tally import ClientTally


class Waiting(Frozen):
    """A question that waits for its answer.

    `about` is what the answer completes, as plain JSON; `message` is the inbox number of what raised it.
    `again`: it was asked once more, after the person spoke of something else.
    """

    number: int
    slot: Slot
    message: int
    asked_at: datetime
    about: dict[str, Any] = Field(default_factory=dict)
    again: bool = False


class Answered(Frozen):
    """The question about sets that was answered last, by the message of that inbox number, at `at`."""

    message: int
    question: Waiting
    at: datetime


class Called(Frozen):
    """The client's `word` in inbox message `message`, and the exercise that it was taken for."""

    message: int
    word: str
    exercise: str


class NotUnderstood(Frozen):
    """Words of inbox message `message`, said at `at`, of which something was never told.

    `lacks` is what of them is missing; `unfinished` are the sets that they were to be, as plain JSON, all of
    the same `exercise`.
    """

    message: int
    at: datetime
    text: str
    exercise: str | None
    lacks: tuple[Slot, ...]
    unfinished: tuple[dict[str, Any], ...]


class PutRight(Frozen):
    """What entry `entry` had put right: the entry `replaced`, the set it `was`, told in message `message`."""

    entry: int
    was: TrainingSet
    workout: int
    message: int
    replaced: int = 0
    at: datetime | None = None


class Undone(Frozen):
    """What the last undo took back, at `at`, so that it can be had again.

    The `entries` that no longer stood, the `workouts` they were of and what they had `put_right`, all as
    before; `instead_of` those that stood in their place. `plans` and `plans_before` where plans were changed;
    `body_mass` where that was. `last_entry` and the plans `left` tell whether anything has come since.
    """

    at: datetime
    entries: tuple[Entry, ...] = ()
    instead_of: tuple[int, ...] = ()
    workouts: tuple[WorkoutRecord, ...] = ()
    put_right: tuple[PutRight, ...] = ()
    plans: Plans | None = None
    plans_before: Plans | None = None
    body_mass: Decimal | None = None
    last_entry: int
    left: Plans


class Easing(Frozen):
    """A load eased: in each workout, the first target after the day `since` is `factor` of the last load.

    `held_since`: it had been on hold from that day on, where it was eased because of that.
    """

    exercise: str
    factor: Decimal
    since: date
    held_since: date | None = None


class Swap(Frozen):
    """An exercise replaced by another of the sheet's, until the coach says otherwise."""

    exercise: str
    instead: str


class ByCoach(Frozen):
    """One change that the coach made, by message `change`, on the client's day `on`, and how to undo it.

    `before` is what stood before: the exercise done instead, a time of day, or the exercise put back. The
    client hears of it in the next plan, on the day `told_on`.
    """

    change: int
    what: Literal["swap", "leave out", "back", "rest more", "reminder", "programme"]
    exercise: str = ""
    instead: str = ""
    days: int = 0
    before: str | None = None
    programme: int | None = None
    """The programme before, where that was changed; `swaps` are those that there were with it."""
    swaps: tuple[Swap, ...] = ()
    on: date
    told_on: date | None = None


class Quiet(Frozen):
    """An exercise in which no stall is looked for until some exposures after the day `since` stand."""

    exercise: str
    since: date
    exposures: int = 3


class Tried(Frozen):
    """A remedy that coach `by` has taken on the day `on` for alert number `alert`, and what came of it.

    `exercise` is what is done since, None for a whole programme, or for several `exercises` at once;
    exposures after the day `since` are after it. `looked`: how many of them there were at the last look.
    """

    alert: int
    remedy: Taken
    by: int
    on: date
    since: date
    exercise: str | None
    workout: str
    result: TriedResult = "open"
    looked: int = 0
    looked_on: date | None = None
    exercises: tuple[str, ...] = ()


class Brought(Frozen):
    """When open alert number `alert` was brought to the coach; `at` None: not yet.

    `again`: it was brought up once more after that.
    """

    alert: int
    at: datetime | None = None
    again: bool = False


class StallAnswers(Frozen):
    """What the client answered about stalls of `exercises`, by the slot asked, for the coach to hear."""

    exercises: tuple[str, ...]
    said: dict[str, str]
    at: datetime


class EagerKept(Frozen):
    """Where the client did more than was asked, in workout number `workout`.

    `told`: the client has heard of it.
    """

    workout: int
    what: Eager
    told: bool = False


class CoachWrote(Frozen):
    """That the coach's words were passed on, on that day of the client's, and which exercises they named."""

    on: date
    exercises: tuple[str, ...] = ()


JoiningStep = Literal[
    "consent", "age", "guardian", "readiness", "unit", "zone", "hour", "equipment", "first day"
]
"""What a new client is asked, in this order."""


class KeptWords(Frozen):
    """Words of inbox message `message`, said at `at`, that are to be heard once the first questions are
    over."""

    message: int
    at: datetime
    text: str


class Joining(Frozen):
    """How far a new client has come with the first questions."""

    settled: tuple[JoiningStep, ...] = ()
    asked_at: datetime | None = None
    """When the present question was last asked."""
    reminded: bool = False
    """Whether the client was reminded of the present question."""
    coach_told: bool = False
    """Whether the coach has heard that the client stopped half-way."""
    unread: int = 0
    """How many answers in a row to the present question were none."""
    refused: bool = False
    is_minor: bool = False
    zones: tuple[str, ...] = ()
    """The zones of the place that was named, where it has several."""
    kept: tuple[KeptWords, ...] = ()


class Clearance(Frozen):
    """That a client is to see a doctor before training, and the coach then to release it.

    `which` are the matters said yes to, none where that was not told; `said` are the client's own words.
    """

    at: datetime
    which: tuple[Matter, ...]
    said: str


class ClientMemory(Frozen):
    """The small things to remember of a client. The counters number what this client's decisions make."""

    last_workout: int = 0
    last_entry: int = 0
    last_hold: int = 0
    last_alert: int = 0
    last_question: int = 0
    last_words: int = 0
    welcomed: bool = False
    """Whether the first message, which says what the bot is not, was said."""
    joining: Joining | None = None
    """How far the first questions have come; None where they are over, or none are asked."""
    agreed_at: datetime | None = None
    """When the client agreed to what the bot is and is not; None of people from a roster, who are not
    asked."""
    guardian_said: str | None = None
    """The words with which a guardian agreed, of a client who is not of age."""
    clearance: Clearance | None = None
    """That a doctor is to be seen first, until the coach releases the training."""
    questions: tuple[Waiting, ...] = ()
    """The open questions, the one asked last at the end; at most one about sets, one of each other slot."""
    answered: Answered | None = None
    """So that an answer that is edited can be taken anew."""
    called: tuple[Called, ...] = ()
    """The latest words for exercises that are no names of the catalogue, in case one is put right."""
    not_understood: tuple[NotUnderstood, ...] = ()
    """The latest words that were asked about in vain, for the coach to see."""
    put_right: tuple[PutRight, ...] = ()
    """What the last corrections changed, the latest at the end, so that they can be undone one by one."""
    plans_before: Plans | None = None
    """How the plans stood before the message that last changed them, so that this can be undone."""
    undone: Undone | None = None
    """What the last undo took back, in case that was not meant."""
    odd_part: str = ""
    odd_at: datetime | None = None
    """The part of the body of which it was asked whether it hurts, and when."""
    told_at: datetime | None = None
    """When the coach's words were passed on that the client has not answered yet."""
    told_to_several: bool = False
    """Those words went to others as well, so that a kind word alone is no answer to them."""
    coach_wrote: tuple[CoachWrote, ...] = ()
    """The latest words of the coach's that were passed on."""
    eager: tuple[EagerKept, ...] = ()
    """Where the client lately did more than was asked, as last reckoned, for the coach's digest."""
    due_on: date | None = None
    """The day of the next workout as last reckoned, for the coach's overview."""
    moved_to: date | None = None
    moved_workout: str | None = None
    """The workout that was moved to `moved_to`; without that day it says nothing."""
    moved_from: date | None = None
    """The fixed day that the moved workout had been on; without `moved_to` it says nothing."""
    owed: date | None = None
    """The fixed day whose own workout comes next, though another was done on that day, or too near to it."""
    swapped: Swapped | None = None
    turn: Turn | None = None
    """The fixed day that has another than its own workout, since that one was done in the other's place."""
    rest_on: date | None = None
    """The day to which the rest of the workout under way was moved."""
    left_out: tuple[str, ...] = ()
    """What the next workout, not begun yet, is to leave out."""
    stands_for: date | None = None
    """The fixed day that the last workout, done ahead of it, has stood for."""
    put_off_on: tuple[date, ...] = ()
    """The days since the last training on which a workout was put off."""
    told_unasked: int = 0
    """How many workouts in a row the client has told of before being asked."""
    extra_rest_days: int = 0
    reminded_on: date | None = None
    nudged_on: date | None = None
    remind_again_at: datetime | None = None
    """When the client has asked to be reminded once more; aware, UTC."""
    unasked_on: date | None = None
    """The last day on which something was said unasked, and how often it was."""
    unasked: int = 0
    asked_missed_on: date | None = None
    missed_in_a_row: int = 0
    to_sum_up: int | None = None
    """The number of the workout that has closed without the client's doing, and is still to be summed up."""
    sum_up_on: date | None = None
    """The day on which it is to be."""
    found_later: int | None = None
    """The number of the workout that was taken for missed, and of which the client then told."""
    barred: bool = False
    """After a warning sign, or where a doctor is to be seen first, there is no training until the coach lets
    it go on."""
    paused: bool = False
    paused_until: date | None = None
    pause_ahead: PauseAhead | None = None
    pause_told: bool = False
    """Whether it was said that the pause stands, of somebody who trains in it."""
    ill_on: date | None = None
    """The last day on which the client has told of being ill, and could not train because of it."""
    ill_days: tuple[date, ...] = ()
    """The latest of such days, oldest first: what is done after one begins lighter."""
    reminders_off: bool = False
    other_coaches: tuple[int, ...] = ()
    """Other coaches who were told of this client: former ones, and those whom the client was offered to."""
    left_at: datetime | None = None
    """When the client has left, with the journal left to the coach; None while the client is here."""
    body_mass_told_on: date | None = None
    """When the client last told what the body weighs; None where never, or only before the first message."""
    body_mass_told_in: int = 0
    """The inbox number of the message in which it was told, in case that is edited."""
    body_mass_before: Decimal | None = None
    """What stood before that message, in the client's unit, so that it can be taken back."""
    body_mass_asked_on: date | None = None
    body_mass_unwanted: bool = False
    """The client does not want to be asked for it."""
    last_reported_at: datetime | None = None
    easings: tuple[Easing, ...] = ()
    """The latest of them, oldest first; of each exercise the last one holds."""
    swaps: tuple[Swap, ...] = ()
    kept_out: tuple[str, ...] = ()
    """Exercises that the coach has taken out until further word; nothing of them is to be done."""
    by_coach: tuple[ByCoach, ...] = ()
    """The coach's latest changes, the last at the end."""
    quiet: tuple[Quiet, ...] = ()
    reviewed_round: int = 0
    brought: tuple[Brought, ...] = ()
    """Which of the open alerts the coach has heard of."""
    stall_answers: StallAnswers | None = None
    tried: tuple[Tried, ...] = ()
    """The remedies taken, the latest at the end."""

    tally: ClientTally | None = None
    """What a coach's digest counts, as last reckoned; None where it was not yet."""
    brought_in: tuple[BroughtIn, ...] = ()
    """The old journals that stand in this one; their entries come before all that the client has told."""
    workouts_gone: int = 0
    """How many of the workouts numbered so far are gone again, with an old journal that was taken out."""

    strength: Points = ()
    """How strength has changed over the last weeks, as last reckoned, for the coach's picture of all
    clients: the mean over all exercises, as a fraction of what was first done in that time."""

    @property
    def is_away(self) -> bool:
        """Whether the client is paused, or will be on a day already told."""
        return self.paused or self.pause_ahead is not None

    def is_brought_in(self, entry: int) -> bool:
        """Return whether the entry of that number came with an old journal."""
        return any(first <= entry <= last for each in self.brought_in for first, last in each.entries)

    def ill_since(self, trained: date | None) -> date | None:
        """Return the day of which the client told of being ill, unless the last training was later."""
        return None if self.ill_on is None or (trained is not None and trained > self.ill_on) else self.ill_on
