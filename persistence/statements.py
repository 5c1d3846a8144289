"""INSERTs that can be told what to do where the row is there already.

SQLAlchemy spells them alike for both databases, but has them in a place of its own for each. They are built
once, since building a statement takes longer than running it.
"""

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from sqlalchemy import Connection
from sqlalchemy.dialects import postgresql, sqlite

from persistence.tables import Base

Insert = sqlite.Insert | postgresql.Insert


class InsertOr:
    """An INSERT into a table, and what `otherwise` happens."""

    def __init__(self, table: type[Base], otherwise: Callable[[Any], Any]) -> None:
        """`otherwise` makes of a plain INSERT one with its ON CONFLICT clause."""
        self._statements: Mapping[str, Insert] = {
            "sqlite": otherwise(sqlite.insert(table)),
            "postgresql": otherwise(postgresql.insert(table)),
        }

    def __call__(self, connection: Connection, rows: Sequence[Mapping[str, Any]]) -> None:
        """Run it for each of `rows`, all of which name the same columns."""
        connection.execute(self._statements[connection.dialect.name], rows)


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
