"""Where what is told of somebody else, or of what is to come, ends: at the set of an exercise that it does
not speak of."""

from collections.abc import Sequence

from domain.reading.message import Message
from domain.reading.naming import Named

_PARTED = frozenset({",", ")", "-", ":"})


def end_without_name(message: Message, named: Sequence[Named], told: int, start: int, last: int) -> int:
    """Return where what is told at the token `told` ends, of what stands from `start` to before `last`.

    "Aiming for 9 next time, dips 10x8": the first clause has its number and names no exercise, so that one
    which is named at the beginning of another clause is told of by itself.
    """
    first, end = message.clause_span(told)
    if not message.numbers(first, end) or any(first <= name.start < end for name in named):
        return last
    following = next((name.start for name in named if end <= name.start < last and name.start >= start), last)
    return following if following == end or message.text(following - 1) in _PARTED else last
