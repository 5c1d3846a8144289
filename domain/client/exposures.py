"""The journal seen as exposures: one exercise in one workout, with its sets in order."""

from collections import defaultdict
from datetime import date

from domain.exposure import Exposure
from domain.journal import WorkoutRecord
from domain.sets import TrainingSet
from domain.state import ClientState


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
    sets: dict[int, list[TrainingSet]] = defaultdict(list)
    for entry in state.entries:
        if entry.set.exercise == exercise:
            sets[entry.workout].append(entry.set)
    return tuple(
        Exposure(workout=record.name, exercise=exercise, on=record.on, sets=tuple(sets[record.number]))
        for record in state.workouts
        if record.name == workout
        and record.number in sets
        and (until is None or moment(record) <= moment(until))
        and (before is None or moment(record) < moment(before))
    )


def moment(record: WorkoutRecord) -> tuple[date, int]:
    """Return what puts workouts in order: their days, and on one day the order they were begun in."""
    return (record.on, record.number)


def sets_done(state: ClientState, workout: WorkoutRecord, exercise: str) -> int:
    """Return how many sets of `exercise` stand in that workout."""
    return sum(
        1 for entry in state.entries if entry.workout == workout.number and entry.set.exercise == exercise
    )


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
