"""Training days and local hours over decades, against other implementations and published rules.

Sources: python-dateutil's `rrule` (recurrence rules of RFC 5545) and its own reading of the IANA time zone
database; Directive 2000/84/EC, articles 2 and 3 (summer time in the European Union); 15 U.S.C. 260a (daylight
saving time in the United States, as amended by the Energy Policy Act of 2005).
"""

import importlib.resources
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from dateutil import rrule, tz

from domain.calendar import Schedule, at_local, following_days, local_day, next_slot
from domain.programme import FixedDays, Rotation, Weekday

FIRST, LAST = date(2006, 1, 1), date(2035, 12, 31)

RRULE_DAYS: dict[Weekday, rrule.weekday] = {
    "monday": rrule.MO,
    "tuesday": rrule.TU,
    "wednesday": rrule.WE,
    "thursday": rrule.TH,
    "friday": rrule.FR,
    "saturday": rrule.SA,
    "sunday": rrule.SU,
}


def as_rule(schedule: Schedule) -> rrule.rrule:
    """Return the same schedule as a recurrence rule that starts on FIRST."""
    start, end = datetime.combine(FIRST, time()), datetime.combine(LAST, time())
    if isinstance(schedule, Rotation):
        return rrule.rrule(rrule.DAILY, interval=schedule.every_days, dtstart=start, until=end)
    weekdays = [RRULE_DAYS[day] for day in schedule.days]
    return rrule.rrule(rrule.WEEKLY, byweekday=weekdays, dtstart=start, until=end)


@pytest.mark.parametrize(
    "schedule",
    [
        Rotation(every_days=1, order=("A",)),
        Rotation(every_days=3, order=("A", "B", "C")),
        Rotation(every_days=4, order=("A", "B", "C")),
        Rotation(every_days=7, order=("A", "B")),
        Rotation(every_days=30, order=("A",)),
        FixedDays(days=("sunday",), order=("A",)),
        FixedDays(days=("tuesday", "friday"), order=("A", "B")),
        FixedDays(days=("friday", "monday", "wednesday"), order=("A", "B")),
        FixedDays(days=("monday", "tuesday", "thursday", "friday"), order=("A", "B", "C", "D")),
        FixedDays(days=tuple(RRULE_DAYS), order=("A",)),
    ],
    ids=lambda schedule: (
        f"every {schedule.every_days}" if schedule.kind == "rotation" else ",".join(schedule.days)
    ),
)
def test_training_days_over_thirty_years_are_those_of_a_recurrence_rule(schedule: Schedule) -> None:
    expected = [moment.date() for moment in as_rule(schedule)]
    first = next_slot(schedule, last_done=None, starts=FIRST, today=FIRST)
    assert [first, *following_days(schedule, first, len(expected) - 1)] == expected
    for last_done, due in pairwise(expected):
        assert next_slot(schedule, last_done=last_done, starts=FIRST, today=last_done) == due


ZONES = (
    "Africa/Cairo",
    "America/Los_Angeles",
    "America/Santiago",
    "America/Sao_Paulo",
    "Antarctica/Troll",
    "Asia/Beirut",
    "Asia/Kolkata",
    "Australia/Lord_Howe",
    "Europe/Dublin",
    "Pacific/Apia",
)


def dateutil_zone(name: str) -> tzinfo:
    """Return dateutil's reading of the zone, from the same data as the program's."""
    *folders, file = name.split("/")
    with importlib.resources.files(".".join(["tzdata.zoneinfo", *folders])).joinpath(file).open("rb") as data:
        zone: tzinfo = tz.tzfile(data)
    return zone


def moments_to_check(zone: tzinfo) -> Iterator[datetime]:
    """Yield a time of every other day, ever another, and each quarter hour around a change of the clocks."""
    offset = datetime.combine(FIRST, time()).replace(tzinfo=zone).utcoffset()
    for ordinal in range(FIRST.toordinal(), LAST.toordinal()):
        midnight = datetime.combine(date.fromordinal(ordinal), time())
        if ordinal % 2:
            yield midnight + ordinal * 37 % 96 * timedelta(minutes=15)
        before, offset = offset, (midnight + timedelta(hours=23)).replace(tzinfo=zone).utcoffset()
        if before != offset:
            yield from (midnight + quarter * timedelta(minutes=15) for quarter in range(-8, 104))


def first_moment_by_dateutil(wall: datetime, zone: tzinfo) -> datetime:
    """Return what `at_local` ought to of an hour that does not exist, going back minute by minute."""
    last_before = wall
    while not tz.datetime_exists(last_before, zone):
        last_before -= timedelta(minutes=1)
    return last_before.replace(tzinfo=zone, fold=1).astimezone(UTC) + timedelta(minutes=1)


@pytest.mark.apart
@pytest.mark.parametrize("name", ZONES)
def test_local_hours_over_thirty_years_are_those_of_dateutil(name: str) -> None:
    ours, theirs = ZoneInfo(name), dateutil_zone(name)
    gaps = 0
    for wall in moments_to_check(theirs):
        exists = tz.datetime_exists(wall, theirs)
        expected = wall.replace(tzinfo=theirs).astimezone(UTC)
        if not exists:
            expected = first_moment_by_dateutil(wall, theirs)
        assert at_local(wall.date(), wall.time(), ours) == expected, wall
        assert local_day(expected, ours) == expected.astimezone(theirs).date(), wall
        gaps += not exists
    assert gaps > 0 or name == "Asia/Kolkata"


def last_sunday(year: int, month: int) -> date:
    day = date(year, month, 31)
    return day - timedelta(days=(day.weekday() + 1) % 7)


def nth_sunday(year: int, month: int, nth: int) -> date:
    first = date(year, month, 1)
    return first + timedelta(days=(6 - first.weekday()) % 7 + 7 * (nth - 1))


@pytest.mark.parametrize(
    ("zone", "hour"),
    [("Europe/Lisbon", 1), ("Europe/Berlin", 2), ("Europe/Helsinki", 3)],
)
def test_summer_time_in_the_european_union(zone: str, hour: int) -> None:
    """It begins and ends at 01:00 UTC on the last Sundays of March and October (Directive 2000/84/EC)."""
    for year in range(2002, 2038):
        begins, ends = last_sunday(year, 3), last_sunday(year, 10)
        leapt_over = at_local(begins, time(hour, 30), ZoneInfo(zone))
        assert leapt_over == datetime.combine(begins, time(1), UTC)
        comes_twice = at_local(ends, time(hour, 30), ZoneInfo(zone))
        assert comes_twice == datetime.combine(ends, time(0, 30), UTC)


@pytest.mark.parametrize(
    ("zone", "behind"), [("America/New_York", 5), ("America/Denver", 7), ("America/Anchorage", 9)]
)
def test_daylight_saving_time_in_the_united_states(zone: str, behind: int) -> None:
    """From 2 a.m. on the second Sunday of March to 2 a.m. on the first of November (15 U.S.C. 260a)."""
    for year in range(2007, 2038):
        begins, ends = nth_sunday(year, 3, 2), nth_sunday(year, 11, 1)
        leapt_over = at_local(begins, time(2, 30), ZoneInfo(zone))
        assert leapt_over == datetime.combine(begins, time(2 + behind), UTC)
        comes_twice = at_local(ends, time(1, 30), ZoneInfo(zone))
        assert comes_twice == datetime.combine(ends, time(0 + behind, 30), UTC)
