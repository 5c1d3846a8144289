"""What a client has wanted of the days to come, as it is kept in the memory."""

from datetime import date, datetime

from domain.frozen import Frozen


class Swapped(Frozen):
    """The `workout` that comes on the fixed day `on` in place of that day's own."""

    on: date
    workout: str


class Turn(Frozen):
    """The workout that the client has said to be next, from the day `since` on.

    `after` is the number of the latest workout by then: the order goes on from here with those that follow.
    """

    workout: str
    since: date
    after: int


class PauseAhead(Frozen):
    """A pause that begins on the day `since`, yet to come, and ends on the day `until`, where known."""

    since: date
    until: date | None = None


class Plans(Frozen):
    """What a client has wanted of the days to come, as in `ClientMemory`; `message`, at `at`, changed it."""

    message: int
    at: datetime | None = None
    moved_to: date | None = None
    moved_workout: str | None = None
    moved_from: date | None = None
    owed: date | None = None
    swapped: Swapped | None = None
    turn: Turn | None = None
    rest_on: date | None = None
    left_out: tuple[str, ...] = ()
    stands_for: date | None = None
    put_off_on: tuple[date, ...] = ()
    paused: bool = False
    paused_until: date | None = None
    pause_ahead: PauseAhead | None = None
    reminders_off: bool = False
    ill_on: date | None = None
    ill_days: tuple[date, ...] = ()
