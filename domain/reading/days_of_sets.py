"""Which of the days in a message are days of its sets, and which of them each set is of.

Finding days, and telling which date one means, is done elsewhere.
"""

from collections.abc import Callable, Sequence
from datetime import date, datetime

from domain.reading.day_contrast import day_of_set_not_today
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.move_words import MOVE
from domain.reading.naming import Named
from domain.reading.quantities import Quantity
from domain.reading.tokens import NUMBER
from domain.reading.training_day import is_for_training, looks_back
from domain.reading.wanted import Wanted
from domain.reading.when import past_day
from domain.reading.words import words_of

_GOES = words_of(
    "holiday holidays vacation away off trip leave travelling traveling abroad moving move shifting"
)
"""Words behind a set by which the day after them is that of an absence: "80x8, on holiday from Friday"."""


def training_days(
    message: Message,
    days: Sequence[Day],
    quantities: Sequence[Quantity],
    named: Sequence[Named],
    wanted: Wanted,
) -> list[Day]:
    """Return the days that sets were done on, without those of plans and wishes."""
    if not days:
        return []

    def has_set(start: int, end: int) -> bool:
        return any(start <= q.start < end for q in quantities) or any(
            start <= n.start < end and n.names and not n.weak for n in named
        )

    def last_set(start: int, end: int) -> int:
        return max([q.end for q in quantities if start <= q.start < end], default=start)

    moved = wanted.on is not None and not {"move", "pause"}.isdisjoint(wanted.wants)

    def is_planned(day: Day) -> bool:
        if day.kind in {"next weekday", "weekday of next week", "weekday in weeks"} or (
            day.kind == "offset" and day.values[0] > 0
        ):
            return True
        if day.kind not in {"weekday", "day of month", "numbers"}:
            return False
        start, end = message.clause_span(day.start)
        if moved and (message.text(day.start - 1) == "to" or MOVE.is_in(message, start, end)):
            return True
        if moved and not _GOES.isdisjoint(message.texts(last_set(start, day.start), day.start)):
            return True
        return (moved or message.text(end) == "?" or message.text(end - 1) == "?") and not has_set(start, end)

    told_apart = day_of_set_not_today(message, days)
    if told_apart is not None:
        return [told_apart]
    return [day for day in days if not is_planned(day) and is_for_training(message, day, has_set)]


def day_finder(message: Message, days: Sequence[Day], sent: datetime) -> Callable[[int], date | None]:
    """Return what gives the day of the set at a token: the day of `sent` unless another was said, None where
    it must be asked.
    """
    today = sent.date()

    def day_at(at: int) -> date | None:
        day = _day_of(message, days, min(at, len(message.tokens) - 1)) if days else None
        return today if day is None else past_day(day, sent)

    return day_at


def _day_of(message: Message, days: Sequence[Day], at: int) -> Day | None:
    """Return the day that the set at a token is of: of its clause, said before it, or said of it later."""
    in_brackets = next((d for d in days if d.start > at and message.text(d.start - 1) == "("), None)
    if in_brackets is not None and not _more_follows(message, at + 1, in_brackets.start):
        return in_brackets
    here = [d for d in days if message.clause[d.start] == message.clause[at]]
    if len(here) > 1 and _are_said_behind(message, here[0], at):
        return next((d for d in here if d.start >= at), here[-1])
    before = [d for d in here or days if d.start <= at]
    if before:
        return before[-1]
    if here:
        return here[0]
    sentence = message.sentence[at]
    for day in days:
        if message.sentence[day.start] == sentence:
            _, last = message.sentence_span(at)
            if not _more_follows(message, day.end, last):
                return day
            break
    only = days[0]
    said_of_it = message.sentence[only.start] == sentence + 1 or looks_back(message, only)
    if len(days) == 1 and said_of_it and not _more_follows(message, only.start, len(message.tokens)):
        return only
    return None


def _are_said_behind(message: Message, first: Day, at: int) -> bool:
    """Return whether the days of a clause follow their sets: "18 saturday 19 sunday"."""
    start, _ = message.clause_span(at)
    return _more_follows(message, start, first.start)


def _more_follows(message: Message, start: int, end: int) -> bool:
    """Return whether a number stands among some tokens that nothing was made of."""
    return any(message.tokens[at].kind == NUMBER and not message.taken[at] for at in range(start, end))
