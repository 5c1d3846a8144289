"""Warm-ups: the table, and that a ramp goes up and stays below the aim."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.equipment import default_equipment, is_loadable
from domain.exercises import describe
from domain.units import Unit
from domain.warm_up import warm_up
from tests.domain.tables import Case, read_cases, sets

CASES = read_cases("warm-ups.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["situation"])
def test_warm_up_is_the_one_in_the_table(case: Case) -> None:
    name = case["exercise"]
    unit: Unit = "lb" if " lb" in case["aim"] else "kg"
    ramp = warm_up(sets(case["aim"], name, unit)[0], describe(name), default_equipment(unit))
    assert ramp == (() if case["warm-up"] == "none" else sets(case["warm-up"], name, unit))


@given(st.integers(16, 300), st.sampled_from(["Bench press", "Back squat", "Leg press", "Hammer curl"]))
def test_a_ramp_goes_up_below_the_aim_with_loads_that_exist_and_fewer_reps(quarters: int, name: str) -> None:
    load, exercise, equipment = Decimal(quarters) * Decimal("1.25"), describe(name), default_equipment("kg")
    written = f"each {load} kg" if exercise.counted == "each" else f"{load} kg"
    ramp = warm_up(sets(f"{written} x 8", name)[0], exercise, equipment)
    loads = [each.load for each in ramp]
    assert loads == sorted(set(loads))
    assert all(each < load and is_loadable(each, "kg", exercise, equipment) for each in loads)
    reps = [each.amount for each in ramp]
    assert reps == sorted(reps, reverse=True)
