"""Workouts in the journal: which one a reported set belongs to, how one begins, and how it ends."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta

from domain.calendar import DAY, at_local, day_lived, local_day, workout_of_day
from domain.client.draft import Draft
from domain.client.exposures import sets_done
from domain.client.lines import is_of, lines_of
from domain.client.looking_back import look_back
from domain.client.rotation import BESIDE, Due, due, in_turn, open_workout, under_way
from domain.client.week import out_of_turn, pass_turn, week_of
from domain.journal import WorkoutRecord, WorkoutState
from domain.outcome import WorkoutKept
from domain.programme import FixedDays
from domain.state import ClientState

SESSION = timedelta(hours=3)
"""How long after a set another one is still of the same training. The house's own choice."""


def day_told_of(draft: Draft) -> date:
    """Return the day that sets without a day are of.

    That is today, unless a workout under way has been told of only on later days than its own. In the night
    it is the day that has just ended, where that had a workout which is under way or still to be done, or
    of which a set was told just before.
    """
    record = under_way(draft.state, draft.today)
    if session_day(draft) < draft.today:
        return session_day(draft)
    lived = day_lived(draft.at, draft.zone)
    if lived < draft.today and day_awaited(draft, record) == lived:
        return lived
    if record is None or record.on >= draft.today or draft.memory.rest_on is not None:
        return draft.today
    told = (local_day(each.at, draft.zone) for each in draft.state.entries if each.workout == record.number)
    return record.on if all(day > record.on for day in told) else draft.today


def session_day(draft: Draft) -> date:
    """Return the day of the training going on: today, or past midnight that of sets told just before."""
    lived = day_lived(draft.at, draft.zone)
    goes_on = any(each.set.on == lived and draft.at - each.at <= SESSION for each in draft.state.entries)
    return lived if goes_on else draft.today


def day_awaited(draft: Draft, record: WorkoutRecord | None) -> date | None:
    """Return the day of the workout under way, or of its rest; without one, that of the workout in turn."""
    if record is not None:
        return draft.memory.rest_on or record.on
    coming = due(draft.state, draft.today)
    return coming.on if coming is not None else None


def workout_for(draft: Draft, on: date, exercises: tuple[str, ...]) -> WorkoutRecord:
    """Return the workout that sets of `exercises` done on the day `on` belong to, begun where there is none.

    It is the workout of that day that has one of them; else the one moved to that day that has; else the one
    of that day that is under way; else the one under way from before, where one of them is still to be done;
    else the workout of the programme that holds most of them, the one in turn where that leaves a choice.
    What is in no workout goes to whichever there is on that day.
    """
    state = draft.state
    of_day = [record for record in reversed(state.workouts) if record.on == on]
    begun = under_way(state, draft.today)
    fitting = next((record for record in of_day if holds(state, record.name, exercises)), None)
    moved = moved_here(draft, on, exercises)
    if fitting is None and moved is not None:
        return begin(draft, moved, on)
    if fitting is None and begun in of_day:
        fitting = begun
    if fitting is None and begun is not None and begun.on <= on and awaits(state, begun, exercises):
        fitting = begun
    if fitting is None:
        fitting = left_unfinished(draft, on, exercises)
    name = best_fit(draft, exercises)
    if fitting is None and name == BESIDE and of_day:
        fitting = of_day[0]
    if fitting is None:
        return begin(draft, name, on)
    return found_later(draft, fitting) if fitting.state == "missed" else fitting


def moved_here(draft: Draft, on: date, exercises: tuple[str, ...]) -> str | None:
    """Return the workout that the client has moved to that day, where it has one of `exercises`."""
    name = draft.memory.moved_workout if draft.memory.moved_to == on else None
    return name if name is not None and holds(draft.state, name, exercises) else None


def left_unfinished(draft: Draft, on: date, exercises: tuple[str, ...]) -> WorkoutRecord | None:
    """Return the workout of the day before that the client has ended with one of `exercises` not done.

    It is not taken up again once the next one is due.
    """
    coming = due(draft.state, draft.today)
    if open_workout(draft.state) is not None or (coming is not None and coming.on <= draft.today):
        return None
    for record in reversed(draft.state.workouts):
        if record.state == "done" and record.name != BESIDE:
            is_near = record.on <= on <= record.on + DAY
            return record if is_near and awaits(draft.state, record, exercises) else None
    return None


def found_later(draft: Draft, missed: WorkoutRecord) -> WorkoutRecord:
    """Take up a workout again that had been taken for missed; it is open unless another is under way."""
    state: WorkoutState = "open" if open_workout(draft.state) is None else "done"
    record = replace(missed, state=state, round=round_of(draft.state))
    draft.change(WorkoutKept(record))
    memory = draft.memory
    draft.remember(
        found_later=record.number,
        missed_in_a_row=max(0, memory.missed_in_a_row - 1),
        put_off_on=tuple(day for day in memory.put_off_on if day > missed.on),
    )
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
        sum_up_later(draft, opened)
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


def sum_up_later(draft: Draft, closed: WorkoutRecord) -> None:
    """Have a workout that has closed without the client's doing summed up at the next reminder's hour."""
    is_past = at_local(draft.today, draft.client.remind_at, draft.zone) <= draft.at
    draft.remember(to_sum_up=closed.number, sum_up_on=draft.today + is_past * DAY)


def settle_plans(draft: Draft, record: WorkoutRecord, coming: Due | None) -> None:
    """Forget what had been planned for the workout that has now begun, while `coming` was to come."""
    memory = draft.memory
    stored = draft.client.programme
    in_pause = memory.paused_until is not None and record.on < memory.paused_until
    made_up = coming is not None and is_made_up(draft, record, coming)
    if coming is not None and not made_up and not memory.owed and not memory.missed_in_a_row and not in_pause:
        fixed = stored is not None and isinstance(stored.programme.schedule, FixedDays)
        slot = coming.on if memory.moved_to is None else memory.moved_from or record.on
        if record.on < slot:
            draft.remember(stands_for=slot if fixed else None)
    if coming is not None and coming.workout == record.name:
        pass_turn(draft, record.name, record.on)
    elif coming is not None and not made_up:
        out_of_turn(draft, record, coming)
    if memory.moved_to is not None and (memory.moved_to <= record.on or memory.moved_workout == record.name):
        draft.remember(moved_to=None, moved_workout=None, moved_from=None)
    asked = memory.missed_in_a_row > 0 or (memory.nudged_on is not None and memory.nudged_on >= record.on)
    draft.remember(
        extra_rest_days=0,
        rest_on=None,
        left_out=(),
        missed_in_a_row=0,
        put_off_on=(),
        told_unasked=0 if asked else memory.told_unasked + 1,
    )
    if memory.paused and record.on == draft.today:
        until = memory.paused_until
        draft.remember(paused=until is not None)
        if until is None:
            draft.notice("pause over")
        elif not memory.pause_told:
            draft.remember(pause_told=True)
            draft.notice("pause stands", until=until.isoformat())
    trained_again(draft)


def is_made_up(draft: Draft, record: WorkoutRecord, coming: Due) -> bool:
    """Return whether this is the workout of the week that was let pass, done before the next one."""
    schedule, passed = week_of(draft), draft.memory.stands_for
    if schedule is None or passed is None or record.name == coming.workout:
        return False
    return workout_of_day(schedule, passed) == record.name and passed <= record.on < coming.on


def round_of(state: ClientState) -> int:
    """Return the round of the rotation that a workout begun now belongs to, from 1."""
    stored = state.client.programme
    rounds = [record.round for record in workouts_closed(state)]
    if stored is None or not rounds:
        return 1
    latest = max(rounds)
    return latest + 1 if rounds.count(latest) >= len(stored.programme.schedule.order) else latest


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
    look_back(draft, workouts_closed(draft.state), round_of(draft.state) - 1)


def shut(draft: Draft, workout: WorkoutRecord) -> None:
    """Let a workout be over.

    One in which nothing was done counts as missed, unless the client left all of it out, or said that it was
    done after all.
    """
    done = any(entry.workout == workout.number for entry in draft.state.entries)
    if done or workout.number == draft.memory.found_later:
        over = replace(workout, state="done")
    else:
        over = replace(workout, state="skipped" if workout.skipped else "missed")
    draft.change(WorkoutKept(over))
    draft.remember(rest_on=None)
