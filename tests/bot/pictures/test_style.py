"""The colours: told apart with any colour vision, and clear on the paper.

Colour vision deficiency is simulated with the matrices of Machado, Oliveira & Fernandes 2009 (IEEE Trans Vis
Comput Graph 15:1291-1298, severity 1.0) on linear RGB; they are the same to the last digit as those that
colorspacious 1.1.2 has of that paper (`machado_et_al_2009_matrix`, severity 100). Colours are held apart by
the CIE 1976 difference in CIELAB (D65), where about 2.3 is a just noticeable difference (Mahy 1994, Color Res
Appl 19:105-121), and contrast by WCAG 2.2: 4.5 to 1 for words (1.4.3), 3 to 1 for signs (1.4.11).
"""

import math
from itertools import combinations

import pytest

from bot.pictures.style import AIMED, DONE, GRID, INK, PAINTS, PAPER, QUIET, SHADE, TROUBLE

Triple = tuple[float, float, float]
Matrix = tuple[Triple, Triple, Triple]

SEEN_AS: dict[str, Matrix] = {
    "usual": ((1, 0, 0), (0, 1, 0), (0, 0, 1)),
    "without long cones": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "without middle cones": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "without short cones": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
    "without colour": ((0.2126, 0.7152, 0.0722),) * 3,
}
TO_XYZ: Matrix = (
    (0.4124564, 0.3575761, 0.1804375),
    (0.2126729, 0.7151522, 0.0721750),
    (0.0193339, 0.1191920, 0.9503041),
)
WHITE: Triple = (0.95047, 1.0, 1.08883)
CLEARLY_APART = 10.0
"""Some four times what can just be told: the project's own mark."""


def linear(colour: str) -> Triple:
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    return (_linear(red), _linear(green), _linear(blue))


def _linear(part: float) -> float:
    return part / 12.92 if part <= 0.04045 else math.pow((part + 0.055) / 1.055, 2.4)


def times(matrix: Matrix, colour: Triple) -> Triple:
    one, two, three = (sum(a * b for a, b in zip(row, colour, strict=True)) for row in matrix)
    return (one, two, three)


def seen(colour: str, matrix: Matrix) -> Triple:
    one, two, three = (min(1.0, max(0.0, each)) for each in times(matrix, linear(colour)))
    return (one, two, three)


def lab(colour: Triple) -> Triple:
    x, y, z = (_root(part / white) for part, white in zip(times(TO_XYZ, colour), WHITE, strict=True))
    return (116 * y - 16, 500 * (x - y), 200 * (y - z))


def _root(part: float) -> float:
    return math.cbrt(part) if part > (6 / 29) ** 3 else part / (3 * (6 / 29) ** 2) + 4 / 29


def difference(one: Triple, other: Triple) -> float:
    return math.dist(lab(one), lab(other))


def contrast(one: str, other: str) -> float:
    bright, dark = sorted((times(TO_XYZ, linear(each))[1] for each in (one, other)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def test_the_difference_is_that_of_known_colours() -> None:
    """Black and white lie 100 apart; sRGB red is at (53.24, 80.09, 67.20) in CIELAB (D65)."""
    assert difference(linear("#000000"), linear("#FFFFFF")) == pytest.approx(100, abs=0.01)
    assert lab(linear("#FF0000")) == pytest.approx((53.24, 80.09, 67.20), abs=0.05)
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21, abs=0.01)


@pytest.mark.parametrize("vision", [name for name in SEEN_AS if name != "without colour"])
@pytest.mark.parametrize(("one", "other"), [*combinations((*PAINTS, INK), 2)])
def test_the_colours_are_told_apart_with_any_colour_vision(one: str, other: str, vision: str) -> None:
    matrix = SEEN_AS[vision]
    assert difference(seen(one, matrix), seen(other, matrix)) > CLEARLY_APART


@pytest.mark.parametrize("vision", SEEN_AS)
@pytest.mark.parametrize("colour", [*PAINTS, INK, QUIET])
def test_every_colour_stands_out_from_the_paper_with_any_colour_vision(colour: str, vision: str) -> None:
    matrix = SEEN_AS[vision]
    for ground in (PAPER, SHADE):
        assert difference(seen(colour, matrix), seen(ground, matrix)) > 3 * CLEARLY_APART


@pytest.mark.parametrize("colour", [INK, QUIET, DONE, AIMED, TROUBLE])
def test_words_and_signs_have_the_contrast_of_the_guidelines(colour: str) -> None:
    assert contrast(colour, PAPER) >= 4.5
    assert contrast(colour, SHADE) >= 3


def test_the_grid_is_there_and_does_not_stand_out() -> None:
    assert 1.1 < contrast(GRID, PAPER) < 1.5


@pytest.mark.parametrize("chat", ["#FFFFFF", "#000000", "#17212B"])
def test_the_paper_is_seen_as_a_sheet_in_any_chat(chat: str) -> None:
    assert difference(linear(PAPER), linear(chat)) > 4
