"""Finding the one thing that a name means: by the whole name, or by words of it."""

import unicodedata
from collections.abc import Sequence
from typing import TypeVar

Named = TypeVar("Named")


def plain(name: str) -> str:
    """Return a name as it is compared: without case, accents and needless spaces."""
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", name) if not unicodedata.combining(sign))
    return " ".join(bare.casefold().split())


def the_one_named(name: str, named: Sequence[tuple[str, Named]]) -> Named | None:
    """Return what bears `name`, or else the only thing with all its words in the name, or None."""
    wanted = plain(name)
    exact = [thing for known, thing in named if plain(known) == wanted]
    words = set(wanted.split())
    close = [thing for known, thing in named if words and words <= set(plain(known).split())]
    found = exact or close
    return found[0] if len(found) == 1 else None
