"""Leaving out, moving, pausing, asking, looking things up, and settings in plain words."""

from datetime import date, time

import pytest

from domain.incoming import Told
from domain.parts import AlertPart, Notice, Plan
from tests.domain.client.people import MARA, Life, at, kinds


def test_an_exercise_is_left_out_this_time_only() -> None:
    life = Life()
    assert kinds(life.says("skip hammer curl today", at(2))) == ["left out"]
    life.says("60 x 9\n80 x 7", at(2))
    assert life.workout_state == "done"
    life.says("20 x 10\n45 s", at(5))
    plan = next(part for part in life.passes_to(at(8, 8)) if isinstance(part, Plan))
    assert "Hammer curl" in [line.exercise for line in plan.lines]


def test_cant_today_moves_the_workout_to_tomorrow_and_loses_nothing() -> None:
    life = Life()
    assert kinds(life.says("can't make it today", at(2, 9))) == ["moved"]
    assert life.passes_to(at(3, 7, 59)) == []
    assert kinds(life.passes_to(at(3, 8))) == ["reminder", "plan"]


def test_a_workout_moves_to_the_day_said() -> None:
    life = Life()
    life.says("moving today to Thursday", at(2, 9))
    assert kinds(life.passes_to(at(5, 8))) == ["reminder", "plan"]


def test_a_pause_ends_on_its_day() -> None:
    life = Life()
    assert kinds(life.says("away till the 14th", at(2, 9))) == ["paused"]
    assert life.passes_to(at(14, 7, 59)) == []
    assert kinds(life.passes_to(at(14, 8))) == ["reminder", "plan"]


def test_an_open_pause_ends_with_coming_back() -> None:
    life = Life()
    life.says("got the flu", at(2, 9))
    assert life.passes_to(at(25)) == []
    assert kinds(life.says("I'm back", at(25, 7))) == ["back"]
    assert kinds(life.passes_to(at(25, 8))) == ["reminder", "plan"]


def test_no_reminders_once_they_are_stopped() -> None:
    life = Life()
    assert kinds(life.says("stop messaging me", at(2, 7))) == ["reminders off"]
    assert life.passes_to(at(30)) == []
    life.says("start reminders", at(30))
    assert life.wake_at is not None


def test_a_question_goes_to_the_coach_with_the_last_sets_and_is_settled_by_the_answer() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    assert kinds(life.says("can you check my form on the rows?", at(2))) == ["passed on"]
    (alert,) = [part for part in life.to_coach if isinstance(part, AlertPart)]
    assert alert.reason == "question"
    assert alert.evidence["last"][0]["reps"] == 9
    assert kinds(life.hears(Told(coach=MARA.number, text="Send it."), at(3))) == ["from coach"]
    assert life.state.alerts == ()


def test_the_plan_and_the_history_are_shown() -> None:
    life = Life()
    assert kinds(life.says("what's today's plan?", at(2, 9))) == ["plan"]
    life.says("60 x 9", at(2))
    assert kinds(life.says("show me my history on the seated cable row", at(2))) == ["history"]


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("remind me at 7", "hour kept"),
        ("Remind me at 18:30, please", "hour kept"),
        ("remind me at 25", "no such hour"),
        ("remind me in the evenings", "hour kept"),
        ("I'd like to finish up with this", "which stop"),
        ("please remind me before work", "hour kept"),
        ("I use pounds", "unit kept"),
        ("I count in lb", "unit kept"),
        ("change my unit to pounds", "unit kept"),
        ("switch to lb please", "unit kept"),
        ("I'm in Lisbon now", "zone kept"),
        ("my zone is America/Chicago", "zone kept"),
        ("I weigh 72.5 kg", "body mass kept"),
        ("I weigh 999", "body mass unlikely"),
    ],
)
def test_settings_change_in_plain_words(text: str, topic: str) -> None:
    assert kinds(Life().says(text, at(2, 9))) == [topic]


@pytest.mark.parametrize(
    ("text", "topics"),
    [
        ("can you remind me at 7?", ["hour kept"]),
        ("remind me at 7 from Monday on please", ["hour kept"]),
        ("move my reminder to 18:00", ["hour kept"]),
        ("just landed in Tokyo", ["zone kept"]),
        ("home in Lisbon", ["zone kept"]),
        ("home again in Lisbon", ["zone kept"]),
        ("I work nights this week, remind me at 22:30", ["hour kept"]),
        ("new job, so please remind me at 7 in the evening from now on", ["hour kept"]),
        ("hi, I use pounds and I'm in Denver now", ["unit kept", "zone kept"]),
        ("I'm in Auckland, remind me at 6", ["zone kept", "hour kept"]),
        ("I'm in Tokyo now, what's next?", ["zone kept", "plan"]),
        ("I'm in Tokyo now. Can't make it today", ["zone kept", "moved"]),
        ("row 60x9. Remind me at 7", ["hour kept", "verdict", "target"]),
        ("I'm in Denver, row 60x9", ["zone kept", "verdict", "target"]),
        ("I'm in Lisbon, Portugal", ["zone kept"]),  # a place with a comma is one thing
        ("row 60x9, in kg", ["verdict", "target"]),  # a unit beside sets is theirs
        ("I'm in pain, remind me at 7", ["safety"]),  # what hurts goes before all else
    ],
)
def test_settings_beside_other_things_count_and_so_do_those(text: str, topics: list[str]) -> None:
    assert kinds(Life().says(text, at(2, 9))) == topics


def test_a_changed_hour_and_zone_move_the_reminder() -> None:
    life = Life()
    life.says("I'm in New York", at(2, 7))
    assert life.state.client.zone == "America/New_York"
    life.says("remind me at 6:30", at(2, 7))
    assert life.state.client.remind_at == time(6, 30)
    assert life.passes_to(at(2, 12, 29)) == []
    said = life.passes_to(at(2, 13))
    assert kinds(said) == ["reminder", "plan"]
    assert getattr(said[0], "on", None) == date(2026, 3, 2)


@pytest.mark.parametrize(
    ("text", "hour", "on"),
    [
        ("I'm in Lisbon", 7, None),
        ("just landed in Honolulu", 7, "2026-03-01"),
        ("back home in Auckland", 7, None),
        ("back home in Auckland", 22, "2026-03-03"),
    ],
)
def test_a_zone_in_which_it_is_another_day_is_said_with_the_day(text: str, hour: int, on: str | None) -> None:
    kept = Life().says(text, at(2, hour))[0]
    assert isinstance(kept, Notice)
    assert kept.facts["on"] == on


def test_thanks_get_no_lecture() -> None:
    assert kinds(Life().says("thanks!", at(2, 9))) == ["thanked"]


@pytest.mark.parametrize(
    "change",
    ["can't make it today", "move it to Thursday", "away till the 14th", "got the flu", "stop messaging me"],
)
def test_undo_takes_a_change_of_plans_back(change: str) -> None:
    life = Life()
    life.says(change, at(2, 7))
    assert kinds(life.says("undo", at(2, 7))) == ["plans as before"]
    assert kinds(life.passes_to(at(2, 8))) == ["reminder", "plan"]


def test_a_change_of_plans_taken_back_days_later_is_no_workout_missed_since() -> None:
    life = Life()
    life.says("move it to Friday", at(2, 12))
    assert kinds(life.says("undo", at(5, 0))) == ["plans as before"]
    assert kinds(life.passes_to(at(5, 23))) == ["reminder", "plan", "nudge"]
    assert life.state.workouts == ()


def test_undo_takes_back_whichever_came_last() -> None:
    life = Life()
    life.says("move it to Thursday", at(2, 7))
    life.says("row 60x9", at(2, 9))
    assert kinds(life.says("undo", at(2, 9))) == ["taken back"]


def test_the_first_words_after_the_coach_wrote_go_to_the_coach_once() -> None:
    life = Life()
    life.hears(Told(coach=MARA.number, text="How is the elbow?"), at(2, 9))
    life.says("row 60x9", at(2, 10))
    assert kinds(life.says("fine", at(2, 11))) == ["passed on"]
    assert kinds(life.to_coach) == ["client answers"]
    assert kinds(life.says("thanks", at(2, 11))) == ["thanked"]


def test_days_later_nothing_is_an_answer_to_the_coach_any_more() -> None:
    life = Life()
    life.hears(Told(coach=MARA.number, text="Well done."), at(2, 9))
    assert kinds(life.says("thanks", at(6, 10))) == ["thanked"]


def test_words_of_being_back_from_somewhere_count_only_for_who_was_away() -> None:
    life = Life()
    assert kinds(life.says("I'm back from holiday", at(2, 7))) == ["nothing recorded"]
    life.says("got the flu", at(2, 7))
    assert kinds(life.says("Hi, I'm back from holiday!", at(9, 7))) == ["back"]
