"""A workout in one line without names goes down the plan where the loads tell it; drop sets stay behind."""

from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.reading import Planned, read
from tests.domain.reading.build import one, request, short

_LIFTS = (("Bench press", 80, 8), ("Seated row", 47, 9), ("Lateral raise", 20, 12), ("Leg press", 180, 10))
PLAN = tuple(Planned(name, reps - 2, reps + 2, "reps", 1) for name, _, reps in _LIFTS)
TARGET = {name: one(name, str(load), reps) for name, load, reps in _LIFTS}


@settings(max_examples=60, deadline=None)
@given(
    fewer=st.lists(st.integers(0, 2), min_size=3, max_size=len(_LIFTS)),
    tie=st.sampled_from(("x", " x ", "/", " for ")),
    between=st.sampled_from((", ", "; ", " then ")),
    ahead=st.sampled_from(("", "today: ", "all done: ", "did all 4: ")),
)
def test_every_set_of_a_line_is_of_its_exercise(fewer: list[int], tie: str, between: str, ahead: str) -> None:
    told = [
        (name, Decimal(load), reps - less) for (name, load, reps), less in zip(_LIFTS, fewer, strict=False)
    ]
    text = ahead + between.join(f"{load}{tie}{reps}" for _, load, reps in told)
    found = read(request(text, plan=PLAN, target=TARGET))
    assert [short(each) for each in found.sets] == told
    assert not found.asks


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("80x8, 60x10, 50x14", [("80", 8), ("60", 10), ("50", 14)]),
        ("80x8, 47x15", [("80", 8), ("47", 15)]),
        ("bench 80x8, 47x9", [("80", 8), ("47", 9)]),
        ("80/8/7, 60/10", [("80", 8), ("80", 7), ("60", 10)]),
    ],
)
def test_lighter_sets_of_one_exercise_are_left_to_it(text: str, sets: list[tuple[str, int]]) -> None:
    found = read(request(text, plan=PLAN, target=TARGET))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(kg), reps) for kg, reps in sets]


def test_a_set_before_the_name_of_another_is_of_the_exercise_whose_turn_it_is() -> None:
    found = read(request("80 kilos for 8 and then 47 for 9 on the seated row", plan=PLAN, target=TARGET))
    assert [short(each) for each in found.sets] == [
        ("Bench press", Decimal(80), 8),
        ("Seated row", Decimal(47), 9),
    ]
