"""Whether series of numbers rise: Kendall's trend test over one or several series, and Theil-Sen slopes.

Mann 1945 and Kendall 1975 for one series; over several it is the seasonal test of Hirsch, Slack & Smith 1982,
called regional by Helsel & Frans 2006 (Environ Sci Technol 40:4066-4073): S is the sum of the series' S.
For short series the null distribution is exact, ties included; for long ones normal with a continuity
correction and the usual variance for ties. The series are taken as independent of each other.
"""

import math
from collections import Counter
from dataclasses import dataclass
from functools import lru_cache
from statistics import NormalDist, median

from domain.sen import Series, sen_interval, slopes_of

_MOST_EXACT_PAIRS = 1000
"""Up to so many pairs of values over all series the null distribution is worked out exactly."""


@dataclass(frozen=True, slots=True)
class Trend:
    """Kendall's S over all series, its variance under no trend, and the chances of an S as great.

    `p_rising` is the chance of an S as far up, `p_two_sided` of one as far from 0 on either side. `slope` is
    the median of all slopes between two values of one series, per step, and lies in `interval` by 95%; None
    without a pair.
    """

    s: int
    variance: float
    p_rising: float
    p_two_sided: float
    slope: float | None
    interval: tuple[float, float] | None


def trend(series: tuple[Series, ...]) -> Trend:
    """Test several series, each in order and evenly spaced, for a common trend."""
    s = sum(kendall_s(each) for each in series)
    variance = sum(kendall_variance(each) for each in series)
    ties = tuple(sorted(_ties(each) for each in series))
    if sum(_pairs(each) for each in ties) <= _MOST_EXACT_PAIRS:
        at_least, as_far = _exact(s, ties)
    else:
        at_least, as_far = normal_p(s, variance)
    slopes = slopes_of(series)
    slope = median(slopes) if slopes else None
    return Trend(s, variance, at_least, as_far, slope, sen_interval(slopes, variance))


def kendall_s(values: Series) -> int:
    """Return the pairs that rise less the pairs that fall."""
    return sum(
        (later > earlier) - (later < earlier)
        for at, earlier in enumerate(values)
        for later in values[at + 1 :]
    )


def kendall_variance(values: Series) -> float:
    """Return the variance of S under no trend, corrected for ties."""

    def of(n: int) -> int:
        return n * (n - 1) * (2 * n + 5)

    return (of(len(values)) - sum(of(size) for size in _ties(values))) / 18


def normal_p(s: int, variance: float) -> tuple[float, float]:
    """Return P(S >= s) and P(|S| >= |s|) by the normal distribution, with the usual step of 1 towards 0."""
    z = (s - math.copysign(1, s)) / math.sqrt(variance) if s and variance else 0.0
    return NormalDist().cdf(-z), min(1.0, 2 * NormalDist().cdf(-abs(z)))


def _ties(values: Series) -> tuple[int, ...]:
    """Return how often each different value comes, ascending."""
    return tuple(sorted(Counter(values).values()))


def _pairs(ties: tuple[int, ...]) -> int:
    """Return the pairs of values that are not tied: the greatest S there can be."""
    return (sum(ties) ** 2 - sum(size**2 for size in ties)) // 2


def _exact(s: int, ties: tuple[tuple[int, ...], ...]) -> tuple[float, float]:
    """Return P(S >= s) and P(|S| >= |s|) where every order of each series' values is as likely."""
    ways = [1]
    for each in ties:
        ways = _convolve(ways, _inversions(each))
    top = len(ways) - 1
    total = sum(ways)
    # A series with i inversions has S = top - 2 i, and so have all of them together.
    at_least = sum(ways[: (top - s) // 2 + 1])
    as_far = sum(count for inversions, count in enumerate(ways) if abs(top - 2 * inversions) >= abs(s))
    return at_least / total, as_far / total


@lru_cache(maxsize=512)
def _inversions(ties: tuple[int, ...]) -> tuple[int, ...]:
    """Return in how many orders of these values there are 0, 1, 2, … inversions.

    The counts are the coefficients of the q-multinomial n!_q / (t1!_q t2!_q …) (MacMahon); without ties those
    of the q-factorial, the Mahonian numbers. Built up group by group from q-binomials.
    """
    ways, placed = [1], 0
    for size in ties:
        for step in range(1, size + 1):
            ways = _divide(_times_one_less(ways, placed + step), step)
        placed += size
    return tuple(ways)


def _times_one_less(ways: list[int], power: int) -> list[int]:
    """Multiply a polynomial by (1 - q^power)."""
    product = [*ways, *[0] * power]
    for at, count in enumerate(ways):
        product[at + power] -= count
    return product


def _divide(ways: list[int], power: int) -> list[int]:
    """Divide a polynomial by (1 - q^power), which it is a multiple of."""
    quotient = list(ways)
    for at in range(power, len(quotient)):
        quotient[at] += quotient[at - power]
    return quotient[: len(ways) - power]


def _convolve(left: list[int], right: tuple[int, ...]) -> list[int]:
    product = [0] * (len(left) + len(right) - 1)
    for at, count in enumerate(left):
        for further, other in enumerate(right):
            product[at + further] += count * other
    return product
