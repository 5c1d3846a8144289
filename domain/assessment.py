"""A journal kept elsewhere, assessed: how a client's exercises stand, and the look back over all of them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from domain.comparison import Body
from domain.exposure import Exposure
from domain.gaining import Standing, standings
from domain.review import Review, review_of
from domain.sets import TrainingSet
from domain.strength_series import series_of


@dataclass(frozen=True, slots=True)
class Assessment:
    """One client: by exercise how it stands, and how often it was done; the review of all.

    How it stands is told from the latest exposures that can be held against each other; `exposures` counts
    all. The review is None where no exercise has two exposures.
    """

    standings: Mapping[str, Standing]
    exposures: Mapping[str, int]
    review: Review | None


def assess(sets: Mapping[str, Sequence[TrainingSet]]) -> Assessment:
    """Assess one client from the sets of each exercise, each with its day, in any order of days.

    The sets of a day are one exposure. Body mass is not known, so loads on the body are only ordered.
    """
    histories = {exercise: exposures_of(exercise, done) for exercise, done in sets.items()}
    series = {exercise: series_of(history, Body()) for exercise, history in histories.items()}
    found = standings(list(series.values()))
    indices = tuple(tuple(point.shown for point in each.points) for each in series.values())
    return Assessment(
        dict(zip(series, found, strict=True)),
        {exercise: len(history) for exercise, history in histories.items()},
        review_of(tuple(each for each in indices if len(each) > 1)),
    )


def exposures_of(exercise: str, sets: Sequence[TrainingSet]) -> tuple[Exposure, ...]:
    """Return the sets of one exercise as exposures, one a day, oldest first; sets without a day are none."""
    days: dict[object, list[TrainingSet]] = {}
    dated = [(each.on, each) for each in sets if each.on is not None]
    for on, each in sorted(dated, key=lambda one: one[0]):
        days.setdefault(on, []).append(each)
    return tuple(
        Exposure("", exercise, done[0].on, tuple(done)) for done in days.values() if done[0].on is not None
    )
