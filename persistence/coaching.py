"""What a coach has besides clients: notes, open invitations, and clients whom others offer."""

from datetime import datetime

from sqlalchemy import Connection, delete, insert, select, update

from domain.erasure import Name, actions_left, parts_left
from domain.incoming import Edited, Text
from domain.notes import Note
from domain.outcome import HandedOver
from domain.state import Offer, OfferedClient, OpenInvitation
from persistence import outbox
from persistence.tables import AlertRow, InboxRow, InvitationRow, NoteRow, OfferRow, OutboxRow, PersonRow

_OTHERS = select(PersonRow.number, PersonRow.name).where(PersonRow.is_coach).order_by(PersonRow.number)


def coaches(connection: Connection, but: int) -> tuple[tuple[int, str], ...]:
    """Return the number and the name of each coach but one."""
    return tuple((row.number, row.name) for row in connection.execute(_OTHERS) if row.number != but)


def open_invitations(connection: Connection, coach: int, now: datetime) -> tuple[OpenInvitation, ...]:
    """Return the coach's invitations that can still be taken up, oldest first."""
    rows = connection.execute(
        select(InvitationRow.code_hash, InvitationRow.name, InvitationRow.expires, InvitationRow.as_coach)
        .where(
            InvitationRow.coach == coach,
            InvitationRow.used_by.is_(None),
            InvitationRow.revoked_at.is_(None),
            InvitationRow.expires > now,
        )
        .order_by(InvitationRow.created_at)
    )
    return tuple(OpenInvitation(*row) for row in rows)


def revoke(connection: Connection, coach: int, key: str, now: datetime) -> None:
    """Let an invitation of this coach's not be taken up any more."""
    connection.execute(
        update(InvitationRow)
        .where(InvitationRow.code_hash == key, InvitationRow.coach == coach, InvitationRow.used_by.is_(None))
        .values(revoked_at=now)
    )


def offered(connection: Connection, coach: int) -> tuple[OfferedClient, ...]:
    """Return the clients whom others offer to this coach, the oldest offer first."""
    giver = select(PersonRow.number, PersonRow.name).where(PersonRow.is_coach).subquery()
    rows = connection.execute(
        select(OfferRow.client, PersonRow.name, giver.c.name, OfferRow.at)
        .join(PersonRow, PersonRow.number == OfferRow.client)
        .join(giver, giver.c.number == PersonRow.coach)
        .where(OfferRow.to == coach)
        .order_by(OfferRow.at, OfferRow.client)
    )
    return tuple(OfferedClient(*row) for row in rows)


def keep_offer(connection: Connection, client: int, offer: Offer | None) -> None:
    """Let a client be offered as given, and to nobody else."""
    connection.execute(delete(OfferRow).where(OfferRow.client == client))
    if offer is not None:
        values = {"client": client, "to": offer.to, "at": offer.at, "with_notes": offer.with_notes}
        connection.execute(insert(OfferRow).values(values))


def hand_over(connection: Connection, client: int, before: int, change: HandedOver) -> None:
    """Let a client and all that is open be another coach's; the notes of the one before go along, or go.

    What the one before has not been sent yet of the client is not sent any more.
    """
    to = change.to.number
    withhold(connection, client, before)
    connection.execute(update(PersonRow).where(PersonRow.number == client).values(coach=to))
    connection.execute(
        update(AlertRow).where(AlertRow.client == client, AlertRow.settled_at.is_(None)).values(coach=to)
    )
    connection.execute(delete(OfferRow).where(OfferRow.client == client))
    mine = (NoteRow.client == client, NoteRow.coach == before)
    if change.with_notes:
        connection.execute(update(NoteRow).where(*mine).values(coach=to))
    else:
        forget_notes(connection, *connection.execute(select(NoteRow.number).where(*mine)).scalars())


def withhold(connection: Connection, client: int, coach: int) -> None:
    """Take a client out of what waits to be sent to a coach; what is on its way right now is let go."""
    name = connection.execute(select(PersonRow.name).where(PersonRow.number == client)).scalar_one()
    waiting = select(OutboxRow.number, OutboxRow.parts, OutboxRow.actions).where(
        OutboxRow.person == coach, OutboxRow.state == "pending", OutboxRow.trying_since.is_(None)
    )
    for row in connection.execute(waiting.order_by(OutboxRow.number)).all():
        left = parts_left(row.parts, Name(name), is_sent=False, client=client)
        if not left:
            outbox.give_up(connection, row.number, "handed over")
        elif left != row.parts:
            actions = tuple(row.actions[at] for at in actions_left(row.actions, client))
            changed = update(OutboxRow).where(OutboxRow.number == row.number)
            connection.execute(changed.values(parts=left, actions=actions))


def notes(connection: Connection, coach: int, client: int | None = None) -> tuple[Note, ...]:
    """Return what a coach has noted, on one client or on all, oldest first."""
    of = () if client is None else (NoteRow.client == client,)
    rows = connection.execute(
        select(NoteRow.number, NoteRow.client, NoteRow.text, NoteRow.at, NoteRow.message)
        .where(NoteRow.coach == coach, *of)
        .order_by(NoteRow.number)
    )
    return tuple(Note(*row) for row in rows)


def keep_note(connection: Connection, coach: int, note: Note) -> None:
    """Store a note."""
    values = {"coach": coach, "client": note.client, "text": note.text, "at": note.at}
    connection.execute(insert(NoteRow).values(message=note.message, **values))


def forget_note(connection: Connection, coach: int, number: int) -> None:
    """Erase one of a coach's own notes."""
    own = select(NoteRow.number).where(NoteRow.number == number, NoteRow.coach == coach)
    forget_notes(connection, *connection.execute(own).scalars())


def forget_notes(connection: Connection, *numbers: int) -> None:
    """Erase notes, and the words of the messages that they came from."""
    came_of = list(connection.execute(select(NoteRow.message).where(NoteRow.number.in_(numbers))).scalars())
    connection.execute(delete(NoteRow).where(NoteRow.number.in_(numbers)))
    for row in connection.execute(
        select(InboxRow.number, InboxRow.incoming).where(InboxRow.number.in_(came_of))
    ).all():
        if isinstance(row.incoming, Text | Edited):
            emptied = row.incoming.model_copy(update={"text": ""})
            connection.execute(update(InboxRow).where(InboxRow.number == row.number).values(incoming=emptied))
