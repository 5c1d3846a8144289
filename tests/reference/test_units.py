"""Mass units against the pint library, which takes them from NIST."""

from decimal import Decimal

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.units import KG_PER_LB, Unit, convert, to_kg

UNITS: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)

masses = st.decimals(min_value=0, max_value=2000, places=3)


@given(masses)
def test_pounds_in_kilograms(pounds: Decimal) -> None:
    assert to_kg(pounds, "lb") == (pounds * UNITS.pound).to("kilogram").magnitude


@given(masses)
def test_kilograms_in_pounds(kilograms: Decimal) -> None:
    expected = (kilograms * UNITS.kilogram).to("pound").magnitude
    assert float(convert(kilograms, "kg", "lb")) == pytest.approx(float(expected), rel=1e-15)


def test_the_pound_is_the_international_one() -> None:
    """0.45359237 kg exactly, since 1 July 1959 (international yard and pound agreement)."""
    assert Decimal("0.45359237") == KG_PER_LB == UNITS("1 pound").to("kilogram").magnitude


@pytest.mark.parametrize(("pounds", "kilograms"), [("45", "20.41165665"), ("225", "102.05828325")])
def test_usual_loads(pounds: str, kilograms: str) -> None:
    assert to_kg(Decimal(pounds), "lb") == Decimal(kilograms)


@given(masses)
def test_pounds_and_back_is_exact(pounds: Decimal) -> None:
    assert convert(convert(pounds, "lb", "kg"), "kg", "lb") == pounds


@given(masses)
def test_kilograms_and_back_differ_by_no_more_than_the_last_digit_of_a_decimal(kilograms: Decimal) -> None:
    there_and_back = convert(convert(kilograms, "kg", "lb"), "lb", "kg")
    assert abs(there_and_back - kilograms) <= kilograms * Decimal("1e-27")


@given(masses, st.sampled_from(["kg", "lb"]))
def test_a_unit_into_itself_is_the_number_as_said(mass: Decimal, unit: Unit) -> None:
    assert str(convert(mass, unit, unit)) == str(mass)
