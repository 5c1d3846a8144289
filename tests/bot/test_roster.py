"""A roster is read whole, or every fault of it is a line that says whom and what it is about."""

import json
from collections.abc import Callable
from copy import deepcopy
from datetime import date, time
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from bot.roster import RosterFault, read_roster
from domain.equipment import default_equipment

SHEET = """Harbour Base
Train every 3 days in turn: Pull

Pull
1. Seated cable row, 8-10 reps to failure
"""

ROSTER: dict[str, Any] = {
    "coaches": [{"name": "Ilse", "zone": "Europe/Amsterdam", "unit": "kg", "chat": "1001"}],
    "sheets": [SHEET],
    "clients": [
        {
            "name": "Noor",
            "coach": "Ilse",
            "programme": "Harbour Base",
            "unit": "lb",
            "zone": "America/St_Johns",
            "starts": "2026-03-02",
            "remind_at": "07:30",
        }
    ],
}


USUAL = default_equipment("lb")


def changed(change: Callable[[dict[str, Any]], object]) -> dict[str, Any]:
    """Return the roster after a change."""
    roster = deepcopy(ROSTER)
    change(roster)
    return roster


def noor(**facts: object) -> dict[str, Any]:
    """Return the roster with these facts of Noor's."""
    return changed(lambda roster: roster["clients"][0].update(facts))


def test_a_roster_is_read_whole() -> None:
    roster = read_roster(ROSTER, Path())
    (coach,), (sheet,), (client,) = roster.coaches, roster.sheets, roster.clients
    assert (coach.name, coach.zone, coach.unit, coach.chat) == (
        "Ilse",
        "Europe/Amsterdam",
        "kg",
        "telegram:1001",
    )
    assert (sheet.programme.name, sheet.sheet) == ("Harbour Base", SHEET)
    assert (client.name, client.coach, client.programme) == ("Noor", "Ilse", "Harbour Base")
    assert (client.unit, client.zone) == ("lb", "America/St_Johns")
    assert (client.starts, client.remind_at) == (date(2026, 3, 2), time(7, 30))
    assert (client.chat, client.body_mass, client.equipment) == (None, None, None)


@pytest.mark.parametrize(
    ("facts", "name", "value"),
    [
        ({"chat": 77}, "chat", "telegram:77"),
        ({"chat": "local:Noor"}, "chat", "local:Noor"),
        ({"chat": " "}, "chat", None),
        ({"name": "  Noor  de   Wit "}, "name", "Noor de Wit"),
        ({"coach": "ilse"}, "coach", "Ilse"),
        ({"programme": "harbour BASE"}, "programme", "Harbour Base"),
        ({"programme": None}, "programme", None),
        ({"body_mass": 154.5}, "body_mass", Decimal("154.5")),
        ({"body_mass": "154.5"}, "body_mass", Decimal("154.5")),
        (
            {"equipment": USUAL.model_dump(mode="json")},
            "equipment",
            default_equipment("lb"),
        ),
    ],
)
def test_what_is_written_in_other_ways_means_the_same(
    facts: dict[str, Any], name: str, value: object
) -> None:
    assert getattr(read_roster(noor(**facts), Path()).clients[0], name) == value


@pytest.mark.parametrize(
    ("roster", "faults"),
    [
        (noor(zone="Europe/Atlantis"), ["Noor zone: unknown zone 'Europe/Atlantis'"]),
        (noor(zone="../../etc/passwd"), ["Noor zone: unknown zone"]),
        (noor(coach="Tadeusz"), ["Noor: unknown coach 'Tadeusz'"]),
        (
            noor(programme="Harbour Heavy"),
            ["Noor: no sheet of the programme 'Harbour Heavy' (there are: H"],
        ),
        (noor(unit="stone"), ["Noor unit: "]),
        (noor(starts="2026-02-30"), ["Noor starts: "]),
        (noor(remind_at="25:00"), ["Noor remind_at: "]),
        (noor(remind_at="half past seven"), ["Noor remind_at: "]),
        (noor(body_mass=-70), ["Noor body_mass: "]),
        (noor(name=""), ["clients 1 name: "]),
        (noor(name="\n"), ["clients 1 name: a name of letters"]),
        (noor(nickname="N"), ["Noor nickname: "]),
        (noor(name="ilse"), ["Ilse: the name comes more than once", "ilse: the name comes more than once"]),
        (noor(chat="1001"), ["chat telegram:1001: given to more than one person"]),
        (changed(lambda each: each["clients"].append({})), ["clients 2 name: "] + ["clients 2 "] * 5),
        (changed(lambda each: each["clients"].append("Piet")), ["clients 2: "]),
        (changed(lambda each: each.update(clients=3)), ["clients: "]),
        (changed(lambda each: each.update(teams=[])), ["teams: "]),
        (changed(lambda each: each.update(sheets=["no/such.txt"])), ["no/such.txt: No such file"]),
        (changed(lambda each: each.update(sheets=["Harbour Base\n"])), ["sheet 1: "] * 2),
        (changed(lambda each: each["clients"][0].pop("zone")), ["Noor zone: "]),
    ],
)
def test_each_fault_is_a_line_of_its_own(roster: dict[str, Any], faults: list[str]) -> None:
    with pytest.raises(RosterFault) as fault:
        read_roster(roster, Path())
    found = fault.value.faults
    assert len(found) == len(faults)
    assert all(wanted in line for wanted, line in zip(faults, found, strict=True))
    assert not any("\n" in line for line in found)


def test_paths_are_relative_to_the_roster(tmp_path: Path) -> None:
    (tmp_path / "sheets").mkdir()
    (tmp_path / "sheets" / "base.txt").write_text(SHEET, encoding="utf-8")
    roster = changed(lambda each: each.update(sheets=["sheets/base.txt"]))
    (tmp_path / "roster.json").write_text(json.dumps(roster), encoding="utf-8")
    expected = read_roster(ROSTER, Path())
    assert read_roster(tmp_path / "roster.json") == expected
    assert read_roster(roster, tmp_path) == expected


@pytest.mark.parametrize(
    ("content", "fault"),
    [
        (b"", "not JSON"),
        (b"{", "not JSON"),
        (b"[" * 100_000, "not JSON"),
        (b"\xff\xfe", "not a text file in UTF-8"),
        (b"[]", "roster"),
        (b"null", "roster"),
    ],
)
def test_a_file_that_is_no_roster_is_named(tmp_path: Path, content: bytes, fault: str) -> None:
    path = tmp_path / "roster.json"
    path.write_bytes(content)
    with pytest.raises(RosterFault, match=fault) as raised:
        read_roster(path)
    assert len(raised.value.faults) == 1


def test_a_missing_file_is_named(tmp_path: Path) -> None:
    with pytest.raises(RosterFault, match=r"nowhere\.json: No such file"):
        read_roster(tmp_path / "nowhere.json")


def test_a_fault_of_a_sheet_has_the_file_and_the_line(tmp_path: Path) -> None:
    (tmp_path / "base.txt").write_text(SHEET + "2. Hammer curl, 12-8 reps\n", encoding="utf-8")
    with pytest.raises(RosterFault, match=r"^base\.txt: Line 6 .*12-8"):
        read_roster(changed(lambda each: each.update(sheets=["base.txt"])), tmp_path)
