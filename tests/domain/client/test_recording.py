"""Sets become entries, verdicts and targets; corrections supersede, and nothing is lost."""

from datetime import date
from decimal import Decimal

from domain.outcome import Recorded, TakenBack
from domain.parts import Notice, Plan, TargetPart, VerdictPart
from tests.domain.client.people import Life, at, kinds, noor


def verdicts(parts: object) -> list[VerdictPart]:
    assert isinstance(parts, tuple)
    return [part for part in parts if isinstance(part, VerdictPart)]


def test_a_set_is_recorded_on_its_day_and_answered_with_verdict_and_target() -> None:
    life = Life()
    said = life.says("60 x 9", at(2))
    assert kinds(said) == ["verdict", "target"]
    (entry,) = life.state.entries
    assert (entry.set.exercise, entry.set.load, entry.set.reps) == ("Seated cable row", Decimal(60), 9)
    assert (entry.set.on, entry.message, entry.workout) == (date(2026, 3, 2), 1, 1)
    assert verdicts(said)[0].result == "first"


def test_the_next_exposure_is_judged_against_the_last_of_its_kind() -> None:
    life = Life()
    life.says("60 x 9\n80 x 7\n14 x 10", at(2))
    life.says("20 x 10\n45 s", at(5))
    said = life.says("60 x 10", at(8))
    (verdict,) = verdicts(said)
    assert (verdict.result, verdict.set.reps, verdict.before and verdict.before.reps) == ("beat", 10, 9)
    target = said[1]
    assert isinstance(target, TargetPart)
    assert target.load > 60


def test_bare_sets_go_down_the_plan_and_the_workout_closes_when_all_are_in() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("80 x 7", at(2))
    assert life.workout_state == "open"
    said = life.says("14 x 10", at(2))
    assert kinds(said)[-1] == "workout done"
    assert [entry.set.exercise for entry in life.state.entries] == [
        "Seated cable row",
        "Romanian deadlift",
        "Hammer curl",
    ]
    assert life.workout_state == "done"


def test_a_correction_supersedes_the_entry_it_points_at() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    said = life.says("make that 10", at(2))
    (entry,) = life.state.entries
    assert entry.set.reps == 10
    assert verdicts(said)[0].corrected
    assert [change.instead_of for change in life.outcome.changes if isinstance(change, Recorded)] == [1]


def test_undo_takes_back_what_the_last_message_recorded_and_opens_the_workout_again() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("80 x 7\n14 x 10", at(2))
    assert life.workout_state == "done"
    assert kinds(life.says("undo", at(2))) == ["taken back"]
    assert [entry.set.load for entry in life.state.entries] == [Decimal(60)]
    assert [change.entry for change in life.outcome.changes if isinstance(change, TakenBack)] == [2, 3]
    assert life.workout_state == "open"


def test_undo_with_nothing_recorded_says_so() -> None:
    assert kinds(Life().says("undo", at(2))) == ["nothing to take back"]


def test_an_edited_message_is_read_again_and_its_sets_replaced() -> None:
    life = Life()
    life.says("60 x 8", at(2))
    said = life.edits("60 x 9", "60 x 8", 1, at(2, 19))
    assert kinds(said)[0] == "read again"
    (entry,) = life.state.entries
    assert (entry.set.reps, entry.message) == (9, 1)


def test_an_edit_that_changes_nothing_does_nothing() -> None:
    life = Life()
    life.says("60 x 8", at(2))
    assert life.edits("60 x 8", "60 x 8", 1, at(2, 19)) == ()
    assert life.outcome.changes == ()


def test_a_workout_of_another_day_is_recorded_on_its_true_day() -> None:
    life = Life()
    life.says("yesterday: 60 x 9\n80 x 7\n14 x 10", at(3))
    assert {entry.set.on for entry in life.state.entries} == {date(2026, 3, 2)}
    assert life.state.workouts[-1].on == date(2026, 3, 2)
    said = life.passes_to(at(5, 8))
    assert kinds(said) == ["reminder", "plan"]


def test_another_workout_of_the_rotation_is_recognised_by_its_exercises() -> None:
    life = Life()
    life.says("goblet squat 20 x 10", at(2))
    assert life.state.workouts[-1].name == "Legs"


def test_missing_equipment_puts_the_sheets_alternative_in_place() -> None:
    life = Life(noor(lacking=("dumbbells",)))
    said = life.says("cable curl 20 x 10", at(2))
    assert verdicts(said)[0].exercise == "Cable curl"
    assert kinds(said) == ["verdict", "target"]


def test_a_message_of_nonsense_records_nothing_and_is_answered() -> None:
    for text in ("", "   ", "😀😀", "\u202e\u0007", "<b>hi</b>", "9999 kg x 500", "привет", "x" * 100_000):
        life = Life()
        said = life.says(text, at(2))
        assert len(said) >= 1, text
        assert life.state.entries == (), text


def test_more_load_for_fewer_reps_is_said_to_be_what_was_aimed_for() -> None:
    """Level by strength is no disappointment where it is just what the bot had asked for."""
    life = Life()
    life.says("60 x 9\n80 x 8\n14 x 10", at(2))
    life.says("20 x 10\n45 s", at(5))
    plan = next(part for part in life.passes_to(at(8, 8)) if isinstance(part, Plan))
    aim = plan.lines[1].target
    assert aim is not None
    assert aim.load > 80
    (verdict,) = verdicts(life.says(f"romanian deadlift {aim.load} x {aim.reps}", at(8)))
    assert verdict.result == "level"
    assert verdict.on_target
    (verdict,) = verdicts(life.says(f"make that {(aim.reps or 0) - 3}", at(8)))
    assert not verdict.on_target


def test_of_a_message_beyond_all_measure_nothing_is_recorded_but_what_hurts_is_heard() -> None:
    for text in ("80 x 8 " * 150_000, "60 x 9, " * 100):
        life = Life()
        assert kinds(life.says(text, at(2))) == ["cut"]
        assert life.state.entries == ()
    life = Life()
    assert "safety" in kinds(life.says("my left knee hurts. " + "60 x 9, " * 1000, at(2)))
    assert life.state.entries == ()


def test_what_is_told_twice_is_said_to_stand_and_what_is_new_beside_it_counts() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    said = life.says("row 60x9, rdl 80x7", at(2, 19))
    assert kinds(said) == ["told before", "verdict", "target"]
    (again,) = life.says("yesterday: row 60x9, rdl 80x7", at(3))
    assert isinstance(again, Notice)
    assert (again.facts["on"], again.facts["exercises"]) == ("2026-03-02", [])
    assert kinds(life.says("row 60x9, rdl 80x7 again", at(3, 18, 5)))[0] == "verdict"
