"""When a coach wants the digest, told in plain words: "digest every day at 6", "weekly on Sunday evening"."""

import re
from datetime import time, timedelta
from typing import Literal, get_args
from zoneinfo import ZoneInfo

from domain.actions import Words
from domain.clock_words import clock_of
from domain.coach.digest import digest_since
from domain.coach.draft import Draft
from domain.coach.waking import USUAL, following
from domain.coach_memory import DigestTime
from domain.expressions import Expression
from domain.programme import Weekday

LONGEST = 14
"""Longer messages are not about when the digest comes. The house's own choice."""

WEEK = timedelta(days=7)

_DAYS: tuple[str, ...] = get_args(Weekday)
_DIGEST = r"(?:digests?|look ?backs?)"
_NOW = Expression(
    rf"(?:(?:show|send|give|see)(?: me)? (?:the |my |a )?(?:(?:weekly|daily|last|week's|latest) )?|"
    rf"(?:the |my |a |last )?){_DIGEST}"
    r"(?: now| right now)?|how (?:was|did) (?:the|my|our|this|last) week(?: go)?|"
    r"(?:show me )?(?:the )?numbers"
)
_WHEN = Expression(
    rf"(?:when|what time|at what time|on which day|which day)(?: is| does| do i get| will)?(?: the| my| a)* ?"
    rf"(?:next )?{_DIGEST}(?: come| due| be)?"
)
_NONE = Expression(
    rf"(?:no|stop|cancel|end|drop|never|without|(?:turn|switch) off)(?: the| my| a| any| more)*"
    rf"(?: daily| weekly)? {_DIGEST}(?: any ?more)?|(?:turn |switch )?(?:the )?{_DIGEST} off"
)
_EVERY_DAY = Expression(
    r"\b(?:daily|(?:every|each|once a|per) (?:single )?(?:day\b|(?=morning|evening|afternoon|night|noon)))"
)
_EVERY_WEEK = Expression(r"\b(?:weekly|(?:every|each|once a|per) week)\b")
_WEEKDAY = Expression(rf"\b(?:on |every |each )*({'|'.join(_DAYS)})s?\b")
_FILLING = Expression(
    rf"\b(?:{_DIGEST}|send|give|show|me|my|the|a|an|i|want|would|like|to|have|get|make|it|move|set|change|put|"
    r"come|comes|please|on|at|be|should|let|for|and|instead)\b"
)
_PART_OF_DAY = {
    "morning": time(7),
    "noon": time(12),
    "midday": time(12),
    "afternoon": time(15),
    "evening": time(18),
    "night": time(21),
}


def take_digest(draft: Draft, said: str) -> bool:
    """Keep when the digest is to come, or show it (`said` in lower case); return whether it was that."""
    if _NOW.fullmatch(said):
        draft.say(digest_since(draft.state, draft.at - WEEK, draft.at))
        return True
    if _WHEN.fullmatch(said):
        say_when(draft, draft.memory.digest or USUAL)
        return True
    if _NONE.fullmatch(said):
        draft.remember(digest=DigestTime(every="never"))
        draft.notice("no digest")
        return True
    is_named = re.search(rf"\b{_DIGEST}\b", said) is not None
    begins_so = (_EVERY_DAY.match(said) or _EVERY_WEEK.match(said)) is not None
    if not (is_named or begins_so) or len(said.split()) > LONGEST:
        return False
    read = read_time(said, draft.memory.digest or USUAL)
    if read is None:
        if is_named:
            draft.notice("no such digest")
        return is_named
    keep(draft, *read)
    return True


def read_time(said: str, before: DigestTime) -> tuple[DigestTime, tuple[time, ...]] | None:
    """Return when the digest is to come, with the other times that were perhaps meant; None where not said.

    What is not said stays as `before`.
    """
    weekday = _WEEKDAY.search(said)
    rest = _WEEKDAY.sub(" ", said)
    is_daily = _EVERY_DAY.search(rest) is not None and weekday is None
    is_weekly = weekday is not None or _EVERY_WEEK.search(rest) is not None
    rest = _EVERY_WEEK.sub(" ", _EVERY_DAY.sub(" ", rest))
    clock = " ".join(_FILLING.sub(" ", rest).replace(",", " ").split())
    at, others = before.at, tuple[time, ...]()
    if part := next((word for word in _PART_OF_DAY if clock in {word, f"in {word}", f"{word}s"}), None):
        at = _PART_OF_DAY[part]
    elif clock:
        found = clock_of(re.sub(r"(?<!in )(?:in )?\b(morning|afternoon|evening)", r"in the \1", clock))
        if found is None:
            return None
        at, others = found.as_said, found.times[1:]
    elif not (is_daily or is_weekly):
        return None
    every: Literal["day", "week"] = "week"
    if is_daily or (not is_weekly and before.every == "day"):
        every = "day"
    on = _DAYS.index(weekday[1]) if weekday else before.weekday
    return DigestTime(every=every, weekday=on, at=at), others


def keep(draft: Draft, chosen: DigestTime, others: tuple[time, ...]) -> None:
    """Keep when the digest comes; say it back with the next day, and offer the other half of the day."""
    chosen = chosen.model_copy(update={"chosen_at": draft.at})
    draft.remember(digest=chosen, looked_back_at=draft.memory.looked_back_at or draft.at)
    say_when(draft, chosen)
    day = "every day" if chosen.every == "day" else f"every {_DAYS[chosen.weekday]}"
    draft.offer(*(Words(text=f"Digest {day} at {other:%H:%M}", once=True) for other in others))


def say_when(draft: Draft, chosen: DigestTime) -> None:
    """Say when the digest comes, and on which day next."""
    zone = ZoneInfo(draft.state.coach.zone)
    coming = following(draft.at, zone, chosen)
    if coming is None:
        draft.notice("no digest")
        return
    draft.notice(
        "digest kept",
        every=chosen.every,
        at=f"{chosen.at:%H:%M}",
        on=coming.astimezone(zone).date().isoformat(),
    )
