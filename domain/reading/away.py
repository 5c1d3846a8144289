"""Pauses: the time that a client is away or ill, and the day of the return."""

from collections.abc import Iterator, Sequence
from datetime import date, datetime, timedelta
from itertools import islice

from domain.reading.away_words import (
    AWAY,
    BACK_THEN,
    BUSY,
    GOES_HOME,
    LENGTH,
    LOOSE,
    NEXT_WEEK,
    NO_TRAINING_FOR,
    NOT_GONE,
    NOT_OPEN,
    OPEN,
    STILL,
    UNTIL,
    UNTIL_THEN,
)
from domain.reading.body_phrases import SOMEBODY_ELSE
from domain.reading.day_with_date import day_meant
from domain.reading.day_words import FULL_SET
from domain.reading.days import Day
from domain.reading.illness_words import (
    AILS,
    CAUGHT_IT,
    FEVER,
    FEVERS,
    I_WILL,
    ILL,
    MAY_I_TRAIN,
    NOT_ILL,
    OTHER_ILL,
)
from domain.reading.message import Message, message_of
from domain.reading.off_work import is_only_off_work
from domain.reading.patterns import Found
from domain.reading.tokens import LONGEST
from domain.reading.wanted import Wanted
from domain.reading.words import words_of

_NOT_AWAY = words_of(
    """breath right straight far put walk walked walking run ran stay throw threw give gave fade melt
    leave leaves left leaving"""
)
"""Words before "away" or "out" that make it no absence."""

_DAYS = {"d": 1, "w": 7, "f": 14, "m": 30}
"""Days of a length, by the first letter of its unit: day, week, fortnight, month."""
_BACK = words_of("back brb bbl home return returning resume resuming restart again")
_MYSELF = words_of("i im ill we were")
_WITH = words_of("at with to visiting seeing near by")
"""Words by which the client is where somebody else is: "we are at my daughter's"."""
_GOES_ON = words_of("will wont shall am be back return returning then")
"""Words after "and" with which the client speaks on of the one who was spoken of before another person."""
_NO_RETURN = words_of("squat squats my")
_UNTIL = words_of("till til until back")

_OF_THE_ROOM = words_of("gym room outside weather here hall sauna water garage outdoors shade sun")
"""Words beside which a temperature is not the client's."""
_PAST = words_of("last ago felt was")
_TOLD_OF = words_of("felt was were went hurt hurts feels looked still")
_OVER = words_of("was been had")
"""Words before an absence that is over."""

_ABSENCES = words_of("away out off on in abroad travelling traveling camping skiing gone")
"""How words for being away begin, which are of the past behind "was" and "been"."""

_ONLY_TOLD = {"", ",", ".", "!", "-", ")", "and", "so", "\n"}
"""What follows on an absence of which no more is told."""

MOST_AWAY = 12
"""How many of the words for being away are looked at in one message."""
FARTHEST = 60
"""How many tokens before them another person can stand who is the one away."""


def ails(message: Message) -> bool:
    """Return whether something is told that may be dangerous, beside which other words mean other things."""
    return message.has(AILS) or ("chest" in message.words and "pain" in message.taken)


def find_pause(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a pause with the day of the return, None where nothing is paused."""
    if is_ill(message) and not MAY_I_TRAIN.is_in(message):
        return Wanted(on=_return_day(message, days, sent, 0))
    then = _day_of_return(message, days, sent)
    if then is not None:
        return Wanted(on=then)
    if is_only_off_work(message):
        return None
    for away in islice(AWAY.find(message), MOST_AWAY):
        start, end = away.start, away.end
        first, last = message.sentence_span(start)
        first = _with_dates_before(max(first, start - FARTHEST), days)
        words = message.texts(start, end)
        if is_anothers(message, first, start, words[0]):
            continue
        back = not _BACK.isdisjoint(words)
        on = _return_day(message, days, sent, start if back else first)
        if back and not _says_return(message, start, end, on):
            continue
        if back and message.text(end) == "after" and FULL_SET.is_in(message):
            continue
        if (back and _tells_how_it_was(message, days, end)) or (
            words[0] == "took" and (message.has(_PAST) or not message.has(_UNTIL))
        ):
            continue
        if NOT_GONE.is_in(message, first, end) or _is_of_a_thing(message, start):
            continue
        if words[0] in {"away", "out", "off"} and _moves_away(message.text(start - 1)):
            continue
        if words[0] in _ABSENCES and _is_no_absence_now(message, start, end):
            continue
        if on is None and UNTIL_THEN.is_in(message, first):
            on = _return_day(message, days, sent, 0)
        if on is None and not back and not _is_open(message, start, end, last):
            continue
        if on is None and message.text(end) in _ONLY_TOLD and FULL_SET.is_in(message):
            # "squat 80x8, travelling, no kilo plates here" was trained there.
            continue
        return Wanted(on=on)
    busy = BUSY.first(message) if message.has(_UNTIL) or NO_TRAINING_FOR.is_in(message) else None
    if busy is not None and not STILL.is_in(message):
        first = max(message.sentence_span(busy.start)[0], busy.start - FARTHEST)
        word = message.text(busy.start)
        if word != "no" and is_anothers(message, first, busy.start, word):
            return None
        on = _return_day(message, days, sent, 0)
        return Wanted(on=on) if on is not None else None
    return None


_THINGS = words_of(
    """bar barbell bench machine rack cable dumbbell plate platform treadmill kettlebell rope belt stack"""
)
_ARE = words_of("is are was were s still both all")


def _is_of_a_thing(message: Message, start: int) -> bool:
    """Return whether it is a thing of the gym that is away: "the bar's away for repair"."""
    at = start - 1
    while message.text(at) in _ARE:
        at -= 1
    word = message.text(at)
    return word.removesuffix("s") in _THINGS and (at < start - 1 or word.endswith("s"))


def _day_of_return(message: Message, days: Sequence[Day], sent: datetime) -> date | None:
    """Return the day right after which the client says to be back: "on the 9th of June I am back"."""
    for day in days:
        if day.kind in {"last weekday", "vague"} or (day.kind == "offset" and day.values[0] <= 0):
            continue
        back = BACK_THEN.at(message, day.end)
        if back is not None and "pain" not in message.taken[back.start : back.end]:
            return day_meant(message, day, days, sent)
    return None


def _is_no_absence_now(message: Message, start: int, end: int) -> bool:
    """Return whether "off" or "out" tells of what is over, of a number, or of what comes only then: "was off
    for 2 weeks", "0.2 off in 3 weeks"."""
    if message.text(start - 1) in _OVER:
        return True
    if message.text(end) != "in" or LENGTH.at(message, end + 1) is None:
        return False
    return message.text(start) != "away"


def _moves_away(before: str) -> bool:
    """Return whether "away" tells only where something moves: "the bar drifts away from me"."""
    is_verb = before.endswith(("ed", "ing", "s")) and len(before) > _SHORTEST_VERB
    return before in _NOT_AWAY or (is_verb and before not in _GONE)


_SHORTEST_VERB = 4
_GONE = words_of(
    "going being flying driving travelling traveling weeks months hours nights holidays weekends"
)


def _with_dates_before(first: int, days: Sequence[Day]) -> int:
    """Return where a sentence begins, with the dates right before it, whose points do not end one."""
    for day in reversed(days):
        if day.kind == "numbers" and 0 <= first - day.end <= 1:
            first = max(0, day.start - 1)
        elif day.kind == "numbers" and day.start < first and first - day.end <= 3:
            first = day.start
    return first


def is_ill(message: Message) -> bool:
    """Return whether the client is ill; to feel sick beside a sign of danger is no flu."""
    told = list(ILL.find(message))
    # "I'll" is typed with an apostrophe where it is sure not to be "ill".
    told = [found for found in told if not _is_i_will(message, found)]
    if I_WILL.is_in(message):
        told = [found for found in told if "ill" not in message.texts(found.start, found.end)]
    is_ill = ((told or has_fever(message)) and not OTHER_ILL.is_in(message)) or CAUGHT_IT.is_in(message)
    return bool(is_ill) and not (ails(message) or NOT_ILL.is_in(message))


def _is_i_will(message: Message, found: Found) -> bool:
    tokens = message.tokens[found.start : found.end]
    return any(token.text == "ill" and token.end - token.start > len("ill") for token in tokens)


def speaks_of_illness(text: str) -> bool:
    """Return whether the words say that the client is ill: what a pause is for, which no reading tells."""
    message = message_of(text[:LONGEST])
    return bool(message.tokens) and is_ill(message)


def fevers(message: Message) -> Iterator[int]:
    """Yield the tokens of numbers that tell how high a fever is."""
    if message.has(_OF_THE_ROOM) and "fever" not in message.words:
        return
    for found in FEVER.find(message):
        at, _ = found.parts["n"]
        value = message.value(at)
        if value is not None and any(low <= value <= high for low, high in FEVERS):
            yield at


def has_fever(message: Message) -> bool:
    """Return whether a fever is told with its figure."""
    return any(True for _ in fevers(message))


def is_anothers(message: Message, first: int, start: int, word: str) -> bool:
    """Return whether another person is the one who is away: "my wife is away, so ..."."""
    others = [
        other.end
        for other in SOMEBODY_ELSE.find(message, first, start)
        if message.text(other.start - 1) not in _WITH or _MYSELF.isdisjoint(message.texts(first, other.start))
    ]
    if others and message.text(others[-1]) in {"and", ","} and message.text(others[-1] + 1) in _GOES_ON:
        return False
    return bool(others) and _MYSELF.isdisjoint([*message.texts(others[-1], start), word])


def _says_return(message: Message, start: int, end: int, on: date | None) -> bool:
    """Return whether "back" is a return, and not the body's, a machine's ("back 7") or "back in 2012"."""
    after = message.text(end)
    if "pain" in message.taken[start:end] or not _NO_RETURN.isdisjoint((message.text(start - 1), after)):
        return False
    value = message.value(end + 1) if after == "in" else message.value(end)
    if value is None:
        return on is not None
    return value < 1900 if after == "in" else message.taken[end] == "a day"


def _tells_how_it_was(message: Message, days: Sequence[Day], end: int) -> bool:
    """Return whether a day told after "back" is one of the past: "back on Monday felt good"."""
    return any(end <= day.start <= end + 2 and message.text(day.end) in _TOLD_OF for day in days)


def _is_open(message: Message, start: int, end: int, last: int) -> bool:
    """Return whether an absence without a day of return is one: of some length, or open-ended."""
    if STILL.is_in(message):
        return False
    if message.text(end - 1) in LOOSE and not LENGTH.is_in(message) and "week" not in message.words:
        return False
    stop = min(last, end + 8)
    return OPEN.is_in(message, start, stop) and not NOT_OPEN.is_in(message, start, stop)


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
            message.text(at) in UNTIL and (message.text(at) != "to" or _goes_to(message, at, d.start))
            for at in range(max(0, d.start - 4), d.end)
        )
        or not _BACK.isdisjoint(message.texts(max(0, d.start - 6), d.start))
    ]
    home = {found.end for found in GOES_HOME.find(message)}
    for day in sorted(cued, key=lambda each: each.start in home):
        on = day_meant(message, day, days, sent)
        if on is not None:
            return on
    length = LENGTH.first(message, start)
    if length is not None:
        days_away = _days_of(message, length)
        return sent.date() + timedelta(days=days_away) if days_away else None
    if NEXT_WEEK.is_in(message, start):
        return sent.date() + timedelta(days=14 - sent.weekday())
    return None


def _days_of(message: Message, length: Found) -> int:
    """Return the days of a length of time; 0 where how many is not said, or beyond all measure."""
    days_each = _DAYS[message.text(length.parts["unit"][0])[0]]
    if "n" not in length.parts:
        return days_each if "one" in length.parts else 0
    value = message.value(length.parts["n"][0]) or 0
    return int(value) * days_each if value == int(value) and value < 400 else 0
