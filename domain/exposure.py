"""An exposure: one client doing one exercise in one workout, the thing that is compared from time to time."""

from dataclasses import dataclass
from datetime import date
from functools import cached_property
from typing import NamedTuple

from domain.sets import TrainingSet


class Kind(NamedTuple):
    """What makes two exposures comparable: the same exercise of the same workout, done in the same way."""

    workout: str
    exercise: str
    lowering_only: bool
    is_hold: bool


@dataclass(frozen=True)
class Exposure:
    """The sets of one exercise in one workout, in the order done. Raises ValueError where there is none.

    What follows from the sets is asked for again and again, and reckoned once.
    """

    workout: str
    exercise: str
    on: date
    sets: tuple[TrainingSet, ...]

    def __post_init__(self) -> None:
        """Refuse an exposure of nothing."""
        if not self.sets:
            raise ValueError(f"an exposure of {self.exercise!r} on {self.on} without a set")

    @cached_property
    def lowering_only(self) -> bool:
        """Whether only lowering-only reps were done: one set of full reps is enough for False."""
        return all(each.lowering_only for each in self.sets)

    @cached_property
    def is_hold(self) -> bool:
        """Whether it is a static hold, in seconds; beside full reps, lowering-only ones do not tell."""
        lowering_only = self.lowering_only
        return any(each.seconds is not None for each in self.sets if each.lowering_only == lowering_only)

    @cached_property
    def kind(self) -> Kind:
        """What another exposure must share to be compared with this one."""
        return Kind(self.workout, self.exercise, self.lowering_only, self.is_hold)

    @cached_property
    def counting(self) -> tuple[TrainingSet, ...]:
        """The sets that count, one at least: lowering-only reps after full reps finish a set off and are not
        compared.
        """
        if len(self.sets) == 1:
            return self.sets
        lowering_only, is_hold = self.lowering_only, self.is_hold
        return tuple(
            each
            for each in self.sets
            if each.lowering_only == lowering_only and (each.seconds is not None) == is_hold
        )
