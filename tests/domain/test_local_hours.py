"""Local hours and days: cases by name, and the laws that hold for every zone.

Clock changes of named places are checked here; whole decades against other implementations in
`tests/reference/test_calendar.py`.
"""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from domain.calendar import (
    at_local,
    day_lived,
    local_day,
    not_before,
)

days = st.dates(date(1995, 1, 1), date(2060, 12, 31))
ZONES = (
    "Africa/Cairo",
    "Africa/Casablanca",
    "America/New_York",
    "America/Sao_Paulo",
    "America/Santiago",
    "Antarctica/Troll",
    "Asia/Beirut",
    "Asia/Kathmandu",
    "Australia/Lord_Howe",
    "Europe/Dublin",
    "Pacific/Apia",
    "Pacific/Chatham",
)
zones = st.sampled_from(ZONES).map(ZoneInfo)
moments = st.datetimes(datetime(1995, 1, 1), datetime(2060, 12, 31), timezones=st.just(UTC))  # noqa: DTZ001 - bounds


def utc(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


# The clock changes are those of the IANA time zone database.
@pytest.mark.parametrize(
    ("zone", "local", "expected"),
    [
        ("Europe/Berlin", "2025-01-15 08:00", "2025-01-15 07:00"),
        ("Europe/Berlin", "2025-07-15 08:00", "2025-07-15 06:00"),
        ("Asia/Kathmandu", "2025-07-15 08:00", "2025-07-15 02:15"),
        ("Pacific/Kiritimati", "2025-07-15 08:00", "2025-07-14 18:00"),
        ("Pacific/Pago_Pago", "2025-07-15 20:00", "2025-07-16 07:00"),
        ("America/St_Johns", "2025-07-15 08:00", "2025-07-15 10:30"),
    ],
)
def test_a_local_hour_is_a_moment(zone: str, local: str, expected: str) -> None:
    wall = datetime.fromisoformat(local)
    assert at_local(wall.date(), wall.time(), ZoneInfo(zone)) == utc(expected)


@pytest.mark.parametrize(
    ("zone", "local", "expected"),
    [
        ("Europe/Berlin", "2025-03-30 02:30", "2025-03-30 01:00"),  # 02:00 to 03:00
        ("Europe/Berlin", "2025-03-30 02:00", "2025-03-30 01:00"),
        ("Europe/Berlin", "2025-03-30 02:59:59", "2025-03-30 01:00"),
        ("America/New_York", "2025-03-09 02:30", "2025-03-09 07:00"),  # 02:00 to 03:00
        ("America/Santiago", "2025-09-07 00:30", "2025-09-07 04:00"),  # 00:00 to 01:00
        ("America/Sao_Paulo", "2018-11-04 00:15", "2018-11-04 03:00"),  # 00:00 to 01:00
        ("Africa/Cairo", "2025-04-25 00:30", "2025-04-24 22:00"),  # 00:00 to 01:00
        ("Asia/Beirut", "2025-03-30 00:45", "2025-03-29 22:00"),  # 00:00 to 01:00
        ("Australia/Lord_Howe", "2025-10-05 02:15", "2025-10-04 15:30"),  # 02:00 to 02:30
        ("Pacific/Auckland", "2025-09-28 02:10", "2025-09-27 14:00"),  # 02:00 to 03:00
        ("Antarctica/Troll", "2025-03-30 02:30", "2025-03-30 01:00"),  # 01:00 to 03:00
        ("Pacific/Apia", "2011-12-30 08:00", "2011-12-30 10:00"),  # the whole day, leapt over the date line
    ],
)
def test_an_hour_that_does_not_exist_is_the_first_moment_after_the_gap(
    zone: str, local: str, expected: str
) -> None:
    wall = datetime.fromisoformat(local)
    assert at_local(wall.date(), wall.time(), ZoneInfo(zone)) == utc(expected)


@pytest.mark.parametrize(
    ("zone", "local", "expected"),
    [
        ("Europe/Berlin", "2025-10-26 02:30", "2025-10-26 00:30"),  # 03:00 to 02:00
        ("Europe/Berlin", "2025-10-26 03:00", "2025-10-26 02:00"),
        ("America/New_York", "2025-11-02 01:30", "2025-11-02 05:30"),  # 02:00 to 01:00
        ("America/Santiago", "2025-04-05 23:30", "2025-04-06 02:30"),  # 24:00 to 23:00
        ("Africa/Cairo", "2025-10-30 23:30", "2025-10-30 20:30"),  # 24:00 to 23:00
        ("Asia/Beirut", "2025-10-25 23:30", "2025-10-25 20:30"),  # 24:00 to 23:00
        ("Australia/Lord_Howe", "2025-04-06 01:45", "2025-04-05 14:45"),  # 02:00 to 01:30
        ("Pacific/Auckland", "2025-04-06 02:30", "2025-04-05 13:30"),  # 03:00 to 02:00
        ("Antarctica/Troll", "2025-10-26 01:30", "2025-10-25 23:30"),  # 03:00 to 01:00
    ],
)
def test_an_hour_that_comes_twice_is_its_first_coming(zone: str, local: str, expected: str) -> None:
    wall = datetime.fromisoformat(local)
    assert at_local(wall.date(), wall.time(), ZoneInfo(zone)) == utc(expected)


@example(date(2047, 3, 31), time(1, 0, 0, 1), ZoneInfo("Europe/Dublin"))
@given(days, st.times(), zones)
def test_a_local_hour_is_the_first_moment_at_which_clocks_have_reached_it(
    day: date, hour: time, zone: ZoneInfo
) -> None:
    moment = at_local(day, hour, zone)
    wall = datetime.combine(day, hour)
    assert moment.astimezone(zone).replace(tzinfo=None) >= wall
    just_before = (moment - timedelta(microseconds=1)).astimezone(zone).replace(tzinfo=None)
    assert just_before < wall


@given(moments, zones)
def test_a_moment_comes_back_from_its_local_day_and_hour(moment: datetime, zone: ZoneInfo) -> None:
    local = moment.astimezone(zone)
    back = at_local(local.date(), local.time(), zone)
    assert back <= moment
    assert back == moment if local.fold == 0 else back < moment
    assert local_day(moment, zone) == local_day(back, zone) == local.date()


@pytest.mark.parametrize(
    ("zone", "moment", "expected"),
    [
        ("Europe/Berlin", "2025-07-15 21:59", date(2025, 7, 15)),
        ("Europe/Berlin", "2025-07-15 22:00", date(2025, 7, 16)),
        ("Pacific/Kiritimati", "2025-07-15 10:00", date(2025, 7, 16)),
        ("Pacific/Pago_Pago", "2025-07-15 10:00", date(2025, 7, 14)),
        ("Pacific/Apia", "2011-12-30 09:59", date(2011, 12, 29)),
        ("Pacific/Apia", "2011-12-30 10:00", date(2011, 12, 31)),
    ],
)
def test_the_local_day_is_what_the_client_calls_today(zone: str, moment: str, expected: date) -> None:
    assert local_day(utc(moment), ZoneInfo(zone)) == expected


@pytest.mark.parametrize(
    ("moment", "expected"),
    [
        ("2025-07-15 21:30", date(2025, 7, 15)),  # half past eleven in the evening
        ("2025-07-15 22:30", date(2025, 7, 15)),  # half past midnight
        ("2025-07-16 01:59", date(2025, 7, 15)),
        ("2025-07-16 02:00", date(2025, 7, 16)),  # four in the morning
    ],
)
def test_past_midnight_who_is_still_up_lives_in_the_day_before(moment: str, expected: date) -> None:
    assert day_lived(utc(moment), ZoneInfo("Europe/Berlin")) == expected


@pytest.mark.parametrize(
    ("zone", "moment", "expected"),
    [
        ("Europe/Berlin", "2025-07-15 12:00", "2025-07-15 12:00"),
        ("Europe/Berlin", "2025-07-15 05:00", "2025-07-15 05:00"),  # 07:00 sharp
        ("Europe/Berlin", "2025-07-15 04:59", "2025-07-15 05:00"),
        ("Europe/Berlin", "2025-07-15 19:59", "2025-07-15 19:59"),
        ("Europe/Berlin", "2025-07-15 20:00", "2025-07-16 05:00"),  # 22:00 sharp
        ("Europe/Berlin", "2025-07-15 22:30", "2025-07-16 05:00"),  # past midnight
        ("Europe/Berlin", "2025-03-29 23:00", "2025-03-30 05:00"),  # the night that is an hour short
        ("Australia/Sydney", "2025-01-15 12:00", "2025-01-15 20:00"),
    ],
)
def test_quiet_hours_put_a_message_off_to_the_morning(zone: str, moment: str, expected: str) -> None:
    assert not_before(utc(moment), ZoneInfo(zone)) == utc(expected)


@given(moments, zones, st.integers(4, 11), st.integers(12, 23))
def test_nothing_is_said_in_the_quiet_hours(moment: datetime, zone: ZoneInfo, opens: int, shuts: int) -> None:
    earliest, latest = time(opens), time(shuts)
    put_off = not_before(moment, zone, earliest, latest)
    assert moment <= put_off <= moment + timedelta(hours=24 - shuts + opens + 1)
    assert earliest <= put_off.astimezone(zone).time() < latest
    assert not_before(put_off, zone, earliest, latest) == put_off


def test_in_a_night_whose_morning_comes_twice_the_first_one_ends_the_quiet_hours() -> None:
    second_half_past_two = utc("2025-10-26 01:30")
    assert second_half_past_two.astimezone(ZoneInfo("Europe/Berlin")).fold == 1
    put_off = not_before(second_half_past_two, ZoneInfo("Europe/Berlin"), earliest=time(2, 45))
    assert put_off == second_half_past_two


@pytest.mark.parametrize(("earliest", "latest"), [(time(22), time(7)), (time(7), time(7))])
def test_quiet_hours_that_leave_no_day_are_refused(earliest: time, latest: time) -> None:
    with pytest.raises(ValueError, match=f"{earliest} is not before {latest}"):
        not_before(utc("2025-07-15 12:00"), ZoneInfo("UTC"), earliest, latest)


def test_a_moment_without_an_offset_is_refused() -> None:
    naive = datetime(2025, 7, 15, 12)  # noqa: DTZ001 - that is the case
    with pytest.raises(ValueError, match="must have an offset"):
        local_day(naive, ZoneInfo("UTC"))
    with pytest.raises(ValueError, match="must have an offset"):
        not_before(naive, ZoneInfo("UTC"))
