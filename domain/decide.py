"""The two ways in: a person says something, or time passes. Which person it is decides who answers."""

from datetime import datetime
from typing import assert_never

from domain import both, client, coach, stranger
from domain.incoming import Heard
from domain.outcome import Outcome
from domain.state import BothState, ClientState, CoachState, State, StrangerState


def hear(state: State, heard: Heard) -> Outcome:
    """Decide on one thing that came in for this person."""
    match state:
        case ClientState():
            return client.hear(state, heard)
        case CoachState():
            return coach.hear(state, heard)
        case BothState():
            return both.hear(state, heard)
        case StrangerState():
            return stranger.hear(state, heard)
        case _:
            assert_never(state)


def wake(state: State, now: datetime) -> Outcome:
    """Decide on what the passing of time brings for this person; `now` is aware and UTC."""
    match state:
        case ClientState():
            return client.wake(state, now)
        case CoachState():
            return coach.wake(state, now)
        case BothState():
            return both.wake(state, now)
        case StrangerState():
            return stranger.wake(state, now)
        case _:
            assert_never(state)
