"""A client's journal as data for machines: all workouts with their sets, and what belongs to it.

`JournalData.workouts` is what an import takes; the rest tells how it came about. A field that is added does
not change the `version`. Decimals are written as text, so that 60.0 stays what was said.
"""

from datetime import date
from decimal import Decimal
from typing import Any, Literal

from pydantic import AwareDatetime, BaseModel, ConfigDict, Field

from domain.actions import Remedy, Role
from domain.frozen import Frozen
from domain.journal import AlertReason, Entry, WorkoutState
from domain.past import HoldRecord, MatterRecord
from domain.sets import LoadKind
from domain.state import ClientState
from domain.units import Unit

VERSION = 1


class SetData(Frozen):
    """One set. `day` is given where it is not the workout's own; `recorded_at` is aware."""

    exercise: str
    load: Decimal
    unit: Unit
    load_kind: LoadKind
    reps: int | None = None
    seconds: int | None = None
    lowering_only: bool = False
    to_failure: bool | None = None
    in_reserve: Decimal | None = None
    day: date | None = None
    recorded_at: AwareDatetime


class WorkoutData(Frozen):
    """A workout begun, done, missed or skipped, with its sets in the order done."""

    day: date
    name: str
    state: WorkoutState
    round: int = Field(ge=0, le=1_000_000)
    skipped: tuple[str, ...] = ()
    sets: tuple[SetData, ...] = ()


class HoldData(BaseModel):
    """An exercise set aside on the day `since`, and when it was put back, by whom; both None: it is aside.

    Fields of other times are passed over: a number that a hold had once.
    """

    model_config = ConfigDict(frozen=True, extra="ignore")

    exercise: str
    place: str
    side: str | None = None
    since: date
    lifted_on: date | None = None
    lifted_by: Role | None = None


class MatterData(BaseModel):
    """What was brought to the coach, and when it was settled, by whom and how; all None: it is open.

    `evidence` is plain JSON; `opened_at` and `settled_at` are aware. Fields of other times are passed over.
    """

    model_config = ConfigDict(frozen=True, extra="ignore")

    reason: AlertReason
    exercise: str | None = None
    evidence: dict[str, Any]
    opened_at: AwareDatetime
    settled_at: AwareDatetime | None = None
    settled_by: Role | None = None
    remedy: Remedy | None = None


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
    set_aside: tuple[HoldData, ...] = ()
    matters: tuple[MatterData, ...] = ()


def journal_data(state: ClientState) -> JournalData:
    """Return the journal of `state`, which is to be loaded whole."""
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
        set_aside=tuple(hold_data(each, client.number) for each in state.holds_ever),
        matters=tuple(matter_data(each, client.number) for each in state.matters_ever),
    )


def hold_data(record: HoldRecord, client: int) -> HoldData:
    """Return a hold of the client of that number as data."""
    return HoldData(
        exercise=record.hold.exercise,
        place=record.hold.where,
        side=record.hold.side,
        since=record.hold.since,
        lifted_on=record.lifted_on,
        lifted_by=_role(record.lifted_by, client),
    )


def matter_data(record: MatterRecord, client: int) -> MatterData:
    """Return a matter of the client of that number as data, without the number of its message."""
    alert = record.alert
    return MatterData(
        reason=alert.reason,
        exercise=alert.exercise,
        evidence=without_message(alert.evidence),
        opened_at=alert.at,
        settled_at=record.settled_at,
        settled_by=_role(record.settled_by, client),
        remedy=record.remedy,
    )


def without_message(evidence: dict[str, Any]) -> dict[str, Any]:
    """Return evidence without the number of its message, which means something in its own database alone."""
    return {name: each for name, each in evidence.items() if name != "message"}


def _role(person: int | None, client: int) -> Role | None:
    if person is None:
        return None
    return "client" if person == client else "coach"


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
