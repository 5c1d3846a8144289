"""Whether a client's exercises still gain, since when one no longer does, and how sure that is.

Each exercise is weighed by `domain.gain_model`. The client's other exercises say beforehand how great gains
and noise are likely to be. An exercise has stalled where the odds that its gain has ended are great enough:
the needed odds were found once by a seeded simulation (`tests/bench/stalls.py`), aiming at no more than 1 of
10 exercises that gain steadily being called stalled within 20 exposures. Alone no gain and noise went over 8%
of 400; with five others 2% gains with 3 and 4.2% noise came to 11% of 150, the rest stayed under 9%. They are
the project's own rule.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from domain.gain_odds import NOISE, Odds, Weighed, odds_of, weigh
from domain.slope import Gain, gain_over, gain_until
from domain.strength_series import Series

LEAST_EXPOSURES = 5
"""With fewer nothing is called a stall."""

_BASE, _PER_OTHER, _MOST_OTHERS = 0.1, 0.07, 5
_DIFFERENCE = 2.5
_QUICKNESS, _QUICKNESS_PER_OTHER, _USUAL_GAIN = 0.15, -0.09, 0.01
_NOISINESS, _USUAL_NOISE = 0.6, 0.03
"""What `_needed` reckons from, found by simulation with other seeds than it is measured with."""


@dataclass(frozen=True, slots=True)
class Standing:
    """How an exercise stands. Gains are per exposure, as fractions of strength.

    `gain` is the gain now: of all exposures, or where it has stalled since then; `before` the gain until
    then. `since` is the day of the last exposure that still gained, `ended` the chance (0 to 1) that the gain
    has ended. None where there is nothing to tell it from.
    """

    exposures: int
    stalled: bool = False
    declining: bool = False
    ended: float | None = None
    gain: Gain | None = None
    before: Gain | None = None
    since: date | None = None


def standings(series: Sequence[Series]) -> tuple[Standing, ...]:
    """Return how each of a client's exercises stands, in order."""
    known = {at: weigh(each) for at, each in enumerate(series) if len(each.points) > 1}
    return tuple(
        _standing(known[at], [known[other] for other in known if other != at])
        if at in known
        else Standing(len(each.points))
        for at, each in enumerate(series)
    )


def _standing(own: Weighed, others: list[Weighed]) -> Standing:
    sums, points = own.sums, own.series.points
    odds = odds_of(own, others)
    declined = sum(odds.declined)
    ended = sum(odds.stopped) + declined
    chance = ended / (ended + odds.never)
    if len(points) < LEAST_EXPOSURES or ended < odds.never * _needed(odds, len(others)):
        return Standing(len(points), ended=chance, gain=gain_over(sums, 0, NOISE))
    both = [stop + fall for stop, fall in zip(odds.stopped, odds.declined, strict=True)]
    tau = both.index(max(both))
    return Standing(
        len(points),
        stalled=True,
        declining=declined > ended / 2,
        ended=chance,
        gain=gain_over(sums, tau, NOISE),
        before=gain_until(own.parts, tau, NOISE),
        since=points[tau].on,
    )


def _needed(odds: Odds, others: int) -> float:
    """Return the odds from which a gain is taken to have ended.

    They are the greater, the more the two readings of the exposures differ: a great gain that ended, a small
    one that goes on; and the greater the noise is. What other exercises say of the usual gain is least apt
    for one that gains less than they, which therefore needs more.
    """
    told = min(others, _MOST_OTHERS)
    return (
        math.exp(_BASE + _PER_OTHER * told)
        * math.pow(odds.gain_overall / odds.gain_if_never, _DIFFERENCE)
        * math.pow(odds.gain_if_never / _USUAL_GAIN, _QUICKNESS + _QUICKNESS_PER_OTHER * told)
        * math.pow(odds.noise / _USUAL_NOISE, _NOISINESS)
    )
