"""One row of a journal kept elsewhere: its cells checked and made a set, or said to be wrong.

A load without a unit is in kg; without a load the body alone is moved.
"""

import re
from datetime import date
from decimal import Decimal
from functools import cache

from domain.exercises import describe
from domain.expressions import Expression
from domain.sets import LoadKind, TrainingSet, is_within_reason
from domain.units import Unit

COLUMNS = ("client", "date", "exercise", "load", "unit", "reps", "seconds")
NEEDED = COLUMNS[:3]

_NUMBER = Expression(r"\+?\d{1,9}(?:\.\d{1,9})?", re.ASCII)
_DECIMAL_COMMA = Expression(r"\d+,\d+", re.ASCII)
_DAY = Expression(r"\d{4}-\d{2}-\d{2}", re.ASCII)
_UNITS: dict[str, Unit] = {
    "": "kg",
    **dict.fromkeys(("kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"), "kg"),
    **dict.fromkeys(("lb", "lbs", "pound", "pounds"), "lb"),
}
_LONGEST_SHOWN = 40


class BrokenRowError(ValueError):
    """A line that cannot be used; the message says what is wrong with it and what would be right."""


def set_of(row: dict[str, str], exercise: str) -> TrainingSet | None:
    """Return the set of a row; None where it tells of no reps and no seconds."""
    on = _day(row["date"])
    load = _number(row["load"], "load") or Decimal(0)
    unit = _UNITS.get(row["unit"].casefold().rstrip("."))
    if unit is None:
        raise BrokenRowError(f"unit {_shown(row['unit'])}: kg or lb")
    reps, seconds = _whole(row["reps"], "reps"), _whole(row["seconds"], "seconds")
    if reps and seconds:
        raise BrokenRowError("reps and seconds: a set has one of them")
    if seconds == 0 and reps is None:
        raise BrokenRowError("a hold of 0 seconds")
    if reps is None and seconds is None:
        return None
    kind: LoadKind = _counted(exercise) if load else "body"
    done = TrainingSet(exercise, load, unit, kind, None if seconds else reps, seconds or None, on=on)
    if not is_within_reason(done):
        raise BrokenRowError("more than anybody lifts, repeats or holds")
    return done


@cache
def _counted(exercise: str) -> LoadKind:
    return describe(exercise).counted


def with_point(number: str) -> str:
    """Return a number that has a comma before its decimals with a point there; anything else as it is."""
    return number.replace(",", ".") if _DECIMAL_COMMA.fullmatch(number) else number


def _day(text: str) -> date:
    try:
        if _DAY.fullmatch(text):
            return date.fromisoformat(text)
    except ValueError:
        pass
    raise BrokenRowError(f"date {_shown(text)}: a day is written like 2026-03-12")


def _number(text: str, what: str, such_as: str = "a number like 82.5, without a unit") -> Decimal | None:
    if not text:
        return None
    if _NUMBER.fullmatch(text):
        return Decimal(text)
    if _DECIMAL_COMMA.fullmatch(text):
        raise BrokenRowError(f"{what} {_shown(text)}: write {with_point(text)}, with a point")
    raise BrokenRowError(f"{what} {_shown(text)}: {such_as}")


def _whole(text: str, what: str) -> int | None:
    number = _number(text, what, "a whole number like 8")
    if number is not None and number != int(number):
        raise BrokenRowError(f"{what} {_shown(text)}: a whole number")
    return None if number is None else int(number)


def _shown(text: str) -> str:
    return f"«{text if len(text) <= _LONGEST_SHOWN else text[:_LONGEST_SHOWN] + '…'}»"
