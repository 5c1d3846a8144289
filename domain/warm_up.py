"""A short ramp of lighter sets up to the first hard one. Common practice, no source.

A few easy sets, fewer reps the nearer the load comes: half of it for eight, seven tenths for five, and where
the load is a heavy one, 85% for two. In a pair without rest between, the second exercise is warmed up first;
that order is the plan's business.
"""

from dataclasses import replace
from decimal import Decimal

from domain.comparison import Body
from domain.equipment import Equipment
from domain.exercises import Exercise
from domain.loading import Load, Loading
from domain.sets import TrainingSet
from domain.units import to_kg

RAMP: tuple[tuple[Decimal, int], ...] = (
    (Decimal("0.5"), 8),
    (Decimal("0.7"), 5),
    (Decimal("0.85"), 2),
)
"""Shares of the load aimed at, and reps."""
_HEAVY_KG = Decimal(60)
"""From here on the third set of the ramp is worth its time."""


def warm_up(aim: TrainingSet, exercise: Exercise, equipment: Equipment) -> tuple[TrainingSet, ...]:
    """Return the sets before `aim`, lightest first, with loads that exist and none twice.

    Added weight is warmed up for with the body alone. Nothing is said for the body alone, for help, for
    static holds and for lowering-only reps: what is lighter than those depends on the person.
    """
    if aim.reps is None or aim.lowering_only or aim.load_kind in ("body", "assist"):
        return ()
    if aim.load_kind == "added":
        return (replace(aim, load=Decimal(0), load_kind="body", reps=max(1, aim.reps // 2)),)
    loading = Loading(exercise, equipment, aim.unit, Body())
    sets: list[TrainingSet] = []
    for share, reps in RAMP if to_kg(aim.load, aim.unit) >= _HEAVY_KG else RAMP[:2]:
        load = loading.scaled(Load(aim.load, aim.load_kind), share).amount
        if load < aim.load and all(load > each.load for each in sets):
            sets.append(replace(aim, load=load, reps=reps))
    return tuple(sets)
