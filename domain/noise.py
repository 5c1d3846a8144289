"""A bad day, or a wonderful one, held to what a day can be off, so that no single one decides.

The shape that fits best is taken, and how far the exposures lie about it; what lies further off than
`MOST_OFF` of that is moved to there. The last exposure is held against what those before it let expect, and
more closely where it is low, since nothing after it can tell a bad day from an end of the gain: after an
exposure that was as expected it waits for the next one to bear it out. The numbers are the project's own
rule.
"""

import math
from statistics import median

from domain.gain_model import NoisePrior, Sums, sums_of

Parts = list[list[float]]

MOST_OFF = 2.0
"""Standard deviations. Of days with normal noise 1 in 22 lies further off, and loses little."""
MOST_LAST_LOW = 1.5
"""The same, for a last exposure that is low."""
_TO_DEVIATION = 1.4826
"""What makes a median of distances the standard deviation of a normal distribution."""


def hold_bad_days(parts: Parts, prior: NoisePrior) -> tuple[Parts, Sums]:
    """Return the index with bad days moved nearer, and its sums."""
    parts = _hold_last(parts, prior)
    sums = sums_of(parts)
    if sums.freedom < 2:
        return parts, sums
    fitted, deviation, _ = _fit(parts, sums, prior)
    most = MOST_OFF * deviation
    held = [
        [
            value if fit - most <= value <= fit + most else fit - most if value < fit else fit + most
            for value, fit in zip(part, fits, strict=True)
        ]
        for part, fits in zip(parts, fitted, strict=True)
    ]
    return (parts, sums) if held == parts else (held, sums_of(held))


def _hold_last(parts: Parts, prior: NoisePrior) -> Parts:
    """Return the parts without a last exposure that alone is low; after a low one it is moved nearer."""
    *earlier, last = parts
    before, value = last[:-1], last[-1]
    if len(before) < 3 or value >= median(before[-3:]):
        return parts
    known = [*earlier, before]
    fitted, deviation, expected = _fit(known, sums_of(known), prior)
    lowest = expected - MOST_LAST_LOW * deviation
    if value >= lowest:
        return parts
    alone = before[-1] > fitted[-1][-1] - deviation
    return known if alone else [*earlier, [*before, lowest]]


def _fit(parts: Parts, sums: Sums, prior: NoisePrior) -> tuple[Parts, float, float]:
    """Return the best shape, the deviation of a day about it, and what the next exposure would be."""
    fall, tau, gain = sums.best_shape()
    exposures = sums.freedom + len(parts)
    shape = [gain * step for step in range(tau)]
    shape += [gain * tau + fall * step for step in range(exposures - tau)]
    fitted: Parts = []
    distances: list[float] = []
    at, level = 0, 0.0
    for part in parts:
        rises = shape[at : at + len(part)]
        left = [value - rise for value, rise in zip(part, rises, strict=True)]
        level = median(left)
        fitted.append([level + rise for rise in rises])
        distances += [abs(each - level) for each in left]
        at += len(part)
    own = (_TO_DEVIATION * median(distances)) ** 2
    deviation = math.sqrt((2 * prior.scale + sums.freedom * own) / (2 * prior.shape + sums.freedom))
    goes_on = tau == at - 1
    return fitted, deviation, level + (gain * at if goes_on else gain * tau + fall * (at - tau))
