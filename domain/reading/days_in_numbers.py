"""Days that are said in numbers, or by a month and a number: "12/5", "12.5.", "5th of May", "on the 3rd".

Numbers are nearly always a set, a score or a load, so that words around them must make a day of them.
"""

from collections.abc import Iterator
from datetime import date

from domain.reading.day_words import CUES, DAYS_IN_WORDS, ENDINGS, FULL_SET, WEEKDAYS, Said
from domain.reading.message import Message
from domain.reading.month_dates import parsed_date
from domain.reading.phrase_kinds import UNIT
from domain.reading.tokens import NUMBER
from domain.reading.words import words_of

_OTHER_MEANING = frozenset({"may", "mar", "march", "dec"})
"""Names of months that are other words as well."""
_NO_MONTH_BEFORE = words_of("reps rep x kg sets set")
_NOT_A_DAY_AFTER = words_of(
    """rep reps set sets one time exercise attempt plate hole floor street grade notch rung setting pin slot
    hook"""
)
_FAIL_WORDS = words_of("failed fail failing died stuck missed dropped rep lost stopped")
_NO_YEAR_AFTER = words_of("x for : /")
_NO_DAY_AFTER = words_of("x / @ * times pain")
_NO_DAY_BEFORE = words_of("x reps kg lb lbs @ / sets")


def is_day_and_month(day: int, month: int) -> bool:
    """Return whether two numbers can be the day and the month of a date."""
    return 1 <= month <= 12 and 1 <= day <= 31


def whole_number(message: Message, at: int) -> int | None:
    """Return the whole number at a token, None where there is none."""
    value = message.value(at)
    return int(value) if value is not None and value == int(value) else None


def with_month(message: Message, start: int, end: int) -> Said | None:
    """Return the day of a month and a number."""
    numbers = _numbers(message, start, end)
    if not 1 <= numbers[0] <= 31 or message.text(end) in _NO_MONTH_BEFORE:
        return None
    if not _means_month(message, start, end):
        return None
    said = [
        str(t.value) if t.value is not None else str(DAYS_IN_WORDS.get(t.text, t.text))
        for t in message.tokens[start:end]
    ]
    day = parsed_date(" ".join(word for word in said if word not in ENDINGS and word != "the"))
    if day is None:
        return None
    has_year = len(numbers) > 1 and numbers[1] > 2000
    return ("date", (day.toordinal(),)) if has_year else ("numbers", (day.day, day.month, 0))


def day_of_month(message: Message, start: int, end: int) -> Said | None:
    """Return the day of "on the 3rd", which can be a rep or a set as well."""
    number = _numbers(message, start, end)[0]
    first, _ = message.clause_span(start)
    if not 1 <= number <= 31 or message.text(end) in _NOT_A_DAY_AFTER:
        return None
    if not _FAIL_WORDS.isdisjoint(message.texts(max(first, start - 6), start)):
        return None
    return "day of month", (number,)


def in_numbers(message: Message, start: int, end: int) -> Said | None:
    """Return the day in numbers, where the words around it or a full set beside it make it one."""
    tokens = message.tokens[start:end]
    if not all(t.glued for t in tokens[1:]) or any(message.taken[start:end]):
        return None
    numbers = _numbers(message, start, end)
    if any(t.value is not None and ("." in t.text or t.spoken) for t in tokens) or 0 in numbers:
        return None
    if len(numbers) == 2 and tokens[1].text == "-" and not any(t.text.startswith("0") for t in tokens):
        # "8-7" are reps, "03-20" is a day.
        return None
    if len(numbers) == 3:
        return _with_year(message, start, numbers)
    return ("numbers", numbers) if _are_day_and_month(message, start, end, numbers) else None


def decimals(message: Message) -> Iterator[tuple[int, Said]]:
    """Yield where a day looks like a decimal number with a point after it ("12.5."), and the day."""
    if "." not in message.words:
        return
    for at, token in enumerate(message.tokens):
        if token.kind != NUMBER or "." not in token.text or token.spoken or message.text(at + 1) != ".":
            continue
        first, _, second = token.text.partition(".")
        before = message.text(at - 1)
        cue = message.text(at - 2) if before == "the" else before
        if before == "the" and cue in {"with", "using", "w", "at"}:
            continue
        if (
            (cue in CUES or before == "the" or (cue in {"", "\n"} and FULL_SET.is_in(message, at + 1)))
            and int(first) <= 31
            and 1 <= int(second or 0) <= 12
        ):
            yield at, ("numbers", (int(first), int(second)))


def _numbers(message: Message, start: int, end: int) -> tuple[int, ...]:
    """Return the numbers among some tokens, 0 for one that is not whole; the day in words where it is the
    only one."""
    said = tuple(whole_number(message, at) or 0 for at in range(start, end) if message.value(at) is not None)
    return said or tuple(DAYS_IN_WORDS[word] for word in message.texts(start, end) if word in DAYS_IN_WORDS)


def _means_month(message: Message, start: int, end: int) -> bool:
    """Return whether a word is the month, and not what else it can mean: "may 5 reps be enough"."""
    words = set(message.texts(start, end))
    before = message.text(start - 1)
    return (
        words.isdisjoint(_OTHER_MEANING)
        or not words.isdisjoint({"of", *ENDINGS})
        or before in CUES
        or before in WEEKDAYS
        or (message.text(end) in {":", ",", "-"} and before in {"", "\n"})
    )


def _with_year(message: Message, start: int, numbers: tuple[int, ...]) -> Said | None:
    """Return the day of three numbers, which begin or end with the year."""
    year, month, day = numbers
    if year > 1900:
        try:
            return "date", (date(year, month, day).toordinal(),)
        except ValueError:
            return None
    year = numbers[2]
    dashed = message.text(start + 1) == "-"
    if year <= 1900 and (year < 20 or dashed or message.text(start - 1) in _NO_YEAR_AFTER):
        return None
    return "numbers", (numbers[0], numbers[1], year if year > 1900 else 2000 + year)


_AFTER_A_LOAD = UNIT | words_of(": - s each")
_AFTER_REPS = words_of("x * for @ at with w / , and then")


def _waits_for_reps(message: Message, start: int) -> bool:
    """Return whether a load stands before two numbers, without its reps: "100 kg: 8/7"."""
    at = start - 1
    while message.text(at) in _AFTER_A_LOAD:
        at -= 1
    return message.value(at) is not None and message.text(at - 1) not in _AFTER_REPS


_ROUND_THE_CLOCK = (24, 7)


def _are_day_and_month(message: Message, start: int, end: int, numbers: tuple[int, ...]) -> bool:
    """Return whether two numbers are a day, and no score ("8/10"), reps or load."""
    first, second = numbers
    before, after = message.text(start - 1), message.text(end)
    if numbers == _ROUND_THE_CLOCK and before not in CUES and after not in {":", "-"}:
        return False
    if not (is_day_and_month(first, second) or is_day_and_month(second, first)):
        return False
    if before in _NO_DAY_AFTER or after in _NO_DAY_BEFORE:
        return False
    if before == "for" and message.value(start - 2) is not None:
        return False
    if before not in CUES and _waits_for_reps(message, start):
        return False
    return (
        before in CUES
        or (after == ":" and before in {"", "\n"})
        or FULL_SET.is_in(message, 0, start)
        or FULL_SET.is_in(message, end)
    )
