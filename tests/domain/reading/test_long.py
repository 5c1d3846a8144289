"""Long and odd texts: cut, never a traceback."""

from dataclasses import replace

import pytest

from domain.reading.tokens import LONGEST
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
def test_of_a_megabyte_of_anything_only_the_beginning_is_read(piece: str) -> None:
    """So that its time is that of its beginning; tests/bench measures it."""
    text = piece * (MEGABYTE // len(piece))
    found = reading(text)
    assert found.cut
    assert found == replace(reading(text[:LONGEST]), cut=True)


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
