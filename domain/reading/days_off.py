"""Days to come on which the client cannot train: "can't come on Thursday", "Friday doesn't work"."""

from collections.abc import Collection, Sequence

from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.words import words_of

_CANNOT = words_of("cant wont unable not skip skipping doesnt isnt impossible busy double overtime")
_NO = words_of("no")
_TRAINING = words_of("training train gym workout session lifting")
_JOINS = words_of("or nor and &")
_TODAY = words_of("today")
_BESIDE = (
    _TRAINING
    | _JOINS
    | words_of(
        """i ill im we m ll sorry hi hey hello come coming make making do doing go going be able there to it
        on this the in at my for me a again got have having shift shifts work works suit suits possible is are
        morning evening afternoon night either"""
    )
)
"""What else can stand in such a sentence; with any other word it can be about something else."""


def says_day_off(message: Message, days: Sequence[Day], in_question: Collection[int]) -> bool:
    """Return whether a sentence says nothing but that the client cannot train on a day to come.

    Beside today another day can be the one to train on, unless it is joined to it: "can't today or tomorrow".
    """
    for day in days:
        start, end = message.sentence_span(day.start)
        if day.start in in_question or not _is_to_come(day):
            continue
        told = [each for each in days if start <= each.start < end]
        of_days = {at for each in told for at in range(each.start, each.end)}
        words = [message.text(at) for at in range(start, end) if at not in of_days]
        words = [word for word in words if word not in {".", "!"}]
        joined = not _JOINS.isdisjoint(words)
        if len(told) + (not _TODAY.isdisjoint(words)) > 1 and not joined:
            continue
        if _denies(words) and (_BESIDE | _CANNOT | _NO | _TODAY).issuperset(words):
            return True
    return False


def _is_to_come(day: Day) -> bool:
    match day.kind:
        case "offset":
            return day.values[0] > 0
        case (
            "weekday" | "next weekday" | "weekday of next week" | "weekday in weeks" | "date" | "day of month"
        ):
            return True
        case _:
            return False


def _denies(words: list[str]) -> bool:
    return not _CANNOT.isdisjoint(words) or (words[:1] == ["no"] and not _TRAINING.isdisjoint(words))
