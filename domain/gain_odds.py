"""The odds that an exercise's gain has ended, with what the client's other exercises say beforehand.

Their exposures say how great the noise is likely to be, beside what is published; their gains what gain is
usual for this client, about which the gains of single exercises lie spread. Each is let speak whether its own
gain has ended or not.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from operator import mul

from domain.gain_model import (
    CHANCE_OF_DECLINE,
    DECLINES,
    GAINS,
    Ends,
    NoisePrior,
    Squares,
    Sums,
    by_gain,
    by_tau,
    chances_of_end,
    prior_of,
    weigh_shapes,
)
from domain.noise import Parts, hold_bad_days
from domain.strength_series import Series

NOISE = NoisePrior(2, 2 * 0.033**2)
"""3.3% with 4 degrees of freedom, between the 4.2% by which a 1RM varies from test to test (Grgic 2020,
Sports Med Open 6:31, median of 32 studies) and the 1.1 reps, about 2.5%, of reps to failure (Mitter 2022,
PLoS One 17:e0268074)."""
_SPREAD = 0.4
"""How far (in logs) the gains of one client's exercises lie apart: the project's own choice."""
_SHARE_OF_OTHERS = 0.5
"""What another exercise's exposure says of this one's noise, beside one of its own."""

LEAST = 1e-300
"""A weight that would come out as 0 because it is so small."""


@dataclass(frozen=True, slots=True)
class Weighed:
    """One exercise by itself: `usual` what it says of the client's usual gain, `least` the smallest S."""

    series: Series
    parts: Parts
    sums: Sums
    squares: Squares
    usual: tuple[float, ...]
    least: float

    @property
    def days(self) -> list[date]:
        """The days of the exposures weighed: a last one that is low alone is not among them."""
        return [point.on for point in self.series.points[: self.squares.exposures]]


@lru_cache(maxsize=512)
def weigh(series: Series) -> Weighed:
    """Weigh one exercise by itself, with bad days held to what a day can be off.

    What is done in one workout leaves most exercises as they were, so the latest are remembered.
    """
    index = [[point.shown for point in part] for part in series.parts]
    parts, sums = hold_bad_days(index, NOISE)
    squares = sums.squares(NOISE)
    first, gaining = squares.gaining
    least = min(gaining)
    evenly = _even(squares.exposures)[first * len(GAINS) :]
    usual = _usual_from(by_gain(weigh_shapes(gaining, evenly, NOISE, sums.freedom, least)))
    return Weighed(series, parts, sums, squares, usual, least)


@dataclass(frozen=True, slots=True)
class Odds:
    """Weights by tau that the gain stopped or turned into a decline, and that it never ended, never 0.

    `gain_overall` is the gain to be expected by all of them, `gain_if_never` where it has not ended; `noise`
    is the deviation of a day about the shape that fits best.
    """

    stopped: list[float]
    declined: list[float]
    never: float
    gain_overall: float
    gain_if_never: float
    noise: float


def odds_of(own: Weighed, others: Sequence[Weighed]) -> Odds:
    """Return the odds of one exercise, with the client's other ones."""
    gains = _gains_from([each.usual for each in others])
    freedom = own.sums.freedom
    noise = NoisePrior(
        NOISE.shape + _SHARE_OF_OTHERS * sum(each.sums.freedom for each in others) / 2,
        NOISE.scale + _SHARE_OF_OTHERS * sum(each.least for each in others) / 2,
    )
    squares = own.squares
    *ends, goes_on = chances_of_end(squares.exposures)

    def weights(shapes: Ends, chances: Sequence[float]) -> list[float]:
        before = prior_of(chances[shapes.first :], gains)
        return weigh_shapes(shapes.squares, before, noise, freedom, squares.least)

    gaining = weights(squares.gaining, [*ends, goes_on])
    stops, never = gaining[: -len(GAINS)], gaining[-len(GAINS) :]
    falls = [weights(each, ends) for each in squares.declining]
    a_stop, a_fall = 1 - CHANCE_OF_DECLINE, CHANCE_OF_DECLINE / len(DECLINES)
    overall = [
        a_stop * stop + a_fall * sum(fall) + none
        for stop, none, *fall in zip(by_gain(stops), never, *map(by_gain, falls), strict=True)
    ]
    by_fall = [by_tau(each, shapes.first) for each, shapes in zip(falls, squares.declining, strict=True)]
    return Odds(
        [a_stop * each for each in by_tau(stops, squares.gaining.first)],
        [a_fall * sum(each) for each in zip(*by_fall, strict=True)],
        max(sum(never), LEAST),
        _mean_gain(overall),
        _mean_gain(never),
        math.sqrt((2 * noise.scale + squares.least) / (2 * noise.shape + freedom)),
    )


def _mean_gain(by_gain: Sequence[float]) -> float:
    total = sum(by_gain)
    return sum(gain * each for gain, each in zip(GAINS, by_gain, strict=True)) / total if total else GAINS[0]


@lru_cache(maxsize=128)
def _even(exposures: int) -> list[float]:
    """Return the prior of gains that end where each gain is as likely."""
    return prior_of(chances_of_end(exposures), [1.0] * len(GAINS))


def _usual_from(evidence: list[float]) -> tuple[float, ...]:
    """Return the logs of what an exercise says of the client's usual gain, its own being spread about it."""
    most = max(evidence)
    return tuple([math.log(sum(map(mul, row, evidence)) / most) for row in _NEAR])


def _gains_from(said: list[tuple[float, ...]]) -> tuple[float, ...]:
    """Return the prior of an exercise's gain, from what the others say of the client's usual one."""
    if not said:
        return _BEFOREHAND
    logs = list(map(sum, zip(_LOGS_BEFOREHAND, *said, strict=True)))
    most = max(logs)
    usual = [math.exp(each - most) for each in logs]
    total = sum(usual)
    return tuple([sum(map(mul, usual, column)) / total for column in _NEAR_BY_GAIN])


def _near(usual: float) -> tuple[float, ...]:
    """Return the chances of each gain where the client's usual one is `usual`, lognormal."""
    heights = [math.exp(-0.5 * (math.log(gain / usual) / _SPREAD) ** 2) for gain in GAINS]
    return tuple(each / sum(heights) for each in heights)


_NEAR = tuple(_near(gain) for gain in GAINS)
_NEAR_BY_GAIN = tuple(zip(*_NEAR, strict=True))
_BEFOREHAND = tuple(1 / gain / sum(1 / each for each in GAINS) for gain in GAINS)
"""Before anything is known small gains are the likelier, in proportion to 1 / gain."""
_LOGS_BEFOREHAND = tuple(map(math.log, _BEFOREHAND))
