"""Everything that is kept about one client, read whole: for the client, who may have it at any time.

It has what counts and what no longer does, with all messages in both directions. A coach's sheets are the
coach's, so of a programme only the name is told. A coach's notes are for the coach alone, yet they are
personal data, which whoever they are on may ask for: so it tells how many there are and whom to ask.
"""

from collections.abc import Sequence
from datetime import date, datetime, time
from decimal import Decimal
from typing import Any, Literal

from pydantic import JsonValue
from sqlalchemy import Connection, Row, select

from domain.equipment import Equipment
from domain.frozen import Frozen
from domain.incoming import (
    Document,
    Edited,
    FromChat,
    FromCoach,
    FromDelivery,
    Pressed,
    Reachable,
    Started,
    Text,
    Told,
    Unsupported,
)
from domain.memory import ClientMemory
from domain.sets import LoadKind
from domain.understood import Understood
from domain.units import Unit
from persistence.tables import (
    UNDERSTOOD,
    AlertRow,
    EntryRow,
    HoldRow,
    InboxRow,
    InvitationRow,
    NoteRow,
    OutboxRow,
    PersonRow,
    ProgrammeRow,
    WordsRow,
    WorkoutRow,
)

VERSION = 1
"""Of the form of what is written; a field that is added does not change it."""


class KeptSettings(Frozen):
    """The client's name, chat and settings; times are local, `body_mass` is in `unit`."""

    name: str
    chat: str | None
    coach: str
    programme: str | None
    unit: Unit
    zone: str
    starts: date
    remind_at: time
    body_mass: Decimal | None
    equipment: Equipment
    own_names: dict[str, str]
    since: datetime


class KeptSet(Frozen):
    """One recorded set; `counts` is false where a correction stands in its place or it was taken back."""

    number: int
    workout: int
    day: date | None
    exercise: str
    load: Decimal
    unit: Unit
    load_kind: LoadKind
    reps: int | None
    seconds: int | None
    lowering_only: bool
    to_failure: bool | None
    rir: Decimal | None
    told_at: datetime
    superseded_by: int | None
    taken_back_at: datetime | None


class KeptWorkout(Frozen):
    """A workout begun, done, missed or skipped."""

    number: int
    day: date
    name: str
    state: str
    round: int
    skipped: tuple[str, ...]


class KeptMessage(Frozen):
    """A message: who said it when, and its words. What has no words has its `kind` alone."""

    at: datetime
    by: Literal["you", "bot", "coach"]
    kind: str
    text: str
    understood: JsonValue = None
    """What your words were taken for, where that was noted."""


class KeptArchive(Frozen):
    """Everything about one client, up to the last message at `until`."""

    version: int = VERSION
    until: datetime
    settings: KeptSettings
    remembered: ClientMemory
    workouts: tuple[KeptWorkout, ...]
    sets: tuple[KeptSet, ...]
    set_aside: tuple[dict[str, JsonValue], ...]
    matters_for_the_coach: tuple[dict[str, JsonValue], ...]
    invitations: tuple[dict[str, JsonValue], ...]
    words_with_coach: tuple[dict[str, JsonValue], ...]
    coach_notes: tuple[datetime, ...] = ()
    """When the coach has noted something; what it is, the coach can be asked for."""
    messages: tuple[KeptMessage, ...]


def archive(connection: Connection, person: int) -> KeptArchive | None:
    """Return everything about a client; None of anybody who is no client."""
    row = connection.execute(select(PersonRow).where(PersonRow.number == person, PersonRow.is_client)).first()
    if row is None:
        return None
    messages = _messages(connection, person)
    return KeptArchive(
        until=max((each.at for each in messages), default=row.created_at),
        settings=_settings(connection, row),
        remembered=row.client_memory or ClientMemory(),
        workouts=tuple(
            KeptWorkout(**_of(each, "number", "day", "name", "state", "round", "skipped"))
            for each in _rows(connection, WorkoutRow, person)
        ),
        sets=tuple(
            KeptSet(told_at=each.at, **_of(each, *(set(KeptSet.model_fields) - {"told_at"})))
            for each in _rows(connection, EntryRow, person)
        ),
        set_aside=_set_aside(connection, person),
        matters_for_the_coach=_matters(connection, person),
        words_with_coach=_words_with_coach(connection, person),
        invitations=tuple(
            _plain(each, "name", "created_at", "used_at")
            for each in connection.execute(
                select(InvitationRow)
                .where((InvitationRow.used_by == person) | (InvitationRow.person == person))
                .order_by(InvitationRow.created_at)
            )
        ),
        coach_notes=tuple(
            connection.execute(
                select(NoteRow.at).where(NoteRow.client == person).order_by(NoteRow.number)
            ).scalars()
        ),
        messages=messages,
    )


def _set_aside(connection: Connection, person: int) -> tuple[dict[str, JsonValue], ...]:
    """Return every exercise of a client's that was ever set aside, oldest first, as plain JSON."""
    names = ("number", "exercise", "place", "side", "since", "lifted_on")
    return tuple(_plain(each, *names) for each in _rows(connection, HoldRow, person))


def _matters(connection: Connection, person: int) -> tuple[dict[str, JsonValue], ...]:
    """Return all that was ever brought to the coach of a client, oldest first, as plain JSON."""
    names = ("number", "reason", "exercise", "evidence", "opened_at", "settled_at", "remedy")
    return tuple(_plain(each, *names) for each in _rows(connection, AlertRow, person))


def _words_with_coach(connection: Connection, person: int) -> tuple[dict[str, JsonValue], ...]:
    """Return all that client and coach have written to each other, oldest first, as plain JSON."""
    names = ("number", "writer", "name", "text", "at", "alert")
    return tuple(_plain(each, *names) for each in _rows(connection, WordsRow, person))


def _settings(connection: Connection, row: Row[Any]) -> KeptSettings:
    coach = connection.execute(select(PersonRow.name).where(PersonRow.number == row.coach)).scalar_one()
    programme = select(ProgrammeRow.name).where(ProgrammeRow.number == row.programme)
    names = ("name", "chat", "unit", "zone", "starts", "remind_at", "body_mass", "equipment", "own_names")
    return KeptSettings(
        coach=coach,
        programme=connection.execute(programme).scalar(),
        since=row.created_at,
        **_of(row, *names),
    )


def _messages(connection: Connection, person: int) -> tuple[KeptMessage, ...]:
    """Return all messages of the chat in the order of time, and what the coach ordered for this client."""
    heard = connection.execute(
        select(InboxRow.received_at, InboxRow.incoming, InboxRow.understood)
        .where(InboxRow.person == person)
        .order_by(InboxRow.number)
    )
    said = connection.execute(
        select(OutboxRow.sent_at, OutboxRow.words)
        .where(OutboxRow.person == person, OutboxRow.state == "sent")
        .order_by(OutboxRow.number)
    )
    messages = [
        _heard(connection, each.received_at, each.incoming, person).model_copy(
            update={"understood": _plain_understood(each.understood)}
        )
        for each in heard
    ]
    messages += [KeptMessage(at=each.sent_at, by="bot", kind="text", text=each.words) for each in said]
    return tuple(sorted(messages, key=lambda each: each.at))


def _plain_understood(understood: Understood | None) -> JsonValue:
    if understood is None:
        return None
    plain: JsonValue = UNDERSTOOD.dump_python(understood, mode="json", exclude_defaults=True)
    return plain


def _heard(
    connection: Connection, at: datetime, incoming: FromChat | FromCoach | FromDelivery, person: int
) -> KeptMessage:
    match incoming:
        case Told(text=text):
            return KeptMessage(at=at, by="coach", kind=incoming.kind, text=text)
        case Text(text=text) | Edited(text=text):
            return KeptMessage(at=at, by="you", kind=incoming.kind, text=text)
        case Pressed(button=button):
            return KeptMessage(at=at, by="you", kind=incoming.kind, text=_label(connection, button, person))
        case Document(name=name, text=content):
            return KeptMessage(at=at, by="you", kind=incoming.kind, text=f"{name}\n{content or ''}".strip())
        case Started() | Unsupported() | Reachable():
            return KeptMessage(at=at, by="you", kind=incoming.kind, text="")
        case _:
            return KeptMessage(at=at, by="coach", kind=incoming.kind, text="")


def _label(connection: Connection, button: str, person: int) -> str:
    """Return the label of a button that was pressed; nothing where it is not known."""
    number, _, index = button.partition(":")
    if not (number.isdecimal() and index.isdecimal()):
        return ""
    labels = connection.execute(
        select(OutboxRow.labels).where(OutboxRow.number == int(number), OutboxRow.person == person)
    ).scalar()
    return labels[int(index)] if labels and int(index) < len(labels) else ""


def _rows(connection: Connection, table: Any, person: int) -> Sequence[Row[Any]]:
    return connection.execute(select(table).where(table.client == person).order_by(table.number)).all()


def _of(row: Row[Any], *names: str) -> dict[str, Any]:
    return {name: getattr(row, name) for name in names}


def _plain(row: Row[Any], *names: str) -> dict[str, Any]:
    values = _of(row, *names)
    return {
        name: value.isoformat() if isinstance(value, date | datetime) else value
        for name, value in values.items()
    }
