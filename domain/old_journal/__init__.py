"""A journal kept elsewhere, or sent by us before: read from a table or from data, row by row."""

from domain.old_journal.found import (
    MOST_SETS,
    FaultKind,
    Found,
    FoundSet,
    FoundWorkout,
    HeadFault,
    RowFault,
)
from domain.old_journal.reader import clients_named, looks_like_a_journal, read_journal

__all__ = [
    "MOST_SETS",
    "FaultKind",
    "Found",
    "FoundSet",
    "FoundWorkout",
    "HeadFault",
    "RowFault",
    "clients_named",
    "looks_like_a_journal",
    "read_journal",
]
