"""An old journal that the coach sends for this client: looked at, asked about, taken in portions, taken out.

Nothing of it is told to the client, nothing of it raises an alert, and its exercises are looked at for stalls
only once some more was done. Everything else sees it in the order of its days.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime, time
from functools import cache
from types import MappingProxyType
from zoneinfo import ZoneInfo

from domain.actions import BringIn, TakeBack
from domain.brought_in import BroughtIn
from domain.client.clearance import is_still_barred
from domain.client.draft import Draft
from domain.client.exposures import last_day_of
from domain.client.lines import is_of
from domain.client.rotation import BESIDE, catch_up
from domain.client.stalls import EXPOSURES_LEFT_ALONE, leave_alone
from domain.client.workouts import best_fit
from domain.entry_order import within
from domain.incoming import JournalSent
from domain.journal import Alert, Entry, ExerciseHold, WorkoutRecord, WorkoutState
from domain.journal_data import without_message
from domain.memory import Brought
from domain.names import name_key
from domain.old_journal import Found, FoundSet, FoundWorkout, read_journal
from domain.old_journal.looking import Looked, exercises_of, has_new, look_through, stands, without
from domain.old_journal.names import LEFT_OUT, Meaning, resolved
from domain.old_journal.showing import shown_of
from domain.outcome import JournalTaken, JournalTakenOut
from domain.parts import File, Notice, Part, Weight
from domain.past import HoldRecord, MatterRecord
from domain.topics import Topic

PORTION = 250
"""How many sets are taken at once, so that nobody waits long behind them. The house's own choice."""

PORTION_OF_WORKOUTS = 250

STEPS = 10
"""In how many steps at most it is shown how far a journal has come. The house's own choice."""


def take_journal_sent(draft: Draft, order: JournalSent) -> None:
    """Look at an old journal, or take the next portion of it."""
    if order.text is None:
        report(draft, "journal gone", order)
        return
    unit, on = order.unit or draft.client.unit, order.on or draft.today
    found = read_journal(order.text, draft.client.name, unit, on, month_first=order.month_first)
    if found.head_fault is not None:
        report(draft, "journal unreadable", order, {"fault": found.head_fault, "shown": found.shown})
    elif order.step == "portion":
        take_portion(draft, order, found)
    elif order.step == "begin":
        begin(draft, order, found)
    else:
        look(draft, order, found)


def look(draft: Draft, order: JournalSent, found: Found) -> None:
    """Ask what is to be known first, one thing at a time; then show what would be taken."""
    if found.which_date is not None:
        buttons = (bring_in(draft, order, "day first"), bring_in(draft, order, "month first"))
        report(draft, "journal days", order, {"shown": found.which_date}, buttons=buttons)
        return
    looked = look_through(draft.state, found, order.exercises)
    if looked.asked:
        ask_name(draft, order, looked.asked)
        return
    takes = has_new(draft.state, looked)
    reading = File(
        what="journal reading",
        of=draft.client.number,
        client=draft.client.name,
        source=order.file,
        exercises=dict(order.exercises),
        month_first=order.month_first,
        on=draft.today,
    )
    buttons = (bring_in(draft, order, "take"), bring_in(draft, order, "leave"))
    facts = shown_of(draft.state, found, looked) | {"takes": takes}
    report(draft, "journal looked at", order, facts, buttons=buttons if takes else (), files=(reading,))


def ask_name(draft: Draft, order: JournalSent, asked: Sequence[Meaning]) -> None:
    """Ask what the first name means that is not known, with a button for each answer."""
    first = asked[0]

    def named(says: str, exercise: str, of: str = "") -> BringIn:
        told = {**order.exercises, first.name: exercise}
        return bring_in(draft, order, says, of=of, exercises=told)

    buttons = [named("means", exercise, exercise) for exercise in first.near]
    buttons.append(named("keep", first.name, first.name))
    buttons.append(named("leave out", LEFT_OUT))
    if len(asked) > 1:
        kept = {each.name: each.name for each in asked}
        buttons.append(
            bring_in(draft, order, "keep all", of=str(len(asked)), exercises={**order.exercises, **kept})
        )
    facts = {"shown": first.name, "many": first.many, "left": len(asked) - 1}
    report(draft, "journal name", order, facts, buttons=tuple(buttons))


def bring_in(
    draft: Draft, order: JournalSent, says: str, *, of: str = "", exercises: dict[str, str] | None = None
) -> BringIn:
    """Return the button that goes on with a journal, with all that is known of it so far."""
    month_first = {"day first": False, "month first": True}.get(says, order.month_first)
    return BringIn.model_validate(
        {
            "client": draft.client.number,
            "file": order.file,
            "name": order.name,
            "exercises": dict(order.exercises) if exercises is None else exercises,
            "month_first": month_first,
            "says": says,
            "of": of,
        }
    )


def begin(draft: Draft, order: JournalSent, found: Found) -> None:
    """Begin to take a journal, as it was shown; what is still to be asked is asked instead."""
    if any(each.change == order.change for each in draft.memory.brought_in):
        return
    looked = look_through(draft.state, found, order.exercises)
    if found.which_date is not None or looked.asked:
        look(draft, order, found)
        return
    if not has_new(draft.state, looked):
        look(draft, order, found)
        return
    made = BroughtIn(change=order.change, name=order.name, on=draft.today, sets=looked.to_take)
    draft.remember(brought_in=(*draft.memory.brought_in, take_beside(draft, made, looked, order.coach)))
    going = order.model_copy(
        update={
            "exercises": dict(looked.exercises),
            "unit": order.unit or draft.client.unit,
            "on": order.on or draft.today,
            "there": looked.there,
        }
    )
    if looked.to_take > PORTION:
        report(draft, "journal begun", order, {"sets": looked.to_take})
        going = going.model_copy(update={"shown_in": draft.message})
    take_portion(draft, going, found)


def take_beside(draft: Draft, made: BroughtIn, looked: Looked, coach: int) -> BroughtIn:
    """Take what was set aside and brought to the coach, as it stood; return what is noted of the journal.

    What is open stays so: the exercise is aside, the matter stands among those that need the coach, who has
    just been told how many they are, and a warning sign bars from training.
    """
    person = {"client": draft.client.number, "coach": coach}
    first_hold, first_matter = draft.memory.last_hold + 1, draft.memory.last_alert + 1
    holds = tuple(
        HoldRecord(
            ExerciseHold(number, each.exercise, each.place, each.side, each.since),
            each.lifted_on,
            person[each.lifted_by or "coach"] if each.lifted_on else None,
        )
        for number, each in enumerate(looked.set_aside, first_hold)
    )
    matters = tuple(
        MatterRecord(
            Alert(number, each.reason, each.exercise, without_message(each.evidence), each.opened_at),
            each.settled_at,
            person[each.settled_by or "coach"] if each.settled_at else None,
            each.remedy,
        )
        for number, each in enumerate(looked.matters, first_matter)
    )
    still_open = [each.alert for each in matters if each.settled_at is None]
    bars = not draft.memory.barred and any(each.reason == "urgent" for each in still_open)
    last_hold, last_matter = first_hold + len(holds) - 1, first_matter + len(matters) - 1
    draft.remember(last_hold=last_hold, last_alert=last_matter, barred=draft.memory.barred or bars)
    if holds or matters:
        draft.change(JournalTaken((), (), holds, matters))
        draft.note_brought(*(Brought(alert=each.number, at=draft.at, again=True) for each in still_open))
    return made.model_copy(
        update={
            "holds": joined((), first_hold, last_hold),
            "matters": joined((), first_matter, last_matter),
            "bars": bars,
        }
    )


def beside_of(made: BroughtIn) -> dict[str, int]:
    """Return how many holds and matters came with a journal."""
    holds, matters = (sum(last - first + 1 for first, last in each) for each in (made.holds, made.matters))
    return {"with_holds": holds, "with_matters": matters}


def take_portion(draft: Draft, order: JournalSent, found: Found) -> None:
    """Take the next portion; order the one after it, or say that all is taken."""
    made = next((each for each in draft.memory.brought_in if each.change == order.change), None)
    if made is None:
        return  # it was taken out again meanwhile
    workouts, _ = resolved(found.workouts, order.exercises, is_ours=found.is_ours)
    portion: list[FoundWorkout] = []
    following: int | None = None
    for at, workout in without(workouts, order.there, order.start):
        many = sum(len(each.sets) for each in portion)
        if portion and (many + len(workout.sets) > PORTION or len(portion) == PORTION_OF_WORKOUTS):
            following = at
            break
        portion.append(workout)
    before, made = made, record(draft, made, portion, is_ours=found.is_ours)
    if following is not None:
        if step_of(made) != step_of(before):
            facts = {"sets": made.sets, "taken": made.taken}
            report(draft, "journal coming", order, facts, instead_of=order.shown_in)
        draft.go_on(order.model_copy(update={"step": "portion", "start": following, "text": None}))
        return
    let_be(draft, workouts)
    catch_up(draft)
    undo = TakeBack(client=draft.client.number, change=made.change)
    facts = {"sets": made.taken, **beside_of(made)}
    report(draft, "journal taken", order, facts, buttons=(undo,), instead_of=order.shown_in)


def step_of(made: BroughtIn) -> int:
    """Return in which of the steps it is in which it is shown how far a journal has come."""
    return made.taken * STEPS // max(1, made.sets)


def record(draft: Draft, made: BroughtIn, portion: Iterable[FoundWorkout], *, is_ours: bool) -> BroughtIn:
    """Record a portion of workouts; return what is noted of the journal from now on."""
    records: list[WorkoutRecord] = []
    entries: list[Entry] = []
    number, last = draft.memory.last_entry, draft.memory.last_workout
    standing = {
        (each.on, each.name): each
        for each in draft.state.workouts
        if each.state in {"open", "done"} and not (is_ours and within(each.number, made.workouts))
    }
    zone = ZoneInfo(draft.client.zone)

    @cache
    def fit(*exercises: str) -> str:
        return best_fit(draft, exercises)

    for workout in (part for whole in portion for part in as_ours(draft, whole, fit, is_ours=is_ours)):
        if not workout.sets and stands(draft.state, workout):
            continue
        name = workout.name or BESIDE
        there = standing.get((workout.day, name))
        if there is None or (there.round != workout.round and is_ours) or not workout.sets:
            last += 1
            state = state_of(draft, workout)
            there = WorkoutRecord(last, None, name, workout.day, state, workout.round, workout.skipped)
            records.append(there)
            if not is_ours:
                standing[workout.day, name] = there
        for each in workout.sets:
            number += 1
            told_at = each.at or noon(each, workout, zone)
            entries.append(Entry(number, there.number, draft.message, each.done, min(told_at, draft.at)))
    noted = made.model_copy(
        update={
            "taken": made.taken + len(entries),
            "entries": joined(made.entries, draft.memory.last_entry + 1, number),
            "workouts": joined(made.workouts, draft.memory.last_workout + 1, last),
        }
    )
    others = (noted if each.change == made.change else each for each in draft.memory.brought_in)
    draft.remember(brought_in=tuple(others), last_entry=number, last_workout=last)
    draft.change(JournalTaken(tuple(records), tuple(entries)))
    return noted


def state_of(draft: Draft, workout: FoundWorkout) -> WorkoutState:
    """Return what becomes of a workout: one under way goes on, unless another does, or one came after it."""
    if workout.state == "open" and any(
        each.state == "open" or each.on > workout.day for each in draft.state.workouts
    ):
        return "done"
    return workout.state


def joined(ranges: tuple[tuple[int, int], ...], first: int, last: int) -> tuple[tuple[int, int], ...]:
    """Return the ranges with one more, which goes on where the last one ends, or stands by itself."""
    if first > last:
        return ranges
    if ranges and ranges[-1][1] == first - 1:
        return (*ranges[:-1], (ranges[-1][0], last))
    return (*ranges, (first, last))


def noon(each: FoundSet, workout: FoundWorkout, zone: ZoneInfo) -> datetime:
    """Return the moment that stands for one that is not known: noon of the day, where the client lives."""
    return datetime.combine(each.done.on or workout.day, time(12), tzinfo=zone).astimezone(UTC)


def as_ours(
    draft: Draft, workout: FoundWorkout, fit: Callable[..., str], *, is_ours: bool
) -> Iterable[FoundWorkout]:
    """Give a workout of an old journal as those that it is taken as, so that the next ones compare with it.

    It is the programme's workout of the same name, else the one with most of the exercises, else what it was
    called. What another workout of the programme has is taken as of that: exercises are compared within one.
    `fit` returns the workout with most of some exercises.
    """
    stored = draft.client.programme
    names = {name_key(each.name): each.name for each in (stored.programme.workouts if stored else ())}
    if is_ours or not workout.sets:
        yield workout
        return
    known = names.get(name_key(workout.name or ""))
    exercises = dict.fromkeys(each.done.exercise for each in workout.sets)
    best = known or fit(*exercises)
    own = {each: fit(each) for each in exercises if not is_of(draft.state, best, each)}
    sets: dict[str, list[FoundSet]] = {}
    for one in workout.sets:
        taken_as = own.get(one.done.exercise, best) or best or workout.name or BESIDE
        sets.setdefault(taken_as, []).append(one)
    for name, some in sets.items():
        yield replace(workout, name=name, sets=tuple(some))


def let_be(draft: Draft, workouts: Iterable[FoundWorkout]) -> None:
    """Look for no stall of what was brought in until some more of it is done: a programme begins anew."""
    last: dict[str, object] = {}
    for workout in workouts:
        last |= {each.done.exercise: each.done.on for each in workout.sets}
    for exercise in exercises_of(replace(draft.state, entries=())):
        if exercise in last and last_day_of(draft.state, exercise) == last[exercise]:
            leave_alone(draft, exercise, EXPOSURES_LEFT_ALONE)


def take_out(draft: Draft, change: int) -> bool:
    """Take a journal out again that message `change` has brought in; return whether there was one.

    What the client has put right of it since stays, being the client's own words.
    """
    made = next((each for each in draft.memory.brought_in if each.change == change), None)
    if made is None:
        return False
    others = {entry.workout for entry in draft.state.entries if not within(entry.number, made.entries)}
    numbered = {each.number for each in draft.state.workouts if within(each.number, made.workouts)}
    kept = frozenset(others & numbered)
    draft.change(JournalTakenOut(made.entries, made.workouts, kept, made.holds, made.matters))
    draft.note_brought()
    if made.bars and not any(each.reason == "urgent" for each in draft.state.alerts):
        draft.remember(barred=is_still_barred(draft))
    draft.remember(
        brought_in=tuple(each for each in draft.memory.brought_in if each.change != change),
        workouts_gone=draft.memory.workouts_gone + len(numbered - others),
    )
    facts = {"client": draft.client.name, "name": made.name, "sets": made.taken, **beside_of(made)}
    draft.tell_coach(Notice(topic="journal taken out", facts=facts), weight="answer")
    return True


def report(
    draft: Draft,
    topic: Topic,
    order: JournalSent,
    facts: Mapping[str, object] = MappingProxyType({}),
    *,
    buttons: tuple[BringIn | TakeBack, ...] = (),
    files: tuple[File, ...] = (),
    instead_of: int | None = None,
) -> None:
    """Tell the coach what comes of a journal."""
    parts: tuple[Part, ...] = (
        Notice(topic=topic, facts={"client": draft.client.name, "name": order.name, **facts}),
        *files,
    )
    weight: Weight = "nudge" if topic == "journal coming" else "answer"
    draft.tell_coach(*parts, buttons=buttons, weight=weight, instead_of=instead_of)
