"""A whole database copied into another one, of the same kind or the other: for backups and for moving.

The source is read in one snapshot while others go on writing, and may stand at any step that is known here:
the target is built at the same one. All rows go in by one transaction, are counted, and are held to every
constraint. Only leases stay behind, since whoever held one does not work on the copy.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Connection,
    Date,
    DateTime,
    Engine,
    Integer,
    MetaData,
    Numeric,
    Table,
    Text,
    Time,
    func,
    inspect,
    select,
    text,
)
from sqlalchemy.types import TypeEngine

from persistence.columns import Exact, Moment
from persistence.engine import shown_url, telling_trouble
from persistence.faults import CopyDiffers, DatabaseEmpty, DatabaseNotEmpty
from persistence.migrate import migrate, revision_of

AT_ONCE = 2_000
"""How many rows are held in memory."""

_STEPS = "alembic_version"
_KINDS: tuple[tuple[type[TypeEngine[Any]], type[TypeEngine[Any]]], ...] = (
    (DateTime, Moment),
    (Date, Date),
    (Time, Time),
    (Boolean, Boolean),
    (Numeric, Exact),
    (Integer, BigInteger),
)


@dataclass(frozen=True, slots=True)
class Copied:
    """How many rows there are of each table, by its name."""

    rows: dict[str, int]


Progress = Callable[[int, int], None]
"""Told how many rows are done, and how many there are."""


def copy_database(source: Engine, target: Engine, progress: Progress | None = None) -> Copied:
    """Copy all of `source` into `target`, which holds no rows, and leave it at the source's step.

    `progress` is told now and then how far it is; it must not touch the databases.
    Raises DatabaseEmpty where there is nothing of ours in the source, DatabaseNewer where its step is not
    known, DatabaseNotEmpty, CopyDiffers where a row is missing, and DatabaseTrouble; the target is then
    without rows.
    """
    step = revision_of(source)
    if step is None:
        raise DatabaseEmpty(shown_url(source))
    if revision_of(target) not in {None, step}:
        _refuse_rows(target)
        migrate(target, "base")
    migrate(target, step)
    _refuse_rows(target)
    tables = _tables(source, target)
    with telling_trouble(), _snapshot(source) as given, _unchecked(target) as taken:
        wanted, done = _counted(given, tables), 0
        for table in tables:
            rows = given.execution_options(stream_results=True).execute(select(table))
            for some in rows.mappings().partitions(AT_ONCE):
                taken.execute(table.insert(), [dict(row) for row in some])
                done += len(some)
                if progress is not None:
                    progress(done, sum(wanted.values()))
        _leave_leases(taken, tables)
        _count_on(given, taken, tables)
        got = _counted(taken, tables)
        if wanted != got:
            raise CopyDiffers(shown_url(target))
    return Copied(got)


def _refuse_rows(target: Engine) -> None:
    found = inspect(target).get_table_names()
    with telling_trouble(), target.connect() as connection:
        for name in found:
            table = Table(name, MetaData())
            if name != _STEPS and connection.execute(select(text("1")).select_from(table).limit(1)).first():
                raise DatabaseNotEmpty(shown_url(target))


def _tables(source: Engine, target: Engine) -> list[Table]:
    """Return all tables, each column of a type that is read from one database and written to the other."""
    ours, theirs = inspect(source), inspect(target)
    return [
        Table(
            name,
            MetaData(),
            *(
                Column(str(one["name"]), _neutral(one["type"], other["type"]))
                for one, other in zip(
                    sorted(ours.get_columns(name), key=lambda column: str(column["name"])),
                    sorted(theirs.get_columns(name), key=lambda column: str(column["name"])),
                    strict=True,
                )
            ),
        )
        for name in sorted(theirs.get_table_names())
        if name != _STEPS
    ]


def _neutral(*reflected: TypeEngine[Any]) -> TypeEngine[Any]:
    """Return the type for a column that is of these types in the two databases: the richer one."""
    for kind, neutral in _KINDS:
        if any(isinstance(each, kind) for each in reflected):
            return neutral()
    return Text()


@contextmanager
def _snapshot(engine: Engine) -> Iterator[Connection]:
    """A connection that sees the database as it is at one moment, whoever writes meanwhile."""
    with engine.connect() as connection:
        is_server = engine.dialect.name == "postgresql"
        level = {"isolation_level": "REPEATABLE READ"} if is_server else {}
        yield connection.execution_options(only_reads=True, **level)


@contextmanager
def _unchecked(engine: Engine) -> Iterator[Connection]:
    """One transaction in which rows may point at rows that are yet to come; all is checked at its end."""
    with engine.connect() as connection:
        is_sqlite = engine.dialect.name == "sqlite"
        if is_sqlite:  # the pragma works only outside a transaction
            connection.connection.execute("PRAGMA foreign_keys = OFF")
        try:
            with connection.begin():
                pointing = [] if is_sqlite else connection.execute(text(_POINTING)).all()
                for row in pointing:
                    connection.execute(text(f"ALTER TABLE {row.holder} DROP CONSTRAINT {row.name}"))
                yield connection
                for row in pointing:
                    rule = f"ALTER TABLE {row.holder} ADD CONSTRAINT {row.name} {row.rule}"
                    connection.execute(text(rule))
                if is_sqlite and connection.execute(text("PRAGMA foreign_key_check")).first():
                    raise CopyDiffers(shown_url(engine))
        finally:
            if is_sqlite:
                connection.connection.execute("PRAGMA foreign_keys = ON")


_POINTING = """
    SELECT conrelid::regclass::text AS holder, quote_ident(conname) AS name, pg_get_constraintdef(oid) AS rule
    FROM pg_constraint WHERE contype = 'f' AND connamespace = current_schema()::regnamespace ORDER BY conname
"""


def _leave_leases(connection: Connection, tables: list[Table]) -> None:
    for table in tables:
        lease = {name: None for name in ("lease_token", "lease_until") if name in table.columns}
        if lease:
            connection.execute(table.update().values(lease))


def _count_on(given: Connection, taken: Connection, tables: list[Table]) -> None:
    """Let numbers go on where they were in the source: one that was given away is never given again."""
    counted = [table.name for table in tables if "number" in table.columns]
    for name in counted:
        last = _last_number(given, name)
        if last is None:
            continue
        if taken.dialect.name == "sqlite":
            taken.execute(text("DELETE FROM sqlite_sequence WHERE name = :name"), {"name": name})
            taken.execute(
                text("INSERT INTO sqlite_sequence (name, seq) VALUES (:name, :last)"),
                {"name": name, "last": last},
            )
        else:
            setting = text("SELECT setval(pg_get_serial_sequence(:name, 'number'), :last)")
            taken.execute(setting, {"name": name, "last": last})


def _last_number(connection: Connection, table: str) -> int | None:
    """Return the last number that a table has given away; None where it gives none, or has not yet."""
    if connection.dialect.name == "sqlite":
        found = text("SELECT seq FROM sqlite_sequence WHERE name = :name")
        return connection.execute(found, {"name": table}).scalar()
    sequence = connection.execute(
        text("SELECT pg_get_serial_sequence(:name, 'number')"), {"name": table}
    ).scalar()
    if sequence is None:
        return None
    row = connection.execute(text(f"SELECT last_value, is_called FROM {sequence}")).one()  # noqa: S608 as the server names it
    return int(row.last_value) if row.is_called else None


def _counted(connection: Connection, tables: list[Table]) -> dict[str, int]:
    return {
        table.name: connection.execute(select(func.count()).select_from(table)).scalar_one()
        for table in tables
    }
