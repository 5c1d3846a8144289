"""In what a client went beyond the sheet in one workout, as the journal shows it.

What was to be aimed for is reckoned as the plans now stand, so it is right for a workout of these days only.
"""

from collections.abc import Iterator
from datetime import date, datetime

from domain.client.exposures import history, moment
from domain.client.lines import instead, is_of, line_named
from domain.client.plan import ahead, body_mass_kg
from domain.client.rotation import BESIDE
from domain.comparison import Body
from domain.eagerness import NotOnSheet, OverEager, over_eager
from domain.exercises import describe
from domain.journal import WorkoutRecord
from domain.loading import Loading
from domain.parts import Eager
from domain.programme import Prescription
from domain.rest_days import SameAgain, TooSoon, Trained, same_again, too_soon
from domain.state import ClientState
from domain.values import facts_of

MOST_LOOKED_AT = 12
"""How many workouts back a workout's rest is looked for; those missed have none. The house's own choice."""

Found = OverEager | TooSoon | SameAgain


def matters_in(state: ClientState, record: WorkoutRecord, at: datetime) -> Iterator[Eager]:
    """Give all in which the client went beyond the sheet in that workout, which is of the present sheet."""
    stored = state.client.programme
    exercises = exercises_in(state, record)
    if stored is None or not exercises:
        return
    earlier = trained_before(state, moment(record))
    schedule = stored.programme.schedule
    if record.name != BESIDE:
        early = too_soon(schedule, record.name, record.on, earlier)
        if early is not None:
            yield eager(at, early, record)
    for exercise in exercises:
        if record.name == BESIDE:
            again = same_again(schedule, exercise, record.on, earlier)
            yield eager(at, again or NotOnSheet(exercise), record, exercise)
        else:
            for found in beyond_sheet(state, record, exercise):
                yield eager(at, found, record, exercise)


def beyond_sheet(state: ClientState, record: WorkoutRecord, exercise: str) -> tuple[OverEager, ...]:
    """Return in what one exercise of a workout went beyond the sheet."""
    client, about = state.client, describe(exercise)
    line = line_named(state, record.name, exercise)
    past = history(state, record.name, exercise, until=record)
    return over_eager(
        past[-1],
        past[-2] if len(past) > 1 else None,
        line.prescription if line else prescription_of(state, record.name, exercise),
        aim=ahead(state, record.name, line, record.on, record).target if line else None,
        loading=Loading(about, client.equipment, client.unit, Body(body_mass_kg(state), about.body_share)),
    )


def prescription_of(state: ClientState, workout: str, exercise: str) -> Prescription | None:
    """Return what the sheet says of an exercise that this client does not do at present; None: nothing."""
    stored = state.client.programme
    if stored is None or not is_of(state, workout, exercise):
        return None
    for prescription in stored.programme.workout(workout).prescriptions:
        if prescription.exercise == exercise:
            return prescription
        for alternative in prescription.alternatives:
            if alternative.exercise == exercise:
                return instead(prescription, alternative).prescription
    return None


def rest_until(state: ClientState, workout: str, on: date) -> date | None:
    """Return the first day with the rest behind it, where a workout on the day `on` would be too soon."""
    stored = state.client.programme
    earlier = trained_before(state, (on, state.memory.last_workout + 1))
    early = too_soon(stored.programme.schedule, workout, on, earlier) if stored else None
    return early.free_from if early else None


def trained_before(state: ClientState, when: tuple[date, int]) -> list[Trained]:
    """Return the workouts of the rotation done shortly before a day and number, oldest first.

    The day of one is the last on which something of it was done, as far as that lies before.
    """
    before = [each for each in state.workouts if each.name != BESIDE and moment(each) < when]
    found = []
    for each in before[-MOST_LOOKED_AT:]:
        entries = [entry for entry in state.entries if entry.workout == each.number]
        if entries:
            days = [entry.set.on for entry in entries if entry.set.on is not None]
            last = max((day for day in days if day <= when[0]), default=each.on)
            exercises = tuple(dict.fromkeys(entry.set.exercise for entry in entries))
            found.append(Trained(each.name, last, exercises))
    return sorted(found, key=lambda each: each.on)


def exercises_in(state: ClientState, record: WorkoutRecord) -> tuple[str, ...]:
    """Return the exercises of which sets stand in that workout, in the order done."""
    names = (each.set.exercise for each in state.entries if each.workout == record.number)
    return tuple(dict.fromkeys(names))


def eager(at: datetime, found: Found, record: WorkoutRecord, exercise: str | None = None) -> Eager:
    """Return what was found as it is kept and said."""
    facts = {name: fact for name, fact in facts_of(found).items() if name not in {"rule", "exercise"}}
    return Eager(rule=found.rule, exercise=exercise, workout=record.name, on=record.on, at=at, facts=facts)
