"""The journal seen as exposures: one exercise in one workout, with its sets in order.

A decision looks at the same journal many times; each exposure is made once.
"""

from collections import Counter, defaultdict
from collections.abc import Mapping
from datetime import date
from types import MappingProxyType

from domain.exposure import Exposure
from domain.journal import Entry, WorkoutRecord
from domain.same import once
from domain.sets import TrainingSet
from domain.state import ClientState

Dated = tuple[WorkoutRecord, Exposure]


def history(
    state: ClientState,
    workout: str,
    exercise: str,
    *,
    until: WorkoutRecord | None = None,
    before: WorkoutRecord | None = None,
) -> tuple[Exposure, ...]:
    """Return all exposures of `exercise` in workouts of the name `workout`, oldest first.

    Where `until` is given, that workout's exposure is the last one; where `before` is, those from that
    workout on are left out.
    """
    return tuple(
        exposure
        for record, exposure in exposures_by_exercise(state).get(exercise, ())
        if record.name == workout
        and (until is None or moment(record) <= moment(until))
        and (before is None or moment(record) < moment(before))
    )


def exposures_by_exercise(state: ClientState) -> Mapping[str, tuple[Dated, ...]]:
    """Return all exposures by exercise, oldest first, each with its workout."""
    return _by_exercise(state.entries, state.workouts)


@once
def _by_exercise(
    entries: tuple[Entry, ...], workouts: tuple[WorkoutRecord, ...]
) -> Mapping[str, tuple[Dated, ...]]:
    sets: defaultdict[tuple[int, str], list[TrainingSet]] = defaultdict(list)
    for entry in entries:
        sets[entry.workout, entry.set.exercise].append(entry.set)
    records = {record.number: record for record in workouts}
    done: defaultdict[str, list[Dated]] = defaultdict(list)
    for (number, exercise), own in sets.items():
        record = records.get(number)
        if record is not None:
            done[exercise].append((record, Exposure(record.name, exercise, record.on, tuple(own))))
    by_moment = {
        exercise: tuple(sorted(own, key=lambda dated: moment(dated[0]))) for exercise, own in done.items()
    }
    return MappingProxyType(by_moment)


def days_trained(state: ClientState) -> tuple[date, ...]:
    """Return the days of workouts that are open or done, oldest first."""
    return _days_trained(state.workouts)


@once
def _days_trained(workouts: tuple[WorkoutRecord, ...]) -> tuple[date, ...]:
    return tuple(each.on for each in workouts if each.state in {"open", "done"})


def moment(record: WorkoutRecord) -> tuple[date, int]:
    """Return what puts workouts in order: their days, and on one day the order they were begun in."""
    return (record.on, record.number)


def sets_done(state: ClientState, workout: WorkoutRecord, exercise: str) -> int:
    """Return how many sets of `exercise` stand in that workout."""
    return _done_in_each(state.entries).get((workout.number, exercise), 0)


@once
def _done_in_each(entries: tuple[Entry, ...]) -> Mapping[tuple[int, str], int]:
    return Counter((entry.workout, entry.set.exercise) for entry in entries)


def last_set_of(state: ClientState, exercise: str) -> TrainingSet | None:
    """Return the last set of `exercise` on the last day that it was done, in whichever workout, or None."""
    done = [entry.set for entry in state.entries if entry.set.exercise == exercise]
    return max(reversed(done), key=lambda each: each.on or date.min, default=None)


def last_day_of(state: ClientState, exercise: str) -> date | None:
    """Return the last day on which `exercise` was done, or None."""
    days = (entry.set.on for entry in state.entries if entry.set.exercise == exercise and entry.set.on)
    return max(days, default=None)


def set_to_beat(exposure: Exposure) -> TrainingSet:
    """Return the heaviest set of an exposure, of several the one with most reps or seconds."""
    return max(
        exposure.counting,
        key=lambda each: (-each.kg if each.load_kind == "assist" else each.kg, each.amount),
    )
