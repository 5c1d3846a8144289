"""Pain and warning signs: each message about them is heard, and what only sounds like them is left alone."""

from datetime import datetime

import pytest

from domain.reading import Reading, Request, read
from tests.corpus.rows import Row, compared, got, rows_in

ROWS = rows_in("safety")

SIGNS = (
    "I have chest pain",
    "I fainted at the rack",
    "nearly passed out on squats",
    "sudden worst headache on rep 5",
    "my urine is dark brown",
    "palpitations and dizziness since noon",
    "heard a pop in my knee and cannot stand",
)


def heard(text: str) -> Reading:
    return read(Request(text=text, unit="kg", sent=datetime(2026, 5, 20, 18, 30)))  # noqa: DTZ001 - local, as all here


@pytest.mark.parametrize("row", ROWS, ids=[row.id for row in ROWS])
def test_pain_and_danger_are_heard_as_they_are_told(row: Row) -> None:
    should, is_so = compared(row.gold), compared(got(row))
    assert (row.request["text"], is_so["urgent"], is_so["pain"]) == (
        row.request["text"],
        should["urgent"],
        should["pain"],
    )


@pytest.mark.parametrize(
    "around", ["{} lol", "haha {}", "bench 80x8. {}", "{}\nbench 80x8", "not sure, but {}"]
)
@pytest.mark.parametrize("sign", SIGNS)
def test_a_sign_is_heard_whatever_stands_around_it(sign: str, around: str) -> None:
    assert heard(around.format(sign)).urgent


@pytest.mark.parametrize("word", ["chest", "pain", "fainted", "headache", "urine", "palpitations", "breathe"])
def test_two_letters_that_changed_places_do_not_hide_a_sign(word: str) -> None:
    signs = {
        "chest": "chest pain",
        "pain": "chest pain",
        "fainted": "I fainted",
        "headache": "sudden worst headache",
        "urine": "brown urine",
        "palpitations": "dizzy with palpitations",
        "breathe": "I can't breathe",
    }
    for at in range(1, len(word) - 1):
        slip = word[:at] + word[at + 1] + word[at] + word[at + 2 :]
        assert heard(signs[word].replace(word, slip)).urgent, slip


@pytest.mark.parametrize(
    "text",
    [
        "chess after work",
        "painted the plain wall",
        "a good breadth",
        "heard the grain",
        "paired with a groan",
    ],
)
def test_good_words_are_no_slips_of_words_of_danger(text: str) -> None:
    reading = heard(text)
    assert not reading.urgent
    assert reading.pain == ()


@pytest.mark.parametrize(
    "text",
    [
        "call me an ambulance",
        "I need an ambulance",
        "help, ambulance",
        "ambulance please",
        "please call the paramedics",
        "should I call an ambulance?",
        "someone get the emergency services",
        "somebody call an ambulance",
    ],
)
def test_who_asks_for_rescue_is_told_to_call_it(text: str) -> None:
    assert heard(text).urgent


@pytest.mark.parametrize(
    "text",
    [
        "I don't need an ambulance",
        "nearly needed an ambulance after that set",
        "lol call me an ambulance after those squats",
        "they called an ambulance for a guy at the gym",
        "when should I call an ambulance?",
        "an ambulance drove past, squat 60x6",
        "I drive an ambulance for a living",
    ],
)
def test_an_ambulance_that_is_not_asked_for_is_no_sign(text: str) -> None:
    assert not heard(text).urgent
