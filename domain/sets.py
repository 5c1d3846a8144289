"""One set: as done, as to be beaten, or as aimed for. The smallest value of the house."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from domain.units import Unit, to_kg

LoadKind = Literal["total", "each", "added", "assist", "body"]
"""How a load is counted: the whole, per hand, on top of body weight, help that takes weight off, none."""
FAMILY: Mapping[LoadKind, LoadKind] = {
    "total": "total",
    "each": "each",
    "added": "body",
    "assist": "body",
    "body": "body",
}
"""Body weight, with something added or taken off, is one way of counting."""

Way = tuple[bool, bool, LoadKind]
"""Whether a set is of lowering-only reps, whether it is a hold, and how its load is counted."""


@dataclass(frozen=True, slots=True)
class TrainingSet:
    """A set of `reps` or, for a static hold, of `seconds`; the other one is None.

    `load` is in `unit`, never negative, and 0 where `load_kind` is "body". `rir` is reps in reserve.
    `on` is the local day of the set; None where a set is only aimed for.
    """

    exercise: str
    load: Decimal
    unit: Unit
    load_kind: LoadKind
    reps: int | None = None
    seconds: int | None = None
    lowering_only: bool = False
    to_failure: bool | None = None
    rir: Decimal | None = None
    on: date | None = None

    @property
    def kg(self) -> Decimal:
        """The load in kilograms, counted as `load_kind` says."""
        return to_kg(self.load, self.unit)

    @property
    def way(self) -> Way:
        """What another set must share to be held against this one, whatever their loads and amounts."""
        return self.lowering_only, self.seconds is not None, FAMILY[self.load_kind]

    @property
    def amount(self) -> int:
        """Reps, or seconds for a hold: what is to be beaten at the same load."""
        return self.seconds if self.seconds is not None else self.reps or 0


MOST_KG, MOST_REPS, MOST_SECONDS = 1000, 200, 3600
"""No set of strength training goes beyond these. Common practice, no source."""


def is_within_reason(done: TrainingSet) -> bool:
    """Return whether a set can be what somebody did, and is not a slip of the finger."""
    return done.kg <= MOST_KG and (done.reps or 0) <= MOST_REPS and (done.seconds or 0) <= MOST_SECONDS
