"""The picture of a coach's clients at a glance: a line each, with the course of strength and what is open."""

from dataclasses import dataclass
from datetime import date

from matplotlib.collections import LineCollection

from bot.pictures.canvas import PIXELS, POINT, Sheet
from bot.pictures.letters import SMALL_BOLD, Letters, names_within, room_of
from bot.pictures.panel import Picture
from bot.pictures.style import (
    DONE,
    DPI,
    GRID,
    MARGIN,
    PAPER,
    QUIET,
    SMALL_POINTS,
    TALLEST_INCHES,
    TEXT_POINTS,
    TROUBLE,
    WIDTH_INCHES,
)
from bot.wording.pictures import GLANCE, change_in_short, glance_words, state_in_short, under_glance
from bot.wording.scripts import of_client, shown
from domain.pictures import RosterProgress, RosterRow

MOST_IN_ONE = 16
"""So many clients stand in one column; of more, two columns."""
MOST_ROWS = 40
"""So many fit into one picture; the caption names the others."""
_ABOVE, _BELOW = 0.7, 0.32
_ROW = 0.34
_LEAST_BADGE = 14.0
"""How wide the disc is in which the number of matters stands, in points."""


@dataclass(frozen=True, slots=True)
class _Column:
    """How wide the parts of a line are, in inches from its left: name, course, change, state."""

    width: float
    name: float
    change: float
    state: float
    text_points: float

    @property
    def course(self) -> float:
        """What is left for the course."""
        return self.width - self.name - self.change - self.state


_GAP = 0.22
_WHOLE = WIDTH_INCHES - 2 * MARGIN
_WIDE = _Column(_WHOLE, name=1.4, change=0.62, state=0.92, text_points=TEXT_POINTS)
_NARROW = _Column((_WHOLE - _GAP) / 2, name=1.12, change=0.44, state=0.24, text_points=SMALL_POINTS)


@dataclass(frozen=True, slots=True)
class _Span:
    """What all the courses share: their days, and the least and the greatest change."""

    since: date
    days: int
    low: float
    high: float

    def across(self, on: date) -> float:
        """Return where a day stands, from 0 to 1."""
        return (on - self.since).days / self.days

    def up(self, change: float) -> float:
        """Return where a change stands, from 0 to 1."""
        return (change - self.low) / (self.high - self.low)


def draw_roster(part: RosterProgress) -> Picture:
    """Draw all clients, in the order given, all on one scale."""
    rows = part.rows[:MOST_ROWS]
    column = _WIDE if len(rows) <= MOST_IN_ONE else _NARROW
    deep = len(rows) if column is _WIDE else -(-len(rows) // 2)
    each = min(_ROW, (TALLEST_INCHES - _ABOVE - _BELOW) / max(1, deep))
    sheet = Sheet(_ABOVE + _BELOW + deep * each)
    sheet.heading(GLANCE, glance_words(part))
    changes = [change for row in rows for _, change in row.points]
    days = max(1, (part.today - part.since).days)
    span = _Span(part.since, days, min(-0.01, *changes, 0.0), max(0.02, *changes, 0.0))
    names = names_within(
        [shown(row.client, of_client(place)) for place, row in enumerate(rows, start=1)],
        Letters(column.text_points),
        (column.name - 0.08) * DPI,
    )
    courses = []
    for place, row in enumerate(rows):
        left = MARGIN + (place // deep) * (column.width + _GAP)
        top = sheet.height - _ABOVE - (place % deep) * each
        _line(sheet, row, names[place], column, left, top - 0.5 * each)
        courses.append(_course(row, span, (left + column.name, column.course), (top - each, top)))
    _draw(sheet, courses)
    sheet.write(MARGIN, 0.11, under_glance(len(part.rows) - len(rows)), color=QUIET)
    return Picture(sheet)


def _line(sheet: Sheet, row: RosterRow, name: str, column: _Column, left: float, middle: float) -> None:
    base, right = middle - 0.045, left + column.width
    sheet.write(left, base, name, Letters(column.text_points))
    change = change_in_short(row, digits=1 if column is _WIDE else 0)
    sheet.write(right - column.state, base, change, SMALL_BOLD, ha="right")
    if row.matters:
        _badge(sheet, str(row.matters), (right - column.state + 0.15) * DPI, middle * DPI)
    if column is _WIDE:
        beside = 0.3 if row.matters else 0.08
        sheet.write(right - column.state + beside, base, state_in_short(row), color=QUIET)


def _badge(sheet: Sheet, words: str, x: float, y: float) -> None:
    """Write words into a disc."""
    room = room_of(words, SMALL_BOLD)
    size = max(_LEAST_BADGE, room.width / POINT + 4)
    sheet.line([x], [y], marker="o", color=TROUBLE, markersize=size, markeredgewidth=0)
    sheet.write_at(x, y - room.up / 2, words, SMALL_BOLD, color=PAPER, ha="center")


@dataclass(frozen=True, slots=True)
class _Drawn:
    """A client's course on the sheet, in pixels: the line of no change, and the corners."""

    level: tuple[tuple[float, float], tuple[float, float]]
    corners: list[tuple[float, float]]


def _course(row: RosterRow, span: _Span, across: tuple[float, float], between: tuple[float, float]) -> _Drawn:
    left, width = across
    low, high = between[0] + 0.035, between[1] - 0.035
    level = (low + span.up(0.0) * (high - low)) * DPI
    corners = [
        (
            (left + 0.04 + span.across(on) * (width - 0.08)) * DPI,
            (low + span.up(change) * (high - low)) * DPI,
        )
        for on, change in row.points
    ]
    return _Drawn(((left * DPI, level), ((left + width) * DPI, level)), corners)


def _draw(sheet: Sheet, courses: list[_Drawn]) -> None:
    """Draw all courses at once."""
    done = [each.corners for each in courses if each.corners]
    levels = LineCollection([each.level for each in courses], colors=GRID, linewidths=1.0, zorder=1)
    strokes = LineCollection(done, colors=DONE, linewidths=1.6, capstyle="round", zorder=2)
    for lines in (levels, strokes):
        lines.set_transform(PIXELS)
        sheet.figure.add_artist(lines)
    xs, ys = [each[-1][0] for each in done], [each[-1][1] for each in done]
    sheet.line(
        xs, ys, zorder=3, linestyle="none", marker="o", markersize=4.5, color=DONE, markeredgecolor=PAPER
    )
