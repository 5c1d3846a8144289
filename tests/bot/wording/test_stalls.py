"""How sure a stall is, in the coach's words."""

from datetime import date
from typing import Any

import pytest

from bot.wording.alerts import alert_words
from domain.client.putting_before import put_before_coach
from domain.parts import AlertPart
from domain.slope import Gain
from domain.values import facts_of
from tests.domain.client.people import Life, at, noor
from tests.domain.tables import exposures

BY_RULE = """\
Pair
Train every day in turn: Day
Tell me after 2 workouts without a beat

Day
1. Bench press, 5-8 reps
"""


def evidence(ended: float, declining: bool = False) -> dict[str, Any]:
    return {
        "ended": ended,
        "declining": declining,
        "since": date(2026, 3, 2).isoformat(),
        "exposures_since": 2,
        "exposures": facts_of(exposures("80 kg x 8 then 80 kg x 7")),
        "gain": facts_of(Gain(0.001, -0.01, 0.012)),
        "before": facts_of(Gain(0.01, 0.005, 0.015)),
        "exercises": ["Bench press", "Row"],
    }


@pytest.mark.parametrize(
    ("ended", "declining", "of_one", "of_several", "sure"),
    [
        (0.66, False, "may have stalled", "may have slowed down", "an early sign, 66% sure"),
        (0.66, True, "may be losing strength", "may be losing strength", "an early sign, 66% sure"),
        (0.94, False, "has stalled", "has slowed down", "(94% sure)"),
        (0.9999, True, "is losing strength", "is losing strength", "(99% sure)"),
    ],
)
def test_a_first_sign_is_called_one(
    ended: float, declining: bool, of_one: str, of_several: str, sure: str
) -> None:
    for exercise, verb in (("Bench press", of_one), (None, of_several)):
        said = alert_words(
            AlertPart(reason="stall", client="Noor", exercise=exercise, evidence=evidence(ended, declining))
        )
        assert verb in said
        assert sure in said


@pytest.mark.parametrize("full", [False, True])
def test_what_was_done_since_it_was_found_stands_with_it(full: bool) -> None:
    """So that nobody decides on a stall that is over; the load to come is then another one."""
    life = Life(noor(BY_RULE))
    for day, reps in ((2, 6), (3, 6), (4, 6), (5, 5), (6, 7)):
        life.says(f"bench 80x{reps}", at(day))
    (alert,) = life.state.alerts
    found = put_before_coach(life.state, [alert], date(2026, 3, 6), full=full)[0][0]
    assert isinstance(found, AlertPart)
    _, since = alert_words(found).replace("\N{NO-BREAK SPACE}", " ").split("Done since I found it:")
    assert "80 kg × 5" in since
    assert since.count("a beat") == 1
    assert since.index("a beat") > since.index("80 kg × 7")
    assert "Next time" not in since


def test_what_pain_has_overtaken_is_said_without_a_load_to_come() -> None:
    life = Life(noor(BY_RULE))
    for day in (2, 3, 4):
        life.says("bench 80x6", at(day))
    (alert,) = life.state.alerts

    def said(**more: Any) -> str:
        shown = {**alert.evidence, **more}
        return alert_words(
            AlertPart(reason="stall", client="Noor", exercise="Bench press", evidence=shown, full=True)
        )

    assert "Next time" in said()
    assert "Next time" not in said(overtaken=True)
    assert "It hurts since" in said(overtaken=True)
