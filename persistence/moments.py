"""The moments that stand in the database, and what becomes of them where a clock has gone wrong.

What was noted while the clock was ahead lies in the future once it is put right: messages to be sent,
people to be woken, leases. Nothing waits for such a moment. Nobody is disturbed by it: whoever is woken too
early is only asked again when to be woken next.
"""

from datetime import UTC, datetime, timedelta

from sqlalchemy import Connection, func, select, update

from persistence import readers
from persistence.tables import BudgetRow, DeliveryRow, OutboxRow, PersonRow

LONGEST_LEASE = timedelta(minutes=10)
"""No worker takes anything for longer than this."""

_MARGIN = timedelta(seconds=5)


def of_server(connection: Connection) -> datetime | None:
    """Return the moment by the clock of the database's server; None where there is no server, on SQLite."""
    if connection.dialect.name == "sqlite":
        return None
    moment: datetime = connection.execute(select(func.clock_timestamp())).scalar_one()
    return moment.astimezone(UTC)


def is_before_the_past(connection: Connection, now: datetime) -> bool:
    """Return whether something was said later than `now`, so that the clock must have been set back since."""
    newest = select(OutboxRow.created_at).order_by(OutboxRow.number.desc()).limit(1)
    said_at = connection.execute(newest).scalar()
    return said_at is not None and said_at > now + _MARGIN


def bring_forward(connection: Connection, now: datetime) -> None:
    """Let everything go on `now` that waits for a later moment, and end leases that nobody can have given."""
    for table in (PersonRow, DeliveryRow):
        connection.execute(
            update(table)
            .where(table.lease_until > now + LONGEST_LEASE)
            .values(lease_token=None, lease_until=None)
        )
    readers.end_all(connection, later_than=now + LONGEST_LEASE)
    connection.execute(
        update(OutboxRow)
        .where(OutboxRow.state == "pending", OutboxRow.not_before > now)
        .values(not_before=None)
    )
    for paced in (BudgetRow, DeliveryRow):
        connection.execute(update(paced).where(paced.used_to > now).values(used_to=now))
    connection.execute(update(DeliveryRow).where(DeliveryRow.due_at > now).values(due_at=now))
    connection.execute(update(PersonRow).where(PersonRow.wake_at > now).values(wake_at=now))
