"""What a message is read against, and what it was understood to mean: the values, without any rule.

All of them are frozen. They are plain dataclasses, as a reading must cost far less than a millisecond.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from decimal import Decimal
from types import MappingProxyType
from typing import Literal, NamedTuple

from domain.sets import LoadKind, TrainingSet
from domain.units import Unit

Want = Literal[
    "skip_exercise",
    "skip_workout",
    "move",
    "pause",
    "undo",
    "correct",
    "ask_coach",
    "show_plan",
    "show_history",
    "help",
    "stop_messages",
]
"""What else the client wants done."""

Slot = Literal["exercise", "load", "reps", "seconds", "unit", "date", "confirm"]
"""What of a set must be asked for."""

Side = Literal["left", "right", "both"]

Place = Literal[
    "neck",
    "shoulder",
    "upper arm",
    "elbow",
    "forearm",
    "wrist",
    "hand",
    "upper back",
    "lower back",
    "back",
    "chest",
    "abdomen",
    "hip",
    "groin",
    "thigh",
    "knee",
    "calf",
    "ankle",
    "foot",
    "head",
    "other",
]
"""The parts of the body that are told apart."""


@dataclass(frozen=True, slots=True)
class Planned:
    """One exercise of today's plan: its range of reps or seconds, its sets, and how its load is counted.

    `load_kind` is None where the load is the whole, or nothing is known of it.
    """

    name: str
    range_low: int
    range_high: int
    of: Literal["reps", "seconds"]
    sets: int = 1
    load_kind: LoadKind | None = None
    lowering_only: bool = False


_NO_SETS: Mapping[str, TrainingSet] = MappingProxyType({})
_NO_NAMES: Mapping[str, str] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Request:
    """A message and what it is read against.

    `sent` is the client's local time, without a zone. `last` and `target` are by the exercise's name: the set
    to beat, and what to aim for today. `done` is oldest first. `own_names` is by the client's own word.
    """

    text: str
    unit: Unit
    sent: datetime
    plan: tuple[Planned, ...] = ()
    done: tuple[TrainingSet, ...] = ()
    last: Mapping[str, TrainingSet] = field(default_factory=lambda: _NO_SETS)
    target: Mapping[str, TrainingSet] = field(default_factory=lambda: _NO_SETS)
    own_names: Mapping[str, str] = field(default_factory=lambda: _NO_NAMES)


@dataclass(frozen=True, slots=True)
class Pain:
    """A place that hurts. `side` is None for parts in the middle or where none was said; `score` is 0 to
    10."""

    where: Place
    side: Side | None = None
    score: Decimal | None = None


@dataclass(frozen=True, slots=True)
class OpenSet:
    """A set of which something must still be asked: a set's fields, None where unknown.

    `asks` are what this set needs. `candidates` are the sets it could be, the likeliest first, where it needs
    `confirm`. `said_name` is the client's word for the exercise, where it could not be told which is meant.
    `bare` is a number of which it could not be told whether it is the load or the reps.
    """

    exercise: str | None = None
    load: Decimal | None = None
    unit: Unit | None = None
    load_kind: LoadKind | None = None
    reps: int | None = None
    seconds: int | None = None
    lowering_only: bool = False
    to_failure: bool | None = None
    rir: Decimal | None = None
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    candidates: tuple[TrainingSet, ...] = ()
    said_name: str | None = None
    bare: Decimal | None = None
    replaces: int | None = None
    """The place in `done` of the set that this one is to put right."""

    def complete(self) -> TrainingSet | None:
        """Return the set, or None while something of it is still unknown."""
        if (
            self.asks
            or self.exercise is None
            or self.load is None
            or self.unit is None
            or self.load_kind is None
            or (self.reps is None and self.seconds is None)
        ):
            return None
        return TrainingSet(
            exercise=self.exercise,
            load=self.load,
            unit=self.unit,
            load_kind=self.load_kind,
            reps=self.reps,
            seconds=self.seconds,
            lowering_only=self.lowering_only,
            to_failure=self.to_failure,
            rir=self.rir,
            on=self.on,
        )


class Heard(NamedTuple):
    """Words of the message, by their place in it, and what they became."""

    start: int
    end: int
    became: str


@dataclass(frozen=True, slots=True)
class Absence:
    """A time away that begins on the day `since`, yet to come, and ends on the day `back`, if told."""

    since: date
    back: date | None


@dataclass(frozen=True, slots=True)
class Reading:
    """What a message was understood to mean.

    `names` are the exercises spoken of, in order. In a correction, `replaces` has for each of `sets` the
    place
    in `done` of the set that it puts right. `words` shows which words became what, in the order of the
    message; what lies between was left over. `told_in` has for each of `sets` the place of its words in the
    message, (0, 0) where it has none; in a correction there are none.
    `absence` is that of a pause which begins on a day to come; one without it begins at once.
    `cut` is true where the message was too long to be read whole.
    """

    sets: tuple[TrainingSet, ...] = ()
    pain: tuple[Pain, ...] = ()
    urgent: bool = False
    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    open: tuple[OpenSet, ...] = ()
    words: tuple[Heard, ...] = ()
    cut: bool = False
    names: tuple[str, ...] = ()
    replaces: tuple[int, ...] = ()
    told_in: tuple[tuple[int, int], ...] = ()
    absence: Absence | None = None
