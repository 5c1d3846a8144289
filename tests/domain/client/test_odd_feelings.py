"""What feels odd without pain or a warning sign gets a kind caution, alone and beside sets."""

import pytest

from domain.parts import AlertPart, Safety
from tests.domain.client.people import Life, at, kinds

DIZZY = [
    "felt a bit dizzy after",
    "row 60x9, felt a bit dizzy after",
    "row 60x10 - bit lightheaded at the end",
    "a bit dizzy",
    "row 60x9, felt sick after",
    "row 60x9\nsaw stars on the last rep",
    "I'm feeling lightheaded today, should I train?",
]


@pytest.mark.parametrize("text", DIZZY)
def test_dizziness_gets_a_caution_and_the_sets_beside_it_are_recorded(text: str) -> None:
    life = Life()
    assert "feels dizzy" in kinds(life.says(text, at(2)))
    assert [each.set.load for each in life.state.entries] == ([60] if "60" in text else [])
    assert not life.state.memory.barred


@pytest.mark.parametrize(
    ("text", "button"),
    [
        ("my left shoulder's been a bit grumbling", None),
        ("lower back is letting me know", "My lower back hurts"),
        ("knee is not happy today", "My knee hurts"),
        ("My elbow twinged a bit on the rows but fine now. row 60x9", "My elbow hurts"),
    ],
)
def test_a_part_that_speaks_up_is_asked_about(text: str, button: str | None) -> None:
    life = Life()
    said = kinds(life.says(text, at(2)))
    assert ("feels odd" in said and button in life.buttons) if button else "feels odd" not in said


@pytest.mark.parametrize(
    "text",
    [
        "row 60x9, not dizzy this time",
        "no dizziness, row 60x9",
        "row 60x9, my wife felt dizzy",
        "row 60x9, wasn't dizzy at all",
        "row 60x9, was dizzy last week but not today",
    ],
)
def test_what_is_denied_or_another_s_gets_none(text: str) -> None:
    assert "feels dizzy" not in kinds(Life().says(text, at(2)))


@pytest.mark.parametrize(
    "text", ["row 60x9 nearly fainted", "row 60x9, got really dizzy and my heart was racing"]
)
def test_a_warning_sign_stays_one(text: str) -> None:
    assert kinds(Life().says(text, at(2))) == ["urgent"]


def test_a_joint_that_feels_odd_beside_a_set_is_asked_about() -> None:
    life = Life()
    assert kinds(life.says("row 60x9. my shoulder feels weird", at(2)))[-1] == "feels odd"
    assert "safety" in kinds(life.presses("My shoulder hurts", at(2)))


@pytest.mark.parametrize(
    ("said", "side", "score"),
    [
        ("yes", None, None),
        ("yes, a 3 maybe", None, 3),
        ("the right one, a 3 maybe", "right", 3),
        ("a bit, left side", "left", None),
        ("yeah 4/10", None, 4),
        ("it does, when I pull", None, None),
        ("kind of", None, None),
    ],
)
def test_a_yes_to_whether_it_hurts_sets_aside_and_is_no_set(
    said: str, side: str | None, score: int | None
) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("my elbow feels off", at(2))
    (part,) = life.says(said, at(2))
    assert isinstance(part, Safety)
    assert (part.where, part.side) == ("elbow", side)
    (alert,) = [each for each in life.to_coach if isinstance(each, AlertPart)]
    told = alert.evidence["pain"]["score"]
    assert (alert.evidence["said"], None if told is None else int(told)) == (said, score)
    assert len(life.state.entries) == 1


@pytest.mark.parametrize("said", ["no", "not really", "it does not hurt", "no, it's fine"])
def test_a_no_to_whether_it_hurts_is_heard(said: str) -> None:
    life = Life()
    life.says("my elbow feels off", at(2))
    assert kinds(life.says(said, at(2))) == ["no trouble"]
    assert life.state.holds == ()


def test_sets_told_after_that_question_are_recorded() -> None:
    life = Life()
    life.says("my elbow feels off", at(2))
    assert "verdict" in kinds(life.says("row 60x9", at(2)))
    assert life.state.holds == ()
    # Hours later a yes is no answer to it.
    assert "safety" not in kinds(life.says("yes", at(2, 21)))


@pytest.mark.parametrize(
    "said", ["lower, 5/10", "the left one", "right side, 4 out of 10", "yes, a 6", "maybe a 4"]
)
def test_where_and_how_much_it_hurts_can_be_told_behind_it(said: str) -> None:
    life = Life()
    life.says("my back hurts", at(2))
    assert kinds(life.says(said, at(2))) == ["passed on"]
    assert life.state.entries == ()


@pytest.mark.parametrize("said", ["left 8", "8", "row 60x9"])
def test_sets_told_behind_a_pain_are_no_score(said: str) -> None:
    life = Life()
    life.says("my left ankle hurts", at(2))
    assert "passed on" not in kinds(life.says(said, at(2)))
