"""Days: which words name one, and which day that is, looking back for sets and forward for plans.

dateparser is asked only about words that already are a date with the name of a month; languages and order are
pinned, so that nothing depends on the machine. Whether a day is the day of the training is decided here too.
"""

import re
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import lru_cache
from typing import Any, Literal

from domain.reading.message import Message
from domain.reading.tokens import NUMBER, WORD
from domain.reading.words import ACTIVITIES, TRAINING, words_of

BACKWARD_DAYS = 60
"""How far back a day in numbers can lie."""

Kind = Literal[
    "offset", "weekday", "last weekday", "next weekday", "day of month", "numbers", "date", "vague"
]


@dataclass(frozen=True, slots=True)
class Day:
    """A day that was said, from token `start` to before `end`.

    `values` are, by kind: days from today; the weekday (0 is Monday); the day of the month; two or three
    numbers;
    the day's ordinal; nothing.
    """

    start: int
    end: int
    kind: Kind
    values: tuple[int, ...]


_WEEKDAYS = {
    "monday": 0,
    "mon": 0,
    "tuesday": 1,
    "tue": 1,
    "tues": 1,
    "wednesday": 2,
    "wed": 2,
    "weds": 2,
    "thursday": 3,
    "thu": 3,
    "thur": 3,
    "thurs": 3,
    "friday": 4,
    "fri": 4,
    "saturday": 5,
    "sat": 5,
    "sunday": 6,
    "sun": 6,
    "wednsday": 2,
    "wendesday": 2,
    "thrusday": 3,
    "tuseday": 1,
    "satuday": 5,
    "wensday": 2,
    "teusday": 1,
    "thurday": 3,
    "saterday": 5,
    "munday": 0,
    "firday": 4,
}
_SHORT = frozenset({"mon", "wed", "fri", "sat", "sun", "tue", "thu"})
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
    "yesterday": -1,
    "yesterdays": -1,
    "yday": -1,
    "ydays": -1,
    "yest": -1,
    "yesteday": -1,
    "yestrday": -1,
    "ysterday": -1,
    "yesterady": -1,
    "yesturday": -1,
    "yesterdy": -1,
    "today": 0,
    "todays": 0,
    "tonight": 0,
    "tonights": 0,
    "tomorrow": 1,
    "tomorrows": 1,
    "tmrw": 1,
    "tmr": 1,
    "tomorow": 1,
    "tommorow": 1,
    "tommorrow": 1,
    "tomoz": 1,
    "tmw": 1,
    "2moro": 1,
    "tomo": 1,
    "2day": 0,
}
_LOOK = frozenset(
    {
        *_WEEKDAYS,
        *(w + "s" for w in _WEEKDAYS),
        *_MONTHS,
        *_OFFSETS,
        "ago",
        "night",
        "morning",
        "afternoon",
        "evening",
        "day",
        "earlier",
        "th",
        "st",
        "nd",
        "rd",
        "/",
        "-",
        ".",
        "weekend",
    }
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
    r"\b(?:on|till|til|until|from|for|of|back|by|since|to|away|through|was|that) the # (?:st|nd|rd|th)\b"
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
_FULL_SET = re.compile(r"# (?:kgs?|kilos?|lbs?|pounds?|s)? ?(?:x|for|@|\*|times|by) #|# reps|# (?:kg|lbs?) #")
_NOT_OF_A_SET = frozenset(
    {"than", "since", "after", "like", "before", "as", "until", "till", "til", "by", "vs"}
)
_SORE = words_of("""sore tired stiff hungover wrecked doms fatigued exhausted aching pain""")
_HEADER_WORDS = words_of(
    """am pm at oclock around about session workout evening morning afternoon s late early night on last for
    from this so ok and hi hey hello sorry update the log results training numbers coach just my in"""
)


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
            if (
                (cue in _CUES or message.text(at - 1) == "the")
                and int(first) <= 31
                and 1 <= int(second or 0) <= 12
            ):
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
        alone = message.text(at + 1) in {":", ",", "-", "\n", ""} and (at == 0 or before in {"\n", "."})
        if not alone:
            return
    if before == "last" or (before == "past" and message.text(at - 2) == "this"):
        add(at - 1, at + 1, "last weekday", (weekday,))
    elif before == "next":
        add(at - 1, at + 1, "next weekday", (weekday,))
    elif before == "this":
        add(at - 1, at + 1, "weekday", (weekday,))
    else:
        add(at, at + 1, "weekday", (weekday,))


def _add_with_month(message: Message, start: int, end: int, add: Any) -> None:
    words = message.texts(start, end)
    month_word = next(w for w in words if w in _MONTHS)
    if message.text(end) in {"reps", "rep", "x", "kg", "sets"} or (
        month_word in {"may", "mar", "march", "dec", "sun"}
        and not {"of", "th", "st", "nd", "rd"} & set(words)
        and message.text(start - 1) not in _CUES
        and not (message.text(end) in {":", ",", "-"} and (start == 0 or message.text(start - 1) == "\n"))
    ):
        return
    numbers = _numbers(message, start, end)
    if not numbers or not 1 <= numbers[0] <= 31:
        return
    span = " ".join(str(t.value) if t.value is not None else t.text for t in message.tokens[start:end])
    day = _parsed(span.replace(" th", "").replace(" st", "").replace(" nd", "").replace(" rd", ""))
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
    if not (_is_day(numbers[0], numbers[1]) or _is_day(numbers[1], numbers[0])):
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


def _is_day(day: int, month: int) -> bool:
    return 1 <= month <= 12 and 1 <= day <= 31


def _add_day_of_month(message: Message, start: int, end: int, add: Any) -> None:
    number = next((n for n in _numbers(message, start, end)), 0)
    first, _ = message.clause_span(start)
    if not 1 <= number <= 31 or message.text(end) in _NOT_A_DAY_AFTER:
        return
    if any(word in _FAIL_WORDS for word in message.texts(max(first, start - 6), start)):
        return
    add(start, end, "day of month", (number,))


@lru_cache(maxsize=1)
def _date_parser() -> Any:
    from dateparser.date import DateDataParser  # noqa: PLC0415 - slow to import, and seldom needed

    return DateDataParser(
        languages=["en"],
        settings={
            "DATE_ORDER": "DMY",
            "PREFER_DAY_OF_MONTH": "first",
            "RELATIVE_BASE": datetime(2024, 1, 1),  # noqa: DTZ001 - a leap year, without a zone, as all here
            "TIMEZONE": "UTC",
            "REQUIRE_PARTS": ["day", "month"],
            "PARSERS": ["absolute-time"],
        },
    )


@lru_cache(maxsize=1024)
def _parsed(span: str) -> date | None:
    """Return the day that a date with the name of a month means, in any year where none is said."""
    found = _date_parser().get_date_data(span)
    return found.date_obj.date() if found is not None and found.date_obj is not None else None


def past_day(day: Day, sent: datetime) -> date | None:
    """Return the day of a set that `day` means, on or before the day of `sent`; None where it must be
    asked."""
    today = sent.date()
    match day.kind:
        case "offset":
            return today + timedelta(days=day.values[0]) if day.values[0] <= 0 else None
        case "weekday" | "last weekday":
            back = (today.weekday() - day.values[0]) % 7
            return today - timedelta(days=back) if back else None
        case "day of month":
            return _latest_day(day.values[0], today)
        case "date":
            meant = date.fromordinal(day.values[0])
            return meant if meant <= today else None
        case "numbers":
            meant_days = _meant(day.values, today)
            return meant_days[0] if len(meant_days) == 1 else None
        case _:
            return None


def coming_day(day: Day, sent: datetime) -> date | None:
    """Return the day of a plan that `day` means, after the day of `sent`; None where it must be asked."""
    today = sent.date()
    match day.kind:
        case "offset":
            return today + timedelta(days=day.values[0]) if day.values[0] > 0 else None
        case "weekday":
            return today + timedelta(days=(day.values[0] - today.weekday() - 1) % 7 + 1)
        case "next weekday":
            ahead = (day.values[0] - today.weekday() - 1) % 7 + 1
            # Within this week "next Friday" can be the coming one or the one after it.
            same_week = today.weekday() + ahead <= 6
            return None if same_week else today + timedelta(days=ahead)
        case "day of month":
            return _next_day(day.values[0], today)
        case "date":
            meant = date.fromordinal(day.values[0])
            return meant if meant > today else None
        case "numbers":
            ahead_days = {
                _on_or_after(d, m, today)
                for d, m in {(day.values[0], day.values[1]), (day.values[1], day.values[0])}
                if _is_day(d, m)
                and not (len(day.values) == 3 and (d, m) != day.values[:2] and day.values[2] == 0)
            } - {None}
            near = {d for d in ahead_days if d is not None and (d - today).days <= 120}
            chosen = near or ahead_days
            return next(iter(chosen)) if len(chosen) == 1 else None
        case _:
            return None


def _latest_day(number: int, today: date) -> date | None:
    year, month = today.year, today.month
    for _ in range(3):
        try:
            meant = date(year, month, number)
        except ValueError:
            meant = None
        if meant is not None and meant <= today:
            return meant
        year, month = (year - 1, 12) if month == 1 else (year, month - 1)
    return None


def _next_day(number: int, today: date) -> date | None:
    year, month = today.year, today.month
    for _ in range(3):
        try:
            meant = date(year, month, number)
        except ValueError:
            meant = None
        if meant is not None and meant > today:
            return meant
        year, month = (year + 1, 1) if month == 12 else (year, month + 1)
    return None


def _on_or_after(day: int, month: int, today: date) -> date | None:
    for year in (today.year, today.year + 1):
        try:
            meant = date(year, month, day)
        except ValueError:
            continue
        if meant > today:
            return meant
    return None


def _meant(values: tuple[int, ...], today: date) -> list[date]:
    """Return the readings of a day in numbers that lie in the last sixty days; (day, month, 0) has one
    order."""
    first, second = values[0], values[1]
    orders = {(first, second)} if len(values) == 3 and values[2] == 0 else {(first, second), (second, first)}
    found: set[date] = set()
    for day, month in orders:
        years = (values[2],) if len(values) == 3 and values[2] else (today.year, today.year - 1)
        for year in years:
            try:
                meant = date(year, month, day)
            except ValueError:
                continue
            if 0 <= (today - meant).days <= BACKWARD_DAYS:
                found.add(meant)
    return sorted(found)


_FEELINGS = words_of(
    """felt feel strong good great was hard tough easy went well really so bad ok okay awful fine tired
    amazing better best weak super pretty very quite rough brilliant decent not too alright nice horrible
    heavy light ! . smooth solid it surprisingly a bit day quick slow"""
)


def is_for_training(message: Message, day: Day, has_set: Any) -> bool:
    """Return whether a day is said of the training, and not of tennis, a party or a sore back.

    `has_set(start, end)` tells whether a set or an exercise is named between two tokens.
    """
    before = message.text(day.start - 1)
    if before in _NOT_OF_A_SET:
        return False
    start, end = _comma_clause(message, day.start)
    words = set(message.texts(start, end))
    if words & _SORE and (before in {"from", "of"} or message.text(day.end) in {"s"}):
        return False
    others = words - set(message.texts(day.start, day.end))
    if {message.text(day.start - 1), message.text(day.end)} & {
        "workout",
        "workouts",
        "session",
        "training",
        "sets",
        "numbers",
        "results",
        "log",
    }:
        return True
    if message.text(end - 1) == ":" and day.start - start <= 2:
        return True
    near = {message.text(at) for at in range(max(start, day.start - 2), min(end, day.end + 2))}
    if near & ACTIVITIES:
        return False
    if has_set(start, end):
        return True
    if all(w in _HEADER_WORDS or not w.isalpha() for w in others):
        return True
    if others <= _FEELINGS and (start == 0 or message.text(start - 1) in {"\n", ","}):
        return True
    return bool(others & TRAINING) and not others & ACTIVITIES


def _comma_clause(message: Message, at: int) -> tuple[int, int]:
    return message.clause_span(at)
