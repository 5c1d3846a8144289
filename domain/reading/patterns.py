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
    >(of)  !(of)            followed by, not followed by
    <(my)  <!(my)           right after, not right after
    ^  $                    where the message begins, and where it ends

Everything that repeats is bounded, so that looking for a pattern takes time in proportion to the length of
the message, whatever is typed. Which words a pattern cannot do without is worked out from it, so that
nothing is looked for where none of them is said.
"""

import re
from collections.abc import Iterator, Sequence
from typing import NamedTuple, Protocol

from domain.reading.message import Message
from domain.reading.pattern_parts import compiled

_NAMES = re.compile(r"\(\?P<(\w+)>")


class Found(NamedTuple):
    """Where a pattern was found: the first token, the token after the last, and those of its named parts."""

    start: int
    end: int
    parts: dict[str, tuple[int, int]]


class Pattern:
    """A turn of phrase that can be looked for. Raises ValueError where `text` is no pattern.

    `needs` are words of which one must be said, None where it can be said with any.
    """

    __slots__ = ("_compiled", "_firsts", "_is_unsaid", "_parts", "_regex", "needs", "text")

    def __init__(self, text: str, **lists: frozenset[str] | str) -> None:
        self.text = text
        made = compiled(text, lists)
        self._regex = made.regex
        self._compiled: re.Pattern[str] | None = None
        self._firsts = made.firsts
        self._parts = tuple((name, name.partition("__")[0]) for name in _NAMES.findall(made.regex))
        self.needs = made.needs
        self._is_unsaid = _never if made.needs is None else made.needs.isdisjoint

    def find(self, message: Message, start: int = 0, end: int | None = None) -> Iterator[Found]:
        """Return where the pattern stands among the tokens from `start` to before `end`, none within
        another."""
        if self._is_unsaid(message.words):
            return _NOWHERE
        return self._find(message, start, len(message.tokens) if end is None else end)

    def first(self, message: Message, start: int = 0, end: int | None = None) -> Found | None:
        """Return the first place of the pattern, None where it is not said."""
        if self._is_unsaid(message.words):
            return None
        return next(self._find(message, start, len(message.tokens) if end is None else end), None)

    def is_in(self, message: Message, start: int = 0, end: int | None = None) -> bool:
        """Return whether the pattern is said."""
        return not self._is_unsaid(message.words) and self.first(message, start, end) is not None

    def at(self, message: Message, start: int, end: int | None = None) -> Found | None:
        """Return the pattern where it begins right at the token `start`, None where it does not."""
        if self._is_unsaid(message.words) or not 0 <= start < len(message.tokens):
            return None
        stop = len(message.line) if end is None else message.place(end)
        match = self._begins().match(message.line, message.starts[start], stop)
        return None if match is None else self._found(message, start, match)

    def _begins(self) -> re.Pattern[str]:
        """Return the expression, compiled when first wanted: most are not, in a short run."""
        if self._compiled is None:
            self._compiled = re.compile(self._regex)
        return self._compiled

    def _find(self, message: Message, start: int, end: int) -> Iterator[Found]:
        places = self._places(message)
        return self._in_turn(message, places, start, end) if places else _NOWHERE

    def _in_turn(self, message: Message, places: Sequence[int], start: int, end: int) -> Iterator[Found]:
        match_at, line, starts = self._begins().match, message.line, message.starts
        stop = message.place(end)
        for at in places:
            if at < start:
                continue
            if at >= end:
                break
            match = match_at(line, starts[at], stop)
            if match is not None:
                found = self._found(message, at, match)
                yield found
                start = found.end

    def _places(self, message: Message) -> Sequence[int]:
        """Return the tokens at which the pattern can begin, in order."""
        if self._firsts is None:
            return range(len(message.tokens))
        said = self._firsts & message.words
        if len(said) == 1:
            return message.places[next(iter(said))]
        return sorted([at for word in said for at in message.places[word]])

    def _found(self, message: Message, at: int, match: re.Match[str]) -> Found:
        parts = {
            meaning: message.tokens_of(*match.span(name))
            for name, meaning in self._parts
            if match.start(name) >= 0
        }
        return Found(at, message.tokens_of(*match.span())[1], parts)


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


def _never(_words: frozenset[str]) -> bool:
    return False


_NOWHERE: Iterator[Found] = iter(())
