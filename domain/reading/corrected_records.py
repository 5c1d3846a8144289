"""Which recorded sets a correction means.

Whether a message is a correction, and what is put in the place of the old values, is decided elsewhere.
"""

import re
from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from domain.reading.correction_words import (
    ALL_FEW,
    ALL_OF_THEM,
    ALL_THERE_ARE,
    BOTH,
    LAST_FEW,
    NTH_SET,
    NTHS,
)
from domain.reading.elements import Element
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Request
from domain.sets import TrainingSet


def records_meant(
    message: Message,
    request: Request,
    names: Sequence[Named],
    denied: Sequence[Named],
    elements: Sequence[Element],
    on: date | None,
    old: set[Decimal],
) -> list[TrainingSet]:
    """Return the recorded sets that are meant."""
    today = request.sent.date()
    done = [one for one in request.done if on is None or (one.on or today) == on]
    if not done:
        done = list(request.done)
    pool = done
    said = [n for n in [*names, *denied] if n.names]
    for name in said:
        of_it = [one for one in done if one.exercise in name.names]
        if (
            of_it
            and (
                elements
                or name in denied
                or on is not None
                or re.search(r"\b(?:kgs?|kilos?|lbs?|pounds?|yesterday|failure)\b", message.line)
            )
            and not _meant(message, name)
        ):
            pool = of_it
            break
    else:
        for element in elements:
            matching = [one for one in done if says_again(message, element, one)]
            if matching:
                pool = matching[-1:]
                break
        else:
            pool = [one for one in done if one.exercise == done[-1].exercise and one.on == done[-1].on]
    last = LAST_FEW.search(message.line) or ALL_FEW.search(message.line)
    if last is not None:
        count = int(message.value(message.span(last, "n")[0]) or 1)
        return (pool if len(pool) >= count else done)[-count:]
    if not said and len(pool) == 1 and done[-1] is pool[0]:
        that_day = [one for one in done if one.on == done[-1].on]
        if BOTH.search(message.line):
            return that_day[-2:]
        if ALL_THERE_ARE.search(message.line):
            return that_day
    nth = NTH_SET.search(message.line)
    if nth is not None:
        if nth["w"]:
            number = NTHS[nth["w"]]
        else:
            at, _ = message.span(nth, "n" if nth["n"] else "m")
            number = int(message.value(at) or 0)
        if 1 <= number <= len(pool):
            return [pool[number - 1]]
    if ALL_OF_THEM.search(message.line) and len(pool) > 1:
        day = pool[-1].on
        return [one for one in pool if one.exercise == pool[-1].exercise and one.on == day]
    if old and len(old) == 1:
        value = next(iter(old))
        matching = [one for one in pool if value in {one.load, Decimal(one.amount)}]
        if not matching and not said:
            return [one for one in done if value in {one.load, Decimal(one.amount)}][-1:] or pool[-1:]
        if matching and value not in {pool[-1].load, Decimal(pool[-1].amount)}:
            return matching[-1:]
    return pool[-1:]


def _meant(message: Message, name: Named) -> bool:
    """Return whether a name is what was meant instead, and does not point at a record."""
    before = message.texts(max(0, name.start - 4), name.start)
    return any(w in {"meant", "mean"} for w in before)


def says_again(message: Message, element: Element, one: TrainingSet) -> bool:
    """Return whether an element says again what was recorded: "that 50x15 was the seated calf raise"."""
    values = [q.value for q in element.quantities]
    before = message.text(element.start - 1)
    return (
        len(values) == 2
        and values == [one.load, Decimal(one.amount)]
        and before in {"that", "the", "those", "my", "a", ""}
    )
