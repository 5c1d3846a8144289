"""People as the edges need them: who writes in a chat, who has a name, how a code is kept."""

import hashlib
from collections.abc import Collection
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, Row, bindparam, select

from domain.brought_in import BroughtIn
from domain.units import Unit
from persistence.statements import InsertOr, Prepared, or_nothing
from persistence.tables import PersonRow


@dataclass(frozen=True, slots=True)
class Person:
    """Somebody, in whatever role. `chat` is the platform and its name for the chat, as in `telegram:1234`."""

    number: int
    name: str
    chat: str | None
    zone: str
    unit: Unit
    is_coach: bool
    is_client: bool
    coach: int | None


_PERSON = (
    PersonRow.number,
    PersonRow.name,
    PersonRow.chat,
    PersonRow.zone,
    PersonRow.unit,
    PersonRow.is_coach,
    PersonRow.is_client,
    PersonRow.coach,
)


_ADD_STRANGERS = InsertOr(PersonRow, or_nothing)
_NUMBER = Prepared(select(PersonRow.number).where(PersonRow.chat == bindparam("chat")))


def people(connection: Connection) -> tuple[Person, ...]:
    """Return every coach and client, in the order in which they came."""
    found = select(*_PERSON).where(PersonRow.is_coach | PersonRow.is_client).order_by(PersonRow.number)
    return tuple(map(_person, connection.execute(found)))


def person(connection: Connection, number: int) -> Person | None:
    """Return the person of that number."""
    row = connection.execute(select(*_PERSON).where(PersonRow.number == number)).first()
    return row and _person(row)


def brought_in(connection: Connection, client: int, change: int) -> BroughtIn | None:
    """Return how far the old journal of that change is taken into a client's; None where it is not begun."""
    memory = connection.execute(select(PersonRow.client_memory).where(PersonRow.number == client)).scalar()
    return next((each for each in memory.brought_in if each.change == change), None) if memory else None


def person_of_chat(connection: Connection, chat: str) -> Person | None:
    """Return the person who writes in `chat`; None where nobody ever did."""
    row = connection.execute(select(*_PERSON).where(PersonRow.chat == chat)).first()
    return row and _person(row)


def numbers_of_chats(connection: Connection, chats: Collection[str], now: datetime) -> dict[str, int]:
    """Return the number of each chat's person; whoever is new becomes a stranger first."""
    known = _numbers(connection, chats)
    unknown = sorted(set(chats) - known.keys())
    if unknown:
        strangers = [{"chat": chat, "name": "", "created_at": now} for chat in unknown]
        _ADD_STRANGERS.many(connection, strangers)
        known |= _numbers(connection, unknown)
    return known


def _numbers(connection: Connection, chats: Collection[str]) -> dict[str, int]:
    numbers = {chat: _NUMBER(connection, {"chat": chat}).scalar() for chat in chats}
    return {chat: number for chat, number in numbers.items() if number is not None}


def platform_of(chat: str) -> str:
    """Return the platform of a chat."""
    return chat.partition(":")[0]


def code_hash(code: str) -> str:
    """Return what is kept of an invitation's code: its SHA-256, in hexadecimal."""
    return hashlib.sha256(code.encode()).hexdigest()


def _person(row: Row[int, str, str | None, str, Unit, bool, bool, int | None]) -> Person:
    return Person(*row)
