"""People prepared by a roster: put into the database once, however often the roster is loaded.

Coaches are known again by their names, clients by their names and coach. Whoever is there already is left as
they are, since they may have changed something since; a sheet that has changed becomes the next version.
"""

import secrets
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, insert, select, update

from domain.coach_memory import CoachMemory
from domain.equipment import Equipment, default_equipment
from domain.memory import ClientMemory
from domain.programme import Programme
from domain.state import Coach, Invitation
from domain.units import Unit
from persistence import joining
from persistence.faults import ChatTaken
from persistence.people import Person, person
from persistence.programmes import Programmes, store_sheet
from persistence.state import coach_of
from persistence.tables import PersonRow

INVITATION_LASTS = timedelta(days=14)


@dataclass(frozen=True, slots=True)
class PreparedCoach:
    """A coach. `chat` is the platform and its name for the chat; None where that is not known yet."""

    name: str
    zone: str
    unit: Unit
    chat: str | None = None


@dataclass(frozen=True, slots=True)
class PreparedClient:
    """A client, with the coach and the programme by name. `equipment` None is what a usual gym has."""

    name: str
    coach: str
    programme: str | None
    unit: Unit
    zone: str
    starts: date
    remind_at: time
    chat: str | None = None
    body_mass: Decimal | None = None
    equipment: Equipment | None = None


@dataclass(frozen=True, slots=True)
class PreparedSheet:
    """A programme, with the sheet that it was read from. Every coach of the roster gets it."""

    programme: Programme
    sheet: str


@dataclass(frozen=True, slots=True)
class Roster:
    """Coaches, their sheets and their clients. All names are known and unique; the reader has seen to it."""

    coaches: tuple[PreparedCoach, ...] = ()
    sheets: tuple[PreparedSheet, ...] = ()
    clients: tuple[PreparedClient, ...] = ()


@dataclass(frozen=True, slots=True)
class Loaded:
    """Somebody of a roster, and whether this is `new` or was there before."""

    person: Person
    new: bool


def load_roster(
    connection: Connection, roster: Roster, programmes: Programmes, now: datetime
) -> tuple[Loaded, ...]:
    """Put a roster's people and sheets into the database. Raises ChatTaken."""
    loaded = []
    coaches: dict[str, int] = {}
    stored: dict[int, dict[str, int]] = {}
    for coach in roster.coaches:
        number, new = _coach(connection, coach, now)
        coaches[coach.name] = number
        stored[number] = _sheets(connection, number, roster.sheets, programmes, now)
        loaded.append((number, new))
    for client in roster.clients:
        coach_number = coaches[client.coach]
        programme = stored[coach_number][client.programme] if client.programme is not None else None
        loaded.append(_client(connection, client, coach_number, programme, now))
    return tuple(
        Loaded(found, new) for number, new in loaded if (found := person(connection, number)) is not None
    )


def invite(connection: Connection, number: int, now: datetime) -> str:
    """Return a fresh code with which this prepared person opens a chat; earlier codes hold no more."""
    row = connection.execute(
        select(PersonRow.name, PersonRow.coach, PersonRow.is_coach).where(PersonRow.number == number)
    ).one()
    joining.revoke(connection, number, now)
    coach: Coach | None = None if row.coach is None else coach_of(connection, row.coach)
    code = secrets.token_urlsafe(16)
    expires = now + INVITATION_LASTS
    invitation = Invitation(code, row.name, expires, coach, as_coach=row.is_coach, person=number)
    joining.invite(connection, invitation, now)
    return code


def _coach(connection: Connection, coach: PreparedCoach, now: datetime) -> tuple[int, bool]:
    found = connection.execute(
        select(PersonRow.number).where(PersonRow.is_coach, PersonRow.name == coach.name)
    ).scalar()
    if found is not None:
        return found, False
    facts = {
        "name": coach.name,
        "zone": coach.zone,
        "unit": coach.unit,
        "is_coach": True,
        "coach_memory": CoachMemory(),
    }
    return _add(connection, coach.chat, facts, now), True


def _client(
    connection: Connection, client: PreparedClient, coach: int, programme: int | None, now: datetime
) -> tuple[int, bool]:
    found = connection.execute(
        select(PersonRow.number).where(
            PersonRow.is_client, PersonRow.coach == coach, PersonRow.name == client.name
        )
    ).scalar()
    if found is not None:
        return found, False
    facts = {
        "name": client.name,
        "zone": client.zone,
        "unit": client.unit,
        "is_client": True,
        "coach": coach,
        "programme": programme,
        "starts": client.starts,
        "remind_at": client.remind_at,
        "body_mass": client.body_mass,
        "equipment": client.equipment or default_equipment(client.unit),
        "client_memory": ClientMemory(),
    }
    return _add(connection, client.chat, facts, now), True


def _add(connection: Connection, chat: str | None, facts: dict[str, Any], now: datetime) -> int:
    """Add a person; a stranger who has already written in that chat becomes this person."""
    chat = chat or f"local:{facts['name']}"
    facts = {**facts, "chat": chat, "wake_at": now}
    row = connection.execute(
        select(PersonRow.number, PersonRow.name, PersonRow.is_coach, PersonRow.is_client).where(
            PersonRow.chat == chat
        )
    ).first()
    if row is None:
        added = connection.execute(
            insert(PersonRow).values(created_at=now, **facts).returning(PersonRow.number)
        )
        return int(added.scalar_one())
    if row.is_coach or row.is_client:
        raise ChatTaken(chat, row.name)
    connection.execute(update(PersonRow).where(PersonRow.number == row.number).values(facts))
    return int(row.number)


def _sheets(
    connection: Connection,
    coach: int,
    sheets: tuple[PreparedSheet, ...],
    programmes: Programmes,
    now: datetime,
) -> dict[str, int]:
    """Store what has changed; return the number of the newest version by the programme's name."""
    newest = {each.programme.name: each.programme for each in programmes.newest(connection, coach)}
    for sheet in sheets:
        if newest.get(sheet.programme.name) != sheet.programme:
            store_sheet(connection, coach, sheet.programme, sheet.sheet, now)
    return {each.programme.name: each.number for each in programmes.newest(connection, coach)}
