"""What a picture of a client's progress shows, from the state as it is."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import accumulate, pairwise
from math import inf
from zoneinfo import ZoneInfo

from domain.calendar import local_day
from domain.client.exposures import Dated, exposures_by_exercise, moment
from domain.client.lines import line_named, lines_of
from domain.client.plan import body_mass_kg, target_for
from domain.comparison import Body, extra_kg
from domain.exercises import describe
from domain.exposure import Exposure
from domain.layoff import share_after
from domain.pictures import Away, Mark, ProgrammeProgress, Progress
from domain.progress import Course, Spot, course_of, fits, value_on
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.target import Target

MOST_SHOWN = 60
"""How many of the last exposures a picture shows. The house's own choice."""
MOST_SMALL = 24
"""The same of one exercise among others."""


def progress_of(state: ClientState, exercise: str, today: date, *, small: bool = False) -> Progress | None:
    """Return how `exercise` has gone, in whichever workouts; None where it was never done.

    `today` is the client's local day.
    """
    done = exposures_by_exercise(state).get(exercise)
    return None if done is None else _progress(state, exercise, done, today, small=small)


def _progress(
    state: ClientState, exercise: str, done: Sequence[Dated], today: date, *, small: bool
) -> Progress:
    body = Body(body_mass_kg(state), describe(exercise).body_share)
    unit = state.client.unit
    shown = done[-(MOST_SMALL if small else MOST_SHOWN) :]
    aims = {} if small else _aims(state, exercise, done, shown)
    upcoming = _next_aim(state, exercise, done, today)
    exposures = [exposure for _, exposure in done]
    course = course_of(exposures, body, unit, [*aims.values(), *([upcoming] if upcoming else [])])
    scale, since = course.scale, shown[0][1].on
    recent = [each for each in course.spots if each.on >= since]
    next_aim = upcoming if upcoming is not None and fits(scale, upcoming) else None
    return Progress(
        client=state.client.name,
        exercise=exercise,
        scale=scale,
        points=tuple((each.on, round(each.value, 2)) for each in recent),
        first=recent[0],
        last=recent[-1],
        best=_best(course),
        times=len(course.spots),
        aims=tuple(
            (on, round(value_on(scale, one, body), 2)) for on, one in aims.items() if fits(scale, one)
        ),
        next_aim=next_aim,
        next_value=None if next_aim is None else round(value_on(scale, next_aim, body), 2),
        marks=_marks(state, exercise, since),
        away=_away(state, since, recent[-1].on),
        held_since=next((hold.since for hold in state.holds if hold.exercise == exercise), None),
        small=small,
    )


def programme_progress_of(
    state: ClientState, today: date, only: tuple[str, ...] = ()
) -> ProgrammeProgress | None:
    """Return how all exercises of the programme have gone, in its order; None where none was done yet.

    Without a programme they are all that were ever done. Where there is any in `only`, those are shown.
    """
    stored = state.client.programme
    workouts = stored.programme.workouts if stored else ()
    done = exposures_by_exercise(state)
    planned = [line.exercise for each in workouts for line in lines_of(state, each.name)]
    names = dict.fromkeys(only or planned or done)
    shown = tuple(_progress(state, name, done[name], today, small=True) for name in names if name in done)
    if not shown:
        return None
    return ProgrammeProgress(
        client=state.client.name,
        programme=stored.programme.name if stored else None,
        exercises=shown,
        waiting=tuple(name for name in names if name not in done),
    )


@dataclass(frozen=True, slots=True)
class Record:
    """What stands of one exercise: how often it was done, the best of all, and the days of each new best.

    `best` is None, and there are no days, where it was done in ways that cannot be compared.
    """

    exercise: str
    times: int
    best: Spot | None
    new_bests: frozenset[date]


def records_of(state: ClientState) -> tuple[Record, ...]:
    """Return what stands of each exercise ever done, in the order in which they were first done."""
    return tuple(
        _record(state, exercise, [exposure for _, exposure in done])
        for exercise, done in exposures_by_exercise(state).items()
    )


def _record(state: ClientState, exercise: str, exposures: Sequence[Exposure]) -> Record:
    body = Body(body_mass_kg(state), describe(exercise).body_share)
    course = course_of(exposures, body, state.client.unit, [])
    if course.scale.is_mixed:
        return Record(exercise, len(exposures), None, frozenset())
    highest = [-inf, *accumulate((each.value for each in course.spots), max)]
    new = (each.on for each, before in zip(course.spots, highest, strict=False) if each.value > before)
    first = course.spots[0].on
    return Record(exercise, len(exposures), _best(course), frozenset(on for on in new if on != first))


def _aims(
    state: ClientState, exercise: str, done: Sequence[Dated], shown: Sequence[Dated]
) -> dict[date, TrainingSet]:
    """Return by day what was to be aimed for in the exposures `shown`, as reckoned from those before each.

    Nothing is claimed of an exposure before which a remedy had changed the load.
    """
    changed = [each.since for each in state.memory.tried if each.exercise in {exercise, None}]
    aims: dict[date, TrainingSet] = {}
    for record, exposure in shown:
        line = line_named(state, record.name, exercise)
        past = tuple(
            other
            for earlier, other in done
            if earlier.name == record.name and moment(earlier) < moment(record)
        )
        if line is None or not past or any(past[-1].on <= since < exposure.on for since in changed):
            continue
        target = target_for(state, line, past, exposure.on)
        if isinstance(target, Target):
            aims[exposure.on] = target.as_set()
    return aims


def _next_aim(state: ClientState, exercise: str, done: Sequence[Dated], today: date) -> TrainingSet | None:
    """Return what is to be aimed for the next time in the workout in which it was done last."""
    last, _ = done[-1]
    line = line_named(state, last.name, exercise)
    if line is None or state.memory.barred:
        return None
    past = tuple(exposure for record, exposure in done if record.name == last.name)
    target = target_for(state, line, past, max(today, last.on))
    return target.as_set() if isinstance(target, Target) else None


def _best(course: Course) -> Spot:
    if course.scale.is_mixed:
        return max(course.spots, key=lambda each: (extra_kg(each.set), each.set.amount))
    return max(course.spots, key=lambda each: each.value)


def _marks(state: ClientState, exercise: str, since: date) -> tuple[Mark, ...]:
    zone = ZoneInfo(state.client.zone)
    stalls = [
        Mark(on=local_day(alert.at, zone), what="stall")
        for alert in state.alerts
        if alert.reason == "stall" and exercise in alert.exercises
    ]
    remedies = [
        Mark(on=each.on, what="remedy", remedy=each.remedy)
        for each in state.memory.tried
        if each.exercise in {exercise, None}
    ]
    return tuple(mark for mark in sorted((*stalls, *remedies), key=lambda each: each.on) if mark.on >= since)


def _away(state: ClientState, since: date, until: date) -> tuple[Away, ...]:
    """Return the layoffs between two days: none that the schedule leaves anyway, as it is at most days."""
    trained = sorted({record.on for record in state.workouts if record.state in {"open", "done"}})
    return tuple(
        Away(since=before + timedelta(days=1), until=after - timedelta(days=1))
        for before, after in pairwise(trained)
        if since <= before and after <= until and share_after((after - before).days) is not None
    )
