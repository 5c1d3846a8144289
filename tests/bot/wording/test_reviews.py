"""What a look back over some rounds has found, in the coach's words: how much, and how sure that is."""

from typing import Any

import pytest

from bot.wording.alerts import alert_words
from domain.evidence import is_sound
from domain.parts import AlertPart
from domain.review import review_of
from domain.values import facts_of

RISING = ((4.0, 4.02, 4.05, 4.07), (3.0, 3.03, 3.04, 3.08))
LEVEL = ((4.0, 4.02, 3.99, 4.01), (3.0, 2.98, 3.02, 3.01))
TWO_ROUNDS = ((4.0, 4.02), (3.0, 3.03))


def words(evidence: dict[str, Any]) -> str:
    evidence = {"rounds": 4, **evidence}
    assert is_sound("review", None, evidence)
    return alert_words(AlertPart(reason="review", client="Noor", evidence=evidence))


@pytest.mark.parametrize(
    ("series", "found", "sure"),
    [
        (RISING, "strength has risen, +2.5% a round", "Between +2.0% and +3.0%; by chance alone so in "),
        (LEVEL, "strength has not clearly risen", "Between −"),
        (TWO_ROUNDS, "strength has not clearly risen, +2.5% a round", "\nBy chance alone so in 25 of 100"),
    ],
)
def test_a_review_says_between_what_the_gain_lies_and_how_sure_it_is(
    series: tuple[tuple[float, ...], ...], found: str, sure: str
) -> None:
    """Where two rounds alone all rise, that is no proof, and no interval above 0 is claimed."""
    said = words(facts_of(review_of(series)))
    assert found in said
    assert sure in said


def test_what_came_with_a_file_without_an_interval_is_said_without_one() -> None:
    said = words({"risen": True, "gain_per_round": 0.02})
    assert said.endswith("a round over all exercises together.")
    assert not is_sound("review", None, {"rounds": 2, "risen": True, "gain_per_round": 0, "p_value": "nan"})
