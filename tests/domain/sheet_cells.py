"""Reads what the tables of cases say of the sheet and of the equipment, in a cell each.

A sheet's cell is `6-8`, `3 sets of 8-10`, `hold 30-60 s` or `lowering-only 4-6`, followed by rules:
`over 8 add load`, `over 8 add 5 kg`, `below 1 lowering-only up to 8`, `10 kg above Goblet squat`,
`stop 1 short`, `on hold`, `eased to 0.9`.
"""

import re
from decimal import Decimal

from domain.equipment import Equipment, Plate, Steps, default_equipment
from domain.exercises import describe
from domain.programme import Ladder, Mass, Prescription, Raise, Range, RelativeLoad
from domain.units import Unit


def mass(text: str) -> Mass:
    amount, unit = text.split()
    return Mass(amount=Decimal(amount), unit="lb" if unit == "lb" else "kg")


def prescribed(sheet: str, exercise: str) -> tuple[Prescription, bool, Decimal | None]:
    """Return what a sheet's cell means, whether the exercise is on hold, and by how much it is eased."""
    numbers = re.search(r"(\d+)-(\d+)", sheet)
    assert numbers, sheet
    over = re.search(r"over (\d+) add (load|[\d.]+ (?:kg|lb))", sheet)
    ladder = re.search(r"below (\d+) lowering-only up to (\d+)", sheet)
    relative = re.search(r"([\d.]+ (?:kg|lb)) (above|below) ([A-Z][a-z ]+)", sheet)
    several = re.search(r"(\d+) sets", sheet)
    short = re.search(r"stop (\d+) short", sheet)
    eased = re.search(r"eased to ([\d.]+)", sheet)
    prescription = Prescription(
        exercise=exercise,
        counted=describe(exercise).counted,
        range=Range(
            low=int(numbers[1]),
            high=int(numbers[2]),
            of="seconds" if "hold " in sheet.split(",", maxsplit=1)[0] else "reps",
        ),
        sets=int(several[1]) if several else 1,
        lowering_only=sheet.startswith("lowering-only"),
        stop_short=int(short[1]) if short else None,
        add_load=Raise(over=int(over[1]), by=None if over[2] == "load" else mass(over[2])) if over else None,
        ladder=Ladder(below=int(ladder[1]), up_to=int(ladder[2])) if ladder else None,
        load_from=RelativeLoad(
            exercise=relative[3].strip(),
            difference=mass(relative[1]),
            side="above" if relative[2] == "above" else "below",
        )
        if relative
        else None,
    )
    return prescription, "on hold" in sheet, Decimal(eased[1]) if eased else None


def equipped(text: str | None, unit: Unit) -> Equipment:
    """Return the usual equipment of that unit, with what the cell says in place of it."""
    usual = default_equipment(unit)
    if text is None:
        return usual
    word, rest = text.split(" ", 1)
    if word == "plates":
        return usual.model_copy(
            update={"plates": tuple(Plate(mass=Decimal(each)) for each in rest.split(", "))}
        )
    if word == "bar":
        return usual.model_copy(update={"bar": Decimal(rest)})
    if word == "bands":
        return usual.model_copy(update={"bands": tuple(Decimal(each) for each in rest.split(", "))})
    steps = re.fullmatch(r"([\d.]+) to ([\d.]+) by ([\d.]+)(?:, extra ([\d.]+))?", rest)
    assert steps, text
    first, last, step = (Decimal(steps[at]) for at in (1, 2, 3))
    told = Steps(first=first, last=last, step=step, extra=Decimal(steps[4]) if steps[4] else None)
    return usual.model_copy(update={word: told} if word == "dumbbells" else {"stack": told})
