"""What stands in a picture: its words and where they lie, its lines and their numbers."""

from itertools import combinations

from matplotlib.lines import Line2D
from matplotlib.text import Text
from matplotlib.transforms import Bbox

from bot.pictures.panel import Panel, Picture


def texts(picture: Picture) -> list[Text]:
    """Return all words in a picture."""
    return [each for each in picture.sheet.figure.texts if each.get_text().strip()]


def words(picture: Picture) -> list[str]:
    return [each.get_text() for each in texts(picture)]


def box_of(text: Text) -> Bbox:
    """Return what words cover, as the library tells it."""
    return text.get_window_extent()


def overlapping(picture: Picture) -> list[tuple[str, str]]:
    """Return the words that lie on each other."""
    boxes = [(each.get_text(), box_of(each).padded(-1)) for each in texts(picture)]
    return [(one, other) for (one, box), (other, its) in combinations(boxes, 2) if box.overlaps(its)]


def outside(picture: Picture) -> list[str]:
    """Return the words that do not lie wholly on the sheet."""
    whole = picture.sheet.figure.bbox
    boxes = [(each.get_text(), box_of(each)) for each in texts(picture)]
    return [
        text
        for text, box in boxes
        if box.x0 < whole.x0 or box.y0 < whole.y0 or box.x1 > whole.x1 or box.y1 > whole.y1
    ]


def smallest_points(picture: Picture) -> float:
    return min(float(each.get_fontsize()) for each in texts(picture))


def dots(panel: Panel, sign: str) -> list[tuple[float, float]]:
    """Return the places of all marks of that sign."""
    lines = [line for line in panel.lines if line.get_marker() == sign]
    return [place for line in lines for place in places(line)]


def places(line: Line2D) -> list[tuple[float, float]]:
    return [(float(x), float(y)) for x, y in line.get_xydata().tolist()]  # type: ignore[union-attr] # an array
