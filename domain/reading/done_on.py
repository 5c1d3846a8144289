"""A recorded exercise that was done on something else: "those rows were on the cable, not the bar"."""

from collections.abc import Sequence
from typing import NamedTuple

from domain.reading.exercise_words import IMPLEMENTS, LOAD_WORDS
from domain.reading.message import Message
from domain.reading.name_stems import stem_of, stems_of
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.request import Request
from domain.reading.words import words_of
from domain.sets import TrainingSet

_DONE_ON = Pattern(
    """
    ({did}) {really} {on} kit:{kit} [machine|station|one|ones]* [,|'('|-|and]* not {on} {kit}
    ({did}) (actually|really|in fact|supposed to be|meant to be) (on|with|using) [the|a|my|some]* kit:{kit}
""",
    did="was|were|did|done|are|should be|should have been",
    really="[actually|really|in fact|done|all|those|these|the|my|that|row|rows|curls|press|presses|ones]*",
    on="[on|with|using|the|a|my|some]*",
    kit=(IMPLEMENTS - LOAD_WORDS)
    | words_of("dumbbells cables machines db dbs seated standing lying incline flat"),
)


class DoneOn(NamedTuple):
    """A record that was done on something else, and the exercise it then was; "" where that must be asked."""

    record: TrainingSet
    exercise: str


def done_on(message: Message, request: Request, named: Sequence[Named]) -> DoneOn | None:
    """Return the record that was done on something else than was recorded, None where nothing tells so."""
    found = _DONE_ON.first(message)
    if found is None or not request.done:
        return None
    kit = _plain(message.text(found.parts["kit"][0]))
    for one in reversed(request.done):
        name = next((n for n in named if one.exercise in n.names and not _is_the_kit(n, found.parts)), None)
        if name is None or kit in stems_of(one.exercise) or not _has_its_numbers(message, one):
            continue
        fits = [each for each in name.names if each != one.exercise and kit in stems_of(each)]
        return DoneOn(one, fits[0] if len(fits) == 1 else "")
    return None


def _plain(word: str) -> str:
    stems = stems_of(word)
    stem = stems[0] if stems else stem_of(word)
    return "barbell" if stem == "bar" else stem


def _is_the_kit(name: Named, parts: dict[str, tuple[int, int]]) -> bool:
    return name.start <= parts["kit"][0] < name.end


def _has_its_numbers(message: Message, one: TrainingSet) -> bool:
    """Return whether no other numbers are said than those of a record."""
    said = {message.value(at) for at in message.numbers(0, len(message.tokens))}
    return said <= {one.load, one.amount}
