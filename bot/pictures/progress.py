"""The picture of one exercise: each exposure, the best so far, what was aimed for, and what happened."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import accumulate, pairwise
from math import inf, nan
from statistics import median
from typing import Any

from matplotlib.cbook import pts_to_poststep
from matplotlib.lines import Line2D

from bot.pictures.canvas import POINT, Sheet
from bot.pictures.days import days_between, number
from bot.pictures.labels import Labeller
from bot.pictures.letters import SMALL_BOLD, room_of
from bot.pictures.panel import Panel, Picture, Place, Span
from bot.pictures.style import AIMED, DONE, DPI, INK, MARGIN, PAPER, QUIET, TROUBLE, WIDTH_INCHES
from bot.wording.pictures import SIGN_WORDS, away_words, label_words, mark_words, scale_words, title_words
from domain.pictures import Mark, Progress

HEIGHT_INCHES = 4.6
SMALL_HEIGHT_INCHES = 2.55
MOST_MARKS = 6
"""So many of the last things that happened are shown."""
_MANY = 32
"""With more exposures the signs are smaller."""
_LEFT, _RIGHT = 0.52, 0.18
_OPEN: dict[str, Any] = {
    "marker": "D",
    "linestyle": "none",
    "markerfacecolor": "none",
    "markeredgecolor": AIMED,
    "markeredgewidth": 1.4,
}
"""What is aimed for is open, as it is still to be filled."""
_DONE_DOT: dict[str, Any] = {"marker": "o", "color": DONE, "markeredgecolor": PAPER}
_DONE_LINE: dict[str, Any] = {"color": DONE, "linewidth": 1.2, "alpha": 0.45}
_BEST: dict[str, Any] = {"color": QUIET, "linewidth": 1.4}
_NUMBER_POINTS = 17.0
"""How far the numbers of two marks lie apart at least."""
_NUMBER_SIZE = 13.0
_LOW = 0.4 * DPI
"""A panel that is no higher than that, in pixels, has room for fewer numbers."""
_KEY_LINE = 0.17


def draw_progress(part: Progress) -> Picture:
    """Draw one exercise, in short where it is `small`."""
    marks = () if part.small else part.marks[-MOST_MARKS:]
    key = [] if part.small else _key_lines(marks)
    below = 0.46 + (0.3 + _KEY_LINE * len(key) if not part.small else 0)
    sheet = Sheet((SMALL_HEIGHT_INCHES if part.small else HEIGHT_INCHES) + _KEY_LINE * len(key))
    sheet.heading(title_words(part), scale_words(part))
    above = 0.72 + (0.24 if marks else 0)
    place = Place(_LEFT, below, WIDTH_INCHES - _LEFT - _RIGHT, sheet.height - below - above)
    panel = course(sheet, place, part, marks)
    if marks:
        _mark(panel, marks)
    if not part.small:
        has_aims = bool(part.aims) or part.next_value is not None
        up = (0.2 if key else 0.12) + _KEY_LINE * len(key)
        signs_below(sheet, up, has_aims=has_aims, has_best=not part.scale.is_mixed)
    for at, line in enumerate(key):
        sheet.write(MARGIN, 0.1 + _KEY_LINE * (len(key) - 1 - at), line)
    return Picture(sheet, (panel,))


def course(sheet: Sheet, place: Place, part: Progress, marks: Sequence[Mark] = ()) -> Panel:
    """Draw the course of an exercise into a panel, with its days and labels, and a line for each mark."""
    ahead = _ahead(part)
    last_day = part.points[-1][0] if ahead is None else ahead
    panel = Panel(sheet, place, _across(part, last_day, marks), numbers_of(part))
    panel.mark_numbers(3 if part.small else 6, whole=_is_counted(part))
    panel.mark_days(days_between(part.points[0][0], last_day))
    size = 1.0 if len(part.points) <= _MANY else 0.75
    lines = _lines(panel, part, last_day, size)
    for mark in marks:
        panel.fall(number(mark.on), zorder=1, **_line_of(mark))
    aims = [(number(on), value) for on, value in part.aims]
    if aims:
        panel.draw(*zip(*aims, strict=True), zorder=4, markersize=5.0 * size, **_OPEN)
    points = [(number(on), value) for on, value in part.points] + aims
    if ahead is not None and part.next_value is not None:
        panel.draw([number(ahead)], [part.next_value], zorder=5, markersize=6.5, **_OPEN)
        points.append((number(ahead), part.next_value))
    _label(Labeller(panel, points, lines, [number(mark.on) for mark in marks]), part, ahead)
    return panel


def small_course(panel: Panel, part: Progress) -> None:
    """Draw the course of one exercise among others: no more than what was done and the best so far."""
    panel.mark_numbers(3 if panel.top - panel.bottom > _LOW else 2, whole=_is_counted(part))
    _lines(panel, part, part.points[-1][0], size=0.75)


def _lines(panel: Panel, part: Progress, last_day: date, size: float) -> list[Line2D]:
    """Draw what was done and the best so far, and the layoffs; return the lines."""
    days = [number(on) for on, _ in part.points]
    values = [value for _, value in part.points]
    for away in part.away:
        panel.shade(number(away.since), number(away.until))
    best = list(accumulate([_best_before(part), *values], max))[1:]
    lines = []
    if not part.scale.is_mixed:
        xs, ys = pts_to_poststep([*days, number(last_day)], [*best, best[-1]])
        lines.append(panel.draw(xs, ys, zorder=2, **_thinner(_BEST, size)))
    lines.append(panel.draw(*_parted(part), zorder=3, **_thinner(_DONE_LINE, size)))
    panel.draw(days, values, linestyle="none", markersize=5.5 * size, zorder=5, **_DONE_DOT)
    return lines


def _thinner(style: dict[str, Any], size: float) -> dict[str, Any]:
    return style | {"linewidth": style["linewidth"] * size}


def _best_before(part: Progress) -> float:
    """Return the best of all time where it lies before what is shown."""
    return part.best.value if part.best.on < part.points[0][0] else part.points[0][1]


def _ahead(part: Progress) -> date | None:
    """Return where the next aim stands: as far after the last exposure as exposures usually lie apart."""
    if part.next_value is None:
        return None
    gaps = [(later - earlier).days for (earlier, _), (later, _) in pairwise(part.points)]
    return part.points[-1][0] + timedelta(days=max(1, round(median(gaps)) if gaps else 7))


def _is_counted(part: Progress) -> bool:
    return part.scale.measure in {"reps", "seconds"}


def numbers_of(part: Progress, *, with_aims: bool = True) -> Span:
    """Return the numbers that a panel of the exercise shows, with room for labels."""
    values = [_best_before(part), *(value for _, value in part.points)]
    if with_aims:
        values += [value for _, value in part.aims]
        values += [part.next_value] if part.next_value is not None else []
    low, high = min(values), max(values)
    room = max((high - low) * 0.16, abs(high) * 0.02, 0.8 if _is_counted(part) else 0.1)
    return Span(low - room, high + room * 1.6)


def _across(part: Progress, last_day: date, marks: Sequence[Mark]) -> Span:
    first = part.points[0][0]
    side = max(1.0, (last_day - first).days * 0.05)
    beyond = side if part.next_value is None else 2.6 * side
    ends = [number(last_day) + beyond, *(number(mark.on) + side / 2 for mark in marks)]
    return Span(number(first) - side, max(ends))


def _label(labeller: Labeller, part: Progress, ahead: date | None) -> None:
    """Label the next aim, the last set, the best, the first and the layoffs, as far as there is room."""
    if ahead is not None and part.next_aim is not None and part.next_value is not None:
        labeller.put(number(ahead), part.next_value, f"aim {label_words(part.next_aim)}", color=AIMED)
    spots = {spot.on: spot for spot in (part.best, part.last, part.first) if spot.on >= part.points[0][0]}
    for spot in spots.values():
        labeller.put(number(spot.on), spot.value, label_words(spot.set), color=DONE)
    for away in part.away:
        labeller.stand(number(away.since), number(away.until), away_words(away), color=QUIET)


def _parted(part: Progress) -> tuple[list[float], list[float]]:
    """Return the days and numbers of a line through the exposures, broken where a layoff lies between."""
    days, values = [], []
    for place, (on, value) in enumerate(part.points):
        if place and any(part.points[place - 1][0] < away.since <= on for away in part.away):
            days.append(number(on))
            values.append(nan)
        days.append(number(on))
        values.append(value)
    return days, values


def _line_of(mark: Mark) -> dict[str, Any]:
    return {"color": _colour_of(mark), "linewidth": 1.0, "linestyle": (0, (2, 2))}


def _colour_of(mark: Mark) -> str:
    return TROUBLE if mark.what == "stall" else INK


def _mark(panel: Panel, marks: Sequence[Mark]) -> None:
    """Stand a number above the panel for each thing that happened, each beside the one before it."""
    free = -inf
    for place, mark in enumerate(marks, 1):
        x, y = max(panel.x(number(mark.on)), free), panel.top + 9 * POINT
        free = x + _NUMBER_POINTS * POINT
        sign = "o" if mark.what == "stall" else "s"
        panel.sheet.line(
            [x], [y], marker=sign, color=_colour_of(mark), markersize=_NUMBER_SIZE, markeredgewidth=0
        )
        foot = y - room_of(str(place), SMALL_BOLD).up / 2
        panel.sheet.write_at(x, foot, str(place), SMALL_BOLD, color=PAPER, ha="center")


def _key_lines(marks: Sequence[Mark]) -> list[str]:
    return [f"{place}  {mark_words(mark)}" for place, mark in enumerate(marks, 1)]


def signs_below(sheet: Sheet, up: float, *, has_aims: bool, has_best: bool = True) -> None:
    """Say under a panel, so many inches up, what the signs in it are."""
    signs = [(SIGN_WORDS["done"], _DONE_LINE | _DONE_DOT | {"markersize": 5.5, "alpha": None})]
    if has_best:
        signs.append((SIGN_WORDS["best"], _BEST))
    if has_aims:
        signs.append((SIGN_WORDS["aimed"], _OPEN | {"markersize": 5.0}))
    sheet.signs(up, signs)
