"""What the bot says, as values. Words are made of them in one place, `bot.wording`.

A message is a tuple of parts. Each part has a `kind`; loads are `Decimal` in the unit beside them.
"""

from datetime import date, datetime, time
from decimal import Decimal
from typing import Annotated, Any, Literal

from pydantic import Field

from domain import comparison
from domain.actions import Action, Taken, TriedResult
from domain.comparison import Comparison
from domain.frozen import Frozen
from domain.journal import AlertReason
from domain.pictures import ProgrammeProgress, Progress, RosterProgress
from domain.plan_lines import PlanChange, PlanLine, TargetReason
from domain.programme import Range
from domain.reach import Reach
from domain.sets import LoadKind, TrainingSet
from domain.tally import Numbers
from domain.topics import Topic
from domain.units import Unit

Slot = Literal[
    "exercise",
    "load",
    "reps",
    "seconds",
    "unit",
    "date",
    "confirm",
    "day",
    "missed",
    "trouble",
    "lately",
    "body mass",
    "joining",
    "leaving",
    "sheet",
    "programme",
    "words",
    "send",
    "who",
    "handover",
    "role",
    "journal",
    "which programme",
]
"""What a question asks for: something of a set, to which day a workout moves, what became of a missed one,
whether a joint is in trouble, what was out of the ordinary lately, what the client weighs, one of the first
questions to a new client, what becomes of the data of one who leaves, whether a sheet is right, whether
clients are to be put on another programme, what to tell a client, whether words are to go to many, which
client is meant, whether a client is to be offered to another coach, in which of two roles something was said,
whose journal a file has, which programme is meant."""

VerdictReason = Annotated[comparison.Reason, Field(discriminator="rule")]


class Plan(Frozen):
    """A workout and what to aim for in it, after the `changes` that coach `by` has made."""

    kind: Literal["plan"] = "plan"
    workout: str
    on: date
    lines: tuple[PlanLine, ...]
    changes: tuple[PlanChange, ...] = ()
    by: str = ""


class VerdictPart(Frozen):
    """This exposure against the last one of its kind, and the echo of the sets just `recorded`."""

    kind: Literal["verdict"] = "verdict"
    exercise: str
    result: Literal["beat", "level", "below", "first", "not comparable"]
    set: TrainingSet
    before: TrainingSet | None = None
    recorded: tuple[TrainingSet, ...] = ()
    on: date | None = None
    """The day of the sets, where that is not the day on which it is said."""
    sets_before: int = 0
    """How many sets of this exposure had been told of before these."""
    corrected: bool = False
    personal_best: bool = False
    on_target: bool = False
    """Whether it is what was to be aimed for, or more."""
    held: bool = False
    """It hurts: nothing is said that would spur the client on."""
    eased: bool = False
    """The load had been taken down for this one: a deload, or the way back after pain."""
    caution: str | None = None
    """A place that hurts, for which another exercise is on hold, where this one loads it as well."""
    reason: VerdictReason | None = None
    in_order: tuple[Comparison, ...] = ()
    """Set against set in the order done, as far as both sides have them."""


class TargetPart(Frozen):
    """What to aim for, in the next set of today or the next time.

    `expected` is how many are to be expected at a load that is new, where that can be told.
    """

    kind: Literal["target"] = "target"
    exercise: str
    when: Literal["next set", "next time"] = "next time"
    load: Decimal
    unit: Unit
    load_kind: LoadKind
    reps: int | None = None
    seconds: int | None = None
    lowering_only: bool = False
    plates_per_side: tuple[Decimal, ...] | None = None
    expected: int | None = None
    lighter: bool = False
    """Whether the load is less than the last one."""
    put_right: bool = False
    """Whether it puts right a first load that has just proved wrong, while the workout goes on."""
    reason: TargetReason | None = None
    range: Range | None = None
    """The prescription's, which the reason speaks of."""
    last: TrainingSet | None = None
    """The set that it is reckoned from, where there was one."""
    back_to: TrainingSet | None = None
    """What was done before a break, as long as it is being built back to."""


class Question(Frozen):
    """A question to the person. `facts` hold what it is about, for the words.

    `number` is that of the question that waits for the answer; 0 where it is not known.
    """

    kind: Literal["question"] = "question"
    slot: Slot
    number: int = 0
    facts: dict[str, Any] = Field(default_factory=dict)


class Safety(Frozen):
    """Pain or joint trouble: leave the exercise, see a qualified professional before loading it again.

    `where` is None where it is only asked about `exercise` and those in `also`. Otherwise `exercise` is the
    likeliest cause, `held` are all that were set aside, `also` others that load the same joint.
    """

    kind: Literal["safety"] = "safety"
    where: str | None
    side: str | None = None
    exercise: str | None = None
    held: tuple[str, ...] = ()
    also: tuple[str, ...] = ()


class Urgent(Frozen):
    """A warning sign: stop, call the local emergency number, tell someone near."""

    kind: Literal["urgent"] = "urgent"


class AlertPart(Frozen):
    """A matter for the coach, with its evidence."""

    kind: Literal["alert"] = "alert"
    reason: AlertReason
    client: str
    exercise: str | None = None
    evidence: dict[str, Any] = Field(default_factory=dict)
    full: bool = False
    """Whether all of the evidence is to be said, as on request."""
    number: int = 0
    """The alert's number; 0 where it is none that is kept."""
    of: int = 0
    """The client's number, in a message to the coach."""


class Reminder(Frozen):
    """It is a training day."""

    kind: Literal["reminder"] = "reminder"
    workout: str
    on: date


class Nudge(Frozen):
    """Nothing was reported yet of the workout due on that day."""

    kind: Literal["nudge"] = "nudge"
    workout: str
    on: date


class Eager(Frozen):
    """Where a client did more than was asked, in the workout of the day `on`: by the `rule` that found it.

    It came to light at the moment `at`. `facts` are those of the rule, as plain JSON; `exercise` is None
    where it is about the whole workout, and `workout` empty where it is none of the programme's.
    """

    rule: Literal["great jump", "extra sets", "not on the sheet", "too soon", "same again"]
    exercise: str | None
    workout: str
    on: date
    at: datetime
    facts: dict[str, Any] = Field(default_factory=dict)


class ClientLine(Frozen):
    """One client in a coach's overview."""

    name: str
    programme: str | None
    last_workout: date | None
    due_on: date | None
    remind_at: time | None = None
    open_alerts: tuple[tuple[AlertReason, str | None], ...] = ()
    held: tuple[str, ...] = ()
    paused: bool = False
    left: bool = False
    """The client has left, and the journal stays."""
    joining: bool = False
    """The first questions are not all answered yet."""
    to_release: bool = False
    """The client was to see a doctor first, and waits for the coach's word to begin."""
    ill_on: date | None = None
    """When the client told of being ill, where there was no training since."""
    eager: tuple[Eager, ...] = ()
    """Where more was done than was asked, in the time that is looked back on."""
    tried: tuple[tuple[Taken, TriedResult], ...] = ()
    """The remedies taken for this client, and what came of each."""


About = Literal[
    "all",
    "client",
    "trains",
    "stalled",
    "hurts",
    "missed",
    "asked",
    "review",
    "new",
    "away",
]
"""What an overview is about: who needs the coach and who trains, one client, or one matter alone."""


class Digest(Frozen):
    """A coach's overview: who needs her, best first, then who trains when; or one matter over all clients.

    Where `since` is given it is the look back on the days from then on, and has only those clients with whom
    something is to be done. `on` is the day asked about, where it is one.
    """

    kind: Literal["digest"] = "digest"
    about: About = "all"
    on: date | None = None
    today: date
    clients: tuple[ClientLine, ...]
    since: date | None = None
    numbers: Numbers | None = None
    """The numbers of the days that are looked back on."""


FileKind = Literal["journal table", "journal pages", "journal data", "journal reading", "everything"]
"""What a file can hold: a journal as a table, one row a set, as pages to print, or as data for machines;
what is understood of an old journal that a coach has sent, row by row; everything that is kept about a
client, for that client alone."""


class File(Frozen):
    """A file of kind `what`, with what there is of the client of number `of`, called `client`.

    It is written as the message is sent, from what stands by then, so that nothing of it lies in the outbox.
    """

    kind: Literal["file"] = "file"
    what: FileKind
    of: int
    client: str
    source: int = 0
    """The coach's message with an old journal, where it is about one; what is told of it, and the day."""
    exercises: dict[str, str] = Field(default_factory=dict)
    month_first: bool | None = None
    on: date | None = None


class Chosen(Frozen):
    """The button that was pressed, shown under the message that it stood under."""

    kind: Literal["chosen"] = "chosen"
    action: Action


class Notice(Frozen):
    """Anything else that is to be known. `topic` chooses the words, `facts` fill them.

    `of` is the number of the client that it is about, in a message to the coach.
    """

    kind: Literal["notice"] = "notice"
    topic: Topic
    facts: dict[str, Any] = Field(default_factory=dict)
    of: int = 0


class CameOf(Frozen):
    """What a press has come to, shown under the message that the button stood under."""

    kind: Literal["came of"] = "came of"
    notice: Notice


Part = Annotated[
    Plan
    | VerdictPart
    | TargetPart
    | Question
    | Safety
    | Urgent
    | AlertPart
    | Reminder
    | Nudge
    | Digest
    | Reach
    | File
    | Progress
    | ProgrammeProgress
    | RosterProgress
    | Chosen
    | CameOf
    | Notice,
    Field(discriminator="kind"),
]

WORDS_PASSED_ON: frozenset[Topic] = frozenset({"from coach", "client answers", "passed to client"})
"""Notices of what one person has written to another, so that a reply is meant for that one."""

Weight = Literal["answer", "alert", "nudge"]
"""How a message is treated where it is unclear whether it was sent: answers and alerts go again."""


class Say(Frozen):
    """One message to person `to` (a person's number), with buttons in order."""

    to: int
    parts: tuple[Part, ...]
    buttons: tuple[Action, ...] = ()
    weight: Weight = "answer"
    edits: int | None = None
    """The number in the outbox of an earlier message to this person that is changed instead of sending one:
    the parts take its place, or where they are a `Chosen` or a `CameOf`, that is shown under its words. The
    buttons are all that it has from now on."""
    instead_of: int | None = None
    """The inbox number of a message of that person whose first answer this is to stand instead of."""
