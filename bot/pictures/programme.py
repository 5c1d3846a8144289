"""The picture of a client's whole programme: a small panel for each exercise, two beside each other."""

from datetime import date

from matplotlib.axes import Axes

from bot.pictures.canvas import Sheet
from bot.pictures.days import mark_days, number
from bot.pictures.progress import signs_below, small_course
from bot.pictures.style import DPI, MARGIN, QUIET, SMALL_POINTS, TALLEST_INCHES, TROUBLE, WIDTH_INCHES
from bot.wording.pictures import change_words, programme_heading, scale_in_short, standing_in_short
from domain.pictures import ProgrammeProgress, Progress

MOST_PANELS = 12
"""So many exercises fit into one picture at a size that can be read; the caption names the others."""
_ABOVE, _BELOW = 0.68, 0.3
_GAP = 0.2
_HEIGHT, _LEAST = 1.3, 0.7
_TITLE, _DAYS = 0.36, 0.24
_ROWS_WITH_DAYS = 4
"""Of more rows, only the last says the days, which are the same for all."""


def draw_programme(part: ProgrammeProgress) -> Sheet:
    """Draw the exercises of a programme, in its order, all over the same days."""
    shown = part.exercises[:MOST_PANELS]
    rows = (len(shown) + 1) // 2
    says_days = rows <= _ROWS_WITH_DAYS
    below = _BELOW + (0 if says_days else _DAYS)
    each = max(_LEAST, min(_HEIGHT, (TALLEST_INCHES - _ABOVE - below) / rows))
    sheet = Sheet(_ABOVE + below + rows * each)
    first = min(one.points[0][0] for one in shown)
    last = max(one.points[-1][0] for one in shown)
    sheet.heading(part.client, programme_heading(part, len(shown), first, last))
    width = (WIDTH_INCHES - 2 * MARGIN - _GAP) / 2
    for place, one in enumerate(shown):
        left = MARGIN + (place % 2) * (width + _GAP)
        top = sheet.height - _ABOVE - (place // 2) * each
        axes = _panel(sheet, one, (left, top, width, each - (_DAYS if says_days else 0.08)))
        _days(axes, first, last, are_said=says_days or place + 2 >= len(shown))
    signs_below(sheet, 0.1, has_aims=False)
    return sheet


def _panel(sheet: Sheet, one: Progress, place: tuple[float, float, float, float]) -> Axes:
    left, top, width, height = place
    told = change_words(one)
    change = sheet.write(left + width, top - 0.13, told, color=QUIET, ha="right") if told else None
    taken = sheet.box_of(change).width / DPI + 0.08 if change is not None else 0
    sheet.write_within(left, top - 0.13, one.exercise, width - taken, weight="bold")
    sheet.write(left, top - 0.28, scale_in_short(one), color=QUIET)
    if state := standing_in_short(one):
        sheet.write(left + width, top - 0.28, state, color=TROUBLE, ha="right", weight="bold")
    axes = sheet.panel(left + 0.3, top - height, width - 0.3, height - _TITLE)
    small_course(axes, one)
    axes.tick_params(labelsize=SMALL_POINTS)
    return axes


def _days(axes: Axes, first: date, last: date, *, are_said: bool) -> None:
    side = max(1.0, (last - first).days * 0.04)
    axes.set_xlim(number(first) - side, number(last) + side)
    mark_days(axes, first, last, most=3, with_year=False)
    axes.tick_params(labelbottom=are_said)
