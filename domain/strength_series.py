"""The strength of an exercise as a series: an index per exposure, in parts where a layoff lies between.

What is of another kind than the last exposure (holds, lowering-only reps, loads counted per hand) is another
series and is left out, as are slips of the finger. Exposures on hold or lightened on purpose are to be left
out by the caller. The numbers are the project's own rules.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from statistics import median

from domain.comparison import Body, best_of, strength_shown
from domain.exposure import Exposure
from domain.layoff import share_after

MOST_EXPOSURES = 40
"""So many exposures are looked back on: what was gained long before says little of now."""
SLIP = 0.2
"""An index so far from the middle of the five around it is a slip, or a day to be left out: no noise is so
great (1.96 √2 4.2% is 11.6%, from the median test-retest variation of Grgic 2020, Sports Med Open 6:31)."""
_AROUND = 2
LEAST_AROUND = 3
BACK_WITHIN = 0.02
"""After a layoff strength is back where it comes so close to what it was before."""
MOST_COMING_BACK = 6
"""For so many exposures at most after a layoff the gain is one of coming back, and no part of the series."""


@dataclass(frozen=True, slots=True)
class Point:
    """The index of an exposure (a natural log, so 0.01 is 1%) and its day."""

    on: date
    index: float


@dataclass(frozen=True, slots=True)
class Series:
    """The exposures of one exercise that can be held against each other, oldest first, in parts.

    Between two parts lies a layoff, after which strength has a new level.
    """

    parts: tuple[tuple[Point, ...], ...] = ()

    @property
    def points(self) -> tuple[Point, ...]:
        """Return the exposures of all parts."""
        return tuple(point for part in self.parts for point in part)


def strength_index(exposure: Exposure, body: Body) -> float | None:
    """Return the logarithm of the strength that the best set of an exposure shows, on its own kind's scale.

    Reps: of the estimated 1RM (Epley) on the load with the body's share. Holds: of load times seconds to the
    pooled endurance exponent. For lowering-only reps, and where the body mass is not known, the scale only
    orders. None where not one rep was done.
    """
    best = strength_shown(best_of(exposure.counting, body), body)
    return math.log(best) if best > 0 else None


def series_of(history: Sequence[Exposure], body: Body) -> Series:
    """Return the series at the end of `history`, exposures of one exercise, oldest first."""
    points: list[Point] = []
    scale = None
    for each in reversed(history):
        best = best_of(each.counting, body)
        kind = best.load_kind if best.load_kind in ("total", "each") else "body"
        shared = (each.lowering_only, each.is_hold, kind)
        scale = scale or shared
        shown = strength_shown(best, body)
        if shared == scale and shown > 0:
            points.append(Point(each.on, math.log(shown)))
        if len(points) == MOST_EXPOSURES:
            break
    return Series(_in_parts(_without_slips(points[::-1])))


def _without_slips(points: list[Point]) -> list[Point]:
    if len(points) < LEAST_AROUND:
        return points
    kept = []
    for at, point in enumerate(points):
        first = max(0, min(at - _AROUND, len(points) - 2 * _AROUND - 1))
        around = median(each.index for each in points[first : first + 2 * _AROUND + 1])
        if abs(point.index - around) <= SLIP:
            kept.append(point)
    return kept


def _in_parts(points: list[Point]) -> tuple[tuple[Point, ...], ...]:
    """Part the points where a client was away, and leave out what then only came back."""
    if not points:
        return ()
    gaps = [(later.on - earlier.on).days for earlier, later in pairwise(points)]
    usual = median(gaps) if gaps else 0
    parts, part = [], [points[0]]
    before: float | None = None
    skipped = 0
    for gap, point in zip(gaps, points[1:], strict=True):
        if share_after(gap) is not None and gap >= 2 * usual:
            if part:
                parts.append(tuple(part))
                before = median(each.index for each in part[-3:])
            part, skipped = [], 0
        if not part and before is not None:
            if point.index < before - BACK_WITHIN and skipped < MOST_COMING_BACK:
                skipped += 1
                continue
            before = None
        part.append(point)
    return (*parts, tuple(part)) if part else tuple(parts)
