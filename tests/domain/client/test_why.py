"""A client's "why?": the reasons of what was told, reckoned anew; what else is asked goes to the coach."""

from collections.abc import Sequence
from datetime import timedelta

import pytest

from domain.explanation import Explanation
from domain.incoming import Told, WhyWanted
from domain.parts import Notice, Part
from domain.target import Target
from domain.values import value_of
from tests.domain.client.people import MARA, Life, at, kinds, noor

SHEET = """\
Harbour Why
Train every 3 days in turn: Push, Pull

Push
1. Bench press, 6-8 reps
2. Goblet squat, 2 sets of 8-12 reps

Pull
1. Bench press, 10-12 reps
2. Seated cable row, 8-10 reps
"""


def explanations(parts: Sequence[Part]) -> list[Explanation]:
    """Return the explanations in an answer."""
    return [
        value_of(Explanation, part.facts["explanation"])
        for part in parts
        if isinstance(part, Notice) and part.topic == "why"
    ]


def told_of(parts: Sequence[Part]) -> list[tuple[str, str | None, str | None]]:
    """Return of each explanation the exercise, the rule of the verdict and that of the target."""
    return [
        (
            each.exercise,
            each.verdict.reason.rule if each.verdict else None,
            each.aimed.target.reason.rule if each.aimed else None,
        )
        for each in explanations(parts)
    ]


def two_days() -> Life:
    """Return a life with two workouts told of; on the first, bench and squat, two days later the others."""
    life = Life(noor(SHEET))
    life.says("bench 77.5x9, goblet squat 20: 10, 9", at(2))
    life.says("bench 60x10, rows 50x9", at(5))
    return life


BENCH = ("Bench press", "by estimated 1RM", "add load")


@pytest.mark.parametrize(
    "text",
    ["why?", "how come level?", "why 82.5?", "why not more", "why 82.5 and not 85?", "what's that based on"],
)
def test_the_last_verdict_and_target_are_explained_and_nothing_is_changed(text: str) -> None:
    life = two_days()
    life.says("bench 80x8", at(8))
    before = life.state.entries
    parts = life.says(text, at(8, 18, 2))
    assert told_of(parts) == [BENCH]
    assert life.state.entries == before
    assert life.to_coach == ()


def test_all_exercises_of_the_last_message_are_explained() -> None:
    life = two_days()
    parts = life.says("why?", at(5, 18, 5))
    assert told_of(parts) == [
        ("Bench press", "first of its kind", "one more"),
        ("Seated cable row", "first of its kind", "one more"),
    ]


def test_an_exercise_named_is_explained_where_it_was_done_last() -> None:
    """In the workout of that day: the same exercise in another workout is another kind."""
    life = two_days()
    (one,) = explanations(life.says("why is bench 60?", at(6)))
    assert one.aimed is not None
    assert isinstance(one.aimed.target, Target)
    assert one.aimed.when == "next time"
    assert one.aimed.target.load == 60


def test_a_number_finds_what_it_was_told_of() -> None:
    life = two_days()
    assert [each.exercise for each in explanations(life.says("why 20?", at(6)))] == ["Goblet squat"]
    assert life.alert_reasons == []


def test_a_number_that_was_never_told_is_a_question_to_the_coach() -> None:
    life = two_days()
    assert kinds(life.says("why 3x45?", at(6))) == ["passed on"]
    assert life.alert_reasons == ["question"]


def test_before_training_the_plan_is_explained() -> None:
    life = two_days()
    life.passes_to(at(8, 9))
    (bench,) = explanations(life.says("why 80?", at(8, 9)))
    assert (bench.exercise, bench.verdict) == ("Bench press", None)
    assert bench.aimed is not None
    assert (bench.aimed.when, bench.aimed.target.reason.rule) == ("this time", "add load")
    assert [each.exercise for each in explanations(life.says("why?", at(8, 10)))] == [
        "Bench press",
        "Goblet squat",
    ]


def test_between_sets_the_next_set_is_explained() -> None:
    life = two_days()
    parts = life.says("goblet squat 20x10, why not more?", at(8))
    assert kinds(parts) == ["verdict", "target", "why"]
    (squat,) = explanations(parts)
    assert squat.aimed is not None
    assert squat.aimed.when == "next set"
    assert len(life.state.entries) == 6


def test_what_is_recorded_before_the_question_is_kept() -> None:
    life = two_days()
    parts = life.says("bench 80x8. why level?", at(8))
    assert kinds(parts)[:2] == ["verdict", "target"]
    assert told_of(parts) == [BENCH]


def test_a_reply_asks_about_what_its_message_has_told_of() -> None:
    life = two_days()
    parts = life.replies("why?", 1, at(6), to_bot=True)
    assert [each.exercise for each in explanations(parts)] == ["Bench press", "Goblet squat"]


@pytest.mark.parametrize(
    "text",
    [
        "why rows?",
        "why do we do rows?",
        "why am I so weak at rows?",
        "why does bench feel heavy?",
        "coach, why not more?",
    ],
)
def test_what_the_bot_cannot_know_goes_to_the_coach(text: str) -> None:
    life = two_days()
    assert kinds(life.says(text, at(6))) == ["passed on"]
    assert life.alert_reasons == ["question"]


def test_the_coach_sees_what_the_client_was_told_of_the_exercise_asked_about() -> None:
    life = two_days()
    life.says("why does bench feel heavy?", at(6))
    (alert,) = life.state.alerts
    told = value_of(Explanation, alert.evidence["explanation"])
    assert told.exercise == "Bench press"
    assert told.verdict is not None


def test_pain_is_heard_before_any_question() -> None:
    life = two_days()
    parts = life.says("my knee hurts, why 20?", at(6))
    assert "safety" in kinds(parts)
    assert explanations(parts) == []


def test_what_is_on_hold_is_explained_by_what_hurts() -> None:
    life = two_days()
    life.says("my left knee hurts on goblet squats", at(5, 19))
    (squat,) = explanations(life.says("why is goblet squat on hold?", at(6)))
    assert squat == Explanation("Goblet squat", held=("knee", "left"))


def test_after_a_warning_sign_nothing_of_training_is_explained() -> None:
    life = two_days()
    life.says("chest pain and I nearly fainted", at(5, 19))
    assert kinds(life.says("why 60?", at(5, 20))) == ["barred"]


def test_after_the_coachs_words_a_bare_why_is_asked_of_the_coach() -> None:
    life = two_days()
    life.hears(Told(coach=MARA.number, text="lighter next week"), at(6))
    assert kinds(life.says("why?", at(6, 19))) == ["passed on"]
    life.hears(Told(coach=MARA.number, text="you look tired"), at(7))
    assert told_of(life.says("why 60 on bench?", at(7, 19))) == [
        ("Bench press", "first of its kind", "one more")
    ]


def test_with_nothing_told_yet_it_is_a_question_to_the_coach() -> None:
    life = Life(noor(SHEET))
    assert kinds(life.says("why?", at(1))) == ["passed on"]


def test_an_edited_question_is_no_correction() -> None:
    """An edit of "why 82.5" puts no set right, whatever numbers it has."""
    life = two_days()
    life.says("why 60", at(5, 18, 5))
    before = life.state.entries
    parts = life.edits("why 60 and not 62.5?", "why 60", life.heard, at(5, 18, 6))
    assert told_of(parts) == [("Bench press", "first of its kind", "one more")]
    assert life.state.entries == before


def test_after_a_long_time_away_the_lighter_load_is_explained() -> None:
    life = two_days()
    later = at(8, 9) + timedelta(days=35)
    life.says("away till April 12", at(6))
    life.passes_to(later)
    life.says("what's the plan?", later)
    for when in (later, later + timedelta(days=1)):
        (bench,) = explanations(life.says("why is bench so light?", when))
        assert bench.aimed is not None
        assert bench.aimed.target.reason.rule == "eased"


@pytest.mark.parametrize(
    ("text", "exercises"),
    [
        ("is bench below?", ["Bench press"]),
        ("rows", ["Seated cable row"]),
        ("", ["Bench press", "Seated cable row"]),
    ],
)
def test_the_coach_hears_the_reasons_of_what_she_names_or_of_the_last_sets(
    text: str, exercises: list[str]
) -> None:
    life = two_days()
    assert life.hears(WhyWanted(coach=MARA.number, text=text), at(6)) == ()
    assert kinds(life.to_coach)[0] == "reasons of client"
    assert [each.exercise for each in explanations(life.to_coach)] == exercises


def test_a_coach_hears_no_reasons_of_somebody_elses_client() -> None:
    life = two_days()
    life.hears(WhyWanted(coach=99, text="bench"), at(6))
    assert [(say.to, kinds(say.parts)) for say in life.outcome.says] == [(99, ["not your client"])]
