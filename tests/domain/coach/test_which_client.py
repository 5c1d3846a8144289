"""Whom a name means that fits several, and whom a change is for that names nobody: asked, and then done."""

from dataclasses import replace

import pytest

from domain.actions import Answer
from domain.incoming import Changed, Pressed, Text
from domain.parts import Question
from tests.domain.coach.test_hearing import STATE, does, noor, remembering

TWO_NOORS = replace(STATE, clients=((2, noor("Noor Haddad")), (3, noor("Noor Silva")), (4, noor("Piet"))))


@pytest.mark.parametrize(
    ("answer", "client"),
    [
        ("Noor Silva", 3),
        ("silva", 3),
        ("the Haddad one", 2),
        ("I mean noor haddad", 2),
        ("Noor S", 3),
        ("silvia", 3),
    ],
)
def test_of_two_with_the_same_first_name_it_is_asked_and_answered_in_words(answer: str, client: int) -> None:
    question = does(Text(text="give Noor one more rest day"), TWO_NOORS)
    assert question.orders == ()
    done = does(Text(text=answer), remembering(TWO_NOORS, question))
    assert [(order.to, order.incoming.kind) for order in done.orders] == [(client, "changed")]


@pytest.mark.parametrize(
    ("text", "client"),
    [("how is Noor S doing?", 3), ("tell noor h: see you", 2), ("Noor Haddad's rows", 2)],
)
def test_an_initial_is_enough(text: str, client: int) -> None:
    assert [order.to for order in does(Text(text=text), TWO_NOORS).orders] == [client]


def test_a_letter_that_is_a_word_is_no_initial() -> None:
    state = replace(STATE, clients=((2, noor("Noor Abbas")), (3, noor("Noor Ibsen"))))
    asked = does(Text(text="tell noor i am away"), state)
    assert [part.slot for part in asked.says[0].parts if isinstance(part, Question)] == ["who"]


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("swap rows for pulldowns", "swap"),
        ("no deadlifts until I say so", "leave out"),
        ("one more rest day", "rest more"),
        ("set the reminder to 7", "reminder"),
    ],
)
def test_a_change_that_names_nobody_is_done_once_it_is_told_for_whom(text: str, what: str) -> None:
    question = does(Text(text=text), TWO_NOORS)
    assert question.orders == ()
    labels = [each.text for each in question.says[0].buttons if isinstance(each, Answer)]
    assert labels == ["Noor Haddad", "Noor Silva", "Piet"]
    state = remembering(TWO_NOORS, question)
    press = question.says[0].buttons[2]
    assert isinstance(press, Answer)
    for told in (Text(text="for Piet"), Pressed(button="1:2", action=press)):
        (order,) = does(told, state).orders
        assert order.to == 4
        assert isinstance(order.incoming, Changed)
        assert order.incoming.wish.what == what


def test_with_one_client_it_is_not_asked() -> None:
    alone = replace(STATE, clients=((4, noor("Piet")),))
    (order,) = does(Text(text="swap rows for pulldowns"), alone).orders
    assert order.to == 4
