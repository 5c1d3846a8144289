"""Verdicts: the hand-worked table, and the laws that must hold for any two exposures."""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import cast

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.comparison import Result
from domain.exercises import Joint
from domain.exposure import Exposure
from domain.sets import LoadKind, TrainingSet
from domain.units import convert
from domain.verdict import Verdict, judge
from tests.domain.tables import Case, exposures, read_cases

CASES = read_cases("verdicts.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place}: {case['what happened']}")
def test_verdict_is_the_one_worked_by_hand(case: Case) -> None:
    past = exposures(
        case.get("before"),
        exercise=case.get("exercise before") or "Bench press",
        workout=case.get("workout before") or "Push",
    )
    (now,) = exposures(case["now"])
    mass, share, joints = case.get("body mass"), case.get("share"), case.get("joints")
    verdict = judge(
        now,
        past[-1] if past else None,
        past[:-1],
        body_mass_kg=Decimal(mass) if mass else None,
        body_share=Decimal(share) if share else None,
        joints=cast("tuple[Joint, ...]", tuple(joints.split(", "))) if joints else (),
    )
    assert (verdict.result, verdict.reason.rule) == (case["verdict"], case["by"])
    if case.get("best"):
        assert verdict.personal_best == (case["best"] == "yes")


def test_the_verdict_says_in_which_set_something_was_gained() -> None:
    """Set against set in order, so that the words can say where."""
    (before,), (now,) = exposures("80 kg x 8, 8, 7"), exposures("80 kg x 8, 8, 9")
    assert [each.result for each in judge(now, before).in_order] == ["level", "level", "beat"]


OPPOSITE: dict[Result, Result] = {
    "beat": "below",
    "below": "beat",
    "level": "level",
    "not comparable": "not comparable",
}
WORSE_TO_BETTER: tuple[Result, ...] = ("below", "level", "beat")


@st.composite
def training_sets(draw: st.DrawFn, *, hold: bool, lowering_only: bool) -> TrainingSet:
    kinds: tuple[LoadKind, ...] = ("total", "added", "assist", "body")
    kind = draw(st.sampled_from(kinds))
    quarters = 0 if kind == "body" else draw(st.integers(1, 240))
    return TrainingSet(
        exercise="Squat",
        load=Decimal(quarters) * Decimal("1.25"),
        unit="kg",
        load_kind=kind,
        reps=None if hold else draw(st.integers(0, 30)),
        seconds=draw(st.integers(1, 400)) if hold else None,
        lowering_only=lowering_only,
    )


@st.composite
def pairs(draw: st.DrawFn) -> tuple[Exposure, Exposure]:
    hold, lowering_only = draw(st.sampled_from([(False, False), (False, True), (True, False)]))
    some = st.lists(training_sets(hold=hold, lowering_only=lowering_only), min_size=1, max_size=4)
    one, other = draw(some), draw(some)
    return (
        Exposure("Legs", "Squat", date(2026, 3, 4), tuple(one)),
        Exposure("Legs", "Squat", date(2026, 3, 1), tuple(other)),
    )


bodies = st.sampled_from([(None, None), (Decimal(70), Decimal(1)), (Decimal("91.5"), Decimal("0.65"))])
Body = tuple[Decimal | None, Decimal | None]


def judged(now: Exposure, before: Exposure, body: Body) -> Verdict:
    return judge(now, before, body_mass_kg=body[0], body_share=body[1])


@given(pairs(), bodies)
def test_verdicts_are_antisymmetric(pair: tuple[Exposure, Exposure], body: Body) -> None:
    """What beats the other is below it the other way round. (Steps on the ladder apart: another kind.)"""
    now, before = pair
    assert judged(before, now, body).result == OPPOSITE[judged(now, before, body).result]


@given(pairs())
def test_an_exposure_is_level_with_itself(pair: tuple[Exposure, Exposure]) -> None:
    assert judge(pair[0], pair[0]).result == "level"


@given(pairs(), bodies, st.data())
def test_more_at_the_same_load_never_worsens_a_verdict(
    pair: tuple[Exposure, Exposure], body: Body, data: st.DataObject
) -> None:
    """A set with more reps (seconds) may make a level one uncertain, but never takes a beat away."""
    now, before = pair
    at = data.draw(st.integers(0, len(now.sets) - 1))
    more = data.draw(st.integers(1, 12))
    old = now.sets[at]
    longer = (
        replace(old, reps=(old.reps or 0) + more)
        if old.seconds is None
        else replace(old, seconds=old.seconds + more)
    )
    better = replace(now, sets=(*now.sets[:at], longer, *now.sets[at + 1 :]))
    was, is_now = judged(now, before, body).result, judged(better, before, body).result
    if was == "beat":
        assert is_now == "beat"
    if was == "level":
        assert is_now != "below"
    if was == "not comparable":
        assert is_now != "below"


@given(pairs(), bodies)
def test_the_same_history_in_kilograms_and_pounds_gives_the_same_verdict(
    pair: tuple[Exposure, Exposure], body: Body
) -> None:
    now, before = pair
    in_lb = tuple(
        replace(
            each,
            sets=tuple(replace(one, load=convert(one.load, "kg", "lb"), unit="lb") for one in each.sets),
        )
        for each in pair
    )
    in_kg = judged(now, before, body)
    assert judged(in_lb[0], in_lb[1], body).result == in_kg.result


@given(pairs(), bodies)
def test_so_does_one_day_told_in_pounds_and_the_other_in_kilograms(
    pair: tuple[Exposure, Exposure], body: Body
) -> None:
    now, before = pair
    in_lb = tuple(replace(one, load=convert(one.load, "kg", "lb"), unit="lb") for one in before.sets)
    mixed = judged(now, replace(before, sets=in_lb), body)
    assert mixed.result == judged(now, before, body).result


@given(pairs(), bodies)
def test_a_personal_best_is_always_a_beat_and_the_deciding_set_was_done(
    pair: tuple[Exposure, Exposure], body: Body
) -> None:
    now, before = pair
    verdict = judge(now, before, (before,), body_mass_kg=body[0], body_share=body[1])
    assert verdict.personal_best == (verdict.result == "beat")
    assert verdict.set in now.sets
    assert verdict.before in before.sets
