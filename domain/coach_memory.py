"""What is remembered of a coach's conversation between two messages."""

from datetime import datetime

from domain.frozen import Frozen
from domain.hours import USUAL, Hours
from domain.memory import Waiting


class Spoken(Frozen):
    """Of whom a coach spoke last, at `at`, and of which exercise, in the coach's words."""

    client: int
    exercise: str = ""
    at: datetime


class LastChange(Frozen):
    """The coach's message that last changed something, and for which clients."""

    message: int
    clients: tuple[int, ...]


class CoachMemory(Frozen):
    """The small things to remember of a coach."""

    last_question: int = 0
    waiting: Waiting | None = None
    who: Waiting | None = None
    """The open question which client was meant; it stands beside another that waits."""
    spoken: Spoken | None = None
    last_change: LastChange | None = None
    looked_back_at: datetime | None = None
    """Up to when the digests have looked; None before the first waking."""
    hours: Hours = USUAL
    """When this coach wants to be written to, where it can wait; local time."""
    tell_after: int | None = None
    """This coach's own rule: what is without a beat for so many workouts has stalled; None where there is
    none."""
