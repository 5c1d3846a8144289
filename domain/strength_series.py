"""The strength of an exercise as a series: an index per exposure, in parts where a break lies between.

A break is a layoff, or whatever else it was begun lighter for on purpose. What then only comes back to where
strength was is no gain, and no loss either, and is left out.

What is of another kind than the last exposure (holds, lowering-only reps, loads counted per hand) is another
series and is left out, as are slips of the finger. Exposures on hold are to be left out by the caller. The
numbers are the project's own rules.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from statistics import median, median_low
from typing import NamedTuple

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


class Point(NamedTuple):
    """The day of an exposure and the index of the strength shown (a natural log, so 0.01 is 1%)."""

    on: date
    shown: float


@dataclass(frozen=True, slots=True)
class Series:
    """The exposures of one exercise that can be held against each other, oldest first, in parts.

    Between two parts lies a break, after which strength has a new level.
    """

    parts: tuple[tuple[Point, ...], ...] = ()

    @property
    def points(self) -> tuple[Point, ...]:
        """Return the exposures of all parts."""
        if len(self.parts) == 1:
            return self.parts[0]
        return tuple(point for part in self.parts for point in part)


def strength_index(exposure: Exposure, body: Body) -> float | None:
    """Return the logarithm of the strength that the best set of an exposure shows, on its own kind's scale.

    Reps: of the estimated 1RM (Epley) on the load with the body's share. Holds: of load times seconds to the
    pooled endurance exponent. For lowering-only reps, and where the body mass is not known, the scale only
    orders. None where not one rep was done.
    """
    best = strength_shown(best_of(exposure.counting, body), body)
    return math.log(best) if best > 0 else None


def series_of(history: Sequence[Exposure], body: Body, breaks: Sequence[date] = ()) -> Series:
    """Return the series at the end of `history`, exposures of one exercise, oldest first.

    `breaks` are days after which it was begun lighter on purpose, as after an illness or for a deload.
    """
    return in_series(points_of(history, body), breaks)


def in_series(points: Sequence[Point], breaks: Sequence[date] = ()) -> Series:
    """Return the series of points, oldest first, of which the latest are looked back on."""
    return Series(_in_parts(_without_slips(points[-MOST_EXPOSURES:]), breaks))


def points_of(history: Sequence[Exposure], body: Body, most: int = MOST_EXPOSURES) -> list[Point]:
    """Return the index of so many of the last exposures, oldest first, that are of one kind with the last."""
    points: list[Point] = []
    way = None
    for each in reversed(history):
        best = best_of(each.counting, body)
        way = way or best.way
        if best.way == way and (shown := strength_shown(best, body)) > 0:
            points.append(Point(each.on, math.log(shown)))
            if len(points) == most:
                break
    return points[::-1]


def begun_anew(days: Sequence[date], breaks: Sequence[date] = ()) -> list[bool]:
    """Return of each of the days of an exercise, oldest first, whether a break lies before it.

    A layoff is one, where it is twice as long as the time between two of the other days usually is. Where
    there is no other, it is one too: it is seen with the next exposure whether that time is the usual one.
    """
    gaps = [(later - earlier).days for earlier, later in pairwise(days)]
    if not breaks and (not gaps or share_after(max(gaps)) is None):
        return [False] * len(days)
    anew = [False] * min(1, len(days)) + [_is_layoff(gaps, at) for at in range(len(gaps))]
    for at, (earlier, later) in enumerate(pairwise(days) if breaks else (), start=1):
        anew[at] = anew[at] or any(earlier <= day < later for day in breaks)
    return anew


def _is_layoff(gaps: Sequence[int], at: int) -> bool:
    if share_after(gaps[at]) is None:
        return False
    others = [*gaps[:at], *gaps[at + 1 :]]
    return not others or gaps[at] >= 2 * median_low(others)


def _without_slips(points: Sequence[Point]) -> Sequence[Point]:
    if len(points) < LEAST_AROUND:
        return points
    indices = [each.shown for each in points]
    window = 2 * _AROUND + 1
    if len(points) < window:
        middles = [median(indices)] * len(points)
    else:
        firsts = range(len(points) - window + 1)
        inner = [sorted(indices[first : first + window])[_AROUND] for first in firsts]
        middles = [inner[0]] * _AROUND + inner + [inner[-1]] * _AROUND
    return [point for point, middle in zip(points, middles, strict=True) if abs(point.shown - middle) <= SLIP]


def _in_parts(points: Sequence[Point], breaks: Sequence[date]) -> tuple[tuple[Point, ...], ...]:
    """Return the points in parts, a new one after each break, without those that then only came back."""
    anew = begun_anew([each.on for each in points], breaks)
    if not any(anew):
        return (tuple(points),) if points else ()
    parts: list[tuple[Point, ...]] = []
    part: list[Point] = []
    before: float | None = None
    skipped = 0
    for point, is_anew in zip(points, anew, strict=True):
        if is_anew:
            if part:
                parts.append(tuple(part))
                before = median(each.shown for each in part[-3:])
            part, skipped = [], 0
        if not part and before is not None:
            if point.shown < before - BACK_WITHIN and skipped < MOST_COMING_BACK:
                skipped += 1
                continue
            before = None
        part.append(point)
    return (*parts, tuple(part)) if part else tuple(parts)
