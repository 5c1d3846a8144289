"""One step for one person, in one transaction: what is next, the state, the decision, its outcome.

What is next is the oldest waiting message, and without one a wake that is due: who wrote had not seen what
the wake is to say, and after an outage it may be needless by then. Messages are taken in the order in which
they came in, and whatever the clock says, a message in the inbox is there.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from datetime import datetime, timedelta
from types import MappingProxyType
from typing import Any, NamedTuple

from sqlalchemy import Connection, Row, bindparam, func, select, update

from domain.incoming import Heard
from domain.outcome import Outcome
from domain.parts import Part, Say
from domain.state import State
from persistence import deliveries, inbox, outbox
from persistence.engine import is_trouble
from persistence.faults import NoProgress, StoreFault, Undecided, Unreadable
from persistence.leases import Lease, fresh_token
from persistence.programmes import Programmes
from persistence.save import save
from persistence.state import load
from persistence.statements import Prepared
from persistence.tables import InboxRow, PersonRow

Decide = Callable[[State, Heard | None], Outcome]
"""A decision on what was heard; on None: for a wake."""

WOKEN_AT_ONCE = 20
"""How many people are woken in one transaction. Whoever writes meanwhile waits for them, some hundredths of a
second."""

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
    connection: Connection, lease_seconds: float, now: datetime, decide: Decide, programmes: Programmes
) -> tuple[int, Lease | None]:
    """Do what is next for somebody who wrote; where nobody did, wake some who are due.

    Returns how many steps that were, and the lease of whoever has more to do: this transaction needs none.
    Raises as `work`.
    """
    for person in inbox.who_wrote(connection, now, 1):
        lease = Lease(person, fresh_token(), lease_seconds)
        goes_on = _step(connection, _taken_up(connection, person), lease, now, decide, programmes)
        return 1, lease if goes_on else None
    return _wake(connection, inbox.who_is_due(connection, now, WOKEN_AT_ONCE), now, decide, programmes), None


def _wake(
    connection: Connection, people: Sequence[int], now: datetime, decide: Decide, programmes: Programmes
) -> int:
    """Wake people who are due and whom this transaction has taken up; return how many there were.

    Whoever has written meanwhile is left alone: that is heard first.
    """
    woken, said = 0, []
    for number in people:
        person = _taken_up(connection, number)
        if inbox.waiting(connection, number)[0] is None:
            said += _decided(connection, person, None, now, decide, programmes, lambda _: _ENDED).said
            woken += 1
    # In one go, so that all who wait for each other's chats take them in the same order.
    deliveries.note_waiting(connection, said, now)
    return woken


def _taken_up(connection: Connection, number: int) -> Any:
    with _told_as(lambda why: Unreadable(number, why)):
        return _TAKEN_UP(connection, {"person": number}).one()


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

    def columns(outcome: Outcome) -> Mapping[str, Any]:
        return _renewed(lease, now) if more or _is_due(outcome, now) else _ENDED

    done = _decided(connection, person, heard, now, decide, programmes, columns)
    deliveries.note_waiting(connection, done.said, now)
    return (more or _is_due(done.outcome, now)) and done.person == lease.person


class _Done(NamedTuple):
    """What was decided, for whom it was saved, and what is said: with its numbers in the outbox, and still to
    be noted as waiting."""

    outcome: Outcome
    person: int
    said: list[tuple[int, Say]]


def _decided(
    connection: Connection,
    person: Row[Any],
    heard: Heard | None,
    now: datetime,
    decide: Decide,
    programmes: Programmes,
    lease: Callable[[Outcome], Mapping[str, Any]],
) -> _Done:
    """Decide on what was heard, or None: on a wake, and save what comes of it.

    `lease` gives the columns of the person's lease as they are to be.
    """
    with _told_as(lambda why: Unreadable(person.number, why)):
        state = load(connection, person, heard, programmes)
    with _told_as(lambda why: Undecided(person.number, heard.number if heard else None, why)):
        outcome = decide(state, heard)
        if heard is None and _is_due(outcome, now):
            raise NoProgress(person.number)
        number, said = save(connection, person, heard, outcome, lease(outcome), now)
        if heard is not None:
            inbox.done(connection, heard.number, now, understood=outcome.understood)
    return _Done(outcome, number, said)


def _is_due(outcome: Outcome, now: datetime) -> bool:
    return outcome.wake_at is not None and outcome.wake_at <= now


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
