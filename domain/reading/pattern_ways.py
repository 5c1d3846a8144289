"""Which patterns can be said in a message at all, found in one go from its words.

Each way to say a pattern knows sets of words of each of which one must be said. All ways of all patterns
stand in one index, by the words of the set that is said most seldom, so that few are left to look for.
"""

import re
from functools import lru_cache
from typing import Protocol

from domain.reading.pattern_parts import Part


class Match(Protocol):
    """What looks for an expression at a place in a line."""

    def __call__(self, line: str, start: int, end: int, /) -> re.Match[str] | None:
        """Return the match that begins right at `start`, None where there is none."""


class Way:
    """One way to say a pattern `of` which it is the one at the place `at`.

    It begins with one of `firsts`, None where that can be any word; of each of the sets of `needs` a word
    must be said. `names` are those of the groups of its expression, each with the name of what it keeps.
    """

    __slots__ = ("_match", "at", "firsts", "names", "needs", "of", "regex")

    def __init__(self, of: object, at: int, part: Part) -> None:
        self.of = of
        self.at = at
        self.regex = part.regex
        self.firsts = part.firsts
        self.needs = part.needs
        self.names: tuple[tuple[str, str], ...] = ()
        self._match: Match | None = None

    @property
    def match(self) -> Match:
        """What looks for it; compiled when first wanted, as most are not in a short run."""
        if self._match is None:
            self.names = tuple(_NAMES.findall(self.regex))
            self._match = re.compile(self.regex).match
        return self._match


_NAMES = re.compile(r"\(\?P<((\w+)__\d+)>")
_BY_WORD: dict[str, list[Way]] = {}
_BY_TWO: dict[str, list[tuple[Way, frozenset[str]]]] = {}
"""The ways that need another word, too, each with the words of which that is one."""
_ALWAYS: dict[object, list[Way]] = {}
"""All ways of what can be said with any words."""


def add(thing: object, ways: list[Way]) -> None:
    """Add the ways to say one thing to those that are looked up."""
    that_can_be.cache_clear()
    if not all(way.needs for way in ways):
        _ALWAYS[thing] = ways
        return
    for way in ways:
        for word in way.needs[0]:
            if len(way.needs) > 1:
                _BY_TWO.setdefault(word, []).append((way, way.needs[1]))
            else:
                _BY_WORD.setdefault(word, []).append(way)


@lru_cache(maxsize=2048)
def that_can_be(words: frozenset[str]) -> dict[object, list[Way]]:
    """Return what can be said with some words, each with its ways; a way may be there twice.

    The same for the same words: to be read only.
    """
    chosen = [
        way
        for word in words & _BY_TWO.keys()
        for way, needed in _BY_TWO[word]
        if not needed.isdisjoint(words)
    ]
    for word in words & _BY_WORD.keys():
        chosen += _BY_WORD[word]
    possible = _ALWAYS.copy()
    for way in chosen:
        of = way.of
        if of in possible:
            possible[of].append(way)
        else:
            possible[of] = [way]
    return possible
