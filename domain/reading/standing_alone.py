"""Whether a lone number tells of a set by itself: what stands around it in its clause."""

from collections.abc import Sequence

from domain.reading.element import Element
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.tokens import WORD
from domain.reading.words import BETWEEN, FILLERS, RESULT_VERBS, words_of


def is_of_a_hold(message: Message, at: int, things: Sequence[Named | Element | Mark]) -> bool:
    """Return whether the clause of a number of minutes has the exercise too, or a word of holding on."""
    start, end = message.clause_span(at)
    return any(isinstance(t, Named) and start <= t.start < end for t in things) or not (
        (RESULT_VERBS | _HOLD_VERBS).isdisjoint(message.texts(start, end))
    )


_HOLD_VERBS = words_of("hung held hold hanging holding lasted survived stayed kept endured")


def is_missed_again(things: Sequence[Named | Element | Mark], at: int) -> bool:
    """Return whether no reps are told right behind what was not lifted: "missed 190, 0 reps"."""
    thing, before = things[at], things[max(0, at - 2) : at]
    if not isinstance(thing, Element) or len(thing.quantities) > 1 or thing.quantities[0].role != "reps":
        return False
    missed = any(isinstance(each, Mark) and each.kind == "zero" for each in before)
    return missed and thing.quantities[0].value == 0


def is_range(quantities: list[Quantity]) -> bool:
    """Return whether numbers joined by dashes are a range, 8-10, rather than a list, 8-7-6."""
    values = [q.value for q in quantities]
    return len(values) == 2 and values[0] < values[1]


def alone(message: Message, element: Element, blank: set[int]) -> bool:
    """Return whether only small words stand around an element in its clause."""
    start, end = message.clause_span(element.start)
    stop = max(end, element.end)
    return all(
        at in blank
        or element.start <= at < element.end
        or message.tokens[at].kind != WORD
        or message.text(at) in FILLERS
        or message.text(at) in BETWEEN
        or bool(message.taken[at] and message.taken[at] not in {"a question"})
        for at in range(start, stop)
    )
