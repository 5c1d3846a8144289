"""What a client's message is read against: the workout it is about, the journal, the client's own names."""

from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import date, datetime

from domain.calendar import local_day
from domain.client.draft import Draft
from domain.client.lines import Line, in_its_place, is_left_out, lines_of, not_to_do
from domain.client.plan import ahead
from domain.client.rotation import BESIDE, in_turn, under_way
from domain.client.workouts import best_fit, holds, session_day
from domain.entry_order import told
from domain.exercises import describe
from domain.journal import Entry, WorkoutRecord
from domain.programme import FixedDays
from domain.reading import Heard, Planned, Reading, Request, read, whole_workout_told
from domain.sets import TrainingSet
from domain.state import ClientState

DONE_KNOWN = 60
"""How many of the sets recorded last a message is read against."""

A_FEW_WORDS = 4
"""What is no longer than this may be about what the bot has just asked."""


MOST_SETS = 60
"""More sets than anybody tells of in one message. The house's own choice."""


def understand(draft: Draft, text: str) -> Reading:
    """Return what a client's message means; of one that is beyond all measure only what hurts.

    Where a message is cut, its last number may be half a number, so that none of it can be trusted.
    """
    reading = in_programme(draft, text)
    if not reading.cut and len(reading.sets) + len(reading.open) <= MOST_SETS:
        return reading
    return Reading(pain=reading.pain, urgent=reading.urgent, names=reading.names, cut=True)


def understand_of(draft: Draft, text: str, entries: tuple[Entry, ...]) -> Reading | None:
    """Return what a message means that is said of these recorded sets alone; None where it is not of them.

    It is of them where it puts them right or takes them back; what else it may be is read as ever. What is
    said without a day is read as on the day of the sets, too: days later "rows were 9" is still said of them.
    """
    if not entries:
        return None
    draft.pointed_at = entries
    request = request_for(draft, text, [entry.set.exercise for entry in entries])
    on = entries[-1].set.on
    moments = dict.fromkeys((request.sent, datetime.combine(on or draft.today, request.sent.time())))
    for sent in moments:
        reading = read_in_any(draft, replace(request, sent=sent))
        is_of_them = "correct" in reading.wants or "undo" in reading.wants
        is_said_then = sent == request.sent or not says_a_day(reading)
        if (
            is_of_them
            and is_said_then
            and not reading.cut
            and len(reading.sets) + len(reading.open) <= MOST_SETS
        ):
            return reading
    draft.pointed_at = ()
    return None


def put_right_again(draft: Draft, text: str, reading: Reading) -> Reading:
    """Return the `reading`, but of the set put right last where it points at none: "no, make that 10".

    By itself such a correction is of the set that comes last in the order done.
    """
    entries = known(draft)
    latest = max((entry.message for entry in entries), default=0)
    put_right = tuple(entry for entry in entries if entry.message == latest)
    undone = {each.entry for each in draft.memory.put_right}
    pointed = {*reading.replaces, *(each.replaces for each in reading.open)}
    if (
        "correct" not in reading.wants
        or reading.names
        or pointed != {len(entries) - 1}
        or entries[-1] in put_right
        or not all(entry.number in undone and entry.set.on == put_right[0].set.on for entry in put_right)
        or local_day(put_right[0].at, draft.zone) != draft.today
        or POINTS.intersection(text.casefold().split())
    ):
        return reading
    return understand_of(draft, text, put_right) or reading


POINTS = frozenset({"last", "first", "second", "third", "other", "final", "latest"})
"""Words that point at a set by its place among those done."""


def read_in_any(draft: Draft, request: Request) -> Reading:
    """Return what a message means; a name that is not in its plan is looked for in all of the programme."""
    reading = read(request)
    if "exercise" in reading.asks or not set(reading.names) <= {each.name for each in request.plan}:
        return read(replace(request, plan=(*request.plan, *of_other_workouts(draft, request))))
    return reading


def in_programme(draft: Draft, text: str) -> Reading:
    """Return what a message means: of another workout of the programme, where it names only that.

    A name that fits nothing in the workout at hand ("row" on a day for the legs) is looked for in the others.
    """
    whole = whole_workout_of(draft, text)
    if whole is not None:
        return whole
    request = request_for(draft, text)
    reading = read(request)
    names = reading.names
    if "exercise" in reading.asks:
        names = read(replace(request, plan=(*request.plan, *of_other_workouts(draft, request)))).names
    if workout_meant(draft, names) == workout_meant(draft):
        return reading
    return read(request_for(draft, text, names))


def whole_workout_of(draft: Draft, text: str) -> Reading | None:
    """Return the reading of a whole workout of a day gone by, told in one breath: each exercise as aimed for.

    None where it tells of none, or where it is not plain which workout that day had.
    """
    told_of = whole_workout_told(text, draft.local)
    workout = workout_of_day(draft, told_of.on) if told_of is not None else None
    if told_of is None or workout is None:
        return None
    request = request_for(draft, told_of.text, workout=workout)
    reading = read(replace(request, sent=datetime.combine(told_of.on, request.sent.time())))
    return replace(reading, words=(*reading.words, Heard(told_of.start, told_of.end, "a day")))


def workout_of_day(draft: Draft, day: date) -> tuple[str, WorkoutRecord | None] | None:
    """Return the workout that a day gone by had, and its record where it has one; None where it is not plain.

    It is the one that stands for that day, or was under way; else the one in turn, unless each day of the
    week has its own, or another was done since.
    """
    records = [record for record in draft.state.workouts if record.name != BESIDE]
    of_day = [record for record in records if record.on == day]
    begun, coming = under_way(draft.state, draft.today), in_turn(draft.state, draft.today)
    if of_day:
        return (of_day[0].name, of_day[0]) if len(of_day) == 1 else None
    if begun is not None and begun.on < day:
        return begun.name, begun
    if coming is None or any(record.on > day for record in records):
        return None
    stored = draft.client.programme
    schedule = stored.programme.schedule if stored else None
    has_own = isinstance(schedule, FixedDays) and schedule.by_day
    return (coming.workout, None) if coming.on == day or not has_own else None


def is_told(draft: Draft, day: date) -> bool:
    """Return whether the workout of a day gone by stands as done."""
    workout = workout_of_day(draft, day)
    return workout is not None and workout[1] is not None and workout[1].state == "done"


def of_other_workouts(draft: Draft, request: Request) -> tuple[Planned, ...]:
    """Return the exercises of the other workouts: known by name, with nothing of them to be done."""
    stored = draft.client.programme
    known_already = {each.name for each in request.plan}
    lines = [
        line
        for workout in (stored.programme.workouts if stored else ())
        for line in lines_of(draft.state, workout.name)
        if line.exercise not in known_already
    ]
    return tuple({line.exercise: planned(line, 0, None) for line in lines}.values())


def request_for(
    draft: Draft,
    text: str,
    names: Sequence[str] = (),
    *,
    workout: tuple[str, WorkoutRecord | None] | None = None,
) -> Request:
    """Return the request to read `text` with, as of the draft's moment.

    It speaks of the exercises `names`, or of that `workout`, begun or not.

    What was asked about goes before the rest of the plan, for a short answer that is no plain answer.
    """
    state = draft.state
    name, record = workout or workout_meant(draft, names)
    lines = lines_of(state, name)
    out = not_to_do(state, record)
    plan: list[Planned] = []
    last: dict[str, TrainingSet] = {}
    target: dict[str, TrainingSet] = {}
    for line in lines:
        is_ahead = ahead(state, name, line, draft.today, record)
        if is_ahead.to_beat is not None:
            last[line.exercise] = is_ahead.to_beat
        if is_ahead.target is not None:
            target[line.exercise] = is_ahead.target
        is_to_do = not line.is_aside and not is_left_out(line, out)
        sets = line.prescription.sets - done_otherwise(draft, record, line) if is_to_do else 0
        plan.append(planned(line, max(0, sets), is_ahead.to_beat))
    plan += [known_only(line, line.instead_of) for line in lines if line.instead_of]
    planned_names = {line.exercise for line in lines}
    for entry in state.entries:
        if entry.set.exercise not in planned_names:
            # What is done beside this workout is held to what was done of it before.
            last[entry.set.exercise] = entry.set
    if len(text.split()) <= A_FEW_WORDS:
        asked = exercises_asked_about(draft)
        plan.sort(key=lambda each: each.name not in asked)
    return Request(
        text=text,
        unit=state.client.unit,
        sent=draft.local.replace(microsecond=0),
        plan=tuple(plan),
        done=tuple(entry.set for entry in known(draft)),
        last=last,
        target=target,
        own_names=state.client.own_names,
    )


def workout_meant(draft: Draft, names: Sequence[str] = ()) -> tuple[str, WorkoutRecord | None]:
    """Return the workout that a message is about, and its record where it has begun.

    It is the one under way; else the one that is due; else the one done today, of which nothing is left; else
    the one to come. Where that has none of the exercises `names` and another of the programme has, it is
    that one.
    """
    name, record = workout_at_hand(draft)
    other = best_fit(draft, tuple(names)) if names else BESIDE
    if other == BESIDE or holds(draft.state, name, names):
        return name, record
    return other, of_today(draft, other)


def workout_at_hand(draft: Draft) -> tuple[str, WorkoutRecord | None]:
    """Return the workout that is meant where no exercise is named, and its record where it has begun."""
    record = under_way(draft.state, draft.today)
    coming = in_turn(draft.state, draft.today)
    if record is None and (coming is None or coming.on > draft.today):
        record = of_today(draft)
    if record is not None:
        return record.name, record
    return (coming.workout if coming else BESIDE), None


def of_today(draft: Draft, name: str | None = None) -> WorkoutRecord | None:
    """Return the workout (of that name) trained today, were it only the rest of one, if there is one."""
    day = session_day(draft)
    today = {entry.workout for entry in draft.state.entries if entry.set.on == day}
    for record in reversed(draft.state.workouts):
        if record.number in today and record.name != BESIDE and name in {None, record.name}:
            return record
    return None


def says_a_day(reading: Reading) -> bool:
    """Return whether the message says on which day its sets were done."""
    return any(each.became == "a day" for each in reading.words)


def exercises_asked_about(draft: Draft) -> frozenset[str]:
    """Return the exercises whose unfinished sets are asked about."""
    question = draft.question("sets")
    unfinished = question.about["unfinished"] if question else ()
    return frozenset(each["open"]["exercise"] or "" for each in unfinished)


def known(draft: Draft) -> tuple[Entry, ...]:
    """Return the entries a message is read against, oldest first."""
    return draft.pointed_at or told(draft.state)[-DONE_KNOWN:]


def came_of(state: ClientState, message: int | None, places: Collection[int]) -> tuple[Entry, ...]:
    """Return what stands of the sets that `message` has told of, at these `places`, whoever put it right."""
    return tuple(entry for entry in state.entries if entry.message == message or entry.order[0] in places)


def done_otherwise(draft: Draft, record: WorkoutRecord | None, line: Line) -> int:
    """Return how many sets of `line` stand in that workout from other days, or were done in its place."""
    if record is None:
        return 0
    return sum(
        1
        for entry in draft.state.entries
        if entry.workout == record.number
        and (
            entry.set.exercise in in_its_place(line)
            or (entry.set.exercise == line.exercise and entry.set.on != draft.today)
        )
    )


def planned(line: Line, sets: int, last: TrainingSet | None) -> Planned:
    """Return a line of the plan as the reading knows it.

    One of which no more sets are to be done (0) is known by its name, and takes none without it.
    """
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


def known_only(line: Line, exercise: str) -> Planned:
    """Return the exercise that `line` replaces: nothing of it is to be done, but it can be spoken of."""
    counted = describe(exercise).counted
    return replace(
        planned(line, 0, None),
        name=exercise,
        load_kind=None if counted == "total" else counted,
        lowering_only=False,
    )
