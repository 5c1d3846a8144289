"""How a workout ends: by its last set, by a word, by itself, by the next one; and how it is summed up."""

import pytest

from domain.parts import Notice, Part
from tests.domain.client.people import Life, at, kinds

PULL = "row 60x9\nrdl 80x7\ncurls 14x10"
LEGS = "goblet squat 20x10\nwall sit 45s"


def summary(parts: tuple[Part, ...] | list[Part]) -> Notice:
    (found,) = [part for part in parts if isinstance(part, Notice) and part.topic == "workout done"]
    return found


def test_the_last_set_closes_and_says_what_was_beaten_and_what_to_aim_for_next() -> None:
    life = Life()
    life.says(PULL, at(2))
    life.says(LEGS, at(5))
    facts = summary(life.says("row 60x10\nrdl 80x7\ncurls 14x11", at(8))).facts
    assert facts["beaten"] == ["Seated cable row", "Hammer curl"]
    assert facts["not_beaten"] == ["Romanian deadlift"]
    assert (facts["untold"], facts["next"], facts["on"]) == ([], "Legs", "2026-03-11")
    aims = {aim["exercise"]: aim["reps"] or aim["seconds"] for aim in facts["aims"]}
    assert aims == {"Goblet squat": 11, "Wall sit": 50}


@pytest.mark.parametrize(
    "text",
    [
        *("that's it", "That's it for today!", "that's all", "done for today", "I'm done", "all done"),
        *("finished for today", "calling it a day", "workout done", "ok, I'm finished", "that was all"),
    ],
)
def test_the_clients_word_closes_a_workout(text: str) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    facts = summary(life.says(text, at(2, 19))).facts
    assert life.workout_state == "done"
    assert facts["untold"] == ["Romanian deadlift", "Hammer curl"]
    assert (facts["next"], facts["on"]) == ("Legs", "2026-03-05")
    assert life.passes_to(at(5, 7)) == []


def test_what_is_still_asked_about_is_not_called_untold() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("rdl 80", at(2))  # how many reps?
    facts = summary(life.says("done for today", at(2, 19))).facts
    assert facts["untold"] == ["Hammer curl"]
    said = life.says("7", at(2, 19, 1))
    assert kinds(said) == ["verdict", "target"]
    assert "Done for today" not in [getattr(each, "text", "") for each in life.outcome.says[0].buttons]


def test_the_word_closes_at_the_end_of_a_message_with_sets() -> None:
    life = Life()
    assert kinds(life.says("row 60x9, that's it for today", at(2))) == ["verdict", "target", "workout done"]
    assert life.workout_state == "done"


@pytest.mark.parametrize(
    "text",
    [
        *("no time for the rest", "had no time for more", "didn't do the rest", "couldn't manage the rest"),
        *(
            "skipping the rest",
            "rest left out",
            "that's all I managed today",
            "tired, no energy for the rest",
        ),
        *("that was the whole of it, no time for the rest", "row 60x9, no time for the rest"),
    ],
)
def test_who_says_that_the_rest_is_left_out_is_not_asked_for_it(text: str) -> None:
    life = Life()
    life.says("rdl 80x7", at(2))
    facts = summary(life.says(text, at(2, 19))).facts
    assert life.workout_state == "done"
    assert facts["rest_told"]
    assert "Hammer curl" in facts["untold"]


@pytest.mark.parametrize("text", ["the rest tomorrow", "no time for the rest today, tomorrow then"])
def test_who_moves_the_rest_leaves_nothing_out(text: str) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says(text, at(2, 19))
    assert life.workout_state == "open"


def test_what_was_all_there_was_to_aim_for_is_no_failure() -> None:
    life = Life()
    life.says("row 60x9\nrdl 110x8\ncurls 14x10", at(2))
    life.says(LEGS, at(5))
    facts = summary(life.says("row 60x10\nrdl 115x6\ncurls 14x9", at(8))).facts
    assert (facts["beaten"], facts["as_aimed"], facts["not_beaten"]) == (
        ["Seated cable row"],
        ["Romanian deadlift"],
        ["Hammer curl"],
    )


@pytest.mark.parametrize("text", ["done", "that's it for the rows", "row 60x9 done", "done with rows"])
def test_a_word_that_can_be_of_one_exercise_closes_nothing(text: str) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says(text, at(2, 19))
    assert life.workout_state == "open"


@pytest.mark.parametrize("text", ["done", "all done", "Finished!"])
def test_once_it_is_closed_such_a_word_is_answered_with_what_is_next(text: str) -> None:
    life = Life()
    life.says("row 60x9, rdl 110x8, curls 14x10", at(2))
    assert life.workout_state == "done"
    assert kinds(life.says(text, at(2, 19))) == ["missed noted"]


def test_nothing_begun_is_closed_by_no_word() -> None:
    life = Life()
    assert kinds(life.says("that's it for today", at(2, 9))) == ["which sets then"]
    assert life.state.workouts == ()


def test_what_is_sent_after_the_word_still_counts_for_the_day() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("that's it for today", at(2, 19))
    life.says("oh, and curls 14x10", at(2, 20))
    (workout,) = life.state.workouts
    assert {entry.workout for entry in life.state.entries} == {workout.number}


def test_the_next_workout_closes_the_one_before_and_sums_it_up() -> None:
    life = Life()
    life.says("row 60x9\nrdl 80x7", at(2))
    said = life.says("goblet squat 20x10", at(3))
    assert summary(said).facts["closed_of"] == "2026-03-02"
    assert summary(said).facts["untold"] == ["Hammer curl"]


def test_what_was_set_aside_or_taken_back_is_not_summed_up() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("undo", at(2))
    assert life.passes_to(at(4, 9)) == []


def test_the_end_of_a_workout_that_has_closed_says_what_comes_next() -> None:
    life = Life()
    life.says("row 60x9, rdl 80x7, curls 14x10", at(2))
    assert kinds(life.says("all done", at(2))) == ["missed noted"]
    assert kinds(life.says("all done", at(3))) == ["missed noted"]
