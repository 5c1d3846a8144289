"""What a client's message is read against: the workout it is about, the journal, the client's own names."""

from domain.client.draft import Draft
from domain.client.exposures import history, set_to_beat
from domain.client.lines import Line, lines_of
from domain.client.plan import days_away, target_for
from domain.client.rotation import current_workout, open_workout
from domain.exposure import Exposure
from domain.journal import Entry, WorkoutRecord
from domain.reading import Planned, Request
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.target import Target

DONE_KNOWN = 60
"""How many of the sets recorded last a message is read against."""


def request_for(draft: Draft, text: str) -> Request:
    """Return the request to read `text` with, as of the draft's moment."""
    state = draft.state
    name = current_workout(state, draft.today) or ""
    under_way = open_workout(state)
    away = 0 if under_way else days_away(state, draft.today)
    plan: list[Planned] = []
    last: dict[str, TrainingSet] = {}
    target: dict[str, TrainingSet] = {}
    for line in lines_of(state, name):
        past = earlier(history(state, name, line.exercise), under_way)
        if past:
            last[line.exercise] = set_to_beat(past[-1])
        aim = target_for(state, line, past, days_away=away)
        if isinstance(aim, Target):
            target[line.exercise] = aim.as_set()
        sets_left = line.prescription.sets - done_on_other_days(draft, under_way, line.exercise)
        if sets_left > 0 and is_to_do(line, under_way):
            plan.append(planned(line, sets_left, last.get(line.exercise)))
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


def known(state: ClientState) -> tuple[Entry, ...]:
    """Return the entries a message is read against, oldest first."""
    return state.entries[-DONE_KNOWN:]


def earlier(past: tuple[Exposure, ...], under_way: WorkoutRecord | None) -> tuple[Exposure, ...]:
    """Return the exposures before the workout under way: the ones that today's are to beat."""
    if under_way is None:
        return past
    return tuple(exposure for exposure in past if exposure.on < under_way.on)


def done_on_other_days(draft: Draft, under_way: WorkoutRecord | None, exercise: str) -> int:
    """Return how many sets of `exercise` the workout under way has from days before today."""
    if under_way is None:
        return 0
    return sum(
        1
        for entry in draft.state.entries
        if entry.workout == under_way.number
        and entry.set.exercise == exercise
        and entry.set.on != draft.today
    )


def is_to_do(line: Line, under_way: WorkoutRecord | None) -> bool:
    """Return whether the exercise is neither on hold nor left out of the workout under way."""
    return line.held is None and (under_way is None or line.exercise not in under_way.skipped)


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
