"""Other languages are told from English with slips in it."""

import pytest

from domain.other_languages import is_other_language


@pytest.mark.parametrize(
    "text",
    [
        "hola",
        "¿qué hago hoy?",
        "was mache ich heute?",
        "je suis malade",
        "oggi non posso",
        "hoje não posso treinar",
        "ik ben vandaag ziek",
        "mam dziś trening",
        "merci beaucoup",
        "Ich kann heute nicht",
    ],
)
def test_other_languages_are_known_by_their_small_words(text: str) -> None:
    assert is_other_language(text)


@pytest.mark.parametrize(
    "text",
    [
        *(
            "lol",
            "ok",
            "sqat done",
            "the gym is closed",
            "I'm at a café",
            "come on",
            "die hard",
            "benhc was heavy",
        ),
        *(
            "my app crashed",
            "I did it",
            "gr8 sesh",
            "naïve me",
            "voilà",
            "nah mate",
            "a la carte menu today",
            "",
        ),
    ],
)
def test_english_with_slips_and_borrowed_words_is_english(text: str) -> None:
    assert not is_other_language(text)
