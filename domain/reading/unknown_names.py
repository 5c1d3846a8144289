"""Words that stand where the name of an exercise would, and that nobody knows.

A set behind one is asked about, rather than given to the exercise before it.
"""

from collections.abc import Sequence

from domain.reading.element import Element, Item
from domain.reading.exercise_words import COMMON, IMPLEMENTS
from domain.reading.message import Message
from domain.reading.tokens import WORD
from domain.reading.words import (
    BETWEEN,
    FILLERS,
    INTERJECTIONS,
    LOAD_NOUNS,
    RESULT_VERBS,
    SMALL_WORDS,
    TRAINING,
    words_of,
)


def unknown_word(message: Message, items: Sequence[Item]) -> str | None:
    """Return a word that stands where the name of an exercise would, and is none that is known."""
    first = items[0]
    if not isinstance(first, Element):
        return None
    at = first.start - 1
    while message.text(at) in {":", "-", "at", "with", "was", "for", "got", "x", "="} and at >= 0:
        at -= 1
    if message.text(at) in _THINGS and message.text(at - 1) not in _NAME_COMES_AFTER:
        at -= 1
    if (
        at >= 0
        and _is_unknown(message, at)
        and (at == 0 or message.text(at - 1) in _NAME_COMES_AFTER or _is_unknown(message, at - 1))
    ):
        return message.text(at)
    at = items[-1].end
    if message.text(at) in {"on", "of"}:
        at += 1
        while message.text(at) in {"the", "my"}:
            at += 1
        if at < len(message.tokens) and _is_unknown(message, at):
            return message.text(at)
    return None


def name_before(message: Message, element: Item) -> str | None:
    """Return a word nobody knows that alone, or with an implement, opens the clause of a set."""
    if not isinstance(element, Element) or len(element.quantities) < _A_SET:
        return None
    at = element.start - 1
    while message.text(at) in {":", "-"}:
        at -= 1
    opens = at - 1
    while message.text(opens) in IMPLEMENTS or message.text(opens) in _SHORT_IMPLEMENTS:
        opens -= 1
    with_implement = opens < at - 1
    if at - 1 == opens and opens > 0 and _is_unknown(message, opens):
        opens -= 1
    is_open = message.text(opens) in (_NAME_COMES_AFTER if with_implement else _OPENS) or (
        opens > 0 and message.value(opens) is not None and message.text(opens - 1) in _TIMES
    )
    if not (at > 0 and is_open and _is_unknown(message, at)) or message.text(at) in _SORTS_OF_SETS:
        return None
    # "80x8, bruh 80x7" goes on with the same load.
    loads = {message.value(n) for n in message.numbers(0, at)}
    return message.text(at) if with_implement or element.quantities[0].value not in loads else None


_SORTS_OF_SETS = words_of(
    """backoff backoffs topset topsets dropset dropsets drops dropped drop amrap burnout finisher pyramid
    single singles double doubles triple triples cluster clusters workset worksets opener openers
    heavier lighter lowered reduced raised upped bumped added increased stripped feeder feeders backdown
    volume pause paused tempo touch unracked racked after afterwards later next finally lastly"""
)
_A_SET = 2
_SHORT_IMPLEMENTS = frozenset({"db", "dbs", "bb", "kb"})
_OPENS = frozenset({",", "\n", ";"})
_TIMES = frozenset({"x", "for", "*"})
_THINGS = frozenset({"thing", "things", "thingy", "one", "ones", "stuff"})
"""Words for any exercise at all, which the word before them tells: "the pumpy thing 12x10"."""
_NAME_COMES_AFTER = frozenset(
    {",", ".", "\n", "and", "then", "did", "the", "for", ":", ";", "!", "&", "on", "plus", "n", "some", "my"}
)


def _is_unknown(message: Message, at: int) -> bool:
    token = message.tokens[at]
    return (
        token.kind == WORD
        and not message.taken[at]
        and (len(token.text) >= 4 or (len(token.text) >= 2 and token.text not in SMALL_WORDS))
        and token.text not in FILLERS
        and token.text not in COMMON
        and token.text not in BETWEEN
        and token.text not in RESULT_VERBS
        and token.text not in TRAINING
        and token.text not in INTERJECTIONS
        and token.text not in LOAD_NOUNS
        and not token.text.endswith(("ly", "ing"))
    )
