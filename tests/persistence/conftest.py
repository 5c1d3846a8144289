"""The databases that the store is tested on, one of each kind in turn."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import Engine, text

from persistence.engine import open_engine, writing
from persistence.migrate import migrate
from persistence.store import Store, open_store
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
def sqlite_file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A SQLite file with all tables and nothing in them, to be copied: building the tables takes longer."""
    path = tmp_path_factory.mktemp("tables") / "kilopost.sqlite3"
    open_store(f"sqlite:///{path}").close()
    return path


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
        path = shutil.copy(request.getfixturevalue("sqlite_file"), tmp_path / "store.sqlite3")
        engine = open_engine(f"sqlite:///{path}")
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
