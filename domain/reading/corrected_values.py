"""A recorded set with the values of a correction in its place. Which set is meant is known by then."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal

from domain.reading.context import HEAVIEST, LIGHTEST, MOST_REPS, Known, day_of
from domain.reading.element import Element
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.request import OpenSet, Request, Slot
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit


def with_values(
    record: TrainingSet,
    request: Request,
    elements: Sequence[Element],
    marks: Sequence[Mark],
    old: set[Decimal],
    exercise: str | None,
    unit: Unit | None,
    on: date | None,
    about: str,
) -> TrainingSet | OpenSet:
    """Return a record with what was said put in its place."""
    today = request.sent.date()
    one = replace(record, on=on or record.on or today)
    known = Known(request, exercise or record.exercise, day_of(request, today), request.unit)
    if exercise is not None:
        one = _of_exercise(one, exercise, known)
        if one.load_kind != "body" and one.load == 0:
            return opened(one, request, ("load",), drop_load=True)
    if unit is not None:
        one = replace(one, unit=unit)
    if not about and len(elements) == 1 and _is_the_load_already(one, elements[0], known):
        about = "amount"
    if exercise is not None and all(_is_its_load(record, element) for element in elements):
        # "I meant leg curl for that 42.5" only points at the record.
        elements = ()
    candidates: list[TrainingSet] = []
    for element in elements:
        outcome = _one_value(one, element, old, known, about)
        if len(outcome) == 1 and _is_far_off(one, element, old):
            candidates = outcome
        elif len(outcome) == 1:
            one = outcome[0]
        elif outcome:
            candidates = outcome
    for mark in marks:
        if not (elements and mark.kind in {"more reps", "fewer reps", "up", "down"}):
            one = _with_mark(one, mark, request)
    if candidates:
        return replace(opened(one, request, ("confirm",)), candidates=tuple(candidates))
    return one


def _of_exercise(one: TrainingSet, exercise: str, known: Known) -> TrainingSet:
    """Return a record as one of another exercise, whose load counts as it does there."""
    kind: LoadKind = known.kind
    if one.load_kind == "body" or one.load == 0:
        kind = "body" if kind in {"added", "body"} else kind
    lowering_only = bool(known.plan and known.plan.lowering_only)
    return replace(one, exercise=exercise, load_kind=kind, lowering_only=lowering_only)


def _with_mark(one: TrainingSet, mark: Mark, request: Request) -> TrainingSet:
    match mark.kind:
        case "failure":
            return replace(one, to_failure=True)
        case "no failure":
            return replace(one, to_failure=False)
        case "rir":
            return replace(one, rir=mark.value)
        case "failed on" if one.seconds is None:
            return replace(one, reps=int(mark.value or 1) - 1, to_failure=True)
        case "lowering":
            return replace(one, lowering_only=True)
        case "each hand":
            return replace(one, load_kind="each")
        case "body":
            return replace(one, load=Decimal(0), load_kind="body", unit=request.unit)
        case "up" if mark.value is not None:
            kind: LoadKind = "added" if one.load_kind == "body" else one.load_kind
            return replace(one, load=one.load + mark.value, load_kind=kind)
        case "down" if mark.value is not None:
            return replace(one, load=max(Decimal(0), one.load - mark.value))
        case "more reps" if one.reps is not None:
            return replace(one, reps=one.reps + int(mark.value or 1))
        case "fewer reps" if one.reps is not None:
            return replace(one, reps=max(0, one.reps - int(mark.value or 1)))
        case _:
            return one


def _one_value(
    one: TrainingSet, element: Element, old: set[Decimal], known: Known, about: str
) -> list[TrainingSet]:
    """Return the record with an element's numbers in their place; two where either is possible."""
    holds = known.hold or one.seconds is not None
    q = [x for x in element.quantities if x.role != "sets" and (holds or x.role != "seconds")]
    if len(q) >= 2:
        load, amount = _load_and_amount(q[0], q[1], element.joints[1], one, known)
        return [_with_amount(_with_load(one, load, known), amount, known)]
    if not q:
        return []
    only = q[0]
    told = about or _told_by_old(one, old)
    if told != "load" and only.value % 1 == _HALF and only.role is None and _is_half_a_rep(one, only.value):
        # "That was 7 and a half" is 7 full reps.
        only = only._replace(value=only.value // 1, role="reps")
    if holds and only.role == "pair" and one.load_kind != "each" and only.unit is None:
        # "19s" is nineteen seconds where nothing is held in two hands.
        return [_with_amount(one, only, known)]
    if only.role in {"load", "pair", "plates"}:
        return [_with_load(one, only, known)]
    if only.role in {"reps", "seconds"}:
        return [_with_amount(one, only, known)]
    as_load, as_amount = _with_load(one, only, known), _with_amount(one, only, known)
    match told or _told_by_size(one, only.value, known):
        case "load":
            return [as_load]
        case "amount":
            return [as_amount]
        case _:
            return [as_load, as_amount]


def _is_far_off(one: TrainingSet, element: Element, old: set[Decimal]) -> bool:
    """Return whether just one bare number is said, and is of the size of nothing recorded: "make it 67.5" of
    chin-ups with 5 kg."""
    only = element.quantities[0]
    if old or len(element.quantities) > 1 or only.role is not None or only.kind is not None:
        return False
    return only.value > MOST_REPS and one.seconds is None and not _could_be_load(one, only.value)


_HALF = Decimal("0.5")


def _is_half_a_rep(one: TrainingSet, value: Decimal) -> bool:
    return value <= MOST_REPS and not _could_be_load(one, value)


def _could_be_load(one: TrainingSet, value: Decimal) -> bool:
    """Return whether a number is near enough to the recorded load to stand in its place."""
    return one.load_kind == "body" or one.load == 0 or LIGHTEST * one.load <= value <= HEAVIEST * one.load


def _is_the_load_already(one: TrainingSet, element: Element, known: Known) -> bool:
    """Return whether just one number is said, and is recorded as the load: it can only put the reps right, if
    so many are done of the exercise."""
    values = [q.value for q in element.quantities]
    most = known.plan.range_high + _BEYOND_RANGE if known.plan is not None else MOST_REPS
    return values == [one.load] and one.load <= most and one.load != one.amount


_BEYOND_RANGE = 5


def _is_its_load(record: TrainingSet, element: Element) -> bool:
    return [q.value for q in element.quantities] == [record.load]


def _told_by_old(one: TrainingSet, old: set[Decimal]) -> str:
    """Return whether the load or the amount is put right, by the number denied; "" where neither is."""
    load = one.load in old and one.load_kind != "body"
    if load == (Decimal(one.amount) in old):
        return ""
    return "load" if load else "amount"


def _told_by_size(one: TrainingSet, value: Decimal, known: Known) -> str:
    """Return whether a lone number fits the load or the amount; "" where it fits both."""
    whole = value == int(value)
    fits_amount = whole and value <= (600 if known.hold else MOST_REPS)
    fits_load = (
        one.load_kind != "body" and one.load > 0 and LIGHTEST * one.load <= value <= HEAVIEST * one.load
    )
    if fits_amount and fits_load:
        return ""
    if one.load_kind == "body":
        return "amount" if whole or value < 50 else "load"
    return "load" if fits_load or not fits_amount else "amount"


def _load_and_amount(
    first: Quantity, second: Quantity, joint: str, one: TrainingSet, known: Known
) -> tuple[Quantity, Quantity]:
    if first.role in {"reps", "seconds"} or second.role == "load" or joint == "@":
        return second, first
    if first.role is None and second.role is None and known.order(first, second) == "reps first":
        return second, first
    if first.role is None and second.role is None and one.load_kind != "body" and one.load > 0:
        fits = LIGHTEST * one.load <= first.value <= HEAVIEST * one.load
        if (
            not fits
            and LIGHTEST * one.load <= second.value <= HEAVIEST * one.load
            and first.value <= MOST_REPS
        ):
            return second, first
    return first, second


def _with_load(one: TrainingSet, q: Quantity, known: Known) -> TrainingSet:
    unit: Unit = q.unit if q.unit in {"kg", "lb"} else one.unit
    kind: LoadKind = one.load_kind if one.load_kind != "body" else known.kind
    if q.kind is not None or q.each or q.role == "pair":
        kind = known.kind_of(q)
    if kind == "body" or (q.value == 0 and one.load_kind in {"added", "assist"}):
        return replace(one, load=Decimal(0), load_kind="body", unit=unit)
    return replace(one, load=q.value, unit=unit, load_kind=kind)


def _with_amount(one: TrainingSet, q: Quantity, known: Known) -> TrainingSet:
    if one.seconds is not None or (known.hold and one.reps is None):
        return replace(one, seconds=int(q.value))
    return replace(one, reps=int(q.value), lowering_only=one.lowering_only or q.lowering)


def opened(one: TrainingSet, request: Request, asks: tuple[Slot, ...], *, drop_load: bool = False) -> OpenSet:
    """Return a recorded set as an open one that asks for `asks`, without a load that no longer holds."""
    return OpenSet(
        exercise=None if "exercise" in asks else one.exercise,
        load=None if drop_load else one.load,
        unit=one.unit,
        load_kind=None if drop_load else one.load_kind,
        reps=one.reps,
        seconds=one.seconds,
        lowering_only=one.lowering_only,
        to_failure=one.to_failure,
        rir=one.rir,
        on=one.on or request.sent.date(),
        asks=asks,
    )
