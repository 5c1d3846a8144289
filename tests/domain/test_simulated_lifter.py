"""A lifter of known strength who does what the targets say stays in the range: a seeded simulation.

Beside what the targets reach stands what nobody can do better: a coach who knows the lifter's true strength
and each time puts on the load that most likely leads into the range (`known`). Good and bad days take even
that one out of a range of three reps. `python -m pytest -s` prints the figures.
"""

import math
from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from functools import cache
from itertools import product
from random import Random
from statistics import NormalDist

import pytest

from domain.equipment import Equipment, Plate, Steps, default_equipment, loadable, nearest_loadable
from domain.exercises import Exercise, describe
from domain.exposure import Exposure
from domain.programme import Prescription, Range
from domain.sets import TrainingSet
from domain.strength import Equation, one_rep_max, repetitions_at
from domain.target import Target, next_target

LIFTS = {"Bench press": 60, "Overhead press": 55, "Back squat": 120, "Leg press": 180, "Lat pulldown": 70}
WIDE = ((5, 8), (6, 10), (8, 12), (10, 15))
NARROW = ((4, 6), (6, 8), (8, 10))
GAINS = (0.0, 0.005, 0.01)
EXPOSURES = 40


@dataclass(frozen=True)
class Lifter:
    """The true 1RM grows by a steady `gain` an exposure and differs from day to day by `noise`."""

    name: str
    strength: float
    gain: float
    noise: float
    equation: Equation = "epley"

    def usual(self, turn: int) -> float:
        """Return the 1RM without good or bad luck."""
        return self.strength * math.exp(self.gain * turn)

    def reps(self, load: Decimal, turn: int, luck: Random) -> int:
        """Return the whole reps that are done with `load`."""
        today = self.usual(turn) * math.exp(luck.gauss(0, self.noise))
        return math.floor(repetitions_at(load, today, self.equation) + 1e-9)


@cache
def equipped_by(step: str) -> Equipment:
    """Return a gym in which every load goes up by `step` kilograms."""
    kg = Decimal(step)
    usual = default_equipment("kg")
    plates = tuple(each for each in usual.plates if each.mass > kg / 2)
    return usual.model_copy(
        update={"plates": (*plates, Plate(mass=kg / 2)), "stack": Steps(first=kg, step=kg)}
    )


def followed(lifter: Lifter, aimed: Range, equipment: Equipment) -> list[int]:
    """Return the reps of one who does what the targets say, from a first load well found."""
    exercise = describe(lifter.name)
    luck = Random(f"{lifter} {aimed}")
    prescription = Prescription(exercise=lifter.name, counted=exercise.counted, range=aimed)
    start = lifter.strength / one_rep_max(1, aimed.middle, lifter.equation)
    load = nearest_loadable(Decimal(round(start, 2)), "kg", exercise, equipment)
    past: tuple[Exposure, ...] = ()
    for turn in range(EXPOSURES):
        done = TrainingSet(lifter.name, load, "kg", "total", reps=lifter.reps(load, turn, luck))
        on = date(2026, 1, 1) + timedelta(days=3 * turn)
        past = (*past, Exposure("Whole body", lifter.name, on, (done,)))
        target = next_target(prescription, past, unit="kg", equipment=equipment, exercise=exercise)
        assert isinstance(target, Target)
        load = target.load
    return [each.sets[0].amount for each in past]


def known(lifter: Lifter, aimed: Range, equipment: Equipment) -> list[int]:
    """Return the reps with the best load there is for the range, by one who knows the true strength."""
    luck, day = Random(f"{lifter} {aimed}"), NormalDist(0, lifter.noise)
    return [
        lifter.reps(best_load(lifter.usual(turn), aimed, describe(lifter.name), equipment, day), turn, luck)
        for turn in range(EXPOSURES)
    ]


def best_load(
    strength: float, aimed: Range, exercise: Exercise, equipment: Equipment, day: NormalDist
) -> Decimal:
    def chance(load: Decimal) -> float:
        least, above = (
            day.cdf(math.log(one_rep_max(load, reps) / strength)) for reps in (aimed.low, aimed.high + 1)
        )
        return above - least

    loads, masses = loads_of(exercise, equipment)
    # Only those need be weighed with which about as many reps are done, and the next ones beyond.
    heavy, light = (strength / one_rep_max(1, reps) for reps in (max(aimed.low - 3, 1), aimed.high + 4))
    near = loads[max(bisect_left(masses, light) - 1, 0) : bisect_right(masses, heavy) + 1]
    return max((each for each in near if 0 < each <= strength), key=chance)


@cache
def loads_of(exercise: Exercise, equipment: Equipment) -> tuple[list[Decimal], list[float]]:
    """Return all loads there are, lightest first, and the same as floats."""
    loads = [*loadable(exercise, equipment)]
    return loads, [float(each) for each in loads]


@dataclass(frozen=True)
class Shares:
    """Which parts of the exposures lay in the range, at most a rep outside it, and under it."""

    inside: float
    near: float
    under: float

    @classmethod
    def of(cls, done: list[tuple[int, Range]]) -> "Shares":
        return cls(
            sum(aimed.low <= reps <= aimed.high for reps, aimed in done) / len(done),
            sum(aimed.low - 1 <= reps <= aimed.high + 1 for reps, aimed in done) / len(done),
            sum(reps < aimed.low for reps, aimed in done) / len(done),
        )


@cache
def lived(
    aimed: tuple[int, int], noise: float, step: str, equation: Equation
) -> tuple[tuple[int, Range], ...]:
    """Return the reps of all the lifters who follow the targets in a range, each beside the range.

    Several tests look at the same lives, which take long to live.
    """
    asked, equipment = Range(low=aimed[0], high=aimed[1]), equipped_by(step)
    return tuple(
        (reps, asked)
        for (name, strength), gain in product(LIFTS.items(), GAINS)
        for reps in followed(Lifter(name, strength, gain, noise, equation), asked, equipment)
    )


def reached(
    ranges: tuple[tuple[int, int], ...], noise: float, step: str = "2.5", equation: Equation = "epley"
) -> Shares:
    """Return what all the lifters reach by following the targets."""
    return Shares.of([each for aimed in ranges for each in lived(aimed, noise, step, equation)])


def reachable(ranges: tuple[tuple[int, int], ...], noise: float, step: str = "2.5") -> Shares:
    """Return what a coach who knows their strength would reach with the same lifters."""
    cases = product(LIFTS.items(), (Range(low=low, high=high) for low, high in ranges), GAINS)
    return Shares.of(
        [
            (reps, aimed)
            for (name, strength), aimed, gain in cases
            for reps in known(Lifter(name, strength, gain, noise), aimed, equipped_by(step))
        ]
    )


@pytest.mark.parametrize("equation", ["epley", "brzycki", "wathan"])
def test_nine_of_ten_exposures_stay_in_the_range(equation: Equation) -> None:
    """Whichever equation is true of the lifter, though the targets reckon by Epley's."""
    found = reached(WIDE, noise=0, equation=equation)
    print(f"\nin the range, true to {equation}, without noise: {found.inside:.1%}")
    assert found.inside >= 0.9


@pytest.mark.parametrize("step", ["1.25", "2.5", "5"])
@pytest.mark.parametrize("noise", [0.01, 0.02])
@pytest.mark.parametrize("aimed", WIDE, ids=lambda aimed: f"{aimed[0]}-{aimed[1]}")
def test_so_they_do_with_good_and_bad_days(aimed: tuple[int, int], noise: float, step: str) -> None:
    """Noise of 2% a day is worth three quarters of a rep: published, the standard error of reps to failure in
    the bench press is 0.7 at 90% and 1.1 at 70% of 1RM (Mitter 2022, PLoS One 17:e0268074).

    Steps of 5 kg are up to a tenth of these loads, and load is added at the top of the range all the same.
    """
    found, best = reached((aimed,), noise, step), reachable((aimed,), noise, step)
    tell(aimed, noise, step, found, best)
    assert found.inside >= (0.9 if step != "5" else 0.87 if noise < 0.02 else best.inside - 0.1)
    assert best.inside >= found.inside


def test_nine_of_ten_of_all_these_exposures_stay_in_the_range() -> None:
    cells = [reached(WIDE, noise, step) for noise, step in product((0.01, 0.02), ("1.25", "2.5", "5"))]
    least, mean = min(each.inside for each in cells), sum(each.inside for each in cells) / len(cells)
    print(f"\nin the range, all steps, noise 1% and 2%: {mean:.1%}, at worst {least:.1%}")
    assert least >= 0.9


@pytest.mark.parametrize("step", ["1.25", "2.5", "5"])
@pytest.mark.parametrize("noise", [0.01, 0.02])
@pytest.mark.parametrize("aimed", NARROW, ids=lambda aimed: f"{aimed[0]}-{aimed[1]}")
def test_ranges_of_three_reps_are_kept_nearly(aimed: tuple[int, int], noise: float, step: str) -> None:
    """A step of load costs as many reps as the range is wide: not even one who knows can always keep it."""
    found, best = reached((aimed,), noise, step), reachable((aimed,), noise, step)
    tell(aimed, noise, step, found, best)
    assert found.inside >= best.inside - 0.2
    assert found.near >= best.near - (0.1 if step != "5" or noise < 0.02 else 0.15)
    assert found.near >= (0.9 if step != "5" else 0.85)
    assert best.inside >= found.inside


def test_nine_of_ten_are_within_a_rep_of_ranges_of_three_reps() -> None:
    found = reached(NARROW, noise=0.02)
    print(f"\nranges of three reps, 2% noise: {found.inside:.1%} in the range, {found.near:.1%} within a rep")
    assert found.near >= 0.9


def tell(aimed: tuple[int, int], noise: float, step: str, found: Shares, best: Shares) -> None:
    print(
        f"\n{aimed[0]}-{aimed[1]}, steps of {step} kg, noise {noise:.0%}: {found.inside:.1%} in the range"
        f" ({found.under:.1%} under it, {found.near:.1%} within a rep), at best {best.inside:.1%}"
    )
