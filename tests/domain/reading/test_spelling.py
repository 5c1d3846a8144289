"""Mistyped words that much hangs on are put right; good words are left as they are."""

import pytest

from domain.reading.english import is_english
from domain.reading.spelling import mended
from domain.reading.spelling_words import KEY_WORDS, SAFETY_WORDS
from tests.corpus.english import common_words


@pytest.mark.parametrize(
    ("typed", "right"),
    [
        ("seocnds", "seconds"),
        ("faield", "failed"),
        ("repettiions", "repetitions"),
        ("negtives", "negatives"),
        ("hudred", "hundred"),
        ("sveenty", "seventy"),
        ("fourten", "fourteen"),
        ("yesteday", "yesterday"),
        ("ngiht", "night"),
        ("nothng", "nothing"),
        ("shoudler", "shoulder"),
        ("wriist", "wrist"),
        ("kene", "knee"),
    ],
)
def test_a_slip_is_put_right(typed: str, right: str) -> None:
    assert mended(typed) == right


@pytest.mark.parametrize(
    "word",
    [
        "angle",
        "hear",
        "spain",
        "stained",
        "weigh",
        "house",
        "though",
        "threw",
        "sixteens",
        "planked",
    ],
)
def test_a_good_word_is_left(word: str) -> None:
    assert mended(word) == word


def test_a_word_as_near_to_two_is_left() -> None:
    assert mended("lightr") == "lightr"


def test_common_english_is_that_of_the_library() -> None:
    words = common_words()
    assert len(words) > 40_000
    assert all(map(is_english, words))
    assert not any(map(is_english, ("seocnds", "faield", "repettiions", "negtives", "yesteday")))


def test_no_common_word_is_taken_for_another() -> None:
    meant = KEY_WORDS | SAFETY_WORDS | {"hart", "outta", "gonna", "gotta", "wanna", "nowt"}
    assert [word for word in common_words() if word not in meant and mended(word) != word] == []
