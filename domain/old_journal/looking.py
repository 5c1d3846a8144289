"""An old journal held against a client: what its names mean, what stands already, and what is to be taken."""

from collections import Counter
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Any, TypeVar

from domain.journal_data import HoldData, MatterData, hold_data, matter_data
from domain.old_journal.found import Found, FoundWorkout, RowFault
from domain.old_journal.names import LEFT_OUT, Meaning, meanings_of, resolved
from domain.sets import TrainingSet
from domain.state import ClientState

Kept = TypeVar("Kept", HoldData, MatterData)
Ranges = tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Looked:
    """What comes of a file for a client.

    `exercises` are what each name means, as far as that is known; `asked` are those of which it is not.
    `workouts` have all sets of the others, those included that stand in the journal already: these are
    `there`, by their places among all those sets (from 0). `faults` are in the order of the rows.
    """

    meanings: tuple[Meaning, ...]
    exercises: Mapping[str, str]
    asked: tuple[Meaning, ...]
    workouts: tuple[FoundWorkout, ...]
    there: Ranges
    faults: tuple[RowFault, ...]
    set_aside: tuple[HoldData, ...] = ()
    matters: tuple[MatterData, ...] = ()
    """Of these, those alone that do not stand yet."""

    @property
    def to_take(self) -> int:
        """How many sets are to be taken."""
        return sum(len(each.sets) for each in self.workouts) - sum(
            last - first + 1 for first, last in self.there
        )

    @property
    def left_out(self) -> int:
        """How many sets are left out, since their names are."""
        return sum(each.many for each in self.meanings if self.exercises.get(each.name) == LEFT_OUT)


def look_through(state: ClientState, found: Found, told: Mapping[str, str]) -> Looked:
    """Return what comes of a file for the client of `state`, loaded whole.

    `told` is what names mean, as the coach has said.
    """
    meanings = meanings_of(found.workouts, exercises_of(state), state.client.own_names, is_ours=found.is_ours)
    exercises = {each.name: each.exercise for each in meanings if each.exercise is not None}
    exercises |= {
        name: exercise for name, exercise in told.items() if any(name == each.name for each in meanings)
    }
    workouts, faults = resolved(found.workouts, exercises, is_ours=found.is_ours)
    return Looked(
        meanings=meanings,
        exercises=exercises,
        asked=tuple(each for each in meanings if each.name not in exercises),
        workouts=workouts,
        there=_there(state, workouts),
        faults=tuple(sorted((*found.faults, *faults), key=lambda each: each.row)),
        set_aside=_new(found.set_aside, map(_hold_key, _held(state)), _hold_key),
        matters=_new(found.matters, map(_matter_key, _mattered(state)), _matter_key),
    )


def stands(state: ClientState, workout: FoundWorkout) -> bool:
    """Return whether there is a workout of that name on that day."""
    return any((each.on, each.name) == (workout.day, workout.name) for each in state.workouts)


def has_new(state: ClientState, looked: Looked) -> bool:
    """Return whether there is anything that does not stand yet: a set, a workout missed, something beside."""
    return (
        looked.to_take > 0
        or bool(looked.set_aside or looked.matters)
        or any(not each.sets and not stands(state, each) for each in looked.workouts)
    )


def _held(state: ClientState) -> Iterable[HoldData]:
    return (hold_data(each, state.client.number) for each in state.holds_ever)


def _mattered(state: ClientState) -> Iterable[MatterData]:
    return (matter_data(each, state.client.number) for each in state.matters_ever)


def _hold_key(hold: HoldData) -> tuple[Any, ...]:
    return (hold.exercise, hold.place, hold.side, hold.since)


def _matter_key(matter: MatterData) -> tuple[Any, ...]:
    return (matter.reason, matter.exercise, matter.opened_at)


def _new(found: Iterable[Kept], there: Iterable[object], key: Callable[[Kept], object]) -> tuple[Kept, ...]:
    """Return what does not stand yet: the same as often as it stands is left out, whatever became of it."""
    standing = Counter(there)
    new = []
    for each in found:
        if standing[key(each)] > 0:
            standing[key(each)] -= 1
        else:
            new.append(each)
    return tuple(new)


def without(
    workouts: Iterable[FoundWorkout], there: Ranges, start: int
) -> Iterable[tuple[int, FoundWorkout]]:
    """Give the workouts from number `start` on, without the sets that stand already, each with its number."""
    place, ranges = 0, list(there)
    for at, workout in enumerate(workouts):
        sets = []
        for each in workout.sets:
            while ranges and ranges[0][1] < place:
                ranges.pop(0)
            if not (ranges and ranges[0][0] <= place):
                sets.append(each)
            place += 1
        if at >= start and (sets or not workout.sets):
            yield at, replace(workout, sets=tuple(sets))


def exercises_of(state: ClientState) -> tuple[str, ...]:
    """Return the exercises of the client's sheet, with what is done instead, and of the journal."""
    stored = state.client.programme
    lines = [
        line for workout in (stored.programme.workouts if stored else ()) for line in workout.prescriptions
    ]
    names = [
        name for line in lines for name in (line.exercise, *(each.exercise for each in line.alternatives))
    ]
    return tuple(dict.fromkeys((*names, *(entry.set.exercise for entry in state.entries))))


def _there(state: ClientState, workouts: Iterable[FoundWorkout]) -> Ranges:
    """Return the places of sets that stand in the journal already: the same set of the same day, as often."""
    standing = Counter(_key(entry.set, entry.set.on) for entry in state.entries)
    ranges: list[tuple[int, int]] = []
    if not standing:
        return ()
    for place, each in enumerate(each for workout in workouts for each in workout.sets):
        key = _key(each.done, each.done.on)
        if standing[key] <= 0:
            continue
        standing[key] -= 1
        if ranges and ranges[-1][1] == place - 1:
            ranges[-1] = (ranges[-1][0], place)
        else:
            ranges.append((place, place))
    return tuple(ranges)


def _key(done: TrainingSet, on: date | None) -> tuple[Any, ...]:
    load = Decimal(0) if done.load_kind == "body" else done.kg
    return (on, done.exercise, load, done.load_kind, done.reps, done.seconds, done.lowering_only)
