"""A small language for turns of phrase: patterns over the words, numbers and signs of a message.

    went? up by?            words one after the other; `?` after a word that may be left out
    up|down                 one or the other; a line of its own is another way to say it
    [it|the weight]         what may be left out; `[it|the weight]*` up to four of them
    (up|went up) by         brackets hold together
    n:#                     a number, kept under the name "n"; `d:(left|right)` keeps words
    {person}                any word of a list that is given by that name; or what a pattern of it says
    swell~  ~ing            a word that begins so, or ends so
    _  ..3                  any one word; up to three of them
    ...5                    up to five words, numbers or signs within a sentence
    ....5                   the same on one line, whatever sentences end there
    '?'                     a sign that would mean something else here
    the (my|the)            may be left out before another word, as people in a hurry do; `'the'` may not
    >(of)  !(of)            followed by, not followed by
    <(my)  <!(my)           right after, not right after
    ^  $                    where the message begins, or a sentence of it; where it ends, but for thanks and a
                            short sentence in words

Everything that repeats is bounded, so that looking for a pattern takes time in proportion to the length of
the message, whatever is typed. Which words a pattern cannot do without is worked out from it, so that
nothing is looked for where none of them is said.
"""

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from operator import attrgetter
from typing import NamedTuple, Protocol

from domain.reading.message import Message
from domain.reading.pattern_parts import compiled
from domain.reading.pattern_ways import Way, add

_IN_ORDER = attrgetter("at")


class Found(NamedTuple):
    """Where a pattern was found: the first token, the token after the last, and those of its named parts."""

    start: int
    end: int
    parts: dict[str, tuple[int, int]]


class Pattern:
    """A turn of phrase that can be looked for in every message that is made after it. Raises ValueError where
    `text` is no pattern.

    `needs` are words of which one must be said, None where it can be said with any.
    """

    __slots__ = ("needs", "text")

    def __init__(self, text: str, **lists: frozenset[str] | str) -> None:
        self.text = text
        ways = [Way(self, at, part) for at, part in enumerate(compiled(text, lists))]
        self.needs = (
            frozenset().union(*[way.needs[0] for way in ways]) if all(way.needs for way in ways) else None
        )
        add(self, ways)

    def find(self, message: Message, start: int = 0, end: int | None = None) -> Sequence[Found]:
        """Return where the pattern stands among the tokens from `start` to before `end`, none within
        another."""
        ways = message.ways_of(self)
        if ways is None:
            return ()
        if len(ways) == 1:
            return list(_find(message, ways[0], start, end))
        return list(_find_any(message, ways, start, end))

    def first(self, message: Message, start: int = 0, end: int | None = None) -> Found | None:
        """Return the first place of the pattern, None where it is not said."""
        ways = message.ways_of(self)
        if ways is None:
            return None
        if len(ways) == 1:
            return next(_find(message, ways[0], start, end), None)
        return next(_find_any(message, ways, start, end), None)

    def is_in(self, message: Message, start: int = 0, end: int | None = None) -> bool:
        """Return whether the pattern is said."""
        return message.ways_of(self) is not None and self.first(message, start, end) is not None

    def at(self, message: Message, start: int, end: int | None = None) -> Found | None:
        """Return the pattern where it begins right at the token `start`, None where it does not."""
        ways = message.ways_of(self)
        if ways is None or not 0 <= start < len(message.tokens):
            return None
        for way in ways if len(ways) == 1 else sorted(ways, key=_IN_ORDER):
            found = _at(message, way, start, end)
            if found is not None:
                return found
        return None


def _find(message: Message, way: Way, start: int, end: int | None) -> Iterator[Found]:
    """Yield where a way is said among the tokens from `start` to before `end`, none within another."""
    places = _places(message, way)
    if not places:
        return
    match_at, line, starts = way.match, message.line, message.starts
    last, stop = (len(starts), len(line)) if end is None else (end, message.place(end))
    for at in places:
        if at < start:
            continue
        if at >= last:
            break
        match = match_at(line, starts[at], stop)
        if match is not None:
            found = _found(message, way, at, match)
            yield found
            start = found.end


def _find_any(message: Message, ways: Sequence[Way], start: int, end: int | None) -> Iterator[Found]:
    """Yield what is said in any of some ways: at each token, in the first that fits."""
    last = len(message.tokens) if end is None else end
    places = {(at, way.at): way for way in ways for at in _places(message, way)}
    for place in sorted(places):
        at, _ = place
        if at < start:
            continue
        if at >= last:
            break
        found = _at(message, places[place], at, end)
        if found is not None:
            yield found
            start = found.end


def _places(message: Message, way: Way) -> Sequence[int]:
    """Return the tokens at which a way can begin, in order."""
    if way.firsts is None:
        return range(len(message.tokens))
    said = way.firsts & message.words
    if len(said) == 1:
        return message.places[next(iter(said))]
    places = message.places
    return sorted([at for word in said for at in places[word]])


def _at(message: Message, way: Way, at: int, end: int | None) -> Found | None:
    """Return a way where it begins right at the token `at`, and ends before the token `end`."""
    if way.firsts is not None and message.pieces[at] not in way.firsts:
        return None
    line = message.line
    match = way.match(line, message.starts[at], len(line) if end is None else message.place(end))
    return None if match is None else _found(message, way, at, match)


def _found(message: Message, way: Way, at: int, match: re.Match[str]) -> Found:
    end = bisect_right(message.starts, match.end() - 1)
    if not way.names:
        return Found(at, end, {})
    parts = {
        meaning: message.tokens_of(*match.span(name)) for name, meaning in way.names if match.start(name) >= 0
    }
    return Found(at, end, parts)


class Needing(Protocol):
    """Something to look for that knows the words of which one must be said for it."""

    @property
    def needs(self) -> frozenset[str] | None:
        """The words, None where it can be said with any."""


def words_needed(*patterns: Needing) -> frozenset[str]:
    """Return words of which one must be said wherever any of the patterns is."""
    needs = [pattern.needs for pattern in patterns if pattern.needs is not None]
    if len(needs) < len(patterns):
        raise ValueError("one of the patterns can be said in any words")
    return frozenset().union(*needs)
