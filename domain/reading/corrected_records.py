"""Which recorded sets a correction means.

Whether a message is a correction, and what is put in the place of the old values, is decided elsewhere.
"""

from collections.abc import Sequence
from datetime import date
from decimal import Decimal

from domain.reading.context import HEAVIEST, LIGHTEST
from domain.reading.correction_of_days import WHOLE_DAY
from domain.reading.correction_words import (
    ALL_FEW,
    ALL_OF_THEM,
    ALL_THERE_ARE,
    BOTH,
    BOTH_OR_ALL,
    LAST_FEW,
    NTH_SET,
)
from domain.reading.element import Element
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern
from domain.reading.request import Request
from domain.reading.words import KG_WORDS, LB_WORDS, NTHS
from domain.sets import TrainingSet


def records_meant(
    message: Message,
    request: Request,
    names: Sequence[Named],
    denied: Sequence[Named],
    elements: Sequence[Element],
    on: date | None,
    old: set[Decimal],
    *,
    changes: bool = False,
    to_another_day: bool = False,
) -> list[TrainingSet]:
    """Return the recorded sets that are meant; `changes` tells that more or less is said of them."""
    today = request.sent.date()
    done = [one for one in request.done if on is None or (one.on or today) == on] or list(request.done)
    said = [n for n in [*names, *denied] if n.names]
    points = bool(elements) or changes or on is not None or _POINTS.is_in(message)
    if to_another_day and (whole := _of_another_day(message, done, said)):
        return whole
    several = _of_several(message, done, names, old)
    if several:
        return several
    pool = (
        _said_again(message, done, elements, pointed=True)
        or next((sets for n in said if (points or n in denied) and (sets := _of(message, done, n))), [])
        or _said_again(message, done, elements)
        or _counted_alike(done, elements)
        or [one for one in done if one.exercise == done[-1].exercise and one.on == done[-1].on]
    )
    return (
        _nth_exercise(message, request, pool, named=bool(said))
        or _last_few(message, done, pool)
        or (_of_the_day(message, done, pool) if not said else [])
        or _nth(message, pool)
        or (_with_denied(_all(message, pool), old))
        or (_with_old_value(done, pool, next(iter(old)), named=bool(said)) if len(old) == 1 else [])
        or ([] if said or old else _whose_load_it_can_be(done, elements))
        or pool[-1:]
    )


def _with_denied(records: list[TrainingSet], old: set[Decimal]) -> list[TrainingSet]:
    """Return of several records those that have a number denied, all of them where none has: "those were 9,
    not 11"."""
    having = [one for one in records if not old.isdisjoint({one.load, Decimal(one.amount)})]
    return having or records


_POINTS = Pattern("{unit}|yesterday|failure", unit=KG_WORDS | LB_WORDS)
"""What is put right of an exercise that is named, where no number is said."""


def _of(message: Message, done: Sequence[TrainingSet], name: Named) -> list[TrainingSet]:
    """Return the sets of an exercise; none where its name is what was meant instead."""
    before = range(name.start - 1, max(-1, name.start - 5), -1)
    for at in before:
        if message.text(at) in {"meant", "mean"}:
            return []
        if message.value(at) is not None:
            # "I meant 12 on the row" points at the row.
            break
    return [one for one in done if one.exercise in name.names]


def _counted_alike(done: Sequence[TrainingSet], elements: Sequence[Element]) -> list[TrainingSet]:
    """Return the last set with help where a load is told as help: "I meant 55 assist"."""
    helped = any(q.kind == "assist" for element in elements for q in element.quantities)
    return [one for one in done if one.load_kind == "assist"][-1:] if helped else []


def _of_another_day(
    message: Message, done: Sequence[TrainingSet], said: Sequence[Named]
) -> list[TrainingSet]:
    """Return all that is recorded of a day, or of the exercises named, where that is put on another day."""
    names = {name for n in said for name in n.names}
    if not names:
        return [one for one in done if one.on == done[-1].on] if WHOLE_DAY.is_in(message) else []
    sets = [one for one in done if one.exercise in names]
    one_set = any(message.text(n.end) in {"set", "one"} for n in said)
    return [] if one_set or not sets else [one for one in sets if one.on == sets[-1].on]


def _of_several(
    message: Message, done: Sequence[TrainingSet], names: Sequence[Named], old: set[Decimal]
) -> list[TrainingSet]:
    """Return the last set of each of several exercises: "squat and bench were both 7"."""
    if len(names) < 2 or not BOTH_OR_ALL.is_in(message):
        return []
    pools = [[one for one in done if one.exercise in name.names] for name in names]
    if not all(pools) or len({pool[-1].exercise for pool in pools}) < len(pools):
        return []
    return [
        ((_with_old_value(done, pool, next(iter(old)), named=True) if len(old) == 1 else []) or pool)[-1]
        for pool in pools
    ]


def _said_again(
    message: Message, done: Sequence[TrainingSet], elements: Sequence[Element], *, pointed: bool = False
) -> list[TrainingSet]:
    """Return the set whose numbers are said again; `pointed` wants a word that points at it."""
    for element in elements:
        if pointed and message.text(element.start - 1) not in {"that", "the", "those", "my"}:
            continue
        matching = [one for one in done if says_again(message, element, one)]
        if matching:
            return matching[-1:]
    return []


def _last_few(
    message: Message, done: Sequence[TrainingSet], pool: Sequence[TrainingSet]
) -> list[TrainingSet]:
    """Return "the last two", "all three"."""
    found = LAST_FEW.first(message) or ALL_FEW.first(message)
    if found is None:
        return []
    count = int(message.value(found.parts["n"][0]) or 1)
    return list(pool if len(pool) >= count else done)[-count:]


def _of_the_day(
    message: Message, done: Sequence[TrainingSet], pool: Sequence[TrainingSet]
) -> list[TrainingSet]:
    """Return both or all sets of the last day, where those are of several exercises."""
    if len(pool) != 1 or done[-1] is not pool[0]:
        return []
    that_day = [one for one in done if one.on == done[-1].on]
    if BOTH.is_in(message):
        return that_day[-2:]
    return that_day if ALL_THERE_ARE.is_in(message) else []


def _nth(message: Message, pool: Sequence[TrainingSet]) -> list[TrainingSet]:
    """Return "the second one"."""
    found = NTH_SET.first(message)
    number = 0 if found is None else place_said(message, found)
    return [pool[number - 1]] if 1 <= number <= len(pool) else []


def _nth_exercise(
    message: Message, request: Request, pool: Sequence[TrainingSet], *, named: bool
) -> list[TrainingSet]:
    """Return "the second one" of a day on which each exercise had its only set."""
    found = NTH_SET.first(message)
    if found is None or named or place_said(message, found) <= len(pool):
        return []
    return [one] if (one := only_set_at(message, request, found)) is not None else []


def only_set_at(message: Message, request: Request, found: Found) -> TrainingSet | None:
    """Return the set of the last recorded day at a place, if "one" can only count what each exercise had.

    A second set of an exercise that has two is no second exercise.
    """
    that_day = [one for one in request.done if one.on == request.done[-1].on]
    number = place_said(message, found)
    several = {p.name for p in request.plan if p.sets > 1}
    once = len({one.exercise for one in that_day}) == len(that_day)
    if not once or number > len(that_day) or that_day[-1].exercise in several:
        return None
    return that_day[number - 1] if "one" in message.texts(found.start, found.end) else None


def _all(message: Message, pool: Sequence[TrainingSet]) -> list[TrainingSet]:
    if len(pool) == 1 or not ALL_OF_THEM.is_in(message):
        return []
    return [one for one in pool if one.exercise == pool[-1].exercise and one.on == pool[-1].on]


def _with_old_value(
    done: Sequence[TrainingSet], pool: Sequence[TrainingSet], value: Decimal, *, named: bool
) -> list[TrainingSet]:
    """Return the last set that was recorded with a value that is not right."""
    if _has(pool[-1], value):
        return []
    matching = [one for one in pool if _has(one, value)]
    if not matching and not named:
        matching = [one for one in done if _has(one, value)]
    return matching[-1:]


def _whose_load_it_can_be(done: Sequence[TrainingSet], elements: Sequence[Element]) -> list[TrainingSet]:
    """Return the set whose load a lone number can put right, where it is out of all reason for the last:
    "oops 72.5" after a bench press and dips without a load."""
    numbers = [q for element in elements for q in element.quantities]
    last = done[-1]
    if len(numbers) != 1 or numbers[0].role not in {None, "load"} or last.load > 0:
        return []
    value = numbers[0].value
    if numbers[0].role is None and value <= max(_MOST_ADDED, _SURELY_MORE * last.amount):
        return []
    fitting = [
        one
        for one in done
        if one.on == last.on and one.load > 0 and LIGHTEST * one.load <= value <= HEAVIEST * one.load
    ]
    return fitting[-1:] if len({one.exercise for one in fitting}) == 1 else []


_MOST_ADDED = 40
_SURELY_MORE = 2
"""So many times the reps of a set with body weight are none of it, and no weight is first added like that."""


def _has(one: TrainingSet, value: Decimal) -> bool:
    return value in {one.load, Decimal(one.amount)}


def place_said(message: Message, found: Found) -> int:
    """Return the place of a set as it was said: 2 for "the second one" and for "set 2"."""
    if "nth" in found.parts:
        return NTHS[message.text(found.parts["nth"][0])]
    return int(message.value(found.parts["n"][0]) or 0)


def says_again(message: Message, element: Element, one: TrainingSet) -> bool:
    """Return whether an element says again what was recorded: "that 50x15 was the seated calf raise"."""
    values = [q.value for q in element.quantities]
    before = message.text(element.start - 1)
    return (
        len(values) == 2
        and values == [one.load, Decimal(one.amount)]
        and before in {"that", "the", "those", "my", "a", ""}
    )
