"""From which day to come a client is away: "on holiday from Friday for a week"."""

from collections.abc import Sequence
from datetime import date, datetime, timedelta

from domain.reading.away_words import LENGTH, NEXT_WEEK, THIS_WEEK
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.request import Absence
from domain.reading.when import coming_day
from domain.reading.words import words_of

_FROM = words_of("from starting beginning between")
_TO = words_of("till til until to through thru - and")
_BESIDE = words_of("the on this next coming")
_RETURNS = words_of("back return returning home again")
_GOES = words_of(
    """leave leaving fly flying go going goes off away gone holiday holidays vacation vacay travel travelling
    traveling trip cruise surgery operation op"""
)
_NOT_YET = words_of("till til until to by for back return returning home again after before")
"""Words between the going and a day by which that day is not the one of going."""

FARTHEST = 5
"""How many words before its day the going is told at most. The house's own choice."""


_IS_AWAY = words_of("away off out abroad travelling traveling unavailable town")
"""Words right before a day by which somebody is away on it, unless it begins a time away."""
_SETS_OUT = words_of("go going goes gone fly flying head heading set setting move moving far")
_AWAY_THEN = Pattern(
    """
    [,|then]* (im|i am|were|we are|ill be|i will be) {away} [all day|again]* >($|.|,|!|so|and|sorry)
    """,
    away="away|off|out of town|travelling|traveling",
)
"""The same, said after its day: "on Tuesday I'm away"."""
_WEEKEND = Pattern("(this|the|at|over|for|coming|next) [the|coming|whole]* weekend|weekend away")
_SATURDAY = 5


def absence_of(message: Message, days: Sequence[Day], sent: datetime, back: date | None) -> Absence | None:
    """Return the absence that begins on a day to come and ends on the day `back`; None for one from now on,
    but for one that lasts this week.

    A return that is counted from the day of `sent`, by a length of time or to a weekday, is counted from the
    day of going.
    """
    meant = [coming_day(day, sent) for day in days]
    for at, since in enumerate(meant):
        if since is None or not _is_going(message, days, at, comes_back=back is not None and back > since):
            continue
        until = _return_after(message, days, meant, at, back, sent.date())
        of_its_week = days[at].kind == "weekday of next week" and until == since + _to_monday(since)
        if (until is None or of_its_week) and _is_of_that_day(message, days[at]):
            until = since + timedelta(days=1)
        return Absence(since, until)
    today = sent.date()
    since = _span_ahead(message, today)
    is_weekend = today.weekday() >= _SATURDAY and _WEEKEND.is_in(message)
    if back is None and since is None and (is_weekend or THIS_WEEK.is_in(message)):
        return Absence(today, today + _to_monday(today))
    if since is None or (back is not None and back <= since):
        return None
    return Absence(since, back or since + _to_monday(since))


def _to_monday(day: date) -> timedelta:
    return timedelta(days=7 - day.weekday())


def _return_after(
    message: Message,
    days: Sequence[Day],
    meant: Sequence[date | None],
    at: int,
    back: date | None,
    today: date,
) -> date | None:
    """Return the day of the return of who goes on day number `at`; None where it is not told."""
    going = meant[at]
    if going is None:
        return None
    on, of = back, next((day for day, each in zip(days, meant, strict=True) if each == back), None)
    if back is None and _leads_on(message, days, at):
        on, of = meant[at + 1], days[at + 1]
    elif back is not None and of is None and LENGTH.is_in(message):
        on = back + (going - today)
    if on is not None and on <= going and of is not None and of.kind == "weekday":
        on += timedelta(days=7)
    return on if on is None or on > going else None


def _span_ahead(message: Message, today: date) -> date | None:
    """Return the first day of the week or the weekend to come that is spoken of."""
    for spoken_of, ahead in ((NEXT_WEEK, 7 - today.weekday()), (_WEEKEND, _SATURDAY - today.weekday())):
        found = spoken_of.first(message)
        if found is not None and ahead > 0:
            first = message.sentence_span(found.start)[0]
            is_return = not _NOT_YET.isdisjoint(message.texts(first, found.start))
            return None if is_return else today + timedelta(days=ahead)
    return None


def _leads_on(message: Message, days: Sequence[Day], at: int) -> bool:
    """Return whether a stretch of days leads from a day to the next one: "Friday to Monday"."""
    gap = days[at + 1].start - days[at].end if at + 1 < len(days) else None
    return gap in {0, 1, 2} and message.text(days[at].end) in _TO


def _is_going(message: Message, days: Sequence[Day], at: int, *, comes_back: bool) -> bool:
    """Return whether a day is that of going: "from Friday", "Friday to Monday", "we fly out on Friday".

    Who `comes_back` later on can well go home on it.
    """
    day, before = days[at], days[at].start
    while message.text(before - 1) in _BESIDE:
        before -= 1
    opening, lead = message.text(day.start), message.text(before - 1)
    if opening in _NOT_YET:
        return False
    if opening in _FROM or lead in _FROM or (lead == "of" and message.text(before - 2) == "as"):
        return message.text(before - 2) not in _RETURNS
    if _leads_on(message, days, at) and lead not in _NOT_YET:
        return True
    if _AWAY_THEN.at(message, day.end) is not None:
        return True
    first = max(message.sentence_span(day.start)[0], day.start - FARTHEST)
    words = _without_length(message, first, day.start)
    going = max((place for place, word in enumerate(words) if word in _GOES), default=None)
    return going is not None and _leads_there(words[going + 1 :], comes_back=comes_back)


def _without_length(message: Message, start: int, end: int) -> list[str]:
    """Return the words from `start` to before `end` without a length of time: "off for ten days on"."""
    length = LENGTH.first(message, start, end)
    if length is None:
        return message.texts(start, end)
    before = length.start - (message.text(length.start - 1) == "for")
    return [*message.texts(start, before), *message.texts(length.end, end)]


def _leads_there(words: list[str], *, comes_back: bool) -> bool:
    """Return whether nothing between the going and the day makes the day another one: "off to Spain on"."""
    to_place = words[:1] == ["to"] and len(words) > 1
    home = comes_back and words[:1] == ["home"]
    return _NOT_YET.isdisjoint(words[1:] if to_place or home else words)


def _is_of_that_day(message: Message, day: Day) -> bool:
    """Return whether somebody is away on that day alone: "away on Tuesday", and not "leaving on Tuesday"."""
    before = day.start
    while message.text(before - 1) in _BESIDE:
        before -= 1
    is_away = message.text(before - 1) in _IS_AWAY and message.text(before - 2) not in _SETS_OUT
    return is_away or _AWAY_THEN.at(message, day.end) is not None
