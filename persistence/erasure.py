"""Erasing a client: the journal, all messages, name, settings, notes, and what coaches' messages say.

It all happens in the transaction of the client's own decision. What is left is a row of counts, and for an
hour the chat, so that the last words arrive; then that goes, too. Backups of the database are not reached,
nor is what stands in people's chats on their platform.

The coach's memory is the coach's own to change, and holds no more of a client than the number. Another
client's words stay as they are, even if they speak of this one; so does a sheet.
"""

from collections.abc import Collection, Iterator, Mapping
from datetime import datetime
from types import MappingProxyType
from typing import Any

from sqlalchemy import Connection, Row, Select, delete, func, insert, or_, select, type_coerce, update
from sqlalchemy import Text as TextColumn

from domain.erasure import Name, actions_left, parts_left, words_left
from domain.incoming import Document, JournalSent
from domain.parts import Notice
from persistence.coaching import forget_notes
from persistence.tables import (
    AlertRow,
    DeliveryRow,
    EntryRow,
    ErasureRow,
    HoldRow,
    InboxRow,
    InvitationRow,
    NoteRow,
    OfferRow,
    OutboxRow,
    PersonRow,
    SentKeyRow,
    WordsRow,
    WorkoutRow,
)

JOURNAL_SENT = "journal sent"
"""The kind of the orders that are about an old journal."""

LAST_WORDS = "client erased"
"""The topic of the notice that tells the coach, which is the last to have the name."""


CHOSEN = '"chosen"'
"""How a choice shown under a message is told in its JSON."""


def erase(connection: Connection, person: Row[Any], at: datetime) -> dict[str, Any]:
    """Erase all that is kept about the client whose row this is; return the columns that make it a stranger.

    The chat stays until `forget`.
    """
    number: int = person.number
    coaches = _coaches(connection, person)
    _lock(connection, {number, *coaches})
    _count(connection, person, at)
    name = Name(person.name)
    forget_notes(
        connection, *connection.execute(select(NoteRow.number).where(NoteRow.client == number)).scalars()
    )
    connection.execute(delete(OfferRow).where(OfferRow.client == number))
    _empty_files(connection, number)
    _clear_coaches_mail(connection, number, name, coaches)
    for row in (EntryRow, WorkoutRow, HoldRow, WordsRow, AlertRow):
        connection.execute(delete(row).where(row.client == number))
    _clear_mail(connection, number, only_done=person.is_coach)
    connection.execute(
        delete(InvitationRow).where(
            or_(
                InvitationRow.used_by == number,
                InvitationRow.person == number,
                InvitationRow.coach.in_(coaches)
                & (func.lower(InvitationRow.name) == func.lower(person.name)),
            ),
            *([InvitationRow.as_coach.is_(False)] if person.is_coach else []),
        )
    )
    if person.is_coach:  # a coach who trained, too, stays a coach
        return {**_NO_CLIENT, "coach": None}
    return {"name": "", "unit": "kg", **_NO_CLIENT, "unreachable_since": None, "erased_at": at}


_NO_CLIENT: Mapping[str, Any] = MappingProxyType(
    {
        "is_client": False,
        "programme": None,
        "starts": None,
        "remind_at": None,
        "body_mass": None,
        "equipment": None,
        "own_names": {},
        "client_memory": None,
    }
)
"""The columns of a client, empty."""


def is_unsent(connection: Connection, person: Row[Any]) -> bool:
    """Return whether last words still wait to be sent, to somebody who was erased or to the coach."""
    waiting = select(OutboxRow.number).where(OutboxRow.person == person.number, OutboxRow.state == "pending")
    if connection.execute(waiting.limit(1)).first() is not None:
        return True
    return any(row.state == "pending" for row in _told_coach(connection, person))


def forget(connection: Connection, person: Row[Any]) -> None:
    """Let the chat of somebody who was erased go, and the name in what the coach was told of it."""
    number: int = person.number
    told = [row.number for row in _told_coach(connection, person) if row.state != "pending"]
    _lock(connection, {number, *([person.coach] if person.coach else [])})
    _drop(connection, told)
    _clear_mail(connection, number)
    connection.execute(delete(DeliveryRow).where(DeliveryRow.person == number))
    connection.execute(delete(PersonRow).where(PersonRow.number == number))


def _coaches(connection: Connection, person: Row[Any]) -> set[int]:
    """Return the client's coach, and all others who were ever told of the client."""
    earlier = select(AlertRow.coach).where(AlertRow.client == person.number).distinct()
    others = person.client_memory.other_coaches if person.client_memory else ()
    return {person.coach, *connection.execute(earlier).scalars(), *others}


def _lock(connection: Connection, people: Collection[int]) -> None:
    """Lock the chats of these people as every decision does, in the order of their numbers."""
    rows = select(DeliveryRow.person).where(DeliveryRow.person.in_(people)).order_by(DeliveryRow.person)
    connection.execute(rows.with_for_update())


def _count(connection: Connection, person: Row[Any], at: datetime) -> None:
    number: int = person.number

    def count(rows: Select[int]) -> int:
        return connection.execute(rows).scalar_one()

    counts = {
        "workouts": count(select(func.count()).select_from(WorkoutRow).where(WorkoutRow.client == number)),
        "sets": count(select(func.count()).select_from(EntryRow).where(EntryRow.client == number)),
        "messages": count(
            select(func.count())
            .select_from(InboxRow)
            .where(InboxRow.person == number, InboxRow.chat.is_not(None))
        ),
    }
    connection.execute(insert(ErasureRow).values(coach=person.coach, at=at, **counts))


def _clear_mail(connection: Connection, number: int, *, only_done: bool = False) -> None:
    """Delete all messages from and to a person, or `only` what is `done`; what a note is kept of stays."""
    sent = (OutboxRow.state != "pending",) if only_done else ()
    mail = select(OutboxRow.number).where(OutboxRow.person == number, *sent)
    _drop(connection, list(connection.execute(mail).scalars()))
    done = (
        (InboxRow.done_at.is_not(None), InboxRow.number.not_in(select(NoteRow.message))) if only_done else ()
    )
    mine = select(InboxRow.number).where(InboxRow.person == number, *done)
    connection.execute(update(OutboxRow).where(OutboxRow.about_message.in_(mine)).values(about_message=None))
    connection.execute(delete(InboxRow).where(InboxRow.person == number, *done))


def _clear_coaches_mail(connection: Connection, client: int, name: Name, coaches: Collection[int]) -> None:
    """Take out of the coaches' messages what came of the client's, or has the name."""
    mine = set(connection.execute(select(InboxRow.number).where(InboxRow.person == client)).scalars())
    gone: list[int] = []
    for row in _speaking_of(connection, mine, name, coaches):
        left = (
            ()
            if row.about_message in mine
            else parts_left(row.parts, name, is_sent=row.state == "sent", client=client)
        )
        if left == row.parts and not (row.words and name.is_in(row.words)):
            continue
        # One that is on its way right now is let go whole: it could not be changed any more.
        if not left or row.trying_since is not None:
            gone.append(row.number)
            continue
        places = actions_left(row.actions, client)
        changed: dict[str, Any] = {"parts": left, "actions": tuple(row.actions[at] for at in places)}
        if row.state == "sent":
            changed |= {"words": "", "labels": tuple(row.labels[at] for at in places)}
        connection.execute(update(OutboxRow).where(OutboxRow.number == row.number).values(**changed))
    _drop(connection, gone)
    heard = select(InboxRow.number, InboxRow.incoming, InboxRow.understood).where(
        InboxRow.person.in_(coaches), InboxRow.done_at.is_not(None)
    )
    for kept in connection.execute(heard).all():
        emptied = words_left(kept.incoming, name)
        names = () if kept.understood is None else [each.means for each in kept.understood.meant]
        if emptied != kept.incoming or name.is_in(list(names)):
            connection.execute(
                update(InboxRow)
                .where(InboxRow.number == kept.number)
                .values(incoming=emptied, understood=None)
            )


def _empty_files(connection: Connection, client: int) -> None:
    """Take the words out of the files with this client's old journal, whether they have the name or not."""
    orders = connection.execute(
        select(InboxRow.incoming).where(
            InboxRow.person == client, type_coerce(InboxRow.incoming, TextColumn).contains(JOURNAL_SENT)
        )
    ).scalars()
    files = {each.file for each in orders if isinstance(each, JournalSent)}
    for some in _in_portions(sorted(files)):
        kept = select(InboxRow.number, InboxRow.incoming).where(InboxRow.number.in_(some))
        for number, incoming in connection.execute(kept).all():
            if isinstance(incoming, Document):
                emptied = incoming.model_copy(update={"text": None, "name": "", "caption": ""})
                connection.execute(update(InboxRow).where(InboxRow.number == number).values(incoming=emptied))


def _speaking_of(
    connection: Connection, mine: Collection[int], name: Name, coaches: Collection[int]
) -> Iterator[Any]:
    """Give the messages to these coaches that came of the client's, or in which the name can be."""
    looked_at = select(
        OutboxRow.number, OutboxRow.about_message, type_coerce(OutboxRow.parts, TextColumn), OutboxRow.words
    ).where(OutboxRow.person.in_(coaches))
    found = [
        number
        for number, about, parts, words in connection.execute(looked_at)
        if about in mine or name.is_in((parts, words or "")) or CHOSEN in parts
    ]
    whole = select(
        OutboxRow.number,
        OutboxRow.state,
        OutboxRow.trying_since,
        OutboxRow.about_message,
        OutboxRow.parts,
        OutboxRow.actions,
        OutboxRow.labels,
        OutboxRow.words,
    )
    for some in _in_portions(found):
        yield from connection.execute(whole.where(OutboxRow.number.in_(some))).all()


def _told_coach(connection: Connection, person: Row[Any]) -> list[Any]:
    """Return what the coach was told of erasures."""
    if person.coach is None:
        return []
    found = connection.execute(
        select(OutboxRow.number, OutboxRow.state, OutboxRow.parts).where(
            OutboxRow.person == person.coach,
            type_coerce(OutboxRow.parts, TextColumn).contains(LAST_WORDS),
        )
    )
    return [
        row
        for row in found.all()
        if any(isinstance(part, Notice) and part.topic == LAST_WORDS for part in row.parts)
    ]


def _drop(connection: Connection, numbers: Collection[int]) -> None:
    """Delete messages of the outbox."""
    for some in _in_portions(list(numbers)):
        connection.execute(delete(SentKeyRow).where(SentKeyRow.outbox.in_(some)))
        connection.execute(delete(OutboxRow).where(OutboxRow.number.in_(some)))


def _in_portions(numbers: list[int], most: int = 500) -> list[list[int]]:
    return [numbers[at : at + most] for at in range(0, len(numbers), most)]
