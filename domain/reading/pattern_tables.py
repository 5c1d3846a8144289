"""Tables of turns of phrase, each with what it means; looked through in little more time than one pattern."""

from collections.abc import Iterable, Iterator
from typing import Generic, TypeVar

from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern

Meaning = TypeVar("Meaning")


class Table(Generic[Meaning]):
    """Patterns with what they mean, in the order in which they are looked for.

    `needs` are words of which one must be said for any of them, None where one can be said with any.
    """

    __slots__ = ("_always", "_by_word", "_rows", "_words", "needs")

    def __init__(self, rows: Iterable[tuple[Pattern, Meaning]]) -> None:
        self._rows = tuple(rows)
        self._always = frozenset(place for place, (pattern, _) in enumerate(self._rows) if not pattern.needs)
        self._by_word: dict[str, list[int]] = {}
        for place, (pattern, _) in enumerate(self._rows):
            for word in pattern.needs or ():
                self._by_word.setdefault(word, []).append(place)
        self._words = frozenset(self._by_word)
        self.needs = None if self._always else self._words

    def find(self, message: Message) -> Iterator[tuple[Meaning, Found]]:
        """Return what is said, one pattern after the other."""
        said = message.words & self._words
        if not said and not self._always:
            return iter(())
        places = self._always.union(*[self._by_word[word] for word in said])
        return self._in_turn(message, sorted(places))

    def _in_turn(self, message: Message, places: Iterable[int]) -> Iterator[tuple[Meaning, Found]]:
        for place in places:
            pattern, meaning = self._rows[place]
            for found in pattern.find(message):
                yield meaning, found
