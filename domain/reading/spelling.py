"""A few words that much hangs on, put right where they are mistyped: "chset pian" reads as "chest pain".

Only the words of `spelling_words` are put right. A word that is good English as it stands is left alone, and
so is one with more than a single slip, or one that is as near to two of them.
"""

import re
from functools import lru_cache

from rapidfuzz.distance import OSA

from domain.reading.english import is_english
from domain.reading.spelling_words import KEY_WORDS, NO_SLIPS, SAFETY_WORDS
from domain.reading.texted_words import TEXTED
from domain.reading.tokens import Token

_LONGEST = 14
_REPEATED = re.compile(r"([a-z])\1{2,}")
_ALL = SAFETY_WORDS | KEY_WORDS
_SHORT = 4
"""In a word of so many letters only two neighbours may have changed places."""
_BY_LETTER = {
    letter: tuple(word for word in sorted(_ALL) if word[0] == letter) for letter in {word[0] for word in _ALL}
}
_VOWELS = re.compile("(?<!^)[aeiou]")
_FEWEST_CONSONANTS = 3


def _by_consonants() -> dict[str, str]:
    """Return the words by what is left of each without its vowels, where that is of one word only."""
    words: dict[str, set[str]] = {}
    for word in _ALL:
        words.setdefault(_VOWELS.sub("", word), set()).add(word)
    return {
        short: found.pop()
        for short, found in words.items()
        if len(found) == 1 and len(short) >= _FEWEST_CONSONANTS and short not in found
    }


_BY_CONSONANTS = _by_consonants()
"""Words as they are typed in haste: "shldr", "skp"."""


def with_words_put_right(tokens: list[Token]) -> list[Token]:
    """Return the tokens, mistyped words that much hangs on put right; their places stay as typed."""
    said = [token.text for token in tokens]
    right = list(map(mended, said))
    if right == said:
        return tokens
    put_right: list[Token] = []
    for token, word in zip(tokens, right, strict=True):
        if token.text == word:
            put_right.append(token)
            continue
        first, _, second = word.partition(" ")
        put_right.append(token._replace(text=first))
        if second:
            put_right.append(token._replace(text=second, start=token.end - 1, glued=True))
    return put_right


@lru_cache(maxsize=8192)
def mended(word: str) -> str:
    """Return the word that `word` is a slip of where much hangs on that, otherwise `word` itself."""
    if word in _ALL or word in NO_SLIPS:
        return word
    if (alias := TEXTED.get(word)) is not None:
        return alias
    if _REPEATED.search(word):
        for kept in (r"\1", r"\1\1"):
            shorter = _REPEATED.sub(kept, word)
            if shorter in _ALL:
                return shorter
    if not word.isalpha() or len(word) > _LONGEST:
        return word
    if (whole := _BY_CONSONANTS.get(word)) is not None:
        return word if is_english(word) else whole
    if len(word) < _SHORT:
        return word
    if word.endswith("in") and len(word) > _SHORT and not is_english(word) and is_english(f"{word}g"):
        return f"{word}g"
    near = [right for right in _BY_LETTER.get(word[0], ()) if _is_slip(word, right)]
    return _likeliest(word, near) if near and not is_english(word) else word


def _is_slip(word: str, right: str) -> bool:
    """Return whether one letter is missing, added or another one, or two neighbours have changed places."""
    if abs(len(right) - len(word)) > 1 or OSA.distance(word, right, score_cutoff=1) > 1:
        return False
    return len(right) > _SHORT or sorted(right) == sorted(word)


def _likeliest(word: str, near: list[str]) -> str:
    """Return the one of some words that `word` is a slip of, `word` itself where two are as likely."""
    for likely in (
        near,
        [right for right in near if right in SAFETY_WORDS],
        [right for right in near if sorted(right) == sorted(word)],
        [right for right in near if set(right) == set(word)],
    ):
        if len(likely) == 1:
            return likely[0]
    return word
