"""Real repeated strength measurements: those who trained rise, the control group does not.

57 people measured on seven days, two training groups and a control group (Littell et al. 1996, SAS System for
Mixed Models, Data Set 3.2(a)). The data are under a licence of their own and no part of the project. The
chances below were computed with pymannkendall, scipy and by hand.
"""

import csv
from pathlib import Path

import pytest

from domain.review import review_of
from domain.trend import kendall_s, kendall_variance, normal_p

FILE = Path(__file__).resolve().parents[3] / "shared" / "data" / "weights_wide.csv"
pytestmark = pytest.mark.skipif(
    not FILE.exists(), reason="the measurements are not at hand beside the project"
)


def series_of_group(group: str) -> tuple[tuple[float, ...], ...]:
    with FILE.open(encoding="utf-8", newline="") as file:
        return tuple(
            tuple(float(row[f"s{day}"]) for day in range(1, 8))
            for row in csv.DictReader(file)
            if row["program"] == group
        )


@pytest.mark.parametrize(
    ("group", "people", "risen"), [("CONT", 20, False), ("RI", 16, True), ("WI", 21, True)]
)
def test_training_groups_have_risen_and_the_control_group_has_not(
    group: str, people: int, risen: bool
) -> None:
    series = series_of_group(group)
    assert len(series) == people
    found = review_of(series)
    assert found is not None
    assert found.risen is risen
    assert found.rounds == 7


@pytest.mark.parametrize(
    ("group", "s", "variance", "p"),
    [("CONT", -24, 718.667, 0.3909), ("RI", 81, 589.667, 0.000986), ("WI", 177, 775, 2.58e-10)],
)
def test_the_regional_test_gives_the_computed_figures(group: str, s: int, variance: float, p: float) -> None:
    series = series_of_group(group)
    assert sum(map(kendall_s, series)) == s
    assert sum(map(kendall_variance, series)) == pytest.approx(variance, abs=5e-4)
    assert normal_p(s, variance)[1] == pytest.approx(p, rel=2e-3)
