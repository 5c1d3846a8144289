"""`python -m tests.bench.calibrate`: find the numbers of `domain.needed` anew.

Clients of every gain and noise are simulated twice (`tests.bench.records`): steady ones, all of whose
exercises gain on, and ones whose first exercise stops. Looked for are the five numbers with which ends are
found the soonest, while at no gain, noise and number of exercises more than `allowed` of the steady exercises
raise an alarm within 20 exposures, and the median delay stays near that of a detector that knows the truth.
What is allowed falls with the number of exercises: of steady clients, too, only so many are to be called
stalled at all. The search (Nelder & Mead's) begins with the numbers that stand and two other guesses, since
much the same is reached by many; all is seeded.

`--clients N` steady ones of each gain and noise, and half as many turned ones; `--rounds N` of each search.
It takes half an hour; fewer clients take less, and find numbers that are less sure.
"""

import argparse
import statistics
from collections.abc import Sequence
from dataclasses import astuple, dataclass, field

from scipy import optimize

from domain.needed import THRESHOLD, Threshold
from tests.bench.delays import threshold_for
from tests.bench.lifters import EXPOSURES, WITHIN, Truth
from tests.bench.records import SIZES, Client, clients

GAINS = (0.005, 0.01, 0.02)
NOISES = (0.02, 0.03, 0.042)
LEAST_TIMED = 0.01
"""The least gain for which the delay counts: a smaller one is lost in the noise for long."""
MOST_OF_LIFTS = 0.09
"""The share of steady exercises that may raise a false alarm: 10% is the bound, the rest is for chance."""
MOST_OF_CLIENTS = 0.4
"""The share of steady clients of whom any exercise may, if their exercises did so independently."""
MOST_RATIO = 1.25
"""What the median delay may be beside that of the detector that knows the truth: 1.3 is the bound."""
OTHER_GUESSES = ((0.1, 1.0, 2.85, 0.5, -0.4), (0.0, 0.9, 3.2, 0.4, -0.2))
STEPS = (0.4, 0.25, 0.15)
ROUNDS = 160
FEWEST_CLIENTS = 20
"""With fewer there may be none whose delay could be told."""


@dataclass(frozen=True)
class Cell:
    """The simulated clients of one gain and noise."""

    truth: Truth
    steady: list[Client]
    turned: list[Client]
    _known: dict[int, list[int]] = field(default_factory=dict)

    def knowing_delays(self, rate: float) -> list[int]:
        """Return the delays of the detector that knows the truth, at that share of false alarms."""
        alarms = round(rate * len(self.steady))
        if alarms not in self._known:
            threshold = threshold_for([max(each.knowing[: WITHIN + 1]) for each in self.steady], rate)
            firsts = [
                (
                    next((at for at, score in enumerate(each.knowing) if score > threshold), EXPOSURES),
                    each.ends,
                )
                for each in self.turned
            ]
            self._known[alarms] = [at - (end or 0) for at, end in firsts if at > (end or 0)]
        return self._known[alarms]


def simulated(truth: Truth, count: int, seed: str) -> Cell:
    """Return the clients of one gain and noise."""
    steady = clients(truth, count, f"{seed} steady", turned=False)
    is_timed = truth.gain >= LEAST_TIMED
    return Cell(truth, steady, clients(truth, count // 2, f"{seed} turned", turned=True) if is_timed else [])


def allowed(size: int) -> float:
    """Return the share of steady exercises that may raise an alarm in clients with so many."""
    return min(MOST_OF_LIFTS, MOST_OF_CLIENTS / size)


def false_alarms(cell: Cell, size: int, by: Threshold) -> tuple[float, float, float]:
    """Return the share of first exercises, of all, and of clients with an alarm within 20 exposures."""
    found = [[at <= WITHIN for at in each.alarms(size, by)] for each in cell.steady]
    return (
        statistics.fmean(each[0] for each in found),
        statistics.fmean(is_one for each in found for is_one in each),
        statistics.fmean(any(each) for each in found),
    )


def delays(cell: Cell, size: int, by: Threshold) -> list[int]:
    """Return the delays of the first exercise, of those without an alarm before the end of its gain."""
    firsts = [(each.alarms(size, by)[0], each.ends or 0) for each in cell.turned]
    return [min(at, EXPOSURES) - end for at, end in firsts if at > end]


def ratio(cell: Cell, size: int, by: Threshold, rate: float) -> float:
    """Return the median delay over that of the detector that knows the truth at that rate of alarms."""
    ours, theirs = delays(cell, size, by), cell.knowing_delays(rate)
    return statistics.median_grouped(ours) / statistics.median_grouped(theirs)


def badness(cells: Sequence[Cell], by: Threshold) -> float:
    """Return what is to be made small: delays, and false alarms and ratios beyond what is allowed."""
    total = 0.0
    for cell in cells:
        for size in SIZES:
            first, every, _ = false_alarms(cell, size, by)
            total += 8 * max(0.0, (first + every) / 2 / allowed(size) - 1)
            if cell.turned:
                total += 10 * max(0.0, ratio(cell, size, by, first) - MOST_RATIO)
                usual = statistics.fmean(cell.knowing_delays(allowed(size)))
                total += statistics.fmean(delays(cell, size, by)) / usual
    return total


def fitted(cells: Sequence[Cell], rounds: int) -> Threshold:
    """Return the numbers that are best, looked for from each guess, and anew from where the search ended."""

    def of(numbers: Sequence[float]) -> float:
        return badness(cells, Threshold(*map(float, numbers)))

    found = []
    for guess in (astuple(THRESHOLD), *OTHER_GUESSES):
        best = list(guess)
        for step in STEPS:
            corners = [best] + [
                [one + step * (at == which) for at, one in enumerate(best)] for which in range(5)
            ]
            options = {"maxfev": rounds, "initial_simplex": corners}
            best = [
                float(one) for one in optimize.minimize(of, best, method="Nelder-Mead", options=options).x
            ]
        found.append(best)
    return Threshold(*(round(one, 2) for one in min(found, key=of)))


def show(cells: Sequence[Cell], by: Threshold) -> None:
    """Print what the numbers reach."""
    print(by)
    print("of  gain noise  first   all client   median ratios at both")
    for size in SIZES:
        for cell in cells:
            first, every, of_clients = false_alarms(cell, size, by)
            text = f"{size:2} {cell.truth.gain:5.1%} {cell.truth.noise:5.1%} "
            text += f"{first:6.1%} {every:5.1%} {of_clients:6.1%}"
            if cell.turned:
                ours = statistics.median_grouped(delays(cell, size, by))
                text += (
                    f" {ours:8.2f} {ratio(cell, size, by, first):6.2f} {ratio(cell, size, by, every):6.2f}"
                )
            print(text)


def main() -> None:
    """Simulate, fit, and print."""
    parser = argparse.ArgumentParser(prog="python -m tests.bench.calibrate")
    parser.add_argument("--clients", type=int, default=160)
    parser.add_argument("--seed", default="calibration")
    parser.add_argument("--rounds", type=int, default=ROUNDS)
    asked = parser.parse_args()
    if asked.clients < FEWEST_CLIENTS:
        parser.error(f"at least {FEWEST_CLIENTS} clients are needed")
    cells = []
    for gain in GAINS:
        for noise in NOISES:
            cells.append(simulated(Truth(gain, noise), asked.clients, asked.seed))
            print(f"simulated {gain:.1%} {noise:.1%}", flush=True)
    show(cells, THRESHOLD)
    show(cells, fitted(cells, asked.rounds))


if __name__ == "__main__":
    main()
