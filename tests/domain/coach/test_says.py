"""What a coach says in many ways, and what it comes to: `coach_says.txt`, one line each."""

from dataclasses import replace
from pathlib import Path

import pytest

from domain.actions import Answer, TakeBack
from domain.coach_memory import CoachMemory
from domain.decide import hear
from domain.incoming import Heard, Pressed, Text
from domain.notes import Note
from domain.outcome import CoachKept, InvitationRevoked, Invited, Joined, NoteForgotten, NoteKept, Outcome
from domain.parts import Notice
from domain.state import OfferedClient, OpenInvitation
from tests.domain.coach.test_hearing import NOW, STATE, noor

SAYS = Path(__file__).parent / "coach_says.txt"
STATE_OF_MARA = replace(
    STATE,
    clients=((2, noor()), (3, noor("Ana Maria")), (4, noor("Piet")), (5, noor("Tomás"))),
    coaches=((21, "Ines Prado"), (22, "Bea")),
    offered=(OfferedClient(31, "Lena", "Bea", NOW),),
    invitations=(
        OpenInvitation("a" * 64, "Zoe", NOW.replace(month=4)),
        OpenInvitation("b" * 64, "Kim", NOW.replace(month=4), as_coach=True),
    ),
    notes=(Note(11, 2, "works nights", NOW, 5), Note(12, 2, "likes tea", NOW, 6)),
)


def rows() -> list[tuple[str, str]]:
    lines = (line for line in SAYS.read_text("utf-8").splitlines() if line and not line.startswith("#"))
    return [(said.strip(), wanted.strip()) for said, _, wanted in (line.rpartition("|") for line in lines)]


def came_to(outcome: Outcome) -> str:
    """Return what an outcome is, shortly: its orders and changes with whom, or else what it says."""
    done = [f"{order.incoming.kind} {order.to}" for order in outcome.orders]
    for change in outcome.changes:
        match change:
            case NoteKept(note):
                done.append(f"note {note.client}")
            case NoteForgotten(number):
                done.append(f"forget {number}")
            case InvitationRevoked():
                done.append("revoked")
            case CoachKept(coach):
                done.append(f"coach kept {coach.zone} {coach.unit}")
            case Joined():
                done[-1:] = ["joined"]
            case Invited(invitation):
                done.append("invited coach" if invitation.as_coach else "invited client")
            case _:
                pass
    done = list(dict.fromkeys(done))
    said = [
        part.topic if isinstance(part, Notice) else part.kind for say in outcome.says for part in say.parts
    ]
    return ", ".join(done) or ", ".join(said)


@pytest.mark.parametrize(("said", "wanted"), rows(), ids=lambda each: str(each)[:40])
def test_a_coach_is_understood(said: str, wanted: str) -> None:
    outcome = hear(STATE_OF_MARA, Heard(1, NOW, Text(text=said)))
    assert came_to(outcome) == wanted
    if wanted == "question":
        assert any((isinstance(each, Answer) and "Ask" in each.text) or "notes" in getattr(each, "text", "")
                   for say in outcome.says for each in say.buttons)  # fmt: skip


BOTH = replace(STATE_OF_MARA, clients=((2, noor()), (3, noor("Noor Haddad")), (4, noor("Piet"))))


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("tell both Noors: the gym is closed", "told 2, told 3"),
        ("tell both Noors the gym is closed", "told 2, told 3"),
        ("Both Noors: the gym is closed", "told 2, told 3"),
        ("no dips for both of my Noors", "changed 2, changed 3"),
        ("give both Noors one more rest day", "changed 2, changed 3"),
        ("how are both Noors doing?", "card wanted 2, card wanted 3"),
        ("tell both Noors and Piet: hi", "told 2, told 3, told 4"),
        ("notes on both Noors", "notes"),
        ("journals of both Noors as CSV", "journals coming, file, journals coming, file, journals coming"),
        ("how is Noor doing?", "card wanted 2"),
        ("no dips for all the Noors", "changed 2, changed 3"),
    ],
)
def test_both_are_meant_where_several_bear_a_name(said: str, wanted: str) -> None:
    outcome = hear(BOTH, Heard(9, NOW, Text(text=said)))
    assert came_to(outcome) == wanted


def test_both_of_a_name_that_one_bears_is_that_one() -> None:
    outcome = hear(STATE_OF_MARA, Heard(9, NOW, Text(text="tell both Noors: hi")))
    assert came_to(outcome) != "told 2, told 2"


def test_undo_goes_back_one_change_after_the_other_and_passes_over_what_a_button_has_undone() -> None:
    state, undone = STATE_OF_MARA, []
    for number, said in enumerate(
        ("no curls for Noor", "no rows for Piet", "give Ana one more rest day"), 10
    ):
        outcome = hear(state, Heard(number, NOW, Text(text=said)))
        assert isinstance(outcome.memory, CoachMemory)
        state = replace(state, memory=outcome.memory)
    pressed = Pressed(button="1:0", action=TakeBack(client=4, change=11))
    outcome = hear(state, Heard(20, NOW, pressed))
    for number in range(21, 24):
        undone += [(order.to, getattr(order.incoming, "change", None)) for order in outcome.orders]
        if isinstance(outcome.memory, CoachMemory):
            state = replace(state, memory=outcome.memory)
        outcome = hear(state, Heard(number, NOW, Text(text="undo")))
    assert undone == [(4, 11), (3, 12), (2, 10)]
    assert came_to(outcome) == "nothing to undo"


@pytest.mark.parametrize(
    ("said", "name"),
    [("tell Noor and Piet and Bob: hi", "Bob"), ("tell Noor and Bob: hi", "Bob"), ("how is Zed?", "Zed")],
)
def test_a_name_that_nobody_bears_is_said_as_it_was_typed(said: str, name: str) -> None:
    outcome = hear(STATE_OF_MARA, Heard(9, NOW, Text(text=said)))
    (part,) = outcome.says[0].parts
    assert isinstance(part, Notice)
    assert (part.topic, part.facts["name"]) == ("unknown client", name)


@pytest.mark.parametrize("said", ["I'm ill this week", "I'm away until Monday", "hand everything to Ines"])
def test_what_is_no_name_is_not_taken_for_one(said: str) -> None:
    assert came_to(hear(STATE_OF_MARA, Heard(9, NOW, Text(text=said)))) == "coach lost"


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("change my rows to pulldowns", "changed 1"),
        ("swap my bench for dips", "changed 1"),
        ("no dips for me until I say so", "changed 1"),
        ("put me back on dips", "changed 1"),
        ("give me one more rest day", "changed 1"),
        ("put me on Harbour Base", "assigned 1"),
        ("no dips for Noor", "changed 2"),
        ("tell me about Noor", "card wanted 2"),
    ],
)
def test_my_and_me_are_the_coachs_own_training_where_she_trains_by_an_own_sheet(
    said: str, wanted: str
) -> None:
    state = replace(STATE_OF_MARA, is_client=True, clients=((1, noor("Mara")), *STATE_OF_MARA.clients))
    assert came_to(hear(state, Heard(9, NOW, Text(text=said)))) == wanted


@pytest.mark.parametrize(
    ("said", "wanted"),
    [
        ("how is Олена doing?", "card wanted 2"),
        ("tell Олена: добре", "told 2"),
        ("no curls for Γιώργος until I say so", "changed 3"),
        ("ΓΙΏΡΓΟΣ?", "card wanted 3"),
        ("how is نور doing", "card wanted 4"),
        ("نور: see you on Monday", "told 4"),
        ("give 田中 one more rest day", "changed 5"),
        ("notes on 田中 花子", "notes"),
        ("tell 田中 花子 and Олена: hi", "told 5, told 2"),
        ("how is İlker?", "card wanted 6"),
    ],
)
def test_a_name_in_any_script_is_known(said: str, wanted: str) -> None:
    names = ("Олена", "Γιώργος", "نور", "田中 花子", "İlker")
    clients = tuple((number, noor(name)) for number, name in enumerate(names, start=2))
    state = replace(STATE_OF_MARA, clients=clients)
    assert came_to(hear(state, Heard(9, NOW, Text(text=said)))) == wanted
