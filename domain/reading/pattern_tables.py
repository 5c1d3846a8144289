"""Tables of turns of phrase, each with what it means; looked through in little more time than one pattern."""

from collections.abc import Iterable, Sequence
from typing import Generic, TypeVar

from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern, words_needed

Meaning = TypeVar("Meaning")


class Table(Generic[Meaning]):
    """Patterns with what they mean, in the order in which they are looked for.

    `needs` are words of which one must be said for any of them, None where one can be said with any.
    """

    __slots__ = ("_places", "_rows", "needs")

    def __init__(self, rows: Iterable[tuple[Pattern, Meaning]]) -> None:
        self._rows = tuple(rows)
        self._places: dict[object, list[int]] = {}
        for place, (pattern, _) in enumerate(self._rows):
            self._places.setdefault(pattern, []).append(place)
        can_be_anything = any(pattern.needs is None for pattern, _ in self._rows)
        self.needs = None if can_be_anything else words_needed(*[pattern for pattern, _ in self._rows])

    def find(self, message: Message) -> Sequence[tuple[Meaning, Found]]:
        """Return what is said, one pattern after the other."""
        possible = message.possible & self._places.keys()
        if not possible:
            return ()
        places = [place for pattern in possible for place in self._places[pattern]]
        return [
            (meaning, found)
            for pattern, meaning in [self._rows[place] for place in sorted(places)]
            for found in pattern.find(message)
        ]
