"""What a client has to train with changes: what takes whose place, and what is out of reach until then."""

import pytest

from domain.parts import Notice, Part, Plan
from domain.plan_lines import PlanLine
from tests.domain.client.newcomers import LEG_PRESS
from tests.domain.client.people import SHEET, Life, at, noor

NOTHING_INSTEAD = LEG_PRESS.replace("   no leg press: Leg extension, 10-15 reps\n", "")

LATER = [
    ("I have no leg press any more", "Leg extension"),
    ("my gym has no leg press", "Leg extension"),
    ("the leg press is gone", "Leg extension"),
]


@pytest.mark.parametrize(("said", "instead"), LATER)
def test_equipment_that_is_there_no_longer_brings_the_alternative(said: str, instead: str) -> None:
    life = Life(noor(LEG_PRESS))
    life.says("row 60x9\nrdl 80x8\n14x11", at(2))
    life.says(said, at(3))
    plan = next(part for part in life.says("what's next?", at(5)) if isinstance(part, Plan))
    assert instead in [line.exercise for line in plan.lines]
    life.says("I have a leg press again", at(5))
    plan = next(part for part in life.says("what's next?", at(5)) if isinstance(part, Plan))
    assert "Leg press" in [line.exercise for line in plan.lines]


def lines(parts: tuple[Part, ...] | list[Part]) -> dict[str, PlanLine]:
    """Return the lines of the plan that is said, by exercise."""
    return {line.exercise: line for part in parts if isinstance(part, Plan) for line in part.lines}


def heard_of(life: Life) -> list[tuple[str, list[str]]]:
    """Return what the coach is told of by the last outcome, and of which exercises."""
    told = [part for part in life.to_coach if isinstance(part, Notice)]
    return [(part.topic, part.facts["exercises"]) for part in told]


def test_what_is_out_of_reach_is_left_out_until_it_is_there_again() -> None:
    life = Life(noor(NOTHING_INSTEAD))
    life.says("row 60x9\nrdl 80x8\ncurl 14x11", at(2))
    life.says("I have no leg press any more", at(3))
    assert heard_of(life) == [("nothing instead", ["Leg press"])]
    line = lines(life.says("what's next?", at(5)))["Leg press"]
    assert (line.out_of_reach, line.target, line.find_first_load, line.to_beat) == (True, None, False, None)
    said = life.says("goblet squat 24x10\nwall sit 45 s", at(5))
    assert life.workout_state == "done"
    done = next(part for part in said if isinstance(part, Notice) and part.topic == "workout done")
    assert done.facts["untold"] == []
    life.says("I have a leg press again", at(6))
    assert heard_of(life) == [("within reach again", ["Leg press"])]
    life.says("row 60x10\nrdl 80x8\ncurl 14x12", at(8))
    assert not lines(life.says("what's next?", at(11)))["Leg press"].out_of_reach


def test_a_bare_set_goes_past_what_is_out_of_reach_and_one_by_its_name_is_recorded() -> None:
    life = Life(noor(NOTHING_INSTEAD.replace("in turn: Pull, Legs", "in turn: Legs, Pull")))
    life.says("I have no leg press any more", at(2))
    life.says("goblet squat 24x10", at(2))
    life.says("45 s", at(2))
    assert [entry.set.exercise for entry in life.state.entries] == ["Goblet squat", "Wall sit"]
    life.says("leg press 100x12", at(2))
    assert life.state.entries[-1].set.exercise == "Leg press"


def test_a_set_of_what_was_out_of_reach_shows_that_it_is_there_again() -> None:
    life = Life(noor(NOTHING_INSTEAD.replace("in turn: Pull, Legs", "in turn: Legs, Pull")))
    life.says("I have no leg press any more", at(2))
    kept = topics(life.says("leg press 100x12", at(2)))
    assert kept == ["equipment kept"]
    assert heard_of(life) == [("within reach again", ["Leg press"])]
    assert lacking(life) == []
    life.presses("I have no leg press", at(2))
    assert lacking(life) == ["leg press"]
    # A set of another day shows nothing of today.
    assert topics(life.says("yesterday: leg press 100x12", at(2))) == []
    assert lacking(life) == ["leg press"]


def test_a_set_of_what_has_something_in_its_place_offers_to_say_that_it_is_there_again() -> None:
    life = Life(noor(LEG_PRESS.replace("in turn: Pull, Legs", "in turn: Legs, Pull"), lacking=("leg press",)))
    assert topics(life.says("leg extension 40x12", at(2))) == []
    assert "I have a leg press again" not in life.buttons
    assert topics(life.says("leg press 100x12", at(2))) == []
    assert lacking(life) == ["leg press"]
    assert topics(life.presses("I have a leg press again", at(2))) == ["equipment kept"]
    assert lacking(life) == []


TWO_REPLACED = """\
Home
Train every 3 days in turn: One

One
1. Back squat, 5-8 reps
   no barbell: Goblet squat, 8-12 reps
2. Bench press, 5-8 reps
   no barbell: Push-up, 8-20 reps
3. Plank, hold 30-60 seconds
"""


def test_several_replaced_ones_done_in_a_workout_show_that_what_they_need_is_there_again() -> None:
    life = Life(noor(TWO_REPLACED, lacking=("barbell", "bands")))
    assert topics(life.says("back squat 60x6", at(2))) == []
    assert lacking(life) == ["barbell", "bands"]
    assert topics(life.says("bench press 40x6", at(2))) == ["equipment kept"]
    assert lacking(life) == ["bands"]


def lacking(life: Life) -> list[str]:
    """Return what the client has not got."""
    return list(life.state.client.equipment.lacking)


def topics(parts: tuple[Part, ...]) -> list[str]:
    """Return what is said of equipment."""
    return [part.topic for part in parts if isinstance(part, Notice) and "equipment" in part.topic]


IMPLEMENTS = [
    ("I have no dumbbells any more", {"Hammer curl": "Cable curl"}, ["Goblet squat"]),
    ("I have no cables any more", {}, ["Seated cable row"]),
    ("my gym has no cable machine", {}, ["Seated cable row"]),
    ("I have no barbell any more", {}, ["Romanian deadlift"]),
    (
        "I only have bands at home",
        {},
        ["Seated cable row", "Romanian deadlift", "Hammer curl", "Goblet squat"],
    ),
    ("I have no bench any more", {}, []),
]


@pytest.mark.parametrize(("said", "instead", "nothing"), IMPLEMENTS)
def test_what_an_exercise_is_done_with_is_known(
    said: str, instead: dict[str, str], nothing: list[str]
) -> None:
    life = Life()
    answer = next(part for part in life.says(said, at(2, 7)) if isinstance(part, Notice))
    assert answer.topic == "equipment kept"
    assert dict(answer.facts["instead"]) == instead
    assert answer.facts["nothing_for"] == nothing
    assert heard_of(life) == ([("nothing instead", nothing)] if nothing else [])
    plan = lines(life.passes_to(at(2, 8)))
    assert [name for name, line in plan.items() if line.out_of_reach] == [
        "Cable curl" if each == "Hammer curl" else each for each in nothing if each != "Goblet squat"
    ]


def test_of_two_alternatives_the_one_that_can_be_done_is_taken() -> None:
    two = SHEET.replace(
        "   no dumbbells: Cable curl, 8-12 reps\n",
        "   no dumbbells: Cable curl, 8-12 reps\n   no cables: Barbell curl, 8-12 reps\n",
    )
    life = Life(noor(two, lacking=("dumbbells", "cables")))
    plan = lines(life.passes_to(at(2, 8)))
    assert "Barbell curl" in plan
    assert not plan["Barbell curl"].out_of_reach


def test_what_can_be_told_again_is_told_to_the_coach_once() -> None:
    life = Life(noor(NOTHING_INSTEAD))
    life.says("I have no leg press any more", at(2))
    life.says("my gym has no leg press", at(2))
    assert heard_of(life) == []
