"""Mass units, exactly.

A load is kept in the unit in which the client said it and compared in kilograms. The avoirdupois pound is
0.45359237 kg exactly (international yard and pound agreement, in force since 1 July 1959).
"""

from decimal import Decimal
from typing import Literal, assert_never

Unit = Literal["kg", "lb"]

KG_PER_LB = Decimal("0.45359237")


def to_kg(mass: Decimal, unit: Unit) -> Decimal:
    """Return `mass`, given in `unit`, in kilograms, exactly."""
    match unit:
        case "kg":
            return mass
        case "lb":
            return mass * KG_PER_LB
        case _:
            assert_never(unit)


def convert(mass: Decimal, unit: Unit, into: Unit) -> Decimal:
    """Return `mass`, given in `unit`, in the unit `into`; unchanged where the units are the same."""
    if unit == into:
        return mass
    return to_kg(mass, unit) if into == "kg" else mass / KG_PER_LB
