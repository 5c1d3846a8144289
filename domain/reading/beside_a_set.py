"""Which lone numbers beside a whole set tell of one more: only words that sets are told with stand around.

"80x8, then 7 on the last" goes on; "80x8, then 10 on the bike" tells of something else.
"""

from collections.abc import Sequence

from domain.reading.anchors import PROVIDERS
from domain.reading.counted import BEGINS_ANEW
from domain.reading.element import Element, Item
from domain.reading.lists_of_reps import goes_on_a_list
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.tokens import WORD
from domain.reading.words import (
    AND_WORDS,
    AT_WORDS,
    BETWEEN,
    FILLERS,
    FOR_WORDS,
    LOAD_NOUNS,
    ORDINALS,
    PERSON_WORDS,
    REP_ADJECTIVES,
    REP_WORDS,
    RESULT_VERBS,
    SET_WORDS,
    THEN_WORDS,
    words_of,
)

TOLD_BESIDE = "a number beside a set"
_TIED = frozenset({"x", "for", "@", "at"})
_OF_SETS = (
    AND_WORDS
    | AT_WORDS
    | BETWEEN
    | FILLERS
    | FOR_WORDS
    | LOAD_NOUNS
    | ORDINALS.keys()
    | REP_ADJECTIVES
    | REP_WORDS
    | RESULT_VERBS
    | SET_WORDS
    | THEN_WORDS
    | words_of(
        """but rest pause other one two or not sure cant remember know idk pin hole old side left right
        heavier lighter on"""
    )
)
"""Words that a set is told with."""
_BEGINS = (PERSON_WORDS | BEGINS_ANEW | words_of("with because cause cos despite though although but")) - {
    "it"
}
"""Words that begin something else: "9, 8 roommate filmed it"."""
_ARTICLES = frozenset({"a", "the", "my", "that", "this"})
_GOT = words_of("got managed did hit reached")
"""Verbs that make the number right after them a result, whatever stands around."""


def without_others(
    message: Message, things: Sequence[Named | Element | Mark], blank: set[int]
) -> list[Named | Element | Mark]:
    """Leave out the lone numbers beside a whole set whose clause has words that no set is told with."""
    if not any(isinstance(thing, Element) and _is_whole(thing) for thing in things):
        return list(things)
    if any(isinstance(thing, Mark) and thing.kind == "change" for thing in things):
        return list(things)
    left_out: set[int] = set()
    for before, thing, after in zip([None, *things], things, [*things[1:], None], strict=False):
        if not isinstance(thing, Element) or not _is_lone(message, thing, before):
            continue
        if goes_on_a_list(message, before, thing):
            continue
        first, last = message.clause_span(thing.start)
        first = max(first, before.end if before is not None else 0)
        last = min(last, after.start if after is not None else last)
        last = next((at for at in range(thing.end, last) if _tells_why(message, at)), last)
        if any(_is_other(message, at, blank) for at in (*range(first, thing.start), *range(thing.end, last))):
            left_out.add(thing.start)
            message.take(thing.start, thing.end, TOLD_BESIDE)
    return [thing for thing in things if not (isinstance(thing, Element) and thing.start in left_out)]


def _is_whole(element: Element) -> bool:
    """Return whether a load and its reps are told."""
    return not _TIED.isdisjoint(element.joints[1:])


def _tells_why(message: Message, at: int) -> bool:
    """Return whether the words from a token on tell only how a set came to be so: "9 after a long break"."""
    word = message.text(at)
    return word in _BEGINS or (word == "after" and message.text(at + 1) in _ARTICLES)


def _is_lone(message: Message, element: Element, before: Item | Named | None) -> bool:
    """Return whether just a bare number is told, away from a name and from a phrase that it goes on from."""
    if len(element.quantities) != 1 or element.next_to_name or element.after_at:
        return False
    if isinstance(before, Mark) and before.kind in PROVIDERS:
        return False
    if message.text(element.start - 1) in _GOT or message.text(element.end) == "more":
        return False
    return element.quantities[0].role in {None, "sets"} and element.joints[0] != "change"


def _is_other(message: Message, at: int, blank: set[int]) -> bool:
    """Return whether a word is none that a set is told with."""
    if message.tokens[at].kind != WORD or message.taken[at] or at in blank:
        return False
    return message.text(at) not in _OF_SETS
