"""What reading a sheet comes to: a programme with notes, or all of its faults, as values without words."""

from dataclasses import dataclass
from typing import Literal

from domain.programme import Programme

FaultCode = Literal[
    # of the whole sheet
    "empty",
    "too large",
    "too many lines",
    "line too long",
    "not text",
    "no name",
    "no schedule",
    "no workouts",
    # of the schedule and what stands beside it
    "two schedules",
    "weekdays missing",
    "too many days",
    "workout without section",
    "section not in rotation",
    "duplicate workout",
    "no workout name",
    "empty workout",
    "review not in rounds",
    "too few workouts",
    # of an exercise
    "not understood",
    "exercise before workout",
    "no exercise",
    "two exercises",
    "no range",
    "two ranges",
    "range upside down",
    "too many reps",
    "too many seconds",
    "zero",
    "sets out of range",
    "sets not one number",
    "too many short",
    # of its rules
    "nothing before",
    "superset alone",
    "superset without exercise",
    "load without unit",
    "unknown joint",
    "alternative without reason",
    "alternative without exercise",
    "reference missing",
    "reference to itself",
    # of all of it
    "not said back",
]

NoteCode = Literal[
    "own exercise",
    "other name",
    "kept as cue",
    "left out",
    "order from sections",
    "superset from numbering",
    "one short",
]


@dataclass(frozen=True, slots=True)
class Fault:
    """Something that cannot be taken, with the line as written.

    `line_number` counts from 1 and is None where the whole sheet is meant. `part` is the piece of the line
    that is at fault. `hint` is what would be right, where it can be reckoned: a range, a name; the words
    beside it are chosen by `what`.
    """

    line_number: int | None
    line: str
    what: FaultCode
    part: str = ""
    hint: str = ""


@dataclass(frozen=True, slots=True)
class Note:
    """Something that was taken in a way that the coach should see before agreeing to it.

    `part` is what was written, `taken_as` what it became; for a coach's own exercise, the one of the
    catalogue that looks most like it, or nothing.
    """

    line_number: int
    what: NoteCode
    part: str
    taken_as: str = ""


@dataclass(frozen=True, slots=True)
class SheetResult:
    """Either a programme and notes on it, or the faults in the order of their lines; never both."""

    programme: Programme | None
    notes: tuple[Note, ...] = ()
    faults: tuple[Fault, ...] = ()
