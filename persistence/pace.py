"""How fast a platform takes messages, and when there is room for the next one.

Both the bot as a whole and each chat have a pace: so many a second, a few of them at once. What has been sent
stands in the database as one moment, up to which the pace is used up; so all workers share one budget, and it
costs the same however many there are.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, select, update

from persistence.faults import NoRoomYet
from persistence.statements import InsertOr, Prepared, or_nothing
from persistence.tables import BudgetRow


@dataclass(frozen=True, slots=True)
class Rate:
    """Messages a second in the long run, and how many of them may come at once after a silence.

    Within any one second there are at most `a_second` + `at_once` of them.
    """

    a_second: float
    at_once: int

    def room_at(self, used_to: datetime | None, now: datetime) -> datetime:
        """Return the first moment, not before `now`, at which there is room for a message."""
        if used_to is None:
            return now
        return max(now, used_to - timedelta(seconds=(self.at_once - 1) / self.a_second))

    def used(self, used_to: datetime | None, now: datetime) -> datetime:
        """Return up to when the rate is used up once another message has gone out `now`."""
        return max(used_to or now, now) + timedelta(seconds=1 / self.a_second)


@dataclass(frozen=True, slots=True)
class Pace:
    """The pace of a platform: `everywhere` together, under a name that all workers share, and `in_chat`."""

    name: str
    everywhere: Rate
    in_chat: Rate


_ADD = InsertOr(BudgetRow, or_nothing)
_USED_TO = select(BudgetRow.used_to).where(BudgetRow.name == bindparam("which"))
_LOOK = Prepared(_USED_TO)
_LOCK = Prepared(_USED_TO.with_for_update())
_USE = Prepared(update(BudgetRow).where(BudgetRow.name == bindparam("which")))


def require_room(connection: Connection, pace: Pace, now: datetime) -> None:
    """Raise NoRoomYet where the platform takes nothing `now`."""
    room_at = pace.everywhere.room_at(_LOOK(connection, {"which": pace.name}).scalar(), now)
    if room_at > now:
        raise NoRoomYet(room_at)


def take_room(connection: Connection, pace: Pace, now: datetime) -> bool:
    """Use up room for one message; False where there is none. Others wait until this unit ends."""
    found = _LOCK(connection, {"which": pace.name}).first()
    if found is None:
        _ADD(connection, {"name": pace.name, "used_to": now})
        found = _LOCK(connection, {"which": pace.name}).one()
    if pace.everywhere.room_at(found.used_to, now) > now:
        return False
    _USE(connection, {"which": pace.name, "used_to": pace.everywhere.used(found.used_to, now)})
    return True
