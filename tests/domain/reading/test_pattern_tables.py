"""Tables of turns of phrase."""

import pytest

from domain.reading.message import message_of
from domain.reading.pattern_tables import Table
from domain.reading.patterns import Pattern

TABLE = Table(
    [
        (Pattern("up n:#\nup it"), "up"),
        (Pattern("_ _ down"), "down"),
        (Pattern("~ing fast"), "fast"),
        (Pattern("up up|~ing _"), "any"),
    ]
)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("nothing", []),
        ("up 5, up it", [("up", 0), ("up", 3)]),
        ("it goes down, up it", [("up", 4), ("down", 0)]),
        ("going fast", [("fast", 0), ("any", 0)]),
    ],
)
def test_what_is_said_is_found_in_the_order_of_the_table(text: str, expected: list[tuple[str, int]]) -> None:
    assert [(meaning, place.start) for meaning, place in TABLE.find(message_of(text))] == expected
