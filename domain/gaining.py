"""Whether a client's exercises still gain, since when one no longer does, and how sure that is.

Each exercise is weighed by `domain.gain_model`. The client's other exercises say beforehand how great gains
and noise are likely to be. An exercise has stalled where the odds that its gain has ended are as great as
`domain.needed` asks for; several have slowed together where `domain.together` finds that likelier. What the
engine reaches is measured by `tests/bench/stalls.py`; the figures stand in DEVELOPERS.md.
"""

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from domain.gain_odds import NOISE, Odds, Weighed, odds_of, weigh
from domain.needed import has_ended
from domain.slope import Gain, gain_over, gain_until, pooled
from domain.strength_series import Series
from domain.together import alone_odds, are_together, common_end

LEAST_EXPOSURES = 5
"""With fewer nothing is called a stall."""


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
    odds, others = odds_of_all(series, earlier)
    found = tuple(
        _standing(*odds[at], others) if at in odds else Standing(len(each.points))
        for at, each in enumerate(series)
    )
    return Findings(found, _together(enough(odds)))


def odds_of_all(
    series: Sequence[Series], earlier: Sequence[Series] = ()
) -> tuple[dict[int, tuple[Weighed, Odds]], int]:
    """Return the odds of each of a client's exercises, by place, and how many others each has beside it."""
    known = {at: weigh(each) for at, each in enumerate((*series, *earlier)) if len(each.points) > 1}
    odds = {
        at: (known[at], odds_of(known[at], [other for place, other in known.items() if place != at]))
        for at in range(len(series))
        if at in known
    }
    return odds, len(known) - 1


def enough(odds: Mapping[int, tuple[Weighed, Odds]]) -> dict[int, tuple[Weighed, Odds]]:
    """Return those of exercises with exposures enough to call something a stall."""
    return {at: each for at, each in odds.items() if len(each[0].series.points) >= LEAST_EXPOSURES}


def _standing(own: Weighed, odds: Odds, others: int) -> Standing:
    points = own.series.points
    declined = sum(odds.declined)
    ended = sum(odds.stopped) + declined
    chance = ended / (ended + odds.never)
    if len(points) < LEAST_EXPOSURES or not has_ended(odds, others):
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
    alone = alone_odds(known)
    if not are_together(common.odds, alone):
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
        1 - 1 / (common.odds + alone + 1),
        pooled(gains),
        pooled(befores),
    )
