"""From the text of a sheet to its lines: what the writing of a line tells, and its words without the writing.

Bullets, numbering, bold, odd dashes and quotes, and invisible characters are taken off here, so that nothing
further on needs to know of them.
"""

import re
import unicodedata
from dataclasses import dataclass
from itertools import pairwise

from domain.expressions import Expression
from domain.sheet.result import Fault

MAX_CHARACTERS = 30_000
MAX_LINES = 600
MAX_LINE = 400
"""More than any programme needs; they keep the answer quick."""

_SAME = str.maketrans(
    {
        **dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212", "-"),
        **dict.fromkeys("\u2018\u2019\u201a\u2032\u00b4`", "'"),
        **dict.fromkeys("\u201c\u201d\u201e\u2033\u00ab\u00bb", '"'),
        **dict.fromkeys("\u00a0\u2007\u202f\u3000\u2009", " "),
        "\u00d7": "x",
        "\u2192": "->",
        "\u21d2": "->",
        "\u00bd": ".5",
        "\u2026": "...",
    }
)
_BULLET = Expression(
    r"(?:[-*+>\u2022\u25aa\u25cf\u25e6\u2023\u00b7]|\[[ xX]?\])\s+|[\u2022\u25aa\u25cf\u25e6\u2023\u00b7]"
)
_NUMBERING = Expression(
    r"\(?(?P<label>\d{1,2}[A-Da-d]?|[A-Za-z]\d?)(?:\)|\.(?!\d)|:(?=\s))\s*(?=\S)"
    r"|#(?P<hash>\d{1,2})[.):]?\s+"
    r"|(?P<dash>\d{1,2})\s+-\s+(?=[A-Za-z])"
    r"|(?P<pair>[A-Z]\d|\d[A-Da-d])\s+(?=[A-Za-z])"
    r"|(?P<bare>\d{1,2})\s+(?=[A-Za-z]|\d+\s*(?:x|sets?\b))(?!(?i:sets?|reps?|x|rounds?|seconds?|secs?|s|min|"
    r"minutes?|days?|workouts?|times|to|or|kg|lb|full|hard|working|work|lowering|negatives?|rir|short|more|left)\b)",
)
_MARKED_UP = Expression(r"^(#{1,6}\s+|={2,}\s*|-{2,}\s*|\*{1,2}(?=\S)|_{1,2}(?=\S))")
_FRAME = Expression(r"^(?:[\s|]+|#{1,6}\s+|={2,}\s*|-{2,}\s*)+|(?:\s|\s*={2,}|\s*-{2,})+$")
_UNDERLINE = Expression(r"\s*(?:={3,}|-{3,}|~{3,}|_{3,})\s*")
_ITALIC = Expression(r"(?<!\w)(?P<mark>[*_])(?P<words>[^\s*_](?:[^*_]*[^\s*_])?)(?P=mark)(?!\w)")


@dataclass(frozen=True, slots=True)
class Line:
    """One line that says something: its number from 1, as written, and its words.

    `label` is its number or letter ("2", "A1"), `bulleted` whether it has that or a bullet, `indent` by how
    many spaces it is set in, `marked` whether it is set apart as a heading is.
    """

    number: int
    raw: str
    words: str
    label: str = ""
    bulleted: bool = False
    indent: int = 0
    marked: bool = False

    @property
    def heading(self) -> str:
        """The words as they would stand in a list of workouts, without the colon at the end."""
        return self.words.rstrip(" :=-_*#.").strip()


def split_lines(text: str) -> tuple[Line, ...] | Fault:
    """Return the lines that say something, or the one fault that makes the whole text unreadable."""
    if not text.strip("\ufeff \t\r\n\0"):
        return Fault(None, "", "empty")
    if len(text) > MAX_CHARACTERS:
        return Fault(None, "", "too large", part=str(len(text)), hint=str(MAX_CHARACTERS))
    odd = sum(1 for character in text if _is_odd(character))
    if "\0" in text or odd * 20 > len(text):
        return Fault(None, "", "not text")
    raws = re.split(r"\r\n|[\n\r\u2028\u2029]", text)
    said = tuple(
        _line(number, raw, underlined=bool(_UNDERLINE.fullmatch(below)))
        for number, (raw, below) in enumerate(pairwise([*raws, ""]), 1)
        if any(character.isalnum() for character in raw)
    )
    if len(said) > MAX_LINES:
        return Fault(None, "", "too many lines", part=str(len(said)), hint=str(MAX_LINES))
    return said or Fault(None, "", "empty")


def tidy(text: str) -> str:
    """Return a piece of text with plain dashes, quotes and spaces, and nothing invisible in it."""
    plain = "".join(
        " " if character in "\t\v\f" else character
        for character in unicodedata.normalize("NFC", text).translate(_SAME)
        if character in "\t\v\f" or unicodedata.category(character) not in {"Cc", "Cf", "Co", "Cs", "Cn"}
    )
    return " ".join(plain.split())


def _line(number: int, raw: str, *, underlined: bool) -> Line:
    words = tidy(raw.replace("\t", " | ") if re.search(r"\S\t+\S", raw) else raw)
    words = re.sub(r"(?<=\d)\s*\*\s*(?=\d)", "x", words)
    marked = underlined or bool(_MARKED_UP.match(words))
    words = _ITALIC.sub(r"\g<words>", re.sub(r"\*\*|__", "", words))
    label, bulleted = "", False
    before = None
    while words != before:
        before = words
        words = _FRAME.sub("", words)
        if bullet := _BULLET.match(words):
            words, bulleted = words[bullet.end() :], True
        if not label and (numbering := _NUMBERING.match(words)):
            label = next(group for group in numbering.groups() if group)
            words, bulleted = words[numbering.end() :], True
    return Line(
        number=number,
        raw=raw,
        words=words,
        label=label,
        bulleted=bulleted,
        indent=len(raw.expandtabs(4)) - len(raw.expandtabs(4).lstrip()),
        marked=marked,
    )


def _is_odd(character: str) -> bool:
    return character not in "\n\r\t\v\f" and unicodedata.category(character) in {"Cc", "Co", "Cs", "Cn"}
