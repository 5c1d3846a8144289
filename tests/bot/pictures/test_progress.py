"""The picture of one exercise."""

from datetime import timedelta
from io import BytesIO
from itertools import accumulate

import pytest
from matplotlib.image import imread
from matplotlib.lines import Line2D

from bot.pictures.days import number
from bot.pictures.drawing import draw
from bot.pictures.panel import Panel
from bot.pictures.progress import draw_progress
from bot.pictures.style import DONE, QUIET, SMALL_POINTS, TALLEST_INCHES, WIDTH_PIXELS
from bot.wording.pictures import change_words
from domain.pictures import Away, Mark, Progress
from tests.bot.pictures.courses import FIRST, a_set, eventful, gaining, progress
from tests.bot.pictures.reading import (
    box_of,
    dots,
    outside,
    overlapping,
    places,
    smallest_points,
    texts,
    words,
)

CASES = {
    "one": progress(a_set("60", 5)),
    "two": progress(a_set("60", 5), a_set("60", 6), next_aim=a_set("60", 7)),
    "level": progress(*[a_set("60", 8)] * 6, next_aim=a_set("60", 9)),
    "gaining": gaining(),
    "long": gaining(60),
    "years": gaining(60, days=40),
    "eventful": eventful(),
    "eventful and long": eventful(60),
    "many marks": eventful(
        marks=tuple(Mark(on=FIRST + timedelta(days=60 + day), what="stall") for day in range(9))
    ),
    "small": gaining(12, small=True),
    "small and eventful": eventful(small=True),
    "hold": progress(*[a_set("0", kind="body", seconds=30 + 5 * place) for place in range(8)]),
    "hold, heavier": progress(
        *[
            a_set(str(10 + 5 * (place // 3)), kind="added", seconds=40 + 5 * (place % 3))
            for place in range(8)
        ],
        next_aim=a_set("20", kind="added", seconds=50),
    ),
    "dips": progress(a_set("0", 8, "body"), a_set("5", 6, "added"), a_set("20", 8, "assist")),
    "long name": gaining(exercise="Chest-supported dumbbell row on an incline bench, one arm at a time"),
    "light": progress(*[a_set(f"{1 + place / 8:.2f}", 12, "each") for place in range(8)]),
}


@pytest.mark.parametrize("part", CASES.values(), ids=CASES.keys())
def test_no_words_lie_on_each_other_or_beyond_the_edge_or_are_too_small(part: Progress) -> None:
    picture = draw_progress(part)
    assert overlapping(picture) == []
    assert outside(picture) == []
    assert smallest_points(picture) >= SMALL_POINTS
    assert picture.sheet.figure.get_size_inches()[0] * picture.sheet.figure.dpi == WIDTH_PIXELS
    assert picture.sheet.height <= TALLEST_INCHES


def stair_of(panel: Panel) -> Line2D:
    """Return the line of the best so far."""
    return next(line for line in panel.lines if line.get_color() == QUIET)


@pytest.mark.parametrize("part", [CASES["eventful"], CASES["small"], CASES["dips"], CASES["light"]])
def test_each_number_beside_the_panel_stands_at_its_height(part: Progress) -> None:
    picture = draw_progress(part)
    (panel,) = picture.panels
    beside = [each for each in texts(picture) if box_of(each).x1 < panel.left]
    assert len(beside) >= 2
    for each in beside:
        box = box_of(each)
        _, height = panel.at(0, float(each.get_text().replace("−", "-")))
        assert (box.y0 + box.y1) / 2 == pytest.approx(height, abs=4)


@pytest.mark.parametrize("part", [CASES["gaining"], CASES["hold"], CASES["dips"]])
def test_each_exposure_has_its_colour_in_the_picture_at_its_place(part: Progress) -> None:
    (panel,) = draw_progress(part).panels
    seen = imread(BytesIO(draw(part)), format="png")
    blue = [each / 255 for each in bytes.fromhex(DONE[1:])]
    for on, value in part.points:
        x, y = panel.at(number(on), value)
        assert seen[len(seen) - 1 - round(y), round(x)][:3] == pytest.approx(blue)


def test_the_next_aim_is_named_even_where_something_happened_beside_it() -> None:
    assert "aim 100 × 6" in words(draw_progress(eventful()))


def test_what_happened_after_the_last_exposure_stands_in_the_panel() -> None:
    late = Mark(on=gaining(6).last.on + timedelta(days=40), what="stall")
    (panel,) = draw_progress(gaining(6).model_copy(update={"marks": (late,)})).panels
    assert panel.across.low < number(late.on) < panel.across.high


def test_each_exposure_is_a_dot_on_its_day() -> None:
    part = gaining()
    (panel,) = draw_progress(part).panels
    assert dots(panel, "o") == [(number(on), value) for on, value in part.points]


def test_the_best_so_far_is_a_stair_that_never_goes_down() -> None:
    part = progress(a_set("60", 5), a_set("60", 7), a_set("60", 6), a_set("60", 8))
    (panel,) = draw_progress(part).panels
    corners = places(stair_of(panel))
    days = [number(on) for on, _ in part.points]
    best = [*accumulate([5.0, 7.0, 6.0, 8.0], max)]
    assert corners[::2] == [*zip(days, best, strict=True), (days[-1], best[-1])]
    assert corners[1::2] == [*zip(days[1:], best, strict=False), (days[-1], best[-1])]


def test_holds_at_several_loads_are_seconds_with_the_load_beside_them_and_no_best_so_far() -> None:
    part = CASES["hold, heavier"]
    assert [value for _, value in part.points] == [40, 45, 50, 40, 45, 50, 40, 45]
    picture = draw_progress(part)
    assert "best so far" not in words(picture)
    assert "+20 × 45 s" in words(picture)
    assert change_words(part) == ""


def test_a_best_from_before_what_is_shown_is_where_the_stair_begins() -> None:
    part = gaining(8)
    earlier = part.best.model_copy(update={"on": FIRST - timedelta(days=99), "value": 200.0})
    (panel,) = draw_progress(part.model_copy(update={"best": earlier})).panels
    assert {value for _, value in places(stair_of(panel))} == {200.0}
    assert panel.up.high > 200


def test_what_was_aimed_for_is_an_open_diamond_and_so_is_the_next_aim_after_the_last_day() -> None:
    part = eventful()
    (panel,) = draw_progress(part).panels
    diamonds = dots(panel, "D")
    assert diamonds[:-1] == [(number(on), value) for on, value in part.aims]
    assert diamonds[-1][0] > number(part.last.on)
    assert diamonds[-1][1] == part.next_value


def test_what_happened_stands_on_its_day_and_is_named_below() -> None:
    part = eventful()
    picture = draw_progress(part)
    (panel,) = picture.panels
    lines = [places(line) for line in panel.lines]
    fallen = [line[0][0] for line in lines if len(line) == 2 and line[0][0] == line[1][0]]
    assert sorted(set(fallen)) == [number(mark.on) for mark in part.marks]
    below = [line for line in words(picture) if line[:3] in {"1  ", "2  ", "3  "}]
    assert [line.partition(": ")[2] for line in below] == [
        "stall told",
        "load down, build back",
        "coach wrote about it",
    ]


def test_a_layoff_is_shaded_and_the_line_is_broken_there() -> None:
    part = gaining(10)
    days = [on for on, _ in part.points]
    away = Away(since=days[4] + timedelta(days=1), until=days[5] - timedelta(days=1))
    picture = draw_progress(part.model_copy(update={"away": (away,)}))
    (panel,) = picture.panels
    (shade,) = panel.shades
    assert shade.get_x() == pytest.approx(number(away.since))
    assert shade.get_x() + shade.get_width() == pytest.approx(number(away.until))
    threads = [line for line in panel.lines if any(y != y for _, y in places(line))]
    assert len(threads) == 1


@pytest.mark.parametrize(
    ("part", "says"),
    [
        (gaining(), "Estimated one-rep maximum, kg"),
        (progress(a_set("60", 5), a_set("60", 6)), "Reps at 60\u00a0kg"),
        (progress(a_set("0", 5, "body"), a_set("0", 6, "body")), "Reps with body weight"),
        (CASES["hold"], "Seconds with body weight"),
        (CASES["hold, heavier"], "Seconds, at several loads"),
        (CASES["dips"], "Added load, kg (below 0: help)"),
        (CASES["light"], "Estimated one-rep maximum, kg each"),
        (progress(a_set("60", 5, lowering_only=True)), "Lowering-only reps at 60\u00a0kg"),
    ],
)
def test_the_unit_stands_over_the_panel_and_the_year_under_its_days(part: Progress, says: str) -> None:
    shown = words(draw_progress(part))
    assert says in shown
    assert any("2025" in each for each in shown)


def test_the_last_set_and_the_next_aim_are_named() -> None:
    shown = words(draw_progress(gaining()))
    assert "72.5 × 8" in shown
    assert "aim 100 × 6" in shown
