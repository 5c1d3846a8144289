"""A Bot API server, a client for it, a person who has opened the chat, and a migrated SQLite file."""

from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine
from telegram import Bot

from bot.telegram.connection import closing, make_bot
from persistence.engine import open_engine
from persistence.fresh import write_fresh
from persistence.store import Store
from tests.botapi.people import Person
from tests.botapi.server import BotApi


@pytest.fixture
def api() -> Iterator[BotApi]:
    with BotApi() as running:
        yield running


@pytest.fixture
async def bot(api: BotApi) -> AsyncIterator[Bot]:
    async with closing(make_bot(api.token, api.url)) as client:
        yield client
        await client.initialize()  # a client never opened is never closed


@pytest.fixture
def anna(api: BotApi) -> Person:
    person = api.person(1001, "Anna")
    api.world.started.add(person.number)
    return person


@pytest.fixture
def database(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'kilopost.sqlite3'}"


@pytest.fixture
def engine(database: str, tmp_path: Path) -> Iterator[Engine]:
    write_fresh(tmp_path / "kilopost.sqlite3")
    opened = open_engine(database)
    yield opened
    opened.dispose()


@pytest.fixture
def store(engine: Engine) -> Store:
    return Store(engine)
