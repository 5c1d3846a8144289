"""Putting right, taking back, editing: what was wrong gives way, and what it had led to with it."""

from decimal import Decimal

import pytest

from domain.incoming import Decided
from domain.outcome import Recorded
from domain.parts import VerdictPart
from tests.domain.client.people import MARA, Life, at, kinds, noor

THREE_SETS = """\
Sets
Train every 2 days in turn: A
Tell me after 2 workouts without a beat

A
1. Bench press, 3 sets of 6-8 reps
2. Barbell row, 8-10 reps
   no barbell: Cable row, 8-10 reps
"""


def reps(life: Life) -> list[int | None]:
    return [entry.set.reps for entry in life.state.entries]


def test_a_set_put_right_keeps_its_place_among_the_others() -> None:
    life = Life(noor(THREE_SETS))
    life.says("bench 60: 8, 7, 6", at(2))
    said = life.says("the second one was 5", at(2))
    assert reps(life) == [8, 5, 6]
    (verdict,) = [part for part in said if isinstance(part, VerdictPart)]
    assert [each.reps for each in verdict.recorded] == [8, 5, 6]


def test_undo_of_a_correction_brings_back_what_was_there_and_a_second_undo_takes_that_back() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("make that 10", at(2))
    said = life.says("undo", at(2))
    assert kinds(said) == ["taken back"]
    assert reps(life) == [9]
    assert life.state.entries[0].message == 1
    life.says("undo", at(2))
    assert life.state.entries == ()


def test_an_edited_correction_corrects_the_same_set_again() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("80 x 7", at(2))
    life.says("make that 8", at(2))
    life.edits("make that 6", "make that 8", 3, at(2))
    assert [(entry.set.load, entry.set.reps) for entry in life.state.entries] == [
        (Decimal(60), 9),
        (Decimal(80), 6),
    ]


def test_an_edited_message_keeps_the_place_of_its_sets() -> None:
    life = Life(noor(THREE_SETS))
    life.says("bench 60 x 8", at(2))
    life.says("bench 60 x 7", at(2))
    life.edits("bench 60 x 6", "bench 60 x 8", 1, at(2))
    assert reps(life) == [6, 7]


def test_a_message_edited_into_nothing_takes_its_sets_back_and_says_so() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    assert kinds(life.edits("oops", "60 x 9", 1, at(2))) == ["read again", "taken back"]
    assert life.state.entries == ()


def test_an_undo_that_is_edited_takes_nothing_more_back() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("80 x 7", at(2))
    life.says("undo", at(2))
    life.edits("undo please", "undo", 3, at(2))
    assert reps(life) == [9]


def test_an_edited_question_to_the_coach_takes_the_place_of_the_first() -> None:
    life = Life()
    life.says("can you check my form?", at(2))
    life.edits("can you check my squat form?", "can you check my form?", 1, at(2))
    (alert,) = life.state.alerts
    assert alert.evidence["said"] == "can you check my squat form?"


def test_a_stall_goes_when_the_set_that_made_it_is_put_right_and_comes_when_that_is_undone() -> None:
    life = Life(noor(THREE_SETS))
    for day in (2, 4, 6):
        life.says("row 60x9", at(day))
        life.says("bench 60x8/8/8" if day == 2 else "bench 62.5x8/8/8", at(day))
    assert [alert.exercise for alert in life.state.alerts] == ["Barbell row"]
    life.says("row was 10", at(6))
    assert life.state.alerts == ()
    assert kinds(life.to_coach) == ["stall withdrawn"]
    assert life.state.memory.questions == ()
    life.says("undo", at(6))
    assert life.alert_reasons == ["stall"]


def test_a_correction_of_an_older_day_says_what_to_aim_for_after_the_latest() -> None:
    life = Life(noor("One\nTrain every 2 days in turn: A\n\nA\n1. Leg press, 8-12 reps\n"))
    life.says("100 x 9", at(2))
    life.says("110 x 9", at(4))
    said = life.says("monday's leg press was 8 not 9", at(4))
    targets = [part.load for part in said if part.kind == "target"]
    assert targets == [Decimal(110)]


def test_an_exercise_done_in_place_of_the_planned_one_completes_the_workout() -> None:
    life = Life(noor(THREE_SETS))
    life.says("bench 60x8/8/8", at(2))
    assert kinds(life.says("cable row 50x9", at(2)))[-1] == "workout done"


@pytest.mark.parametrize("text", ["it was 8", "make that 8"])
def test_what_is_put_right_is_kept_as_it_was_and_superseded(text: str) -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says(text, at(2))
    assert [change.instead_of for change in life.outcome.changes if isinstance(change, Recorded)] == [1]


def test_a_remedy_stays_out_of_the_way_of_a_stall_for_three_exposures() -> None:
    rule = "Tell me after 2 workouts without a beat"
    life = Life(noor(f"One\nTrain every 2 days in turn: A\n{rule}\n\nA\n1. Leg press, 8-12 reps\n"))
    for day in (2, 4, 6):
        life.says("100 x 9", at(day))
    stall = life.state.alerts[0]
    life.hears(Decided(coach=MARA.number, alert=stall.number, remedy="keep on"), at(6, 20))
    for day in (8, 10):
        life.says("100 x 9", at(day))
        assert life.alert_reasons == []
    life.says("100 x 9", at(12))
    assert life.alert_reasons == ["stall"]


def test_two_corrections_in_a_row_are_of_one_set_and_can_be_had_back_one_by_one() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("rdl 80x7", at(2))
    life.says("row was 10", at(2))
    life.says("no, make that 11", at(2))
    assert reps(life) == [11, 7]
    seen = []
    for _ in range(3):
        life.says("undo", at(2))
        seen.append(reps(life))
    assert seen == [[10, 7], [9, 7], [9]]


def test_a_correction_that_points_at_a_set_is_of_that_one() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("rdl 80x7", at(2))
    life.says("row was 10", at(2))
    life.says("the last one was 6", at(2))
    assert reps(life) == [10, 6]


def test_an_edited_message_whose_set_was_put_right_since_is_recorded_once() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("make that 10", at(2))
    life.edits("row 62.5x9", "row 60x9", 1, at(2))
    assert [(entry.set.load, entry.set.reps) for entry in life.state.entries] == [(Decimal("62.5"), 9)]


def test_an_edited_correction_is_of_its_own_set_whatever_was_recorded_since() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("make that 10", at(2))
    life.says("80 x 7", at(2))
    life.edits("make that 8", "make that 10", 2, at(2))
    assert reps(life) == [8, 7]


def test_a_first_set_that_was_of_another_workout_makes_the_workout_that_one() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("that was goblet squat", at(2))
    assert [(each.name, each.state) for each in life.state.workouts] == [("Legs", "open")]
    life.says("undo", at(2))
    assert [(each.name, each.state) for each in life.state.workouts] == [("Pull", "open")]


def test_a_correction_of_a_best_set_takes_the_best_with_it() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    (best, *_) = life.says("row 62.5x9", at(8))
    (level, target, *_) = life.says("make that 60", at(8))
    assert isinstance(best, VerdictPart)
    assert isinstance(level, VerdictPart)
    assert (best.personal_best, level.personal_best, level.result) == (True, False, "level")
    assert getattr(target, "load", None) == Decimal(60)
    (lower, *_) = life.says("on the 2nd row was 10 not 9", at(9))
    assert isinstance(lower, VerdictPart)
    assert lower.set.on == at(2).date()


def test_a_correction_of_what_is_on_hold_spurs_nobody_on() -> None:
    life = Life()
    life.says("rdl 80x7 but my lower back hurts", at(2))
    said = life.says("rdl was 6", at(2))
    assert kinds(said) == ["verdict", "still aside"]
    assert reps(life) == [6]


def test_a_workout_taken_for_missed_is_found_when_what_was_told_turns_out_to_be_it_and_missed_again() -> None:
    life = Life()
    life.says("row 60x9, rdl 80x7, curls 14x10", at(2))
    life.says("squat 16x10, wall sit 20 kg 40 s", at(6))

    def legs() -> list[tuple[int, str]]:
        return [(each.on.day, each.state) for each in life.state.workouts if each.name == "Legs"]

    assert legs() == [(5, "missed"), (6, "done")]
    life.says("that was yesterday", at(6))
    assert legs() == [(5, "done")]
    life.says("undo", at(6))
    assert legs() == [(5, "missed"), (6, "done")]
    life.says("squat was yesterday", at(6))
    life.says("wall sit was yesterday", at(6))
    assert legs() == [(5, "done")]
