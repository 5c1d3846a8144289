"""Text into tokens: writing is folded, places stay those of the text as typed."""

from decimal import Decimal

import pytest

from domain.reading.message import message_of
from domain.reading.tokens import tokenise


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("80x8", ["80", "x", "8"]),
        ("80×8", ["80", "x", "8"]),
        ("８０ｘ８", ["80", "x", "8"]),
        ("8️⃣0️⃣x8", ["80", "x", "8"]),
        ("82½x7", ["82.5", "x", "7"]),
        ("77,5 x 7", ["77.5", "x", "7"]),
        ("80: 8,7,6", ["80", ":", "8", ",", "7", ",", "6"]),
        ("−20", ["-", "20"]),
        ("can’t", ["cant"]),
        ("\u202e80\u200bkg\x00", ["80", "kg"]),
        ("10kgx8", ["10", "kg", "x", "8"]),
        ("1,000 lb", ["1000", "lb"]),
        ("82.5x6,80x5", ["82.5", "x", "6", ",", "80", "x", "5"]),
        ("82,5x6,82,5x5", ["82.5", "x", "6", ",", "82.5", "x", "5"]),
        ("💪77,5x7", ["77.5", "x", "7"]),
        ("2day's legs", ["todays", "legs"]),
        ("off 2days", ["off", "2", "days"]),
        ("💪days", ["days"]),
        ("Kniebeugé", ["kniebeuge"]),
        ("", []),
        ("÷0", ["0"]),
    ],
)
def test_writing_is_folded(text: str, expected: list[str]) -> None:
    said = [str(t.value) if t.value is not None else t.text for t in tokenise(text)]
    assert said == expected


def test_a_token_knows_its_place_in_the_text_as_typed() -> None:
    text = "bench “82½” x 7"
    assert [text[t.start : t.end] for t in tokenise(text)] == ["bench", "“", "82½", "”", "x", "7"]


@pytest.mark.parametrize(
    ("words", "number"),
    [
        ("eighty", "80"),
        ("eighty two and a half", "82.5"),
        ("one hundred and five", "105"),
        ("one twenty", "120"),
        ("two seventy five", "275"),
        ("one oh five", "105"),
        ("seventy two point five", "72.5"),
        ("a dozen", "12"),
        ("a hundred and forty", "140"),
        ("three fifteen", "315"),
    ],
)
def test_number_words_are_numbers(words: str, number: str) -> None:
    values = [t.value for t in message_of(words).tokens]
    assert values == [Decimal(number)]


@pytest.mark.parametrize("words", ["that one", "the green one", "one of them", "one arm row", "half of it"])
def test_words_that_only_look_like_numbers_are_none(words: str) -> None:
    assert all(t.value is None for t in message_of(words).tokens)
