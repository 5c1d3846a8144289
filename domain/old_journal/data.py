"""Our own data (JSON) read back into workouts."""

from datetime import date, timedelta

from pydantic import ValidationError

from domain.evidence import is_sound
from domain.journal_data import VERSION, HoldData, JournalData, MatterData, WorkoutData
from domain.old_journal.found import MOST_SETS, FaultKind, Found, FoundSet, FoundWorkout, RowFault
from domain.old_journal.table import LONGEST_NAME, Given
from domain.sets import TrainingSet, is_within_reason


def is_data(text: str) -> bool:
    """Return whether a text may be our own data."""
    return text.lstrip("\ufeff \r\n\t").startswith("{")


def client_of(text: str) -> tuple[str, ...]:
    """Return whose journal it is."""
    data = _read(text)
    return (data.client,) if isinstance(data, JournalData) else ()


def read_data(text: str, given: Given) -> Found:
    """Return what our own data hold; a set that cannot be is left out and said."""
    data = _read(text)
    if isinstance(data, Found):
        return data
    if data.version > VERSION:
        return Found(head_fault="newer", shown=str(data.version))
    many = sum(len(each.sets) for each in data.workouts) + len(data.set_aside) + len(data.matters)
    if many > MOST_SETS:
        return Found(head_fault="too many", shown=str(many))
    workouts: list[FoundWorkout] = []
    faults: list[RowFault] = []
    row = 0
    for workout in data.workouts:
        sets: list[FoundSet] = []
        for place, done in enumerate(_sets(workout), row + 1):
            fault = _fault_of(done.done, workout.day, given)
            if fault is not None:
                faults.append(RowFault(place, *fault))
            else:
                sets.append(FoundSet(place, done.done, done.kind, done.at))
        row += len(workout.sets)
        if workout.day <= given.today and (sets or not workout.sets):
            state = "done" if _has_closed(workout, given) else workout.state
            workouts.append(
                FoundWorkout(workout.day, workout.name, state, workout.round, workout.skipped, tuple(sets))
            )
    faults += [
        RowFault(place, "aside", hold.exercise[:LONGEST_NAME])
        for place, hold in enumerate(data.set_aside, row + 1)
        if not _can_be_aside(hold, given)
    ]
    row += len(data.set_aside)
    faults += [
        RowFault(place, "matter", matter.reason)
        for place, matter in enumerate(data.matters, row + 1)
        if not _can_matter(matter, given)
    ]
    return Found(
        workouts=tuple(sorted(workouts, key=lambda each: each.day)),
        faults=tuple(faults),
        is_ours=True,
        set_aside=tuple(each for each in data.set_aside if _can_be_aside(each, given)),
        matters=tuple(each for each in data.matters if _can_matter(each, given)),
    )


def _fault_of(done: TrainingSet, workout_day: date, given: Given) -> tuple[FaultKind, str] | None:
    """Return why a set cannot be, with what of it is at fault; None where nothing is."""
    if max(workout_day, done.on or workout_day) > given.today:
        return "future", str(done.on)
    if (done.reps is None) == (done.seconds is None):
        return ("nothing done" if done.reps is None else "both"), ""
    if done.seconds is not None and done.lowering_only:
        return "lowered hold", str(done.seconds)
    if done.amount < 0:
        return ("reps" if done.seconds is None else "seconds"), str(done.amount)
    if done.load < 0 or (done.load_kind == "body" and done.load != 0):
        return "load", str(done.load)
    if done.rir is not None and done.rir < 0:
        return "reserve", str(done.rir)
    if not is_within_reason(done):
        return "beyond reason", str(done.load)
    if not 0 < len(done.exercise) <= LONGEST_NAME:
        return "long name", done.exercise[:LONGEST_NAME]
    return None


def _has_closed(workout: WorkoutData, given: Given) -> bool:
    """Return whether a workout that was under way has closed by itself since, the day after it being over."""
    return workout.state == "open" and workout.day + timedelta(days=1) < given.today


def _can_be_aside(hold: HoldData, given: Given) -> bool:
    return (
        0 < len(hold.exercise) <= LONGEST_NAME
        and 0 < len(hold.place) <= LONGEST_NAME
        and hold.side in {None, "left", "right", "both"}
        and hold.since <= (hold.lifted_on or given.today) <= given.today
    )


def _can_matter(matter: MatterData, given: Given) -> bool:
    last = matter.settled_at or matter.opened_at
    return (
        len(matter.exercise or "") <= LONGEST_NAME
        and (matter.settled_at is None) == (matter.remedy is None)
        and matter.opened_at <= last
        and last.date() <= given.today + timedelta(days=1)
        and is_sound(matter.reason, matter.exercise, matter.evidence)
    )


def _read(text: str) -> JournalData | Found:
    try:
        # Not every database can keep the sign of the number 0.
        return JournalData.model_validate_json(text.lstrip("\ufeff").replace("\\u0000", "\\ufffd"))
    except (ValidationError, RecursionError) as error:
        place = ""
        if isinstance(error, ValidationError):
            first = error.errors(include_url=False, include_context=False, include_input=False)[0]
            place = ".".join(str(each) for each in first["loc"])[:100]
        return Found(head_fault="not a journal", shown=place)


def _sets(workout: WorkoutData) -> list[FoundSet]:
    return [
        FoundSet(
            0,
            TrainingSet(
                exercise=each.exercise,
                load=each.load,
                unit=each.unit,
                load_kind=each.load_kind,
                reps=each.reps,
                seconds=each.seconds,
                lowering_only=each.lowering_only,
                to_failure=each.to_failure,
                rir=each.in_reserve,
                on=each.day or workout.day,
            ),
            each.load_kind,
            each.recorded_at,
        )
        for each in workout.sets
    ]
