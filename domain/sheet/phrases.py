"""What a coach says in a line beside the name of the exercise, as values: sets, effort, rules, cues."""

from dataclasses import dataclass
from typing import Literal

from domain.programme import Mass
from domain.sets import LoadKind
from domain.sheet.result import FaultCode

MOST_REPS = 100
MOST_SECONDS = 3600
MOST_SETS = 20
MOST_SHORT = 10


@dataclass(frozen=True, slots=True)
class Amount:
    """Reps or seconds from `low` to `high`; `of` is None where no word says which."""

    low: int
    high: int
    of: Literal["reps", "seconds"] | None


@dataclass(frozen=True, slots=True)
class Sets:
    """How many sets."""

    count: int


@dataclass(frozen=True, slots=True)
class Times:
    """A number after an "x": sets where the reps are said elsewhere ("8-10 x 3"), else reps ("x 20")."""

    count: int


@dataclass(frozen=True, slots=True)
class Effort:
    """How many reps short of failure to stop; 0 is failure. `vague` where no number was said."""

    stop_short: int
    vague: bool = False


@dataclass(frozen=True, slots=True)
class LoweringOnly:
    """The reps are lowering-only ones."""


@dataclass(frozen=True, slots=True)
class AddLoad:
    """Add load `by` (None: the usual step) once more than `over` are done (None: at the top of the range)."""

    over: int | None
    by: Mass | None


@dataclass(frozen=True, slots=True)
class LoadFrom:
    """Start from the last load of the exercise called `name`, as the coach wrote it."""

    name: str
    difference: Mass
    side: Literal["above", "below"]


@dataclass(frozen=True, slots=True)
class LadderRule:
    """Below `below` full reps, lowering-only reps up to `up_to`."""

    below: int
    up_to: int


@dataclass(frozen=True, slots=True)
class Counted:
    """How the load is counted; `at_first` where body weight is only what an exercise begins with."""

    kind: LoadKind
    at_first: bool = False


@dataclass(frozen=True, slots=True)
class CueText:
    """Words for the client that ask nothing of the bot: "each leg", "rest 2 minutes"."""

    text: str


@dataclass(frozen=True, slots=True)
class Trouble:
    """A phrase that is recognised but cannot be taken."""

    what: FaultCode
    part: str
    hint: str = ""


Phrase = (
    Amount
    | Sets
    | Times
    | Effort
    | LoweringOnly
    | AddLoad
    | LoadFrom
    | LadderRule
    | Counted
    | CueText
    | Trouble
)
