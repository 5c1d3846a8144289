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
from operator import add

GAINS = (0.0025, 0.005, 0.0075, 0.01, 0.015, 0.02, 0.03)
"""Gains an exposure that are considered. The project's own choice: from hardly any to a beginner's."""
DECLINES = (-0.01, -0.025)
"""The falls an exposure that a decline is taken to be, as likely. The project's own choice."""
_POWERS = tuple((2 * gain, gain * gain) for gain in GAINS)
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
    """What S needs, by tau from 0 to the last exposure: u is the rise until tau, v the time after it.

    `yy` is the sum of squares of the index, `freedom` the exposures less the parts; all are centred.
    """

    yy: float
    freedom: int
    yu: tuple[float, ...]
    uu: tuple[float, ...]
    yv: tuple[float, ...]
    uv: tuple[float, ...]
    vv: tuple[float, ...]

    def squares(self) -> "Squares":
        """Return S of all shapes, the gain nearest to the best one at each tau being taken as that."""
        gaining = self.gaining()
        declining = tuple(self.declining(gaining, fall) for fall in DECLINES)
        for squares, fall in ((gaining, 0.0), *zip(declining, DECLINES, strict=True)):
            self._fit_nearest(squares, fall)
        return Squares(gaining, declining)

    def _fit_nearest(self, squares: list[float], fall: float) -> None:
        """Put, at each tau, S of the best gain in the place of that of the gain nearest to it.

        A value stands for the gains around it. Over many exposures with little noise they are told apart so
        well that a steady gain between two values would fit worse than one that is greater and has ended.
        """
        lowest, highest = GAINS[0], GAINS[-1]
        firsts = range(0, len(squares), len(GAINS))
        for first, yu, uu, uv in zip(firsts, self.yu, self.uu, self.uv, strict=False):
            if uu > 0 and lowest < (best := (yu - fall * uv) / uu) < highest:
                at = bisect(_MIDDLES, best)
                squares[first + at] -= uu * (GAINS[at] - best) ** 2

    def gaining(self) -> list[float]:
        """Return S of gains that end at tau; at the last tau it has not ended."""
        yy = self.yy
        return [
            yy - twice * yu + squared * uu
            for yu, uu in zip(self.yu, self.uu, strict=True)
            for twice, squared in _POWERS
        ]

    def declining(self, gaining: list[float], fall: float) -> list[float]:
        """Return S of gains that turn into a decline by `fall` an exposure after tau, the last left out."""
        rest = [fall * (fall * vv - 2 * yv) for yv, vv in zip(self.yv[:-1], self.vv, strict=False)]
        without_turn = map(add, gaining, [each for each in rest for _ in GAINS])
        return list(map(add, without_turn, _turns(self.uv, fall)))

    def best_shape(self) -> tuple[float, int, float]:
        """Return of the shape with the least S the fall after the gain, its last exposure, the gain.

        S is quadratic in the gain; any from the least to the greatest of `GAINS` can be the best.
        """
        yy, last = self.yy, len(self.yu) - 1
        least, best = math.inf, (0.0, 0, 0.0)
        lowest, highest = GAINS[0], GAINS[-1]
        for fall in (0.0, *DECLINES):
            columns = zip(self.yu, self.uu, self.yv, self.uv, self.vv, strict=True)
            for tau, (yu, uu, yv, uv, vv) in enumerate(columns):
                if fall and tau == last:
                    break
                gain = (yu - fall * uv) / uu if uu > 0 else lowest
                if not lowest <= gain <= highest:
                    gain = lowest if gain < lowest else highest
                s = yy + gain * (gain * uu + 2 * (fall * uv - yu)) + fall * (fall * vv - 2 * yv)
                if s < least:
                    least, best = s, (fall, tau, gain)
        return best


@dataclass(frozen=True, slots=True)
class Squares:
    """S of gains that end, and for each of `DECLINES` of those that turn into it.

    The lists go by tau, and for each tau by gain: flat ones are the quickest to go through.
    """

    gaining: list[float]
    declining: tuple[list[float], ...]

    @property
    def exposures(self) -> int:
        """How many exposures were weighed."""
        return len(self.gaining) // len(GAINS)

    @property
    def least(self) -> float:
        """The smallest S of all shapes."""
        return min(min(each) for each in (self.gaining, *self.declining) if each)


def sums_of(parts: Sequence[Sequence[float]]) -> Sums:
    """Return the sums of an index in parts, each with a level of its own; the exposures count through."""
    yy = 0.0
    rises: list[list[float]] = []
    for part in parts:
        mean = sum(part) / len(part)
        centred = [each - mean for each in part]
        yy += sum([each * each for each in centred])
        after = list(accumulate(reversed(centred[1:])))[::-1]
        rises.append([0.0, *accumulate(after)])
    yu: list[float] = []
    yv: list[float] = []
    done, left = 0.0, sum(each[-1] for each in rises)
    for part_yu in rises:
        whole = part_yu[-1]
        left -= whole
        yu += [done + each for each in part_yu]
        yv += [left + whole - each for each in part_yu]
        done += whole
    uu, uv, vv = _ramps(tuple(len(part) for part in parts))
    return Sums(yy, len(yu) - len(parts), tuple(yu), uu, tuple(yv), uv, vv)


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


def by_tau(flat: Sequence[float]) -> list[float]:
    """Return the sums over the gains of what goes by tau and gain."""
    return list(map(sum, zip(*[iter(flat)] * len(GAINS), strict=True)))


def by_gain(flat: Sequence[float]) -> list[float]:
    """Return the sums over tau of what goes by tau and gain."""
    return [sum(flat[at :: len(GAINS)]) for at in range(len(GAINS))]


@lru_cache(maxsize=128)
def chances_of_end(exposures: int) -> tuple[float, ...]:
    """Return the prior chance that the gain ends at each tau; the last is that it has not ended."""
    stays = 1 - CHANCE_OF_END
    return (*(CHANCE_OF_END * stays**tau for tau in range(exposures - 1)), stays ** (exposures - 1))


@lru_cache(maxsize=512)
def _ramps(sizes: tuple[int, ...]) -> tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]:
    """Return uu, uv and vv by tau of exposures in parts of those sizes: they do not depend on the index."""
    ramps = [_ramps_of_part(size) for size in sizes]
    uu, uv, vv = [], [], []
    done, left = 0.0, sum(squares[-1] for squares, _ in ramps)
    for squares, products in ramps:
        whole = squares[-1]
        left -= whole
        for square, product in zip(squares, products, strict=True):
            uu.append(done + square)
            uv.append(product - square)
            vv.append(left + whole - 2 * product + square)
        done += whole
    return tuple(uu), tuple(uv), tuple(vv)


@lru_cache(maxsize=1024)
def _turns(uv: tuple[float, ...], fall: float) -> list[float]:
    """Return what S has of rise and fall together, by tau and gain."""
    turns = [fall * twice for twice, _ in _POWERS]
    return [turn * each for each in uv[:-1] for turn in turns]


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
