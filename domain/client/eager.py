"""Where a client does more than was asked: found in the journal, kept for the coach's digest, told kindly.

What is found follows from the journal alone, so a correction or an undo withdraws it. It is looked for in
the workouts that a decision touches, while what was asked for can still be reckoned as it was then; a matter
stays as long as it is still to be found there. What is put right in one workout makes no matter of a later
one: of that something else was asked at the time.
"""

from datetime import date, timedelta

from domain.client.beyond_sheet import matters_in
from domain.client.draft import Draft
from domain.client.exposures import moment
from domain.client.lines import hold_on
from domain.client.rotation import BESIDE, due, is_complete
from domain.journal import WorkoutRecord
from domain.memory import EagerKept
from domain.parts import Eager
from domain.programme import Rotation
from domain.values import facts_of

TELL_AGAIN_AFTER = timedelta(weeks=4)
"""The same matter of the same exercise is told again after that long at the soonest; the coach sees it each
time. The house's own choice."""

MOST_KEPT = 60
"""How many matters are kept at most. The house's own choice."""


def watch_eagerness(draft: Draft) -> None:
    """Look where the client has just done more than was asked, and say so: once, and not beside pain."""
    new = reckon(draft)
    by_matter = {(each.what.exercise, each.what.rule): each for each in new if is_to_tell(draft, each)}
    telling = list(by_matter.values())
    if not telling or draft.has_caution:
        return
    told, is_first = {key(each) for each in telling}, not any(each.told for each in draft.memory.eager)
    draft.remember(
        eager=tuple(
            each.model_copy(update={"told": True}) if key(each) in told else each
            for each in draft.memory.eager
        )
    )
    too_early = any(each.what.rule == "too soon" for each in telling)
    coming = due(draft.state, draft.today) if too_early and not is_to_close(draft, telling) else None
    if coming is not None and draft.is_stale(coming.on):
        coming = None
    draft.notice(
        "more than asked",
        coach=draft.client.coach.name,
        matters=[facts_of(each.what) for each in telling],
        is_first=is_first,
        counted_on=is_counted_on(draft),
        next=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
    )


def reckon(draft: Draft) -> tuple[EagerKept, ...]:
    """Bring what is kept to what the journal now shows; return what is new.

    Nothing new is made a matter of while the client is not to train at all.
    """
    touched = workouts_touched(draft)
    if not touched:
        return ()
    memory, numbers = draft.memory, {record.number for record in touched}
    looked_at = to_look_at(draft, touched)
    found = {
        (record.number, what.exercise, str(what.rule)): what
        for record in looked_at
        for what in matters_in(draft.state, record, draft.at)
    }
    again = {record.number for record in looked_at}
    kept = tuple(
        renewed(each, found.get(key(each), each.what))
        for each in memory.eager
        if each.what.at > draft.at - TELL_AGAIN_AFTER
        and (key(each) in found if each.workout in again else stands(draft, each))
    )
    known = {key(each) for each in kept}
    new = tuple(
        EagerKept(workout=at[0], what=what)
        for at, what in found.items()
        if at not in known and at[0] in numbers and is_new(draft, at[0], what)
    )
    if (*kept, *new) != memory.eager:
        draft.remember(eager=(*kept, *new)[-MOST_KEPT:])
    return new


def stands(draft: Draft, kept: EagerKept) -> bool:
    """Return whether sets that a matter was made of still stand, in a workout that is not looked at again."""
    return any(
        entry.workout == kept.workout and kept.what.exercise in {None, entry.set.exercise}
        for entry in draft.state.entries
    )


def renewed(kept: EagerKept, what: Eager) -> EagerKept:
    """Return a matter as it now is, with the moment at which it came to light."""
    at = kept.what.at
    return kept.model_copy(update={"what": what.model_copy(update={"at": at})})


def is_new(draft: Draft, number: int, what: Eager) -> bool:
    """Return whether what was found in that workout is to be made a matter of at all.

    It is none while the client is not to train at all, nor of what is set aside because it hurts: there is
    something else to say. A day is too soon from
    the first set on or never, and not where the bot said itself that it was the day.
    """
    if draft.memory.barred:
        return False
    if what.exercise is not None:
        return hold_on(draft.state, what.exercise) is None
    had_begun = any(entry.workout == number for entry in draft.start.entries)
    others = any(
        entry.workout != number and entry.set.on == what.on and is_of_rotation(draft, entry.workout)
        for entry in draft.state.entries
    )
    is_asked_for = draft.memory.reminded_on == what.on and not is_moved_to(draft, what.on) and not others
    return not had_begun and not is_asked_for


def is_moved_to(draft: Draft, on: date) -> bool:
    """Return whether the client had moved the workout to that day, and was told then of the rest days."""
    return draft.start.memory.moved_to == on


def is_of_rotation(draft: Draft, number: int) -> bool:
    """Return whether that workout is one of the programme's."""
    return any(each.number == number and each.name != BESIDE for each in draft.state.workouts)


def to_look_at(draft: Draft, touched: list[WorkoutRecord]) -> list[WorkoutRecord]:
    """Return the workouts touched, and the later ones of which a matter is kept; of the present sheet."""
    stored, since = draft.client.programme, min(moment(record) for record in touched)
    numbers = {*(each.number for each in touched), *(each.workout for each in draft.memory.eager)}
    return [
        each
        for each in draft.state.workouts
        if stored is not None
        and each.programme == stored.number
        and each.number in numbers
        and moment(each) >= since
    ]


def key(kept: EagerKept) -> tuple[int, str | None, str]:
    """Return what makes a matter the same one: workout, exercise and rule."""
    return (kept.workout, kept.what.exercise, kept.what.rule)


def workouts_touched(draft: Draft) -> list[WorkoutRecord]:
    """Return the workouts of which sets were recorded, put right or taken back in this decision."""
    if draft.start.entries is draft.state.entries:
        return []
    before = {each.number: each.workout for each in draft.start.entries}
    now = {each.number: each.workout for each in draft.state.entries}
    numbers = {workout for _, workout in before.items() ^ now.items()}
    return [each for each in draft.state.workouts if each.number in numbers]


def is_to_tell(draft: Draft, new: EagerKept) -> bool:
    """Return whether the client is to hear of a new matter.

    That is not so where it was told lately, be it as the day was moved, nor where the coach has written about
    it: then it is between the two.
    """
    of = (new.what.exercise, new.what.rule)
    if new.what.exercise is None and is_moved_to(draft, new.what.on):
        return False
    if any(each.told and (each.what.exercise, each.what.rule) == of for each in draft.memory.eager):
        return False
    for words in draft.memory.coach_wrote:
        if draft.today - words.on > TELL_AGAIN_AFTER:
            continue
        if new.what.exercise in words.exercises:
            return False
        if "last" in new.what.facts and words.on >= date.fromisoformat(new.what.facts["last"]):
            return False
    return True


def is_counted_on(draft: Draft) -> bool:
    """Return whether the next day is counted from the workout done, and not fixed in the week."""
    stored = draft.client.programme
    return stored is not None and isinstance(stored.programme.schedule, Rotation)


def is_to_close(draft: Draft, telling: list[EagerKept]) -> bool:
    """Return whether a workout closes with this message: then what comes next is said anyway."""
    numbers = {each.workout for each in telling}
    return any(
        each.number in numbers and each.state == "open" and is_complete(draft.state, each)
        for each in draft.state.workouts
    )
