"""How every picture of the house looks: one paper, one ink, three colours, and a size made for a phone.

A picture is 1080 pixels wide, which a phone shows at about 360 points, so that one point here is one there.
Its paper is a soft light grey of its own: it neither glares in a dark chat nor fades into a light one. The
colours are told apart with any colour vision, each also by its shape, and stand out from the paper; the tests
check both.
"""

from typing import Final

WIDTH_PIXELS: Final = 1080
DPI: Final = 216
"""At this many dots an inch a point is three pixels."""
WIDTH_INCHES: Final = WIDTH_PIXELS / DPI
TALLEST_INCHES: Final = 1280 / DPI
"""Chats make a taller picture smaller, and its words with it."""

PAPER: Final = "#F1EFE9"
INK: Final = "#1F2328"
QUIET: Final = "#555B62"
GRID: Final = "#D9D5CA"
SHADE: Final = "#DEDACE"

DONE: Final = "#0A5EA8"
"""What was done: dots."""
AIMED: Final = "#B8480A"
"""What was or is to be aimed for: open diamonds."""
TROUBLE: Final = "#8C1D4F"
"""A stall, or an exercise on hold: triangles."""
PAINTS: Final = (DONE, AIMED, TROUBLE)

TITLE_POINTS: Final = 15.0
TEXT_POINTS: Final = 10.0
SMALL_POINTS: Final = 9.0
"""No text is smaller."""
FONT: Final = "DejaVu Sans"
"""It comes with matplotlib, so a picture is the same everywhere."""
MARGIN: Final = 0.16
"""In inches, on either side."""
