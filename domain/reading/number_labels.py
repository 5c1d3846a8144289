"""Words that name the number after them: "weight: 185 reps: 6", "load 80 reps 8 sets 2"."""

from decimal import Decimal
from typing import Literal

from domain.reading.limits import MOST_SETS
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import KG_WORDS, LB_WORDS, ORDINALS, REP_WORDS, SET_WORDS, words_of

Role = Literal["load", "reps", "sets", "seconds", "pair", "plates"]
"""What a number is a number of; "pair" is "30s", which can be a pair of dumbbells or seconds."""

_LABELLED = Pattern(
    """
    (weight|load) {is_of} # [{unit}] {and_then} (reps|rep|sets|set) {is_of} #
    (reps|sets) {is_of} # {and_then} (weight|load) {is_of} #
    """,
    is_of="[:|=|was|is|of]*",
    and_then="[,|;|and|/|-|.|'\n']*",
    unit=KG_WORDS | LB_WORDS,
)
"""Every number stands after the word that tells what it is."""
_LABEL_WITH_SIGN = SET_WORDS | {"rep", "repetition"}
"""Words that name a number only with a sign between them: "sets: 3"."""
_TELLS_LABEL = frozenset({":", "=", "was", "were", "is", "are"})
_OTHER_LABEL = words_of("body my same last few more without no own any added extra with")


def is_label(message: Message, at: int) -> bool:
    """Return whether a word names the number after it: "weight: 185 reps: 6", "load 80 reps 8 sets 2"."""
    if is_labelled(message, at):
        return True
    return message.text(at + 1) in {":", "="} and message.value(at + 2) is not None


def is_labelled(message: Message, at: int) -> bool:
    """Return whether a word stands before its number, as do all others of the message."""
    return message.value(at + 1) is not None and _LABELLED.is_in(message)


def label_before(message: Message, at: int) -> Role | None:
    """Return what a number is a number of by the word and the colon before it."""
    place = at - 1
    if message.text(place) in _TELLS_LABEL:
        place -= 1
    if message.text(place) in {"weight", "load", *REP_WORDS, *SET_WORDS} and _LABELLED.is_in(message):
        return _of_label(message.text(place), message.value(at))
    is_after_a_number = message.value(place - 1) is not None and message.text(place - 2) not in SET_WORDS
    if is_after_a_number or message.text(place - 1) in _OTHER_LABEL:
        return None
    if message.text(place) == "set" and message.text(place - 1) in ORDINALS:
        # "Second set: 12" has 12 reps.
        return None
    label = message.text(place)
    if message.text(at - 1) not in {":", "="} and label in _LABEL_WITH_SIGN:
        return None
    return _of_label(label, message.value(at))


def _of_label(label: str, value: Decimal | None) -> Role | None:
    """Return what a number with a label is a number of."""
    if label in {"weight", "load"}:
        return "load"
    if label in REP_WORDS:
        return "reps"
    return "sets" if label in SET_WORDS and (value or 0) <= MOST_SETS else None
