"""What a client and a coach hear of stalls that are told from bad days, and which rule decides."""

import math
from dataclasses import replace
from datetime import date, timedelta

import pytest

from domain.actions import Remedy
from domain.client.lifts import lifts_of
from domain.incoming import Changed, Decided, WhyWanted
from domain.journal import Alert
from domain.parts import AlertPart, Notice
from domain.wishes import BackWish
from tests.domain.client.lifting import FREE, LIFTS, Strength, ending, train
from tests.domain.client.people import MARA, Life, at, kinds, noor

ENDED_AFTER = 9
BENCH_ENDS = ending({"Bench press": ENDED_AFTER})
BENCH_FALLS = ending({"Bench press": ENDED_AFTER}, after=-0.03)
ALL_END = ending(dict.fromkeys(LIFTS, ENDED_AFTER))


def decide(life: Life, remedy: Remedy, turn: int, workouts: int | None = None) -> None:
    alert = next(each for each in life.state.alerts if each.reason == "stall")
    order = Decided(coach=MARA.number, alert=alert.number, remedy=remedy, workouts=workouts)
    life.hears(order, at(2) + timedelta(days=3 * turn, hours=1))


def stalls(life: Life) -> list[Alert]:
    return [alert for alert in life.state.alerts if alert.reason == "stall"]


@pytest.mark.parametrize("seed", ["a", "b", "c"])
def test_who_gains_on_days_that_vary_is_left_in_peace(seed: str) -> None:
    assert train(Life(noor(FREE)), ending({}), range(20), noise=0.025, seed=seed) == []


@pytest.mark.parametrize(("strength", "declining"), [(BENCH_ENDS, False), (BENCH_FALLS, True)])
def test_an_exercise_that_ends_alone_is_found_alone_with_its_evidence(
    strength: Strength, declining: bool
) -> None:
    life = Life(noor(FREE))
    ((turn, exercise),) = train(life, strength, range(18), seed="c")
    assert exercise == "Bench press"
    assert ENDED_AFTER + 1 <= turn <= ENDED_AFTER + 7
    (alert,) = stalls(life)
    evidence = alert.evidence
    assert evidence["declining"] is declining
    assert abs((date.fromisoformat(evidence["since"]) - date(2026, 3, 2)).days // 3 - ENDED_AFTER) <= 3
    assert evidence["before"]["low"] < 0.015 < evidence["before"]["high"]
    assert evidence["gain"]["low"] < (-0.03 if declining else 0) < evidence["gain"]["high"]
    assert 0.5 < evidence["ended"] <= 1
    assert len(evidence["exposures"]) == len(evidence["verdicts"]) + 1 == 6


def test_several_that_slow_together_are_one_matter_about_the_client() -> None:
    life = Life(noor(FREE))
    ((turn, exercise),) = train(life, ALL_END, range(20), seed="c")
    assert exercise is None
    assert turn <= ENDED_AFTER + 5
    (alert,) = stalls(life)
    assert len(alert.exercises) >= 3
    (question,) = life.state.memory.questions
    assert question.about == {"exercises": list(alert.exercises)}


def test_what_had_stalled_alone_is_part_of_it_once_several_have() -> None:
    """One ends four workouts before the others."""
    life = Life(noor(FREE))
    one_first = ending(dict.fromkeys(LIFTS, 14) | {"Overhead press": 10})
    found = train(life, one_first, range(20), seed="b")
    assert [exercise for _, exercise in found] == ["Overhead press", None]
    (alert,) = stalls(life)
    assert alert.evidence["was_told"] == ["Overhead press"]
    assert "Overhead press" in alert.exercises


def test_a_remedy_for_several_is_for_all_of_them_and_is_followed_up() -> None:
    life = Life(noor(FREE))
    ((turn, _),) = train(life, ALL_END, range(13), seed="c")
    exercises = set(stalls(life)[0].exercises)
    decide(life, "lighten", turn)
    assert {each.exercise for each in life.state.memory.easings} == exercises
    assert {each.exercise for each in life.state.memory.quiet} == exercises
    looks = []
    for later in range(turn + 1, turn + 5):
        assert train(life, ending({}, gain=0.02), [later], seed="c") == []
        looks += [
            part.facts for part in life.to_coach if isinstance(part, Notice) and part.topic == "followed up"
        ]
    (look,) = looks
    assert look["looked_at"] == len(exercises)
    assert look["worked"] >= len(exercises) / 2


def test_it_is_told_once_until_it_is_settled_and_then_only_anew() -> None:
    life = Life(noor(FREE))
    assert len(train(life, BENCH_ENDS, range(22), seed="c")) == 1
    decide(life, "keep on", 21, workouts=6)
    assert train(life, BENCH_ENDS, range(22, 27), seed="c") == []


@pytest.mark.parametrize("text", ["", "has stalled", "is bench press slowing"])
def test_all_of_the_evidence_is_said_on_request(text: str) -> None:
    life = Life(noor(FREE))
    train(life, BENCH_ENDS, range(18), seed="c")
    life.hears(WhyWanted(coach=MARA.number, text=text), at(2) + timedelta(days=54))
    assert [(part.reason, part.full) for part in life.to_coach if isinstance(part, AlertPart)] == [
        ("stall", True)
    ]


def test_a_stall_that_a_correction_takes_away_is_withdrawn() -> None:
    life = Life(noor(FREE))
    (found,) = train(life, BENCH_ENDS, range(14), seed="c")
    assert found == (13, "Bench press")
    life.says("bench press was 12 reps", at(2) + timedelta(days=39, hours=1))
    assert stalls(life) == []
    assert "stall withdrawn" in kinds(life.to_coach)


def test_the_coach_s_own_rule_holds_where_the_sheet_names_none() -> None:
    """Three in a row at one load, by her rule of two or the sheet's of four."""

    def told(sheet: str, rule: int | None) -> list[int]:
        state = noor(sheet)
        state = replace(state, client=replace(state.client, coach=replace(MARA, tell_after=rule)))
        life, days = Life(state), []
        for day in range(2, 9):
            life.says("100x9", at(day))
            days += [day] if "stall" in life.alert_reasons else []
        return days

    sheet = "One\nTrain every day in turn: A\n\nA\n1. Leg press, 8-12 reps\n"
    assert told(sheet, 2) == [4]
    assert told(sheet.replace("\n\nA", "\nTell me after 4 workouts without a beat\n\nA", 1), 2) == [6]
    assert told(sheet, None) != [4]


SHEET = """\
One
Train every day in turn: A
Tell me after 2 workouts without a beat

A
1. Leg press, 8-12 reps
"""


def counted(life: Life) -> list[int]:
    """Return the loads of leg press that the engine counts, in percent of the first."""
    (lift,) = lifts_of(life.state).values()
    now, before = lift.series()
    points = (*before.points, *now.points)
    return [round(100 * math.exp(each.shown - points[0].shown)) for each in points]


def pressed(life: Life, loads: dict[int, int]) -> list[int]:
    """Let that be done, by days; return the days on which a stall came to the coach."""
    days = []
    for day, load in loads.items():
        life.says(f"{load}x10", at(day))
        days += [day] if "stall" in life.alert_reasons else []
    return days


def test_what_is_lighter_on_purpose_counts_again_once_strength_is_back() -> None:
    life = Life(noor(SHEET))
    assert pressed(life, {2: 100, 3: 100, 4: 100}) == [4]
    decide(life, "lighten", 0)
    assert pressed(life, {5: 90, 6: 93, 7: 97, 8: 99, 9: 101}) == []
    assert counted(life) == [100, 100, 100, 99, 101]


def test_who_comes_back_no_further_is_told_of_by_the_plain_rule() -> None:
    life = Life(noor(SHEET))
    pressed(life, {2: 100, 3: 100, 4: 100})
    decide(life, "lighten", 0)
    assert pressed(life, {5: 90, 6: 90, 7: 90}) == [7]


def test_what_was_done_after_an_illness_counts_again_once_strength_is_back() -> None:
    life = Life(noor(SHEET))
    pressed(life, {2: 100, 3: 101, 4: 102})
    life.says("I have the flu, I need a break", at(5))
    life.says("I'm well again", at(11))
    assert pressed(life, {12: 92, 13: 91, 14: 101}) == []
    assert counted(life) == [100, 101, 102, 101]


def test_what_was_done_on_hold_never_counts() -> None:
    life = Life(noor(SHEET))
    pressed(life, {2: 100, 3: 101})
    life.says("my knee hurts on leg press", at(4))
    assert pressed(life, {5: 90}) == []
    assert counted(life) == [100, 101]
    life.hears(Changed(coach=MARA.number, change=1, wish=BackWish(exercise="leg press")), at(6))
    assert pressed(life, {7: 91, 8: 95, 9: 100}) == []
    assert counted(life) == [100, 101, 100]


def test_no_rule_counts_what_is_lighter_after_three_weeks_away() -> None:
    life = Life(noor(SHEET))
    assert pressed(life, {2: 100, 3: 100, 26: 90, 27: 90}) == []
    assert counted(life) == [100, 100]
    assert pressed(life, {28: 90}) == [28]
