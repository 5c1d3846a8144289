"""Why the last verdict and the target of an exercise are what they are, reckoned from the state as it is."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from domain.client.draft import Draft
from domain.client.exposures import history, moment, sets_done
from domain.client.lines import Line, hold_on, is_left_out, line_named, lines_of, not_to_do
from domain.client.plan import ahead, corrected_at_once, target_for
from domain.client.rotation import due
from domain.client.understanding import of_today, workout_at_hand, workout_meant
from domain.client.verdicts import aimed, aimed_next, verdict_on, was_eased
from domain.entry_order import told
from domain.explanation import Aimed, Explanation
from domain.exposure import Exposure
from domain.journal import Entry, WorkoutRecord
from domain.state import ClientState


@dataclass(frozen=True, slots=True)
class Spot:
    """An exercise in a workout: of `record`, where sets of it stand there, else of the one to come."""

    workout: str
    exercise: str
    record: WorkoutRecord | None = None


def explain(draft: Draft, spot: Spot) -> Explanation | None:
    """Return the reasons of a spot; None where there is nothing to explain. What is on hold has no other."""
    state = draft.state
    line = line_named(state, spot.workout, spot.exercise)
    hold = line.held if line is not None else hold_on(state, spot.exercise)
    if hold is not None:
        return Explanation(spot.exercise, held=(hold.where, hold.side))
    if spot.record is None:
        if line is None or line.out_of_reach:
            return None
        return Explanation(spot.exercise, aimed=_planned(draft, spot.workout, line))
    past = history(state, spot.workout, spot.exercise, until=spot.record)
    verdict = verdict_on(state, past)
    aim = target_for(state, line, past[:-1], spot.record.on) if line is not None and past[1:] else None
    return Explanation(
        spot.exercise,
        verdict=verdict,
        eased=was_eased(state, past, verdict, aim),
        aimed=None if line is None else _after(draft, spot.record, line, past),
    )


def _planned(draft: Draft, workout: str, line: Line) -> Aimed:
    coming = due(draft.state, draft.today)
    on = draft.today if coming is None or coming.workout != workout else max(coming.on, draft.today)
    is_ahead = ahead(draft.state, workout, line, on, of_today(draft, workout))
    return aimed(draft.state, "this time", line, is_ahead.aim, is_ahead.past)


def _after(draft: Draft, record: WorkoutRecord, line: Line, past: tuple[Exposure, ...]) -> Aimed | None:
    """Return what was to be aimed for after the sets of `record`, the last of `past`: next set, next time."""
    state, earlier = draft.state, past[:-1]
    if sets_done(state, record, line.exercise) >= line.prescription.sets or record.on != draft.today:
        return aimed_next(state, line, history(state, record.name, line.exercise), draft.today)
    if not earlier:
        target = corrected_at_once(state, line, past, record.on)
        return None if target is None else aimed(state, "next set", line, target, past)
    return aimed(state, "next set", line, target_for(state, line, earlier, record.on), earlier)


def last_told(draft: Draft) -> tuple[Spot, ...]:
    """Return what was told last: the exercises of the last record, or the plan where it was shown since."""
    entries, plan = told(draft.state), planned_now(draft)
    if plan and not any(entry.set.on == draft.today for entry in entries):
        return plan
    last = max(entries, key=lambda each: (each.at, each.message, each.number), default=None)
    return spots_of(draft.state, [each for each in entries if last and each.message == last.message])


def planned_now(draft: Draft) -> tuple[Spot, ...]:
    """Return what is still to be done in the workout under way, or in the one whose plan was told last.

    Nothing where sets were told of since that plan.
    """
    workout, record = workout_at_hand(draft)
    shown = draft.memory.reminded_on
    if record is None and (shown is None or shown <= last_trained(draft.state)):
        return ()
    out = not_to_do(draft.state, record)
    return tuple(
        Spot(workout, line.exercise)
        for line in lines_of(draft.state, workout)
        if not is_left_out(line, out) and not (record and sets_done(draft.state, record, line.exercise))
    )


def last_trained(state: ClientState) -> date:
    """Return the day of the latest set; the first of all days where there is none."""
    return max((entry.set.on for entry in state.entries if entry.set.on), default=date.min)


def spots_of(state: ClientState, entries: Iterable[Entry]) -> tuple[Spot, ...]:
    """Return the spots of recorded sets, in their order."""
    records = {record.number: record for record in state.workouts}
    told = dict.fromkeys((entry.workout, entry.set.exercise) for entry in entries)
    return tuple(
        Spot(records[number].name, exercise, records[number])
        for number, exercise in told
        if number in records
    )


def latest_of_each(state: ClientState) -> tuple[Spot, ...]:
    """Return each exercise in the workout in which it was done last, the latest first."""
    latest: dict[str, Spot] = {}
    for record in sorted(state.workouts, key=moment, reverse=True):
        for spot in spots_of(state, [entry for entry in state.entries if entry.workout == record.number]):
            latest.setdefault(spot.exercise, spot)
    return tuple(latest.values())


def spot_named(draft: Draft, exercise: str) -> Spot:
    """Return where `exercise` was last told of: in the plan at hand, when done, or in what is to come."""
    known = (*planned_now(draft), *latest_of_each(draft.state))
    found = next((spot for spot in known if spot.exercise == exercise), None)
    return found or Spot(workout_meant(draft, (exercise,))[0], exercise)
