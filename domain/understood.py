"""What a message was taken for as it was heard, kept with it: by which rule, and which words became what.

It is noted by the decision itself, so it tells what was understood in the context as it was, and no second
reading can differ from it. Nothing is decided by it.
"""

from dataclasses import dataclass, field, replace
from typing import Literal, NamedTuple

from domain.coach_requests import Kind
from domain.reading import Reading

TakenFor = Literal[
    "a report",
    "an answer",
    "an answer to the first questions",
    "an answer to the coach",
    "a question after reasons",
    "a question",
    "a setting",
    "taken back again",
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

CoachTakenFor = Literal[
    Kind,
    "tell",
    "note",
    "a sheet",
    "an edit of no sheet",
    "an answer to an offer",
    "the coach's hours",
    "when the digest comes",
    "a rule for stalls",
    "a picture or a journal",
    "own training",
    "an invitation",
    "a courtesy",
    "nobody known",
    "either role",
    "an order",
]
"""What a coach's message can be taken for beside that; of a coach who trains, too, it may be asked in which
role it was said."""

Of = Literal[
    "request",
    "client",
    "exercise",
    "instead",
    "clock",
    "number",
    "programme",
    "coach",
    "name",
    "day",
    "which",
    "every",
    "text",
]
"""What words of a coach's message are: what is asked for, or a piece of that."""


class Meant(NamedTuple):
    """Words of a coach's message from `start` to before `end`, both 0 where it has none for that.

    `means` has the names of the clients or of the exercise meant: several where it is not clear which, none
    where nothing known is meant or the words are taken as typed.
    """

    of: Of
    start: int = 0
    end: int = 0
    means: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Understood:
    """What one message was taken for, and which of its words, by their places in it as typed, meant what.

    A client's words are told by `reading`, a coach's by `meant`. Of an order by which a coach's message
    reaches a client, `meant` has the exercises that the client's decision found in the coach's words.
    """

    taken_for: TakenFor | CoachTakenFor
    reading: Reading = field(default_factory=Reading)
    meant: tuple[Meant, ...] = ()


def in_other_words(reading: Reading) -> Reading:
    """Return a reading of words that a message stands for and does not hold, without their places."""
    return replace(reading, words=(), told_in=())


def without_places(understood: Understood) -> Understood:
    """Return what a coach's message was taken for, of words that it stands for and does not hold."""
    meant = tuple(each._replace(start=0, end=0) for each in understood.meant if each.means)
    return replace(understood, meant=meant)
