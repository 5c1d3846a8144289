"""What is said of the days to come: when, the week, and whether one may train early."""

from datetime import date

import pytest

from domain.parts import Notice, Reminder
from tests.domain.client.people import Life, at, kinds, noor
from tests.domain.client.test_days import BY_DAY, LEGS, PULL


def answer(life: Life, text: str, day: int, hour: int = 9) -> Notice:
    parts = life.says(text, at(day, hour))
    assert len(parts) == 1
    assert isinstance(parts[0], Notice)
    return parts[0]


@pytest.mark.parametrize(
    "text",
    [
        *("when?", "when do I train next?", "When's my next workout", "how many days until I train?"),
        *("do I train today?", "is it a rest day today?", "what day is my next session?", "next workout?"),
    ],
)
def test_when_is_answered_with_the_day_alone(text: str) -> None:
    life = Life()
    life.says(PULL, at(2))
    said = answer(life, text, 3)
    assert (said.topic, said.facts["workout"], said.facts["days"]) == ("next day", "Legs", 2)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("plan for next week", [("Legs", "11"), ("Pull", "14")]),
        ("what's the plan for next week?", [("Legs", "11"), ("Pull", "14")]),
        ("what does my week look like?", [("Legs", "05"), ("Pull", "08")]),
        ("this week", [("Legs", "05"), ("Pull", "08")]),
        ("which days do I train next week?", [("Legs", "11"), ("Pull", "14")]),
    ],
)
def test_a_plan_ahead_has_the_workouts_in_turn_on_their_days(text: str, days: list[tuple[str, str]]) -> None:
    life = Life()
    life.says(PULL, at(2))
    before = life.state
    said = answer(life, text, 3)
    assert [(each["workout"], each["on"][-2:]) for each in said.facts["days"]] == days
    assert life.state.workouts == before.workouts


def test_a_plan_ahead_knows_of_what_was_moved() -> None:
    life = Life(noor(BY_DAY))
    life.says("move it to Wednesday", at(2, 7))
    said = answer(life, "this week", 2)
    assert [(each["workout"], each["on"][-2:]) for each in said.facts["days"]] == [
        ("Push", "04"),
        ("Pull", "06"),
        ("Legs", "08"),
    ]


@pytest.mark.parametrize(
    "text",
    [
        "train early?",
        "can I train today?",
        "I want to train today",
        "may I train a day early",
        "bored can i train today",
        "ok, can I train today?",
        "free all day, could I train today?",
    ],
)
def test_too_early_the_coach_s_rest_is_said_and_the_client_decides(text: str) -> None:
    life = Life()
    life.says(PULL, at(2))
    said = answer(life, text, 4)
    assert (said.topic, said.facts["coach"], said.facts["rest_days"]) == ("early", "Mara", 2)
    assert said.facts["rest_until"] == "2026-03-05"
    assert kinds(life.presses("Move it to today", at(4, 10))) == ["moved", "plan"]
    life.says(LEGS, at(4, 18))
    assert [(kept.what.rule, kept.what.workout) for kept in life.state.memory.eager] == [("too soon", "Legs")]


def test_who_waits_keeps_the_day() -> None:
    life = Life()
    life.says(PULL, at(2))
    answer(life, "can I train tomorrow?", 3)
    assert kinds(life.presses("I'll wait", at(3, 10))) == ["missed noted"]
    assert life.passes_to(at(5, 7)) == []


def test_whoever_asks_for_the_next_one_with_one_half_done_moves_the_next_one() -> None:
    life = Life()
    life.says("row 60x9", at(2, 18))
    assert answer(life, "can I train tomorrow already?", 2, 19).facts["workout"] == "Legs"
    assert kinds(life.presses("Move Legs to Tuesday", at(2, 20))) == ["moved"]
    assert (life.state.memory.moved_workout, life.state.memory.rest_on) == ("Legs", None)
    assert life.workout_state == "open"


def test_whoever_asks_for_a_later_day_on_a_training_day_has_the_workout_then() -> None:
    life = Life()
    assert kinds(life.says("can I train on Wednesday?", at(2, 9))) == ["moved"]
    assert [part.on for part in life.passes_to(at(4, 9)) if isinstance(part, Reminder)] == [date(2026, 3, 4)]


def test_on_the_day_itself_training_early_is_just_training() -> None:
    assert kinds(Life().says("can I train today?", at(2, 7))) == ["plan"]


@pytest.mark.parametrize("text", ["when", "this week", "can I train today?"])
def test_in_a_pause_it_is_said_that_it_is_one(text: str) -> None:
    life = Life()
    life.says("got the flu", at(2, 7))
    assert kinds(life.says(text, at(3))) == ["no workout planned"]


@pytest.mark.parametrize(
    "text",
    [
        "when should I add load on the rows?",
        "next week I'm away",
        "train hard",
        "go today",
        "the week was hard",
    ],
)
def test_what_is_something_else_is_not_taken_for_a_question_of_days(text: str) -> None:
    topics = kinds(Life().says(text, at(2, 9)))
    assert {"next day", "days ahead", "early"}.isdisjoint(topics)


def test_what_was_left_when_it_was_ended_can_still_be_told_the_day_after() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("that's it for today", at(2, 19))
    assert "more than asked" not in kinds(life.says("curls 14x10", at(3)))
    assert len(life.state.workouts) == 1
