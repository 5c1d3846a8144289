"""Body mass as people tell it, and when it is asked for."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.body_mass import ASK_EVERY, LEAST_KG, MOST_KG, doubt_of, is_time_to_ask, told
from domain.units import Unit, convert
from tests.domain.tables import Case, read_cases

CASES = read_cases("body-mass.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case['said']}, {case['usual']}, {case['when']}")
def test_body_mass_is_the_one_in_the_table(case: Case) -> None:
    usual: Unit = "lb" if case["usual"] == "lb" else "kg"
    known = case.get("known")
    mass = told(case["said"], usual, asked=case["when"] == "asked")
    if mass is None:
        understood = "none"
    elif doubt := doubt_of(mass, Decimal(known) if known else None):
        understood = {"unit": "which unit", "beyond": "beyond"}[doubt]
    else:
        understood = f"{mass.mass.normalize():f} {mass.unit}"
    assert understood == case["as"]


@given(st.decimals(1, 999, places=1), st.sampled_from(["kg", "lb"]))
def test_what_is_taken_without_a_doubt_is_possible(number: Decimal, unit: Unit) -> None:
    for text in (f"{number}", f"{number} {unit}"):
        mass = told(text, unit, asked=True)
        assert mass is not None
        if doubt_of(mass, None) is None:
            assert LEAST_KG <= convert(mass.mass, mass.unit, "kg") <= MOST_KG


@given(st.text(max_size=60), st.booleans())
def test_any_words_at_all_are_a_mass_or_none(text: str, asked: bool) -> None:
    mass = told(text, "kg", asked=asked)
    assert mass is None or mass.mass >= 0


@pytest.mark.parametrize(
    ("told_on", "asked_on", "today", "ask"),
    [
        (None, None, date(2026, 3, 2), True),
        (None, date(2026, 3, 2), date(2026, 4, 5), False),
        (None, date(2026, 3, 2), date(2026, 4, 6), True),
        (date(2026, 3, 2), None, date(2026, 4, 5), False),
        (date(2026, 3, 20), date(2026, 3, 2), date(2026, 4, 6), False),
        (date(2026, 3, 2), date(2026, 3, 20), date(2026, 4, 6), False),
        (date(2026, 3, 2), date(2026, 3, 2), date(2026, 4, 6), True),
    ],
)
def test_it_is_asked_for_every_five_weeks_at_most(
    told_on: date | None, asked_on: date | None, today: date, ask: bool
) -> None:
    assert ASK_EVERY.days == 35
    assert is_time_to_ask(today, told_on, asked_on) is ask
