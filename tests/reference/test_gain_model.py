"""The closed form of the marginal likelihood against numerical integration, and slopes against scipy."""

import math
from itertools import accumulate, pairwise
from random import Random
from statistics import pvariance

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import integrate, linalg, stats

from domain.gain_model import DECLINES, GAINS, NoisePrior, chances_of_end, sums_of, weigh_shapes
from domain.slope import gain_over, gain_until, student_quantile

PRIOR = NoisePrior(2, 2 * 0.033**2)


def index(exposures: int, seed: int) -> list[float]:
    luck = Random(seed)
    return [0.01 * min(at, 5) + luck.gauss(0, 0.03) for at in range(exposures)]


def shape(exposures: int, tau: int, gain: float, after: float) -> list[float]:
    return [gain * min(at, tau) + after * max(0, at - tau) for at in range(exposures)]


def less(values: list[float], rise: list[float]) -> list[float]:
    return [value - each for value, each in zip(values, rise, strict=True)]


def integrated(values: list[float], rise: list[float]) -> float:
    """Return the likelihood with level and noise variance integrated out numerically."""
    left = less(values, rise)
    middle = sum(left) / len(left)
    prior = stats.invgamma(PRIOR.shape, scale=PRIOR.scale)
    variances = [2e-5 * 1.03**step for step in range(290)]
    over_level = []
    for variance in variances:
        deviation = math.sqrt(variance)
        levels = [middle + step / 10 * deviation / math.sqrt(len(left)) for step in range(-100, 101)]
        likelihoods = [
            math.exp(-sum((each - level) ** 2 for each in left) / 2 / variance) / deviation ** len(left)
            for level in levels
        ]
        over_level.append(float(integrate.simpson(likelihoods, x=levels)) * float(prior.pdf(variance)))
    return float(integrate.simpson(over_level, x=variances))


@pytest.mark.parametrize(
    ("tau", "gain", "after"), [(7, 0.02, 0.0), (4, 0.01, 0.0), (4, 0.03, -0.01), (0, 0.0025, -0.025)]
)
def test_the_closed_form_is_the_integral(tau: int, gain: float, after: float) -> None:
    """Both up to one constant, so that each is taken over that of a steady gain of 1%."""
    values = index(8, 3)
    sums = sums_of([values])
    squares = sums.turn(after).squares()
    likelihoods = weigh_shapes(squares, [1.0] * len(squares), PRIOR, sums.freedom, 0.0)
    last = sums.turn(0.0).squares()[-len(GAINS) :]
    steady = weigh_shapes(last, [1.0] * len(GAINS), PRIOR, sums.freedom, 0.0)[GAINS.index(0.01)]
    ours = likelihoods[tau * len(GAINS) + GAINS.index(gain)] / steady
    theirs = integrated(values, shape(8, tau, gain, after)) / integrated(values, shape(8, 7, 0.01, 0))
    assert ours == pytest.approx(theirs, rel=2e-3)


@pytest.mark.parametrize("sizes", [(9,), (5, 1, 7), (2, 2), (1, 4)])
def test_sums_are_those_of_the_shapes_themselves(sizes: tuple[int, ...]) -> None:
    """S by the sums, against the squares of what least squares leaves with a level for each part."""
    luck = Random(str(sizes))
    parts = [[luck.gauss(0, 1) for _ in range(size)] for size in sizes]
    values = [each for part in parts for each in part]
    edges = list(pairwise(accumulate(sizes, initial=0)))

    def left(of: list[float]) -> float:
        return sum(pvariance(of[first:end]) * (end - first) for first, end in edges)

    sums = sums_of(parts)
    gaining = sums.turn(0.0).squares()
    declines = [(fall, sums.turn(fall).squares()) for fall in DECLINES]
    for tau in range(len(values)):
        for at, gain in enumerate(GAINS):
            assert gaining[tau * len(GAINS) + at] == pytest.approx(
                left(less(values, shape(len(values), tau, gain, 0)))
            )
            for fall, declining in declines:
                if tau < len(values) - 1:
                    wanted = left(less(values, shape(len(values), tau, gain, fall)))
                    assert declining[tau * len(GAINS) + at] == pytest.approx(wanted)


@given(
    st.lists(st.lists(st.floats(-5, 5), min_size=1, max_size=20), min_size=1, max_size=3),
)
def test_the_best_shape_has_the_least_squares_of_all(parts: list[list[float]]) -> None:
    """With the gain taken as it fits best: both for the shapes that are weighed, and for the best of them."""
    sums = sums_of(parts)
    fall, tau, gain = sums.best_shape()
    values = [value for part in parts for value in part]
    edges = list(pairwise(accumulate(map(len, parts), initial=0)))
    rise = less(values, shape(len(values), tau, gain, fall))
    left = sum(pvariance(rise[first:end]) * (end - first) for first, end in edges)
    assert left == pytest.approx(sums.squares(PRIOR).least, abs=1e-9)
    fine = [GAINS[0] + (GAINS[-1] - GAINS[0]) * step / 50 for step in range(51)]
    for other in fine:
        rise = less(values, shape(len(values), tau, other, fall))
        assert left <= sum(pvariance(rise[first:end]) * (end - first) for first, end in edges) + 1e-9


def test_the_chances_of_an_end_are_all_there_are() -> None:
    for exposures in (1, 2, 30):
        assert sum(chances_of_end(exposures)) == pytest.approx(1)


@pytest.mark.parametrize("freedom", [4, 5, 8, 20, 100])
def test_student_quantile_is_scipys(freedom: int) -> None:
    assert student_quantile(freedom) == pytest.approx(stats.t.ppf(0.975, freedom), rel=5e-4)


@pytest.mark.parametrize("exposures", [3, 8, 30])
def test_without_a_prior_the_interval_is_the_usual_one_of_least_squares(exposures: int) -> None:
    values = index(exposures, exposures)
    line = stats.linregress(range(exposures), values)
    found = gain_over(sums_of([values]), 0, NoisePrior(0, 0))
    assert found is not None
    assert math.log1p(found.estimate) == pytest.approx(line.slope)
    off = student_quantile(exposures - 2) * line.stderr
    assert math.log1p(found.high) == pytest.approx(line.slope + off)


def test_a_gain_from_an_exposure_on_is_that_of_the_broken_line() -> None:
    values = index(20, 1)
    found = gain_over(sums_of([values]), 8, NoisePrior(0, 0))
    design = [[1.0, min(at, 8), max(0, at - 8)] for at in range(20)]
    best, left, *_ = linalg.lstsq(design, values)
    squares = [[sum(row[one] * row[two] for row in design) for one in range(3)] for two in range(3)]
    error = math.sqrt(float(left) / 17 * float(linalg.inv(squares)[2][2]))
    assert found is not None
    assert math.log1p(found.estimate) == pytest.approx(float(best[2]))
    assert math.log1p(found.low) == pytest.approx(float(best[2]) - student_quantile(17) * error)


def test_a_gain_until_an_exposure_leaves_out_what_comes_after() -> None:
    values = index(20, 1)
    whole = gain_over(sums_of([values[:9]]), 0, PRIOR)
    assert gain_until([values], 8, PRIOR) == whole
    assert gain_until([values[:6], values[6:]], 8, PRIOR) == gain_over(
        sums_of([values[:6], values[6:9]]), 0, PRIOR
    )
    assert gain_until([values], 0, PRIOR) is None
