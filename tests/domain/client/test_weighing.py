"""Body mass: asked for once, answered, declined, ignored, asked again weeks later, never where unwanted."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest

from domain.parts import Question
from tests.domain.client.people import Life, at, kinds, noor

BARS = """\
Harbour Bars
Train every 3 days in turn: Bars, Legs

Bars
1. Pull-up, 5-8 reps; over 8 add load
2. Dip, 5-8 reps

Legs
1. Back squat, 5-8 reps
"""


def bars(life: Life, when: datetime) -> list[str]:
    """Let a workout with the body as load be told of; return what kinds of parts the answer has."""
    life.says("pull-ups 6", when)
    return kinds(life.says("dips 6", when))


def asked() -> Life:
    """Return the life of one who has just been asked."""
    life = Life(noor(BARS))
    assert bars(life, at(2))[-1] == "question"
    return life


def train_on(life: Life, first: int, days: int) -> list[int]:
    """Let every workout be done from that day of March on; return the days on which it was asked for."""
    asked_on = []
    for day in range(first, first + days):
        when = datetime(2026, 3, 1, 17, tzinfo=UTC) + timedelta(days=day - 1)
        life.passes_to(when)
        due_on = life.state.memory.due_on
        if due_on is None or due_on > when.date():
            continue
        parts = (*life.says("pull-ups 6, dips 6", when),) if day % 6 == 2 else life.says("squat 60x6", when)
        if any(isinstance(part, Question) and part.slot == "body mass" for part in parts):
            asked_on.append(day)
    return asked_on


def test_it_is_asked_for_once_the_workout_is_done_and_not_before() -> None:
    life = Life(noor(BARS))
    assert "question" not in kinds(life.says("pull-ups 6", at(2)))
    parts = life.says("dips 6", at(2))
    question = parts[-1]
    assert isinstance(question, Question)
    assert question.slot == "body mass"
    assert question.facts == {"exercises": ["Pull-up"]}


@pytest.mark.parametrize(
    ("text", "kept"), [("82", "82.0"), ("82.5kg", "82.5"), ("13 stone 2", "83.5"), ("I weigh 81", "81.0")]
)
def test_the_answer_is_kept_with_its_day(text: str, kept: str) -> None:
    life = asked()
    assert kinds(life.says(text, at(3, 7))) == ["body mass kept"]
    assert life.state.client.body_mass == Decimal(kept)
    assert life.state.memory.body_mass_told_on == at(3).date()
    assert life.state.memory.questions == ()


@pytest.mark.parametrize(
    "text", ["not now", "Not now", "no", "no thanks", "later", "rather not", "don't know"]
)
def test_a_declined_question_is_over(text: str) -> None:
    life = asked()
    assert kinds(life.says(text, at(2, 19))) == ["body mass later"]
    assert life.state.memory.questions == ()
    assert bars(life, at(8))[-1] != "question"


def test_not_now_and_never_are_buttons() -> None:
    life = asked()
    assert kinds(life.presses("Not now", at(2, 19))) == ["body mass later"]
    other = asked()
    assert kinds(other.presses("Don't ask again", at(2, 19))) == ["body mass not asked"]


def test_ignored_it_is_asked_again_after_five_weeks_and_no_sooner() -> None:
    life = asked()
    assert train_on(life, 3, 80) == [38, 74]


def test_told_unasked_the_weeks_begin_anew() -> None:
    life = asked()
    life.says("I weigh 81", at(14))
    assert train_on(life, 15, 40) == [50]


@pytest.mark.parametrize(
    "text",
    ["don't ask for my weight", "please stop asking me about my body weight", "don't ask me again", "never"],
)
def test_who_does_not_want_to_be_asked_never_is_but_can_still_tell(text: str) -> None:
    life = asked()
    assert kinds(life.says(text, at(2, 19))) == ["body mass not asked"]
    assert train_on(life, 3, 80) == []
    when = datetime(2026, 6, 1, 17, tzinfo=UTC)
    assert kinds(life.says("I weigh 81", when)) == ["body mass kept"]
    assert life.state.memory.body_mass_unwanted


def test_the_wish_is_heard_without_any_question() -> None:
    life = Life(noor(BARS))
    assert kinds(life.says("don't ask for my weight", at(2, 9))) == ["body mass not asked"]
    assert "question" not in bars(life, at(2))


def test_a_bare_number_on_a_training_day_is_of_a_set() -> None:
    life = asked()
    life.passes_to(at(5, 9))
    (question,) = life.says("80", at(5))
    assert isinstance(question, Question)
    assert question.slot == "reps"
    assert kinds(life.says("6", at(5)))[0] == "verdict"
    assert life.state.client.body_mass is None


def test_a_bare_number_after_a_question_about_a_set_is_of_the_set() -> None:
    life = asked()
    (question,) = life.says("squat 80 kg", at(3))
    assert isinstance(question, Question)
    assert question.slot == "reps"
    assert kinds(life.says("82", at(3)))[0] != "body mass kept"
    assert life.state.client.body_mass is None


def test_a_small_number_is_no_body_mass() -> None:
    life = asked()
    assert "body mass kept" not in kinds(life.says("9", at(2, 19)))
    assert life.state.client.body_mass is None


def test_a_number_that_may_be_in_the_other_unit_is_asked_about() -> None:
    life = asked()
    (question,) = life.says("182", at(2, 19))
    assert isinstance(question, Question)
    assert question.facts == {"told": "182"}
    assert kinds(life.presses("182 lb", at(2, 19))) == ["body mass kept"]
    assert life.state.client.body_mass == Decimal("82.6")


def test_an_impossible_number_is_not_kept_and_the_question_stays() -> None:
    life = asked()
    assert kinds(life.says("820 kg", at(2, 19))) == ["body mass unlikely"]
    assert life.state.client.body_mass is None
    assert kinds(life.says("82 kg", at(2, 19))) == ["body mass kept"]


def test_the_message_with_it_can_be_edited() -> None:
    life = asked()
    life.says("82", at(2, 19))
    assert kinds(life.edits("83", "82", life.heard, at(2, 19))) == ["body mass kept"]
    assert life.state.client.body_mass == Decimal("83.0")


def test_it_is_not_asked_for_where_something_hurts() -> None:
    life = Life(noor(BARS))
    life.says("pull-ups 6", at(2))
    assert "question" not in kinds(life.says("dips 6 but my elbow hurts", at(2)))


def test_it_is_not_asked_for_without_an_exercise_that_needs_it() -> None:
    life = Life(
        noor(
            "Harbour Bars\nTrain every 3 days in turn: Bars\n\n"
            "Bars\n1. Pull-up, 5-8 reps\n2. Bench press, 5-8 reps"
        )
    )
    assert "question" not in kinds(life.says("pull-ups 6, bench 60x6", at(2)))
    assert "question" in kinds(life.says("pull-ups +5x5, bench 60x7", at(5)))


def test_one_known_from_the_beginning_is_asked_for_after_five_weeks() -> None:
    state = noor(BARS)
    life = Life(replace(state, client=replace(state.client, body_mass=Decimal(80))))
    assert "question" not in bars(life, at(2))
    assert train_on(life, 3, 40) == [38]


@pytest.mark.parametrize("text", ["make that 83", "no, 83", "sorry 83 kg", "I meant 83"])
def test_a_correction_right_after_it_is_of_the_body_mass_and_of_no_set(text: str) -> None:
    life = asked()
    life.says("82", at(2, 19))
    before = life.state.entries
    assert kinds(life.says(text, at(2, 19))) == ["body mass kept"]
    assert life.state.client.body_mass == Decimal("83.0")
    assert life.state.entries == before


def test_an_undo_right_after_it_takes_the_body_mass_back_and_no_set() -> None:
    life = asked()
    life.says("82", at(2, 19))
    life.says("make that 83", at(2, 19))
    before = life.state.entries
    assert kinds(life.says("undo", at(2, 19))) == ["body mass taken back"]
    assert life.state.client.body_mass is None
    assert life.state.entries == before
    assert kinds(life.says("undo", at(2, 19))) == ["taken back"]


def test_a_correction_of_reps_after_it_is_still_of_the_set() -> None:
    life = asked()
    life.says("82", at(2, 19))
    life.says("make that 7 reps", at(2, 19))
    assert life.state.client.body_mass == Decimal("82.0")
    assert life.state.entries[-1].set.reps == 7
