"""Reviews after some rounds, and a client who can no longer be reached."""

from dataclasses import replace

import pytest

from domain.actions import Treat
from domain.client.remedies import remedies_for
from domain.incoming import Decided, Reachable
from domain.outcome import Outcome
from domain.parts import AlertPart, Notice, Part
from tests.domain.client.people import MARA, Life, at, kinds, noor, stored

TWO = """\
Two
Train every day in turn: A, B
Review after 3 rounds

A
1. Leg press, 8-12 reps

B
1. Chest press, 8-12 reps
"""


LIGHT = """\
Light
Train every day in turn: All

All
1. Leg curl, 8-12 reps
"""


class Watching(Life):
    """A life in which what the coach is told of reviews is counted."""

    reviews = 0

    def _take(self, outcome: Outcome) -> tuple[Part, ...]:
        parts = super()._take(outcome)
        self.reviews += self.alert_reasons.count("review")
        return parts


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


@pytest.mark.parametrize(("loads", "told"), [([60, 70, 80], 1), ([80, 80, 80], 2)])
def test_a_review_that_asks_for_nothing_is_told_once(loads: list[int], told: int) -> None:
    life = Watching(noor(TWO))
    rounds(life, 2, loads)
    life.passes_to(at(30))
    assert life.reviews == told


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


def test_what_was_lighter_on_purpose_is_no_loss_in_a_review() -> None:
    """An illness before the last round: 10% less, and no less strength for that."""
    life = Life(noor(TWO.replace("3 rounds", "4 rounds")))
    rounds(life, 2, [60, 62, 64])
    life.says("I was ill", at(8, 9))
    (found,) = rounds(life, 10, [57])
    assert found.evidence["was_ill"] is True
    assert found.evidence["risen"] is True
    assert found.evidence["rounds"] == 4


@pytest.mark.parametrize(
    ("loads", "first"),
    [([60, 70, 80], "seen"), ([60, 60, 60], "next programme"), ([60, 60, 55], "next programme")],
)
def test_what_the_sheet_names_is_offered_first_where_strength_has_not_risen(
    loads: list[int], first: str
) -> None:
    state = noor(TWO.replace("3 rounds", "3 rounds. If strength has not risen, switch to Light"))
    life = Life(replace(state, programmes=(*state.programmes, stored(LIGHT, 8))))
    assert rounds(life, 2, loads)
    buttons = [each for say in life.outcome.says if say.to == MARA.number for each in say.buttons]
    offered = [each.remedy for each in buttons if isinstance(each, Treat)]
    assert offered[0] == first
    assert sorted(offered) == ["next programme", "seen"]


def test_nor_is_it_offered_first_after_a_break() -> None:
    """What was lost in three weeks away says nothing against the programme."""
    state = noor(TWO.replace("3 rounds", "3 rounds. If strength has not risen, switch to Light"))
    life = Life(replace(state, programmes=(*state.programmes, stored(LIGHT, 8))))
    rounds(life, 2, [60, 60])
    assert rounds(life, 30, [50])
    (found,) = (alert for alert in life.state.alerts if alert.reason == "review")
    assert (found.evidence["risen"], found.evidence["weeks_away"]) == (False, 3)
    assert remedies_for(life.state, found) == ("seen", "next programme")


@pytest.mark.parametrize(("sets", "found"), [(["40x10", "40x11"], "worked"), (["40x10", "40x10"], "did not")])
def test_a_new_programme_is_followed_up_after_two_rounds_of_it(sets: list[str], found: str) -> None:
    state = noor(TWO.replace("3 rounds", "3 rounds. If strength has not risen, switch to Light"))
    life = Life(replace(state, programmes=(*state.programmes, stored(LIGHT, 8))))
    rounds(life, 2, [60, 60, 60])
    alert = next(alert for alert in life.state.alerts if alert.reason == "review")
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="next programme"), at(7, 20))
    told = []
    for day, each in enumerate(sets, start=9):
        life.says(f"leg curl {each}", at(day, 12))
        told += [part for part in life.to_coach if isinstance(part, Notice) and part.topic == "followed up"]
    assert [part.facts["result"] for part in told] == [found]
    assert told[0].facts["programme"] == "Light"
