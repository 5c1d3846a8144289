"""One step for one person, in one transaction: what is next, the state, the decision, its outcome.

What is next is whichever came first in time: the oldest waiting message, or the moment to be woken. Messages
are taken in the order in which they came in, and whatever the clock says, a message in the inbox is there.
"""

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any

from sqlalchemy import Connection, Row, func, select, update
from sqlalchemy.exc import OperationalError

from domain.incoming import Heard
from domain.outcome import Outcome
from domain.state import State
from persistence import inbox
from persistence.faults import NoProgress, Undecided
from persistence.leases import Lease
from persistence.programmes import Programmes
from persistence.save import save
from persistence.state import load
from persistence.tables import PersonRow

Decide = Callable[[State, Heard | None], Outcome]
"""A decision on what was heard; on None: for a wake."""

SET_ASIDE_WAKE = timedelta(hours=1)
"""How long a person is let be whose waking failed."""

_ENDED: Mapping[str, Any] = MappingProxyType({"lease_token": None, "lease_until": None})


def work(connection: Connection, lease: Lease, now: datetime, decide: Decide, programmes: Programmes) -> bool:
    """Do what is next; return whether there is more to do, for which the lease is kept.

    Otherwise the lease has ended, or had been lost. Raises Undecided where no decision came about.
    """
    person = _held(connection, lease)
    if person is None:
        return False
    message, more = inbox.waiting(connection, lease.person)
    heard = None if message is None or _wakes_first(person.wake_at, message, now) else message
    if heard is None and (person.wake_at is None or person.wake_at > now):
        let_go(connection, lease)
        return False
    try:
        outcome = decide(load(connection, person, heard, programmes), heard)
        if heard is None and outcome.wake_at is not None and outcome.wake_at <= person.wake_at:
            raise NoProgress(lease.person)
        behind = message is not None if heard is None else more
        goes_on = behind or (outcome.wake_at is not None and outcome.wake_at <= now)
        columns = _renewed(lease, now) if goes_on else _ENDED
        number = save(connection, person, heard, outcome, columns, now)
        if heard is not None:
            inbox.done(connection, heard.number, now)
    except OperationalError:
        raise  # the database's trouble, not the message's
    except Exception as error:
        raise Undecided(lease.person, heard.number if heard else None, type(error).__name__) from error
    return goes_on and number == lease.person


def set_aside(connection: Connection, lease: Lease, message: int | None, fault: str, now: datetime) -> None:
    """Let a message be of which no decision came about, or (None) a wake for an hour; the lease goes on."""
    if _held(connection, lease) is None:
        return
    if message is not None:
        inbox.done(connection, message, now, fault)
    else:
        later = update(PersonRow).where(PersonRow.number == lease.person)
        connection.execute(later.values(wake_at=now + SET_ASIDE_WAKE))


def let_go(connection: Connection, lease: Lease) -> None:
    """End a lease, if it is still held."""
    held = update(PersonRow).where(PersonRow.number == lease.person, PersonRow.lease_token == lease.token)
    connection.execute(held.values(_ENDED))


def next_due(connection: Connection, now: datetime) -> datetime | None:
    """Return the first moment after `now` at which somebody is to be woken."""
    return connection.execute(select(func.min(PersonRow.wake_at)).where(PersonRow.wake_at > now)).scalar()


def _held(connection: Connection, lease: Lease) -> Row[Any] | None:
    """Lock and return the person's row; None where another worker has it by now.

    The lock leaves the key alone: others may still store messages that point at this person.
    """
    mine = select(PersonRow).where(PersonRow.number == lease.person, PersonRow.lease_token == lease.token)
    return connection.execute(mine.with_for_update(key_share=True)).first()


def _wakes_first(wake_at: datetime | None, message: Heard, now: datetime) -> bool:
    return wake_at is not None and wake_at <= now and wake_at < message.at


def _renewed(lease: Lease, now: datetime) -> dict[str, Any]:
    return {"lease_token": lease.token, "lease_until": now + timedelta(seconds=lease.seconds)}
