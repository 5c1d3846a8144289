"""Warm-ups: the tables, and that a ramp goes up and stays below the aim."""

import re
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.equipment import default_equipment, is_loadable
from domain.exercises import describe
from domain.sets import TrainingSet
from domain.units import Unit
from domain.warm_up import ToDo, ramps, warm_up
from tests.domain.tables import Case, read_cases, sets

CASES = [case for case in read_cases("warm-ups.md") if case.get("aim")]
PLANS = [case for case in read_cases("warm-ups.md") if case.get("to do")]


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


def named(text: str) -> tuple[str, TrainingSet | None]:
    found = re.match(r"([A-Z][A-Za-z -]*?) (-$|each |help |body|[+0-9].*)", text)
    assert found, text
    name = found[1]
    return name, None if text.endswith("-") else sets(text.removeprefix(f"{name} "), name)[0]


@pytest.mark.parametrize("case", PLANS, ids=lambda case: case["situation"])
def test_a_plan_says_the_ramps_in_the_table(case: Case) -> None:
    to_do: list[ToDo] = []
    names: list[str] = []
    for group in case["to do"].split("; "):
        parts = group.split(" + ")
        for place, part in enumerate(parts):
            name, aim = named(part)
            names.append(name)
            to_do.append(ToDo(aim, into_next=place + 1 < len(parts)))
    done = [each for part in filter(None, [case.get("done today")]) if (each := named(part)[1])]
    found = ramps(to_do, default_equipment("kg"), done)
    said = [
        f"{name} > {ramp[0].exercise}: {' '.join(f'{each.load.normalize():f}' for each in ramp)}"
        for name, before in zip(names, found, strict=True)
        for ramp in before
    ]
    assert ("; ".join(said) or "none") == case["ramps"]
