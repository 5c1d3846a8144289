"""What came in, what goes out, and how far each platform was read.

The state of a message is told by the columns that are filled: an inbox row without `done_at` waits, an outbox
row is pending, sent or failed. Partial indexes hold only what waits, so that a long past costs nothing.
"""

from datetime import datetime
from typing import Literal

from pydantic import TypeAdapter
from sqlalchemy import CheckConstraint, ForeignKey, Text, UniqueConstraint, text
from sqlalchemy.orm import Mapped, mapped_column

from domain.actions import Action
from domain.incoming import FromChat, FromCoach, FromDelivery, Incoming
from domain.parts import Part, Weight
from domain.understood import Understood
from persistence.columns import AsJson
from persistence.tables.base import Base, Number, OwnNumber, all_or_none, one_of, only

SendingState = Literal["pending", "sent", "failed"]

_TEXTS: TypeAdapter[tuple[str, ...]] = TypeAdapter(tuple[str, ...])
INCOMING: TypeAdapter[FromChat | FromCoach | FromDelivery] = TypeAdapter(Incoming)
_PARTS: TypeAdapter[tuple[Part, ...]] = TypeAdapter(tuple[Part, ...])
UNDERSTOOD: TypeAdapter[Understood] = TypeAdapter(Understood)
_ACTIONS: TypeAdapter[tuple[Action, ...]] = TypeAdapter(tuple[Action, ...])


class InboxRow(Base):
    """One thing that came in. `source` and `key` together come only once.

    `source` is a platform, or `desk` for what another person's decision ordered. `chat` and `message_key`
    name the message on its platform. `fault` says why nothing came of it: the name of an error's class.
    `understood` is what a client's words were taken for, as it was decided on them.
    """

    __tablename__ = "inbox"

    number: Mapped[OwnNumber]
    source: Mapped[str]
    key: Mapped[str]
    person: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    chat: Mapped[str | None]
    message_key: Mapped[str | None]
    incoming: Mapped[FromChat | FromCoach | FromDelivery] = mapped_column(AsJson(INCOMING))
    received_at: Mapped[datetime]
    done_at: Mapped[datetime | None]
    fault: Mapped[str | None]
    understood: Mapped[Understood | None] = mapped_column(AsJson(UNDERSTOOD, lean=True))

    __table_args__ = (
        UniqueConstraint("source", "key", name="inbox_key_once"),
        CheckConstraint("(source = 'desk') = (chat IS NULL)", name="chat_known"),
        CheckConstraint("fault IS NULL OR done_at IS NOT NULL", name="fault_is_done"),
        only("inbox_waiting", "number", where="done_at IS NULL"),
        only("inbox_waiting_of_person", "person", "number", where="done_at IS NULL"),
        only("inbox_by_message", "chat", "message_key", where="message_key IS NOT NULL"),
        {"sqlite_autoincrement": True},
    )


class OutboxRow(Base):
    """One message to a person: what it says as values, and once sent, in words.

    `about_message` is the inbox number, `about_wake` the moment of the wake that it came of. `trying_since`
    is filled while a try has begun of which nothing is known yet. `edits` is the number of the earlier
    message to the same person that is changed by it.
    """

    __tablename__ = "outbox"

    number: Mapped[OwnNumber]
    person: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    weight: Mapped[Weight] = mapped_column(Text)
    parts: Mapped[tuple[Part, ...]] = mapped_column(AsJson(_PARTS))
    actions: Mapped[tuple[Action, ...]] = mapped_column(AsJson(_ACTIONS))
    about_message: Mapped[Number | None] = mapped_column(ForeignKey("inbox.number"), index=True)
    about_wake: Mapped[datetime | None]
    created_at: Mapped[datetime]
    state: Mapped[SendingState] = mapped_column(Text, server_default="pending")
    attempts: Mapped[int] = mapped_column(server_default=text("0"))
    trying_since: Mapped[datetime | None]
    not_before: Mapped[datetime | None]
    sent_at: Mapped[datetime | None]
    words: Mapped[str | None]
    labels: Mapped[tuple[str, ...] | None] = mapped_column(AsJson(_TEXTS))
    message_keys: Mapped[tuple[str, ...] | None] = mapped_column(AsJson(_TEXTS))
    fault: Mapped[str | None]
    edits: Mapped[Number | None]

    __table_args__ = (
        one_of("weight", Weight),
        one_of("state", SendingState),
        CheckConstraint("attempts >= 0", name="attempts_count"),
        CheckConstraint("about_message IS NULL OR about_wake IS NULL", name="about_one"),
        CheckConstraint("(state = 'sent') = (sent_at IS NOT NULL)", name="sent_whole"),
        CheckConstraint("(state = 'failed') = (fault IS NOT NULL)", name="fault_is_failed"),
        CheckConstraint("state = 'pending' OR trying_since IS NULL", name="trying_is_pending"),
        all_or_none("words_whole", "sent_at", "words", "labels", "message_keys"),
        only("outbox_waiting", "person", "number", where="state = 'pending'"),
        only("outbox_edits", "edits", where="edits IS NOT NULL"),
        {"sqlite_autoincrement": True},
    )


class SentKeyRow(Base):
    """A message as its platform knows it: one piece of what stands in the outbox, by the chat and its key."""

    __tablename__ = "sent_keys"

    chat: Mapped[str] = mapped_column(primary_key=True)
    message_key: Mapped[str] = mapped_column(primary_key=True)
    outbox: Mapped[Number] = mapped_column(ForeignKey("outbox.number"), index=True)

    __table_args__ = ({"sqlite_with_rowid": False},)


class DeliveryRow(Base):
    """Whether a person's chat has something to be sent, from when on, and which worker is sending.

    `first` is the first waiting message and `due_at` its moment, both None where none waits; `nudges_only`
    where nothing weightier waits. One row a chat, so that finding who is next is one step in one index.
    """

    __tablename__ = "deliveries"

    person: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True, autoincrement=False)
    platform: Mapped[str]
    first: Mapped[Number | None]
    due_at: Mapped[datetime | None]
    nudges_only: Mapped[bool]
    lease_token: Mapped[str | None]
    lease_until: Mapped[datetime | None]
    used_to: Mapped[datetime | None]
    """Up to when the pace of the chat is used up."""

    __table_args__ = (
        all_or_none("lease_whole", "lease_token", "lease_until"),
        all_or_none("waiting_whole", "first", "due_at"),
        only("deliveries_due", "platform", "nudges_only", "due_at", "first", where="due_at IS NOT NULL"),
        only("deliveries_next", "due_at", where="due_at IS NOT NULL"),
    )


class CursorRow(Base):
    """How far something outside was read, such as a platform's updates."""

    __tablename__ = "cursors"

    name: Mapped[str] = mapped_column(primary_key=True)
    value: Mapped[str]


class ReaderRow(Base):
    """Which worker reads a platform's updates: until when, and under the how many-th lease, the fence."""

    __tablename__ = "readers"

    name: Mapped[str] = mapped_column(primary_key=True)
    fence: Mapped[Number]
    lease_until: Mapped[datetime | None]

    __table_args__ = (CheckConstraint("fence >= 0", name="fence_counts"),)


class BudgetRow(Base):
    """Up to when the pace of a platform is used up, for all its chats together."""

    __tablename__ = "budgets"

    name: Mapped[str] = mapped_column(primary_key=True)
    used_to: Mapped[datetime]
