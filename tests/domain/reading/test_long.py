"""Long and odd texts: cut, linear in time, never a traceback."""

import time

import pytest

from tests.domain.reading.build import reading

MEGABYTE = 1_000_000


@pytest.mark.parametrize(
    "piece",
    [
        "8",
        "80x8 ",
        "bench ",
        "no pain ",
        "( ",
        "a",
        "\n",
        "💪",
        "\u202e",
        "1/",
        "@",
        "the the ",
        "my knee hurts ",
        "9" * 50,
    ],
)
def test_a_megabyte_of_anything_is_read_in_a_tenth_of_a_second(piece: str) -> None:
    text = piece * (MEGABYTE // len(piece))
    began = time.perf_counter()
    found = reading(text)
    assert time.perf_counter() - began < 0.5  # a tenth on an idle core; the rest is for a busy machine
    assert found.cut


@pytest.mark.parametrize(
    "text", ["", " ", "\x00\x01", "<b>hi</b>", "привет", "你好", "مرحبا", "?!", "𝟠𝟘", "%s %d {}"]
)
def test_odd_texts_record_nothing(text: str) -> None:
    assert not reading(text).sets


def test_a_short_text_is_not_cut() -> None:
    assert not reading("bench 80x8").cut


def test_each_set_knows_the_words_it_came_from() -> None:
    text = "ok, bench 80x8 and my left knee hurts"
    words = {text[w.start : w.end]: w.became for w in reading(text).words}
    assert words["80x8"] == "a set"
    assert words["knee"] == "pain"
