"""Two workers on one database: one polls, and the other one takes over when it stops, dies or is cut off."""

import asyncio
import logging
from collections.abc import Callable, Iterator

import pytest
from sqlalchemy import select

from bot.clock import machine_time
from bot.telegram import polling
from bot.telegram.connection import closing, make_bot
from domain.incoming import Text
from persistence.engine import open_engine, reading
from persistence.faults import DatabaseTrouble
from persistence.readers import Reader
from persistence.store import Store, open_store
from persistence.tables import InboxRow
from tests.bot.telegram.village import polling_of
from tests.botapi.people import Person
from tests.botapi.server import BotApi

pytestmark = pytest.mark.waits

LEASE_SECONDS = 1.5


@pytest.fixture(autouse=True)
def _no_long_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(polling, "LEASE_SECONDS", LEASE_SECONDS)
    monkeypatch.setattr(polling, "LONGEST_PAUSE_SECONDS", 0.05)
    monkeypatch.setattr(polling, "CONFLICT_PAUSE_SECONDS", 0.05)


@pytest.fixture
def stores(postgres_url: str) -> Iterator[tuple[Store, Store]]:
    both = open_store(postgres_url), open_store(postgres_url)
    yield both
    for store in both:
        store.close()


async def until(true: Callable[[], bool], seconds: float = 10) -> None:
    async with asyncio.timeout(seconds):
        while not true():  # noqa: ASYNC110 what is waited for happens in other threads
            await asyncio.sleep(0.01)


def texts(url: str) -> list[str]:
    engine = open_engine(url)
    with reading(engine) as connection:
        found = connection.execute(select(InboxRow.incoming).order_by(InboxRow.number)).scalars().all()
    engine.dispose()
    return [incoming.text for incoming in found if isinstance(incoming, Text)]


async def pollers(api: BotApi, stores: tuple[Store, Store]) -> list["asyncio.Task[None]"]:
    """Start one poller for each store, the first one first."""
    tasks = []
    for store in stores:

        async def run(store: Store = store) -> None:
            async with closing(make_bot(api.token, api.url)) as bot:
                await polling_of(bot, store).run()

        polled = len(api.calls("getUpdates"))
        tasks.append(asyncio.create_task(run()))
        if not polled:
            await until(lambda: bool(api.calls("getUpdates")))
    return tasks


async def stop(tasks: list["asyncio.Task[None]"]) -> None:
    for task in tasks:
        task.cancel()
    await asyncio.gather(*tasks, return_exceptions=True)


async def test_one_polls_and_the_other_one_waits_until_it_stops(
    api: BotApi,
    anna: Person,
    stores: tuple[Store, Store],
    postgres_url: str,
    caplog: pytest.LogCaptureFixture,
) -> None:
    tasks = await pollers(api, stores)
    try:
        for word in ("one", "two"):
            anna.says(word)
            await until(lambda: api.world.waiting == 0)
            await asyncio.sleep(LEASE_SECONDS)
        await stop(tasks[:1])
        anna.says("three")
        await until(lambda: api.world.waiting == 0)
    finally:
        await stop(tasks)
    assert texts(postgres_url) == ["one", "two", "three"]
    assert not [record for record in caplog.records if record.levelno >= logging.WARNING]


async def test_one_that_cannot_renew_its_lease_is_taken_over_from_and_loses_nothing(
    api: BotApi, anna: Person, stores: tuple[Store, Store], postgres_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, second = stores
    tasks = await pollers(api, stores)

    def away(*_facts: object) -> Reader:
        raise DatabaseTrouble("away")

    try:
        anna.says("one")
        await until(lambda: texts(postgres_url) == ["one"])
        for unit in ("renew_reader", "claim_reader", "receive", "end_reader"):
            monkeypatch.setattr(first, unit, away)
        anna.says("two")
        await until(lambda: texts(postgres_url) == ["one", "two"])
        anna.says("three")
        await until(lambda: texts(postgres_url) == ["one", "two", "three"] and api.world.waiting == 0)
    finally:
        await stop(tasks)
    after = second.claim_reader("telegram:4242", machine_time(), LEASE_SECONDS)
    assert after is not None
    assert after.fence == 3
    assert second.cursor("telegram:4242") == str(max(api.world.acknowledged) + 1)
