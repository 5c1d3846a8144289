"""Which exercise is meant: names in the message against the plan first, then the client's own, then the
catalogue.

An exact name beats the client's own name, and that beats a partial one. A name that fits two of the plan
equally
is returned with both. Typing errors are mended word by word, never across an ordinary word.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, NamedTuple

from rapidfuzz import fuzz, process

from domain.exercises import catalogue, lookup
from domain.names import name_words
from domain.reading.exercise_words import (
    ALONE,
    COMMON,
    DISTINCT_IMPLEMENTS,
    FUNCTION_WORDS,
    GENERIC,
    HARMLESS,
    IMPLEMENTS,
    JOINED,
    LOAD_WORDS,
    NEVER_IN_A_NAME,
    NO_INITIALS,
    SHORT_FORMS,
    WEAK,
)
from domain.reading.message import Message
from domain.reading.tokens import WORD
from domain.reading.words import FILLERS

_LONGEST = 6
_TELLS_NOTHING = HARMLESS | GENERIC | IMPLEMENTS | COMMON | FILLERS
"""Words before a name that do not make it another exercise's."""
_CUTOFF = 80.0
_CUTOFF_ELSEWHERE = 86.0
_MARGIN = 4.0

Stems = tuple[str, ...]


class Named(NamedTuple):
    """An exercise named in the message, from token `start` to before `end`.

    `names` are the exercises it can be: one, or several that fit equally, or none that is known. `exact`
    tells
    a whole name or short form. `weak` tells a word that names an exercise only beside a number.
    """

    start: int
    end: int
    names: tuple[str, ...]
    exact: bool = False
    weak: bool = False


@dataclass(frozen=True, slots=True)
class _Known:
    """An exercise of the plan: its name, the stems of all its names, the core of its own name."""

    name: str
    stems: tuple[frozenset[str], ...]
    core: frozenset[str]
    head: str


def joined(stems: Iterable[str]) -> Stems:
    """Return stems with those joined that are also written as one word: pull, up → pullup."""
    out: list[str] = []
    for stem in stems:
        if out and (out[-1], stem) in JOINED:
            out[-1] = out[-1] if out[-1].endswith(stem) else out[-1] + stem
        else:
            out.append(stem)
    return tuple(out)


@lru_cache(maxsize=4096)
def stems_of(name: str) -> Stems:
    """Return the words of an exercise's name as they are compared."""
    plain = [s for word in name_words(name) for s in SHORT_FORMS.get(word, (_SINGULAR.get(word, word),))]
    return joined(plain)


_SINGULAR = {"calve": "calf", "tricep": "tricep", "flye": "fly"}


@lru_cache(maxsize=1)
def _catalogue_names() -> dict[Stems, str]:
    names: dict[Stems, str] = {}
    for exercise in catalogue():
        for name in (exercise.name, *exercise.names):
            names.setdefault(stems_of(name), exercise.name)
    for exercise in catalogue():
        names[stems_of(exercise.name)] = exercise.name
    return names


@lru_cache(maxsize=1)
def _vocabulary() -> frozenset[str]:
    return _with_parts(stem for stems in _catalogue_names() for stem in stems)


def _with_parts(stems: Iterable[str]) -> frozenset[str]:
    """Return stems with the parts of joined ones, and without the small words between them."""
    whole = {stem for stem in stems if len(stem) > 1} - FUNCTION_WORDS
    parts = {part for pair in JOINED if "".join(pair) in whole or pair[0] in whole for part in pair}
    return frozenset(whole | parts)


@lru_cache(maxsize=8192)
def _stem(word: str) -> str:
    singular = name_words(word)
    return _SINGULAR.get(singular[0], singular[0]) if singular else word


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


class Names:
    """The names of one plan and one client, ready to be looked for. Built once for each plan."""

    def __init__(self, plan: tuple[str, ...], own: tuple[tuple[str, str], ...]) -> None:
        self._own = {tuple(name_words(word)): exercise for word, exercise in own}
        self._own_first = {words[0] for words in self._own if words}
        self._known: list[_Known] = []
        self._exact: dict[Stems, list[str]] = {}
        self._alias: dict[Stems, list[str]] = {}
        self._core: dict[frozenset[str], list[str]] = {}
        for name in plan:
            stems = stems_of(name)
            entry = lookup(name)
            others = [stems_of(n) for n in (entry.name, *entry.names)] if entry else []
            core = [s for s in stems if s not in WEAK] or list(stems)
            known = _Known(
                name, tuple(frozenset(s) for s in (stems, *others)), frozenset(core), core[-1] if core else ""
            )
            self._known.append(known)
            _append(self._exact, stems, name)
            for other in others:
                _append(self._alias, other, name)
            _append(self._core, known.core, name)
            for other in others:
                _append(self._core, frozenset(s for s in other if s not in WEAK), name)
        self._initials = _initials_of(plan)
        self._words = _with_parts(s for k in self._known for stems in k.stems for s in stems)
        self._cache: dict[Stems, tuple[tuple[str, ...], bool] | None] = {}
        self._word_cache: dict[str, Stems] = {}

    def find(self, message: Message) -> list[Named]:
        """Return the exercises named in the message, in order."""
        found: list[Named] = []
        tokens = message.tokens
        count = len(tokens)
        at = 0
        while at < count:
            token = tokens[at]
            if token.kind != WORD or (message.taken[at] and message.taken[at] != "exercise"):
                at += 1
                continue
            own = self._own_at(message, at) if token.text in self._own_first or self._own else None
            if own is not None and not self._is_exact(message, at, own[0]):
                found.append(Named(at, own[0], (own[1],), exact=True))
                at = own[0]
                continue
            stems = self._word_stems(token.text)
            if not stems:
                at += 1
                continue
            run: list[tuple[str, int]] = []
            end = at
            while end < count and tokens[end].kind == WORD and not message.taken[end] and len(run) < 12:
                more = self._word_stems(tokens[end].text) or (
                    self._short_typo(tokens[end].text) if end > at else ()
                )
                if not more or (end > at and self._is_step(message, end)):
                    break
                run.extend((stem, end) for stem in more)
                end += 1
            hits = self._in_run(run)
            if not hits and end == at + 1 and _stands_for_a_name(message, at):
                hits = [Named(at, end, self._told_by_a_part(run[0][0]), weak=True)]
            found.extend(hits)
            at = max(end, at + 1)
        return found

    def _told_by_a_part(self, stem: str) -> tuple[str, ...]:
        """Return the one exercise of the plan that an implement, or the beginning of a word, tells; none
        otherwise.

        Such a word, "band 6 for 18", stands for a name only at the beginning of a clause, right before a
        number.
        """
        fits = [k.name for k in self._known if stem in k.stems[0]] or [
            k.name for k in self._known if len(stem) >= 4 and any(s.startswith(stem) for s in k.stems[0])
        ]
        return tuple(fits) if len(fits) == 1 else ()

    def _short_typo(self, word: str) -> Stems:
        """Return the word of the plan that a short misspelt word beside another word of a name stands for."""
        if len(word) != 4 or word in COMMON:
            return ()
        return _closest(word, self._words, _CUTOFF_ELSEWHERE)

    def _is_step(self, message: Message, at: int) -> bool:
        """Return whether "up" or "down" before a number is a step of load, and not the end of a name."""
        if message.text(at) not in {"up", "down"} or message.value(at + 1) is None:
            return False
        before = message.text(at - 1)
        if before in {"press", "step"}:
            return before + message.text(at) not in self._words
        return before not in {"pull", "push", "chin", "sit"}

    def _own_at(self, message: Message, at: int) -> tuple[int, str] | None:
        for length in (4, 3, 2, 1):
            words = tuple(_stem(t.text) for t in message.tokens[at : at + length] if t.kind == WORD)
            if len(words) == length and words in self._own:
                return at + length, self._own[words]
        return None

    def _is_exact(self, message: Message, at: int, end: int) -> bool:
        """Return whether a whole name of the plan begins at `at` and reaches at least as far as `end`."""
        for stop in range(min(len(message.tokens), at + _LONGEST), end - 1, -1):
            if joined(s for t in message.tokens[at:stop] for s in self._word_stems(t.text)) in self._exact:
                return True
        return False

    def _in_run(self, run: list[tuple[str, int]]) -> list[Named]:
        """Return the names in a run of words that all belong to names, the longest first from the left."""
        found: list[Named] = []
        at = 0
        left_over: list[str] = []
        while at < len(run):
            for length in range(min(_LONGEST + 2, len(run) - at), 0, -1):
                window = joined(stem for stem, _ in run[at : at + length])
                hit = self._meaning(window)
                if hit is None:
                    continue
                start, end = run[at][1], run[at + length - 1][1] + 1
                if at + length < len(run) and run[at + length][1] == end - 1:
                    continue
                names, exact = hit
                if left_over and not all(s in _TELLS_NOTHING for s in left_over):
                    names = names if exact and len(window) > 1 else ()
                weak = len(window) == 1 and (window[0] in GENERIC or window[0] in IMPLEMENTS)
                before = found[-1] if found else None
                if before is not None and before.end == start and before.end - before.start == 1:
                    # Two names with nothing between them are rather one that is not known: "sumo squat".
                    start, names = found.pop().start, names if names == before.names else ()
                    weak = weak and before.weak
                found.append(Named(start, end, names, exact=exact, weak=weak))
                left_over = []
                at += length
                break
            else:
                left_over.append(run[at][0])
                at += 1
        return found

    def _meaning(self, window: Stems) -> tuple[tuple[str, ...], bool] | None:
        if window in self._cache:
            return self._cache[window]
        if len(self._cache) > 4096:
            self._cache.clear()
        hit = self._look_up(window)
        self._cache[window] = hit
        return hit

    def _look_up(self, window: Stems) -> tuple[tuple[str, ...], bool] | None:
        """Return what a run of stems can mean, and whether it is a whole name; None where it means
        nothing."""
        if len(window) == 1 and window[0] in FUNCTION_WORDS:
            return None
        if len(window) == 1 and window[0] in IMPLEMENTS:
            alone = [
                k.name for k in self._known if window[0] in DISTINCT_IMPLEMENTS and window[0] in k.stems[0]
            ]
            return (tuple(alone), False) if len(alone) == 1 else None
        for table in (self._exact, self._alias):
            if window in table:
                return tuple(table[window] if table is self._exact else self._alias_fits(window)), True
        stripped = tuple(s for s in window if s not in LOAD_WORDS)
        if not stripped:
            return None
        core = frozenset(s for s in window if s not in WEAK) or frozenset(stripped)
        if core in self._core:
            hits = dict.fromkeys(self._core[core])
            if not any(k.core == core for k in self._known):
                # Only another name of the exercise is whole: its words may fit others too.
                hits |= dict.fromkeys(k.name for k in self._known if core <= k.stems[0])
            return tuple(hits), True
        one_arm = tuple(s for s in stripped if s not in {"one", "single", "arm"}) if "arm" in stripped else ()
        if one_arm:
            known = [k for k in self._known if k.head == one_arm[-1] and set(one_arm) <= k.stems[0]]
            if len(known) == 1 and not known[0].stems[0] & {"barbell", "machine"}:
                return (known[0].name,), False
        elsewhere = _catalogue_names().get(window)
        said = frozenset(stripped)
        fits = [k for k in self._known if said <= k.stems[0]]
        if not fits:
            fits = [k for k in self._known if any(said <= stems for stems in k.stems)]
        if not fits and len(core) < len(said):
            fits = [k for k in self._known if any(core <= stems for stems in k.stems)]
        by_head = [k for k in fits if k.head == stripped[-1]]
        if elsewhere is not None:
            if by_head:
                return tuple(k.name for k in by_head), False
            if fits and len(window) == 1:
                partner = ALONE.get(window[0])
                usual = [k for k in fits if partner is None or partner in k.core]
                return tuple(k.name for k in usual) or (*(k.name for k in fits), elsewhere), False
            return (elsewhere,), True
        if len(fits) > 1 and len(by_head) == 1:
            return (by_head[0].name,), False
        if fits:
            return tuple(k.name for k in fits), False
        bare = tuple(s for s in window if s not in HARMLESS)
        if bare and bare != window:
            return self._look_up(bare)
        return None

    def _alias_fits(self, window: Stems) -> list[str]:
        """Return what a short form means: a lone word that only describes ("incline") may fit others as
        well."""
        names = self._alias[window]
        if len(window) > 1 or window[0] in ALONE or any(k.head == window[0] for k in self._known):
            return names
        return [
            k.name for k in self._known if k.name in names or any(window[0] in stems for stems in k.stems)
        ]

    def _word_stems(self, word: str) -> Stems:
        """Return the stems that a word of the message stands for; none where it belongs to no name."""
        known = self._word_cache.get(word)
        if known is None:
            if len(self._word_cache) > 8192:
                self._word_cache.clear()
            known = self._word_cache[word] = self._mended(word)
        return known

    def _mended(self, word: str) -> Stems:
        if word in NEVER_IN_A_NAME:
            return ()
        if word in SHORT_FORMS:
            return SHORT_FORMS[word]
        stem = _stem(word)
        if stem in SHORT_FORMS:
            return SHORT_FORMS[stem]
        if stem in self._words or stem in _vocabulary():
            return (stem,)
        parts = _PAIRS.get(stem) or self._initials.get(word)
        if parts:
            return parts
        if len(word) < 4 or word in COMMON or stem in COMMON:
            return ()
        single = _single(stem)
        doubled = {w for w in (*self._words, *_vocabulary()) if _single(w) == single and len(single) > 2}
        if len(doubled) == 1:
            return (doubled.pop(),)
        if len(stem) < 5:
            return ()
        split = self._split(stem) or self._split(word)
        if split:
            return split
        return _closest(stem, self._words, _CUTOFF) or _closest(stem, _vocabulary(), _CUTOFF_ELSEWHERE)

    def _split(self, stem: str) -> Stems:
        """Return the two words of a name that are written as one: legpress, benchpres."""
        for at in range(3, len(stem) - 2):
            first, second = stem[:at], stem[at:]
            if first in self._words or first in _vocabulary():
                if second in self._words or second in _vocabulary():
                    return (first, second)
                mended = (
                    _closest(second, self._words, _CUTOFF) if len(second) >= 4 and len(first) >= 4 else ()
                )
                if mended:
                    return (first, *mended)
        return ()


def _single(word: str) -> str:
    """Return a word with each doubled letter single."""
    return "".join(c for i, c in enumerate(word) if i == 0 or word[i - 1] != c)


_NAMELESS = LOAD_WORDS | FUNCTION_WORDS | ((COMMON | FILLERS) - GENERIC)


def _stands_for_a_name(message: Message, at: int) -> bool:
    """Return whether a word that names no exercise by itself stands where a name would: ", band 6 for 18"."""
    after = at + 2 if message.text(at + 1) in {":", "-"} else at + 1
    return (
        message.text(at - 1) in {"", ",", ".", ";", "then", "\n"}
        and message.value(after) is not None
        and message.text(at) not in _NAMELESS
    )


_PAIRS: dict[str, Stems] = {}
for _first, _second in JOINED:
    _PAIRS.setdefault(_first + _second, joined((_first, _second)))


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


def _append(table: dict[Any, list[str]], key: object, name: str) -> None:
    names = table.setdefault(key, [])
    if name not in names:
        names.append(name)


@lru_cache(maxsize=512)
def names_for(plan: tuple[str, ...], own: tuple[tuple[str, str], ...]) -> Names:
    """Return the names of a plan and a client."""
    return Names(plan, own)
