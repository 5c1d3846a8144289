"""Which workout is in turn, and when; and which one is under way."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import NamedTuple

from domain.calendar import Schedule, next_day, next_slot, rested, workout_in_turn, workout_of_day
from domain.client.draft import Draft
from domain.client.lines import lines_of, sets_left
from domain.journal import Entry, WorkoutRecord
from domain.programme import FixedDays
from domain.same import once
from domain.state import ClientState

BESIDE = ""
"""The name of a workout that is none of the programme's: exercises done beside it. It takes nobody's turn."""


@dataclass(frozen=True, slots=True)
class Due:
    """The next workout in turn and its day, which lies in the past where it is overdue.

    `instead_of` is its own fixed day, where the rest after a workout that was late has put it off.
    """

    workout: str
    on: date
    instead_of: date | None = None


def due(state: ClientState, today: date) -> Due | None:
    """Return the next workout; None without a programme, in a pause without an end, or while barred or
    joining."""
    memory, ahead = state.memory, state.memory.pause_ahead
    if memory.barred or memory.joining is not None or (memory.paused and memory.paused_until is None):
        return None
    coming = in_turn(state, today)
    never_ends = ahead is not None and ahead.until is None and coming is not None and coming.on >= ahead.since
    return None if never_ends else coming


def in_turn(state: ClientState, today: date) -> Due | None:
    """Return the next workout, whether there is training at present or not; None without a programme.

    One that falls into a pause to come is on the day of the return.
    """
    ahead = state.memory.pause_ahead
    coming = in_turn_after(state, today, state.memory.paused_until)
    if ahead is None or ahead.until is None or coming is None or coming.on < ahead.since:
        return coming
    return in_turn_after(state, today, ahead.until)


@once
def in_turn_after(state: ClientState, today: date, away_until: date | None) -> Due | None:
    """Return the next workout of somebody who is away until that day; None without a programme."""
    stored, memory = state.client.programme, state.memory
    if stored is None:
        return None
    schedule = stored.programme.schedule
    counting = [record for record in state.workouts if record.name != BESIDE]
    days = days_of(state.workouts, state.entries)
    happened, trained = list(days.turns), list(days.trained)
    is_open = open_workout(state) is not None
    if memory.rest_on is not None and is_open:
        happened.append(memory.rest_on)
        trained.append(memory.rest_on)
    if memory.stands_for is not None:
        happened.append(memory.stands_for)
    slot = next_slot(
        schedule,
        last_done=max(happened, default=None),
        starts=max(state.client.starts, away_until or state.client.starts),
        today=today,
    )
    name, day = name_on(state, schedule, slot, counting), next_day(schedule, slot, max(trained, default=None))
    if memory.owed is not None and happened and isinstance(schedule, FixedDays):
        slot, day = memory.owed, rested(schedule, max(happened))
        name = workout_of_day(schedule, slot)
    instead_of = slot if slot < day else None
    day += timedelta(days=memory.extra_rest_days)
    if memory.moved_to is not None:
        day, name, instead_of = memory.moved_to, memory.moved_workout or name, None
    if memory.rest_on is not None and is_open:
        day = max(day, memory.rest_on + timedelta(days=1))
    if away_until is not None and away_until > day:
        day, instead_of = away_until, None
    return Due(workout=name, on=day, instead_of=instead_of)


class Days(NamedTuple):
    """The days on which workouts of the programme had their turn, and those on which something was done: each
    once, in no order."""

    turns: tuple[date, ...]
    trained: tuple[date, ...]


@once
def days_of(workouts: tuple[WorkoutRecord, ...], entries: tuple[Entry, ...]) -> Days:
    """Return the days of the programme's workouts, and with them those on which the rest of one was done."""
    records = [record for record in workouts if record.name != BESIDE]
    trained = {record.number for record in records if record.state in {"open", "done"}}
    numbers = {record.number for record in records}
    rest = {(entry.workout, entry.set.on) for entry in entries if entry.workout in numbers}
    days = {(number, on) for number, on in (*((each.number, each.on) for each in records), *rest) if on}
    return Days(tuple({on for _, on in days}), tuple({on for number, on in days if number in trained}))


def catch_up(draft: Draft) -> Due | None:
    """Return the next workout; one whose day went by while nobody trained comes today, and is not missed.

    Fixed days stay where they are: there the next of them comes.
    """
    coming = due(draft.state, draft.today)
    stored = draft.client.programme
    if coming is None or stored is None or coming.on >= draft.today:
        return coming
    memory = draft.memory
    is_on_its_day = memory.moved_to is None and memory.owed is None
    if isinstance(stored.programme.schedule, FixedDays) and is_on_its_day:
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


def name_on(state: ClientState, schedule: Schedule, day: date, counting: Sequence[WorkoutRecord]) -> str:
    """Return the workout whose turn it is after those `counting`, or that the week has on `day`."""
    if isinstance(schedule, FixedDays) and schedule.by_day:
        swapped = state.memory.swapped
        return swapped.workout if swapped and swapped.on == day else workout_of_day(schedule, day)
    turned, turn = [record for record in counting if record.state != "missed"], state.memory.turn
    if turn is None or not (knows_all(state) or any(each.number <= turn.after for each in state.workouts)):
        return workout_in_turn(
            schedule.order, [record.name for record in turned], from_start=knows_all(state)
        )
    since = [each.name for each in turned if each.number > turn.after and each.on >= turn.since]
    return workout_in_turn(schedule.order, since, begins=turn.workout)


def knows_all(state: ClientState) -> bool:
    """Return whether the workouts of the state are all that there were, and not the latest alone."""
    return len(state.workouts) == state.memory.last_workout - state.memory.workouts_gone


def open_workout(state: ClientState) -> WorkoutRecord | None:
    """Return the workout begun and not yet closed, if there is one."""
    return next((record for record in reversed(state.workouts) if record.state == "open"), None)


@once
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


@once
def is_complete(state: ClientState, record: WorkoutRecord) -> bool:
    """Return whether every exercise of that workout is done, left out or on hold."""
    return all(sets_left(state, record, line) == 0 for line in lines_of(state, record.name))
