"""Days to come that are said twice, by the weekday and the date behind it: "till Friday 13 February"."""

from collections.abc import Sequence
from datetime import date, datetime

from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.when import coming_day
from domain.reading.words import words_of

_BESIDE = words_of("the , of")


def day_meant(message: Message, to: Day, days: Sequence[Day], sent: datetime) -> date | None:
    """Return the day to come that `to` means; None where the date beside a weekday is none such to come."""
    on = coming_day(to, sent)
    closer = _date_after(message, to, days)
    if closer is None:
        return on
    told = coming_day(closer, sent)
    return told if told is not None and told.weekday() == to.values[0] else None


def _date_after(message: Message, day: Day, days: Sequence[Day]) -> Day | None:
    """Return the date that is said right after a weekday: "Friday 13 February"."""
    if day.kind not in {"weekday", "next weekday", "weekday of next week", "weekday in weeks"}:
        return None
    return next(
        (
            d
            for d in days
            if d.kind in {"date", "day of month", "numbers"}
            and d.start >= day.end
            and all(word in _BESIDE for word in message.texts(day.end, d.start))
        ),
        None,
    )
