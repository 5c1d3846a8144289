"""Simulated lifters: a true strength with gain and noise, whole reps, loads by our own targets.

All seeded: a lifter is its seed, its gain, its noise and where the gain ends.
"""

import math
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from random import Random

from domain.comparison import Body
from domain.equipment import default_equipment, nearest_loadable
from domain.exercises import describe
from domain.exposure import Exposure
from domain.programme import Prescription, Range
from domain.sets import TrainingSet
from domain.strength import one_rep_max, repetitions_at
from domain.strength_series import Series, in_series, points_of
from domain.target import Target, next_target

LIFTS = (
    ("Bench press", 90),
    ("Back squat", 140),
    ("Lat pulldown", 85),
    ("Leg press", 220),
    ("Romanian deadlift", 150),
    ("Overhead press", 70),
)
RANGES = ((5, 8), (6, 10), (8, 12))
EXPOSURES = 46
WITHIN = 20
"""Within so many exposures false alarms are counted."""
EARLIEST, LATEST = 8, 25
"""Between which exposures a gain ends, where it does."""
SPREAD = 0.3
"""How far (in logs) the gains of a simulated client's other exercises lie about the first one's."""
DAYS_APART = 4
START = date(2026, 1, 1)
EQUIPMENT = default_equipment("kg")


@dataclass(frozen=True)
class Truth:
    """What is true of a lifter: gain an exposure, noise of a day, the last exposure that gains, what follows.

    `ends` None: the gain never ends. `bad_days`: the share of days that are 10% worse besides.
    """

    gain: float
    noise: float
    ends: int | None = None
    after: float = 0.0
    bad_days: float = 0.0

    def strength(self, exposure: int) -> float:
        """Return the log of the true strength over that of the first exposure."""
        until = exposure if self.ends is None else min(exposure, self.ends)
        return self.gain * until + self.after * (exposure - until)


def lift(
    truth: Truth,
    seed: str,
    which: int = 0,
    exposures: int = EXPOSURES,
    begun: Sequence[Exposure] = (),
) -> tuple[list[Exposure], float]:
    """Return what a lifter does who follows our targets, and the log of the true strength at first.

    `begun` is what the lifter of the same seed has done already, while the truth was the same: it is gone on
    from there, with the same luck.
    """
    luck = Random(seed)
    name, start = LIFTS[which % len(LIFTS)]
    low, high = RANGES[luck.randrange(len(RANGES))]
    first = start * luck.uniform(0.7, 1.3)
    exercise = describe(name)
    prescription = Prescription(exercise=name, counted=exercise.counted, range=Range(low=low, high=high))
    wanted = first / one_rep_max(1, prescription.range.middle)
    load = nearest_loadable(Decimal(round(wanted, 2)), "kg", exercise, EQUIPMENT)
    past = list(begun)
    for turn in range(exposures):
        today = first * math.exp(truth.strength(turn) + luck.gauss(0, truth.noise))
        if luck.random() < truth.bad_days:
            today *= 0.9
        if turn < len(begun):
            continue
        if past:
            target = next_target(
                prescription, tuple(past[-4:]), unit="kg", equipment=EQUIPMENT, exercise=exercise
            )
            assert isinstance(target, Target)
            load = target.load
        reps = max(0, math.floor(repetitions_at(load, today) + 1e-9))
        done = TrainingSet(name, load, "kg", "total", reps=reps)
        past.append(Exposure("Whole body", name, START + timedelta(DAYS_APART * turn), (done,)))
    return past, math.log(first)


def index_of(past: Sequence[Exposure]) -> list[float]:
    """Return the index of every exposure, even of slips; only one without a rep has none."""
    return [point.shown for point in points_of(past, Body(), len(past))]


def growing(past: Sequence[Exposure], begun: Sequence[Series] = ()) -> list[Series]:
    """Return the series as it stands after each exposure; `begun` are those of the first ones.

    Each exposure's strength is reckoned once; a test holds it against `series_of`.
    """
    points = points_of(past, Body(), len(past))
    days = [point.on for point in points]
    return [*begun, *(in_series(points[: bisect_right(days, each.on)]) for each in past[len(begun) :])]
