"""Letting go of old messages: what people typed and what they were told, as long ago as the setting says.

The journal stays, and so do the rows, by which a message is known again and a set knows where it came from:
only the words go. Each table is gone through once, in the order of its numbers; how far stands in the
database.
"""

from collections.abc import Collection
from datetime import datetime

from sqlalchemy import Connection, Integer, bindparam, delete, select, update

from domain.erasure import wordless
from persistence.inbox import cursor, keep_cursor
from persistence.tables import InboxRow, OutboxRow, WordsRow

PORTION = 500
"""How many messages of each kind are gone through in one transaction: others wait meanwhile."""

_CAME_IN = (
    select(InboxRow.number, InboxRow.person, InboxRow.incoming, InboxRow.done_at)
    .where(InboxRow.number > bindparam("last"))
    .order_by(InboxRow.number)
    .limit(bindparam("most", type_=Integer))
)
_WENT_OUT = (
    select(OutboxRow.number, OutboxRow.state, OutboxRow.created_at)
    .where(OutboxRow.number > bindparam("last"))
    .order_by(OutboxRow.number)
    .limit(bindparam("most", type_=Integer))
)


def forget_words(connection: Connection, before: datetime) -> None:
    """Let the words go of the next portion of messages from before that moment."""
    _of_inbox(connection, before)
    _of_outbox(connection, before)


def _of_inbox(connection: Connection, before: datetime) -> None:
    rows = connection.execute(_CAME_IN, {"last": _last(connection, InboxRow), "most": PORTION}).all()
    old = []
    for row in rows:
        if row.done_at is None or row.done_at >= before:
            break
        old.append(row)
    for row in old:
        left = wordless(row.incoming)
        if left != row.incoming:
            which = update(InboxRow).where(InboxRow.number == row.number)
            connection.execute(which.values(incoming=left, understood=None))
    _forget_talk(connection, {row.person for row in old}, before)
    _keep_last(connection, InboxRow, [row.number for row in old])


def _of_outbox(connection: Connection, before: datetime) -> None:
    rows = connection.execute(_WENT_OUT, {"last": _last(connection, OutboxRow), "most": PORTION}).all()
    old = []
    for row in rows:
        if row.state == "pending" or row.created_at >= before:
            break
        old.append(row)
    for state, kept in (("sent", {"words": "", "labels": ()}), ("failed", {})):
        numbers = [row.number for row in old if row.state == state]
        if numbers:
            values = {"parts": (), "actions": (), **kept}
            connection.execute(update(OutboxRow).where(OutboxRow.number.in_(numbers)).values(**values))
    _keep_last(connection, OutboxRow, [row.number for row in old])


def _forget_talk(connection: Connection, people: Collection[int], before: datetime) -> None:
    """Let go of what these people and their coaches have written to each other."""
    connection.execute(delete(WordsRow).where(WordsRow.client.in_(people), WordsRow.at < before))


def _last(connection: Connection, table: type[InboxRow | OutboxRow]) -> int:
    return int(cursor(connection, _name(table)) or 0)


def _keep_last(connection: Connection, table: type[InboxRow | OutboxRow], numbers: list[int]) -> None:
    if numbers:
        keep_cursor(connection, _name(table), str(numbers[-1]))


def _name(table: type[InboxRow | OutboxRow]) -> str:
    return f"forgotten:{table.__tablename__}"
