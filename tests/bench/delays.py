"""False alarms and delays over many lifters, and how far off they may be by chance.

A delay is a whole number of exposures, since nothing is seen in between. So the median is that of grouped
data: the delays of k exposures are taken as spread evenly from k - 1/2 to k + 1/2, and the median is where
half of them lie below. It is the plain median where that is one of few, moves smoothly where a share of the
lifters crosses from one exposure to the next, and is the same for every detector.

Errors are standard errors: of shares, those of a binomial; of medians and ratios, the deviation over
lifters drawn anew from those there are (the bootstrap, Efron 1979), in each draw with the threshold of the
knowing detector set anew. Ours and the knowing one see the same lifters, and are drawn together.
"""

import math
import statistics
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from random import Random

from tests.bench.lifters import EXPOSURES, WITHIN
from tests.bench.seen import Told, first_above

DRAWS = 200


@dataclass(frozen=True)
class Row:
    """What one detector did: false alarms (0 to 1), median and 90th percentile of the delay.

    `later` are false alarms in as many exposures again, among those without one. Not a number where everybody
    had raised an alarm before the gain ended, or nobody was left.
    """

    false_alarms: float
    later: float
    median: float
    ninetieth: float


@dataclass(frozen=True)
class Alarms:
    """First alarms of lifters who gain on, and of as many whose gain ended after the exposures `ends`."""

    steady: Sequence[int]
    turned: Sequence[int]
    ends: Sequence[int]

    @property
    def false(self) -> float:
        """The share of those who gain on with an alarm in time."""
        return sum(at <= WITHIN for at in self.steady) / len(self.steady)

    @property
    def delays(self) -> list[int]:
        """The delays from the last exposure that gained, of those without an alarm before; ascending."""
        both = zip(self.turned, self.ends, strict=True)
        return sorted(min(alarm - end, EXPOSURES) for alarm, end in both if alarm > end)

    @property
    def median(self) -> float:
        """The median delay."""
        delays = self.delays
        return statistics.median_grouped(delays) if delays else math.nan

    def row(self) -> Row:
        """Return the row of the table."""
        left = [at for at in self.steady if at > WITHIN]
        delays = self.delays
        return Row(
            self.false,
            sum(at <= 2 * WITHIN for at in left) / len(left) if left else math.nan,
            self.median,
            delays[math.ceil(0.9 * len(delays)) - 1] if delays else math.nan,
        )


@dataclass(frozen=True)
class Lifters:
    """Lifters of one kind: who gain on, and the same ones where the gain ends."""

    steady: Sequence[Told]
    turned: Sequence[Told]

    def by_name(self, name: str) -> Alarms:
        """Return the alarms of a detector that has no threshold to be set."""
        return Alarms(
            [each.alarms[name] for each in self.steady],
            [each.alarms[name] for each in self.turned],
            [each.ends for each in self.turned],
        )

    def at_rate(self, name: str, rate: float) -> Alarms:
        """Return the alarms of a detector whose threshold gives that share of false alarms."""
        threshold = threshold_for([greatest(each, name) for each in self.steady], rate)
        return Alarms(
            [first_above(each.courses[name], threshold) for each in self.steady],
            [first_above(each.courses[name], threshold) for each in self.turned],
            [each.ends for each in self.turned],
        )

    def median(self, name: str) -> float:
        """Return the median delay of a detector that has no threshold to be set."""
        return self.by_name(name).median

    def ratio(self, ours: str, knowing: str) -> float:
        """Return the median delay of ours over that of the knowing detector at as many false alarms."""
        mine = self.by_name(ours)
        return mine.median / self.at_rate(knowing, mine.false).median

    def error(self, of: Callable[["Lifters"], float], seed: str) -> float:
        """Return the standard error of a number, by drawing lifters anew; nan where it mostly is none."""
        luck, places = Random(seed), range(len(self.steady))
        drawn = (luck.choices(places, k=len(places)) for _ in range(DRAWS))
        found = [
            of(Lifters([self.steady[at] for at in each], [self.turned[at] for at in each])) for each in drawn
        ]
        known = [each for each in found if not math.isnan(each)]
        return statistics.stdev(known) if 2 * len(known) > len(found) else math.nan


def greatest(told: Told, name: str) -> float:
    """Return the greatest score within the exposures in which false alarms are counted."""
    return max(score for at, score in told.courses[name] if at <= WITHIN)


def threshold_for(greatest_scores: Sequence[float], rate: float) -> float:
    """Return the threshold above which that share of the scores lies."""
    return sorted(greatest_scores)[-1 - min(len(greatest_scores) - 1, round(rate * len(greatest_scores)))]


def share_error(share: float, of: int) -> float:
    """Return the standard error of a share of so many."""
    return math.sqrt(share * (1 - share) / of) if of else math.nan
