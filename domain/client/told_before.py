"""A workout that is told a second time: it stands already, and is not recorded twice."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from domain.client.draft import Draft
from domain.client.exposures import sets_done
from domain.client.lines import line_named
from domain.client.workouts import day_told_of
from domain.expressions import Expression
from domain.journal import Entry
from domain.reading import Reading
from domain.sets import TrainingSet

_ONCE_MORE = Expression(r"\b(?:again|another|more|second|twice|extra|also|too|as well|repeat(?:ed)?)\b")
"""What says that it was done a second time."""


def without_told_before(draft: Draft, reading: Reading, text: str) -> Reading:
    """Return the reading without the sets of which it only says what stands; say so of these.

    Such are all that it tells of one exercise on one day, where just these stand and none is left to do. One
    exercise alone, told again on its own day, is a set more.
    """
    if "correct" in reading.wants or _ONCE_MORE.search(text.casefold()):
        return reading
    today = day_told_of(draft)
    told: defaultdict[date, defaultdict[str, list[TrainingSet]]] = defaultdict(lambda: defaultdict(list))
    for each in reading.sets:
        told[each.on or today][each.exercise].append(each)
    repeated = {
        (day, exercise)
        for day, by_exercise in told.items()
        if day < draft.today or len(by_exercise) > 1
        for exercise, sets in by_exercise.items()
        if stand(draft, day, exercise, sets)
    }
    for day in sorted({day for day, _ in repeated}):
        names = [exercise for exercise in told[day] if (day, exercise) in repeated]
        draft.notice(
            "told before", on=day.isoformat(), exercises=names if len(names) < len(told[day]) else []
        )
    left = tuple(each for each in reading.sets if (each.on or today, each.exercise) not in repeated)
    return replace(reading, sets=left)


def stand(draft: Draft, day: date, exercise: str, told: Sequence[TrainingSet]) -> bool:
    """Return whether just these sets of an exercise stand for that day, with none left to do."""
    entries = [
        entry for entry in draft.state.entries if (entry.set.on, entry.set.exercise) == (day, exercise)
    ]
    same = [amount(each) for each in told] == [amount(entry.set) for entry in entries]
    return same and is_done(draft, exercise, entries)


def is_done(draft: Draft, exercise: str, entries: Sequence[Entry]) -> bool:
    """Return whether nothing of an exercise is left to do in the workout of these entries of it."""
    numbers = {entry.workout for entry in entries}
    records = [each for each in draft.state.workouts if each.number in numbers]
    lines = [(record, line_named(draft.state, record.name, exercise)) for record in records]
    return bool(records) and all(
        line is None or sets_done(draft.state, record, exercise) >= line.prescription.sets
        for record, line in lines
    )


def amount(done: TrainingSet) -> tuple[object, ...]:
    """Return what makes a set the same as another one of its exercise."""
    return (done.kg, done.load_kind, done.reps, done.seconds, done.lowering_only)
