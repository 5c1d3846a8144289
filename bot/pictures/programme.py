"""The picture of a client's whole programme: a small panel for each exercise, two beside each other."""

from datetime import date

from bot.pictures.canvas import Sheet
from bot.pictures.days import days_between, number
from bot.pictures.letters import SMALL_BOLD
from bot.pictures.panel import Panel, Picture, Place, Span
from bot.pictures.progress import numbers_of, signs_below, small_course
from bot.pictures.style import DPI, MARGIN, QUIET, TALLEST_INCHES, TROUBLE, WIDTH_INCHES
from bot.wording.pictures import (
    EXERCISES,
    change_words,
    programme_heading,
    scale_in_short,
    standing_in_short,
)
from bot.wording.scripts import of_exercise, shown
from domain.pictures import ProgrammeProgress, Progress

MOST_PANELS = 12
"""So many exercises fit into one picture at a size that can be read; the caption names the others."""
_ABOVE, _BELOW = 0.68, 0.3
_GAP = 0.2
_HEIGHT, _LEAST = 1.3, 0.7
_TITLE, _DAYS = 0.36, 0.24
_ROWS_WITH_DAYS = 4
"""Of more rows, only the last says the days, which are the same for all."""


def draw_programme(part: ProgrammeProgress) -> Picture:
    """Draw the exercises of a programme, in its order, all over the same days."""
    drawn = part.exercises[:MOST_PANELS]
    rows = (len(drawn) + 1) // 2
    says_days = rows <= _ROWS_WITH_DAYS
    below = _BELOW + (0 if says_days else _DAYS)
    each = max(_LEAST, min(_HEIGHT, (TALLEST_INCHES - _ABOVE - below) / rows))
    sheet = Sheet(_ABOVE + below + rows * each)
    first = min(one.points[0][0] for one in drawn)
    last = max(one.points[-1][0] for one in drawn)
    sheet.heading(shown(part.client, EXERCISES), programme_heading(part, len(drawn), first, last))
    width = (WIDTH_INCHES - 2 * MARGIN - _GAP) / 2
    days = days_between(first, last, most=3, with_year=False)
    panels = []
    for place, one in enumerate(drawn):
        left = MARGIN + (place % 2) * (width + _GAP)
        top = sheet.height - _ABOVE - (place // 2) * each
        at = Place(left, top - each + (_DAYS if says_days else 0.08), width, 0)
        called = shown(one.exercise, of_exercise(place + 1))
        panel = _panel(sheet, one, called, at._replace(height=top - at.bottom), _across(first, last))
        panel.mark_days(days, are_said=says_days or place + 2 >= len(drawn))
        panels.append(panel)
    signs_below(sheet, 0.1, has_aims=False)
    return Picture(sheet, tuple(panels))


def _panel(sheet: Sheet, one: Progress, called: str, place: Place, across: Span) -> Panel:
    """Draw one exercise, its words at the top of its place; `called` is its name there."""
    left, top, right = place.left, place.bottom + place.height, place.left + place.width
    taken = 0.0
    if state := standing_in_short(one):
        written = sheet.write(right, top - 0.13, state, SMALL_BOLD, color=TROUBLE, ha="right")
        taken = written.width / DPI + 0.08
    sheet.write_within(left, top - 0.13, called, place.width - taken, SMALL_BOLD)
    taken = 0.0
    if told := change_words(one):
        taken = sheet.write(right, top - 0.28, told, color=QUIET, ha="right").width / DPI + 0.08
    sheet.write_within(left, top - 0.28, scale_in_short(one), place.width - taken, color=QUIET)
    at = Place(left + 0.3, place.bottom, place.width - 0.3, place.height - _TITLE)
    panel = Panel(sheet, at, across, numbers_of(one, with_aims=False))
    small_course(panel, one)
    return panel


def _across(first: date, last: date) -> Span:
    side = max(1.0, (last - first).days * 0.04)
    return Span(number(first) - side, number(last) + side)
