"""A coach's words to several: confirmed where they are many, and shown whom they have reached."""

from dataclasses import replace

import pytest

from domain.actions import Answer
from domain.erasure import Name, parts_left
from domain.incoming import Arrived, Pressed, Text, Told
from domain.outcome import Order, Outcome
from domain.parts import Question
from domain.reach import Reach
from domain.state import CoachState
from tests.domain.coach.test_hearing import STATE, does, noor, remembering, said

NAMES = ("Noor", "Piet", "Ana", "Sami", "Ines", "Goran", "Ulla")
MANY = replace(STATE, clients=tuple(enumerate(map(noor, NAMES), start=2)))
SHUT = "The gym is shut on Monday."


def sent(outcome: Outcome) -> list[int]:
    """Return to whom words were passed on, which are the same for all."""
    told = {order.incoming for order in outcome.orders}
    assert told <= {Told(coach=1, text=SHUT, to_several=True, spread=1)}
    return [order.to for order in outcome.orders]


def reach(outcome: Outcome) -> Reach:
    (found,) = (part for say in outcome.says for part in say.parts if isinstance(part, Reach))
    return found


def test_words_to_a_few_go_at_once() -> None:
    outcome = does(Text(text=f"tell Noor and Piet: {SHUT}"), MANY)
    assert sent(outcome) == [2, 3]
    assert reach(outcome) == Reach(total=2)


@pytest.mark.parametrize(
    "who", ["everyone:", "everybody:", "all my clients:", "all:", "all of my clients", "all of them that"]
)
def test_words_to_many_are_confirmed_first(who: str) -> None:
    outcome = does(Text(text=f"tell {who} {SHUT}"), MANY)
    assert outcome.orders == ()
    (part,) = outcome.says[0].parts
    assert isinstance(part, Question)
    assert part.facts == {"names": list(NAMES), "text": SHUT}


def asked() -> tuple[CoachState, Answer]:
    outcome = does(Text(text=f"tell everyone: {SHUT}"), MANY)
    yes = next(each for each in outcome.says[0].buttons if isinstance(each, Answer))
    return remembering(MANY, outcome), yes


def test_they_go_on_the_button_or_on_a_yes() -> None:
    state, yes = asked()
    everyone = list(range(2, 9))
    assert sent(does(Pressed(button="1:0", action=yes), state)) == everyone
    assert sent(does(Text(text="Yes!"), state)) == everyone


@pytest.mark.parametrize("text", ["no", "Do not send it"])
def test_they_do_not_go_on_a_no(text: str) -> None:
    outcome = does(Text(text=text), asked()[0])
    assert (outcome.orders, said(outcome)) == ((), ["not sent"])


def test_who_is_no_client_any_more_when_they_are_confirmed_does_not_get_them() -> None:
    state, yes = asked()
    without = replace(state, clients=state.clients[1:])
    assert sent(does(Pressed(button="1:0", action=yes), without)) == list(range(3, 9))


def begun() -> CoachState:
    state, yes = asked()
    return remembering(state, does(Pressed(button="1:0", action=yes), state))


def arriving(state: CoachState, person: int, why: str | None = None) -> tuple[CoachState, Reach | None]:
    outcome = does(Arrived(person=person, message=1, why=why), state)
    after = remembering(state, outcome) if outcome.memory is not None else state
    return after, reach(outcome) if outcome.says else None


def test_how_far_words_to_very_many_have_come_is_shown_on_the_way() -> None:
    clients = tuple((number, noor(f"Client {number}")) for number in range(2, 42))
    state = replace(STATE, clients=clients)
    state = remembering(state, does(Text(text=f"tell everyone: {SHUT}"), state))
    state = remembering(state, does(Text(text="yes"), state))
    shown = []
    for number, _ in clients:
        state, reached = arriving(state, number)
        shown += [len(reached.reached)] if reached is not None else []
    assert shown == [5, 10, 15, 20, 25, 30, 35, 40]


def test_whom_they_have_reached_is_shown_in_place_of_the_first_answer() -> None:
    state = begun()
    for person in range(2, 8):
        state, shown = arriving(state, person)
        assert shown is None
    outcome = does(Arrived(person=8, message=1), state)
    (say,) = outcome.says
    assert (say.to, say.instead_of) == (1, 1)
    assert reach(outcome) == Reach(total=7, reached=NAMES)


def test_at_the_end_all_are_told_whom_they_reached_and_whom_not_and_why() -> None:
    state, last = begun(), None
    for person in range(2, 9):
        state, shown = arriving(state, person, "blocked" if person == 4 else None)
        last = shown or last
    assert last is not None
    assert set(last.reached) == set(NAMES) - {"Ana"}
    assert [(each.client, each.why) for each in last.unreached] == [("Ana", "blocked")]


@pytest.mark.parametrize("count", [6, 40, 250])
def test_however_many_they_are_it_is_shown_in_few_steps(count: int) -> None:
    clients = tuple((number, noor(f"Client {number}")) for number in range(2, count + 2))
    state = replace(STATE, clients=clients)
    asked_first = does(Text(text=f"tell everyone: {SHUT}"), state)
    state = remembering(state, asked_first)
    state = remembering(state, does(Text(text="yes"), state))
    shown = 0
    for number, _ in clients:
        state, reached = arriving(state, number)
        shown += reached is not None
    assert 1 <= shown <= 10
    assert len(state.memory.spreads[0].reached) == count


def test_what_is_known_already_or_of_another_message_changes_nothing() -> None:
    state, _ = arriving(begun(), 2)
    for again in (Arrived(person=2, message=1), Arrived(person=3, message=99), Arrived(person=99, message=1)):
        outcome = does(again, state)
        assert (outcome.says, outcome.memory) == ((), None)


def test_an_erased_client_is_not_named_among_those_reached() -> None:
    shown = Reach(total=2, reached=("Noor", "Piet"))
    assert parts_left((shown,), Name("Noor"), is_sent=False) == (Reach(total=2, reached=("Piet",)),)


def test_an_order_to_one_is_as_ever() -> None:
    assert does(Text(text="tell Noor: hi"), MANY).orders == (Order(2, Told(coach=1, text="hi")),)
