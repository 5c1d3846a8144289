"""The small rules over tokens: what each number is a number of, and the short phrases beside the numbers.

A rule is named for what it recognises and looks at a few tokens around it. Rules stand in one immutable
tuple; the longest match goes first, then the listed order. What the numbers mean for today's plan
is decided later.
"""

from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from domain.reading.body_words import ACHE, HURT
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found
from domain.reading.phrase_kinds import MarkKind, Rule
from domain.reading.phrase_rules import RULES
from domain.reading.tokens import WORD
from domain.reading.words import (
    AND_WORDS,
    BETWEEN,
    FILLERS,
    FOR_WORDS,
    KG_WORDS,
    LB_WORDS,
    LOAD_NOUNS,
    ORDINALS,
    REP_ADJECTIVES,
    REP_WORDS,
    SET_WORDS,
    TRAINING,
    words_of,
)
from domain.units import Unit


class Mark(NamedTuple):
    """A short phrase about a set, from token `start` to before `end`, with its number where it has one.

    `joint` is how it is joined to what stands before it.
    """

    kind: MarkKind
    start: int
    end: int
    value: Decimal | None = None
    unit: Unit | None = None
    from_last: bool = False
    joint: str = "gap"


_UNITS: dict[str, Unit] = {**dict.fromkeys(KG_WORDS, "kg"), **dict.fromkeys(LB_WORDS, "lb")}


_MAY_BE_PHRASES = frozenset(
    {
        "exercise",
        "a plan",
        "what it is not",
        "what was before",
        "a setting",
        "a set's number",
        "a number of something else",
    }
)
"""What words can have become that may begin a phrase all the same."""
_BEFORE_NUMBER_OF_SET = words_of("x for @ * / times at")
_MOST_BESIDE_NUMBER = 4
"""After another number, a greater one is a number of the set itself."""
_MOST_STEP = 20
"""A broken number beyond it is a load that was moved "up", and no step by which one grew."""
_COUNTED_BACK = words_of("last previous")


def find_marks(message: Message, named: Sequence[Named] = ()) -> list[Mark]:
    """Return the short phrases of the message, in order; the longer of two that overlap, then the earlier
    rule."""
    found: list[Mark] = []
    inside: set[int] | None = None
    for rule, told in RULES.find(message):
        taken = message.taken[told.start]
        if taken and taken not in _MAY_BE_PHRASES:
            continue
        if rule.kind in {"up", "down"}:
            if inside is None:
                inside = {at for n in named for at in range(n.start + (n.end > n.start + 1), n.end)}
            if told.start in inside:
                continue
        if rule.kind in _OF_A_WHOLE_SET and _is_of_something_else(message, told, named):
            continue
        mark = _mark(message, rule, told, after_name=any(n.end == told.start for n in named))
        if mark is not None:
            found.append(mark)
    if not found:
        return found
    found.sort(key=lambda mark: mark.start - mark.end)
    used: set[int] = set()
    kept: list[Mark] = []
    for mark in found:
        span = range(mark.start, mark.end)
        if used.isdisjoint(span):
            kept.append(mark)
            used.update(span)
    kept.sort(key=lambda m: m.start)
    return kept


_OF_A_WHOLE_SET = frozenset({"target", "same all"})
_SAID_OF_SETS = (
    FILLERS
    | TRAINING
    | REP_ADJECTIVES
    | REP_WORDS
    | SET_WORDS
    | LOAD_NOUNS
    | AND_WORDS
    | FOR_WORDS
    | BETWEEN
    | ORDINALS.keys()
    | words_of(
        """all everything it that this the a on to of with today yesterday now again still one ones each both
        every rest hit went came landed stayed stuck kept completed smashed nailed reached met load loads
        exactly pretty much almost nearly right spot dead bang straight easily comfortably first last next
        second third final left right other two three same but or i we my you coach im ive is was were are be
        been have had has there then so no not sorry yes lol haha again as by in at from for up down out"""
    )
)
"""Words beside which "as planned" and "as last time" are said of sets, without an exercise or a number."""


_OF_PAIN = HURT | ACHE


def _is_of_something_else(message: Message, told: Found, named: Sequence[Named]) -> bool:
    """Return whether words that tell a whole set are of something else: "off to my sister as planned"."""
    start = told.start
    first, last = message.clause_span(start)
    if all(message.taken[at] for at in message.numbers(first, last)) and (
        not _OF_PAIN.isdisjoint(message.texts(first, last)) or "pain" in message.taken[first:last]
    ):
        return True
    if message.text(first - 1) == ":":
        first, _ = message.clause_span(first - 1)
    if any(first <= n.start < last for n in named) or message.numbers(first, start):
        return False
    before = message.texts(first, start)
    return any(word.isalpha() and word not in _SAID_OF_SETS for word in before)


def _mark(message: Message, rule: Rule, told: Found, *, after_name: bool = False) -> Mark | None:
    """Return what a rule found as a mark, None where it is something else."""
    start, end = told.start, told.end
    if message.text(end) in rule.not_before or (
        message.text(start - 1) in rule.not_after and not (after_name and rule.kind in {"up", "down"})
    ):
        return None
    if not rule.unless.isdisjoint(message.words):
        return None
    value = _number(message, told)
    unit = _unit(message, told)
    if not _can_be(rule, value, told):
        return None
    if rule.beside and _is_number_of_set(message, rule, start, value):
        return None
    if rule.after_set and not _is_after_set(message, start):
        return None
    if rule.goes_on is not None and unit is None and not _goes_on(message, end, rule.goes_on):
        return None
    from_last = not _COUNTED_BACK.isdisjoint(message.texts(start, end))
    return Mark(rule.kind, start, end, rule.otherwise if value is None else value, unit, from_last)


def _number(message: Message, told: Found) -> Decimal | None:
    for name, (start, end) in told.parts.items():
        value = None if name == "u" else _number_in(message, start, end)
        if value is not None:
            return Decimal(10) - value if name == "rpe" else value
    return None


def _number_in(message: Message, start: int, end: int) -> Decimal | None:
    for at in range(start, end):
        if message.value(at) is not None:
            return message.value(at)
        if message.text(at) in ORDINALS:
            return Decimal(ORDINALS[message.text(at)])
    return None


def _unit(message: Message, told: Found) -> Unit | None:
    return _UNITS[message.text(told.parts["u"][0])] if "u" in told.parts else None


def _can_be(rule: Rule, value: Decimal | None, told: Found) -> bool:
    """Return whether a number is one that the rule can speak of."""
    if value is None:
        return True
    is_whole = value % 1 == 0
    if rule.whole and not is_whole:
        return False
    if "fraction" in told.parts and (is_whole or value > _MOST_STEP):
        return False
    return rule.within is None or rule.within[0] <= value <= rule.within[1]


def _is_number_of_set(message: Message, rule: Rule, start: int, value: Decimal | None) -> bool:
    """Return whether the number that a phrase begins with is one of the set's own: "80 x 8 more"."""
    if message.value(start) is None:
        return False
    before = message.text(start - 1)
    if rule.kind == "rir" and (before == "@" or (before == "/" and message.text(start - 2) == "w")):
        return False
    if rule.kind == "rir" and message.text(start + 1) == "rir":
        return False
    return before in _BEFORE_NUMBER_OF_SET or (
        message.value(start - 1) is not None and (value or 0) > _MOST_BESIDE_NUMBER
    )


def _is_after_set(message: Message, start: int) -> bool:
    """Return whether a load and its reps stand right before a place: "80x8", "80 kg for 8", "80 8"."""
    if message.value(start - 1) is None:
        return False
    at = start - 2
    if message.text(at) in {"x", "*", "for", "/"}:
        at -= 1
    return message.value(at) is not None or (message.text(at) in _UNITS and message.value(at - 1) is not None)


def _goes_on(message: Message, end: int, words: frozenset[str]) -> bool:
    """Return whether one of `words` follows, if any word does."""
    return end >= len(message.tokens) or message.tokens[end].kind != WORD or message.text(end) in words
