"""Sheets of many hands beside the same programme in the house's way of writing.

Each `*.house.txt` was made by the writer and then read by a person against the sheet beside it: the tables of
`test_sheets.py`, written first, are the independent check.
"""

from pathlib import Path

import pytest

from domain.sheet import read_sheet, write_sheet

FOLDER = Path(__file__).parent / "house"
NAMES = sorted(path.name.removesuffix(".house.txt") for path in FOLDER.glob("*.house.txt"))


@pytest.mark.parametrize("name", NAMES)
def test_a_sheet_in_the_house_style(name: str) -> None:
    result = read_sheet((FOLDER / f"{name}.txt").read_text(encoding="utf-8"))
    assert result.faults == ()
    assert result.programme is not None
    assert write_sheet(result.programme) == (FOLDER / f"{name}.house.txt").read_text(encoding="utf-8")


def test_there_are_many() -> None:
    assert len(NAMES) >= 18
