"""A client's plans for the days to come: leaving out, moving, pausing, coming back, and taking that back."""

from collections.abc import Collection
from dataclasses import replace
from datetime import date, timedelta

from domain.calendar import local_day
from domain.client.beyond_sheet import rest_until
from domain.client.coming import once_done, put_off_for_rest
from domain.client.draft import Draft
from domain.client.lines import is_left_out, is_of, left_out, lines_of
from domain.client.missing import count_put_off
from domain.client.recording import close_if_complete
from domain.client.rotation import BESIDE, Due, catch_up, due, under_way
from domain.client.understanding import workout_meant
from domain.client.week import pass_turn
from domain.expressions import Expression
from domain.outcome import WorkoutKept
from domain.parts import Notice
from domain.planned import PauseAhead, Plans
from domain.programme import FixedDays, Rotation
from domain.reading import Reading, days_in_doubt, days_meant, days_to_come

_TOLD_AFTERWARDS = Expression(r"\b(?:did|didn['’]?t|couldn['’]?t|wasn['’]?t|missed|yesterday|last)\b")
"""What tells of a day gone by rather than of one to come."""

PLANS = tuple(name for name in Plans.model_fields if name not in {"message", "at"})


def skip_exercises(draft: Draft, names: tuple[str, ...]) -> None:
    """Leave exercises out of the workout under way, or of the next one."""
    name, workout = workout_meant(draft)
    planned = tuple(each for each in names if is_of(draft.state, name, each))
    out = (*left_out(draft.state, workout), *planned)
    if name == BESIDE or not names:
        draft.notice("nothing to leave out")
    elif not planned:
        draft.notice("not in it", exercises=list(names), workout=name)
    elif workout is None and all(is_left_out(line, out) for line in lines_of(draft.state, name)):
        put_off(draft, None)
    elif workout is None:
        draft.remember(left_out=tuple(dict.fromkeys(out)))
        draft.notice("left out", exercises=list(planned), workout=name)
    else:
        kept = replace(workout, skipped=tuple(dict.fromkeys(out)))
        draft.change(WorkoutKept(kept))
        draft.notice("left out", exercises=list(planned), workout=name)
        close_if_complete(draft, kept)


def move(draft: Draft, reading: Reading, text: str = "") -> None:
    """Move the workout to the day said; ask for the day where it could not be told."""
    if reading.on is None and "date" in reading.asks:
        draft.ask("day", {"want": "move"}, {"want": "move"}, likely_days(draft, text) or next_days(draft))
    else:
        put_off(draft, reading.on, next_one=names_next(draft, text))


def likely_days(draft: Draft, text: str) -> tuple[str, ...]:
    """Return both days that "next Friday" can mean, as one types them; none where no such day is said."""
    return tuple(f"{day:%A} {day.day} {day:%B}" for day in days_in_doubt(text, draft.local))


def names_next(draft: Draft, text: str) -> bool:
    """Return whether the words name the workout to come, and not the one under way."""
    workout, coming = under_way(draft.state, draft.today), due(draft.state, draft.today)
    if workout is None or coming is None or workout.name == coming.workout:
        return False
    said = f" {text.casefold()} "
    return f" {coming.workout.casefold()} " in said and f" {workout.name.casefold()} " not in said


def next_days(draft: Draft) -> tuple[str, ...]:
    """Return the days to which a workout is most likely moved."""
    return tuple(f"{draft.today + timedelta(days=ahead):%A}" for ahead in (1, 2, 3))


def cannot(draft: Draft, text: str) -> None:
    """Put off what is planned on the days on which the client cannot come: today where none is said.

    The rest of a workout under way stays where it is, unless it is planned on such a day itself.
    """
    days = days_to_come(text, draft.local) or (draft.today,)
    workout, coming = under_way(draft.state, draft.today), due(draft.state, draft.today)
    meant = days_meant(text, draft.local)
    is_of_today = not meant and coming is not None and coming.on == draft.today
    if (
        _TOLD_AFTERWARDS.search(text.casefold())
        and draft.today not in meant
        and (is_asked_what_became(draft) or not is_of_today)
    ):
        note_missed(draft)
        return
    rest_on = draft.memory.rest_on or draft.today
    if draft.memory.barred or (workout is None and coming is None):
        put_off(draft, None)
    elif workout is not None and rest_on in days:
        put_off(draft, first_free(rest_on, days))
    elif coming is None or max(coming.on, draft.today) not in days:
        draft.notice(
            "rest day",
            not_on=[day.isoformat() for day in days if day > draft.today],
            workout=coming.workout if coming else None,
            on=coming.on.isoformat() if coming else None,
        )
    elif has_fixed_days(draft):
        let_pass(draft, coming)
    else:
        put_off(draft, first_free(max(coming.on, draft.today), days))


def is_asked_what_became(draft: Draft) -> bool:
    """Return whether it was asked today what became of a workout of a day before."""
    asked = draft.question("missed")
    return asked is not None and local_day(asked.asked_at, draft.zone) == draft.today


def note_missed(draft: Draft) -> None:
    """Answer word of a workout missed on a day gone by: what comes next."""
    coming = due(draft.state, draft.today)
    draft.drop_question(draft.question("missed"))
    if coming is None:
        draft.notice("heard")
    else:
        draft.notice("missed noted", workout=coming.workout, on=coming.on.isoformat())


def first_free(on: date, taken: Collection[date]) -> date:
    """Return the first day after `on` that is not taken."""
    ahead = (on + timedelta(days=days) for days in range(1, len(taken) + 2))
    return next(day for day in ahead if day not in taken)


def let_pass(draft: Draft, coming: Due) -> None:
    """Let one of the fixed days pass without training: the next one of them stands."""
    passes = max(coming.on, draft.today)
    pass_turn(draft, coming.workout, passes)
    draft.remember(stands_for=passes, moved_to=None, moved_workout=None, moved_from=None)
    following = due(draft.state, draft.today) or coming
    draft.notice("moved away", workout=following.workout, on=following.on.isoformat())
    count_put_off(draft)


def put_off(draft: Draft, to: date | None, *, next_one: bool = False, instead: str | None = None) -> None:
    """Move the workout in turn, or the rest of the one under way, to the day `to`; to tomorrow without one.

    The `next_one` is meant where it was named, whatever is under way; `instead` another in its place.

    With fixed days and no day said, the coming one passes and the next one of them stands.
    """
    workout = None if next_one else under_way(draft.state, draft.today)
    coming = due(draft.state, draft.today)
    tomorrow = draft.today + timedelta(days=1)
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
    elif to is not None and to < draft.today:
        draft.notice("day is past", on=to.isoformat())
    elif workout is not None:
        day = to or tomorrow
        draft.remember(rest_on=day)
        draft.notice("rest of it moved", workout=workout.name, on=day.isoformat())
    elif coming is None:
        draft.notice("nothing to move")
    elif to is None and coming.on > draft.today:
        draft.notice("rest day", workout=coming.workout, on=coming.on.isoformat())
    elif to is None and has_fixed_days(draft):
        let_pass(draft, coming)
    else:
        day = to or tomorrow
        coming = Due(instead or coming.workout, coming.on)
        early = rest_until(draft.state, coming.workout, day)
        following = due(once_done(draft.state, coming, day), day)
        move_to(draft, coming, day)
        draft.notice(
            "moved",
            workout=coming.workout,
            on=day.isoformat(),
            in_its_place=instead is not None,
            rest_until=early.isoformat() if early else None,
            coach=draft.client.coach.name,
            rest_days=rest_days(draft),
            next=following.workout if following else None,
            next_on=following.on.isoformat() if following else None,
            **put_off_for_rest(draft.state, following),
        )
        if day > coming.on or day > draft.today >= coming.on:
            count_put_off(draft)


def rest_days(draft: Draft) -> int | None:
    """Return how many whole rest days the sheet has between two workouts; None where that varies."""
    stored = draft.client.programme
    schedule = stored.programme.schedule if stored else None
    return schedule.every_days - 1 if isinstance(schedule, Rotation) else None


def move_to(draft: Draft, coming: Due, day: date) -> None:
    """Let the workout to come be on that day; the fixed day that it was on first stays known."""
    memory = draft.memory
    if memory.moved_to is None or memory.moved_workout != coming.workout:
        on_its_day = has_fixed_days(draft) and memory.owed is None
        draft.remember(moved_from=coming.on if on_its_day else None)
    draft.remember(moved_to=day, moved_workout=coming.workout)


def has_fixed_days(draft: Draft) -> bool:
    """Return whether the client's programme has fixed days of the week."""
    stored = draft.client.programme
    return stored is not None and isinstance(stored.programme.schedule, FixedDays)


def stop_for_a_while(draft: Draft, reading: Reading, text: str = "") -> None:
    """Pause until the day said; ask for the day where it could not be told."""
    likely = likely_days(draft, text) if reading.absence is None else ()
    if reading.on is None and ("date" in reading.asks or likely):
        draft.ask("day", {"want": "pause"}, {"want": "pause"}, likely)
    elif reading.absence is not None and reading.absence.since <= draft.today:
        pause(draft, reading.absence.back)
    elif reading.absence is not None:
        pause_ahead(draft, PauseAhead(since=reading.absence.since, until=reading.absence.back))
    else:
        pause(draft, reading.on)


def pause_ahead(draft: Draft, ahead: PauseAhead) -> None:
    """Pause from a day to come; until then all goes on."""
    draft.remember(pause_ahead=ahead)
    coming = due(draft.state, draft.today)
    draft.notice(
        "paused",
        since=ahead.since.isoformat(),
        until=ahead.until.isoformat() if ahead.until else None,
        workout=coming.workout if coming else None,
        on=max(coming.on, draft.today).isoformat() if coming else None,
    )


def begin_pause(draft: Draft) -> None:
    """Let the pause that was to come begin."""
    ahead = draft.memory.pause_ahead
    be_away(draft, ahead.until if ahead else None)


def pause(draft: Draft, until: date | None) -> None:
    """Pause: no reminders until the client is back."""
    if until is not None and until <= draft.today:
        draft.notice("day is past", on=until.isoformat())
        return
    if until is None and is_ill(draft):
        draft.notice("still ill")
        return
    be_away(draft, until)
    draft.notice("paused", until=until.isoformat() if until else None)


def be_away(draft: Draft, until: date | None) -> None:
    """Let there be no training until that day, or until the client is back; no day moved to stands."""
    draft.remember(
        paused=True,
        paused_until=until,
        pause_told=False,
        pause_ahead=None,
        moved_to=None,
        moved_workout=None,
        moved_from=None,
        owed=None,
    )


def say_nothing_planned(draft: Draft) -> None:
    """Say why no workout is to come: a pause, one that begins before the next, or no programme yet."""
    ahead = draft.memory.pause_ahead
    draft.notice(
        "no workout planned",
        paused=draft.memory.paused,
        since=ahead.since.isoformat() if ahead else None,
    )


def is_ill(draft: Draft) -> bool:
    """Return whether the client is paused for an illness, until further notice."""
    memory = draft.memory
    return memory.paused and memory.paused_until is None and memory.ill_on is not None


def come_back(draft: Draft, *, was_here: bool = False) -> None:
    """End a pause, and switch reminders on again; after a warning sign that is the coach's to do.

    Who `was_here` all along is not welcomed back.
    """
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return
    was_away = draft.memory.paused or not draft.memory.reminders_off
    if draft.memory.left_at is not None:
        draft.tell_coach(Notice(topic="client back", facts={"client": draft.client.name}))
    draft.remember(paused=False, paused_until=None, pause_ahead=None, reminders_off=False, left_at=None)
    coming = catch_up(draft)
    draft.notice(
        "back" if was_away and not was_here else "reminders on",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def stay(draft: Draft) -> None:
    """Take a pause back that comes to nothing; a workout that was put off by it comes today."""
    draft.remember(paused=False, paused_until=None, pause_ahead=None)
    coming = catch_up(draft)
    draft.notice(
        "no pause",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def plans_of(draft: Draft) -> Plans:
    """Return the plans as they stand, by the message that is being answered."""
    memory = draft.memory
    return Plans(message=draft.message, at=draft.at, **{name: getattr(memory, name) for name in PLANS})


def keep_plans(draft: Draft, before: Plans) -> None:
    """Remember how the plans stood before this message, where it has changed them."""
    if plans_of(draft) != before:
        draft.remember(plans_before=before)


def plans_as_before(draft: Draft, plans: Plans) -> None:
    """Let the days to come be as before the message that changed them; a day gone by since comes today."""
    draft.remember(plans_before=None, **{name: getattr(plans, name) for name in PLANS})
    coming = catch_up(draft)
    draft.notice(
        "plans as before",
        workout=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )
