"""An exercise that is only said to be done: an open set. Sets with numbers are made elsewhere."""

import re
from collections.abc import Sequence

from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.request import Request
from domain.reading.resolve import Placed, Resolver
from domain.reading.words import FILLERS

_DONE = re.compile(
    r"\b(?:done|finished|completed|did|ticked off|complete|nailed|smashed|crushed|got through|in the bag"
    r"|sorted|knocked out|through with)\b"
)
_DONE_ALONE = re.compile(
    r"^(?:(?:ok|okay|all|yes|yep|and|just|it s|its|thats|im|i am|that s|set|sets|got it|there|phew|right"
    r"|now|coach|hi|well) )*(?:done|finished|completed|complete|did it|done it|did them"
    r"|did that)(?: (?:it|now|coach|that|one|set|thanks|!|\.|,|with that))*$"
)


def done_without_numbers(
    message: Message,
    request: Request,
    resolver: Resolver,
    named: Sequence[Named],
    questions: Sequence[tuple[int, int]],
) -> list[Placed]:
    """Return an open set where an exercise is only said to be done."""
    if questions:
        return []
    match = _DONE.search(message.line)
    if match is None:
        return []
    at, _ = message.span(match)
    exercise: str | None = None
    if _DONE_ALONE.match(message.line):
        exercise = resolver.exercises.next(resolver.exercises.day(request.sent.date()))
    else:
        near = [
            n
            for n in named
            if not n.weak and message.sentence[n.start] == message.sentence[at] and len(n.names) == 1
        ]
        if near and _says_done(message, near, at):
            exercise = near[0].names[0]
    if exercise is None:
        return []
    return resolver.run(
        [Group(Named(at, at, (exercise,)), [Mark("done", at, at + 1)], sentence=message.sentence[at])]
    )


def _says_done(message: Message, near: Sequence[Named], at: int) -> bool:
    inside = {i for n in near for i in range(n.start, n.end)}
    first, last = message.sentence_span(at)
    small = FILLERS | {
        "with",
        "finished",
        "completed",
        "nailed",
        "smashed",
        "crushed",
        "complete",
        "were",
        "are",
        "both",
        "off",
        "ticked",
        "through",
        "sorted",
    }
    return all(
        i in inside or message.text(i) in small or not message.text(i).isalpha() for i in range(first, last)
    )
