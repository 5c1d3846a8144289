"""The picture of a coach's clients at a glance: a line each, with the course of strength and what is open."""

from dataclasses import dataclass
from datetime import date

from matplotlib.axes import Axes

from bot.pictures.canvas import Sheet
from bot.pictures.style import (
    DONE,
    FONT,
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
from domain.pictures import RosterProgress, RosterRow

MOST_IN_ONE = 16
"""So many clients stand in one column; of more, two columns."""
MOST_ROWS = 40
"""So many fit into one picture; the caption names the others."""
_ABOVE, _BELOW = 0.7, 0.32
_ROW = 0.34


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
_NARROW = _Column((_WHOLE - _GAP) / 2, name=0.86, change=0.44, state=0.24, text_points=SMALL_POINTS)


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


def draw_roster(part: RosterProgress) -> Sheet:
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
    axes = sheet.figure.add_axes((0, 0, 1, 1))
    axes.set_axis_off()
    axes.set_xlim(0, WIDTH_INCHES)
    axes.set_ylim(0, sheet.height)
    for place, row in enumerate(rows):
        left = MARGIN + (place // deep) * (column.width + _GAP)
        _line(sheet, axes, row, column, left, sheet.height - _ABOVE - (place % deep + 0.5) * each)
        top = sheet.height - _ABOVE - (place % deep) * each
        _course(axes, row, span, (left + column.name, column.course), (top - each, top))
    sheet.write(MARGIN, 0.11, under_glance(len(part.rows) - len(rows)), color=QUIET)
    return sheet


def _line(sheet: Sheet, axes: Axes, row: RosterRow, column: _Column, left: float, middle: float) -> None:
    base, right = middle - 0.045, left + column.width
    sheet.write_within(left, base, row.client, column.name - 0.08, fontsize=column.text_points)
    change = change_in_short(row, digits=1 if column is _WIDE else 0)
    sheet.write(right - column.state, base, change, ha="right", weight="bold")
    if row.matters:
        axes.annotate(
            str(row.matters),
            (right - column.state + 0.15, middle),
            ha="center",
            va="center",
            color=PAPER,
            weight="bold",
            fontsize=SMALL_POINTS,
            family=FONT,
            bbox={"boxstyle": "circle,pad=0.22", "fc": TROUBLE, "ec": "none"},
        )
    if column is _WIDE:
        beside = 0.3 if row.matters else 0.08
        sheet.write(right - column.state + beside, base, state_in_short(row), color=QUIET)


def _course(
    axes: Axes,
    row: RosterRow,
    span: _Span,
    across: tuple[float, float],
    between: tuple[float, float],
) -> None:
    left, width = across
    low, high = between[0] + 0.035, between[1] - 0.035
    zero = low + span.up(0.0) * (high - low)
    axes.plot([left, left + width], [zero, zero], color=GRID, linewidth=1.0)
    days = [left + 0.04 + span.across(on) * (width - 0.08) for on, _ in row.points]
    ups = [low + span.up(change) * (high - low) for _, change in row.points]
    if days:
        axes.plot(days, ups, color=DONE, linewidth=1.6, solid_capstyle="round")
        axes.plot(days[-1], ups[-1], "o", color=DONE, markersize=4.5, markeredgecolor=PAPER)
