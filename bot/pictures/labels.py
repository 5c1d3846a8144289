"""Labels beside points, put where they cover no other label, no point and no edge of their panel."""

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import hypot, isfinite
from typing import Any

from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.text import Annotation
from matplotlib.transforms import Bbox

from bot.pictures.canvas import Sheet
from bot.pictures.style import FONT, SMALL_POINTS

_PLACES = (
    (0, 9, "center", "bottom"),
    (0, -9, "center", "top"),
    (-8, 6, "right", "bottom"),
    (8, 6, "left", "bottom"),
    (-8, -6, "right", "top"),
    (8, -6, "left", "top"),
    (-10, 0, "right", "center"),
    (10, 0, "left", "center"),
    (0, 22, "center", "bottom"),
    (0, -22, "center", "top"),
    (-16, 10, "right", "bottom"),
    (16, -10, "left", "top"),
    (-14, 20, "right", "bottom"),
    (-14, -20, "right", "top"),
)
"""Offsets in points and how the text lies to them, the best first."""
_DOT_PIXELS = 9.0
_STEP_PIXELS = 6.0


class Labeller:
    """Puts labels into one panel, the most important first."""

    def __init__(
        self, sheet: Sheet, axes: Axes, points: Sequence[tuple[float, float]], lines: Sequence[Line2D] = ()
    ) -> None:
        """`points` and `lines` must not be covered, in the panel's own numbers; its limits are settled."""
        self._sheet = sheet
        self._axes = axes
        self._room = axes.get_window_extent(sheet.renderer).padded(2)
        self._taken = [
            Bbox.from_extents(x - _DOT_PIXELS, y - _DOT_PIXELS, x + _DOT_PIXELS, y + _DOT_PIXELS)
            for x, y in axes.transData.transform(points)
        ]
        self._taken += [box for line in lines for box in _along(line)]

    def put(self, x: float, y: float, text: str, **style: Any) -> bool:
        """Write `text` beside a point; return whether there was room."""
        for right, up, ha, va in _PLACES:
            label: Annotation = self._axes.annotate(
                text,
                (x, y),
                xytext=(right, up),
                textcoords="offset points",
                ha=ha,
                va=va,
                fontsize=SMALL_POINTS,
                family=FONT,
                annotation_clip=False,
                **style,
            )
            box = self._sheet.box_of(label)
            if self._fits(box):
                self._taken.append(box)
                return True
            label.remove()
        return False

    def stand(self, left: float, right: float, text: str, **style: Any) -> bool:
        """Write `text` upright between two places, from the bottom up; return whether there was room."""
        axes = self._axes
        (start, _), (end, _) = axes.transData.transform([(left, 0), (right, 0)])
        label = axes.annotate(
            text,
            ((left + right) / 2, 0),
            xycoords=("data", "axes fraction"),
            xytext=(0, 5),
            textcoords="offset points",
            ha="center",
            va="bottom",
            rotation=90,
            fontsize=SMALL_POINTS,
            family=FONT,
            **style,
        )
        box = self._sheet.box_of(label)
        if box.width <= end - start and self._fits(box):
            self._taken.append(box)
            return True
        label.remove()
        return False

    def _fits(self, box: Bbox) -> bool:
        room = self._room
        inside = room.x0 <= box.x0 and box.x1 <= room.x1 and room.y0 <= box.y0 and box.y1 <= room.y1
        return inside and not any(box.overlaps(other) for other in self._taken)


def _along(line: Line2D) -> Iterator[Bbox]:
    """Give small boxes along a line, near enough to each other that no letter fits between."""
    corners = line.get_transform().transform(line.get_xydata()).tolist()
    for (x, y), (to_x, to_y) in pairwise(corners):
        steps = max(1, int(hypot(to_x - x, to_y - y) / _STEP_PIXELS)) if isfinite(x + y + to_x + to_y) else 0
        for place in range(steps):
            at_x, at_y = x + (to_x - x) * place / steps, y + (to_y - y) * place / steps
            yield Bbox.from_extents(at_x - 2, at_y - 2, at_x + 2, at_y + 2)
