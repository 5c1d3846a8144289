"""Theil-Sen's slope of one or several series, and the interval that Kendall's variance gives it.

Sen 1968 (J Am Stat Assoc 63:1379-1389): the slopes in order, as many of them left out at both ends as S would
pass by chance. Over several series all slopes are taken together and the variances of S added up, as in the
regional test.
"""

import math
from collections.abc import Sequence
from statistics import NormalDist, median

Series = tuple[float, ...]


def slopes_of(series: tuple[Series, ...]) -> list[float]:
    """Return the slopes per step between any two values of one series, ascending."""
    return sorted(
        (values[later] - values[earlier]) / (later - earlier)
        for values in series
        for earlier in range(len(values))
        for later in range(earlier + 1, len(values))
    )


def theil_sen(series: tuple[Series, ...]) -> float | None:
    """Return the median slope per step over all pairs of values of one series; None without a pair."""
    slopes = slopes_of(series)
    return median(slopes) if slopes else None


def sen_interval(slopes: Sequence[float], variance: float, sure: float = 0.95) -> tuple[float, float] | None:
    """Return between what the slope per step lies, `sure` (0 to 1) of the time; None without a slope.

    `slopes` are all of them, ascending, `variance` is that of S under no trend. With few values it is from
    the least to the greatest slope, and less sure than asked for.
    """
    if not slopes:
        return None
    off = NormalDist().inv_cdf((1 + sure) / 2) * math.sqrt(variance)
    low = max(0, round((len(slopes) - off) / 2) - 1)
    high = min(len(slopes) - 1, round((len(slopes) + off) / 2))
    return slopes[low], slopes[high]
