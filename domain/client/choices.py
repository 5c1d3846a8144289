"""The likely answers to a question about a set, as they can be typed: what its buttons say."""

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from decimal import Decimal

from domain.client.draft import Draft
from domain.client.understanding import request_for
from domain.exercises import describe
from domain.reading import OpenSet, Planned, Request, Slot, days_meant
from domain.sets import TrainingSet
from domain.units import Unit

FEW = 5
"""No more numbers than this are offered at once. The house's own choice."""

BODY_WEIGHT = "Body weight"

SECONDS_APART = 5
"""By how much the seconds offered differ. The house's own choice."""


def choices(draft: Draft, slot: Slot, asked: Sequence[OpenSet], text: str) -> tuple[str, ...]:
    """Return the likely answers to what `asked` lack, said in the words `text`."""
    request = request_for(draft, "", [each.exercise for each in asked if each.exercise])
    name = asked[0].exercise or ""
    match slot:
        case "exercise":
            to_do = tuple(line.name for line in request.plan if line.sets)
            return to_do or tuple(line.name for line in request.plan)
        case "unit":
            return ("kg", "lb")
        case "confirm":
            return either_or(asked, request.unit) or (
                ("Yes", "No") if all(each.candidates for each in asked) else ()
            )
        case "load":
            likely = (request.target.get(name), request.last.get(name))
            loads = (f"{number(each.load)} {each.unit}" for each in likely if each and each.load)
            return tuple(dict.fromkeys([*loads, *([BODY_WEIGHT] if is_of_body(request, name) else [])]))
        case "reps":
            return tuple(f"{each}" for each in amounts(request, name, 1))
        case "seconds":
            return tuple(f"{each} s" for each in amounts(request, name, SECONDS_APART))
        case "date":
            return tuple(day_said(each) for each in days(text, draft.local))


def is_of_body(request: Request, name: str) -> bool:
    """Return whether an exercise is done with body weight, and a load is only added to it."""
    planned = next((each.load_kind for each in request.plan if each.name == name), None)
    return (planned or describe(name).counted) == "added"


def number(value: Decimal) -> str:
    """Return a number as one types it."""
    return f"{value.normalize():f}"


def either_or(asked: Sequence[OpenSet], unit: Unit) -> tuple[str, ...]:
    """Return what the one set can be that can be taken in several ways, or of which a number stands alone."""
    if len(asked) != 1:
        return ()
    (one,) = asked
    if len(one.candidates) > 1:
        return tuple(
            f"{number(each.load)} {each.unit} {'for' if each.reps is None else 'x'} {each.amount}"
            for each in one.candidates
            if each.load
        )
    if one.candidates or one.bare is None:
        return ()
    whole = one.bare == one.bare.to_integral_value()
    return (f"{number(one.bare)} {one.unit or unit}", *([f"{number(one.bare)} reps"] if whole else []))


def amounts(request: Request, name: str, apart: int) -> tuple[int, ...]:
    """Return the likely reps or seconds of an exercise: about what was to be aimed for, within the range."""
    planned = next((each for each in request.plan if each.name == name), None)
    aim = request.target.get(name) or request.last.get(name)
    if aim is None:
        return () if planned is None else spread(planned, apart)
    near = (aim.amount - apart, aim.amount, aim.amount + apart)
    return tuple(each for each in near if each > 0 and (planned is None or is_likely(planned, aim, each)))


def is_likely(planned: Planned, aim: TrainingSet, amount: int) -> bool:
    """Return whether an amount is in the range, or is the very one to aim for."""
    return amount == aim.amount or planned.range_low <= amount <= planned.range_high


def spread(planned: Planned, apart: int) -> tuple[int, ...]:
    """Return the whole range where it is short, else its ends and its middle."""
    low, high = planned.range_low, planned.range_high
    whole = tuple(range(low, high + 1, apart))
    middle = low + (high - low) // 2 // apart * apart
    return whole if len(whole) <= FEW else tuple(dict.fromkeys((low, middle, high)))


def days(text: str, local: datetime) -> tuple[date, ...]:
    """Return the days that the words can mean; else today and yesterday."""
    today = local.date()
    return days_meant(text, local)[:FEW] or (today, today - timedelta(days=1))


def day_said(day: date) -> str:
    """Return a day as one types it."""
    return f"{day:%A} {day.day} {day:%B}"
