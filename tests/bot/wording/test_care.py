"""What must be said, and what must never be, where something hurts."""

import re
from datetime import date
from decimal import Decimal

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import AlertPart, Notice, Part, Plan, Safety, Urgent
from domain.plan_lines import PlanLine
from domain.programme import Range
from domain.sets import TrainingSet
from domain.target_reasons import Eased

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


def test_after_an_illness_fever_and_chest_come_before_any_load() -> None:
    line = PlanLine(
        exercise="Row",
        range=Range(low=6, high=8),
        stop_short=0,
        target=TrainingSet("Row", Decimal(70), "kg", "total", reps=7),
        reason=Eased(Decimal("0.9"), after_illness=True),
    )
    said = words(Plan(workout="Pull", on=date(2026, 3, 2), lines=(line,)), CLIENT)
    for text in (said, words(Notice(topic="get well"), CLIENT)):
        assert "fever" in text
        assert "chest" in text
        assert "ask a doctor" in text
        assert not NEVER.search(text)
    assert "about 10% lighter, on purpose" in said
    assert "to failure" not in said


def test_where_only_some_of_a_workout_begins_lighter_after_a_break_it_is_named() -> None:
    away = Eased(Decimal("0.7"), days_away=150)
    lines = tuple(
        PlanLine(
            exercise=name,
            range=Range(low=6, high=8),
            target=TrainingSet(name, Decimal(70), "kg", "total", reps=7),
            reason=why,
        )
        for name, why in (("Row", away), ("Curl", None))
    )
    for part, what in ((lines, "Row begins"), (lines[:1], "it all begins")):
        said = words(Plan(workout="Pull", on=date(2026, 3, 2), lines=part), CLIENT)
        assert f"After 21 weeks away {what} about 30% lighter, on purpose" in said


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
