"""What comes after the next workout, and which workout a late one has put off for the sake of rest."""

from dataclasses import replace
from datetime import date, time
from typing import Any
from zoneinfo import ZoneInfo

from domain.calendar import at_local, rested
from domain.client.draft import Draft
from domain.client.rotation import Due, due
from domain.client.workouts import begin
from domain.outcome import WorkoutKept
from domain.programme import FixedDays
from domain.state import ClientState


def coming_days(state: ClientState, today: date, until: date) -> list[Due]:
    """Return the workouts from `today` until that day, as they come if each is done on its day."""
    found: list[Due] = []
    coming = due(state, today)
    while coming is not None and max(coming.on, today) <= until:
        today = max(coming.on, today)
        found.append(replace(coming, on=today))
        state = once_done(state, coming, today)
        coming = due(state, today)
    return found


def once_done(state: ClientState, coming: Due, on: date) -> ClientState:
    """Return the state as it would be if the workout to come were done on that day."""
    draft = Draft(state, at_local(on, time(12), ZoneInfo(state.client.zone)))
    record = begin(draft, coming.workout, on)
    draft.change(WorkoutKept(replace(record, state="done")))
    return draft.state


def put_off_for_rest(state: ClientState, coming: Due | None) -> dict[str, Any]:
    """Return the facts of a workout that is put off from its fixed day: that day, and the rest days kept."""
    stored = state.client.programme
    schedule = stored.programme.schedule if stored else None
    if coming is None or coming.instead_of is None or not isinstance(schedule, FixedDays):
        return {}
    gap = rested(schedule, coming.instead_of) - coming.instead_of
    return {"own_day": coming.instead_of.isoformat(), "whole_rest_days": gap.days - 1}
