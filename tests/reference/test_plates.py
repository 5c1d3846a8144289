"""Bars and plates against the federations' discs and well-known loads."""

from decimal import Decimal

import pytest

from domain.equipment import default_equipment, plates_per_side
from domain.units import Unit

# Published: competition discs of the IWF (from 25 kg down to 0.5 kg) and of the IPF (1.25 to 50 kg).
IWF = {"25", "20", "15", "10", "5", "2.5", "2", "1.5", "1", "0.5"}
IPF = {"1.25", "2.5", "5", "10", "15", "20", "25", "50"}
# Quoted by secondary texts: the usual plates in pounds.
POUNDS = {"45", "35", "25", "10", "5", "2.5"}


def test_the_usual_plates_are_ones_that_exist() -> None:
    assert {str(plate.mass) for plate in default_equipment("kg").plates} <= IWF | IPF
    assert {str(plate.mass) for plate in default_equipment("lb").plates} == POUNDS


def test_the_usual_bars() -> None:
    """The men's bar of the IWF weighs 20 kg; the usual bar in pounds 45."""
    assert default_equipment("kg").bar == 20
    assert default_equipment("lb").bar == 45


@pytest.mark.parametrize(
    ("total", "unit", "side"),
    [
        # Quoted by secondary texts: 135 = 45 + 2 x 45, 185 = 45 + 2 x (45 + 25).
        ("135", "lb", "45"),
        ("185", "lb", "45 25"),
        # Common practice, no source.
        ("225", "lb", "45 45"),
        ("315", "lb", "45 45 45"),
        ("95", "lb", "25"),
        ("60", "kg", "20"),
        ("70", "kg", "25"),
        ("100", "kg", "25 15"),
        ("102.5", "kg", "25 15 1.25"),
        ("20", "kg", ""),
    ],
)
def test_well_known_loads(total: str, unit: Unit, side: str) -> None:
    expected = tuple(Decimal(plate) for plate in side.split())
    assert plates_per_side(Decimal(total), unit, default_equipment(unit)) == expected


@pytest.mark.parametrize(("total", "unit"), [("101", "kg"), ("19", "kg"), ("136", "lb"), ("10", "lb")])
def test_what_cannot_be_loaded(total: str, unit: Unit) -> None:
    assert plates_per_side(Decimal(total), unit, default_equipment(unit)) is None
