"""Words about what is sent with a message: files, and what became of them."""

import re
import unicodedata
from typing import assert_never

from bot.markup import bold, escape, italic
from domain.parts import File

MISSING = italic("The file could not be made. Please ask again.")


def file_words(part: File) -> str:
    """Say what a file holds."""
    match part.what:
        case "journal table":
            return f"The journal of {bold(part.client)} as a table, one row a set. Any spreadsheet opens it."
        case "journal pages":
            return f"The journal of {bold(part.client)} as pages to read or print (A4)."
        case "journal data":
            return (
                f"The journal of {bold(part.client)} as data for machines (JSON): every workout and set, "
                "what was set aside, what was brought to the coach. I can take such a file in again."
            )
        case "journal reading":
            return "Attached: each row, what I make of it, and why not."
        case "everything":
            return (
                "Here is everything that I keep about you, as a file: your journal as a table, all messages, "
                "and the rest. «read me.txt» in it says what is what."
            )
        case _:
            assert_never(part.what)


def withheld(part: File) -> str:
    """Say that a file is no longer for whoever asked for it."""
    return italic(f"What there is of {escape(part.client)} can no longer be sent to you.")


_ACCENTS = ("\u0300", "\u036f")
"""The first and the last of the accents that stand by themselves."""
_LONGEST = 60
"""In letters: of no script more than 240 bytes with the ending, which any system takes."""


def file_name(*words: str, ending: str) -> str:
    """Return a name for a file that any system takes: small letters and digits, joined by hyphens.

    Latin letters lose their accents; those of other scripts stay, as nothing else would be left of a name.
    """
    plain = unicodedata.normalize("NFKD", "-".join(words).lower())
    kept = (each if unicodedata.category(each)[0] in "LNM" else "-" for each in plain)
    whole = "".join(each for each in kept if not _ACCENTS[0] <= each <= _ACCENTS[1])
    name = re.sub(r"-+", "-", unicodedata.normalize("NFC", whole))[:_LONGEST].strip("-")
    return f"{name or 'file'}.{ending}"
