"""A coach's sheets, requests and decisions; own clients only."""

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

import pytest

from domain.actions import Answer, Release, Treat, Write
from domain.coach_memory import CoachMemory
from domain.decide import hear
from domain.hours import Hours
from domain.incoming import (
    Assigned,
    CardWanted,
    Changed,
    Decided,
    Document,
    Edited,
    FromChat,
    FromDelivery,
    Heard,
    Pressed,
    Released,
    SendingFailed,
    Text,
    Told,
    WhyWanted,
)
from domain.outcome import Invited, Order, Outcome, SheetStored
from domain.parts import ClientLine, Digest, Notice
from domain.state import Coach, CoachState
from domain.wishes import BackWish
from tests.domain.client.people import SHEET, kinds, stored

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
MARA = Coach(number=1, name="Mara", zone="Europe/Lisbon", unit="kg")


def noor(name: str = "Noor") -> ClientLine:
    return ClientLine(name=name, programme="Harbour Base", last_workout=None, due_on=date(2026, 3, 2))


STATE = CoachState(
    coach=MARA,
    memory=CoachMemory(),
    clients=((2, noor()), (3, noor("Ana Maria"))),
    programmes=(stored(),),
    fresh_code="fresh-code",
)


def does(incoming: FromChat | FromDelivery, state: CoachState = STATE) -> Outcome:
    return hear(state, Heard(1, NOW, incoming))


def said(outcome: Outcome) -> list[str]:
    assert all(say.to == MARA.number for say in outcome.says)
    return kinds([part for say in outcome.says for part in say.parts])


def remembering(state: CoachState, outcome: Outcome) -> CoachState:
    assert isinstance(outcome.memory, CoachMemory)
    return replace(state, memory=outcome.memory)


def test_a_sheet_is_said_back_and_stored_only_once_the_coach_agrees() -> None:
    first = does(Text(text=SHEET))
    assert said(first) == ["question"]
    assert first.changes == ()
    second = does(Text(text="yes"), remembering(STATE, first))
    (change,) = second.changes
    assert isinstance(change, SheetStored)
    assert (change.programme.name, change.sheet) == ("Harbour Base", SHEET)


def test_an_ok_of_days_later_has_the_sheet_said_back_again_and_its_button_still_stores_it() -> None:
    state = remembering(STATE, does(Text(text=SHEET)))
    later = Heard(2, NOW + timedelta(days=3), Text(text="ok"))
    asked = hear(state, later)
    assert (said(asked), asked.changes) == (["question"], ())
    (change,) = hear(
        remembering(state, asked), Heard(3, later.at + timedelta(hours=1), Text(text="ok"))
    ).changes
    assert isinstance(change, SheetStored)
    store = next(
        each
        for each in does(Text(text=SHEET)).says[0].buttons
        if isinstance(each, Answer) and each.text == "Store it"
    )
    pressed = hear(state, Heard(2, later.at, Pressed(button="1:0", action=store)))
    assert [type(each) for each in pressed.changes] == [SheetStored]


def test_a_sheet_can_be_left_by_its_button_and_an_old_button_does_nothing() -> None:
    first = does(Document(name="base.txt", text=SHEET))
    state = remembering(STATE, first)
    leave = next(
        each for each in first.says[0].buttons if isinstance(each, Answer) and each.text == "Leave it"
    )
    second = does(Pressed(button="1:1", action=leave), state)
    assert (said(second), second.changes) == (["sheet left"], ())
    third = does(Pressed(button="1:1", action=leave), remembering(state, second))
    assert said(third) == ["button is old"]


@pytest.mark.parametrize(
    "document", [Document(name="a.pdf", fault="not text"), Document(name="b", fault="too large")]
)
def test_a_file_that_is_no_text_is_refused_kindly(document: Document) -> None:
    assert said(does(document)) == ["file not taken"]


def test_a_sheet_with_faults_is_answered_with_all_of_them() -> None:
    outcome = does(Text(text="Broken\nTrain every 3 days in turn: A, B\n\nA\n1. Row 10-8 reps\n"))
    (part,) = outcome.says[0].parts
    assert said(outcome) == ["sheet faults"]
    assert len(getattr(part, "facts", {})["faults"]) == 2


@pytest.mark.parametrize("text", ["who needs me?", "Who needs me", "overview"])
def test_the_overview_names_own_clients(text: str) -> None:
    (part,) = does(Text(text=text)).says[0].parts
    assert isinstance(part, Digest)
    assert [line.name for line in part.clients] == ["Noor", "Ana Maria"]


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("tell Noor: well done", Order(2, Told(coach=1, text="well done"))),
        ("Tell ana maria: two\nlines", Order(3, Told(coach=1, text="two\nlines"))),
        ("how is Noor doing?", Order(2, CardWanted(coach=1))),
        ("noor", Order(2, CardWanted(coach=1))),
        ("let Noor train", Order(2, Released(coach=1))),
        ("Let Ana Maria begin training.", Order(3, Released(coach=1))),
        ("release noor", Order(2, Released(coach=1))),
        ("put Ana Maria on harbour base", Order(3, Assigned(coach=1, programme=7, change=1))),
        ("move ana back to base", Order(3, Assigned(coach=1, programme=7, change=1))),
        ("How's Ana getting on?", Order(3, CardWanted(coach=1))),
        ("NOOR: well done", Order(2, Told(coach=1, text="well done"))),
        ("tell Noor, well done", Order(2, Told(coach=1, text="well done"))),
        (
            "tell Noor:\nfirst rest\nthen train\nthen rest",
            Order(2, Told(coach=1, text="first rest\nthen train\nthen rest")),
        ),
        (
            "put the goblet squat back for noor",
            Order(2, Changed(coach=1, change=1, wish=BackWish(exercise="goblet squat"))),
        ),
    ],
)
def test_what_concerns_a_client_becomes_an_order_for_that_client(text: str, order: Order) -> None:
    assert does(Text(text=text)).orders == (order,)


@pytest.mark.parametrize("text", ["tell Bob: hi", "how is Bob?", "put Bob on Harbour Base"])
def test_nobody_elses_client_can_be_reached(text: str) -> None:
    outcome = does(Text(text=text))
    assert (outcome.orders, said(outcome)) == ((), ["unknown client"])


def test_own_clients_only_are_released() -> None:
    own = does(Pressed(button="9:0", action=Release(client=2)))
    assert own.orders == (Order(2, Released(coach=1)),)
    foreign = does(Pressed(button="9:0", action=Release(client=99)))
    assert (foreign.orders, said(foreign)) == ((), ["not your client"])


def test_a_remedy_goes_to_own_clients_only() -> None:
    own = does(Pressed(button="9:0", action=Treat(client=2, alert=4, remedy="lighten")))
    assert own.orders == (Order(2, Decided(coach=1, alert=4, remedy="lighten")),)
    foreign = does(Pressed(button="9:0", action=Treat(client=99, alert=4, remedy="lighten")))
    assert (foreign.orders, said(foreign)) == ((), ["not your client"])


def test_a_button_of_somebody_elses_message_does_nothing() -> None:
    assert said(does(Pressed(button="9:0", action=None))) == ["button is not yours"]


def test_an_invitation_carries_the_fresh_code_and_ends_in_two_weeks() -> None:
    (change,) = does(Text(text="invite Piet to Harbour Base")).changes
    assert isinstance(change, Invited)
    invitation = change.invitation
    assert (invitation.code, invitation.name, invitation.coach) == ("fresh-code", "Piet", MARA)
    assert (invitation.expires - NOW).days == 14


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("invite Piet to Nowhere", "question"),
        ("invite Noor to Harbour Base", "name is taken"),
        ("bananas", "coach lost"),
    ],
)
def test_what_cannot_be_done_is_said_and_changes_nothing(text: str, topic: str) -> None:
    outcome = does(Text(text=text))
    assert (said(outcome), outcome.changes, outcome.orders) == ([topic], (), ())


def test_the_coach_hears_that_a_client_cannot_be_reached() -> None:
    assert said(does(SendingFailed(person=2, why="blocked"))) == ["alert"]
    assert said(does(SendingFailed(person=99, why="blocked"))) == []


def test_of_a_name_that_fits_two_clients_it_is_asked_whose() -> None:
    state = replace(STATE, clients=((2, noor("Ana Sofia")), (3, noor("Ana Maria"))))
    outcome = does(Text(text="tell Ana: hi"), state)
    assert (outcome.orders, said(outcome)) == ((), ["question"])
    (maria,) = [each for each in outcome.says[0].buttons if getattr(each, "text", "") == "Ana Maria"]
    chosen = does(Pressed(button="1:1", action=maria), remembering(state, outcome))
    assert chosen.orders == (Order(3, Told(coach=1, text="hi")),)


def test_an_edited_sheet_is_read_again_and_nothing_else_is_done_twice() -> None:
    assert said(does(Edited(text=SHEET, key="1", before="Harbour"))) == ["question"]
    outcome = does(Edited(text="tell Noor: hello", key="1", before="tell Noor: helo"))
    assert (outcome.orders, said(outcome)) == ((), ["edit not taken"])
    assert said(does(Edited(text="hi", key="1", before="hi"))) == []


@pytest.mark.parametrize("text", ["thanks!", "ok", "👍"])
def test_a_courtesy_gets_no_lecture(text: str) -> None:
    assert said(does(Text(text=text))) == ["heard"]


@pytest.mark.parametrize("text", ["yes", "Yes, store it", "ok", "looks right", "STORE IT"])
def test_a_coach_agrees_in_plain_words(text: str) -> None:
    state = remembering(STATE, does(Text(text=SHEET)))
    assert said(does(Text(text=text), state)) == ["sheet stored"]


@pytest.mark.parametrize(
    ("text", "client", "rest"),
    [
        ("why is Noor's bench below?", 2, "is bench below"),
        ("Why 82.5 for Ana Maria", 3, "82.5 for"),
        ("how come Noor’s squat stays?", 2, "squat stays"),
        ("why noor", 2, ""),
    ],
)
def test_a_coach_can_ask_for_the_reasons_of_a_verdict(text: str, client: int, rest: str) -> None:
    outcome = does(Text(text=text))
    assert outcome.orders == (Order(client, WhyWanted(coach=MARA.number, text=rest)),)


def test_a_why_that_names_no_client_is_not_understood() -> None:
    assert said(does(Text(text="why is the sky blue"))) == ["coach lost"]


def test_a_bare_why_is_about_the_only_client_where_there_is_just_one() -> None:
    alone = replace(STATE, clients=((2, noor()),))
    assert does(Text(text="why?"), alone).orders == (Order(2, WhyWanted(coach=MARA.number, text="")),)
    assert said(does(Text(text="why?"))) == ["coach lost"]


@pytest.mark.parametrize(
    ("text", "begin", "end"),
    [
        ("my hours are 8 to 20", time(8), time(20)),
        ("My hours are from 8:30 till 9 pm.", time(8, 30), time(21)),
        ("write to me between 9 am and 5 pm", time(9), time(17)),
        ("hours 6-24", time(6), time(23, 59)),
    ],
)
def test_a_coach_says_when_she_may_be_written_to(text: str, begin: time, end: time) -> None:
    outcome = does(Text(text=text))
    assert said(outcome) == ["hours kept"]
    assert isinstance(outcome.memory, CoachMemory)
    assert outcome.memory.hours == Hours(begin=begin, end=end)


@pytest.mark.parametrize("text", ["my hours are 20 to 8", "my hours are 8 to 8", "my hours are 8 to 27"])
def test_hours_that_are_none_are_said_to_be_so(text: str) -> None:
    outcome = does(Text(text=text))
    assert (said(outcome), outcome.memory) == (["no such hours"], None)


@pytest.mark.parametrize(
    ("text", "workouts"),
    [
        ("tell me after 4 without a beat", 4),
        ("Please tell me after three workouts without a beat.", 3),
        ("alert me when an exercise is 5 times in a row without a beat", 5),
        ("tell me after 2 sessions with no beat", 2),
    ],
)
def test_a_coach_names_her_own_rule_for_a_stall(text: str, workouts: int) -> None:
    outcome = does(Text(text=text))
    assert said(outcome) == ["rule kept"]
    assert isinstance(outcome.memory, CoachMemory)
    assert outcome.memory.tell_after == workouts


@pytest.mark.parametrize(
    "text", ["no rule", "forget my rule", "judge stalls yourself", "tell me when you see a stall"]
)
def test_a_coach_takes_her_rule_back(text: str) -> None:
    outcome = does(Text(text=text), replace(STATE, memory=CoachMemory(tell_after=4)))
    assert said(outcome) == ["no rule"]
    assert isinstance(outcome.memory, CoachMemory)
    assert outcome.memory.tell_after is None


def test_a_rule_of_one_workout_is_none() -> None:
    outcome = does(Text(text="tell me after 1 workout without a beat"))
    assert (said(outcome), outcome.memory) == (["no such rule"], None)


@pytest.mark.parametrize(
    "text", ["which remedies worked?", "How often did remedies work?", "what remedies worked"]
)
def test_a_coach_asks_which_remedies_worked_over_all_clients(text: str) -> None:
    one = noor().model_copy(update={"tried": (("lighten", "worked"), ("keep on", "did not"))})
    two = noor("Ana").model_copy(update={"tried": (("lighten", "open"), ("lighten", "cut short"))})
    outcome = does(Text(text=text), replace(STATE, clients=((2, one), (3, two))))
    ((notice,),) = [say.parts for say in outcome.says]
    assert isinstance(notice, Notice)
    rows = [[*row.values()] for row in notice.facts["rows"]]
    assert rows == [["lighten", 3, 1, 0, 2], ["keep on", 1, 0, 1, 0]]


def test_the_overview_does_not_carry_the_remedies() -> None:
    line = noor().model_copy(update={"tried": (("lighten", "worked"),)})
    outcome = does(Text(text="who needs me?"), replace(STATE, clients=((2, line),)))
    ((digest,),) = [say.parts for say in outcome.says]
    assert isinstance(digest, Digest)
    assert digest.clients[0].tried == ()


WRITE = Write(client=2, alert=5, name="Noor")


def asked_what_to_write() -> CoachState:
    return remembering(STATE, does(Pressed(button="1:0", action=WRITE)))


@pytest.mark.parametrize("text", ["Sleep first, then we see.", "well done", "ok"])
def test_what_a_coach_types_after_the_button_goes_to_the_client(text: str) -> None:
    outcome = does(Text(text=text), asked_what_to_write())
    assert outcome.orders == (Order(2, Told(coach=1, text=text, alert=5)),)
    assert remembering(STATE, outcome).memory.waiting is None


@pytest.mark.parametrize("text", ["who needs me?", "how is Noor?", "tell Ana: rest", "my hours are 8 to 20"])
def test_a_request_meanwhile_is_a_request(text: str) -> None:
    state = asked_what_to_write()
    outcome = does(Text(text=text), state)
    assert not [order for order in outcome.orders if getattr(order.incoming, "alert", None)]
    after = remembering(state, outcome) if outcome.memory else state
    assert after.memory.waiting is not None


def test_words_are_not_waited_for_long_and_can_be_left() -> None:
    state = asked_what_to_write()
    late = hear(state, Heard(2, NOW + timedelta(hours=2), Text(text="I like spring")))
    assert late.orders == ()
    left = does(Text(text="never mind"), state)
    assert (left.orders, remembering(state, left).memory.waiting) == ((), None)


def test_nobody_writes_to_another_coach_s_client() -> None:
    assert said(does(Pressed(button="1:0", action=WRITE.model_copy(update={"client": 9})))) == [
        "not your client"
    ]
