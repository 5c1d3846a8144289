"""A client's own word for an exercise is learnt once, and never a word that means something else."""

import pytest

from domain.client.own_names import can_be_learnt
from tests.domain.client.people import Life, at, noor

TWO_ROWS = """\
Rows
Train every 2 days in turn: A

A
1. Seated cable row, 2 sets of 8-10 reps
2. Barbell row, 2 sets of 8-10 reps
3. Hammer curl, 3 sets of 8-12 reps
"""


def done(life: Life) -> list[str]:
    return [entry.set.exercise for entry in life.state.entries]


def test_the_word_that_was_asked_about_is_not_asked_about_again() -> None:
    life = Life(noor(TWO_ROWS))
    life.says("rows 60x9", at(2))
    life.says("barbell row", at(2))
    life.says("rows 60x8", at(2))
    assert done(life) == ["Barbell row", "Barbell row"]


def test_a_word_for_the_wrong_exercise_that_was_put_right_is_known_from_then_on() -> None:
    life = Life(noor(TWO_ROWS))
    life.says("rows 60x9", at(2))
    life.says("seated", at(2))
    assert life.state.client.own_names == {"rows": "Seated cable row"}
    life.says("rows 50x9", at(4))
    life.says("I meant the barbell row", at(4))
    assert life.state.client.own_names == {"rows": "Barbell row"}
    life.says("rows 52.5x9", at(6))
    assert done(life)[1:] == ["Barbell row", "Barbell row"]


def test_what_was_said_by_mistake_is_put_right_and_not_learnt() -> None:
    life = Life()
    life.says("curls 14x10", at(2))
    life.says("that was rdl", at(2))
    assert done(life) == ["Romanian deadlift"]
    assert not life.state.client.own_names
    life.says("curls 14x10", at(2))
    assert done(life)[-1] == "Hammer curl"


@pytest.mark.parametrize(
    ("word", "exercise", "learnt"),
    [
        ("rows", "Barbell row", True),
        ("the grinder", "Seated cable row", True),
        ("flappers", "Dumbbell lateral raise", True),
        ("press", "Bench press", True),
        ("rows", "Hammer curl", False),
        ("rwos", "Hammer curl", False),
        ("rdl", "Barbell row", False),
        ("bench press", "Incline press", False),
        ("60", "Barbell row", False),
        ("sixty", "Barbell row", False),
        ("machine 4", "Barbell row", False),
        ("that one", "Barbell row", False),
        ("the last thing", "Barbell row", False),
        ("today", "Barbell row", False),
        ("ab", "Barbell row", False),
        ("", "Barbell row", False),
    ],
)
def test_which_words_are_learnt(word: str, exercise: str, learnt: bool) -> None:
    assert can_be_learnt(word, exercise) == learnt
