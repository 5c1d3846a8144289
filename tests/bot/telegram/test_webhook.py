"""The webhook: what is let in, what is acknowledged and when, and that the same update twice is one."""

import asyncio
from collections.abc import AsyncIterator
from typing import Any

import httpx
import pytest
from sqlalchemy import Engine
from telegram import Bot

from bot.clock import machine_time
from bot.telegram.intake import Intake
from bot.telegram.posting import Posting
from bot.telegram.webhook import LARGEST_BYTES, SECRET_HEADER, Webhook
from bot.web.address import Address
from bot.web.server import listening
from persistence.faults import DatabaseTrouble
from persistence.store import Store
from tests import loopback
from tests.bot.telegram.test_polling import texts
from tests.botapi.people import Person
from tests.botapi.server import BotApi

SECRET = "a-secret-for-tests"
POSTING = Posting("https://bot.example/in", Address("127.0.0.1", 0), SECRET)


@pytest.fixture
async def webhook(bot: Bot, store: Store) -> AsyncIterator[httpx.AsyncClient]:
    await bot.initialize()
    into = Webhook(bot, Intake(bot, store, machine_time, lambda: None), POSTING)
    async with (
        listening(into.application, POSTING.address) as address,
        loopback.client(base_url=f"http://{address}", headers={SECRET_HEADER: SECRET}) as client,
    ):
        yield client


def update(api: BotApi, anna: Person, words: str) -> dict[str, Any]:
    """Return an update that the server would hand out."""
    anna.says(words)
    return api.world.poll(0, 100, 0)[-1]


async def test_what_is_posted_is_stored_once_however_often_it_comes(
    api: BotApi, anna: Person, webhook: httpx.AsyncClient, engine: Engine
) -> None:
    one, two = update(api, anna, "one"), update(api, anna, "two")
    for posted in (one, one, two, one):
        answer = await webhook.post("/in", json=posted)
        assert answer.status_code == 200
    assert texts(engine) == ["one", "two"]


@pytest.mark.parametrize("shown", [None, "", "another-secret", SECRET + "x", "ä"])
async def test_nothing_is_let_in_without_the_secret(
    api: BotApi, anna: Person, webhook: httpx.AsyncClient, engine: Engine, shown: str | None
) -> None:
    posted = update(api, anna, "one")
    del webhook.headers[SECRET_HEADER]
    headers = {} if shown is None else {SECRET_HEADER.encode(): shown.encode()}
    answer = await webhook.post("/in", json=posted, headers=headers)
    assert answer.status_code == 403
    assert texts(engine) == []


async def test_it_is_acknowledged_only_after_it_is_committed(
    api: BotApi,
    anna: Person,
    webhook: httpx.AsyncClient,
    store: Store,
    engine: Engine,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    posted = update(api, anna, "one")

    def full_disk(*_facts: object) -> None:
        raise DatabaseTrouble("disk full")

    with monkeypatch.context() as trouble:
        trouble.setattr(store, "receive", full_disk)
        assert (await webhook.post("/in", json=posted)).status_code == 503
    assert texts(engine) == []
    assert (await webhook.post("/in", json=posted)).status_code == 200
    assert texts(engine) == ["one"]


@pytest.mark.parametrize(
    ("body", "status"),
    [
        (b"", 400),
        (b"<html>", 400),
        (b"[]", 400),
        (b"{}", 400),
        (b'{"update_id": "7"}', 400),
        (b'{"update_id": true}', 400),
        (b"\xff", 400),
        (b'{"update_id": 7}', 200),
        (b'{"update_id": 7, "message": {"message_id": "of a new kind"}}', 200),
        (b'{"update_id": 7, "pad": "' + b"x" * LARGEST_BYTES + b'"}', 413),
        (b"[" * 100_000, 400),
    ],
    ids=range(11),
)
async def test_strange_posts_are_answered_and_do_no_harm(
    api: BotApi, anna: Person, webhook: httpx.AsyncClient, engine: Engine, body: bytes, status: int
) -> None:
    assert (await webhook.post("/in", content=body)).status_code == status
    assert (await webhook.post("/in", json=update(api, anna, "one"))).status_code == 200
    assert texts(engine) == ["one"]


async def test_other_paths_and_methods_are_none_of_it(webhook: httpx.AsyncClient) -> None:
    assert (await webhook.post("/")).status_code == 404
    assert (await webhook.get("/in")).status_code == 405


async def test_telegram_is_asked_to_post_with_the_secret(api: BotApi, bot: Bot, store: Store) -> None:
    into = Webhook(bot, Intake(bot, store, machine_time, lambda: None), POSTING, [("today", "Plan")])
    running = asyncio.create_task(into.run())
    async with asyncio.timeout(10):
        while not api.world.commands:  # noqa: ASYNC110 what is waited for happens in other threads
            await asyncio.sleep(0.01)
    running.cancel()
    await asyncio.gather(running, return_exceptions=True)
    (asked,) = api.calls("setWebhook")
    assert asked.form.parameters["url"] == POSTING.url
    assert asked.form.parameters["secret_token"] == SECRET
    assert "message" in asked.form.parameters["allowed_updates"]
