"""Whether a message puts right what is recorded.

Which recorded set it means, and what is put in its place, is decided elsewhere.
"""

import re
from collections.abc import Sequence
from decimal import Decimal

from domain.reading.correction_words import (
    ALL_FEW,
    ALL_FEW_ARE,
    COMPARISON,
    COUNTING,
    INSTEAD,
    LAST_FEW,
    MARKERS,
    NO_FIRST,
    NOT_THIS,
    NTHS,
    OLD_NUMBERS,
    POINTING,
    REGRET,
    SEPARATE_SET,
    STRONG,
    THING,
    TRIGGERS,
    UNIT_FIXED,
)
from domain.reading.days import Day
from domain.reading.elements import Element
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Request
from domain.reading.when import past_day
from domain.reading.words import KG_WORDS, LB_WORDS, words_of


def is_correction(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day] = ()
) -> bool:
    """Return whether the message puts right something recorded, rather than reporting something new."""
    if not request.done or not message.has(TRIGGERS):
        return False
    line = message.line
    if (
        _is_of_a_full_exercise(message, request, named)
        or _is_of_a_recorded_day(message, request, named, days)
        or _is_one_exercise_not_another(message, named)
        or _is_no_and_a_number(message)
        or _is_instead_of_what_is_recorded(message, request, named)
        or LAST_FEW.search(line) is not None
        or ALL_FEW_ARE.search(line) is not None
    ):
        return True
    match = MARKERS.search(line)
    if match is None:
        return False
    said = match.group()
    if _is_regret(message, match, request):
        return False
    numbers_before = any(
        t.value is not None and not message.taken[i]
        for i, t in enumerate(message.tokens)
        if message.starts[i] < match.start()
    )
    strong = STRONG.search(line) is not None
    if (
        numbers_before
        and not strong
        and not said.startswith(("#", "not"))
        and not re.match(r"(?:that|the|it)", said)
    ):
        return False
    numbers = [i for i, t in enumerate(message.tokens) if t.value is not None and not message.taken[i]]
    if (
        re.match(r"(?:oops|whoops|sorry|my bad|woops|oopsie)", said)
        and re.search(
            r"\b(?:late|delay|wait|forgot|slow|busy|lot|no reply|silence|missed|cant|wont|bother)\b", line
        )
        and not re.search(r"\bnot #|# not|should|meant|typo|wrong\b", line)
    ):
        return False
    if (
        said.startswith(("sorry", "oops", "whoops"))
        and len(numbers) >= 2
        and any(len(n.names) == 1 for n in named)
        and not any(one.exercise in n.names for n in named for one in request.done)
        and not re.search(r"\bnot\b|should|meant|typo|wrong|\bwas\b|\bwere\b", line)
    ):
        # "sorry, rows only 60x10 today" tells of an exercise that nothing is recorded of.
        return False
    if re.match(rf"(?:{THING}|it|that|they|those|these)(?![^ ])", said) and not strong:
        return _is_put_right(message, match, named)
    if said.startswith(("#", "not")) and not strong:
        return _is_this_not_that(message, numbers, named)
    if re.match(
        r"(?:change|correct|fix|edit|update|amend|adjust|replace|switch|put|set|swap|log|count|record"
        r"|save|mark|file)\b",
        said,
    ):
        return bool(numbers) or (
            bool(named)
            and bool(re.match(r"(?:change|correct|fix|edit|log|count|record|put|mark|file|switch)", said))
            and "as skipped" not in line
        )
    if said.startswith(("instead", "rather")):
        return False
    if said.startswith("actually"):
        return bool(numbers)
    if (
        not numbers
        and not named
        and UNIT_FIXED.search(line) is None
        and not re.search(
            r"\b(?:yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|last night"
            r"|each hand|per hand|failure|negatives|bodyweight|assist\w*)\b",
            line,
        )
    ):
        return False
    if re.match(r"make (?:that|it|them|those)", said) and not numbers and not named:
        return UNIT_FIXED.search(line) is not None
    return not (
        numbers_before
        and re.match(r"(?:i mean|sorry|oops|whoops|actually|make|no)", said)
        and not re.search(r"\bnot #", line)
    )


def _is_regret(message: Message, match: re.Match[str], request: Request) -> bool:
    """Return whether a new set is told with what was hoped of it: "squat 90x6, should have been 7"."""
    if REGRET.match(match.group()) is None:
        return False
    before = [
        v
        for at, start in enumerate(message.starts)
        if start < match.start() and (v := message.value(at)) is not None and not message.taken[at]
    ]
    return len(before) == 2 and not any(
        one.load in before and Decimal(one.amount) in before for one in request.done
    )


def _is_one_exercise_not_another(message: Message, named: Sequence[Named]) -> bool:
    """Return whether just one exercise is said against another: "cable row, not barbell"."""
    if not named or named[0].start > 3 or len(message.tokens) > 9:
        return False
    after = message.texts(named[0].end, named[0].end + 2)
    return "not" in after and all(t.value is None for t in message.tokens) and after[:1] in (["not"], [","])


def _is_no_and_a_number(message: Message) -> bool:
    """Return whether a short message denies the last record and says another number: "no, 3 reps"."""
    return len(message.tokens) <= 7 and NO_FIRST.match(message.line) is not None


def _is_instead_of_what_is_recorded(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a number is to stand instead of a recorded one: "put 8 for the rows instead of 11"."""
    match = INSTEAD.search(message.line)
    if match is None or sum(t.value is not None for t in message.tokens) != 2:
        return False
    at, _ = message.span(match, "n")
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    return any(
        one.exercise in names and message.value(at) in {one.load, Decimal(one.amount)} for one in request.done
    )


def _is_of_a_full_exercise(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "the plank was 50 seconds" speaks of an exercise whose sets are all recorded already.

    "That plank set was …", "both squat sets were …" speak of what is recorded, however many sets are left.
    """
    if len(named) != 1 or len(named[0].names) != 1:
        return False
    after = [
        w for w in message.texts(named[0].end, named[0].end + 3) if w not in {"set", "sets", "one", "ones"}
    ]
    if after[:1] not in (["was"], ["were"], ["should"], ["is"], ["are"]):
        return False
    numbers = [i for i, t in enumerate(message.tokens) if t.value is not None]
    if len(numbers) > 1 or (not numbers and not message.has(COUNTING)) or len(message.tokens) > 12:
        return False
    today = request.sent.date()
    name = named[0].names[0]
    count = sum(1 for one in request.done if one.exercise == name and (one.on or today) == today)
    planned = next((p.sets for p in request.plan if p.name == name), 1)
    pointed = message.text(named[0].start - 1) in POINTING
    return count >= (1 if pointed else planned)


def _is_of_a_recorded_day(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day]
) -> bool:
    """Return whether "yesterday the rdl was 82.5" speaks of an exercise recorded on that day."""
    if len(named) != 1 or len(named[0].names) != 1 or len(days) != 1 or len(message.tokens) > 12:
        return False
    if not _IS.intersection(message.texts(named[0].end, named[0].end + 2)):
        return False
    on = past_day(days[0], request.sent)
    numbers = [at for at, token in enumerate(message.tokens) if token.value is not None]
    said = [at for at in numbers if not message.taken[at]]
    return len(said) == 1 and any(
        one.exercise == named[0].names[0] and one.on == on and on != request.sent.date()
        for one in request.done
    )


_IS = words_of("was were should")


def _is_put_right(message: Message, match: re.Match[str], named: Sequence[Named]) -> bool:
    """Return whether "that was …" goes on with a number, an exercise, a unit or a day, and not with a
    remark."""
    start, end = message.span(match)
    tail = message.texts(end - 1, min(len(message.tokens), end + 2))
    first = tail[0] if tail else ""
    value = message.value(end - 1)
    if value is not None:
        after = message.text(end)
        return (
            after
            not in {"years", "days", "weeks", "minutes", "min", "mins", "hours", "hrs", "degrees", "of", "%"}
            and not (message.taken[end - 1])
        )
    if first in KG_WORDS | LB_WORDS:
        return True
    if first in {
        "yesterday",
        "yesterdays",
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
        "last",
    }:
        return len(message.tokens) - end <= 6
    before = message.texts(start, end)
    rest = message.line[message.starts[end - 1] :]
    if re.match(
        r"(?:(?:to|at) failure|failure|each hand|per hand|in each hand|bodyweight|bw|body weight"
        r"|negatives|lowering only|assisted|without weight|no weight|lbs?|kgs?|\+ #|- #)\b",
        rest,
    ) or re.match(r"[+-] #", rest):
        return True
    if any(n.start in {end - 1, end} and not n.weak for n in named) and before[0] in {
        "that",
        "it",
        "this",
        "those",
        "they",
        "the",
        "last",
        "these",
    }:
        after_name = next(n.end for n in named if n.start in {end - 1, end})
        following = message.texts(after_name, len(message.tokens))
        return len(following) <= 8 and not any(
            w in {"is", "was", "felt", "hurts", "day", "today"} for w in following[:1]
        )
    return False


def _is_this_not_that(message: Message, numbers: list[int], named: Sequence[Named]) -> bool:
    """Return whether one number is said against another: "9 not 8"."""
    if COMPARISON.search(message.line) and not NOT_THIS.search(message.line):
        return False
    if not NOT_THIS.search(message.line):
        return (
            bool(numbers)
            and bool(named)
            and re.search(r"\bnot (?:the |a )?\w+", message.line) is not None
            and any(message.text(n.start - 1) == "not" or message.text(n.start - 2) == "not" for n in named)
        )
    return len(numbers) >= 2


def is_set_again(message: Message, request: Request, groups: Sequence[Group]) -> bool:
    """Return whether "third set 100x4" speaks of a set that is already recorded."""
    match = SEPARATE_SET.search(message.line)
    if (
        match is None
        or not request.done
        or len(groups) != 1
        or not any(isinstance(i, Element) for i in groups[0].items)
    ):
        return False
    at, _ = message.span(match)
    if message.sentence[at] != groups[0].sentence:
        return False
    if match["w"]:
        number = NTHS[match["w"]]
    else:
        place, _ = message.span(match, "n" if match["n"] else "m")
        number = int(message.value(place) or Decimal(0))
    today = request.sent.date()
    named = groups[0].named
    exercise = named.names[0] if named is not None and len(named.names) == 1 else request.done[-1].exercise
    count = sum(1 for one in request.done if one.exercise == exercise and (one.on or today) == today)
    return 1 <= number <= count


def mark_old_numbers(message: Message) -> None:
    """Mark the numbers that a correction says are not right."""
    for pattern in (LAST_FEW, ALL_FEW):
        for _, start, end in message.find(pattern):
            message.take(start, end, "which sets")
    for match, start, end in message.find(OLD_NUMBERS):
        del match
        message.take(start, end, "what it is not")
