"""Whether a message tells what was done the last time of an exercise: "my last row was 60x8"."""

from collections.abc import Iterator, Sequence

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.words import words_of

_WAS = words_of("was were is")
_SETS = words_of("one ones set sets")
"""What points at a recorded set, whatever exercise it was of."""


def told_of_last(message: Message, named: Sequence[Named]) -> Iterator[Named]:
    """Give each exercise of which the last time is told."""
    for each in named:
        is_named = not each.weak and _SETS.isdisjoint(message.texts(each.start, each.end))
        if is_named and message.text(each.start - 1) == "last" and message.text(each.end) in _WAS:
            yield each
