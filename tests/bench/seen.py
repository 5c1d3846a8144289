"""What each detector makes of a simulated lifter, who gains on, and of the same one where the gain ends.

What comes before the end is the same in both, so it is simulated and weighed once, and so are the client's
other exercises, which never stop gaining. Loads and reps are chosen by our own targets throughout.
"""

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from random import Random

from domain.exposure import Exposure
from domain.gain_odds import Weighed, odds_of, weigh
from domain.gaining import LEAST_EXPOSURES
from domain.needed import has_ended
from domain.strength_series import Series
from tests.bench.detectors import cusum, likelihood_ratio, no_new_best, not_above_last
from tests.bench.lifters import EARLIEST, LATEST, SPREAD, WITHIN, Truth, growing, index_of, lift

NEVER = 10**6
WATCHED = 2 * WITHIN + 1
"""So many exposures of a lifter who gains on are watched."""

Course = tuple[tuple[int, float], ...]
"""The exposures, from 0, at which a score was greater than ever before: where it first passes anything."""
Scored = Callable[[Sequence[float], Truth, float], list[float]]

KNOWING: dict[str, Scored] = {
    "knows gain, noise, start": likelihood_ratio,
    "knows gain and noise": lambda index, truth, _: likelihood_ratio(index, truth, None),
    "CUSUM, knows all three": cusum,
}
PLAIN = {"no new best in three": no_new_best, "three not above the last": not_above_last}
ALONE, OF_SEVERAL = "ours, alone", "ours, of several"


@dataclass(frozen=True)
class Told:
    """What the detectors say of a lifter: by name the exposure of the first alarm, and the courses of scores.

    `ends` is the last exposure that gained; of one who gains on, `NEVER`.
    """

    ends: int
    alarms: dict[str, int]
    courses: dict[str, Course]


@dataclass(frozen=True)
class Seen:
    """One lifter: who gains on, as told with each of the gains that may follow, and whose gain ends."""

    steady: dict[float, Told]
    turned: dict[float, Told]


class Gaining:
    """An exercise and how it is weighed after each exposure; weighed once, when it is first asked for."""

    def __init__(self, truth: Truth, seed: str, which: int = 0, begun: "Gaining | None" = None) -> None:
        """Simulate it. `begun` is the same lifter, where the gain does not end as `truth` says."""
        same = 0 if begun is None or truth.ends is None else truth.ends + 1
        before: list[Exposure] = [] if begun is None else begun.past[:same]
        self.past: list[Exposure]
        self.past, self.start = lift(truth, seed, which, begun=before)
        self.series: list[Series] = growing(self.past, [] if begun is None else begun.series[:same])
        self.index = index_of(self.past)
        self._weighed: dict[int, Weighed] = {}
        if begun is not None:
            self._weighed = {at: each for at, each in begun._weighed.items() if at < same}

    def weighed(self, at: int) -> Weighed:
        """Return it weighed after the exposure `at`."""
        if at not in self._weighed:
            self._weighed[at] = weigh.__wrapped__(self.series[at])
        return self._weighed[at]

    def has_stalled(self, at: int, others: Sequence["Gaining"]) -> bool:
        """Return whether the engine finds a stall after the exposure `at`; a test holds it to `standings`."""
        if len(self.series[at].points) < LEAST_EXPOSURES:
            return False
        known = [each.weighed(at) for each in others if len(each.series[at].points) > 1]
        return has_ended(odds_of(self.weighed(at), known), len(known))


def first(of: Iterable[int]) -> int:
    """Return the first exposure; `NEVER` without one."""
    return next(iter(of), NEVER)


def course_of(scores: Iterable[float]) -> Course:
    """Return the course of scores."""
    found: list[tuple[int, float]] = []
    for at, score in enumerate(scores):
        if not found or score > found[-1][1]:
            found.append((at, score))
    return tuple(found)


def first_above(course: Course, threshold: float) -> int:
    """Return the first exposure with a score above a threshold; `NEVER` without one."""
    return first(at for at, score in course if score > threshold)


def others_of(truth: Truth, seed: str, count: int) -> list[Gaining]:
    """Return so many other exercises of a client, whose gains lie about that of the first one."""
    luck = Random(f"{seed} others")
    gains = [truth.gain * math.exp(luck.gauss(0, SPREAD)) for _ in range(count)]
    return [
        Gaining(replace(truth, gain=gain), f"{seed} {which}", which)
        for which, gain in enumerate(gains, start=1)
    ]


def see(truth: Truth, afters: Sequence[float], seed: str, others: int) -> Seen:
    """Return what is told of the lifter of that seed, with so many other exercises.

    The gain ends after a random exposure, the same one whatever gain of `afters` follows.
    """
    ends = Random(f"{seed} ends").randint(EARLIEST, LATEST)
    beside = others_of(truth, seed, others)
    steady = Gaining(truth, seed)
    ways = {ALONE: [], OF_SEVERAL: beside} if others else {ALONE: []}
    alarms = {
        name: first(at for at in range(WATCHED) if steady.has_stalled(at, known))
        for name, known in ways.items()
    }
    alarms |= {name: first_above(course_of(rule(steady.index[:WATCHED])), 0) for name, rule in PLAIN.items()}
    calm, turned = {}, {}
    for after in afters:
        known_truth = replace(truth, after=after)
        calm[after] = Told(NEVER, alarms, _courses(steady, known_truth, WATCHED))
        one = Gaining(replace(known_truth, ends=ends), seed, begun=steady)
        later = {
            # Whoever had an alarm before the end counts no more, and has had it above.
            name: alarms[name]
            if alarms[name] <= ends
            else first(at for at in range(ends + 1, len(one.past)) if one.has_stalled(at, beside_it))
            for name, beside_it in ways.items()
        }
        later |= {name: first_above(course_of(rule(one.index)), 0) for name, rule in PLAIN.items()}
        turned[after] = Told(ends, later, _courses(one, known_truth, len(one.past)))
    return Seen(calm, turned)


def _courses(one: Gaining, truth: Truth, upto: int) -> dict[str, Course]:
    return {name: course_of(score(one.index[:upto], truth, one.start)) for name, score in KNOWING.items()}
