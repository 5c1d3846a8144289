"""What all tables share: how a Python type is kept, how constraints are named and spelled."""

from datetime import datetime
from decimal import Decimal
from typing import Annotated, Any, get_args

from sqlalchemy import BigInteger, CheckConstraint, Index, Integer, MetaData, Text, text
from sqlalchemy.orm import DeclarativeBase, mapped_column

from persistence.columns import Exact, Moment

_LARGE = BigInteger().with_variant(Integer, "sqlite")  # SQLite counts up by itself only in an INTEGER

Number = Annotated[int, mapped_column(_LARGE)]
OwnNumber = Annotated[int, mapped_column(_LARGE, primary_key=True, autoincrement=True)]


class Base(DeclarativeBase):
    """The root of every table."""

    metadata = MetaData(
        naming_convention={
            "pk": "%(table_name)s_key",
            "fk": "%(table_name)s_%(column_0_name)s_stands",
            "uq": "%(table_name)s_%(column_0_name)s_once",
            "ck": "%(table_name)s_%(constraint_name)s",
            "ix": "%(table_name)s_by_%(column_0_N_name)s",
        }
    )
    type_annotation_map = {str: Text, datetime: Moment, Decimal: Exact}  # noqa: RUF012 - SQLAlchemy's own attribute


def one_of(column: str, words: Any) -> CheckConstraint:
    """Return the constraint that `column` holds one of the `words` of a Literal, or nothing."""
    listed = ", ".join(f"'{word}'" for word in get_args(words))
    return CheckConstraint(f"{column} IN ({listed})", name=f"{column}_known")


def all_or_none(name: str, *columns: str) -> CheckConstraint:
    """Return the constraint that these columns are all filled or all empty."""
    first, *others = columns
    same = " AND ".join(f"({first} IS NULL) = ({other} IS NULL)" for other in others)
    return CheckConstraint(same, name=name)


def only(name: str, *columns: str, where: str) -> Index:
    """Return an index over the rows that `where` picks, and no others."""
    return Index(name, *columns, sqlite_where=text(where), postgresql_where=text(where))
