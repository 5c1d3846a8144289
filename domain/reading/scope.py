"""What is not a record: plans, questions, other people's sets, warm-ups, and numbers of something else.

Each rule marks the numbers it speaks of in the message, so that no set is made of them. Nothing is read here.
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from decimal import Decimal

from domain.reading.body_numbers import OF_THE_BODY
from domain.reading.day_words import FULL_SET
from domain.reading.gym_numbers import OF_THE_GYM
from domain.reading.last_of import told_of_last
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.next_clause import end_without_name
from domain.reading.other_numbers import LIFTED, OF_PEOPLE, OF_THE_WORLD, Other
from domain.reading.other_people import mark_other_people
from domain.reading.pattern_tables import Table
from domain.reading.question_spans import questions_in
from domain.reading.scope_words import (
    AGAINST,
    FIGURE,
    FIRST,
    HISTORY,
    LATER,
    NOW,
    OF_BOTH_HANDS,
    ON_THE_CHEST,
    PLAN_AFTER,
    PLAN_BEFORE,
    RESUME,
    SUM,
    THANKED,
    THE_BODY,
    TO_COME,
    WARM,
    WARM_ENDS,
    WARMED,
    WHICH_SET,
)
from domain.reading.set_numbers import OF_SETS
from domain.reading.talk_numbers import OF_TALK
from domain.reading.tokens import JOKE
from domain.reading.words import (
    FILLERS,
    FOR_WORDS,
    LOAD_NOUNS,
    ORDINALS,
    REP_WORDS,
    SECOND_WORDS,
    SET_WORDS,
    TIMES_SIGNS,
)

_OF_PEOPLE = Table((other.pattern, other) for other in OF_PEOPLE)
_ALL_OTHERS = (*OF_THE_WORLD, *OF_THE_BODY, *OF_THE_GYM, *OF_SETS, *OF_TALK)
_OTHERS = Table((other.pattern, other) for other in _ALL_OTHERS)


def mark_what_is_no_record(
    message: Message, named: Sequence[Named], known: set[int], aims: AbstractSet[Decimal]
) -> list[tuple[int, int]]:
    """Mark the numbers that are no record. Return the questions and requests, as spans of tokens.

    `known` are the tokens of phrases that tell of a set, like "as planned" or "than last time"; `aims` are
    the loads of today's targets and sets to beat.
    """
    for found in ON_THE_CHEST.find(message):
        message.take(found.start, found.end, THE_BODY)
    for found in FIGURE.find(message):
        if "pain" not in message.taken[found.start : found.end]:
            message.take(found.start, found.end, THE_BODY)
    for found in WARMED.find(message):
        if not message.numbers(found.start, found.end):
            message.take(found.start, found.end, _WARMED_UP)
    for found in THANKED.find(message):
        message.take(found.start, found.end, "thanks")
    for found in TO_COME.find(message):
        message.take(found.start, found.end, "a plan")
    for found in WHICH_SET.find(message):
        message.take(found.start, found.end, "a set's number")
    questions = [(start, end) for start, end in questions_in(message) if start not in known]
    for start, end in questions:
        message.take(start, end, "a question")
    if "#" in message.words:
        _mark_other_numbers(message, known)
        mark_other_people(message, named)
        later = {at for found in LATER.find(message) for at in range(found.start, found.end)}
        asked = {at for start, end in questions for at in range(start, end)}
        _mark_plans(message, named, known | later | asked)
        _mark_warm_ups(message, named, aims)
        _mark_history(message, known, named)
        _mark_odd_decimals(message, named)
        _mark_sums(message)
        _mark_counts_of_things(message, named)
    return questions


_WARMED_UP = "after a warm-up"


def mark_people_and_times(message: Message) -> None:
    """Mark the numbers of a correction that are of people and of the day, and of no set."""
    _mark_other_numbers(message, set(), _OF_PEOPLE)


def _mark_other_numbers(message: Message, known: set[int], others: Table[Other] = _OTHERS) -> None:
    for other, found in others.find(message):
        start, end = found.parts.get("n", (found.start, found.end))
        values = [v for at in range(start, end) if (v := message.value(at)) is not None]
        if not other.unless.isdisjoint(message.words):
            continue
        if other.beside and not _has_a_set_beside(message, found.start, found.end):
            continue
        if other.glued and not all(message.tokens[at].glued for at in message.numbers(start, end)[1:]):
            continue
        if (start not in known or other.always) and any(other.least <= v <= other.most for v in values):
            message.take_numbers(start, end, other.what)


def _has_a_set_beside(message: Message, start: int, end: int) -> bool:
    """Return whether a whole set is told before or after some tokens."""
    return FULL_SET.is_in(message, 0, start) or FULL_SET.is_in(message, end)


def _mark_sums(message: Message) -> None:
    """Mark what is only added up to the number that counts: "a dozen plus two so fourteen"."""
    for found in SUM.find(message):
        one, other, total = (message.value(found.parts[name][0]) or Decimal(0) for name in ("a", "b", "c"))
        if one + other == total:
            message.take(found.start, found.parts["c"][0], "an explanation")
    for found in OF_BOTH_HANDS.find(message):
        both, each = (message.value(found.parts[name][0]) or Decimal(0) for name in ("both", "each"))
        if both == 2 * each:
            start, of_each = found.parts["both"][0], found.parts["each"][0]
            message.take(start, of_each if start < of_each else found.end, "an explanation")


def _mark_odd_decimals(message: Message, named: Sequence[Named]) -> None:
    """Mark numbers to the hundredth that no plates add up to, "tomatoes are 3,20 now", but for one that is
    all that is told of an exercise."""
    for at in message.numbers(0, len(message.tokens)):
        value = message.value(at) or Decimal(0)
        if not value % _SMALLEST_STEP or value.as_tuple().exponent != _HUNDREDTHS:
            continue
        is_all_of_it = any(n.end == at for n in named) and len(message.tokens) == at + 1
        if LIFTED.isdisjoint((message.text(at - 1), message.text(at + 1))) and not is_all_of_it:
            message.take_numbers(at, at + 1, "a price")


def _mark_counts_of_things(message: Message, named: Sequence[Named]) -> None:
    """Mark what is counted behind a set under a heading of its own: "24x18, lampshades broken: 1"."""
    if ":" not in message.words:
        return
    inside = {at for name in named for at in range(name.start, name.end)}
    for at in message.numbers(2, len(message.tokens)):
        if message.text(at - 1) != ":" or message.text(at + 1) not in _ENDS:
            continue
        heading = range(message.clause_span(at - 2)[0], at - 1)
        says_more = any(i in inside or message.taken[i] or message.text(i) in _OF_SETS for i in heading)
        if not says_more and len(heading) > 1 and FULL_SET.is_in(message, 0, heading.start):
            message.take_numbers(at, at + 1, "a number of something else")


_ENDS = frozenset({"", ".", ",", "!", ";", ")", "\n"})
_OF_SETS = FILLERS | LOAD_NOUNS | REP_WORDS | SET_WORDS | SECOND_WORDS | ORDINALS.keys()
_HUNDREDTHS = -2
_SMALLEST_STEP = Decimal("0.25")


def _mark_plans(message: Message, named: Sequence[Named], known: set[int]) -> None:
    told_before = {at for found in PLAN_AFTER.find(message) for at in range(found.start, found.end)}
    for found in PLAN_BEFORE.find(message):
        first = message.clause_span(found.start)[0]
        if found.start in told_before and message.numbers(first, found.start):
            # "100 was planned, did 95x8" has the plan before the word.
            continue
        if found.start not in known and message.taken[found.start] != "thanks":
            message.take_numbers(found.end, _end_of_plan(message, named, found.start, found.end), "a plan")
    for found in PLAN_AFTER.find(message):
        if found.start not in known:
            clause_first, _ = message.clause_span(found.start)
            first = _after_last(message, _PLUS, clause_first, found.start)
            message.take_numbers(first, found.start, "a plan")


_PLUS = frozenset({"and", "&", "plus"})


def _after_last(message: Message, words: frozenset[str], first: int, end: int) -> int:
    """Return the token after the last of some words between two tokens; the first where there is none."""
    return next((at for at in range(end, first, -1) if message.text(at - 1) in words), first)


def _end_of_plan(message: Message, named: Sequence[Named], plan: int, start: int) -> int:
    """Return where a plan ends: at what turns back to what was done, at a joke, at the set of an exercise
    that it does not speak of, or with the sentence."""
    _, last = message.sentence_span(plan)
    stop = next((at for at in range(start, last) if message.tokens[at].kind == JOKE), last)
    for found in RESUME.find(message, start, stop):
        said_already = found.start > start + 1 or bool(message.numbers(start, found.start))
        if "early" not in found.parts or said_already:
            return found.start
    return end_without_name(message, named, plan, start, stop)


def _mark_warm_ups(message: Message, named: Sequence[Named], aims: AbstractSet[Decimal]) -> None:
    for found in WARM.find(message):
        start, end = found.start, found.end
        if message.taken[start] == _WARMED_UP:
            continue
        first, last = message.sentence_span(start)
        clause_first, clause_last = message.clause_span(start)
        clause_first = max(clause_first, first)
        if not _ALL_BEFORE.isdisjoint(message.texts(max(first, start - 3), start)):
            message.take_numbers(first, start, "a warm-up")
            continue
        if message.text(start - 1) == "(":
            # "60x5 (warm up)" speaks of what stands before the bracket.
            clause_first = max(first, message.clause_span(start - 1)[0])
        ahead = _end_of_warm_up(message, end, last, named)
        if not message.numbers(0, start) and not message.numbers(ahead, len(message.tokens)):
            ahead = _end_of_warm_up(message, end, ahead, named, aims)
        before = any(not message.taken[at] for at in message.numbers(clause_first, start))
        within = bool(message.numbers(end, min(ahead, clause_last)))
        near = bool(message.numbers(end, min(ahead, clause_last + 6)))
        if near and (within or not before):
            message.take_numbers(end, ahead, "a warm-up")
        else:
            first = _after_last(message, _THEN, clause_first, start)
            message.take_numbers(_first_of_ramp(message, first, start), start, "a warm-up")


def _first_of_ramp(message: Message, start: int, end: int) -> int:
    """Return where the lighter sets begin that led up to a warm-up set: "60x10, 80x5 (warm-up)"."""
    first, _ = message.sentence_span(start)
    lightest = _load_of(message, start, end)
    while lightest is not None:
        end = start
        while end > first and message.text(end - 1) in _JOINTS:
            end -= 1
        if end in {start, first}:
            break
        before = _after_last(message, _THEN, max(first, message.clause_span(end - 1)[0]), end)
        load = _load_of(message, before, end)
        if load is None or load >= lightest:
            break
        start, lightest = before, load
    return start


def _load_of(message: Message, start: int, end: int) -> Decimal | None:
    """Return the first number between two tokens, None where it is no whole set."""
    numbers = [at for at in message.numbers(start, end) if not message.taken[at]]
    return message.value(numbers[0]) if len(numbers) == 2 else None


_BEFORE_REPS = TIMES_SIGNS | FOR_WORDS
_ALL_BEFORE = frozenset({"all", "both", "were"})
"""Words that make all that stands before them in a sentence a warm-up: "50x8, 65x4 all warm up"."""
_THEN = frozenset({"and", "then", "&"})
_JOINTS = _THEN | {","}


def _end_of_warm_up(
    message: Message, start: int, last: int, named: Sequence[Named], aims: AbstractSet[Decimal] = frozenset()
) -> int:
    """Return where a warm-up ends: at a word for what counts, at one of the loads aimed for, at a second
    exercise, or with the sentence."""
    names = 0
    seen_number = False
    starts = {name.start for name in named}
    for at in range(start, last):
        text = message.text(at)
        ends = text in WARM_ENDS or (text == "and" and message.text(at + 1) in WARM_ENDS)
        if ends and (seen_number or text not in FIRST):
            return at
        value = message.value(at)
        if seen_number and value in aims and message.text(at - 1) not in _BEFORE_REPS:
            return at
        seen_number = seen_number or value is not None
        if at in starts:
            names += 1
            if names > 1 or seen_number:
                return at
    return last


def _mark_history(message: Message, known: set[int], named: Sequence[Named]) -> None:
    for last in told_of_last(message, named):
        message.take_numbers(last.end, message.clause_span(last.end)[1], "what was before")
    for found in HISTORY.find(message):
        start, end = found.start, found.end
        if start in known or any(message.taken[start:end]):
            continue
        clause_first, stop = message.clause_span(start)
        now = NOW.first(message, end)
        if (
            now is not None
            and now.start <= end + 1
            and message.numbers(now.end, message.sentence_span(start)[1])
        ):
            # "80x7 last week, now 80x8"
            message.take_numbers(clause_first, now.start, "what was before")
            continue
        if now is not None and now.start > end:
            stop = min(message.sentence_span(start)[1], now.start)
        if message.numbers(end, stop):
            message.take_numbers(end, stop, "what was before")
            continue
        against = next(
            (at for at in range(start - 1, clause_first - 1, -1) if message.text(at) in AGAINST), start
        )
        message.take_numbers(against, start, "what was before")
