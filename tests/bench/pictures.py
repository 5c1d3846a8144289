"""`python -m tests.bench.pictures`: how long a picture takes, beside the plainest that matplotlib can draw.

The plainest is one line in a figure of the same size, as a PNG of the same dots. Every picture is to take
under 400 ms after the first; the ratio says what of that is the house's own, whatever the machine.
"""

import statistics
import time
from collections.abc import Callable
from functools import partial
from io import BytesIO

from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from bot.pictures.drawing import Drawable, draw
from bot.pictures.progress import HEIGHT_INCHES
from bot.pictures.style import DPI, WIDTH_INCHES
from tests.bot.pictures.courses import eventful, gaining
from tests.bot.pictures.test_programme_and_roster import programme, roster

ROUNDS = 7
MOST_MILLISECONDS = 400

PICTURES: dict[str, Drawable] = {
    "one exercise": eventful(24),
    "one exercise, 60 times": gaining(60),
    "one exercise, small": eventful(24, small=True),
    "a programme of 12": programme(12),
    "a roster of 40": roster(40),
}


def plainest() -> bytes:
    """Return one line in a figure of the size of a picture."""
    figure = Figure(figsize=(WIDTH_INCHES, HEIGHT_INCHES), dpi=DPI)
    FigureCanvasAgg(figure)
    figure.subplots().plot(range(24))
    written = BytesIO()
    figure.savefig(written, format="png")
    return written.getvalue()


def milliseconds(make: Callable[[], bytes]) -> float:
    """Return the median time that the processor takes for a picture, after a first one."""
    make()
    times = []
    for _ in range(ROUNDS):
        began = time.process_time()
        make()
        times.append((time.process_time() - began) * 1000)
    return statistics.median(times)


def main() -> None:
    """Print each picture's time, and its ratio to the plainest."""
    plain = milliseconds(plainest)
    print(f"the plainest: {plain:.0f} ms")
    for name, part in PICTURES.items():
        took = milliseconds(partial(draw, part))
        over = "" if took < MOST_MILLISECONDS else f", over {MOST_MILLISECONDS} ms"
        print(f"{name}: {took:.0f} ms, {took / plain:.1f} times the plainest{over}")


if __name__ == "__main__":
    main()
