"""The lines of a plan as it is told, and what of it the coach has changed. The plan is in `parts.py`."""

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import Field

from domain import target_reasons
from domain.frozen import Frozen
from domain.programme import Range
from domain.sets import TrainingSet

TargetReason = Annotated[target_reasons.TargetReason, Field(discriminator="rule")]


class PlanLine(Frozen):
    """One exercise of today's workout: what to aim for, what to beat, and how."""

    exercise: str
    range: Range
    sets: int = 1
    done: int = 0
    """How many of them are done already, in a workout under way."""
    lowering_only: bool = False
    stop_short: int | None = None
    straight_into_next: bool = False
    target: TrainingSet | None = None
    reason: TargetReason | None = None
    """Why that is the target."""
    last: TrainingSet | None = None
    """The set that the target is reckoned from, where there was one."""
    lighter: bool = False
    """Whether its load is less than the last one."""
    to_beat: TrainingSet | None = None
    plates_per_side: tuple[Decimal, ...] | None = None
    cues: tuple[str, ...] = ()
    instead_of: str | None = None
    held_for: str | None = None
    """The place that hurts, where the exercise is on hold; such a line has no target."""
    out_of_reach: bool = False
    """The client has not got what it is done with; such a line has no target, either."""
    find_first_load: bool = False
    first_time: bool = False
    """There is something to aim for, though it was never done before."""
    warm_up: tuple[tuple[TrainingSet, ...], ...] = ()
    """The warm-up sets to do before this line, an exercise each, in the order to do them in."""
    caution: str | None = None
    """A place that hurts, for which another exercise is on hold, where this one loads it as well."""
    back_to: TrainingSet | None = None
    """What was done before a break, as long as it is being built back to."""

    @property
    def is_aside(self) -> bool:
        """Whether it is only named, and not to be done."""
        return self.held_for is not None or self.out_of_reach


class PlanChange(Frozen):
    """What the coach has changed since the last plan: `instead` of an exercise, or the exercise left out."""

    what: Literal["swap", "leave out", "back"]
    exercise: str
    instead: str = ""
