"""Reviews after some rounds, and a client who can no longer be reached."""

import pytest

from domain.incoming import Decided, Reachable
from domain.parts import AlertPart
from tests.domain.client.people import MARA, Life, at, kinds, noor

TWO = """\
Two
Train every day in turn: A, B
Review after 3 rounds

A
1. Leg press, 8-12 reps

B
1. Chest press, 8-12 reps
"""


def rounds(life: Life, first_day: int, loads: list[int]) -> list[AlertPart]:
    """Do one round after another, each with a load of its own; return the reviews that came of them."""
    reviews: list[AlertPart] = []
    for turn, load in enumerate(loads):
        for step, exercise in enumerate(["leg press", "chest press"]):
            life.says(f"{exercise} {load}x10", at(first_day + 2 * turn + step))
            reviews += [
                part for part in life.to_coach if isinstance(part, AlertPart) and part.reason == "review"
            ]
    return reviews


def test_a_review_comes_after_the_rounds_of_the_sheet_and_looks_at_those_only() -> None:
    life = Life(noor(TWO))
    (first,) = rounds(life, 2, [60, 70, 80])
    assert first.evidence["risen"] is True
    alert = next(alert for alert in life.state.alerts if alert.reason == "review")
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="seen"), at(7, 20))
    (second,) = rounds(life, 8, [80, 80, 80])
    assert second.evidence["risen"] is False


@pytest.mark.parametrize("until", [1, 2])
def test_no_review_comes_before(until: int) -> None:
    assert rounds(Life(noor(TWO)), 2, [60, 70][:until]) == []


def test_the_coach_hears_once_that_a_client_cannot_be_reached_until_the_client_is_back() -> None:
    life = Life()
    life.hears(Reachable(reachable=False), at(2))
    assert life.alert_reasons == ["unreachable"]
    assert life.hears(Reachable(reachable=False), at(3)) == ()
    assert kinds(life.to_coach) == []
    life.hears(Reachable(reachable=True), at(4))
    assert life.state.alerts == ()
