"""A gain an exposure with its interval: least squares with the noise as known beforehand and as seen.

With a flat prior for level and slope and an inverse-gamma prior for the noise variance, the slope has a
Student distribution about the least-squares one (Gelman et al., Bayesian Data Analysis, 14.2, from memory;
the tests hold it against scipy).
"""

import math
from collections.abc import Iterable
from dataclasses import dataclass

from domain.gain_model import NoisePrior, Sums, sums_of

SURE = 0.95
"""How sure an interval is to hold the gain."""
_NORMAL = 1.959963984540054
_NONE = 1e-9
"""So small a share is rounding alone."""


@dataclass(frozen=True, slots=True)
class Gain:
    """A gain per exposure as a fraction of strength (0.01 is 1%), and between what it lies by 95%."""

    estimate: float
    low: float
    high: float


def gain_over(sums: Sums, start: int, prior: NoisePrior) -> Gain | None:
    """Return the gain from the exposure `start` on; None where one level has fewer than two exposures.

    The noise is that about the line that fits from there on and a rise before it.
    """
    before = sums.uu[start]
    between = sums.tu[start] - before
    parting = sums.uu[-1] - sums.tu[start] - between
    if parting <= _NONE * sums.uu[-1]:
        return None
    until = sums.yu[start]
    since = sums.yu[-1] - until
    free = before * parting - between * between
    if start == 0 or free <= _NONE * before * parting:
        slope, spread = since / parting, parting
        left = sums.yy - slope * since
        fitted = 1
    else:
        slope = (since * before - until * between) / free
        rise = (until * parting - since * between) / free
        left = sums.yy - slope * since - rise * until
        spread = free / before
        fitted = 2
    return _with_interval(slope, left, spread, sums.freedom - fitted, prior)


def gain_until(parts: list[list[float]], end: int, prior: NoisePrior) -> Gain | None:
    """Return the gain up to the exposure `end`; None where that is one exposure of each part."""
    kept, at = [], 0
    for part in parts:
        if part[: end + 1 - at]:
            kept.append(part[: end + 1 - at])
        at += len(part)
        if at > end:
            break
    return gain_over(sums_of(kept), 0, prior)


def pooled(gains: Iterable[Gain | None]) -> Gain | None:
    """Return the common gain of several exercises, each weighing the more the surer it is; None for none.

    The usual mean by inverse variance; the intervals are taken as normal.
    """
    known = [(math.log1p(gain.estimate), _half(gain)) for gain in gains if gain is not None]
    if not known:
        return None
    total = sum(1 / half**2 for _, half in known)
    middle = sum(gain / half**2 for gain, half in known) / total
    return _gain(middle, 1 / math.sqrt(total))


def student_quantile(freedom: float) -> float:
    """Return the 97.5% point of Student's t (Abramowitz & Stegun 26.7.5); within 0.3% from 4 degrees on."""
    z = _NORMAL
    squared = z * z
    terms = (
        (squared + 1) * z / 4,
        ((5 * squared + 16) * squared + 3) * z / 96,
        (((3 * squared + 19) * squared + 17) * squared - 15) * z / 384,
        ((((79 * squared + 776) * squared + 1482) * squared - 1920) * squared - 945) * z / 92160,
    )
    return z + sum(term / freedom**power for power, term in enumerate(terms, start=1))


def _with_interval(slope: float, left: float, spread: float, freedom: int, prior: NoisePrior) -> Gain:
    shape = prior.shape + max(0, freedom) / 2
    variance = (prior.scale + max(0.0, left) / 2) / shape / spread
    off = student_quantile(2 * shape) * math.sqrt(variance)
    return _gain(slope, off)


def _gain(slope: float, off: float) -> Gain:
    return Gain(*(math.expm1(each) for each in (slope, slope - off, slope + off)))


def _half(gain: Gain) -> float:
    return (math.log1p(gain.high) - math.log1p(gain.low)) / 2
