"""Days as they are said: which words of a message name one. Which day that is, is decided next door.

A date with the name of a month is recognised here, and read in month_dates.
"""

import re
from dataclasses import dataclass
from datetime import date
from typing import Any, Literal

from domain.reading.message import Message
from domain.reading.month_dates import parsed_date
from domain.reading.tokens import NUMBER, WORD
from domain.reading.words import words_of

Kind = Literal[
    "offset", "weekday", "last weekday", "next weekday", "day of month", "numbers", "date", "vague"
]


@dataclass(frozen=True, slots=True)
class Day:
    """A day that was said, from token `start` to before `end`.

    `values` are, by kind: days from today; the weekday (0 is Monday); the day of the month; two or three
    numbers; the day's ordinal; nothing.
    """

    start: int
    end: int
    kind: Kind
    values: tuple[int, ...]


_WEEKDAYS = {
    name: number
    for number, names in enumerate(
        (
            "monday mon munday",
            "tuesday tue tues tuseday teusday",
            "wednesday wed weds wednsday wendesday wensday",
            "thursday thu thur thurs thrusday thurday",
            "friday fri firday",
            "saturday sat satuday saterday",
            "sunday sun",
        )
    )
    for name in names.split()
}
_SHORT = frozenset({"mon", "wed", "fri", "sat", "sun", "tue", "thu"})
_SURE_SHORT = frozenset({"mon", "tue", "wed", "thu", "fri"})
"""Short names that are no other word at the beginning or the end of what is said."""
_MONTHS = {
    name: number
    for number, names in enumerate(
        (
            "january jan",
            "february feb",
            "march mar",
            "april apr",
            "may",
            "june jun",
            "july jul",
            "august aug",
            "september sep sept",
            "october oct",
            "november nov",
            "december dec",
        ),
        1,
    )
    for name in names.split()
}
_OFFSETS = {
    **dict.fromkeys(("today", "todays", "tonight", "tonights", "2day"), 0),
    **dict.fromkeys(("tomorrow", "tomorrows"), 1),
    **dict.fromkeys(("yesterday", "yesterdays", "yday", "ydays", "yest"), -1),
}
_LOOK = frozenset({*_WEEKDAYS, *(w + "s" for w in _WEEKDAYS), *_MONTHS, *_OFFSETS, "/", "-", "."}) | words_of(
    "ago night morning afternoon evening day earlier th st nd rd weekend"
)
_PHRASE_WORDS = frozenset({"day", "night", "morning", "afternoon", "evening", "lunchtime", "arvo", "weekend"})
_MONTH_WORDS = frozenset(_MONTHS)
_DATE_SIGNS = frozenset({"/", "-", "."})
_ENDINGS = frozenset({"st", "nd", "rd", "th"})
_AGO = re.compile(r"(?:(?P<n>#)|(?P<a>a|one)) (?P<what>days?|nights?|weeks?) ago\b")
_PHRASES: tuple[tuple[re.Pattern[str], Kind, tuple[int, ...]], ...] = (
    (re.compile(r"\b(?:the )?day before yesterday\b"), "offset", (-2,)),
    (re.compile(r"\bthe day after tomorrow\b"), "offset", (2,)),
    (re.compile(r"\b(?:last|yesterday) night\b"), "offset", (-1,)),
    (re.compile(r"\byesterday (?:morning|afternoon|evening|lunchtime)\b"), "offset", (-1,)),
    (re.compile(r"\bthis (?:morning|afternoon|evening|lunchtime)\b|\bthis arvo\b"), "offset", (0,)),
    (re.compile(r"\bthe other (?:day|night)\b|\b(?:on|over) the weekend\b|\blast weekend\b"), "vague", ()),
)
_MONTH = "|".join(sorted(_MONTHS, key=len, reverse=True))
_WITH_MONTH = re.compile(
    rf"# (?:(?:st|nd|rd|th) )?(?:of )?(?P<m1>{_MONTH})\b(?: #)?|(?P<m2>{_MONTH}) (?:the )?#(?: (?:st|nd"
    rf"|rd|th)\b)?"
)
_DAY_OF_MONTH = re.compile(
    r"\b(?:on|till|til|until|from|for|of|back|by|since|to|away|through|was"
    r"|that|send|sent|log|report|post) the # (?:st|nd|rd|th)\b"
    r"|^the # (?:st|nd|rd|th)\b(?= [:,\n]| #| \w+ #)"
)
_NOT_A_DAY_AFTER = frozenset(
    {"rep", "reps", "set", "sets", "one", "time", "exercise", "attempt", "plate", "hole"}
)
_FAIL_WORDS = frozenset(
    {"failed", "fail", "failing", "died", "stuck", "missed", "dropped", "rep", "lost", "stopped"}
)
_NUMERIC = re.compile(r"# / #(?: / #)?|# - # - #|# \. # \.(?: #)?|# \. # \. #")
_CUES = words_of("""on for from of date dated since till until back workout session to""")
_BEFORE_SCORE = words_of("rpe effort felt feels like a energy mood difficulty intensity")
_AFTER_SCORE = words_of("hard tough effort difficulty intensity energy tired session day easy pain")
"""Words beside "8/10" that make it a score and no day."""
_FULL_SET = re.compile(r"# (?:kgs?|kilos?|lbs?|pounds?|s)? ?(?:x|for|@|\*|times|by) #|# reps|# (?:kg|lbs?) #")


def find_days(message: Message) -> list[Day]:
    """Return the days named in the message, in order. Nothing is marked as taken."""
    if not message.has(_LOOK) and not any("." in t.text for t in message.tokens if t.kind == NUMBER):
        return []
    found: list[Day] = []
    used: set[int] = set()

    def add(start: int, end: int, kind: Kind, values: tuple[int, ...]) -> None:
        if used.isdisjoint(range(start, end)):
            used.update(range(start, end))
            found.append(Day(start, end, kind, values))

    for pattern, kind, values in _PHRASES if message.has(_PHRASE_WORDS) else ():
        for _, start, end in message.find(pattern):
            add(start, end, kind, values)
    for match, start, end in message.find(_AGO) if "ago" in message.words else ():
        count = _whole(message, start) if match["n"] else 1
        if count is not None and count < 400:
            add(start, end, "offset", (-count * (7 if match["what"].startswith("week") else 1),))
    for _, start, end in message.find(_WITH_MONTH) if message.has(_MONTH_WORDS) else ():
        _add_with_month(message, start, end, add)
    for _, start, end in message.find(_NUMERIC) if message.has(_DATE_SIGNS) else ():
        _add_numeric(message, start, end, add)
    for _, start, end in message.find(_DAY_OF_MONTH) if message.has(_ENDINGS) else ():
        _add_day_of_month(message, start, end, add)
    for at, token in enumerate(message.tokens):
        if token.kind == WORD:
            _add_word(message, at, token.text, add)
        elif token.kind == NUMBER and "." in token.text and message.text(at + 1) == "." and not token.spoken:
            first, _, second = token.text.partition(".")
            cue = message.text(at - 2) if message.text(at - 1) == "the" else message.text(at - 1)
            heads = (at == 0 or cue == "\n") and _FULL_SET.search(message.line, message.starts[at + 1])
            cued = cue in _CUES or message.text(at - 1) == "the" or heads
            if cued and int(first) <= 31 and 1 <= int(second or 0) <= 12:
                add(at, at + 2, "numbers", (int(first), int(second)))
    found.sort(key=lambda day: day.start)
    return found


def _whole(message: Message, at: int) -> int | None:
    value = message.value(at)
    return int(value) if value is not None and value == int(value) else None


def _numbers(message: Message, start: int, end: int) -> tuple[int, ...]:
    whole = (_whole(message, at) for at in range(start, end) if message.value(at) is not None)
    return tuple(n if n is not None else 0 for n in whole)


def _add_word(message: Message, at: int, word: str, add: Any) -> None:
    if word in _OFFSETS:
        add(at, at + 1, "offset", (_OFFSETS[word],))
        return
    weekday = _WEEKDAYS.get(word)
    if weekday is None and word.endswith("s"):
        weekday = _WEEKDAYS.get(word[:-1])
        if (
            weekday is not None
            and word not in {"thurs", "tues"}
            and message.tokens[at].end - message.tokens[at].start == len(word)
        ):
            # "on Mondays" is a habit; "Monday's" has an apostrophe and so is longer as typed.
            return
    if weekday is None:
        return
    before = message.text(at - 1)
    if word in _SHORT and before not in {
        "on",
        "last",
        "this",
        "next",
        "till",
        "until",
        "for",
        "to",
        "since",
        "from",
    }:
        opens = at == 0 or before in {"\n", "."}
        alone = opens and message.text(at + 1) in {":", ",", "-", "\n", ""}
        if not alone and not (word in _SURE_SHORT and (opens or before in {",", "("} or _ends(message, at))):
            return
    if before == "last" or (before == "past" and message.text(at - 2) == "this"):
        add(at - 1, at + 1, "last weekday", (weekday,))
    elif before == "next":
        add(at - 1, at + 1, "next weekday", (weekday,))
    elif before == "this":
        add(at - 1, at + 1, "weekday", (weekday,))
    else:
        add(at, at + 1, "weekday", (weekday,))


def _ends(message: Message, at: int) -> bool:
    """Return whether a word is the last of its sentence."""
    return message.text(at + 1) in {"", ".", "!", "\n", ")"}


def _add_with_month(message: Message, start: int, end: int, add: Any) -> None:
    words = message.texts(start, end)
    month_word = next(w for w in words if w in _MONTHS)
    if message.text(end) in {"reps", "rep", "x", "kg", "sets"} or (
        month_word in {"may", "mar", "march", "dec", "sun"}
        and not {"of", "th", "st", "nd", "rd"} & set(words)
        and message.text(start - 1) not in _CUES
        and message.text(start - 1) not in _WEEKDAYS
        and not (message.text(end) in {":", ",", "-"} and (start == 0 or message.text(start - 1) == "\n"))
    ):
        return
    numbers = _numbers(message, start, end)
    if not numbers or not 1 <= numbers[0] <= 31:
        return
    span = " ".join(str(t.value) if t.value is not None else t.text for t in message.tokens[start:end])
    day = parsed_date(span.replace(" th", "").replace(" st", "").replace(" nd", "").replace(" rd", ""))
    if day is not None:
        has_year = len(numbers) > 1 and numbers[1] > 2000
        add(
            start,
            end,
            "date" if has_year else "numbers",
            (day.toordinal(),) if has_year else (day.day, day.month, 0),
        )


def _add_numeric(message: Message, start: int, end: int, add: Any) -> None:
    """Add a day in numbers, where the words around it or a full set beside it make it one."""
    tokens = message.tokens[start:end]
    if not all(t.glued for t in tokens[1:]):
        return
    numbers = _numbers(message, start, end)
    if any(t.value is not None and ("." in t.text or t.spoken) for t in tokens) or 0 in numbers:
        return
    before, after = message.text(start - 1), message.text(end)
    if any(message.taken[at] for at in range(start, end)):
        return
    if len(numbers) == 3:
        if numbers[0] > 1900:
            try:
                add(start, end, "date", (date(numbers[0], numbers[1], numbers[2]).toordinal(),))
            except ValueError:
                return
        elif numbers[2] > 1900 or (
            numbers[2] >= 20 and before not in {"x", "for", ":", "/"} and tokens[1].text != "-"
        ):
            year = numbers[2] if numbers[2] > 1900 else 2000 + numbers[2]
            add(start, end, "numbers", (numbers[0], numbers[1], year))
        return
    if not (is_day_and_month(numbers[0], numbers[1]) or is_day_and_month(numbers[1], numbers[0])):
        return
    if before in {"x", "/", "@", "*", "times", "pain"} or after in {
        "x",
        "reps",
        "kg",
        "lb",
        "lbs",
        "@",
        "/",
        "sets",
    }:
        return
    if numbers[1] == 10 and (before in _BEFORE_SCORE or after in _AFTER_SCORE):
        return
    if before == "for" and start >= 2 and message.value(start - 2) is not None:
        return
    others = (
        message.line[: message.starts[start]]
        + " | "
        + (message.line[message.starts[end] :] if end < len(message.starts) else "")
    )
    cued = before in _CUES or (after == ":" and (start == 0 or before == "\n"))
    if cued or _FULL_SET.search(others) or (others.strip(" |") == "" and False):
        add(start, end, "numbers", numbers)


def is_day_and_month(day: int, month: int) -> bool:
    """Return whether two numbers can be the day and the month of a date."""
    return 1 <= month <= 12 and 1 <= day <= 31


def _add_day_of_month(message: Message, start: int, end: int, add: Any) -> None:
    number = next((n for n in _numbers(message, start, end)), 0)
    first, _ = message.clause_span(start)
    if not 1 <= number <= 31 or message.text(end) in _NOT_A_DAY_AFTER:
        return
    if any(word in _FAIL_WORDS for word in message.texts(max(first, start - 6), start)):
        return
    add(start, end, "day of month", (number,))
