"""Stretches of days that are over or still go on, as they are said: "this month", "in March", "since Monday".

Weeks begin on Monday. What would lie ahead is the latest one that does not.
"""

import re
from datetime import date, timedelta
from typing import NamedTuple

from domain.expressions import Expression

_MONTHS = (
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
)
_SMALL = {
    "": 1,
    "a": 1,
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "couple": 2,
    "few": 3,
}
_LATELY = Expression(
    r"(?:in|over|during)? ?the (?:last|past)(?: (?P<count>\d{1,3}|[a-z]+))? (?P<unit>day|week|month|year)s?"
)
_MONTH = Expression(r"(?P<lead>in|since) (?P<month>[a-z]{3,9})(?: (?P<year>(?:19|20)\d\d))?")
_YEAR = Expression(r"(?P<lead>in|since) (?P<year>(?:19|20)\d\d)")
_DAYS = {"day": 1, "week": 7, "month": 30, "year": 365}


class Span(NamedTuple):
    """All days from the `first` to the `last`."""

    first: date
    last: date


def span_of(text: str, today: date) -> Span | None:
    """Return the days that `text` speaks of, none after `today`; None where it speaks of none."""
    said = " ".join(text.casefold().split()).strip(" .!?")
    if (found := _of_this_or_last(said, today)) is not None:
        return found
    if found_lately := _LATELY.fullmatch(said):
        count = _number(found_lately["count"] or "")
        return None if count is None else Span(_back(today, count * _DAYS[found_lately["unit"]] - 1), today)
    if found_month := _MONTH.fullmatch(said):
        return _of_month(found_month, today)
    if found_year := _YEAR.fullmatch(said):
        first = date(int(found_year["year"]), 1, 1)
        last = today if found_year["lead"] == "since" else date(first.year, 12, 31)
        return Span(first, min(last, today)) if first <= today else None
    return None


def _of_this_or_last(said: str, today: date) -> Span | None:
    monday, month = today - timedelta(days=today.weekday()), today.replace(day=1)
    before = month - timedelta(days=1)
    match said.removeprefix("in ").removeprefix("since "):
        case "this week":
            return Span(monday, today)
        case "last week":
            return Span(_back(monday, 7), _back(monday, 1))
        case "this month":
            return Span(month, today)
        case "last month":
            return Span(before.replace(day=1), before)
        case "this year":
            return Span(date(today.year, 1, 1), today)
        case "last year":
            return Span(date(today.year - 1, 1, 1), date(today.year - 1, 12, 31))
        case _:
            return None


def _of_month(found: re.Match[str], today: date) -> Span | None:
    starts = [place for place, name in enumerate(_MONTHS, start=1) if name.startswith(found["month"])]
    if len(starts) != 1 and found["month"] not in _MONTHS:
        return None
    first = date(int(found["year"] or today.year), starts[0], 1)
    if first > today and found["year"] is None:
        first = first.replace(year=first.year - 1)
    if first > today:
        return None
    following = (first + timedelta(days=31)).replace(day=1)
    return Span(first, today if found["lead"] == "since" else min(_back(following, 1), today))


def _number(said: str) -> int | None:
    return int(said) if said.isdecimal() else _SMALL.get(said)


def _back(day: date, days: int) -> date:
    return max(day - timedelta(days=min(days, day.toordinal() - 1)), date.min)
