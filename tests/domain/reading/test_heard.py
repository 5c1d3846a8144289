"""Which words of a message a reading came from: names and effort are shown as what they became."""

import pytest

from tests.domain.reading.build import reading


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("bench 80 x 8", {"bench": "an exercise", "80 x 8": "a set"}),
        (
            "bench 80 x 8, 2 in the tank",
            {"bench": "an exercise", "80 x 8": "a set", "2 in the tank": "effort"},
        ),
        ("80 x 8 to failure", {"80 x 8": "a set", "to failure": "effort"}),
        ("bench\n80 x 8", {"bench": "an exercise", "80 x 8": "a set"}),
        ("thinking of bench", {}),
    ],
)
def test_words_are_shown_as_what_they_became(text: str, words: dict[str, str]) -> None:
    assert {text[word.start : word.end]: word.became for word in reading(text).words} == words
