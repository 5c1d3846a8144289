"""What the passing of time comes to for a coach: nothing yet; a coach is told of things as they happen."""

from datetime import datetime

from domain.outcome import Outcome
from domain.state import CoachState


def wake(state: CoachState, now: datetime) -> Outcome:  # noqa: ARG001 - the same form as a client's wake
    """Decide nothing, and ask for no further waking."""
    return Outcome()
