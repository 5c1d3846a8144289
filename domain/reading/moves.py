"""Moves: this workout, or the rest of it, on another day."""

from collections.abc import Sequence
from datetime import datetime, timedelta

from domain.reading.day_contrast import day_of_set_not_today
from domain.reading.day_with_date import day_meant
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.move_words import (
    AS_USUAL,
    COMES_AFTER,
    MOVE,
    NOT_TODAY,
    OPENING,
    SETTLED,
    SHIFT_BY,
    SOME_LATER_DAY,
    SUITS,
    WILL_TRAIN,
)
from domain.reading.patterns import Found
from domain.reading.wanted import Wanted
from domain.reading.when import coming_day
from domain.reading.words import words_of

_NEEDS_DAY = words_of(
    """push pushing pushed lay laying change moved swap switch switching swapping the rest finish do doing
    rain raincheck rainchecking hold holding"""
)
"""Words that are a move only beside the day it goes to."""
_NEEDS_WORKOUT = words_of("move put")
"""Words that are a move beside the day, or beside the word for the workout."""
_WORKOUT = words_of("workout training session gym today todays")
_TODAY = words_of("today todays")
_OR = words_of("or nor and &")
_NOT_MOVED = words_of("didnt wouldnt couldnt dont cant wont not never")
_SHIFT_AT_WORK = words_of("double night nights late early long extra split day work")
"""Words before "shift" that make it hours at work: "double shift today"."""
_NO_MOVE = _NOT_MOVED | words_of("was were been")
"""Words by which no training is to come: "I was training on Sunday"."""
_WAS_MOVED = words_of("moved shifted pushed rescheduled postponed delayed")
_IS = words_of("is was are were got been get gets s")
_HOMES = words_of("houses house flat home")
_NOT_COMING = words_of("since from due after before yesterday by every each")
_BACK = words_of("back until till away")
_ERRAND = words_of("see the a visit work bed")
_ELSEWHERE = words_of("into abroad away home out hospital under")
_NO_WORKOUT = words_of("rest off doms holiday")
"""Words after a day that make it no day to train."""
FARTHEST_SHIFT = 14
"""By how many days a workout can be shifted."""
_ASKS_WHETHER = words_of("do did should when")
_PREPOSITIONS = words_of("to for on with up")


def find_move(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a move with its day, None where nothing is moved; without a day where that must be asked."""
    coming = [d for d in days if _is_coming(message, d, sent)]
    for move in MOVE.find(message):
        # "Till tomorrow" is no more than a word of parting, but not after "put it off".
        later = coming or [d for d in days if d.kind == "offset" and d.values[0] > 0]
        if _says_move(message, move.start, move.end, later):
            to = _day_after(message, move.start, later)
            return Wanted(on=day_meant(message, to, days, sent) if to is not None else None)
    shift = SHIFT_BY.first(message)
    if shift is not None:
        return Wanted(on=sent.date() + timedelta(days=_days_in(message, shift)))
    if not coming:
        return None
    to = (
        _day_better(message, coming)
        or _day_instead(message, coming)
        or _day_not_today(message, coming)
        or _day_to_train(message, coming)
    )
    return Wanted(on=day_meant(message, to, days, sent)) if to is not None else None


def _says_move(message: Message, start: int, end: int, coming: Sequence[Day]) -> bool:
    """Return whether words that can be a move are one: "moving today to Friday", and not "moving house"."""
    words = message.texts(start, end)
    if words[0] in _WAS_MOVED and message.text(start - 1) in _IS:
        # What was moved is told before, and is not the workout: "my flight is moved to Friday".
        return False
    if words[0] == "shift" and message.text(start - 1) in _SHIFT_AT_WORK:
        return False
    if message.text(start - 1) in _NOT_MOVED or not _HOMES.isdisjoint(message.texts(end, end + 2)):
        return False
    if coming:
        return True
    if SOME_LATER_DAY.at(message, end - 1) or SOME_LATER_DAY.at(message, end):
        return True
    if words[0] in _NEEDS_DAY or (words[0] in _NEEDS_WORKOUT and _WORKOUT.isdisjoint(words)):
        return False
    return not _WORKOUT.isdisjoint(words) or message.has(_TODAY)


def _day_after(message: Message, start: int, coming: Sequence[Day]) -> Day | None:
    """Return the coming day that follows in the sentence, or else the first of the message: of "move Friday
    to Saturday" the one that it goes to."""
    sentence = message.sentence[start]
    following = [d for d in coming if message.sentence[d.start] == sentence and d.start >= start]
    if len(following) > 1 and message.text(following[0].start - 1) not in _TOWARDS:
        following = [d for d in following if message.text(d.start - 1) in _TOWARDS] or following
    return next(iter([*following, *coming]), None)


_TOWARDS = words_of("to until till til for onto")


def _days_in(message: Message, shift: Found) -> int:
    """Return by how many days a workout is shifted: "push it back a day"."""
    value = message.value(shift.parts["n"][0]) if "n" in shift.parts else None
    return int(value) if value is not None and 1 <= value <= FARTHEST_SHIFT else 1


def _day_better(message: Message, coming: Sequence[Day]) -> Day | None:
    """Return the day that suits the client better, or that is settled on: "Friday works better"."""
    return next((d for d in coming if SUITS.at(message, d.end) is not None or _is_settled(message, d)), None)


def _is_settled(message: Message, day: Day) -> bool:
    """Return whether a message says nothing but on which day it will be."""
    return SETTLED.at(message, day.end) is not None and OPENING.issuperset(message.texts(0, day.start))


def _day_instead(message: Message, coming: Sequence[Day]) -> Day | None:
    """Return the day that comes instead: "Friday instead"."""
    if "instead" not in message.words:
        return None
    told_apart = day_of_set_not_today(message, coming)
    beside = [
        d
        for d in coming
        if d is not told_apart and "instead" in message.texts(*message.sentence_span(d.start))
    ]
    return next((d for d in beside if message.text(d.end) == "instead"), next(iter(beside), None))


def _day_not_today(message: Message, coming: Sequence[Day]) -> Day | None:
    """Return the day that stands alone beside "not today": "can't today, tomorrow"."""
    if not NOT_TODAY.is_in(message):
        return None
    told_apart = day_of_set_not_today(message, coming)
    for day in coming:
        if _is_out_too(message, day):
            continue
        if day is told_apart or not _NO_WORKOUT.isdisjoint(message.texts(day.end, day.end + 2)):
            continue
        before = message.text(day.start - 1)
        if before in {"on", "for", "to", "the"}:
            before = message.text(day.start - 2)
        if before in COMES_AFTER:
            return day
    return None


def _is_out_too(message: Message, day: Day) -> bool:
    """Return whether the day is one more on which the client cannot: "can't today or tomorrow"."""
    return message.text(day.start - 1) in _OR and message.text(day.start - 2) in _TODAY


def _day_to_train(message: Message, coming: Sequence[Day]) -> Day | None:
    """Return the day on which the client will train: "doing it tomorrow"."""
    for will in WILL_TRAIN.find(message):
        start, end = will.start, will.end
        said = message.texts(max(0, start - 1), end)
        if message.text(start - 1) in _ASKS_WHETHER or not _NO_MOVE.isdisjoint(said):
            continue
        first, last = message.sentence_span(start)
        near = [d for d in coming if start < d.start < last and d.start - end <= 6]
        if not near or (len(near) > 1 and message.text(near[0].end) in {"and", ",", "&"}):
            continue
        day = near[0]
        if any(message.value(at) is not None for at in range(end, day.start)):
            continue
        if AS_USUAL.at(message, day.end) is not None or "still" in message.texts(start, day.start):
            continue
        if not _BACK.isdisjoint(message.texts(first, day.end)) or _is_errand(message, end, day):
            continue
        return day
    return None


def _is_errand(message: Message, end: int, day: Day) -> bool:
    """Return whether what the client will do is no training: "I go to see my mother on Friday"."""
    if message.text(end) in _ELSEWHERE:
        return True
    return (
        message.text(end) in _PREPOSITIONS
        and day.start - end > 2
        and message.text(end + 1) in _ERRAND
        and message.text(end + 2) not in {"gym", "workout"}
    )


def _is_coming(message: Message, day: Day, sent: datetime) -> bool:
    """Return whether a day can be one that is to come."""
    if day.kind in {"next weekday", "weekday of next week", "weekday in weeks"}:
        return True
    before = message.text(day.start - 1)
    if day.kind in {"last weekday", "vague"} or before in _NOT_COMING:
        return False
    match day.kind:
        case "offset":
            return day.values[0] > 0 and before not in {"til", "till"}
        case "weekday":
            return not message.text(day.end - 1).endswith("ys") or message.text(day.end) == "instead"
        case _:
            return coming_day(day, sent) is not None
