"""What a coach's digest counts: workouts done of due, exercises by verdict, and what is long not beaten.

A client's counts are kept by workout, so that those of any stretch of days are a sum.
"""

from collections.abc import Iterable
from datetime import date

from domain.actions import Taken
from domain.frozen import Frozen


class Counts(Frozen):
    """How many workouts were due and done, and how many exercises had each verdict in them."""

    due: int = 0
    done: int = 0
    beat: int = 0
    level: int = 0
    below: int = 0
    first: int = 0
    not_comparable: int = 0


class WorkoutCounts(Frozen):
    """The counts of one workout, on the client's local day `on`."""

    on: date
    counts: Counts


class Unbeaten(Frozen):
    """An exercise without a beat in its last `workouts` workouts, the first of them on the day `since`."""

    exercise: str
    workouts: int
    since: date


class RemedyResult(Frozen):
    """Whether a remedy was found to have worked, on the client's day `on`."""

    remedy: Taken
    worked: bool
    on: date


class ClientTally(Frozen):
    """One client's counts, oldest workout first, the exercise that is longest not beaten, if there is one,
    and what came of remedies."""

    workouts: tuple[WorkoutCounts, ...] = ()
    longest: Unbeaten | None = None
    remedies: tuple[RemedyResult, ...] = ()
    done: tuple[tuple[str, str], ...] = ()
    """Each workout's name with each exercise that was ever done in it."""


class LongUnbeaten(Frozen):
    """A client's exercise that was not beaten for long."""

    client: str
    of: Unbeaten


class RemedyCount(Frozen):
    """Of how many looks at a `remedy` it was found to have `worked`."""

    remedy: Taken
    worked: int
    looked: int


class Numbers(Frozen):
    """What happened over all clients until the day `until`, with the few who were not beaten for longest."""

    until: date
    counts: Counts
    longest: tuple[LongUnbeaten, ...] = ()
    remedies: tuple[RemedyCount, ...] = ()


def total(all_counts: Iterable[Counts]) -> Counts:
    """Return the sum of counts."""
    summed = dict.fromkeys(Counts.model_fields, 0)
    for counts in all_counts:
        for name in summed:
            summed[name] += getattr(counts, name)
    return Counts(**summed)


def between(tally: ClientTally, first: date, last: date) -> Counts:
    """Return the counts of the workouts from the day `first` to the day `last`, both included."""
    return total(each.counts for each in tally.workouts if first <= each.on <= last)
