"""Sets that were half understood, as values: what an open question about sets is about."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from domain.memory import Waiting
from domain.reading import OpenSet
from domain.values import facts_of, value_of


@dataclass(frozen=True, slots=True)
class Unfinished:
    """An unfinished set, from inbox message `message` with the words `text`.

    `entry` is the number of the entry that it is to put right, if any; `question` that of the question in
    which it was last asked about.
    """

    open: OpenSet
    message: int
    text: str
    entry: int | None = None
    question: int = 0


def about_sets(unfinished: Sequence[Unfinished]) -> dict[str, Any]:
    """Return unfinished sets as what a question is about."""
    return {"unfinished": facts_of(tuple(unfinished))}


def unfinished_of(question: Waiting | None) -> tuple[Unfinished, ...]:
    """Return the unfinished sets that a question is about."""
    return () if question is None else value_of(tuple[Unfinished, ...], question.about["unfinished"])
