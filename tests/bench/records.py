"""Simulated clients, seen exposure by exposure: what the threshold on the odds is found from.

A client has eight exercises; the engine is shown the first one, two, four, six and all of them. In steady
clients all gain on, in turned ones the first exercise stops after a random exposure. The first one's gain is
as said, those of the others lie about it. What is recorded of an exercise after an exposure is what the
threshold is made of, where the odds come anywhere near it.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from random import Random

from domain.gain_odds import Weighed, odds_of, weigh
from domain.gaining import LEAST_EXPOSURES
from domain.needed import RISE, Seen, Threshold, seen_in
from tests.bench.detectors import likelihood_ratio
from tests.bench.lifters import (
    EARLIEST,
    EXPOSURES,
    LATEST,
    SPREAD,
    WITHIN,
    Truth,
    growing,
    index_of,
    lift,
)
from tests.bench.seen import NEVER

SIZES = (1, 2, 4, 6, 8)
"""How many exercises the engine is shown."""
LOWEST = -2.0
"""Logarithms of odds under this are not recorded: no threshold is so low."""

Course = list[tuple[int, Seen]]
"""What is seen of one exercise, each with the exposure (from 0) after which it is."""


@dataclass(frozen=True)
class Client:
    """One client: what is seen of each exercise, by how many the engine is shown.

    `knowing` is the score of the detector that knows the truth of the first exercise, by exposure; `ends` the
    last exposure of that which gained, none if it never stopped.
    """

    ends: int | None
    knowing: list[float]
    courses: dict[int, list[Course]] = field(default_factory=dict)

    def alarms(self, size: int, by: Threshold) -> list[int]:
        """Return of each exercise the exposure of the first alarm, `NEVER` without one."""
        base, difference, gain = by.beside(size - 1)
        return [
            next(
                (
                    at
                    for at, seen in course
                    if seen[0] >= base + difference * seen[1] + gain * seen[2] + RISE * seen[3]
                ),
                NEVER,
            )
            for course in self.courses[size]
        ]


def client(truth: Truth, seed: str) -> Client:
    """Return the client of that seed."""
    luck = Random(f"{seed} others")
    beside = [Truth(truth.gain * math.exp(luck.gauss(0, SPREAD)), truth.noise) for _ in range(max(SIZES) - 1)]
    exposures = WITHIN + 1 if truth.ends is None else EXPOSURES
    pasts = [lift(each, f"{seed} {which}", which, exposures) for which, each in enumerate((truth, *beside))]
    first, start = pasts[0]
    known = likelihood_ratio(index_of(first), replace(truth, ends=None), start)
    found = Client(truth.ends, known)
    series = [growing(past) for past, _ in pasts]
    for size in SIZES:
        found.courses[size] = [[] for _ in range(size if truth.ends is None else 1)]
    for at in range(LEAST_EXPOSURES - 1, exposures):
        note(found, at, [weigh(each[at]) for each in series])
    weigh.cache_clear()
    return found


def note(found: Client, at: int, weighed: Sequence[Weighed]) -> None:
    """Note what is seen after an exposure."""
    for size, courses in found.courses.items():
        for which, course in enumerate(courses):
            own = weighed[which]
            if len(own.series.points) >= LEAST_EXPOSURES:
                others = [weighed[other] for other in range(size) if other != which]
                seen = seen_in(odds_of(own, others))
                if seen.odds > LOWEST:
                    course.append((at, seen))


def clients(truth: Truth, count: int, seed: str, turned: bool) -> list[Client]:
    """Return so many clients of one gain and noise, the first exercise of each turned, or none."""
    luck = Random(f"{seed} {truth}")
    truths = [replace(truth, ends=luck.randint(EARLIEST, LATEST)) if turned else truth for _ in range(count)]
    return [client(each, f"{seed} {each} {at}") for at, each in enumerate(truths)]
