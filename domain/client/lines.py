"""The lines of a workout as they stand for this client: swaps, missing equipment and holds settled.

And which of them are still to be done in a workout that has begun.
"""

from collections.abc import Container
from dataclasses import dataclass, replace

from domain.client.exposures import sets_done
from domain.equipment import Equipment
from domain.exercises import describe
from domain.journal import ExerciseHold, WorkoutRecord
from domain.memory import ClientMemory, Swap
from domain.names import name_key
from domain.programme import Alternative, Prescription, Range, Workout
from domain.safety import is_near, loads_place
from domain.same import once
from domain.state import Client, ClientState


@dataclass(frozen=True, slots=True)
class Line:
    """One exercise to do. `instead_of` is the sheet's exercise that it replaces.

    One that is `held`, or `out_of_reach` as the client has not got what it is done with, is not done.
    """

    prescription: Prescription
    instead_of: str | None = None
    held: ExerciseHold | None = None
    out_of_reach: bool = False

    @property
    def exercise(self) -> str:
        """The exercise's name."""
        return self.prescription.exercise

    @property
    def is_aside(self) -> bool:
        """Whether it is not to be done until something changes: it hurts, or nothing is there for it."""
        return self.held is not None or self.out_of_reach


def lines_of(state: ClientState, workout: str) -> tuple[Line, ...]:
    """Return the lines of the workout of that name, in the sheet's order; none where there is no such."""
    stored = state.client.programme
    if stored is None:
        return ()
    for each in stored.programme.workouts:
        if each.name == workout:
            return _lines(state.client, state.memory.swaps, state.holds, each)
    return ()


@once
def _lines(
    client: Client, swaps: tuple[Swap, ...], holds: tuple[ExerciseHold, ...], workout: Workout
) -> tuple[Line, ...]:
    state = ClientState(client, ClientMemory(swaps=swaps), holds=holds)  # all that the lines hang on
    return tuple(line_for(state, prescription) for prescription in workout.prescriptions)


def line_named(state: ClientState, workout: str, exercise: str) -> Line | None:
    """Return the line of the workout for `exercise`; None where the workout does not have it."""
    return next((line for line in lines_of(state, workout) if line.exercise == exercise), None)


def is_of(state: ClientState, workout: str, exercise: str) -> bool:
    """Return whether the sheet has `exercise` in the workout, be it in place of another."""
    stored = state.client.programme
    swapped_for = {swap.exercise for swap in state.memory.swaps if swap.instead == exercise}
    return stored is not None and any(
        exercise == line.exercise
        or line.exercise in swapped_for
        or any(exercise == other.exercise for other in line.alternatives)
        for each in stored.programme.workouts
        if each.name == workout
        for line in each.prescriptions
    )


def done_instead_of(state: ClientState, exercise: str) -> tuple[str, ...]:
    """Return what this client does at present in place of the sheet's `exercise`."""
    stored = state.client.programme
    lines = (
        [line for each in stored.programme.workouts for line in lines_of(state, each.name)] if stored else []
    )
    return tuple(dict.fromkeys(line.exercise for line in lines if line.instead_of == exercise))


def left_out(state: ClientState, record: WorkoutRecord | None) -> tuple[str, ...]:
    """Return what is left out of the workout `record`, or where that is None, of the next one to begin."""
    return state.memory.left_out if record is None else record.skipped


def not_to_do(state: ClientState, record: WorkoutRecord | None) -> tuple[str, ...]:
    """Return what is left out of that workout, by the client or, until further word, by the coach."""
    return (*left_out(state, record), *state.memory.kept_out)


def is_left_out(line: Line, out: Container[str]) -> bool:
    """Return whether `line` is left out, by its own name or that of the exercise it replaces."""
    return line.exercise in out or (line.instead_of is not None and line.instead_of in out)


def sets_left(state: ClientState, record: WorkoutRecord, line: Line) -> int:
    """Return how many sets of `line` are still to be done in that workout; 0 where it is left out or aside.

    Sets of an exercise in its place count too.
    """
    if line.is_aside or is_left_out(line, not_to_do(state, record)):
        return 0
    done = sum(sets_done(state, record, name) for name in (line.exercise, *in_its_place(line)))
    return max(0, line.prescription.sets - done)


def in_its_place(line: Line) -> tuple[str, ...]:
    """Return the exercises whose sets count for `line` as well: the one it replaces, or its alternatives."""
    if line.instead_of is not None:
        return (line.instead_of,)
    return tuple(alternative.exercise for alternative in line.prescription.alternatives)


def line_for(state: ClientState, prescription: Prescription) -> Line:
    """Return what this client does of a prescription."""
    equipment = state.client.equipment
    chosen = swapped(state, prescription) or lacking(equipment, prescription)
    line = instead(prescription, chosen) if chosen else Line(prescription)
    if cannot_do(equipment, line.exercise):
        line = replace(line, out_of_reach=True)
    held = hold_in_place_of(state, prescription, line.exercise)
    if held is None:
        return line
    for alternative in prescription.alternatives:
        is_free = hold_in_place_of(state, prescription, alternative.exercise) is None
        is_free = is_free and not cannot_do(equipment, alternative.exercise)
        if spares(alternative, held.where) and is_free:
            return instead(prescription, alternative)
    return replace(line, held=held)


def hold_in_place_of(state: ClientState, prescription: Prescription, exercise: str) -> ExerciseHold | None:
    """Return what keeps `exercise` aside in this place of the sheet.

    That is its own hold, or that of another which can stand in the same place, where it loads what hurts and
    is not what the sheet means to spare it with.
    """
    own = hold_on(state, exercise)
    if own is not None:
        return own
    sparing = [each for each in prescription.alternatives if each.exercise == exercise]
    for other in (prescription.exercise, *(each.exercise for each in prescription.alternatives)):
        held = hold_on(state, other)
        if held is None or any(spares(each, held.where) for each in sparing):
            continue
        if loads_place(exercise, held.where):
            return held
    return None


def spares(alternative: Alternative, where: str) -> bool:
    """Return whether the sheet means `alternative` for pain at `where`: for that joint, or for one near it.

    Of a joint near it only where the alternative does not load the place, as far as the catalogue knows.
    """
    if alternative.why != "joint":
        return False
    if alternative.without == where:
        return True
    return is_near(alternative.without, where) and not loads_place(alternative.exercise, where)


def hold_on(state: ClientState, exercise: str) -> ExerciseHold | None:
    """Return the hold on `exercise`, if there is one."""
    for hold in state.holds:
        if hold.exercise == exercise:
            return hold
    return None


def caution_for(state: ClientState, exercise: str, instead_of: str | None = None) -> str | None:
    """Return a place that hurts and that `exercise`, which is not held, loads too; None where there is none.

    What the sheet means to be done `instead_of` the held exercise is meant to spare that place.
    """
    spared = {hold.where for hold in state.holds if hold.exercise == instead_of}
    if hold_on(state, exercise) is not None:
        return None
    places = (hold.where for hold in state.holds if hold.where not in spared)
    return next((where for where in places if loads_place(exercise, where)), None)


def swapped(state: ClientState, prescription: Prescription) -> Alternative | None:
    """Return what the coach has put in place of the prescribed exercise.

    Where the sheet has that elsewhere, its range there goes with it; else the range stays as prescribed.
    """
    for swap in state.memory.swaps:
        if swap.exercise == prescription.exercise:
            for alternative in prescription.alternatives:
                if alternative.exercise == swap.instead:
                    return alternative
            return Alternative(
                why="equipment",
                without="",
                exercise=swap.instead,
                range=range_elsewhere(state, swap.instead, prescription.range),
            )
    return None


def range_elsewhere(state: ClientState, exercise: str, otherwise: Range) -> Range:
    """Return the range that the sheet has for `exercise`, or where it has none that fits, `otherwise`."""
    stored = state.client.programme
    for workout in stored.programme.workouts if stored else ():
        for line in workout.prescriptions:
            others = ((each.exercise, each.range) for each in line.alternatives)
            for name, found in ((line.exercise, line.range), *others):
                if name == exercise and found.of == otherwise.of:
                    return found
    return otherwise


def lacking(equipment: Equipment, prescription: Prescription) -> Alternative | None:
    """Return the alternative for equipment that this client has not, one that can be done before others."""
    fitting = [
        each
        for each in prescription.alternatives
        if each.why == "equipment"
        and (lacks(equipment, each.without) or cannot_do(equipment, prescription.exercise))
    ]
    within_reach = (each for each in fitting if not cannot_do(equipment, each.exercise))
    return next(within_reach, fitting[0] if fitting else None)


def cannot_do(equipment: Equipment, exercise: str) -> bool:
    """Return whether the client has not got what `exercise` is done with: its own machine or the like."""
    implement = describe(exercise).implement
    return any(lacks(equipment, name) for name in (exercise, implement, f"{implement} machine"))


def lacks(equipment: Equipment, name: str) -> bool:
    """Return whether the client has not got what bears that name: equipment, or an exercise's own machine."""
    return name_key(name) in {name_key(each) for each in equipment.lacking}


def instead(prescription: Prescription, alternative: Alternative) -> Line:
    """Return the line with the alternative in place; rules for the first exercise do not carry over."""
    changed = prescription.model_copy(
        update={
            "exercise": alternative.exercise,
            "range": alternative.range,
            "counted": describe(alternative.exercise).counted,
            "add_load": None,
            "load_from": None,
            "ladder": None,
            "alternatives": (),
            "lowering_only": False,
        }
    )
    return Line(changed, instead_of=prescription.exercise)
