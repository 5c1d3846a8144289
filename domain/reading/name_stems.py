"""The words of exercises' names as they are compared, and those of the catalogue.

Which of them a message's words stand for, and which exercise they mean, is decided elsewhere.
"""

from collections.abc import Iterable
from functools import lru_cache

from domain.exercises import catalogue
from domain.names import name_words
from domain.reading.exercise_words import (
    FUNCTION_WORDS,
    IMPLEMENTS,
    JOINED,
    SHORT_FORMS,
    WEAK,
)

Stems = tuple[str, ...]


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
def catalogue_names() -> dict[Stems, str]:
    """Return the exercise of the catalogue that each of its names means; its own name goes before others."""
    names: dict[Stems, str] = {}
    for exercise in catalogue():
        for name in (exercise.name, *exercise.names):
            names.setdefault(stems_of(name), exercise.name)
    for exercise in catalogue():
        names[stems_of(exercise.name)] = exercise.name
    return names


@lru_cache(maxsize=1)
def movements() -> frozenset[str]:
    """Return the last words of the catalogue's names that tell a movement by themselves: row, curl."""
    heads = {stems_of(exercise.name)[-1] for exercise in catalogue()}
    return frozenset(heads - FUNCTION_WORDS - IMPLEMENTS - WEAK)


@lru_cache(maxsize=1)
def vocabulary() -> frozenset[str]:
    """Return the stems of all names of the catalogue, and their parts."""
    return with_parts(stem for stems in catalogue_names() for stem in stems)


def with_parts(stems: Iterable[str]) -> frozenset[str]:
    """Return stems with the parts of joined ones, and without the small words between them."""
    whole = {stem for stem in stems if len(stem) > 1} - FUNCTION_WORDS
    parts = {part for pair in JOINED if "".join(pair) in whole or pair[0] in whole for part in pair}
    return frozenset(whole | parts)


@lru_cache(maxsize=8192)
def stem_of(word: str) -> str:
    """Return one word as it is compared: in the singular, and in the usual spelling."""
    singular = name_words(word)
    return _SINGULAR.get(singular[0], singular[0]) if singular else word
