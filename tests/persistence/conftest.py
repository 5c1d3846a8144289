"""The databases that the store is tested on."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine

from persistence.engine import open_engine
from persistence.migrate import migrate
from persistence.store import Store


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The URL of an empty database, of each kind in turn."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'kilopost.sqlite3'}"
    found: str = request.getfixturevalue("postgres_url")
    return found


@pytest.fixture
def bare_engine(url: str) -> Iterator[Engine]:
    """An empty database."""
    engine = open_engine(url)
    yield engine
    engine.dispose()


@pytest.fixture
def engine(bare_engine: Engine) -> Engine:
    """A database with all tables and nothing in them."""
    migrate(bare_engine)
    return bare_engine


@pytest.fixture
def store(engine: Engine) -> Store:
    """A store with nobody in it."""
    return Store(engine)
