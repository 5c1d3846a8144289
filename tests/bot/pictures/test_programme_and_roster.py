"""The pictures of a whole programme and of all clients."""

from datetime import date, timedelta

import pytest

from bot.pictures.drawing import draw, drawable, picture_name
from bot.pictures.programme import MOST_PANELS, draw_programme
from bot.pictures.roster import MOST_ROWS, draw_roster
from bot.pictures.style import SMALL_POINTS, TALLEST_INCHES
from domain.parts import Notice
from domain.pictures import Mark, ProgrammeProgress, RosterProgress, RosterRow
from tests.bot.pictures.courses import FIRST, gaining
from tests.bot.pictures.reading import dots, outside, overlapping, smallest_points, words

NAMES = ("Back squat", "Bench press", "Dumbbell lateral raise", "Chest-supported incline dumbbell row", "Dip")
TODAY = date(2026, 6, 20)


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
