"""Whether a message puts right what is recorded.

Which recorded set it means, and what is put in its place, is decided elsewhere.
"""

from collections.abc import Sequence
from decimal import Decimal

from domain.reading.corrected_records import only_set_at, place_said
from domain.reading.correction_claims import claims
from domain.reading.correction_of_days import LAST_TIME
from domain.reading.correction_of_records import is_of_what_is_recorded
from domain.reading.correction_words import (
    ALL_FEW,
    ASIDE,
    COMPARISON,
    COUNTED_SO,
    DENIED_NUMBER,
    EXCUSE,
    LAST_FEW,
    NOT_THIS,
    NTH_SET,
    OLD_NUMBERS,
    OTHER_WORTH,
    SEPARATE_SET,
    SIGN,
    SKIPPED,
    STRONG,
    TO_COME,
    UNIT_FIXED,
    WRONG,
    WRONG_OR_WAS,
)
from domain.reading.counted import is_counted
from domain.reading.days import Day
from domain.reading.done_on import done_on
from domain.reading.element import Element
from domain.reading.gather import Group
from domain.reading.last_of import told_of_last
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern
from domain.reading.phrase_rules import REPS_UNKNOWN
from domain.reading.request import Request
from domain.reading.words import KG_WORDS, LB_WORDS, REP_WORDS, SECOND_WORDS, SET_WORDS, words_of


def is_correction(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day] = ()
) -> bool:
    """Return whether the message puts right something recorded, rather than reporting something new."""
    if (
        not request.done
        or _names_another(message, request, named)
        or _is_of_an_earlier_day(message, request, named)
    ):
        return False
    if is_of_what_is_recorded(message, request, named, days) or done_on(message, request, named) is not None:
        return True
    return any(
        not _is_of_a_new_set(message, sign, request, named) and _puts_right(message, sign, request, named)
        for sign in SIGN.find(message)
    )


def _is_of_an_earlier_day(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether the last time of an exercise is told of which nothing is recorded today."""
    today = request.sent.date()
    done = {one.exercise for one in request.done if one.on in {None, today}}
    return any(done.isdisjoint(each.names) for each in told_of_last(message, named))


_TAKES_BACK = Pattern(
    "[,|.|-|oh|um|uh|er|ah|ach]* ({back})",
    back="no|nope|nah|wait|hang on|hold on|sorry|i mean|(scratch|scrap) that|actually|oops|my bad|correction",
)
_MOST_BETWEEN = 12


def _names_another(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether the client begins with an exercise, and takes another before its set is told: "pulldown,
    no, that was the row, 50 for 9"."""
    names = [n for n in named if not n.weak and len(n.names) == 1]
    if len(names) < 2 or _TAKES_BACK.at(message, names[0].end) is None:
        return False
    if names[0].names == names[1].names and any(one.exercise in names[0].names for one in request.done):
        return False
    begins = not message.numbers(0, names[1].start) and names[0].start <= 2
    near = names[1].start - names[0].end <= _MOST_BETWEEN
    return begins and near and len(message.numbers(names[1].end, len(message.tokens))) > 1


def _puts_right(message: Message, sign: Found, request: Request, named: Sequence[Named]) -> bool:
    """Return whether what a sign goes on with, or stands after, makes a correction of it."""
    kind = next(iter(sign.parts))
    if kind == "make" and TO_COME.is_in(message, sign.start, message.clause_span(sign.start)[1]):
        return False
    numbers = [at for at in message.numbers(0, len(message.tokens)) if not message.taken[at]]
    before = [at for at in numbers if at < sign.start]
    strong = STRONG.is_in(message)
    if kind == "hoped" and not numbers and message.has(_ASKS_WHAT):
        return False
    if kind == "hoped" and _is_hoped_of_a_new_set(message, before, request):
        return False
    if before and not strong and kind != "not" and message.text(sign.start) not in _POINTS_BACK:
        return False
    if kind == "sorry" and _is_only_sorry(message, numbers, request, named):
        return False
    if not strong and kind == "was":
        return _is_put_right(message, sign, request, named) or (
            NOT_THIS.is_in(message) and _is_of_what_was_read(message, request)
        )
    if not strong and kind == "not":
        return _is_this_not_that(message, numbers, named)
    match kind:
        case "named":
            return _is_of_a_recorded_one(message, sign, request, named)
        case "change":
            if TO_COME.is_in(message):
                return False
            return bool(numbers) or (_is_into(message, named) and not SKIPPED.is_in(message))
        case "values" | "actually" | "put":
            return bool(numbers)
        case "instead":
            return False
        case "told":
            return not numbers
    unit = UNIT_FIXED.is_in(message)
    if not numbers and not named and not unit and (kind == "make" or not OTHER_WORTH.is_in(message)):
        return False
    return not (before and kind in _AFTER_A_SET and not DENIED_NUMBER.is_in(message))


def _is_into(message: Message, named: Sequence[Named]) -> bool:
    """Return whether something is to become one of the exercises: "change that to rows"."""
    return any(not _INTO.isdisjoint(message.texts(max(0, each.start - 2), each.start)) for each in named)


_INTO = words_of("to into as with by for")


def _is_of_a_recorded_one(message: Message, sign: Found, request: Request, named: Sequence[Named]) -> bool:
    """Return whether the exercise that is to be made a number is one that something is recorded of."""
    if TO_COME.is_in(message):
        return False
    recorded = {one.exercise for one in request.done}
    inside = [n for n in named if sign.start < n.start and n.end <= sign.end]
    return any(len(recorded.intersection(n.names)) == 1 for n in inside)


def _is_of_a_new_set(message: Message, sign: Found, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a set of an exercise that nothing is recorded of is told before the sign."""
    names = [n for n in named if n.end <= sign.start and not n.weak and len(n.names) == 1]
    recorded = {one.exercise for one in request.done}
    if not names or any(n.names[0] in recorded for n in names):
        return False
    values = [message.value(at) for at in message.numbers(0, sign.start) if not message.taken[at]]
    return bool(values) and not any(
        {one.load, Decimal(one.amount)}.issuperset(values) for one in request.done
    )


_ASKS_WHAT = words_of("what which how when whats am")
_POINTS_BACK = words_of("that the it they these")
_AFTER_A_SET = words_of("make mean sorry not")
"""Signs that come after a new set as well, unless a number is denied."""


def _is_only_sorry(
    message: Message, numbers: Sequence[int], request: Request, named: Sequence[Named]
) -> bool:
    """Return whether one is sorry for something else, or tells of an exercise that nothing is recorded of:
    "sorry, rows only 60x10 today"."""
    if EXCUSE.is_in(message) and not WRONG.is_in(message):
        return True
    recorded = {one.exercise for one in request.done}
    return (
        len(numbers) >= 2
        and any(len(n.names) == 1 for n in named)
        and not any(recorded.intersection(n.names) for n in named)
        and not WRONG_OR_WAS.is_in(message)
    )


def _is_hoped_of_a_new_set(message: Message, before: Sequence[int], request: Request) -> bool:
    """Return whether a new set is told with what was hoped of it: "squat 90x6, should have been 7"."""
    values = [message.value(at) for at in before]
    return len(values) == 2 and not any(
        one.load in values and Decimal(one.amount) in values for one in request.done
    )


def _is_put_right(message: Message, sign: Found, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "that was …" goes on with a number, an exercise, a unit or a day, and not with a
    remark."""
    at = sign.end - 1
    first = message.text(at)
    if _is_of_no_record(message, request, named):
        return False
    if message.value(at) is not None:
        recorded = {one.exercise for one in request.done}
        told = [n for n in named if not n.weak]
        values = {value for one in request.done for value in (one.load, Decimal(one.amount))}
        is_new = _has_another(message, at) or REPS_UNKNOWN.is_in(message) or message.value(at) not in values
        if told and not any(recorded.intersection(n.names) for n in told) and is_new:
            # "It was 10 kg for the bridges, 14 of them" tells a new set of them.
            return False
        names_it = any(n.start == sign.end for n in named)
        return not message.taken[at] and (names_it or _can_be_of_a_set(message, sign.end))
    if first in KG_WORDS | LB_WORDS or COUNTED_SO.at(message, at) is not None:
        return True
    if first in _DAYS:
        return message.sentence_span(at)[1] - sign.end <= 6 and not LAST_TIME.is_in(
            message, sign.start, sign.end
        )
    name = next((n for n in named if n.start in {at, sign.end}), None)
    if name is None or name.weak or message.text(sign.start) not in _POINTS_AT_ONE:
        return False
    return len(message.tokens) - name.end <= 8 and message.text(name.end) not in _REMARK


def _can_be_of_a_set(message: Message, after: int) -> bool:
    """Return whether what stands after a number lets it be one of a set: no hour, no count of things."""
    if _OF_THE_CLOCK.at(message, after) is not None or message.text(after) in _NO_VALUE:
        return False
    return message.text(after) in _OF_SETS or not is_counted(message, after)


def _is_of_what_was_read(message: Message, request: Request) -> bool:
    """Return whether the number that is denied is one of the last record: "that was 12 raises, not 21"."""
    last = request.done[-1]
    denied = [message.value(found.parts["n"][0]) for found in NOT_THIS.find(message)]
    return bool(denied) and {last.load, Decimal(last.amount)}.issuperset(denied)


def _has_another(message: Message, at: int) -> bool:
    """Return whether another number follows that nothing was made of."""
    return any(not message.taken[n] for n in message.numbers(at + 1, len(message.tokens)))


def _is_of_no_record(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "the third one was 8" speaks of a set that is not recorded yet."""
    found = NTH_SET.first(message)
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    count = sum(1 for one in request.done if one.exercise in names)
    if found is None or place_said(message, found) <= count:
        return False
    return bool(named) or only_set_at(message, request, found) is None


_NO_VALUE = words_of("of %")
_OF_SETS = KG_WORDS | LB_WORDS | REP_WORDS | SECOND_WORDS | SET_WORDS | words_of("s and plates")
_OF_THE_CLOCK = Pattern("am|pm|oclock|o clock|in the (morning|afternoon|evening|night)|at night")
_WEEKDAYS = words_of("monday tuesday wednesday thursday friday saturday sunday")
_DAYS = _WEEKDAYS | {day + "s" for day in _WEEKDAYS} | words_of("yesterday yesterdays last")
_POINTS_AT_ONE = words_of("that it this those they the last these")
_REMARK = words_of("is was felt hurts day today")


def _is_this_not_that(message: Message, numbers: Sequence[int], named: Sequence[Named]) -> bool:
    """Return whether one number is said against another: "9 not 8", or one exercise."""
    if NOT_THIS.is_in(message):
        return len(numbers) >= 2
    return (
        bool(numbers)
        and not COMPARISON.is_in(message)
        and any(
            "not" in message.texts(max(0, n.start - 2), n.start) and message.text(n.start - 1) not in _DO
            for n in named
        )
    )


_DO = words_of("do did done doing get got")
"""Words that make it one that was left out: "did not do bench"."""


def is_set_again(message: Message, request: Request, groups: Sequence[Group]) -> bool:
    """Return whether "third set 100x4" speaks of a set that is already recorded."""
    found = SEPARATE_SET.first(message)
    if (
        found is None
        or not request.done
        or len(groups) != 1
        or not any(isinstance(i, Element) for i in groups[0].items)
        or message.sentence[found.start] != groups[0].sentence
    ):
        return False
    today = request.sent.date()
    named = groups[0].named
    exercise = named.names[0] if named is not None and len(named.names) == 1 else request.done[-1].exercise
    count = sum(1 for one in request.done if one.exercise == exercise and (one.on or today) == today)
    return 1 <= place_said(message, found) <= count


def mark_old_numbers(message: Message, request: Request, named: Sequence[Named]) -> None:
    """Mark the numbers that a correction says are not right, and those that tell which set it means."""
    told = list(claims(message, request, named))
    for aside in ASIDE.find(message):
        message.take(*aside.parts["n"], "what it is not")
    for claim in told:
        message.take(claim.start, claim.end, "what it is not")
    for place in NTH_SET.find(message):
        if "n" in place.parts:
            message.take(place.start, place.end, "which sets")
    for pattern, what in ((LAST_FEW, "which sets"), (ALL_FEW, "which sets"), (OLD_NUMBERS, "what it is not")):
        if told and pattern is OLD_NUMBERS:
            # "I typed 11 instead of 12" denies the number that is right.
            continue
        for found in pattern.find(message):
            message.take(found.start, found.end, what)
