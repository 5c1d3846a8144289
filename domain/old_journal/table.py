"""A table, one row a set, read into workouts: commas, semicolons, tabs or bars part the cells.

Rows need not be in order. Those of one day and one workout belong together, in the order of the file.
"""

import csv
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from io import StringIO
from typing import Any, TypeVar

from domain.journal_table.safe_text import unguarded
from domain.old_journal import cells as read
from domain.old_journal.cells import CellFault
from domain.old_journal.columns import Head, read_head
from domain.old_journal.found import (
    MOST_SETS,
    Found,
    FoundSet,
    FoundWorkout,
    RowFault,
)
from domain.sets import LoadKind, TrainingSet, is_within_reason
from domain.units import Unit

LONGEST_NAME = 80
MOST_COLUMNS = 100
MOST_SETS_OF_ROW = 20
LONGEST_CELL = 4_000
"""Longer than any note beside a set: there a quotation mark was not closed."""

_PARTINGS = ",;\t|"
Value = TypeVar("Value")
Row = dict[str, str]
Key = tuple[date, str | None, int]
"""What the sets of one workout have in common: its day, its name, its round."""


@dataclass(frozen=True, slots=True)
class Given:
    """What a table is read with: the unit of loads without one, today, whether the month comes first in days,
    and the clients whose rows are read (empty: all)."""

    unit: Unit
    today: date
    month_first: bool | None = None
    clients: frozenset[str] = frozenset()


def read_table(text: str, given: Given) -> Found:
    """Return what a table holds, and each row that is not understood."""
    lines = rows_of(text)
    _, first = next(lines, (1, []))
    head = read_head(first)
    if "date" not in head.meanings or "exercise" not in head.meanings or len(first) > MOST_COLUMNS:
        return Found(head_fault="no columns", shown=", ".join(first)[:200])
    rows = [(at, cells) for at, cells in lines if any(cells)]
    if len(rows) > MOST_SETS:
        return Found(head_fault="too many", shown=str(len(rows)))
    return _Table(head, replace(given, month_first=_order(head, rows, given))).read(rows)


def clients_of(text: str) -> tuple[str, ...]:
    """Return the clients that a table names, in its order."""
    lines = rows_of(text)
    _, first = next(lines, (1, []))
    head = read_head(first)
    if "client" not in head.meanings:
        return ()
    place = head.meanings.index("client")
    return tuple(
        dict.fromkeys(unguarded(cells[place]) for _, cells in lines if len(cells) > place and cells[place])
    )


def is_table(text: str) -> bool:
    """Return whether the first line names a day and an exercise over columns."""
    first = next(rows_of(text[:LONGEST_CELL]), (1, []))[1]
    meanings = read_head(first).meanings
    return len(first) <= MOST_COLUMNS and "date" in meanings and "exercise" in meanings


def rows_of(text: str) -> Iterator[tuple[int, list[str]]]:
    """Give the rows with their places in the file, from 1; cells without the blanks around them.

    A cell may go on over lines. Where one does so beyond all measure, a quotation mark was forgotten: then
    each line is a row of its own, so that it spoils no more than one.
    """
    text = text.replace("\0", "\ufffd")
    head = text.lstrip("\r\n").split("\n", 1)[0]
    parting = max(_PARTINGS, key=head.count)
    try:
        rows = [
            (at, [cell.strip() for cell in cells])
            for at, cells in _numbered(csv.reader(StringIO(text, newline=""), delimiter=parting))
        ]
        if all(len(cell) <= LONGEST_CELL for _, cells in rows for cell in cells):
            yield from rows
            return
    except csv.Error:
        pass
    for at, line in enumerate(text.splitlines(), 1):
        cells = next(csv.reader([line[:LONGEST_CELL]], delimiter=parting), [])
        if any(cells):
            yield at, [cell.strip() for cell in cells]


def _numbered(reader: Any) -> Iterator[tuple[int, list[str]]]:
    before = 0
    for cells in reader:
        if any(cells):
            yield before + 1, cells
        before = reader.line_num


def _order(head: Head, rows: list[tuple[int, list[str]]], given: Given) -> bool | None:
    """Return whether the month comes first in the file's days, where only some of them show it."""
    place = head.meanings.index("date")
    shown = {read.tells_order(cells[place]) for _, cells in rows if len(cells) > place} - {None}
    return given.month_first if len(shown) != 1 else shown.pop()


class _Table:
    """Reads the rows of one table."""

    def __init__(self, head: Head, given: Given) -> None:
        self._head = head
        self._given = given
        self._known: dict[tuple[str, str], Any] = {}
        self._assumed = False
        self._which_date: str | None = None

    def read(self, rows: list[tuple[int, list[str]]]) -> Found:
        """Return all that the rows hold.

        Our own table has its rows in order, and each run of them is a workout; others can be in any.
        """
        groups: list[tuple[Key, list[FoundSet]]] = []
        latest: dict[Key, list[FoundSet]] = {}
        faults: list[RowFault] = []
        for at, cells in rows:
            try:
                key, sets = self._row(at, cells)
            except CellFault as fault:
                faults.append(RowFault(at, fault.what, fault.shown))
                if fault.what == "which date" and self._which_date is None:
                    self._which_date = fault.shown
                continue
            if key not in latest or (self._head.is_ours and groups[-1][0] != key):
                latest[key] = []
                groups.append((key, latest[key]))
            latest[key].extend(sets)
        workouts = tuple(
            FoundWorkout(day, name, "done", round_, (), tuple(sets))
            for (day, name, round_), sets in sorted(groups, key=lambda each: each[0][0])
        )
        if sum(len(each.sets) for each in workouts) > MOST_SETS:
            return Found(head_fault="too many", shown=str(sum(len(each.sets) for each in workouts)))
        return Found(
            workouts=workouts,
            faults=tuple(faults),
            is_ours=self._head.is_ours,
            unit_assumed=self._given.unit if self._assumed else None,
            passed_over=self._head.passed_over,
            which_date=self._which_date,
        )

    def _row(self, at: int, cells: list[str]) -> tuple[Key, list[FoundSet]]:
        meanings = self._head.meanings
        if any(cells[len(meanings) :]):
            raise CellFault("too many cells", ", ".join(cells[len(meanings) :]))
        row: Row = {name: cell for name, cell in zip(meanings, cells, strict=False) if name and cell}
        if self._given.clients and unguarded(row.get("client", "")) not in self._given.clients:
            raise CellFault("other client", unguarded(row.get("client", "")))
        on = self._day(row, "date")
        if on is None:
            raise CellFault("no date")
        exercise = " ".join(unguarded(row.get("exercise", "")).split())
        if not exercise:
            raise CellFault("no exercise")
        if len(exercise) > LONGEST_NAME:
            raise CellFault("long name", exercise)
        kind, one = self._set(row, exercise, on)
        told_at = self._once(row, "recorded_at", read.moment_of)
        sets = [FoundSet(at, done, kind, told_at) for done in self._several(row, one)]
        name = unguarded(row["workout"]) if "workout" in row else ("" if self._head.is_ours else None)
        return (self._day(row, "workout_date") or on, name, self._round(row)), sets

    def _set(self, row: Row, exercise: str, on: date) -> tuple[LoadKind | None, TrainingSet]:
        load, unit, kind = self._once(row, "load", read.load_of) or (Decimal(0), None, None)
        kind = self._once(row, "load_kind", read.kind_of) or kind
        if not load and not (kind and self._head.is_ours):
            kind = "body"
        if kind == "body" and load:
            raise CellFault("load", row["load"])
        unit = self._once(row, "unit", read.unit_of) or unit or self._head.unit
        if unit is None:
            unit = self._given.unit
            self._assumed = self._assumed or kind != "body"
        reserve = row.get("in_reserve")
        return kind, TrainingSet(
            exercise=exercise,
            load=load,
            unit=unit,
            load_kind=kind or "total",
            lowering_only=bool(self._once(row, "lowering_only", read.truth_of)),
            to_failure=self._once(row, "to_failure", read.truth_of),
            rir=None if reserve is None else read.number_of(reserve, "reserve"),
            on=on,
        )

    def _several(self, row: Row, one: TrainingSet) -> Iterator[TrainingSet]:
        """Give the sets of a row: as many as it has reps, or as its column of sets says."""
        reps: tuple[int, ...] = self._once(row, "reps", read.reps_of) or ()
        seconds = self._once(row, "seconds", read.seconds_of)
        if seconds and any(reps):
            raise CellFault("both", f"{row['reps']}, {row['seconds']}")
        if seconds and one.lowering_only:
            raise CellFault("lowered hold", row["seconds"])
        if not reps and not seconds:
            raise CellFault("nothing done")
        many = self._once(row, "sets", read.reps_of) or (1,)
        if len(many) > 1 or not 1 <= many[0] <= MOST_SETS_OF_ROW or len(reps) > MOST_SETS_OF_ROW:
            raise CellFault("reps", row.get("sets") or row.get("reps", ""))
        if len(reps) > 1 and many[0] not in {1, len(reps)}:
            raise CellFault("reps", f"{row['sets']}: {row['reps']}")
        each = (None,) if seconds else reps
        for amount in each * many[0] if len(each) == 1 else each:
            done = replace(one, reps=amount, seconds=seconds or None)
            if not is_within_reason(done):
                raise CellFault("beyond reason", f"{row.get('load', '')} {amount or seconds}".strip())
            yield done

    def _round(self, row: Row) -> int:
        number = self._once(row, "round", read.reps_of) or (1,)
        return max(1, number[0])

    def _day(self, row: Row, column: str) -> date | None:
        on = self._once(row, column, lambda cell: read.day_of(cell, month_first=self._given.month_first))
        if on is not None and on > self._given.today:
            raise CellFault("future", row[column])
        return on

    def _once(self, row: Row, column: str, reader: Callable[[str], Value]) -> Value | None:
        """Return what a column's cell says, None where it is empty; each way of writing is read once."""
        cell = row.get(column)
        if cell is None:
            return None
        key = (column, cell)
        if key not in self._known:
            self._known[key] = reader(cell)
        value: Value = self._known[key]
        return value
