"""The cells of one row: days, loads, reps, times, as people and programs write them, or said to be wrong.

What can be meant in two ways is not guessed at. Each kind of cell is read once for each way it is written, so
that a long file, in which the same few stand again and again, is read fast.
"""

import calendar
import re
from datetime import UTC, date, datetime
from decimal import Decimal

from domain.expressions import Expression
from domain.old_journal.found import FaultKind
from domain.sets import LoadKind
from domain.units import Unit

LONGEST_SHOWN = 40

_NUMBER = r"\d{1,6}(?:[.,]\d{1,6})?"
_UNIT = r"(?P<unit>kgs?|kilos?|kilograms?|lbs?|pounds?)?\.?"
_LOAD = Expression(
    rf"(?:(?P<body>bw|body ?weight|body)\s*)?(?P<sign>[+\-−–]?)\s*"
    rf"(?:(?P<pair>2)\s*[x×*]\s*)?(?P<number>{_NUMBER})?\s*{_UNIT}\s*"
    r"(?P<each>each|ea|per hand|per side|a hand|a side|/\s?hand)?"
    r"(?P<help>(?:of )?(?:help|assist(?:ed|ance)?))?",
    re.ASCII | re.IGNORECASE,
)
_WHOLE = Expression(r"(\d{1,6})(?:[.,]0+)?", re.ASCII)
_PARTS = Expression(r"\s*[/;,|+&]\s*|\s+")
_TIMES = Expression(r"(\d{1,2})\s*[x×*]\s*(\d{1,4})", re.ASCII)
_TIME = Expression(
    r"(?:(?P<hours>\d{1,2}):)?(?P<minutes>\d{1,3}):(?P<rest>\d{2})|"
    r"(?:(?P<m>\d{1,3})\s*(?:m|mins?|minutes?))?\s*(?:(?P<s>\d{1,5})(?:[.,]0+)?\s*(?:s|secs?|seconds?)?)?",
    re.ASCII | re.IGNORECASE,
)
_ISO = Expression(r"(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?", re.ASCII)
_TWO_ENDS = Expression(r"(\d{1,2})([-/.])(\d{1,2})\2(\d{4}|\d{2})(?:,?[T ].*)?", re.ASCII)
_NAMED = Expression(
    r"(?:[a-z]{2,9}\.?,? )?(?:(?P<day>\d{1,2})(?:st|nd|rd|th)?\.?[ -](?:of )?(?P<month>[a-z]{3,9})\.?|"
    r"(?P<month2>[a-z]{3,9})\.? (?P<day2>\d{1,2})(?:st|nd|rd|th)?),?[ -](?P<year>\d{4})(?:,?[T ].*)?",
    re.IGNORECASE | re.ASCII,
)
_MONTHS = tuple(calendar.month_name)[1:]
_OLDEST = 1950
_KINDS: dict[str, LoadKind] = {
    "total": "total",
    "each": "each",
    "added": "added",
    "assist": "assist",
    "body": "body",
}
_YES = frozenset({"yes", "y", "true", "1", "x"})
_NO = frozenset({"no", "n", "false", "0"})


class CellFault(Exception):
    """A cell that is not understood: what is wrong, and the cell as written."""

    def __init__(self, what: FaultKind, cell: str = "") -> None:
        super().__init__(what)
        self.what: FaultKind = what
        self.shown = cell if len(cell) <= LONGEST_SHOWN else f"{cell[: LONGEST_SHOWN - 1]}…"


def day_of(cell: str, *, month_first: bool | None) -> date:
    """Return the day of a cell. `month_first` says how days like 03/04/2026 are written; None: not known."""
    if found := _ISO.fullmatch(cell):
        return _day(cell, int(found[1]), int(found[2]), int(found[3]))
    if found := _TWO_ENDS.fullmatch(cell):
        first, second, year = int(found[1]), int(found[3]), int(found[4])
        year += 2000 if year < 100 else 0
        if found[2] == "." or first == second:
            return _day(cell, year, second, first)
        shown = tells_order(cell)
        month_first = month_first if shown is None else shown
        if month_first is None:
            raise CellFault("which date", cell)
        return _day(cell, year, first, second) if month_first else _day(cell, year, second, first)
    if found := _NAMED.fullmatch(cell):
        named = (found["month"] or found["month2"]).casefold()
        months = [
            at
            for at, month in enumerate(_MONTHS, 1)
            if month.casefold().startswith(named) or (named == "sept" and at == 9)
        ]
        if len(months) == 1:
            return _day(cell, int(found["year"]), months[0], int(found["day"] or found["day2"]))
    raise CellFault("date", cell)


def tells_order(cell: str) -> bool | None:
    """Return whether a day shows that the month comes first in its file; None where it shows nothing."""
    found = _TWO_ENDS.fullmatch(cell)
    if found is None or found[2] == ".":
        return None
    first, second = int(found[1]), int(found[3])
    if (first > 12) == (second > 12):
        return None
    return second > 12


def _day(cell: str, year: int, month: int, day: int) -> date:
    try:
        if year >= _OLDEST:
            return date(year, month, day)
    except ValueError:
        pass
    raise CellFault("date", cell)


def number_of(cell: str, what: FaultKind) -> Decimal:
    """Return a plain number, with a point or a comma before its decimals."""
    if re.fullmatch(_NUMBER, cell, re.ASCII) is None:
        raise CellFault(what, cell)
    return Decimal(cell.replace(",", "."))


def load_of(cell: str) -> tuple[Decimal, Unit | None, LoadKind | None]:
    """Return a load, its unit and how it is counted, each as far as the cell tells it."""
    found = _LOAD.fullmatch(cell)
    if found is None or not (found["number"] or found["body"]) or (found["body"] and found["pair"]):
        raise CellFault("load", cell)
    if found["number"] is None:
        if found["sign"] or found["unit"] or found["each"] or found["help"]:
            raise CellFault("load", cell)
        return Decimal(0), None, "body"
    number = Decimal(found["number"].replace(",", "."))
    unit = None if found["unit"] is None else unit_of(found["unit"])
    if found["sign"] not in {"", "+"} or found["help"]:
        return (number, unit, "assist") if number else (number, unit, "body")
    if found["body"] or found["sign"]:
        return (number, unit, "added") if number else (number, unit, "body")
    return number, unit, "each" if found["each"] or found["pair"] else None


def unit_of(cell: str) -> Unit:
    """Return a unit as it is written."""
    said = cell.casefold().rstrip(".")
    if said in {"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"}:
        return "kg"
    if said in {"lb", "lbs", "pound", "pounds"}:
        return "lb"
    raise CellFault("unit", cell)


def kind_of(cell: str) -> LoadKind:
    """Return how a load is counted, in our own words for that."""
    kind = _KINDS.get(cell.casefold())
    if kind is None:
        raise CellFault("load kind", cell)
    return kind


def reps_of(cell: str) -> tuple[int, ...]:
    """Return the reps of each set that a cell tells of: 8; 8, 7, 6; 3 x 8."""
    if whole := _WHOLE.fullmatch(cell):
        return (int(whole[1]),)
    if times := _TIMES.fullmatch(cell):
        return (int(times[2]),) * int(times[1])
    parts = _PARTS.split(cell)
    if len(parts) > 1 and all(re.fullmatch(r"\d{1,4}", part, re.ASCII) for part in parts):
        return tuple(map(int, parts))
    raise CellFault("reps", cell)


def seconds_of(cell: str) -> int:
    """Return a time in seconds: 60, 60 s, 1:00, 1 min 30 s."""
    found = _TIME.fullmatch(cell)
    if found is None or not any(found.groupdict().values()):
        raise CellFault("seconds", cell)
    parts = {name: int(value or 0) for name, value in found.groupdict().items()}
    return parts["hours"] * 3600 + (parts["minutes"] + parts["m"]) * 60 + parts["rest"] + parts["s"]


def truth_of(cell: str) -> bool:
    """Return a yes or a no."""
    said = cell.casefold()
    if said in _YES or said in _NO:
        return said in _YES
    raise CellFault("yes or no", cell)


def moment_of(cell: str) -> datetime:
    """Return a moment in UTC; one without an offset is not taken."""
    try:
        moment = datetime.fromisoformat(cell)
    except ValueError:
        raise CellFault("moment", cell) from None
    if moment.tzinfo is None:
        raise CellFault("moment", cell)
    return moment.astimezone(UTC)
