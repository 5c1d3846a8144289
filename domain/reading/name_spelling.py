"""The stems that a message's words stand for: short forms, initials, words written as one, typing errors.

A misspelt word is mended to a near one of the plan first, then of the catalogue, never where it is an
ordinary word. Which exercise the stems mean is decided elsewhere.
"""

from collections.abc import Iterable

from rapidfuzz import fuzz, process
from rapidfuzz.distance import OSA

from domain.reading.body_words import ACHE, HURT
from domain.reading.english import is_english
from domain.reading.exercise_words import (
    COMMON,
    FUNCTION_WORDS,
    JOINED,
    NEVER_IN_A_NAME,
    NO_INITIALS,
    SHORT_FORMS,
)
from domain.reading.name_stems import Stems, joined, stem_of, stems_of, vocabulary, with_parts
from domain.reading.words import FILLERS, words_of

_TELLS_OF_PAIN = HURT | ACHE
"""Words that are no slip for one of a name, however near: "my shoulder pinches" is no shoulder press."""
_SHORT = 5
"""So many letters has a word whose slips are only looked for right before a set."""
_LEAST_SLIPPED = 4
_SHORTEST_BEGINNING = 3
_MOST_SLIPS = 4096
_NO_SLIPS = (
    COMMON
    | FILLERS
    | FUNCTION_WORDS
    | words_of(
        """tips hips lips sips zips rips laps bows cows tows lows vows wows rods robs road rots raws crow grow
        brow prow slow snow flow blow glow know show down mown drip grip trip ship skip whip clip flip slip
        chip quip snip dish digs disc disk dims dirt duds plan plane plant flies fries cars turf curb cure"""
    )
)
"""Good words that are none for one of a name, however near."""
_CUTOFF = 80.0
_CUTOFF_ELSEWHERE = 86.0
_MARGIN = 4.0

_PAIRS: dict[str, Stems] = {}
for _first, _second in JOINED:
    _PAIRS.setdefault(_first + _second, joined((_first, _second)))


class Spelling:
    """The words of one plan's names as they may be written. Built once for each plan."""

    def __init__(self, plan: tuple[str, ...], stems: Iterable[str]) -> None:
        self._initials = _initials_of(plan)
        self.words = with_parts(stems)
        """The stems of all names of the plan, and their parts."""
        self._word_cache: dict[str, Stems] = {}
        self._short = {s for name in plan for s in stems_of(name) if 3 <= len(s) <= _SHORT}
        self._own = {s for name in plan for s in stems_of(name)}
        self._slips: dict[str, Stems] = {}
        self._forms: dict[str, Stems] = {
            **{form: (stem,) for stem in self.words if len(stem) > 2 for form in (stem, stem + "s")},
            **{
                form: stems
                for pair, stems in _PAIRS.items()
                if self.words.issuperset(stems)
                for form in (pair, pair + "s")
            },
            **{
                form: stems
                for form, stems in SHORT_FORMS.items()
                if len(form) > 3 and self.words.issuperset(stems)
            },
        }

    def stems(self, word: str) -> Stems:
        """Return the stems that a word of the message stands for; none where it belongs to no name."""
        known = self._word_cache.get(word)
        if known is None:
            if len(self._word_cache) > 8192:
                self._word_cache.clear()
            known = self._word_cache[word] = self._mended(word)
        return known

    def short_typo(self, word: str) -> Stems:
        """Return the word of the plan that a short misspelt word beside another word of a name stands for."""
        if word in COMMON:
            return ()
        if len(consonants := self._without_vowels(word)) == 1:
            return tuple(consonants)
        if len(word) != 4:
            return ()
        return _closest(word, self.words, _CUTOFF_ELSEWHERE)

    def slip(self, word: str) -> Stems:
        """Return the short word of the plan that a word with one slip stands for, right before a set: "riws
        60x9"."""
        known = self._slips.get(word)
        if known is None:
            near = {} if len(word) < _LEAST_SLIPPED or word in _NO_SLIPS else self._near(word)
            near = near or self._without_vowels(word)
            if len(self._slips) > _MOST_SLIPS:
                self._slips.clear()
            known = self._slips[word] = tuple(near) if len(near) == 1 else ()
        return known

    def beginning(self, word: str, *, alone: bool = False) -> Stems:
        """Return the only word of the plan's own names that begins so, "comp squat"; of one that stands
        `alone` it must not be another word as well."""
        if len(word) < _SHORTEST_BEGINNING or word in _NO_SLIPS | NO_INITIALS or (alone and is_english(word)):
            return ()
        fits = [stem for stem in self._own if len(stem) > len(word) and stem.startswith(word)]
        return tuple(fits) if len(fits) == 1 else ()

    def _near(self, word: str) -> dict[str, None]:
        """Return the short words of the plan that are one slip away from a word."""
        return {
            short: None
            for short in self._short
            if any(OSA.distance(word, form, score_cutoff=1) == 1 for form in (short, short + "s"))
        }

    def _without_vowels(self, word: str) -> dict[str, None]:
        """Return the words of the plan that are written without their vowels: "sqts 100x5", "rws 65x9"."""
        if len(word) < _SHORTEST_WITHOUT or not _VOWELS.isdisjoint(word) or word in _NO_SLIPS | NO_INITIALS:
            return {}
        return {known: None for known in self.words if word in {_consonants(known), _consonants(known + "s")}}

    def _mended(self, word: str) -> Stems:
        if word in NEVER_IN_A_NAME:
            return ()
        if word in SHORT_FORMS:
            return SHORT_FORMS[word]
        stem = stem_of(word)
        if stem in SHORT_FORMS:
            return SHORT_FORMS[stem]
        if len(word) > _SHORTEST_WITHOUT and (once := _single(word)) != word and once in SHORT_FORMS:
            return SHORT_FORMS[once]
        if stem in self.words or stem in vocabulary():
            return (stem,)
        parts = _PAIRS.get(stem) or self._initials.get(word)
        if parts:
            return parts
        if len(word) < 4 or word in COMMON or stem in COMMON or word in _TELLS_OF_PAIN:
            return ()
        single = _single(stem)
        doubled = {w for w in (*self.words, *vocabulary()) if _single(w) == single and len(single) > 2}
        if len(doubled) == 1:
            return (doubled.pop(),)
        slip = self._one_slip(word)
        if slip or len(stem) < 5:
            return slip
        split = self._split(stem) or self._split(word)
        if split:
            return split
        return _closest(stem, self.words, _CUTOFF) or _closest(stem, vocabulary(), _CUTOFF_ELSEWHERE)

    def _one_slip(self, word: str) -> Stems:
        """Return what is written in the plan, or in a short form of it, with one slip: "bech", "raiess"."""
        likely = {
            stems
            for form, stems in self._forms.items()
            if abs(len(form) - len(word)) <= 1
            and OSA.distance(word, form, score_cutoff=1) == 1
            and (form[0] == word[0] or sorted(form) == sorted(word))
        }
        return likely.pop() if len(likely) == 1 and not is_english(word) else ()

    def _split(self, stem: str) -> Stems:
        """Return the two words of a name that are written as one: legpress, benchpres."""
        for at in range(3, len(stem) - 2):
            first, second = stem[:at], stem[at:]
            if first in self.words or first in vocabulary():
                if second in self.words or second in vocabulary():
                    return (first, second)
                mended = _closest(second, self.words, _CUTOFF) if len(second) >= 4 and len(first) >= 4 else ()
                if mended:
                    return (first, *mended)
        return ()


_VOWELS = frozenset("aeiou")
_SHORTEST_WITHOUT = 3


def _consonants(word: str) -> str:
    return word[:1] + "".join(letter for letter in word[1:] if letter not in _VOWELS)


def _initials_of(plan: Iterable[str]) -> dict[str, Stems]:
    """Return the first letters that stand for one exercise of the plan alone: "ht" for the hip thrust."""
    found: dict[str, Stems] = {}
    shared: set[str] = set()
    for name in plan:
        letters = "".join(word[0] for word in name.lower().replace("-", " ").split())
        if len(letters) < 2 or letters in NO_INITIALS or letters in COMMON | FILLERS | FUNCTION_WORDS:
            continue
        if letters in found:
            shared.add(letters)
        found[letters] = stems_of(name)
    return {letters: stems for letters, stems in found.items() if letters not in shared}


def _single(word: str) -> str:
    """Return a word with each doubled letter single."""
    return "".join(c for i, c in enumerate(word) if i == 0 or word[i - 1] != c)


def _closest(stem: str, words: frozenset[str], cutoff: float) -> Stems:
    """Return the word of a name that a misspelt one stands for: near enough, and clearly nearer than any
    other."""
    near = [w for w in words if abs(len(w) - len(stem)) <= 2 and len(w) >= 4 and w[0] == stem[0]]
    if not near:
        return ()
    best = process.extract(stem, near, scorer=fuzz.ratio, score_cutoff=cutoff, limit=2)
    if not best or (len(best) > 1 and best[0][1] - best[1][1] < _MARGIN):
        return ()
    return (best[0][0],)
