"""What the passing of time comes to for a coach: the digest, at the time that the coach has chosen.

Everything else a coach is told of as it happens. When the next digest comes follows from the state alone.
"""

from dataclasses import replace
from datetime import datetime, time
from zoneinfo import ZoneInfo

from domain.calendar import DAY, at_local, local_day, not_before
from domain.coach.digest import look_back
from domain.coach_memory import DigestTime
from domain.outcome import Outcome
from domain.parts import Say
from domain.state import CoachState

USUAL = DigestTime(every="week", weekday=0, at=time(7))
"""Monday, when the week that is looked back on is over and the new one lies ahead, before the day's first
client. The house's own choice."""


def next_wake(state: CoachState, after: datetime) -> datetime | None:
    """Return when to look back next (aware, UTC), where it is overdue at `after`; None where never.

    A time that the coach has chosen holds at any hour, the usual one only in the coach's hours.
    """
    zone, hours, chosen = ZoneInfo(state.coach.zone), state.memory.hours, state.memory.digest
    looked = state.memory.looked_back_at
    if looked is None:
        return after
    since = max(looked, chosen.chosen_at or looked) if chosen is not None else looked
    coming = following(since, zone, chosen or USUAL)
    if coming is None or chosen is not None:
        return None if coming is None else max(after, coming)
    return not_before(max(after, coming), zone, hours.begin, hours.end)


def following(moment: datetime, zone: ZoneInfo, chosen: DigestTime) -> datetime | None:
    """Return the first moment after `moment` at which a digest comes; None where there is to be none."""
    if chosen.every == "never":
        return None
    today = local_day(moment, zone)
    days = 1 if chosen.every == "day" else 7
    coming = today + (chosen.weekday - today.weekday()) % days * DAY
    at = at_local(coming, chosen.at, zone)
    return at if at > moment else at_local(coming + days * DAY, chosen.at, zone)


def wake(state: CoachState, now: datetime) -> Outcome:
    """Look back on the time since the last look; the first waking of all only begins the first week."""
    coming = next_wake(state, now)
    if state.memory.looked_back_at is not None and (coming is None or coming > now):
        return Outcome(wake_at=coming)
    memory = state.memory.model_copy(update={"looked_back_at": now})
    digest = look_back(state, now)
    # It is an alert and no nudge: where it is unclear whether it was sent, it had better come twice.
    says = (Say(to=state.coach.number, parts=(digest,), weight="alert"),) if digest else ()
    return Outcome(says=says, memory=memory, wake_at=next_wake(replace(state, memory=memory), now))
