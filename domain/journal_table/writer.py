"""A client's whole journal written as a table with commas (RFC 4180), one row a set, oldest first."""

import csv
from collections.abc import Iterator
from datetime import UTC
from decimal import Decimal
from io import StringIO

from domain.journal import Entry, WorkoutRecord
from domain.journal_table.columns import COLUMNS, MORE_COLUMNS
from domain.journal_table.safe_text import guarded
from domain.state import ClientState


def write_table(*clients: ClientState) -> str:
    """Return the journals of `clients`, each whole, under one line of columns."""
    text = StringIO()
    writer = csv.writer(text)
    writer.writerow((*COLUMNS, *MORE_COLUMNS))
    for state in clients:
        writer.writerows(_rows(state))
    return text.getvalue()


def _rows(state: ClientState) -> Iterator[tuple[str, ...]]:
    workouts = {each.number: each for each in state.workouts}
    in_order = sorted(state.entries, key=lambda each: (*_moment(workouts[each.workout]), each.order))
    for entry in in_order:
        yield _row(state.client.name, workouts[entry.workout], entry)


def _moment(workout: WorkoutRecord) -> tuple[str, int]:
    return workout.on.isoformat(), workout.number


def _row(client: str, workout: WorkoutRecord, entry: Entry) -> tuple[str, ...]:
    done = entry.set
    return (
        guarded(client),
        (done.on or workout.on).isoformat(),
        guarded(done.exercise),
        "" if done.load_kind == "body" else _number(done.load),
        "" if done.load_kind == "body" else done.unit,
        "" if done.reps is None else str(done.reps),
        "" if done.seconds is None else str(done.seconds),
        done.load_kind,
        "yes" if done.lowering_only else "",
        {True: "yes", False: "no", None: ""}[done.to_failure],
        "" if done.rir is None else _number(done.rir),
        guarded(workout.name),
        str(workout.round),
        entry.at.astimezone(UTC).isoformat(),
        workout.on.isoformat(),
    )


def _number(value: Decimal) -> str:
    return f"{value:f}"
