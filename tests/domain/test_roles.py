"""In which role a coach is taken who trains, too: with another coach, or by an own sheet."""

from dataclasses import replace
from datetime import timedelta
from typing import Literal

import pytest

from domain.actions import Answer, InRole, Role, Treat
from domain.coach_memory import CoachMemory, LastRole
from domain.decide import hear, wake
from domain.incoming import CardWanted, Document, Heard, Pressed, ReplyTo, Text
from domain.memory import ClientMemory
from domain.outcome import Outcome, Recorded
from domain.parts import ClientLine, Question
from domain.state import BothState, Client, Coach
from tests.domain.client.people import at, noor, stored
from tests.domain.coach.test_hearing import STATE

NOW = at(3, 12)
INES = Coach(number=9, name="Ines", zone="Europe/Lisbon", unit="kg")
MARA = STATE.coach

Meant = Literal["client", "coach", "asked"]


def as_client(coach: Coach) -> Client:
    return replace(noor().client, number=MARA.number, name="Mara", coach=coach)


WITH_INES = BothState(replace(STATE, is_client=True), replace(noor(), client=as_client(INES)))
BY_HERSELF = BothState(
    replace(
        STATE,
        is_client=True,
        clients=(
            *STATE.clients,
            (1, ClientLine(name="Mara", programme=None, last_workout=None, due_on=None)),
        ),
    ),
    replace(noor(), client=as_client(MARA)),
)


def does(
    text: str, state: BothState = WITH_INES, last: Role | None = None, reply: ReplyTo | None = None
) -> Outcome:
    if last is not None:
        spoken = CoachMemory(last_role=LastRole(role=last, at=NOW - timedelta(minutes=5)))
        state = replace(state, coach=replace(state.coach, memory=spoken))
    return hear(state, Heard(1, NOW, Text(text=text, reply=reply)))


def meant(outcome: Outcome) -> Meant:
    """Return the role in which it was taken, as it is remembered."""
    if any(isinstance(each, Question) and each.slot == "role" for say in outcome.says for each in say.parts):
        return "asked"
    kept = outcome.memory if isinstance(outcome.memory, CoachMemory) else outcome.other_memory
    assert kept is not None
    assert kept.last_role is not None
    return kept.last_role.role


@pytest.mark.parametrize("state", [WITH_INES, BY_HERSELF], ids=["with another", "by herself"])
@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("row 60x9", "client"),
        ("did rows 60 for 9, rdl 80x7", "client"),
        ("rows 60", "client"),
        ("my left knee hurts", "client"),
        ("I have chest pain and feel dizzy", "client"),
        ("what's my plan?", "client"),
        ("what should I beat on rows?", "client"),
        ("plates for 92.5", "client"),
        ("how do I warm up?", "client"),
        ("can't train today", "client"),
        ("skip the hammer curls", "client"),
        ("I weigh 72 kg", "client"),
        ("remind me at 7", "client"),
        ("who needs me?", "coach"),
        ("who trains today?", "coach"),
        ("how is Noor doing?", "coach"),
        ("tell Noor: 3x8 at 60 is plenty", "coach"),
        ("Noor: row 60x9 next time", "coach"),
        ("tell everyone: the gym is shut on Friday", "coach"),
        ("what did Noor squat last time?", "coach"),
        ("swap Noor's rows for pulldowns", "coach"),
        ("Noor's knee hurts, tell her to rest", "asked"),
        ("note on Noor: row 60x9 was easy", "coach"),
        ("invite Piet to Harbour Base", "coach"),
        ("programmes", "coach"),
        ("my hours are 8 to 20", "coach"),
        ("which remedies worked?", "coach"),
        ("tell me after 4 without a beat", "coach"),
        ("no rule", "coach"),
        ("put Ana Maria on Harbour Base", "coach"),
        ("did row 60x9 with Noor", "asked"),
        ("help", "asked"),
        ("qwertz uiop", "coach"),
    ],
)  # fmt: skip
def test_words_are_taken_in_the_role_that_is_meant(text: str, role: Meant, state: BothState) -> None:
    assert meant(does(text, state)) == role


@pytest.mark.parametrize("last", ["client", "coach"])
@pytest.mark.parametrize("text", ["help", "qwertz uiop", "thanks!"])
def test_what_either_could_mean_is_of_the_role_just_spoken_in(text: str, last: Role) -> None:
    assert meant(does(text, last=last)) == last


@pytest.mark.parametrize(("text", "role"), [("row 60x9", "client"), ("who needs me?", "coach")])
@pytest.mark.parametrize("last", ["client", "coach"])
def test_what_is_clear_is_so_whatever_was_spoken_of(text: str, role: Role, last: Role) -> None:
    assert meant(does(text, last=last)) == role


def test_nothing_is_done_before_the_answer_and_then_what_was_said() -> None:
    asked = does("did row 60x9 with Noor")
    assert (asked.changes, asked.orders) == ((), ())
    (say,) = asked.says
    own = next(each for each in say.buttons if isinstance(each, InRole) and each.role == "client")
    pressed = hear(WITH_INES, Heard(2, NOW, Pressed(button="1:0", action=own)))
    assert [type(each) for each in pressed.changes if isinstance(each, Recorded)] == [Recorded]
    assert isinstance(asked.memory, CoachMemory)
    state = replace(WITH_INES, coach=replace(WITH_INES.coach, memory=asked.memory))
    typed = hear(state, Heard(2, NOW, Text(text="that was my own training")))
    assert [each for each in typed.changes if isinstance(each, Recorded)]


def test_an_answer_goes_to_the_role_that_was_asked() -> None:
    begun = does("tell Noor")
    memory = begun.memory if isinstance(begun.memory, CoachMemory) else begun.other_memory
    assert memory is not None
    waiting = replace(WITH_INES, coach=replace(WITH_INES.coach, memory=memory))
    told = does("sleep first", waiting)
    assert [each.to for each in told.orders] == [2]
    assert meant(does("row 60x9", waiting)) == "asked"
    half = does("rows 60")
    assert isinstance(half.memory, ClientMemory)
    asked = replace(WITH_INES, client=replace(WITH_INES.client, memory=half.memory))
    assert meant(does("9", asked)) == "client"


def test_buttons_and_files_say_by_themselves_whose_they_are() -> None:
    def presses(action: object) -> Meant:
        return meant(hear(WITH_INES, Heard(1, NOW, Pressed(button="1:0", action=action))))  # type: ignore[arg-type]

    assert presses(Treat(client=2, alert=4, remedy="seen")) == "coach"
    assert presses(Answer(question=1, text="Yes", role="coach")) == "coach"
    assert presses(Answer(question=1, text="Yes")) == "client"
    sheet = "Harbour Quick\nTrain every 3 days in turn: All\n\nAll\n1. Row, 8-10 reps\n"
    sent = hear(WITH_INES, Heard(1, NOW, Document(name="x.txt", text=sheet)))
    assert [part.kind for say in sent.says for part in say.parts] == ["question"]


def test_a_reply_is_of_the_role_in_which_the_message_came() -> None:
    assert meant(does("60x9 is fine", reply=ReplyTo(message=5, client=2, is_words=True))) in {
        "coach",
        "asked",
    }
    assert [
        each.to for each in does("well done", reply=ReplyTo(message=5, client=2, is_words=True)).orders
    ] == [2]


def test_what_the_coach_orders_of_herself_is_carried_out_as_on_any_client() -> None:
    outcome = hear(BY_HERSELF, Heard(1, NOW, CardWanted(coach=1)))
    assert {say.to for say in outcome.says} == {1}
    assert outcome.says


def test_both_roles_are_woken_in_time() -> None:
    asleep = does("row 60x9")
    only_client = hear(WITH_INES.client, Heard(1, NOW, Text(text="row 60x9")))
    only_coach = hear(WITH_INES.coach, Heard(1, NOW, Text(text="who needs me?")))
    moments = [each for each in (only_client.wake_at, only_coach.wake_at) if each is not None]
    assert asleep.wake_at == min(moments)
    woken = wake(WITH_INES, at(5, 9))
    assert woken.wake_at is not None
    assert woken.wake_at > at(5, 9)
    assert isinstance(woken.memory, ClientMemory)
    assert isinstance(woken.other_memory, CoachMemory)
    assert stored().programme.name == "Harbour Base"
