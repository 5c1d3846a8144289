"""Double progression: reps (seconds) up within the range, then load, and again; down where it is too much.

At or over the top of the range: more load, by the smallest step that will do (`domain.raises`), or more reps
first where that is too great. Inside the range: the same load and a little more. Under it twice running: a
load from which the middle of the range is to be expected. Far above it: the load for the middle, by 20% at
most. What stands in the sheet goes before all of these. The numbers without a source are the project's own
rules.
"""

import math
from dataclasses import dataclass, replace
from itertools import takewhile

from domain.comparison import best_of
from domain.exposure import Exposure
from domain.loading import Load, Loading
from domain.programme import Prescription
from domain.raises import MOST_RAISE, next_up, smallest_raise
from domain.sets import TrainingSet
from domain.target_reasons import (
    AddLoad,
    BackIntoRange,
    BuildBack,
    LowerLoad,
    MoreFirst,
    MuchTooLight,
    NothingHeavier,
    OneMore,
    OtherSets,
    TargetReason,
)
from domain.units import convert

MOST_CORRECTION = 0.20
"""The most that is added at once where a load proved much too light."""
MOST_OVER = 2
"""Where no load can be added, nobody is asked for more than so many times the top of the range."""
_FAR_ABOVE = 2
"""The position stand adds 2 to 10% for one or two reps above the range; more is a load too light."""
_HOLD_STEP = 0.10
"""A hold is lengthened by a tenth, as a rep more is about a tenth more work."""
_ROUNDING = 1e-9


@dataclass(frozen=True, slots=True)
class Aim:
    """A load, and how many reps or seconds with it. `expected` is rounded down, None where not known."""

    load: Load
    amount: int
    reason: TargetReason
    expected: int | None = None


def double_progression(past: tuple[Exposure, ...], prescription: Prescription, loading: Loading) -> Aim:
    """Return what to aim for after the exposures `past`, oldest first and of one kind; at least one."""
    best = best_of(past[-1].counting, loading.body)
    least = min(each.amount for each in _working_sets(past[-1], best, prescription.sets))
    ready = ready_at(prescription)
    if least >= ready:
        return _above(best, least, ready, prescription, loading)
    here = loading.of(best)
    if best.amount >= ready:
        return Aim(here, ready, OtherSets(least, ready))
    if best.amount >= prescription.range.low:
        return Aim(here, min(a_little_more(best), ready), OneMore(best.amount))
    return _below(past, best, prescription, loading)


def raise_back(
    last: Exposure, wanted: TrainingSet, prescription: Prescription, loading: Loading
) -> Aim | None:
    """Return the next step back up to the set `wanted` from before a break; None where there is none.

    What is being regained comes back faster than it came, and the aims on the way are no test: at the middle
    of the range the load goes up a step each time, at the top of it by up to 10%, but never above the old
    load. Where the sheet says by how much, or the last set was hard, it is double progression as ever.
    """
    best = best_of(last.counting, loading.body)
    here, there = loading.of(best), loading.of(wanted)
    rule = prescription.add_load
    is_hard = best.to_failure is True or best.rir == 0 or best.amount < prescription.range.middle
    if (
        best.lowering_only
        or best.seconds is not None
        or is_hard
        or (rule is not None and rule.by is not None)
    ):
        return None
    step = smallest_raise(here, loading)
    if step is None:
        return None
    most = MOST_RAISE if best.amount >= prescription.range.high else loading.step(here, step)
    most = min(most, loading.step(here, there)) + _ROUNDING
    within = list(takewhile(lambda load: loading.step(here, load) <= most, loading.heavier(here)))
    if not within:
        return None
    return Aim(
        within[-1],
        prescription.range.middle,
        BuildBack(best.amount, there.amount, _percent(here, within[-1], loading)),
    )


def ready_at(prescription: Prescription) -> int:
    """Return the reps or seconds at which load is added: the top of the range, or what the sheet says."""
    if prescription.add_load is None:
        return prescription.range.high
    return max(prescription.range.low, prescription.add_load.over + 1)


def a_little_more(done: TrainingSet) -> int:
    """Return one rep more, or for a hold a tenth more, rounded up to whole seconds."""
    return done.amount + (1 if done.seconds is None else max(1, math.ceil(done.amount * _HOLD_STEP)))


def more_here(done: TrainingSet, top: int) -> int:
    """Return a little more at a load that is to stay, and the same again past twice the top of the range."""
    return min(a_little_more(done), max(done.amount, MOST_OVER * top))


def aim_at(
    done: TrainingSet, load: Load, prescription: Prescription, loading: Loading
) -> tuple[int, int | None]:
    """Return what to aim for at another load, inside the range, and what is to be expected, where known.

    Of lowering-only reps no relation between load and reps is known: the bottom of the range.
    """
    low, high = prescription.range.low, prescription.range.high
    if done.lowering_only:
        return low, None
    whole = max(0, math.floor(loading.expected(done, load) + _ROUNDING))
    return min(max(whole, low), high), whole if loading.is_tested(done) else None


def _working_sets(exposure: Exposure, best: TrainingSet, sets: int) -> tuple[TrainingSet, ...]:
    """Return the prescribed sets at the load of the best one: lighter sets after them do not count."""
    same = tuple(
        each
        for each in exposure.counting
        if (each.load, each.unit, each.load_kind) == (best.load, best.unit, best.load_kind)
    )
    return same[:sets] if sets > 1 else (best,)


def _above(best: TrainingSet, least: int, ready: int, prescription: Prescription, loading: Loading) -> Aim:
    """Return the next load up, or more at this one where there is none or the step would be too great."""
    here = loading.of(best)
    rule = prescription.add_load
    following = next(loading.heavier(here), None)
    if following is None or (here.kind == "body" and rule is None):
        return Aim(here, more_here(best, ready), NothingHeavier(best.amount))
    if rule is not None and rule.by is not None:
        by = convert(rule.by.amount, rule.by.unit, loading.unit)
        return _raised_to(
            loading.raised_by(here, by) or following, best, ready, prescription, loading, by_sheet=True
        )
    if _is_far_above(least, max(prescription.range.high, ready), best):
        corrected = _corrected(best, prescription, loading)
        if corrected is not None:
            return corrected
    load, until = next_up(here, ready, prescription, loading)
    if least < until:
        reason = MoreFirst(best.amount, load.amount, _percent(here, load, loading), until, load.kind)
        return Aim(here, min(a_little_more(best), until), reason)
    return _raised_to(load, best, ready, prescription, loading)


def _is_far_above(least: int, top: int, best: TrainingSet) -> bool:
    """Whether the load is much too light; of lowering-only reps that cannot be said."""
    step = 1 if best.seconds is None else math.ceil(top * _HOLD_STEP)
    return least - top > _FAR_ABOVE * step and not best.lowering_only


def _raised_to(
    load: Load,
    best: TrainingSet,
    ready: int,
    prescription: Prescription,
    loading: Loading,
    *,
    by_sheet: bool = False,
) -> Aim:
    amount, expected = aim_at(best, load, prescription, loading)
    percent = _percent(loading.of(best), load, loading)
    return Aim(load, amount, AddLoad(best.amount, ready, percent, by_sheet), expected)


def _corrected(best: TrainingSet, prescription: Prescription, loading: Loading) -> Aim | None:
    """Return the load for the middle of the range, within the cap; None where that is no real raise."""
    here = loading.of(best)
    wanted = loading.for_amount(best, prescription.range.middle)
    highest = min(loading.step(here, wanted), MOST_CORRECTION) + _ROUNDING
    within = list(takewhile(lambda load: loading.step(here, load) <= highest, loading.heavier(here)))
    if not within:
        return None
    load = within[-1]
    amount, expected = aim_at(best, load, prescription, loading)
    capped = loading.step(here, wanted) > MOST_CORRECTION + _ROUNDING
    reason = MuchTooLight(best.amount, prescription.range.high, _percent(here, load, loading), capped)
    return Aim(load, amount, reason, expected)


def _below(
    past: tuple[Exposure, ...], best: TrainingSet, prescription: Prescription, loading: Loading
) -> Aim:
    """Return the same load once more, or after the second time running (or the first of all) a lower one.

    Whoever came down to a load that fits within that first time goes on from it.
    """
    low = prescription.range.low
    fitting = [each for each in past[-1].counting if each.amount >= low]
    if len(past) == 1 and fitting:
        found = replace(past[-1], sets=tuple(fitting))
        return double_progression((found,), prescription, loading)
    bests = [best_of(each.counting, loading.body) for each in past]
    running = next((at for at, each in enumerate(reversed(bests)) if each.amount >= low), len(bests))
    here = loading.of(best)
    if running > 1 or len(past) == 1:
        load = _lowered(here, best, prescription, loading)
        if load is not None:
            amount, expected = aim_at(best, load, prescription, loading)
            return Aim(
                load, min(amount, prescription.range.middle), LowerLoad(best.amount, low, running), expected
            )
    amount = min(a_little_more(best), low) if here.kind == "body" else low
    return Aim(here, amount, BackIntoRange(best.amount, low))


def _lowered(here: Load, best: TrainingSet, prescription: Prescription, loading: Loading) -> Load | None:
    """Return the load for the middle of the range; None where there is nothing lighter.

    A hold goes down by 20% at most, since the shortest ones lie outside the range of the endurance model; of
    lowering-only reps no relation is known, so it goes down a step.
    """
    if best.lowering_only:
        return loading.lighter(here)
    wanted = loading.for_amount(best, prescription.range.middle)
    if best.seconds is not None and loading.step(here, wanted) < -MOST_CORRECTION:
        wanted = here
        while (load := loading.lighter(wanted)) and loading.step(here, load) >= -MOST_CORRECTION - _ROUNDING:
            wanted = load
    return wanted if loading.step(here, wanted) < 0 else loading.lighter(here)


def _percent(here: Load, there: Load, loading: Loading) -> float | None:
    """Return the step in percent of what is moved; None where that is not really known."""
    return round(100 * loading.step(here, there), 1) if loading.knows(here) else None
