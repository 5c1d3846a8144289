"""From which day to come somebody is away, and until which: worked out by hand from Monday 9 March 2026."""

from datetime import date, datetime

import pytest

from domain.reading import Request, read
from domain.reading.request import Absence

SENT = datetime.fromisoformat("2026-03-09T18:00:00")


@pytest.mark.parametrize(
    ("text", "since", "back"),
    [
        ("on holiday from Friday for a week", 13, 20),
        ("holiday from Friday till the 20th", 13, 20),
        ("away from the 13th till the 20th", 13, 20),
        ("away Friday to Monday", 13, 16),
        ("away between friday and tuesday", 13, 17),
        ("we fly out on Friday, back on Tuesday", 13, 17),
        ("flying to Spain on Friday, back on the 20th", 13, 20),
        ("off two weeks from tomorrow", 10, 24),
        ("going away on saturday", 14, None),
        ("away from friday", 13, None),
        ("away next week", 16, 23),
        ("away this weekend", 14, 16),
        ("away from 13th to 20th, no gym", 13, 20),
        ("surgery on Friday, back on the 30th", 13, 30),
        ("leaving thursday for ten days", 12, 22),
        ("leaving for ten days on thursday", 12, 22),
        ("we leave tomorrow morning for a week", 10, 17),
        ("holiday next week", 16, 23),
        ("on holiday all next week", 16, 23),
        ("away next week from tuesday", 17, 23),
        ("away from tuesday to friday next week", 17, 20),
        ("I fly home tomorrow and am back the 24th", 10, 24),
        ("away on tuesday", 10, 11),
        ("tuesday next week I'm away", 17, 18),
        ("on leave this week", 9, 16),
        ("I won't be here from Friday to Tuesday", 13, 17),
    ],
)
def test_who_is_away_from_a_day_to_come_is_here_until_then(text: str, since: int, back: int | None) -> None:
    reading = read(Request(text=text, unit="kg", sent=SENT))
    until = date(2026, 3, back) if back is not None else None
    assert (reading.wants, reading.absence) == (("pause",), Absence(date(2026, 3, since), until))


@pytest.mark.parametrize(
    "text",
    [
        "away till Friday",
        "out of town, back 20th",
        "away till the 20th",
        "off two weeks",
        "back on Friday",
        "got the flu, off till friday",
        "got the flu, back next week",
        "sick, will let you know",
        "poorly, so no training",
    ],
)
def test_a_pause_without_such_a_day_begins_at_once(text: str) -> None:
    reading = read(Request(text=text, unit="kg", sent=SENT))
    assert (reading.wants, reading.absence) == (("pause",), None)


@pytest.mark.parametrize("day", [14, 15])
def test_who_says_so_on_the_weekend_itself_is_away_until_monday(day: int) -> None:
    sent = datetime.fromisoformat(f"2026-03-{day}T09:00:00")
    reading = read(Request(text="I'm away this weekend", unit="kg", sent=sent))
    assert reading.absence == Absence(date(2026, 3, day), date(2026, 3, 16))


@pytest.mark.parametrize(
    "text",
    [
        "swap rows for pulldowns permanently",
        "change rows to pulldowns for good",
        "from now on swap rows for pulldowns",
        "I want rows out of the programme",
        "no more curls for good please",
    ],
)
def test_a_change_for_good_is_for_the_coach(text: str) -> None:
    assert "ask_coach" in read(Request(text=text, unit="kg", sent=SENT)).wants


@pytest.mark.parametrize("text", ["rows 60x9, changed my grip for good", "I did everything in the programme"])
def test_what_only_sounds_like_a_change_for_good_is_none(text: str) -> None:
    assert "ask_coach" not in read(Request(text=text, unit="kg", sent=SENT)).wants


@pytest.mark.parametrize("text", ["sick! 60x9", "sick pump today"])
def test_what_only_sounds_like_an_illness_is_no_pause(text: str) -> None:
    assert "pause" not in read(Request(text=text, unit="kg", sent=SENT)).wants
