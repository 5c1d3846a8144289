"""A day that is told apart from today: "Monday, not today". Beside a set it is the day of that set, and no
move."""

from collections.abc import Sequence

from domain.reading.day_words import FULL_SET
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.words import words_of

_YESTERDAY = (-1,)
_BETWEEN = words_of(", but on was it and - (")


def day_of_set_not_today(message: Message, days: Sequence[Day]) -> Day | None:
    """Return the weekday that a set is of where the client adds that it is not of today, else None."""
    if "today" not in message.words or "not" not in message.words or not FULL_SET.is_in(message):
        return None
    weekdays = [d for d in days if d.kind in {"weekday", "last weekday"} or d.values == _YESTERDAY]
    for at in message.places["today"]:
        if message.text(at - 1) != "not":
            continue
        for day in weekdays:
            between = message.texts(day.end, at - 1) if day.start < at else message.texts(at + 1, day.start)
            if len(between) <= 2 and _BETWEEN.issuperset(between):
                return day
    return None
