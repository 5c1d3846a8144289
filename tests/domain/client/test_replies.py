"""A reply puts right, takes back or completes what its message is of, and leaves all else as it stands."""

from decimal import Decimal

import pytest

from tests.domain.client.people import Life, at, kinds, noor

ROW, RDL, CURL = "Seated cable row", "Romanian deadlift", "Hammer curl"


def stands(life: Life) -> list[tuple[str, Decimal, int | None]]:
    return [(each.set.exercise, each.set.load, each.set.reps) for each in life.state.entries]


def two_workouts() -> Life:
    """A life of two workouts; messages 1 to 3 tell of Pull, 4 of Legs."""
    life = Life()
    life.says("row 60x9", at(2))
    life.says("rdl 80x7", at(2))
    life.says("curls 12x10", at(2))
    life.says("goblet squat 20x10", at(5))
    return life


@pytest.mark.parametrize("to_bot", [False, True])
@pytest.mark.parametrize(
    ("said", "to", "expected"),
    [
        ("that was 8", 1, (ROW, Decimal(60), 8)),
        ("make that 10", 1, (ROW, Decimal(60), 10)),
        ("make it 62.5", 1, (ROW, Decimal("62.5"), 9)),
        ("sorry, 82.5 not 80", 2, (RDL, Decimal("82.5"), 7)),
        ("that was 11 reps", 3, (CURL, Decimal(12), 11)),
    ],
)
def test_a_correction_in_a_reply_days_later_is_of_that_message(
    said: str, to: int, expected: tuple[str, Decimal, int], to_bot: bool
) -> None:
    life = two_workouts()
    before = stands(life)
    assert kinds(life.replies(said, to, at(7), to_bot=to_bot))[0] == "verdict"
    after = stands(life)
    assert after[to - 1] == expected
    assert [each for place, each in enumerate(after) if place != to - 1] == [
        each for place, each in enumerate(before) if place != to - 1
    ]
    assert life.state.entries[to - 1].set.on == at(2).date()


@pytest.mark.parametrize("said", ["undo", "scrap that", "delete that"])
def test_what_a_reply_takes_back_is_what_its_message_recorded(said: str) -> None:
    life = two_workouts()
    assert kinds(life.replies(said, 2, at(7))) == ["taken back"]
    assert [each for each, _, _ in stands(life)] == [ROW, CURL, "Goblet squat"]


def test_the_exercise_of_another_workout_is_put_right_in_a_reply() -> None:
    life = two_workouts()
    life.replies("that was curls", 1, at(7))
    assert stands(life)[0] == (CURL, Decimal(60), 9)


def test_several_sets_of_the_message_are_put_right_together() -> None:
    life = Life(
        noor("One\nTrain every 2 days in turn: A\n\nA\n1. Bench press, 3 sets of 6-8 reps\n2. Row, 8 reps\n")
    )
    life.says("bench 60: 8, 7, 6", at(2))
    life.says("60 x 8", at(2))
    life.replies("those were all 62.5", 1, at(4))
    assert [load for _, load, _ in stands(life)] == [Decimal("62.5")] * 3 + [Decimal(60)]


def test_a_second_reply_puts_right_what_the_first_has_put_right() -> None:
    life = two_workouts()
    life.replies("make that 8", 1, at(7))
    life.replies("no, make that 7", 1, at(7))
    assert stands(life)[0] == (ROW, Decimal(60), 7)
    life.replies("undo", 6, at(8))
    assert stands(life)[0] == (ROW, Decimal(60), 8)
    life.replies("undo", 1, at(8))
    assert ROW not in [each for each, _, _ in stands(life)]


def test_nothing_else_is_touched_where_nothing_of_the_message_stands() -> None:
    life = two_workouts()
    life.replies("undo", 1, at(7))
    left = stands(life)
    assert kinds(life.replies("make that 8", 1, at(7))) == ["nothing to put right"]
    assert kinds(life.replies("undo", 1, at(7))) == ["nothing to take back"]
    assert stands(life) == left


def test_a_reply_that_reports_or_asks_is_read_as_ever() -> None:
    life = two_workouts()
    life.replies("row 62.5x9", 1, at(8), to_bot=True)
    assert stands(life)[0] == (ROW, Decimal(60), 9)
    assert stands(life)[-1] == (ROW, Decimal("62.5"), 9)
    assert kinds(life.replies("what's next?", 1, at(8))) == ["plan"]


def test_a_reply_to_a_question_answers_it_though_another_was_asked_since() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("curls 10 reps", at(2))
    said = life.replies("60", 1, at(2), to_bot=True)
    assert kinds(said)[-1] == "question"
    assert stands(life) == [(ROW, Decimal(60), 9)]
    life.says("14", at(2))
    assert stands(life)[-1] == (CURL, Decimal(14), 10)


def test_a_reply_days_later_still_answers_an_open_question() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.replies("60", 1, at(3, 20), to_bot=True)
    assert stands(life) == [(ROW, Decimal(60), 9)]
    assert life.state.entries[0].set.on == at(2).date()


@pytest.mark.parametrize("to_bot", [False, True])
def test_a_number_alone_is_what_the_set_should_have_been_and_answers_no_other_question(to_bot: bool) -> None:
    life = two_workouts()
    life.says("rdl 7 reps on friday", at(8))
    life.says("wall sit 40s with something", at(8))
    life.replies("62.5", 1, at(8), to_bot=to_bot)
    assert stands(life)[0] == (ROW, Decimal("62.5"), 9)
    assert [load for _, load, _ in stands(life)].count(Decimal("62.5")) == 1


def test_a_number_alone_may_be_the_next_set_while_there_is_one_to_do() -> None:
    life = Life(noor("One\nTrain every 2 days in turn: A\n\nA\n1. Bench press, 3 sets of 6-8 reps\n"))
    life.says("bench 60x8", at(2))
    life.replies("7 reps", 1, at(2), to_bot=True)
    assert [reps for _, _, reps in stands(life)] == [8, 7]
    life.replies("6 reps", 1, at(3), to_bot=True)
    assert [reps for _, _, reps in stands(life)] == [6, 7]


def test_pain_in_a_reply_is_heard_beside_its_correction() -> None:
    life = two_workouts()
    life.replies("that was 8, and my lower back hurts", 2, at(7))
    assert stands(life)[1] == (RDL, Decimal(80), 8)
    assert RDL in [hold.exercise for hold in life.state.holds]


def test_an_edited_reply_puts_the_same_set_right() -> None:
    life = two_workouts()
    life.replies("that was 8", 1, at(7))
    life.says("goblet squat 22x10", at(8))
    life.edits("that was 7", "that was 8", 5, at(8))
    assert stands(life)[0] == (ROW, Decimal(60), 7)
    assert stands(life)[-1] == ("Goblet squat", Decimal(22), 10)
