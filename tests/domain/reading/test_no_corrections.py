"""Remarks that sound like a word on what was just recorded, and put nothing right."""

from dataclasses import replace

import pytest

from tests.domain.reading.build import SENT, one, reading

DONE = (one("Bench press", "80", 8),)


@pytest.mark.parametrize("number", ["9", "9.5", "7"])
@pytest.mark.parametrize("it", ["it was", "that was", "it was only"])
@pytest.mark.parametrize(
    "counted",
    [
        *("pm", "am when I got home", "o'clock", "in the evening", "at night", "in the morning already"),
        *(
            "people in there",
            "euros",
            "km away",
            "years ago",
            "degrees in there",
            "hours ago",
            "stops by bus",
        ),
        *("of us", "minutes late", "songs long", "flights of stairs"),
    ],
)
def test_an_hour_or_a_count_of_other_things_puts_nothing_right(it: str, number: str, counted: str) -> None:
    found = reading(f"{it} {number} {counted}", done=DONE)
    assert "correct" not in found.wants
    assert not found.sets


@pytest.mark.parametrize(
    "text", ["thank god its friday", "thank goodness it's Monday", "it's friday tomorrow"]
)
def test_nor_does_a_word_on_what_day_it_is(text: str) -> None:
    found = reading(text, done=DONE)
    assert "correct" not in found.wants
    assert not found.sets


@pytest.mark.parametrize(
    "text", ["it was 9", "that was 9 reps", "it was only 9", "it was 9, sorry", "it was 9!"]
)
def test_but_a_number_of_a_set_does(text: str) -> None:
    found = reading(text, done=DONE)
    assert "correct" in found.wants
    assert found.sets == (replace(DONE[0], reps=9, on=SENT.date()),)
