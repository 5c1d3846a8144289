"""A client handed to another coach, as both coaches say it."""

from dataclasses import replace
from datetime import timedelta

import pytest

from domain.actions import Answer, Keep, TakeOn
from domain.decide import hear
from domain.incoming import Heard, OfferAnswered, OfferMade, OfferWithdrawn, Pressed, Text
from domain.outcome import Order
from domain.state import CoachState, OfferedClient
from tests.domain.coach.test_hearing import NOW, STATE, does, remembering, said
from tests.domain.coach.test_notes import MORNINGS

INES, BEA = (21, "Ines Prado"), (22, "Bea")
AMONG = replace(STATE, coaches=(INES, BEA))
LENA = OfferedClient(client=31, name="Lena", coach_name="Bea", at=NOW)
OFFERED = replace(AMONG, offered=(LENA,))


def asks_of(text: str, state: CoachState = AMONG) -> tuple[int, int] | None:
    """Return the client and the coach of whom it is asked whether to hand over; None where it is not."""
    outcome = does(Text(text=text), state)
    assert outcome.orders == ()
    waiting = remembering(state, outcome).memory.waiting if outcome.memory else None
    return (waiting.about["client"], waiting.about["to"]) if waiting else None


@pytest.mark.parametrize(
    "text",
    [
        "hand Noor over to Ines",
        "Hand over Noor to Ines Prado, please",
        "give Noor to Ines",
        "pass Noor on to ines",
        "transfer noor to coach Ines",
        "move Noor over to Ines",
        "put Noor on Ines",
        "switch Noor to Ines",
        "Ines takes over Noor",
        "let Ines take Noor",
        "make Ines Noor's coach",
        "Ines is Noor's new coach",
        "I want to hand Noor over to Ines",
        "can you transfer Noor to Ines?",
    ],
)
def test_a_coach_hands_a_client_over_in_words(text: str) -> None:
    assert asks_of(text) == (2, 21)


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("hand Noor over to Zoe", "unknown coach"),
        ("hand Noor and Ana over to Ines", "one at a time"),
        ("hand Bob over to Ines", "unknown client"),
    ],
)
def test_what_cannot_be_handed_over_is_said(text: str, topic: str) -> None:
    outcome = does(Text(text=text), AMONG)
    assert (said(outcome), outcome.orders) == ([topic], ())


@pytest.mark.parametrize(
    "text", ["move Noor to Harbour Base", "put Noor on base", "give Noor one more rest day"]
)
def test_a_programme_or_a_rest_day_is_no_coach(text: str) -> None:
    (order,) = does(Text(text=text), AMONG).orders
    assert order.incoming.kind in {"assigned", "changed"}


@pytest.mark.parametrize(
    ("answer", "is_offered"),
    [("yes", True), ("Ask Ines Prado", True), ("ok", True), ("no", False), ("Never mind", False)],
)
def test_nothing_is_offered_before_a_yes(answer: str, is_offered: bool) -> None:
    state = remembering(AMONG, does(Text(text="hand Noor to Ines"), AMONG))
    outcome = does(Text(text=answer), state)
    order = Order(2, OfferMade(coach=1, to=21, to_name="Ines Prado"))
    assert outcome.orders == ((order,) if is_offered else ())
    assert remembering(state, outcome).memory.waiting is None


@pytest.mark.parametrize(
    ("answer", "with_notes"),
    [("With my notes", True), ("without my notes", False), ("with", True), ("yes", None), ("no", None)],
)
def test_where_there_are_notes_it_is_asked_whether_they_go_along(
    answer: str, with_notes: bool | None
) -> None:
    noted = replace(AMONG, notes=(MORNINGS,))
    state = remembering(noted, does(Text(text="hand Noor to Ines"), noted))
    orders = does(Text(text=answer), state).orders
    wanted = OfferMade(coach=1, to=21, to_name="Ines Prado", with_notes=with_notes or False)
    assert orders == (() if with_notes is None else (Order(2, wanted),))


def test_a_client_handed_on_meanwhile_is_not_offered() -> None:
    state = remembering(AMONG, does(Text(text="hand Noor to Ines"), AMONG))
    outcome = does(Text(text="yes"), replace(state, clients=state.clients[1:]))
    assert (outcome.orders, said(outcome)) == ((), ["not your client"])


@pytest.mark.parametrize(
    "text", ["keep Noor", "take back the offer of Noor", "don't hand Noor over", "Noor stays with me"]
)
def test_a_coach_keeps_a_client_after_all(text: str) -> None:
    assert does(Text(text=text), AMONG).orders == (Order(2, OfferWithdrawn(coach=1)),)
    pressed = does(Pressed(button="1:0", action=Keep(client=2, name="Noor")), AMONG)
    assert pressed.orders == (Order(2, OfferWithdrawn(coach=1)),)


@pytest.mark.parametrize(
    ("text", "takes"),
    [
        ("take Lena", True),
        ("I'll take Lena on", True),
        ("Accept Lena, please", True),
        ("yes", True),
        ("I accept", True),
        ("decline Lena", False),
        ("I can't take Lena", False),
        ("no", False),
        ("sorry, no", False),
    ],
)
def test_an_offer_is_answered_in_words(text: str, takes: bool) -> None:
    assert does(Text(text=text), OFFERED).orders == (Order(31, OfferAnswered(coach=1, takes=takes)),)


@pytest.mark.parametrize(
    "text", ["how is Lena?", "tell Lena: hi", "note on Lena: x", "lena", "hand Lena to Ines"]
)
def test_who_is_only_offered_is_no_client_yet(text: str) -> None:
    outcome = does(Text(text=text), OFFERED)
    assert (outcome.orders, outcome.changes) == ((), ())


def test_a_bare_yes_much_later_takes_nobody_on() -> None:
    later = hear(OFFERED, Heard(1, NOW + timedelta(hours=2), Text(text="yes")))
    assert later.orders == ()


def test_two_clients_of_one_coach_have_two_names() -> None:
    other = replace(OFFERED, offered=(replace(LENA, name="Noor"),))
    pressed = does(Pressed(button="1:0", action=TakeOn(client=31, name="Noor", takes=True)), other)
    assert (pressed.orders, said(pressed)) == ((), ["take on as"])
    assert said(does(Text(text="take Noor as Ana Maria"), other)) == ["take on as"]
    named = does(Text(text="take Noor as Noor Bakker"), other)
    assert named.orders == (Order(31, OfferAnswered(coach=1, takes=True, name="Noor Bakker")),)


def test_an_old_button_takes_nobody_on() -> None:
    pressed = does(Pressed(button="1:0", action=TakeOn(client=32, name="Max", takes=True)), OFFERED)
    assert (pressed.orders, said(pressed)) == ((), ["offer is over"])
    old = does(Pressed(button="1:0", action=Answer(question=7, text="Ask Ines")), AMONG)
    assert (old.orders, said(old)) == ((), ["button is old"])
