"""What changes from one programme to another, and what of a client's history goes on in it.

An exercise is compared with itself in the workout of the same name, so that its history goes on only there.
"""

from collections.abc import Collection

from domain.frozen import Frozen
from domain.programme import FixedDays, Prescription, Programme, Rotation

Spot = tuple[str, str]
"""The name of a workout, and an exercise in it."""


class LineChanged(Frozen):
    """One exercise of a workout that is prescribed otherwise than `before`."""

    workout: str
    before: Prescription
    after: Prescription


class Moved(Frozen):
    """An exercise that is in another workout than before."""

    exercise: str
    before: str
    after: str


class ProgrammeChanges(Frozen):
    """What a new programme has otherwise: exercises `gone`, `new`, `moved` and `changed`, and the days."""

    gone: tuple[Spot, ...] = ()
    new: tuple[tuple[str, Prescription], ...] = ()
    moved: tuple[Moved, ...] = ()
    changed: tuple[LineChanged, ...] = ()
    schedule: Rotation | FixedDays | None = None
    """The days and the order from now on, where they are others."""
    rules: bool = False
    """Whether the review or the rule for stalls is another one."""


def changes_between(before: Programme, after: Programme) -> ProgrammeChanges:
    """Return what changes from one programme to another, in the order of the sheets."""
    old, new = lines_by_spot(before), lines_by_spot(after)
    gone = [spot for spot in old if spot not in new]
    added = [spot for spot in new if spot not in old]
    moved: list[Moved] = []
    for workout, exercise in list(added):
        was = next((spot for spot in gone if spot[1] == exercise), None)
        if was is not None:
            gone.remove(was)
            added.remove((workout, exercise))
            moved.append(Moved(exercise=exercise, before=was[0], after=workout))
    return ProgrammeChanges(
        gone=tuple(gone),
        new=tuple((spot[0], new[spot]) for spot in added),
        moved=tuple(moved),
        changed=tuple(
            LineChanged(workout=spot[0], before=old[spot], after=new[spot])
            for spot in new
            if spot in old and new[spot] != old[spot]
        ),
        schedule=after.schedule if after.schedule != before.schedule else None,
        rules=(before.review, before.tell_after) != (after.review, after.tell_after),
    )


def lines_by_spot(programme: Programme) -> dict[Spot, Prescription]:
    """Return each line of a programme by its workout and exercise."""
    return {
        (workout.name, line.exercise): line
        for workout in programme.workouts
        for line in workout.prescriptions
    }


def carried_over(programme: Programme, done: Collection[Spot]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the exercises of a programme whose history goes on, given what was `done`, and the others."""
    spots = list(lines_by_spot(programme))
    goes_on = dict.fromkeys(exercise for workout, exercise in spots if (workout, exercise) in done)
    anew = dict.fromkeys(exercise for workout, exercise in spots if (workout, exercise) not in done)
    return tuple(goes_on), tuple(anew)
