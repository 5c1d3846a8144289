"""What the passing of time comes to for a coach: once a week a look back, with what there is to be done.

Everything else a coach is told of as it happens. When the next digest comes follows from the state alone.
"""

from dataclasses import replace
from datetime import datetime, time
from zoneinfo import ZoneInfo

from domain.calendar import DAY, at_local, local_day, not_before
from domain.outcome import Outcome
from domain.parts import ClientLine, Digest, Say
from domain.state import CoachState

DIGEST_WEEKDAY = 0
"""Monday, when the week that is looked back on is over and the new one lies ahead. The house's own choice."""

DIGEST_AT = time(7)
"""The local hour of the digest, before the day's first client. The house's own choice."""


def next_wake(state: CoachState, after: datetime) -> datetime:
    """Return when to look back next (aware, UTC): where it is overdue at `after`, but only in her hours."""
    zone, hours = ZoneInfo(state.coach.zone), state.memory.hours
    looked = state.memory.looked_back_at
    if looked is None:
        return after
    return not_before(max(after, following(looked, zone)), zone, hours.begin, hours.end)


def following(moment: datetime, zone: ZoneInfo) -> datetime:
    """Return the first moment after `moment` at which a digest comes."""
    today = local_day(moment, zone)
    coming = today + (DIGEST_WEEKDAY - today.weekday()) % 7 * DAY
    at = at_local(coming, DIGEST_AT, zone)
    return at if at > moment else at_local(coming + 7 * DAY, DIGEST_AT, zone)


def wake(state: CoachState, now: datetime) -> Outcome:
    """Look back on the time since the last look; the first waking of all only begins the first week."""
    if state.memory.looked_back_at is not None and next_wake(state, now) > now:
        return Outcome(wake_at=next_wake(state, now))
    memory = state.memory.model_copy(update={"looked_back_at": now})
    digest = look_back(state, now)
    # It is an alert and no nudge: where it is unclear whether it was sent, it had better come twice.
    says = (Say(to=state.coach.number, parts=(digest,), weight="alert"),) if digest else ()
    return Outcome(says=says, memory=memory, wake_at=next_wake(replace(state, memory=memory), now))


def look_back(state: CoachState, now: datetime) -> Digest | None:
    """Return the clients with whom something is to be done; None where there is nobody, or no week yet."""
    since = state.memory.looked_back_at
    if since is None:
        return None
    lines = tuple(line_since(line, since) for _, line in state.clients)
    to_do = tuple(line for line in lines if line.open_alerts or line.to_release or line.eager)
    if not to_do:
        return None
    zone = ZoneInfo(state.coach.zone)
    return Digest(today=local_day(now, zone), clients=to_do, since=local_day(since, zone))


def line_since(line: ClientLine, since: datetime) -> ClientLine:
    """Return a client's line with what came to light after `since`."""
    return line.model_copy(
        update={"eager": tuple(each for each in line.eager if each.at > since), "tried": ()}
    )
