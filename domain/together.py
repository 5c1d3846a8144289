"""Several exercises slowing together: the client is tired, and no single exercise is the matter.

Beside "this one's gain has ended" for each exercise there is one more reading of all exposures: on one day
the client's gain ended, in each exercise with the chance `TAKES_PART`, and all of those stopped, or all of
them fell. Its odds against "none has ended" are a product over the exercises, summed over the days; a day is
as likely as an end of one exercise's gain is after one exposure. Where it is likelier than that any single
one has ended, the finding is about the client.
"""

from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from domain.gain_model import CHANCE_OF_DECLINE, CHANCE_OF_END, chances_of_end
from domain.gain_odds import Odds, Weighed

TAKES_PART = 0.8
"""The chance that an exercise takes part where the client's gain ends: the project's own choice."""
FEWEST = 2
"""So many exercises at least are several."""
NEEDED = 10.0
"""The odds from which several exercises are taken to have slowed together.

The project's own choice. By `python -m tests.bench.clients` (150 clients of each kind, of two, four and six
exercises; gains of 1% with 3% noise and of 2% with 4.2%). With 10 several are told of falsely in 0.7 to 3.3%
(1.8% over all) of clients who gain on for 20 exposures, and in 0.8 to 7.1% of those of whom one exercise
stops; with 3 it was 1.3 to 4.0% (2.9% over all) and 1.7 to 9.6%. The tired are found with a median of 6 to 8
exposures where they have two exercises, 4 to 6 where they have four or six: up to one later than with 3.
"""


@dataclass(frozen=True, slots=True)
class Common:
    """The end of a client's gain in several exercises: `which`, by their places, after the day `since`.

    `odds` are those against no end at all, `declining` whether they fall since.
    """

    which: tuple[int, ...]
    since: date
    odds: float
    declining: bool


def common_end(known: Mapping[int, tuple[Weighed, Odds]]) -> Common | None:
    """Return the likeliest common end of the exercises given by their places, None with fewer than two."""
    if len(known) < FEWEST:
        return None
    days = {at: weighed.days for at, (weighed, _) in known.items()}
    candidates = sorted({day for each in days.values() for day in each[:-1]})
    done = {at: [bisect_right(each, day) for day in candidates] for at, each in days.items()}
    rounds = sum(map(len, days.values())) / len(days)
    a_round = len(candidates) / rounds
    stays = 1 - CHANCE_OF_END
    chances = [
        CHANCE_OF_END / a_round * stays ** (place / a_round + 1 - rounds) for place in range(len(candidates))
    ]
    stopping = [(1 - CHANCE_OF_DECLINE) * each for each in chances]
    falling = [CHANCE_OF_DECLINE * each for each in chances]
    factors = {at: _factors(*each) for at, each in known.items()}
    for at, (if_stops, if_falls) in factors.items():
        stopping = [odds * if_stops[tau] for odds, tau in zip(stopping, done[at], strict=True)]
        falling = [odds * if_falls[tau] for odds, tau in zip(falling, done[at], strict=True)]
    declining = max(falling) > max(stopping)
    likeliest = falling if declining else stopping
    place = likeliest.index(max(likeliest))
    which = tuple(at for at, each in factors.items() if each[declining][done[at][place]] > 1)
    if len(which) < FEWEST:
        return None
    return Common(which, candidates[place], sum(stopping) + sum(falling), declining)


def alone_odds(known: Mapping[int, tuple[Weighed, Odds]]) -> float:
    """Return the odds that the gain of some single one has ended, and no other."""
    return sum((sum(odds.stopped) + sum(odds.declined)) / odds.never for _, odds in known.values())


def are_together(together: float, alone: float) -> bool:
    """Return whether odds that several have slowed together are great enough, beside those of single ones."""
    return together >= max(NEEDED, alone)


def _factors(weighed: Weighed, odds: Odds) -> tuple[list[float], list[float]]:
    """Return what an exercise makes of the odds of a common stop, and of a fall, by its exposures until then.

    It takes part with the chance `TAKES_PART`. Before its first exposure there is no gain that could end, and
    after its last one nothing that could tell.
    """
    *ends, goes_on = chances_of_end(weighed.squares.exposures)
    never = odds.never / goes_on

    def by_done(weights: Sequence[float], kind: float) -> list[float]:
        likelier = TAKES_PART / (kind * never)
        return [
            1.0,
            *[1 - TAKES_PART + likelier * weight / end for weight, end in zip(weights, ends, strict=True)],
            1.0,
        ]

    return by_done(odds.stopped, 1 - CHANCE_OF_DECLINE), by_done(odds.declined, CHANCE_OF_DECLINE)
