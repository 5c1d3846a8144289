"""Sets far from the client's strength told among words that nobody understood: more often another's, a
warm-up's or another exercise's. What is told plainly is believed, however strong.
"""

from collections.abc import Callable, Iterable
from math import log

from domain.reading.context import Known
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.words import FILLERS, INTERJECTIONS, RESULT_VERBS, SMALL_WORDS, TRAINING
from domain.sets import TrainingSet
from domain.strength import one_rep_max
from domain.units import to_kg

_APART = 0.25
"""How far the logarithms of two estimated maxima are apart where one set was hardly done by the client."""
_MOST_REPS = 30
"""With more reps than these the estimate says little."""
_FEW = 2
_ORDINARY = FILLERS | INTERJECTIONS | RESULT_VERBS | SMALL_WORDS | TRAINING


def is_out_of_strength(one: TrainingSet, known: Known) -> bool:
    """Return whether the estimated maximum of a set (Epley) is far from those it is held beside."""
    if one.load_kind not in {"total", "each"} or not one.reps or one.load == 0:
        return False
    latest = known.latest
    if (
        latest is not None
        and latest.load_kind == one.load_kind
        and to_kg(one.load, one.unit) < to_kg(latest.load, latest.unit)
    ):
        return False
    references = [
        r
        for r in (latest, known.target, known.last)
        if r is not None and r.load_kind == one.load_kind and r.reps and r.load
    ]
    return bool(references) and all(abs(_maximum(one) - _maximum(r)) > _APART for r in references)


def _maximum(one: TrainingSet) -> float:
    return log(one_rep_max(to_kg(one.load, one.unit), min(one.reps or 0, _MOST_REPS)))


def strange_words(
    message: Message, named: Iterable[Named], groups: Iterable[Group], marks: Iterable[Mark]
) -> Callable[[int, int], bool]:
    """Return what tells whether words that lead to a set, between two tokens of it and before, are neither
    understood nor ordinary: "the lass in the corner does zerchers with 120 for 5"."""
    spans = [*named, *marks, *(item for group in groups for item in group.items)]

    def are_strange(start: int, end: int) -> bool:
        heard = {place for span in spans for place in range(span.start, span.end)}
        first = start
        while first > 0 and message.said[first - 1] not in _BEGINS_ANEW:
            first -= 1
        strange = [
            at
            for at in range(first, end)
            if message.said[at].isalpha()
            and not message.taken[at]
            and at not in heard
            and message.said[at] not in _ORDINARY
        ]
        return len(strange) >= _FEW

    return are_strange


_BEGINS_ANEW = frozenset({",", ".", "!", "?", ";", ":", "-", "(", ")", "\n", "but", "and", "then", "so"})
