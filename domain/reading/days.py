"""Days as they are said: which words of a message name one. Which day that is, is decided next door.

A date with the name of a month is recognised here, and read in month_dates.
"""

from collections.abc import Iterator
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from domain.reading.day_words import (
    AGO,
    AHEAD,
    DAY_OF_MONTH,
    IN_NUMBERS,
    IN_WEEKS,
    OF_LAST_WEEK,
    OF_NEXT_WEEK,
    OFFSETS,
    PHRASES,
    WEEKDAYS,
    WITH_MONTH,
    Kind,
)
from domain.reading.days_in_numbers import day_of_month, decimals, in_numbers, whole_number, with_month
from domain.reading.message import Message
from domain.reading.pattern_tables import Table
from domain.reading.patterns import words_needed
from domain.reading.words import words_of


@dataclass(frozen=True, slots=True)
class Day:
    """A day that was said, from token `start` to before `end`."""

    start: int
    end: int
    kind: Kind
    values: tuple[int, ...]


_LONGEST_AGO = 400
_MOST_AHEAD = 31
_MOST_WEEKS_AHEAD = 52
_WEEKDAYS_OF = {**{f"{name}s": number for name, number in WEEKDAYS.items()}, **WEEKDAYS}
_DAY_NAMES = frozenset({*_WEEKDAYS_OF, *OFFSETS})
_SHORT = words_of("mon tue wed thu fri sat sun")
_SURE_SHORT = words_of("mon tue wed thu fri")
"""Short names that are no other word."""
_OF_ONE_DAY = words_of("was were wasnt werent its")
"""Words before "mondays" after which it is what belongs to one Monday: "that was mondays, not todays"."""
_OF_A_DAY = words_of(
    """session sessions workout workouts training numbers number results result sets set lifts lift log
    stuff scores reps figures report gym"""
)
"""What belongs to one day: "tuesdays numbers"."""
_BETWEEN_DAY_AND_TRAINING = words_of(
    """last first second third final top heavy big main only leg legs upper lower push pull arm back"""
)
_OF_MANY_DAYS = words_of("on every most all some other hate hates love loves")
"""Words before "mondays" that make it a habit, unless what was trained follows."""
_THESE = words_of("these those they")
_OPENING = frozenset({"", "\n", ".", ":", ",", "(", "!", "-"})
_MAKES_IT_NO_DAY = words_of("""on down at in out here there by with and is up for too through is was shines
    shining its back next beside this that next behind under a the around cream burn bathing so all still""")
"""Words after "sat" and "sun" that make them no day: "sat down", "sun is out"."""
_BEFORE_SHORT = words_of("on last this next till until for to since from")
_ENDS = words_of(". , ! ? ; instead") | {"", "\n"}
_UNTIL = words_of("till until til to through thru")
"""Before a day of the month these part it from a weekday before: "Friday till the 20th"."""
_READERS = Table(((WITH_MONTH, with_month), (IN_NUMBERS, in_numbers), (DAY_OF_MONTH, day_of_month)))

_MAY_NAME_A_DAY = words_needed(PHRASES, AGO, AHEAD, _READERS) | _DAY_NAMES | {"."}
"""Words and signs without which no day is named."""


def find_days(message: Message, names_at: AbstractSet[int] = frozenset()) -> list[Day]:
    """Return the days named in the message, in order. Nothing is marked as taken.

    `names_at` are the tokens at which exercises are named: "mondays squat" is of one Monday.
    """
    if not message.has(_MAY_NAME_A_DAY):
        return []
    found: list[Day] = []
    used: set[int] = set()
    for day in _named(message, names_at):
        if used.isdisjoint(range(day.start, day.end)):
            used.update(range(day.start, day.end))
            found.append(day)
    found.sort(key=lambda day: day.start)
    in_full = {
        day.start for day in found if day.kind == "day of month" and message.text(day.start) not in _UNTIL
    }
    # "Monday the 20th" is the 20th.
    return [d for d in found if d.kind != "weekday" or in_full.isdisjoint((d.start, d.end, d.end + 1))]


def _named(message: Message, names_at: AbstractSet[int]) -> Iterator[Day]:
    """Yield what can name a day; what comes first goes before what shares words with it."""
    for said, found in PHRASES.find(message):
        yield Day(found.start, found.end, *said)
    for found in AGO.find(message):
        count = whole_number(message, found.start) if "count" in found.parts else 1
        if count is not None and count < _LONGEST_AGO:
            yield Day(found.start, found.end, "offset", (-count * (7 if "weeks" in found.parts else 1),))
    for found in AHEAD.find(message):
        count = whole_number(message, found.parts["count"][0])
        if count is not None and count <= _MOST_AHEAD:
            yield Day(found.start, found.end, "offset", (count,))
    for reader, found in _READERS.find(message):
        day = reader(message, found.start, found.end)
        if day is not None:
            yield Day(found.start, found.end, *day)
    in_weeks = _in_weeks(message)
    of_next_week = _of_next_week(message)
    of_last_week = {
        said.parts["day"][0]: Day(
            said.start, said.end, "weekday of last week", (_WEEKDAYS_OF[message.text(said.parts["day"][0])],)
        )
        for said in OF_LAST_WEEK.find(message)
    }
    for word in _DAY_NAMES & message.words:
        for at in message.places[word]:
            if word in OFFSETS:
                yield Day(at, at + 1, "offset", (OFFSETS[word],))
            elif _is_weekday(message, at, word, names_at):
                of_a_week = in_weeks.get(at) or of_next_week.get(at) or of_last_week.get(at)
                yield of_a_week or _weekday(message, at, _WEEKDAYS_OF[word])
    for at, day in decimals(message):
        yield Day(at, at + 2, *day)


def _of_next_week(message: Message) -> dict[int, Day]:
    """Return the weekdays that are told as those of next week, by their token."""
    found = {}
    for said in OF_NEXT_WEEK.find(message):
        for at, _ in said.parts.values():
            start, end = at, at + 1
            if message.texts(at - 2, at) == ["next", "week"]:
                start -= 2
            if message.texts(at + 1, at + 3) == ["next", "week"]:
                end += 2
            found[at] = Day(start, end, "weekday of next week", (_WEEKDAYS_OF[message.text(at)],))
    return found


def _in_weeks(message: Message) -> dict[int, Day]:
    """Return the weekdays that are told as some weeks after the next of their name, by their token."""
    found = {}
    for said in IN_WEEKS.find(message):
        at, _ = said.parts["day"]
        count = whole_number(message, said.parts["count"][0]) if "count" in said.parts else 1
        if "fortnight" in message.texts(said.start, said.end):
            count = 2
        if count is not None and count <= _MOST_WEEKS_AHEAD:
            weekday = _WEEKDAYS_OF[message.text(at)]
            found[at] = Day(said.start, said.end, "weekday in weeks", (weekday, count))
    return found


def _weekday(message: Message, at: int, number: int) -> Day:
    """Return the weekday at a token, with the word before it that tells which one."""
    before = message.text(at - 1)
    if before == "last" or (before == "past" and message.text(at - 2) == "this"):
        return Day(at - 1, at + 1, "last weekday", (number,))
    if before == "next":
        return Day(at - 1, at + 1, "next weekday", (number,))
    return Day(at - (before == "this"), at + 1, "weekday", (number,))


def _is_weekday(message: Message, at: int, word: str, names_at: AbstractSet[int]) -> bool:
    """Return whether a name of a weekday is one day: not a habit ("on Mondays"), nor another word ("sun")."""
    token = message.tokens[at]
    if word not in WEEKDAYS and token.end - token.start == len(word):
        # "Monday's" has an apostrophe and so is longer as typed.
        return message.text(at - 1) in _OF_ONE_DAY or _belongs_to_one(message, at, names_at)
    if word not in WEEKDAYS and (message.text(at + 1) == "are" or message.text(at - 1) in _OF_MANY_DAYS):
        # "Monday's are busy" is a habit, in spite of its apostrophe.
        return _belongs_to_one(message, at, names_at)
    if message.text(at - 1) == "black":
        return False
    before, after = message.text(at - 1), message.text(at + 1)
    if word not in _SHORT or before in _BEFORE_SHORT:
        return True
    if word in _SURE_SHORT:
        return True
    if before in {"it", "that", "one"} and after in _ENDS:
        return True
    opens = before in _OPENING
    return opens and after not in _MAKES_IT_NO_DAY


def _belongs_to_one(message: Message, at: int, names_at: AbstractSet[int]) -> bool:
    """Return whether "tuesdays" is said of what was trained on one Tuesday, and left without its apostrophe:
    "tuesdays numbers: ...", "fridays squat was 110x6"."""
    before = message.text(at - 1)
    if before == "are":
        return message.text(at - 2) in _THESE
    after = at + 1
    while message.text(after) in _BETWEEN_DAY_AND_TRAINING and after not in names_at and after < at + 4:
        after += 1
    if message.text(after) in _OF_A_DAY or before == "last":
        return True
    if before in _OF_MANY_DAYS:
        return False
    return after in names_at or (before in _OPENING and message.text(after) == ":")
