"""Days along a panel: which are marked, and how they read."""

from datetime import date, timedelta

_STEPS = (1, 2, 7, 14, 28, 56, 91, 182, 365, 730, 1826, 3652)


def days_between(
    first: date, last: date, most: int = 5, *, with_year: bool = True
) -> list[tuple[float, str]]:
    """Return at most `most` days from `first` to `last`, evenly; the year stands with the first of each."""
    span = (last - first).days
    step = next((each for each in _STEPS if span // each + 1 <= most), _STEPS[-1])
    days = [first + timedelta(days=step * place) for place in range(span // step + 1)]
    return [(number(day), _label(day, before if with_year else day)) for before, day in _pairs(days)]


def number(day: date) -> float:
    """Return the place of a day along a panel."""
    return float(day.toordinal())


def _pairs(days: list[date]) -> list[tuple[date | None, date]]:
    return list(zip([None, *days], days, strict=False))


def _label(day: date, before: date | None) -> str:
    year = f"\n{day.year}" if before is None or before.year != day.year else ""
    return f"{day.day} {day:%b}{year}"
