"""The laws of the 1RM equations, and what they refuse. Published values stand in `tests/reference/`."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.strength import EQUATIONS, Equation, OutOfReach, one_rep_max, repetitions_at
from domain.strength import tested_reps as reps_tested

equations = st.sampled_from(EQUATIONS)
loads = st.decimals(min_value=1, max_value=500, places=2)


@given(equations, loads, st.integers(1, 30))
def test_repetitions_are_the_inverse(equation: Equation, load: Decimal, reps: int) -> None:
    maximum = one_rep_max(load, reps, equation)
    back = repetitions_at(load, maximum, equation)
    # Mayhew's and Wathan's curves flatten out and start above 1RM, where reps are cut off at 0.
    assert back == pytest.approx(reps, rel=1e-6)


@given(equations, loads, st.integers(1, 30))
def test_more_reps_show_more_strength(equation: Equation, load: Decimal, reps: int) -> None:
    assert one_rep_max(load, reps + 1, equation) > one_rep_max(load, reps, equation)


@given(equations, loads, st.integers(1, 30), st.floats(1.01, 3))
def test_strength_grows_with_the_load_in_proportion(
    equation: Equation, load: Decimal, reps: int, times: float
) -> None:
    heavier = one_rep_max(float(load) * times, reps, equation)
    assert heavier == pytest.approx(times * one_rep_max(load, reps, equation))


@given(equations, st.floats(0.85, 1.0), st.floats(1.001, 1.1))
def test_fewer_reps_are_expected_at_a_heavier_load(equation: Equation, share: float, times: float) -> None:
    lighter = repetitions_at(100 * share, 100, equation)
    heavier = repetitions_at(100 * share * times, 100, equation)
    assert heavier < lighter or heavier == lighter == 0


@pytest.mark.parametrize("equation", EQUATIONS)
@pytest.mark.parametrize(
    ("load", "reps"),
    [(0, 5), (-10, 5), (100, 0), (100, 0.5), (100, -1), (float("nan"), 5), (100, float("inf"))],
)
def test_no_estimate_from_nonsense(equation: Equation, load: float, reps: float) -> None:
    with pytest.raises(OutOfReach) as error:
        one_rep_max(load, reps, equation)
    assert isinstance(error.value, ValueError)
    assert error.value.equation == equation
    assert set(error.value.numbers) == {"load", "reps"}


@pytest.mark.parametrize(("equation", "last"), [("brzycki", 36), ("lander", 37)])
def test_no_estimate_at_or_beyond_a_pole(equation: Equation, last: int) -> None:
    """Brzycki's denominator is 0 at 37 reps, Lander's at 37.92."""
    assert one_rep_max(100, last, equation) > 1000
    with pytest.raises(OutOfReach):
        one_rep_max(100, last + 1, equation)


@pytest.mark.parametrize(("equation", "least"), [("mayhew", 52.2), ("wathan", 48.8)])
def test_no_reps_for_a_load_that_the_curve_never_comes_down_to(equation: Equation, least: float) -> None:
    assert repetitions_at(least + 0.1, 100, equation) > 50
    with pytest.raises(OutOfReach):
        repetitions_at(least, 100, equation)


@pytest.mark.parametrize("equation", EQUATIONS)
@pytest.mark.parametrize(("load", "maximum"), [(0, 100), (-5, 100), (100, 0), (float("inf"), 100)])
def test_no_reps_from_nonsense(equation: Equation, load: float, maximum: float) -> None:
    with pytest.raises(OutOfReach):
        repetitions_at(load, maximum, equation)


@pytest.mark.parametrize("equation", EQUATIONS)
def test_no_rep_is_expected_far_above_the_maximum(equation: Equation) -> None:
    assert repetitions_at(150, 100, equation) < 1


@pytest.mark.parametrize("equation", EQUATIONS)
def test_the_tested_reps_can_all_be_reckoned_with(equation: Equation) -> None:
    for reps in reps_tested(equation):
        assert one_rep_max(Decimal("62.5"), reps, equation) >= 62.5
