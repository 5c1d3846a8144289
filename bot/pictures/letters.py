"""How much room words take, known before they are written: each is put where it has room."""

from collections import Counter
from collections.abc import Sequence
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


def names_within(names: Sequence[str], letters: Letters, width: float) -> list[str]:
    """Return names of people such that each fits into so many pixels, and is told from all others.

    Where a name is too long, all but the first word become initials; where it is too long even so, or would
    then be the same as another's, it is cut in its middle, so that its end is seen.
    """
    short = [name if room_of(name, letters).width <= width else _with_initials(name) for name in names]
    many = Counter(short)
    return [
        each
        if room_of(each, letters).width <= width and (each == name or many[each] == 1)
        else _cut_in_the_middle(name, letters, width)
        for name, each in zip(names, short, strict=True)
    ]


def _with_initials(name: str) -> str:
    first, *others = name.split()
    return " ".join(
        (first, *(each if len(each) == 1 or each.isdigit() else f"{each[0]}." for each in others))
    )


def _cut_in_the_middle(name: str, letters: Letters, width: float) -> str:
    """Return a name with as much of its beginning as fits, and its last letters."""
    end = name[-_END:]
    for kept in range(len(name) - _END, 0, -1):
        short = f"{name[:kept].rstrip()}…{end}"
        if room_of(short, letters).width <= width:
            return short
    return cut(name, letters, width)


_END = 4
"""How many letters of a name's end are seen where it is cut in the middle."""


def _shortened(text: str, count: int) -> str:
    return f"{text[:count].rstrip()}…"


@lru_cache(maxsize=4096)
def _extent(text: str, letters: Letters) -> tuple[float, float, float]:
    width, height, down = _measure.get_text_width_height_descent(text, font(letters), ismath=False)  # type: ignore[no-untyped-call] # it has no types
    return width, height, down
