"""Invitations of clients and of coaches: made, listed and taken back."""

from dataclasses import replace
from datetime import timedelta

import pytest

from domain.incoming import Text
from domain.outcome import InvitationRevoked, Invited
from domain.parts import Notice
from domain.state import OpenInvitation
from tests.domain.coach.test_hearing import MARA, NOW, STATE, does, said

LATER = NOW + timedelta(days=9)
PIET = OpenInvitation("hash of Piet's", "Piet", LATER)
INES = OpenInvitation("hash of Ines'", "Ines", LATER, as_coach=True)
OPEN = replace(STATE, invitations=(PIET, INES), coaches=((8, "Bea"),))


@pytest.mark.parametrize(
    "text",
    [
        "invite Zoe as a coach",
        "invite a coach: Zoe",
        "Invite coach Zoe",
        "bring in Zoe as another coach",
        "I want to invite Zoe as coach",
        "invite another coach called Zoe",
        "make Zoe a coach",
        "add Zoe as a co-coach",
    ],
)
def test_a_coach_brings_in_another(text: str) -> None:
    (change,) = does(Text(text=text), OPEN).changes
    assert isinstance(change, Invited)
    invitation = change.invitation
    assert (invitation.name, invitation.as_coach, invitation.programme) == ("Zoe", True, None)
    assert (invitation.coach, invitation.code) == (MARA, "fresh-code")
    assert invitation.expires - NOW == timedelta(days=14)


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("invite a coach", "which coach"),
        ("bring in another coach", "which coach"),
        ("invite Bea as a coach", "coach name is taken"),
        ("invite mara as a coach", "coach name is taken"),
    ],
)
def test_a_coach_needs_a_name_of_the_own(text: str, topic: str) -> None:
    outcome = does(Text(text=text), OPEN)
    assert (said(outcome), outcome.changes) == ([topic], ())


@pytest.mark.parametrize(
    ("text", "gone"),
    [
        ("revoke the invitation for Piet", [PIET]),
        ("cancel Piet's invitation", [PIET]),
        ("withdraw the invite for piet", [PIET]),
        ("uninvite Ines", [INES]),
        ("take back the code for Ines", [INES]),
        ("revoke that invitation", [INES]),
        ("cancel all invitations", [PIET, INES]),
        ("revoke the invitation for Bob", []),
    ],
)
def test_an_invitation_is_taken_back_in_words(text: str, gone: list[OpenInvitation]) -> None:
    outcome = does(Text(text=text), OPEN)
    assert outcome.changes == tuple(InvitationRevoked(each.key) for each in gone)
    assert said(outcome) == ["invitations revoked"]


@pytest.mark.parametrize(
    "text", ["invitations", "open invitations", "who is invited?", "which codes are open"]
)
def test_open_invitations_are_listed_without_their_codes(text: str) -> None:
    ((notice,),) = [say.parts for say in does(Text(text=text), OPEN).says]
    assert isinstance(notice, Notice)
    assert [(each["name"], each["as_coach"]) for each in notice.facts["invitations"]] == [
        ("Piet", False),
        ("Ines", True),
    ]


def test_a_second_invitation_for_the_same_name_ends_the_first() -> None:
    changes = does(Text(text="invite Piet to Harbour Base"), OPEN).changes
    assert changes[0] == InvitationRevoked(PIET.key)
    assert isinstance(changes[1], Invited)
    (only,) = does(Text(text="invite Ines to Harbour Base"), OPEN).changes
    assert isinstance(only, Invited)
