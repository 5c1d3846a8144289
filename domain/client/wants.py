"""What a client wants done besides recording: leaving out, moving, pausing, asking, looking things up."""

from dataclasses import replace
from datetime import date, timedelta

from domain.actions import Words
from domain.client.draft import Draft
from domain.client.exposures import history, set_to_beat
from domain.client.plan import plan_of
from domain.client.recording import close_if_complete, take_back
from domain.client.rotation import begin, catch_up, current_workout, due, open_workout
from domain.journal import WorkoutRecord
from domain.outcome import WorkoutKept
from domain.programme import FixedDays
from domain.reading import Reading, Want
from domain.values import facts_of

HISTORY_SHOWN = 8
"""How many of the last exposures of an exercise are shown at once."""


def do(draft: Draft, want: Want, reading: Reading, text: str, named: tuple[str, ...]) -> None:
    """Do one thing that the client wants; `named` are the exercises that the message is about."""
    match want:
        case "skip_exercise":
            skip_exercises(draft, reading.skips)
        case "skip_workout":
            put_off(draft, None)
        case "move":
            put_off(draft, reading.on)
        case "pause":
            pause(draft, reading.on)
        case "undo":
            undo(draft)
        case "ask_coach":
            ask_coach(draft, text, named)
        case "show_plan":
            show_plan(draft)
        case "show_history":
            show_history(draft, named)
        case "help":
            draft.notice("help", word=None)
        case "stop_messages":
            draft.remember(reminders_off=True)
            draft.notice("reminders off")
        case "correct":
            pass


def skip_exercises(draft: Draft, names: tuple[str, ...]) -> None:
    """Leave exercises out of the workout under way, or of the one in turn, which begins with that."""
    workout = open_workout(draft.state)
    name = current_workout(draft.state, draft.today)
    if name is None or not names:
        draft.notice("nothing to leave out")
        return
    if workout is None or workout.name != name:
        workout = begin(draft, name, draft.today)
    kept = replace(workout, skipped=tuple(dict.fromkeys((*workout.skipped, *names))))
    draft.change(WorkoutKept(kept))
    draft.notice("left out", exercises=list(names), workout=name)
    close_if_complete(draft, kept)


def put_off(draft: Draft, to: date | None) -> None:
    """Move the workout in turn to the day `to`; without one, to the next day that the schedule allows."""
    coming = due(draft.state, draft.today)
    workout = open_workout(draft.state)
    stored = draft.client.programme
    if coming is None or stored is None:
        draft.notice("nothing to move")
        return
    unfinished = workout is not None and current_workout(draft.state, draft.today) == workout.name
    day = to or next_chance(draft)
    if day < draft.today:
        draft.notice("day is past", on=day.isoformat())
        return
    if unfinished and workout is not None:
        draft.notice("rest of it moved", workout=workout.name, on=day.isoformat())
        if coming.on < day:
            draft.remember(moved_to=day, moved_workout=coming.workout)
        return
    draft.remember(moved_to=day, moved_workout=coming.workout)
    draft.notice("moved", workout=coming.workout, on=day.isoformat())
    if to is None:
        draft.offer(Words(text="What's next?"))


def next_chance(draft: Draft) -> date:
    """Return the next day after today on which the workout can be: tomorrow, or the next fixed day."""
    stored = draft.client.programme
    tomorrow = draft.today + timedelta(days=1)
    if stored is None or not isinstance(stored.programme.schedule, FixedDays):
        return tomorrow
    days = stored.programme.schedule.days
    for ahead in range(7):
        day = tomorrow + timedelta(days=ahead)
        if day.strftime("%A").casefold() in days:
            return day
    return tomorrow


def pause(draft: Draft, until: date | None) -> None:
    """Pause: no reminders until the client is back."""
    if until is not None and until <= draft.today:
        draft.notice("day is past", on=until.isoformat())
        return
    draft.remember(paused=True, paused_until=until, moved_to=None)
    draft.notice("paused", until=until.isoformat() if until else None)


def come_back(draft: Draft) -> None:
    """End a pause, and switch reminders on again; after a warning sign that is the coach's to do."""
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return
    draft.remember(paused=False, paused_until=None, reminders_off=False)
    coming = catch_up(draft)
    draft.notice(
        "back",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def undo(draft: Draft) -> None:
    """Take back what the last message recorded."""
    if not draft.state.entries:
        draft.notice("nothing to take back")
        return
    last = draft.state.entries[-1].message
    entries = [entry for entry in draft.state.entries if entry.message == last]
    take_back(draft, entries)
    reopen(draft, {entry.workout for entry in entries})
    draft.notice("taken back", sets=[facts_of(entry.set) for entry in entries])


def reopen(draft: Draft, numbers: set[int]) -> None:
    """Open again the latest workout, where entries of it were taken back after it had closed."""
    latest = draft.state.workouts[-1] if draft.state.workouts else None
    if latest is not None and latest.number in numbers and latest.state == "done":
        draft.change(WorkoutKept(replace(latest, state="open")))


def ask_coach(draft: Draft, text: str, named: tuple[str, ...]) -> None:
    """Bring a question to the coach, with the last sets beside it."""
    last = draft.state.entries[-3:]
    draft.alert(
        "question",
        named[0] if named else None,
        {"said": text, "last": [facts_of(entry.set) for entry in last]},
    )
    draft.notice("passed on", coach=draft.client.coach.name)


def show_plan(draft: Draft) -> None:
    """Show the workout under way or in turn, and its day."""
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return
    name = current_workout(draft.state, draft.today)
    coming = due(draft.state, draft.today)
    workout: WorkoutRecord | None = open_workout(draft.state)
    if name is None:
        paused = draft.memory.paused
        draft.notice("no workout planned", paused=paused)
        return
    under_way = workout is not None and workout.name == name
    on = draft.today if under_way or coming is None else max(coming.on, draft.today)
    draft.say(plan_of(draft.state, name, on))


def show_history(draft: Draft, named: tuple[str, ...]) -> None:
    """Show the last exposures of each exercise named; of the one done last where none is."""
    names = named
    if not names and draft.state.entries:
        names = (draft.state.entries[-1].set.exercise,)
    if not names:
        draft.notice("no history", exercise=None)
    for exercise in names:
        rows = [
            {"on": past.on.isoformat(), "set": facts_of(set_to_beat(past)), "sets": len(past.sets)}
            for workout in dict.fromkeys(record.name for record in draft.state.workouts)
            for past in history(draft.state, workout, exercise)
        ]
        rows.sort(key=lambda row: str(row["on"]))
        if rows:
            draft.notice("history", exercise=exercise, rows=rows[-HISTORY_SHOWN:])
        else:
            draft.notice("no history", exercise=exercise)
