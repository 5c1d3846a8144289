"""Words for a whole programme, as a coach reads it back: what was understood, and what to check."""

from collections.abc import Mapping
from typing import Any, assert_never

from bot.markup import bold, escape
from bot.wording.reader import listed, number
from bot.wording.sheet import note_words
from domain.exercises import describe
from domain.programme import FixedDays, Mass, Prescription, Programme, Range, Rotation
from domain.sets import LoadKind

_EFFORT = ("to failure", "stopping one rep short of failure")


def programme_words(facts: Mapping[str, Any]) -> str:
    """Say back `programme` as understood, with the `notes` on it, as markup."""
    programme = Programme.model_validate(facts["programme"])
    blocks = ["\n".join([bold(programme.name), *_head_lines(programme)])]
    for workout in programme.workouts:
        lines = [bold(workout.name)]
        place, paired = 0, False
        for prescription in workout.prescriptions:
            place += not paired
            opening = "    straight into " if paired else f"{place}. "
            lines.append(opening + prescription_words(prescription))
            lines.extend(f"    {detail}" for detail in _details(prescription))
            paired = prescription.straight_into_next
        blocks.append("\n".join(lines))
    if notes := [note_words(note) for note in facts.get("notes", [])]:
        blocks.append("\n".join(["Please check:", *notes]))
    return "\n\n".join(blocks)


def _head_lines(programme: Programme) -> list[str]:
    lines = [schedule_words(programme.schedule)]
    if review := programme.review:
        rounds = "1 round" if review.after_rounds == 1 else f"{review.after_rounds} rounds"
        then = f"; if strength has not risen, on to {escape(review.switch_to)}" if review.switch_to else ""
        lines.append(f"Review after {rounds}{then}.")
    if programme.tell_after is not None:
        lines.append(f"I tell you after {programme.tell_after} workouts of an exercise without a beat.")
    return lines


def schedule_words(schedule: Rotation | FixedDays) -> str:
    """Say the days of training and the order of workouts."""
    match schedule:
        case Rotation(every_days=days, order=order):
            how_often = "every day" if days == 1 else f"every {days} days, counted from the last one done"
            return f"A workout {how_often}. In turn: {escape(listed(order))}."
        case FixedDays(by_day=True, days=weekdays, order=order):
            pairs = zip(weekdays, order, strict=True)
            return "; ".join(f"{day.capitalize()}: {escape(name)}" for day, name in pairs) + "."
        case FixedDays(days=weekdays, order=order):
            days_said = listed([day.capitalize() for day in weekdays])
            return f"A workout every {days_said}. In turn: {escape(listed(order))}."
        case _:
            assert_never(schedule)


def prescription_words(prescription: Prescription, *, named: bool = True) -> str:
    """Say one line of a workout, with its exercise where it is `named`."""
    reps = _range_words(prescription.range, lowering_only=prescription.lowering_only)
    sets = ""
    if prescription.sets > 1:
        sets = f"{prescription.sets} sets{',' if prescription.range.of == 'seconds' else ' of'} "
    words = [f"{bold(prescription.exercise)}: {sets}{reps}" if named else f"{sets}{reps}"]
    match prescription.stop_short:
        case None:
            pass
        case 0 | 1 as short:
            words.append(_EFFORT[short])
        case short:
            words.append(f"stopping {short} reps short of failure")
    if prescription.counted != describe(prescription.exercise).counted:
        words.append(_counted_words(prescription.counted))
    return ", ".join(words)


def _range_words(reps: Range, *, lowering_only: bool = False) -> str:
    span = f"{reps.low}" if reps.low == reps.high else f"{reps.low}–{reps.high}"
    kind = "lowering-only rep" if lowering_only else "rep"
    if reps.of == "seconds":
        return f"hold {span} s" + (", lowering only" if lowering_only else "")
    return f"{span} {kind}{'' if reps.high == 1 else 's'}"


def _details(prescription: Prescription) -> list[str]:
    details: list[str] = []
    unit = "seconds" if prescription.range.of == "seconds" else "reps"
    if load := prescription.load_from:
        details.append(f"starts {_mass_words(load.difference)} {load.side} the last {escape(load.exercise)}")
    if ladder := prescription.ladder:
        full = "1 full rep" if ladder.below == 1 else f"{ladder.below} full reps"
        details.append(f"fewer than {full}: lowering-only reps, up to {ladder.up_to}")
    if add := prescription.add_load:
        details.append(f"more than {add.over} {unit}: add {_mass_words(add.by) if add.by else 'load'}")
    for instead in prescription.alternatives:
        why = (
            f"if the {instead.without} is a problem"
            if instead.why == "joint"
            else f"no {escape(instead.without)}"
        )
        details.append(f"{why}: {escape(instead.exercise)}, {_range_words(instead.range)}")
    details.extend(f"cue: {escape(cue)}" for cue in prescription.cues)
    return details


def _mass_words(mass: Mass) -> str:
    return f"{number(mass.amount)} {mass.unit}"


def _counted_words(kind: LoadKind) -> str:
    match kind:
        case "total":
            return "load counted as the whole"
        case "each":
            return "load counted per hand"
        case "added":
            return "load counted on top of body weight"
        case "assist":
            return "load counted as help"
        case "body":
            return "without load"
        case _:
            assert_never(kind)
