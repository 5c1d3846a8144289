"""What came in: stored once however often it comes, then taken one at a time for each person."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from uuid import uuid4

from sqlalchemy import (
    Connection,
    CursorResult,
    Integer,
    bindparam,
    insert,
    or_,
    select,
    type_coerce,
    update,
)
from sqlalchemy import Text as TextColumn

from domain.incoming import (
    Document,
    Edited,
    FromChat,
    FromCoach,
    FromDelivery,
    Heard,
    JournalSent,
    Pressed,
    Reachable,
    Text,
)
from domain.understood import Understood
from persistence.leases import Lease, fresh_token
from persistence.people import numbers_of_chats
from persistence.pressing import with_action
from persistence.replies import with_original, with_reply
from persistence.statements import InsertOr, Prepared, or_nothing, or_update
from persistence.tables import INCOMING, CursorRow, InboxRow, PersonRow


@dataclass(frozen=True, slots=True)
class Received:
    """One thing from a chat. `source` and `key` together are unique for all time.

    `at` is when the person said it (aware), which may be long before it was fetched.
    """

    source: str
    key: str
    chat: str
    at: datetime
    incoming: FromChat


_STORE = InsertOr(InboxRow, or_nothing)
_KEEP_CURSOR = InsertOr(CursorRow, or_update("name", columns=["value"]))

_FREE = or_(PersonRow.lease_until.is_(None), PersonRow.lease_until <= bindparam("now"))
_WROTE = Prepared(
    select(PersonRow.number)
    .join(InboxRow, InboxRow.person == PersonRow.number)
    .where(InboxRow.done_at.is_(None), _FREE)
    .order_by(InboxRow.number)
    .limit(bindparam("most", type_=Integer))
    .with_for_update(of=PersonRow, key_share=True, skip_locked=True)
)
_DUE = Prepared(
    select(PersonRow.number)
    .where(PersonRow.wake_at <= bindparam("now"), _FREE)
    .order_by(PersonRow.wake_at, PersonRow.number)
    .limit(bindparam("most", type_=Integer))
    .with_for_update(key_share=True, skip_locked=True)
)
_LEASE = Prepared(update(PersonRow).where(PersonRow.number == bindparam("person")))
_WAITING = Prepared(
    select(
        InboxRow.number,
        InboxRow.received_at,
        type_coerce(InboxRow.incoming, TextColumn).label("json"),
        InboxRow.chat,
    )
    .where(InboxRow.person == bindparam("person"), InboxRow.done_at.is_(None))
    .order_by(InboxRow.number)
    .limit(2)
)
_FILE = Prepared(
    select(InboxRow.incoming).where(
        InboxRow.number == bindparam("message"), InboxRow.person == bindparam("person")
    )
)
_DONE = Prepared(update(InboxRow).where(InboxRow.number == bindparam("message")))


@dataclass(frozen=True, slots=True)
class Waiting:
    """A message that waits: its number, when it came in, and the rest as it stands in the inbox."""

    number: int
    at: datetime
    json: str
    chat: str | None


def receive(connection: Connection, items: Sequence[Received], cursor: tuple[str, str] | None) -> None:
    """Store what is new among `items`, and how far the platform has been read."""
    if items:
        numbers = numbers_of_chats(connection, {item.chat for item in items}, items[0].at)
        rows = [
            {
                "source": item.source,
                "key": item.key,
                "person": numbers[item.chat],
                "chat": item.chat,
                "message_key": _message_key(item.incoming),
                "incoming": item.incoming,
                "received_at": item.at,
            }
            for item in items
        ]
        _STORE.many(connection, rows)
    if cursor is not None:
        keep_cursor(connection, *cursor)


def keep_cursor(connection: Connection, name: str, value: str) -> None:
    """Note how far `name` has been read."""
    _KEEP_CURSOR(connection, {"name": name, "value": value})


def cursor(connection: Connection, name: str) -> str | None:
    """Return how far `name` was read; None where it never was."""
    return connection.execute(select(CursorRow.value).where(CursorRow.name == name)).scalar()


def with_something_to_do(connection: Connection, now: datetime, most: int) -> list[int]:
    """Return up to `most` people: who wrote, longest ago first, then who is due.

    Whoever typed something thus never waits behind a crowd that is only to be reminded. Nobody else can take
    them up before the transaction ends.
    """
    found = dict.fromkeys(who_wrote(connection, now, most))
    if len(found) < most:  # who wrote may be due as well
        found |= dict.fromkeys(who_is_due(connection, now, most))
    return list(found)[:most]


def who_wrote(connection: Connection, now: datetime, most: int) -> list[int]:
    """Return up to `most` people who wrote, longest ago first; nobody else can take them up meanwhile."""
    return list(_WROTE(connection, {"now": now, "most": most}).scalars())


def who_is_due(connection: Connection, now: datetime, most: int) -> list[int]:
    """Return up to `most` people who are to be woken, longest ago first; as above."""
    return list(_DUE(connection, {"now": now, "most": most}).scalars())


def claim_people(connection: Connection, now: datetime, lease_seconds: float, most: int) -> tuple[Lease, ...]:
    """Lease up to `most` people who have something to do."""
    leases = tuple(
        Lease(person, fresh_token(), lease_seconds) for person in with_something_to_do(connection, now, most)
    )
    if leases:
        until = now + timedelta(seconds=lease_seconds)
        _LEASE.many(
            connection,
            [{"person": each.person, "lease_token": each.token, "lease_until": until} for each in leases],
        )
    return leases


def waiting(connection: Connection, person: int) -> tuple[Waiting | None, bool]:
    """Return the person's oldest waiting message, and whether there are more behind it."""
    rows = _WAITING(connection, {"person": person})
    return (Waiting(*rows[0]), len(rows) > 1) if rows else (None, False)


def heard(connection: Connection, message: Waiting, person: int) -> Heard:
    """Return a waiting message with all that is known of it. Raises ValidationError where it is spoilt."""
    incoming = INCOMING.validate_json(message.json)
    match incoming:
        case Text(replies_to=str()):
            incoming = with_reply(connection, incoming, message.chat, message.number, person)
        case Edited():
            incoming = with_original(connection, incoming, message.chat, message.number, person)
        case Pressed():
            incoming = with_action(connection, incoming, person)
        case JournalSent():
            incoming = incoming.model_copy(
                update={"text": file_sent(connection, incoming.file, incoming.coach)}
            )
        case _:
            pass
    return Heard(message.number, message.at, incoming)


def file_sent(connection: Connection, message: int, person: int) -> str | None:
    """Return what the file in inbox message `message` of that person says; None where it is gone."""
    row = _FILE(connection, {"message": message, "person": person}).first()
    return row.incoming.text if row is not None and isinstance(row.incoming, Document) else None


def claim(connection: Connection, person: int, now: datetime, lease_seconds: float) -> Lease | None:
    """Lease this very person, whatever there is to do; None while somebody else has the lease."""
    lease = Lease(person, fresh_token(), lease_seconds)
    values = {"lease_token": lease.token, "lease_until": now + timedelta(seconds=lease_seconds)}
    free = update(PersonRow).where(PersonRow.number == person, _FREE)
    result: CursorResult[object] = connection.execute(free.values(**values), {"now": now})
    return lease if result.rowcount == 1 else None


def bring_journal(
    connection: Connection, client: int, file: Document, order: JournalSent, now: datetime
) -> int:
    """Put an old journal into the inbox of its coach, as done, and the order to take it into the client's.

    Returns the number of the file, by which all of it can be undone.
    """
    row = {
        "source": "desk",
        "key": f"journal:{uuid4().hex}",
        "person": order.coach,
        "incoming": file,
        "received_at": now,
        "done_at": now,
    }
    number = int(connection.execute(insert(InboxRow).returning(InboxRow.number), row).scalar_one())
    ordered = order.model_copy(update={"file": number, "change": number})
    _STORE(
        connection,
        {
            "source": "desk",
            "key": f"journal:{number}",
            "person": client,
            "incoming": ordered,
            "received_at": now,
        },
    )
    return number


def done(
    connection: Connection,
    message: int,
    now: datetime,
    fault: str | None = None,
    understood: Understood | None = None,
) -> None:
    """Mark a message as done, with what it was `understood` as; with a `fault`, as one nothing came of."""
    _DONE(connection, {"message": message, "done_at": now, "fault": fault, "understood": understood})


def orders_of(person: int, cause: int | str) -> str:
    """Return how the keys of the orders begin that came of a person's decision on `cause`."""
    return f"{person}:{cause}"


def order(
    connection: Connection,
    to: int,
    incoming: FromCoach | Reachable | FromDelivery,
    key: str,
    now: datetime,
) -> None:
    """Put what another person's decision ordered, or what sending came to, into the inbox of person `to`."""
    row = {"source": "desk", "key": key, "person": to, "incoming": incoming, "received_at": now}
    _STORE(connection, row)


def _message_key(incoming: FromChat) -> str | None:
    match incoming:
        case Text(key=key) | Edited(key=key):
            return key or None
        case _:
            return None
