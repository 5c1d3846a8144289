"""What a client's message is read against: the workout it is about, the journal, the client's own names."""

from domain.client.draft import Draft
from domain.client.lines import Line, left_out, lines_of
from domain.client.plan import ahead
from domain.client.rotation import BESIDE, due, under_way
from domain.journal import Entry, WorkoutRecord
from domain.reading import Planned, Reading, Request
from domain.sets import TrainingSet
from domain.state import ClientState

DONE_KNOWN = 60
"""How many of the sets recorded last a message is read against."""


def request_for(draft: Draft, text: str) -> Request:
    """Return the request to read `text` with, as of the draft's moment."""
    state = draft.state
    name, record = workout_meant(draft)
    plan: list[Planned] = []
    last: dict[str, TrainingSet] = {}
    target: dict[str, TrainingSet] = {}
    for line in lines_of(state, name):
        is_ahead = ahead(state, name, line, draft.today, record)
        if is_ahead.to_beat is not None:
            last[line.exercise] = is_ahead.to_beat
        if is_ahead.target is not None:
            target[line.exercise] = is_ahead.target
        sets = line.prescription.sets - done_on_other_days(draft, record, line.exercise)
        if sets > 0 and line.held is None and line.exercise not in left_out(state, record):
            plan.append(planned(line, sets, is_ahead.to_beat))
    return Request(
        text=text,
        unit=state.client.unit,
        sent=draft.local.replace(microsecond=0),
        plan=tuple(plan),
        done=tuple(entry.set for entry in known(state)),
        last=last,
        target=target,
        own_names=state.client.own_names,
    )


def workout_meant(draft: Draft) -> tuple[str, WorkoutRecord | None]:
    """Return the workout that a message is about, and its record where it has begun.

    It is the one under way; else the one that is due; else the one done today, of which nothing is left; else
    the one to come.
    """
    record = under_way(draft.state, draft.today)
    coming = due(draft.state, draft.today)
    if record is None and (coming is None or coming.on > draft.today):
        record = of_today(draft)
    if record is not None:
        return record.name, record
    return (coming.workout if coming else BESIDE), None


def of_today(draft: Draft) -> WorkoutRecord | None:
    """Return the programme's workout trained today, if there is one."""
    for record in reversed(draft.state.workouts):
        if record.on == draft.today and record.name != BESIDE and record.state in {"open", "done"}:
            return record
    return None


def says_a_day(reading: Reading) -> bool:
    """Return whether the message says on which day its sets were done."""
    return any(each.became == "a day" for each in reading.words)


def known(state: ClientState) -> tuple[Entry, ...]:
    """Return the entries a message is read against, oldest first."""
    return state.entries[-DONE_KNOWN:]


def done_on_other_days(draft: Draft, record: WorkoutRecord | None, exercise: str) -> int:
    """Return how many sets of `exercise` the workout under way has from days before today."""
    if record is None:
        return 0
    return sum(
        1
        for entry in draft.state.entries
        if entry.workout == record.number and entry.set.exercise == exercise and entry.set.on != draft.today
    )


def planned(line: Line, sets: int, last: TrainingSet | None) -> Planned:
    """Return a line of the plan as the reading knows it."""
    prescription = line.prescription
    counted = prescription.counted
    if last is not None and last.load_kind == "assist":
        counted = "assist"
    return Planned(
        name=line.exercise,
        range_low=prescription.range.low,
        range_high=prescription.range.high,
        of=prescription.range.of,
        sets=sets,
        load_kind=None if counted == "total" else counted,
        lowering_only=prescription.lowering_only,
    )
