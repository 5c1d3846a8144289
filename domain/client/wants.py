"""What a client wants done besides recording: leaving out, moving, pausing, asking, looking things up."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from domain.client.draft import Draft
from domain.client.exposures import history, set_to_beat
from domain.client.lines import line_named, lines_of
from domain.client.pain import say_what_is_aside
from domain.client.plan import plan_of
from domain.client.recording import close_if_complete, take_back
from domain.client.rotation import BESIDE, catch_up, due, under_way
from domain.client.understanding import workout_meant
from domain.client.unfinished import forget_unfinished, unfinished_of
from domain.journal import Entry
from domain.memory import Plans
from domain.outcome import WorkoutKept
from domain.programme import FixedDays
from domain.reading import Reading, Want
from domain.values import facts_of

PLANS = tuple(name for name in Plans.model_fields if name != "message")

HISTORY_SHOWN = 8
"""How many of the last exposures of an exercise are shown at once."""


def do(draft: Draft, want: Want, reading: Reading, text: str, named: tuple[str, ...]) -> None:
    """Do one thing that the client wants; `named` are the exercises that the message is about."""
    before = plans_of(draft)
    match want:
        case "skip_exercise":
            skip_exercises(draft, reading.skips)
        case "skip_workout":
            put_off(draft, None)
        case "move":
            move(draft, reading)
        case "pause":
            stop_for_a_while(draft, reading)
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
    if want != "undo" and plans_of(draft) != before:
        draft.remember(plans_before=before)


def plans_of(draft: Draft) -> Plans:
    """Return the plans as they stand, by the message that is being answered."""
    memory = draft.memory
    return Plans(message=draft.message, **{name: getattr(memory, name) for name in PLANS})


def skip_exercises(draft: Draft, names: tuple[str, ...]) -> None:
    """Leave exercises out of the workout under way, or of the next one."""
    name, workout = workout_meant(draft)
    planned = tuple(each for each in names if line_named(draft.state, name, each))
    if name == BESIDE or not names:
        draft.notice("nothing to leave out")
    elif not planned:
        draft.notice("not in it", exercises=list(names), workout=name)
    elif workout is None and {line.exercise for line in lines_of(draft.state, name)} <= {
        *planned,
        *draft.memory.left_out,
    }:
        put_off(draft, None)
    elif workout is None:
        draft.remember(left_out=tuple(dict.fromkeys((*draft.memory.left_out, *planned))))
        draft.notice("left out", exercises=list(planned), workout=name)
    else:
        kept = replace(workout, skipped=tuple(dict.fromkeys((*workout.skipped, *planned))))
        draft.change(WorkoutKept(kept))
        draft.notice("left out", exercises=list(planned), workout=name)
        close_if_complete(draft, kept)


def move(draft: Draft, reading: Reading) -> None:
    """Move the workout to the day said; ask for the day where it could not be told."""
    if reading.on is None and "date" in reading.asks:
        draft.ask("day", {"want": "move"}, {"want": "move"}, ())
    else:
        put_off(draft, reading.on)


def put_off(draft: Draft, to: date | None) -> None:
    """Move the workout in turn, or the rest of the one under way, to the day `to`.

    Without a day, to tomorrow; with fixed days, the coming one passes and the next one of them stands.
    """
    workout = under_way(draft.state, draft.today)
    coming = due(draft.state, draft.today)
    tomorrow = draft.today + timedelta(days=1)
    if to is not None and to < draft.today:
        draft.notice("day is past", on=to.isoformat())
    elif workout is not None:
        day = to or tomorrow
        draft.remember(rest_on=day)
        draft.notice("rest of it moved", workout=workout.name, on=day.isoformat())
    elif draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
    elif coming is None:
        draft.notice("nothing to move")
    elif to is None and coming.on > draft.today:
        draft.notice("rest day", workout=coming.workout, on=coming.on.isoformat())
    elif to is None and has_fixed_days(draft):
        draft.remember(stands_for=max(coming.on, draft.today), moved_to=None, moved_workout=None)
        following = due(draft.state, draft.today) or coming
        draft.notice("moved away", workout=following.workout, on=following.on.isoformat())
    else:
        day = to or tomorrow
        draft.remember(moved_to=day, moved_workout=coming.workout)
        draft.notice("moved", workout=coming.workout, on=day.isoformat())


def has_fixed_days(draft: Draft) -> bool:
    """Return whether the client's programme has fixed days of the week."""
    stored = draft.client.programme
    return stored is not None and isinstance(stored.programme.schedule, FixedDays)


def stop_for_a_while(draft: Draft, reading: Reading) -> None:
    """Pause until the day said; ask for the day where it could not be told."""
    if reading.on is None and "date" in reading.asks:
        draft.ask("day", {"want": "pause"}, {"want": "pause"}, ())
    else:
        pause(draft, reading.on)


def pause(draft: Draft, until: date | None) -> None:
    """Pause: no reminders until the client is back."""
    if until is not None and until <= draft.today:
        draft.notice("day is past", on=until.isoformat())
        return
    draft.remember(paused=True, paused_until=until, moved_to=None, moved_workout=None)
    draft.notice("paused", until=until.isoformat() if until else None)


def come_back(draft: Draft) -> None:
    """End a pause, and switch reminders on again; after a warning sign that is the coach's to do."""
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return
    was_away = draft.memory.paused or not draft.memory.reminders_off
    draft.remember(paused=False, paused_until=None, reminders_off=False)
    coming = catch_up(draft)
    draft.notice(
        "back" if was_away else "reminders on",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def undo(draft: Draft) -> None:
    """Take back what the last message came to: its sets, its open question, or its change of plans."""
    question = draft.question("sets")
    asked = max((each.message for each in unfinished_of(question)), default=0)
    last = max(draft.state.entries, key=lambda entry: (entry.at, entry.number), default=None)
    recorded = last.message if last else 0
    plans = draft.memory.plans_before
    if plans is not None and plans.message > max(asked, recorded):
        plans_as_before(draft, plans)
    elif last is None and question is None:
        draft.notice("nothing to take back")
    else:
        forget_unfinished(draft, max(asked, recorded))
        entries = [entry for entry in draft.state.entries if entry.message == max(asked, recorded)]
        if entries:
            take_sets_back(draft, entries)
        else:
            draft.notice("question dropped")


def plans_as_before(draft: Draft, plans: Plans) -> None:
    """Let the days to come be as they were before the message that changed them."""
    draft.remember(plans_before=None, **{name: getattr(plans, name) for name in PLANS})
    coming = due(draft.state, draft.today)
    draft.notice(
        "plans as before",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def take_sets_back(draft: Draft, entries: Sequence[Entry]) -> None:
    """Take sets back and say so; what had been put right by them stands as before, what hurts stays aside."""
    kept = {entry.number for entry in draft.state.entries}
    take_back(draft, entries)
    draft.notice(
        "taken back",
        sets=[facts_of(entry.set) for entry in entries],
        stand=[facts_of(entry.set) for entry in draft.state.entries if entry.number not in kept],
    )
    say_what_is_aside(draft, [entry.set.exercise for entry in entries])


def ask_coach(draft: Draft, text: str, named: tuple[str, ...]) -> None:
    """Bring a question to the coach, with the last sets beside it."""
    last = draft.state.entries[-3:]
    draft.alert(
        "question",
        named[0] if named else None,
        {"said": text, "message": draft.message, "last": [facts_of(entry.set) for entry in last]},
    )
    draft.notice("passed on", coach=draft.client.coach.name)


def show_plan(draft: Draft) -> None:
    """Show what is left of the workout under way, or the one in turn, and its day."""
    coming = due(draft.state, draft.today)
    workout = under_way(draft.state, draft.today)
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
    elif workout is not None:
        draft.say(plan_of(draft.state, workout.name, draft.memory.rest_on or draft.today, workout))
    elif coming is None:
        draft.notice("no workout planned", paused=draft.memory.paused)
    else:
        on = max(coming.on, draft.today)
        draft.remember(reminded_on=on if on == draft.today else draft.memory.reminded_on)
        draft.say(plan_of(draft.state, coming.workout, on))


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
