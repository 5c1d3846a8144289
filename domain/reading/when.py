"""Which day is meant by the words for one: looking back for sets, and forward for plans."""

from datetime import date, datetime, timedelta

from domain.reading.days import Day
from domain.reading.days_in_numbers import is_day_and_month

BACKWARD_DAYS = 60
"""How far back a day in numbers can lie."""


def past_day(day: Day, sent: datetime) -> date | None:
    """Return the day of a set that `day` means, on or before the day of `sent`; None where it must be
    asked."""
    today = sent.date()
    match day.kind:
        case "offset":
            return today + timedelta(days=day.values[0]) if day.values[0] <= 0 else None
        case "weekday" | "last weekday":
            back = (today.weekday() - day.values[0]) % 7
            return today - timedelta(days=back) if back else None
        case "weekday of last week":
            return today - timedelta(days=today.weekday() + 7 - day.values[0])
        case "day of month":
            return _latest_day(day.values[0], today)
        case "date":
            meant = date.fromordinal(day.values[0])
            return meant if meant <= today else None
        case "numbers":
            meant_days = _meant(day.values, today)
            return meant_days[0] if len(meant_days) == 1 else None
        case _:
            return None


def possible_days(day: Day, sent: datetime) -> tuple[date, ...]:
    """Return the days of a set that `day` can mean, the latest first: both of "3/2", the two Mondays of a
    Monday."""
    today = sent.date()
    meant = past_day(day, sent)
    if meant is not None:
        return (meant,)
    match day.kind:
        case "weekday" | "last weekday":
            return (today, today - timedelta(days=7))
        case "numbers":
            orders = dict.fromkeys((day.values[:2], day.values[1::-1]))
            found = [_latest_of(number, month, today) for number, month in orders]
            return tuple(sorted({each for each in found if each is not None}, reverse=True))
        case _:
            return ()


def _latest_of(day: int, month: int, today: date) -> date | None:
    """Return the last such day until `today`; None where there is none in a year."""
    for year in (today.year, today.year - 1):
        try:
            meant = date(year, month, day)
        except ValueError:
            continue
        if meant <= today:
            return meant
    return None


def coming_day(day: Day, sent: datetime) -> date | None:
    """Return the day of a plan that `day` means, after the day of `sent`; None where it must be asked."""
    today = sent.date()
    match day.kind:
        case "offset":
            return today + timedelta(days=day.values[0]) if day.values[0] > 0 else None
        case "weekday":
            return today + timedelta(days=(day.values[0] - today.weekday() - 1) % 7 + 1)
        case "next weekday":
            ahead = (day.values[0] - today.weekday() - 1) % 7 + 1
            # Within this week "next Friday" can be the coming one or the one after it.
            same_week = today.weekday() + ahead <= 6
            return None if same_week else today + timedelta(days=ahead)
        case "weekday of next week":
            return today + timedelta(days=7 - today.weekday() + day.values[0])
        case "weekday in weeks":
            ahead = (day.values[0] - today.weekday()) % 7
            return today + timedelta(days=ahead, weeks=day.values[1])
        case "day of month":
            return _next_day(day.values[0], today)
        case "date":
            meant = date.fromordinal(day.values[0])
            return meant if meant > today else None
        case "numbers":
            ahead_days = {
                _on_or_after(d, m, today)
                for d, m in {(day.values[0], day.values[1]), (day.values[1], day.values[0])}
                if is_day_and_month(d, m)
                and not (len(day.values) == 3 and (d, m) != day.values[:2] and day.values[2] == 0)
            } - {None}
            near = {d for d in ahead_days if d is not None and (d - today).days <= 120}
            chosen = near or ahead_days
            return next(iter(chosen)) if len(chosen) == 1 else None
        case _:
            return None


def days_of_next(day: Day, sent: datetime) -> tuple[date, ...]:
    """Return the two days that "next Friday" can mean, where that must be asked; else none."""
    if day.kind != "next weekday" or coming_day(day, sent) is not None:
        return ()
    first = sent.date() + timedelta(days=(day.values[0] - sent.weekday() - 1) % 7 + 1)
    return first, first + timedelta(days=7)


def _latest_day(number: int, today: date) -> date | None:
    year, month = today.year, today.month
    for _ in range(3):
        try:
            meant = date(year, month, number)
        except ValueError:
            meant = None
        if meant is not None and meant <= today:
            return meant
        year, month = (year - 1, 12) if month == 1 else (year, month - 1)
    return None


def _next_day(number: int, today: date) -> date | None:
    year, month = today.year, today.month
    for _ in range(3):
        try:
            meant = date(year, month, number)
        except ValueError:
            meant = None
        if meant is not None and meant > today:
            return meant
        year, month = (year + 1, 1) if month == 12 else (year, month + 1)
    return None


def _on_or_after(day: int, month: int, today: date) -> date | None:
    for year in (today.year, today.year + 1):
        try:
            meant = date(year, month, day)
        except ValueError:
            continue
        if meant > today:
            return meant
    return None


def _meant(values: tuple[int, ...], today: date) -> list[date]:
    """Return the readings of a day in numbers that lie in the last sixty days; (day, month, 0) has one
    order."""
    first, second = values[0], values[1]
    orders = {(first, second)} if len(values) == 3 and values[2] == 0 else {(first, second), (second, first)}
    found: set[date] = set()
    for day, month in orders:
        years = (values[2],) if len(values) == 3 and values[2] else (today.year, today.year - 1)
        for year in years:
            try:
                meant = date(year, month, day)
            except ValueError:
                continue
            if 0 <= (today - meant).days <= BACKWARD_DAYS:
                found.add(meant)
    return sorted(found)
