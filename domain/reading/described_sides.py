"""The two sides of a body, told apart by any words at all: "10 on my good leg and 8 on the wobbly one"."""

from typing import NamedTuple

from domain.reading.message import Message
from domain.reading.name_stems import stem_of, vocabulary
from domain.reading.tokens import WORD
from domain.reading.words import words_of

BODY_SIDES = words_of("leg arm side hand foot")
"""What a side of a body is called, in the singular."""
_HEADS = BODY_SIDES | {"one"}
_LEADS = words_of("on with for in the my his her a reps rep only and")
"""What may stand between a number and the words for its side."""
_ARTICLES = words_of("the my his her on with for in , . : ; ( and / - but then")
_BEFORE_NUMBER = words_of(
    """: - = did does got managed made stopped at only just barely had was were with gave could hit reached do
    even for a"""
)
"""What may stand between the words for a side and its number."""
_NO_SIDE = words_of(
    """each both per every either single same all of last next third new old set sets rep reps kg lb this that
    these those more then and or but x straight bent"""
)
"""Words that do not tell one side from the other."""
_MOST_WORDS = 3
_MOST_LEADS = 4


class Side(NamedTuple):
    """One side: the words that tell it from the other, whether they name a limb, and the token after them."""

    words: str
    is_limb: bool
    end: int


def described_after(message: Message, end: int) -> Side | None:
    """Return the side that is told right behind a number: "8 on the wobbly one", "7 naughty leg"."""
    at = end
    while at < end + _MOST_LEADS and message.text(at) in _LEADS:
        at += 1
    words: list[str] = []
    while len(words) <= _MOST_WORDS and _is_word(message, at):
        text = message.text(at)
        if text in _HEADS and words:
            is_part = _is_of_a_name(message, at + 1)
            return None if is_part else Side(" ".join(words), text in BODY_SIDES, at + 1)
        if text in _NO_SIDE:
            break
        words.append(text)
        at += 1
    return Side("other", is_limb=False, end=at) if words == ["other"] else None


def described_before(message: Message, start: int) -> Side | None:
    """Return the side that is told right before a number: "my favourite leg did 12, the other one 9"."""
    at = start - 1
    while at > start - _MOST_LEADS and message.text(at) in _BEFORE_NUMBER:
        at -= 1
    head = message.text(at)
    words: list[str] = []
    first = at - 1
    while len(words) < _MOST_WORDS and _is_word(message, first) and message.text(first) not in _ARTICLES:
        words.insert(0, message.text(first))
        first -= 1
    if head == "other" and (not words or words == ["the"]):
        return Side("other", is_limb=False, end=start)
    if head not in _HEADS or not words or not _NO_SIDE.isdisjoint(words):
        return None
    return Side(" ".join(words), head in BODY_SIDES, start)


def _is_word(message: Message, at: int) -> bool:
    return 0 <= at < len(message.tokens) and message.tokens[at].kind == WORD


def _is_of_a_name(message: Message, at: int) -> bool:
    """Return whether a word goes on with the name of an exercise: "10 on the new leg press"."""
    return _is_word(message, at) and stem_of(message.text(at)) in vocabulary()


def are_two_sides(first: Side | None, second: Side | None) -> bool:
    """Return whether two descriptions are of the two sides of one body."""
    if first is None or second is None or first.words == second.words:
        return False
    return first.is_limb or second.is_limb
