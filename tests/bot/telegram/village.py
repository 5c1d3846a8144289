"""An invented coach and her clients, on Telegram: prepared in a store, and brought in by their codes."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, date, datetime
from types import MappingProxyType
from typing import Any

from sqlalchemy import Engine, select
from telegram import Bot

from bot.clock import machine_time
from bot.roster import read_roster
from bot.telegram.intake import Intake
from bot.telegram.polling import Polling
from persistence.engine import reading
from persistence.store import Store
from persistence.tables import EntryRow, InboxRow, PersonRow

SHEET = """Quayside Base
Train every 2 days in turn: Pull, Push

Pull
1. Seated cable row, 8-10 reps to failure
2. Romanian deadlift, 6-8 reps, stop one short of failure

Push
1. Dip, 5-8 reps to failure; over 8 add load
2. Overhead press, 6-8 reps to failure
"""


AMSTERDAM = "Europe/Amsterdam"
NOON = 12


def where_it_is_noon(now: datetime) -> str:
    """Return a zone whose clocks show about noon: within a coach's hours, whenever the tests run."""
    behind = now.astimezone(UTC).hour - NOON
    return f"Etc/GMT{behind:+d}" if behind else "Etc/GMT"


def roster(
    *clients: str, chats: Mapping[str, str] = MappingProxyType({}), zone: str = AMSTERDAM
) -> dict[str, Any]:
    """Return the coach Ilse and clients of these names, without a chat yet; and others who have `chats`."""
    today = date.today().isoformat()  # noqa: DTZ011 any day near now will do
    return {
        "coaches": [{"name": "Ilse", "zone": zone, "unit": "kg"}],
        "sheets": [SHEET],
        "clients": [
            {
                "name": name,
                "coach": "Ilse",
                "programme": "Quayside Base",
                "unit": "kg",
                "zone": zone,
                "starts": today,
                "remind_at": "00:05",
            }
            | ({"chat": chats[name]} if name in chats else {})
            for name in (*clients, *chats)
        ],
    }


def codes(
    store: Store, *clients: str, chats: Mapping[str, str] = MappingProxyType({}), zone: str | None = None
) -> dict[str, str]:
    """Put the people into the store, where it is noon; return the code with which each opens the chat who has
    none."""
    now = datetime.now(UTC)
    people = roster(*clients, chats=chats, zone=where_it_is_noon(now) if zone is None else zone)
    loaded = store.load_roster(read_roster(people), now)
    without = [each.person for each in loaded if each.person.name not in chats]
    return {person.name: store.invite(person.number, now) for person in without}


def polling_of(bot: Bot, store: Store, farewell: str = "") -> Polling:
    """Return the polling loop of `bot`, which tells nobody of what came in."""
    return Polling(bot, store, Intake(bot, store, machine_time, lambda: None, farewell), machine_time)


@dataclass(frozen=True)
class Recorded:
    """A recorded set that counts, and the words that it came from."""

    exercise: str
    load: str
    reps: int | None
    words: str


def journal(engine: Engine, name: str) -> list[Recorded]:
    """Return the sets of a client that count, oldest first."""
    with reading(engine) as connection:
        rows = connection.execute(
            select(EntryRow.exercise, EntryRow.load, EntryRow.reps, InboxRow.incoming)
            .join(InboxRow, InboxRow.number == EntryRow.message)
            .join(PersonRow, PersonRow.number == EntryRow.client)
            .where(PersonRow.name == name, EntryRow.superseded_by.is_(None), EntryRow.taken_back_at.is_(None))
            .order_by(EntryRow.number)
        ).all()
    return [Recorded(row.exercise, f"{row.load:f}", row.reps, row.incoming.text) for row in rows]


def inbox_count(engine: Engine, name: str) -> int:
    """Return how many messages of a person's own stand in the inbox."""
    with reading(engine) as connection:
        rows = connection.execute(
            select(InboxRow.number)
            .join(PersonRow, PersonRow.number == InboxRow.person)
            .where(PersonRow.name == name, InboxRow.source == "telegram")
        )
        return len(rows.all())
