"""Breaks: how long they were, how much lighter to begin after them, and the way back up."""

from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.comparison import Body
from domain.equipment import default_equipment, is_loadable
from domain.exercises import describe
from domain.exposure import Exposure
from domain.layoff import AFTER_ILLNESS, built_back_to, longest_break
from domain.loading import Load, Loading
from domain.programme import Prescription, Range
from domain.raises import MOST_RAISE
from domain.target import Target, next_target
from domain.target_reasons import BuildBack, Eased
from tests.domain.sheet_cells import prescribed
from tests.domain.tables import Case, exposures, read_cases, sets

CASES = read_cases("building-back.md")

FIRST = date(2026, 3, 1)


def days(*numbers: int) -> list[date]:
    return [FIRST + timedelta(days=each) for each in numbers]


@pytest.mark.parametrize(
    ("trained", "since", "until", "longest"),
    [
        ((0, 3, 6), 0, 9, 3),
        ((0, 3, 6), 6, 41, 35),
        # Legs were done last before the break, and Pull, three days ago, after it.
        ((0, 3, 38), 3, 41, 35),
        # This exercise has been done since the break.
        ((0, 3, 38), 38, 41, 3),
        ((0, 30), 0, 30, 30),
        ((), 0, 20, 20),
        ((0, 3), 3, 3, 0),
    ],
)
def test_the_longest_break_since_an_exercise_was_done(
    trained: tuple[int, ...], since: int, until: int, longest: int
) -> None:
    assert longest_break(days(*trained), *days(since), *days(until)) == longest


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place}: {case['situation']}")
def test_the_way_back_is_the_one_worked_by_hand(case: Case) -> None:
    name = case["exercise"]
    prescription, _, _ = prescribed(case["sheet"], name)
    past = exposures(case["done"], name)
    lightened = [str(place) in case["lighter"].split() for place in range(1, len(past) + 1)]
    wanted = built_back_to(past, lightened)
    assert wanted == (None if case["back to"] == "none" else sets(case["back to"], name)[0])
    target = next_target(
        prescription,
        past,
        unit="kg",
        equipment=default_equipment("kg"),
        exercise=describe(name),
        back_to=wanted,
    )
    assert isinstance(target, Target)
    assert target.as_set() == sets(case["aim"], name)[0]
    assert target.reason.rule == case["by"]


def test_after_an_illness_it_begins_a_tenth_lighter_however_short_it_was() -> None:
    prescription, _, _ = prescribed("6-8", "Bench press")
    past = exposures("100 kg x 8", "Bench press")

    def aimed(*, days_away: int, ill: bool) -> Target:
        target = next_target(
            prescription,
            past,
            unit="kg",
            equipment=default_equipment("kg"),
            exercise=describe("Bench press"),
            days_away=days_away,
            ill=ill,
        )
        assert isinstance(target, Target)
        return target

    assert aimed(days_away=6, ill=True).load == 90
    assert aimed(days_away=6, ill=True).reason == Eased(AFTER_ILLNESS, after_illness=True)
    assert aimed(days_away=35, ill=True).load == 85
    assert aimed(days_away=35, ill=True).reason == Eased(Decimal("0.85"), 35, after_illness=True)
    assert not isinstance(aimed(days_away=6, ill=False).reason, Eased)


def test_where_nothing_lighter_can_be_put_on_fewer_reps_are_aimed_for() -> None:
    prescription, _, _ = prescribed("5-8", "Bench press")
    target = next_target(
        prescription,
        exposures("20 kg x 5", "Bench press"),
        unit="kg",
        equipment=default_equipment("kg"),
        exercise=describe("Bench press"),
        ill=True,
    )
    assert isinstance(target, Target)
    assert (target.load, target.reps) == (Decimal(20), 4)


@given(
    st.sampled_from(["Bench press", "Back squat", "Leg press", "Hammer curl", "Lat pulldown"]),
    st.integers(8, 80),
    st.integers(1, 60),
    st.integers(1, 20),
)
def test_a_step_back_up_can_be_loaded_keeps_to_the_cap_and_never_goes_above_the_old_load(
    name: str, steps: int, lost: int, reps: int
) -> None:
    exercise, equipment = describe(name), default_equipment("kg")
    written = "each {} kg" if exercise.counted == "each" else "{} kg"
    before = Decimal(steps) * Decimal("2.5")
    last = max(Decimal("2.5"), before - Decimal(lost) * Decimal("1.25"))
    low = max(1, reps - 1)
    prescription = Prescription(
        exercise=name, counted=exercise.counted, range=Range(low=low, high=low + 2), sets=1
    )
    past: tuple[Exposure, ...] = exposures(f"{written.format(last)} x {reps}", name)
    wanted = sets(f"{written.format(before)} x {reps}", name)[0]
    target = next_target(
        prescription, past, unit="kg", equipment=equipment, exercise=exercise, back_to=wanted
    )
    assert isinstance(target, Target)
    if isinstance(target.reason, BuildBack):
        loading = Loading(exercise, equipment, "kg", Body())
        step = loading.step(Load(last, exercise.counted), Load(target.load, target.load_kind))
        assert 0 < step <= MOST_RAISE + 1e-6
        assert target.load <= before
        assert is_loadable(target.load, "kg", exercise, equipment, target.load_kind)
        assert target.reps == prescription.range.middle
