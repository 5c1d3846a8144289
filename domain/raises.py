"""The load to go up to: by how much, and from how many reps (seconds) on.

The raise is the smallest step that exists within 2 to 10% of what is moved (American College of Sports
Medicine, Progression Models in Resistance Training for Healthy Adults, Med Sci Sports Exerc 2009;41:687-708);
for the lower body 4% at least, since it is usually raised by about twice as much as the upper (the NSCA's
table of load increases, from memory). Where the next load is a greater step, more reps come first: so many
that the bottom of the range is to be expected at it.
"""

from domain.exercises import Region
from domain.loading import Load, Loading
from domain.programme import Prescription

LEAST_RAISE: dict[Region, float] = {"upper": 0.02, "trunk": 0.02, "lower": 0.04}
MOST_RAISE = 0.10
_ROUNDING = 1e-9


def smallest_raise(here: Load, loading: Loading) -> Load | None:
    """Return the smallest heavier load within 2 to 10% (4 to 10% for the lower body) of what is moved.

    Where none lies there, the greatest below it. None where even the next load is more than 10% heavier.
    """
    least = LEAST_RAISE[loading.exercise.region]
    below = None
    for load in loading.heavier(here):
        step = loading.step(here, load)
        if step > MOST_RAISE + _ROUNDING:
            return below
        if step >= least - _ROUNDING:
            return load
        below = load
    return below


def next_up(here: Load, ready: int, prescription: Prescription, loading: Loading) -> tuple[Load, int]:
    """Return the load to go up to, of which there is one, and how many at this one it takes.

    It is the smallest raise, from `ready` on; where none lies within 10%, the next load that exists.
    """
    raised = smallest_raise(here, loading)
    if raised is not None:
        return raised, ready
    load = next(loading.heavier(here))
    return load, max(ready + 1, loading.amount_needed(here, load, prescription.range))
