"""How much lighter to begin again after time away. The numbers are the project's own rule.

What is published is how much strength is lost, not how much load to take off: two weeks away keep the gains
(Hwang 2017, J Strength Cond Res 31:869-881), three change a bench press maximum by -2 to +1%, up to four are
"readily maintained" (Mujika & Padilla 2001, Med Sci Sports Exerc 33:1297-1303), though elite weightlifters
lost about 10% in the squat in four (Häkkinen & Komi 1985, quoted); beyond that losses grow with the length of
the break and over 65 years of age (Bosquet 2013, Scand J Med Sci Sports 23:e140-9). A break of two weeks and
more calls for upper limits during the first two to four weeks back (CSCCa and NSCA 2019, Strength Cond J
41(3):1-23). So the first load is lower than the loss alone would make it. The way back then goes in steps no
greater than any other raise, up to what was done before; ten weeks away are regained within five of training
(Halonen 2024, quoted).
"""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from itertools import pairwise

from domain.comparison import extra_kg
from domain.exposure import Exposure
from domain.sets import TrainingSet

_WEEK = 7

FIRST_LOAD: tuple[tuple[int, Decimal], ...] = (
    (16 * _WEEK, Decimal("0.70")),
    (8 * _WEEK, Decimal("0.80")),
    (4 * _WEEK, Decimal("0.85")),
    (3 * _WEEK, Decimal("0.90")),
    (2 * _WEEK, Decimal("0.95")),
)
"""From so many days away on, the share of the last load to begin with; the longest break first."""

SHORTEST = FIRST_LOAD[-1][0]
"""How many days away are a break at all."""

AFTER_ILLNESS = Decimal("0.90")
"""The share of the last load to begin with after an illness, however short: the project's own rule too."""


def share_after(days_away: int) -> Decimal | None:
    """Return the share of the last load to begin with after so many days away; None below 14: no break.

    Days that the schedule leaves between two workouts of a kind anyway are not days away.
    """
    if days_away < SHORTEST:
        return None
    return next((share for days, share in FIRST_LOAD if days_away >= days), None)


def longest_break(trained: Sequence[date], since: date, until: date) -> int:
    """Return the most days in a row without training from the day `since` to the day `until`.

    `trained` are the days of training in order. What was done last before a break is begun lighter after it,
    be it some workouts later.
    """
    between = trained[bisect_right(trained, since) : bisect_left(trained, until)]
    days = [since, *between, max(since, until)]
    return max((later - day).days for day, later in pairwise(days))


def built_back_to(past: Sequence[Exposure], lightened: Sequence[bool]) -> TrainingSet | None:
    """Return the set that the client is still on the way back to, None where there is no such way.

    `past` are exposures of one kind, oldest first; `lightened` says of each whether it was to be lighter
    because of a break before it. The way ends as soon as as much is done as before.
    """
    wanted: TrainingSet | None = None
    for (before, now), is_lightened in zip(pairwise(past), lightened[1:], strict=True):
        if is_lightened:
            best = _heaviest(before)
            wanted = best if wanted is None or extra_kg(best) > extra_kg(wanted) else wanted
        if wanted is not None:
            done = _heaviest(now)
            if (extra_kg(done), done.amount) >= (extra_kg(wanted), wanted.amount):
                wanted = None
    return wanted


def _heaviest(exposure: Exposure) -> TrainingSet:
    return max(exposure.counting, key=lambda each: (extra_kg(each), each.amount))
