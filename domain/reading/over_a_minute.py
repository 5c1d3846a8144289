"""Seconds that are told behind minutes: "1 min 5", "a minute and a half"."""

from decimal import Decimal

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import (
    KG_WORDS,
    LB_WORDS,
    MINUTE_WORDS,
    REP_ADJECTIVES,
    REP_WORDS,
    SECOND_WORDS,
    SET_WORDS,
)


def over_a_minute(message: Message, at: int) -> tuple[Decimal, int]:
    """Return the seconds that are said after minutes, and the place after them: "1 min 5", "a minute and a
    half".
    """
    if _HALF_MORE.at(message, at) is not None:
        return Decimal(30), at + 3
    step = at + 1 if message.text(at) == "and" else at
    more = message.value(step)
    if more is None or more >= 60 or message.taken[step]:
        return Decimal(0), at
    after = message.text(step + 1)
    if after in SECOND_WORDS or after == "s":
        return more, step + 2
    return (Decimal(0), at) if after in OF_ANOTHER_NUMBER else (more, step + 1)


_HALF_MORE = Pattern("and a half")
SECONDS_FOLLOW = Pattern("# (s|sec|secs|second|seconds)")
OF_ANOTHER_NUMBER = frozenset(
    {
        *KG_WORDS,
        *LB_WORDS,
        *REP_WORDS,
        *SET_WORDS,
        *MINUTE_WORDS,
        *REP_ADJECTIVES,
        *["x", "*", "/", "@", "for", ":", "-", "%"],
    }
)
"""What stands after a number that is no rest of a time: "1 min 10 kg"."""
