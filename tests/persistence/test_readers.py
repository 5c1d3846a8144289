"""One reader at a time: who takes over when, and that whoever was taken over from stores nothing more."""

import threading

import pytest

from persistence.faults import ReaderLost
from persistence.readers import Reader
from persistence.store import Store
from tests.persistence.people import NOON, after, text

SECONDS = 6.0


def claimed(store: Store, seconds: float = 0.0) -> Reader:
    reader = store.claim_reader("telegram:1", after(seconds=seconds), SECONDS)
    assert reader is not None
    return reader


def test_there_is_one_reader_until_its_lease_runs_out_or_ends(store: Store) -> None:
    first = claimed(store)
    assert store.claim_reader("telegram:1", after(seconds=5.9), SECONDS) is None
    assert store.claim_reader("telegram:2", NOON, SECONDS) is not None
    first = store.renew_reader(first, after(seconds=5))
    assert store.claim_reader("telegram:1", after(seconds=10.9), SECONDS) is None
    second = claimed(store, 11)
    assert second.fence == first.fence + 1
    store.end_reader(second)
    assert claimed(store, 11).fence == second.fence + 1


def test_a_reader_that_was_taken_over_from_stores_nothing_and_ends_nobodys_lease(store: Store) -> None:
    lost = claimed(store)
    store.receive([text("telegram:5", "hello", "1")], ("telegram:1", "17"), lost)
    second = claimed(store, SECONDS)
    with pytest.raises(ReaderLost):
        store.receive([text("telegram:5", "anybody?", "2")], ("telegram:1", "16"), lost)
    with pytest.raises(ReaderLost):
        store.renew_reader(lost, after(seconds=SECONDS))
    store.end_reader(lost)
    assert store.claim_reader("telegram:1", after(seconds=SECONDS), SECONDS) is None
    assert store.cursor("telegram:1") == "17"
    store.receive([text("telegram:5", "anybody?", "2")], ("telegram:1", "18"), second)
    assert store.cursor("telegram:1") == "18"


def test_a_reader_that_nobody_took_over_from_goes_on_however_late_it_is(store: Store) -> None:
    late = claimed(store)
    store.receive([], ("telegram:1", "17"), late)
    assert store.renew_reader(late, after(hours=1)).until == after(hours=1, seconds=SECONDS)


def test_of_many_that_claim_at_once_one_becomes_the_reader(store: Store) -> None:
    found: list[Reader | None] = []
    ready = threading.Barrier(8)

    def claim() -> None:
        ready.wait()
        found.append(store.claim_reader("telegram:1", NOON, SECONDS))

    threads = [threading.Thread(target=claim) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(reader is not None for reader in found) == [False] * 7 + [True]


def test_a_lease_from_a_clock_that_was_ahead_holds_nobody_up(store: Store) -> None:
    claimed(store, 3600)
    assert store.claim_reader("telegram:1", NOON, SECONDS) is None
    store.clock_was_set_back(NOON)
    assert claimed(store).fence == 2
