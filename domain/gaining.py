"""Whether a client's exercises still gain, since when one no longer does, and how sure that is.

Each exercise is weighed by `domain.gain_model`. The client's other exercises say beforehand how great gains
and noise are likely to be. An exercise has stalled where the odds that its gain has ended are great enough:
the needed odds were found once by a seeded simulation (`tests/bench/stalls.py`), aiming at no more than 1 of
10 exercises that gain steadily being called stalled within 20 exposures. Alone no gain and noise went over 8%
of 400; with five others 2% gains with 3 and 4.2% noise came to 11% of 150, the rest stayed under 9%. They are
the project's own rule.
"""

import math
from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from domain.gain_odds import NOISE, Odds, Weighed, odds_of, weigh
from domain.slope import Gain, gain_over, gain_until, pooled
from domain.strength_series import Series
from domain.together import common_end

LEAST_EXPOSURES = 5
"""With fewer nothing is called a stall."""

TOGETHER_NEEDED = 3.0
"""The odds from which several exercises are taken to have slowed together."""

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
    has ended, `noise` by how much a day is off (a fraction, the standard deviation). None where there is
    nothing to tell it from.
    """

    exposures: int
    stalled: bool = False
    declining: bool = False
    ended: float | None = None
    gain: Gain | None = None
    before: Gain | None = None
    since: date | None = None
    noise: float | None = None


@dataclass(frozen=True, slots=True)
class Together:
    """Several exercises that have slowed together, `which` by their places: the client, and no single one.

    The rest as in `Standing`: `ended` that the gain has ended in some exercise, the gains over all of them.
    """

    which: tuple[int, ...]
    since: date
    declining: bool
    ended: float
    gain: Gain | None
    before: Gain | None


@dataclass(frozen=True, slots=True)
class Findings:
    """How each of a client's exercises stands, in order, and what several have in common, where they do."""

    standings: tuple[Standing, ...]
    together: Together | None = None


def standings(series: Sequence[Series], earlier: Sequence[Series] = ()) -> tuple[Standing, ...]:
    """Return how each of a client's exercises stands, in order."""
    return look(series, earlier).standings


def look(series: Sequence[Series], earlier: Sequence[Series] = ()) -> Findings:
    """Return how a client's exercises stand, in order, each by itself and all together.

    `earlier` are series that are over, and only say what gain and noise are usual for this client.
    """
    known = {at: weigh(each) for at, each in enumerate((*series, *earlier)) if len(each.points) > 1}
    odds = {
        at: odds_of(known[at], [other for place, other in known.items() if place != at])
        for at in range(len(series))
        if at in known
    }
    others = len(known) - 1
    found = tuple(
        _standing(known[at], odds[at], others) if at in odds else Standing(len(each.points))
        for at, each in enumerate(series)
    )
    enough = {at: (known[at], odds[at]) for at, each in enumerate(found) if each.exposures >= LEAST_EXPOSURES}
    return Findings(found, _together(enough))


def _standing(own: Weighed, odds: Odds, others: int) -> Standing:
    points = own.series.points
    declined = sum(odds.declined)
    ended = sum(odds.stopped) + declined
    chance = ended / (ended + odds.never)
    if len(points) < LEAST_EXPOSURES or ended < odds.never * _needed(odds, others):
        return Standing(len(points), ended=chance, gain=gain_over(own.sums, 0, NOISE), noise=odds.noise)
    both = [stop + fall for stop, fall in zip(odds.stopped, odds.declined, strict=True)]
    tau = both.index(max(both))
    return Standing(
        len(points),
        stalled=True,
        declining=declined > ended / 2,
        ended=chance,
        gain=gain_over(own.sums, tau, NOISE),
        before=gain_until(own.parts, tau, NOISE),
        since=points[tau].on,
        noise=odds.noise,
    )


def _together(known: Mapping[int, tuple[Weighed, Odds]]) -> Together | None:
    """Return the common end that is sure enough, and likelier than that of any single exercise."""
    common = common_end(known)
    if common is None:
        return None
    alone = sum((sum(odds.stopped) + sum(odds.declined)) / odds.never for _, odds in known.values())
    if common.odds < max(TOGETHER_NEEDED, alone):
        return None
    gains, befores = [], []
    for at in common.which:
        weighed, _ = known[at]
        tau = bisect_right(weighed.days, common.since) - 1
        gains.append(gain_over(weighed.sums, tau, NOISE))
        befores.append(gain_until(weighed.parts, tau, NOISE))
    return Together(
        common.which,
        common.since,
        common.declining,
        (common.odds + alone) / (common.odds + alone + 1),
        pooled(gains),
        pooled(befores),
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
