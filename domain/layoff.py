"""How much lighter to begin again after time away. The numbers are the project's own rule.

What is published is how much strength is lost, not how much load to take off: two weeks away keep the gains
(Hwang 2017, J Strength Cond Res 31:869-881), three change a bench press maximum by -2 to +1%, up to four are
"readily maintained" (Mujika & Padilla 2001, Med Sci Sports Exerc 33:1297-1303), though elite weightlifters
lost about 10% in the squat in four (Häkkinen & Komi 1985, quoted); beyond that losses grow with the length of
the break and over 65 years of age (Bosquet 2013, Scand J Med Sci Sports 23:e140-9). A break of two weeks and
more calls for upper limits during the first two to four weeks back (CSCCa and NSCA 2019, Strength Cond J
41(3):1-23). So the first load is lower than the loss alone would make it; the way back is double progression.
"""

from decimal import Decimal

_WEEK = 7

FIRST_LOAD: tuple[tuple[int, Decimal], ...] = (
    (16 * _WEEK, Decimal("0.70")),
    (8 * _WEEK, Decimal("0.80")),
    (4 * _WEEK, Decimal("0.85")),
    (3 * _WEEK, Decimal("0.90")),
    (2 * _WEEK, Decimal("0.95")),
)
"""From so many days away on, the share of the last load to begin with; the longest break first."""


def share_after(days_away: int) -> Decimal | None:
    """Return the share of the last load to begin with after so many days away; None below 14: no break.

    Days that the schedule leaves between two workouts of a kind anyway are not days away.
    """
    return next((share for days, share in FIRST_LOAD if days_away >= days), None)
