"""Questions wait for their answers, whatever comes between, and nothing is recorded twice or lost."""

from datetime import date
from decimal import Decimal

import pytest

from domain.client.rotation import due
from domain.parts import Question
from tests.domain.client.people import Life, at, kinds


def loads(life: Life) -> list[tuple[str, Decimal, int | None]]:
    return [(each.set.exercise, each.set.load, each.set.reps) for each in life.state.entries]


def test_thanks_leave_a_question_open() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    assert kinds(life.says("thanks", at(2))) == ["thanked"]
    life.says("60", at(2))
    assert loads(life) == [("Seated cable row", Decimal(60), 9)]


def test_other_sets_are_recorded_and_the_question_is_asked_once_more() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    assert kinds(life.says("rdl 80x7", at(2))) == ["verdict", "target", "question"]
    assert kinds(life.says("curls 14x10", at(2))) == ["verdict", "target"]
    life.says("60", at(2))
    assert loads(life)[-1] == ("Seated cable row", Decimal(60), 9)


def test_two_questions_are_answered_one_after_the_other_the_newer_first() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("curls 10 reps", at(2))
    assert kinds(life.says("14", at(2)))[-1] == "question"
    life.says("60", at(2))
    assert loads(life) == [("Hammer curl", Decimal(14), 10), ("Seated cable row", Decimal(60), 9)]


def test_what_is_as_last_time_where_there_is_none_is_asked_for_and_body_weight_is_understood() -> None:
    life = Life()
    (question,) = life.says("push ups same as last time", at(2))
    assert isinstance(question, Question)
    assert (question.slot, question.facts["none_before"]) == ("reps", True)
    life.says("12", at(2))
    assert loads(life) == [("Push-up", Decimal(0), 12)]
    life = Life()
    life.says("dips up 5 for 6", at(2))
    life.presses("Body weight", at(2))
    assert loads(life) == [("Dip", Decimal(0), 6)]


def test_the_whole_set_said_again_is_the_answer() -> None:
    life = Life()
    life.says("curls 10 reps", at(2))
    life.says("14 x 10", at(2))
    assert loads(life) == [("Hammer curl", Decimal(14), 10)]
    assert life.state.memory.questions == ()


def test_an_answer_after_midnight_is_of_the_day_that_was_asked_about() -> None:
    life = Life()
    life.says("row 9 reps", at(2, 23, 58))
    life.says("60", at(3, 0, 3))
    assert [each.set.on and each.set.on.day for each in life.state.entries] == [2]


def test_the_next_day_a_number_is_no_answer_to_yesterdays_question() -> None:
    life = Life()
    life.says("row 9 reps", at(2, 18))
    life.says("60", at(3, 18))
    assert life.state.entries == ()


def test_never_mind_drops_the_question_and_undo_does_too() -> None:
    for text in ("never mind", "undo"):
        life = Life()
        life.says("row 9 reps", at(2))
        assert kinds(life.says(text, at(2))) == ["question dropped"]
        assert life.state.memory.questions == ()


@pytest.mark.parametrize(
    ("said", "topics", "due_on"),
    [
        (["can't today"], ["plans as before"], 2),
        (["away till the 20th"], ["plans as before"], 2),
        (["another day"], ["plans as before"], 2),
        (["another day", "Wednesday"], ["plans as before"], 2),
        (["move it to Wednesday", "another day"], ["plans as before"], 4),  # the move stands
        (["can't today", "row 60x9"], ["all recorded stands"], 5),
        (["row 60x9"], ["all recorded stands"], 5),
        (["row 9 reps", "can't today"], ["plans as before"], 2),
        (["thanks"], ["heard"], 2),
    ],
)
def test_never_mind_takes_back_what_was_last_wanted_and_no_record(
    said: list[str], topics: list[str], due_on: int
) -> None:
    life = Life()
    for minute, text in enumerate(said):
        life.says(text, at(2, 9, minute))
    recorded = life.state.entries
    assert kinds(life.says("never mind", at(2, 9, 10))) == topics
    assert life.state.entries == recorded
    coming = due(life.state, date(2026, 3, 2))
    assert coming is not None
    assert coming.on == date(2026, 3, due_on)


def test_never_mind_comes_too_late_for_a_change_of_plans() -> None:
    life = Life()
    life.says("move it to Wednesday", at(2, 9))
    assert kinds(life.says("never mind", at(2, 12))) == ["heard"]
    assert life.state.memory.moved_to == date(2026, 3, 4)


def test_what_stands_is_taken_back_at_a_press() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("never mind", at(2, 18, 1))
    assert kinds(life.presses("Take back the last set", at(2, 18, 2))) == ["taken back"]


def test_an_edited_answer_is_taken_anew() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("60", at(2))
    said = life.edits("62.5", "60", 2, at(2))
    assert kinds(said) == ["read again", "verdict", "target"]
    assert loads(life) == [("Seated cable row", Decimal("62.5"), 9)]


def test_an_answer_speaks_of_no_other_exercise_than_the_question() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("curls 14", at(2))
    assert ("Seated cable row", Decimal(14), 9) not in loads(life)


def test_a_button_for_a_missed_workout_still_counts_after_something_else_was_said() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    life.says("thanks", at(3, 9))
    assert kinds(life.presses("Trained", at(3, 10))) == ["trained after all"]


def test_trained_after_all_dates_the_sets_to_that_day_until_today_is_said() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    life.presses("Trained", at(3, 9))
    life.says("60 x 9", at(3, 9))
    life.says("today rdl 80x7", at(3, 9))
    assert [each.set.on and each.set.on.day for each in life.state.entries] == [2, 3]


def test_it_hurts_counts_even_when_its_question_is_long_gone() -> None:
    life = Life()
    for day in (2, 8, 14, 20):
        life.says("row 60x9\nrdl 80x7\n14x10", at(day))
        life.says("goblet squat 20x10\n45s", at(day + 3))
    assert "It hurts" in life.buttons
    life.presses("No trouble", at(20))
    life.says("row 60x9", at(26))
    assert kinds(life.presses("It hurts", at(26))) == ["safety"]
    assert [hold.exercise for hold in life.state.holds] == ["Seated cable row"]


def test_a_day_that_could_not_be_told_is_asked_for() -> None:
    life = Life()
    (question,) = life.says("move it to next friday", at(4, 9))
    assert getattr(question, "slot", None) == "day"
    assert kinds(life.says("the 6th", at(4, 9))) == ["moved"]


@pytest.mark.parametrize("words", ["that was yesterday really", "it was yesterday", "that was on Wednesday"])
def test_the_day_alone_is_of_the_set_that_is_asked_about_and_of_no_older_one(words: str) -> None:
    life = Life()
    life.says("row 60x9, rdl 80x7, curls 14x10", at(2))
    life.says("squat 20", at(5))
    assert kinds(life.says(words, at(5))) == ["of that day", "question"]
    life.says("10", at(5))
    assert [each.set.on for each in life.state.entries] == [date(2026, 3, 2)] * 3 + [date(2026, 3, 4)]


def test_the_day_alone_is_of_the_record_where_one_came_in_since_and_the_workout_with_it() -> None:
    life = Life()
    life.says("squat 20", at(5))
    life.says("wall sit 45 s", at(5))
    life.says("that was yesterday", at(5))
    life.says("20x10", at(5))
    assert [(each.set.exercise, each.set.on) for each in life.state.entries] == [
        ("Wall sit", date(2026, 3, 4)),
        ("Goblet squat", date(2026, 3, 4)),
    ]


@pytest.mark.parametrize(
    ("said", "reps"),
    [
        ("not sure, 8", 8),
        ("8 prob", 8),
        ("8ish", 8),
        ("about 8 reps I guess", 8),
        ("lost count, 8 I think", 8),
        ("it must have been 8", 8),
        ("I'd say 8", 8),
        ("8 or so", 8),
        ("not 8", None),
        ("not sure", None),
    ],
)
def test_an_answer_that_is_not_quite_sure_is_one_and_never_a_set_of_something_else(
    said: str, reps: int | None
) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("rdl 80", at(2))
    life.says(said, at(2))
    assert loads(life)[1:] == ([] if reps is None else [("Romanian deadlift", Decimal(80), reps)])


@pytest.mark.parametrize("said", ["8 or 9", "8-9", "between 8 and 9", "8, maybe 9", "8 or 9 reps, not sure"])
def test_of_two_numbers_said_it_is_asked_which(said: str) -> None:
    life = Life()
    life.says("rdl 80", at(2))
    life.buttons = {}
    (question,) = life.says(said, at(2))
    assert isinstance(question, Question)
    assert (question.slot, list(life.buttons)) == ("reps", ["8", "9"])
    assert life.state.entries == ()
    life.presses("9", at(2))
    assert loads(life) == [("Romanian deadlift", Decimal(80), 9)]
