"""Time away and illness: each workout begins lighter, is said to, and is built back."""

from collections.abc import Sequence
from datetime import date

import pytest

from domain.incoming import CardWanted
from domain.parts import Digest, Part, Plan, TargetPart, VerdictPart
from domain.plan_lines import PlanLine
from domain.target_reasons import BuildBack, Eased
from tests.domain.client.people import MARA, Life, at, kinds, noor


def trained() -> Life:
    """Return the life of one who has done both workouts once."""
    life = Life()
    life.says("60 x 9\n80 x 7\n14 x 10", at(2))
    life.says("20 x 10\n45 s", at(5))
    return life


def lines(parts: Sequence[Part]) -> dict[str, PlanLine]:
    """Return the lines of the one plan among parts."""
    (plan,) = (part for part in parts if isinstance(part, Plan))
    return {line.exercise: line for line in plan.lines}


def eased(line: PlanLine) -> tuple[str, int | None, bool] | None:
    """Return the share, the days away and whether it was an illness, where a line begins lighter."""
    reason = line.reason
    return (f"{reason.factor}", reason.days_away, reason.after_illness) if isinstance(reason, Eased) else None


def test_after_five_weeks_away_both_workouts_begin_lighter_and_are_built_back() -> None:
    life = trained()
    life.says("away till the 9th of April", at(6))
    rows = lines(life.passes_to(at(9, 9, month=4)))
    assert {eased(line) for line in rows.values()} == {("0.85", 35, False)}
    verdict, target, *_ = life.says("row 50 x 9", at(9, month=4))
    assert isinstance(verdict, VerdictPart)
    assert isinstance(target, TargetPart)
    assert (verdict.result, verdict.eased) == ("below", True)
    assert target.load == 55
    assert isinstance(target.reason, BuildBack)
    assert target.back_to is not None
    assert target.back_to.load == 60
    life.says("67.5 x 7\n10 x 10", at(9, month=4))
    # The other workout comes three days later, but what it has was last done before the break.
    rows = lines(life.passes_to(at(12, 9, month=4)))
    assert {eased(line) for line in rows.values()} == {("0.85", 35, False)}
    life.says("16 x 10\n40 s", at(12, month=4))
    rows = lines(life.passes_to(at(15, 9, month=4)))
    assert {eased(line) for line in rows.values()} == {None}
    assert all(line.back_to is not None for line in rows.values())
    verdict, target, *_ = life.says("row 60 x 9", at(15, month=4))
    assert isinstance(target, TargetPart)
    assert target.back_to is None


def test_days_that_the_schedule_leaves_anyway_are_no_days_away() -> None:
    rare = Life(noor("Harbour Rare\nTrain every 15 days in turn: All\n\nAll\n1. Bench press, 5-8 reps"))
    rare.says("60 x 6", at(2))
    (line,) = lines(rare.passes_to(at(17, 9))).values()
    assert line.target is not None
    assert line.target.load == 60
    (line,) = lines(rare.says("what's next?", at(17, 10))).values()
    assert eased(line) is None
    (line,) = lines(rare.passes_to(at(1, 9, month=4))).values()
    assert eased(line) == ("0.85", 30, False)


def test_a_set_that_was_not_lighter_is_not_called_so() -> None:
    life = trained()
    life.says("away till the 9th of April", at(6))
    verdict, *_ = life.says("row 60 x 8", at(9, month=4))
    assert isinstance(verdict, VerdictPart)
    assert (verdict.result, verdict.eased) == ("below", False)


def test_whoever_was_ill_begins_lighter_after_less_than_two_weeks_too() -> None:
    life = trained()
    assert kinds(life.says("got the flu", at(6))) == ["paused", "get well"]
    (card, *_) = life.hears(CardWanted(coach=MARA.number), at(7)) or life.to_coach
    assert isinstance(card, Digest)
    assert card.clients[0].ill_on is not None
    life.says("I'm back", at(12, 7))
    rows = lines(life.passes_to(at(12, 9)))
    assert {eased(line) for line in rows.values()} == {("0.90", None, True)}
    life.says("50 x 9\n70 x 7\n12 x 10", at(12))
    rows = lines(life.passes_to(at(15, 9)))
    assert {eased(line) for line in rows.values()} == {("0.90", None, True)}
    life.says("18 x 10\n40 s", at(15))
    rows = lines(life.passes_to(at(18, 9)))
    assert {eased(line) for line in rows.values()} == {None}
    life.hears(CardWanted(coach=MARA.number), at(18, 10))
    (card, *_) = life.to_coach
    assert isinstance(card, Digest)
    assert card.clients[0].ill_on is None


@pytest.mark.parametrize(
    "text",
    ["I'm back", "back", "the flu is gone", "I'm over the flu", "feeling better again", "fully recovered"],
)
def test_the_ill_come_back_in_many_words(text: str) -> None:
    life = trained()
    life.says("can't train, I'm ill", at(6))
    assert kinds(life.says(text, at(10)))[0] == "back"
    assert not life.state.memory.paused


def test_word_after_word_of_an_illness_is_not_answered_with_the_same_advice() -> None:
    life = trained()
    assert kinds(life.says("woke up with a fever, no training today", at(8, 7))) == ["paused", "get well"]
    assert kinds(life.says("it's the flu, in bed", at(9))) == ["still ill"]
    assert kinds(life.says("still coughing", at(11))) == ["still ill"]
    assert kinds(life.says("fever is gone but I feel weak", at(12))) == ["still ill"]
    assert life.state.memory.paused
    assert kinds(life.says("feeling well again, can I train tomorrow?", at(14))) == ["back", "moved"]
    assert life.state.memory.moved_to == date(2026, 3, 15)


def test_feeling_a_bit_better_is_not_being_back() -> None:
    life = trained()
    life.says("got the flu", at(6))
    life.says("feeling a bit better", at(8))
    assert life.state.memory.paused


@pytest.mark.parametrize(
    "text", ["feeling sick, can I move today to Monday?", "got a cold, moving today to Monday"]
)
def test_who_moves_a_workout_for_an_illness_begins_lighter_too(text: str) -> None:
    life = trained()
    life.says(text, at(8, 9))
    if life.state.memory.moved_to is None:
        assert life.state.memory.paused
    rows = lines([*life.says("what's next?", at(9))])
    assert {eased(line) for line in rows.values()} == {("0.90", None, True)}


@pytest.mark.parametrize(
    "text", ["away till the 14th", "can't today, moving it to Monday", "my wife has the flu, can't today"]
)
def test_without_an_illness_a_few_days_change_nothing(text: str) -> None:
    life = trained()
    life.says(text, at(8, 9))
    rows = lines([*life.says("what's next?", at(9))])
    assert {eased(line) for line in rows.values()} == {None}


def test_an_illness_taken_back_is_none() -> None:
    life = trained()
    life.says("got the flu", at(6))
    assert kinds(life.says("undo", at(6))) == ["plans as before"]
    assert life.state.memory.ill_on is None
    rows = lines(life.passes_to(at(8, 9)))
    assert {eased(line) for line in rows.values()} == {None}


def test_a_review_over_a_break_says_so_to_the_coach_and_spares_the_client() -> None:
    """It waits until something has been done since that can be held against what was before."""
    life = trained()
    life.says("away till the 9th of April", at(6))
    life.says("50 x 9\n67.5 x 7\n10 x 10", at(9, month=4))
    life.says("16 x 10\n40 s", at(12, month=4))
    assert [alert.reason for alert in life.state.alerts] == []
    assert "review" not in kinds(life.says("60 x 9\n80 x 8\n14 x 10", at(15, month=4)))
    (alert,) = (alert for alert in life.state.alerts if alert.reason == "review")
    assert alert.evidence["weeks_away"] == 5
