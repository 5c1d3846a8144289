"""A week with a workout of its own on each day: moving, making up and changing places lose none of them."""

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.client.rotation import Due, due
from domain.parts import Notice, Reminder
from tests.domain.client.people import SHEET, ZONE, Life, at, noor
from tests.domain.client.test_days import BY_DAY, LEGS, PULL, journal
from tests.domain.client.test_waking import FIXED

DONE = {
    "Push": "chest press 50x10",
    "Pull": "row 60x9",
    "Legs": "leg press 100x10",
    "A": "leg press 100x10",
    "B": "chest press 50x10",
}


def coming(life: Life, today: int) -> tuple[str, int]:
    """Return the next workout and its day of March."""
    there = due(life.state, date(2026, 3, 1) + timedelta(days=today - 1))
    assert there is not None
    return there.workout, (there.on - date(2026, 2, 28)).days


def lives(life: Life, until: int, since: int) -> list[tuple[str, int]]:
    """Let the client do each workout on the evening of its reminder; return them with their days."""
    done = []
    for day in range(since, until + 1):
        said = life.passes_to(at(day, 12))
        for part in said:
            if isinstance(part, Reminder):
                life.says(DONE[part.workout], at(day, 18))
                done.append((part.workout, day))
    return done


def test_a_workout_moved_onto_the_next_ones_day_pushes_that_on_until_the_week_is_whole_again() -> None:
    life = Life(noor(BY_DAY))
    life.says("move it to Wednesday", at(2, 7))
    assert lives(life, 31, since=2)[:9] == [
        ("Push", 4),
        ("Pull", 6),
        ("Legs", 8),
        ("Push", 10),
        ("Pull", 12),
        ("Legs", 14),
        ("Push", 16),  # a Monday
        ("Pull", 18),
        ("Legs", 20),
    ]


def test_one_that_was_let_pass_and_is_made_up_takes_no_other_ones_day() -> None:
    life = Life(noor(BY_DAY))
    life.says(DONE["Push"], at(2, 18))
    life.says("skip today", at(4, 9))
    assert coming(life, 4) == ("Legs", 6)
    life.says(DONE["Pull"], at(5, 18))
    assert [coming(life, 5)[0], *(name for name, _ in lives(life, 13, since=6))] == [
        "Legs",
        *("Legs", "Push", "Pull", "Legs"),
    ]


IN_TURN = BY_DAY.replace(
    "Monday: Push, Wednesday: Pull, Friday: Legs", "Monday, Wednesday, Friday in turn: Push, Pull, Legs"
)
RUNNING = BY_DAY.replace("Wednesday", "Tuesday")  # two days running: the week asks for no rest day in between


@pytest.mark.parametrize("sheet", [BY_DAY, IN_TURN])
@pytest.mark.parametrize(
    "late",
    [
        [("move it to tomorrow", at(2, 7)), (DONE["Push"], at(3, 18))],
        [(DONE["Push"], at(3, 7))],  # before it was asked about
        [(DONE["Push"], at(3, 18))],  # after that
    ],
    ids=["moved", "told of late", "taken for missed"],
)
def test_a_late_workout_puts_the_next_off_until_it_has_the_rest_of_the_week_and_says_so(
    sheet: str, late: list[tuple[str, datetime]]
) -> None:
    life = Life(noor(sheet))
    for text, when in late:
        said = life.says(text, when)
    (done,) = [part for part in said if isinstance(part, Notice) and part.topic == "workout done"]
    assert (done.facts["on"], done.facts["own_day"], done.facts["whole_rest_days"]) == (
        "2026-03-05",
        "2026-03-04",
        1,
    )
    assert lives(life, 16, since=4) == [("Pull", 5), ("Legs", 7), ("Push", 9), *REST_OF_MARCH]


REST_OF_MARCH = [("Pull", 11), ("Legs", 13), ("Push", 16)]


@pytest.mark.parametrize(
    ("sheet", "expected"),
    [
        (RUNNING, [("Push", 3), ("Pull", 4), ("Legs", 6), ("Push", 9)]),
        (IN_TURN, [("Push", 3), ("Pull", 5), ("Legs", 7), ("Push", 9)]),
        (FIXED, [("A", 3), ("B", 6), ("A", 9)]),
    ],
    ids=["two days running", "a rest day", "two rest days"],
)
def test_a_workout_moved_by_a_day_is_followed_by_no_less_rest_than_the_week_has(
    sheet: str, expected: list[tuple[str, int]]
) -> None:
    life = Life(noor(sheet))
    life.says("move it to tomorrow", at(2, 7))
    assert lives(life, 9, since=2) == expected


def test_moving_says_what_it_puts_off() -> None:
    life = Life(noor(BY_DAY))
    (moved,) = life.says("move it to tomorrow", at(2, 7))
    assert isinstance(moved, Notice)
    assert (moved.facts["next"], moved.facts["next_on"]) == ("Pull", "2026-03-05")
    assert moved.facts["own_day"] == "2026-03-04"


def test_a_workout_done_before_its_day_does_not_come_on_it_again() -> None:
    life = Life(noor(BY_DAY))
    life.says("move it to Tuesday", at(1, 7))
    life.says("move it to Wednesday", at(2, 7))
    life.says(DONE["Push"], at(2, 18))
    assert coming(life, 2) == ("Pull", 4)
    life.says("moving it to tomorrow", at(2, 19))
    life.says(DONE["Pull"], at(3, 18))
    assert coming(life, 3) == ("Legs", 6)


def test_two_in_each_others_place_have_changed_places_for_that_week() -> None:
    life = Life(noor(BY_DAY))
    life.says(DONE["Pull"], at(2, 18))
    assert lives(life, 11, since=3) == [("Push", 4), ("Legs", 6), ("Push", 9), ("Pull", 11)]


def test_a_missed_one_made_up_on_the_next_ones_day_pushes_that_on() -> None:
    life = Life(noor(BY_DAY))
    life.passes_to(at(4, 9))
    life.says(DONE["Push"], at(4, 18))
    assert journal(life) == [("Push", 2, "missed"), ("Push", 4, "done")]
    assert coming(life, 4) == ("Pull", 6)


def test_a_moved_one_that_is_missed_does_not_take_the_days_own_with_it() -> None:
    life = Life(noor(BY_DAY))
    life.says("move it to Wednesday", at(2, 7))
    life.passes_to(at(5, 9))
    assert journal(life) == [("Push", 4, "missed")]
    assert coming(life, 5) == ("Pull", 6)


def test_a_pause_begins_the_week_anew() -> None:
    life = Life(noor(BY_DAY))
    life.says("move it to Wednesday", at(2, 7))
    life.says(DONE["Push"], at(4, 18))
    life.says("away till the 14th", at(5, 18))
    assert coming(life, 5) == ("Push", 16)


MOVED = {
    BY_DAY: (("Push", "Pull", "Legs"), DONE),
    FIXED: (("A", "B"), {"A": "leg press 100x10", "B": "chest press 50x10"}),
    SHEET: (("Pull", "Legs"), {"Pull": PULL, "Legs": LEGS}),
}


@settings(max_examples=80, deadline=None)
@given(st.sampled_from(sorted(MOVED)), st.lists(st.none() | st.integers(1, 6), max_size=25))
def test_moving_never_loses_a_workout_nor_changes_the_order(sheet: str, moves: list[int | None]) -> None:
    """On the morning of each workout it is moved by some days, or else done that evening."""
    order, done_by = MOVED[sheet]
    life, day = Life(noor(sheet)), date(2026, 3, 2)
    for ahead in moves:
        there = due(life.state, day)
        assert there is not None
        day = there.on
        morning = datetime.combine(day, time(7), ZONE).astimezone(UTC)
        if ahead is None:
            life.says(done_by[there.workout], morning + timedelta(hours=11))
        else:
            life.says(f"move it to {day + timedelta(days=ahead):%-d %B}", morning)
            assert due(life.state, day) == Due(there.workout, day + timedelta(days=ahead))
    assert [record.state for record in life.state.workouts] == ["done"] * moves.count(None)
    done = life.state.workouts
    assert [record.name for record in done] == [order[turn % len(order)] for turn in range(len(done))]
    assert all(before.on < after.on for before, after in pairwise(done))
