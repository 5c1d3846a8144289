"""The catalogue: what holds of every exercise in it, how names are found, and the guess at a coach's own."""

from typing import get_args

import pytest

from domain.exercises import (
    Exercise,
    Implement,
    Joint,
    Region,
    catalogue,
    describe,
    loads_joint,
    lookup,
    usual_steps,
)
from domain.names import name_key, name_words, plural_of

EVERY = pytest.mark.parametrize("exercise", catalogue(), ids=lambda exercise: exercise.name)


def test_it_is_large_and_every_name_is_there_once() -> None:
    names = [exercise.name for exercise in catalogue()]
    assert len(names) >= 140
    assert len(set(names)) == len(names)


def test_no_name_nor_short_form_means_two_exercises() -> None:
    meaning: dict[str, str] = {}
    for exercise in catalogue():
        for name in (exercise.name, exercise.plural, *exercise.names):
            assert meaning.setdefault(name_key(name), exercise.name) == exercise.name, name


@EVERY
def test_the_facts_of_an_exercise_are_whole(exercise: Exercise) -> None:
    assert exercise.region in get_args(Region)
    assert exercise.implement in get_args(Implement)
    assert exercise.joints
    assert set(exercise.joints) <= set(get_args(Joint))
    assert exercise.step_kg > 0
    assert exercise.step_lb > 0
    assert exercise.name == exercise.name.strip()
    assert exercise.name[0].isupper()


@EVERY
def test_other_names_are_in_lower_case_and_each_says_something_new(exercise: Exercise) -> None:
    assert all(name == name.casefold().strip() for name in exercise.names)
    said = [name_words(name.replace("-", " ")) for name in (exercise.name, *exercise.names)]
    assert len(set(said)) == len(said)


@EVERY
def test_every_name_finds_its_exercise_however_it_is_written(exercise: Exercise) -> None:
    for name in (exercise.name, exercise.plural, *exercise.names):
        for written in (name, name.upper(), name.replace("-", " "), name.replace(" ", "-"), f"  {name} "):
            assert lookup(written) is exercise, written
    assert lookup(plural_of(exercise.name)) is exercise


@EVERY
def test_what_the_body_moves_has_a_share_and_its_source(exercise: Exercise) -> None:
    if exercise.implement == "body weight" or exercise.counted == "assist":
        assert exercise.body_share is not None
        assert 0 < exercise.body_share <= 1
    assert (exercise.body_share is None) == (exercise.body_share_source is None)
    if exercise.body_share_source:
        assert exercise.body_share_source.startswith(
            ("Mier et al. 2014", "common practice, no source", "from memory: ")
        )


@EVERY
def test_how_load_is_counted_fits_the_implement(exercise: Exercise) -> None:
    """A dumbbell in each hand unless both hold one; body weight takes added load; help is for machines."""
    match exercise.implement:
        case "dumbbell":
            assert exercise.counted in {"each", "total"}
        case "body weight":
            assert exercise.counted == "added"
        case "machine":
            assert exercise.counted in {"total", "assist"}
        case "plate":
            assert exercise.counted in {"each", "total"}
        case _:
            assert exercise.counted == "total"


@pytest.mark.parametrize(
    ("written", "name"),
    [
        ("rdl", "Romanian deadlift"),
        ("OHP", "Overhead press"),
        ("db bench", "Dumbbell bench press"),
        ("skull crushers", "Skullcrusher"),
        ("chins", "Chin-up"),
        ("press-ups", "Push-up"),
        ("Pushups", "Push-up"),
        ("PULL UPS", "Pull-up"),
        ("tricep pushdowns", "Triceps pushdown"),
        ("farmer\N{RIGHT SINGLE QUOTATION MARK}s walk", "Farmer walk"),
        ("squats", "Back squat"),
        ("hex bar deadlift", "Trap bar deadlift"),
        ("flies", None),
        ("my own thing", None),
        ("", None),
        ("bench press machine of doom", None),
    ],
)
def test_usual_ways_of_saying_it(written: str, name: str | None) -> None:
    found = lookup(written)
    assert (found.name if found else None) == name


@pytest.mark.parametrize(
    ("name", "implement", "counted", "region", "is_hold"),
    [
        ("Tempo goblet squat", "dumbbell", "total", "lower", False),
        ("Banded goblet squat", "band", "total", "lower", False),
        ("Towel hang", "body weight", "added", "upper", True),
        ("Machine glute thing", "machine", "total", "lower", False),
        ("Dumbbell zigzag", "dumbbell", "each", "upper", False),
        ("Assisted nordic curl", "body weight", "assist", "lower", False),
        ("Static belt hold", "other", "total", "upper", True),
        ("Captain's bench sit", "other", "total", "upper", True),
        ("Cable core twist", "cable", "total", "trunk", False),
        ("Kettlebell deadlift and carry", "kettlebell", "total", "lower", False),
    ],
)
def test_a_coachs_own_exercise_is_guessed_by_its_words(
    name: str, implement: str, counted: str, region: str, is_hold: bool
) -> None:
    guess = describe(name)
    assert (guess.implement, guess.counted, guess.region, guess.is_hold) == (
        implement,
        counted,
        region,
        is_hold,
    )
    assert guess.name == name
    assert guess.step_kg > 0


@pytest.mark.parametrize(
    ("name", "loads", "spares"),
    [
        ("Leg extension", {"knee"}, {"shoulder", "lower back"}),
        ("Back squat", {"knee", "hip", "lower back"}, {"elbow"}),
        ("Bench press", {"shoulder", "elbow", "wrist"}, {"knee", "ankle"}),
        ("Slow tempo leg extension", {"knee"}, {"shoulder"}),
        ("Chin tuck", {"shoulder"}, {"knee"}),
        ("Zigzag", set(get_args(Joint)), set()),
    ],
)
def test_which_joints_are_loaded(name: str, loads: set[Joint], spares: set[Joint]) -> None:
    """An exercise of which nothing is known may load any joint: the careful guess."""
    assert {joint for joint in loads if loads_joint(name, joint)} == loads
    assert not {joint for joint in spares if loads_joint(name, joint)}


def test_steps_are_known_for_every_implement() -> None:
    assert set(usual_steps()) == set(get_args(Implement))


@pytest.mark.parametrize(
    ("name", "plural"),
    [
        ("Push-up", "Push-ups"),
        ("Bench press", "Bench presses"),
        ("Cable fly", "Cable flies"),
        ("Crunch", "Crunches"),
        ("Box", "Boxes"),
        ("Tray", "Trays"),
    ],
)
def test_english_plurals(name: str, plural: str) -> None:
    assert plural_of(name) == plural
    assert name_key(plural) == name_key(name)
