"""The pace of a platform: kept by all workers together, in each chat, and by answers before reminders."""

from datetime import datetime, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sqlalchemy import Engine, select, update

from domain.incoming import Heard
from domain.outcome import Outcome
from domain.parts import Say, Urgent, Weight
from domain.state import CoachState, State
from persistence.engine import writing
from persistence.faults import NoRoomYet
from persistence.leases import ChatLease
from persistence.pace import Pace, Rate
from persistence.store import Store
from persistence.tables import InboxRow, PersonRow
from tests.persistence.people import LEASE_SECONDS, NOON, after, settled, text, work_all

PACE = Pace("telegram", everywhere=Rate(10, at_once=2), in_chat=Rate(1, at_once=3))
CROWD = 2_000


@given(
    a_second=st.integers(1, 50),
    at_once=st.integers(1, 5),
    waits=st.lists(st.floats(0, 0.5), min_size=20, max_size=150),
)
def test_no_second_has_more_than_the_rate_and_whoever_waits_for_room_keeps_it(
    a_second: int, at_once: int, waits: list[float]
) -> None:
    rate = Rate(a_second, at_once)
    used_to: datetime | None = None
    now, sent = NOON, []
    for wait in waits:
        now = rate.room_at(used_to, now + timedelta(seconds=wait))
        sent.append(now)
        used_to = rate.used(used_to, now)
    second, slack = timedelta(seconds=1), timedelta(microseconds=len(waits))
    for first in sent:
        assert sum(first <= each < first + second - slack for each in sent) <= a_second + at_once
    hurried = [NOON]
    used_to = rate.used(None, NOON)
    for _ in range(a_second * 2 + at_once):
        hurried.append(rate.room_at(used_to, hurried[-1]))
        used_to = rate.used(used_to, hurried[-1])
    assert hurried[-1] - NOON <= timedelta(seconds=2, milliseconds=1) + timedelta(seconds=1 / a_second)
    assert hurried[at_once - 1] - NOON < timedelta(milliseconds=1)  # moments are whole microseconds
    assert hurried[at_once] - NOON > timedelta(milliseconds=1)


def say(store: Store, to: list[int], weight: Weight, key: str) -> None:
    """Let the coach's next decision say something to all of these."""
    says = tuple(Say(to=person, parts=(Urgent(),), weight=weight) for person in to)
    store.receive([text("telegram:1", "x", key)])

    def decide(state: State, _heard: Heard | None) -> Outcome:
        return Outcome(says=says if isinstance(state, CoachState) else ())

    work_all(store, NOON, decide)


def send_one(store: Store, now: datetime) -> int | None:
    """Send what is next, by a sender of its own; return to whom, None where nothing is due."""
    lease = store.claim_chat(now, LEASE_SECONDS, "telegram", PACE)
    if lease is None or not send(store, lease, now):
        return None
    store.leave_chat(lease, now)
    return lease.person


def send(store: Store, lease: ChatLease, now: datetime) -> bool:
    outgoing = store.next_message(lease, now)
    if outgoing is None or not store.sending(lease, outgoing.number, now):
        return False
    assert store.sent(lease, outgoing.number, "words", [str(outgoing.number)], [], now)
    return True


def send_all(store: Store, now: datetime, until: datetime) -> list[tuple[datetime, int]]:
    """Send whatever there is room for; return when and to whom."""
    done = []
    while now <= until:
        try:
            person = send_one(store, now)
        except NoRoomYet as full:
            now = full.until
            continue
        if person is not None:
            done.append((now, person))
            continue
        due = store.next_due(now)
        if due is None:
            break
        now = due
    return done


def test_an_answer_goes_out_next_however_many_reminders_wait(store: Store, engine: Engine) -> None:
    noor = settled(store, "Noor")["Noor"]
    store.receive([text(f"telegram:crowd {number}", "x", str(number)) for number in range(CROWD)])
    with writing(engine) as connection:
        connection.execute(update(InboxRow).values(done_at=NOON))
        crowd = list(
            connection.execute(select(PersonRow.number).where(PersonRow.chat.like("%crowd%"))).scalars()
        )
    assert len(crowd) == CROWD
    say(store, crowd, "nudge", "reminders")
    before = send_all(store, NOON, after(seconds=2))
    assert 20 <= len(before) <= 22
    say(store, [noor], "answer", "answer")
    done = send_all(store, after(seconds=2), after(seconds=3))
    assert done[0][1] == noor
    assert done[0][0] - after(seconds=2) <= timedelta(seconds=0.1)
    assert noor not in [person for _, person in done[1:]]


def test_a_chat_gets_a_few_at_once_and_then_one_a_second_in_order(store: Store) -> None:
    people = settled(store, "Noor", "Piet")
    say(store, [people["Noor"]] * 6, "answer", "1")
    say(store, [people["Piet"]], "answer", "2")
    done = send_all(store, NOON, after(seconds=10))
    noors = [(at - NOON).total_seconds() for at, person in done if person == people["Noor"]]
    assert len(noors) == 6
    assert noors[2] < 1 <= noors[3]
    assert [later - earlier for earlier, later in pairwise(noors[3:])] == [pytest.approx(1, abs=0.11)] * 2
    (piets,) = [at for at, person in done if person == people["Piet"]]
    assert piets < after(seconds=1)  # whoever waits for the pace of a chat holds up no other


def test_what_was_claimed_while_there_was_room_waits_where_others_took_it(store: Store) -> None:
    people = settled(store, *(f"client {number}" for number in range(4)))
    clients = [number for name, number in people.items() if name != "Ilse"]
    say(store, clients, "answer", "1")
    leases = [store.claim_chat(NOON, LEASE_SECONDS, "telegram", PACE) for _ in clients]
    sent = [send(store, lease, NOON) for lease in leases if lease is not None]
    assert sent == [True, True, False, False]
    with pytest.raises(NoRoomYet):
        store.claim_chat(NOON, LEASE_SECONDS, "telegram", PACE)
    assert store.claim_chat(NOON, LEASE_SECONDS, "telegram") is not None  # a platform without a pace
    assert len(send_all(store, NOON, after(seconds=1))) == 1


def test_a_pace_from_a_clock_that_was_ahead_holds_nobody_up(store: Store) -> None:
    people = settled(store, "Noor", "Piet")
    say(store, [people["Noor"]] * 4, "answer", "1")
    assert send_one(store, after(hours=1)) == people["Noor"]
    say(store, [people["Piet"]], "answer", "2")
    with pytest.raises(NoRoomYet):
        store.claim_chat(NOON, LEASE_SECONDS, "telegram", PACE)
    store.clock_was_set_back(NOON)
    assert len(send_all(store, NOON, after(seconds=10))) == 4
