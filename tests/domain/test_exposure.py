"""What an exposure is, and what makes two of them comparable."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.exposure import Exposure, Kind
from domain.sets import TrainingSet
from tests.domain.tables import exposures, sets


@pytest.mark.parametrize(
    ("done", "lowering_only", "is_hold"),
    [
        ("80 kg x 8", False, False),
        ("body lowering x 5", True, False),
        ("body x 1; body lowering x 5", False, False),
        ("body for 30 s", False, True),
    ],
)
def test_kind(done: str, lowering_only: bool, is_hold: bool) -> None:
    (exposure,) = exposures(done)
    assert exposure.kind == Kind("Push", "Bench press", lowering_only, is_hold)


def test_the_same_exercise_in_another_workout_is_another_kind() -> None:
    (exposure,) = exposures("80 kg x 8")
    assert replace(exposure, workout="Pull").kind != exposure.kind


def test_lowering_only_reps_after_full_ones_do_not_count() -> None:
    (exposure,) = exposures("body x 2; body lowering x 5")
    assert exposure.counting == sets("body x 2")


SETS = st.builds(
    TrainingSet,
    exercise=st.just("Bench press"),
    load=st.just(Decimal(60)),
    unit=st.just("kg"),
    load_kind=st.just("total"),
    reps=st.none(),
    seconds=st.integers(1, 60),
    lowering_only=st.booleans(),
)
SETS |= st.builds(lambda done: replace(done, reps=done.seconds, seconds=None), SETS)


@given(done=st.lists(SETS, min_size=1, max_size=5))
def test_whatever_is_done_together_some_of_it_counts_and_in_one_way(done: list[TrainingSet]) -> None:
    exposure = Exposure("Push", "Bench press", date(2026, 3, 1), tuple(done))
    assert {(each.lowering_only, each.seconds is not None) for each in exposure.counting} == {
        (exposure.lowering_only, exposure.is_hold)
    }


def test_there_is_no_exposure_of_nothing() -> None:
    with pytest.raises(ValueError, match="without a set"):
        Exposure("Push", "Bench press", date(2026, 3, 1), ())
