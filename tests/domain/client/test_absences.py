"""Pauses that begin on a day to come, and those that come to nothing; a whole workout of a day gone by."""

import copy
from datetime import date
from functools import cache

import pytest

from domain.parts import Notice, Plan, Reminder
from domain.staying_words import stays
from tests.domain.client.people import Life, at, kinds, noor

BY_DAY = """\
Days
Train Monday: Push, Wednesday: Pull, Friday: Legs

Push
1. Chest press, 8-12 reps

Pull
1. Seated cable row, 8-12 reps

Legs
1. Leg press, 8-12 reps
"""


@cache
def begun() -> Life:
    """Noor after one round, on the evening of a day on which the next workout is due."""
    life = Life()
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(2))
    life.says("squat 20x10, wall sit 30 kg 40 s", at(5))
    life.passes_to(at(8, 9))
    return life


def reminders(life: Life, until: int) -> list[date]:
    return [part.on for part in life.passes_to(at(until)) if isinstance(part, Reminder)]


def test_until_a_pause_to_come_all_goes_on_and_the_next_workout_waits_for_the_return() -> None:
    life = copy.copy(begun())
    (part,) = life.says("on holiday from Wednesday for a week", at(8))
    assert isinstance(part, Notice)
    assert part.facts == {
        "since": "2026-03-11",
        "until": "2026-03-18",
        "workout": "Pull",
        "on": "2026-03-08",
    }
    said = life.says("row 60x10, rdl 90x8, curls 14x11", at(8, 19))
    assert kinds(said)[-1] == "workout done"
    assert (life.state.memory.paused, life.state.memory.pause_ahead is not None) == (False, True)
    assert reminders(life, 21)[:1] == [date(2026, 3, 18)]


def test_what_was_not_trained_before_the_pause_comes_after_it_and_nobody_asks_meanwhile() -> None:
    life = copy.copy(begun())
    life.says("away from Monday till the 16th", at(8))
    assert kinds(life.passes_to(at(16, 7))) == ["nudge"]
    assert reminders(life, 16) == [date(2026, 3, 16)]


def test_a_pause_to_come_without_an_end_leaves_nothing_planned() -> None:
    life = copy.copy(begun())
    life.says("row 60x10, rdl 90x8, curls 14x11", at(8))
    life.says("going away on Tuesday", at(8, 19))
    (part,) = life.says("when is the next workout?", at(8, 20))
    assert isinstance(part, Notice)
    assert (part.topic, part.facts["since"]) == ("no workout planned", "2026-03-10")
    assert life.passes_to(at(30)) == []
    assert kinds(life.says("I'm back", at(30))) == ["back", "plan"]


def test_undo_and_being_back_take_a_pause_to_come_back() -> None:
    for words in ("undo", "never mind", "I'm back", "the trip is off"):
        life = copy.copy(begun())
        life.says("away from Wednesday for a week", at(8))
        life.says(words, at(8, 18, 5))
        assert life.state.memory.pause_ahead is None, words


@pytest.mark.parametrize(
    "text",
    [
        "never mind the holiday, it's cancelled",
        "holiday cancelled",
        "the trip is off",
        "we're not going after all",
        "trip's been called off so I can train",
        "change of plan: staying home",
        "cancel my pause",
        "I can train after all",
    ],
)
@pytest.mark.parametrize("pause", ["away till the 20th", "on holiday from Friday for a week"])
def test_a_pause_that_comes_to_nothing_is_over(pause: str, text: str) -> None:
    life = copy.copy(begun())
    life.says(pause, at(8))
    (part,) = life.says(text, at(8, 19))
    assert isinstance(part, Notice)
    assert (part.topic, part.facts["workout"]) == ("no pause", "Pull")
    assert not life.state.memory.is_away


@pytest.mark.parametrize(
    "text",
    [
        "holiday is over",
        "holiday's over, back at it",
        "the holidays are over, unfortunately. back to training",
        "finished my trip",
        "we're home, ready to train",
        "home again",
        "I can train again",
        "let's go again",
    ],
)
def test_a_pause_is_over_with_what_it_was_for(text: str) -> None:
    life = copy.copy(begun())
    life.says("away for a while", at(8))
    assert kinds(life.says(text, at(8, 19))) == ["back"]
    assert not life.state.memory.is_away


@pytest.mark.parametrize(
    "text", ["the holiday is not over yet", "is the holiday over?", "holiday is over on Friday", "again"]
)
def test_a_pause_goes_on_while_it_is_not_over(text: str) -> None:
    life = copy.copy(begun())
    life.says("away for a while", at(8))
    life.says(text, at(8, 19))
    assert life.state.memory.is_away


@pytest.mark.parametrize("text", ["holiday's over, back at it", "home again", "back to training"])
def test_that_it_is_over_can_still_be_said_once_the_pause_has_ended(text: str) -> None:
    life = copy.copy(begun())
    life.says("away till Thursday", at(8))
    assert kinds(life.says(text, at(12, 12)))[0] == "back"
    life = copy.copy(begun())
    life.says("away till Thursday", at(8))
    assert "back" not in kinds(life.says(text, at(17, 12)))


def test_an_illness_that_is_gone_ends_its_pause_whatever_is_said_beside_it() -> None:
    life = copy.copy(begun())
    life.says("got the flu", at(8))
    assert "back" in kinds(life.says("flu's gone, I feel great, what now?", at(11, 19)))


def test_training_at_home_all_the_same_takes_a_pause_back() -> None:
    life = copy.copy(begun())
    life.says("I fly home tomorrow and am back the 24th", at(8))
    life.says("never mind, I train at home as well", at(8, 19))
    assert not life.state.memory.is_away


def test_whoever_is_ill_at_home_is_not_back() -> None:
    life = copy.copy(begun())
    life.says("ill", at(8))
    assert "back" not in kinds(life.says("home", at(8, 19)))
    assert "back" in kinds(life.says("ready to train again", at(11, 19)))


def test_a_set_told_with_an_illness_is_kept_and_the_illness_heard() -> None:
    life = copy.copy(begun())
    assert kinds(life.says("ill, row 60x9", at(8)))[-2:] == ["paused", "get well"]
    assert life.state.entries[-1].set.exercise == "Seated cable row"
    assert life.state.memory.ill_on is not None


def test_away_this_week_ends_with_the_week() -> None:
    life = copy.copy(begun())
    life.says("on leave this week", at(9))
    assert (life.state.memory.paused, life.state.memory.paused_until) == (True, date(2026, 3, 16))


@pytest.mark.parametrize(
    "text",
    [
        "our holiday was great",
        "the holiday starts Friday",
        "I'm going on holiday",
        "we're staying at my sister's till Friday",
        "not going today",
    ],
)
def test_what_only_speaks_of_an_absence_takes_none_back(text: str) -> None:
    assert not stays(text)


def test_whoever_cannot_do_more_today_has_ended_the_workout_whatever_the_reason() -> None:
    life = copy.copy(begun())
    life.says("row 60x10", at(8))
    (part,) = life.says("can't do more today, kids are sick", at(8, 18, 30))
    assert isinstance(part, Notice)
    assert (part.topic, part.facts["rest_told"]) == ("workout done", True)
    assert not life.state.memory.paused


def test_a_whole_workout_of_yesterday_as_planned_is_put_down_for_yesterday() -> None:
    life = copy.copy(begun())
    life.passes_to(at(9, 9))
    said = life.says("everything as planned yesterday", at(9, 10))
    assert kinds(said) == ["verdict", "target"] * 3 + ["workout done"]
    assert {entry.set.on for entry in life.state.entries[-3:]} == {date(2026, 3, 8)}
    assert kinds(life.says("everything as planned yesterday", at(9, 11))) == ["told before"]


def test_where_it_is_not_plain_what_was_planned_it_is_asked_and_nothing_recorded() -> None:
    life = Life(noor(BY_DAY))
    life.says("chest press 50x10", at(2))
    life.says("row 50x10", at(4))
    life.says("leg press 90x10", at(6))
    (part,) = life.says("everything as planned yesterday", at(8))
    assert isinstance(part, Notice)
    assert (part.topic, part.facts) == ("which sets then", {"on": "2026-03-07"})
    assert len(life.state.entries) == 3
    assert kinds(life.says("will do everything as planned tomorrow", at(8, 19))) == ["nothing recorded"]


def test_the_plan_of_the_return_is_shown_during_the_pause() -> None:
    life = copy.copy(begun())
    life.says("away from Monday till the 16th", at(8))
    (plan,) = life.says("what's next?", at(10))
    assert isinstance(plan, Plan)
    assert (plan.workout, plan.on) == ("Pull", date(2026, 3, 16))
