"""What pictures are made of: words of a known width, numbers and days along a panel."""

from datetime import date

import pytest

from bot.pictures.canvas import Sheet
from bot.pictures.days import days_between
from bot.pictures.letters import SMALL, SMALL_BOLD, Letters, cut, room_of
from bot.pictures.panel import Panel, Picture, Place, Span, places_of
from tests.bot.pictures.reading import box_of, texts, words

NAMES = (
    "Noor",
    "Zoë van den Berg",
    "Chest-supported dumbbell row",
    "aim +12.5 × 8",
    "a",
    "$x^2$ and $y$",
    "Żółć",
)


@pytest.mark.parametrize("letters", [SMALL, SMALL_BOLD, Letters(15.0, bold=True)])
@pytest.mark.parametrize("text", NAMES)
def test_words_take_the_room_that_was_reckoned_for_them(text: str, letters: Letters) -> None:
    sheet = Sheet(2)
    room = sheet.write(1, 1, text, letters)
    (written,) = texts(Picture(sheet))
    box = box_of(written)
    assert box.width == pytest.approx(room.width, abs=1)
    assert box.height == pytest.approx(room.up + room.down, abs=3)


@pytest.mark.parametrize("width", [10, 40, 90, 200, 1000])
@pytest.mark.parametrize("text", NAMES)
def test_words_are_cut_where_they_no_longer_fit_and_not_before(text: str, width: float) -> None:
    shown = cut(text, SMALL, width)
    if shown == text:
        assert room_of(text).width <= width
        return
    assert shown.endswith("…")
    assert len(shown) == 2 or room_of(shown).width <= width
    more = text[: len(shown)].rstrip() + "…"
    assert more == shown or room_of(more).width > width


@pytest.mark.parametrize(
    ("step", "places"),
    [(1, 0), (2, 0), (25, 0), (100, 0), (2.5, 1), (0.5, 1), (0.25, 2), (0.1, 1), (0.02, 2)],
)
def test_numbers_have_as_many_places_as_tell_them_apart(step: float, places: int) -> None:
    assert places_of(step) == places


@pytest.mark.parametrize(
    ("up", "whole", "said"),
    [
        (Span(58, 93), False, ["60", "70", "80", "90"]),
        (Span(-25, 8), False, ["−20", "−10", "0"]),
        (Span(4.2, 6.9), True, ["5", "6"]),
        (Span(1.1, 1.55), False, ["1.2", "1.4"]),
        (Span(1.1, 1.3), False, ["1.10", "1.15", "1.20", "1.25", "1.30"]),
    ],
)
def test_a_panel_says_round_numbers(up: Span, whole: bool, said: list[str]) -> None:
    sheet = Sheet(2)
    Panel(sheet, Place(0.5, 0.5, 2, 1), Span(0, 1), up).mark_numbers(4, whole=whole)
    assert words(Picture(sheet)) == said


def test_a_time_away_is_shaded_as_far_as_it_lies_in_the_panel() -> None:
    panel = Panel(Sheet(2), Place(0.5, 0.5, 2, 1), Span(0, 10), Span(0, 1))
    for since, until in ((-5, 3), (8, 20), (12, 14)):
        panel.shade(since, until)
    assert [(each.get_x(), each.get_width()) for each in panel.shades] == [(0, 3), (8, 2)]


@pytest.mark.parametrize(
    ("first", "last", "said"),
    [
        (date(2026, 3, 2), date(2026, 3, 2), ["2 Mar\n2026"]),
        (date(2026, 3, 2), date(2026, 3, 30), ["2 Mar\n2026", "9 Mar", "16 Mar", "23 Mar", "30 Mar"]),
        (date(2025, 12, 1), date(2026, 2, 1), ["1 Dec\n2025", "15 Dec", "29 Dec", "12 Jan\n2026", "26 Jan"]),
    ],
)
def test_days_are_marked_evenly_with_the_year_where_it_is_new(
    first: date, last: date, said: list[str]
) -> None:
    assert [label for _, label in days_between(first, last)] == said
