"""Column types that keep a value exactly: a moment, a decimal number, a frozen value as JSON.

Each is the same Python value on SQLite and on PostgreSQL. Nothing here knows a table.
"""

from collections.abc import Callable
from datetime import UTC, datetime
from decimal import Decimal
from functools import lru_cache
from typing import Any, TypeVar

from pydantic import TypeAdapter
from sqlalchemy import DateTime, Dialect, Numeric, String, Text
from sqlalchemy.types import TypeDecorator, TypeEngine

T = TypeVar("T")

ALIKE = 64
"""How many values of a kind are kept of which there are many alike."""


class Moment(TypeDecorator[datetime]):
    """An aware moment in UTC. A naive one is refused with a ValueError.

    SQLite has no zones: there it is text of fixed width, which sorts as time does.
    """

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Return `value` as the driver takes it."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a moment without a zone")
        in_utc = value.astimezone(UTC)
        return in_utc.replace(tzinfo=None) if dialect.name == "sqlite" else in_utc

    def result_processor(self, dialect: Dialect, coltype: object) -> Callable[[Any], datetime | None]:  # noqa: ARG002 - SQLAlchemy's signature
        """Return what makes an aware moment of what the driver returns; a journal has a thousand."""
        return _moment_of_text if dialect.name == "sqlite" else _moment_in_utc


def _moment_of_text(value: str | None) -> datetime | None:
    return None if value is None else datetime.fromisoformat(value + "+00:00")


def _moment_in_utc(value: datetime | None) -> datetime | None:
    return None if value is None else value.astimezone(UTC)


class Exact(TypeDecorator[Decimal]):
    """A finite decimal number, exactly: NUMERIC on PostgreSQL, plain text without an exponent on SQLite."""

    impl = Numeric
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Return text on SQLite, whose own numbers are binary fractions."""
        return dialect.type_descriptor(String() if dialect.name == "sqlite" else Numeric())

    def process_bind_param(self, value: Decimal | None, dialect: Dialect) -> Any:
        """Return `value` as the driver takes it."""
        if value is None:
            return None
        if not value.is_finite():
            raise ValueError("a number that is not finite")
        return format(value, "f") if dialect.name == "sqlite" else value

    def process_result_value(self, value: Any, dialect: Dialect) -> Decimal | None:  # noqa: ARG002 - SQLAlchemy's signature
        """Return the stored number."""
        return None if value is None else Decimal(value)


class AsJson(TypeDecorator[T]):
    """A value kept as JSON text, written and checked by its pydantic `adapter`."""

    impl = Text
    cache_ok = True

    def __init__(self, adapter: TypeAdapter[T], *, lean: bool = False, alike: bool = False) -> None:
        """Keep values of the adapter's type; where `lean`, without the fields that are as by default.

        Where those of many rows are `alike`, and frozen, the same text gives the same value.
        """
        super().__init__()
        self.adapter = adapter
        self.lean = lean
        self._read = lru_cache(maxsize=ALIKE)(adapter.validate_json) if alike else adapter.validate_json

    def process_bind_param(self, value: T | None, dialect: Dialect) -> str | None:  # noqa: ARG002 - SQLAlchemy's signature
        """Return `value` as JSON text."""
        return None if value is None else self.adapter.dump_json(value, exclude_defaults=self.lean).decode()

    def process_result_value(self, value: str | None, dialect: Dialect) -> T | None:  # noqa: ARG002 - SQLAlchemy's signature
        """Return the value that the text stands for. Raises pydantic's ValidationError where it cannot be."""
        return None if value is None else self._read(value)
