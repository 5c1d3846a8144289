"""Training again inside the rest days: the tables, and that no day on which the bot asks is ever too soon."""

from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.calendar import Schedule, next_day, next_slot
from domain.programme import FixedDays, Rotation
from domain.rest_days import Trained, same_again, too_soon
from tests.domain.tables import Case, read_cases

CASES = read_cases("rest-days.md")
WORKOUTS = [case for case in CASES if "workout" in case.columns]
BESIDE = [case for case in CASES if "exercise" in case.columns]
EVERY_3 = Rotation(every_days=3, order=("Pull", "Legs"))


def march(day: str | int) -> date:
    return date(2026, 3, int(day))


def schedule_of(text: str) -> Schedule:
    """Return the schedule that a cell of the table says."""
    if text.startswith("every "):
        days, _, names = text.removeprefix("every ").partition(" days: ")
        return Rotation(every_days=int(days), order=tuple(names.split(", ")))
    if ":" in text:
        weekdays, _, names = text.partition(": ")
        facts: dict[str, Any] = {"days": tuple(weekdays.split(", ")), "order": tuple(names.split(", "))}
        return FixedDays(**facts)
    pairs = [each.split() for each in text.split(", ")]
    facts = {"days": tuple(pair[0] for pair in pairs), "order": tuple(pair[1] for pair in pairs)}
    return FixedDays(**facts, by_day=True)


def done(text: str) -> list[tuple[str, date]]:
    """Return the names and days that a cell of the table says."""
    split = [each.rpartition(" ") for each in text.split(", ") if each]
    return [(name, march(day)) for name, _, day in split]


@pytest.mark.parametrize("case", WORKOUTS, ids=lambda case: case["situation"])
def test_a_workout_is_too_soon_where_the_table_says_so(case: Case) -> None:
    earlier = [Trained(name, on) for name, on in done(case["earlier"])]
    found = too_soon(schedule_of(case["schedule"]), case["workout"], march(case["on"]), earlier)
    if not case["early"]:
        assert found is None
        return
    assert found is not None
    assert (found.days_early, found.free_from) == (int(case["early"]), march(case["free"]))


@pytest.mark.parametrize("case", BESIDE, ids=lambda case: case["situation"])
def test_an_exercise_beside_the_sheet_loads_the_same_where_the_table_says_so(case: Case) -> None:
    earlier = [Trained("Pull", on, (name,)) for name, on in done(case["earlier"])]
    found = same_again(EVERY_3, case["exercise"], march(case["on"]), earlier)
    if not case["again"]:
        assert found is None
        return
    assert found is not None
    assert (found.region, found.free_from) == (case["again"], march(case["free"]))


SCHEDULES = st.one_of(
    st.builds(Rotation, every_days=st.integers(1, 7), order=st.just(("Pull", "Legs"))),
    st.builds(
        FixedDays,
        days=st.sets(st.sampled_from(["monday", "tuesday", "wednesday", "friday", "sunday"]), min_size=1).map(
            lambda days: tuple(sorted(days))
        ),
        order=st.just(("Pull", "Legs")),
    ),
)


@given(schedule=SCHEDULES, last=st.integers(0, 20), late=st.integers(0, 6))
def test_the_workout_in_turn_is_never_too_soon_from_its_day_on(
    schedule: Schedule, last: int, late: int
) -> None:
    before = march(2) + timedelta(days=last)
    asked = next_day(schedule, next_slot(schedule, last_done=before, starts=march(2), today=before), before)
    if isinstance(schedule, Rotation):
        asked += timedelta(days=late)
    assert too_soon(schedule, "Legs", asked, [Trained("Pull", before)]) is None
