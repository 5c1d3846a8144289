"""What our engine is held against: two plain rules, and detectors that know the true gain and noise.

Each takes the index of all exposures (logs) and returns a score per exposure; an alarm is a score above a
threshold, for the plain rules above 0. The two that know the truth are told the gain, the noise and what
comes after the gain; `start_known` says whether the true strength at the first exposure is told too.
"""

import math
from collections.abc import Sequence
from itertools import accumulate, pairwise

from tests.bench.lifters import Truth

QUANTUM = 0.026
"""One rep is worth about so much of the estimated 1RM; whole reps are rounded down by half of it."""


def no_new_best(index: Sequence[float]) -> list[float]:
    """Score "three exposures without a new best"."""
    scores, best, since = [], -math.inf, 0
    for value in index:
        since = 0 if value > best + 1e-9 else since + 1
        best = max(best, value)
        scores.append(since - 2.5)
    return scores


def not_above_last(index: Sequence[float]) -> list[float]:
    """Score "three in a row not above the last"."""
    scores, since = [-2.5], 0
    for earlier, value in pairwise(index):
        since = 0 if value > earlier + 1e-9 else since + 1
        scores.append(since - 2.5)
    return scores


def noise_of(truth: Truth) -> float:
    """Return the noise of the index: that of the day and that of whole reps, uniform over one rep's worth."""
    return math.sqrt(truth.noise**2 + QUANTUM**2 / 12)


def likelihood_ratio(index: Sequence[float], truth: Truth, start: float | None) -> list[float]:
    """Score the greatest log likelihood ratio of a gain that ended at any exposure to one that never did.

    `start` is the true index at the first exposure; None where it is not told, and is integrated out.
    """
    noise, turn = noise_of(truth), truth.after - truth.gain
    left = [
        value - truth.gain * at - (0.0 if start is None else start - QUANTUM / 2)
        for at, value in enumerate(index)
    ]
    scores = [0.0]
    for last in range(1, len(left)):
        mean = sum(left[: last + 1]) / (last + 1) if start is None else 0.0
        best, after, product = -math.inf, 0.0, 0.0
        for steps in range(1, last + 1):
            # One end earlier, each exposure after it lies a step further from the line.
            after += left[last + 1 - steps] - mean
            product += after
            square = steps * (steps + 1) * (2 * steps + 1) / 6
            rise = steps * (steps + 1) / 2
            free = square - (rise * rise / (last + 1) if start is None else 0.0)
            best = max(best, turn * (product - turn * free / 2) / noise**2)
        scores.append(best)
    return scores


def tabular_cusum(values: Sequence[float], target: float, slack: float) -> tuple[list[float], list[float]]:
    """Return the upper and lower sums of the tabular CUSUM (Montgomery & Runger, 16-4)."""

    def one_sided(sign: int) -> list[float]:
        steps = (sign * (value - target) - slack for value in values)
        return list(accumulate(steps, lambda so_far, step: max(0.0, so_far + step), initial=0.0))[1:]

    return one_sided(1), one_sided(-1)


def cusum(index: Sequence[float], truth: Truth, start: float) -> list[float]:
    """Score the lower CUSUM of what is left of the index after the true gain, with half a deviation slack."""
    left = [value - truth.gain * at - start + QUANTUM / 2 for at, value in enumerate(index)]
    noise = noise_of(truth)
    return tabular_cusum([each / noise for each in left], 0.0, 0.5)[1]
