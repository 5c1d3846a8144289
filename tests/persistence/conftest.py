"""The databases that the store is tested on, one of each kind in turn."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine, text

from persistence.engine import open_engine, writing
from persistence.fresh import write_fresh
from persistence.migrate import migrate
from persistence.store import Store
from persistence.tables import Base
from tests.postgres import Server


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    """The URL of an empty database without any tables."""
    if request.param == "sqlite":
        return f"sqlite:///{tmp_path / 'kilopost.sqlite3'}"
    found: str = request.getfixturevalue("postgres_url")
    return found


@pytest.fixture
def bare_engine(url: str) -> Iterator[Engine]:
    """A database without any tables."""
    engine = open_engine(url)
    yield engine
    engine.dispose()


@pytest.fixture(scope="session")
def postgres_engine(postgres_server: Server) -> Iterator[Engine]:
    """A PostgreSQL with all tables, to be emptied after each test."""
    with postgres_server.database("store") as url:
        engine = open_engine(url)
        migrate(engine)
        yield engine
        engine.dispose()


@pytest.fixture(params=["sqlite", "postgresql"])
def engine(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Engine]:
    """A database with all tables and nothing in them."""
    if request.param == "sqlite":
        engine = open_engine(write_fresh(tmp_path / "store.sqlite3"))
        yield engine
        engine.dispose()
        return
    engine = request.getfixturevalue("postgres_engine")
    yield engine
    with writing(engine) as connection:
        connection.execute(text(f"TRUNCATE {', '.join(Base.metadata.tables)} RESTART IDENTITY CASCADE"))


@pytest.fixture
def store(engine: Engine) -> Store:
    """A store with nobody in it."""
    return Store(engine)
