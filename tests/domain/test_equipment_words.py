"""Equipment told in words: the table, and that what was said of one thing leaves the others alone."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.equipment import Equipment, Listed, Plate, Steps, default_equipment
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
        case Listed(masses=several) | (tuple() as several):
            return " ".join(map(one_shown, several))
        case single:
            return str(single)


def one_shown(each: object) -> str:
    """Return a plate, with its pairs where they are counted, a mass or a word."""
    match each:
        case Plate(mass=mass, pairs=pairs):
            return str(mass) if pairs is None else f"{mass} ({pairs})"
        case _:
            return str(each)


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


def test_several_things_can_be_told_at_once() -> None:
    """If all of them are understood; if not, nothing is taken."""
    both = told("dumbbells go up in 2 kg from 4 to 30, the stack jumps 7 kg", default_equipment("kg"))
    assert both is not None
    assert (shown(both, "dumbbells"), shown(both, "stack")) == ("4 to 30 by 2", "7 up by 7")
    assert told("dumbbells go up in 2 kg from 4 to 30, the weather is 7", default_equipment("kg")) is None


def test_a_rack_with_two_kinds_of_steps_is_listed() -> None:
    rack = told("dumbbells from 1 to 4 in 1 kg steps and then 5 to 10 in 2.5s", default_equipment("kg"))
    assert rack is not None
    assert shown(rack, "dumbbells") == "1 2 3 4 5 7.5 10"


def test_what_is_added_to_a_stack_leaves_its_steps() -> None:
    stack = told("the stack goes from 5 to 80 in 5s", default_equipment("kg"))
    assert stack is not None
    with_half = told("half steps with the small magnet plate", stack)
    assert with_half is not None
    assert shown(with_half, "stack") == "5 to 80 by 5 and 2.5"


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


def test_how_many_there_are_stays_known_where_only_the_size_is_said_again() -> None:
    counted = told("I have two 20s and four 10s", default_equipment("kg"))
    assert counted is not None
    assert told("I have 10s", counted) == counted


@pytest.mark.parametrize(
    ("said", "now"),
    [
        (
            "I have 1.25s, dumbbells from 4 to 30 in 2s and the stack jumps 7 kg",
            {"dumbbells": "4 to 30 by 2", "stack": "7 up by 7"},
        ),
        (
            "dumbbells 2 to 20 in 2s, stack in 5s, bar is 15",
            {"dumbbells": "2 to 20 by 2", "stack": "5 up by 5", "bar": "15"},
        ),
        ("the stack jumps 7 kg. my bar is 15 kg", {"stack": "7 up by 7", "bar": "15"}),
    ],
)
def test_several_things_are_told_in_one_go(said: str, now: dict[str, str]) -> None:
    found = told(said, default_equipment("kg"))
    assert found is not None
    assert {what: shown(found, what) for what in now} == now
