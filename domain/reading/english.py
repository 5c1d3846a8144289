"""The commoner words of English, which are no slips of others.

The list is the one of the library pyspellchecker 0.9.1 (MIT licence), counted there in subtitles of films:
its words of four to fifteen letters that are met with more often than its rarest ones. It stands here by
itself since the library takes a third of a second and 40 MB to read the counts as well, which nothing here
asks for. `python -m tests.corpus.english` writes it anew.
"""

import gzip
from functools import lru_cache
from importlib.resources import files

WORDS_FILE = "english.txt.gz"


def is_english(word: str) -> bool:
    """Return whether a word in lower case, of four to fifteen letters, is common English."""
    return word in _words()


@lru_cache(maxsize=1)
def _words() -> frozenset[str]:
    packed = files("domain.reading").joinpath(WORDS_FILE).read_bytes()
    return frozenset(gzip.decompress(packed).decode("ascii").split())
