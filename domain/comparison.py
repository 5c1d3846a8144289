"""One set against one set: which is the better, by which rule and on which numbers.

1. The same load: reps (seconds) decide.
2. One set has the higher load and at least as many reps, or the same the other way round: that settles it.
3. The higher load with fewer reps: full reps by estimated 1RM, where less than one rep is worth is `level`;
   holds by published endurance times, where every joint's model must say the same even if a tenth of the
   time is left out of account; lowering-only reps by nothing, since no published relation is known.
4. Outside the range for which the relation was tested nothing is claimed, unless the set would settle it
   even if it counted for no more (no less) than the nearest tested number.

Each reason names its `rule`, so that it can be told apart once it has been turned into plain facts.
Swapping the two sets swaps `beat` and `below`, and more reps at the same load never worsen the result.
"""

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from domain.endurance import GENERAL, models_for, strength_ratios, supported_seconds
from domain.exercises import Joint
from domain.sets import FAMILY, LoadKind, TrainingSet
from domain.strength import Equation, one_rep_max, tested_reps

Result = Literal["beat", "level", "below", "first", "not comparable"]

_BETWEEN_UNITS = Decimal("0.0025")
"""Loads said in different units are the same if they differ by less than a disc may be off: 0.25% (IPF)."""
_ROUNDING = Decimal("1e-9")
NOMINAL_BODY_KG = Decimal(70)
"""Stands in for a body mass that is not known, to order loads or choose a step; never to claim a strength."""
_SECONDS_NOISE = 1.1
"""Between holds of different loads a tenth of the time decides nothing, as a rep does not: a project rule."""


@dataclass(frozen=True, slots=True)
class FirstOfKind:
    """There is nothing of this kind to compare with."""

    rule: Literal["first of its kind"] = "first of its kind"


@dataclass(frozen=True, slots=True)
class SameLoad:
    """At the same load, so many more (fewer, where negative) reps or seconds."""

    difference: int
    rule: Literal["same load"] = "same load"


@dataclass(frozen=True, slots=True)
class LoadAndAmount:
    """More load and no fewer reps or seconds; or the reverse, with differences of 0 and below."""

    load_difference_kg: Decimal
    difference: int
    rule: Literal["load and amount"] = "load and amount"


@dataclass(frozen=True, slots=True)
class ByEstimate:
    """Different loads compared by estimated 1RM; one rep is worth `one_rep_kg` at the heavier load.

    Reps outside the tested range are taken as the nearest inside it.
    """

    equation: Equation
    now_kg: float
    before_kg: float
    one_rep_kg: float
    rule: Literal["by estimated 1RM"] = "by estimated 1RM"


@dataclass(frozen=True, slots=True)
class ByEndurance:
    """Holds of different loads: strength now over strength before, by the least and the most kind joint."""

    least_ratio: float
    greatest_ratio: float
    rule: Literal["by endurance"] = "by endurance"


@dataclass(frozen=True, slots=True)
class UpTheLadder:
    """Full reps, where the last time were lowering-only reps."""

    reps: int
    rule: Literal["up the ladder"] = "up the ladder"


@dataclass(frozen=True, slots=True)
class OutsideTested:
    """The relation between load and reps (seconds) was tested from `lowest` to `highest` only."""

    lowest: int
    highest: int
    rule: Literal["outside the tested range"] = "outside the tested range"


@dataclass(frozen=True, slots=True)
class CountedDifferently:
    """The loads are counted in two ways (per hand and in total, say), so neither is the heavier."""

    now: LoadKind
    before: LoadKind
    rule: Literal["counted differently"] = "counted differently"


@dataclass(frozen=True, slots=True)
class BodyMassUnknown:
    """More load and fewer reps, or the reverse, in an exercise where the body is part of the load."""

    rule: Literal["body mass unknown"] = "body mass unknown"


@dataclass(frozen=True, slots=True)
class NoRelation:
    """Different loads and reps of lowering-only work: no published relation between them is known."""

    rule: Literal["no known relation"] = "no known relation"


@dataclass(frozen=True, slots=True)
class NoRep:
    """Not one full rep was done."""

    rule: Literal["no rep"] = "no rep"


Reason = (
    FirstOfKind
    | SameLoad
    | LoadAndAmount
    | ByEstimate
    | ByEndurance
    | UpTheLadder
    | OutsideTested
    | CountedDifferently
    | BodyMassUnknown
    | NoRelation
    | NoRep
)


@dataclass(frozen=True, slots=True)
class Comparison:
    """One set against one set."""

    result: Result
    now: TrainingSet
    before: TrainingSet
    reason: Reason


@dataclass(frozen=True, slots=True)
class Body:
    """What is known of a client's body in an exercise: its mass, the share moved, the joints loaded."""

    mass_kg: Decimal | None = None
    share: Decimal | None = None
    joints: tuple[Joint, ...] = ()

    def system_kg(self, one: TrainingSet) -> Decimal | None:
        """Return what a set really moves, with the body's share; None where that is not known."""
        match one.load_kind:
            case "total" | "each":
                return one.kg
            case _:
                if self.mass_kg is None or self.share is None:
                    return None
                system = self.mass_kg * self.share + extra_kg(one)
                return system if system > 0 else None


def extra_kg(one: TrainingSet) -> Decimal:
    """Return the load in kilograms with help counted as negative: body weight is 0, 20 kg of help is -20."""
    return -one.kg if one.load_kind == "assist" else one.kg


def strength_shown(one: TrainingSet, body: Body) -> float:
    """Return a number that orders sets counted in one way, whatever their loads and reps; 0 for no rep.

    The estimated 1RM (Epley) for reps, load times seconds to the pooled endurance exponent for holds. It is
    taken outside the tested ranges too, and with a nominal body where the client's is not known: good enough
    to rank, not to claim a strength.
    """
    amount = one.amount
    if amount == 0:
        return 0.0
    system = body.system_kg(one)
    if system is None:
        system = max(Decimal(1), NOMINAL_BODY_KG + extra_kg(one))
    if one.seconds is not None:
        return float(system) * math.pow(one.seconds, -1 / GENERAL.exponent)
    return float(system) * (1 + amount / 30)


def best_of(sets: Iterable[TrainingSet], body: Body) -> TrainingSet:
    """Return the set that shows the most strength; of equals the one with more reps, then the first."""
    several = sets if isinstance(sets, tuple) else tuple(sets)
    if len(several) == 1:
        return several[0]
    return max(several, key=lambda one: (strength_shown(one, body), one.amount))


def compare(now: TrainingSet, before: TrainingSet, body: Body) -> Comparison:
    """Compare one set with one set: see the rules at the top."""

    def said(result: Result, reason: Reason) -> Comparison:
        return Comparison(result, now, before, reason)

    if FAMILY[now.load_kind] != FAMILY[before.load_kind]:
        return said("not comparable", CountedDifferently(now.load_kind, before.load_kind))
    if now.amount == before.amount == 0:
        return said("level", NoRep())
    difference = now.amount - before.amount
    if _same_load(now, before):
        return said(_sign(difference), SameLoad(difference))
    heavier = extra_kg(now) - extra_kg(before)
    if heavier > 0 <= difference or heavier < 0 >= difference:
        return said(_sign(heavier), LoadAndAmount(heavier, difference))
    if now.seconds is not None:
        return said(*_by_endurance(now, before, body))
    if now.lowering_only:
        return said("not comparable", NoRelation())
    return said(*_by_estimate(now, before, body))


def _by_estimate(now: TrainingSet, before: TrainingSet, body: Body) -> tuple[Result, Reason]:
    now_kg, before_kg = body.system_kg(now), body.system_kg(before)
    if now_kg is None or before_kg is None or not (now_kg > 0 and before_kg > 0):
        return "not comparable", BodyMassUnknown()
    equation: Equation = "epley"
    tested = tested_reps(equation)

    def decide(reps_now: int, reps_before: int) -> tuple[Result, Reason]:
        maximum_now = one_rep_max(now_kg, reps_now, equation)
        maximum_before = one_rep_max(before_kg, reps_before, equation)
        heavier_kg, reps = max((now_kg, reps_now), (before_kg, reps_before))
        one_rep = one_rep_max(heavier_kg, reps + 1, equation) - one_rep_max(heavier_kg, reps, equation)
        gained = maximum_now - maximum_before
        # A gain of exactly one rep's worth must not turn on how a float was rounded.
        result: Result = "level" if abs(gained) < one_rep * (1 - 1e-9) else _sign(gained)
        return result, ByEstimate(equation, maximum_now, maximum_before, one_rep)

    return _inside(now.amount, before.amount, tested[0], tested[-1], decide)


def _by_endurance(now: TrainingSet, before: TrainingSet, body: Body) -> tuple[Result, Reason]:
    now_kg, before_kg = body.system_kg(now), body.system_kg(before)
    if now_kg is None or before_kg is None or not (now_kg > 0 and before_kg > 0):
        return "not comparable", BodyMassUnknown()
    models = models_for(body.joints)

    def decide(seconds_now: int, seconds_before: int) -> tuple[Result, Reason]:
        load, seconds = float(now_kg / before_kg), seconds_now / seconds_before
        stronger = strength_ratios(load, seconds / _SECONDS_NOISE, models)[0] > 1
        weaker = strength_ratios(load, seconds * _SECONDS_NOISE, models)[1] < 1
        result: Result = "beat" if stronger else "below" if weaker else "level"
        return result, ByEndurance(*strength_ratios(load, seconds, models))

    return _inside(now.amount, before.amount, *supported_seconds(models), decide)


def _inside(
    now: int,
    before: int,
    lowest: int,
    highest: int,
    decide: Callable[[int, int], tuple[Result, Reason]],
) -> tuple[Result, Reason]:
    """Decide inside the tested range, and outside it only what holds whatever the true relation is.

    Fifteen reps prove at least what ten prove; a set cut short below the range at most what its end proves.
    """
    result, reason = decide(min(max(now, lowest), highest), min(max(before, lowest), highest))
    shown_too_weak = now > highest or before < lowest
    shown_too_strong = now < lowest or before > highest
    if (shown_too_weak and result != "beat") or (shown_too_strong and result != "below"):
        return "not comparable", OutsideTested(lowest, highest)
    return result, reason


def _same_load(now: TrainingSet, before: TrainingSet) -> bool:
    mine, theirs = extra_kg(now), extra_kg(before)
    tolerance = _ROUNDING if now.unit == before.unit else _BETWEEN_UNITS
    return abs(mine - theirs) <= tolerance * max(abs(mine), abs(theirs))


def _sign(difference: Decimal | float) -> Literal["beat", "level", "below"]:
    return "beat" if difference > 0 else "below" if difference < 0 else "level"
