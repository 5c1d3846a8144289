"""A workout as this client is told of it: what to aim for and what to beat."""

from datetime import date
from decimal import Decimal

from domain.client.exposures import history, last_set_of, set_to_beat
from domain.client.lines import Line, lines_of
from domain.equipment import plates_per_side
from domain.exercises import describe
from domain.exposure import Exposure
from domain.parts import Plan, PlanLine
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.target import NoTarget, Target, next_target
from domain.units import to_kg


def target_for(
    state: ClientState, line: Line, past: tuple[Exposure, ...], *, days_away: int = 0
) -> Target | NoTarget:
    """Return what to aim for in `line` after the exposures `past` of its kind.

    `days_away` are the days since the client last trained at all: after some weeks it begins lighter.
    """
    client, prescription = state.client, line.prescription
    relative = prescription.load_from
    easing = next((each.factor for each in state.memory.easings if each.exercise == line.exercise), None)
    return next_target(
        prescription,
        past,
        unit=client.unit,
        equipment=client.equipment,
        exercise=describe(line.exercise),
        body_mass_kg=body_mass_kg(state),
        last_of_other=last_set_of(state, relative.exercise) if relative else None,
        held=line.held is not None,
        easing=easing,
        days_away=days_away,
    )


def body_mass_kg(state: ClientState) -> Decimal | None:
    """Return the client's body mass in kilograms, or None where it is not known."""
    client = state.client
    return None if client.body_mass is None else to_kg(client.body_mass, client.unit)


def plan_of(state: ClientState, workout: str, on: date) -> Plan:
    """Return the workout with what to aim for and what to beat, in the sheet's order."""
    away = days_away(state, on)
    return Plan(
        workout=workout,
        on=on,
        lines=tuple(plan_line(state, workout, line, away) for line in lines_of(state, workout)),
    )


def days_away(state: ClientState, on: date) -> int:
    """Return how many days before `on` the client last trained; 0 for who never has."""
    trained = [record.on for record in state.workouts if record.state in {"open", "done"} and record.on <= on]
    return (on - trained[-1]).days if trained else 0


def plan_line(state: ClientState, workout: str, line: Line, away: int) -> PlanLine:
    """Return one line of the plan."""
    prescription = line.prescription
    past = history(state, workout, line.exercise)
    target = target_for(state, line, past, days_away=away)
    aim = target.as_set() if isinstance(target, Target) else None
    return PlanLine(
        exercise=line.exercise,
        range=prescription.range,
        sets=prescription.sets,
        lowering_only=prescription.lowering_only,
        stop_short=prescription.stop_short,
        straight_into_next=prescription.straight_into_next,
        target=aim,
        to_beat=set_to_beat(past[-1]) if past else None,
        plates_per_side=plates_for(state, aim),
        cues=prescription.cues,
        instead_of=line.instead_of,
        held_for=line.held.where if line.held else None,
        find_first_load=line.held is None and aim is None,
    )


def plates_for(state: ClientState, aim: TrainingSet | None) -> tuple[Decimal, ...] | None:
    """Return the plates for each side of the bar, where the exercise is done with one."""
    if aim is None or aim.load_kind != "total" or describe(aim.exercise).implement != "barbell":
        return None
    return plates_per_side(aim.load, aim.unit, state.client.equipment)
