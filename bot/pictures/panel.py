"""A panel of a picture: days go across it and numbers up, with a quiet grid, and nothing else around it."""

from collections.abc import Iterator, Sequence
from math import floor, log10
from typing import Any, NamedTuple

from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from matplotlib.ticker import MaxNLocator
from matplotlib.transforms import Affine2D

from bot.pictures.canvas import POINT, Sheet
from bot.pictures.letters import room_of
from bot.pictures.style import DPI, GRID, QUIET, SHADE

_TICK, _BESIDE = 3 * POINT, 4 * POINT
_MORE_PARTS = 4


class Place(NamedTuple):
    """Where a panel lies on its sheet, in inches."""

    left: float
    bottom: float
    width: float
    height: float


class Span(NamedTuple):
    """From where to where the numbers of one direction go."""

    low: float
    high: float


class Panel:
    """A panel at a place; `across` and `up` are its own numbers in the two directions."""

    def __init__(self, sheet: Sheet, place: Place, across: Span, up: Span) -> None:
        """Take an empty panel."""
        self.sheet = sheet
        self.across, self.up = across, up
        self.left, self.bottom = place.left * DPI, place.bottom * DPI
        self.right, self.top = self.left + place.width * DPI, self.bottom + place.height * DPI
        self._wide = (self.right - self.left) / (across.high - across.low)
        self._high = (self.top - self.bottom) / (up.high - up.low)
        self.transform = (
            Affine2D()
            .translate(-across.low, -up.low)
            .scale(self._wide, self._high)
            .translate(self.left, self.bottom)
        )
        self.lines: list[Line2D] = []
        self.shades: list[Rectangle] = []

    def at(self, x: float, y: float) -> tuple[float, float]:
        """Return where the numbers lie on the sheet, in pixels."""
        return self.x(x), self.bottom + (y - self.up.low) * self._high

    def x(self, x: float) -> float:
        """Return where a number across lies on the sheet, in pixels."""
        return self.left + (x - self.across.low) * self._wide

    def draw(self, xs: Sequence[float], ys: Sequence[float], **style: Any) -> Line2D:
        """Draw a line or dots in the panel's numbers."""
        line = self.sheet.line(xs, ys, self.transform, **style)
        self.lines.append(line)
        return line

    def fall(self, x: float, **style: Any) -> Line2D:
        """Draw a line from top to bottom."""
        return self.draw([x, x], self.up, **style)

    def shade(self, since: float, until: float) -> None:
        """Shade the panel between two numbers across, as far as they lie in it."""
        left, right = max(since, self.across.low), min(until, self.across.high)
        if left < right:
            shade = Rectangle((left, self.up.low), right - left, self.up.high - self.up.low, facecolor=SHADE)
            shade.set(linewidth=0, zorder=0, transform=self.transform)
            self.sheet.figure.add_artist(shade)
            self.shades.append(shade)

    def mark_days(self, days: Sequence[tuple[float, str]], *, are_said: bool = True) -> None:
        """Draw the line below, with a tick for each of the days, and its words in one or two lines."""
        xs, ys = [self.left, self.right], [self.bottom, self.bottom]
        for day, words in days:
            x = self.x(day)
            xs += [float("nan"), x, x]
            ys += [self.bottom, self.bottom, self.bottom - _TICK]
            for place, line in enumerate(words.splitlines() if are_said else ()):
                room = room_of(line)
                foot = self.bottom - _TICK - _BESIDE - room.up - place * 1.2 * (room.up + room.down)
                self.sheet.write_at(x, foot, line, color=QUIET, ha="center")
        self.sheet.line(xs, ys, color=QUIET, linewidth=0.8, zorder=2)

    def mark_numbers(self, most: int, *, whole: bool) -> None:
        """Draw a grid of at most so many parts at round numbers, whole ones on request, and say them."""
        ticks, shown = self._numbers(most, whole=whole)
        places = places_of(ticks[1] - ticks[0])
        xs: list[float] = []
        ys: list[float] = []
        for number in shown:
            _, y = self.at(0, number)
            xs += [float("nan"), self.left, self.right]
            ys += [y, y, y]
            words = f"{number:.{places}f}".replace("-", "−")
            foot = y - (room_of(words).up - room_of(words).down) / 2
            self.sheet.write_at(self.left - _BESIDE, foot, words, color=QUIET, ha="right")
        self.sheet.line(xs, ys, color=GRID, linewidth=0.8, zorder=0.5)

    def _numbers(self, most: int, *, whole: bool) -> tuple[list[float], list[float]]:
        """Return round numbers for a grid, and those of them that lie in the panel: two, if there are any.

        One alone does not say how far apart things are.
        """
        for parts in range(most, most + _MORE_PARTS):
            ticks = _round_numbers(self.up, parts, whole=whole)
            shown = [each for each in ticks if self.up.low <= each <= self.up.high]
            if len(shown) > 1:
                break
        return ticks, shown

    def corners(self, line: Line2D) -> Iterator[tuple[float, float]]:
        """Give the corners of one of the panel's lines, in pixels."""
        data: Any = line.get_xydata()
        yield from (self.at(x, y) for x, y in data.tolist())


def _round_numbers(span: Span, most: int, *, whole: bool) -> list[float]:
    """Return evenly spaced round numbers that reach at least from end to end of a span."""
    locator = MaxNLocator(most, integer=whole, min_n_ticks=1, steps=[1, 2, 2.5, 5, 10])
    return [float(each) for each in locator.tick_values(*span)]


class Picture(NamedTuple):
    """A sheet with all that is drawn on it, and the panels of it."""

    sheet: Sheet
    panels: tuple[Panel, ...] = ()


def places_of(step: float) -> int:
    """Return how many places behind the point tell numbers apart that lie a step apart.

    The step is a round one: 1, 2, 2.5 or 5, times a power of ten.
    """
    places = max(0, -floor(log10(step)))
    return places if round(step, places) == round(step, places + 1) else places + 1
