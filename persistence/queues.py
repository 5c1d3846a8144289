"""What waits: how much of it, and since when. Only what waits is looked at, by its own indexes."""

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, func, select

from persistence.tables import DeliveryRow, InboxRow, OutboxRow, PersonRow


@dataclass(frozen=True, slots=True)
class Queue:
    """How many wait, and since which moment (aware) the first one does; None where none waits."""

    length: int
    since: datetime | None


@dataclass(frozen=True, slots=True)
class Queues:
    """What came in, who is to be woken, and what is to be said."""

    inbox: Queue
    wakes: Queue
    outbox: Queue


def queues(connection: Connection, now: datetime) -> Queues:
    """Return what waits `now`."""
    waiting = select(func.count()).select_from(InboxRow).where(InboxRow.done_at.is_(None))
    oldest = select(InboxRow.received_at).where(InboxRow.done_at.is_(None)).order_by(InboxRow.number).limit(1)
    due = select(func.count(), func.min(PersonRow.wake_at)).where(PersonRow.wake_at <= now)
    pending = select(func.count()).select_from(OutboxRow).where(OutboxRow.state == "pending")
    late = select(func.min(DeliveryRow.due_at)).where(DeliveryRow.due_at <= now)
    woken = connection.execute(due).one()
    return Queues(
        inbox=Queue(connection.execute(waiting).scalar_one(), connection.execute(oldest).scalar()),
        wakes=Queue(*woken),
        outbox=Queue(connection.execute(pending).scalar_one(), connection.execute(late).scalar()),
    )
