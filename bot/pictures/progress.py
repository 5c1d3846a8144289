"""The picture of one exercise: each exposure, the best so far, what was aimed for, and what happened."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import accumulate, pairwise
from math import inf, nan
from statistics import median
from typing import Any

from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.ticker import MaxNLocator

from bot.pictures.canvas import Sheet
from bot.pictures.days import mark_days, number
from bot.pictures.labels import Labeller
from bot.pictures.style import (
    AIMED,
    DONE,
    DPI,
    FONT,
    INK,
    MARGIN,
    PAPER,
    QUIET,
    SHADE,
    SMALL_POINTS,
    TROUBLE,
    WIDTH_INCHES,
)
from bot.wording.pictures import away_words, label_words, mark_words, scale_words
from domain.pictures import Mark, Progress

HEIGHT_INCHES = 4.6
SMALL_HEIGHT_INCHES = 2.55
MOST_MARKS = 6
"""So many of the last things that happened are shown."""
_MANY = 32
"""With more exposures the signs are smaller."""
_LEFT, _RIGHT = 0.52, 0.18
_OPEN: dict[str, Any] = {
    "markerfacecolor": "none",
    "markeredgecolor": AIMED,
    "markeredgewidth": 1.4,
    "markersize": 5.0,
}
"""What is aimed for is open, as it is still to be filled."""
_NUMBER_POINTS = 17.0
"""How far the numbers of two marks lie apart at least."""
_KEY_LINE = 0.17


def draw_progress(part: Progress) -> Sheet:
    """Draw one exercise, in short where it is `small`."""
    marks = () if part.small else part.marks[-MOST_MARKS:]
    key = [] if part.small else _key_lines(marks)
    below = 0.46 + (0.3 + _KEY_LINE * len(key) if not part.small else 0)
    sheet = Sheet((SMALL_HEIGHT_INCHES if part.small else HEIGHT_INCHES) + _KEY_LINE * len(key))
    sheet.heading(part.exercise if part.small else f"{part.exercise}, {part.client}", scale_words(part))
    above = 0.72 + (0.24 if marks else 0)
    axes = sheet.panel(_LEFT, below, WIDTH_INCHES - _LEFT - _RIGHT, sheet.height - below - above)
    course(sheet, axes, part, marks)
    if marks:
        _mark(axes, marks)
    if not part.small:
        has_aims = bool(part.aims) or part.next_value is not None
        up = 0.12 + _KEY_LINE * len(key)
        signs_below(sheet, up, has_aims=has_aims, has_best=not part.scale.is_mixed)
    for place, line in enumerate(key):
        sheet.write(MARGIN, 0.1 + _KEY_LINE * (len(key) - 1 - place), line, color=INK)
    return sheet


def course(sheet: Sheet, axes: Axes, part: Progress, marks: Sequence[Mark] = ()) -> None:
    """Draw the course of an exercise into a panel, with its days and labels, and a line for each mark."""
    ahead = _ahead(part)
    last_day = part.points[-1][0] if ahead is None else ahead
    size = 1.0 if len(part.points) <= _MANY else 0.75
    lines = _lines(axes, part, last_day, size)
    lines += [axes.axvline(number(mark.on), zorder=1, **_line_of(mark)) for mark in marks]
    for on, value in part.aims:
        axes.plot(number(on), value, "D", zorder=4, **(_OPEN | {"markersize": 5.0 * size}))
    points = [(number(on), value) for on, value in (*part.points, *part.aims)]
    if ahead is not None and part.next_value is not None:
        axes.plot(number(ahead), part.next_value, "D", zorder=5, **(_OPEN | {"markersize": 6.5}))
        points.append((number(ahead), part.next_value))
    mark_days(axes, part.points[0][0], last_day)
    _label(Labeller(sheet, axes, points, lines), part, ahead)


def small_course(axes: Axes, part: Progress) -> None:
    """Draw the course of one exercise among others: no more than what was done and the best so far."""
    _lines(axes, part, part.points[-1][0], size=0.75)


def _lines(axes: Axes, part: Progress, last_day: date, size: float = 1.0) -> list[Line2D]:
    days = [number(on) for on, _ in part.points]
    values = [value for _, value in part.points]
    _limits(axes, part, last_day)
    for away in part.away:
        axes.axvspan(number(away.since), number(away.until), color=SHADE, linewidth=0, zorder=0)
    best = list(accumulate([_best_before(part), *values], max))[1:]
    stair = []
    if not part.scale.is_mixed:
        stair = axes.step(
            [*days, number(last_day)],
            [*best, best[-1]],
            where="post",
            color=QUIET,
            linewidth=1.4 * size,
            zorder=2,
        )
    thread = axes.plot(*_parted(part), color=DONE, linewidth=1.2 * size, alpha=0.45, zorder=3)
    axes.plot(days, values, "o", color=DONE, markersize=5.5 * size, markeredgecolor=PAPER, zorder=5)
    return [*stair, *thread]


def _best_before(part: Progress) -> float:
    """Return the best of all time where it lies before what is shown."""
    return part.best.value if part.best.on < part.points[0][0] else part.points[0][1]


def _ahead(part: Progress) -> date | None:
    """Return where the next aim stands: as far after the last exposure as exposures usually lie apart."""
    if part.next_value is None:
        return None
    gaps = [(later - earlier).days for (earlier, _), (later, _) in pairwise(part.points)]
    return part.points[-1][0] + timedelta(days=max(1, round(median(gaps)) if gaps else 7))


def _limits(axes: Axes, part: Progress, last_day: date) -> None:
    values = [value for _, value in (*part.points, *part.aims)]
    values += [part.next_value] if part.next_value is not None else []
    low, high = min(values), max(*values, _best_before(part))
    counted = part.scale.measure in {"reps", "seconds"}
    room = max((high - low) * 0.16, abs(high) * 0.02, 0.8 if counted else 0.1)
    axes.set_ylim(low - room, high + room * 1.6)
    first = part.points[0][0]
    side = max(1.0, (last_day - first).days * 0.05)
    beyond = side if part.next_value is None else 2.6 * side
    axes.set_xlim(number(first) - side, number(last_day) + beyond)
    axes.yaxis.set_major_locator(MaxNLocator(3 if part.small else 6, integer=counted, min_n_ticks=1))


def _label(labeller: Labeller, part: Progress, ahead: date | None) -> None:
    """Label the next aim, the last set, the best, the first and the layoffs, as far as there is room."""
    if ahead is not None and part.next_aim is not None and part.next_value is not None:
        words = f"aim {label_words(part.next_aim)}"
        labeller.put(number(ahead), part.next_value, words, color=AIMED, weight="bold")
    spots = {spot.on: spot for spot in (part.best, part.last, part.first) if spot.on >= part.points[0][0]}
    for spot in spots.values():
        labeller.put(number(spot.on), spot.value, label_words(spot.set), color=DONE, weight="bold")
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


def _mark(axes: Axes, marks: Sequence[Mark]) -> None:
    """Stand a number above the panel for each thing that happened, each beside the one before it."""
    points_to_pixels = DPI / 72
    free = -inf
    for place, mark in enumerate(marks, 1):
        x = axes.transData.transform((number(mark.on), 0))[0] / points_to_pixels
        beside = max(x, free) - x
        free = x + beside + _NUMBER_POINTS
        is_stall = mark.what == "stall"
        axes.annotate(
            str(place),
            (number(mark.on), 1),
            xycoords=("data", "axes fraction"),
            xytext=(beside, 9),
            textcoords="offset points",
            ha="center",
            va="center",
            fontsize=SMALL_POINTS,
            family=FONT,
            weight="bold",
            color=PAPER,
            annotation_clip=False,
            bbox={
                "boxstyle": "round,pad=0.28,rounding_size=0.6" if is_stall else "square,pad=0.28",
                "fc": _colour_of(mark),
                "ec": "none",
            },
        )


def _key_lines(marks: Sequence[Mark]) -> list[str]:
    return [f"{place}  {mark_words(mark)}" for place, mark in enumerate(marks, 1)]


def signs_below(sheet: Sheet, up: float, *, has_aims: bool, has_best: bool = True) -> None:
    """Say under a panel, so many inches up, what the signs in it are."""
    signs = [Line2D([], [], color=DONE, marker="o", markersize=5.5, linewidth=1.2, label="done")]
    if has_best:
        signs.append(Line2D([], [], color=QUIET, linewidth=1.4, label="best so far"))
    if has_aims:
        signs.append(Line2D([], [], linestyle="none", marker="D", label="aimed for", **_OPEN))
    sheet.figure.legend(
        handles=signs,
        loc="lower left",
        bbox_to_anchor=((MARGIN - 0.06) / WIDTH_INCHES, (up - 0.04) / sheet.height),
        ncols=len(signs),
        frameon=False,
        borderpad=0.2,
        handletextpad=0.5,
        columnspacing=1.6,
        labelcolor=INK,
        prop={"family": FONT, "size": SMALL_POINTS},
    )
