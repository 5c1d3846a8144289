"""A workout as this client is told of it: what to aim for and what to beat."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from itertools import pairwise
from typing import Literal

from domain.client.exposures import days_trained, history, last_set_of, set_to_beat
from domain.client.lines import Line, caution_for, is_left_out, lines_of, not_to_do, sets_left
from domain.comparison import Body, best_of, extra_kg
from domain.equipment import plates_per_side
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import WorkoutRecord
from domain.layoff import SHORTEST, built_back_to, longest_break, share_after
from domain.parts import Plan
from domain.plan_lines import PlanChange, PlanLine
from domain.programme import Rotation
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.target import NoTarget, Target, easing_from, next_target
from domain.target_reasons import LowerLoad, MuchTooLight
from domain.units import to_kg
from domain.warm_up import Ramp, ToDo, ramps


@dataclass(frozen=True, slots=True)
class Ahead:
    """What is aimed for in one exercise of a workout that has begun or is to come, and what to beat.

    `past` are those before that workout, oldest first.
    """

    past: tuple[Exposure, ...]
    aim: Target | NoTarget
    back_to: TrainingSet | None = None
    """What was done before a break, as long as it is being built back to."""

    @property
    def target(self) -> TrainingSet | None:
        """What is aimed for, where there is anything."""
        return self.aim.as_set() if isinstance(self.aim, Target) else None

    @property
    def to_beat(self) -> TrainingSet | None:
        """The set to beat, where there is one."""
        return set_to_beat(self.past[-1]) if self.past else None


def ahead(state: ClientState, workout: str, line: Line, on: date, record: WorkoutRecord | None) -> Ahead:
    """Return what to aim for in `line` on the day `on`, in the workout `record` where it has begun."""
    past = history(state, workout, line.exercise, before=record)
    return Ahead(
        past, target_for(state, line, past, on if record is None else record.on), back_to(state, past)
    )


def target_for(state: ClientState, line: Line, past: tuple[Exposure, ...], on: date) -> Target | NoTarget:
    """Return what to aim for in `line` on the day `on`, after the exposures `past` of its kind."""
    client, prescription = state.client, line.prescription
    relative = prescription.load_from
    return next_target(
        prescription,
        past,
        unit=client.unit,
        equipment=client.equipment,
        exercise=describe(line.exercise),
        body_mass_kg=body_mass_kg(state),
        last_of_other=last_set_of(state, relative.exercise) if relative else None,
        held=line.held is not None,
        easing=easing_of(state, line.exercise, past),
        days_away=days_away(state, past, on),
        ill=was_ill(state, past),
        back_to=back_to(state, past),
    )


def can_be_eased(state: ClientState, exercise: str, past: Sequence[Exposure], on: date) -> bool:
    """Return whether what is aimed for on the day `on`, after the exposures `past`, may be eased."""
    asked = easing_of(state, exercise, past)
    return easing_from(asked, days_away(state, past, on), ill=was_ill(state, past)) is not None


def reckoned_from(state: ClientState, exercise: str, past: Sequence[Exposure]) -> TrainingSet | None:
    """Return what a target after the exposures `past` is reckoned from: the best set of the last of them."""
    if not past:
        return None
    return best_of(past[-1].counting, Body(body_mass_kg(state), describe(exercise).body_share))


def corrected_at_once(state: ClientState, line: Line, past: tuple[Exposure, ...], on: date) -> Target | None:
    """Return what to aim for in the next set of the very first time, where its load has proved wrong.

    `past` is that first exposure as far as it was done. Later the aim stands for a whole workout.
    """
    target = target_for(state, line, past, on)
    is_wrong = isinstance(target, Target) and isinstance(target.reason, MuchTooLight | LowerLoad)
    return target if isinstance(target, Target) and is_wrong and len(past) == 1 else None


def easing_of(state: ClientState, exercise: str, past: Sequence[Exposure]) -> Decimal | None:
    """Return the share of the last load to begin with after the exposures `past`, where it is eased.

    In each workout the easing is for the first exposure after it was decided on; from there it is built back.
    """
    for easing in reversed(state.memory.easings):
        if easing.exercise == exercise and past and past[-1].on <= easing.since:
            return easing.factor
    return None


def body_mass_kg(state: ClientState) -> Decimal | None:
    """Return the client's body mass in kilograms, or None where it is not known."""
    client = state.client
    return None if client.body_mass is None else to_kg(client.body_mass, client.unit)


def days_away(state: ClientState, past: Sequence[Exposure], on: date) -> int:
    """Return for how many days in a row there was no training between the last of `past` and the day `on`.

    Days that the schedule leaves between two workouts anyway are none.
    """
    return days_between(state, past[-1].on, on) if past else 0


def days_between(state: ClientState, since: date, until: date) -> int:
    """Return for how many days in a row there was no training between two days, as `days_away` counts."""
    days = longest_break(days_trained(state), since, until)
    stored = state.client.programme
    schedule = stored.programme.schedule if stored else None
    return 0 if isinstance(schedule, Rotation) and days <= schedule.every_days else days


def was_ill(state: ClientState, past: Sequence[Exposure]) -> bool:
    """Return whether the client has been ill since the last of `past`, or on its day."""
    return bool(past) and state.memory.ill_since(past[-1].on) is not None


def back_to(state: ClientState, past: Sequence[Exposure]) -> TrainingSet | None:
    """Return what was done before time away or an illness, as long as it is being built back to."""
    ill = [state.memory.ill_since(each.on) is not None for each in past]
    lightened = [
        (ill[at] and not ill[at + 1])
        or ((each.on - before.on).days >= SHORTEST and share_after(days_between(state, before.on, each.on)))
        for at, (before, each) in enumerate(pairwise(past))
    ]
    return built_back_to(past, (False, *map(bool, lightened)))


def plan_of(state: ClientState, workout: str, on: date, record: WorkoutRecord | None = None) -> Plan:
    """Return the workout with what to aim for and what to beat, in the sheet's order.

    Where it has begun, as `record`, only what is left of it.
    """
    out = not_to_do(state, record)
    lines = lines_of(state, workout)
    kept = [
        line
        for line in lines
        if not is_left_out(line, out) and (line.is_aside or record is None or sets_left(state, record, line))
    ]
    planned = tuple(
        plan_line(state, workout, line, on, record, paired=is_paired(line, lines, kept)) for line in kept
    )
    before = warm_ups(state, planned, on)
    return Plan(
        workout=workout,
        on=on,
        lines=tuple(
            line.model_copy(update={"warm_up": each}) for line, each in zip(planned, before, strict=True)
        ),
        changes=changes_to_tell(state, on),
        by=state.client.coach.name,
    )


TOLD_IN_PLANS: dict[str, Literal["swap", "leave out", "back"]] = {
    "swap": "swap",
    "leave out": "leave out",
    "back": "back",
}
"""The changes of the coach's that a client hears of in the next plan; of the others at once."""


def changes_to_tell(state: ClientState, on: date) -> tuple[PlanChange, ...]:
    """Return what the coach has changed that the client has not heard of before the day `on`."""
    new = [
        each
        for each in state.memory.by_coach
        if each.what in TOLD_IN_PLANS and (each.told_on is None or each.told_on == on)
    ]
    last = {each.exercise: each for each in new}
    # What went and came back before the client heard of it is no news.
    unheard = {each.exercise for each in new if each.what != "back"}
    return tuple(
        PlanChange(what=TOLD_IN_PLANS[each.what], exercise=each.exercise, instead=each.instead)
        for each in last.values()
        if each.what != "back" or each.exercise not in unheard
    )


def warm_ups(
    state: ClientState, lines: Sequence[PlanLine], on: date, *, every: bool = False
) -> tuple[tuple[Ramp, ...], ...]:
    """Return the ramps to do before each of `lines` on the day `on`: those worth their time, or `every`."""
    to_do = [ToDo(line.target, into_next=line.straight_into_next, begun=line.done > 0) for line in lines]
    done = [entry.set for entry in state.entries if entry.set.on == on]
    return ramps(to_do, state.client.equipment, done, every=every)


def is_paired(line: Line, lines: Sequence[Line], kept: Sequence[Line]) -> bool:
    """Return whether `line` goes straight into the next of the sheet: where both of them are to be done."""
    if not line.prescription.straight_into_next or line.is_aside:
        return False
    following = lines[lines.index(line) + 1]
    return following in kept and not following.is_aside


def plan_line(
    state: ClientState, workout: str, line: Line, on: date, record: WorkoutRecord | None, *, paired: bool
) -> PlanLine:
    """Return one line of the plan."""
    prescription = line.prescription
    is_ahead = ahead(state, workout, line, on, record)
    aim = None if line.out_of_reach else is_ahead.target
    done = 0 if record is None or line.is_aside else line.prescription.sets - sets_left(state, record, line)
    return PlanLine(
        exercise=line.exercise,
        range=prescription.range,
        sets=prescription.sets,
        done=done,
        lowering_only=prescription.lowering_only,
        stop_short=prescription.stop_short,
        straight_into_next=paired,
        target=aim,
        reason=is_ahead.aim.reason if aim is not None and isinstance(is_ahead.aim, Target) else None,
        last=reckoned_from(state, line.exercise, is_ahead.past) if aim is not None else None,
        lighter=aim is not None and is_lighter(aim, is_ahead.past),
        to_beat=is_ahead.to_beat,
        plates_per_side=plates_for(state, aim),
        cues=prescription.cues,
        instead_of=line.instead_of,
        held_for=line.held.where if line.held else None,
        out_of_reach=line.out_of_reach,
        find_first_load=not line.is_aside and aim is None and not done,
        first_time=aim is not None and not is_ahead.past and not done,
        back_to=is_ahead.back_to if aim is not None else None,
        caution=caution_for(state, line.exercise, line.instead_of) if not line.is_aside else None,
    )


def is_lighter(aim: TrainingSet, past: Sequence[Exposure]) -> bool:
    """Return whether the load of `aim` is less than that of the last exposure's heaviest set."""
    return bool(past) and extra_kg(aim) < extra_kg(set_to_beat(past[-1]))


def plates_for(state: ClientState, aim: TrainingSet | None) -> tuple[Decimal, ...] | None:
    """Return the plates for each side of the bar, where the exercise is done with one."""
    if aim is None or aim.load_kind != "total" or describe(aim.exercise).implement != "barbell":
        return None
    return plates_per_side(aim.load, aim.unit, state.client.equipment)
