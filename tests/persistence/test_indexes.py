"""No query reads a table from end to end, however long the journal; nor does the check of a foreign key."""

import re
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import PrimaryKeyConstraint, Table, UniqueConstraint, event

from domain.actions import Words
from domain.incoming import Edited, Pressed, Reachable, Started, Text
from domain.outcome import Outcome
from domain.parts import Say, Urgent
from persistence.engine import open_engine, reading
from persistence.migrate import migrate
from persistence.store import Store
from persistence.tables import Base
from tests.persistence.people import (
    LEASE_SECONDS,
    NOON,
    after,
    received,
    roster,
    settled,
    text,
    work_all,
)
from tests.persistence.test_joining import invite, take_up
from tests.persistence.worker import decide

FEW_ONLY = {"inbox_waiting", "people_due", "deliveries_due", "deliveries_next", "people_coaches"}
"""Indexes that hold only what waits, or the coaches, and so may be read from one end."""

NEVER_DELETED = {"programmes"}
"""Rows that are never deleted need no way back to those that point at them."""


def everyday(store: Store) -> None:
    """Let happen what happens every day, and what happens when people join."""
    people = settled(store, "Noor", "Piet")
    asked = Say(to=people["Noor"], parts=(Urgent(),), buttons=(Words(text="yes"),))
    store.receive([text("telegram:Noor", "1", "1")], ("telegram", "1"))
    store.cursor("telegram")
    work_all(store, NOON, decide)
    store.receive([received("telegram:Noor", Edited(text="3", key="1"), "edit")])
    work_all(store, NOON, lambda _state, _heard: Outcome(says=(asked,), wake_at=after(hours=1)))
    while (chat := store.claim_chat(NOON, LEASE_SECONDS, "telegram")) is not None:
        while (outgoing := store.next_message(chat, NOON)) is not None:
            store.sending(chat, outgoing.number, NOON)
            store.sent(chat, outgoing.number, "words", ["17"], ["yes"] * len(outgoing.say.buttons), NOON)
    for key in ("17", "1"):  # one of the bot's, one of her own
        reply = Text(text="8", key=f"reply {key}", replies_to=key)
        store.receive([received("telegram:Noor", reply, f"reply {key}")])
    work_all(store, NOON, lambda _state, _heard: Outcome(wake_at=after(hours=1)))
    data = store.button(people["Noor"], "yes")
    assert data is not None
    store.receive(
        [
            received("telegram:Noor", Pressed(button=data), "press"),
            received("telegram:Noor", Reachable(reachable=False), "blocked"),
            received("telegram:7", Started(code=invite(store, "Ana")), "start"),
        ]
    )
    work_all(store, after(hours=2), take_up)
    store.load_roster(roster("Noor", "Piet"), NOON)
    store.receive([received("telegram:8", Started(code=store.invite(people["Piet"], NOON)), "start")])
    work_all(store, after(hours=2), take_up)
    store.receive([text("telegram:1", "who needs me?", "1"), text("telegram:Noor", "x", "x")])
    work_all(store, after(hours=2), lambda _state, _heard: Outcome(says=(asked, asked)))
    chat = store.claim_chat(after(hours=2), LEASE_SECONDS)
    assert chat is not None
    outgoing = store.next_message(chat, after(hours=2))
    assert outgoing is not None
    store.failed(chat, outgoing.number, "blocked", after(hours=2), unreachable=True)
    store.try_again(chat, outgoing.number + 1, after(hours=3), after(hours=2))
    store.next_due(after(hours=2))
    person = store.claim_person(after(days=1), LEASE_SECONDS)
    assert person is not None
    store.set_aside(person, None, "fault", after(days=1))
    store.let_go(person)
    store.person(people["Noor"])
    store.person_of_chat("telegram:Noor")


def test_every_query_finds_its_rows_by_an_index(tmp_path: Path) -> None:
    engine = open_engine(f"sqlite:///{tmp_path / 'kilopost.sqlite3'}")
    migrate(engine)
    ran: dict[str, Any] = {}

    @event.listens_for(engine, "before_cursor_execute")
    def note(_connection: object, _cursor: object, statement: str, values: Any, *_: object) -> None:
        ran[statement] = values[0] if isinstance(values, list) else values

    everyday(Store(engine))
    event.remove(engine, "before_cursor_execute", note)
    queries = {sql: values for sql, values in ran.items() if re.match(r"SELECT|UPDATE|DELETE", sql)}
    assert len(queries) > 40
    with reading(engine) as connection:
        steps = [
            (step.detail, sql)
            for sql, values in queries.items()
            for step in connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {sql}", values)
        ]
    engine.dispose()
    tables = "|".join(Base.metadata.tables)
    read_whole = [
        (step, sql)
        for step, sql in steps
        if re.match(rf"SCAN ({tables})\b", step) and step.split()[-1] not in FEW_ONLY
    ]
    assert read_whole == []


@pytest.mark.parametrize("table", Base.metadata.sorted_tables, ids=lambda table: str(table.name))
def test_every_foreign_key_has_an_index_for_the_way_back(table: Table) -> None:
    keys = [each for each in table.constraints if isinstance(each, PrimaryKeyConstraint | UniqueConstraint)]
    whole = [each for each in table.indexes if each.dialect_options["sqlite"]["where"] is None]
    led_by = {next(iter(each.columns)).name for each in (*keys, *whole)}
    pointing = {
        next(iter(each.columns)).name
        for each in table.foreign_key_constraints
        if each.referred_table.name not in NEVER_DELETED
    }
    assert pointing <= led_by
