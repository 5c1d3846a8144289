"""What must be said, and what must never be, where something hurts."""

import re

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import AlertPart, Part, Safety, Urgent

CLIENT = Reader("Noor", "Europe/Amsterdam", "kg")
COACH = Reader("Mara", "Europe/Lisbon", "kg", is_coach=True)

NEVER = re.compile(
    r"\b(safe|harmless|nothing serious|don't worry|do not worry|diagnos\w+|probably)\b", re.IGNORECASE
)
TRAINING_TALK = re.compile(r"\b(reps?|sets?|kg|lb|next time|aim|beat|workout)\b", re.IGNORECASE)


def words(part: Part, reader: Reader) -> str:
    return plain(message_words((part,), reader))


@pytest.mark.parametrize(
    "part",
    [
        Safety(where="knee", side="left", exercise="Goblet squat", held=("Goblet squat", "Wall sit")),
        Safety(where="other", exercise=None),
        Safety(where=None, exercise="Goblet squat"),
    ],
)
def test_pain_goes_to_a_qualified_professional(part: Safety) -> None:
    said = words(part, CLIENT)
    assert "qualified professional (a doctor or a physiotherapist) before you load it again" in said
    assert not NEVER.search(said)


def test_all_exercises_set_aside_are_named() -> None:
    said = words(Safety(where="knee", side="left", held=("Goblet squat", "Wall sit")), CLIENT)
    assert "left knee" in said
    assert "Goblet squat and Wall sit" in said


def test_a_warning_sign_gets_no_training_talk() -> None:
    said = words(Urgent(), CLIENT)
    assert "Stop now" in said
    assert "local emergency number" in said
    assert "tell someone near you" in said
    assert not TRAINING_TALK.search(said)
    assert not NEVER.search(said)


def test_a_stall_comes_to_the_coach_with_the_caution() -> None:
    said = words(Safety(where=None, exercise="Goblet squat"), COACH)
    assert "pain or joint trouble" in said
    assert "qualified professional" in said


def test_what_a_client_typed_cannot_become_markup() -> None:
    part = AlertPart(
        reason="question",
        client="<b>Eve</b>",
        exercise="<i>Row</i>",
        evidence={"said": "<a href='x'>&amp;</a>"},
    )
    text = message_words((part,), COACH)
    assert "<a" not in text
    assert "&lt;b&gt;Eve&lt;/b&gt;" in text
    assert plain(text).startswith("<b>Eve</b> asks about <i>Row</i>: «<a href='x'>&amp;</a>»")
