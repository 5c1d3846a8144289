"""How likely it is that an exercise's gain has ended, and when: the model behind a stall, in closed form.

The index (the log of the strength shown) rises by a steady gain g an exposure until exposure tau, and after
that no more, or falls by 1 or 2.5% an exposure; around this lies noise. Each level (of a part between two
breaks) has a flat prior and is integrated out, the noise variance has an inverse-gamma prior (shape a, scale
b), the gain a prior over a few values, and the gain ends after each exposure with the same small chance. The
marginal likelihood of (tau, g) is then proportional to

    (b + S/2) ^ -(a + (n - parts)/2),    S the sum of squares about that shape, centred in each part,

the usual result for a normal model with a conjugate prior (Gelman et al., Bayesian Data Analysis, 14.2, from
memory; a test integrates it numerically). S is quadratic in g, so sums over the exposures, taken once, give
it for each (tau, g) at once. Nothing here is of a client, a day or an exercise.
"""

import math
from bisect import bisect
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate, pairwise
from typing import NamedTuple

GAINS = (0.0025, 0.005, 0.0075, 0.01, 0.015, 0.02, 0.03)
"""Gains an exposure that are considered. The project's own choice: from hardly any to a beginner's."""
DECLINES = (-0.01, -0.025)
"""The falls an exposure that a decline is taken to be, as likely. The project's own choice."""
NEXT_TO_NOTHING = 1e-9
"""A likelihood beside the greatest that makes no difference to what is told."""
_MIDDLES = tuple((less + more) / 2 for less, more in pairwise(GAINS))
CHANCE_OF_END = 1 / 25
"""The chance that a gain ends after an exposure, before anything is known. The project's own choice."""
CHANCE_OF_DECLINE = 0.2
"""The chance that it is a decline and no stop, before anything is known. The project's own choice."""


@dataclass(frozen=True, slots=True)
class NoisePrior:
    """The inverse-gamma prior of the noise variance: `shape`, `scale`."""

    shape: float
    scale: float


@dataclass(frozen=True, slots=True)
class Sums:
    """What S needs, by tau from 0 to the last exposure: u is the rise until tau, t the rise to the end.

    `yy` is the sum of squares of the index, `freedom` the exposures less the parts; all are centred. At the
    last tau u is t.
    """

    yy: float
    freedom: int
    yu: Sequence[float]
    uu: Sequence[float]
    tu: Sequence[float]

    def turn(self, fall: float) -> "Turn":
        """Return S of gains that turn into `fall` an exposure; with 0 the last tau is that of no end.

        A gain g that turns into `fall` is `fall` from first to last, and g - `fall` until tau besides.
        """
        uu, along, level = self.uu, self.yu, self.yy
        if fall:
            level += fall * (fall * uu[-1] - 2 * along[-1])
            uu = uu[:-1]
            along = [yu - fall * tu for yu, tu in zip(along[:-1], self.tu[:-1], strict=True)]
        lowest, highest = GAINS[0] - fall, GAINS[-1] - fall
        least = [
            level + lowest * (lowest * u - 2 * a)
            if a <= lowest * u
            else level + highest * (highest * u - 2 * a)
            if a >= highest * u
            else level - a * a / u
            for a, u in zip(along, uu, strict=True)
        ]
        return Turn(fall, along, uu, level, least)

    def turns(self) -> "list[Turn]":
        """Return S of gains that end without a fall, and with each of `DECLINES`."""
        return [self.turn(fall) for fall in (0.0, *DECLINES)]

    def squares(self, prior: NoisePrior) -> "Squares":
        """Return S of all shapes that are not next to impossible, by that prior of the noise.

        Those without a fall are held against each other alone: they say what gain is usual.
        """
        stopping, *declining = self.turns()
        least_stopping = min(stopping.least)
        least = min([least_stopping, *(min(each.least) for each in declining if each.least)])
        power, twice = prior.shape + self.freedom / 2, 2 * prior.scale
        times = NEXT_TO_NOTHING ** (-1 / power)
        greatest = (twice + least) * times - twice
        return Squares(
            len(self.yu),
            least,
            stopping.ends((twice + least_stopping) * times - twice),
            tuple(each.ends(greatest) for each in declining),
        )

    def best_shape(self) -> tuple[float, int, float]:
        """Return of the shape with the least S the fall after the gain, its last exposure, the gain."""
        least, best = math.inf, (0.0, 0, GAINS[0])
        for turn in self.turns():
            if turn.least and (found := min(turn.least)) < least:
                tau = turn.least.index(found)
                least, best = found, (turn.fall, tau, turn.gain(tau))
        return best


@dataclass(frozen=True, slots=True)
class Turn:
    """Gains that turn into `fall` an exposure, by tau, and the S that the best gain leaves.

    S of a bend b, which is a gain less `fall`, is level + b (b uu - 2 along). Any gain from the least to the
    greatest of `GAINS` can be the best.
    """

    fall: float
    along: Sequence[float]
    uu: Sequence[float]
    level: float
    least: list[float]

    def gain(self, tau: int) -> float:
        """Return the gain that fits best; with nothing to tell it from the least."""
        u = self.uu[tau]
        return min(max(self.along[tau] / u + self.fall, GAINS[0]), GAINS[-1]) if u else GAINS[0]

    def squares(self, first: int = 0) -> list[float]:
        """Return S by tau, from `first` on, and gain."""
        level, powers = self.level, _powers(self.fall)
        return [
            level - twice * along + squared * uu
            for along, uu in zip(self.along[first:], self.uu[first:], strict=True)
            for twice, squared in powers
        ]

    def ends(self, greatest: float = math.inf) -> "Ends":
        """Return S by tau and gain, from the first tau on at which S may be as small as `greatest`.

        A value of `GAINS` stands for the gains around it, so S of the best gain is put in the place of that
        of the gain nearest to it. Over many exposures with little noise they are told apart so well that a
        steady gain between two values would fit worse than one that is greater and has ended.
        """
        last = max(0, len(self.uu) - 1)
        first = next((tau for tau, least in enumerate(self.least) if least < greatest), last)
        squares = self.squares(first)
        rows = zip(self.along[first:], self.uu[first:], self.least[first:], strict=True)
        for row, (along, uu, least) in enumerate(rows):
            nearest = bisect(_MIDDLES, along / uu + self.fall) if uu else 0
            squares[row * len(GAINS) + nearest] = least
        return Ends(first, squares)


class Ends(NamedTuple):
    """S by tau from `first` on, and for each tau by gain: flat ones are the quickest to go through.

    A gain that ended before `first` is next to impossible, beside the shape that fits best.
    """

    first: int
    squares: list[float]


@dataclass(frozen=True, slots=True)
class Squares:
    """S of gains that end, and for each of `DECLINES` of those that turn into it; `least` the smallest one.

    `exposures` is how many were weighed.
    """

    exposures: int
    least: float
    gaining: Ends
    declining: tuple[Ends, ...]


def sums_of(parts: Sequence[Sequence[float]]) -> Sums:
    """Return the sums of an index in parts, each with a level of its own; the exposures count through."""
    yy, done = 0.0, 0.0
    yu: list[float] = []
    for part in parts:
        mean = sum(part) / len(part)
        centred = [each - mean for each in part]
        yy += sum([each * each for each in centred])
        after = list(accumulate(reversed(centred[1:])))[::-1]
        yu += accumulate(after, initial=done)
        done = yu[-1]
    uu, tu = _ramps(tuple(map(len, parts)))
    return Sums(yy, len(yu) - len(parts), yu, uu, tu)


def prior_of(chances: Sequence[float], gains: Sequence[float]) -> list[float]:
    """Return the prior of all shapes, in the order of `Squares`, from that of each tau and of each gain."""
    return [chance * gain for chance in chances for gain in gains]


def weigh_shapes(
    squares: Sequence[float], prior: Sequence[float], noise: NoisePrior, freedom: int, least: float
) -> list[float]:
    """Return prior times marginal likelihood of shapes, relative to the likelihood at an S of `least`."""
    power, twice = noise.shape + freedom / 2, 2 * noise.scale
    best = twice + least
    return [before * (best / (twice + s)) ** power for before, s in zip(prior, squares, strict=True)]


def by_tau(flat: Sequence[float], first: int = 0) -> list[float]:
    """Return the sums over the gains of what goes by tau, from `first` on, and gain; 0 before that."""
    return [0.0] * first + list(map(sum, zip(*[iter(flat)] * len(GAINS), strict=True)))


def by_gain(flat: Sequence[float]) -> list[float]:
    """Return the sums over tau of what goes by tau and gain."""
    return [sum(flat[at :: len(GAINS)]) for at in range(len(GAINS))]


@lru_cache(maxsize=128)
def chances_of_end(exposures: int) -> tuple[float, ...]:
    """Return the prior chance that the gain ends at each tau; the last is that it has not ended."""
    stays = 1 - CHANCE_OF_END
    return (*(CHANCE_OF_END * stays**tau for tau in range(exposures - 1)), stays ** (exposures - 1))


@lru_cache(maxsize=len(DECLINES) + 1)
def _powers(fall: float) -> tuple[tuple[float, float], ...]:
    """Return of each of `GAINS` twice its bend, where it turns into `fall`, and the bend's square."""
    return tuple((2 * (gain - fall), (gain - fall) ** 2) for gain in GAINS)


@lru_cache(maxsize=512)
def _ramps(sizes: tuple[int, ...]) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Return uu and tu by tau of exposures in parts of those sizes: they do not depend on the index."""
    uu: list[float] = []
    tu: list[float] = []
    done = 0.0
    for size in sizes:
        squares, products = _ramps_of_part(size)
        uu += [done + each for each in squares]
        tu += [done + each for each in products]
        done += squares[-1]
    return tuple(uu), tuple(tu)


def _ramps_of_part(size: int) -> tuple[list[float], list[float]]:
    """Return, by where in a part a rise ends, its sum of squares and its product with a rise to the end."""
    whole = size * (size - 1) / 2
    squares, products = [], []
    for end in range(size):
        rise = end * (end - 1) / 2 + (size - end) * end
        square = (end - 1) * end * (2 * end - 1) / 6
        squares.append(square + (size - end) * end * end - rise * rise / size)
        products.append(square + end * (whole - end * (end - 1) / 2) - whole * rise / size)
    return squares, products
