"""`python -m tests.bench.stalls`: how soon a stall is seen, and how often one is seen that is none.

Simulated lifters of every gain and noise do what our targets say. For each detector: the share of lifters
who gain steadily and yet raise an alarm within 20 exposures, and of the others the share who raise one in
the next 20; and the delay from the last exposure that gained (a random one of 8 to 25) to the alarm, over
those without one before. Delays are counted in exposures; the median is that of the grouped data (whole
exposures as half an exposure either side), `ratio` ours over that of the detector that knows the truth, at
as many false alarms. What a coach hears of whole clients follows (`tests.bench.clients`).
The detectors that know the truth have their threshold set in the same run, once for
false alarms of 1 in 10 and once for as many as ours has within 20. `--lifters N` of each kind; `--short` is
a small run, `--stops` leaves out declines and bad days, `--alone` a client's other exercises. All is seeded.
"""

import argparse
import math
import statistics
import time
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random

from domain.comparison import Body
from domain.gain_odds import odds_of, weigh
from domain.gaining import LEAST_EXPOSURES, standings
from domain.needed import has_ended
from domain.strength_series import Series, series_of
from domain.trend import trend
from tests.bench.clients import print_clients
from tests.bench.detectors import cusum, likelihood_ratio, no_new_best, not_above_last
from tests.bench.lifters import (
    EARLIEST,
    EXPOSURES,
    LATEST,
    SPREAD,
    WITHIN,
    Truth,
    growing,
    lift,
    points_of,
)

GAINS = (0.005, 0.01, 0.02)
NOISES = (0.02, 0.03, 0.042)
KINDS = ((0.0, 0.0), (-0.01, 0.0), (0.0, 0.05))
"""What comes after the gain, and the share of bad days."""
EXERCISES = 6
NEVER = 10**6

Scores = list[float]


@dataclass(frozen=True)
class Lifter:
    """One simulated exercise, with the client's other ones."""

    truth: Truth
    start: float
    index: list[float]
    own: list[Series]
    others: list[list[Series]]

    def alone(self, upto: int) -> Iterator[float]:
        """Give ours, the exercise being the only one."""
        return (judged(self.own[at], []) for at in range(upto))

    def in_client(self, upto: int) -> Iterator[float]:
        """Give ours, the exercise being one of several."""
        return (judged(self.own[at], [each[at] for each in self.others]) for at in range(upto))


def judged(own: Series, others: Sequence[Series]) -> float:
    """Return a score above 0 where the engine finds a stall of `own`; a test holds it against `standings`."""
    if len(own.points) < LEAST_EXPOSURES:
        return -0.5
    known = [weigh(each) for each in others if len(each.points) > 1]
    return float(has_ended(odds_of(weigh(own), known), len(known))) - 0.5


def lifter(
    truth: Truth, seed: str, others: int = EXERCISES - 1, beside: list[list[Series]] | None = None
) -> Lifter:
    """Return the lifter of that seed; the others, those of `beside` or new ones, never stop gaining."""
    luck = Random(f"{seed} others")
    past, start = lift(truth, seed)
    if beside is None:
        gains = [truth.gain * math.exp(luck.gauss(0, SPREAD)) for _ in range(others)]
        truths = [Truth(gain, truth.noise, bad_days=truth.bad_days) for gain in gains]
        beside = [
            growing(lift(one, f"{seed} {which}", which)[0]) for which, one in enumerate(truths, start=1)
        ]
    return Lifter(truth, start, [point.index for point in points_of(past)], growing(past), beside)


def first_alarm(scores: Iterable[float], threshold: float = 0.0) -> int:
    """Return the exposure, counted from 0, of the first score above the threshold; `NEVER` without one."""
    return next((at for at, score in enumerate(scores) if score > threshold), NEVER)


@dataclass(frozen=True)
class Row:
    """What one detector did: false alarms (0 to 1), median and 90th percentile of the delay.

    `later` are false alarms in as many exposures again, among those without one. Not a number where everybody
    had raised an alarm before the gain ended.
    """

    false_alarms: float
    later: float
    median: float
    ninetieth: float


def row_of(never: Iterable[int], ended: Iterable[tuple[int, int]]) -> Row:
    """Return the row of first alarms of lifters who gain on, and (first alarm, last gain) of others."""
    alarms = list(never)
    delays = sorted(min(alarm - end, EXPOSURES) for alarm, end in ended if alarm > end)
    share = sum(alarm <= WITHIN for alarm in alarms) / len(alarms)
    left = [alarm for alarm in alarms if alarm > WITHIN]
    later = sum(alarm <= 2 * WITHIN for alarm in left) / len(left) if left else math.nan
    if not delays:
        return Row(share, later, math.nan, math.nan)
    return Row(
        share,
        later,
        statistics.median_grouped(delays),
        delays[math.ceil(0.9 * len(delays)) - 1],
    )


class Steady:
    """Lifters of one gain and noise who gain on: the same ones, whatever the gain of others turns into.

    What plain scores say of them is reckoned once.
    """

    def __init__(self, truth: Truth, count: int, seed: str, others: int) -> None:
        """Simulate them."""
        self.lifters = [lifter(truth, f"{seed} steady {truth} {each}", others) for each in range(count)]
        self._alarms: dict[Score, list[int]] = {}

    def alarms(self, score: "Score") -> list[int]:
        """Return the first alarm of each."""
        if score not in self._alarms:
            self._alarms[score] = [first_alarm(score(each, 2 * WITHIN + 1)) for each in self.lifters]
        return self._alarms[score]


Score = Callable[[Lifter, int], Iterable[float]]


def new_best_of(each: Lifter, upto: int) -> Scores:
    """Give the first plain rule."""
    return no_new_best(each.index[:upto])


def above_last_of(each: Lifter, upto: int) -> Scores:
    """Give the second plain rule."""
    return not_above_last(each.index[:upto])


def threshold_for(scores: Sequence[Scores], rate: float) -> float:
    """Return the threshold above which that share of steady lifters raises an alarm in time."""
    greatest = sorted(max(each[: WITHIN + 1]) for each in scores)
    return greatest[min(len(greatest) - 1, math.ceil((1 - rate) * len(greatest)) - 1)]


def cell(truth: Truth, after: float, steady: Steady, seed: str) -> dict[str, Row]:
    """Return how every detector does with lifters of that gain and noise, whose gain turns into `after`.

    Their other exercises are those of the steady ones.
    """
    others = len(steady.lifters[0].others)
    luck = Random(f"{seed} {truth} {after}")
    turned = []
    for at, each in enumerate(steady.lifters):
        until = replace(truth, ends=luck.randint(EARLIEST, LATEST), after=after)
        turned.append(lifter(until, f"{seed} turned {until} {at}", beside=each.others))

    def plain(score: Score) -> Row:
        return row_of(
            steady.alarms(score),
            ((first_alarm(score(each, EXPOSURES)), each.truth.ends or 0) for each in turned),
        )

    def knowing(score: Callable[[Lifter, Truth], Scores], rate: float) -> Row:
        known = replace(truth, after=after)
        calm = [score(each, known) for each in steady.lifters]
        threshold = threshold_for(calm, rate)
        return row_of(
            (first_alarm(each, threshold) for each in calm),
            ((first_alarm(score(each, known), threshold), each.truth.ends or 0) for each in turned),
        )

    def told(each: Lifter, known: Truth) -> Scores:
        return likelihood_ratio(each.index, known, each.start)

    def untold(each: Lifter, known: Truth) -> Scores:
        return likelihood_ratio(each.index, known, None)

    alone = plain(Lifter.alone)
    ours = plain(Lifter.in_client) if others else alone
    of_several = {f"ours, of {others + 1} exercises": ours} if others else {}
    return {
        **of_several,
        "ours, alone": alone,
        "no new best in three": plain(new_best_of),
        "three not above the last": plain(above_last_of),
        "knows gain, noise, start": knowing(told, 0.1),
        "  at our false alarms": knowing(told, ours.false_alarms),
        "  at ours alone": knowing(told, alone.false_alarms),
        "knows gain and noise": knowing(untold, 0.1),
        "CUSUM, knows all three": knowing(lambda each, known: cusum(each.index, known, each.start), 0.1),
    }


def client_time() -> tuple[float, float]:
    """Return the seconds that a full client's assessment takes, from sets to findings, and its review.

    Nothing is remembered from one assessment to the next.
    """
    pasts = [lift(Truth(0.01, 0.03), f"time {which}", which, 40)[0] for which in range(8)]

    def fastest(work: Callable[[], object]) -> float:
        times = []
        for _ in range(30):
            began = time.process_time()
            work()
            times.append(time.process_time() - began)
        return min(times)

    def assess() -> None:
        weigh.cache_clear()
        standings([series_of(past, Body()) for past in pasts])

    found = fastest(assess)
    indices = tuple(tuple(point.index for point in points_of(past)) for past in pasts)
    return found, fastest(lambda: trend(indices))


def print_cell(truth: Truth, after: float, rows: dict[str, Row]) -> None:
    """Print the rows of one gain and noise."""
    turns = "stops" if after == 0 else f"turns to {after:.0%}"
    knowing = {"ours, alone": "  at ours alone", f"ours, of {EXERCISES} exercises": "  at our false alarms"}
    for name, row in rows.items():
        known = rows.get(knowing.get(name, ""))
        ratio = f"{row.median / known.median:6.2f}" if known else ""
        print(
            f"{truth.gain:5.1%} {truth.noise:5.1%} {turns:<13} {name:<26} {row.false_alarms:6.1%} "
            f"{row.later:6.1%} {row.median:7.2f} {row.ninetieth:5.0f} {ratio}".rstrip(),
            flush=True,
        )


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.stalls")
    parser.add_argument("--lifters", type=int, default=200)
    parser.add_argument("--short", action="store_true")
    parser.add_argument("--stops", action="store_true")
    parser.add_argument("--alone", action="store_true")
    parser.add_argument("--gain", type=float, choices=GAINS, help="only this one")
    parser.add_argument("--noise", type=float, choices=NOISES, help="only this one")
    parser.add_argument("--seed", default="a")
    asked = parser.parse_args()
    lifters = 30 if asked.short else asked.lifters
    print(f"{lifters} lifters of each kind, seed {asked.seed!r}")
    head = f"{'gain':>5} {'noise':>5} {'':<13} {'detector':<26} {'alarms':>6} {'later':>6}"
    print(f"{head} {'median':>7} {'90th':>5} {'ratio':>6}")
    gains = GAINS[1:2] if asked.short else GAINS
    others = 0 if asked.alone else EXERCISES - 1
    for gain in gains if asked.gain is None else (asked.gain,):
        for noise in NOISES if asked.noise is None else (asked.noise,):
            steady: dict[float, Steady] = {}
            for after, bad_days in KINDS[: 1 if asked.stops else None]:
                truth = Truth(gain, noise, bad_days=bad_days)
                if bad_days not in steady:
                    steady[bad_days] = Steady(truth, lifters, asked.seed, others)
                rows = cell(truth, after, steady[bad_days], asked.seed)
                if bad_days:
                    print("with 1 day of 20 bad by 10%:")
                    rows = {
                        name: row for name, row in rows.items() if name.startswith(("ours", "no", "three"))
                    }
                print_cell(truth, after, rows)
    if not asked.alone:
        print_clients(lifters // 2, asked.seed)
    found, reviewed = client_time()
    print(
        f"a full client (8 exercises of 40 exposures): {found * 1e3:.1f} ms, review {reviewed * 1e3:.1f} ms"
    )
    loop = timed_loop()
    print(
        f"100,000 powers of a number in a loop take {loop * 1e3:.1f} ms: "
        f"{found / loop:.2f} and {reviewed / loop:.2f} times that"
    )


def timed_loop() -> float:
    """Return the seconds that 100,000 powers in a plain loop take here: what the other times are held to."""
    began = time.process_time()
    for step in range(100_000):
        _ = (1 + step) ** 0.5
    return time.process_time() - began


if __name__ == "__main__":
    main()
