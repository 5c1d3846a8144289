"""The house's way of writing a programme: what is written here is read as the same programme.

Only what differs from the usual is written: one set, and the exercise's usual way of counting load, go
without saying.
"""

from decimal import Decimal
from typing import assert_never

from domain.exercises import describe
from domain.programme import Alternative, FixedDays, Mass, Prescription, Programme, Range, Rotation
from domain.sets import LoadKind
from domain.sheet.vocabulary import number_word


def write_sheet(programme: Programme) -> str:
    """Return `programme` as a sheet."""
    head = [programme.name, _schedule(programme.schedule)]
    if review := programme.review:
        head.append(f"Review after {review.after_rounds} {'round' if review.after_rounds == 1 else 'rounds'}")
        if review.switch_to is not None:
            head[-1] += f". If strength has not risen, switch to {review.switch_to}"
    if programme.tell_after is not None:
        head.append(f"Tell me after {programme.tell_after} workouts without a beat")
    blocks = ["\n".join(head)]
    for workout in programme.workouts:
        lines = [workout.name]
        number = 0
        together = False
        for prescription in workout.prescriptions:
            number += not together
            opening = "   straight into " if together else f"{number}. "
            lines.append(opening + _prescription(prescription))
            lines.extend(f"   {rule}" for rule in _rules(prescription))
            together = prescription.straight_into_next
        blocks.append("\n".join(lines))
    return "\n\n".join(blocks) + "\n"


def _schedule(schedule: Rotation | FixedDays) -> str:
    match schedule:
        case Rotation(every_days=1, order=order):
            return f"Train every day in turn: {', '.join(order)}"
        case Rotation(every_days=days, order=order):
            return f"Train every {days} days in turn: {', '.join(order)}"
        case FixedDays(by_day=True, days=weekdays, order=order):
            pairs = zip(weekdays, order, strict=True)
            return "Train on " + "; ".join(f"{day.capitalize()}: {name}" for day, name in pairs)
        case FixedDays(days=weekdays, order=order):
            return f"Train on {_listed([day.capitalize() for day in weekdays])} in turn: {', '.join(order)}"
        case _:
            assert_never(schedule)


def _prescription(prescription: Prescription) -> str:
    reps = _range(prescription.range, lowering=prescription.lowering_only)
    sets = ""
    if prescription.sets > 1:
        sets = f"{prescription.sets} sets{',' if prescription.range.of == 'seconds' else ' of'} "
    words = [f"{prescription.exercise}, {sets}{reps}"]
    match prescription.stop_short:
        case None:
            pass
        case 0:
            words[0] += " to failure"
        case short:
            words.append(f"stop {number_word(short)} short of failure")
    if prescription.counted != describe(prescription.exercise).counted:
        words.append(_counted(prescription.counted))
    return ", ".join(words)


def _range(reps: Range, *, lowering: bool = False) -> str:
    bounds = f"{reps.low}-{reps.high}" if reps.low != reps.high else str(reps.low)
    if reps.of == "seconds":
        return f"hold {bounds} seconds" + (", lowering-only" if lowering else "")
    return f"{bounds} {'lowering-only ' if lowering else ''}reps"


def _rules(prescription: Prescription) -> list[str]:
    rules: list[str] = []
    if load := prescription.load_from:
        rules.append(f"start {_mass(load.difference)} {load.side} last {load.exercise}")
    if ladder := prescription.ladder:
        rules.append(f"below {ladder.below} do lowering-only reps up to {ladder.up_to}")
    if add := prescription.add_load:
        rules.append(f"over {add.over} add {_mass(add.by) if add.by else 'load'}")
    rules.extend(_alternative(alternative) for alternative in prescription.alternatives)
    rules.extend(f"cue: {cue}" for cue in prescription.cues)
    return rules


def _alternative(alternative: Alternative) -> str:
    if alternative.why == "joint":
        condition = f"if the {alternative.without} is a problem"
    else:
        condition = f"no {alternative.without}"
    return f"{condition}: {alternative.exercise}, {_range(alternative.range)}"


def _counted(kind: LoadKind) -> str:
    match kind:
        case "total":
            return "load in total"
        case "each":
            return "load per hand"
        case "added":
            return "load on top of body weight"
        case "assist":
            return "load as help"
        case "body":
            return "no load"
        case _:
            assert_never(kind)


def _mass(mass: Mass) -> str:
    return f"{_plain(mass.amount)} {mass.unit}"


def _plain(amount: Decimal) -> str:
    """Return a decimal without an exponent and without zeros at its end."""
    text = format(amount, "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


def _listed(words: list[str]) -> str:
    return f"{', '.join(words[:-1])} and {words[-1]}" if len(words) > 1 else words[0]
