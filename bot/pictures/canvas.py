"""A sheet of the house's paper to draw on, and how it becomes a PNG.

Figures are made without pyplot, which keeps a global list of them, and are drawn one at a time: the library
shares its caches of fonts between threads without a lock.
"""

from io import BytesIO
from threading import Lock
from typing import Any, Final

from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg, RendererAgg
from matplotlib.figure import Figure
from matplotlib.text import Text
from matplotlib.transforms import Bbox

from bot.pictures.style import (
    DPI,
    FONT,
    GRID,
    INK,
    MARGIN,
    PAPER,
    QUIET,
    SMALL_POINTS,
    TITLE_POINTS,
    WIDTH_INCHES,
)

drawing: Final = Lock()
"""Held by whoever draws."""


class Sheet:
    """A sheet of the house's width. Places on it are in inches from its lower left corner."""

    def __init__(self, height: float) -> None:
        """Take an empty sheet so many inches high."""
        self.height = height
        self.figure = Figure(figsize=(WIDTH_INCHES, height), dpi=DPI, facecolor=PAPER)
        canvas = FigureCanvasAgg(self.figure)
        self.renderer: RendererAgg = canvas.get_renderer()  # type: ignore[no-untyped-call] # it has no types

    def write(self, x: float, y: float, text: str, **style: Any) -> Text:
        """Write words at a place."""
        plain: dict[str, Any] = {"color": INK, "fontsize": SMALL_POINTS, "family": FONT, "va": "baseline"}
        return self.figure.text(x / WIDTH_INCHES, y / self.height, text, fontdict=plain | style)

    def write_within(self, x: float, y: float, text: str, width: float, **style: Any) -> Text:
        """Write words into so many inches, cut where they are longer."""
        words = self.write(x, y, text, **style)
        while len(text) > 1 and self.box_of(words).width > width * DPI:
            text = text[:-1].rstrip()
            words.set_text(f"{text}…")
        return words

    def heading(self, title: str, under: str) -> None:
        """Write a title and a line under it at the top."""
        room = WIDTH_INCHES - 2 * MARGIN
        self.write_within(MARGIN, self.height - 0.32, title, room, fontsize=TITLE_POINTS, weight="bold")
        self.write_within(MARGIN, self.height - 0.53, under, room, color=QUIET)

    def panel(self, left: float, bottom: float, width: float, height: float) -> Axes:
        """Return a plain panel at a place: no frame but a line below, a quiet grid across."""
        axes = self.figure.add_axes(
            (left / WIDTH_INCHES, bottom / self.height, width / WIDTH_INCHES, height / self.height),
            facecolor=PAPER,
        )
        for side in ("top", "right", "left"):
            axes.spines[side].set_visible(False)
        axes.spines["bottom"].set_color(QUIET)
        axes.tick_params(colors=QUIET, labelsize=SMALL_POINTS, length=3, labelfontfamily=FONT)
        axes.tick_params(axis="y", length=0)
        axes.grid(visible=True, axis="y", color=GRID, linewidth=0.8)
        axes.set_axisbelow(True)
        return axes

    def box_of(self, words: Text) -> Bbox:
        """Return what words cover, in pixels."""
        return words.get_window_extent(self.renderer)

    def png(self) -> bytes:
        """Return the sheet as a PNG."""
        stream = BytesIO()
        # Packing tighter makes a picture a sixth smaller and takes a fifth of the whole time.
        self.figure.savefig(stream, format="png", facecolor=PAPER, pil_kwargs={"compress_level": 3})
        return stream.getvalue()
