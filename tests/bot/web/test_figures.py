"""Health and figures: numbers of what waits and how long, and nothing that anybody wrote."""

import logging
from collections.abc import AsyncIterator, Iterator
from datetime import datetime
from pathlib import Path

import httpx
import pytest
from prometheus_client.parser import text_string_to_metric_families

from bot.channel import Rendered, Sent
from bot.delivery import Delivery
from bot.enclosing import named
from bot.web.address import Address
from bot.web.figures import Figures
from bot.web.server import listening
from domain.outcome import Outcome
from domain.parts import Say, Urgent
from persistence.faults import DatabaseTrouble
from persistence.fresh import write_fresh
from persistence.store import Store, open_store
from tests import loopback
from tests.persistence.people import NOON, after, settled, text, work_all


@pytest.fixture
def store(tmp_path: Path) -> Iterator[Store]:
    opened = open_store(write_fresh(tmp_path / "kilopost.sqlite3"))
    yield opened
    opened.close()


class Now:
    def __init__(self) -> None:
        self.now = NOON

    def __call__(self) -> datetime:
        return self.now

    async def send(self, _chat: str, _message: Rendered) -> Sent:
        return Sent(("1",))

    async def change(self, _chat: str, _message_key: str, _message: Rendered) -> Sent:
        return Sent(("1",))


@pytest.fixture
def now() -> Now:
    return Now()


@pytest.fixture
def figures(store: Store, now: Now) -> Figures:
    return Figures(store, now)


@pytest.fixture
async def client(figures: Figures) -> AsyncIterator[httpx.AsyncClient]:
    async with (
        listening(figures.application, Address("127.0.0.1", 0)) as address,
        loopback.client(base_url=f"http://{address}") as opened,
    ):
        yield opened


async def numbers(client: httpx.AsyncClient) -> dict[tuple[str, ...], float]:
    """Return all figures by name and labels, as a reader of that format finds them."""
    answer = await client.get("/metrics")
    assert answer.headers["Content-Type"].startswith("text/plain")
    return {
        (sample.name, *sample.labels.values()): sample.value
        for family in text_string_to_metric_families(answer.text)
        for sample in family.samples
    }


async def test_what_waits_is_counted_with_its_age(
    store: Store, figures: Figures, client: httpx.AsyncClient, now: Now
) -> None:
    noor = settled(store, "Noor")["Noor"]
    said = Say(to=noor, parts=(Urgent(),))
    store.receive([text("telegram:Noor", "my knee hurts", "1")])
    work_all(store, NOON, lambda _state, _heard: Outcome(says=(said, said), wake_at=after(seconds=20)))
    store.receive([text("telegram:Noor", "dip 8", "2"), text("telegram:Noor", "dip 9", "3")])
    now.now = after(seconds=30)
    found = await numbers(client)
    assert found["kilopost_queue_length", "inbox"] == 2
    assert found["kilopost_queue_age_seconds", "inbox"] == 30
    assert found["kilopost_queue_length", "wakes"] == 1
    assert found["kilopost_queue_age_seconds", "wakes"] == 10
    assert found["kilopost_queue_length", "outbox"] == 2
    assert found["kilopost_queue_age_seconds", "outbox"] == 30
    sending = Delivery(store, now, clock=now, enclose=named, watcher=figures.sent)
    assert await sending.clear() == 2
    found = await numbers(client)
    assert found["kilopost_queue_length", "outbox"] == 0
    assert found["kilopost_sent_after_seconds_count", "answer"] == 2
    assert found["kilopost_sent_after_seconds_sum", "answer"] == 60
    assert "Noor" not in (await client.get("/metrics")).text


async def test_warnings_and_errors_are_counted(figures: Figures, client: httpx.AsyncClient) -> None:
    with figures.counting_log():
        logging.getLogger("some.where").warning("one")
        logging.getLogger("some.where").error("two")
        logging.getLogger("some.where").error("three")
    logging.getLogger("some.where").error("four")
    found = await numbers(client)
    assert found["kilopost_log_records_total", "warning"] == 1
    assert found["kilopost_log_records_total", "error"] == 2


async def test_health_tells_a_bot_that_lets_people_wait_and_a_database_that_is_away(
    store: Store, client: httpx.AsyncClient, now: Now, monkeypatch: pytest.MonkeyPatch
) -> None:
    settled(store, "Noor")
    answer = await client.get("/health")
    assert (answer.status_code, answer.json()["well"]) == (200, True)
    store.receive([text("telegram:Noor", "dip 8", "2")])
    now.now = after(seconds=61)
    answer = await client.get("/health")
    assert (answer.status_code, answer.json()["waits_for_seconds"]["inbox"]) == (503, 61)
    monkeypatch.setattr(store, "queues", _away)
    assert (await client.get("/health")).status_code == 503
    assert (await client.get("/metrics")).status_code == 503


def _away(_now: datetime) -> None:
    raise DatabaseTrouble("away")
