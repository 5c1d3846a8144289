"""What a coach says in many ways, and what it comes to: `coach_says.txt`, one line each."""

from dataclasses import replace
from pathlib import Path

import pytest

from domain.actions import Answer
from domain.decide import hear
from domain.incoming import Heard, Text
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
