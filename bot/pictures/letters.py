"""How much room words take, known before they are written: each is put where it has room."""

from functools import lru_cache
from typing import Final, NamedTuple

from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.font_manager import FontProperties

from bot.pictures.style import DPI, FONT, SMALL_POINTS

_measure: Final = RendererAgg(1, 1, DPI)  # type: ignore[no-untyped-call] # it has no types
_TALL = "lp"
"""What reaches as far up and down as letters do, so that all lines of a size are as high."""


class Letters(NamedTuple):
    """The size of letters in points, and whether they are bold."""

    points: float = SMALL_POINTS
    bold: bool = False


SMALL: Final = Letters()
SMALL_BOLD: Final = Letters(bold=True)


class Room(NamedTuple):
    """What words cover, in pixels: their width, how far they reach up from their foot, and down from it."""

    width: float
    up: float
    down: float


@lru_cache(maxsize=32)
def font(letters: Letters) -> FontProperties:
    """Return the font of these letters; it must not be changed."""
    weight = "bold" if letters.bold else "normal"
    return FontProperties(family=FONT, weight=weight, size=letters.points)


@lru_cache(maxsize=4096)
def room_of(text: str, letters: Letters = SMALL) -> Room:
    """Return the room of one line of words."""
    width, height, down = _extent(text, letters)
    _, tall, deep = _extent(_TALL, letters)
    return Room(width, max(height - down, tall - deep), max(down, deep))


def cut(text: str, letters: Letters, width: float) -> str:
    """Return as much of the words as fits into so many pixels, with a sign where it is not all."""
    if room_of(text, letters).width <= width:
        return text
    least, most = 1, len(text)
    while least < most:
        middle = (least + most + 1) // 2
        fits = room_of(_shortened(text, middle), letters).width <= width
        least, most = (middle, most) if fits else (least, middle - 1)
    return _shortened(text, least)


def _shortened(text: str, count: int) -> str:
    return f"{text[:count].rstrip()}…"


@lru_cache(maxsize=4096)
def _extent(text: str, letters: Letters) -> tuple[float, float, float]:
    width, height, down = _measure.get_text_width_height_descent(text, font(letters), ismath=False)  # type: ignore[no-untyped-call] # it has no types
    return width, height, down
