"""What became of one message, as it was said last: what it was taken for, and the sets and orders of it."""

from dataclasses import dataclass
from typing import Literal, NamedTuple

from sqlalchemy import Connection, bindparam, select

from domain.incoming import Document, Edited, Text
from domain.sets import TrainingSet
from domain.understood import Understood
from persistence.inbox import orders_of
from persistence.tables import EntryRow, InboxRow, PersonRow

Standing = Literal["counts", "put right", "taken back"]
"""Whether a recorded set still counts, gave way to another, or was taken back."""


class Ordered(NamedTuple):
    """A coach's order to the client of that name, and what the client's decision found its words to mean."""

    client: str
    understood: Understood | None


@dataclass(frozen=True, slots=True)
class Told:
    """A message's `text` as it was said last, what it was `understood` as, the sets it has recorded, and the
    orders by which a coach's has reached clients.

    `understood` is None where that was not noted.
    """

    text: str
    understood: Understood | None
    sets: tuple[tuple[TrainingSet, Standing], ...]
    orders: tuple[Ordered, ...] = ()


_MESSAGE = select(
    InboxRow.number,
    InboxRow.person,
    InboxRow.chat,
    InboxRow.message_key,
    InboxRow.incoming,
    InboxRow.understood,
)
_FIRST = _MESSAGE.where(InboxRow.number == bindparam("number"))
_EDITS = (
    _MESSAGE.where(
        InboxRow.chat == bindparam("chat"),
        InboxRow.message_key == bindparam("message_key"),
        InboxRow.number > bindparam("number"),
    )
    .order_by(InboxRow.number.desc())
    .limit(1)
)
_SETS = (
    select(
        EntryRow.superseded_by,
        EntryRow.taken_back_at,
        EntryRow.exercise,
        EntryRow.load,
        EntryRow.unit,
        EntryRow.load_kind,
        EntryRow.reps,
        EntryRow.seconds,
        EntryRow.lowering_only,
        EntryRow.to_failure,
        EntryRow.rir,
        EntryRow.day,
    )
    .where(EntryRow.message == bindparam("number"), EntryRow.client == bindparam("client"))
    .order_by(EntryRow.number)
)
_ORDERS = (
    select(PersonRow.name, InboxRow.understood)
    .join(PersonRow, PersonRow.number == InboxRow.person)
    .where(
        InboxRow.source == "desk",
        InboxRow.key >= bindparam("first"),
        InboxRow.key < bindparam("beyond"),
        PersonRow.is_client,
    )
    .order_by(InboxRow.number)
)


def told(connection: Connection, number: int) -> Told | None:
    """Return what became of the message first sent as inbox number `number`; None where it has no words."""
    first = connection.execute(_FIRST, {"number": number}).first()
    if first is None:
        return None
    names = {"chat": first.chat, "message_key": first.message_key, "number": number}
    row = connection.execute(_EDITS, names).first() or first
    match row.incoming:
        case Text(text=text) | Edited(text=text) | Document(caption=text):
            pass
        case _:
            return None
    entries = connection.execute(_SETS, {"number": number, "client": first.person})
    key = orders_of(first.person, row.number)
    orders = connection.execute(_ORDERS, {"first": f"{key}:", "beyond": f"{key};"})
    return Told(
        text,
        row.understood,
        tuple((TrainingSet(*done), _standing(by, at)) for by, at, *done in entries),
        tuple(Ordered(*each) for each in orders),
    )


def _standing(superseded_by: int | None, taken_back_at: object) -> Standing:
    if superseded_by is not None:
        return "put right"
    return "counts" if taken_back_at is None else "taken back"
