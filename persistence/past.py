"""Loads what was ever set aside and brought to the coach of one client, with what has become of it."""

from sqlalchemy import Connection, bindparam, select

from domain.journal import Alert, ExerciseHold
from domain.past import HoldRecord, MatterRecord
from persistence.tables import AlertRow, HoldRow

_HOLDS = (
    select(
        HoldRow.number,
        HoldRow.exercise,
        HoldRow.place,
        HoldRow.side,
        HoldRow.since,
        HoldRow.lifted_on,
        HoldRow.lifted_by,
    )
    .where(HoldRow.client == bindparam("client"))
    .order_by(HoldRow.number)
)
_MATTERS = (
    select(
        AlertRow.number,
        AlertRow.reason,
        AlertRow.exercise,
        AlertRow.evidence,
        AlertRow.opened_at,
        AlertRow.settled_at,
        AlertRow.settled_by,
        AlertRow.remedy,
    )
    .where(AlertRow.client == bindparam("client"))
    .order_by(AlertRow.number)
)


def holds_ever(connection: Connection, client: int) -> tuple[HoldRecord, ...]:
    """Return every hold of a client's, in the order in which they were placed."""
    return tuple(
        HoldRecord(ExerciseHold(number, exercise, place, side, since), lifted_on, lifted_by)
        for number, exercise, place, side, since, lifted_on, lifted_by in connection.execute(
            _HOLDS, {"client": client}
        )
    )


def matters_ever(connection: Connection, client: int) -> tuple[MatterRecord, ...]:
    """Return everything of a client that was brought to the coach, in the order in which it was raised."""
    return tuple(
        MatterRecord(Alert(number, reason, exercise, evidence, at), settled_at, settled_by, remedy)
        for number, reason, exercise, evidence, at, settled_at, settled_by, remedy in connection.execute(
            _MATTERS, {"client": client}
        )
    )
