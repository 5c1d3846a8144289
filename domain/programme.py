"""A coach's programme as structured data: what a sheet means, kept as JSON and versioned.

The text of a sheet is read and written in `domain.sheet`; nothing here knows how it looks on paper.
"""

from decimal import Decimal
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from domain.exercises import Joint
from domain.frozen import Frozen
from domain.sets import LoadKind
from domain.units import Unit

Weekday = Literal["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]


class Range(Frozen):
    """From `low` to `high`, both included: reps, or seconds where `of` says so."""

    low: int = Field(ge=1)
    high: int = Field(ge=1)
    of: Literal["reps", "seconds"] = "reps"

    @model_validator(mode="after")
    def _the_right_way_up(self) -> Self:
        if self.low > self.high:
            raise ValueError("a range has its lower end first")
        return self

    @property
    def middle(self) -> int:
        """The whole number in the middle, rounded up."""
        return (self.low + self.high + 1) // 2


class Mass(Frozen):
    """A mass as written, never negative."""

    amount: Decimal = Field(ge=0)
    unit: Unit


class Raise(Frozen):
    """When to add load: once more than `over` reps (seconds) are done, by `by` (None: the usual step)."""

    over: int = Field(ge=1)
    by: Mass | None = None


class RelativeLoad(Frozen):
    """A load reckoned from another exercise's last load: `difference` above it, or below it."""

    exercise: str
    difference: Mass
    side: Literal["above", "below"] = "above"


class Ladder(Frozen):
    """Below `below` full reps, do lowering-only reps, up to `up_to`, then full reps again."""

    below: int = Field(ge=1)
    up_to: int = Field(ge=1)


class Alternative(Frozen):
    """What to do instead: where a piece of equipment is missing, or where a joint is troubled."""

    why: Literal["equipment", "joint"]
    without: str
    """The missing equipment as the coach wrote it, or the joint's usual name."""
    exercise: str
    range: Range


class Prescription(Frozen):
    """One line of a workout: exercise, sets, range, effort and rules."""

    exercise: str
    counted: LoadKind
    """How the load of this exercise is counted where the client does not say otherwise."""
    range: Range
    sets: int = Field(default=1, ge=1, le=20)
    lowering_only: bool = False
    stop_short: int | None = Field(default=None, ge=0, le=10)
    """0 is to failure, 1 is one rep short of it; None where the sheet does not say."""
    straight_into_next: bool = False
    """The first exercise of a superset: no rest before the next one."""
    add_load: Raise | None = None
    load_from: RelativeLoad | None = None
    ladder: Ladder | None = None
    alternatives: tuple[Alternative, ...] = ()
    cues: tuple[str, ...] = ()


class Workout(Frozen):
    """A named workout and its prescriptions in order."""

    name: str
    prescriptions: Annotated[tuple[Prescription, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _no_superset_is_left_open(self) -> Self:
        if self.prescriptions[-1].straight_into_next:
            raise ValueError("nothing comes after the last exercise of a workout")
        return self


class Rotation(Frozen):
    """The workouts in turn, one every `every_days` days counted from the day of the last one done."""

    kind: Literal["rotation"] = "rotation"
    every_days: int = Field(ge=1, le=30)
    order: Annotated[tuple[str, ...], Field(min_length=1)]


class FixedDays(Frozen):
    """The workouts in turn on fixed days of the week.

    Where `by_day` is set each day has its own workout, the one at its place in `order`, and keeps it though
    another is missed.
    """

    kind: Literal["weekdays"] = "weekdays"
    days: Annotated[tuple[Weekday, ...], Field(min_length=1)]
    order: Annotated[tuple[str, ...], Field(min_length=1)]
    by_day: bool = False

    @model_validator(mode="after")
    def _each_day_has_its_own(self) -> Self:
        if self.by_day and len(self.days) != len(self.order):
            raise ValueError("there must be as many workouts as days")
        return self


class Review(Frozen):
    """A look back after `after_rounds` of the rotation; where strength has not risen, `switch_to`."""

    after_rounds: int = Field(ge=1)
    switch_to: str | None = None


class Programme(Frozen):
    """A whole programme. Joints of the alternatives are checked where the sheet is read."""

    format: Literal[1] = 1
    """The version of this structure, kept with every stored programme."""
    name: str
    schedule: Annotated[Rotation | FixedDays, Field(discriminator="kind")]
    workouts: Annotated[tuple[Workout, ...], Field(min_length=1)]
    review: Review | None = None
    tell_after: int | None = Field(default=None, ge=2)
    """The coach's own rule: tell of a stall after so many exposures without a beat."""

    def workout(self, name: str) -> Workout:
        """Return the workout of that name. Raises KeyError where there is none."""
        for workout in self.workouts:
            if workout.name == name:
                return workout
        raise KeyError(name)


JOINTS: tuple[Joint, ...] = (
    "neck",
    "shoulder",
    "elbow",
    "wrist",
    "upper back",
    "lower back",
    "hip",
    "knee",
    "ankle",
)
