"""The share of body mass that an exercise moves, against published measurements.

Source: Mier et al. 2014, Int J Exerc Sci 7:161-168, static push-ups with arms straight ("up") and bent
("down"): mean percentages of body mass, of men and of women. What the catalogue takes from elsewhere says
"from memory" or "common practice, no source", and is not checked here.
"""

from decimal import Decimal

import pytest

from domain.exercises import catalogue, lookup

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


def test_every_share_that_names_the_publication_is_checked_here() -> None:
    named = {exercise.name for exercise in catalogue() if "Mier" in (exercise.body_share_source or "")}
    assert named == {"Push-up", "Close-grip push-up", "Push-up hold", "Kneeling push-up", "High plank"}
