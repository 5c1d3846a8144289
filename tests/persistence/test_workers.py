"""Many workers, and workers that are killed: every message is decided on once, in order, and answered."""

import random
import subprocess
import sys
import threading
import time
from collections import Counter, defaultdict
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import func, select

from domain.incoming import Decided, Text
from persistence.engine import open_engine, reading
from persistence.store import Store, open_store
from persistence.tables import EntryRow, InboxRow, OutboxRow, PersonRow
from tests.kill.process import HUNG_SECONDS
from tests.persistence.people import LEASE_SECONDS, settled, text
from tests.persistence.worker import decide, step

NAMES = [f"client {number}" for number in range(12)]
MESSAGES = 20
START = """
import gc; gc.disable()
from bot.worked_out import keep_between_runs; keep_between_runs()
from tests.persistence.worker import main; gc.enable(); main()
"""
"""A worker, loaded as the command line loads the bot: else starting takes nearly twice as long."""


def fill(store: Store) -> dict[str, int]:
    """Let every client send the loads 1, 2, 3 …, all at once; return everybody's number."""
    people = settled(store, *NAMES)
    store.receive(
        [
            text(f"telegram:{name}", str(load), str(load), datetime.now(UTC))
            for load in range(1, MESSAGES + 1)
            for name in NAMES
        ]
    )
    return people


def check(url: str, people: dict[str, int]) -> None:
    """Check that each message is one entry, one answer and one order, in the order of their sending."""
    engine = open_engine(url)
    clients = sorted(number for name, number in people.items() if name != "Ilse")
    with reading(engine) as connection:
        entries = connection.execute(
            select(EntryRow.client, EntryRow.number, EntryRow.load, InboxRow.incoming)
            .join(InboxRow, InboxRow.number == EntryRow.message)
            .order_by(EntryRow.client, EntryRow.number)
        ).all()
        inbox = connection.execute(
            select(InboxRow.person, InboxRow.incoming, InboxRow.done_at, InboxRow.fault).order_by(
                InboxRow.number
            )
        ).all()
        answers = connection.execute(
            select(OutboxRow.person, OutboxRow.parts, OutboxRow.state).order_by(OutboxRow.number)
        ).all()
        leased = connection.execute(
            select(func.count()).where(PersonRow.lease_token.is_not(None))
        ).scalar_one()
    engine.dispose()
    loads = range(1, MESSAGES + 1)
    assert [(row.client, row.number, int(row.load)) for row in entries] == [
        (client, load, load) for client in clients for load in loads
    ]
    assert all(Text(text=str(row.load), key=str(row.load)) == row.incoming for row in entries)
    assert all(row.done_at is not None and row.fault is None for row in inbox)
    orders = Counter(
        (row.incoming.coach, row.incoming.alert) for row in inbox if isinstance(row.incoming, Decided)
    )
    assert orders == {(client, load): 1 for client in clients for load in loads}
    said: dict[int, list[str]] = defaultdict(list)
    for row in answers:
        said[row.person].append(row.parts[0].facts["text"])
    assert said == {client: [str(load) for load in loads] for client in clients}
    assert {row.state for row in answers} == {"sent"}
    assert leased == 0


def test_workers_at_the_same_time_decide_each_message_once_and_in_order(url: str) -> None:
    stores = [open_store(url) for _ in range(3)]
    people = fill(stores[0])
    faults: list[BaseException] = []

    def run(store: Store) -> None:
        try:
            while (lease := store.claim_person(datetime.now(UTC), LEASE_SECONDS)) is not None:
                while store.work(lease, datetime.now(UTC), decide):
                    pass
            while step(store):
                pass
        except BaseException as fault:
            faults.append(fault)
            raise

    workers = [threading.Thread(target=run, args=(store,)) for store in stores]
    for worker in workers:
        worker.start()
    for worker in workers:
        worker.join()
    while step(stores[0]):
        pass
    assert faults == []
    check(url, people)
    for store in stores:
        store.close()


@pytest.mark.parametrize("kills", [4])
def test_workers_that_are_killed_lose_nothing_and_do_nothing_twice(url: str, kills: int) -> None:
    store = open_store(url)
    people = fill(store)
    store.close()
    chance = random.Random(8)
    sent: list[str] = []
    for killed in range(kills):
        with subprocess.Popen(
            [sys.executable, "-c", START, url], stdout=subprocess.PIPE, text=True
        ) as worker:
            assert worker.stdout is not None
            assert worker.stdout.readline() == "ready\n"
            if killed % 2:
                # Every other one is let live until it has sent something, however busy the machine is.
                sent.append(worker.stdout.readline().rstrip())
            time.sleep(chance.uniform(0.05, 0.4))
            worker.kill()
            sent += worker.stdout.read().splitlines()
    store = open_store(url)
    deadline = time.monotonic() + HUNG_SECONDS
    latest = datetime.now(UTC) + timedelta(seconds=1)
    while datetime.now(UTC) < latest or step(store):
        assert time.monotonic() < deadline
        step(store)
        time.sleep(0.001)
    store.close()
    check(url, people)
    assert len(sent) > 0
    again = [line for line, times in Counter(sent).items() if times > 1]
    assert len(again) <= kills  # beyond what was in flight at a kill, nothing is sent twice
