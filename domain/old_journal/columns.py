"""Which column of a table holds what: our own names, and the plain words that people write over a column."""

import re
from dataclasses import dataclass

from domain.expressions import Expression
from domain.journal_table.columns import COLUMNS, MORE_COLUMNS
from domain.units import Unit

_WORDS = {
    "client": "client athlete person trainee lifter who",
    "date": "date day when on datum performed_on workout_day training_day trained_on start_time timestamp",
    "exercise": "exercise lift movement exercise_name name_of_exercise exercises movement_name",
    "load": "load weight mass resistance weight_used load_used working_weight kg kgs kilos lb lbs pounds",
    "unit": "unit units weight_unit load_unit unit_of_weight unit_of_load",
    "reps": "reps rep repetitions repetition count number_of_reps reps_done",
    "seconds": "seconds secs sec hold hold_time time_held",
    "sets": "sets number_of_sets set_count sets_done",
    "load_kind": "load_kind load_type weight_type counted",
    "lowering_only": "lowering_only negatives lowering eccentric_only",
    "to_failure": "to_failure failure failed taken_to_failure",
    "in_reserve": "in_reserve rir reps_in_reserve reserve in_the_tank",
    "workout": "workout session workout_name training session_name workout_title routine",
    "round": "round cycle",
    "recorded_at": "recorded_at told_at logged_at",
    "workout_date": "workout_date",
}
_MEANINGS = {word: column for column, words in _WORDS.items() for word in words.split()}
_UNITS: dict[str, Unit] = {
    **dict.fromkeys(("kg", "kgs", "kilo", "kilos", "kilograms"), "kg"),
    **dict.fromkeys(("lb", "lbs", "pound", "pounds"), "lb"),
}
_BESIDE = Expression(r"[\s_(\[/,]+(?:in[\s_]+)?(kgs?|kilos?|kilograms|lbs?|pounds)[)\]]?\s*$")
_SECONDS_BESIDE = Expression(r"[\s_(\[/,]+(?:in[\s_]+)?(?:s|secs?|seconds)[)\]]?\s*$")
_TIMES = frozenset({"time", "duration", "hold", "hold_time", "time_held"})
_OURS = {*COLUMNS, *MORE_COLUMNS} - {"workout_date"}
"""What tells our own table; the last column came later."""


@dataclass(frozen=True, slots=True)
class Head:
    """Which meaning has each column, None where it has none; the unit of all loads where it is told."""

    meanings: tuple[str | None, ...]
    unit: Unit | None
    is_ours: bool
    passed_over: tuple[str, ...]


def read_head(cells: list[str]) -> Head:
    """Return what the columns of a first line hold. Where two hold the same, the first one counts."""
    unit: Unit | None = None
    meanings: list[str | None] = []
    passed: list[str] = []
    for cell in cells:
        said = " ".join(cell.casefold().split())
        meaning, its_unit = _meaning(said)
        if meaning is None or meaning in meanings:
            meanings.append(None)
            if said:
                passed.append(" ".join(cell.split())[:40])
            continue
        unit = its_unit or unit
        meanings.append(meaning)
    names = {cell.strip().casefold() for cell in cells}
    return Head(tuple(meanings), unit, names >= _OURS, tuple(passed))


def _meaning(said: str) -> tuple[str | None, Unit | None]:
    beside = _BESIDE.search(said)
    if beside is not None:
        meaning = _MEANINGS.get(_joined(said[: beside.start()]))
        return (meaning, _UNITS[beside[1]]) if meaning == "load" else (None, None)
    timed = _SECONDS_BESIDE.search(said)
    if timed is not None:
        # Without the seconds beside it, a time is one of the day, or of the whole workout.
        is_held = _joined(said[: timed.start()]) in _TIMES
        return ("seconds" if is_held else None), None
    plain = _joined(said)
    meaning = _MEANINGS.get(plain)
    return meaning, _UNITS.get(plain) if meaning == "load" else None


def _joined(said: str) -> str:
    return "_".join(re.findall(r"[^\W_]+", said))
