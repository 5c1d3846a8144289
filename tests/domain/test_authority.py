"""Every action of a coach, on an own client, on another coach's, on a stranger, and on a former client.

What there is to try is taken from the code: an action without a sample here fails.
"""

from collections.abc import Iterator
from dataclasses import replace
from typing import Any, Literal, get_args

import pytest

from domain import actions, incoming
from domain.actions import (
    Action,
    BringIn,
    ChangeTo,
    ForgetNote,
    Keep,
    Release,
    Show,
    TakeBack,
    TakeBackAll,
    TakeOn,
    Treat,
    Write,
)
from domain.client import hear as client_hears
from domain.coach_memory import CoachMemory, LastChange, Spoken
from domain.coach_requests import Kind
from domain.decide import hear
from domain.frozen import Frozen
from domain.incoming import (
    Assigned,
    CardWanted,
    Changed,
    Decided,
    FromChat,
    FromCoach,
    Heard,
    JournalSent,
    OfferAnswered,
    OfferMade,
    OfferWithdrawn,
    PictureWanted,
    Pressed,
    Released,
    SetsWanted,
    TalkWanted,
    Text,
    Told,
    Undone,
    WhyWanted,
)
from domain.memory import ClientMemory, Waiting
from domain.notes import Note
from domain.outcome import Outcome
from domain.parts import Notice
from domain.state import Coach, CoachState, Offer, OfferedClient, StrangerState
from domain.wishes import LeaveOutWish
from tests.domain.client.people import at
from tests.domain.client.people import noor as noor_s_state
from tests.domain.coach.test_hearing import MARA, NOW, STATE

Relation = Literal["own client", "other coach's client", "stranger", "former client"]
NAMES: dict[Relation, tuple[int, str]] = {
    "own client": (2, "Noor"),
    "other coach's client": (50, "Lena"),
    "stranger": (60, "Sam"),
    "former client": (70, "Kees"),
}
INES = Coach(number=9, name="Ines", zone="Europe/Lisbon", unit="kg")
LEFT_OUT = LeaveOutWish(exercise="Hammer curl")

FORMER = 70
STATES = replace(
    STATE,
    coaches=((9, "Ines"),),
    notes=(Note(1, 2, "of Noor", NOW, 3), Note(2, FORMER, "of Kees", NOW, 4)),
)
"""Mara, who has a note left on somebody who is no client of hers any more."""

BUTTONS: dict[type[Any], Any] = {
    Treat: lambda who, _: Treat(client=who, alert=4, remedy="lighten"),
    Write: lambda who, name: Write(client=who, alert=4, name=name),
    Release: lambda who, _: Release(client=who),
    ChangeTo: lambda who, _: ChangeTo(client=who, wish=LEFT_OUT, label="x"),
    TakeBack: lambda who, _: TakeBack(client=who, change=3),
    TakeBackAll: lambda who, _: TakeBackAll(clients=(who,), change=3),
    Show: lambda who, _: Show(client=who),
    TakeOn: lambda who, name: TakeOn(client=who, name=name, takes=True),
    Keep: lambda who, name: Keep(client=who, name=name),
    BringIn: lambda who, _: BringIn(client=who, file=3, name="old.csv", says="take"),
    ForgetNote: lambda who, _: ForgetNote(client=who, note=1 if who == 2 else 2, place=1),
}
"""Of each button that names a client by number, one for that client."""

ORDERS: dict[type[Any], FromCoach] = {
    Decided: Decided(coach=1, alert=4, remedy="lighten"),
    Told: Told(coach=1, text="hello"),
    Assigned: Assigned(coach=1, programme=7),
    CardWanted: CardWanted(coach=1),
    SetsWanted: SetsWanted(coach=1, text="rows"),
    TalkWanted: TalkWanted(coach=1),
    WhyWanted: WhyWanted(coach=1, text=""),
    PictureWanted: PictureWanted(coach=1, text=""),
    Changed: Changed(coach=1, change=3, wish=LEFT_OUT),
    Undone: Undone(coach=1, change=3),
    Released: Released(coach=1),
    JournalSent: JournalSent(coach=1, file=3, name="old.csv"),
    OfferMade: OfferMade(coach=1, to=9, to_name="Ines"),
    OfferWithdrawn: OfferWithdrawn(coach=1),
    OfferAnswered: OfferAnswered(coach=1, takes=True),
}
"""One of each order that can reach a client, from coach number 1."""

PHRASES: dict[str, str] = {
    "tell": "tell {name}: hello",
    "note": "note on {name}: likes tea",
    "notes": "notes on {name}",
    "forget note": "forget the last note on {name}",
    "hand over": "hand {name} over to Ines",
    "keep": "keep {name}",
    "card": "how is {name} doing?",
    "sets": "what did {name} squat last time?",
    "talk": "show me the conversation with {name}",
    "why": "why is {name}'s row below?",
    "reminder": "set {name}'s reminder to 7",
    "rest more": "give {name} one more rest day",
    "swap": "swap {name}'s rows for pulldowns",
    "back": "put {name} back on rows",
    "leave out": "no rows for {name}",
    "assign": "put {name} on Harbour Base",
    "release": "let {name} train",
    "days": "pause {name} for a week",
    "of the sheet": "lower {name}'s squat by 10%",
    "of erasing": "erase {name}",
    "picture": "picture of {name}",
    "journal": "journal of {name}",
}
"""Of each kind of request that names a client, one; a picture and a journal have rules of their own."""

OF_NO_ONE = {
    "who needs me", "who trains", "who stalled", "who hurts", "who missed", "who asked", "who is new",
    "who is due a review", "who is away", "forget that note", "invitations", "undo", "programmes",
    "update", "remedies", "help", "who is on",
}  # fmt: skip
"""Requests that name no client; what they show is of own clients alone, as the store loads no others."""


def kinds() -> set[str]:
    """Return all that a coach's words can be taken for."""
    return {"tell", "note", "picture", "journal", *members(Kind)}


def members(union: Any) -> Iterator[Any]:
    """Give the members of a union, with those of unions in it, and the words of literals."""
    found = get_args(union)
    if not found:
        yield union
    for each in found:
        if isinstance(each, str | type):
            yield each
        elif not hasattr(each, "discriminator"):
            yield from members(each)


def does(said: FromChat, state: CoachState = STATES) -> Outcome:
    return hear(state, Heard(20, NOW, said))


def topics(outcome: Outcome) -> list[str]:
    return [
        part.topic if isinstance(part, Notice) else part.kind for say in outcome.says for part in say.parts
    ]


def comes_to_nothing(outcome: Outcome) -> bool:
    """Return whether nothing is decided or shown, nor anything waited for, at all."""
    memory = outcome.memory if isinstance(outcome.memory, CoachMemory) else CoachMemory()
    waits = memory.waiting is not None or memory.who is not None
    shown = {
        "digest",
        "file",
        "roster progress",
        "notes",
        "noted",
        "progress",
        "client's own days",
        "of the sheet",
        "client's own leaving",
    }
    shows = shown & set(topics(outcome))
    of_others = [say for say in outcome.says if say.to != MARA.number]
    return not (outcome.orders or outcome.changes or waits or shows or of_others)


def test_every_button_is_tried() -> None:
    with_client = {each for each in members(Action) if {"client", "clients"} & set(each.model_fields)}
    assert with_client == set(BUTTONS)
    known = (each for each in vars(actions).values() if isinstance(each, type) and issubclass(each, Frozen))
    assert {each for each in known if {"client", "clients"} & set(each.model_fields)} == with_client


def test_every_order_is_tried() -> None:
    assert set(members(FromCoach)) == set(ORDERS)
    no_orders = {incoming.CoachOrder, incoming.AtAPress}
    of_coaches = {each for each in vars(incoming).values() if isinstance(each, type)
                  and issubclass(each, incoming.CoachOrder) and each not in no_orders}  # fmt: skip
    assert of_coaches == set(ORDERS)


def test_every_kind_of_request_is_tried() -> None:
    assert kinds() == set(PHRASES) | OF_NO_ONE
    assert not set(PHRASES) & OF_NO_ONE


@pytest.mark.parametrize("relation", NAMES)
@pytest.mark.parametrize("button", BUTTONS, ids=lambda each: each.__name__)
def test_a_button_works_on_own_clients_only(button: type[Any], relation: Relation) -> None:
    who, name = NAMES[relation]
    outcome = does(Pressed(button="1:0", action=BUTTONS[button](who, name)))
    # Somebody to take on is never an own client yet.
    is_allowed = relation == "own client" and button is not TakeOn
    assert comes_to_nothing(outcome) != is_allowed
    if not is_allowed:
        assert topics(outcome) in (["not your client"], ["offer is over"])


def test_an_offered_client_can_be_taken_on_and_nothing_else() -> None:
    state = replace(STATES, offered=(OfferedClient(50, "Lena", "Ines", NOW),))
    for button, make in BUTTONS.items():
        outcome = does(Pressed(button="1:0", action=make(50, "Lena")), state)
        assert comes_to_nothing(outcome) == (button is not TakeOn)


@pytest.mark.parametrize("relation", NAMES)
@pytest.mark.parametrize("kind", PHRASES)
def test_words_work_on_own_clients_only(kind: str, relation: Relation) -> None:
    _, name = NAMES[relation]
    outcome = does(Text(text=PHRASES[kind].format(name=name)))
    assert comes_to_nothing(outcome) == (relation != "own client")


@pytest.mark.parametrize("kind", PHRASES)
def test_her_is_nobody_who_was_handed_over_since(kind: str) -> None:
    memory = CoachMemory(spoken=Spoken(client=FORMER, at=NOW))
    said = PHRASES[kind].replace("{name}'s", "her").format(name="her")
    assert comes_to_nothing(does(Text(text=said), replace(STATES, memory=memory)))


def test_what_was_begun_on_a_client_who_was_handed_over_since_comes_to_nothing() -> None:
    words = Waiting(
        number=1, slot="words", message=1, asked_at=NOW, about={"clients": [FORMER], "alert": None}
    )
    last = LastChange(message=9, clients=(FORMER,))
    who = Waiting(number=2, slot="who", message=1, asked_at=NOW,
                  about={"text": "how is Kees?", "start": 7, "end": 11, "fits": [FORMER, 71]})  # fmt: skip
    for memory, said in (
        (CoachMemory(waiting=words), "sleep first"),
        (CoachMemory(last_change=last), "undo"),
        (CoachMemory(who=who), "Kees"),
        (CoachMemory(noted_in=4), "forget that note"),
    ):
        outcome = does(Text(text=said), replace(STATES, memory=memory))
        assert (outcome.orders, outcome.changes) == ((), ())


@pytest.mark.parametrize("relation", NAMES)
@pytest.mark.parametrize("order", ORDERS.values(), ids=lambda each: type(each).__name__)
def test_a_client_carries_out_the_own_coach_s_orders_only(order: FromCoach, relation: Relation) -> None:
    own = noor_s_state()
    match relation:
        case "own client":
            state = own
        case "other coach's client":
            state = replace(own, client=replace(own.client, coach=INES))
        case "former client":
            memory = ClientMemory(welcomed=True, other_coaches=(1,))
            state = replace(own, client=replace(own.client, coach=INES), memory=memory)
        case "stranger":
            assert hear(StrangerState(number=60), Heard(1, at(3), order)) == Outcome()
            return
    outcome = client_hears(state, Heard(1, at(3), order))
    to_giver = [part for say in outcome.says if say.to == 1 for part in say.parts]
    refusals = [part for part in to_giver if isinstance(part, Notice)
                and part.topic in {"not your client", "offer is over"}]  # fmt: skip
    if relation == "own client" and not isinstance(order, OfferAnswered):
        assert outcome.says
        assert not refusals
    else:
        assert to_giver == refusals
        assert outcome.changes == ()


def test_only_the_coach_to_whom_a_client_is_offered_takes_the_client_on() -> None:
    offer = Offer(to=9, to_name="Ines", at=at(2), with_notes=False)
    state = replace(noor_s_state(), offer=offer, offered_to=INES)
    for coach in (1, 8, 9):
        outcome = client_hears(state, Heard(1, at(3), OfferAnswered(coach=coach, takes=True)))
        assert bool(outcome.changes) == (coach == 9)
