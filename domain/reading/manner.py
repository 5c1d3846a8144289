"""Phrases that tell where or how a set was done: "on my knuckles", "with great moaning", "in the park".

Whatever their words, they neither part a number from its name nor a list of numbers. A label with its number
("on level 5") is none: a phrase is only taken where its thing has a word before it, or is several.
"""

from collections.abc import Iterator

from domain.reading.counted import is_counted
from domain.reading.message import Message
from domain.reading.tokens import NUMBER, WORD
from domain.reading.words import (
    AND_WORDS,
    KG_WORDS,
    LB_WORDS,
    REP_WORDS,
    RESULT_VERBS,
    SET_WORDS,
    THEN_WORDS,
    TIMES_SIGNS,
    words_of,
)

_BEGINS = words_of("on in with w from off against under despite without through after at over during by")
_MOST_WORDS = 5
_PARTS = (
    AND_WORDS
    | KG_WORDS
    | LB_WORDS
    | REP_WORDS
    | RESULT_VERBS
    | SET_WORDS
    | THEN_WORDS
    | TIMES_SIGNS
    | words_of(
        """i he she they we it was is were are for but only same this these those that what weight load
        another each both age aged about around almost nearly over under least most than target plan"""
    )
)
"""Words that do not stand inside such a phrase."""
_BEFORE_THING = words_of("a an the my our some no his her their one")


def manner_of(message: Message, blocked: set[int]) -> set[int]:
    """Return the tokens of such phrases that stand right before a number which may be a result."""
    if not message.has(_BEGINS):
        return set()
    return {
        at
        for number in message.numbers(0, len(message.tokens))
        for at in _before(message, number, blocked)
        if not message.taken[number]
    }


def _before(message: Message, number: int, blocked: set[int]) -> Iterator[int]:
    end = number - 1 if message.text(number - 1) in {",", ":", "-"} else number
    begin = _beginning(message, end, blocked)
    if begin is None or not _is_of_a_set(message, begin, blocked):
        return
    thing = end - 1
    named = end - begin > 2 or message.text(thing).endswith("s")
    if named and not is_counted(message, number + 1):
        yield from range(begin, end)


def _beginning(message: Message, end: int, blocked: set[int]) -> int | None:
    """Return where a phrase that stops before `end` begins, None where there is none."""
    for at in range(end - 1, max(-1, end - 2 - _MOST_WORDS), -1):
        word = message.text(at)
        if message.tokens[at].kind != WORD or at in blocked or message.taken[at]:
            return None
        if word in _BEGINS:
            return at if at < end - 1 else None
        if word in _PARTS:
            return None
    return None


def _is_of_a_set(message: Message, begin: int, blocked: set[int]) -> bool:
    """Return whether a name, or a number that goes on, stands before the phrase."""
    before = begin - 1
    while message.text(before) in AND_WORDS | THEN_WORDS | {",", "only", "just", "("}:
        before -= 1
    return before >= 0 and (before in blocked or message.tokens[before].kind == NUMBER)
