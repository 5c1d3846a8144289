"""Patterns, taken apart: from the text of a pattern to what looks for it.

A word with the blank after it is the smallest part; the plain line of a message ends with a blank, so that
parts can be set one after the other.
"""

import re
from collections.abc import Iterator, Mapping
from itertools import count
from typing import NamedTuple

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
    r"(?P<blank>[ \t]+)|(?P<line>\n\s*)|(?P<look><!\(|<\(|>\(|!\()|(?P<open>[(\[])|(?P<close>\)|\]\*?)"
    r"|(?P<or>\|)|\.{4}(?P<all>\d+)|\.{3}(?P<tokens>\d+)|\.\.(?P<words>\d+)|(?P<list>\{\w+\})|(?P<name>[a-z]+):|'(?P<quoted>[^']+)'"
    r"|(?P<edge>[$^])|(?P<one>_)|(?P<word>[^\s()\[\]|'{}<>?~]+|[?](?=\s))(?P<more>~?)(?P<maybe>\??)"
    r"|~(?P<end>[^\s()\[\]|'{}<>?~]+)(?P<maybe_end>\??)"
)


class Part(NamedTuple):
    """A part of a pattern. `firsts` are the words it can begin with, `needs` words of which one must be said;
    None where that can be anything. `empty` tells that it can be nothing at all."""

    regex: str
    firsts: frozenset[str] | None
    needs: frozenset[str] | None
    empty: bool


class Compiled(NamedTuple):
    """A pattern as an expression to be looked for at the beginning of a token."""

    regex: str
    firsts: frozenset[str] | None
    needs: frozenset[str] | None


_NOTHING = Part("", frozenset(), None, empty=True)


def compiled(text: str, lists: Mapping[str, frozenset[str] | str]) -> Compiled:
    """Return the pattern that `text` describes. Raises ValueError where it describes none."""
    part = _Reader(text, lists).whole()
    if part.empty:
        raise ValueError(f"a pattern must not be able to be nothing: {text!r}")
    return Compiled(part.regex, part.firsts, part.needs)


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

    def whole(self) -> Part:
        part = self._ways(top=True)
        if self._at < len(self._pieces):
            raise ValueError(f"a bracket closes that was never opened: {self._text!r}")
        return part

    def _cut(self) -> Iterator[re.Match[str]]:
        place = 0
        while place < len(self._text):
            match = _PIECE.match(self._text, place)
            if match is None:
                raise ValueError(f"cannot be read from {self._text[place : place + 20]!r} on")
            place = match.end()
            if match.lastgroup != "blank":
                yield match

    def _ways(self, *, top: bool = False) -> Part:
        ways = [self._sequence(top=top)]
        while self._at < len(self._pieces):
            piece = self._pieces[self._at]
            if not (piece["or"] or (top and piece["line"])):
                break
            self._at += 1
            ways.append(self._sequence(top=top))
        if len(ways) > 1 and any(_says_nothing(way) for way in ways):
            raise ValueError(f"one of several ways to say it leaves all out: {self._text!r}")
        return _either(ways)

    def _sequence(self, *, top: bool) -> Part:
        parts: list[Part] = []
        while self._at < len(self._pieces):
            piece = self._pieces[self._at]
            if piece["or"] or piece["close"] or (top and piece["line"]):
                break
            self._at += 1
            if not piece["line"]:
                parts.append(self._part(piece))
        if not parts:
            raise ValueError(f"a way to say it is empty: {self._text!r}")
        return _one_after_another(parts)

    def _part(self, piece: re.Match[str]) -> Part:
        if piece["look"]:
            return self._looked(piece["look"])
        if piece["open"]:
            return self._bracketed(piece["open"])
        if name := piece["name"]:
            part = self._part(self._next())
            return part._replace(regex=f"(?P<{name}__{next(self._names)}>{part.regex})")
        if number := piece["all"]:
            return Part(rf"(?:\S+ ){{0,{number}}}?", None, None, empty=True)
        if number := piece["tokens"]:
            return Part(rf"(?:[^ .!?;\n]+ ){{0,{number}}}?", None, None, empty=True)
        if number := piece["words"]:
            return Part(rf"(?:\w+ ){{0,{number}}}?", None, None, empty=True)
        if piece["list"]:
            return self._listed(piece["list"][1:-1])
        if edge := piece["edge"]:
            return _NOTHING._replace(regex=r"\A" if edge == "^" else r"\Z")
        if piece["one"]:
            return Part(r"\w+ ", None, None, empty=False)
        if end := piece["end"]:
            return _maybe(Part(rf"\w*{re.escape(end)} ", None, None, empty=False), piece["maybe_end"])
        word = piece["quoted"] or piece["word"]
        if piece["more"]:
            return _maybe(Part(rf"{re.escape(word)}\w* ", None, None, empty=False), piece["maybe"])
        return _maybe(_words(frozenset({word})), piece["maybe"])

    def _listed(self, name: str) -> Part:
        if name not in self._lists:
            raise ValueError(f"no list of words is named {name!r}")
        listed = self._lists[name]
        return (
            _Reader(listed, self._lists, self._names).whole() if isinstance(listed, str) else _words(listed)
        )

    def _next(self) -> re.Match[str]:
        if self._at >= len(self._pieces):
            raise ValueError(f"a name stands before nothing: {self._text!r}")
        self._at += 1
        return self._pieces[self._at - 1]

    def _bracketed(self, bracket: str) -> Part:
        part = self._ways()
        close = self._next()["close"]
        if close is None or (bracket == "(") != (close == ")"):
            raise ValueError(f"a bracket is not closed: {self._text!r}")
        if close == "]*":
            return Part(f"(?:{part.regex}){{0,{MOST_TIMES}}}", part.firsts, None, empty=True)
        return _maybe(part, close == "]")

    def _looked(self, look: str) -> Part:
        part = self._bracketed("(")
        if look in {">(", "!("}:
            return _NOTHING._replace(regex=f"(?{'=' if look == '>(' else '!'}{part.regex})")
        words = part.firsts
        if words is None or part.regex != _words(words).regex:
            raise ValueError(f"only single words can be looked back at: {self._text!r}")
        behind = [(rf"\b{re.escape(w)} " if w[0].isalnum() else f"{re.escape(w)} ") for w in sorted(words)]
        if look == "<(":
            return _NOTHING._replace(regex="(?:" + "|".join(f"(?<={b})" for b in behind) + ")")
        return _NOTHING._replace(regex="".join(f"(?<!{b})" for b in behind))


def _says_nothing(way: Part) -> bool:
    """Return whether nothing need be said for one way, not even that a message begins or ends there."""
    at_an_edge = any(edge in way.regex for edge in (r"\A", r"\Z"))
    return way.empty and not at_an_edge and re.fullmatch(way.regex, "") is not None


def _words(words: frozenset[str]) -> Part:
    ways = "|".join(re.escape(word) for word in sorted(words))
    return Part(f"{ways} " if len(words) == 1 else f"(?:{ways}) ", words, words, empty=False)


def _maybe(part: Part, left_out: object) -> Part:
    return Part(f"(?:{part.regex})?", part.firsts, None, empty=True) if left_out else part


def _either(ways: list[Part]) -> Part:
    if len(ways) == 1:
        return ways[0]
    if all(way.firsts is not None and way.regex == _words(way.firsts).regex for way in ways):
        return _words(frozenset().union(*(way.firsts or () for way in ways)))
    return Part(
        "(?:" + "|".join(way.regex for way in ways) + ")",
        _all_of([way.firsts for way in ways]),
        _all_of([way.needs for way in ways]),
        empty=any(way.empty for way in ways),
    )


def _one_after_another(parts: list[Part]) -> Part:
    firsts: frozenset[str] | None = frozenset()
    for part in parts:
        firsts = None if firsts is None or part.firsts is None else firsts | part.firsts
        if not part.empty:
            break
    needs = min((p.needs for p in parts if p.needs is not None), key=_rank, default=None)
    return Part("".join(p.regex for p in parts), firsts, needs, empty=all(p.empty for p in parts))


def _rank(words: frozenset[str]) -> int:
    """Return in how many of a thousand messages one of some words is said, about: the fewer, the sooner it
    shows that a pattern is not."""
    return sum(_SAID.get(word, _SELDOM) for word in words)


def _all_of(sets: list[frozenset[str] | None]) -> frozenset[str] | None:
    known = [s for s in sets if s is not None]
    return frozenset().union(*known) if len(known) == len(sets) else None
