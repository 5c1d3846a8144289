"""Days: back for sets, forward for plans, and asked about where there are two ways to take them."""

from datetime import date, datetime

import pytest

from domain.reading.days import find_days
from domain.reading.message import message_of
from domain.reading.when import coming_day, past_day

WEDNESDAY = datetime(2026, 3, 25, 18, 0)  # noqa: DTZ001 - local, as a client's messages are


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("yesterday", date(2026, 3, 24)),
        ("last night", date(2026, 3, 24)),
        ("this morning", date(2026, 3, 25)),
        ("on monday", date(2026, 3, 23)),
        ("last tuesday", date(2026, 3, 24)),
        ("last thursday", date(2026, 3, 19)),
        ("on the 9th", date(2026, 3, 9)),
        ("on the 30th", date(2026, 1, 30)),  # February has none
        ("on 12/3", date(2026, 3, 12)),
        ("on 3/12", date(2026, 3, 12)),  # 3 December lies more than sixty days back
        ("for 3/20:", date(2026, 3, 20)),
        ("two days ago", date(2026, 3, 23)),
        ("the day before yesterday", date(2026, 3, 23)),
        ("20th of march", date(2026, 3, 20)),
        ("2026-03-20", date(2026, 3, 20)),
    ],
)
def test_a_day_of_a_set_lies_behind(text: str, day: date) -> None:
    (found,) = find_days(message_of(text))
    assert past_day(found, WEDNESDAY) == day


@pytest.mark.parametrize("text", ["on wednesday", "on 2/3 or so", "the other day"])
def test_a_day_with_two_ways_to_take_it_is_asked_about(text: str) -> None:
    """Today's own weekday; 2 March and 3 February; no day at all."""
    (found,) = find_days(message_of(text))
    assert past_day(found, WEDNESDAY) is None


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("tomorrow", date(2026, 3, 26)),
        ("on friday", date(2026, 3, 27)),
        ("on wednesday", date(2026, 4, 1)),
        ("till the 14th", date(2026, 4, 14)),
        ("next monday", date(2026, 3, 30)),
        ("next friday", None),  # the coming one, or the one after it
    ],
)
def test_a_day_of_a_plan_lies_ahead(text: str, day: date | None) -> None:
    (found,) = find_days(message_of(text))
    assert coming_day(found, WEDNESDAY) == day


@pytest.mark.parametrize(
    "text",
    ["80x8", "failed on the 9th", "40/7", "may do legs", "bench 100 8 8 7", "rest 90 sec", "1.5 l water"],
)
def test_what_only_looks_like_a_day_is_none(text: str) -> None:
    assert find_days(message_of(text)) == []
