"""Corrections: the recorded sets that are meant, each with what was said put in its place.

Nothing new is recorded here. What is not said of a set stays as it was recorded; how its load is counted
follows the exercise. The words, the records and the values each have their own file.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal

from domain.reading.corrected_records import records_meant, says_again
from domain.reading.corrected_values import opened, with_values
from domain.reading.correction_claims import claims
from domain.reading.correction_of_days import is_denied
from domain.reading.correction_words import (
    NOT_NAMED,
    NOT_THIS,
    UNIT_FIXED,
    WRONG_AMOUNT,
    WRONG_LOAD,
)
from domain.reading.days import Day
from domain.reading.done_on import DoneOn, done_on
from domain.reading.element import Element
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.request import OpenSet, Request
from domain.reading.when import past_day
from domain.reading.words import KG_WORDS
from domain.sets import TrainingSet
from domain.units import Unit


@dataclass(frozen=True, slots=True)
class Corrected:
    """The corrected sets, or the open ones where it is not clear what is meant."""

    sets: tuple[TrainingSet, ...] = ()
    open: tuple[OpenSet, ...] = ()
    replaces: tuple[int, ...] = ()
    """For each of `sets`, the place in `done` of the set that it puts right."""

    def changes(self, request: Request) -> bool:
        """Return whether anything recorded comes out otherwise, or has to be asked about."""
        today = request.sent.date()
        before = [request.done[at] for at in self.replaces]
        return bool(self.open) or list(self.sets) != [replace(one, on=one.on or today) for one in before]


def put_right(
    message: Message,
    request: Request,
    groups: Sequence[Group],
    named: Sequence[Named],
    days: Sequence[Day],
) -> Corrected:
    """Return the corrected sets."""
    old = {
        v
        for said in (list(claims(message, request, named)) or NOT_THIS.find(message))
        if (v := message.value(said.parts["n"][0])) is not None
    }
    if (other := done_on(message, request, named)) is not None:
        return _on_something_else(request, other)
    denied = [n for n in named if NOT_NAMED.is_in(message, max(0, n.start - 4), n.start)]
    new_names = [n for n in named if n not in denied]
    elements = [i for g in groups for i in g.items if isinstance(i, Element)]
    marks = [i for g in groups for i in g.items if isinstance(i, Mark)]
    fixed_unit = _fixed_unit(message)
    if fixed_unit is not None and (weighed := _of_this_load(elements, request)) is not None:
        one = with_values(weighed, request, [], marks, set(), None, fixed_unit, None, "")
        if isinstance(one, TrainingSet):
            return Corrected(sets=(one,), replaces=(_place(request, weighed),))
    fixed_day, pointed_day = _days(
        message, request, days, has_values=bool(elements) or fixed_unit is not None
    )
    if fixed_day is not None and not elements:
        new_names = _beside_the_day(message, new_names, days)
    records = records_meant(
        message,
        request,
        new_names,
        denied,
        elements,
        pointed_day,
        old,
        changes=any(mark.value is not None for mark in marks),
        to_another_day=fixed_day is not None and not elements,
    )
    if not records:
        return Corrected()
    quoted = [e for e in elements if says_again(message, e, records[-1])]
    elements = _beside_the_denied(message, [e for e in elements if e not in quoted])
    elements = elements if old else _without_the_old(elements, records[-1])
    exercise = _new_exercise(
        request,
        records,
        new_names,
        has_values=bool(elements) or fixed_unit is not None or fixed_day is not None,
    )
    if exercise == "":
        asked = opened(records[-1], request, ("exercise",))
        return Corrected(open=(replace(asked, replaces=_place(request, records[-1])),))
    about = "load" if WRONG_LOAD.is_in(message) else "amount" if WRONG_AMOUNT.is_in(message) else ""
    fixed: list[TrainingSet] = []
    fixed_open: list[OpenSet] = []
    places: list[int] = []
    for record in records:
        one = with_values(record, request, elements, marks, old, exercise, fixed_unit, fixed_day, about)
        if isinstance(one, TrainingSet):
            fixed.append(one)
            places.append(_place(request, record))
        else:
            fixed_open.append(replace(one, replaces=_place(request, record)))
    return Corrected(tuple(fixed), tuple(fixed_open), tuple(places))


def _on_something_else(request: Request, other: DoneOn) -> Corrected:
    """Return a record as another exercise with the same numbers, or the question which one that was."""
    place = _place(request, other.record)
    one = opened(other.record, request, ("exercise",))
    if other.exercise:
        fixed = with_values(other.record, request, [], [], set(), other.exercise, None, None, "")
        if isinstance(fixed, TrainingSet):
            return Corrected(sets=(fixed,), replaces=(place,))
        one = fixed
    return Corrected(open=(replace(one, replaces=place),))


def _place(request: Request, record: TrainingSet) -> int:
    """Return the place of this very record in `done`; sets that are equal are told apart."""
    return next(place for place, one in enumerate(request.done) if one is record)


def _fixed_unit(message: Message) -> Unit | None:
    for found in UNIT_FIXED.find(message):
        if "right" in found.parts:
            return "kg" if message.text(found.parts["right"][0]) in KG_WORDS else "lb"
    return None


def _of_this_load(elements: Sequence[Element], request: Request) -> TrainingSet | None:
    """Return the latest record of the only number that is said: "that 205 was pounds"."""
    if len(elements) != 1 or len(elements[0].quantities) != 1:
        return None
    load = elements[0].quantities[0].value
    return next((one for one in reversed(request.done) if one.load == load), None)


def _days(
    message: Message, request: Request, days: Sequence[Day], *, has_values: bool
) -> tuple[date | None, date | None]:
    """Return the day that is put right, and the day that points at a record."""
    known = {(one.on or request.sent.date()) for one in request.done}
    fixed: date | None = None
    pointed: date | None = None
    for day in days:
        on = past_day(day, request.sent)
        if on is None:
            continue
        if is_denied(message, day):
            pointed = on if on in known else pointed
        elif not has_values:
            # "What I sent today was from yesterday" begins with the day of sending.
            fixed = on if fixed in {None, request.sent.date()} else fixed
        elif on in known:
            pointed = on
        elif message.text(day.start - 1) in {"from", "on"}:
            fixed = on
    return fixed, pointed


def _beside_the_denied(message: Message, elements: Sequence[Element]) -> list[Element]:
    """Leave out bare numbers of other clauses where one number is set against another: "250 not 245"."""
    denied = [message.clause[said.start] for said in NOT_THIS.find(message)]
    bare = [e for e in elements if len(e.quantities) == 1 and e.quantities[0].role is None]
    told = [e for e in bare if message.clause[e.start] in denied]
    return [e for e in elements if not told or e in told or e not in bare]


def _without_the_old(elements: Sequence[Element], record: TrainingSet) -> list[Element]:
    """Leave out the recorded one of two numbers that are set against each other: "82.5 nit 80"."""
    lone = [e for e in elements if len(e.quantities) == 1]
    again = [e for e in lone if e.quantities[0].value in {record.load, Decimal(record.amount)}]
    if len(elements) != 2 or len(lone) != 2 or len(again) != 1:
        return list(elements)
    return [e for e in elements if e not in again]


def _beside_the_day(message: Message, names: Sequence[Named], days: Sequence[Day]) -> list[Named]:
    """Return the exercises of the clause that tells the day; all where that names none."""
    clauses = {message.clause[day.start] for day in days[:1]}
    return [n for n in names if message.clause[n.start] in clauses] or list(names)


def _new_exercise(
    request: Request, records: Sequence[TrainingSet], names: Sequence[Named], *, has_values: bool
) -> str | None:
    """Return the exercise that was meant instead, "" where it must be asked, None where it stays."""
    record = records[-1]
    other = [n for n in names if not any(one.exercise in n.names for one in records)]
    if not other:
        return None
    name = other[0]
    if len(name.names) != 1:
        return ""
    if (
        has_values
        and any(one.exercise == name.names[0] for one in request.done)
        and record.exercise == name.names[0]
    ):
        return None
    return name.names[0]
