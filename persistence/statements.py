"""Statements that are put into a database's words once, and then run with next to nothing in between.

SQLAlchemy goes through a statement's parameters and types anew each time that it is run, which takes several
times as long as SQLite takes to run it. What is run for every message is therefore `Prepared`.
"""

from collections import namedtuple
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from types import MappingProxyType
from typing import Any

from sqlalchemy import BindParameter, Connection, Dialect, Select
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.exc import DBAPIError, MultipleResultsFound, NoResultFound
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.sql.dml import UpdateBase

from persistence.tables import Base

Statement = Select[*tuple[Any, ...]] | UpdateBase
Process = Callable[[Any], Any]

NOTHING: Mapping[str, Any] = MappingProxyType({})


class Rows(list[Any]):
    """The rows that a statement has found, each with its columns by name and by place; all of them at once.

    `rowcount` is how many rows it has found or changed.
    """

    __slots__ = ("rowcount",)

    def __init__(self, rows: Iterable[Any], rowcount: int) -> None:
        super().__init__(rows)
        self.rowcount = rowcount

    def first(self) -> Any:
        """Return the first row, None where there is none."""
        return self[0] if self else None

    def one(self) -> Any:
        """Return the only row. Raises NoResultFound or MultipleResultsFound where it is not."""
        if len(self) != 1:
            raise MultipleResultsFound if self else NoResultFound
        return self[0]

    def scalar(self) -> Any:
        """Return the first column of the first row, None where there is none."""
        return self[0][0] if self else None

    def scalars(self) -> Iterator[Any]:
        """Return the first column of each row."""
        return (row[0] for row in self)


class Prepared:
    """A statement whose parameters are given by name each time that it is run.

    None of them can be a list of values. `statement` is the same for every database, or one for each by its
    name.
    """

    def __init__(self, statement: Statement | Mapping[str, Statement]) -> None:
        self._statement = statement
        self._ready: dict[tuple[str, ...], _Ready] = {}

    def __call__(self, connection: Connection, given: Mapping[str, Any] = NOTHING) -> Rows:
        """Run it with these parameters; of an INSERT or an UPDATE, those that are columns are set.

        Raises what SQLAlchemy raises.
        """
        return self._for(connection, given).run(connection, given)

    def many(self, connection: Connection, rows: Sequence[Mapping[str, Any]]) -> None:
        """Run it once for each of these, all of which name the same parameters in the same order."""
        if len(rows) == 1:
            self(connection, rows[0])
        elif rows:
            self._for(connection, rows[0]).run_many(connection, rows)

    def _for(self, connection: Connection, given: Mapping[str, Any]) -> "_Ready":
        dialect = connection.dialect
        key = (dialect.name, *given)
        ready = self._ready.get(key)
        if ready is None:
            chosen = self._statement
            statement = chosen[dialect.name] if isinstance(chosen, Mapping) else chosen
            ready = self._ready[key] = _Ready(statement, dialect, list(given))
        return ready


class _Ready:
    """A statement in the words of one database, for parameters of certain names."""

    def __init__(self, statement: Statement, dialect: Dialect, names: list[str]) -> None:
        compiled = statement.compile(dialect=dialect, column_keys=names)
        assert isinstance(compiled, SQLCompiler)  # noqa: S101 - for the type alone
        if compiled.post_compile_params:
            raise TypeError(f"not a statement that can be prepared: {statement}")
        self._sql = str(compiled)
        self._by_place = compiled.positional
        used = compiled.positiontup if compiled.positional else compiled.bind_names.values()
        self._names = list(used or ())
        self._parameters = [_parameter(name, compiled.binds[name], dialect) for name in self._names]
        self._columns = list(statement.exported_columns)
        names_of_columns = [str(each.key) for each in self._columns]
        self._row: Process = namedtuple("Row", names_of_columns, rename=True)._make  # type: ignore[attr-defined]  # noqa: PYI024 - known by the statement alone
        self._results: list[tuple[int, Process]] | None = None

    def run(self, connection: Connection, given: Mapping[str, Any]) -> Rows:
        """Run it with these parameters."""
        return self._run(connection, self._values(given))

    def run_many(self, connection: Connection, rows: Sequence[Mapping[str, Any]]) -> None:
        """Run it with each of these parameters."""
        self._run(connection, [self._values(given) for given in rows])

    def _run(self, connection: Connection, values: Any) -> Rows:
        """Run it within the connection's transaction, once, or for each of a list of parameters."""
        if not connection.in_transaction():
            connection.begin()
        is_many = isinstance(values, list)
        cursor = connection.connection.cursor()
        try:
            for tell in connection.dispatch.before_cursor_execute:
                tell(connection, cursor, self._sql, values, None, is_many)
            if is_many:
                cursor.executemany(self._sql, values)
                return Rows((), cursor.rowcount)
            cursor.execute(self._sql, values)
            return Rows(self._found(connection.dialect, cursor), cursor.rowcount)
        except connection.dialect.loaded_dbapi.Error as error:
            raise _told(connection, cursor, self._sql, error) from error
        finally:
            cursor.close()

    def _values(self, given: Mapping[str, Any]) -> Sequence[Any] | Mapping[str, Any]:
        """Return the parameters as the driver takes them."""
        values = tuple(
            [
                fixed if is_fixed else given[name] if process is None else process(given[name])
                for name, process, is_fixed, fixed in self._parameters
            ]
        )
        return values if self._by_place else dict(zip(self._names, values, strict=True))

    def _found(self, dialect: Dialect, cursor: Any) -> Iterable[Any]:
        if not self._columns:
            return ()
        if self._results is None:
            kinds = [each[1] for each in cursor.description]
            processes = [
                each.type.dialect_impl(dialect).result_processor(dialect, kind)
                for each, kind in zip(self._columns, kinds, strict=True)
            ]
            self._results = [(at, process) for at, process in enumerate(processes) if process is not None]
        if not self._results:
            return map(self._row, cursor.fetchall())
        return map(self._processed, cursor.fetchall())

    def _processed(self, raw: Sequence[Any]) -> Any:
        row = list(raw)
        for at, process in self._results or ():
            row[at] = process(row[at])
        return self._row(row)


def _parameter(
    name: str, parameter: BindParameter[Any], dialect: Dialect
) -> tuple[str, Process | None, bool, Any]:
    """Return a parameter's name, what makes of it what the driver takes, whether it is fixed, and as what."""
    process = parameter.type.dialect_impl(dialect).bind_processor(dialect)
    if parameter.required:
        return name, process, False, None
    fixed = parameter.effective_value
    return name, process, True, fixed if process is None else process(fixed)


def _told(connection: Connection, cursor: Any, sql: str, error: Exception) -> BaseException:
    """Return a driver's error as SQLAlchemy tells of it; a connection that has gone away is given up."""
    dialect, driver = connection.dialect, connection.connection.dbapi_connection
    gone = dialect.is_disconnect(error, driver, cursor)  # type: ignore[arg-type]  # the driver's own error
    if gone:
        connection.invalidate(error)
    return DBAPIError.instance(
        sql,
        None,
        error,
        dialect.loaded_dbapi.Error,
        hide_parameters=True,
        connection_invalidated=gone,
        dialect=dialect,
    )


class InsertOr(Prepared):
    """An INSERT into a table, and what `otherwise` happens."""

    def __init__(self, table: type[Base], otherwise: Callable[[Any], Any]) -> None:
        """`otherwise` makes of a plain INSERT one with its ON CONFLICT clause.

        SQLAlchemy spells them alike for both databases, but has them in a place of its own for each.
        """
        super().__init__(
            {
                "sqlite": otherwise(sqlite.insert(table)),
                "postgresql": otherwise(postgresql.insert(table)),
            }
        )


def or_nothing(insert: Any) -> Any:
    """Leave the row that is there as it is."""
    return insert.on_conflict_do_nothing()


def or_update(*key: str, columns: Sequence[str]) -> Callable[[Any], Any]:
    """Bring these `columns` of the row that is there, found by its `key`, to what was to be inserted."""

    def otherwise(insert: Any) -> Any:
        return insert.on_conflict_do_update(
            index_elements=key, set_={column: insert.excluded[column] for column in columns}
        )

    return otherwise
