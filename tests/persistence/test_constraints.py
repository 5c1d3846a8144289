"""States that cannot be are refused by the database itself, whoever writes them."""

from collections.abc import Iterator
from contextlib import ExitStack
from datetime import date
from decimal import Decimal
from itertools import takewhile
from typing import Any

import pytest
from sqlalchemy import Engine, func, insert, select, update
from sqlalchemy.exc import IntegrityError

from domain.incoming import Text
from persistence.engine import open_engine
from persistence.store import open_store
from persistence.tables import (
    AlertRow,
    Base,
    DeliveryRow,
    EntryRow,
    HoldRow,
    InboxRow,
    InvitationRow,
    OutboxRow,
    PersonRow,
    ProgrammeRow,
    WordsRow,
    WorkoutRow,
)
from tests.persistence.people import NOON, programme, settled
from tests.postgres import Server

Rows = dict[type[Base], dict[str, Any]]

DAY = date(2026, 3, 2)
NOBODY = 999


def whole_rows(coach: int, client: int) -> Rows:
    """Return a row for each table that can be, given a coach and a client, in an order that can be stored."""
    return {
        PersonRow: {"number": 50, "name": "Piet", "chat": "telegram:50", "created_at": NOON},
        ProgrammeRow: {
            "number": 50,
            "coach": coach,
            "name": "Other",
            "version": 1,
            "sheet": "Other",
            "programme": programme("Other"),
            "created_at": NOON,
        },
        InboxRow: {
            "number": 50,
            "source": "telegram",
            "key": "50",
            "person": client,
            "chat": "telegram:Noor",
            "incoming": Text(text="dip 8"),
            "received_at": NOON,
        },
        WorkoutRow: {
            "client": client,
            "number": 1,
            "programme": 50,
            "name": "Push",
            "day": DAY,
            "state": "open",
            "round": 1,
            "skipped": (),
        },
        EntryRow: {
            "client": client,
            "number": 1,
            "workout": 1,
            "message": 50,
            "exercise": "Dip",
            "load": Decimal("12.5"),
            "unit": "kg",
            "load_kind": "added",
            "reps": 8,
            "lowering_only": False,
            "day": DAY,
            "at": NOON,
        },
        HoldRow: {"client": client, "number": 1, "exercise": "Dip", "place": "elbow", "since": DAY},
        AlertRow: {
            "client": client,
            "number": 1,
            "coach": coach,
            "reason": "pain",
            "evidence": {},
            "opened_at": NOON,
        },
        WordsRow: {
            "client": client,
            "number": 1,
            "writer": "coach",
            "name": "Ilse",
            "text": "Well done.",
            "at": NOON,
        },
        InvitationRow: {
            "code_hash": "a" * 64,
            "name": "Piet",
            "coach": coach,
            "as_coach": False,
            "created_at": NOON,
            "expires": NOON,
        },
        OutboxRow: {
            "number": 50,
            "person": client,
            "weight": "answer",
            "parts": (),
            "actions": (),
            "created_at": NOON,
        },
        DeliveryRow: {"person": 50, "platform": "telegram", "nudges_only": False},
    }


SENT = {"state": "sent", "sent_at": NOON, "words": "hello", "labels": (), "message_keys": ("1",)}

CANNOT_BE: list[tuple[type[Base], dict[str, Any]]] = [
    (PersonRow, {"unit": "stone"}),
    (PersonRow, {"chat": "telegram:Noor"}),
    (PersonRow, {"is_client": True}),
    (PersonRow, {"lease_token": "a"}),
    (PersonRow, {"lease_until": NOON}),
    (PersonRow, {"body_mass": Decimal(0)}),
    (PersonRow, {"body_mass": Decimal("-0.1")}),
    (PersonRow, {"coach": NOBODY}),
    (PersonRow, {"programme": NOBODY}),
    (ProgrammeRow, {"version": 0}),
    (ProgrammeRow, {"coach": NOBODY}),
    (ProgrammeRow, {"name": "Harbour Base"}),
    (InboxRow, {"person": NOBODY}),
    (InboxRow, {"chat": None}),
    (InboxRow, {"source": "desk"}),
    (InboxRow, {"fault": "ValueError"}),
    (WorkoutRow, {"number": 0}),
    (WorkoutRow, {"state": "half done"}),
    (WorkoutRow, {"programme": NOBODY}),
    (EntryRow, {"number": 0}),
    (EntryRow, {"workout": 2}),
    (EntryRow, {"message": NOBODY}),
    (EntryRow, {"load": Decimal("-2.5")}),
    (EntryRow, {"load_kind": "body"}),
    (EntryRow, {"load_kind": "estimated"}),
    (EntryRow, {"unit": "stone"}),
    (EntryRow, {"reps": None}),
    (EntryRow, {"seconds": 30}),
    (EntryRow, {"reps": -1}),
    (EntryRow, {"reps": None, "seconds": -1}),
    (EntryRow, {"rir": Decimal(-1)}),
    (EntryRow, {"superseded_by": 1}),
    (EntryRow, {"superseded_by": 2, "taken_back_at": NOON}),
    (HoldRow, {"number": 0}),
    (HoldRow, {"lifted_on": DAY}),
    (HoldRow, {"lifted_by": 50}),
    (AlertRow, {"number": 0}),
    (AlertRow, {"reason": "bored"}),
    (AlertRow, {"settled_at": NOON}),
    (AlertRow, {"settled_at": NOON, "remedy": "seen"}),
    (AlertRow, {"settled_by": 50, "remedy": "seen"}),
    (AlertRow, {"settled_at": NOON, "settled_by": 50, "remedy": "shout"}),
    (WordsRow, {"number": 0}),
    (WordsRow, {"writer": "stranger"}),
    (WordsRow, {"alert": 50}),
    (InvitationRow, {"code_hash": "the code itself"}),
    (InvitationRow, {"coach": None}),
    (InvitationRow, {"used_by": 50}),
    (InvitationRow, {"used_at": NOON}),
    (OutboxRow, {"weight": "spam"}),
    (OutboxRow, {"state": "lost"}),
    (OutboxRow, {"attempts": -1}),
    (OutboxRow, {"about_message": 50, "about_wake": NOON}),
    (OutboxRow, {"about_message": NOBODY}),
    (OutboxRow, {"state": "sent"}),
    (OutboxRow, {"state": "failed"}),
    (OutboxRow, {**SENT, "state": "pending"}),
    (OutboxRow, {**SENT, "words": None}),
    (OutboxRow, {**SENT, "fault": "blocked"}),
    (OutboxRow, {**SENT, "trying_since": NOON}),
    (DeliveryRow, {"first": 50}),
    (DeliveryRow, {"due_at": NOON}),
    (DeliveryRow, {"lease_token": "a"}),
    (DeliveryRow, {"lease_until": NOON}),
    (DeliveryRow, {"person": NOBODY}),
]


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def peopled(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[Engine, Rows]]:
    """Yield a database with a coach and a client, and the rows that belong to them. Each test rolls back."""
    with ExitStack() as stack:
        if request.param == "sqlite":
            url = f"sqlite:///{tmp_path_factory.mktemp('constraints') / 'kilopost.sqlite3'}"
        else:
            server: Server = request.getfixturevalue("postgres_server")
            url = stack.enter_context(server.database("constraints"))
        store = open_store(url)
        stack.callback(store.close)
        people = settled(store, "Noor")
        engine = open_engine(url)
        stack.callback(engine.dispose)
        yield engine, whole_rows(people["Ilse"], people["Noor"])


def test_the_rows_that_the_cases_spoil_are_themselves_taken(peopled: tuple[Engine, Rows]) -> None:
    engine, rows = peopled
    with engine.connect() as connection:
        for table, row in rows.items():
            before = connection.execute(select(func.count()).select_from(table)).scalar_one()
            connection.execute(insert(table).values(row))
            assert connection.execute(select(func.count()).select_from(table)).scalar_one() == before + 1
        assert connection.execute(update(OutboxRow).values(SENT)).rowcount == 1


@pytest.mark.parametrize(
    ("spoilt", "change"), CANNOT_BE, ids=[f"{table.__tablename__} {change}" for table, change in CANNOT_BE]
)
def test_a_state_that_cannot_be_is_refused(
    peopled: tuple[Engine, Rows], spoilt: type[Base], change: dict[str, Any]
) -> None:
    engine, rows = peopled
    with engine.connect() as connection:
        for table in takewhile(lambda each: each is not spoilt, rows):
            connection.execute(insert(table).values(rows[table]))
        with pytest.raises(IntegrityError):
            connection.execute(insert(spoilt).values({**rows[spoilt], **change}))
