"""Today's reminder once more, at an hour that suits better; or all reminders, earlier or later."""

from datetime import UTC, datetime, time, timedelta

from domain.actions import Words
from domain.calendar import at_local
from domain.client.draft import Draft
from domain.client.lines import lines_of, sets_left
from domain.client.plan import plan_of
from domain.client.plans import say_nothing_planned
from domain.client.rotation import due, under_way
from domain.client.settings import set_hour
from domain.journal import WorkoutRecord
from domain.later_words import Later, later_of
from domain.parts import Reminder


def take_later(draft: Draft, text: str) -> bool:
    """Note when to remind once more today, where `text` as a whole says so; return whether it did."""
    later = later_of(text)
    if later is None:
        return False
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
    elif later.how == "earlier" or (later.how == "later" and not was_reminded(draft)):
        shift_hour(draft, later.minutes if later.how == "later" else -later.minutes)
    elif not is_due(draft):
        tell_what_comes(draft)
    elif later.how == "some time":
        draft.notice("when later")
    else:
        wait_until(draft, moment_of(draft, later))
        if later.how == "later":
            usual = minutes_of(draft.client.remind_at) + later.minutes
            if usual < 24 * 60:
                draft.offer(Words(text=f"Reminders always at {usual // 60:02d}:{usual % 60:02d}", once=True))
    return True


def is_due(draft: Draft) -> bool:
    """Return whether something of a workout is left to be done today."""
    if rest_of(draft) is not None:
        return True
    coming = due(draft.state, draft.today)
    return coming is not None and coming.on <= draft.today


def was_reminded(draft: Draft) -> bool:
    """Return whether today's reminder has come, and what it was of is still to be done."""
    return draft.memory.reminded_on == draft.today and is_due(draft)


def rest_of(draft: Draft) -> WorkoutRecord | None:
    """Return the workout under way, as long as some of it is left."""
    record = under_way(draft.state, draft.today)
    if record is None:
        return None
    left = (sets_left(draft.state, record, line) for line in lines_of(draft.state, record.name))
    return record if any(each > 0 for each in left) else None


def tell_what_comes(draft: Draft) -> None:
    """Say that there is nothing to be reminded of today, and what comes next."""
    coming = due(draft.state, draft.today)
    if coming is None:
        say_nothing_planned(draft)
    else:
        draft.notice("rest day", workout=coming.workout, on=coming.on.isoformat())


def minutes_of(clock: time) -> int:
    """Return how many minutes after midnight a time of day is."""
    return clock.hour * 60 + clock.minute


def shift_hour(draft: Draft, minutes: int) -> None:
    """Let all reminders come so much later, or earlier where it is negative; the day they come on stays."""
    wanted = minutes_of(draft.client.remind_at) + minutes
    if 0 <= wanted < 24 * 60:
        set_hour(draft, wanted // 60, wanted % 60, None)
    else:
        draft.notice("which hour", at=f"{draft.client.remind_at:%H:%M}")


def moment_of(draft: Draft, later: Later) -> datetime | None:
    """Return the moment meant, aware and in UTC; None where it is no more today, or is past."""
    if later.how != "at":
        moment = draft.at + timedelta(minutes=later.minutes)
        is_today = moment.astimezone(draft.zone).date() == draft.today
        return moment if is_today and later.minutes > 0 else None
    moments = (at_local(draft.today, each, draft.zone).astimezone(UTC) for each in later.times)
    return next((each for each in moments if each > draft.at), None)


def wait_until(draft: Draft, moment: datetime | None) -> None:
    """Note to remind at that moment, and to ask no more today; say so, or that it is too late for it."""
    if moment is None:
        draft.notice("too late today")
        return
    draft.remember(remind_again_at=moment, nudged_on=draft.today, reminded_on=draft.today)
    draft.notice("again later", at=f"{moment.astimezone(draft.zone):%H:%M}")


def remind_again(draft: Draft) -> None:
    """Say once more what is to be done today; nothing where it was done, moved or left by now."""
    draft.remember(remind_again_at=None)
    record = rest_of(draft)
    coming = due(draft.state, draft.today)
    if record is not None:
        plan = plan_of(draft.state, record.name, draft.today, record)
    elif coming is not None and coming.on <= draft.today:
        plan = plan_of(draft.state, coming.workout, draft.today)
    else:
        return
    draft.say(Reminder(workout=plan.workout, on=draft.today), plan)
