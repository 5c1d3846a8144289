"""Whether a client's exercises have stalled: the face of the engine.

A client's exercises go in together, each with its exposures, and a standing for each comes out: whether it
still gains, since when it does not, how sure that is. No published definition of a plateau exists: what a
stall is here, and how sure one must be of it, is the project's choice (`domain.gaining`).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from domain.comparison import Body
from domain.exposure import Exposure
from domain.gaining import Findings, look
from domain.strength_series import Series, series_of


@dataclass(frozen=True, slots=True)
class Lift:
    """One exercise of one workout: its exposures that were not on hold, oldest first.

    `breaks` are days after which it was begun lighter on purpose. Of what was done until the day `settled`
    a coach has decided already: it says what gain and noise are usual, and is no part of a new stall.
    """

    exposures: tuple[Exposure, ...]
    body: Body
    breaks: tuple[date, ...] = ()
    settled: date | None = None

    def series(self) -> tuple[Series, Series]:
        """Return the series since it was settled, and the one until then."""
        whole = series_of(self.exposures, self.body, self.breaks)
        if self.settled is None:
            return whole, Series()
        later = [tuple(each for each in part if each.on > self.settled) for part in whole.parts]
        earlier = [tuple(each for each in part if each.on <= self.settled) for part in whole.parts]
        return Series(tuple(filter(None, later))), Series(tuple(filter(None, earlier)))


def look_at(lifts: Sequence[Lift]) -> Findings:
    """Return how each of a client's lifts stands, in order, and what several have in common."""
    both = [lift.series() for lift in lifts]
    return look([now for now, _ in both], [before for _, before in both])
