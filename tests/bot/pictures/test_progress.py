"""The picture of one exercise."""

from datetime import timedelta
from itertools import accumulate

import pytest

from bot.pictures.days import number
from bot.pictures.progress import draw_progress
from bot.pictures.style import SMALL_POINTS, TALLEST_INCHES, WIDTH_PIXELS
from bot.wording.pictures import change_words
from domain.pictures import Away, Mark, Progress
from tests.bot.pictures.courses import FIRST, a_set, eventful, gaining, progress
from tests.bot.pictures.reading import dots, outside, overlapping, places, smallest_points, words

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
    sheet = draw_progress(part)
    assert overlapping(sheet) == []
    assert outside(sheet) == []
    assert smallest_points(sheet) >= SMALL_POINTS
    assert sheet.figure.get_size_inches()[0] * sheet.figure.dpi == WIDTH_PIXELS
    assert sheet.height <= TALLEST_INCHES


def test_each_exposure_is_a_dot_on_its_day() -> None:
    part = gaining()
    (axes,) = draw_progress(part).figure.axes
    assert dots(axes, "o") == [(number(on), value) for on, value in part.points]


def test_the_best_so_far_is_a_stair_that_never_goes_down() -> None:
    part = progress(a_set("60", 5), a_set("60", 7), a_set("60", 6), a_set("60", 8))
    (axes,) = draw_progress(part).figure.axes
    stair = next(line for line in axes.get_lines() if line.get_drawstyle() == "steps-post")
    values = [value for _, value in places(stair)]
    assert values == [*accumulate([5.0, 7.0, 6.0, 8.0], max), 8.0]


def test_holds_at_several_loads_are_seconds_with_the_load_beside_them_and_no_best_so_far() -> None:
    part = CASES["hold, heavier"]
    assert [value for _, value in part.points] == [40, 45, 50, 40, 45, 50, 40, 45]
    sheet = draw_progress(part)
    assert "best so far" not in words(sheet)
    assert "+20 × 45 s" in words(sheet)
    assert change_words(part) == ""


def test_a_best_from_before_what_is_shown_is_where_the_stair_begins() -> None:
    part = gaining(8)
    earlier = part.best.model_copy(update={"on": FIRST - timedelta(days=99), "value": 200.0})
    (axes,) = draw_progress(part.model_copy(update={"best": earlier})).figure.axes
    stair = next(line for line in axes.get_lines() if line.get_drawstyle() == "steps-post")
    assert {value for _, value in places(stair)} == {200.0}
    assert axes.get_ylim()[1] > 200


def test_what_was_aimed_for_is_an_open_diamond_and_so_is_the_next_aim_after_the_last_day() -> None:
    part = eventful()
    (axes,) = draw_progress(part).figure.axes
    diamonds = dots(axes, "D")
    assert diamonds[:-1] == [(number(on), value) for on, value in part.aims]
    assert diamonds[-1][0] > number(part.last.on)
    assert diamonds[-1][1] == part.next_value


def test_what_happened_stands_on_its_day_and_is_named_below() -> None:
    part = eventful()
    sheet = draw_progress(part)
    (axes,) = sheet.figure.axes
    lines = [places(line) for line in axes.get_lines()]
    fallen = [line[0][0] for line in lines if len(line) == 2 and line[0][0] == line[1][0]]
    assert sorted(set(fallen)) == [number(mark.on) for mark in part.marks]
    below = [line for line in words(sheet) if line[:3] in {"1  ", "2  ", "3  "}]
    assert [line.partition(": ")[2] for line in below] == [
        "stall told",
        "load down, build back",
        "coach wrote about it",
    ]


def test_a_layoff_is_shaded_and_the_line_is_broken_there() -> None:
    part = gaining(10)
    days = [on for on, _ in part.points]
    away = Away(since=days[4] + timedelta(days=1), until=days[5] - timedelta(days=1))
    sheet = draw_progress(part.model_copy(update={"away": (away,)}))
    (axes,) = sheet.figure.axes
    (shade,) = axes.patches
    corners = shade.get_extents().transformed(axes.transData.inverted())
    assert corners.x0 == pytest.approx(number(away.since))
    assert corners.x1 == pytest.approx(number(away.until))
    threads = [line for line in axes.get_lines() if any(y != y for _, y in places(line))]
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
