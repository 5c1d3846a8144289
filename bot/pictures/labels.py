"""Labels beside points, put where they cover no other label, no point and no edge of their panel."""

from collections.abc import Iterator, Sequence
from itertools import chain, pairwise, product
from math import hypot, isfinite
from typing import NamedTuple

from matplotlib.lines import Line2D

from bot.pictures.canvas import POINT, Side
from bot.pictures.letters import SMALL, SMALL_BOLD, room_of
from bot.pictures.panel import Panel

_PLACES: tuple[tuple[float, float, Side, float], ...] = (
    (0, 9, "center", 0),
    (0, -9, "center", 1),
    (-8, 6, "right", 0),
    (8, 6, "left", 0),
    (-8, -6, "right", 1),
    (8, -6, "left", 1),
    (-10, 0, "right", 0.5),
    (10, 0, "left", 0.5),
    (0, 22, "center", 0),
    (0, -22, "center", 1),
    (-16, 10, "right", 0),
    (16, -10, "left", 1),
    (-14, 20, "right", 0),
    (-14, -20, "right", 1),
)
"""Offsets in points, which side of the words is there, and how much of them lies below; the best first."""
_BEFORE: dict[Side, float] = {"left": 0.0, "center": 0.5, "right": 1.0}
_DOT_PIXELS = 9.0
_STEP_PIXELS = 6.0
_STROKE_PIXELS = 2.0
_EDGE_PIXELS = 2.0


class Box(NamedTuple):
    """A part of the sheet, in pixels."""

    left: float
    bottom: float
    right: float
    top: float


class Labeller:
    """Puts labels into one panel, the most important first."""

    def __init__(
        self,
        panel: Panel,
        points: Sequence[tuple[float, float]],
        lines: Sequence[Line2D] = (),
        falls: Sequence[float] = (),
    ) -> None:
        """`points` and `lines` must not be covered; a line that falls at one of `falls` only if need be."""
        self._panel = panel
        self._taken = [_around(panel.at(x, y), _DOT_PIXELS) for x, y in points]
        self._taken += [box for line in lines for box in _along([*panel.corners(line)])]
        self._falls = [Box(panel.x(x) - 2, panel.bottom, panel.x(x) + 2, panel.top) for x in falls]

    def put(self, x: float, y: float, text: str, *, color: str) -> bool:
        """Write `text` beside a point; return whether there was room."""
        at_x, at_y = self._panel.at(x, y)
        width, up, down = room_of(text, SMALL_BOLD)
        for over, (right, above, side, below) in product((self._falls, []), _PLACES):
            left = at_x + right * POINT - width * _BEFORE[side]
            bottom = at_y + above * POINT - (up + down) * below
            box = Box(left, bottom, left + width, bottom + up + down)
            if self._takes(box, over):
                if any(_overlaps(box, fall) for fall in self._falls):
                    self._panel.sheet.cover(*box)
                self._panel.sheet.write_at(left, bottom + down, text, SMALL_BOLD, color=color)
                return True
        return False

    def stand(self, since: float, until: float, text: str, *, color: str) -> bool:
        """Write `text` upright between two places, from the bottom up; return whether there was room."""
        start, end = self._panel.x(since), self._panel.x(until)
        width, up, down = room_of(text, SMALL)
        left, bottom = (start + end - up - down) / 2, self._panel.bottom + 5 * POINT
        box = Box(left, bottom, left + up + down, bottom + width)
        if up + down > end - start or not self._takes(box, self._falls):
            return False
        self._panel.sheet.write_at(left + up, bottom, text, SMALL, color=color, rotation=90)
        return True

    def _takes(self, box: Box, falls: Sequence[Box]) -> bool:
        panel = self._panel
        inside = panel.left - _EDGE_PIXELS <= box.left and box.right <= panel.right + _EDGE_PIXELS
        inside = inside and panel.bottom - _EDGE_PIXELS <= box.bottom and box.top <= panel.top + _EDGE_PIXELS
        fits = inside and not any(_overlaps(box, other) for other in chain(falls, self._taken))
        if fits:
            self._taken.append(box)
        return fits


def _overlaps(one: Box, other: Box) -> bool:
    return (
        one.left < other.right
        and other.left < one.right
        and one.bottom < other.top
        and other.bottom < one.top
    )


def _around(at: tuple[float, float], pixels: float) -> Box:
    x, y = at
    return Box(x - pixels, y - pixels, x + pixels, y + pixels)


def _along(corners: Sequence[tuple[float, float]]) -> Iterator[Box]:
    """Give small boxes along a line, near enough to each other that no letter fits between."""
    for (x, y), (to_x, to_y) in pairwise(corners):
        steps = max(1, int(hypot(to_x - x, to_y - y) / _STEP_PIXELS)) if isfinite(x + y + to_x + to_y) else 0
        for place in range(steps):
            at = (x + (to_x - x) * place / steps, y + (to_y - y) * place / steps)
            yield _around(at, _STROKE_PIXELS)
