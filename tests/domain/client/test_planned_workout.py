"""A workout wanted on a day by its name, and days that can be meant in two ways."""

from datetime import date

import pytest

from domain.parts import Notice, Part, Reminder
from tests.domain.client.people import Life, at, kinds, noor

THREE = """\
Harbour Base
Train every 3 days in turn: Pull, Push, Legs

Pull
1. Seated cable row, 8-10 reps
2. Hammer curl, 8-12 reps

Push
1. Bench press, 5-8 reps

Legs
1. Goblet squat, 8-12 reps
"""
WEEK = THREE.replace(
    "Train every 3 days in turn: Pull, Push, Legs", "Train on Monday: Pull, Wednesday: Push, Saturday: Legs"
)


def notice(parts: tuple[Part, ...]) -> Notice:
    """Return the one notice that is said."""
    (said,) = (part for part in parts if isinstance(part, Notice))
    return said


def under_way() -> Life:
    """Return the life of somebody in the middle of Pull, with Push to come on Thursday and Legs on Sunday."""
    life = Life(noor(THREE))
    life.says("row 60x9", at(2))
    return life


@pytest.mark.parametrize(
    "text",
    [
        "I want to do push on Friday",
        "push on friday",
        "can we do push friday?",
        "move push to the 6th",
        "push day fri",
    ],
)
def test_the_next_workout_moves_by_its_name_and_the_one_under_way_stays(text: str) -> None:
    life = under_way()
    said = notice(life.says(text, at(2, 18, 5)))
    assert (said.topic, said.facts["workout"], said.facts["on"]) == ("moved", "Push", "2026-03-06")
    assert life.state.memory.rest_on is None


@pytest.mark.parametrize(
    "text",
    ["I want to do legs on Friday", "legs on friday", "can we do legs friday?", "do legs on Friday please"],
)
def test_what_is_not_in_turn_is_said_to_come_later_and_can_be_put_first(text: str) -> None:
    life = under_way()
    said = notice(life.says(text, at(2, 18, 5)))
    assert said.topic == "comes later"
    assert (said.facts["first"], said.facts["first_on"]) == ("Push", "2026-03-05")
    assert (said.facts["workout"], said.facts["on"]) == ("Legs", "2026-03-08")
    assert (life.state.memory.moved_to, life.state.memory.rest_on) == (None, None)
    moved = notice(life.presses("Legs on Friday 6 March first", at(2, 18, 6)))
    assert (moved.topic, moved.facts["workout"], moved.facts["next"]) == ("moved", "Legs", "Push")
    life.says("undo", at(2, 18, 7))
    assert life.state.memory.moved_to is None


@pytest.mark.parametrize(
    ("text", "as_said"),
    [("I want to do legs on Friday", False), ("legs on Thursday", False), ("legs on Saturday", True)],
)
def test_in_a_week_with_its_own_workouts_it_is_said_when_the_named_one_comes(
    text: str, as_said: bool
) -> None:
    life = Life(noor(WEEK))
    said = notice(life.says(text, at(2, 9)))
    assert (said.topic, said.facts["workout"], said.facts["on"]) == ("comes later", "Legs", "2026-03-07")
    assert (said.facts["first"], said.facts["as_said"]) == ("Pull", as_said)
    assert life.state.memory.moved_to is None


def test_in_a_week_with_its_own_workouts_two_change_places() -> None:
    life = Life(noor(WEEK))
    life.says("row 60x9, curls 14x10", at(2, 9))
    said = notice(life.says("legs on Wednesday", at(3, 9)))
    assert (said.topic, said.facts["workout"], said.facts["on"]) == ("moved", "Legs", "2026-03-04")
    assert (said.facts["next"], said.facts["next_on"]) == ("Push", "2026-03-07")
    plan = [part.workout for part in life.passes_to(at(4, 20)) if isinstance(part, Reminder)]
    life.says("goblet squat 20x10", at(4, 20))
    plan += [part.workout for part in life.passes_to(at(9, 20)) if isinstance(part, Reminder)]
    assert plan == ["Legs", "Push", "Pull"]
    again = Life(noor(WEEK))
    again.says("row 60x9, curls 14x10", at(2, 9))
    again.says("legs on Wednesday", at(3, 9))
    again.says("undo", at(3, 9))
    assert (again.state.memory.moved_to, again.state.memory.swapped) == (None, None)


@pytest.mark.parametrize("text", ["legs today", "Legs tonight!", "leg day today"])
def test_a_workout_is_had_today_by_its_name_and_the_day(text: str) -> None:
    parts = Life(noor(WEEK)).says(text, at(3, 9))
    assert kinds(parts) == ["out of turn", "plan"]


def test_a_question_after_a_day_moves_nothing() -> None:
    life = under_way()
    assert kinds(life.says("push on friday?", at(2, 18, 5))) == ["next day"]
    assert life.state.memory.moved_to is None


@pytest.mark.parametrize("text", ["legs were sore on friday", "pull on friday"])
def test_other_words_with_a_workout_and_a_day_move_nothing(text: str) -> None:
    life = under_way()
    life.says(text, at(2, 18, 5))
    assert (life.state.memory.moved_to, life.state.memory.rest_on) == (None, None)


@pytest.mark.parametrize(("label", "day"), [("Friday 6 March", 6), ("Friday 13 March", 13)])
def test_both_days_that_next_friday_can_be_are_offered(label: str, day: int) -> None:
    life = Life()
    assert kinds(life.says("move it to next Friday", at(2, 9))) == ["question"]
    life.presses(label, at(2, 9))
    assert life.state.memory.moved_to == date(2026, 3, day)
    away = Life()
    assert kinds(away.says("away till next friday", at(2, 9))) == ["question"]
    away.presses(label, at(2, 9))
    assert away.state.memory.paused_until == date(2026, 3, day)


def test_the_day_asked_about_is_that_of_the_workout_named() -> None:
    life = under_way()
    assert kinds(life.says("push next friday", at(2, 18, 5))) == ["question"]
    said = notice(life.presses("Friday 13 March", at(2, 18, 6)))
    assert (said.topic, said.facts["workout"], said.facts["on"]) == ("moved", "Push", "2026-03-13")


def test_sets_of_a_workout_moved_to_today_begin_it_though_another_is_under_way() -> None:
    life = Life()
    life.says("curl 12x10", at(2))
    assert kinds(life.says("can I do legs instead today?", at(2, 18, 5))) == ["moved"]
    life.says("goblet 20x12", at(2, 18, 20))
    life.says("wall sit 65 s", at(2, 18, 22))
    assert [(each.name, each.state) for each in life.state.workouts] == [("Pull", "done"), ("Legs", "done")]
    assert [each.workout for each in life.state.entries] == [1, 2, 2]
    assert "nudge" not in kinds(life.passes_to(at(4, 23)))


@pytest.mark.parametrize("text", ["next", "Next one", "next?", "what's next"])
def test_next_alone_shows_what_is_to_be_done(text: str) -> None:
    assert kinds(Life().says(text, at(2, 9))) == ["plan"]


IN_WEEKS = [
    ("friday in a week", 13),
    ("a week on friday", 13),
    ("friday week", 13),
    ("a week from friday", 13),
    ("the friday after next", 13),
    ("Friday in 2 weeks", 20),
    ("two weeks from monday", 16),
    ("not this friday, the one after", 13),
    ("a week tomorrow", 10),
    ("friday next week", 13),
    ("Friday 20 March", 20),
    ("friday", 6),
]


@pytest.mark.parametrize(("said", "day"), IN_WEEKS)
def test_a_day_in_some_weeks_is_the_one_meant(said: str, day: int) -> None:
    life = Life()
    life.says(f"move it to {said}", at(2, 9))
    assert life.state.memory.moved_to == date(2026, 3, day)


@pytest.mark.parametrize(
    ("said", "day"), [("friday in a week", 13), ("tuesday week", 10), ("Friday 20 March", 20)]
)
def test_a_pause_ends_on_the_day_meant(said: str, day: int) -> None:
    life = Life()
    life.says(f"away till {said}", at(2, 9))
    assert life.state.memory.paused_until == date(2026, 3, day)


def test_a_day_named_while_ill_is_offered_for_the_return() -> None:
    life = Life()
    life.says("got the flu", at(2, 9))
    assert kinds(life.says("still weak, maybe tuesday", at(4, 9))) == ["still ill"]
    assert life.state.memory.paused_until is None
    assert kinds(life.presses("Back on Tuesday 10 March", at(4, 9))) == ["paused"]
    assert life.state.memory.paused_until == date(2026, 3, 10)
