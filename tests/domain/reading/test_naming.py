"""Which exercise is meant: exact, short form, plural, typo, distinctive word, the client's own name."""

import pytest

from domain.reading.message import message_of
from domain.reading.naming import names_for

PLAN = (
    "Bench press",
    "Incline dumbbell press",
    "Romanian deadlift",
    "Leg press",
    "Standing calf raise",
    "Pull-up",
)


def named(
    text: str, plan: tuple[str, ...] = PLAN, own: tuple[tuple[str, str], ...] = ()
) -> list[tuple[str, ...]]:
    return [found.names for found in names_for(plan, own).find(message_of(text))]


@pytest.mark.parametrize(
    ("text", "exercise"),
    [
        ("bench press", "Bench press"),
        ("bench", "Bench press"),
        ("benchpress", "Bench press"),
        ("bnech press", "Bench press"),
        ("benches", "Bench press"),
        ("incline", "Incline dumbbell press"),
        ("incline db press", "Incline dumbbell press"),
        ("rdl", "Romanian deadlift"),
        ("RDLs", "Romanian deadlift"),
        ("romainan deadlift", "Romanian deadlift"),
        ("leg press", "Leg press"),
        ("legpress", "Leg press"),
        ("calf raises", "Standing calf raise"),
        ("pullups", "Pull-up"),
        ("pull ups", "Pull-up"),
        ("pull-ups", "Pull-up"),
        ("assisted pull ups", "Pull-up"),
    ],
)
def test_a_name_points_at_the_plan(text: str, exercise: str) -> None:
    assert named(text) == [(exercise,)]


def test_a_name_that_fits_two_equally_gives_both() -> None:
    assert named("curl", ("Leg curl", "Hammer curl")) == [("Leg curl", "Hammer curl")]


def test_a_whole_name_is_not_part_of_a_longer_one() -> None:
    assert named("leg press", ("Leg press calf raise",)) == [("Leg press",)]


def test_the_own_name_beats_a_part_and_yields_to_a_whole_name() -> None:
    own = (("press", "Incline dumbbell press"),)
    assert named("press 80", own=own) == [("Incline dumbbell press",)]
    assert named("bench press 80", own=own) == [("Bench press",)]


@pytest.mark.parametrize("text", ["should", "now", "reserve", "lunch", "beach", "the trust", "hello there"])
def test_an_ordinary_word_is_no_misspelt_exercise(text: str) -> None:
    assert named(text, (*PLAN, "Lunge", "Hip thrust", "Reverse lunge", "Dumbbell shoulder press")) == []


@pytest.mark.parametrize("text", ["sit to stand", "Sit-to-stands", "sit to stand 13", "did the sit to stand"])
def test_a_name_joined_by_small_words_is_found_whole(text: str) -> None:
    assert named(text, ("Single-leg stand", "Sit to stand", "Sit-up")) == [("Sit to stand",)]
