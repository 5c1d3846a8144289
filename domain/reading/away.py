"""Pauses: the time that a client is away or ill, and the day of the return."""

import re
from collections.abc import Sequence
from datetime import date, datetime, timedelta
from itertools import islice

from domain.reading.body_words import OTHERS
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.want_words import (
    AILS,
    AWAY,
    AWAY_WORDS,
    BUSY_WORDS,
    ILL,
    ILL_WORDS,
    LENGTH,
    NOT_ILL,
    OTHER_ILL,
    STILL,
    UNTIL,
)
from domain.reading.wanted import Wanted
from domain.reading.when import coming_day
from domain.reading.words import words_of

_NOT_AWAY = words_of(
    "breath right straight far put walk walked walking run ran stay throw threw give gave fade melt"
)
"""Words before "away" that make it no absence."""


_NO_LENGTH = re.compile(r" (?:ago|old|a week|per)")
_DAYS = {"d": 1, "w": 7, "f": 14, "m": 30}
"""Days of a length, by the first letter of its unit: day, week, fortnight, month."""
_BACK = re.compile(r"\b(?:back|home|return|resume|restart|again)")
_MYSELF = re.compile(r"\b(?:i|im|ill|we|were)\b")
_NO_RETURN = words_of("squat squats my")
_LOOSE = words_of("off out gone home")
"""Words for an absence that mean other things as well, unless a length or a day is said."""
_BUSY = re.compile(
    r"\b(?:holidays?|vacation|away|abroad|travell?ing|trip|leave|no gym|no training|on nights"
    r"|night shifts?|nights|off|busy|swamped|injured|closed)\b"
)
_UNTIL = re.compile(r"\b(?:till|til|until|back)\b")
_OPEN = re.compile(
    r"\b(?:weeks?|days?|months?|fortnight|holidays?|vacation|leave|break|pause|hold|trip|until|till|til|abroad"
    r"|travell?ing|away|surgery|town|honeymoon|country|closed|shut)\b"
)
_NOT_OPEN = re.compile(
    r"\b(?:(?:right|breath|put|walked|straight|ran|stay|throw|far|blown) away|blew me away"
    r"|away from failure|pin)\b"
)

MOST_AWAY = 12
"""How many of the words for being away are looked at in one message."""
FARTHEST = 60
"""How many tokens before them another person can stand who is the one away."""


def ails(message: Message) -> bool:
    """Return whether something is told that may be dangerous, beside which other words mean other things."""
    return message.has(AILS) or ("chest" in message.words and "pain" in message.taken)


def find_pause(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a pause with the day of the return, None where nothing is paused."""
    line = message.line
    if message.has(ILL_WORDS) and _is_ill(message):
        return Wanted(on=_return_day(message, days, sent, 0))
    if not message.has(AWAY_WORDS) and not message.has(BUSY_WORDS):
        return None
    for _, start, end in islice(message.find(AWAY), MOST_AWAY):
        first, last = message.sentence_span(start)
        first = max(first, start - FARTHEST)
        words = message.texts(start, end)
        if _is_anothers(message, first, start, words[0]):
            continue
        back = bool(_BACK.search(" ".join(words)))
        on = _return_day(message, days, sent, start if back else first)
        if back and not _says_return(message, start, end, on):
            continue
        if words[0] == "away" and message.text(start - 1) in _NOT_AWAY:
            continue
        if on is None and not back and not _is_open(message, start, end, last):
            continue
        return Wanted(on=on)
    if _BUSY.search(line) and _UNTIL.search(line) and not STILL.search(line):
        on = _return_day(message, days, sent, 0)
        return Wanted(on=on) if on is not None else None
    return None


def _is_ill(message: Message) -> bool:
    """Return whether the client is ill; to feel sick beside a sign of danger is no flu."""
    line = message.line
    if ails(message) or NOT_ILL.search(line) or OTHER_ILL.search(line):
        return False
    return ILL.search(line) is not None


def _is_anothers(message: Message, first: int, start: int, word: str) -> bool:
    """Return whether another person is the one who is away: "my wife is away, so ..."."""
    before = " ".join(message.texts(first, start))
    others = [other.end() for other in OTHERS.finditer(before)]
    return bool(others) and not _MYSELF.search(f"{before[others[-1] :]} {word}")


def _says_return(message: Message, start: int, end: int, on: date | None) -> bool:
    """Return whether "back" is a return, and not the body's, a machine's ("back 7") or "back in 2012"."""
    after = message.text(end)
    if "pain" in message.taken[start:end] or not _NO_RETURN.isdisjoint((message.text(start - 1), after)):
        return False
    value = message.value(end + 1) if after == "in" else message.value(end)
    if value is None:
        return on is not None
    return value < 1900 if after == "in" else message.taken[end] == "a day"


def _is_open(message: Message, start: int, end: int, last: int) -> bool:
    """Return whether an absence without a day of return is one: of some length, or open-ended."""
    if STILL.search(message.line):
        return False
    if message.text(end - 1) in _LOOSE and not LENGTH.search(message.line) and "week" not in message.words:
        return False
    text = " ".join(message.texts(start, min(last, end + 8)))
    return _OPEN.search(text) is not None and _NOT_OPEN.search(text) is None


def _goes_to(message: Message, at: int, day: int) -> bool:
    """Return whether "to" leads to a day, and not to a place: "off to Spain tomorrow"."""
    return all(word in {"the", "next", "about", "around"} for word in message.texts(at + 1, day))


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
        if any(
            UNTIL.match(message.text(at)) and (message.text(at) != "to" or _goes_to(message, at, d.start))
            for at in range(max(0, d.start - 4), d.end)
        )
    ]
    for day in cued:
        on = coming_day(day, sent)
        if on is not None:
            return on
    offset = message.starts[start] if start < len(message.starts) else 0
    match = LENGTH.search(message.line, offset)
    if match is not None and not _NO_LENGTH.match(message.line, match.end()):
        days_each = _DAYS[match["u"][0]]
        if match["n"]:
            value = message.value(message.at(match.start("n"))) or 0
            count = int(value) if value == int(value) and value < 400 else 0
        else:
            count = 1 if match["a"] else 0
        return sent.date() + timedelta(days=count * days_each) if count else None
    if "next" in message.words and re.search(r"\bnext week\b", message.line[offset:]):
        return sent.date() + timedelta(days=14 - sent.weekday())
    return None
