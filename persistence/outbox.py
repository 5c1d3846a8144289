"""What is to be said: stored with the decision that made it, and kept as it was sent."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, delete, insert, literal, or_, select, update
from sqlalchemy.orm import aliased

from domain.parts import Notice, Part, Say
from domain.units import Unit
from persistence import deliveries
from persistence.pressing import data_of
from persistence.statements import Prepared
from persistence.tables import DeliveryRow, OutboxRow

_LATER = aliased(OutboxRow)
_ADD = Prepared(insert(OutboxRow).returning(OutboxRow.number))


@dataclass(frozen=True, slots=True)
class About:
    """What a message came of: the inbox number of what was heard, or the moment of a wake."""

    message: int | None = None
    wake: datetime | None = None


@dataclass(frozen=True, slots=True)
class Spread:
    """Words that a coach, by number, has written to several: in the message of that inbox number."""

    coach: int
    message: int


@dataclass(frozen=True, slots=True)
class Earlier:
    """The message to be changed by another one: its parts, and as what it stands in the chat at present."""

    parts: tuple[Part, ...]
    words: str
    message_keys: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Outgoing:
    """The next message for a chat, and what is needed to put it into words.

    `unclear` where a try has begun before of which nothing is known: it may have been sent. `earlier` is the
    message that it changes; None where it changes none, or one that was never sent.
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
    is_client: bool = False
    earlier: Earlier | None = None

    @property
    def spread(self) -> Spread | None:
        """The coach's words to several that this message carries, if it does."""
        for part in self.say.parts:
            if isinstance(part, Notice) and part.topic == "from coach" and part.facts.get("spread"):
                return Spread(int(part.facts["by"]), int(part.facts["spread"]))
        return None

    @property
    def button_data(self) -> tuple[str, ...]:
        """What each button sends back when pressed, in the order of the buttons."""
        return tuple(data_of(self.number, place, action) for place, action in enumerate(self.say.buttons))


@dataclass(frozen=True, slots=True)
class SentMessage:
    """A message as it was sent. `buttons` are (label, data) pairs."""

    number: int
    sent_at: datetime
    words: str
    message_keys: tuple[str, ...]
    buttons: tuple[tuple[str, str], ...]


def put(connection: Connection, says: Sequence[Say], about: About, now: datetime) -> None:
    """Put messages into the outbox, in order, and have them sent."""
    deliveries.note_waiting(connection, add(connection, says, about, now), now)


def add(connection: Connection, says: Sequence[Say], about: About, now: datetime) -> list[tuple[int, Say]]:
    """Put messages into the outbox, in order; return them with their numbers, to be noted as waiting."""
    if not says:
        return []
    later = next((at for at, say in enumerate(says) if at and say.instead_of is not None), len(says))
    return [*_add(connection, says[:later], about, now), *add(connection, says[later:], about, now)]


def _add(connection: Connection, says: Sequence[Say], about: About, now: datetime) -> list[tuple[int, Say]]:
    """Put messages into the outbox of which none but the first can be one that changes another of them."""
    rows: list[dict[str, Any]] = [
        {
            "person": say.to,
            "weight": say.weight,
            "parts": say.parts,
            "actions": say.buttons,
            "about_message": about.message,
            "about_wake": about.wake,
            "created_at": now,
            "edits": say.edits if say.instead_of is None else _first_answer(connection, say),
        }
        for say in says
    ]
    for say, row in zip(says, rows, strict=True):
        if say.instead_of is not None and row["edits"] is not None:
            _overtake(connection, say.to, row["edits"], about)
    return [(_ADD(connection, row).one().number, say) for say, row in zip(says, rows, strict=True)]


def _first_answer(connection: Connection, say: Say) -> int | None:
    """Return the number of the first answer to the message that a message is to stand instead of."""
    answers = (
        select(OutboxRow.number)
        .where(
            OutboxRow.person == say.to,
            OutboxRow.about_message == say.instead_of,
            OutboxRow.edits.is_(None),
        )
        .order_by(OutboxRow.number)
        .limit(1)
    )
    return connection.execute(answers).scalar()


def _overtake(connection: Connection, person: int, edits: int, about: About) -> None:
    """Give up what earlier decisions wait to show in a message in which something newer is to be shown."""
    connection.execute(
        update(OutboxRow)
        .where(
            OutboxRow.person == person,
            OutboxRow.edits == edits,
            OutboxRow.weight == "nudge",
            OutboxRow.state == "pending",
            OutboxRow.trying_since.is_(None),
            or_(OutboxRow.about_message.is_(None), OutboxRow.about_message != about.message),
        )
        .values(state="failed", fault="overtaken")
    )


def sent_with_buttons(
    connection: Connection, person: int, newest: int, *, had: bool = False
) -> list[SentMessage]:
    """Return those of a person's `newest` sent messages that have buttons, newest first.

    Of one that was changed since, only what it was changed to; or where they `had` some, that as well.
    """
    changed = select(_LATER.edits).where(_LATER.edits == OutboxRow.number, _LATER.state == "sent")
    rows = connection.execute(
        select(OutboxRow.number, OutboxRow.sent_at, OutboxRow.words, OutboxRow.message_keys, OutboxRow.labels)
        .where(OutboxRow.person == person, OutboxRow.state == "sent", or_(literal(had), ~changed.exists()))
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


def has_arrived(connection: Connection, person: int) -> bool:
    """Return whether anything was ever sent to a person."""
    sent = select(OutboxRow.number).where(OutboxRow.person == person, OutboxRow.state == "sent").limit(1)
    return connection.execute(sent).first() is not None


def earlier(connection: Connection, person: int, number: int) -> Earlier | None:
    """Return the message of that number as it stands in the person's chat; None where it was never sent."""
    row = connection.execute(
        select(OutboxRow.parts, OutboxRow.words, OutboxRow.message_keys).where(
            OutboxRow.number == number, OutboxRow.person == person, OutboxRow.state == "sent"
        )
    ).first()
    if row is None:
        return None
    since = connection.execute(
        select(OutboxRow.words, OutboxRow.message_keys)
        .where(OutboxRow.edits == number, OutboxRow.person == person, OutboxRow.state == "sent")
        .order_by(OutboxRow.number)
    )
    # What has a key of its own stands instead of it; what has none was put under its words.
    under = [each.words for each in since if each.words and not each.message_keys]
    return Earlier(row.parts, "\n".join([row.words, *under]) if row.words else "", row.message_keys)


def give_up(connection: Connection, number: int, why: str) -> None:
    """Give up a message that waits."""
    connection.execute(
        update(OutboxRow)
        .where(OutboxRow.number == number, OutboxRow.state == "pending")
        .values(state="failed", fault=why, trying_since=None)
    )


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
    deliveries.begin(connection, to, chat, now)
