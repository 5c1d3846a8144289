"""Answers about the days to come: the next workout and its day, the week, and whether to train early."""

import re
from datetime import timedelta

from domain.actions import Words
from domain.calendar import DAY
from domain.client.beyond_sheet import rest_until
from domain.client.coming import coming_days, put_off_for_rest
from domain.client.draft import Draft
from domain.client.plans import cannot, keep_plans, next_days, note_missed, plans_of, put_off, rest_days
from domain.client.rotation import Due, due, under_way
from domain.client.wants import show_plan
from domain.expressions import Expression
from domain.reading import days_asked, days_to_come

WEEK_AHEAD = timedelta(days=7)

MOST_SHOWN = 7
"""How many workouts to come are shown at most."""

WAITS = "I'll wait"
CANNOT_TODAY = "can't today"


def take_days_asked(draft: Draft, text: str) -> bool:
    """Answer a question about the days to come; return whether it was one."""
    asked = days_asked(text)
    if asked is None and (bare := _AGREES_FIRST.sub("", text, count=1)) != text:
        asked, text = days_asked(bare), bare
    if asked is None and (question := question_of(text)):
        asked, text = days_asked(question), question
    if text == WAITS and not draft.memory.barred:
        note_missed(draft)
        return True
    if asked is None:
        return False
    coming = due(draft.state, draft.today)
    if draft.memory.barred or coming is None:
        show_plan(draft)
    elif asked == "another day":
        draft.ask("day", {"want": "move"}, {"want": "move"}, next_days(draft))
    elif asked == "not today":
        before = plans_of(draft)
        cannot(draft, CANNOT_TODAY)
        keep_plans(draft, before)
    elif asked == "today" and coming.on > draft.today:
        before = plans_of(draft)
        put_off(draft, draft.today)
        keep_plans(draft, before)
    elif asked == "today":
        show_plan(draft)
    elif asked == "when":
        say_when(draft, coming)
    elif asked == "week":
        say_week(draft, text)
    else:
        say_whether(draft, coming, text)
    return True


_ASKS_LAST = Expression(
    r"(?P<before>[^\d]{2,50}?)[,.!:;\u2013-]*\s(?P<asked>(?:can|could|may|shall|should) (?:i|we) .{3,50}|"
    r"(?:is it )?ok(?:ay)? (?:to|if) .{3,50})",
    re.IGNORECASE,
)
_AGREES_FIRST = Expression(
    r"^\s*(?:(?:yes|yeah|yep|ok|okay|sure|right|alright|please|so)\b[,.! ]*)+(?=\w)", re.IGNORECASE
)
_NO_REASON = Expression(r"\b(?:not|no|if|when|what|how|why|which|coach|ask|n't)\b|n't\b", re.IGNORECASE)


def question_of(text: str) -> str:
    """Return the question at the end of a message that begins with its reason: "bored, can I train today"."""
    found = _ASKS_LAST.fullmatch(" ".join(text.split()))
    return found["asked"] if found and not _NO_REASON.search(found["before"]) else ""


def say_when(draft: Draft, coming: Due) -> None:
    """Say the day of the next workout, and that one is under way."""
    on = max(coming.on, draft.today)
    begun = under_way(draft.state, draft.today)
    draft.notice(
        "next day",
        workout=coming.workout,
        on=on.isoformat(),
        days=(on - draft.today).days,
        begun=begun.name if begun is not None else None,
        **put_off_for_rest(draft.state, coming),
    )


def say_week(draft: Draft, text: str) -> None:
    """Say the workouts of the seven days to come, or of the week named, if each is done on its day."""
    first, last = draft.today, draft.today + WEEK_AHEAD
    if "next" in text.casefold():
        first = draft.today + (7 - draft.today.weekday()) * DAY
        last = first + 6 * DAY
    ahead = [each for each in coming_days(draft.state, draft.today, last) if each.on >= first]
    draft.notice(
        "days ahead",
        days=[{"workout": each.workout, "on": each.on.isoformat()} for each in ahead[:MOST_SHOWN]],
        since=first.isoformat(),
        until=last.isoformat(),
    )


def say_whether(draft: Draft, coming: Due, text: str) -> None:
    """Say whether the next workout may be done early: what the coach set and why; the client decides."""
    meant = days_to_come(text, draft.local)
    days = [day for day in meant if day < coming.on]
    on = days[0] if days else draft.today
    if coming.on <= draft.today and meant and min(meant) > draft.today:
        before = plans_of(draft)
        put_off(draft, min(meant))
        keep_plans(draft, before)
        return
    if coming.on <= draft.today or (meant and not days):
        show_plan(draft)
        return
    rested = rest_until(draft.state, coming.workout, on)
    draft.notice(
        "early",
        coach=draft.client.coach.name,
        workout=coming.workout,
        on=on.isoformat(),
        due=coming.on.isoformat(),
        rest_until=rested.isoformat() if rested else None,
        rest_days=rest_days(draft),
        today=draft.today.isoformat(),
    )
    to = "today" if on == draft.today else f"{on:%A}"
    draft.offer(
        Words(
            text=f"Move {'it' if under_way(draft.state, draft.today) is None else coming.workout} to {to}",
            once=True,
        ),
        Words(text=WAITS, once=True),
    )
