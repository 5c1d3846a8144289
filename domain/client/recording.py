"""Sets that were understood become entries, and each exercise they touch gets its verdict and its target."""

from collections.abc import Sequence
from dataclasses import replace

from domain.client.draft import Draft
from domain.client.exposures import history, sets_done
from domain.client.lines import Line, hold_on, lines_of
from domain.client.plan import body_mass_kg, plates_for, target_for
from domain.client.rotation import due, is_complete, workout_for
from domain.client.stalls import look_back, look_for_stall
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import Entry, WorkoutRecord
from domain.outcome import Recorded, TakenBack, WorkoutKept
from domain.parts import TargetPart, VerdictPart
from domain.sets import TrainingSet
from domain.target import Target
from domain.values import reason_of
from domain.verdict import judge


def record(draft: Draft, sets: Sequence[TrainingSet], message: int) -> None:
    """Record `sets` as told in inbox message `message`, and answer with verdicts and targets."""
    touched: dict[tuple[int, str], list[TrainingSet]] = {}
    for on in dict.fromkeys(each.on or draft.today for each in sets):
        of_day = [each for each in sets if (each.on or draft.today) == on]
        workout = workout_for(draft, on, tuple(dict.fromkeys(each.exercise for each in of_day)))
        for each in of_day:
            draft.change(Recorded(new_entry(draft, workout.number, replace(each, on=on), message)))
            touched.setdefault((workout.number, each.exercise), []).append(each)
    draft.remember(last_reported_at=draft.at)
    for (number, exercise), recorded in touched.items():
        answer(draft, workout_by_number(draft, number), exercise, tuple(recorded))
    for number in dict.fromkeys(number for number, _ in touched):
        close_if_complete(draft, workout_by_number(draft, number))
    for number, exercise in touched:
        watch_for_stall(draft, workout_by_number(draft, number), exercise)


def correct(draft: Draft, pairs: Sequence[tuple[Entry, TrainingSet]], message: int) -> None:
    """Put each entry right: the set beside it supersedes it."""
    for old, right in pairs:
        moved = right.on is not None and right.on != old.set.on
        workout = (
            workout_for(draft, right.on, (right.exercise,)).number
            if moved and right.on is not None
            else old.workout
        )
        entry = new_entry(draft, workout, replace(right, on=right.on or old.set.on), message)
        draft.change(Recorded(entry, instead_of=old.number))
        answer(draft, workout_by_number(draft, workout), right.exercise, (entry.set,), corrected=True)
        watch_for_stall(draft, workout_by_number(draft, workout), right.exercise)


def take_back(draft: Draft, entries: Sequence[Entry]) -> None:
    """Take entries back: they are kept, and no longer count."""
    for entry in entries:
        draft.change(TakenBack(entry.number, draft.at))


def new_entry(draft: Draft, workout: int, done: TrainingSet, message: int) -> Entry:
    """Return a new entry of this client."""
    return Entry(number=draft.number("last_entry"), workout=workout, message=message, set=done, at=draft.at)


def workout_by_number(draft: Draft, number: int) -> WorkoutRecord:
    """Return the workout of that number, as it now is."""
    return next(each for each in draft.state.workouts if each.number == number)


def answer(
    draft: Draft,
    workout: WorkoutRecord,
    exercise: str,
    recorded: tuple[TrainingSet, ...],
    *,
    corrected: bool = False,
) -> None:
    """Say the verdict on `exercise` in that workout, and what to aim for next."""
    past = history(draft.state, workout.name, exercise, until=workout)
    now, earlier = past[-1], past[:-1]
    about = describe(exercise)
    verdict = judge(
        now,
        earlier[-1] if earlier else None,
        earlier,
        body_mass_kg=body_mass_kg(draft.state),
        body_share=about.body_share,
        joints=about.joints,
    )
    draft.say(
        VerdictPart(
            exercise=exercise,
            result=verdict.result,
            set=verdict.set,
            before=verdict.before,
            recorded=recorded,
            corrected=corrected,
            personal_best=verdict.personal_best and hold_on(draft.state, exercise) is None,
            reason=reason_of(verdict.reason),
            eased=any(each.exercise == exercise for each in draft.memory.easings),
        )
    )
    line = line_named(draft, workout, exercise)
    if line is None or line.held is not None or draft.memory.barred:
        return
    complete = sets_done(draft.state, workout, exercise) >= line.prescription.sets
    if complete:
        end_easing(draft, exercise)
    aim_for_next(draft, line, past if complete else earlier, complete=complete)


def watch_for_stall(draft: Draft, workout: WorkoutRecord, exercise: str) -> None:
    """Look for a stall once all sets of `exercise` are done; it is told last, since it ends in a question."""
    line = line_named(draft, workout, exercise)
    if line is None or line.held is not None or draft.memory.barred:
        return
    if sets_done(draft.state, workout, exercise) >= line.prescription.sets:
        look_for_stall(draft, line, history(draft.state, workout.name, exercise, until=workout))


def end_easing(draft: Draft, exercise: str) -> None:
    """Once the lighter load was done, build back from it: the easing is spent."""
    left = tuple(each for each in draft.memory.easings if each.exercise != exercise)
    if left != draft.memory.easings:
        draft.remember(easings=left)


def line_named(draft: Draft, workout: WorkoutRecord, exercise: str) -> Line | None:
    """Return the line of the workout for `exercise`; None where the sheet has it not in there."""
    for line in lines_of(draft.state, workout.name):
        if line.exercise == exercise:
            return line
    return None


def aim_for_next(draft: Draft, line: Line, past: tuple[Exposure, ...], *, complete: bool) -> None:
    """Say what to aim for: in the next set of today, or the next time where all sets are done."""
    target = target_for(draft.state, line, past)
    if not isinstance(target, Target):
        return
    aim = target.as_set()
    draft.say(
        TargetPart(
            exercise=line.exercise,
            when="next time" if complete else "next set",
            load=aim.load,
            unit=aim.unit,
            load_kind=aim.load_kind,
            reps=aim.reps,
            seconds=aim.seconds,
            lowering_only=aim.lowering_only,
            plates_per_side=plates_for(draft.state, aim),
            expected=target.expected,
            reason=reason_of(target.reason),
        )
    )


def close_if_complete(draft: Draft, workout: WorkoutRecord) -> None:
    """Close the workout once all its exercises are done, skipped or on hold, and say what comes next."""
    if workout.state == "open" and is_complete(draft.state, workout):
        close(draft, workout)
        coming = due(draft.state, draft.today)
        draft.notice(
            "workout done",
            workout=workout.name,
            next=coming.workout if coming else None,
            on=coming.on.isoformat() if coming else None,
        )


def close(draft: Draft, workout: WorkoutRecord) -> None:
    """Close a workout; where it ends a round, see whether a review is due."""
    draft.change(WorkoutKept(replace(workout, state="done")))
    look_back(draft)
