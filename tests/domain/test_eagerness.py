"""Doing more than was asked: the table."""

import pytest

from domain.comparison import Body
from domain.eagerness import over_eager
from domain.exercises import describe
from domain.loading import Loading
from domain.programme import Prescription
from tests.domain.sheet_cells import equipped, prescribed
from tests.domain.tables import Case, exposures, read_cases, sets

CASES = read_cases("over-eager.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["situation"])
def test_what_is_found_is_what_the_table_says(case: Case) -> None:
    sheet, aim, past = case.get("sheet"), case.get("aim"), exposures(case.get("before"))
    (now,) = exposures(case["now"])
    prescription: Prescription | None = prescribed(sheet, "Bench press")[0] if sheet else None
    found = over_eager(
        now,
        past[-1] if past else None,
        prescription,
        aim=sets(aim)[0] if aim else None,
        loading=Loading(describe("Bench press"), equipped(case.get("equipment"), "kg"), "kg", Body()),
    )
    assert ", ".join(each.rule for each in found) == case["found"]
