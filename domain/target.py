"""What to aim for next time in one exercise of one workout, or why there is nothing to aim for yet.

The sheet goes first: a hold because of pain, a load reckoned from another exercise, the ladder from
lowering-only to full reps. Then a deload or time away. The rest is double progression
(`domain.progression`), with loads that exist (`domain.loading`).
"""

import math
from dataclasses import dataclass, replace
from decimal import Decimal

from domain.comparison import Body, best_of
from domain.equipment import Equipment
from domain.exercises import Exercise
from domain.exposure import Exposure
from domain.layoff import AFTER_ILLNESS, share_after
from domain.loading import Load, Loading
from domain.programme import Ladder, Prescription, RelativeLoad
from domain.progression import Aim, aim_at, double_progression, more_here, raise_back
from domain.sets import LoadKind, TrainingSet
from domain.target_reasons import (
    DownTheLadder,
    Eased,
    FirstTime,
    FirstWithBody,
    Held,
    NoTargetReason,
    OneMore,
    OtherNotDone,
    Relative,
    TargetReason,
    UpTheLadder,
)
from domain.units import Unit, convert


@dataclass(frozen=True, slots=True)
class Target:
    """What to aim for: `reps`, or `seconds` of a hold, with `load` counted as `load_kind` says.

    `expected` is how many are to be expected at a new load, rounded down, so that nobody is surprised by
    fewer; None at a load already done and where no tested relation tells.
    """

    exercise: str
    load: Decimal
    unit: Unit
    load_kind: LoadKind
    reps: int | None
    seconds: int | None
    lowering_only: bool
    reason: TargetReason
    expected: int | None = None

    def as_set(self) -> TrainingSet:
        """Return it as a set without a day."""
        return TrainingSet(
            self.exercise, self.load, self.unit, self.load_kind, self.reps, self.seconds, self.lowering_only
        )


@dataclass(frozen=True, slots=True)
class NoTarget:
    """Nothing can be aimed for, and why."""

    exercise: str
    reason: NoTargetReason


def next_target(
    prescription: Prescription,
    history: tuple[Exposure, ...],
    *,
    unit: Unit,
    equipment: Equipment,
    exercise: Exercise,
    body_mass_kg: Decimal | None = None,
    last_of_other: TrainingSet | None = None,
    held: bool = False,
    easing: Decimal | None = None,
    days_away: int = 0,
    ill: bool = False,
    back_to: TrainingSet | None = None,
) -> Target | NoTarget:
    """Return what to aim for in `prescription` after `history`, or why nothing can be aimed for.

    `history` holds exposures of this exercise in this workout, oldest first. `exercise` is what the catalogue
    says of it. `last_of_other` is the last set of the exercise that the load is reckoned from. `held`: on
    hold because of pain. `easing` is the share of the last load (0 to 1) that a deload asks for, `days_away`
    how long the client has been away from training since the last exposure, `ill` whether because of an
    illness; the lowest load of all holds. `back_to` is what is being built back to after such a break.
    """
    name = prescription.exercise
    if held:
        return NoTarget(name, Held())
    loading = Loading(
        exercise,
        equipment,
        unit,
        Body(body_mass_kg, exercise.body_share),
        reserve=prescription.stop_short or 0,
    )
    is_hold = prescription.range.of == "seconds"
    past = tuple(
        each
        for each in history
        if each.is_hold == is_hold
        and (prescription.ladder is not None or each.lowering_only == prescription.lowering_only)
    )
    eased = easing_from(easing, days_away, ill=ill)

    if prescription.load_from is not None:
        if last_of_other is None:
            return NoTarget(name, OtherNotDone(prescription.load_from.exercise))
        aim = _relative(prescription.load_from, last_of_other, past, prescription, loading)
        if eased is not None:
            aim = _lightened(replace(aim, amount=min(aim.amount, prescription.range.middle)), eased, loading)
        return _target(prescription, aim, unit)
    if not past:
        return _first_time(prescription, unit)
    if eased is not None:
        aim = _eased(past[-1], eased, prescription, loading)
        return _target(prescription, aim, unit, lowering_only=past[-1].lowering_only)
    if prescription.ladder is not None:
        rung = _on_the_ladder(prescription.ladder, past, loading)
        if rung is not None:
            aim, lowering_only = rung
            return _target(prescription, aim, unit, lowering_only=lowering_only)
        past = tuple(each for each in past if not each.lowering_only)
    back = None if back_to is None else raise_back(past[-1], back_to, prescription, loading)
    if back is not None:
        return _target(prescription, back, unit)
    return _target(prescription, double_progression(past, prescription, loading), unit)


def _target(prescription: Prescription, aim: Aim, unit: Unit, *, lowering_only: bool | None = None) -> Target:
    is_hold = prescription.range.of == "seconds"
    return Target(
        exercise=prescription.exercise,
        load=aim.load.amount,
        unit=unit,
        load_kind=aim.load.kind,
        reps=None if is_hold else aim.amount,
        seconds=aim.amount if is_hold else None,
        lowering_only=prescription.lowering_only if lowering_only is None else lowering_only,
        reason=aim.reason,
        expected=aim.expected,
    )


def _first_time(prescription: Prescription, unit: Unit) -> Target | NoTarget:
    if prescription.counted not in ("body", "added"):
        return NoTarget(prescription.exercise, FirstTime())
    aim = Aim(Load(Decimal(0), "body"), prescription.range.low, FirstWithBody())
    return _target(prescription, aim, unit)


def _relative(
    rule: RelativeLoad,
    other: TrainingSet,
    past: tuple[Exposure, ...],
    prescription: Prescription,
    loading: Loading,
) -> Aim:
    """Return the load that the sheet reckons from another exercise; at the same load, more than last time."""
    other_load = convert(other.load, other.unit, loading.unit)
    difference = convert(rule.difference.amount, rule.difference.unit, loading.unit)
    wanted = other_load + difference if rule.side == "above" else max(Decimal(0), other_load - difference)
    load = loading.nearest(Load(wanted, prescription.counted))
    reason = Relative(rule.exercise, other_load)
    if not past:
        return Aim(load, prescription.range.low, reason)
    best = best_of(past[-1].counting, loading.body)
    if loading.of(best) == load:
        aimed = max(prescription.range.low, more_here(best, prescription.range.high))
        return Aim(load, aimed, reason)
    amount, expected = aim_at(best, load, prescription, loading)
    return Aim(load, amount, reason, expected)


def easing_from(asked: Decimal | None, days_away: int, *, ill: bool) -> Eased | None:
    """Return the lowest share of the load: of the one asked for, and of those that a break calls for.

    Where there is none, no target is eased.
    """
    after = share_after(days_away)
    shares = [
        Eased(asked) if asked is not None and asked < 1 else None,
        Eased(AFTER_ILLNESS, after_illness=True) if ill else None,
        None if after is None else Eased(after, days_away, after_illness=ill),
    ]
    return min(filter(None, shares), key=lambda each: each.factor, default=None)


def _eased(last: Exposure, easing: Eased, prescription: Prescription, loading: Loading) -> Aim:
    """Return a lighter load than the last, for the middle of the range; fewer reps where there is none, as of
    the body alone and of the empty bar."""
    best = best_of(last.counting, loading.body)
    load = loading.of(best)
    lightened = _lightened(Aim(load, prescription.range.middle, easing), easing, loading)
    if lightened.load == load:
        return Aim(load, max(1, math.floor(best.amount * easing.factor)), easing)
    return lightened


def _lightened(aim: Aim, easing: Eased, loading: Loading) -> Aim:
    """Return the aim with its load at most the share of what it was; the body alone cannot be lightened."""
    if aim.load.kind == "body":
        return aim
    return Aim(loading.scaled(aim.load, easing.factor), aim.amount, easing)


def _on_the_ladder(ladder: Ladder, past: tuple[Exposure, ...], loading: Loading) -> tuple[Aim, bool] | None:
    """Return the aim on the ladder, and whether it is lowering-only; None where the full reps are enough."""
    best = best_of(past[-1].counting, loading.body)
    here = loading.of(best)
    if best.lowering_only:
        if best.amount >= ladder.up_to:
            return Aim(Load(Decimal(0), "body"), ladder.below, UpTheLadder(best.amount, ladder.up_to)), False
        return Aim(here, best.amount + 1, OneMore(best.amount)), True
    if best.amount >= ladder.below:
        return None
    lowered = [sets for each in past if (sets := [one.amount for one in each.sets if one.lowering_only])]
    amount = min(max(lowered[-1]) + 1, ladder.up_to) if lowered else (ladder.up_to + 1) // 2
    return Aim(Load(Decimal(0), "body"), amount, DownTheLadder(best.amount, ladder.below)), True
