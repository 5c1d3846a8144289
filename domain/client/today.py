"""What a client answers to a reminder in a word or two: on another day, later today, or being there."""

from datetime import UTC, timedelta

from domain.calendar import at_local
from domain.client.days_ahead import say_when
from domain.client.draft import Draft
from domain.client.later import is_due, wait_until
from domain.client.plans import is_asked_what_became, keep_plans, plans_of, put_off
from domain.client.questions import missed_told
from domain.client.rotation import due
from domain.client.understanding import request_for
from domain.client.wants import show_plan
from domain.reading import read
from domain.today_words import Said, said_of_today

TODAY = "today instead"
PUT_RIGHT_WITHIN = timedelta(minutes=30)
"""For how long after a move a day that is said is meant instead. The house's own choice."""


def take_today(draft: Draft, text: str) -> bool:
    """Do what a word or two say of the workout that is due, or say when the next one is; return whether they
    do."""
    said, coming = said_of_today(text), due(draft.state, draft.today)
    if said is None:
        return False
    missed = draft.question("missed")
    is_asked = missed is not None and is_asked_what_became(draft)
    if draft.memory.barred or coming is None:
        show_plan(draft)
    elif said.what == "hour" and not is_due(draft) and missed is not None and is_asked:
        missed_told(draft, missed, TODAY)
        later_today(draft, said)
    elif said.what == "plan":
        show_plan(draft)
    elif not is_due(draft) and not is_asked and not (said.what == "day" and has_just_moved(draft)):
        say_when(draft, coming)
    elif said.what == "hour":
        later_today(draft, said)
    else:
        on = read(request_for(draft, f"move it to {said.day}")).on
        if on is None:
            return False
        before = plans_of(draft)
        put_off(draft, on)
        keep_plans(draft, before)
    return True


def has_just_moved(draft: Draft) -> bool:
    """Return whether the workout was moved just now, so that a day puts that right."""
    plans = draft.memory.plans_before
    return plans is not None and plans.at is not None and draft.at - plans.at <= PUT_RIGHT_WITHIN


def later_today(draft: Draft, said: Said) -> None:
    """Remind once more at the hour said, unless it is past."""
    moment = at_local(draft.today, said.hour, draft.zone).astimezone(UTC) if said.hour is not None else None
    if moment is not None and moment > draft.at:
        wait_until(draft, moment)
    else:
        draft.notice("heard")
