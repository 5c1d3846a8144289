"""Turns of phrase that are the whole of a client's message, but for courtesies before and after.

Several ways to say a thing stand one a line; a line that begins with a plus goes on with the one before.
"""

from collections.abc import Callable

from domain.expressions import Expression
from domain.reading.message import Message, message_of
from domain.reading.patterns import Pattern

_OPENING = """
please|pls|hey|hi|hello|ok|okay|so|and|also|but|well|right|yes|hm|hmm|just|btw|by the way|quick question|coach
sorry|oh|thanks|morning|,|-|'.'|'!'|':'
(can|could|would|will) (you|u) [please] [(tell|show|say to|give|remind) [me] [of]]
(can|could|may) i (see|have|get|know)|(tell|show|give|remind) me [of|about]
(do|would) you know|i (want|need|would like) to (know|see)|id like to (know|see)|i wonder|i wondered
"""
_CLOSING = """
please|pls|plz|thanks|thank you|thx|ta|cheers|ok|okay|now|again|then|actually|exactly|so far|by now|yet
(right|just) now|by the way|btw|coach|in (all|total)|total
overall|altogether|at all|anyway|,|'.'|'!'|'?'|'"'|'('|')'
"""
_CONTINUED = Expression(r"(?<=\|)\n\s*\+ ?|\n\s*\+(?= )")

LONGEST = 24
"""How many words and signs such a message has at most. The house's own choice."""

MOST_LETTERS = 160
"""How long it is at most: a longer text is not even looked through."""


def lines(text: str) -> list[str]:
    """Return the ways to say a thing, one each."""
    return [line.strip() for line in _CONTINUED.sub(" ", text).strip().splitlines()]


def wholes(text: str, **lists: str) -> tuple[Pattern, ...]:
    """Return each way to say a thing as a pattern over a whole message. Raises ValueError for no pattern."""
    return tuple(
        Pattern(f"^ [{{opening}}]* {line} [{{closing}}]* $", opening=_OPENING, closing=_CLOSING, **lists)
        for line in lines(text)
    )


def short_message(text: str, made: Callable[[], object] | None = None) -> Message | None:
    """Return `text` as words and signs; None where it is too long for any of these.

    A message knows only the patterns that there were before it: those `made` as they are first asked for are
    made here, or the first message after a start would have none of them.
    """
    if made is not None:
        made()
    message = message_of(text) if len(text) <= MOST_LETTERS else None
    return message if message is not None and len(message.tokens) <= LONGEST else None
