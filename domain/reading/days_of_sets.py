"""Which of the days in a message are days of its sets, and which of them each set is of.

Finding days, and telling which date one means, is done elsewhere.
"""

from collections.abc import Callable, Sequence
from datetime import date, datetime

from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.quantities import Quantity
from domain.reading.tokens import NUMBER
from domain.reading.training_day import is_for_training, looks_back
from domain.reading.wanted import Wanted
from domain.reading.when import past_day


def training_days(
    message: Message,
    days: Sequence[Day],
    quantities: Sequence[Quantity],
    named: Sequence[Named],
    wanted: Wanted,
) -> list[Day]:
    """Return the days that sets were done on, without those of plans and wishes."""

    def has_set(start: int, end: int) -> bool:
        return any(start <= q.start < end for q in quantities) or any(
            start <= n.start < end and not n.weak for n in named
        )

    kept: list[Day] = []
    for day in days:
        if day.kind == "next weekday" or (day.kind == "offset" and day.values[0] > 0):
            continue
        if (
            {"move", "pause"} & set(wanted.wants)
            and day.kind in {"weekday", "day of month", "numbers"}
            and wanted.on is not None
            and not has_set(*message.clause_span(day.start))
        ):
            continue
        if is_for_training(message, day, has_set):
            kept.append(day)
    return kept


def day_finder(message: Message, days: Sequence[Day], sent: datetime) -> Callable[[int], date | None]:
    """Return what gives the day of the set at a token: the day of `sent` unless another was said, None where
    it must be asked.
    """
    today = sent.date()
    if not days:
        return lambda _at: today

    def day_at(at: int) -> date | None:
        at = min(at, len(message.tokens) - 1)
        clause = message.clause[at]
        sentence = message.sentence[at]
        here = [d for d in days if message.clause[d.start] == clause]
        if here:
            before = [d for d in here if d.start <= at]
            return past_day(before[-1] if before else here[0], sent)
        before = [d for d in days if d.start <= at]
        following = [d for d in days if d.start > at and message.sentence[d.start] == sentence]
        if before:
            return past_day(before[-1], sent)
        if following:
            rest = range(following[0].end, len(message.tokens))
            if not any(
                message.tokens[i].kind == NUMBER and not message.taken[i] and message.sentence[i] == sentence
                for i in rest
            ):
                return past_day(following[0], sent)
        if (
            len(days) == 1
            and days[0].start > at
            and (message.sentence[days[0].start] == sentence + 1 or looks_back(message, days[0]))
            and not any(
                message.tokens[i].kind == NUMBER and not message.taken[i]
                for i in range(days[0].start, len(message.tokens))
            )
        ):
            return past_day(days[0], sent)
        return today

    return day_at
