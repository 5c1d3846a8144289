"""Finding the one thing that a name means: by the whole name, or by words of it."""

import unicodedata
from collections.abc import Sequence
from typing import TypeVar

from rapidfuzz import fuzz

Named = TypeVar("Named")


def plain(name: str) -> str:
    """Return a name as it is compared: without case, accents and needless spaces."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", name) if not unicodedata.combining(sign))
    return " ".join(bare.casefold().split())


ALIKE, APART = 80, 8
"""How alike, of 100, a name with a slip must be, and by how much more than any other. The house's own
choice."""


def the_one_like(name: str, named: Sequence[tuple[str, Named]]) -> Named | None:
    """Return what bears a name nearly like this one, whole or in its words, or None where it could be two."""
    wanted = plain(name)
    if len(wanted) < len("four"):
        return None
    near = sorted(
        ((_alikeness(wanted, plain(known)), at) for at, (known, _) in enumerate(named)),
        key=lambda each: (-each[0], each[1]),
    )
    if not near or near[0][0] < ALIKE or (near[1:] and near[0][0] - near[1][0] < APART):
        return None
    return named[near[0][1]][1]


def _alikeness(wanted: str, known: str) -> float:
    """Return how alike two names are, of 100: as a whole, or as words that only this name has."""
    words = known.split() or [""]
    each = (max(fuzz.ratio(word, other) for other in words) for word in wanted.split())
    return max(fuzz.token_sort_ratio(wanted, known), min(each))


def the_one_named(name: str, named: Sequence[tuple[str, Named]]) -> Named | None:
    """Return what bears `name`, or else the only thing with all its words in the name, or None."""
    wanted = plain(name)
    exact = [thing for known, thing in named if plain(known) == wanted]
    words = set(wanted.split())
    close = [thing for known, thing in named if words and words <= set(plain(known).split())]
    found = exact or close
    return found[0] if len(found) == 1 else None
