"""Opens a database by its URL: SQLite (one file, one process) or PostgreSQL by psycopg 3.

SQLite runs in WAL mode with synchronous FULL, so that what was committed survives a power cut. A unit that
writes begins with BEGIN IMMEDIATE: with a deferred transaction, two writers that have both read first cannot
both go on, and one of them fails at once, whatever the busy time-out.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, QueuePool, create_engine, event, make_url
from sqlalchemy.exc import (
    ArgumentError,
    DataError,
    DBAPIError,
    IntegrityError,
    NoSuchModuleError,
)
from sqlalchemy.exc import TimeoutError as NoConnectionFree

from persistence.faults import (
    BadDatabaseUrl,
    DatabaseBroken,
    DatabaseFolderMissing,
    DatabaseTrouble,
    DatabaseUnreachable,
    NotOurDatabase,
)

BUSY_SECONDS = 10

_DAMAGED = ("malformed", "file is not a database")
"""What SQLite says of a file that is damaged."""


def open_engine(url: str, *, durable: bool = True) -> Engine:
    """Return an engine for the database at `url`, after having reached it once.

    Where not `durable`, a SQLite file may be lost when the machine fails: for databases that are thrown away.
    Raises BadDatabaseUrl, DatabaseFolderMissing, DatabaseUnreachable or NotOurDatabase.
    """
    parsed = _parse(url)
    match parsed.get_backend_name():
        case "sqlite":
            engine = _sqlite(parsed, durable=durable)
        case "postgresql":
            engine = _postgresql(parsed)
        case _:
            raise BadDatabaseUrl(_shown(parsed))
    try:
        with engine.connect():
            pass
    except DBAPIError as error:
        engine.dispose()
        why = first_line(error)
        if "file is not a database" in why:
            raise NotOurDatabase(_shown(parsed), why) from error
        if any(damage in why for damage in _DAMAGED):
            raise DatabaseBroken(why, _shown(parsed)) from error
        raise DatabaseUnreachable(_shown(parsed), why) from error
    return engine


@contextmanager
def writing(engine: Engine) -> Iterator[Connection]:
    """One unit that may write: committed at the end, rolled back where anything is raised.

    Raises DatabaseTrouble where the database is locked, full, gone or deadlocked: it may be tried again.
    """
    with telling_trouble(), engine.begin() as connection:
        yield connection


@contextmanager
def reading(engine: Engine) -> Iterator[Connection]:
    """One unit that only reads; on SQLite it waits for no writer. Raises DatabaseTrouble, as `writing`."""
    with telling_trouble(), engine.connect() as connection:
        yield connection.execution_options(only_reads=True)


def is_trouble(error: BaseException) -> bool:
    """Return whether an error is the database's own trouble, and not that of what it was asked to store."""
    if isinstance(error, DBAPIError):
        return not isinstance(error, IntegrityError | DataError)
    return isinstance(error, NoConnectionFree)


@contextmanager
def telling_trouble() -> Iterator[None]:
    """Tell of the database's own trouble as DatabaseTrouble, or DatabaseBroken where its file is damaged."""
    try:
        yield
    except (DBAPIError, NoConnectionFree) as error:
        if not is_trouble(error):
            raise
        why = first_line(error)
        if any(damage in why for damage in _DAMAGED):
            raise DatabaseBroken(why, "the database") from error
        raise DatabaseTrouble(why) from error


def first_line(error: DBAPIError | NoConnectionFree) -> str:
    """Return what the driver says first: the lines below may hold what was to be stored."""
    return str(getattr(error, "orig", None) or error).strip().partition("\n")[0]


def shown_url(engine: Engine) -> str:
    """Return the engine's URL with its password left out."""
    return _shown(engine.url)


def file_of(url: str) -> Path | None:
    """Return the file in which a database is; None where it is in none. Raises BadDatabaseUrl."""
    parsed = _parse(url)
    in_file = parsed.get_backend_name() == "sqlite" and parsed.database not in (None, "", ":memory:")
    return Path(str(parsed.database)) if in_file else None


def _parse(url: str) -> URL:
    try:
        parsed = make_url(url)
        parsed.get_dialect()
    except (ArgumentError, NoSuchModuleError, ValueError) as error:
        raise BadDatabaseUrl(url.rpartition("@")[2]) from error
    return parsed


def _shown(url: URL) -> str:
    return url.render_as_string(hide_password=True)


def _postgresql(url: URL) -> Engine:
    return create_engine(
        url.set(drivername="postgresql+psycopg"),
        pool_pre_ping=True,
        hide_parameters=True,
        connect_args={"connect_timeout": BUSY_SECONDS, "application_name": "kilopost"},
    )


def _sqlite(url: URL, *, durable: bool) -> Engine:
    url = url.set(drivername="sqlite+pysqlite")
    in_memory = url.database in (None, "", ":memory:")
    if not in_memory:
        _make_file(url)
    pool: dict[str, Any] = {"poolclass": QueuePool}
    if in_memory:  # one connection is the database, and one unit at a time has it
        pool |= {"pool_size": 1, "max_overflow": 0}
    engine = create_engine(
        url,
        hide_parameters=True,  # an error's words end up in a log, and parameters are what people wrote
        connect_args={"check_same_thread": False, "timeout": BUSY_SECONDS, "isolation_level": None},
        **pool,
    )
    event.listen(engine, "connect", partial(_prepare_sqlite, durable=durable))
    event.listen(engine, "begin", _begin_sqlite)
    return engine


def _make_file(url: URL) -> None:
    """Make the file where it is missing, for its owner's eyes only: it will hold what hurts whom."""
    path = Path(str(url.database))
    if not path.parent.is_dir():
        raise DatabaseFolderMissing(str(path.parent))
    try:
        path.touch(mode=0o600)
    except OSError as error:
        raise DatabaseUnreachable(_shown(url), error.strerror or type(error).__name__) from error


def _prepare_sqlite(connection: Any, _record: object, *, durable: bool) -> None:
    synchronous = f"synchronous = {'FULL' if durable else 'OFF'}"
    for pragma in ("journal_mode = WAL", synchronous, "foreign_keys = ON"):
        connection.execute(f"PRAGMA {pragma}")


def _begin_sqlite(connection: Connection) -> None:
    only_reads = connection.get_execution_options().get("only_reads", False)
    connection.exec_driver_sql("BEGIN" if only_reads else "BEGIN IMMEDIATE")
