"""What became of one message: as it was said last, what that was taken for, and the sets that came of it."""

from dataclasses import dataclass
from typing import Literal

from sqlalchemy import Connection, bindparam, select

from domain.incoming import Edited, Text
from domain.sets import TrainingSet
from domain.understood import Understood
from persistence.tables import EntryRow, InboxRow

Standing = Literal["counts", "put right", "taken back"]
"""Whether a recorded set still counts, gave way to another, or was taken back."""


@dataclass(frozen=True, slots=True)
class Told:
    """A message's `text` as it was said last, what it was `understood` as, and the sets it has recorded.

    `understood` is None where that was not noted.
    """

    text: str
    understood: Understood | None
    sets: tuple[tuple[TrainingSet, Standing], ...]


_MESSAGE = select(
    InboxRow.person, InboxRow.chat, InboxRow.message_key, InboxRow.incoming, InboxRow.understood
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


def told(connection: Connection, number: int) -> Told | None:
    """Return what became of the message first sent as inbox number `number`; None where it has no words."""
    first = connection.execute(_FIRST, {"number": number}).first()
    if first is None:
        return None
    names = {"chat": first.chat, "message_key": first.message_key, "number": number}
    row = connection.execute(_EDITS, names).first() or first
    if not isinstance(row.incoming, Text | Edited):
        return None
    entries = connection.execute(_SETS, {"number": number, "client": first.person})
    return Told(
        row.incoming.text,
        row.understood,
        tuple((TrainingSet(*done), _standing(by, at)) for by, at, *done in entries),
    )


def _standing(superseded_by: int | None, taken_back_at: object) -> Standing:
    if superseded_by is not None:
        return "put right"
    return "counts" if taken_back_at is None else "taken back"
