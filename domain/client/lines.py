"""The lines of a workout as they stand for this client: swaps, missing equipment and holds settled."""

from dataclasses import dataclass

from domain.equipment import Equipment
from domain.exercises import describe
from domain.journal import ExerciseHold
from domain.programme import Alternative, Prescription
from domain.state import ClientState


@dataclass(frozen=True, slots=True)
class Line:
    """One exercise to do. `instead_of` is the sheet's exercise that it replaces; a held one is not done."""

    prescription: Prescription
    instead_of: str | None = None
    held: ExerciseHold | None = None

    @property
    def exercise(self) -> str:
        """The exercise's name."""
        return self.prescription.exercise


def lines_of(state: ClientState, workout: str) -> tuple[Line, ...]:
    """Return the lines of the workout of that name, in the sheet's order; none where there is no such."""
    stored = state.client.programme
    if stored is None:
        return ()
    for each in stored.programme.workouts:
        if each.name == workout:
            return tuple(line_for(state, prescription) for prescription in each.prescriptions)
    return ()


def line_for(state: ClientState, prescription: Prescription) -> Line:
    """Return what this client does of a prescription."""
    chosen = swapped(state, prescription) or lacking(state.client.equipment, prescription)
    line = instead(prescription, chosen) if chosen else Line(prescription)
    held = hold_on(state, line.exercise)
    if held is None:
        return line
    for alternative in prescription.alternatives:
        spares = alternative.why == "joint" and alternative.without == held.where
        if spares and hold_on(state, alternative.exercise) is None:
            return instead(prescription, alternative)
    return Line(line.prescription, line.instead_of, held)


def hold_on(state: ClientState, exercise: str) -> ExerciseHold | None:
    """Return the hold on `exercise`, if there is one."""
    for hold in state.holds:
        if hold.exercise == exercise:
            return hold
    return None


def swapped(state: ClientState, prescription: Prescription) -> Alternative | None:
    """Return the alternative that the coach has put in place of the prescribed exercise."""
    for swap in state.memory.swaps:
        if swap.exercise == prescription.exercise:
            for alternative in prescription.alternatives:
                if alternative.exercise == swap.instead:
                    return alternative
    return None


def lacking(equipment: Equipment, prescription: Prescription) -> Alternative | None:
    """Return the alternative for equipment that this client has not."""
    missing = {name.casefold().rstrip("s") for name in equipment.lacking}
    for alternative in prescription.alternatives:
        if alternative.why == "equipment" and alternative.without.casefold().rstrip("s") in missing:
            return alternative
    return None


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
