"""A clock that was ahead and is put right: nothing waits for the time that it was."""

from datetime import timedelta

import pytest

from domain.outcome import Outcome
from domain.parts import Say, Urgent
from persistence.store import Store, open_store
from tests.persistence.people import LEASE_SECONDS, NOON, after, settled, text, work_all, work_once

AHEAD = after(days=365)


def ahead(store: Store) -> int:
    """Let Noor be answered, and a try to send fail, while the clock is a year ahead; return her number."""
    noor = settled(store, "Noor")["Noor"]
    store.receive([text("telegram:Noor", "x", "1", NOON)])
    said = Outcome(says=(Say(to=noor, parts=(Urgent(),)),), wake_at=AHEAD + timedelta(days=1))
    work_once(store, AHEAD, lambda _state, _heard: said)
    lease = store.claim_chat(AHEAD, LEASE_SECONDS)
    assert lease is not None
    outgoing = store.next_message(lease, AHEAD)
    assert outgoing is not None
    store.try_again(lease, outgoing.number, AHEAD + timedelta(minutes=5), AHEAD)
    return noor


@pytest.mark.parametrize("restarted", [True, False])
def test_what_was_said_is_sent_and_everybody_is_asked_when_to_be_woken(
    store: Store, *, restarted: bool
) -> None:
    noor = ahead(store)
    assert store.claim_chat(NOON, LEASE_SECONDS) is None
    (store.take_over if restarted else store.clock_was_set_back)(NOON)
    chat = store.claim_chat(NOON, LEASE_SECONDS)
    assert chat is not None
    assert store.next_message(chat, NOON) is not None
    asked: list[int] = []
    later = after(hours=1)

    def note(state: object, heard: object) -> Outcome:
        asked.append(getattr(getattr(state, "client", None), "number", 0))
        return Outcome(wake_at=later if heard is None else None)

    work_all(store, NOON, note)
    assert asked.count(noor) == 1
    assert store.next_due(NOON) == later


def test_a_lease_given_while_the_clock_was_ahead_holds_nobody_up(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "x", "1", NOON)])
    assert store.claim_person(AHEAD, LEASE_SECONDS) is not None
    assert store.claim_person(NOON, LEASE_SECONDS) is None
    store.clock_was_set_back(NOON)
    assert store.claim_person(NOON, LEASE_SECONDS) is not None


def test_a_clock_that_is_right_lets_all_wait_that_is_to_wait(store: Store) -> None:
    ahead(store)
    store.take_over(AHEAD)
    assert store.claim_chat(AHEAD, LEASE_SECONDS) is None
    assert store.next_due(AHEAD) == AHEAD + timedelta(minutes=5)


def test_only_a_server_has_a_clock_of_its_own(url: str) -> None:
    store = open_store(url)
    assert (store.server_time() is None) is url.startswith("sqlite")
    store.close()
