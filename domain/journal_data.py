"""A client's journal as data for machines: all workouts with their sets, and what belongs to it.

`JournalData.workouts` is what an import takes; the rest tells how it came about. A field that is added does
not change the `version`. Decimals are written as text, so that 60.0 stays what was said.
"""

from datetime import date, datetime
from decimal import Decimal
from typing import Any, Literal

from pydantic import Field

from domain.frozen import Frozen
from domain.journal import Entry, WorkoutState
from domain.sets import LoadKind
from domain.state import ClientState
from domain.units import Unit

VERSION = 1


class SetData(Frozen):
    """One set. `day` is given where it is not the workout's own; `recorded_at` is aware."""

    exercise: str
    load: Decimal = Field(ge=0)
    unit: Unit
    load_kind: LoadKind
    reps: int | None = None
    seconds: int | None = None
    lowering_only: bool = False
    to_failure: bool | None = None
    in_reserve: Decimal | None = None
    day: date | None = None
    recorded_at: datetime


class WorkoutData(Frozen):
    """A workout begun, done, missed or skipped, with its sets in the order done."""

    day: date
    name: str
    state: WorkoutState
    round: int
    skipped: tuple[str, ...] = ()
    sets: tuple[SetData, ...] = ()


class JournalData(Frozen):
    """A whole journal, oldest workout first."""

    form: Literal["training journal"] = "training journal"
    version: int = VERSION
    client: str
    unit: Unit
    zone: str
    starts: date | None = None
    programme: str | None = None
    body_mass: Decimal | None = None
    workouts: tuple[WorkoutData, ...]
    set_aside: tuple[dict[str, Any], ...] = ()
    matters: tuple[dict[str, Any], ...] = ()


def journal_data(
    state: ClientState, set_aside: tuple[dict[str, Any], ...] = (), matters: tuple[dict[str, Any], ...] = ()
) -> JournalData:
    """Return the journal of `state`, which is to be loaded whole.

    `set_aside` are the exercises ever set aside, `matters` what was ever brought to the coach, as plain JSON.
    """
    client = state.client
    sets: dict[int, list[SetData]] = {each.number: [] for each in state.workouts}
    days = {each.number: each.on for each in state.workouts}
    for entry in sorted(state.entries, key=lambda each: each.order):
        sets[entry.workout].append(_set(entry, days[entry.workout]))
    return JournalData(
        client=client.name,
        unit=client.unit,
        zone=client.zone,
        starts=client.starts,
        programme=client.programme.programme.name if client.programme else None,
        body_mass=client.body_mass,
        workouts=tuple(
            WorkoutData(
                day=each.on,
                name=each.name,
                state=each.state,
                round=each.round,
                skipped=each.skipped,
                sets=tuple(sets[each.number]),
            )
            for each in state.workouts
        ),
        set_aside=set_aside,
        matters=matters,
    )


def _set(entry: Entry, workout_day: date) -> SetData:
    done = entry.set
    return SetData(
        exercise=done.exercise,
        load=done.load,
        unit=done.unit,
        load_kind=done.load_kind,
        reps=done.reps,
        seconds=done.seconds,
        lowering_only=done.lowering_only,
        to_failure=done.to_failure,
        in_reserve=done.rir,
        day=None if done.on == workout_day else done.on,
        recorded_at=entry.at,
    )
