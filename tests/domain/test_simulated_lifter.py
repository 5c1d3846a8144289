"""A lifter of known strength who does what the targets say stays in the range: a seeded simulation."""

import math
from datetime import date, timedelta
from decimal import Decimal
from random import Random

import pytest

from domain.equipment import default_equipment, nearest_loadable
from domain.exercises import describe
from domain.exposure import Exposure
from domain.programme import Prescription, Range
from domain.sets import TrainingSet
from domain.strength import Equation, one_rep_max, repetitions_at
from domain.target import Target, next_target

LIFTS = {"Bench press": 60, "Overhead press": 55, "Back squat": 120, "Leg press": 180, "Lat pulldown": 70}
RANGES = ((5, 8), (6, 10), (8, 12), (10, 15))
GAINS = (0.0, 0.005, 0.01)
EXPOSURES = 40


def shares_in_range(
    equation: Equation, noise: float, ranges: tuple[tuple[int, int], ...] = RANGES
) -> tuple[float, float]:
    """Return the share of exposures inside the range, and of those at most one rep outside it.

    The lifter's true 1RM grows by a steady gain an exposure, differs from day to day by `noise`, and gives
    whole reps by `equation`. It starts with a load for the middle of the range, as a first load well found.
    """
    inside = near = total = 0
    for name, strength in LIFTS.items():
        exercise, equipment = describe(name), default_equipment("kg")
        for low, high in ranges:
            for gain in GAINS:
                luck = Random(f"{name} {low} {gain} {noise}")
                prescription = Prescription(
                    exercise=name, counted=exercise.counted, range=Range(low=low, high=high)
                )
                start = strength / one_rep_max(1, prescription.range.middle, equation)
                load = nearest_loadable(Decimal(round(start, 2)), "kg", exercise, equipment)
                past: tuple[Exposure, ...] = ()
                for turn in range(EXPOSURES):
                    today = strength * math.exp(gain * turn + luck.gauss(0, noise))
                    reps = math.floor(repetitions_at(load, today, equation) + 1e-9)
                    done = TrainingSet(name, load, "kg", "total", reps=reps)
                    on = date(2026, 1, 1) + timedelta(days=3 * turn)
                    past = (*past, Exposure("Whole body", name, on, (done,)))
                    inside += low <= reps <= high
                    near += low - 1 <= reps <= high + 1
                    total += 1
                    target = next_target(
                        prescription, past, unit="kg", equipment=equipment, exercise=exercise
                    )
                    assert isinstance(target, Target)
                    load = target.load
    return inside / total, near / total


@pytest.mark.parametrize("equation", ["epley", "brzycki", "wathan"])
def test_nine_of_ten_exposures_stay_in_the_range(equation: Equation) -> None:
    """Whichever equation is true of the lifter, though the targets reckon by Epley's."""
    inside, _ = shares_in_range(equation, noise=0)
    print(f"\nin the range, true to {equation}, without noise: {inside:.1%}")
    assert inside >= 0.9


def test_so_they_do_with_good_and_bad_days() -> None:
    """Noise of 2% a day, which alone is worth three quarters of a rep."""
    inside, near = shares_in_range("epley", noise=0.02)
    print(f"\nwith 2% noise: {inside:.1%} in the range, {near:.1%} within a rep of it")
    assert inside >= 0.9


def test_narrow_ranges_cannot_be_kept_so_well_but_nearly() -> None:
    """Where a step of load costs as many reps as the range is wide, nine of ten are within a rep of it."""
    inside, near = shares_in_range("epley", noise=0.02, ranges=((4, 6), (6, 8), (8, 10)))
    print(f"\nnarrow ranges, 2% noise: {inside:.1%} in the range, {near:.1%} within a rep of it")
    assert near >= 0.9
