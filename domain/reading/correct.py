"""Corrections: the recorded sets that are meant, each with what was said put in its place.

Nothing new is recorded here. What is not said of a set stays as it was recorded; how its load is counted
follows the exercise. The words, the records and the values each have their own file.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from domain.reading.corrected_records import records_meant, says_again
from domain.reading.corrected_values import opened, with_values
from domain.reading.correction_words import DAY_FIXED, NOT_THIS, UNIT_FIXED
from domain.reading.days import Day
from domain.reading.elements import Element
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.request import OpenSet, Request
from domain.reading.when import past_day
from domain.reading.words import KG_WORDS, words_of
from domain.sets import TrainingSet
from domain.units import Unit


@dataclass(frozen=True, slots=True)
class Corrected:
    """The corrected sets, or the open ones where it is not clear what is meant."""

    sets: tuple[TrainingSet, ...] = ()
    open: tuple[OpenSet, ...] = ()
    replaces: tuple[int, ...] = ()
    """For each of `sets`, the place in `done` of the set that it puts right."""


def put_right(
    message: Message,
    request: Request,
    groups: Sequence[Group],
    named: Sequence[Named],
    days: Sequence[Day],
) -> Corrected:
    """Return the corrected sets."""
    old = {v for _, _, end in message.find(NOT_THIS) if (v := message.value(end - 1)) is not None}
    new_names = [n for n in named if not _after_not(message, n)]
    denied = [n for n in named if _after_not(message, n)]
    elements = [i for g in groups for i in g.items if isinstance(i, Element)]
    marks = [i for g in groups for i in g.items if isinstance(i, Mark)]
    fixed_unit = _fixed_unit(message)
    fixed_day, pointed_day = _days(
        message, request, days, has_values=bool(elements) or fixed_unit is not None
    )
    records = records_meant(message, request, new_names, denied, elements, pointed_day, old)
    if not records:
        return Corrected()
    quoted = [e for e in elements if says_again(message, e, records[-1])]
    elements = [e for e in elements if e not in quoted]
    exercise = _new_exercise(
        request,
        records[-1],
        new_names,
        has_values=bool(elements) or fixed_unit is not None or fixed_day is not None,
    )
    if exercise == "":
        asked = opened(records[-1], request, ("exercise",))
        return Corrected(open=(replace(asked, replaces=_place(request, records[-1])),))
    about = (
        "load"
        if re.search(r"\b(?:wrong|the|correct) (?:weight|load)\b", message.line)
        else "amount"
        if re.search(
            r"\b(?:wrong|the|correct) (?:reps|number of reps|rep count|count|seconds|time)\b|\bmiscounted\b",
            message.line,
        )
        else ""
    )
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


def _place(request: Request, record: TrainingSet) -> int:
    """Return the place of this very record in `done`; sets that are equal are told apart."""
    return next(place for place, one in enumerate(request.done) if one is record)


_DENIED = words_of("wasnt werent isnt arent")


def _after_not(message: Message, name: Named) -> bool:
    return any(
        message.text(at) in {"not", *_DENIED, "of", "than", "no"}
        and (message.text(at) in {"not", *_DENIED} or message.text(at - 1) in {"instead", "rather"})
        for at in range(max(0, name.start - 3), name.start)
        if not any(
            message.value(b) is not None or message.text(b) in {"but", ","} for b in range(at, name.start)
        )
    )


def _fixed_unit(message: Message) -> Unit | None:
    for match in UNIT_FIXED.finditer(message.line):
        word = match["u"] or match["v"] or match["w"]
        if match.group().startswith("not "):
            continue
        return "kg" if word in KG_WORDS else "lb"
    return None


def _days(
    message: Message, request: Request, days: Sequence[Day], *, has_values: bool
) -> tuple[date | None, date | None]:
    """Return the day that is put right, and the day that points at a record."""
    known = {(one.on or request.sent.date()) for one in request.done}
    fixed: date | None = None
    pointed: date | None = None
    for day in days:
        on = past_day(day, request.sent)
        if on is None or message.text(day.start - 1) in {"not"}:
            continue
        before = " ".join(message.texts(max(0, day.start - 4), day.start))
        if DAY_FIXED.search(before) and not has_values:
            fixed = on if fixed is None else fixed
        elif on in known and has_values:
            pointed = on
        elif not has_values:
            fixed = on if fixed is None else fixed
        elif DAY_FIXED.search(before) and on not in known and message.text(day.start - 1) in {"from", "on"}:
            fixed = on
    return fixed, pointed


def _new_exercise(
    request: Request, record: TrainingSet, names: Sequence[Named], *, has_values: bool
) -> str | None:
    """Return the exercise that was meant instead, "" where it must be asked, None where it stays."""
    other = [n for n in names if record.exercise not in n.names]
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
