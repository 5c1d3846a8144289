"""Files and words from outside, made fit to be kept: what a file says, and text that any database takes.

Every platform uses this, so that the same file means the same wherever it came from. How a sheet reads is
told in `domain.sheet`, not here.
"""

import codecs
from typing import Final

from domain.expressions import Expression
from domain.incoming import Document

LIMIT_BYTES: Final = 256 * 1024
"""Far beyond any sheet, and small enough to be kept whole."""

LIMIT_BYTES_OF_JOURNAL: Final = 4 * 1024 * 1024
"""Enough for twenty thousand sets with what is written beside them. The house's own choice."""

_JOURNALS: Final = (".csv", ".tsv", ".json")

_CONTROL: Final = Expression(r"[\x00-\x08\x0e-\x1f\x7f]")
"""What no text holds, and nearly every other file does."""

_WIDE_MARKS: Final = (codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)


def read_document(name: str, content: bytes) -> Document:
    """Return what a file says, or the fault that it has."""
    name = storable(name)
    if len(content) > limit_of(name):
        return Document(name=name, fault="too large")
    text = decode(content)
    if text is None:
        return Document(name=name, fault="not text")
    return Document(name=name, text=text)


def limit_of(name: str) -> int:
    """Return how many bytes a file of that name may have: one that can be a journal, more than a sheet."""
    return LIMIT_BYTES_OF_JOURNAL if name.casefold().endswith(_JOURNALS) else LIMIT_BYTES


def is_named_as_text(name: str) -> bool:
    """Return whether a file is plain text by its name."""
    return name.casefold().endswith((*_JOURNALS, ".txt"))


def storable(text: str) -> str:
    """Return `text` with what no database keeps (NUL, half a character) replaced by the mark for that."""
    return "".join("\ufffd" if char == "\0" or "\ud800" <= char <= "\udfff" else char for char in text)


def decode(content: bytes) -> str | None:
    """Return the text of UTF-8, UTF-16 with its mark, or the one-byte encoding of older Windows editors."""
    encodings = ("utf-16",) if content.startswith(_WIDE_MARKS) else ("utf-8-sig", "cp1252")
    for encoding in encodings:
        try:
            text = content.decode(encoding)
        except UnicodeDecodeError:
            continue
        return None if _CONTROL.search(text) else text
    return None
