"""Who reads a platform's updates: one worker at a time, under a lease with a fencing token.

The fence goes up with each new reader. What is read is stored only under the fence that stands, so a reader
that was slow and lost its lease stores nothing more and does not move how far was read.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, select, update

from persistence.faults import ReaderLost
from persistence.statements import InsertOr, Prepared, or_nothing
from persistence.tables import ReaderRow


@dataclass(frozen=True, slots=True)
class Reader:
    """The right to read what goes by this `name`, until a moment (aware); renewed for `seconds`."""

    name: str
    fence: int
    until: datetime
    seconds: float


_ADD = InsertOr(ReaderRow, or_nothing)
_READER = select(ReaderRow.fence, ReaderRow.lease_until).where(ReaderRow.name == bindparam("which"))
_LOOK = Prepared(_READER)
_LOCK = Prepared(_READER.with_for_update())
_CHANGE = Prepared(
    update(ReaderRow).where(ReaderRow.name == bindparam("which"), ReaderRow.fence == bindparam("stands"))
)
_END_ALL = update(ReaderRow).where(ReaderRow.lease_until.is_not(None)).values(lease_until=None)


def claim(connection: Connection, name: str, now: datetime, seconds: float) -> Reader | None:
    """Become the reader; None while another one is."""
    found = _LOOK(connection, {"which": name}).first()
    if found is not None and found.lease_until is not None and found.lease_until > now:
        return None
    if found is None:
        _ADD(connection, {"name": name, "fence": 0})
    found = _LOCK(connection, {"which": name}).one()  # another may have come first
    if found.lease_until is not None and found.lease_until > now:
        return None
    reader = Reader(name, found.fence + 1, now + timedelta(seconds=seconds), seconds)
    values = {"which": name, "stands": found.fence, "fence": reader.fence, "lease_until": reader.until}
    _CHANGE(connection, values)
    return reader


def renew(connection: Connection, reader: Reader, now: datetime) -> Reader:
    """Return the reader with the lease begun anew. Raises ReaderLost."""
    until = now + timedelta(seconds=reader.seconds)
    _change(connection, reader, until)
    return Reader(reader.name, reader.fence, until, reader.seconds)


def check(connection: Connection, reader: Reader) -> None:
    """Keep others from becoming the reader before this unit ends. Raises ReaderLost."""
    found = _LOCK(connection, {"which": reader.name}).first()
    if found is None or found.fence != reader.fence:
        raise ReaderLost(reader.name)


def end(connection: Connection, reader: Reader) -> None:
    """Let another one read; a lease that was lost is left alone."""
    _CHANGE(connection, {"which": reader.name, "stands": reader.fence, "lease_until": None})


def end_all(connection: Connection, later_than: datetime | None = None) -> None:
    """End every lease, or those that run on beyond a moment; the fences stand."""
    which = _END_ALL if later_than is None else _END_ALL.where(ReaderRow.lease_until > later_than)
    connection.execute(which)


def _change(connection: Connection, reader: Reader, until: datetime) -> None:
    values = {"which": reader.name, "stands": reader.fence, "lease_until": until}
    if _CHANGE(connection, values).rowcount != 1:
        raise ReaderLost(reader.name)
