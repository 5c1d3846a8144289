"""`python -m tests.bench.stalls`: how soon a stall is seen, and how often one is seen that is none.

Simulated lifters of every gain and noise do what our targets say. For each detector: the share of lifters
who gain steadily and yet raise an alarm within 20 exposures, and of the others the share who raise one in
the next 20; and the delay from the last exposure that gained (a random one of 8 to 25) to the alarm, over
those without one before. `ratio` is our median delay over that of the detector that knows the truth, at as
many false alarms; how medians are taken of whole exposures, and what the standard errors behind each `+-`
are, says `tests.bench.delays`. What a coach hears of whole clients follows (`tests.bench.clients`).
The detectors that know the truth have their threshold set in the same run, once for
false alarms of 1 in 10 and once for as many as ours has within 20.

`--lifters N` of each kind, and an eighth as many whole clients; `--short` is a small run, `--stops` leaves
out declines, `--exercises` says how many a client has, `--bad-days` adds lifters who have such.
`--processes N` shares the lifters out. All is seeded: `--seed` names other lifters. It takes half an hour
of a processor.
"""

import argparse
import math
import time
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from contextlib import contextmanager
from functools import partial

from domain.comparison import Body
from domain.gain_odds import weigh
from domain.gaining import standings
from domain.strength_series import series_of
from domain.trend import trend
from tests.bench.clients import print_clients
from tests.bench.delays import Alarms, Lifters, share_error
from tests.bench.lifters import Truth, index_of, lift
from tests.bench.seen import ALONE, KNOWING, OF_SEVERAL, PLAIN, Seen, see

GAINS = (0.01, 0.02, 0.005)
NOISES = (0.02, 0.03, 0.042)
STOPS, DECLINES = 0.0, -0.01
"""What the gain turns into."""
BAD_DAYS = 0.05
REPEATS = 100
"""How often something is timed: on a busy machine most times are too long."""
KNOWS = next(iter(KNOWING))
"""The detector that ours is held to."""

Spread = Callable[[Callable[[str], Seen], Sequence[str]], list[Seen]]


def lifters_of(found: Sequence[Seen], after: float) -> Lifters:
    """Return the lifters whose gain turns into `after`, beside those who gain on."""
    return Lifters([each.steady[after] for each in found], [each.turned[after] for each in found])


def seen_of(
    truth: Truth, afters: Sequence[float], seeds: Sequence[str], others: int, by: Spread
) -> list[Seen]:
    """Return what is seen of so many lifters of one gain and noise."""
    return by(partial(_see, truth, tuple(afters), others), seeds)


def _see(truth: Truth, afters: Sequence[float], others: int, seed: str) -> Seen:
    return see(truth, afters, seed, others)


@contextmanager
def spread(processes: int) -> Iterator[Spread]:
    """Give what applies a function to seeds, in order: here, or in so many processes."""
    if processes < 2:
        yield lambda function, seeds: list(map(function, seeds))
        return
    with ProcessPoolExecutor(processes) as pool:
        yield lambda function, seeds: list(pool.map(function, seeds, chunksize=4))


def head() -> str:
    """Return the head of the table."""
    return (
        f"{'gain':>5} {'noise':>5} {'':<12} {'detector':<25} {'alarms':>13} {'later':>6} "
        f"{'median':>7} {'':<6} {'90th':>4} {'ratio':>6}"
    )


def print_cell(truth: Truth, after: float, lifters: Lifters, *, with_knowing: bool = True) -> None:
    """Print the rows of one gain and noise."""
    turns = "stops" if after == STOPS else f"turns to {after:.0%}"
    begins = f"{truth.gain:5.1%} {truth.noise:5.1%} {turns:<12}"

    def line(
        name: str, alarms: Alarms, median_error: float | None = None, ratio: tuple[float, float] | None = None
    ) -> None:
        row = alarms.row()
        error = share_error(row.false_alarms, len(alarms.steady))
        text = f"{begins} {name:<25} {row.false_alarms:6.1%} +-{error:4.1%} {row.later:6.1%}"
        text += f" {row.median:7.2f} {'' if median_error is None else f'+-{median_error:.2f}':<6}"
        text += f" {row.ninetieth:4.0f}"
        text += "" if ratio is None else f" {ratio[0]:6.2f} +-{ratio[1]:.2f}"
        print(text.rstrip(), flush=True)

    for name in (OF_SEVERAL, ALONE):
        if name not in lifters.steady[0].alarms:
            continue
        median_error = lifters.error(partial(Lifters.median, name=name), name)
        if with_knowing:
            error = lifters.error(partial(Lifters.ratio, ours=name, knowing=KNOWS), name)
            line(name, lifters.by_name(name), median_error, (lifters.ratio(name, KNOWS), error))
            line(f"  {KNOWS}", lifters.at_rate(KNOWS, lifters.by_name(name).false))
        else:
            line(name, lifters.by_name(name), median_error)
    for name in PLAIN:
        line(name, lifters.by_name(name))
    for name in KNOWING if with_knowing else ():
        line(name, lifters.at_rate(name, 0.1))


def fastest(work: Callable[[], object]) -> float:
    """Return the seconds of the processor that something takes, the least of many times."""
    times = []
    for _ in range(REPEATS):
        began = time.process_time()
        work()
        times.append(time.process_time() - began)
    return min(times)


def client_time() -> tuple[float, float]:
    """Return the seconds that a full client's assessment takes, from sets to findings, and its review.

    Nothing is remembered from one assessment to the next.
    """
    pasts = [lift(Truth(0.01, 0.03), f"time {which}", which, 40)[0] for which in range(8)]

    def assess() -> None:
        weigh.cache_clear()
        standings([series_of(past, Body()) for past in pasts])

    found = fastest(assess)
    indices = tuple(tuple(index_of(past)) for past in pasts)
    return found, fastest(lambda: trend(indices))


def main() -> None:
    """Print the table."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.stalls")
    parser.add_argument("--lifters", type=int, default=500)
    parser.add_argument("--short", action="store_true")
    parser.add_argument("--stops", action="store_true")
    parser.add_argument("--exercises", type=int, default=6)
    parser.add_argument("--bad-days", action="store_true")
    parser.add_argument("--gain", type=float, choices=GAINS, help="only this one")
    parser.add_argument("--noise", type=float, choices=NOISES, help="only this one")
    parser.add_argument("--processes", type=int, default=1)
    parser.add_argument("--seed", default="a")
    asked = parser.parse_args()
    began = time.monotonic()
    lifters = 30 if asked.short else asked.lifters
    others = asked.exercises - 1
    print(f"{lifters} lifters of each kind, of clients with {others + 1} exercises, seed {asked.seed!r}")
    print("delays are whole exposures; medians are of grouped data, each spread over half an exposure either")
    print("side, for every detector alike; behind +- stand standard errors")
    print(head())
    gains = GAINS[:1] if asked.short else GAINS
    with spread(asked.processes) as by:
        for gain in gains if asked.gain is None else (asked.gain,):
            for noise in NOISES if asked.noise is None else (asked.noise,):
                truth, afters = Truth(gain, noise), (STOPS,) if asked.stops else (STOPS, DECLINES)
                seeds = [f"{asked.seed} {truth} {each}" for each in range(lifters)]
                found = seen_of(truth, afters, seeds, others, by)
                for after in afters:
                    print_cell(truth, after, lifters_of(found, after))
                if asked.bad_days:
                    print_bad_days(truth, seeds, others, by)
    if asked.gain is None and asked.noise is None:
        print_clients(math.ceil(lifters / 8), asked.seed)
    print_times()
    print(f"all in {(time.monotonic() - began) / 60:.0f} minutes")


def print_bad_days(truth: Truth, seeds: Sequence[str], others: int, by: Spread) -> None:
    """Print what lifters who have bad days besides come to."""
    print(f"with 1 day of {1 / BAD_DAYS:.0f} bad by 10%:")
    bad = Truth(truth.gain, truth.noise, bad_days=BAD_DAYS)
    found = seen_of(bad, (STOPS,), seeds, others, by)
    print_cell(bad, STOPS, lifters_of(found, STOPS), with_knowing=False)


def print_times() -> None:
    """Print how long a client's assessment takes, and what that is beside a plain loop here."""
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

    def powers() -> None:
        for step in range(100_000):
            _ = (1 + step) ** 0.5

    return fastest(powers)


if __name__ == "__main__":
    main()
