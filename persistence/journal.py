"""Writes to a client's journal. All that ever changes of an entry is whether it counts."""

from typing import Any

from sqlalchemy import Connection, CursorResult, Update, delete, insert, select, update

from domain.journal import Alert, Entry, ExerciseHold, Words, WorkoutRecord
from domain.outcome import (
    AlertNoted,
    AlertSettled,
    HoldLifted,
    JournalTaken,
    JournalTakenOut,
    Recorded,
    TakenBack,
)
from domain.past import HoldRecord, MatterRecord
from persistence.faults import RecordMissing
from persistence.statements import InsertOr, Prepared, or_update
from persistence.tables import AlertRow, EntryRow, HoldRow, WordsRow, WorkoutRow

_ADD_ENTRY = Prepared(insert(EntryRow))
_KEEP_WORKOUT = InsertOr(
    WorkoutRow,
    or_update("client", "number", columns=["programme", "name", "day", "state", "round", "skipped"]),
)


def record(connection: Connection, client: int, recorded: Recorded) -> None:
    """Add an entry; the one that it stands instead of no longer counts."""
    entry = recorded.entry
    _ADD_ENTRY(connection, _entry(client, entry))
    if recorded.instead_of is not None:
        superseded = _counting(client, recorded.instead_of).values(superseded_by=entry.number)
        _one(connection, superseded, "entries", recorded.instead_of)


def bring_in(connection: Connection, client: int, coach: int, change: JournalTaken) -> None:
    """Add what an old journal has, many at a time; open matters are of the client's `coach`."""
    if change.workouts:
        connection.execute(insert(WorkoutRow), [_workout(client, each) for each in change.workouts])
    if change.entries:
        _ADD_ENTRY.many(connection, [_entry(client, each) for each in change.entries])
    if change.holds:
        connection.execute(insert(HoldRow), [_hold(client, each) for each in change.holds])
    if change.matters:
        connection.execute(insert(AlertRow), [_matter(client, coach, each) for each in change.matters])


def take_out(connection: Connection, client: int, change: JournalTakenOut) -> None:
    """Delete what came with an old journal; of a workout that goes, what no longer counts goes as well."""
    for first, last in change.entries:
        connection.execute(
            delete(EntryRow).where(EntryRow.client == client, EntryRow.number.between(first, last))
        )
    for first, last in change.workouts:
        gone = (WorkoutRow.client == client, WorkoutRow.number.between(first, last))
        stay = WorkoutRow.number.not_in(change.kept)
        numbers = select(WorkoutRow.number).where(*gone, stay)
        connection.execute(delete(EntryRow).where(EntryRow.client == client, EntryRow.workout.in_(numbers)))
        connection.execute(delete(WorkoutRow).where(*gone, stay))
    for first, last in change.holds:
        held = delete(HoldRow).where(HoldRow.client == client, HoldRow.number.between(first, last))
        connection.execute(held)
    for first, last in change.matters:
        about = update(WordsRow).where(WordsRow.client == client, WordsRow.alert.between(first, last))
        connection.execute(about.values(alert=None))
        connection.execute(
            delete(AlertRow).where(AlertRow.client == client, AlertRow.number.between(first, last))
        )


def take_back(connection: Connection, client: int, change: TakenBack) -> None:
    """Let an entry no longer count."""
    _one(connection, _counting(client, change.entry).values(taken_back_at=change.at), "entries", change.entry)


def keep_workout(connection: Connection, client: int, workout: WorkoutRecord) -> None:
    """Add a workout, or bring the one of this number to what is given."""
    _KEEP_WORKOUT(connection, _workout(client, workout))


def place_hold(connection: Connection, client: int, hold: ExerciseHold) -> None:
    """Set an exercise aside."""
    connection.execute(insert(HoldRow).values(_hold(client, HoldRecord(hold))))


def lift_hold(connection: Connection, client: int, change: HoldLifted) -> None:
    """Put an exercise back into the plan."""
    held = update(HoldRow).where(
        HoldRow.client == client, HoldRow.number == change.hold, HoldRow.lifted_on.is_(None)
    )
    _one(connection, held.values(lifted_on=change.on, lifted_by=change.by), "exercise_holds", change.hold)


def raise_alert(connection: Connection, client: int, coach: int, alert: Alert) -> None:
    """Open a matter for the coach."""
    connection.execute(insert(AlertRow).values(_matter(client, coach, MatterRecord(alert))))


def note_alert(connection: Connection, client: int, change: AlertNoted) -> None:
    """Keep what is known of an open matter."""
    noted = _open_alert(client, change.alert).values(evidence=change.evidence)
    _one(connection, noted, "alerts", change.alert)


def settle_alert(connection: Connection, client: int, change: AlertSettled) -> None:
    """Close a matter."""
    settled = _open_alert(client, change.alert).values(
        settled_at=change.at, settled_by=change.by, remedy=change.remedy
    )
    _one(connection, settled, "alerts", change.alert)


def keep_words(connection: Connection, client: int, words: Words) -> None:
    """Add what client and coach have written to each other."""
    connection.execute(
        insert(WordsRow).values(
            client=client,
            number=words.number,
            writer=words.by,
            name=words.name,
            text=words.text,
            at=words.at,
            alert=words.alert,
        )
    )


def _entry(client: int, entry: Entry) -> dict[str, Any]:
    done = entry.set
    return {
        "client": client,
        "number": entry.number,
        "workout": entry.workout,
        "message": entry.message,
        "at": entry.at,
        "place": entry.place,
        "exercise": done.exercise,
        "load": done.load,
        "unit": done.unit,
        "load_kind": done.load_kind,
        "reps": done.reps,
        "seconds": done.seconds,
        "lowering_only": done.lowering_only,
        "to_failure": done.to_failure,
        "rir": done.rir,
        "day": done.on,
    }


def _workout(client: int, workout: WorkoutRecord) -> dict[str, Any]:
    return {
        "client": client,
        "number": workout.number,
        "programme": workout.programme,
        "name": workout.name,
        "day": workout.on,
        "state": workout.state,
        "round": workout.round,
        "skipped": workout.skipped,
    }


def _hold(client: int, record: HoldRecord) -> dict[str, Any]:
    hold = record.hold
    return {
        "client": client,
        "number": hold.number,
        "exercise": hold.exercise,
        "place": hold.where,
        "side": hold.side,
        "since": hold.since,
        "lifted_on": record.lifted_on,
        "lifted_by": record.lifted_by,
    }


def _matter(client: int, coach: int, record: MatterRecord) -> dict[str, Any]:
    alert = record.alert
    return {
        "client": client,
        "number": alert.number,
        "coach": coach,
        "reason": alert.reason,
        "exercise": alert.exercise,
        "evidence": alert.evidence,
        "opened_at": alert.at,
        "settled_at": record.settled_at,
        "settled_by": record.settled_by,
        "remedy": record.remedy,
    }


def _open_alert(client: int, alert: int) -> Update:
    return update(AlertRow).where(
        AlertRow.client == client, AlertRow.number == alert, AlertRow.settled_at.is_(None)
    )


def _counting(client: int, entry: int) -> Update:
    return update(EntryRow).where(
        EntryRow.client == client,
        EntryRow.number == entry,
        EntryRow.superseded_by.is_(None),
        EntryRow.taken_back_at.is_(None),
    )


def _one(connection: Connection, statement: Update, table: str, number: int) -> None:
    result: CursorResult[object] = connection.execute(statement)
    if result.rowcount != 1:
        raise RecordMissing(table, number)
