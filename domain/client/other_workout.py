"""Another workout than the one in turn, by its name: "can I do legs today instead?", "what's in legs?"

Who asks to do it gets its plan, and the one in turn stays in turn.
"""

import re
from collections.abc import Sequence
from datetime import date, timedelta

from domain.actions import Words
from domain.client.beyond_sheet import rest_until
from domain.client.coming import coming_days, once_done
from domain.client.days_ahead import say_when
from domain.client.draft import Draft
from domain.client.plan import plan_of
from domain.client.plans import (
    keep_plans,
    likely_days,
    move_to,
    plans_of,
    put_off,
    rest_days,
    say_nothing_planned,
)
from domain.client.rotation import Due, due, under_way
from domain.client.week import week_of
from domain.expressions import Expression
from domain.planned import Swapped
from domain.reading import days_in_doubt, days_to_come

LOOKS_AHEAD = timedelta(days=35)
"""How far ahead the day of a workout is looked for. The house's own choice."""

_ASKING = (
    r"(?:(?:hi|hey|ok|okay|actually|hm+),? )?(?:(?:can|could|may|shall|should) (?:i|we) |let me |let's "
    r"|please |i(?:'d| would) (?:like to |rather |prefer to |love to )|i (?:want to|wanna|will|need to) "
    r"|i'll |(?:i'm |i am )?(?:going to |gonna )?|is it (?:ok|okay|fine|all right) (?:to|if i) )"
    r"(?:just |maybe |please |only )?"
)
_DO = r"(?:do|doing|have|train|training|take|start(?:ing)? with|begin with|go (?:for|with)|move)"
_WHEN = r"(?: (?:first|today|now|tonight|this time|this (?:morning|evening|afternoon)|to today))*"
_SWAP = r"(?:swap|switch|change|exchange|trade)"
_SOME_DAY = (
    r"(?:today|tomorrow|(?:this |next )?(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?:'s)?"
    r"(?: (?:one|workout|session))?"
)
_SWAPS_DAYS = Expression(
    rf"{_ASKING}{_SWAP} {_SOME_DAY} (?:and|with|for) {_SOME_DAY}(?: around| over)?(?: please)?"
)
_ANOTHER_DAYS = Expression(
    rf"{_ASKING}{_DO} (?:tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day)'?s(?: one| workout| session)?"
    r"(?: already| early)?(?: today| now| tonight| to today)(?: instead)?"
)
_DAY_WORD = (
    r"(?:on|to|for|in|until|till|this|next|coming|the|of|a|one|two|weeks?|fortnight|from|after|instead|then|"
    r"please|now|first|rather|again|(?:mon|tues?|wednes|wed|thurs?|thu|fri|satur|sat|sun)(?:day)?|tomorrow|"
    r"january|february|march|april|may|june|july|august|september|october|november|december|"
    r"\d{1,2}(?:st|nd|rd|th)?|\d{1,2}[./]\d{1,2}\.?)"
)
"""What a day to come is said with, and no more."""
_IN_ITS_PLACE = Expression(r"\b(?:first|instead|rather|before)\b")
_OF = r"(?:the |my |a )?(?:today's |tomorrow's |next )?"


def take_other_workout(draft: Draft, text: str) -> bool:
    """Show a workout that is named, say its day, or let it be done today; return whether one is named."""
    coming, said = due(draft.state, draft.today), _plain(text)
    if coming is None or draft.memory.barred:
        return False
    names = _names(draft)
    timed = next((name for name in names if _is_timed(_called(name)).fullmatch(said)), None)
    ahead = [each for each in _days_ahead(draft) if each.workout == timed]
    if ahead:
        say_when(draft, ahead[0])
        return True
    shown = next((name for name in names if _is_shown(_called(name)).fullmatch(said)), None)
    if shown is not None:
        show(draft, shown)
        return True
    for name in names:
        planned = _is_planned(name).fullmatch(said)
        is_asked = planned is not None and not planned["asks"] and text.rstrip().endswith("?")
        if planned is not None and is_asked:
            say_when(draft, next((each for each in _days_ahead(draft) if each.workout == name), coming))
            return True
        if planned is not None and take_planned(draft, name, text):
            return True
    wanted = next((name for name in names if _is_wanted(name, names).fullmatch(said)), None)
    if _SWAPS_DAYS.fullmatch(said) or _ANOTHER_DAYS.fullmatch(said):
        other = next((day for day in days_to_come(text, draft.local) if day > draft.today), None)
        on_it = [each.workout for each in _days_ahead(draft) if each.on == other]
        wanted = on_it[0] if on_it else None
        if wanted is None and under_way(draft.state, draft.today) is not None:
            say_when(draft, coming)
            return True
    if wanted is None:
        return False
    if wanted != coming.workout:
        do_instead(draft, wanted, coming)
    elif coming.on > draft.today:
        before = plans_of(draft)
        put_off(draft, draft.today, next_one=True)
        keep_plans(draft, before)
    else:
        show(draft, wanted)
    return True


def take_planned(draft: Draft, name: str, text: str) -> bool:
    """Take the wish to do the workout `name` on a day said; return False where that is no day to come.

    The rest of the one under way stays where it is.
    """
    days, begun = days_to_come(text, draft.local), under_way(draft.state, draft.today)
    if begun is not None and begun.name == name:
        return False
    if days_in_doubt(text, draft.local):
        draft.ask("day", {"want": "move", "workout": name}, {"want": "move"}, likely_days(draft, text))
        return True
    if len(days) != 1 or days[0] <= draft.today:
        return False
    before = plans_of(draft)
    plan_on(draft, name, days[0], in_its_place=_IN_ITS_PLACE.search(text.casefold()) is not None)
    keep_plans(draft, before)
    return True


def plan_on(draft: Draft, name: str, day: date, *, in_its_place: bool = False) -> None:
    """Move the workout `name` to that day, where no other comes before it, or it is to take its place.

    Else it is said when it comes, and offered to let it take that place. In a week with a workout of its own
    on each day two can change places; for any other day it is said how to have it then.
    """
    coming = due(draft.state, draft.today)
    own = next((each for each in _days_ahead(draft) if each.workout == name), coming)
    if coming is None or own is None:
        say_nothing_planned(draft)
    elif own.on == day and name == coming.workout:
        say_when(draft, own)
    elif name != coming.workout and week_of(draft) is not None:
        if not (own.on != day and change_places(draft, own, coming, day)):
            say_comes_later(draft, own, coming, as_said=own.on == day, wanted=day)
    elif name != coming.workout and (own.on == day or (coming.on < day and not in_its_place)):
        say_comes_later(draft, own, coming, as_said=own.on == day)
        if own.on == day:
            return
        draft.offer(Words(text=f"{name} on {day:%A} {day.day} {day:%B} first", once=True))
    else:
        put_off(draft, day, next_one=True, instead=name)


def change_places(draft: Draft, own: Due, coming: Due, day: date) -> bool:
    """Let a workout of the week be done on the next one's day, and that one on its own; return whether they
    can change places so."""
    memory = draft.memory
    is_as_it_stands = memory.owed is None and memory.moved_to is None and memory.swapped is None
    is_same_week = own.on.isocalendar()[:2] == coming.on.isocalendar()[:2]
    if not is_as_it_stands or not is_same_week or day != coming.on or coming.on < draft.today:
        return False
    draft.remember(swapped=Swapped(on=own.on, workout=coming.workout))
    put_off(draft, day, next_one=True, instead=own.workout)
    return True


def say_comes_later(
    draft: Draft, own: Due, coming: Due, *, as_said: bool, wanted: date | None = None
) -> None:
    """Say when a workout comes, and which before it; for the day `wanted` in a fixed week, how to have it."""
    draft.notice(
        "comes later",
        workout=own.workout,
        on=own.on.isoformat(),
        first=coming.workout,
        first_on=max(coming.on, draft.today).isoformat(),
        as_said=as_said,
        wanted=wanted.isoformat() if wanted else None,
    )


def show(draft: Draft, name: str) -> None:
    """Show the plan of a workout, for the day on which it comes if all goes as planned."""
    on = next((each.on for each in _days_ahead(draft) if each.workout == name), draft.today)
    draft.say(plan_of(draft.state, name, on))


def do_instead(draft: Draft, name: str, coming: Due) -> None:
    """Let the workout `name` be done today in place of the one in turn, which comes after it.

    In a week with a workout of its own on each day nothing is moved, nor while one is under way: what is done
    then finds its place as it is told.
    """
    before, early = plans_of(draft), rest_until(draft.state, name, draft.today)
    if week_of(draft) is None and under_way(draft.state, draft.today) is None:
        move_to(draft, Due(name, coming.on), draft.today)
    after = due(once_done(draft.state, Due(name, draft.today), draft.today), draft.today)
    draft.notice(
        "out of turn",
        workout=name,
        next=after.workout if after else None,
        rest_until=early.isoformat() if early else None,
        coach=draft.client.coach.name,
        rest_days=rest_days(draft),
    )
    draft.remember(reminded_on=draft.today)
    draft.say(plan_of(draft.state, name, draft.today))
    keep_plans(draft, before)


def _names(draft: Draft) -> list[str]:
    stored = draft.client.programme
    return list(dict.fromkeys(each.name for each in stored.programme.workouts)) if stored else []


def _days_ahead(draft: Draft) -> list[Due]:
    return coming_days(draft.state, draft.today, draft.today + LOOKS_AHEAD)


def _plain(text: str) -> str:
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(" .!?")
    return re.sub(r",? (?:please|thanks)$", "", said)


def _called(name: str) -> str:
    """Return a pattern of what a workout is called; one with a single letter only with a word beside it."""
    own = re.escape(name.casefold())
    of_day = re.escape(name.casefold().removesuffix("s"))
    if len(name) == 1:
        return rf"(?:{_OF}(?:workout|session|day) {own}|{own} day)"
    return rf"{_OF}(?:{own}(?: (?:day|workout|session|training|one))?|{of_day} day)(?:'s)?"


def _is_timed(called: str) -> Expression:
    return Expression(
        rf"(?:so |and |ok,? )*(?:when|what day|which day)(?:'s| is| are| do i (?:do|have|train)| will i do)"
        rf"(?: the)?(?: next)? {called}(?: then| next| again| due| on)*"
    )


def _is_shown(called: str) -> Expression:
    return Expression(
        rf"(?:please )?(?:show|see|show me|give me|send me|can i see|could i see|tell me) {called}(?: plan)?"
        rf"(?: please)?|(?:what's|what is|what are|what was)(?: in| on| on for| for)? {called}(?: plan)?"
        rf"|(?:the )?plan (?:for|of) {called}|{called} plan|what (?:do|will) i do (?:on|in|for|at) {called}"
    )


def _is_planned(name: str) -> Expression:
    return Expression(
        rf"(?P<asks>{_ASKING}(?:(?:{_DO}|shift|push|put|postpone) )?){_called(name)}(?:,? {_DAY_WORD})+"
    )


def _is_wanted(name: str, names: Sequence[str]) -> Expression:
    called = _called(name)
    other = "(?:" + "|".join(_called(each) for each in names if each != name) + ")"
    instead = rf"(?: (?:instead|rather)(?: (?:of|than) (?:{other}|it|that|this))?| before {other})?"
    return Expression(
        rf"(?:{_ASKING}{_DO} )?{called} (?:today|tonight|now|this (?:morning|evening|afternoon))"
        rf"|{_ASKING}{_DO} {called}{_WHEN}{instead}{_WHEN}"
        rf"|(?:rather )?{called}(?: first| instead(?: of {other})?| before {other}){_WHEN}"
        rf"|{_ASKING}{_SWAP} {other} (?:with|for) {called}(?: around| over)?{_WHEN}"
    )
