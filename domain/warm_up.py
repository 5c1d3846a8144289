"""A short ramp of lighter sets up to the first hard one. Common practice, no source.

A few easy sets, fewer reps the nearer the load comes: half of it for eight, seven tenths for five, and where
the load is a heavy one, 85% for two. A plan that is read between two sets must stay short, so it says a ramp
only where one is worth its time: before what is heavy, and clearly heavier than all that was done with that
part of the body before it. In a pair without rest between, both are warmed up before the first hard set, the
second first.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from domain.comparison import NOMINAL_BODY_KG, Body
from domain.equipment import Equipment
from domain.exercises import Exercise, Region, describe
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
WORTH_KG = Decimal(30)
"""What moves less than this, both hands together, needs no ramp in the plan. The project's own rule."""

AGAIN_FROM = Decimal("1.2")
"""What is warm needs another ramp only for a fifth more than it has moved. The project's own rule too."""

Ramp = tuple[TrainingSet, ...]
"""The warm-up sets of one exercise, lightest first."""


@dataclass(frozen=True, slots=True)
class ToDo:
    """An exercise still to be done: its aim, None where there is none, and whether no rest follows it."""

    aim: TrainingSet | None
    into_next: bool = False
    begun: bool = False
    """Whether a set of it is done already, so that it is warm."""


def ramps(
    to_do: Sequence[ToDo],
    equipment: Equipment,
    done: Sequence[TrainingSet] = (),
    *,
    every: bool = False,
) -> tuple[tuple[Ramp, ...], ...]:
    """Return for each exercise `to_do`, in order, the ramps to do before it; most have none.

    Those of a pair stand with its first exercise, the last of the pair first. `done` are the sets that have
    warmed the body up today. `every`: all ramps that there are, whether worth their time or not.
    """
    warm: dict[Region, Decimal] = {}
    for one in done:
        _warms(warm, one)
    found: list[tuple[Ramp, ...]] = []
    for pair in _without_rest(to_do):
        is_worth = every or any(each.aim and _is_worth(each.aim, warm) for each in pair)
        before = (
            warm_up(each.aim, describe(each.aim.exercise), equipment)
            for each in reversed(pair)
            if is_worth and each.aim is not None and not each.begun
        )
        found += [tuple(ramp for ramp in before if ramp), *(() for _ in pair[1:])]
        for each in pair:
            if each.aim is not None:
                _warms(warm, each.aim)
    return tuple(found)


def _without_rest(to_do: Sequence[ToDo]) -> list[list[ToDo]]:
    """Return the exercises in groups: of those that follow each other without rest, all in one."""
    groups: list[list[ToDo]] = []
    goes_on = False
    for each in to_do:
        if goes_on:
            groups[-1].append(each)
        else:
            groups.append([each])
        goes_on = each.into_next
    return groups


def _is_worth(aim: TrainingSet, warm: Mapping[Region, Decimal]) -> bool:
    moved = _moved_kg(aim)
    return moved >= WORTH_KG and moved >= AGAIN_FROM * warm.get(describe(aim.exercise).region, Decimal(0))


def _warms(warm: dict[Region, Decimal], done: TrainingSet) -> None:
    """Count a set with what its part of the body has moved; a static hold moves nothing."""
    if done.seconds is None:
        region = describe(done.exercise).region
        warm[region] = max(warm.get(region, Decimal(0)), _moved_kg(done))


def _moved_kg(one: TrainingSet) -> Decimal:
    """Return about what is moved: both hands together, and with a nominal body mass where the body is."""
    share = describe(one.exercise).body_share or Decimal(0)
    body = share * NOMINAL_BODY_KG
    match one.load_kind:
        case "each":
            return 2 * one.kg
        case "assist":
            return max(Decimal(0), body - one.kg)
        case "added" | "body":
            return body + one.kg
        case "total":
            return one.kg


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
