"""`python -m tests.bench.clients`: what a coach hears of whole clients; printed by `tests.bench.stalls` too.

Simulated clients of several exercises: all of which gain on; of which one stops; or who are tired, so that on
one day each exercise stops with the chance `TAKES_PART`, two at the least. Counted is what the coach would
hear first: that one exercise has stalled, or that several have slowed together. It is reckoned for several
odds that could be needed for the latter, from the same clients.
"""

import argparse
import math
import statistics
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from random import Random
from typing import Literal

from domain.gain_odds import weigh
from domain.gaining import enough, odds_of_all
from domain.needed import has_ended
from domain.strength_series import Series
from domain.together import FEWEST, NEEDED, alone_odds, common_end
from tests.bench.lifters import EARLIEST, LATEST, SPREAD, WITHIN, Truth, growing, lift

Kind = Literal["steady", "one stops", "tired"]
KINDS: tuple[Kind, ...] = ("steady", "one stops", "tired")
TAKES_PART = 0.8
TRUTHS = (Truth(0.01, 0.03), Truth(0.02, 0.042))
SIZES = (2, 4, 6)
TRIED = (1.0, 3.0, NEEDED, 30.0)
"""The odds for several that are tried: those that are needed, and others."""
WATCHED = 20
"""How many exposures after the end of a gain are watched."""


@dataclass(frozen=True)
class Look:
    """What the engine finds after an exposure: the odds that several have slowed, and that a single one has.

    `stalled` are the places of the exercises that have stalled by themselves.
    """

    together: float
    alone: float
    stalled: tuple[int, ...]

    def is_of_several(self, needed: float) -> bool:
        """Return whether it is told that several have slowed, where those odds are needed."""
        return self.together >= max(needed, self.alone)


@dataclass(frozen=True)
class Watched:
    """One client: the last exposure that gained (the twentieth where all gain on), and a look after each."""

    ends: int
    looks: list[Look | None]

    def first(self, needed: float) -> tuple[int, str]:
        """Return after which exposure the coach first hears of something, and of what."""
        for at, look in enumerate(self.looks):
            if look is not None and look.is_of_several(needed):
                return at, "several"
            if look is not None and look.stalled:
                return at, "first" if 0 in look.stalled else "another"
        return len(self.looks), "nothing"

    def first_of_several(self, needed: float) -> int:
        """Return after which exposure the coach first hears of several; past the last one for never."""
        found = (at for at, look in enumerate(self.looks) if look is not None and look.is_of_several(needed))
        return next(found, len(self.looks))


def watched(truth: Truth, kind: Kind, size: int, seed: str) -> Watched:
    """Return the client of that seed."""
    luck = Random(f"{seed} client")
    ends = WITHIN if kind == "steady" else luck.randint(EARLIEST, LATEST)
    exposures = ends + 1 + (0 if kind == "steady" else WATCHED)
    series = []
    for which in range(size):
        gain = truth.gain * (math.exp(luck.gauss(0, SPREAD)) if which else 1)
        takes_part = luck.random() < TAKES_PART or which < FEWEST
        stops = {"steady": False, "one stops": which == 0, "tired": takes_part}[kind]
        own = replace(truth, gain=gain, ends=ends if stops else None)
        series.append(growing(lift(own, f"{seed} {which}", which, exposures)[0]))
    looks = [look_after([each[at] for each in series]) for at in range(exposures)]
    weigh.cache_clear()
    return Watched(ends, looks)


def look_after(series: Sequence[Series]) -> Look | None:
    """Return what the engine finds in series."""
    odds, others = odds_of_all(series)
    known = enough(odds)
    common = common_end(known)
    if not known:
        return None
    stalled = tuple(at for at, (_, each) in known.items() if has_ended(each, others))
    return Look(0.0 if common is None else common.odds, alone_odds(known), stalled)


def rows(truth: Truth, size: int, count: int, seed: str) -> list[str]:
    """Return the lines of the table for one gain, noise and number of exercises."""
    found = {
        kind: [watched(truth, kind, size, f"{seed} {kind} {size} {truth} {each}") for each in range(count)]
        for kind in KINDS
    }
    return [line(truth, size, needed, found) for needed in TRIED]


def line(truth: Truth, size: int, needed: float, found: dict[Kind, list[Watched]]) -> str:
    """Return one line: the odds needed, and what is heard of clients of each kind."""
    steady = [each.first(needed)[1] for each in found["steady"]]
    ofs = {what: share(each == what for each in steady) for what in ("several", "first", "another")}
    one = [each for each in found["one stops"] if each.first(needed)[0] > each.ends]
    tired = [each for each in found["tired"] if each.first(needed)[0] > each.ends]
    ones = [each.first(needed) for each in one]
    late = [each.first_of_several(needed) - each.ends for each in tired]
    any_late = [each.first(needed)[0] - each.ends for each in tired]
    return (
        f"{size:2} {truth.gain:5.1%} {truth.noise:5.1%} {needed:6g}"
        f" {ofs['first'] + ofs['another']:8.1%} {ofs['several']:8.1%}"
        f" {share(what == 'several' for _, what in ones):10.1%}"
        f" {statistics.median_grouped(any_late):9.2f} {statistics.median_grouped(late):8.2f}"
        f" {share(delay > WATCHED for delay in late):6.1%}"
    )


def share(of: Iterable[bool]) -> float:
    """Return the share that is true."""
    return statistics.fmean(of)


def print_clients(count: int, seed: str) -> None:
    """Print the table."""
    print(
        f"whole clients, {count} of each kind, by the odds needed for several. Of those who gain on, how many"
    )
    print(
        f"are told of falsely in {WITHIN} exposures: of one exercise, of several. Where one stops, how often"
    )
    print(
        "several are told of. Of the tired, the exposures until anything is told, and until it is of several."
    )
    print("of  gain noise needed      one  several  one as sev.  any after several  never")
    for truth in TRUTHS:
        for size in SIZES:
            for each in rows(truth, size, count, seed):
                print(each, flush=True)


if __name__ == "__main__":
    parser = argparse.ArgumentParser(prog="python -m tests.bench.clients")
    parser.add_argument("--clients", type=int, default=100)
    parser.add_argument("--seed", default="a")
    asked = parser.parse_args()
    print_clients(asked.clients, asked.seed)
