"""Equipment in a roster: as data, or in words."""

from typing import Any

import pytest

from bot.roster import RosterFault, read_roster
from domain.equipment import Equipment


def roster(equipment: Any) -> dict[str, Any]:
    return {
        "coaches": [{"name": "Mara", "zone": "UTC", "unit": "kg"}],
        "sheets": [],
        "clients": [
            {
                "name": "Noor",
                "coach": "Mara",
                "unit": "kg",
                "zone": "UTC",
                "starts": "2026-03-02",
                "remind_at": "08:00",
                "equipment": equipment,
            }
        ],
    }


@pytest.mark.parametrize(
    ("equipment", "lacking"),
    [
        ({"unit": "kg", "lacking": ["barbell"]}, ("barbell",)),
        (["no barbell", "no dip bars"], ("barbell", "dip bars")),
        ("no barbell; dumbbells go up in 2 kg from 4 to 24", ("barbell",)),
        (["Dumbbells", "bands"], ("barbell", "kettlebells", "cables", "machines")),
    ],
)
def test_equipment_is_taken_as_data_or_in_words(equipment: Any, lacking: tuple[str, ...]) -> None:
    taken = read_roster(roster(equipment)).clients[0].equipment
    assert isinstance(taken, Equipment)
    assert taken.lacking == lacking


def test_equipment_that_is_not_understood_is_a_fault() -> None:
    with pytest.raises(RosterFault) as fault:
        read_roster(roster(["unicorn"]))
    assert fault.value.faults == ("Noor: equipment: «unicorn» is not understood",)
