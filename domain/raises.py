"""The load to go up to: by how much, and from how many reps (seconds) on.

The raise is the smallest step that exists within 2 to 10% of what is moved (American College of Sports
Medicine, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 2009;41:687-708);
for the lower body 4% at least, since it is usually raised by about twice as much as the upper (the NSCA's
table of load increases, from memory). Where the next load is a greater step, or where not even the bottom of
the range is to be expected at it, more reps come first: the position stand, too, adds load at one or two reps
over the number.
"""

from domain.exercises import Region
from domain.loading import Load, Loading
from domain.programme import Prescription

LEAST_RAISE: dict[Region, float] = {"upper": 0.02, "trunk": 0.02, "lower": 0.04}
MOST_RAISE = 0.10
_ROUNDING = 1e-9


def smallest_raise(here: Load, loading: Loading, least: float | None = None) -> Load | None:
    """Return the smallest heavier load within 2 to 10% (4 to 10% for the lower body) of what is moved.

    Where none lies there, the greatest below it. None where even the next load is more than 10% heavier.
    `least` is in place of the 2 or 4%.
    """
    least = LEAST_RAISE[loading.exercise.region] if least is None else least
    below = None
    for load in loading.heavier(here):
        step = loading.step(here, load)
        if step > MOST_RAISE + _ROUNDING:
            return below
        if step >= least - _ROUNDING:
            return load
        below = load
    return below


def next_up(
    here: Load, least: int, ready: int, prescription: Prescription, loading: Loading
) -> tuple[Load, int]:
    """Return the load to go up to, of which there is one, and how many at this one it takes.

    It is the smallest raise of the usual size; for the lower body a smaller one where after the usual one
    the range could not be kept; and the next load that exists where none lies within 10%.
    """
    usual = smallest_raise(here, loading)
    if usual is None:
        load = next(loading.heavier(here))
        return load, max(ready + 1, loading.amount_needed(here, load, prescription.range))
    until = max(ready, _needed(here, usual, prescription, loading))
    smaller = smallest_raise(here, loading, min(LEAST_RAISE.values()))
    if least >= until or smaller is None:
        return usual, until
    return smaller, max(ready, _needed(here, smaller, prescription, loading))


def _needed(here: Load, load: Load, prescription: Prescription, loading: Loading) -> int:
    """Return how many at this load let the range be kept at the next; 0 where that is not asked.

    Where the sheet itself says when to add load, or gives one number in place of a range, that is when; of
    lowering-only reps no relation between load and reps is known.
    """
    low, high = prescription.range.low, prescription.range.high
    if prescription.add_load is not None or prescription.lowering_only or low == high:
        return 0
    return loading.amount_needed(here, load, prescription.range)
