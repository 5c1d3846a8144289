"""Small values turned into plain JSON, for the facts that a part carries."""

from typing import Any

from pydantic import TypeAdapter

_ANYTHING: TypeAdapter[Any] = TypeAdapter(Any)


def facts_of(value: object) -> Any:
    """Return `value` (a frozen dataclass, a model, a number, a date …) as plain JSON; Decimals as text."""
    return _ANYTHING.dump_python(value, mode="json")
