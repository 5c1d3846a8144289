"""The loads that a client can really put on: bar and plates in pairs, dumbbells, stacks, belts and bands.

What a client has not told of is taken by common practice (no source): a 20 kg or 45 lb bar, the usual
plates in any number, and for everything else the usual step of the exercise. Whole ranges of loads are
worked out once and kept, since all of these are frozen values.
"""

from bisect import bisect_left, bisect_right
from decimal import Decimal
from functools import lru_cache
from typing import Annotated, Any

from pydantic import Field, model_validator

from domain.exercises import Exercise
from domain.frozen import Frozen
from domain.sets import LoadKind
from domain.units import Unit, convert

_HEAVIEST = {"kg": Decimal(500), "lb": Decimal(1100)}
"""No load above this is ever aimed at."""


_PLATES: dict[Unit, tuple[str, ...]] = {
    # The competition discs of the IWF and IPF from 25 kg down to 1.25 kg, and the usual plates in pounds.
    "kg": ("25", "20", "15", "10", "5", "2.5", "1.25"),
    "lb": ("45", "35", "25", "10", "5", "2.5"),
}
_BAR: dict[Unit, Decimal] = {"kg": Decimal(20), "lb": Decimal(45)}


class Plate(Frozen):
    """One size of plate, and how many pairs of it there are; None: as many as needed."""

    mass: Decimal = Field(ge=Decimal("0.1"))
    pairs: int | None = Field(default=None, ge=1)


class Steps(Frozen):
    """Loads from `first` up to `last` by `step`; `extra` is a smaller weight that can be added once."""

    first: Decimal = Field(ge=0)
    step: Decimal = Field(ge=Decimal("0.1"))
    last: Decimal | None = None
    extra: Decimal | None = Field(default=None, gt=0)

    def masses(self, limit: Decimal) -> tuple[Decimal, ...]:
        """Return all of them, up to `limit` where there is no last one."""
        last = limit if self.last is None else self.last
        plain = [self.first + self.step * n for n in range(int((last - self.first) / self.step) + 1)]
        extra = [each + self.extra for each in plain] if self.extra is not None else []
        return tuple(sorted({_plain(each) for each in (*plain, *extra)}))


class Listed(Frozen):
    """Just these loads."""

    masses: Annotated[tuple[Decimal, ...], Field(min_length=1)]


class Equipment(Frozen):
    """What a client trains with. All masses are in `unit`; bar and plates are the usual ones where not given.

    `dumbbells` and `stack` are None where the client has said nothing: then the usual step of each exercise
    holds. `lacking` names what the client has not got, in the client's or coach's words.
    """

    unit: Unit
    bar: Decimal = Field(ge=0)
    plates: tuple[Plate, ...]
    dumbbells: Steps | Listed | None = None
    stack: Steps | Listed | None = None
    bands: tuple[Decimal, ...] = ()
    lacking: tuple[str, ...] = ()

    @model_validator(mode="before")
    @classmethod
    def _fill_in_the_usual(cls, given: Any) -> Any:
        """Take bar and plates by common practice where only the unit is given."""
        if not isinstance(given, dict) or given.get("unit") not in _BAR:
            return given
        unit: Unit = given["unit"]
        usual = tuple(Plate(mass=Decimal(mass)) for mass in _PLATES[unit])
        return {"bar": _BAR[unit], "plates": usual, **given}


def default_equipment(unit: Unit) -> Equipment:
    """Return what a usual gym has, with all masses in `unit`."""
    return Equipment.model_validate({"unit": unit})


def next_load_above(
    load: Decimal, unit: Unit, exercise: Exercise, equipment: Equipment, kind: LoadKind | None = None
) -> Decimal | None:
    """Return the smallest load above `load` that can be put on, in `unit`; None where there is none.

    `kind` is how the load is counted, where it is not as usual for the exercise. For help that takes weight
    off, "above" is more help. Where `unit` is not the equipment's own, the result is rounded to hundredths.
    """
    loads = loadable(exercise, equipment, kind)
    above = bisect_right(loads, _own(load, unit, equipment))
    return _said(loads[above], unit, equipment) if above < len(loads) else None


def next_below(
    load: Decimal, unit: Unit, exercise: Exercise, equipment: Equipment, kind: LoadKind | None = None
) -> Decimal | None:
    """Return the greatest load below `load` that can be put on, in `unit`; None where there is none."""
    loads = loadable(exercise, equipment, kind)
    below = bisect_left(loads, _own(load, unit, equipment))
    return _said(loads[below - 1], unit, equipment) if below else None


def nearest_loadable(
    load: Decimal, unit: Unit, exercise: Exercise, equipment: Equipment, kind: LoadKind | None = None
) -> Decimal:
    """Return the load nearest to `load` that can be put on, in `unit`; of two as near the lower one."""
    loads = loadable(exercise, equipment, kind)
    wanted = _own(load, unit, equipment)
    at = bisect_left(loads, wanted)
    around = loads[max(0, at - 1) : at + 1]
    return _said(min(around, key=lambda each: abs(each - wanted)), unit, equipment)


def is_loadable(
    load: Decimal, unit: Unit, exercise: Exercise, equipment: Equipment, kind: LoadKind | None = None
) -> bool:
    """Whether exactly this load can be put on (to hundredths where the unit is not the equipment's own)."""
    return nearest_loadable(load, unit, exercise, equipment, kind) == load


def plates_per_side(total: Decimal, unit: Unit, equipment: Equipment) -> tuple[Decimal, ...] | None:
    """Return the plates for each side of the bar, heaviest first, in the equipment's unit; as few as can be.

    None where the total cannot be loaded with these plates in pairs; () is the bare bar.
    """
    side = (_own(total, unit, equipment) - equipment.bar) / 2
    if unit != equipment.unit:
        nearest = min(_stacks(equipment.plates, _side_limit(equipment)), key=lambda each: abs(each - side))
        if _said(equipment.bar + 2 * nearest, unit, equipment) != total:
            return None
        side = nearest
    return _stacks(equipment.plates, _side_limit(equipment)).get(side)


def bar_loads_around(total: Decimal, unit: Unit, equipment: Equipment) -> tuple[Decimal, ...]:
    """Return `total` alone where a bar can be loaded to it, else the next load below and the next above.

    All in `unit`; where it is not the equipment's own, to hundredths. At the ends only one of them is there.
    """
    if plates_per_side(total, unit, equipment) is not None:
        return (total,)
    loads = _loadable("barbell", Decimal(1), equipment, "total")
    at = bisect_left(loads, _own(total, unit, equipment))
    return tuple(_said(each, unit, equipment) for each in loads[max(0, at - 1) : at + 1])


def loadable(exercise: Exercise, equipment: Equipment, kind: LoadKind | None = None) -> tuple[Decimal, ...]:
    """Return all loads, ascending and in the equipment's unit, that can be put on for this exercise."""
    return _loadable(
        exercise.implement,
        exercise.step_kg if equipment.unit == "kg" else exercise.step_lb,
        equipment,
        kind or exercise.counted,
    )


@lru_cache(maxsize=512)
def _loadable(implement: str, step: Decimal, equipment: Equipment, kind: LoadKind) -> tuple[Decimal, ...]:
    limit = _HEAVIEST[equipment.unit]
    usual = Steps(first=step, step=step)
    match kind, implement:
        case "body", _:
            return (Decimal(0),)
        case "assist", _:
            return (Decimal(0), *_racked(equipment.stack or usual, limit))
        case "added", _:
            return tuple(sorted(_singly(equipment.plates, step, limit)))
        case _, "barbell":
            sides = _stacks(equipment.plates, _side_limit(equipment))
            return tuple(sorted(_plain(equipment.bar + 2 * each) for each in sides))
        case _, "dumbbell":
            return _racked(equipment.dumbbells or usual, limit)
        case _, "machine" | "cable":
            return _racked(equipment.stack or usual, limit)
        case _, "plate":
            return tuple(sorted(each for each in _singly(equipment.plates, step, limit) if each))
        case _, "band" if equipment.bands:
            return tuple(sorted(set(equipment.bands)))
        case _:
            return _racked(usual, limit)


def _side_limit(equipment: Equipment) -> Decimal:
    return (_HEAVIEST[equipment.unit] - equipment.bar) / 2


def _racked(rack: Steps | Listed, limit: Decimal) -> tuple[Decimal, ...]:
    if isinstance(rack, Steps):
        return rack.masses(limit)
    return tuple(sorted({_plain(each) for each in rack.masses}))


def _singly(plates: tuple[Plate, ...], step: Decimal, limit: Decimal) -> tuple[Decimal, ...]:
    """Return 0 and all loads of plates taken one by one, on a belt or in the hands.

    A pair is two single plates. The step keeps out loads that nobody would bother to hang on.
    """
    singles = tuple(
        Plate(mass=each.mass, pairs=None if each.pairs is None else 2 * each.pairs) for each in plates
    )
    sums = sorted(_stacks(singles, limit))
    kept = [Decimal(0)]
    least = min([step, *(plate.mass for plate in plates)])
    for each in sums:
        if each - kept[-1] >= least:
            kept.append(each)
    return tuple(kept)


@lru_cache(maxsize=128)
def _stacks(plates: tuple[Plate, ...], limit: Decimal) -> dict[Decimal, tuple[Decimal, ...]]:
    """Return every mass up to `limit` that can be stacked, with the fewest plates for it, heaviest first.

    Sizes are taken in turn from the heaviest: a mass reached with fewer plates is kept, and of as many the
    one with the heavier plates. Reckoned in whole numbers of the finest decimal place, so exactly.
    """
    places = max((-int(each.mass.as_tuple().exponent) for each in plates), default=0)
    scale = Decimal(10) ** max(places, 0)
    top = int(limit * scale)
    best: dict[int, tuple[int, ...]] = {0: ()}
    for plate in sorted(plates, key=lambda each: each.mass, reverse=True):
        mass = int(plate.mass * scale)
        with_this = dict(best)
        for base, stack in best.items():
            most = (top - base) // mass if plate.pairs is None else min(plate.pairs, (top - base) // mass)
            for count in range(1, most + 1):
                total, longer = base + count * mass, (*stack, *(mass,) * count)
                known = with_this.get(total)
                if known is None or (-len(longer), longer) > (-len(known), known):
                    with_this[total] = longer
        best = with_this
    return {
        _plain(total / scale): tuple(_plain(each / scale) for each in stack) for total, stack in best.items()
    }


def _plain(mass: Decimal) -> Decimal:
    """Return the mass without trailing zeros: 82.5, 100."""
    return mass.quantize(Decimal(1)) if mass == mass.to_integral_value() else mass.normalize()


def _own(load: Decimal, unit: Unit, equipment: Equipment) -> Decimal:
    return convert(load, unit, equipment.unit)


def _said(load: Decimal, unit: Unit, equipment: Equipment) -> Decimal:
    if unit == equipment.unit:
        return load
    return _plain(round(convert(load, equipment.unit, unit), 2))
