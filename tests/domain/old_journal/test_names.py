"""Which exercise a name in an old journal means."""

from datetime import date
from decimal import Decimal

import pytest

from domain.old_journal.found import FoundSet, FoundWorkout
from domain.old_journal.names import Meaning, meanings_of, resolved
from domain.sets import TrainingSet

SHEET = ("Back squat", "Bench press", "Romanian deadlift", "Cliff hang")
DAY = date(2026, 3, 12)


def workout(*names: str, seconds: int | None = None) -> FoundWorkout:
    return FoundWorkout(
        DAY,
        None,
        "done",
        1,
        (),
        tuple(
            FoundSet(
                at,
                TrainingSet(name, Decimal(20), "kg", "total", None if seconds else 8, seconds, on=DAY),
                None,
            )
            for at, name in enumerate(names, 2)
        ),
    )


def meaning(name: str, *, is_ours: bool = False) -> Meaning:
    (found,) = meanings_of([workout(name)], SHEET, {"cliffs": "Cliff hang"}, is_ours=is_ours)
    return found


@pytest.mark.parametrize(
    ("name", "exercise"),
    [
        ("Back squat", "Back squat"),
        ("back squats", "Back squat"),
        ("Squat", "Back squat"),
        ("Squat (Barbell)", "Back squat"),
        ("Bench Press (Barbell)", "Bench press"),
        ("Bench", "Bench press"),
        ("Bnech press", "Bench press"),
        ("RDL", "Romanian deadlift"),
        ("Lat Pulldown (Cable)", "Lat pulldown"),
        ("Bicep Curl (Dumbbell)", "Dumbbell curl"),
        ("Curl, Dumbbell", "Dumbbell curl"),
        ("Pull Up (Assisted)", "Assisted pull-up"),
        ("cliff hangs", "Cliff hang"),
        ("Cliffs", "Cliff hang"),
    ],
)
def test_a_name_that_can_mean_one_exercise(name: str, exercise: str) -> None:
    assert meaning(name) == Meaning(name, 1, exercise)


def test_a_name_that_can_mean_several_is_asked_about_with_them() -> None:
    found = meaning("Incline Bench Press (Dumbbell)")
    assert found.exercise is None
    assert "Incline dumbbell press" in found.near


@pytest.mark.parametrize("name", ["Prone flinger", "x", "=cmd()", "12", "…"])
def test_a_name_that_nothing_is_like_is_asked_about_alone(name: str) -> None:
    assert meaning(name) == Meaning(name, 1, None)


def test_our_own_names_are_taken_as_they_stand() -> None:
    assert meaning("Squat", is_ours=True) == Meaning("Squat", 1, "Squat")


def test_each_name_is_there_once_and_counted() -> None:
    found = meanings_of([workout("Dip", "Row", "Dip"), workout("Dip")], SHEET, {}, is_ours=False)
    assert [(each.name, each.many) for each in found] == [("Dip", 3), ("Row", 1)]


def test_a_load_is_counted_as_its_exercise_has_it_and_what_is_left_out_goes() -> None:
    names = {"DB": "Dumbbell curl", "Sq": "Back squat", "no": ""}
    (kept,), faults = resolved([workout("DB", "Sq", "no", "unknown")], names, is_ours=False)
    assert [(each.done.exercise, each.done.load_kind) for each in kept.sets] == [
        ("Dumbbell curl", "each"),
        ("Back squat", "total"),
    ]
    assert faults == ()


def test_an_exercise_that_is_held_needs_seconds() -> None:
    kept, faults = resolved([workout("Plank")], {"Plank": "Plank"}, is_ours=False)
    assert kept == ()
    assert [(each.row, each.what) for each in faults] == [(2, "held")]
    (timed,), faults = resolved([workout("Plank", seconds=45)], {"Plank": "Plank"}, is_ours=False)
    assert (timed.sets[0].done.seconds, faults) == (45, ())
