"""What is found in a journal from elsewhere: workouts with their sets, and rows that are not understood."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from domain.journal import WorkoutState
from domain.journal_data import HoldData, MatterData
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit

MOST_SETS = 20_000
"""More sets are not taken at once; twenty years of a coach's own writing. The house's own choice."""

FaultKind = Literal[
    "no date",
    "date",
    "which date",
    "future",
    "no exercise",
    "long name",
    "load",
    "load kind",
    "unit",
    "reps",
    "seconds",
    "both",
    "nothing done",
    "held",
    "lowered hold",
    "reserve",
    "yes or no",
    "beyond reason",
    "too many cells",
    "other client",
    "moment",
    "aside",
    "matter",
]
"""Why a row is not taken. `which date`: the day could be two; `held`: an exercise that is held, without
seconds; `aside`, `matter`: something set aside, or brought to the coach, that cannot be so."""

MOST_NAMES = 300
"""More names of exercises are a sign that their column holds something else. The house's own choice."""

HeadFault = Literal["no columns", "too many", "too many names", "not a journal", "newer", "nobody"]
"""Why a file as a whole is not taken: the first line names no date or no exercise; too many sets, or names of
exercises; data of another form, or of a later version; nothing in it of this client."""


@dataclass(frozen=True, slots=True)
class FoundSet:
    """One set as it stands in row `row` of the file (from 1; of data, the set's place).

    `done.exercise` is the name as written. `kind` is how its load is counted where the file says so; where it
    is None, that goes by the exercise. `at` is when it was told, aware, where that is known.
    """

    row: int
    done: TrainingSet
    kind: LoadKind | None
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class FoundWorkout:
    """The sets of one workout, in the order of the file; `name` None: the file names none."""

    day: date
    name: str | None
    state: WorkoutState
    round: int
    skipped: tuple[str, ...]
    sets: tuple[FoundSet, ...]


@dataclass(frozen=True, slots=True)
class RowFault:
    """That a row is not taken, and the words of it that are at fault, as written and cut."""

    row: int
    what: FaultKind
    shown: str = ""


@dataclass(frozen=True, slots=True)
class Found:
    """All that is found in a file, oldest workout first; where there is a `head_fault`, nothing else.

    `is_ours`: the file was written by us, so that its names are taken as they stand. `unit_assumed` is the
    unit of loads that have none beside them. `passed_over` are columns that are not used. `which_date` is a
    day that could be two (the first such), and no row of the file tells how days are written in it.
    """

    workouts: tuple[FoundWorkout, ...] = ()
    faults: tuple[RowFault, ...] = ()
    head_fault: HeadFault | None = None
    shown: str = ""
    is_ours: bool = False
    unit_assumed: Unit | None = None
    passed_over: tuple[str, ...] = ()
    which_date: str | None = None
    set_aside: tuple[HoldData, ...] = ()
    matters: tuple[MatterData, ...] = ()
