"""Training again inside the rest days: a workout too soon, or an exercise beside the sheet on a rest day.

The rest days are the sheet's own. Nobody knows the muscles of an exercise here: what the catalogue has is the
region of the body and the joints that are loaded, so "the same" is the same exercise, or one of the same
region that shares a joint. That takes in a little more than the same muscles.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal, get_args

from domain.calendar import Schedule, earliest_ok
from domain.exercises import Region, describe
from domain.programme import FixedDays, Weekday

SAME_WORKOUT = timedelta(days=2)
"""How long the same workout rests at least where the sheet trains on days running. The project's own rule."""


@dataclass(frozen=True, slots=True)
class Trained:
    """A workout of the programme as done: its name, its day, and the exercises done in it."""

    workout: str
    on: date
    exercises: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class TooSoon:
    """A workout came `days_early` days before `free_from`, the first day with the rest behind it."""

    last: date
    free_from: date
    days_early: int
    rule: Literal["too soon"] = "too soon"


@dataclass(frozen=True, slots=True)
class SameAgain:
    """An exercise beside the sheet loads again what was trained on the day `last`, before `free_from`."""

    exercise: str
    region: Region
    last: date
    free_from: date
    rule: Literal["same again"] = "same again"


def too_soon(schedule: Schedule, workout: str, on: date, earlier: Sequence[Trained]) -> TooSoon | None:
    """Return by how much a `workout` on the day `on` was too soon after the `earlier` ones, oldest first.

    None where the rest was whole, and for the first workout of all. Where the sheet trains on days running,
    it is the same workout two days running that is too soon, unless the sheet itself has it so.
    """
    if not earlier:
        return None
    last = earlier[-1]
    free_from = earliest_ok(schedule, last.on)
    same = [each for each in earlier if each.workout == workout]
    if same and not _is_asked_for(schedule, workout, on) and same[-1].on + SAME_WORKOUT > max(on, free_from):
        last, free_from = same[-1], same[-1].on + SAME_WORKOUT
    early = (free_from - on).days
    return TooSoon(last.on, free_from, early) if early > 0 else None


def same_again(schedule: Schedule, exercise: str, on: date, earlier: Sequence[Trained]) -> SameAgain | None:
    """Return what an `exercise` beside the sheet, done on the day `on`, loads again inside the rest days.

    What is done on the day of a workout itself is no matter of rest days.
    """
    about = describe(exercise)
    for trained in reversed(earlier):
        free_from = earliest_ok(schedule, trained.on)
        if trained.on < on < free_from and any(is_alike(exercise, other) for other in trained.exercises):
            return SameAgain(exercise, about.region, trained.on, free_from)
    return None


def is_alike(one: str, other: str) -> bool:
    """Return whether two exercises load the same, as far as the catalogue knows: see at the top."""
    here, there = describe(one), describe(other)
    return here.name == there.name or (
        here.region == there.region and not set(here.joints).isdisjoint(there.joints)
    )


def _is_asked_for(schedule: Schedule, workout: str, on: date) -> bool:
    """Return whether the sheet has the workout on that very weekday, or twice running."""
    order = schedule.order
    if any(order[at - 1] == name == workout for at, name in enumerate(order)):
        return True
    if not isinstance(schedule, FixedDays) or not schedule.by_day:
        return False
    return (get_args(Weekday)[on.weekday()], workout) in zip(schedule.days, order, strict=True)
