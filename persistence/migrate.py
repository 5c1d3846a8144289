"""Brings a database to the tables of this version of the program, and refuses one that it does not know.

All steps run in one transaction, on SQLite too: a step that fails leaves the database as it was.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, Engine, inspect, text

from persistence.engine import reading, shown_url
from persistence.faults import DatabaseBroken, DatabaseNewer, DatabaseOlder, NotOurDatabase
from persistence.migrations import HEAD
from persistence.tables import Base

if TYPE_CHECKING:
    from alembic.config import Config

_LOCK = 0x6B696C6F  # any number, the same for all workers


def migrate(engine: Engine, to: str = HEAD) -> None:
    """Bring the database to step `to`, forwards or back ("base": no tables).

    Raises DatabaseNewer where it stands at a step that is not known here, NotOurDatabase where it holds
    tables of something else.
    """
    with reading(engine) as connection:
        if to == HEAD == _revision(connection):
            _refuse_missing_tables(connection, shown_url(engine))
            return
    with engine.connect() as connection:
        if engine.dialect.name == "sqlite":
            # A step may rebuild a table that others point at. The pragma works only outside a transaction.
            connection.connection.execute("PRAGMA foreign_keys = OFF")
        try:
            with connection.begin():
                _run(connection, to, shown_url(engine))
        finally:
            if engine.dialect.name == "sqlite":
                connection.connection.execute("PRAGMA foreign_keys = ON")


def require_current(engine: Engine) -> None:
    """Raise DatabaseOlder, DatabaseNewer or NotOurDatabase unless the database is at the latest step."""
    with reading(engine) as connection:
        revision = _revision(connection)
        if revision == HEAD:
            return
        if revision is None or revision in known_steps():
            _refuse_strange_tables(connection, revision, shown_url(engine))
            raise DatabaseOlder(shown_url(engine), revision)
        raise DatabaseNewer(shown_url(engine), revision)


def _run(connection: Connection, to: str, url: str) -> None:
    from alembic import command  # noqa: PLC0415 - slow to load, and seldom needed

    if connection.dialect.name == "postgresql":  # of several workers that start at once, one migrates
        connection.execute(text("SELECT pg_advisory_xact_lock(:lock)"), {"lock": _LOCK})
    known, revision = known_steps(), _revision(connection)
    if revision is not None and revision not in known:
        raise DatabaseNewer(url, revision)
    _refuse_strange_tables(connection, revision, url)
    steps = _config(connection)
    forwards = to != "base" and (revision is None or known.index(to) >= known.index(revision))
    (command.upgrade if forwards else command.downgrade)(steps, to)
    if connection.dialect.name == "sqlite" and connection.execute(text("PRAGMA foreign_key_check")).first():
        raise NotOurDatabase(url, "foreign key check")


def _revision(connection: Connection) -> str | None:
    if not inspect(connection).has_table("alembic_version"):
        return None
    return connection.execute(text("SELECT version_num FROM alembic_version")).scalar()


def _refuse_strange_tables(connection: Connection, revision: str | None, url: str) -> None:
    tables = inspect(connection).get_table_names()
    if revision is None and [table for table in tables if table != "alembic_version"]:
        raise NotOurDatabase(url, ", ".join(sorted(tables)[:3]))


def _refuse_missing_tables(connection: Connection, url: str) -> None:
    missing = set(Base.metadata.tables) - set(inspect(connection).get_table_names())
    if missing:
        raise DatabaseBroken(f"no table {', '.join(sorted(missing))}", url)


def revision_of(engine: Engine) -> str | None:
    """Return the step at which a database stands; None where it is empty. Raises NotOurDatabase."""
    with reading(engine) as connection:
        revision = _revision(connection)
        _refuse_strange_tables(connection, revision, shown_url(engine))
        return revision


def _config(connection: Connection | None = None) -> "Config":
    from alembic.config import Config  # noqa: PLC0415 - as above

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent / "migrations").replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    return config


def known_steps() -> list[str]:
    """Return all steps, the first one first."""
    from alembic.script import ScriptDirectory  # noqa: PLC0415 - as above

    steps = ScriptDirectory.from_config(_config()).walk_revisions()
    return [step.revision for step in steps][::-1]
