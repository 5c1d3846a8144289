"""`python -m tests.corpus.english`: writes the list of common English words that no slip is among."""

import gzip
import re
from pathlib import Path

from spellchecker import SpellChecker

import domain.reading
from domain.reading.english import WORDS_FILE

_PLAIN = re.compile(r"[a-z]{4,15}")


def common_words() -> list[str]:
    """Return the words of the library's list that are met with more often than its rarest, in order."""
    counted = SpellChecker(language="en", distance=1).word_frequency.dictionary
    rarest = min(counted.values())
    return sorted(word for word, times in counted.items() if times > rarest and _PLAIN.fullmatch(word))


def main() -> None:
    """Write the list beside the module that reads it; the same words make the same file."""
    packed = gzip.compress("\n".join(common_words()).encode("ascii"), mtime=0)
    Path(domain.reading.__path__[0], WORDS_FILE).write_bytes(packed)


if __name__ == "__main__":
    main()
