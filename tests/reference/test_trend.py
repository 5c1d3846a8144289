"""Kendall's tests and Theil-Sen slopes against published examples and scipy."""

import math
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from domain.sen import theil_sen
from domain.trend import kendall_s, kendall_variance, normal_p, trend

# P(S >= s) without ties, the layout of Gilbert 1987, table A18 (from memory that it stands there; the values
# were computed from the Mahonian recursion and checked against scipy).
EXACT = {
    4: {0: 0.625, 2: 0.375, 4: 0.1667, 6: 0.04167},
    5: {4: 0.2417, 6: 0.1167, 8: 0.04167, 10: 0.008333},
    6: {7: 0.1361, 9: 0.06806, 11: 0.02778, 13: 0.008333},
    7: {9: 0.1194, 11: 0.06806, 13: 0.03452, 15: 0.01508, 17: 0.005357},
    8: {12: 0.08943, 14: 0.05434, 16: 0.03051, 18: 0.01558, 20: 0.007068},
    10: {17: 0.07787, 19: 0.05416, 21: 0.03628, 23: 0.02331, 25: 0.0143, 27: 0.008333},
}
# Published (a worked example by hand, Mann-Kendall, mathcs.holycross.edu): S 54, Z 2.9058, one-sided p .0018.
BY_HAND = (12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7)


def series_with_s(n: int, s: int) -> tuple[float, ...]:
    """Return some order of 1 to n with that S: one value after another is moved down past the later ones."""
    inversions = (n * (n - 1) // 2 - s) // 2
    left, order = list(range(1, n + 1)), []
    while left:
        skip = min(inversions, len(left) - 1)
        order.append(float(left.pop(skip)))
        inversions -= skip
    return tuple(order)


@pytest.mark.parametrize(("n", "s", "p"), [(n, s, p) for n, row in EXACT.items() for s, p in row.items()])
def test_exact_chances_of_one_series(n: int, s: int, p: float) -> None:
    values = series_with_s(n, s)
    assert kendall_s(values) == s
    assert trend((values,)).p_rising == pytest.approx(p, rel=5e-4)


@pytest.mark.parametrize(
    ("n", "s", "fraction"), [(4, 6, 1 / 12), (6, 11, 1 / 18), (8, 16, 41 / 672), (10, 21, 3761 / 51840)]
)
def test_exact_fractions_of_both_sides(n: int, s: int, fraction: float) -> None:
    assert trend((series_with_s(n, s),)).p_two_sided == pytest.approx(fraction, rel=1e-12)


def test_worked_example_by_hand() -> None:
    found = trend((BY_HAND,))
    assert found.s == 54
    assert found.variance == pytest.approx(332.6667, abs=1e-4)
    assert (found.s - 1) / math.sqrt(found.variance) == pytest.approx(2.9058, abs=5e-5)
    one_sided, two_sided = normal_p(found.s, found.variance)
    assert one_sided == pytest.approx(0.0018, abs=5e-5)
    assert two_sided == pytest.approx(0.003663, abs=5e-7)
    assert found.slope == pytest.approx(0.566667, abs=5e-7)


@pytest.mark.parametrize(("s", "z", "p"), [(-12, -0.584, 0.5592), (-42, -1.808, 0.0705)])
def test_normal_chances_of_seasonal_tests(s: int, z: float, p: float) -> None:
    """Published: outputs of the seasonal test in USGS Scientific Investigations Report 2005-5275."""
    variance = ((s + 1) / z) ** 2
    assert normal_p(s, variance)[1] == pytest.approx(p, abs=2e-4)


numbers = st.lists(st.integers(-50, 50).map(float), min_size=3, max_size=12)


@given(numbers.filter(lambda values: len(set(values)) == len(values)))
def test_scipy_gives_the_same_exact_chances(values: list[float]) -> None:
    steps = range(len(values))
    two_sided = stats.kendalltau(steps, values, method="exact").pvalue
    rising = stats.kendalltau(steps, values, method="exact", alternative="greater").pvalue
    found = trend((tuple(values),))
    assert found.p_two_sided == pytest.approx(two_sided, rel=1e-9)
    assert found.p_rising == pytest.approx(rising, rel=1e-9)


@given(numbers)
def test_scipy_gives_the_same_slope(values: list[float]) -> None:
    slope = theil_sen((tuple(values),))
    assert slope == pytest.approx(stats.theilslopes(values, range(len(values))).slope, abs=1e-12)


@given(numbers)
def test_scipy_gives_the_same_interval(values: list[float]) -> None:
    """Sen 1968, ties and all; scipy takes the ranks of the slopes in the same way."""
    theirs = stats.theilslopes(values, range(len(values)), alpha=0.95)
    found = trend((tuple(values),))
    assert found.interval is not None
    low, high = found.interval
    assert low == pytest.approx(theirs.low_slope, abs=1e-12)
    assert high == pytest.approx(theirs.high_slope, abs=1e-12)


@pytest.mark.parametrize("seed", range(5))
def test_scipy_gives_the_same_seasonal_test(seed: int) -> None:
    """The regional test is the seasonal one (Hirsch, Slack & Smith 1982), a series in place of a season."""
    numbers = stats.norm.rvs(size=(24, 6), random_state=seed).round(1) + 0.02 * seed
    series = tuple(tuple(float(value) for value in column) for column in numbers.T)
    theirs = stats.mstats.kendalltau_seasonal(numbers)
    s, variance = sum(map(kendall_s, series)), sum(map(kendall_variance, series))
    assert normal_p(s, variance)[1] == pytest.approx(float(theirs["global p-value (indep)"]), rel=1e-9)
    overall = stats.mstats.sen_seasonal_slopes(numbers).inter_slope
    assert theil_sen(series) == pytest.approx(float(overall), rel=1e-9)


RISING = (
    (6.3, 6.5, 6.4, 6.9, 6.8, 7.0, 7.3, 7.1),
    (7.1, 7.0, 7.4, 7.2, 7.7, 7.6, 7.9, 8.1),
    (5.9, 6.2, 6.1, 6.6, 6.4, 6.9, 6.8, 7.2),
)
FALLING_WITH_TIES = (
    (60.0, 61.0, 61.0, 59.0, 60.0, 58.0),
    (80.0, 80.0, 82.0, 78.5, 79.0, 79.0),
    (40.0, 41.0, 41.0, 40.0, 39.5, 40.0),
)
TIED = ((1.0, 1.0, 2.0, 2.0), (5.0, 5.0, 4.0, 5.0), (2.0, 2.0, 2.0, 3.0))


@pytest.mark.parametrize(
    ("series", "s", "variance", "p", "slope"),
    [
        (RISING, 66, 196.0, 3.436239502718763e-06, 0.15),
        (FALLING_WITH_TIES, -17, 76.33333333333333, 0.06705365565365295, -0.25),
        (TIED, 6, 16.666666666666668, 0.22067136191984682, 0.0),
    ],
)
def test_pymannkendall_gives_the_same_seasonal_and_regional_test(
    series: tuple[tuple[float, ...], ...], s: int, variance: float, p: float, slope: float
) -> None:
    """Outputs of pymannkendall 1.4.3 (Hussain & Mahmud 2019): `regional_test`; `seasonal_test` of RISING."""
    assert sum(map(kendall_s, series)) == s
    assert sum(map(kendall_variance, series)) == pytest.approx(variance, rel=1e-12)
    assert normal_p(s, variance)[1] == pytest.approx(p, rel=1e-9)
    assert theil_sen(series) == pytest.approx(slope, abs=1e-12)


@pytest.mark.parametrize(
    "values", [(1.0, 1.0, 2.0, 3.0), (1.0, 2.0, 2.0, 2.0, 3.0), (4.0, 4.0, 1.0, 1.0, 2.0, 2.0)]
)
def test_exact_chances_with_ties_by_listing_every_order(values: tuple[float, ...]) -> None:
    s = kendall_s(values)
    every = [kendall_s(order) for order in permutations(values)]
    found = trend((values,))
    assert found.p_rising == pytest.approx(sum(each >= s for each in every) / len(every), rel=1e-12)
    assert found.p_two_sided == pytest.approx(
        sum(abs(each) >= abs(s) for each in every) / len(every), rel=1e-12
    )
    assert found.variance == pytest.approx(sum(each**2 for each in every) / len(every), rel=1e-12)


def test_exact_chances_of_two_series_by_listing_every_pair_of_orders() -> None:
    one, other = (1.0, 3.0, 2.0, 4.0), (2.0, 2.0, 1.0, 5.0)
    s = kendall_s(one) + kendall_s(other)
    every = [
        kendall_s(first) + kendall_s(second) for first in permutations(one) for second in permutations(other)
    ]
    found = trend((one, other))
    assert found.s == s
    assert found.p_rising == pytest.approx(sum(each >= s for each in every) / len(every), rel=1e-12)


def test_long_series_use_the_normal_distribution() -> None:
    values = tuple(float(7 * step % 60) for step in range(60))
    found = trend((values,))
    assert (found.p_rising, found.p_two_sided) == normal_p(found.s, found.variance)
