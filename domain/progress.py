"""How an exercise has gone, as numbers on one scale that a picture can show.

The scale is the plainest on which the exposures can be held against each other, and it claims nothing that
the comparison of two sets would not: seconds of a hold, reps where the load was ever the same, else the
estimated 1RM (Epley) where what is moved is known, else the load alone.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Literal

from domain.comparison import Body, best_of, extra_kg, strength_shown
from domain.exposure import Exposure
from domain.frozen import Frozen
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit, convert

Measure = Literal["reps", "seconds", "one-rep max", "one-rep max with body", "load", "added load"]


class Scale(Frozen):
    """What the numbers are: a `measure`, in `unit` where it is a load.

    Seconds of holds at several loads stand beside each other, and are not held against each other.

    `load_kind` is how the loads are counted; `load` is the one that was ever the same, where reps or seconds
    are told. `lowering_only` is of reps that were lowered only.
    """

    measure: Measure
    unit: Unit
    load_kind: LoadKind
    load: Decimal | None = None
    lowering_only: bool = False

    @property
    def is_mixed(self) -> bool:
        """Whether the numbers are seconds at several loads, of which more is not simply better."""
        return self.measure == "seconds" and self.load is None


class Spot(Frozen):
    """A set on its day, and its number on the scale."""

    on: date
    value: float
    set: TrainingSet


@dataclass(frozen=True, slots=True)
class Course:
    """The best set of each exposure of one kind, oldest first, and the scale that all of them are on."""

    scale: Scale
    spots: tuple[Spot, ...]


def course_of(
    exposures: Sequence[Exposure], body: Body, unit: Unit, aims: Iterable[TrainingSet] = ()
) -> Course:
    """Return the course of one exercise; `exposures` (one or more) oldest first, `aims` to be shown with it.

    What is of another kind than the last exposure (holds, lowering-only reps, loads counted per hand) is left
    out, as nothing can be held against it.
    """
    best = [(each.on, best_of(each.counting, body)) for each in exposures]
    way = best[-1][1].way
    own = [(on, one) for on, one in best if one.way == way]
    scale = _scale([one for _, one in own], [one for one in aims if one.way == way], body, unit)
    spots = tuple(Spot(on=on, value=value_on(scale, one, body), set=one) for on, one in own)
    return Course(scale, spots)


def value_on(scale: Scale, one: TrainingSet, body: Body) -> float:
    """Return the number of a set on a scale that it fits on."""
    match scale.measure:
        case "reps" | "seconds":
            return float(one.amount)
        case "load" | "added load":
            return float(_in_unit(extra_kg(one), scale.unit))
        case "one-rep max" | "one-rep max with body":
            return float(_in_unit(Decimal(strength_shown(one, body)), scale.unit))


def fits(scale: Scale, one: TrainingSet) -> bool:
    """Return whether a set can stand on that scale."""
    if (one.seconds is not None) != (scale.measure == "seconds") and scale.measure in {"reps", "seconds"}:
        return False
    same_kind = one.load_kind == scale.load_kind or {one.load_kind, scale.load_kind} <= _WITH_BODY
    same_load = scale.load is None or extra_kg(one) == scale.load
    return same_kind and same_load and one.lowering_only == scale.lowering_only


_WITH_BODY: frozenset[LoadKind] = frozenset({"added", "assist", "body"})


def _scale(done: Sequence[TrainingSet], aims: Sequence[TrainingSet], body: Body, unit: Unit) -> Scale:
    last = done[-1]
    loads = {extra_kg(one) for one in (*done, *aims)}
    load_kind: LoadKind = (
        last.load_kind if last.load_kind not in _WITH_BODY or loads == {Decimal(0)} else "added"
    )
    measure: Measure
    if len(loads) == 1:
        measure = "seconds" if last.seconds is not None else "reps"
        (load,) = loads
        return Scale(
            measure=measure, unit=unit, load_kind=load_kind, load=load, lowering_only=last.lowering_only
        )
    if last.seconds is not None:
        measure = "seconds"
    elif last.load_kind not in _WITH_BODY:
        measure = "load" if last.lowering_only else "one-rep max"
    elif not last.lowering_only and all(body.system_kg(one) for one in done):
        measure = "one-rep max with body"
    else:
        measure = "added load"
    return Scale(measure=measure, unit=unit, load_kind=load_kind, lowering_only=last.lowering_only)


def _in_unit(kg: Decimal, unit: Unit) -> Decimal:
    return convert(kg, "kg", unit)
