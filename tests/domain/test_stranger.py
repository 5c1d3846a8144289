"""Nobody gets in without a valid invitation, and nobody learns anything without one."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from domain.decide import hear, wake
from domain.incoming import Document, FromChat, Heard, Started, Text, Unsupported
from domain.memory import ClientMemory, Joining
from domain.outcome import Joined, Outcome
from domain.parts import Notice
from domain.state import Coach, Invitation, StrangerState

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
MARA = Coach(number=1, name="Mara", zone="Europe/Lisbon", unit="kg")
INVITATION = Invitation(code="abc", name="Noor", expires=NOW + timedelta(days=1), coach=MARA)


def answer(incoming: FromChat, invitation: Invitation | None = None) -> Outcome:
    return hear(StrangerState(number=5, invitation=invitation), Heard(1, NOW, incoming))


def topics(outcome: Outcome) -> list[tuple[int, str]]:
    return [(say.to, part.topic) for say in outcome.says for part in say.parts if isinstance(part, Notice)]


@pytest.mark.parametrize(
    "incoming",
    [Text(text="hi"), Started(), Started(code="nope"), Document(name="x"), Unsupported(what="photo")],
)
def test_a_stranger_gets_one_polite_line(incoming: FromChat) -> None:
    outcome = answer(incoming)
    assert topics(outcome) == [(5, "stranger")]
    assert outcome.changes == ()


def test_a_valid_invitation_lets_in_and_tells_the_coach() -> None:
    outcome = answer(Started(code="abc"), INVITATION)
    assert outcome.changes == (Joined(INVITATION, NOW),)
    assert topics(outcome) == [(1, "client joined")]
    assert outcome.wake_at == NOW
    assert outcome.memory == ClientMemory(joining=Joining())


def test_who_was_prepared_by_a_roster_is_not_asked_the_first_questions() -> None:
    assert answer(Started(code="abc"), replace(INVITATION, person=7)).memory is None


@pytest.mark.parametrize(
    "invitation", [replace(INVITATION, used=True), replace(INVITATION, expires=NOW)], ids=["used", "expired"]
)
def test_a_used_or_expired_invitation_does_not(invitation: Invitation) -> None:
    outcome = answer(Started(code="abc"), invitation)
    assert outcome.changes == ()
    assert topics(outcome) == [(5, "invitation is over")]


def test_a_coach_is_welcomed_as_one() -> None:
    invitation = replace(INVITATION, coach=None, as_coach=True, name="Mara", person=1)
    assert topics(answer(Started(code="abc"), invitation)) == [(1, "welcome coach")]


def test_time_brings_nothing_to_a_stranger() -> None:
    assert wake(StrangerState(number=5), NOW) == Outcome()
