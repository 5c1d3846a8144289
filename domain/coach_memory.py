"""What is remembered of a coach's conversation between two messages."""

from datetime import datetime, time
from typing import Literal

from pydantic import Field

from domain.actions import Role
from domain.frozen import Frozen
from domain.hours import USUAL, Hours
from domain.memory import KeptWords, Waiting


class Spoken(Frozen):
    """Of whom a coach spoke last, at `at`, and of which exercise, in the coach's words."""

    client: int
    exercise: str = ""
    at: datetime


class LastChange(Frozen):
    """The coach's message that last changed something, and for which clients."""

    message: int
    clients: tuple[int, ...]


class Spread(Frozen):
    """Words that a coach wrote to several in message `message`, and whom they have `reached` so far."""

    message: int
    clients: tuple[int, ...]
    reached: tuple[int, ...] = ()
    failed: tuple[tuple[int, str], ...] = ()

    @property
    def known(self) -> tuple[int, ...]:
        """The clients of whom it is known."""
        return (*self.reached, *(client for client, _ in self.failed))


class DigestTime(Frozen):
    """When a coach wants the digest: every `day`, every `week` on `weekday` (0: Monday), or never; `at` is
    local. It was chosen at the moment `chosen_at`, so that none that would have been before it is overdue."""

    every: Literal["day", "week", "never"]
    chosen_at: datetime | None = None
    weekday: int = Field(default=0, ge=0, le=6)
    at: time = time(7)


class LastRole(Frozen):
    """The role in which a coach who trains, too, has spoken last, at `at`."""

    role: Role
    at: datetime


class CoachMemory(Frozen):
    """The small things to remember of a coach."""

    last_question: int = 0
    waiting: Waiting | None = None
    who: Waiting | None = None
    """The open question which client was meant; it stands beside another that waits."""
    spoken: Spoken | None = None
    last_change: LastChange | None = None
    changed_before: tuple[LastChange, ...] = ()
    """What was changed before that, latest last, and was not undone."""
    noted_in: int | None = None
    """The message of the last note, so that it can be forgotten as "that note"."""
    spreads: tuple[Spread, ...] = ()
    """The latest words to several."""
    looked_back_at: datetime | None = None
    """Up to when the digests have looked; None before the first waking."""
    digest: DigestTime | None = None
    """When the digest comes, where the coach has chosen; else once a week, and in the coach's hours."""
    hours: Hours = USUAL
    """When this coach wants to be written to, where it can wait; local time."""
    tell_after: int | None = None
    """This coach's own rule: what is without a beat for so many workouts has stalled; None where there is
    none."""
    last_role: LastRole | None = None
    """Of a coach who trains, too: in which role she has spoken last."""
    in_which_role: KeptWords | None = None
    """Words of such a coach's that could be of either role, which is asked."""


def changes_of(memory: CoachMemory) -> tuple[LastChange, ...]:
    """Return what was changed and not undone, the latest last."""
    return (*memory.changed_before, *filter(None, (memory.last_change,)))


def with_change(memory: CoachMemory, message: int, client: int) -> tuple[LastChange, ...]:
    """Return the changes with that of a message for one client more."""
    *before, last = (LastChange(message=0, clients=()), *changes_of(memory))
    clients = last.clients if last.message == message else ()
    kept = before if clients else (*before, last)
    return (
        *(each for each in kept if each.clients),
        LastChange(message=message, clients=(*clients, client)),
    )


def without_change(memory: CoachMemory, message: int, client: int) -> tuple[LastChange, ...]:
    """Return the changes without that of a message for one client."""
    left = (
        each.model_copy(update={"clients": tuple(one for one in each.clients if one != client)})
        if each.message == message
        else each
        for each in changes_of(memory)
    )
    return tuple(each for each in left if each.clients)
