"""What is answered to a reminder in a word or two."""

import copy
from datetime import date
from functools import cache

import pytest

from domain.incoming import Told
from domain.parts import Notice
from tests.domain.client.people import MARA, Life, at, kinds


@cache
def reminded() -> Life:
    """Noor, who was reminded of the first workout on Monday 2 March at eight."""
    life = Life()
    life.passes_to(at(2, 9))
    return life


@pytest.mark.parametrize(
    ("said", "on"),
    [
        ("tomorrow", 3),
        ("tomorrow morning", 3),
        ("busy today, tomorrow?", 3),
        ("sorry, tomorrow then", 3),
        ("thursday", 5),
        ("maybe on Thursday", 5),
        ("actually tomorrow", 3),
        ("the day after tomorrow", 4),
    ],
)
def test_a_day_is_the_one_on_which_the_workout_is_to_be(said: str, on: int) -> None:
    (moved,) = copy.copy(reminded()).says(said, at(2, 9))
    assert isinstance(moved, Notice)
    assert (moved.topic, moved.facts["on"]) == ("moved", date(2026, 3, on).isoformat())


@pytest.mark.parametrize(
    "said", ["in the gym now", "just arrived", "ready!", "let's go", "today?", "on my way"]
)
def test_who_is_there_gets_the_plan(said: str) -> None:
    assert kinds(copy.copy(reminded()).says(said, at(2, 9))) == ["plan"]


@pytest.mark.parametrize(
    "said", ["thursday was great", "tomorrow is my birthday", "hello there", "here we are at the sea"]
)
def test_what_says_more_is_no_such_answer(said: str) -> None:
    assert kinds(copy.copy(reminded()).says(said, at(2, 9)))[0] in {"nothing recorded", "heard"}


def test_an_hour_that_is_past_is_only_heard() -> None:
    assert kinds(copy.copy(reminded()).says("after work", at(2, 19))) == ["heard"]


def test_on_a_rest_day_the_next_one_is_told() -> None:
    life = copy.copy(reminded())
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(2))
    assert kinds(life.says("tomorrow", at(3))) == ["next day"]
    assert kinds(life.says("tonight", at(3))) == ["next day"]


def test_to_the_coach_who_has_just_asked_it_is_an_answer() -> None:
    life = copy.copy(reminded())
    life.hears(Told(coach=MARA.number, text="When do you train?"), at(2, 10))
    life.says("tomorrow", at(2, 10, 5))
    assert life.to_coach
    assert life.state.memory.moved_to is None


def test_asked_what_became_of_yesterday_an_hour_is_today_and_a_day_is_that_one() -> None:
    life = copy.copy(reminded())
    life.passes_to(at(3, 9))
    assert kinds(life.says("I'll do it after school", at(3, 9))) == ["moved", "again later"]
    life = copy.copy(reminded())
    life.passes_to(at(3, 9))
    (moved,) = life.says("thursday", at(3, 9))
    assert isinstance(moved, Notice)
    assert (moved.topic, moved.facts["on"]) == ("moved", "2026-03-05")


def test_a_day_right_after_a_move_is_meant_instead() -> None:
    life = copy.copy(reminded())
    life.says("not today, slept 2 hours", at(2, 12))
    (moved,) = life.says("thursday", at(2, 12, 1))
    assert isinstance(moved, Notice)
    assert (moved.topic, moved.facts["on"]) == ("moved", "2026-03-05")
    assert kinds(life.says("sunday", at(3, 12))) == ["next day"]
