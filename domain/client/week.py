"""A week with a workout of its own on each day: what becomes of the others when one is moved or out of turn.

None of them is dropped. One whose day another has taken comes next, with the shortest rest that the week has
before it, and so do those that it pushes on, until the week goes on as it stands in the sheet. Two that were
done in each other's place have changed places for that week.
"""

from datetime import date

from domain.calendar import fixed_day_after, left_behind, workout_of_day
from domain.client.draft import Draft
from domain.client.rotation import Due
from domain.journal import WorkoutRecord
from domain.planned import Swapped
from domain.programme import FixedDays


def week_of(draft: Draft) -> FixedDays | None:
    """Return the schedule, where each day of its week has its own workout."""
    stored = draft.client.programme
    schedule = stored.programme.schedule if stored else None
    return schedule if isinstance(schedule, FixedDays) and schedule.by_day else None


def pass_turn(draft: Draft, workout: str, on: date) -> None:
    """Let the workout in turn have had its turn on that day, be it done, missed or left out."""
    schedule, memory = week_of(draft), draft.memory
    if schedule is None:
        return
    if memory.swapped is not None and memory.swapped.on <= on:
        draft.remember(swapped=None)
    owed, is_moved = memory.owed, memory.moved_to is not None and memory.moved_workout == workout
    if owed is not None and workout_of_day(schedule, owed) == workout:
        owed = left_behind(schedule, owed, on, keeps_rest=True)
    elif owed is None and is_moved and memory.moved_from is not None:
        owed = left_behind(schedule, memory.moved_from, on, keeps_rest=False)
    draft.remember(owed=owed)


def out_of_turn(draft: Draft, record: WorkoutRecord, coming: Due) -> None:
    """Keep the turn of the workout to come, where another has begun in its place.

    One that was to come later in the same week changes places with it; otherwise it comes next.
    """
    schedule, memory = week_of(draft), draft.memory
    if schedule is None or memory.owed is not None:
        return
    if memory.moved_to is not None:
        if memory.moved_to <= record.on:
            draft.remember(owed=memory.moved_from)
        return
    own = coming.on
    for _ in schedule.days:
        own = fixed_day_after(schedule, own)
        if workout_of_day(schedule, own) == record.name:
            break
    takes_its_place = record.on >= coming.on or memory.stands_for == coming.on
    if takes_its_place and own.isocalendar()[:2] == coming.on.isocalendar()[:2]:
        draft.remember(swapped=Swapped(on=own, workout=coming.workout))
    elif record.on >= coming.on:
        draft.remember(owed=coming.on)
