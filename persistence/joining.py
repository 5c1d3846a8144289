"""Invitations, and how a stranger becomes a client or a coach by one."""

from datetime import datetime, time
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import Connection, Row, delete, insert, select, type_coerce, update
from sqlalchemy import Text as TextColumn

from domain.coach_memory import CoachMemory
from domain.equipment import default_equipment
from domain.incoming import Edited, Started, Text
from domain.memory import ClientMemory, Joining
from domain.outcome import Joined
from domain.state import Invitation
from persistence import outbox
from persistence.faults import RecordMissing
from persistence.people import code_hash
from persistence.tables import InboxRow, InvitationRow, PersonRow

REMIND_AT = time(8)
"""When a new client is reminded who has not yet said when."""


def invite(connection: Connection, invitation: Invitation, now: datetime) -> None:
    """Store an invitation; of its code only a hash."""
    connection.execute(
        insert(InvitationRow).values(
            code_hash=code_hash(invitation.code),
            name=invitation.name,
            coach=invitation.coach.number if invitation.coach else None,
            programme=invitation.programme.number if invitation.programme else None,
            person=invitation.person,
            as_coach=invitation.as_coach,
            created_at=now,
            expires=invitation.expires,
        )
    )


def revoke(connection: Connection, person: int, now: datetime) -> None:
    """Let no invitation that was made for this prepared person be taken up any more."""
    connection.execute(
        update(InvitationRow)
        .where(InvitationRow.person == person, InvitationRow.used_by.is_(None))
        .values(revoked_at=now)
    )


def join(
    connection: Connection, stranger: Row[Any], joined: Joined, kept: dict[str, Any]
) -> tuple[int, dict[str, Any]]:
    """Let the stranger take up the invitation; return the person's number, and what to keep of it.

    `kept` holds the columns as the decision would have them. Somebody prepared by a roster keeps the settings
    and the memory made there, and takes over the stranger's chat; the stranger is then gone.
    """
    invitation = joined.invitation
    number = invitation.person if invitation.person is not None else int(stranger.number)
    kept = {**kept, "wake_at": kept["wake_at"] or joined.at, "erased_at": None}
    if number != stranger.number:
        _take_over(connection, stranger, number, joined.at)
        kept = {"wake_at": kept["wake_at"], "erased_at": None}
    elif invitation.as_coach:
        kept = {"is_coach": True, "coach_memory": CoachMemory(), **kept, "wake_at": joined.at}
        if not stranger.is_client:
            by = invitation.coach
            kept |= {"name": invitation.name} | ({"zone": by.zone, "unit": by.unit} if by else {})
    elif stranger.is_coach:
        new = {"client_memory": ClientMemory(joining=Joining())}
        own = {"name": stranger.name, "zone": stranger.zone, "unit": stranger.unit}
        kept = {**_new_client(joined), **new, **own, **kept, "wake_at": joined.at}
    else:
        kept = {**_new_client(joined), **kept}
    used = connection.execute(
        update(InvitationRow)
        .where(
            InvitationRow.code_hash == code_hash(invitation.code),
            InvitationRow.used_by.is_(None),
            InvitationRow.revoked_at.is_(None),
        )
        .values(used_by=number, used_at=joined.at)
    )
    if used.rowcount != 1:
        raise RecordMissing("invitations", number)
    _forget_code(connection, number, invitation.code)
    return number, kept


def _forget_code(connection: Connection, person: int, code: str) -> None:
    """Take a code that is used out of what its owner has sent; there is only its hash from then on."""
    rows = select(InboxRow.number, InboxRow.incoming).where(
        InboxRow.person == person, type_coerce(InboxRow.incoming, TextColumn).contains(code, autoescape=True)
    )
    for row in connection.execute(rows).all():
        match row.incoming:
            case Started():
                left = {"code": ""}
            case Text(text=text) | Edited(text=text):
                left = {"text": text.replace(code, "").strip()}
            case _:
                continue
        emptied = row.incoming.model_copy(update=left)
        connection.execute(update(InboxRow).where(InboxRow.number == row.number).values(incoming=emptied))


def _new_client(joined: Joined) -> dict[str, Any]:
    invitation = joined.invitation
    if invitation.coach is None:
        raise RecordMissing("people", 0)
    coach = invitation.coach
    return {
        "is_client": True,
        "name": invitation.name,
        "coach": coach.number,
        "unit": coach.unit,
        "zone": coach.zone,
        "remind_at": REMIND_AT,
        "starts": joined.at.astimezone(ZoneInfo(coach.zone)).date(),
        "equipment": default_equipment(coach.unit),
        "programme": invitation.programme.number if invitation.programme else None,
        "client_memory": ClientMemory(),
    }


def _take_over(connection: Connection, stranger: Row[Any], prepared: int, now: datetime) -> None:
    """Give the stranger's chat and past to the prepared person; what waited for a former chat is dropped.

    What was said before anything had arrived anywhere has waited for this chat: the welcome first of all.
    """
    # From here on nothing more comes in for the stranger: whoever is storing something has to be done first.
    connection.execute(select(PersonRow.number).where(PersonRow.number == stranger.number).with_for_update())
    if outbox.has_arrived(connection, prepared):
        outbox.drop_waiting(connection, prepared, "chat changed")
    connection.execute(update(InboxRow).where(InboxRow.person == stranger.number).values(person=prepared))
    outbox.hand_over(connection, stranger.number, prepared, stranger.chat, now)
    connection.execute(update(PersonRow).where(PersonRow.number == stranger.number).values(chat=None))
    connection.execute(delete(PersonRow).where(PersonRow.number == stranger.number))
    connection.execute(
        update(PersonRow)
        .where(PersonRow.number == prepared)
        .values(chat=stranger.chat, unreachable_since=None)
    )
