"""The one statement that SQLAlchemy spells in a different place for each database."""

from sqlalchemy import Connection
from sqlalchemy.dialects import postgresql, sqlite

from persistence.tables import Base


def insert_or(connection: Connection, table: type[Base]) -> sqlite.Insert | postgresql.Insert:
    """Return an INSERT that can be told what to do where the row is already there."""
    return sqlite.insert(table) if connection.dialect.name == "sqlite" else postgresql.insert(table)
