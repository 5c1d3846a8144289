"""What is to be said: stored with the decision that made it, sent in order, one sender a chat at a time.

`deliveries` has one row a chat that says whether something waits there and since when. Every step here locks
that row first and the messages after it, and a decision, which may speak to several people, takes the rows in
the order of their numbers; so no two transactions can wait for each other.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, and_, bindparam, delete, func, insert, or_, select, update

from domain.incoming import SendingFailed
from domain.parts import Say
from domain.units import Unit
from persistence import inbox
from persistence.leases import ChatLease, fresh_token
from persistence.people import platform_of
from persistence.statements import InsertOr
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
            "due_at": func.coalesce(DeliveryRow.due_at, insert.excluded.due_at),
            "nudges_only": and_(was_only, insert.excluded.nudges_only),
        },
    )


_ADD = insert(OutboxRow)
_CHATS = select(PersonRow.number, PersonRow.chat).where(
    PersonRow.number.in_(bindparam("people", expanding=True))
)
_WAITS = InsertOr(DeliveryRow, _or_wait)
_DELIVERY = update(DeliveryRow).where(DeliveryRow.person == bindparam("key"))
_HELD = (
    select(DeliveryRow.person)
    .where(DeliveryRow.person == bindparam("person"), DeliveryRow.lease_token == bindparam("token"))
    .with_for_update()
)
_WAITING = (
    select(OutboxRow.not_before, OutboxRow.weight)
    .where(OutboxRow.person == bindparam("person"), OutboxRow.state == "pending")
    .order_by(OutboxRow.number)
    .limit(_LOOK_AHEAD)
)
_NEXT = (
    select(OutboxRow, PersonRow.chat, PersonRow.name, PersonRow.zone, PersonRow.unit, PersonRow.is_coach)
    .join(PersonRow, PersonRow.number == OutboxRow.person)
    .where(OutboxRow.person == bindparam("person"), OutboxRow.state == "pending")
    .order_by(OutboxRow.number)
    .limit(1)
)
_MESSAGE = update(OutboxRow).where(
    OutboxRow.number == bindparam("message"),
    OutboxRow.person == bindparam("to"),
    OutboxRow.state == bindparam("was"),
)


_TRY = _MESSAGE.values(attempts=OutboxRow.attempts + 1)


@dataclass(frozen=True, slots=True)
class About:
    """What a message came of: the inbox number of what was heard, or the moment of a wake."""

    message: int | None = None
    wake: datetime | None = None


@dataclass(frozen=True, slots=True)
class Outgoing:
    """The next message for a chat, and what is needed to put it into words.

    `unclear` where a try has begun before of which nothing is known: it may have been sent.
    """

    number: int
    chat: str
    name: str
    zone: str
    unit: Unit
    is_coach: bool
    say: Say
    attempts: int
    unclear: bool
    created_at: datetime

    @property
    def button_data(self) -> tuple[str, ...]:
        """What each button sends back when pressed, in the order of the buttons."""
        return tuple(f"{self.number}:{index}" for index in range(len(self.say.buttons)))


@dataclass(frozen=True, slots=True)
class SentMessage:
    """A message as it was sent. `buttons` are (label, data) pairs."""

    number: int
    sent_at: datetime
    words: str
    message_keys: tuple[str, ...]
    buttons: tuple[tuple[str, str], ...]


def put(connection: Connection, says: Sequence[Say], about: About, now: datetime) -> None:
    """Put messages into the outbox, in order."""
    if not says:
        return
    rows = [
        {
            "person": say.to,
            "weight": say.weight,
            "parts": say.parts,
            "actions": say.buttons,
            "about_message": about.message,
            "about_wake": about.wake,
            "created_at": now,
        }
        for say in says
    ]
    connection.execute(_ADD, rows)
    weighty = {say.to for say in says if say.weight != "nudge"}
    recipients = sorted({say.to for say in says})
    chats = connection.execute(_CHATS, {"people": recipients})
    platforms = {number: platform_of(chat) for number, chat in chats}
    for person in recipients:
        _waits(connection, person, platforms[person], now, nudges_only=person not in weighty)


def claim_chat(
    connection: Connection, now: datetime, lease_seconds: float, platform: str | None
) -> ChatLease | None:
    """Lease the chat that has waited longest; one with an answer or alert before any that has only nudges.

    Only chats of this `platform`; None: of any.
    """
    waits = (
        select(DeliveryRow.person)
        .where(
            DeliveryRow.due_at <= now, or_(DeliveryRow.lease_until.is_(None), DeliveryRow.lease_until <= now)
        )
        .order_by(DeliveryRow.nudges_only, DeliveryRow.due_at)
        .limit(1)
        .with_for_update(skip_locked=True)
    )
    if platform is not None:
        waits = waits.where(DeliveryRow.platform == platform)
    person = connection.execute(waits).scalar()
    if person is None:
        return None
    lease = ChatLease(person, fresh_token(), lease_seconds)
    until = now + timedelta(seconds=lease_seconds)
    connection.execute(_DELIVERY, {"key": person, "lease_token": lease.token, "lease_until": until})
    return lease


def next_message(connection: Connection, lease: ChatLease, now: datetime) -> Outgoing | None:
    """Return the chat's first waiting message if it is due; otherwise let go of the lease and return None."""
    if not _held(connection, lease):
        return None
    row = connection.execute(_NEXT, {"person": lease.person}).first()
    if row is None or row.chat is None or (row.not_before is not None and row.not_before > now):
        _settle(connection, lease.person, now, let_go=True)
        return None
    return Outgoing(
        number=row.number,
        chat=row.chat,
        name=row.name,
        zone=row.zone,
        unit=row.unit,
        is_coach=row.is_coach,
        say=Say(to=lease.person, parts=row.parts, buttons=row.actions, weight=row.weight),
        attempts=row.attempts,
        unclear=row.trying_since is not None,
        created_at=row.created_at,
    )


def sending(connection: Connection, lease: ChatLease, number: int, now: datetime) -> bool:
    """Note that a try to send begins; False where the lease was lost, so that nothing is to be sent."""
    if not _held(connection, lease):
        return False
    until = now + timedelta(seconds=lease.seconds)
    connection.execute(_DELIVERY, {"key": lease.person, "lease_until": until})
    connection.execute(_TRY, {"message": number, "to": lease.person, "was": "pending", "trying_since": now})
    return True


def sent(
    connection: Connection,
    lease: ChatLease,
    number: int,
    words: str,
    message_keys: Sequence[str],
    labels: Sequence[str],
    now: datetime,
) -> bool:
    """Note that a message was sent, as which words; False where the lease was lost."""
    if not _held(connection, lease):
        return False
    _update(
        connection,
        lease,
        number,
        state="sent",
        sent_at=now,
        trying_since=None,
        words=words,
        message_keys=tuple(message_keys),
        labels=tuple(labels),
    )
    connection.execute(
        update(PersonRow)
        .where(PersonRow.number == lease.person, PersonRow.unreachable_since.is_not(None))
        .values(unreachable_since=None)
    )
    _settle(connection, lease.person, now, let_go=False)
    return True


def try_again(
    connection: Connection, lease: ChatLease, number: int, not_before: datetime, now: datetime
) -> bool:
    """Let a message wait until `not_before`, and with it all behind it; False where the lease was lost."""
    if not _held(connection, lease):
        return False
    _update(connection, lease, number, trying_since=None, not_before=not_before)
    _settle(connection, lease.person, now, let_go=True)
    return True


def failed(
    connection: Connection, lease: ChatLease, number: int, why: str, now: datetime, *, unreachable: bool
) -> bool:
    """Give a message up; False where the lease was lost.

    Where the person is `unreachable`, the coach hears of it, once until something arrives again.
    """
    if not _held(connection, lease):
        return False
    _update(connection, lease, number, state="failed", trying_since=None, fault=why)
    newly = (
        unreachable
        and connection.execute(
            update(PersonRow)
            .where(PersonRow.number == lease.person, PersonRow.unreachable_since.is_(None))
            .values(unreachable_since=now)
        ).rowcount
    )
    if newly:
        coach = connection.execute(
            select(PersonRow.coach).where(PersonRow.number == lease.person, PersonRow.is_client)
        ).scalar()
        if coach is not None:
            told = SendingFailed(person=lease.person, why=why)
            inbox.order(connection, coach, told, f"outbox:{number}", now)
    _settle(connection, lease.person, now, let_go=False)
    return True


def next_due(connection: Connection, now: datetime) -> datetime | None:
    """Return the first moment after `now` at which a message is to be sent that waits for its time."""
    return connection.execute(select(func.min(DeliveryRow.due_at)).where(DeliveryRow.due_at > now)).scalar()


def sent_with_buttons(connection: Connection, person: int, newest: int) -> list[SentMessage]:
    """Return those of a person's `newest` sent messages that have buttons, newest first."""
    rows = connection.execute(
        select(OutboxRow.number, OutboxRow.sent_at, OutboxRow.words, OutboxRow.message_keys, OutboxRow.labels)
        .where(OutboxRow.person == person, OutboxRow.state == "sent")
        .order_by(OutboxRow.number.desc())
        .limit(newest)
    )
    return [
        SentMessage(
            row.number,
            row.sent_at,
            row.words,
            row.message_keys,
            tuple((label, f"{row.number}:{index}") for index, label in enumerate(row.labels)),
        )
        for row in rows
        if row.labels
    ]


def drop_waiting(connection: Connection, person: int, why: str) -> None:
    """Give up all that waits for a person."""
    connection.execute(
        update(OutboxRow)
        .where(OutboxRow.person == person, OutboxRow.state == "pending")
        .values(state="failed", fault=why, trying_since=None)
    )


def hand_over(connection: Connection, stranger: int, to: int, chat: str, now: datetime) -> None:
    """Make all messages to a stranger messages to the person who turned out to be the same."""
    connection.execute(update(OutboxRow).where(OutboxRow.person == stranger).values(person=to))
    connection.execute(delete(DeliveryRow).where(DeliveryRow.person == stranger))
    _waits(connection, to, platform_of(chat), now, nudges_only=False)


def _waits(connection: Connection, person: int, platform: str, now: datetime, *, nudges_only: bool) -> None:
    row = {"person": person, "platform": platform, "due_at": now, "nudges_only": nudges_only}
    _WAITS(connection, [row])


def _held(connection: Connection, lease: ChatLease) -> bool:
    """Lock the chat's row; False where another sender has it by now."""
    return connection.execute(_HELD, {"person": lease.person, "token": lease.token}).first() is not None


def _update(connection: Connection, lease: ChatLease, number: int, **values: Any) -> None:
    connection.execute(_MESSAGE, {"message": number, "to": lease.person, "was": "pending", **values})


def _settle(connection: Connection, person: int, now: datetime, *, let_go: bool) -> None:
    """Bring the chat's row up to date with what waits; end the lease where nothing is due, or on `let_go`."""
    waiting = connection.execute(_WAITING, {"person": person}).all()
    values: dict[str, Any] = {"due_at": None, "nudges_only": True}
    if waiting:
        values = {
            "due_at": waiting[0].not_before or now,
            "nudges_only": all(each.weight == "nudge" for each in waiting),
        }
    if let_go or values["due_at"] is None or values["due_at"] > now:
        values |= {"lease_token": None, "lease_until": None}
    connection.execute(_DELIVERY, {"key": person, **values})
