"""Text into tokens: words, numbers, signs and line breaks, each with its place in the text as typed.

Writing is folded here, so that no later rule need know of it: full-width digits, emoji digits, multiplication
signs, dashes, quotes, fractions, marks of writing direction and control characters. Number words are next
door.
"""

# ruff: noqa: RUF001 - the signs that look like others are those that are folded into them

import re
import unicodedata
from decimal import Decimal
from typing import NamedTuple

from domain.reading.words import words_of

WORD, NUMBER, SIGN, LINE, JOKE = "w", "n", "s", "l", "j"

LONGEST = 4000
"""How many characters of a message are read."""


class Token(NamedTuple):
    """One word, number, sign, line break or joking emoji.

    `text` is in lower case, without accents or apostrophes. `start` and `end` are places in the message as
    typed. `glued` tells that nothing stands between this token and the one before. `spoken` tells a
    number word.
    """

    kind: str
    text: str
    start: int
    end: int
    glued: bool
    value: Decimal | None = None
    spoken: bool = False


_PLAIN = re.compile(r"[\t\n\x20-\x7e]*")
_TOKEN = re.compile(
    r"(?P<n>\d{1,9}(?:[.,]\d{1,9})*)|(?P<w>[^\W\d_]+(?:'[^\W\d_]+)*)|(?P<l>\n)|(?P<s>[^\s\w])", re.ASCII
)
_TOKEN_WIDE = re.compile(
    r"(?P<n>[0-9]{1,9}(?:[.,][0-9]{1,9})*)|(?P<w>[^\W\d_]+(?:'[^\W\d_]+)*)|(?P<l>\n)|(?P<s>[^\s\w])"
)

_FOLDED = {
    **dict.fromkeys("×✕✖⨯❌╳хХ", "x"),
    **dict.fromkeys("–—−‐‑‒―﹣", "-"),
    **dict.fromkeys("’‘`´ʼ′", "'"),
    **dict.fromkeys("“”„«»″", '"'),
    **dict.fromkeys("،、，；", ","),
    **dict.fromkeys("\r\v\f\x85\u2028\u2029", "\n"),
    **dict.fromkeys("•●▪·∙", ","),
    "…": ".",
    **dict.fromkeys("→➡⇒➔➜", "->"),
    "🔟": "10",
    "➕": "+",
    "➖": "-",
    "½": ".5",
    "¼": ".25",
    "¾": ".75",
    "⅓": ".33",
    "⅔": ".67",
    "⅛": ".125",
    "ß": "ss",
}
_JOKES = frozenset("😂🤣💀☠🙃😜🤪😹😆")
_NOTHING_CATEGORIES = frozenset({"Cc", "Cf", "Mn", "Me", "Co", "Cn", "Cs"})
_AFTER_TWO = {
    **dict.fromkeys(("day", "nite", "night"), "today"),
    "days": "todays",
    **dict.fromkeys(("morrow", "moro", "morro", "morow", "mrw"), "tomorrow"),
}
"""What "2day", "2nite" and "2moro" stand for, by what follows the two."""
_WITH_A_DIGIT = {
    ("b", "4"): "before",
    ("gr", "8"): "great",
    ("m", "8"): "mate",
    ("sum", "1"): "someone",
    ("some", "1"): "someone",
    ("any", "1"): "anyone",
    ("every", "1"): "everyone",
}
"""Words that end in a digit, and are no load: "b4"."""
_LOAD_ENDINGS = frozenset({"25", "50", "75", "00", "5", "0", "125", "375", "625", "875"})
_BEFORE_TIMES = frozenset(
    {
        *("k", "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"),
        *("lb", "lbs", "pound", "pounds", "bw", "s", "bodyweight"),
    }
)
_TIMES = frozenset({"x", "*"})
_SHORT_FORMS = frozenset({"lb", "lbs", "kg", "kgs"})
_TIMES_A_NUMBER = re.compile(r" ?[0-9]")
_WITH_IS_AS_ONE = words_of(
    """it that this he she what who where how when there here let one everything anything nothing something
    someone everyone nobody everybody today tonight yesterday tomorrow monday tuesday wednesday thursday
    friday saturday sunday morning evening week other"""
)
"""Words that stand as one with an "is", "what's", or whose "'s" tells whose something is: "Friday's"."""
_AFTER_IS = re.compile(
    r" (?:been|gone|got|a|an|not|so|too|very|really|pretty|quite|still|just|always|[a-z]{2,}ing)\b"
    r"(?<! training)(?<! morning)(?<! evening)"
)
"""What shows that an "'s" is "is" or "has": "my back's killing me"."""
_GOES_ON_BESIDE = re.compile(r" ?(?:[x*@/,]|(?:for|by|times)\b|a [0-9])")
"""What shows that the point of a short form ends no sentence: "175 lb. x 6"."""


def tokenise(text: str) -> list[Token]:
    """Return the tokens of `text`, of which at most the first `LONGEST` characters are read."""
    places: list[int] | None = None
    if _PLAIN.fullmatch(text):
        folded, pattern = text.lower(), _TOKEN
    else:
        folded, places = _fold(text)
        pattern = _TOKEN_WIDE
    tokens: list[Token] = []
    last_end = -1
    for match in pattern.finditer(folded):
        start, end = match.span()
        kind = match.lastgroup or SIGN
        said = match.group()
        glued = start == last_end
        last_end = end
        if places is not None:
            start, end = places[start], places[end - 1] + 1
        if (
            kind == NUMBER
            and glued
            and tokens
            and (word := _WITH_A_DIGIT.get((tokens[-1].text, said))) is not None
        ):
            tokens[-1] = Token(WORD, word, tokens[-1].start, end, tokens[-1].glued)
        elif kind == NUMBER:
            if (
                glued
                and tokens
                and "," in said
                and tokens[-1].text in _TIMES
                and folded[last_end : last_end + 1] in _TIMES
            ):
                # "82.5x6,80x5": the reps of one set, and the load of the next.
                reps, _, said = said.partition(",")
                _add_number(tokens, reps, start, start + len(reps), glued=True)
                tokens.append(Token(SIGN, ",", start + len(reps), start + len(reps) + 1, glued=True))
                start += len(reps) + 1
            _add_number(tokens, said, start, end, glued=glued)
        elif kind == WORD:
            if "'" in said:
                if (
                    said.endswith("'s")
                    and said[:-2] not in _WITH_IS_AS_ONE
                    and _AFTER_IS.match(folded, last_end)
                ):
                    tokens.append(Token(WORD, said[:-2].replace("'", ""), start, end - 2, glued))
                    said, start, glued = "is", end - 2, True
                said = said.replace("'", "")
            if said[-1] == "x" and said[:-1] in _BEFORE_TIMES and _TIMES_A_NUMBER.match(folded, last_end):
                # "kgx" before a number is a unit and a times sign.
                tokens.append(Token(WORD, said[:-1], start, end - 1, glued))
                said, start, glued = "x", end - 1, True
            stands_for_a_day = said in _AFTER_TWO and (said != "days" or "'" in match.group())
            before = tokens[-1] if glued and tokens and stands_for_a_day else None
            if before is not None and before.text == "2":
                tokens[-1] = Token(WORD, _AFTER_TWO[said], before.start, end, before.glued)
            else:
                tokens.append(Token(WORD, said, start, end, glued))
        elif kind == LINE:
            tokens.append(Token(LINE, "\n", start, end, glued))
        elif said in _JOKES:
            tokens.append(Token(JOKE, said, start, end, glued))
        elif (
            said == "."
            and tokens
            and tokens[-1].text in _SHORT_FORMS
            and _GOES_ON_BESIDE.match(folded, last_end)
        ):
            continue
        elif said == "'" and not (glued and tokens and tokens[-1].kind == NUMBER):
            tokens.append(Token(SIGN, '"', start, end, glued))
        elif said.isascii() or said in "€£°":
            # The plain line has "#" for a number, so that the sign itself needs another one there.
            tokens.append(Token(SIGN, "№" if said == "#" else said, start, end, glued))
    return tokens


def _fold(text: str) -> tuple[str, list[int]]:
    """Return `text` in plain characters, and for each of them its place in `text`."""
    folded: list[str] = []
    places: list[int] = []
    for place, char in enumerate(text):
        if "\x20" <= char <= "\x7e" or char in "\n\t":
            plain = char
        elif char in "·∙" and folded and folded[-1].isalnum() and text[place + 1 : place + 2].isdigit():
            plain = "x"
        elif (known := _FOLDED.get(char)) is not None:
            plain = known
            if plain[0] == "." and len(plain) > 1 and not (folded and folded[-1].isdigit()):
                plain = "0" + plain
        elif char in _JOKES:
            plain = char
        else:
            plain = "".join(
                c
                for c in unicodedata.normalize("NFKD", char)
                if unicodedata.category(c) not in _NOTHING_CATEGORIES
            )
        folded.extend(plain.lower())
        places.extend([place] * len(plain.lower()))
    return "".join(folded), places


def _add_number(tokens: list[Token], said: str, start: int, end: int, *, glued: bool) -> None:
    """Add what is written with digits: one number, or several that are only parted by commas or points."""
    if said.isdigit():
        tokens.append(Token(NUMBER, said, start, end, glued, Decimal(said)))
        return
    marks = [c for c in said if not c.isdigit()]
    if len(marks) == 1:
        whole, _, part = said.replace(",", ".").partition(".")
        if marks[0] == "," and len(part) == 3 and len(whole) <= 2 and whole[0] != "0":
            tokens.append(Token(NUMBER, said, start, end, glued, Decimal(whole + part)))
            return
        if marks[0] == "." or _is_decimal(whole, part):
            tokens.append(Token(NUMBER, said, start, end, glued, Decimal(f"{whole}.{part}")))
            return
    # In "82.5x6,82.5x5" the comma parts two sets, and the points are of the loads.
    between = r"(,)" if set(marks) == {",", "."} else r"([.,])"
    place = start
    for piece in re.split(between, said):
        first = place == start
        stop = place + len(piece) if end - start == len(said) else end
        if piece in {",", "."}:
            tokens.append(Token(SIGN, piece, place, stop, glued if first else True))
        elif piece.count(".") > 1:
            _add_number(tokens, piece, place, stop, glued=glued if first else True)
        elif piece:
            tokens.append(Token(NUMBER, piece, place, stop, glued if first else True, Decimal(piece)))
        place = min(place + len(piece), end)


def _is_decimal(whole: str, part: str) -> bool:
    """Return whether a comma is a decimal one, by what loads look like; otherwise it parts two numbers."""
    if part in _LOAD_ENDINGS:
        return True
    if len(part) == 1:
        return int(whole) >= 20
    return len(part) == 2 and (int(whole) > 30 or int(part) > 30)
