"""Whole sheets in the hands of different coaches, each with the programme that it means.

All coaches and programmes are invented.
"""

from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from domain.programme import (
    Alternative,
    FixedDays,
    Ladder,
    Mass,
    Prescription,
    Programme,
    Raise,
    Range,
    RelativeLoad,
    Review,
    Rotation,
    Workout,
)
from domain.sets import LoadKind
from domain.sheet import read_sheet, write_sheet

SHEETS = Path(__file__).parent / "sheets"


def reps(low: int, high: int | None = None) -> Range:
    return Range(low=low, high=high or low)


def seconds(low: int, high: int | None = None) -> Range:
    return Range(low=low, high=high or low, of="seconds")


def kg(amount: str) -> Mass:
    return Mass(amount=Decimal(amount), unit="kg")


def lb(amount: str) -> Mass:
    return Mass(amount=Decimal(amount), unit="lb")


def line(exercise: str, range_: Range, counted: LoadKind = "total", **more: Any) -> Prescription:
    return Prescription(exercise=exercise, range=range_, counted=counted, **more)


def joint(where: str, exercise: str, range_: Range) -> Alternative:
    return Alternative(why="joint", without=where, exercise=exercise, range=range_)


def missing(what: str, exercise: str, range_: Range) -> Alternative:
    return Alternative(why="equipment", without=what, exercise=exercise, range=range_)


def workout(name: str, *lines: Prescription) -> Workout:
    return Workout(name=name, prescriptions=lines)


MEANT: dict[str, Programme] = {
    "design": Programme(
        name="Harbour Base",
        schedule=Rotation(every_days=3, order=("Pull", "Push", "Legs")),
        review=Review(after_rounds=4, switch_to="Harbour Light"),
        workouts=(
            workout(
                "Pull",
                line("Seated cable row", reps(8, 10), stop_short=0, straight_into_next=True),
                line("Lat pulldown", reps(5, 7), stop_short=0),
                line(
                    "Romanian deadlift",
                    reps(6, 8),
                    stop_short=1,
                    alternatives=(joint("lower back", "Back extension", reps(10, 15)),),
                ),
                line(
                    "Hammer curl",
                    reps(8, 12),
                    "each",
                    alternatives=(missing("dumbbells", "Cable curl", reps(8, 12)),),
                ),
            ),
            workout(
                "Push",
                line(
                    "Dip",
                    reps(5, 8),
                    "added",
                    stop_short=0,
                    add_load=Raise(over=8),
                    ladder=Ladder(below=1, up_to=8),
                ),
                line("Dumbbell lateral raise", reps(10, 15), "each"),
            ),
            workout(
                "Legs",
                line("Goblet squat", reps(8, 12), stop_short=0),
                line(
                    "Wall sit",
                    seconds(30, 60),
                    "added",
                    load_from=RelativeLoad(exercise="Goblet squat", difference=kg("10")),
                ),
            ),
        ),
    ),
    "terse": Programme(
        name="OLD MILL STRENGTH",
        schedule=FixedDays(
            days=("monday", "tuesday", "thursday", "friday"),
            order=("UPPER", "LOWER", "UPPER", "LOWER"),
            by_day=True,
        ),
        workouts=(
            workout(
                "UPPER",
                line("Bench press", reps(5, 8), sets=3),
                line("Dumbbell row", reps(8, 10), "each", sets=3),
                line("Overhead press", reps(6, 8), sets=2),
                line("Chin-up", reps(5, 8), "added", sets=2),
            ),
            workout(
                "LOWER",
                line("Back squat", reps(5, 8), sets=3),
                line("Romanian deadlift", reps(8, 10), sets=2),
                line("Plank", seconds(45, 90), "added", sets=2),
            ),
        ),
    ),
    "markdown": Programme(
        name="Two-day starter",
        schedule=Rotation(every_days=4, order=("Workout A", "Workout B")),
        tell_after=3,
        workouts=(
            workout(
                "Workout A",
                line("Leg press", reps(10, 12), sets=3, stop_short=2),
                line(
                    "Chest press machine",
                    reps(8, 10),
                    sets=3,
                    stop_short=2,
                    alternatives=(missing("machine", "Push-up", reps(8, 15)),),
                ),
                line("Seated row machine", reps(8, 10), sets=3, cues=("squeeze the shoulder blades",)),
            ),
            workout(
                "Workout B",
                line("Leg curl", reps(10, 12), sets=2),
                line(
                    "Lat pulldown",
                    reps(8, 10),
                    sets=3,
                    alternatives=(joint("shoulder", "Seated cable row", reps(10, 12)),),
                ),
                line("Dead hang", seconds(20, 40), "added", sets=2),
            ),
        ),
    ),
    "chatty": Programme(
        name="Autumn block for busy people",
        schedule=FixedDays(days=("monday", "wednesday", "friday"), order=("Red", "Blue")),
        review=Review(after_rounds=6, switch_to="Winter block"),
        tell_after=4,
        workouts=(
            workout(
                "Red",
                line(
                    "Trap bar deadlift",
                    reps(6, 8),
                    stop_short=0,
                    add_load=Raise(over=7, by=kg("5")),
                ),
                line(
                    "Incline dumbbell press",
                    reps(8, 12),
                    "each",
                    stop_short=2,
                    cues=("shoulder blades down and back",),
                    alternatives=(joint("shoulder", "Dumbbell floor press", reps(8, 12)),),
                ),
                line(
                    "Bulgarian split squat",
                    reps(10),
                    "each",
                    cues=("each leg",),
                    alternatives=(missing("dumbbells", "Step-up", reps(10)),),
                ),
            ),
            workout(
                "Blue",
                line("Pull-up", reps(4, 6), "added", stop_short=0, add_load=Raise(over=6, by=kg("2.5"))),
                line("Leg extension", reps(12, 15)),
                line("Side plank", seconds(30), "added", cues=("each side",)),
            ),
        ),
    ),
    "paired": Programme(
        name="Quarry Pairs",
        schedule=Rotation(every_days=2, order=("One", "Two")),
        workouts=(
            workout(
                "One",
                line("Overhead press", reps(5, 7), stop_short=0, straight_into_next=True),
                line("Chin-up", reps(5, 8), "added", stop_short=0),
                line("Leg press", reps(12, 15), straight_into_next=True),
                line("Leg curl", reps(12, 15)),
                line("Farmer hold", seconds(30, 45), "each"),
            ),
            workout(
                "Two",
                line("Dumbbell bench press", reps(8, 10), "each", straight_into_next=True),
                line("One-arm dumbbell row", reps(8, 10), "each"),
                line("Goblet squat", reps(10, 12), straight_into_next=True),
                line("Hip thrust", reps(10, 12)),
            ),
        ),
    ),
    "tabbed": Programme(
        name="Tabbed Programme",
        schedule=Rotation(every_days=3, order=("Day 1", "Day 2")),
        workouts=(
            workout(
                "Day 1",
                line("Back squat", reps(6, 8), sets=2, stop_short=2),
                line("Calf raise", reps(12, 20), "added", stop_short=0),
            ),
            workout(
                "Day 2",
                line("Deadlift", reps(4, 6), stop_short=2),
                line("Dip", reps(5, 8), "added", sets=2, add_load=Raise(over=8, by=lb("5"))),
            ),
        ),
    ),
    "weekdays": Programme(
        name="Three Mornings",
        schedule=FixedDays(
            days=("monday", "wednesday", "friday"),
            order=("Heavy legs", "Press and pull", "Odds and ends"),
            by_day=True,
        ),
        workouts=(
            workout("Heavy legs", line("Front squat", reps(4, 6)), line("Lying leg curl", reps(8, 10))),
            workout(
                "Press and pull",
                line("Close-grip bench press", reps(6, 8), add_load=Raise(over=7, by=kg("2.5"))),
                line("Pendlay row", reps(6, 8), straight_into_next=True),
                line("Band pull-apart", reps(15, 20)),
            ),
            workout(
                "Odds and ends",
                line("Kettlebell swing", reps(15), sets=3),
                line("Copenhagen plank", seconds(20, 30), "added"),
                line("Zigzag crawl", reps(10, 20), sets=2),
            ),
        ),
    ),
    "ladder": Programme(
        name="First Pull-up",
        schedule=Rotation(every_days=2, order=("Bar", "Floor")),
        workouts=(
            workout(
                "Bar",
                line(
                    "Pull-up",
                    reps(1, 5),
                    "added",
                    ladder=Ladder(below=1, up_to=6),
                    add_load=Raise(over=5, by=kg("1.25")),
                    cues=("Dead hang at the bottom of each rep",),
                ),
                line("Dip", reps(3, 6), "added", lowering_only=True),
                line(
                    "Nordic curl",
                    reps(4, 8),
                    "added",
                    lowering_only=True,
                    alternatives=(joint("knee", "Leg curl", reps(8, 12)),),
                ),
            ),
            workout(
                "Floor",
                line(
                    "Push-up",
                    reps(8, 20),
                    "added",
                    sets=2,
                    alternatives=(missing("floor space", "Chest press", reps(8, 20)),),
                ),
                line("Hollow hold", seconds(20, 40), "added"),
                line(
                    "Glute bridge",
                    reps(15, 20),
                    "added",
                    load_from=RelativeLoad(exercise="Hip thrust", difference=kg("5"), side="below"),
                ),
                line("Hip thrust", reps(10, 12)),
            ),
        ),
    ),
    "below": Programme(
        name="Names above, numbers below",
        schedule=Rotation(every_days=3, order=("Push", "Pull")),
        workouts=(
            workout(
                "Push",
                line(
                    "Bench press",
                    reps(6, 8),
                    sets=3,
                    stop_short=1,
                    add_load=Raise(over=8, by=kg("2.5")),
                    cues=("feet flat, bar to the lower chest",),
                ),
                line("Triceps pushdown", reps(10, 12), sets=2),
            ),
            workout(
                "Pull",
                line(
                    "Barbell row",
                    reps(6, 8),
                    sets=3,
                    alternatives=(
                        joint("lower back", "Chest-supported row", reps(6, 8)),
                        missing("barbell", "Dumbbell row", reps(6, 8)),
                    ),
                ),
                line("Barbell curl", reps(10, 12)),
            ),
        ),
    ),
    "sentence": Programme(
        name="Pounds and Seconds",
        schedule=FixedDays(days=("tuesday", "saturday"), order=("Push", "Pull")),
        workouts=(
            workout(
                "Push",
                line("Bench press", reps(5), add_load=Raise(over=4, by=lb("5"))),
                line("Seated calf raise", reps(12, 15), straight_into_next=True),
                line("Standing calf raise", reps(8, 12)),
                line(
                    "Chest press hold",
                    seconds(10, 25),
                    stop_short=0,
                    load_from=RelativeLoad(exercise="Bench press", difference=lb("20")),
                ),
            ),
            workout(
                "Pull",
                line("Lat pulldown", reps(8, 10), sets=3),
                line("Seated cable row", reps(8), sets=2),
                line("Leg extension hold", seconds(45, 75)),
                line("Hammer curl", reps(8, 12), "total", cues=("slow on the way down",)),
            ),
        ),
    ),
    "bare": Programme(
        name="Minimal",
        schedule=Rotation(every_days=1, order=("A",)),
        workouts=(workout("A", line("Push-up", reps(10), "added"), line("Plank", seconds(60), "added")),),
    ),
}


def text_of(name: str) -> str:
    """Read bytes, so that Windows line ends stay."""
    return (SHEETS / f"{name}.txt").read_bytes().decode("utf-8")


@pytest.mark.parametrize("name", sorted(MEANT))
def test_a_sheet_means_this_programme(name: str) -> None:
    result = read_sheet(text_of(name))
    assert result.faults == ()
    assert result.programme == MEANT[name]


@pytest.mark.parametrize("name", sorted(MEANT))
def test_a_sheet_written_out_in_the_house_style_means_the_same(name: str) -> None:
    assert read_sheet(write_sheet(MEANT[name])).programme == MEANT[name]


def test_every_sheet_has_its_meaning() -> None:
    assert {path.stem for path in SHEETS.glob("*.txt")} == set(MEANT)
