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

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate

GAINS = (0.0025, 0.005, 0.0075, 0.01, 0.015, 0.02, 0.03)
"""Gains an exposure that are considered. The project's own choice: from hardly any to a beginner's."""
DECLINES = (-0.01, -0.025)
"""The falls an exposure that a decline is taken to be, as likely. The project's own choice."""
_POWERS = tuple((2 * gain, gain * gain) for gain in GAINS)
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
        """Return S of all shapes."""
        gaining = self.gaining()
        return Squares(gaining, tuple(self.declining(gaining, fall) for fall in DECLINES))

    def gaining(self) -> list[list[float]]:
        """Return S by tau and gain, for a gain that ends at tau; at the last tau it has not ended."""
        return [
            [self.yy - twice * yu + squared * uu for twice, squared in _POWERS]
            for yu, uu in zip(self.yu, self.uu, strict=True)
        ]

    def declining(self, gaining: list[list[float]], fall: float) -> list[list[float]]:
        """Return S by tau (not the last) and gain, for a decline by `fall` an exposure after tau."""
        a = fall
        rest = [a * (a * vv - 2 * yv) for yv, vv in zip(self.yv, self.vv, strict=True)]
        return [
            [s + other + a * twice * uv for (twice, _), s in zip(_POWERS, row, strict=True)]
            for row, other, uv in zip(gaining[:-1], rest, self.uv, strict=False)
        ]


@dataclass(frozen=True, slots=True)
class Squares:
    """S by tau and gain: of gains that end, and for each of `DECLINES` of those that turn into it."""

    gaining: list[list[float]]
    declining: tuple[list[list[float]], ...]

    @property
    def least(self) -> float:
        """The smallest S of all shapes."""
        return min(min(row) for rows in (self.gaining, *self.declining) for row in rows)


def sums_of(parts: Sequence[Sequence[float]]) -> Sums:
    """Return the sums of an index in parts, each with a level of its own; the exposures count through."""
    yy = 0.0
    ramps: list[tuple[list[float], tuple[float, ...], tuple[float, ...], float, float]] = []
    for part in parts:
        size = len(part)
        mean = sum(part) / size
        centred = [each - mean for each in part]
        yy += sum(each * each for each in centred)
        after = list(accumulate(reversed(centred[1:])))[::-1]
        yu = [0.0, *accumulate(after)]
        uu, tu = _ramps(size)
        ramps.append((yu, uu, tu, yu[-1], uu[-1]))
    lists: tuple[list[float], ...] = ([], [], [], [], [])
    done_y = done_t = 0.0
    left_y, left_t = sum(each[3] for each in ramps), sum(each[4] for each in ramps)
    for yu, uu, tu, whole_y, whole_t in ramps:
        left_y, left_t = left_y - whole_y, left_t - whole_t
        for y, u, t in zip(yu, uu, tu, strict=True):
            lists[0].append(done_y + y)
            lists[1].append(done_t + u)
            lists[2].append(left_y + whole_y - y)
            lists[3].append(t - u)
            lists[4].append(left_t + whole_t - 2 * t + u)
        done_y, done_t = done_y + whole_y, done_t + whole_t
    size = sum(len(part) for part in parts)
    return Sums(yy, size - len(parts), *(tuple(each) for each in lists))


def weigh_shapes(
    squares: Sequence[Sequence[float]],
    chances: Sequence[float],
    gains: Sequence[float],
    noise: NoisePrior,
    freedom: int,
    least: float,
) -> list[list[float]]:
    """Return prior times marginal likelihood by tau and gain, relative to the likelihood at an S of `least`.

    `squares` is S by tau and gain, `chances` the prior by tau, `gains` by gain.
    """
    power, twice = noise.shape + freedom / 2, 2 * noise.scale
    best = twice + least
    return [
        [chance * gain * (best / (twice + s)) ** power for gain, s in zip(gains, row, strict=True)]
        for chance, row in zip(chances, squares, strict=True)
    ]


@lru_cache(maxsize=128)
def chances_of_end(exposures: int) -> tuple[float, ...]:
    """Return the prior chance that the gain ends at each tau; the last is that it has not ended."""
    stays = 1 - CHANCE_OF_END
    return (*(CHANCE_OF_END * stays**tau for tau in range(exposures - 1)), stays ** (exposures - 1))


@lru_cache(maxsize=128)
def _ramps(size: int) -> tuple[tuple[float, ...], tuple[float, ...]]:
    """Return, by where in a part a rise ends, its sum of squares and its product with a rise to the end."""
    whole = size * (size - 1) / 2
    squares, products = [], []
    for end in range(size):
        rise = end * (end - 1) / 2 + (size - end) * end
        square = (end - 1) * end * (2 * end - 1) / 6
        squares.append(square + (size - end) * end * end - rise * rise / size)
        products.append(square + end * (whole - end * (end - 1) / 2) - whole * rise / size)
    return tuple(squares), tuple(products)
