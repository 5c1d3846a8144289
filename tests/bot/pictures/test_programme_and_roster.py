"""The pictures of a whole programme and of all clients."""

import unicodedata
import warnings
from datetime import date, timedelta
from pathlib import Path

import matplotlib as mpl
import pytest
from matplotlib.font_manager import get_font

from bot.pictures.drawing import draw, drawable, picture_name
from bot.pictures.letters import SMALL, names_within, room_of
from bot.pictures.programme import MOST_PANELS, draw_programme
from bot.pictures.progress import draw_progress
from bot.pictures.roster import MOST_ROWS, draw_roster
from bot.pictures.style import SMALL_POINTS, TALLEST_INCHES
from bot.wording.pictures import programme_progress_words, roster_progress_words
from bot.wording.reader import Reader
from bot.wording.scripts import is_shown
from domain.parts import Notice
from domain.pictures import Mark, ProgrammeProgress, RosterProgress, RosterRow
from tests.bot.pictures.courses import FIRST, gaining
from tests.bot.pictures.reading import dots, outside, overlapping, smallest_points, words

NAMES = ("Back squat", "Bench press", "Dumbbell lateral raise", "Chest-supported incline dumbbell row", "Dip")
TODAY = date(2026, 6, 20)
COACH = Reader("Mara", "UTC", "kg", is_coach=True)


def programme(count: int) -> ProgrammeProgress:
    exercises = tuple(
        gaining(4 + place, exercise=f"{NAMES[place % len(NAMES)]} {place}", small=True)
        for place in range(count)
    )
    return ProgrammeProgress(client="Noor", programme="Harbour Base", exercises=exercises)


def roster(count: int) -> RosterProgress:
    since = TODAY - timedelta(weeks=12)
    rows = tuple(
        RosterRow(
            client=f"{('Noor', 'Oluwaseun Adebayo', 'Zoë van den Berg')[place % 3]} {place}",
            points=tuple(
                (since + timedelta(days=4 * day), (day - 3) * 0.009 * (place % 4)) for day in range(20)
            )
            if place % 5
            else (),
            matters=(12, 3, 0)[min(place, 2)],
            paused=place == 4,
        )
        for place in range(count)
    )
    return RosterProgress(today=TODAY, since=since, rows=rows)


@pytest.mark.parametrize("count", [1, 2, 5, 8, 9, 12, 15])
def test_the_words_of_a_programme_can_all_be_read(count: int) -> None:
    picture = draw_programme(programme(count))
    assert overlapping(picture) == []
    assert outside(picture) == []
    assert smallest_points(picture) >= SMALL_POINTS
    assert picture.sheet.height <= TALLEST_INCHES + 1e-9
    assert len(picture.panels) == min(count, MOST_PANELS)


@pytest.mark.parametrize("count", [0, 1, 3, 16, 17, 40, 55])
def test_the_words_of_a_roster_can_all_be_read(count: int) -> None:
    picture = draw_roster(roster(count))
    assert overlapping(picture) == []
    assert outside(picture) == []
    assert smallest_points(picture) >= SMALL_POINTS
    assert picture.sheet.height <= TALLEST_INCHES + 1e-9
    shown = words(picture)
    assert sum((each[-2:].strip().isdigit() and each[0] in "NOZ") or "…" in each for each in shown) == min(
        count, MOST_ROWS
    )


def test_all_panels_of_a_programme_are_over_the_same_days() -> None:
    panels = draw_programme(programme(5)).panels
    assert len({each.across for each in panels}) == 1
    assert [len(dots(each, "o")) for each in panels] == [4, 5, 6, 7, 8]


def test_what_has_stalled_or_is_set_aside_says_so() -> None:
    stalled = gaining(5, small=True, marks=(Mark(on=FIRST, what="stall"),))
    held = gaining(5, small=True, exercise="Dip", held_since=FIRST)
    shown = words(draw_programme(ProgrammeProgress(client="Noor", programme=None, exercises=(stalled, held))))
    assert "stalled" in shown
    assert "set aside" in shown


def test_a_client_of_a_roster_has_the_change_and_what_is_to_settle() -> None:
    shown = words(draw_roster(roster(3)))
    assert "+14.4%" in shown
    assert "12" in shown
    assert "Change in strength, all exercises together, 28 Mar to 20 Jun 2026" in shown


def test_several_exercises_of_one_message_come_in_one_picture() -> None:
    one, other = gaining(4, small=True), gaining(5, exercise="Dip", small=True)
    assert drawable((one, Notice(topic="heard"), other)) == ProgrammeProgress(
        client="Noor", programme=None, exercises=(one, other)
    )
    assert drawable((Notice(topic="heard"),)) is None


@pytest.mark.parametrize(
    ("part", "name"),
    [
        (gaining(), "noor-back-squat.png"),
        (programme(2), "noor-harbour-base.png"),
        (roster(2), "clients-at-a-glance.png"),
    ],
)
def test_a_picture_is_a_png_under_its_name(part: object, name: str) -> None:
    assert picture_name(part) == name  # type: ignore[arg-type] # a table of all kinds
    assert draw(part).startswith(b"\x89PNG\r\n\x1a\n")  # type: ignore[arg-type] # as above


SCRIPTS = (
    "Γιώργος Παπαδόπουλος",
    "Олександра",
    "نور الهدى",
    "שרה כהן",
    "田中 花子",
    "김민준",
    "अनिता शर्मा",
    "สมชาย",
    "Ana 💪",
)
"""Greek, Cyrillic, Arabic and Hebrew, which can be drawn; four that cannot; and a name with a sign."""


@pytest.mark.parametrize("count", [9, 18])
def test_a_name_in_any_script_can_be_told_from_the_others_in_the_picture_and_below_it(count: int) -> None:
    names = [SCRIPTS[place % 9] + (" II" if place > 8 else "") for place in range(count)]
    part = RosterProgress(today=TODAY, since=TODAY, rows=tuple(RosterRow(client=name) for name in names))
    with warnings.catch_warnings():
        warnings.simplefilter("error")  # of a letter that the font lacks
        picture = draw_roster(part)
        assert draw(part)
    assert overlapping(picture) == []
    shown = words(picture)
    stand_ins = ("client 5", "client 6", "client 7", "client 8")
    for name in ("Олександра", "نور الهدى", "שרה כהן", *stand_ins, "Ana"):
        assert name in shown
    said = roster_progress_words(part)
    assert "client 5, 田中 花子: too early to tell" in said
    assert "\nОлександра: too early" in said


def test_an_exercise_in_any_script_has_its_place_in_the_picture_and_below_it() -> None:
    exercises = tuple(gaining(4, exercise=name, small=True) for name in ("懸垂", "Жим", "Dip"))
    part = ProgrammeProgress(client="田中", programme="計画", exercises=exercises)
    picture = draw_programme(part)
    assert {"Exercises", "exercise 1", "Жим", "Dip"} <= set(words(picture))
    said = programme_progress_words(part, COACH)
    assert "exercise 1, 懸垂: best" in said
    assert "\nЖим: best" in said
    assert "Progress" in words(draw_progress(gaining(4, exercise="懸垂", client="田中")))
    assert "Dip" in words(draw_progress(gaining(4, exercise="Dip", client="田中")))


def test_the_font_has_every_sign_that_is_drawn_as_it_stands() -> None:
    folder = Path(mpl.get_data_path()) / "fonts" / "ttf"
    for file in ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf"):
        there = get_font(folder / file).get_charmap()
        drawn = (code for code in range(0x20, 0x10000) if is_shown(chr(code)))
        lacking = [code for code in drawn if code not in there and unicodedata.category(chr(code)) != "Cn"]
        assert lacking == [], file


def test_long_names_are_shortened_so_that_they_are_told_apart() -> None:
    names = ["Oluwaseun Adebayo", "Oluwaseun Adeyemi", "Zoë van den Berg", "Noor", "Maximiliane-Theodora"]
    short = names_within(names, SMALL, 200)
    assert len(set(short)) == len(names)
    assert short[2:4] == ["Zoë v. d. B.", "Noor"]
    assert all(room_of(each, SMALL).width <= 200 for each in short)


def test_a_small_panel_says_at_least_two_numbers() -> None:
    for panel, part in zip(draw_programme(programme(8)).panels, programme(8).exercises, strict=True):
        numbers = [each for each in panel.sheet.figure.texts if each.get_text().replace(".", "").isdigit()]
        of_it = [each for each in numbers if panel.left - 60 < each.get_position()[0] < panel.left
                 and panel.bottom - 15 < each.get_position()[1] < panel.top + 15]  # fmt: skip
        assert len(of_it) >= 2, part.exercise
