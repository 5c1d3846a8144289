"""Sets that were understood become entries, and each exercise they touch gets its verdict and its target."""

from collections.abc import Container, Iterable, Sequence
from dataclasses import replace
from itertools import chain, repeat
from typing import Literal

from domain.calendar import day_lived
from domain.client.closing import finish, sum_up_closed
from domain.client.draft import Draft
from domain.client.eager import watch_eagerness
from domain.client.equipping import take_as_there, tell_equipment
from domain.client.exposures import history, sets_done
from domain.client.lines import Line, caution_for, hold_on, is_of, line_named
from domain.client.pain import tell_of_held
from domain.client.plan import (
    back_to,
    corrected_at_once,
    is_lighter,
    plates_for,
    reckoned_from,
    target_for,
)
from domain.client.rotation import BESIDE, is_complete
from domain.client.stalls import Done, look_again, look_for_stalls
from domain.client.trouble import ask_about_stalls
from domain.client.verdicts import is_on_target, verdict_on, was_eased
from domain.client.workouts import best_fit, day_told_of, workout_for
from domain.exposure import Exposure
from domain.journal import Entry, WorkoutRecord
from domain.memory import PutRight
from domain.outcome import Recorded, TakenBack, WorkoutKept
from domain.parts import TargetPart, VerdictPart
from domain.sets import TrainingSet
from domain.target import Target
from domain.values import facts_of

UNDOES = 12
"""How many sets that were put right can be had back as they were. The house's own choice."""

Touched = dict[tuple[int, str], list[TrainingSet]]
"""By workout and exercise, the sets that were recorded just now."""


def record(draft: Draft, sets: Sequence[TrainingSet], message: int, places: Sequence[int] = ()) -> None:
    """Record `sets` as told in inbox message `message`, and answer with verdicts and targets.

    `places` are those of the entries that the sets stand instead of, where there were such.
    """
    touched = enter(draft, sets, message, places)
    now = {draft.today, day_lived(draft.at, draft.zone)}
    of_now = [key for key, done in touched.items() if now & {each.on for each in done}]
    shown = take_as_there(draft, {name for _, name in of_now}, {number for number, _ in of_now})
    answer_all(draft, touched)
    if shown is not None:
        tell_equipment(draft, shown)


def correct(draft: Draft, pairs: Sequence[tuple[Entry, TrainingSet]], message: int) -> None:
    """Put each entry right by the set beside it, and answer with verdicts and targets."""
    answer_all(draft, supersede(draft, pairs, message), corrected=True)
    recheck(draft, [(old.workout, old.set.exercise) for old, _ in pairs])


def enter(draft: Draft, sets: Sequence[TrainingSet], message: int, places: Sequence[int] = ()) -> Touched:
    """Make entries of `sets`, and say nothing of it."""
    today = day_told_of(draft)
    touched: Touched = {}
    place = chain(places, repeat(places[-1] if places else None))
    for on in dict.fromkeys(each.on or today for each in sets):
        of_day = [each for each in sets if (each.on or today) == on]
        workout = workout_for(draft, on, tuple(dict.fromkeys(each.exercise for each in of_day)))
        for each in of_day:
            done = replace(each, on=on)
            draft.change(Recorded(new_entry(draft, workout.number, done, message, next(place))))
            touched.setdefault((workout.number, each.exercise), []).append(done)
    draft.remember(last_reported_at=draft.at)
    return touched


def supersede(draft: Draft, pairs: Sequence[tuple[Entry, TrainingSet]], message: int) -> Touched:
    """Let the set beside each entry stand instead of it; what was wrong is remembered for an undo."""
    touched: Touched = {}
    remembered: list[PutRight] = []
    move_whole(draft, pairs)
    for old, right in pairs:
        done = replace(right, on=right.on or old.set.on)
        workout = old.workout
        if done.on is not None and done.on not in {old.set.on, workout_by_number(draft, workout).on}:
            workout = workout_for(draft, done.on, (done.exercise,)).number
        elif done.exercise != old.set.exercise:
            workout = workout_put_right(draft, old, done.exercise, {each.number for each, _ in pairs})
        entry = new_entry(draft, workout, done, message, old.order[0])
        draft.change(Recorded(entry, instead_of=old.number))
        remembered.append(
            PutRight(
                entry=entry.number,
                was=old.set,
                workout=old.workout,
                message=old.message,
                replaced=old.number,
                at=old.at,
            )
        )
        touched.setdefault((workout, done.exercise), []).append(done)
    drop_emptied(draft, [old.workout for old, _ in pairs])
    draft.remember(put_right=(*draft.memory.put_right, *remembered)[-max(UNDOES, len(remembered)) :])
    return touched


def move_whole(draft: Draft, pairs: Sequence[tuple[Entry, TrainingSet]]) -> None:
    """Let a workout be on another day where all that stands of it is put there, and none like it is there."""
    for number in dict.fromkeys(old.workout for old, _ in pairs):
        record = workout_by_number(draft, number)
        days = {right.on or old.set.on for old, right in pairs if old.workout == number}
        standing = {each.number for each in draft.state.entries if each.workout == number}
        on = days.pop() if len(days) == 1 else None
        taken = any((each.name, each.on) == (record.name, on) for each in draft.state.workouts)
        is_whole = {old.number for old, _ in pairs} >= standing
        if is_whole and on is not None and on != record.on and not taken:
            draft.change(WorkoutKept(replace(record, on=on)))


def drop_emptied(draft: Draft, numbers: Iterable[int], as_what: Literal["none", "missed"] = "none") -> None:
    """Let workouts of which nothing is left, as all of it was of another day, be none, or be missed again."""
    kept = {each.workout for each in draft.state.entries}
    for number in dict.fromkeys(numbers):
        record = workout_by_number(draft, number)
        if number not in kept and record.state == "done":
            missed = replace(record, state="missed")
            none = replace(record, name=BESIDE, skipped=())
            draft.change(WorkoutKept(missed if as_what == "missed" else none))


def workout_put_right(draft: Draft, old: Entry, exercise: str, wrong: Container[int]) -> int:
    """Return the workout of a set that was of another `exercise` than recorded: the same one, if that has it.

    A workout of nothing but such `wrong` entries was itself another one of the programme.
    """
    record = workout_by_number(draft, old.workout)
    name = best_fit(draft, (exercise,))
    if is_of(draft.state, record.name, exercise) or name == BESIDE:
        return record.number
    if all(each.number in wrong for each in draft.state.entries if each.workout == record.number):
        draft.change(WorkoutKept(replace(record, name=name, skipped=())))
        return record.number
    return workout_for(draft, old.set.on or record.on, (exercise,)).number


def take_back(draft: Draft, entries: Sequence[Entry], *, whole: bool = False) -> None:
    """Take entries back: they are kept, and no longer count. What one of them had put right stands again.

    That does not, either, where they are taken back as a `whole`.
    """
    undone = {each.entry: each for each in draft.memory.put_right} if not whole else {}
    again = [(entry, undone[entry.number]) for entry in entries if entry.number in undone]
    move_whole(draft, [(entry, wrong.was) for entry, wrong in again if wrong.workout == entry.workout])
    for entry in entries:
        wrong = next((each for each in draft.memory.put_right if each.entry == entry.number), None)
        if wrong is None or whole:
            draft.change(TakenBack(entry.number, draft.at))
        else:
            stand_again(draft, entry, wrong)
    drop_emptied(draft, [entry.workout for entry, wrong in again if wrong.workout != entry.workout], "missed")
    reopen(draft, {entry.workout for entry in entries})
    recheck(draft, [(entry.workout, entry.set.exercise) for entry in entries])


def stand_again(draft: Draft, entry: Entry, wrong: PutRight) -> None:
    """Let what `entry` had put right stand again, as it was; what that had put right stays known."""
    workout = wrong.workout
    is_other = workout == entry.workout and wrong.was.exercise != entry.set.exercise
    if is_other or workout_by_number(draft, workout).name == BESIDE:
        was = replace(entry, workout=workout, set=wrong.was)
        workout = workout_put_right(draft, was, wrong.was.exercise, {entry.number})
    again = new_entry(draft, workout, wrong.was, wrong.message, entry.order[0])
    if wrong.at is not None:
        again = replace(again, at=wrong.at)
    draft.change(Recorded(again, instead_of=entry.number))
    draft.remember(
        put_right=tuple(
            each.model_copy(update={"entry": again.number}) if each.entry == wrong.replaced else each
            for each in draft.memory.put_right
            if each.entry != entry.number
        )
    )


def reopen(draft: Draft, numbers: Iterable[int]) -> None:
    """Open the latest workout again, where entries of it were taken back after it had closed."""
    latest = draft.state.workouts[-1] if draft.state.workouts else None
    if latest is None or latest.number not in numbers or latest.state != "done":
        return
    if not is_complete(draft.state, latest):
        draft.change(WorkoutKept(replace(latest, state="open")))


def recheck(draft: Draft, touched: Iterable[tuple[int, str]]) -> None:
    """Look anew for stalls where sets no longer stand as they were: withdraw one, or tell of one."""
    names = [(workout_by_number(draft, number).name, exercise) for number, exercise in dict.fromkeys(touched)]
    lines = [(name, line_named(draft.state, name, exercise)) for name, exercise in names]
    look_again(draft, [(name, line) for name, line in lines if line is not None])
    watch_for_stalls(draft, touched)


def new_entry(draft: Draft, workout: int, done: TrainingSet, message: int, place: int | None) -> Entry:
    """Return a new entry of this client; `place` is that of the entry that it stands instead of, if any."""
    return Entry(
        number=draft.number("last_entry"),
        workout=workout,
        message=message,
        set=done,
        at=draft.at,
        place=place,
    )


def workout_by_number(draft: Draft, number: int) -> WorkoutRecord:
    """Return the workout of that number, as it now is."""
    return next(each for each in draft.state.workouts if each.number == number)


def answer_all(draft: Draft, touched: Touched, *, corrected: bool = False) -> None:
    """Answer with verdicts and targets, then say what was more than asked, what is complete, what stalls."""
    if draft.memory.barred:
        sets = [facts_of(done) for recorded in touched.values() for done in recorded]
        draft.notice("written down", sets=sets)
    else:
        for (number, exercise), recorded in touched.items():
            answer(draft, workout_by_number(draft, number), exercise, tuple(recorded), corrected=corrected)
        watch_eagerness(draft)
    sum_up_closed(draft)
    for number in dict.fromkeys(number for number, _ in touched):
        close_if_complete(draft, workout_by_number(draft, number))
    watch_for_stalls(draft, touched)
    tell_of_held(draft, [done for recorded in touched.values() for done in recorded])


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
    verdict = verdict_on(draft.state, past)
    on = recorded[-1].on
    is_of_now = on in {draft.today, day_lived(draft.at, draft.zone)}
    line = line_named(draft.state, workout.name, exercise)
    aimed = target_for(draft.state, line, earlier, workout.on) if line is not None and earlier else None
    draft.say(
        VerdictPart(
            exercise=exercise,
            result=verdict.result,
            set=verdict.set,
            before=verdict.before,
            recorded=now.sets if corrected else recorded,
            sets_before=0 if corrected else len(now.sets) - len(recorded),
            on=None if on == draft.read_on else on,
            corrected=corrected,
            personal_best=verdict.personal_best,
            held=hold_on(draft.state, exercise) is not None,
            reason=verdict.reason,
            in_order=verdict.in_order,
            eased=was_eased(draft.state, past, verdict, aimed),
            on_target=is_on_target(verdict.set, aimed),
            caution=None
            if corrected or len(now.sets) > len(recorded)
            else caution_for(draft.state, exercise, line.instead_of if line else None),
        )
    )
    if line is None or line.held is not None:
        return
    if sets_done(draft.state, workout, exercise) >= line.prescription.sets:
        aim_for(draft, line, history(draft.state, workout.name, exercise))
    elif is_of_now and earlier:
        aim_for(draft, line, earlier, in_workout=workout, just_done=recorded[-1])
    elif is_of_now and (target := corrected_at_once(draft.state, line, past, draft.today)) is not None:
        say_aim(draft, line, target, past, "next set", put_right=True)


def watch_for_stalls(draft: Draft, touched: Iterable[tuple[int, str]]) -> None:
    """Look for stalls of exercises whose sets are all done; told last, since it ends in a question."""
    if draft.memory.barred:
        return
    done = [
        each for number, exercise in dict.fromkeys(touched) if (each := all_done(draft, number, exercise))
    ]
    ask_about_stalls(draft, look_for_stalls(draft, done))


def all_done(draft: Draft, number: int, exercise: str) -> Done | None:
    """Return the workout's name and the line of `exercise` in it, once all its sets are done."""
    workout = workout_by_number(draft, number)
    line = line_named(draft.state, workout.name, exercise)
    if line is None or line.held is not None:
        return None
    if sets_done(draft.state, workout, exercise) < line.prescription.sets:
        return None
    return workout.name, line


def aim_for(
    draft: Draft,
    line: Line,
    past: tuple[Exposure, ...],
    *,
    in_workout: WorkoutRecord | None = None,
    just_done: TrainingSet | None = None,
) -> None:
    """Say what to aim for after `past`: in the next set of the workout given, or without one next time.

    Who has `just_done` a set with another load today goes an own way, and is not sent back in the middle.
    """
    target = target_for(draft.state, line, past, in_workout.on if in_workout else draft.today)
    if not isinstance(target, Target):
        return
    aim = target.as_set()
    if just_done is not None and (just_done.load_kind, just_done.kg) != (aim.load_kind, aim.kg):
        return
    say_aim(draft, line, target, past, "next set" if in_workout else "next time")


def say_aim(
    draft: Draft,
    line: Line,
    target: Target,
    past: tuple[Exposure, ...],
    when: Literal["next set", "next time"],
    *,
    put_right: bool = False,
) -> None:
    """Say a target, reckoned from the exposures `past`; `put_right` where a first load proved wrong."""
    aim = target.as_set()
    draft.say(
        TargetPart(
            exercise=target.exercise,
            when=when,
            load=aim.load,
            unit=aim.unit,
            load_kind=aim.load_kind,
            reps=aim.reps,
            seconds=aim.seconds,
            lowering_only=aim.lowering_only,
            plates_per_side=plates_for(draft.state, aim),
            expected=target.expected,
            lighter=is_lighter(aim, past),
            put_right=put_right,
            reason=target.reason,
            range=line.prescription.range,
            last=reckoned_from(draft.state, line.exercise, past),
            back_to=back_to(draft.state, past),
        )
    )


def close_if_complete(draft: Draft, workout: WorkoutRecord) -> None:
    """Close the workout once all its exercises are done, left out or on hold, and say what comes next."""
    if workout.state != "open" or not is_complete(draft.state, workout):
        return
    finish(draft, workout)
