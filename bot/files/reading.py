"""What was understood of an old journal, row by row, as a table: what is taken as what, and what is not.

It is reckoned anew as it is sent, as the decision reckons it; nothing of it lies in the outbox.
"""

import csv
from io import StringIO

from bot.wording.old_journal import COLUMNS, LEFT_OUT_WORDS, TAKEN_WORDS, THERE_WORDS, fault_reason
from bot.wording.reader import set_words
from domain.journal_table.safe_text import guarded
from domain.old_journal import FoundSet, read_journal
from domain.old_journal.looking import Looked, look_through
from domain.parts import File
from domain.state import ClientState


def reading_of(part: File, state: ClientState, text: str) -> str:
    """Return the table for the client of `state`, loaded whole; `text` is what the coach has sent."""
    assert part.on is not None  # noqa: S101 it stands in every part of this kind
    client = state.client
    found = read_journal(text, client.name, client.unit, part.on, month_first=part.month_first)
    looked = look_through(state, found, part.exercises)
    rows = [(fault.row, ("no", fault.shown, "", "", fault_reason(fault))) for fault in looked.faults]
    rows += _taken(looked)
    for workout in found.workouts:
        rows += [
            (each.row, ("no", each.done.exercise, workout.day.isoformat(), "", LEFT_OUT_WORDS))
            for each in workout.sets
            if not looked.exercises.get(each.done.exercise)
        ]
    written = StringIO()
    writer = csv.writer(written)
    writer.writerow(COLUMNS)
    for number, cells in sorted(rows, key=lambda each: each[0]):
        writer.writerow((number, *(guarded(cell) for cell in cells)))
    return written.getvalue()


Row = tuple[int, tuple[str, str, str, str, str]]


def _taken(looked: Looked) -> list[Row]:
    rows: list[Row] = []
    place, ranges = 0, list(looked.there)
    for workout in looked.workouts:
        for each in workout.sets:
            while ranges and ranges[0][1] < place:
                ranges.pop(0)
            is_there = bool(ranges) and ranges[0][0] <= place
            rows.append((each.row, _cells(each, is_there=is_there)))
            place += 1
    return rows


def _cells(found: FoundSet, *, is_there: bool) -> tuple[str, str, str, str, str]:
    done = found.done
    day = done.on.isoformat() if done.on else ""
    why = THERE_WORDS if is_there else TAKEN_WORDS
    return ("no" if is_there else "yes", done.exercise, day, set_words(done).replace("\u00a0", " "), why)
