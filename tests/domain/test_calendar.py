"""Training days: cases by name, and the laws that hold for every schedule.

Whole decades are checked against other implementations in `tests/reference/test_calendar.py`.
"""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.calendar import (
    Schedule,
    earliest_ok,
    following_days,
    left_behind,
    next_day,
    next_slot,
    workout_in_turn,
)
from domain.programme import FixedDays, Rotation, Weekday

THIRD_DAY = Rotation(every_days=3, order=("Pull", "Push", "Legs"))
MON_WED_FRI = FixedDays(days=("monday", "wednesday", "friday"), order=("A", "B"))
MON_TUE_THU = FixedDays(days=("thursday", "monday", "tuesday"), order=("A", "B"))
SUNDAYS = FixedDays(days=("sunday",), order=("A",))

MONDAY = date(2025, 6, 2)
TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY = (MONDAY + timedelta(n) for n in range(1, 7))
NEXT_MONDAY = date(2025, 6, 9)

weekdays: tuple[Weekday, ...] = (
    "monday",
    "tuesday",
    "wednesday",
    "thursday",
    "friday",
    "saturday",
    "sunday",
)
rotations = st.builds(Rotation, every_days=st.integers(1, 30), order=st.just(("A", "B", "C")))
fixed_days = st.builds(
    FixedDays,
    days=st.lists(st.sampled_from(weekdays), min_size=1, unique=True).map(tuple),
    order=st.just(("A", "B", "C")),
)
schedules = st.one_of(rotations, fixed_days)
days = st.dates(date(1995, 1, 1), date(2060, 12, 31))
delays = st.lists(st.integers(0, 40), min_size=1, max_size=30)


@pytest.mark.parametrize(
    ("schedule", "last_done", "starts", "today", "expected"),
    [
        # A rotation counts from the day of the last workout done.
        (THIRD_DAY, None, TUESDAY, MONDAY, TUESDAY),
        (THIRD_DAY, None, TUESDAY, SUNDAY, TUESDAY),  # not begun: overdue since its start
        (THIRD_DAY, MONDAY, MONDAY, TUESDAY, THURSDAY),
        (THIRD_DAY, TUESDAY, MONDAY, TUESDAY, FRIDAY),  # a day late, and so is the next one
        (THIRD_DAY, MONDAY, MONDAY, NEXT_MONDAY, THURSDAY),  # overdue
        (THIRD_DAY, MONDAY, SUNDAY, MONDAY, SUNDAY),  # a new programme starts later
        (Rotation(every_days=1, order=("A",)), MONDAY, MONDAY, MONDAY, TUESDAY),
        # Fixed days stay where they are.
        (MON_WED_FRI, None, TUESDAY, MONDAY, WEDNESDAY),
        (MON_WED_FRI, None, WEDNESDAY, MONDAY, WEDNESDAY),
        (MON_WED_FRI, MONDAY, MONDAY, MONDAY, WEDNESDAY),
        (MON_WED_FRI, TUESDAY, MONDAY, TUESDAY, WEDNESDAY),  # Monday's workout, a day late
        (MON_WED_FRI, FRIDAY, MONDAY, FRIDAY, NEXT_MONDAY),
        (MON_WED_FRI, MONDAY, MONDAY, FRIDAY, WEDNESDAY),  # overdue
        (MON_WED_FRI, MONDAY, FRIDAY, MONDAY, FRIDAY),  # a new programme starts later
        (SUNDAYS, SUNDAY, MONDAY, SUNDAY, date(2025, 6, 15)),
        # Fixed days more than a week gone by are not caught up on.
        (MON_WED_FRI, MONDAY, MONDAY, date(2025, 6, 11), WEDNESDAY),
        (MON_WED_FRI, MONDAY, MONDAY, date(2025, 6, 12), FRIDAY),
        (SUNDAYS, SUNDAY, MONDAY, date(2025, 12, 30), date(2025, 12, 28)),
    ],
)
def test_the_next_workout_is_due(
    schedule: Schedule, last_done: date | None, starts: date, today: date, expected: date
) -> None:
    assert next_slot(schedule, last_done=last_done, starts=starts, today=today) == expected


@pytest.mark.parametrize(
    ("schedule", "from_day", "expected"),
    [
        (THIRD_DAY, MONDAY, (THURSDAY, SUNDAY, date(2025, 6, 11))),
        (MON_WED_FRI, MONDAY, (WEDNESDAY, FRIDAY, NEXT_MONDAY)),
        (MON_WED_FRI, SATURDAY, (NEXT_MONDAY, date(2025, 6, 11), date(2025, 6, 13))),
        (MON_TUE_THU, SUNDAY, (NEXT_MONDAY, date(2025, 6, 10), date(2025, 6, 12))),
        (THIRD_DAY, date(2024, 2, 27), (date(2024, 3, 1), date(2024, 3, 4), date(2024, 3, 7))),  # a leap year
    ],
)
def test_a_plan_ahead_names_the_days_to_come(
    schedule: Schedule, from_day: date, expected: tuple[date, ...]
) -> None:
    assert following_days(schedule, from_day, 3) == expected
    assert following_days(schedule, from_day, 0) == ()


@pytest.mark.parametrize(
    ("schedule", "last_done", "expected"),
    [
        (THIRD_DAY, MONDAY, THURSDAY),
        (Rotation(every_days=1, order=("A",)), MONDAY, TUESDAY),
        (MON_WED_FRI, MONDAY, WEDNESDAY),
        (MON_WED_FRI, TUESDAY, THURSDAY),  # late: Wednesday would be without the week's rest day
        (MON_WED_FRI, FRIDAY, SUNDAY),  # one day of rest is what the week has elsewhere
        (MON_TUE_THU, THURSDAY, FRIDAY),  # Monday and Tuesday have no rest between them either
        (SUNDAYS, SUNDAY, date(2025, 6, 15)),
        (SUNDAYS, TUESDAY, SUNDAY),  # late, but Sunday stays
        (SUNDAYS, SATURDAY, date(2025, 6, 9)),
    ],
)
def test_earlier_than_the_rest_days_allow_is_too_early(
    schedule: Schedule, last_done: date, expected: date
) -> None:
    assert earliest_ok(schedule, last_done) == expected


@given(rotations, days, delays)
def test_rest_days_in_a_rotation_are_never_fewer_than_the_sheet_says(
    schedule: Rotation, starts: date, late: list[int]
) -> None:
    last_done: date | None = None
    for delay in late:
        due = next_slot(schedule, last_done=last_done, starts=starts, today=starts)
        if last_done is not None:
            assert (due - last_done).days - 1 >= schedule.every_days - 1
            assert due == earliest_ok(schedule, last_done)
        last_done = due + timedelta(delay)


@given(schedules, days, days, st.integers(-400, 400))
def test_a_workout_is_due_neither_before_the_start_nor_within_the_rest_days(
    schedule: Schedule, last_done: date, starts: date, ahead: int
) -> None:
    slot = next_slot(schedule, last_done=last_done, starts=starts, today=last_done + timedelta(ahead))
    due = next_day(schedule, slot, last_done)
    assert due >= starts
    assert due >= earliest_ok(schedule, last_done) > last_done


@given(fixed_days, days, days, days)
def test_fixed_days_are_the_only_ones_that_are_due(
    schedule: FixedDays, last_done: date, starts: date, today: date
) -> None:
    due = next_slot(schedule, last_done=last_done, starts=starts, today=today)
    assert f"{due:%A}".lower() in schedule.days
    assert due >= today - timedelta(days=7)


@given(schedules, days, st.integers(1, 40))
def test_a_client_who_is_never_late_trains_on_the_days_planned_ahead(
    schedule: Schedule, starts: date, count: int
) -> None:
    first = next_slot(schedule, last_done=None, starts=starts, today=starts)
    done = [first]
    for _ in range(count):
        done.append(next_slot(schedule, last_done=done[-1], starts=starts, today=done[-1]))
    assert tuple(done[1:]) == following_days(schedule, first, count)


@pytest.mark.parametrize(
    ("order", "done", "expected"),
    [
        ("Pull Push Legs", "", "Pull"),
        ("Pull Push Legs", "Pull", "Push"),
        ("Pull Push Legs", "Pull Push Legs", "Pull"),
        ("Pull Push Legs", "Arms", "Pull"),  # of another programme
        ("Pull Push Legs", "Pull Legs", "Push"),  # out of turn: what was in turn stays so
        ("Pull Push Legs", "Pull Legs Push", "Pull"),  # and what was done ahead is not asked for again
        ("Pull Push Legs", "Legs", "Pull"),
        ("Pull Push Legs", "Legs Pull Push", "Pull"),
        ("Pull Push Legs", "Pull Pull", "Push"),  # the same again
        ("Pull Push Legs", "Pull Push Pull", "Legs"),
        ("Pull Push Legs", "Pull Push Legs Legs Pull Push", "Legs"),
        ("Whole", "Whole", "Whole"),
        ("Push Legs Pull Legs", "Push", "Legs"),
        ("Push Legs Pull Legs", "Push Legs", "Pull"),
        ("Push Legs Pull Legs", "Push Legs Pull", "Legs"),
        ("Push Legs Pull Legs", "Push Legs Pull Legs", "Push"),
        ("A A B", "A", "A"),
        ("A A B", "A A", "B"),
    ],
)
def test_workouts_come_in_turn(order: str, done: str, expected: str) -> None:
    assert workout_in_turn(order.split(), done.split()) == expected


@pytest.mark.parametrize(
    ("begins", "done", "expected"),
    [
        ("Legs", "", "Legs"),
        ("Legs", "Legs", "Pull"),
        ("Push", "Push", "Legs"),
        ("Push", "Legs", "Push"),  # out of turn: what was in turn stays so
        ("Push", "Legs Push", "Pull"),
        ("Pull", "Pull", "Push"),
        ("Arms", "", "Pull"),  # of another programme
    ],
)
def test_who_comes_in_the_middle_of_a_round_goes_on_from_there(begins: str, done: str, expected: str) -> None:
    assert workout_in_turn(["Pull", "Push", "Legs"], done.split(), begins=begins) == expected


orders = st.lists(st.sampled_from("ABC"), min_size=1, max_size=8)


@given(orders, st.integers(1, 30))
def test_the_order_never_changes_even_where_a_workout_comes_twice(order: list[str], count: int) -> None:
    done: list[str] = []
    for place in range(count):
        turn = workout_in_turn(order, done)
        assert turn == order[place % len(order)]
        done.append(turn)


@given(orders, st.lists(st.sampled_from("ABCD"), max_size=20), st.sampled_from("ABCD"))
def test_the_workout_in_turn_is_never_skipped(order: list[str], done: list[str], other: str) -> None:
    turn = workout_in_turn(order, done)
    if other != turn:
        assert workout_in_turn(order, [*done, other]) == turn


@given(orders, st.lists(st.sampled_from("ABCD"), max_size=20))
def test_after_any_disorder_a_round_comes_in_the_order_of_the_sheet(
    order: list[str], done: list[str]
) -> None:
    for _ in order:  # whatever round is under way is over then
        done.append(workout_in_turn(order, done))
        if workout_in_turn(order, done) == order[0]:
            break
    start = len(done)
    while workout_in_turn(order, done) != order[0] or len(done) == start:
        done.append(workout_in_turn(order, done))
        assert len(done) <= start + len(order)


@given(st.lists(st.text(max_size=3), min_size=1, max_size=8, unique=True), st.integers(0, 7))
def test_where_the_beginning_is_not_known_the_first_known_was_in_turn(order: list[str], place: int) -> None:
    place %= len(order)
    turn = workout_in_turn(order, [order[place]], from_start=False)
    assert turn == order[(place + 1) % len(order)]


@pytest.mark.parametrize(
    ("slot", "on", "keeps_rest", "expected"),
    [
        (MONDAY, TUESDAY, False, None),  # a day late, and Wednesday stays
        (MONDAY, WEDNESDAY, False, WEDNESDAY),  # on the day of the next one
        (MONDAY, SATURDAY, False, WEDNESDAY),
        (MONDAY, TUESDAY, True, WEDNESDAY),
        (WEDNESDAY, FRIDAY, True, FRIDAY),
        (FRIDAY, SUNDAY, True, NEXT_MONDAY),  # a day of rest is missing
        (FRIDAY, SATURDAY, True, None),
    ],
)
def test_a_fixed_day_is_left_behind_where_another_has_taken_it(
    slot: date, on: date, keeps_rest: bool, expected: date | None
) -> None:
    assert left_behind(MON_WED_FRI, slot, on, keeps_rest=keeps_rest) == expected
