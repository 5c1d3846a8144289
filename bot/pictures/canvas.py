"""A sheet of the house's paper to draw on, and how it becomes a PNG.

Figures are made without pyplot, which keeps a global list of them, and are drawn one at a time: the library
shares its caches of fonts between threads without a lock. There are no axes of the library's on a sheet: a
dozen of them take longer than all that is drawn in them (`panel.py` has what is needed of them).
"""

from collections.abc import Sequence
from io import BytesIO
from threading import Lock
from typing import Any, Final, Literal

from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from matplotlib.transforms import IdentityTransform, Transform

from bot.pictures.letters import SMALL, Letters, Room, cut, font, room_of
from bot.pictures.style import DPI, INK, MARGIN, PAPER, QUIET, TITLE_POINTS, WIDTH_INCHES

drawing: Final = Lock()
"""Held by whoever draws."""
PIXELS: Final = IdentityTransform()
"""For what is told in pixels from the lower left corner of the sheet."""
POINT: Final = DPI / 72
"""A point in pixels."""
Side = Literal["left", "center", "right"]
_BEFORE: Final[dict[Side, float]] = {"left": 0.0, "center": 0.5, "right": 1.0}
_SIGN_WIDTH, _SIGN_GAP, _SIGNS_APART = 18 * POINT, 5 * POINT, 15 * POINT


class Sheet:
    """A sheet of the house's width. Places on it are in inches from its lower left corner."""

    def __init__(self, height: float) -> None:
        """Take an empty sheet so many inches high."""
        self.height = height
        self.figure = Figure(figsize=(WIDTH_INCHES, height), dpi=DPI, facecolor=PAPER)
        FigureCanvasAgg(self.figure)

    def write(
        self, x: float, y: float, text: str, letters: Letters = SMALL, *, color: str = INK, ha: Side = "left"
    ) -> Room:
        """Write words at a place, their foot so many inches up; return what room they take, in pixels."""
        return self.write_at(x * DPI, y * DPI, text, letters, color=color, ha=ha)

    def write_at(
        self,
        x: float,
        y: float,
        text: str,
        letters: Letters = SMALL,
        *,
        color: str = INK,
        ha: Side = "left",
        rotation: float = 0,
    ) -> Room:
        """Write words at a place told in pixels, turned by so many degrees about it."""
        room = room_of(text, letters)
        self.figure.text(
            x - room.width * _BEFORE[ha],
            y,
            text,
            fontproperties=font(letters),
            color=color,
            rotation=rotation,
            rotation_mode="anchor",
            transform=PIXELS,
            parse_math=False,
        )
        return room

    def write_within(
        self, x: float, y: float, text: str, width: float, letters: Letters = SMALL, *, color: str = INK
    ) -> None:
        """Write words into so many inches, cut where they are longer."""
        self.write(x, y, cut(text, letters, width * DPI), letters, color=color)

    def heading(self, title: str, under: str) -> None:
        """Write a title and a line under it at the top."""
        room = WIDTH_INCHES - 2 * MARGIN
        self.write_within(MARGIN, self.height - 0.32, title, room, Letters(TITLE_POINTS, bold=True))
        self.write_within(MARGIN, self.height - 0.53, under, room, color=QUIET)

    def line(
        self, xs: Sequence[float], ys: Sequence[float], transform: Transform = PIXELS, **style: Any
    ) -> Line2D:
        """Draw a line, or dots where the style has a `marker` and no line."""
        line = Line2D(xs, ys, transform=transform, **style)
        self.figure.add_artist(line)
        return line

    def cover(self, left: float, bottom: float, right: float, top: float) -> None:
        """Lay a piece of paper, told in pixels, over what is drawn there; words still go over it."""
        paper = Rectangle(
            (left, bottom), right - left, top - bottom, facecolor=PAPER, linewidth=0, zorder=1.5
        )
        paper.set_transform(PIXELS)
        self.figure.add_artist(paper)

    def signs(self, up: float, signs: Sequence[tuple[str, dict[str, Any]]]) -> None:
        """Say so many inches up, in a row, what the signs in a picture mean."""
        x, y = MARGIN * DPI, up * DPI
        for words, style in signs:
            ends = (x, x + _SIGN_WIDTH / 2, x + _SIGN_WIDTH)
            self.line(ends, [y + room_of(words).up * 0.4] * 3, **style, markevery=[1])
            x += _SIGN_WIDTH + _SIGN_GAP
            x += self.write_at(x, y, words).width + _SIGNS_APART

    def png(self) -> bytes:
        """Return the sheet as a PNG."""
        stream = BytesIO()
        # Packing tighter makes a picture a sixth smaller and takes a fifth of the whole time.
        self.figure.savefig(stream, format="png", facecolor=PAPER, pil_kwargs={"compress_level": 3})
        return stream.getvalue()
