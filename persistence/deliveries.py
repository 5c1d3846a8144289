"""The rows that say in which chats something waits to be sent, and which worker is sending there.

One row a chat, locked before the messages of that chat are touched. A decision, which may speak to several
people, takes the rows in the order of their numbers; so no two transactions can wait for each other.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, and_, bindparam, func, or_, select, update

from domain.parts import Say
from persistence.leases import ChatLease, fresh_token
from persistence.pace import Pace, require_room
from persistence.people import platform_of
from persistence.statements import InsertOr, Prepared
from persistence.tables import DeliveryRow, OutboxRow, PersonRow

_LOOK_AHEAD = 20
"""How many waiting messages of a chat are looked at to tell whether only nudges wait."""


def _or_wait(insert: Any) -> Any:
    """Let a chat wait on where it does; only a nudge on top of nudges leaves it with nothing weightier."""
    was_only = or_(DeliveryRow.due_at.is_(None), DeliveryRow.nudges_only)
    return insert.on_conflict_do_update(
        index_elements=["person"],
        set_={
            "platform": insert.excluded.platform,
            "first": func.coalesce(DeliveryRow.first, insert.excluded.first),
            "due_at": func.coalesce(DeliveryRow.due_at, insert.excluded.due_at),
            "nudges_only": and_(was_only, insert.excluded.nudges_only),
        },
    )


_CHAT = Prepared(select(PersonRow.chat).where(PersonRow.number == bindparam("person")))
_WAITS = InsertOr(DeliveryRow, _or_wait)
_DELIVERY = Prepared(update(DeliveryRow).where(DeliveryRow.person == bindparam("key")))
_HELD = Prepared(
    select(DeliveryRow.person, DeliveryRow.used_to)
    .where(DeliveryRow.person == bindparam("person"), DeliveryRow.lease_token == bindparam("token"))
    .with_for_update()
)
_WAITING = Prepared(
    select(OutboxRow.number, OutboxRow.not_before, OutboxRow.weight)
    .where(OutboxRow.person == bindparam("person"), OutboxRow.state == "pending")
    .order_by(OutboxRow.number)
    .limit(_LOOK_AHEAD)
)


def note_waiting(connection: Connection, messages: Sequence[tuple[int, Say]], now: datetime) -> None:
    """Note that these messages wait, each with its number in the outbox. Nobody is sent to without a chat."""
    for person in sorted({say.to for _, say in messages}):  # the order in which all decisions lock the chats
        chat = _CHAT(connection, {"person": person}).scalar()
        if chat is None:
            continue
        of_person = [(number, say) for number, say in messages if say.to == person]
        row = {
            "person": person,
            "platform": platform_of(chat),
            "first": of_person[0][0],
            "due_at": now,
            "nudges_only": all(say.weight == "nudge" for _, say in of_person),
        }
        _WAITS(connection, row)


def begin(connection: Connection, person: int, chat: str, now: datetime) -> None:
    """Note what waits for a person who has just got this chat."""
    idle = {
        "person": person,
        "platform": platform_of(chat),
        "first": None,
        "due_at": None,
        "nudges_only": True,
    }
    _WAITS(connection, idle)
    settle(connection, person, now, let_go=False)


def claim_chat(
    connection: Connection, now: datetime, lease_seconds: float, platform: str | None, pace: Pace | None
) -> ChatLease | None:
    """Lease the chat that has waited longest; one with an answer or alert before any that has only nudges.

    Only chats of this `platform`; None: of any. Raises NoRoomYet where something waits to be sent, but the
    `pace` is used up.
    """
    waits = (
        select(DeliveryRow.person)
        .where(
            DeliveryRow.due_at <= now, or_(DeliveryRow.lease_until.is_(None), DeliveryRow.lease_until <= now)
        )
        .order_by(DeliveryRow.nudges_only, DeliveryRow.due_at, DeliveryRow.first)
        .limit(1)
        .with_for_update(skip_locked=True)
    )
    if platform is not None:
        waits = waits.where(DeliveryRow.platform == platform)
    person = connection.execute(waits).scalar()
    if person is None:
        return None
    if pace is not None:
        require_room(connection, pace, now)
    lease = ChatLease(person, fresh_token(), lease_seconds, pace)
    until = now + timedelta(seconds=lease_seconds)
    _DELIVERY(connection, {"key": person, "lease_token": lease.token, "lease_until": until})
    return lease


@dataclass(frozen=True, slots=True)
class Held:
    """A chat that this worker may send into, and up to when its pace is used up."""

    used_to: datetime | None


def held(connection: Connection, lease: ChatLease) -> Held | None:
    """Lock the chat's row; None where another sender has it by now."""
    found = _HELD(connection, {"person": lease.person, "token": lease.token}).first()
    return None if found is None else Held(found.used_to)


def renew(connection: Connection, lease: ChatLease, now: datetime, chat: Held | None = None) -> None:
    """Let a lease that is held begin anew; where a message goes out into the `chat`, use up its pace."""
    values: dict[str, Any] = {"lease_until": now + timedelta(seconds=lease.seconds)}
    if lease.pace is not None and chat is not None:
        values["used_to"] = lease.pace.in_chat.used(chat.used_to, now)
    _DELIVERY(connection, {"key": lease.person, **values})


def room_at(lease: ChatLease, chat: Held, now: datetime) -> datetime:
    """Return the first moment, not before `now`, at which the chat may be sent into."""
    return now if lease.pace is None else lease.pace.in_chat.room_at(chat.used_to, now)


def settle(
    connection: Connection, person: int, now: datetime, *, let_go: bool, room: datetime | None = None
) -> None:
    """Bring the chat's row up to date with what waits; end the lease where nothing is due, or on `let_go`.

    Nothing is due before there is `room` (None: there is).
    """
    waiting = _WAITING(connection, {"person": person})
    values: dict[str, Any] = {"first": None, "due_at": None, "nudges_only": True}
    if waiting:
        values = {
            "first": waiting[0].number,
            "due_at": max(waiting[0].not_before or now, room or now),
            "nudges_only": all(each.weight == "nudge" for each in waiting),
        }
    if let_go or values["due_at"] is None or values["due_at"] > now:
        values |= {"lease_token": None, "lease_until": None}
    _DELIVERY(connection, {"key": person, **values})


def next_due(connection: Connection, now: datetime) -> datetime | None:
    """Return the first moment after `now` at which a message is to be sent that waits for its time."""
    return connection.execute(select(func.min(DeliveryRow.due_at)).where(DeliveryRow.due_at > now)).scalar()
