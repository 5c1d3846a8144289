"""What stands in a picture: its words and where they lie, its lines and their numbers."""

from itertools import combinations

from matplotlib.axes import Axes
from matplotlib.axis import Axis
from matplotlib.lines import Line2D
from matplotlib.text import Text

from bot.pictures.canvas import Sheet


def texts(sheet: Sheet) -> list[Text]:
    """Return all words in a picture that can be seen."""
    sheet.figure.canvas.draw()
    found = [*sheet.figure.texts]
    for legend in sheet.figure.legends:
        found += legend.get_texts()
    for axes in sheet.figure.axes:
        found += axes.texts
        if axes.axison:
            found += [*tick_words(axes.xaxis), *tick_words(axes.yaxis)]
    return [each for each in found if each.get_visible() and each.get_text().strip()]


def tick_words(axis: Axis) -> list[Text]:
    """Return the words beside an axis; those of ticks beyond its ends are never drawn."""
    low, high = sorted(axis.get_view_interval())
    return [tick.label1 for tick in axis.get_major_ticks() if low <= float(tick.get_loc()) <= high]


def words(sheet: Sheet) -> list[str]:
    return [each.get_text() for each in texts(sheet)]


def overlapping(sheet: Sheet) -> list[tuple[str, str]]:
    """Return the words that lie on each other."""
    boxes = [(each.get_text(), sheet.box_of(each).padded(-1)) for each in texts(sheet)]
    return [(one, other) for (one, box), (other, its) in combinations(boxes, 2) if box.overlaps(its)]


def outside(sheet: Sheet) -> list[str]:
    """Return the words that do not lie wholly on the sheet."""
    whole = sheet.figure.bbox
    boxes = [(each.get_text(), sheet.box_of(each)) for each in texts(sheet)]
    return [
        text
        for text, box in boxes
        if box.x0 < whole.x0 or box.y0 < whole.y0 or box.x1 > whole.x1 or box.y1 > whole.y1
    ]


def smallest_points(sheet: Sheet) -> float:
    return min(float(each.get_fontsize()) for each in texts(sheet))


def dots(axes: Axes, sign: str) -> list[tuple[float, float]]:
    """Return the places of all marks of that sign."""
    lines = [line for line in axes.get_lines() if line.get_marker() == sign]
    return [place for line in lines for place in places(line)]


def places(line: Line2D) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in line.get_xydata().tolist()]  # type: ignore[union-attr] # an array
