"""The structured content of a message, as plain JSON: numbers as numbers, days and times in ISO form."""

from datetime import date, datetime, time
from decimal import Decimal
from typing import Any

from domain.parts import CameOf, Part


def about(part: Part) -> dict[str, Any]:
    """Return a part as JSON, with its `kind` first."""
    said = part.notice if isinstance(part, CameOf) else part
    return {key: _plain(value) for key, value in said.model_dump(mode="python").items()}


def _plain(value: object) -> Any:
    match value:
        case Decimal():
            return int(value) if value == value.to_integral_value() else float(value)
        case datetime() | date() | time():
            return value.isoformat()
        case dict():
            return {key: _plain(each) for key, each in value.items()}
        case list() | tuple():
            return [_plain(each) for each in value]
        case _:
            return value
