"""A day that is told apart from today: "Monday, not today". Beside a set it is the day of that set, and no
move."""

from collections.abc import Sequence

from domain.reading.day_words import FULL_SET
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.words import words_of

_YESTERDAY = (-1,)
_BETWEEN = words_of(", but on was it and - ( instead")
_DENIES = frozenset({"not", "instead"})


def day_of_set_not_today(message: Message, days: Sequence[Day]) -> Day | None:
    """Return the weekday that a set is of where the client adds that it is not of today, else None."""
    if "today" not in message.words or _DENIES.isdisjoint(message.words) or not FULL_SET.is_in(message):
        return None
    weekdays = [d for d in days if d.kind in {"weekday", "last weekday"} or d.values == _YESTERDAY]
    for at in message.places["today"]:
        if message.text(at - 1) != "not" and not _went_instead(message, at):
            continue
        for day in weekdays:
            between = message.texts(day.end, at - 1) if day.start < at else message.texts(at + 1, day.start)
            if len(between) <= 2 and _BETWEEN.issuperset(between):
                return day
    return None


def _went_instead(message: Message, at: int) -> bool:
    """Return whether the client trained on another day "instead of today", and does not ask to."""
    if message.texts(max(0, at - 2), at) != ["instead", "of"]:
        return False
    said = message.texts(*message.sentence_span(at))
    return not _WENT.isdisjoint(said) and _ASKS.isdisjoint(said)


_WENT = words_of("went did trained was were came lifted done")
_ASKS = words_of("can could would may shall will should possible wanted")
