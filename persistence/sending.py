"""Sending: the messages of one chat in order, each until it arrives or is given up, by one sender at a time.

Every step shows the lease of the chat, and a step without it changes nothing.
"""

from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, bindparam, select, update

from domain.incoming import Arrived, Reachable, SendingFailed
from domain.parts import Part, Say
from persistence import inbox, outbox
from persistence.deliveries import held, renew, room_at, settle
from persistence.leases import ChatLease
from persistence.outbox import Outgoing, Spread
from persistence.pace import take_room
from persistence.statements import InsertOr, Prepared, or_update
from persistence.tables import OutboxRow, PersonRow, SentKeyRow

_NEXT = Prepared(
    select(
        OutboxRow,
        PersonRow.chat,
        PersonRow.name,
        PersonRow.zone,
        PersonRow.unit,
        PersonRow.is_coach,
        PersonRow.is_client,
    )
    .join(PersonRow, PersonRow.number == OutboxRow.person)
    .where(OutboxRow.person == bindparam("person"), OutboxRow.state == "pending")
    .order_by(OutboxRow.number)
    .limit(1)
)
_THAT = update(OutboxRow).where(
    OutboxRow.number == bindparam("message"),
    OutboxRow.person == bindparam("to"),
    OutboxRow.state == bindparam("was"),
)
_MESSAGE = Prepared(_THAT)
_LOST = Prepared(
    update(PersonRow).where(
        PersonRow.number == bindparam("lost"), PersonRow.is_client, PersonRow.unreachable_since.is_(None)
    )
)
_BACK = Prepared(
    update(PersonRow).where(
        PersonRow.number == bindparam("back"), PersonRow.is_client, PersonRow.unreachable_since.is_not(None)
    )
)
_CHAT = Prepared(select(PersonRow.chat).where(PersonRow.number == bindparam("person")))
_KEEP_KEY = InsertOr(SentKeyRow, or_update("chat", "message_key", columns=["outbox"]))
_TRY = Prepared(_THAT.values(attempts=OutboxRow.attempts + 1))


def next_message(connection: Connection, lease: ChatLease, now: datetime) -> Outgoing | None:
    """Return the chat's first waiting message if it is due; otherwise let go of the lease and return None."""
    chat = held(connection, lease)
    if chat is None:
        return None
    row = _NEXT(connection, {"person": lease.person}).first()
    room = room_at(lease, chat, now)
    if row is None or room > now or (row.not_before is not None and row.not_before > now):
        settle(connection, lease.person, now, let_go=True, room=room)
        return None
    return Outgoing(
        number=row.number,
        chat=row.chat,
        name=row.name,
        zone=row.zone,
        unit=row.unit,
        is_coach=row.is_coach,
        say=Say(to=lease.person, parts=row.parts, buttons=row.actions, weight=row.weight, edits=row.edits),
        attempts=row.attempts,
        unclear=row.trying_since is not None,
        created_at=row.created_at,
        is_client=row.is_client,
        earlier=None if row.edits is None else outbox.earlier(connection, lease.person, row.edits),
    )


def sending(connection: Connection, lease: ChatLease, number: int, now: datetime) -> bool:
    """Note that a try to send begins; False where nothing is to be sent.

    Then the lease was lost, or there is no room, and the lease ends.
    """
    chat = held(connection, lease)
    if chat is None:
        return False
    if lease.pace is not None and not take_room(connection, lease.pace, now):
        settle(connection, lease.person, now, let_go=True)
        return False
    renew(connection, lease, now, chat)
    _TRY(connection, {"message": number, "to": lease.person, "was": "pending", "trying_since": now})
    return True


def sent(
    connection: Connection,
    lease: ChatLease,
    number: int,
    words: str,
    message_keys: Sequence[str],
    labels: Sequence[str],
    now: datetime,
    parts: tuple[Part, ...] | None = None,
    spread: Spread | None = None,
) -> bool:
    """Note that a message was sent, as which words, and with which `parts` kept (None: as they are).

    The coach whose words to several it carried is told. False where the lease was lost.
    """
    if held(connection, lease) is None:
        return False
    still_stands = _update(
        connection,
        lease,
        number,
        state="sent",
        sent_at=now,
        trying_since=None,
        words=words,
        message_keys=tuple(message_keys),
        labels=tuple(labels),
        **({} if parts is None else {"parts": parts}),
    )
    if still_stands:  # it may have been erased while it was on its way
        _keep_keys(connection, lease, number, message_keys)
        _tell_coach(connection, lease.person, spread, None, now)
    if _BACK(connection, {"back": lease.person, "unreachable_since": None}).rowcount:
        inbox.order(connection, lease.person, Reachable(reachable=True), f"outbox:{number}", now)
    settle(connection, lease.person, now, let_go=False)
    return True


def try_again(
    connection: Connection, lease: ChatLease, number: int, not_before: datetime, now: datetime
) -> bool:
    """Let a message wait until `not_before`, and with it all behind it; False where the lease was lost."""
    if held(connection, lease) is None:
        return False
    _update(connection, lease, number, trying_since=None, not_before=not_before)
    settle(connection, lease.person, now, let_go=True)
    return True


def keep(connection: Connection, lease: ChatLease, now: datetime) -> None:
    """Let the lease begin anew, if it is still held."""
    if held(connection, lease) is not None:
        renew(connection, lease, now)


def leave(connection: Connection, lease: ChatLease, now: datetime) -> None:
    """Let go of the lease, if it is still held."""
    if held(connection, lease) is not None:
        settle(connection, lease.person, now, let_go=True)


def failed(
    connection: Connection,
    lease: ChatLease,
    number: int,
    why: str,
    now: datetime,
    *,
    unreachable: bool,
    instead: tuple[Part, ...] = (),
    spread: Spread | None = None,
) -> bool:
    """Give a message up, and say something else `instead`; False where the lease was lost.

    The coach whose words to several it carried is told.

    Where a client is `unreachable`, that comes into the client's own inbox, once until something arrives
    again: from there the coach hears of it.
    """
    if held(connection, lease) is None:
        return False
    if _update(connection, lease, number, state="failed", trying_since=None, fault=why):
        _tell_coach(connection, lease.person, spread, why, now)
    if unreachable:
        lost = _LOST(connection, {"lost": lease.person, "unreachable_since": now})
        if lost.rowcount:
            told = SendingFailed(person=lease.person, why=why)
            inbox.order(connection, lease.person, told, f"outbox:{number}", now)
    if instead:
        outbox.put(connection, [Say(to=lease.person, parts=instead)], outbox.About(), now)
    settle(connection, lease.person, now, let_go=False)
    return True


def _tell_coach(
    connection: Connection, person: int, spread: Spread | None, why: str | None, now: datetime
) -> None:
    """Tell the coach what became of words to several, at this person: None where they have arrived."""
    if spread is not None:
        arrived = Arrived(person=person, message=spread.message, why=why)
        key = f"spread:{spread.message}:{person}"
        inbox.order(connection, spread.coach, arrived, key, now)


def _keep_keys(connection: Connection, lease: ChatLease, number: int, keys: Sequence[str]) -> None:
    """Keep by which keys the platform knows the message, so that a reply to it can be told."""
    chat = _CHAT(connection, {"person": lease.person}).scalar()
    if chat is not None and keys:
        rows = [{"chat": chat, "message_key": key, "outbox": number} for key in dict.fromkeys(keys)]
        _KEEP_KEY.many(connection, rows)


def _update(connection: Connection, lease: ChatLease, number: int, **values: Any) -> bool:
    """Change a message that waits; return whether it stands at all."""
    which = {"message": number, "to": lease.person, "was": "pending"}
    return _MESSAGE(connection, {**which, **values}).rowcount == 1
