"""Patterns, taken apart: from the text of a pattern to what looks for it.

A word with the blank after it is the smallest part; the plain line of a message ends with a blank, so that
parts can be set one after the other.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from functools import cache
from itertools import count, groupby
from typing import NamedTuple

from domain.worked_out import worked_out

MOST_TIMES = 4
"""How often what is marked with a star may come."""

_SAID = {
    word: share
    for share, words in {
        700: "#",
        300: ", x",
        200: "the",
        120: "i on for bench . my",
        70: "press today squat and kg leg was to : a ? reps last it with",
        40: "row is in s of not that no did",
        30: "at then time chest left ups me do rows up what / back",
        20: """pulldown squats plank ! so yesterday you pull one gym same have weight set from but please
            after out curl incline tomorrow right this hip dips got each curls more can shoulder""",
        10: """as + deadlift how like cant should hurts calf pain bar friday sorry rdl push next sets training
            were th week im monday had all knee off seconds are kilos instead failure times be goblet only
            now side make done than down rest ( ) am sec""",
    }.items()
    for word in words.split()
}
_SELDOM = 1
"""In how many of a thousand messages a word is said, as counted in the corpus, and any other word."""

_PIECE = re.compile(
    r"[ \t]*(?:"
    r"(?P<line>\n\s*)|(?P<look><!\(|<\(|>\(|!\()|(?P<open>[(\[])|(?P<close>\)|\]\*?)"
    r"|(?P<or>\|)|(?P<span>\.{2,4}\d+)|(?P<list>\{\w+\})|(?P<name>[a-z]+:)|(?P<quoted>'[^']+')"
    r"|(?P<edge>[$^])|(?P<one>_)|(?P<word>[^\s()\[\]|'{}<>?~]+~?\??|[?](?=\s))"
    r"|(?P<end>~[^\s()\[\]|'{}<>?~]+\??))"
)
_SPANS = {"....": r"\S+ ", "...": r"[^ .!?;\n]+ ", "..": r"\w+ "}


_ARTICLES = frozenset({"the", "my", "our"})
"""Of a choice of these, one that has "the" may be left out before a word."""

_BEGINNING = r"(?:\A|(?<=\. )|(?<=! )|(?<=\n )|(?<=\Aok )|(?<=\Aso ))"
"""Where a message begins, or a sentence of it; "ok" and "so" are no beginning yet."""
_ENDING = (
    r"(?=(?:(?:[.!,]|haha|hahaha|hehe|lol|lmao|phew|thanks|thank you|thx|ty|cheers) )*"
    r"(?:[.!] (?:[a-z]+ ){1,6}(?:[.!] )?)?\Z)"
)
"""Where a message ends, but for a laugh, thanks and a short sentence in words behind it."""


class Part(NamedTuple):
    """A part of a pattern. `firsts` are the words it can begin with, None where that can be any. Of each of
    the sets of `needs` a word must be said. `empty` tells that it can be nothing at all, `is_word` that it is
    just one of its `firsts`."""

    regex: str
    firsts: frozenset[str] | None
    needs: tuple[frozenset[str], ...]
    empty: bool
    is_word: bool = False


_NOTHING = Part("", frozenset(), (), empty=True)
_ANY_WORD = Part(r"\w+ ", None, (), empty=False)


def compiled(text: str, lists: Mapping[str, frozenset[str] | str]) -> tuple[Part, ...]:
    """Return the ways to say the pattern that `text` describes; the first of them that fits, counts.

    Of `needs`, what is said most seldom comes first. Raises ValueError where `text` describes none.
    """
    made_from = (text, tuple(sorted(lists.items())))
    ways = worked_out(__name__, made_from, lambda: tuple(map(tuple, _compiled(text, lists))))
    return tuple(map(Part._make, ways))


def _compiled(text: str, lists: Mapping[str, frozenset[str] | str]) -> tuple[Part, ...]:
    ways = _Reader(text, lists).whole()
    if any(way.empty for way in ways):
        raise ValueError(f"a pattern must not be able to be nothing: {text!r}")
    together = [
        [_words(_all_words(same))] if is_word else list(same)
        for is_word, same in groupby(ways, key=lambda way: way.is_word)
    ]
    return tuple(way for ways in together for way in ways)


class _Reader:
    """Reads a pattern piece by piece."""

    def __init__(
        self, text: str, lists: Mapping[str, frozenset[str] | str], names: Iterator[int] | None = None
    ) -> None:
        self._text = text.strip()
        self._lists = lists
        self._pieces = list(self._cut())
        self._at = 0
        self._names = count(1) if names is None else names

    def whole(self) -> list[Part]:
        ways = self._ways(top=True)
        if self._at < len(self._pieces):
            raise ValueError(f"a bracket closes that was never opened: {self._text!r}")
        return ways

    def _cut(self) -> Iterator[tuple[str, str]]:
        """Return the kinds and the texts of the pieces."""
        place = 0
        for match in _PIECE.finditer(self._text):
            if match.start() > place:
                break
            place = match.end()
            kind = match.lastgroup
            if kind is not None:
                yield kind, match[kind]
        if place < len(self._text):
            raise ValueError(f"cannot be read from {self._text[place : place + 20]!r} on")

    def _ways(self, *, top: bool = False) -> list[Part]:
        ways = [self._sequence(top=top)]
        while self._at < len(self._pieces):
            kind, _ = self._pieces[self._at]
            if not (kind == "or" or (top and kind == "line")):
                break
            self._at += 1
            ways.append(self._sequence(top=top))
        if len(ways) > 1 and any(way.empty and _says_nothing(way) for way in ways):
            raise ValueError(f"one of several ways to say it leaves all out: {self._text!r}")
        return ways

    def _sequence(self, *, top: bool) -> Part:
        parts: list[Part] = []
        leaves_out = False
        while self._at < len(self._pieces):
            kind, piece = self._pieces[self._at]
            if kind in {"or", "close"} or (top and kind == "line"):
                break
            self._at += 1
            if kind == "line":
                continue
            part = self._part(kind, piece)
            if parts and leaves_out and not part.empty and "#" not in (part.firsts or ()):
                parts[-1] = _maybe(parts[-1])
            parts.append(part)
            leaves_out = _is_article(part)
        if not parts:
            raise ValueError(f"a way to say it is empty: {self._text!r}")
        return parts[0] if len(parts) == 1 else _one_after_another(parts)

    def _part(self, kind: str, piece: str) -> Part:
        match kind:
            case "word":
                return _worded(piece)
            case "open":
                return self._bracketed(piece)
            case "look":
                return self._looked(piece)
            case "list":
                return self._listed(piece[1:-1])
            case "name":
                part = self._part(*self._next())
                regex = f"(?P<{piece[:-1]}__{next(self._names)}>{part.regex})"
                return Part(regex, part.firsts, part.needs, part.empty)
            case "span":
                word, most = _SPANS[piece.rstrip("0123456789")], piece.lstrip(".")
                return Part(f"(?:{word}){{0,{most}}}?", None, (), empty=True)
            case "edge":
                return Part(_BEGINNING if piece == "^" else _ENDING, frozenset(), (), empty=True)
            case "quoted":
                return _words(frozenset({piece[1:-1]}))._replace(is_word=piece[1:-1] not in _ARTICLES)
            case "one":
                return _ANY_WORD
            case "end":
                part = Part(rf"\w*{re.escape(piece.strip('~?'))} ", None, (), empty=False)
                return _maybe(part) if piece[-1] == "?" else part
            case _:
                raise ValueError(f"nothing can begin with {piece!r}: {self._text!r}")

    def _listed(self, name: str) -> Part:
        if name not in self._lists:
            raise ValueError(f"no list of words is named {name!r}")
        listed = self._lists[name]
        if not isinstance(listed, str):
            return _words(listed)
        if "{" in listed or ":" in listed:
            return _either(_Reader(listed, self._lists, self._names).whole())
        return _read_alone(listed)

    def _next(self) -> tuple[str, str]:
        if self._at >= len(self._pieces):
            raise ValueError(f"a name stands before nothing: {self._text!r}")
        self._at += 1
        return self._pieces[self._at - 1]

    def _bracketed(self, bracket: str) -> Part:
        part = _either(self._ways())
        kind, close = self._next()
        if kind != "close" or (bracket == "(") != (close == ")"):
            raise ValueError(f"a bracket is not closed: {self._text!r}")
        if close == "]*":
            return Part(f"(?:{part.regex}){{0,{MOST_TIMES}}}", part.firsts, (), empty=True)
        return _maybe(part) if close == "]" else part

    def _looked(self, look: str) -> Part:
        part = self._bracketed("(")
        if look in {">(", "!("}:
            return _NOTHING._replace(regex=f"(?{'=' if look == '>(' else '!'}{part.regex})")
        if part.firsts is None or not part.is_word:
            raise ValueError(f"only single words can be looked back at: {self._text!r}")
        words = sorted(part.firsts)
        behind = [(rf"\b{re.escape(w)} " if w[0].isalnum() else f"{re.escape(w)} ") for w in words]
        if look == "<(":
            return _NOTHING._replace(regex="(?:" + "|".join(f"(?<={b})" for b in behind) + ")")
        return _NOTHING._replace(regex="".join(f"(?<!{b})" for b in behind))


@cache
def _read_alone(text: str) -> Part:
    """Return the part for a list that names nothing and takes no other list: the same in every pattern."""
    return _either(_Reader(text, {}).whole())


def _says_nothing(way: Part) -> bool:
    """Return whether nothing need be said for one way that can be nothing, not even that a message begins or
    ends there."""
    at_an_edge = any(edge in way.regex for edge in (_BEGINNING, _ENDING))
    return not at_an_edge and re.fullmatch(way.regex, "") is not None


@cache
def _worded(piece: str) -> Part:
    """Return the part for a word, which may be marked as a beginning, or as left out."""
    word = piece if piece == "?" else piece.removesuffix("?")
    if word[-1] == "~":
        part = Part(rf"{re.escape(word[:-1])}\w* ", None, (), empty=False)
    else:
        part = _words(frozenset({word}))
    return _maybe(part) if len(word) < len(piece) else part


_escaped = cache(re.escape)


@cache
def _words(words: frozenset[str]) -> Part:
    ways = "|".join([_escaped(word) for word in sorted(words)])
    return Part(f"{ways} " if len(words) == 1 else f"(?:{ways}) ", words, (words,), empty=False, is_word=True)


def _maybe(part: Part) -> Part:
    return Part(f"(?:{part.regex})?", part.firsts, (), empty=True)


def _all_words(ways: Iterable[Part]) -> frozenset[str]:
    return frozenset().union(*[way.firsts for way in ways if way.firsts is not None])


def _is_article(part: Part) -> bool:
    """Return whether a part is "the", or "the" or a word that can stand for it: "(my|the)"."""
    return part.is_word and part.firsts is not None and "the" in part.firsts and part.firsts <= _ARTICLES


def _either(ways: list[Part]) -> Part:
    if len(ways) == 1:
        return ways[0]
    if all(way.is_word for way in ways):
        return _words(_all_words(ways))
    return Part(
        "(?:" + "|".join([way.regex for way in ways]) + ")",
        None if None in [way.firsts for way in ways] else _all_words(ways),
        (frozenset().union(*[way.needs[0] for way in ways]),) if all(way.needs for way in ways) else (),
        empty=True in [way.empty for way in ways],
    )


def _one_after_another(parts: list[Part]) -> Part:
    firsts: frozenset[str] | None = frozenset()
    for part in parts:
        firsts = None if firsts is None or part.firsts is None else firsts | part.firsts
        if not part.empty:
            break
    needs = dict.fromkeys([words for part in parts for words in part.needs])
    return Part(
        "".join([part.regex for part in parts]),
        firsts,
        tuple(sorted(needs, key=_rank) if len(needs) > 1 else needs),
        empty=all(part.empty for part in parts),
    )


@cache
def _rank(words: frozenset[str]) -> int:
    """Return in how many of a thousand messages one of some words is said, about: the fewer, the sooner it
    shows that a pattern is not."""
    return sum([_SAID.get(word, _SELDOM) for word in words])
