"""The share of body mass that an exercise moves, against published measurements.

Source: Mier et al. 2014, Int J Exerc Sci 7:161-168, static push-ups with arms straight ("up") and bent
("down"): mean percentages of body mass, of men and of women. What the catalogue says "from memory" of is held
to what is remembered; "common practice, no source" is not checked here.
"""

from decimal import Decimal

import pytest

from domain.exercises import Exercise, catalogue, lookup

PUSH_UP = {"men up": "67.0", "men down": "74.6", "women up": "65.1", "women down": "70.3"}
KNEELING_PUSH_UP = {"men up": "52.5", "men down": "60.1", "women up": "51.5", "women down": "56.6"}
STRAIGHT_ARMS = {place: share for place, share in PUSH_UP.items() if place.endswith("up")}


@pytest.mark.parametrize(
    ("name", "measured"),
    [
        ("Push-up", PUSH_UP),
        ("Close-grip push-up", PUSH_UP),
        ("Push-up hold", PUSH_UP),
        ("Kneeling push-up", KNEELING_PUSH_UP),
        ("High plank", STRAIGHT_ARMS),
    ],
)
def test_a_share_is_the_mean_of_what_was_measured_to_the_percent(name: str, measured: dict[str, str]) -> None:
    percentages = [Decimal(share) for share in measured.values()]
    mean = sum(percentages, Decimal(0)) / len(percentages) / 100
    exercise = lookup(name)
    assert exercise is not None
    assert exercise.body_share is not None
    assert abs(exercise.body_share - mean) <= Decimal("0.005")
    assert min(percentages) / 100 <= exercise.body_share <= max(percentages) / 100


# From memory: Winter, Biomechanics and Motor Control of Human Movement, masses of segments as shares of the
# body: head, arms and trunk 0.678; thigh 0.100, shank 0.0465, foot 0.0145, so a leg 0.161; head, neck 0.081.
SEGMENTS = {
    "head, arms and trunk": "0.678",
    "both legs": "0.322",
    "one leg": "0.161",
    "head and neck": "0.081",
    "the whole body less shanks and feet": "0.878",
}


@pytest.mark.parametrize(
    "exercise",
    [each for each in catalogue() if "Winter" in (each.body_share_source or "")],
    ids=lambda each: each.name,
)
def test_shares_of_segments_are_those_that_are_remembered(exercise: Exercise) -> None:
    assert exercise.body_share is not None
    assert exercise.body_share_source is not None
    moved = exercise.body_share_source.split("; ")[-1]
    assert abs(exercise.body_share - Decimal(SEGMENTS[moved])) <= Decimal("0.005")


@pytest.mark.parametrize(
    ("box", "share"), [("hands on a box of 60 cm", "0.41"), ("feet on a box of 30 cm", "0.70")]
)
def test_push_ups_on_a_box_are_those_that_are_remembered(box: str, share: str) -> None:
    """From memory: Ebben et al. 2011, J Strength Cond Res 25:2891-2894, peak force by body mass."""
    named = [each for each in catalogue() if box in (each.body_share_source or "")]
    assert [each.body_share for each in named] == [Decimal(share)]


@pytest.mark.parametrize("name", ["Pull-up", "Chin-up"])
def test_a_pull_up_is_about_the_whole_body(name: str) -> None:
    """Published: foot-assisted pull-ups of women, peak force 93 (pronated) to 98% (supinated) of body mass
    (Int J Exerc Sci, conference abstract 11(1):8). The whole of it is common practice."""
    exercise = lookup(name)
    assert exercise is not None
    assert exercise.body_share is not None
    assert abs(exercise.body_share - Decimal("0.955")) <= Decimal("0.05")


def test_every_share_that_names_the_publication_is_checked_here() -> None:
    named = {exercise.name for exercise in catalogue() if "Mier" in (exercise.body_share_source or "")}
    assert named == {"Push-up", "Close-grip push-up", "Push-up hold", "Kneeling push-up", "High plank"}
