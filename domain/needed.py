"""How great the odds must be that an exercise's gain has ended, until it is called a stall.

What is needed is the greater, the more the two readings of the exposures differ (a great gain that ended, a
small one that goes on), and the greater the gain is; and the more other exercises the client has: each is one
more that could raise a false alarm, and says more of what gain and noise are usual. The logarithm is linear
in both, with coefficients that go from those of an exercise alone towards those of one among many, by the
share n / (n + 2) of n others. After `LONG` exposures it rises with each: who gains on for long would be told
of a stall sooner or later, since the chance that a gain has ended grows with each exposure that it may have
ended after, whatever is seen.

There is no theory to the five numbers: `python -m tests.bench.calibrate` finds the like of them, with
simulated clients of one to eight exercises and of every gain and noise. They are the project's own rule:
those of an exercise alone were found with 9600 steady ones and 7200 that stop, what many others add with 960
clients of six. What they reach with other seeds stands in DEVELOPERS.md. The gain itself does better than its
logarithm (at 2% fewer false alarms, at 1% shorter delays); the noise of a day as a third number made nothing
better. `LONG` and `RISE` were found beside them, as the least that
keep false alarms in the 20 exposures after the first 20 near or under 10% in clients of six exercises, while
a stall after 8 to 25 exposures is found hardly later.
"""

import math
from dataclasses import dataclass
from typing import NamedTuple

from domain.gain_odds import LEAST, Odds

USUAL_GAIN = 0.01
"""What the gain is taken relative to, so that the numbers are easy to read. It decides nothing."""
MOST_DIFFERENCE = math.log(2)
"""A gain more than twice the other makes no more of a difference: so far apart they are where strength falls,
which is to be seen soon. Found with the five numbers."""
LONG = 28
RISE = 0.15
"""After so many exposures, by how much the logarithm of what is needed rises with each."""
HALF_TOLD = 2
"""With so many others half of what they can say has been said: the project's own choice."""


class Seen(NamedTuple):
    """What an exercise's exposures show, the first two as logarithms.

    `odds` are those that its gain has ended; `difference` is the gain over all readings over that of the
    reading in which it goes on, `MOST_DIFFERENCE` at the most, and `gain` by what share of the usual gain
    the latter is greater.
    `long` is how many exposures there are beyond `LONG`.
    """

    odds: float
    difference: float
    gain: float
    long: int


@dataclass(frozen=True, slots=True)
class Threshold:
    """The five numbers: what an exercise alone needs, and how much that changes with many others."""

    base: float
    base_told: float
    difference: float
    gain: float
    gain_told: float

    def beside(self, others: int) -> tuple[float, float, float]:
        """Return, for an exercise with so many others, the base and what it takes of each in `Seen`."""
        told = others / (others + HALF_TOLD)
        return (
            self.base + self.base_told * told,
            self.difference,
            self.gain + self.gain_told * told,
        )

    def needed(self, seen: Seen, others: int) -> float:
        """Return the logarithm of the odds that are needed."""
        base, difference, gain = self.beside(others)
        return base + difference * seen.difference + gain * seen.gain + RISE * seen.long


THRESHOLD = Threshold(base=-0.12, base_told=0.8, difference=3.6, gain=0.69, gain_told=-0.38)


def seen_in(odds: Odds) -> Seen:
    """Return what is seen in an exercise's odds."""
    ended = sum(odds.stopped) + sum(odds.declined)
    return Seen(
        math.log(max(ended, LEAST)) - math.log(odds.never),
        min(math.log(odds.gain_overall / odds.gain_if_never), MOST_DIFFERENCE),
        odds.gain_if_never / USUAL_GAIN - 1,
        max(0, len(odds.stopped) + 1 - LONG),
    )


def has_ended(odds: Odds, others: int) -> bool:
    """Return whether the odds are great enough, for an exercise with so many others beside it."""
    seen = seen_in(odds)
    return seen.odds >= THRESHOLD.needed(seen, others)
