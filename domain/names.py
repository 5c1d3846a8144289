"""How names of exercises, workouts and equipment are compared: the writing of a name does not matter.

Only spelling lives here; which names there are is known elsewhere.
"""

import unicodedata
from functools import lru_cache

from domain.expressions import Expression

_WORD = Expression(r"[^\W_]+")
_APOSTROPHES = dict.fromkeys(map(ord, "'`\N{LEFT SINGLE QUOTATION MARK}\N{RIGHT SINGLE QUOTATION MARK}"))

KEPT = 10_000
"""For how many names, those asked about last, it is kept what they come to: a decision asks a hundred times
about a dozen."""


def name_key(name: str) -> str:
    """Return what stays of a name when its writing does not matter: letters and digits, each word singular.

    Capitals, accents, hyphens, spaces, apostrophes and a plural "s" are gone: "Push-ups" gives "pushup".
    """
    return "".join(name_words(name))


@lru_cache(maxsize=KEPT)
def name_words(name: str) -> tuple[str, ...]:
    """Return the words of a name in lower case, without accents, each in the singular."""
    plain = name.casefold().translate(_APOSTROPHES).replace("&", " and ")
    if not plain.isascii():
        plain = "".join(c for c in unicodedata.normalize("NFKD", plain) if not unicodedata.combining(c))
    return tuple(_singular(word) for word in _WORD.findall(plain))


def plural_of(name: str) -> str:
    """Return the English plural of a name, by its last word."""
    if name.endswith(("s", "x", "z", "ch", "sh")):
        return name + "es"
    if name.endswith("y") and name[-2:-1] not in "aeiou":
        return name[:-1] + "ies"
    return name + "s"


def _singular(word: str) -> str:
    """Return the singular by the English rule; a word like "triceps" loses its "s" too."""
    if not word.endswith("s") or len(word) < 3 or word.endswith("ss"):
        return word
    if word.endswith(("sses", "xes", "zes", "ches", "shes")):
        return word[:-2]
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    return word[:-1]
