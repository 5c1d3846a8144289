"""Another workout than the one in turn, by its name: it is shown, or done today, and no turn is lost."""

from datetime import date

import pytest

from domain.client.rotation import due
from domain.parts import Notice, Plan
from tests.domain.client.people import Life, at, kinds, noor
from tests.domain.client.test_days import BY_DAY

PULL, LEGS = "row 60x9, rdl 80x7, curls 14x10", "squat 20x10, wall sit 20 kg 45s"


def plan_in(life: Life, text: str, day: int) -> str | None:
    """Return the workout of the plan that is shown for those words at ten in the morning, if one is."""
    plans = [part for part in life.says(text, at(day, 10)) if isinstance(part, Plan)]
    return f"{plans[0].workout} {plans[0].on.day}" if plans else None


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("show me the legs workout", "Legs 5"),
        ("What's in legs?", "Legs 5"),
        ("what do I do on leg day?", "Legs 5"),
        ("legs plan please", "Legs 5"),
        ("show me pull", "Pull 2"),
        ("can I do legs today instead?", "Legs 2"),
        ("I'd rather do legs", "Legs 2"),
        ("doing leg day today instead of pull", "Legs 2"),
        ("legs first please", "Legs 2"),
        ("swap pull for legs", "Legs 2"),
        ("can I swap today and Thursday?", "Legs 2"),
        ("I want to do pull today", "Pull 2"),
        ("my legs are tired", None),
        ("I want to do legs on Friday", None),
        ("can you move legs to Saturday?", None),
    ],
)
def test_a_workout_is_meant_by_its_name(text: str, shown: str | None) -> None:
    assert plan_in(Life(), text, 2) == shown


def test_what_is_done_instead_leaves_the_one_in_turn_in_turn_and_lone_numbers_are_its_own() -> None:
    life = Life()
    life.says("can I do legs today instead?", at(2, 10))
    life.says("20x10", at(2, 11))
    life.says("wall sit 20 kg 45s", at(2, 11))
    assert [each.set.exercise for each in life.state.entries] == ["Goblet squat", "Wall sit"]
    coming = due(life.state, date(2026, 3, 2))
    assert coming is not None
    assert (coming.workout, coming.on.day) == ("Pull", 5)


@pytest.mark.parametrize(
    "text", ["so when is legs then?", "when do I do leg day next?", "which day is Legs on?"]
)
def test_its_day_is_said(text: str) -> None:
    (notice,) = Life().says(text, at(2, 10))
    assert isinstance(notice, Notice)
    assert (notice.topic, notice.facts["workout"], notice.facts["on"]) == ("next day", "Legs", "2026-03-05")


def test_it_can_be_taken_back() -> None:
    life = Life()
    life.says("legs instead of pull", at(2, 10))
    life.says("undo", at(2, 10))
    coming = due(life.state, date(2026, 3, 2))
    assert coming is not None
    assert (coming.workout, coming.on.day) == ("Pull", 2)


def test_too_early_the_client_hears_what_the_coach_set_and_decides() -> None:
    life = Life()
    life.says(PULL, at(2))
    assert kinds(life.says("can I do pull today?", at(3, 10))) == ["out of turn", "plan"]
    life = Life()
    life.says(PULL, at(2))
    assert kinds(life.says("can I do legs today?", at(3, 10))) == ["moved", "plan"]


def test_in_a_week_by_days_the_one_of_that_day_is_not_lost() -> None:
    life = Life(noor(BY_DAY))
    assert plan_in(life, "can I do legs today instead?", 2) == "Legs 2"
    life.says("leg press 100x10", at(2))
    coming = due(life.state, date(2026, 3, 3))
    assert coming is not None
    assert coming.workout == "Pull"
    life.says("row 60x9", at(4))
    coming = due(life.state, date(2026, 3, 5))
    assert coming is not None
    assert (coming.workout, coming.on.day) == ("Push", 6)


@pytest.mark.parametrize(
    "text", ["can I train tomorrow's today?", "do wednesday's one today", "move tomorrow's to today"]
)
def test_the_workout_of_another_day_can_be_done_today(text: str) -> None:
    life = Life(noor(BY_DAY))
    life.says("chest press 50x10", at(2))
    life.says(text, at(3, 9))
    coming = due(life.state, date(2026, 3, 3))
    assert coming is not None
    assert (coming.workout, coming.on.day) == ("Pull", 3)


def test_what_is_under_way_stays_where_it_is() -> None:
    life = Life()
    life.says("row 60x9", at(2, 10))
    assert kinds(life.says("can I swap tomorrow's for today?", at(2, 11))) == ["next day"]
    assert life.state.memory.rest_on is None
