"""A coach sends an old journal: whose it is, and nobody else's client."""

from dataclasses import replace

import pytest

from domain.actions import BringIn, TakeBack
from domain.incoming import Document, JournalSent, Pressed, Text, Undone
from domain.outcome import Order
from domain.parts import Question
from domain.state import CoachState
from tests.domain.coach.test_hearing import MARA, STATE, does, remembering, said

OLD = "date,exercise,load,reps\n2026-02-20,RDL,70,8\n"


def file(name: str = "old.csv", text: str = OLD, caption: str = "") -> Document:
    return Document(name=name, text=text, caption=caption)


def looks_at(client: int, name: str = "old.csv") -> tuple[Order, ...]:
    return (Order(client, JournalSent(coach=MARA.number, file=1, name=name)),)


@pytest.mark.parametrize(
    ("document", "client"),
    [
        (file(caption="Noor's old journal"), 2),
        (file(caption="this is ana maria"), 3),
        (file("journal-noor.csv"), 2),
        (file("Ana_Maria 2025.csv"), 3),
        (file("notes.txt", caption="Noor"), 2),
        (file(text="client,date,exercise,reps\nnoor,2026-02-20,RDL,8\n"), 2),
    ],
)
def test_whose_journal_it_is_can_be_told_by_the_file(document: Document, client: int) -> None:
    outcome = does(document)
    assert outcome.orders == looks_at(client, document.name)
    assert outcome.says == ()


@pytest.mark.parametrize(("answer", "client"), [("Noor", 2), ("ana maria", 3), ("Ana", 3), ("nor", 2)])
def test_else_it_is_asked(answer: str, client: int) -> None:
    asked = does(file())
    (part,) = asked.says[0].parts
    assert isinstance(part, Question)
    assert part.slot == "journal"
    state = remembering(STATE, asked)
    assert does(Text(text=answer), state).orders == looks_at(client)


def test_a_button_answers_as_well_and_another_request_is_still_one() -> None:
    asked = does(file())
    state = remembering(STATE, asked)
    button = next(each for each in asked.says[0].buttons if getattr(each, "text", "") == "Noor")
    assert does(Pressed(button="1:0", action=button), state).orders == looks_at(2)
    leave = next(each for each in asked.says[0].buttons if getattr(each, "text", "") == "Leave it")
    assert said(does(Pressed(button="1:0", action=leave), state)) == ["journal left"]
    assert said(does(Text(text="who needs me?"), state)) == ["digest"]


def test_the_only_client_is_not_asked_for_and_without_any_it_is_said() -> None:
    one: CoachState = replace(STATE, clients=STATE.clients[:1])
    assert does(file(), one).orders == looks_at(2)
    assert said(does(file(), replace(STATE, clients=()))) == ["journal of nobody"]


def test_a_sheet_stays_a_sheet_and_a_file_that_is_too_large_is_said_to_be() -> None:
    assert said(
        does(Document(name="base.txt", text="Base\nTrain every 3 days in turn: A\n\nA\n1. Dip, 5-8 reps"))
    )
    assert said(does(Document(name="old.csv", fault="too large"))) == ["file not taken"]


@pytest.mark.parametrize(("says", "step"), [("take", "begin"), ("keep", "look"), ("means", "look")])
def test_a_button_goes_on_with_what_was_told_so_far(says: str, step: str) -> None:
    button = BringIn.model_validate(
        {
            "client": 2,
            "file": 7,
            "name": "old.csv",
            "exercises": {"x": "Dip"},
            "month_first": True,
            "says": says,
        }
    )
    outcome = does(Pressed(button="1:0", action=button))
    (order,) = outcome.orders
    assert order.to == 2
    assert isinstance(order.incoming, JournalSent)
    assert (order.incoming.step, order.incoming.file, order.incoming.change) == (step, 7, 1)
    assert (order.incoming.exercises, order.incoming.month_first) == ({"x": "Dip"}, True)
    if step == "begin":
        undone = does(Text(text="undo"), remembering(STATE, outcome))
        assert undone.orders == (Order(2, Undone(coach=MARA.number, change=1)),)


def test_a_button_for_anothers_client_does_nothing() -> None:
    button = BringIn(client=99, file=7, name="old.csv", says="take")
    outcome = does(Pressed(button="1:0", action=button))
    assert (outcome.orders, said(outcome)) == ((), ["not your client"])
    back = does(Pressed(button="1:0", action=TakeBack(client=99, change=3)))
    assert (back.orders, said(back)) == ((), ["not your client"])
