"""Whether a client is in doubt of what was just told: "80x8?", "80 for 7 or 8", "80x7ish"."""

from collections.abc import Sequence

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.quantities import Quantity

_EITHER = frozenset({"or", "maybe", "perhaps", "possibly"})
_NEAR = 3
"""So near are the two numbers that the reps of one set could be: "8 maybe 9"."""
_ANSWER = Pattern("(no|nope|nah|wait|sorry|actually) [,|no|wait|i mean|it was|actually|the|my|make that]* #")


def is_doubtful(message: Message, numbers: Sequence[Quantity], end: int) -> bool:
    """Return whether there is doubt of a set with some numbers, or of what ends before the token `end`."""
    if not _EITHER.isdisjoint(message.words) and any(_is_one_or_other(message, q) for q in numbers):
        return True
    if "ish" in message.words and any(message.text(q.end) == "ish" for q in numbers):
        return True
    if "?" not in message.words:
        return False
    while message.text(end) in {"kg", "lb", "reps", "today"} or (message.taken[end : end + 1] == ["a day"]):
        end += 1
    # "142.5? No, I mean 140": what was asked is answered in the same breath.
    return message.text(end) == "?" and _ANSWER.at(message, end + 1) is None


def _is_one_or_other(message: Message, number: Quantity) -> bool:
    """Return whether a number is one of two that it could be: "80x8 or maybe 7", "80x8 maybe 9"."""
    at = number.start - 1
    while message.text(at) in {"even", "just"}:
        at -= 1
    if message.text(at) not in _EITHER:
        return False
    while message.text(at) in _EITHER:
        at -= 1
    other = message.value(at) if message.value(at) is not None else message.value(at - 1)
    is_near = other is not None and abs(other - number.value) <= _NEAR
    return other is not None and (is_near or "or" in message.texts(at + 1, number.start))
