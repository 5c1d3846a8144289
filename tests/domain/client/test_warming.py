"""How to warm up: asked in many ways, answered for what is left. The caution on what loads a sore place."""

import pytest

from domain.parts import Notice, Part, Plan, VerdictPart
from tests.domain.client.people import Life, at, kinds, noor

HEAVY = """\
Harbour Heavy
Train every 3 days in turn: Pull

Pull
1. Seated cable row, 8-10 reps
   straight into Lat pulldown, 5-7 reps
2. Romanian deadlift, 6-8 reps
"""


def second_day() -> Life:
    """Return a life on the day of the second workout, the first told of whole."""
    life = Life(noor(HEAVY))
    life.says("row 60x9, pulldown 45x6, rdl 80x7", at(2))
    life.passes_to(at(5, 9))
    return life


def ramps_in(parts: tuple[Part, ...]) -> list[str]:
    """Return the exercises of the ramps that an answer gives, in order."""
    (notice,) = (part for part in parts if isinstance(part, Notice))
    assert notice.topic == "warm-up"
    return [ramp[0]["exercise"] for ramp in notice.facts["ramps"]]


@pytest.mark.parametrize(
    "text",
    [
        "warm up?",
        "warmup",
        "How do I warm up?",
        "how should I warm up today?",
        "what's the warm-up",
        "what warm up sets should I do?",
        "show me my warm-up sets please",
        "do I need a warm up",
        "ok, and how to warm up for this?",
        "how do I warm up for pull?",
    ],
)
def test_asked_how_to_warm_up_all_ramps_come_the_second_of_a_pair_first(text: str) -> None:
    answer = second_day().says(text, at(5))
    assert ramps_in(answer) == ["Lat pulldown", "Seated cable row", "Romanian deadlift"]


def test_asked_of_one_exercise_its_ramp_comes() -> None:
    assert ramps_in(second_day().says("warm-up for the rdl?", at(5))) == ["Romanian deadlift"]


@pytest.mark.parametrize(
    "text", ["is ten minutes on the bike enough to warm up?", "how do I warm up for a marathon?"]
)
def test_other_questions_about_it_are_for_the_coach(text: str) -> None:
    life = second_day()
    assert kinds(life.says(text, at(5))) == ["passed on"]
    assert life.alert_reasons == ["question"]


@pytest.mark.parametrize("text", ["warm up rows 30x8", "warmed up with 30x8 and 40x5"])
def test_warm_up_sets_are_no_record(text: str) -> None:
    life = second_day()
    before = life.state.entries
    assert kinds(life.says(text, at(5))) == ["warm-up noted"]
    assert life.state.entries == before


def test_the_plan_stays_short_and_says_the_ramps_where_they_are_to_be_done() -> None:
    life = Life(noor(HEAVY))
    life.says("row 60x9, pulldown 45x6, rdl 80x7", at(2))
    (plan,) = (part for part in life.passes_to(at(5, 9)) if isinstance(part, Plan))
    assert [[ramp[0].exercise for ramp in line.warm_up] for line in plan.lines] == [
        ["Lat pulldown", "Seated cable row"],
        [],
        ["Romanian deadlift"],
    ]


def test_no_warm_up_for_what_is_on_hold() -> None:
    life = second_day()
    life.says("rdl 80x5 and my lower back hurts", at(5))
    life.passes_to(at(8, 9))
    assert "Romanian deadlift" not in ramps_in(life.says("warm up?", at(8)))


def test_what_loads_a_place_that_hurts_is_cautioned_in_the_plan_and_once_beside_its_verdict() -> None:
    life = second_day()
    life.says("my right elbow hurts on the pulldown", at(5, 17))
    (plan,) = life.says("what's left?", at(5))
    assert isinstance(plan, Plan)
    cautions = {line.exercise: (line.held_for, line.caution) for line in plan.lines}
    assert cautions["Lat pulldown"] == ("elbow", None)
    assert cautions["Seated cable row"] == (None, "elbow")
    assert cautions["Romanian deadlift"][0] is None
    (verdict, *_) = (part for part in life.says("row 60x9", at(5)) if isinstance(part, VerdictPart))
    assert verdict.caution == "elbow"
    (again, *_) = (part for part in life.says("row 60x9", at(5)) if isinstance(part, VerdictPart))
    assert again.caution is None
