"""Which programme is meant, asked for and answered: by its name, with a slip, by a button, or not at all."""

from dataclasses import replace
from datetime import timedelta

import pytest

from domain.actions import Answer
from domain.decide import hear
from domain.incoming import Heard, Pressed, Text
from domain.outcome import Invited, Joined, Outcome
from domain.state import CoachState
from tests.domain.client.people import stored
from tests.domain.coach.test_hearing import NOW, STATE, does, noor, remembering, said

BASE = stored()
LIGHT = replace(BASE, number=8, programme=BASE.programme.model_copy(update={"name": "Harbour Light"}))
TWO = replace(STATE, programmes=(BASE, LIGHT), clients=((2, noor()), (3, noor("Ana Maria"))))


def asked(text: str) -> tuple[CoachState, Outcome]:
    """Return the state after something that leaves open which programme is meant, and what was said."""
    outcome = does(Text(text=text), TWO)
    assert (said(outcome), outcome.orders, outcome.changes) == (["question"], (), ())
    return remembering(TWO, outcome), outcome


def invited_to(outcome: Outcome) -> str | None:
    (change,) = [each for each in outcome.changes if isinstance(each, Invited)]
    stored = change.invitation.programme
    return None if stored is None else stored.programme.name


@pytest.mark.parametrize(
    "answer",
    ["Harbour Light", "light", "the light one", "harbor lite", "Harbor Light", "the Light programme"],
)
def test_a_name_answers_however_it_is_typed(answer: str) -> None:
    state, _ = asked("invite Piet")
    assert invited_to(does(Text(text=answer), state)) == "Harbour Light"


def test_a_button_answers_and_an_old_one_does_nothing() -> None:
    state, question = asked("invite Piet to Harbour")
    press = next(each for each in question.says[0].buttons if isinstance(each, Answer))
    done = does(Pressed(button="1:0", action=press), state)
    assert invited_to(done) == "Harbour Base"
    assert said(does(Pressed(button="1:0", action=press), remembering(state, done))) == ["button is old"]


@pytest.mark.parametrize("answer", ["no", "never mind", "forget it"])
def test_it_can_be_left(answer: str) -> None:
    state, _ = asked("invite Piet")
    outcome = does(Text(text=answer), state)
    assert (said(outcome), outcome.changes) == (["heard"], ())
    assert said(does(Text(text="light"), remembering(state, outcome))) != ["invited"]


def test_whatever_else_is_said_meanwhile_is_done_and_the_question_stays() -> None:
    state, _ = asked("invite Piet")
    other = does(Text(text="tell Noor: well done"), state)
    assert [order.to for order in other.orders] == [2]
    assert invited_to(does(Text(text="base"), remembering(state, other))) == "Harbour Base"


def test_the_other_things_that_are_wanted_with_a_programme_go_on_as_well() -> None:
    state, _ = asked("put Noor and Ana Maria on Harbour")
    outcome = does(Text(text="light"), state)
    assert [order.to for order in outcome.orders] == [2, 3]
    state, _ = asked("put me on a sheet of mine")
    outcome = does(Text(text="light"), state)
    assert any(isinstance(each, Joined) for each in outcome.changes)
    state, _ = asked("everyone on Harbour: the gym is shut")
    outcome = does(Text(text="base"), state)
    assert [order.to for order in outcome.orders] == [2, 3]


def test_a_name_typed_the_next_day_is_no_answer_any_more() -> None:
    state, _ = asked("invite Piet")
    late = hear(state, Heard(9, NOW + timedelta(days=1), Text(text="Harbour Light")))
    assert late.changes == ()
