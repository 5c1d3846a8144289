"""A journal kept elsewhere, a table in a text file: read line by line, each broken line named and left out.

Columns `client,date,exercise,load,unit,reps,seconds` in any order, others are passed over; what comes after
`date` may be empty, save `exercise`. Commas part the cells, or semicolons or tabs where the first line has
those: then a load may have a comma before its decimals.
"""

import csv
from collections.abc import Iterator
from dataclasses import dataclass, field
from functools import cache

from bot.journal_row import COLUMNS, NEEDED, BrokenRowError, set_of, with_point
from domain.exercises import lookup
from domain.expressions import Expression
from domain.names import name_key
from domain.sets import TrainingSet

_LINE_END = Expression(r"\r\n|\r|\n")


@dataclass
class Journal:
    """The sets of each client by exercise, in the order in which they are first named; and what is broken."""

    clients: dict[str, dict[str, list[TrainingSet]]] = field(default_factory=dict)
    faults: list[str] = field(default_factory=list)


def read_journal(text: str) -> Journal:
    """Return what a journal's text holds, and what is wrong with it, line by line."""
    journal = Journal()
    lines = _numbered(text)
    number, head = next(lines, (1, ""))
    parting = max(",;\t", key=head.count)
    try:
        names = [name.casefold() for name in _cells(head, parting)] if head else []
    except BrokenRowError as error:
        journal.faults.append(f"line {number}: {error}")
        return journal
    lacking = [name for name in NEEDED if name not in names]
    twice = [name for name in COLUMNS if names.count(name) > 1]
    if lacking or twice:
        wrong = f"no column {lacking[0]!r}" if lacking else f"two columns {twice[0]!r}"
        journal.faults.append(
            f"line {number}: {wrong}; the first line names the columns: {','.join(COLUMNS)}"
        )
        return journal
    written: dict[tuple[str, str], str] = {}
    for number, line in lines:
        try:
            row = _row(_cells(line, parting), names)
            if row is None:
                continue
            if parting != ",":
                row["load"] = with_point(row["load"])
            exercise = written.setdefault((row["client"], _key(row["exercise"])), row["exercise"])
            done = set_of(row, exercise)
        except BrokenRowError as error:
            journal.faults.append(f"line {number}: {error}")
            continue
        sets = journal.clients.setdefault(row["client"], {}).setdefault(exercise, [])
        if done is not None:
            sets.append(done)
    return journal


def _numbered(text: str) -> Iterator[tuple[int, str]]:
    return ((at, line) for at, line in enumerate(_LINE_END.split(text), 1) if line.strip())


def _cells(line: str, parting: str) -> list[str]:
    """Return the cells of one line; none goes on in the next, so a forgotten quote spoils one line."""
    try:
        return [cell.strip() for cell in next(csv.reader([line], delimiter=parting, strict=True))]
    except csv.Error:
        raise BrokenRowError("a quotation mark that does not close, or stands where none can") from None


def _row(cells: list[str], names: list[str]) -> dict[str, str] | None:
    """Return the cells by column; None for a line of empty cells."""
    if not any(cells):
        return None
    if len(cells) > len(names):
        raise BrokenRowError(
            f"{len(cells)} cells for {len(names)} columns; a number is written with a point, not a comma"
        )
    row = dict.fromkeys(COLUMNS, "") | dict(zip(names, cells, strict=False))
    for name in NEEDED:
        if not row[name]:
            raise BrokenRowError(f"no {name}")
    return row


@cache
def _key(exercise: str) -> str:
    known = lookup(exercise)
    return name_key(known.name if known else exercise) or exercise
