"""Weeks of an invented client whose strength is known: gains that end, fall, or go on, on days that vary."""

import math
from collections.abc import Callable, Sequence
from datetime import timedelta
from random import Random

from domain.parts import AlertPart
from tests.domain.client.people import Life, at

LIFTS = ("Bench press", "Barbell row", "Back squat", "Overhead press")
FREE = """\
Quay
Train every 3 days in turn: Day

Day
1. Bench press, 5-10 reps
2. Barbell row, 5-10 reps
3. Back squat, 5-10 reps
4. Overhead press, 5-10 reps
"""
STARTS = {"Bench press": 80, "Barbell row": 70, "Back squat": 110, "Overhead press": 45}

Strength = Callable[[str, int], float]
"""By exercise and workout, the log of the strength over that of the first one."""


def ending(ends: dict[str, int], gain: float = 0.015, after: float = 0.0) -> Strength:
    """Return a strength that gains; in the exercises in `ends` until that workout, then `after` a time."""
    return lambda name, turn: (
        gain * min(turn, ends.get(name, turn)) + after * max(0, turn - ends.get(name, turn))
    )


def train(
    life: Life,
    strength: Strength,
    workouts: Sequence[int],
    noise: float = 0.015,
    seed: str = "a",
) -> list[tuple[int, str | None]]:
    """Let those workouts be done, one every third day; return in which of them a stall came to the coach.

    Each with its exercise, None where it is about several.
    """
    found: list[tuple[int, str | None]] = []
    for turn in workouts:
        when = at(2) + timedelta(days=3 * turn)
        life.says(day(strength, turn, noise, seed), when)
        found += [
            (turn, part.exercise)
            for part in life.to_coach
            if isinstance(part, AlertPart) and part.reason == "stall"
        ]
    return found


def day(strength: Strength, turn: int, noise: float, seed: str) -> str:
    """Return what is told of one workout."""

    def load(name: str) -> float:
        return STARTS[name] * math.exp(strength(name, turn) + Random(f"{seed} {name} {turn}").gauss(0, noise))

    return ", ".join(f"{name} {load(name):.1f}x8" for name in LIFTS)
