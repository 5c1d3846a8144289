"""Small values turned into plain JSON, for the facts that a part carries, and back."""

from typing import Any, TypeVar

from pydantic import TypeAdapter

T = TypeVar("T")

_ANYTHING: TypeAdapter[Any] = TypeAdapter(Any)
_READERS: dict[object, TypeAdapter[Any]] = {}
"""What reads each kind of value, made as it is first asked for: that takes milliseconds."""


def facts_of(value: object) -> Any:
    """Return `value` (a frozen dataclass, a model, a number, a date …) as plain JSON; Decimals as text."""
    return _ANYTHING.dump_python(value, mode="json")


def value_of(kind: type[T], facts: Any) -> T:
    """Return the value of that kind whose facts these are. Raises ValidationError where they are none."""
    if kind not in _READERS:
        _READERS[kind] = TypeAdapter(kind)
    value: T = _READERS[kind].validate_python(facts)
    return value
