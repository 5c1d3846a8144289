"""A client handed to another coach: what the client's own decision makes of it."""

from dataclasses import replace
from datetime import timedelta

import pytest

from domain.actions import Treat
from domain.client import hear
from domain.client.handover import OFFER_LASTS
from domain.incoming import FromCoach, Heard, OfferAnswered, OfferMade, OfferWithdrawn, Text
from domain.journal import Alert
from domain.notes import Note
from domain.outcome import HandedOver, OfferKept, Outcome, SettingsKept
from domain.parts import AlertPart, Notice
from domain.state import ClientState, Coach, Offer
from tests.domain.client.people import MARA, at, noor

INES = Coach(number=9, name="Ines", zone="Europe/Lisbon", unit="kg")
NOW = at(10, 12)
ASKED = Alert(number=1, reason="question", exercise=None, evidence={"said": "straps?"}, at=at(9))
OFFER = Offer(to=9, to_name="Ines", at=at(9), with_notes=True)
OFFERED = replace(
    noor(),
    offer=OFFER,
    offered_to=INES,
    alerts=(ASKED,),
    notes=(Note(1, 2, "likes tea", at(8), 3),),
)


def does(order: FromCoach, state: ClientState) -> Outcome:
    return hear(state, Heard(1, NOW, order))


def told(outcome: Outcome) -> list[tuple[int, str]]:
    """Return to whom something is said, and what it is about."""
    return [
        (say.to, part.topic if isinstance(part, Notice) else part.kind)
        for say in outcome.says
        for part in say.parts
        if isinstance(part, Notice | AlertPart)
    ]


def test_an_offer_tells_the_other_coach_the_name_and_the_programme_and_no_more() -> None:
    outcome = does(OfferMade(coach=1, to=9, to_name="Ines"), noor())
    assert outcome.changes == (OfferKept(Offer(9, "Ines", NOW, with_notes=False)),)
    (say,) = [each for each in outcome.says if each.to == 9]
    (part,) = say.parts
    assert isinstance(part, Notice)
    facts = {"client": "Noor", "coach": "Mara", "programme": "Harbour Base", "days": 14}
    assert (part.topic, part.facts, len(say.buttons)) == ("client offered", facts, 2)


def test_what_is_open_goes_along_and_everybody_is_told() -> None:
    outcome = does(OfferAnswered(coach=9, takes=True), OFFERED)
    assert outcome.changes == (HandedOver(INES, with_notes=True),)
    assert told(outcome) == [
        (2, "your new coach"),
        (1, "client handed over"),
        (9, "client taken on"),
        (9, "card"),
        (9, "alert"),
    ]
    (card,) = [each for say in outcome.says for each in say.parts if getattr(each, "topic", "") == "card"]
    assert isinstance(card, Notice)
    assert [each["text"] for each in card.facts["notes"]] == ["likes tea"]
    buttons = [each for say in outcome.says for each in say.buttons if isinstance(each, Treat)]
    assert buttons
    assert {say.to for say in outcome.says for each in say.buttons if isinstance(each, Treat)} == {9}


def test_notes_that_do_not_go_along_are_not_on_the_card() -> None:
    outcome = does(
        OfferAnswered(coach=9, takes=True), replace(OFFERED, offer=replace(OFFER, with_notes=False))
    )
    assert outcome.changes == (HandedOver(INES, with_notes=False),)
    cards = [each for say in outcome.says for each in say.parts if getattr(each, "topic", "") == "card"]
    assert [each.facts["notes"] for each in cards if isinstance(each, Notice)] == [[]]


def test_another_name_is_kept_where_the_new_coach_gives_one() -> None:
    outcome = does(OfferAnswered(coach=9, takes=True, name="Noor B"), OFFERED)
    (kept,) = [each for each in outcome.changes if isinstance(each, SettingsKept)]
    assert (kept.client.name, kept.client.coach) == ("Noor B", INES)


@pytest.mark.parametrize(
    ("order", "state", "tells"),
    [
        (OfferAnswered(coach=9, takes=False), OFFERED, [(9, "offer declined"), (1, "offer refused")]),
        (OfferWithdrawn(coach=1), OFFERED, [(9, "offer withdrawn"), (1, "kept after all")]),
        (OfferWithdrawn(coach=1), noor(), [(1, "not offered")]),
        (
            OfferAnswered(coach=9, takes=True),
            replace(OFFERED, offer=replace(OFFER, at=NOW - OFFER_LASTS - timedelta(hours=1))),
            [(9, "offer is over")],
        ),
        (OfferAnswered(coach=9, takes=True), noor(), [(9, "offer is over")]),
        (OfferAnswered(coach=8, takes=True), OFFERED, [(8, "offer is over")]),
        (OfferAnswered(coach=1, takes=True), OFFERED, [(1, "offer is over")]),
        (OfferMade(coach=9, to=9, to_name="Ines"), OFFERED, [(9, "not your client")]),
        (OfferWithdrawn(coach=9), OFFERED, [(9, "not your client")]),
    ],
)
def test_otherwise_the_coach_stays(
    order: FromCoach, state: ClientState, tells: list[tuple[int, str]]
) -> None:
    outcome = does(order, state)
    # What is open may be brought up as on any other occasion.
    assert [each for each in told(outcome) if each[1] != "alert"] == tells
    assert not [each for each in outcome.changes if isinstance(each, HandedOver | SettingsKept)]


def test_another_offer_takes_the_place_of_the_first() -> None:
    outcome = does(OfferMade(coach=1, to=8, to_name="Bea"), OFFERED)
    assert (9, "offer withdrawn") in told(outcome)
    assert outcome.changes[-1] == OfferKept(Offer(8, "Bea", NOW, with_notes=False))


def test_afterwards_a_question_goes_to_the_new_coach() -> None:
    state = replace(OFFERED, client=replace(OFFERED.client, coach=INES), offer=None, alerts=())
    outcome = hear(state, Heard(2, NOW, Text(text="can you check my form?")))
    assert MARA.number not in {say.to for say in outcome.says}
    assert INES.number in {say.to for say in outcome.says}
