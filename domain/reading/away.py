"""Moves and pauses: a workout on another day, and the time that a client is away or ill."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import islice

from domain.reading.body_words import OTHERS
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Slot, Want
from domain.reading.want_words import (
    AILS,
    AWAY,
    AWAY_WORDS,
    BUSY_WORDS,
    ILL,
    ILL_WORDS,
    LENGTH,
    MOVE,
    MOVE_COMES_AFTER,
    NO_TODAY,
    NOT_ILL,
    OTHER_ILL,
    STILL,
    UNTIL,
    WILL_TRAIN,
)
from domain.reading.when import coming_day
from domain.reading.words import words_of


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is wanted, with the exercises to leave out, the day of a move or a pause, and what must be
    asked."""

    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    used_names: tuple[Named, ...] = ()


_NOT_AWAY = words_of(
    "breath right straight far put walk walked walking run ran stay throw threw give gave fade melt"
)
"""Words before "away" that make it no absence."""


MOST_AWAY = 12
"""How many of the words for being away are looked at in one message."""
FARTHEST = 60
"""How many tokens before them another person can stand who is the one away."""


def ails(message: Message) -> bool:
    """Return whether something is told that may be dangerous, beside which other words mean other things."""
    return message.has(AILS) or ("chest" in message.words and "pain" in message.taken)


def find_move(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a move with its day, None where nothing is moved."""
    coming = [d for d in days if _is_coming(message, d, sent)]
    for match, start, end in message.find(MOVE):
        words = message.texts(start, end)
        if (
            words[0]
            in {
                "push",
                "pushing",
                "pushed",
                "change",
                "put",
                "moved",
                "move",
                "swap",
                "switch",
                "switching",
                "swapping",
            }
            and not coming
        ) and (
            words[0] not in {"move", "put"}
            or not {
                "workout",
                "training",
                "session",
                "today",
                "todays",
            }
            & set(words)
        ):
            continue
        if message.text(start - 1) in {"didnt", "wouldnt", "couldnt", "dont", "cant", "cannot"} or {
            "houses",
            "house",
            "flat",
            "home",
        } & set(message.texts(end, end + 2)):
            continue
        if not coming and words[0] in {"the", "rest", "finish", "do", "doing"}:
            continue
        if (
            not coming
            and "today" not in message.words
            and "todays" not in message.words
            and not {"workout", "training", "session", "gym"} & set(words)
        ):
            continue
        del match
        return Wanted(on=_day(coming, message, start, sent))
    if not coming:
        return None
    if "instead" in message.words:
        for day in coming:
            first, last = message.sentence_span(day.start)
            if "instead" in message.texts(first, last) and "of" not in {
                message.text(at + 1) for at in range(first, last) if message.text(at) == "instead"
            } - {message.text(day.start)}:
                return Wanted(on=coming_day(day, sent))
            if "instead" in message.texts(first, last):
                return Wanted(on=coming_day(day, sent))
    if NO_TODAY.search(message.line):
        for day in coming:
            before = message.text(day.start - 1)
            if before in {"on", "for", "to", "the"}:
                before = message.text(day.start - 2)
            if before in MOVE_COMES_AFTER:
                return Wanted(on=coming_day(day, sent))
    for _, start, end in message.find(WILL_TRAIN):
        first, last = message.sentence_span(start)
        near = [d for d in coming if start < d.start < last and d.start - end <= 6]
        if len(near) > 1 and message.text(near[0].end) in {"and", ",", "&"}:
            continue
        if (
            near
            and not any(message.value(at) is not None for at in range(end, near[0].start))
            and not re.search(r"\b(?:back|until|till|away)\b", " ".join(message.texts(first, near[0].end)))
        ):
            if (
                message.text(end) in {"to", "for", "on", "with", "up"}
                and near[0].start - end > 2
                and message.text(end + 1) in {"see", "the", "a", "visit", "work", "bed"}
                and message.text(end + 2) not in {"gym", "workout"}
            ):
                continue
            return Wanted(on=coming_day(near[0], sent))
    return None


def _is_coming(message: Message, day: Day, sent: datetime) -> bool:
    if day.kind in {"last weekday", "vague"} or message.text(day.start - 1) in {
        "since",
        "from",
        "due",
        "after",
        "before",
        "yesterday",
        "by",
    }:
        return day.kind == "next weekday"
    if day.kind == "offset":
        return day.values[0] > 0 and message.text(day.start - 1) not in {"due", "til", "till"}
    if day.kind == "weekday":
        text = message.text(day.end - 1)
        return not text.endswith("ys") or message.text(day.end) in {"instead"}
    return day.kind in {"next weekday", "day of month", "numbers", "date"} and (
        coming_day(day, sent) is not None or day.kind == "next weekday"
    )


def _day(coming: Sequence[Day], message: Message, start: int, sent: datetime) -> date | None:
    sentence = message.sentence[start]
    for day in (*(d for d in coming if message.sentence[d.start] == sentence and d.start >= start), *coming):
        return coming_day(day, sent)
    return None


def find_pause(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a pause with the day of the return, None where nothing is paused."""
    line = message.line
    ill = None
    # To feel sick beside a sign of danger is no flu.
    if (
        message.has(ILL_WORDS)
        and not ails(message)
        and not NOT_ILL.search(line)
        and not OTHER_ILL.search(line)
    ):
        ill = ILL.search(line)
    if ill is not None:
        return Wanted(on=_return_day(message, days, sent, 0))
    if not message.has(AWAY_WORDS) and not message.has(BUSY_WORDS):
        return None
    for _, start, end in islice(message.find(AWAY), MOST_AWAY):
        first, last = message.sentence_span(start)
        first = max(first, start - FARTHEST)
        words = message.texts(start, end)
        before = " ".join(message.texts(first, start))
        other = [o.end() for o in OTHERS.finditer(before)]
        if other and not re.search(r"\b(?:i|im|ill|we|were)\b", f"{before[other[-1] :]} {words[0]}"):
            continue
        back = bool(re.search(r"\b(?:back|home|return|resume|restart|again)", " ".join(words)))
        on = _return_day(message, days, sent, start if back else first)
        if back and on is None and not (message.value(end + 1) is not None or message.value(end) is not None):
            continue
        if back and not _says_return(message, start, end):
            continue
        if words[0] == "away" and message.text(start - 1) in _NOT_AWAY:
            continue
        if back and any(
            w in {"squat", "squats", "my", "the"}
            for w in [message.text(start - 1), message.text(end)]
            if w in {"squat", "squats", "my"}
        ):
            continue
        if (
            words[-1] in {"off", "out", "gone", "home"}
            and on is None
            and not LENGTH.search(line)
            and "week" not in message.words
        ):
            continue
        if on is None and STILL.search(line):
            continue
        if words[-1] in {"back"} and message.text(end) in {"in"} and on is None:
            continue
        if on is None and not back and not _is_length_or_open(message, start, end, last):
            continue
        return Wanted(on=on)
    if (
        re.search(
            r"\b(?:holidays?|vacation|away|abroad|travell?ing|trip|leave|no gym|no training|on nights"
            r"|night shifts?|nights|off|busy|swamped|injured|closed)\b",
            line,
        )
        and re.search(r"\b(?:till|til|until|back)\b", line)
        and not STILL.search(line)
    ):
        on = _return_day(message, days, sent, 0)
        return Wanted(on=on) if on is not None else None
    return None


def _says_return(message: Message, start: int, end: int) -> bool:
    """Return whether "back" is a return, and not the body's, a machine's ("back 7") or "back in 2012"."""
    if "pain" in message.taken[start:end]:
        return False
    value = message.value(end + 1) if message.text(end) == "in" else message.value(end)
    if value is None:
        return True
    return value < 1900 if message.text(end) == "in" else message.taken[end] == "a day"


def _is_length_or_open(message: Message, start: int, end: int, last: int) -> bool:
    text = " ".join(message.texts(start, min(last, end + 8)))
    return bool(
        re.search(
            r"\b(?:weeks?|days?|months?|fortnight|holidays?|vacation|leave|break|pause|hold|trip|until"
            r"|till|til|abroad|travell?ing|away|surgery|town|honeymoon|country|closed|shut)\b",
            text,
        )
    ) and not re.search(
        r"\b(?:right away|breath away|blew me away|blown away|put away|away from failure"
        r"|walked away|straight away|pin|ran away|stay away"
        r"|throw away|far away)\b",
        text,
    )


def _return_day(message: Message, days: Sequence[Day], sent: datetime, start: int) -> date | None:
    """Return the day that a pause ends: a day after "till" or "back", or a length counted from today."""
    candidates = [
        d
        for d in days
        if d.start >= start
        and d.kind not in {"last weekday", "vague"}
        and not (d.kind == "offset" and d.values[0] <= 0)
    ]
    cued = [
        d
        for d in candidates
        if any(UNTIL.match(message.text(at)) for at in range(max(0, d.start - 4), d.end))
    ]
    for day in cued:
        on = coming_day(day, sent)
        if on is not None:
            return on
    line = message.line[message.starts[start] :] if start < len(message.starts) else message.line
    match = LENGTH.search(line)
    if match is not None and not re.match(r" (?:ago|old|a week|per)", line[match.end() :]):
        unit = match["u"]
        size = (
            7
            if unit.startswith(("week", "wk"))
            else 14
            if unit.startswith("fort")
            else 30
            if unit.startswith("month")
            else 1
        )
        if match["n"]:
            at = message.at((message.starts[start] if start < len(message.starts) else 0) + match.start("n"))
            value = message.value(at)
            count = int(value) if value is not None and value == int(value) and value < 400 else 0
        elif match["a"]:
            count = 1
        else:
            return None
        return sent.date() + timedelta(days=count * size) if count else None
    if "next" in message.words and re.search(r"\bnext week\b", line):
        return sent.date() + timedelta(days=14 - sent.weekday())
    return None
