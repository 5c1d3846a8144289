"""`sheet`: what a coach's sheet is understood to mean, or all of its faults, printed for a person."""

import sys
from pathlib import Path

from bot.markup import plain
from bot.textfile import read_document
from bot.wording.programme import programme_words
from bot.wording.sheet import fault_parts
from domain.sheet import Fault, read_sheet
from domain.values import facts_of

_MOST_FAULTS = 40
"""More than anyone mends at once; the rest is only counted."""


def sheet_command(path: Path) -> int:
    """Print what the sheet at `path` means, or its faults; return the exit status.

    The faults, like the one line for a file that cannot be read, go to standard error.
    """
    try:
        content = path.read_bytes()
    except OSError as error:
        print(f"kilopost: {path}: {error.strerror or error}", file=sys.stderr)
        return 1
    document = read_document(path.name, content)
    if document.text is None:
        why = "it is far larger than any sheet" if document.fault == "too large" else "it is not plain text"
        print(f"kilopost: {path}: {why}; a sheet is a plain text file", file=sys.stderr)
        return 1
    result = read_sheet(document.text)
    if result.programme is not None:
        facts = {"programme": facts_of(result.programme), "notes": [facts_of(note) for note in result.notes]}
        print(plain(programme_words(facts)))
        return 0
    for fault in result.faults[:_MOST_FAULTS]:
        print("\n".join(fault_lines(fault)), file=sys.stderr)
    count = len(result.faults)
    more = f", {count - _MOST_FAULTS} of them not shown" if count > _MOST_FAULTS else ""
    print(f"{path}: {count} {'fault' if count == 1 else 'faults'}{more}", file=sys.stderr)
    return 1


def fault_lines(fault: Fault) -> list[str]:
    """Return a fault as lines: the line as written, a mark under the part at fault, what would be right."""
    wrong, right = (plain(words) for words in fault_parts(fault))
    if fault.line_number is None:
        return [f"The sheet: {wrong}.", f"    {right}", ""]
    shown = fault.line.expandtabs(4).rstrip()
    margin = f"{fault.line_number:>4} | "
    start = shown.casefold().find(fault.part.casefold()) if fault.part else -1
    if start < 0:
        start, length = len(shown) - len(shown.lstrip()), len(shown.strip())
    else:
        length = len(fault.part)
    return [
        f"{margin}{shown}",
        f"{' ' * (len(margin) + start)}{'^' * max(1, length)}",
        f"    {wrong}. {right}",
        "",
    ]
