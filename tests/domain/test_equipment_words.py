"""Equipment told in words: the table, and that what was said of one thing leaves the others alone."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.equipment import Equipment, Steps, default_equipment
from domain.equipment_words import told
from domain.units import Unit
from tests.domain.tables import Case, read_cases

CASES = read_cases("equipment-words.md")


def shown(equipment: Equipment, what: str) -> str:
    """Return a part of the equipment as the table writes it."""
    match getattr(equipment, what):
        case Steps() as steps:
            end = "up" if steps.last is None else f"to {steps.last}"
            extra = "" if steps.extra is None else f" and {steps.extra}"
            return f"{steps.first} {end} by {steps.step}{extra}"
        case tuple() as several:
            return " ".join(str(getattr(each, "mass", each)) for each in several)
        case single:
            return str(single)


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case['said']} ({case['unit']})")
def test_equipment_is_understood_as_the_table_says(case: Case) -> None:
    unit: Unit = "lb" if case["unit"] == "lb" else "kg"
    usual = default_equipment(unit)
    found = told(case["said"], usual)
    if case["what"] == "nothing":
        assert found is None
        return
    assert found is not None
    assert shown(found, case["what"]) == case["is now"]
    assert found.model_copy(update={case["what"]: getattr(usual, case["what"])}) == usual


def test_what_was_missing_can_be_there_again() -> None:
    without = told("I have no barbell", default_equipment("kg"))
    assert without is not None
    assert told("I now have a barbell", without) == default_equipment("kg")


@given(st.text(max_size=200))
def test_any_text_is_taken_or_left_without_a_fault(text: str) -> None:
    found = told(text, default_equipment("kg"))
    assert found is None or isinstance(found, Equipment)


@given(st.integers(1, 40), st.integers(1, 10), st.integers(1, 20))
def test_any_rack_can_be_told(first: int, step: int, count: int) -> None:
    last = first + step * count
    found = told(f"dumbbells go up in {step} kg from {first} to {last}", default_equipment("kg"))
    assert found is not None
    assert found.dumbbells == Steps(first=Decimal(first), step=Decimal(step), last=Decimal(last))
