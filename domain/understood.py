"""What a message was taken for as it was heard, kept with it: by which rule, and which words became what.

It is noted by the decision itself, so it tells what was understood in the context as it was, and no second
reading can differ from it. Nothing is decided by it.
"""

from dataclasses import dataclass, replace
from typing import Literal

from domain.reading import Reading

TakenFor = Literal[
    "a report",
    "an answer",
    "an answer to the first questions",
    "an answer to the coach",
    "a question after reasons",
    "a question",
    "a setting",
    "a time for the reminder",
    "days asked",
    "the end of the workout",
    "a change of turn",
    "a request for the journal",
    "a request for a picture",
    "a request for a warm-up",
    "a request for plates",
    "a wish to leave",
    "an age",
    "a command",
    "nothing known",
]
"""What a client's message can be taken for. Of a report and of what is not known, the words tell the rest."""


@dataclass(frozen=True, slots=True)
class Understood:
    """What one message was taken for, and its reading, whose places are those in the message as typed."""

    taken_for: TakenFor
    reading: Reading


def in_other_words(reading: Reading) -> Reading:
    """Return a reading of words that a message stands for and does not hold, without their places."""
    return replace(reading, words=(), told_in=())
