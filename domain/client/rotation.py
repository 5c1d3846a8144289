"""Which workout is in turn, and when; and which workout a reported set belongs to."""

from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import get_args

from domain.calendar import Schedule, next_day, workout_in_turn
from domain.client.draft import Draft
from domain.client.exposures import sets_done
from domain.client.lines import lines_of
from domain.journal import WorkoutRecord
from domain.outcome import WorkoutKept
from domain.programme import FixedDays, Weekday
from domain.state import ClientState

WEEKDAYS: tuple[Weekday, ...] = get_args(Weekday)


@dataclass(frozen=True, slots=True)
class Due:
    """The next workout in turn and its day, which lies in the past where it is overdue."""

    workout: str
    on: date


def due(state: ClientState, today: date) -> Due | None:
    """Return the next workout; None without a programme, in a pause without an end, or while barred."""
    stored, memory = state.client.programme, state.memory
    if stored is None or memory.barred or (memory.paused and memory.paused_until is None):
        return None
    schedule = stored.programme.schedule
    own = [record for record in state.workouts if record.programme == stored.number]
    turned = [record for record in own if record.state != "missed"]
    reckoned = [record for record in state.workouts if record.state != "skipped"]
    last = max((record.on for record in reckoned), default=None)
    computed = next_day(schedule, last_done=last, starts=state.client.starts, today=today)
    day = computed + timedelta(days=memory.extra_rest_days)
    name = name_on(schedule, computed, [record.name for record in turned])
    if memory.moved_to is not None:
        day, name = memory.moved_to, memory.moved_workout or name
    if memory.paused_until is not None:
        day = max(day, memory.paused_until)
    return Due(workout=name, on=day)


def catch_up(draft: Draft) -> Due | None:
    """Return the next workout; one whose day went by while nobody trained comes today, and is not missed."""
    coming = due(draft.state, draft.today)
    if coming is not None and coming.on < draft.today:
        draft.remember(moved_to=draft.today, moved_workout=coming.workout)
        coming = due(draft.state, draft.today)
    return coming


def keep_due(draft: Draft) -> None:
    """Remember the day of the next workout as it now is, for the coach's overview."""
    coming = due(draft.state, draft.today)
    on = coming.on if coming else None
    if on != draft.memory.due_on:
        draft.remember(due_on=on)


def name_on(schedule: Schedule, day: date, turned: list[str]) -> str:
    """Return the workout that comes after those `turned`, or that is fixed for the weekday of `day`."""
    if isinstance(schedule, FixedDays) and schedule.by_day:
        weekday = WEEKDAYS[day.weekday()]
        return schedule.order[schedule.days.index(weekday) if weekday in schedule.days else 0]
    return workout_in_turn(schedule.order, turned[-1] if turned else None, turned[:-1])


def open_workout(state: ClientState) -> WorkoutRecord | None:
    """Return the workout begun and not yet closed, if there is one."""
    for record in reversed(state.workouts):
        if record.state == "open":
            return record
    return None


def current_workout(state: ClientState, today: date) -> str | None:
    """Return the name of the workout that a message is about: the one under way, else the one in turn."""
    under_way = open_workout(state)
    if under_way is not None and not is_complete(state, under_way):
        return under_way.name
    coming = due(state, today)
    return coming.workout if coming else None


def is_complete(state: ClientState, record: WorkoutRecord) -> bool:
    """Return whether every exercise of that workout is done, skipped or on hold."""
    stored = state.client.programme
    if stored is None or record.programme != stored.number:
        return False
    return all(
        line.held is not None
        or line.exercise in record.skipped
        or sets_done(state, record, line.exercise) >= line.prescription.sets
        for line in lines_of(state, record.name)
    )


def workout_for(draft: Draft, on: date, exercises: tuple[str, ...]) -> WorkoutRecord:
    """Return the workout that sets of `exercises` done on the day `on` belong to, begun where there is none.

    It is the workout of that day; else the one under way, where it has not been left for another; else the
    workout of the rotation that holds most of the exercises, the one in turn where that leaves a choice.
    """
    state = draft.state
    of_day = [record for record in state.workouts if record.on == on and record.state != "skipped"]
    if of_day:
        record = of_day[-1]
        if record.state == "missed":
            record = replace(record, state="open")
            draft.change(WorkoutKept(record))
            draft.remember(missed_in_a_row=max(0, draft.memory.missed_in_a_row - 1))
        return record
    under_way = open_workout(state)
    if under_way is not None and under_way.on <= on and belongs(state, under_way, exercises):
        return under_way
    return begin(draft, best_fit(draft, exercises), on)


def belongs(state: ClientState, record: WorkoutRecord, exercises: tuple[str, ...]) -> bool:
    """Return whether `exercises` are still to be done in the workout under way."""
    open_lines = {
        line.exercise
        for line in lines_of(state, record.name)
        if sets_done(state, record, line.exercise) < line.prescription.sets
    }
    return any(exercise in open_lines for exercise in exercises)


def best_fit(draft: Draft, exercises: tuple[str, ...]) -> str:
    """Return the workout of the rotation that `exercises` fit best; the one in turn before any other."""
    state = draft.state
    coming = due(state, draft.today)
    stored = state.client.programme
    if stored is None:
        return ""
    names = [workout.name for workout in stored.programme.workouts]
    if coming is not None:
        names.sort(key=lambda name: name != coming.workout)

    def fitting(name: str) -> int:
        planned = {line.exercise for line in lines_of(state, name)}
        return sum(1 for exercise in exercises if exercise in planned)

    return max(names, key=fitting)


def begin(draft: Draft, name: str, on: date) -> WorkoutRecord:
    """Begin the workout `name` on that day, closing the one under way."""
    under_way = open_workout(draft.state)
    if under_way is not None:
        draft.change(WorkoutKept(replace(under_way, state="done")))
    stored = draft.client.programme
    closed = [
        record
        for record in draft.state.workouts
        if stored is not None and record.programme == stored.number and record.state in {"done", "skipped"}
    ]
    turn = len(stored.programme.schedule.order) if stored else 1
    record = WorkoutRecord(
        number=draft.number("last_workout"),
        programme=stored.number if stored else 0,
        name=name,
        on=on,
        state="open",
        round=len(closed) // turn + 1,
    )
    draft.change(WorkoutKept(record))
    draft.remember(moved_to=None, extra_rest_days=0, missed_in_a_row=0, paused=False, paused_until=None)
    return record
