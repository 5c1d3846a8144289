"""Whether strength has risen over some rounds of a programme, over all exercises together.

A trend test over all exercises (`domain.trend`), so that no single one decides.
"""

import math
from dataclasses import dataclass

from domain.trend import trend

_MOST_LIKELY_CHANCE = 0.05
"""A rise counts as one where chance alone would show as much in fewer than 1 of 20 reviews."""


@dataclass(frozen=True, slots=True)
class Review:
    """Whether strength has risen over `rounds` of a rotation, over all exercises together.

    `p_value` is the chance of a rise like this where there is none (one-sided). `gain_per_round` is the
    Theil-Sen estimate as a fraction of strength (0.01 is 1%), which lies in `interval` by 95%.
    """

    risen: bool
    p_value: float
    gain_per_round: float
    rounds: int
    interval: tuple[float, float]


def review_of(series: tuple[tuple[float, ...], ...]) -> Review | None:
    """Look back over exercises, each the strength indices of its exposures, oldest first.

    None where no exercise has two exposures.
    """
    found = trend(tuple(each for each in series if len(each) > 1))
    if found.slope is None or found.interval is None:
        return None
    return Review(
        risen=found.s > 0 and found.p_rising < _MOST_LIKELY_CHANCE,
        p_value=found.p_rising,
        gain_per_round=math.expm1(found.slope),
        rounds=max(len(each) for each in series),
        interval=(math.expm1(found.interval[0]), math.expm1(found.interval[1])),
    )
