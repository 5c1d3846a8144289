"""One step for one person, in one transaction: what is next, the state, the decision, its outcome.

What is next is the oldest waiting message, and without one a wake that is due: who wrote had not seen what
the wake is to say, and after an outage it may be needless by then. Messages are taken in the order in which
they came in, and whatever the clock says, a message in the inbox is there.
"""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any

from sqlalchemy import Connection, Row, bindparam, func, select, update

from domain.incoming import Heard
from domain.outcome import Outcome
from domain.parts import Part, Say
from domain.state import State
from persistence import inbox, outbox
from persistence.engine import is_trouble
from persistence.faults import NoProgress, StoreFault, Undecided, Unreadable
from persistence.leases import Lease
from persistence.programmes import Programmes
from persistence.save import save
from persistence.state import load
from persistence.statements import Prepared
from persistence.tables import InboxRow, PersonRow

Decide = Callable[[State, Heard | None], Outcome]
"""A decision on what was heard; on None: for a wake."""

SET_ASIDE_WAKE = timedelta(hours=1)
"""How long a person is let be whose waking failed."""

_MINE = (PersonRow.number == bindparam("person"), PersonRow.lease_token == bindparam("token"))
_TAKEN_UP = Prepared(select(PersonRow).where(PersonRow.number == bindparam("person")))
_HELD = Prepared(select(PersonRow).where(*_MINE).with_for_update(key_share=True))
_STILL_HELD = Prepared(select(PersonRow.number).where(*_MINE).with_for_update(key_share=True))
_PERSON = Prepared(update(PersonRow).where(PersonRow.number == bindparam("person")))
_LET_GO = Prepared(update(PersonRow).where(*_MINE))
_RESTED = Prepared(
    select(func.min(PersonRow.lease_until))
    .join(InboxRow, InboxRow.person == PersonRow.number)
    .where(InboxRow.done_at.is_(None), PersonRow.lease_until > bindparam("now"))
)
_ENDED: Mapping[str, Any] = MappingProxyType({"lease_token": None, "lease_until": None})


def work(connection: Connection, lease: Lease, now: datetime, decide: Decide, programmes: Programmes) -> bool:
    """Do what is next; return whether there is more to do, for which the lease is kept.

    Otherwise the lease has ended, or had been lost. Raises Undecided where no decision came about, Unreadable
    where the person's state cannot be loaded.
    """
    with _told_as(lambda why: Unreadable(lease.person, why)):
        person = _HELD(connection, {"person": lease.person, "token": lease.token}).first()
    return person is not None and _step(connection, person, lease, now, decide, programmes)


def begin(
    connection: Connection, lease: Lease, now: datetime, decide: Decide, programmes: Programmes
) -> bool:
    """Do what is next for somebody whom this transaction has taken up; return whether there is more to do.

    Only then does the lease stand; it needs none meanwhile. Raises as `work`.
    """
    with _told_as(lambda why: Unreadable(lease.person, why)):
        person = _TAKEN_UP(connection, {"person": lease.person}).one()
    return _step(connection, person, lease, now, decide, programmes)


def _step(
    connection: Connection,
    person: Row[Any],
    lease: Lease,
    now: datetime,
    decide: Decide,
    programmes: Programmes,
) -> bool:
    """Do what is next for the person whose locked row this is.

    The lock leaves the key alone: others may still store messages that point at this person.
    """
    message, more = inbox.waiting(connection, lease.person)
    wakes = person.wake_at is not None and person.wake_at <= now
    if message is None and not wakes:
        let_go(connection, lease)
        return False
    with _told_as(lambda why: Undecided(lease.person, message.number if message else None, why)):
        heard = inbox.heard(connection, message, lease.person) if message else None
    with _told_as(lambda why: Unreadable(lease.person, why)):
        state = load(connection, person, heard, programmes)
    with _told_as(lambda why: Undecided(lease.person, heard.number if heard else None, why)):
        outcome = decide(state, heard)
        if heard is None and outcome.wake_at is not None and outcome.wake_at <= now:
            raise NoProgress(lease.person)
        goes_on = more or (outcome.wake_at is not None and outcome.wake_at <= now)
        columns = _renewed(lease, now) if goes_on else _ENDED
        number = save(connection, person, heard, outcome, columns, now)
        if heard is not None:
            inbox.done(connection, heard.number, now, understood=outcome.understood)
    return goes_on and number == lease.person


def set_aside(
    connection: Connection,
    lease: Lease,
    message: int | None,
    fault: str,
    now: datetime,
    parts: tuple[Part, ...],
) -> None:
    """Let a message be of which no decision came about, or (None) a wake for an hour; the lease goes on.

    Whoever wrote the message is told `parts`; it is kept.
    """
    if _STILL_HELD(connection, {"person": lease.person, "token": lease.token}).first() is None:
        return
    if message is not None:
        inbox.done(connection, message, now, fault)
        if parts:
            outbox.put(connection, [Say(to=lease.person, parts=parts)], outbox.About(message=message), now)
    else:
        _PERSON(connection, {"person": lease.person, "wake_at": now + SET_ASIDE_WAKE})


def let_go(connection: Connection, lease: Lease) -> None:
    """End a lease, if it is still held."""
    _LET_GO(connection, {"person": lease.person, "token": lease.token, **_ENDED})


def rest(connection: Connection, lease: Lease, until: datetime) -> None:
    """Let nobody act for the person until then; a lease that was lost is left alone."""
    _LET_GO(connection, {"person": lease.person, "token": lease.token, "lease_until": until})


def next_due(connection: Connection, now: datetime) -> datetime | None:
    """Return the first moment after `now` at which somebody is to be woken, or goes on after a rest."""
    wakes = connection.execute(select(func.min(PersonRow.wake_at)).where(PersonRow.wake_at > now)).scalar()
    rested = _RESTED(connection, {"now": now}).scalar()
    return min((moment for moment in (wakes, rested) if moment is not None), default=None)


@contextmanager
def _told_as(fault: Callable[[str], StoreFault]) -> Iterator[None]:
    """Tell of whatever is raised as a `fault`, except for the database's own trouble."""
    try:
        yield
    except Exception as error:
        if is_trouble(error):
            raise
        raise fault(type(error).__name__) from error


def _renewed(lease: Lease, now: datetime) -> dict[str, Any]:
    return {"lease_token": lease.token, "lease_until": now + timedelta(seconds=lease.seconds)}
