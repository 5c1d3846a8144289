"""Workouts in another order, half done, over two days, told late, twice, or in a pause: case by case."""

import re
from datetime import date
from typing import NamedTuple

import pytest

from domain.client.rotation import due
from tests.domain.client.people import SHEET, Life, at, noor
from tests.domain.client.test_days import BY_DAY
from tests.domain.client.test_waking import FIXED
from tests.domain.tables import Case, read_cases

CASES = read_cases("other-days.md")


class Written(NamedTuple):
    """A sheet, and all sets of each of its workouts, by what stands for them in the table."""

    sheet: str
    workouts: dict[str, str]


SHEETS = {
    "Every 3 days": Written(
        SHEET, {"PULL": "row 60x9, rdl 80x7, curls 14x10", "LEGS": "goblet squat 20x10, wall sit 45s"}
    ),
    "On Monday and Thursday": Written(FIXED, {"A": "leg press 100x10", "B": "chest press 50x10"}),
    "Monday Push": Written(
        BY_DAY, {"PUSH": "chest press 50x10", "PULL": "row 60x9", "LEGS": "leg press 100x10"}
    ),
}
TOLD = re.compile(r"(?P<day>\d+)(?:@(?P<hour>\d+))? (?P<text>.+)")


@pytest.mark.parametrize(
    "case", CASES, ids=lambda case: case.place.split(",")[0][:12] + " " + case["situation"]
)
def test_it_is_of_its_true_day_and_the_rotation_goes_on(case: Case) -> None:
    written = next(sheet for head, sheet in SHEETS.items() if case.place.startswith(head))
    life, day = Life(noor(written.sheet)), 2
    for step in case["told"].split("; "):
        told = TOLD.fullmatch(step)
        assert told, step
        day, hour, text = int(told["day"]), int(told["hour"] or 18), told["text"]
        for name, sets in written.workouts.items():
            text = re.sub(rf"\b{name}\b", sets, text)
        if text == "-":
            life.passes_to(at(day, hour))
        else:
            life.says(text, at(day, hour))
    journal = ", ".join(f"{each.name} {each.on.day} {each.state}" for each in life.state.workouts)
    entries = sorted(entry.set.on.day for entry in life.state.entries if entry.set.on is not None)
    coming = due(life.state, date(2026, 3, day))
    assert coming is not None
    assert journal == case["journal"]
    assert ", ".join(map(str, entries)) == case["sets of"]
    assert f"{coming.workout} {coming.on.day}" == case["next"]
