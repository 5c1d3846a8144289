"""Questions about one thing, answered with that alone: what to aim for in an exercise, plates for a load."""

import pytest

from domain.parts import Notice, Part, Plan
from tests.domain.client.people import Life, at, kinds, noor

SHEET = """\
Harbour Bar
Train every 3 days in turn: Push, Pull

Push
1. Bench press, 5-8 reps
2. Dip, 5-8 reps
   straight into Dumbbell lateral raise, 10-15 reps

Pull
1. Romanian deadlift, 6-8 reps
2. Seated cable row, 8-10 reps
"""


def third_day() -> Life:
    """Return a life on the day of the second Push, both workouts done once."""
    life = Life(noor(SHEET))
    life.says("bench 40x7, dips 6, raises 6x12", at(2))
    life.says("rdl 70x7, row 40x9", at(5))
    life.passes_to(at(8, 9))
    return life


def planned(parts: tuple[Part, ...]) -> list[str]:
    """Return the exercises of the plan in an answer."""
    return [line.exercise for part in parts if isinstance(part, Plan) for line in part.lines]


def explained(parts: tuple[Part, ...]) -> list[str]:
    """Return the exercises that an answer explains."""
    return [
        part.facts["explanation"]["exercise"]
        for part in parts
        if isinstance(part, Notice) and part.topic == "why"
    ]


@pytest.mark.parametrize(
    "text", ["what should I beat on bench", "what's my target for the bench?", "what is my bench target"]
)
def test_asked_of_an_exercise_of_today_its_line_of_the_plan_comes_alone(text: str) -> None:
    assert planned(third_day().says(text, at(8))) == ["Bench press"]


def test_one_of_a_pair_goes_straight_into_nothing() -> None:
    (plan,) = third_day().says("what should I beat on dips", at(8))
    assert isinstance(plan, Plan)
    assert [line.straight_into_next for line in plan.lines] == [False]


def test_asked_of_an_exercise_of_another_workout_it_is_told_what_to_beat_there() -> None:
    answer = third_day().says("what should I beat on rows", at(8))
    assert explained(answer) == ["Seated cable row"]
    assert not planned(answer)


def test_asked_of_what_was_never_done_and_is_not_due_the_plan_comes() -> None:
    assert planned(Life(noor(SHEET)).says("what should I beat on rows", at(2)))[0] == "Bench press"


@pytest.mark.parametrize("text", ["what comes after bench?", "what's next?", "what should I do today?"])
def test_asked_what_is_due_the_whole_plan_comes(text: str) -> None:
    assert planned(third_day().says(text, at(8))) == ["Bench press", "Dip", "Dumbbell lateral raise"]


@pytest.mark.parametrize(
    ("text", "loads"),
    [
        ("what plates do I need for 92.5", [("92.5", ["25", "10", "1.25"])]),
        ("what plates for 92,5 kg on bench?", [("92.5", ["25", "10", "1.25"])]),
        ("plates for 60", [("60", ["20"])]),
        ("how do I load 100?", [("100", ["25", "15"])]),
        ("ok, what do I put on each side for 70?", [("70", ["25"])]),
        ("which plates make 91", [("90", ["25", "10"]), ("92.5", ["25", "10", "1.25"])]),
        ("plates for 20", [("20", [])]),
        ("plates for 15", [("20", [])]),
        ("what plates for 132 lb", [("126.77", ["15", "2.5", "1.25"]), ("132.28", ["20"])]),
    ],
)
def test_asked_for_plates_each_side_of_the_bar_is_told(text: str, loads: list[tuple[str, list[str]]]) -> None:
    (notice,) = third_day().says(text, at(8))
    assert isinstance(notice, Notice)
    assert notice.topic == "plates"
    assert [(each["load"], each["plates"]) for each in notice.facts["loads"]] == loads


@pytest.mark.parametrize(
    "text", ["what plates do I need for rows at 40", "how do I load the car", "60 plates"]
)
def test_what_has_no_bar_or_no_load_is_no_question_about_plates(text: str) -> None:
    assert "plates" not in kinds(third_day().says(text, at(8)))


def test_no_plates_are_told_where_there_is_no_training() -> None:
    life = third_day()
    life.says("I have chest pain", at(8))
    (notice,) = life.says("plates for 60", at(8, 19))
    assert isinstance(notice, Notice)
    assert notice.topic == "barred"
