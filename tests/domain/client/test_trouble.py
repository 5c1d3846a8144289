"""What a client is asked about a stall, one thing after the other, and what becomes of the answers."""

from typing import Any

import pytest

from domain.incoming import Decided, WhyWanted
from domain.parts import AlertPart, Notice, Question, Safety
from tests.domain.client.people import MARA, Life, at, kinds, noor

SHEET = """\
Pair
Train every day in turn: Day
Tell me after 2 workouts without a beat

Day
1. Bench press, 5-8 reps
2. Seated cable row, 8-10 reps
"""


def stalled(*last: str, hour: int = 18) -> Life:
    """Let two exercises do the same twice, then what is said `last`."""
    life = Life(noor(SHEET))
    for day in (2, 3):
        life.says("bench 80x6, rows 60x9", at(day))
    for minute, text in enumerate(last):
        life.says(text, at(4, hour, minute))
    return life


def answers(life: Life) -> list[dict[str, Any]]:
    return [alert.evidence.get("answers", {}) for alert in life.state.alerts if alert.reason == "stall"]


def told(life: Life) -> list[dict[str, Any]]:
    return [
        part.facts for part in life.to_coach if isinstance(part, Notice) and part.topic == "stall answers"
    ]


def test_two_stalls_found_at_once_are_asked_about_in_one_question() -> None:
    life = stalled("bench 80x5, rows 60x8")
    parts = [part for say in life.outcome.says for part in say.parts]
    asked = [part for part in parts if isinstance(part, Question)]
    assert [(each.slot, each.facts["exercises"]) for each in asked] == [
        ("trouble", ["Bench press", "Seated cable row"])
    ]
    cautions = [part for part in parts if isinstance(part, Safety)]
    assert [(each.exercise, each.also) for each in cautions] == [
        ("Bench press", ("Seated cable row",)),
        ("Bench press", ()),
    ]


@pytest.mark.parametrize(
    ("first", "second", "said"),
    [
        ("No trouble", "Nothing unusual", {"trouble": "No trouble", "lately": "Nothing unusual"}),
        ("no, it doesn't hurt", "no", {"trouble": "no, it doesn't hurt", "lately": "no"}),
        ("nope", "the baby keeps us up", {"trouble": "nope", "lately": "the baby keeps us up"}),
        (
            "it feels odd somehow",
            "work is a lot at present",
            {"trouble": "it feels odd somehow", "lately": "work is a lot at present"},
        ),
        ("no", "I got the flu", {"trouble": "no", "lately": "I got the flu"}),
    ],
)
def test_the_answers_stand_with_the_alert_and_the_coach_hears_them_once(
    first: str, second: str, said: dict[str, str]
) -> None:
    life = stalled("bench 80x5, rows 60x10")
    assert life.alert_reasons == ["stall"]
    parts = life.says(first, at(4, 18, 5))
    assert kinds(parts)[-1] == "question"
    assert told(life) == []
    life.says(second, at(4, 18, 6))
    assert answers(life) == [said]
    (facts,) = told(life)
    assert (facts["exercises"], facts["answers"]) == (["Bench press"], said)
    assert life.alert_reasons == []
    assert life.state.memory.stall_answers is None
    assert not [each for each in life.state.memory.questions if each.slot in {"trouble", "lately"}]


@pytest.mark.parametrize(
    ("text", "said"), [("no trouble", {"trouble": "no trouble"}), ("no", {}), ("it's leg day", {})]
)
def test_what_a_button_says_is_an_answer_days_later_and_a_mere_no_is_none(
    text: str, said: dict[str, str]
) -> None:
    life = stalled("bench 80x5, rows 60x10")
    life.says("bench 80x5, rows 60x10", at(5, 18))
    life.says(text, at(6, 19))
    assert answers(life)[0] == said
    if said:
        life.says("Slept badly", at(8, 9))
        assert answers(life)[0] == {**said, "lately": "Slept badly"}


@pytest.mark.parametrize(
    "text",
    ["slept badly all week", "I was ill last week", "hardly ate anything", "long shifts at work, so tired"],
)
def test_sleep_told_where_pain_was_asked_for_is_kept_as_what_it_is_and_pain_asked_again(text: str) -> None:
    life = stalled("bench 80x5, rows 60x10")
    parts = life.says(text, at(4, 18, 5))
    assert answers(life) == [{"lately": text}]
    assert [part.slot for part in parts if isinstance(part, Question)] == ["trouble"]
    parts = life.says("No trouble", at(4, 18, 6))
    assert kinds(parts) == ["no trouble"]
    assert answers(life) == [{"lately": text, "trouble": "No trouble"}]
    assert [facts["answers"] for facts in told(life)] == answers(life)


@pytest.mark.parametrize(
    "text",
    [
        "no, but I slept badly",
        "all fine, no pain. but I slept terribly all week",
        "nothing hurts, I am just tired from work",
        "slept badly, but there is no trouble with it",
    ],
)
def test_one_answer_to_both_is_kept_as_both(text: str) -> None:
    life = stalled("bench 80x5, rows 60x10")
    assert kinds(life.says(text, at(4, 18, 5))) == ["lately noted"]
    assert answers(life) == [{"lately": text, "trouble": text}]
    assert not [each for each in life.state.memory.questions if each.slot in {"trouble", "lately"}]


@pytest.mark.parametrize(
    "text",
    [
        "my elbow is tired",
        "it feels odd somehow",
        "a bit stiff after sleep",
        "no pain, but odd when I am tired",
    ],
)
def test_a_joint_is_the_answer_to_whether_one_gives_trouble(text: str) -> None:
    life = stalled("bench 80x5, rows 60x10")
    life.says(text, at(4, 18, 5))
    assert answers(life) == [{"trouble": text}]


def test_words_that_have_something_else_to_do_answer_nothing() -> None:
    life = stalled("bench 80x5, rows 60x10")
    for minute, text in enumerate(
        ["what's next?", "remind me at 7", "thanks", "bench 80x6", "history of rows"]
    ):
        life.says(text, at(4, 18, 10 + minute))
        assert answers(life) == [{}]


def test_the_coach_hears_of_the_first_answer_where_no_second_comes() -> None:
    life = stalled("bench 80x5, rows 60x10")
    life.says("No trouble", at(4, 18, 5))
    life.passes_to(at(4, 19, 4))
    assert told(life) == []
    life.passes_to(at(4, 19, 5))
    assert [facts["answers"] for facts in told(life)] == [{"trouble": "No trouble"}]


def test_answers_that_come_before_the_alert_come_with_it() -> None:
    life = stalled("bench 80x5", "no trouble", "slept badly, the baby")
    assert life.alert_reasons == []
    life.says("rows 60x10", at(4, 18, 20))
    assert life.alert_reasons == ["stall"]
    assert answers(life) == [{"trouble": "no trouble", "lately": "slept badly, the baby"}]
    assert (told(life), life.state.memory.stall_answers) == ([], None)


def test_what_was_out_of_the_ordinary_is_asked_once_a_day() -> None:
    life = stalled("bench 80x5", "no trouble", "slept badly, the baby", "rows 60x8")
    parts = life.says("no trouble", at(4, 18, 10))
    assert kinds(parts) == ["no trouble"]
    assert answers(life)[1] == {"trouble": "no trouble", "lately": "slept badly, the baby"}


@pytest.mark.parametrize(
    ("yes", "held"),
    [
        ("It hurts", ["Bench press"]),
        ("yes", ["Bench press"]),
        # The row loads the shoulder too; neither loads the knee.
        ("yes, my shoulder hurts a bit", ["Bench press", "Seated cable row"]),
        ("yes, in the knee it hurts", ["Bench press"]),
    ],
)
def test_a_yes_to_pain_sets_the_exercise_aside_and_takes_the_place_of_the_stall(
    yes: str, held: list[str]
) -> None:
    life = stalled("bench 80x5, rows 60x10", hour=23)
    parts = life.says(yes, at(4, 23, 30))
    assert "safety" in kinds(parts)
    assert [hold.exercise for hold in life.state.holds] == held
    assert [(alert.reason, alert.evidence["stalled"]) for alert in life.state.alerts] == [
        ("pain", ["Bench press"])
    ]
    assert life.alert_reasons == ["pain"]
    assert not [each for each in life.state.memory.questions if each.slot in {"trouble", "lately"}]


@pytest.mark.parametrize("text", ["has stalled", "had bench press stalled"])
def test_what_showed_a_stall_is_at_hand_after_pain_has_taken_its_place(text: str) -> None:
    """Also once more has been told of the same pain; no load is offered on what hurts."""
    life = stalled("bench 80x5, rows 60x10")
    evidence = life.state.alerts[0].evidence
    life.says("yes, my shoulder hurts a bit", at(4, 18, 5))
    life.says("my shoulder hurts still", at(5, 18, 5))
    assert [alert.reason for alert in life.state.alerts] == ["pain"]
    life.hears(WhyWanted(coach=MARA.number, text=text), at(5, 19))
    (say,) = [say for say in life.outcome.says if say.to == MARA.number]
    (part,) = say.parts
    assert isinstance(part, AlertPart)
    assert (part.reason, part.exercise, part.full) == ("stall", "Bench press", True)
    assert part.evidence == {**evidence, "overtaken": True}
    assert say.buttons == ()


def test_answers_that_come_once_it_is_settled_still_reach_the_coach() -> None:
    life = stalled("bench 80x5, rows 60x10")
    stall = life.state.alerts[0].number
    life.hears(Decided(coach=MARA.number, alert=stall, remedy="keep on"), at(4, 18, 4))
    life.says("no", at(4, 18, 5))
    life.says("Was ill", at(4, 18, 6))
    assert [facts["answers"] for facts in told(life)] == [{"trouble": "no", "lately": "Was ill"}]


def test_pain_that_the_exercise_asked_about_does_not_load_is_another_matter() -> None:
    life = stalled("bench 80x5, rows 60x10")
    life.says("my knee hurts on the stairs", at(4, 18, 5))
    assert life.state.holds == ()
    assert [alert.reason for alert in life.state.alerts] == ["stall", "pain"]
