"""Which workout is in turn, and when; which one a reported set belongs to; how one begins and ends."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import get_args

from domain.calendar import Schedule, local_day, next_day, workout_in_turn
from domain.client.draft import Draft
from domain.client.exposures import sets_done
from domain.client.lines import is_of, lines_of, sets_left
from domain.client.stalls import look_back
from domain.journal import WorkoutRecord
from domain.outcome import WorkoutKept
from domain.programme import FixedDays, Weekday
from domain.state import ClientState

WEEKDAYS: tuple[Weekday, ...] = get_args(Weekday)

BESIDE = ""
"""The name of a workout that is none of the programme's: exercises done beside it. It takes nobody's turn."""

FOUND_LATER = 0
"""The round of a workout that had been missed and then was trained after all."""


@dataclass(frozen=True, slots=True)
class Due:
    """The next workout in turn and its day, which lies in the past where it is overdue."""

    workout: str
    on: date


def due(state: ClientState, today: date) -> Due | None:
    """Return the next workout; None without a programme, in a pause without an end, or while barred."""
    memory = state.memory
    if memory.barred or (memory.paused and memory.paused_until is None):
        return None
    return in_turn(state, today)


def in_turn(state: ClientState, today: date) -> Due | None:
    """Return the next workout, whether there is training at present or not; None without a programme."""
    stored, memory = state.client.programme, state.memory
    if stored is None:
        return None
    schedule = stored.programme.schedule
    counting = [record for record in state.workouts if record.name != BESIDE]
    happened = days_of(state, counting)
    if memory.stands_for is not None:
        happened.append(memory.stands_for)
    computed = next_day(
        schedule,
        last_done=max(happened, default=None),
        starts=max(state.client.starts, memory.paused_until or state.client.starts),
        today=today,
    )
    day = computed + timedelta(days=memory.extra_rest_days)
    name = name_on(schedule, computed, [record.name for record in counting if record.state != "missed"])
    if memory.moved_to is not None:
        day, name = memory.moved_to, memory.moved_workout or name
    if memory.rest_on is not None and open_workout(state) is not None:
        day = max(day, memory.rest_on + timedelta(days=1))
    if memory.paused_until is not None:
        day = max(day, memory.paused_until)
    return Due(workout=name, on=day)


def days_of(state: ClientState, records: Iterable[WorkoutRecord]) -> list[date]:
    """Return the days of workouts, and with them those on which the rest of one was done."""
    records = tuple(records)
    numbers = {record.number for record in records}
    return [record.on for record in records] + [
        entry.set.on for entry in state.entries if entry.workout in numbers and entry.set.on is not None
    ]


def catch_up(draft: Draft) -> Due | None:
    """Return the next workout; one whose day went by while nobody trained comes today, and is not missed.

    Fixed days stay where they are: there the next of them comes.
    """
    coming = due(draft.state, draft.today)
    stored = draft.client.programme
    if coming is None or stored is None or coming.on >= draft.today:
        return coming
    if isinstance(stored.programme.schedule, FixedDays) and draft.memory.moved_to is None:
        draft.remember(stands_for=draft.today - timedelta(days=1))
    else:
        draft.remember(moved_to=draft.today, moved_workout=coming.workout)
    return due(draft.state, draft.today)


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
    return next((record for record in reversed(state.workouts) if record.state == "open"), None)


def under_way(state: ClientState, today: date) -> WorkoutRecord | None:
    """Return the open workout in which something is still to be done.

    One of an earlier day is left behind once the next is due, unless its rest was moved on purpose.
    """
    record = open_workout(state)
    if record is None or is_complete(state, record):
        return None
    if record.on < today and state.memory.rest_on is None:
        coming = due(state, today)
        if coming is not None and coming.on <= today:
            return None
    return record


def is_complete(state: ClientState, record: WorkoutRecord) -> bool:
    """Return whether every exercise of that workout is done, left out or on hold."""
    return all(sets_left(state, record, line) == 0 for line in lines_of(state, record.name))


def day_told_of(draft: Draft) -> date:
    """Return the day that sets without a day are of.

    That is today, unless a workout under way has been told of only on later days than its own.
    """
    record = under_way(draft.state, draft.today)
    if record is None or record.on >= draft.today or draft.memory.rest_on is not None:
        return draft.today
    told = (local_day(each.at, draft.zone) for each in draft.state.entries if each.workout == record.number)
    return record.on if all(day > record.on for day in told) else draft.today


def workout_for(draft: Draft, on: date, exercises: tuple[str, ...]) -> WorkoutRecord:
    """Return the workout that sets of `exercises` done on the day `on` belong to, begun where there is none.

    It is the workout of that day that has one of them; else the one of that day that is under way; else the
    one under way from before, where one of them is still to be done; else the workout of the programme that
    holds most of them, the one in turn where that leaves a choice. What is in no workout goes to whichever
    there is on that day.
    """
    state = draft.state
    of_day = [record for record in reversed(state.workouts) if record.on == on]
    begun = under_way(state, draft.today)
    fitting = next((record for record in of_day if holds(state, record.name, exercises)), None)
    if fitting is None and begun in of_day:
        fitting = begun
    if fitting is None and begun is not None and begun.on <= on and awaits(state, begun, exercises):
        fitting = begun
    name = best_fit(draft, exercises)
    if fitting is None and name == BESIDE and of_day:
        fitting = of_day[0]
    if fitting is None:
        return begin(draft, name, on)
    return found_later(draft, fitting) if fitting.state == "missed" else fitting


def found_later(draft: Draft, missed: WorkoutRecord) -> WorkoutRecord:
    """Open a workout again that had been taken for missed."""
    record = replace(missed, state="open", round=FOUND_LATER)
    draft.change(WorkoutKept(record))
    draft.remember(missed_in_a_row=max(0, draft.memory.missed_in_a_row - 1))
    trained_again(draft)
    return record


def trained_again(draft: Draft) -> None:
    """What was asked and told of missed workouts is over."""
    draft.drop_question(draft.question("missed"))
    draft.settle(*(alert for alert in draft.state.alerts if alert.reason == "missed"))


def holds(state: ClientState, workout: str, exercises: Iterable[str]) -> bool:
    """Return whether the workout of that name has one of `exercises`."""
    return any(is_of(state, workout, exercise) for exercise in exercises)


def awaits(state: ClientState, record: WorkoutRecord, exercises: Iterable[str]) -> bool:
    """Return whether one of `exercises` is still to be done in the workout under way."""
    return any(
        line.exercise in exercises and sets_done(state, record, line.exercise) < line.prescription.sets
        for line in lines_of(state, record.name)
    )


def best_fit(draft: Draft, exercises: tuple[str, ...]) -> str:
    """Return the workout with most of `exercises`, of equals the one in turn; `BESIDE` where none has any."""
    coming = in_turn(draft.state, draft.today)
    stored = draft.client.programme
    names = [workout.name for workout in stored.programme.workouts] if stored else []
    if coming is not None:
        names.sort(key=lambda name: name != coming.workout)

    def fitting(name: str) -> int:
        return sum(1 for exercise in exercises if is_of(draft.state, name, exercise))

    best = max(names, key=fitting, default=BESIDE)
    return best if best != BESIDE and fitting(best) else BESIDE


def begin(draft: Draft, name: str, on: date) -> WorkoutRecord:
    """Begin the workout `name` on that day.

    It closes the one under way. One told of after a later workout has begun is closed at once.
    """
    opened = open_workout(draft.state)
    latest = max((record.on for record in draft.state.workouts), default=on)
    in_programme = name != BESIDE
    is_latest = on >= latest
    if opened is not None and is_latest and in_programme:
        close(draft, opened)
    coming = due(draft.state, draft.today)
    stored = draft.client.programme
    takes_turn = in_programme and is_latest
    record = WorkoutRecord(
        number=draft.number("last_workout"),
        programme=stored.number if stored else None,
        name=name,
        on=on,
        state="open" if takes_turn else "done",
        round=round_of(draft.state),
        skipped=draft.memory.left_out if takes_turn and coming is not None and coming.workout == name else (),
    )
    draft.change(WorkoutKept(record))
    if takes_turn:
        settle_plans(draft, record, coming)
    return record


def settle_plans(draft: Draft, record: WorkoutRecord, coming: Due | None) -> None:
    """Forget what had been planned for the workout that has now begun, while `coming` was to come."""
    memory = draft.memory
    stored = draft.client.programme
    if coming is not None and record.on < coming.on and not memory.missed_in_a_row:
        fixed = stored is not None and isinstance(stored.programme.schedule, FixedDays)
        draft.remember(stands_for=coming.on if fixed else None)
    if memory.moved_to is not None and (memory.moved_to <= record.on or memory.moved_workout == record.name):
        draft.remember(moved_to=None, moved_workout=None)
    draft.remember(extra_rest_days=0, rest_on=None, left_out=(), missed_in_a_row=0)
    if memory.paused and memory.paused_until is None and record.on == draft.today:
        draft.remember(paused=False)
    trained_again(draft)


def round_of(state: ClientState) -> int:
    """Return the round of the rotation that a workout begun now belongs to, from 1."""
    stored = state.client.programme
    return len(workouts_closed(state)) // len(stored.programme.schedule.order) + 1 if stored else 1


def workouts_closed(state: ClientState) -> tuple[WorkoutRecord, ...]:
    """Return the workouts of the present programme that have had their turn, oldest first."""
    stored = state.client.programme
    return tuple(
        record
        for record in state.workouts
        if stored is not None
        and record.programme == stored.number
        and record.name != BESIDE
        and record.state in {"done", "skipped"}
    )


def close(draft: Draft, workout: WorkoutRecord) -> None:
    """Close a workout; where it ends a round, see whether a review is due."""
    shut(draft, workout)
    look_back(draft, workouts_closed(draft.state))


def shut(draft: Draft, workout: WorkoutRecord) -> None:
    """Let a workout be over.

    One in which nothing was done counts as missed, unless the client left all of it out, or said that it was
    done after all.
    """
    done = any(entry.workout == workout.number for entry in draft.state.entries)
    if done or workout.round == FOUND_LATER:
        over = replace(workout, state="done")
    else:
        over = replace(workout, state="skipped" if workout.skipped else "missed")
    draft.change(WorkoutKept(over))
    draft.remember(rest_on=None)
