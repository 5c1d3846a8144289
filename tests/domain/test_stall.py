"""Stalls by the plain rule, as worked by hand; and the review of a programme."""

from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.comparison import Body
from domain.programme import Prescription, Range
from domain.stall import find_stall, review
from domain.strength_series import strength_index
from tests.domain.tables import Case, exposures, read_cases

CASES = read_cases("stalls.md")
BENCH = Prescription(exercise="Bench press", counted="total", range=Range(low=6, high=8))


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place}: {case['situation']}")
def test_stall_is_the_one_worked_by_hand(case: Case) -> None:
    history = exposures(case.get("history"))
    tell_after = case.get("tell after")
    stall = find_stall(history, BENCH, int(tell_after) if tell_after else None)
    if not case["since"]:
        assert stall is None
        return
    assert stall is not None
    place = int(case["since"]) - 1
    assert (stall.since, stall.without_beat) == (history[place].on, int(case["without"]))
    assert stall.exposures == history[place:]
    assert (stall.exercise, stall.workout) == ("Bench press", "Push")


def test_the_stall_of_an_exercise_takes_no_notice_of_its_alternative() -> None:
    """Exposures of another exercise in the same workout are another history."""
    dips = exposures("body x 8 then body x 8 then body x 8 then body x 8", "Dip")
    assert find_stall(dips, BENCH) is None


@given(st.lists(st.integers(1, 20), min_size=1, max_size=12), st.integers(2, 6))
def test_a_stall_has_as_many_exposures_without_a_beat_as_it_says(reps: list[int], tell_after: int) -> None:
    """At one load a beat is a rep more than last time, so the rule can be counted by hand."""
    history = exposures(" then ".join(f"80 kg x {each}" for each in reps))
    without = 0
    for before, now in pairwise(reps):
        without = 0 if now > before else without + 1
    stall = find_stall(history, BENCH, tell_after)
    assert (stall.without_beat if stall else None) == (without if without >= tell_after else None)


def test_a_review_of_lifts_that_all_rise() -> None:
    """Four rounds: two lifts up in each, exactly; 1 / (24 x 24) by chance, 2.5 kg of 80 kg a round."""
    bench = exposures("80 kg x 8 then 82 kg x 8 then 84.05 kg x 8 then 86.15125 kg x 8")
    rows = exposures("40 kg x 10 then 41 kg x 10 then 42.025 kg x 10 then 43.075625 kg x 10", "Row")
    found = review((bench, rows))
    assert found is not None
    assert found.risen
    assert found.p_value == pytest.approx(1 / 576)
    assert found.gain_per_round == pytest.approx(0.025)
    assert found.rounds == 4


def test_one_lift_over_four_rounds_rises_at_best_by_a_chance_of_one_in_twenty_four() -> None:
    bench = exposures("80 kg x 5 then 80 kg x 6 then 80 kg x 7 then 80 kg x 8")
    found = review((bench,))
    assert found is not None
    assert found.p_value == pytest.approx(1 / 24)


@pytest.mark.parametrize(
    "histories",
    [
        ("80 kg x 8 then 80 kg x 8 then 80 kg x 8 then 80 kg x 8",),
        ("80 kg x 8 then 80 kg x 9", "60 kg x 8 then 60 kg x 7"),
        ("80 kg x 8 then 80 kg x 7 then 80 kg x 6 then 80 kg x 5",),
        ("80 kg x 7 then 80 kg x 8",),
    ],
)
def test_a_review_of_what_has_not_risen_for_sure(histories: tuple[str, ...]) -> None:
    found = review(tuple(exposures(each) for each in histories))
    assert found is not None
    assert not found.risen


def test_no_review_without_two_exposures_of_anything() -> None:
    assert review((exposures("80 kg x 8"), ())) is None
    assert review(()) is None


def test_body_weight_rises_with_its_share_of_the_body() -> None:
    """Ten kilograms more on 80 are an eighth more strength; on half of them a quarter."""
    (plain,), (loaded,) = exposures("body x 8"), exposures("+10 kg x 8")
    for share, ratio in ((Decimal(1), 90 / 80), (Decimal("0.5"), 50 / 40)):
        body = Body(Decimal(80), share)
        one, other = strength_index(plain, body), strength_index(loaded, body)
        assert one is not None
        assert other is not None
        assert 2.718281828459045 ** (other - one) == pytest.approx(ratio)


def test_nothing_done_has_no_strength() -> None:
    assert strength_index(exposures("90 kg x 0")[0], Body()) is None
