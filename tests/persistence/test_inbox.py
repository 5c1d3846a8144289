"""What comes in stands in the inbox once, and is taken in order, one person at a time."""

from datetime import datetime

import pytest
from sqlalchemy import Engine, select, update
from sqlalchemy import text as sql
from sqlalchemy.exc import IntegrityError

from domain.actions import Words
from domain.incoming import Edited, FromChat, Heard, Pressed, Reachable, Started, Text
from domain.outcome import Outcome
from domain.parts import Say
from domain.state import State, StrangerState
from persistence.engine import reading, writing
from persistence.faults import NoProgress, Undecided, Unreadable
from persistence.inbox import Received
from persistence.store import Store
from persistence.tables import InboxRow, PersonRow, ProgrammeRow
from persistence.work import Decide
from tests.persistence.people import (
    LEASE_SECONDS,
    NOON,
    after,
    programme,
    received,
    settled,
    text,
    work_all,
    work_once,
)


def nothing(_state: State, _heard: Heard | None) -> Outcome:
    return Outcome()


def deciding(who: str, decided: list[str]) -> Decide:
    """Return a decision that comes to nothing, and notes by whom it was made."""

    def decide(_state: State, _heard: Heard | None) -> Outcome:
        decided.append(who)
        return Outcome()

    return decide


def words_heard(seen: list[tuple[State, Heard | None]]) -> list[str | None]:
    return [
        heard.incoming.text if heard is not None and isinstance(heard.incoming, Text) else None
        for _, heard in seen
    ]


def test_the_same_thing_twice_is_one(store: Store) -> None:
    settled(store, "Noor")
    first, second = text("telegram:Noor", "dip 8", "1"), text("telegram:Noor", "row 9", "2")
    store.receive([first, first])
    store.receive([first, second])
    assert words_heard(work_all(store, NOON, nothing)) == ["dip 8", "row 9"]
    store.receive([second])
    assert work_all(store, NOON, nothing) == []


def test_how_far_was_read_is_stored_with_what_was_read(store: Store) -> None:
    assert store.cursor("telegram") is None
    store.receive([text("telegram:5", "hello", "1")], ("telegram", "17"))
    store.receive([], ("telegram", "18"))
    assert store.cursor("telegram") == "18"
    cannot_be = Received("desk", "1", "telegram:5", NOON, Text(text="x"))  # a desk's order has no chat
    with pytest.raises(IntegrityError, match="chat_known"):
        store.receive([cannot_be], ("telegram", "19"))
    assert store.cursor("telegram") == "18"


def test_each_chat_has_one_person_who_is_a_stranger_at_first(store: Store) -> None:
    store.receive([text("telegram:5", "hello", "1"), text("telegram:6", "hi", "1")])
    store.receive([text("telegram:5", "anybody?", "2")])
    seen = work_all(store, NOON, nothing)
    assert [type(state) for state, _ in seen] == [StrangerState] * 3
    assert len({state.number for state, _ in seen if isinstance(state, StrangerState)}) == 2


def test_one_person_s_messages_come_in_order_and_whoever_wrote_first_comes_first(store: Store) -> None:
    settled(store, "Noor", "Piet")
    store.receive(
        [
            text("telegram:Piet", "1", "1", after(seconds=9)),  # the clock of a phone may be off
            text("telegram:Noor", "2", "2"),
            text("telegram:Piet", "3", "3"),
        ]
    )
    assert words_heard(work_all(store, after(minutes=1), nothing)) == ["1", "3", "2"]


def test_messages_come_before_a_wake_that_was_due_before_them(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "wake me", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(wake_at=after(minutes=30)))
    store.receive([text("telegram:Noor", "before", "2", after(minutes=29))])
    store.receive([text("telegram:Noor", "after", "3", after(minutes=31))])

    def once(_state: State, heard: Heard | None) -> Outcome:
        return Outcome(wake_at=None if heard is None else after(minutes=30))

    assert words_heard(work_all(store, after(hours=1), once)) == ["before", "after", None]


def test_whoever_wrote_comes_before_whoever_is_only_due(store: Store) -> None:
    people = settled(store, "Noor", "Piet")
    store.receive([text("telegram:Noor", "wake me", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(wake_at=after(minutes=1)))
    store.receive([text("telegram:Piet", "hello", "2", after(minutes=2))])
    leases = store.claim_people(after(minutes=3), LEASE_SECONDS, 5)
    assert [lease.person for lease in leases] == [people["Piet"], people["Noor"]]


def test_nobody_is_woken_before_the_time(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "wake me", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(wake_at=after(minutes=30)))
    assert store.claim_person(after(minutes=29), LEASE_SECONDS) is None
    assert store.next_due(NOON) == after(minutes=30)
    assert store.next_due(after(minutes=30)) is None


def test_a_person_is_with_one_worker_until_the_lease_runs_out(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "dip 8", "1")])
    lost = store.claim_person(NOON, LEASE_SECONDS)
    assert lost is not None
    assert store.claim_person(after(seconds=LEASE_SECONDS - 1), LEASE_SECONDS) is None
    second = store.claim_person(after(seconds=LEASE_SECONDS), LEASE_SECONDS)
    assert second is not None
    assert second.person == lost.person
    decided: list[str] = []
    assert not store.work(lost, after(seconds=31), deciding("lost", decided))
    store.set_aside(lost, None, "late", after(seconds=31))
    store.let_go(lost)
    assert decided == []
    assert store.claim_person(after(seconds=32), LEASE_SECONDS) is None
    store.work(second, after(seconds=33), deciding("second", decided))
    assert decided == ["second"]


def test_each_step_renews_the_lease_and_the_last_one_ends_it(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "1", "1"), text("telegram:Noor", "2", "2")])
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    assert store.work(lease, after(seconds=20), nothing)
    assert store.claim_person(after(seconds=40), LEASE_SECONDS) is None
    assert not store.work(lease, after(seconds=40), nothing)
    store.receive([text("telegram:Noor", "3", "3")])
    assert store.claim_person(after(seconds=41), LEASE_SECONDS) is not None


def test_what_raises_leaves_nothing_behind_and_can_be_set_aside(store: Store, engine: Engine) -> None:
    people = settled(store, "Noor")
    store.receive([text("telegram:Noor", "poison", "1"), text("telegram:Noor", "dip 8", "2")])

    def choke(_state: State, heard: Heard | None) -> Outcome:
        assert heard is not None
        if isinstance(heard.incoming, Text) and heard.incoming.text == "poison":
            raise LookupError("poison")
        return Outcome(says=(Say(to=people["Noor"], parts=()),), wake_at=after(days=1))

    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    with pytest.raises(Undecided) as fault:
        store.work(lease, NOON, choke)
    assert (fault.value.person, fault.value.why) == (people["Noor"], "LookupError")
    with pytest.raises(Undecided):
        store.work(lease, NOON, choke)
    assert store.claim_chat(NOON, LEASE_SECONDS) is None
    store.set_aside(lease, fault.value.message, fault.value.why, NOON)
    assert not store.work(lease, NOON, choke)
    with reading(engine) as connection:
        kept = connection.execute(select(InboxRow.incoming, InboxRow.fault).order_by(InboxRow.number)).all()
    assert [(row.incoming.text, row.fault) for row in kept] == [("poison", "LookupError"), ("dip 8", None)]


@pytest.mark.parametrize("again", [0, 1, 2])
def test_a_wake_that_asks_to_be_woken_at_once_or_in_the_past_is_let_be_for_an_hour(
    store: Store, again: int
) -> None:
    """At the very moment of the wake, later than that moment, and at the present one: none of them ends."""
    people = settled(store, "Noor")
    store.receive([text("telegram:Noor", "wake me", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(wake_at=after(minutes=0.5)))
    lease = store.claim_person(after(minutes=2), LEASE_SECONDS)
    assert lease is not None
    with pytest.raises(Undecided) as fault:
        store.work(lease, after(minutes=2), lambda _state, _heard: Outcome(wake_at=after(minutes=again)))
    assert isinstance(fault.value.__cause__, NoProgress)
    assert (fault.value.person, fault.value.message) == (people["Noor"], None)
    store.set_aside(lease, None, fault.value.why, after(minutes=2))
    assert not store.work(lease, after(minutes=2), nothing)
    assert store.next_due(after(minutes=2)) == after(minutes=62)


def test_a_message_that_cannot_be_read_is_like_one_that_raises(store: Store, engine: Engine) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "dip 8", "1"), text("telegram:Noor", "dip 9", "2")])
    with writing(engine) as connection:
        spoilt = "UPDATE inbox SET incoming = 'spoilt' WHERE message_key = '1'"
        connection.execute(sql(spoilt))
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    with pytest.raises(Undecided) as fault:
        store.work(lease, NOON, nothing)
    assert fault.value.message is not None
    store.set_aside(lease, fault.value.message, fault.value.why, NOON)
    assert not store.work(lease, NOON, nothing)
    assert work_all(store, NOON, nothing) == []


@pytest.mark.parametrize(
    "spoilt",
    [
        "UPDATE people SET client_memory = '{\"of_a_newer_kind\": 1}' WHERE is_client",
        "UPDATE programmes SET programme = '{}'",
    ],
)
def test_a_person_who_cannot_be_read_loses_no_message(store: Store, engine: Engine, spoilt: str) -> None:
    people = settled(store, "Noor")
    store.receive([text("telegram:Noor", "dip 8", "1")])
    with writing(engine) as connection:
        connection.execute(sql(spoilt))
    fresh = Store(engine)  # which has not read the programme yet
    lease = fresh.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    with pytest.raises(Unreadable) as fault:
        fresh.work(lease, NOON, nothing)
    assert (fault.value.person, fault.value.why) == (people["Noor"], "ValidationError")
    fresh.set_aside(lease, None, fault.value.why, NOON)
    with writing(engine) as connection:
        connection.execute(
            update(PersonRow).where(PersonRow.is_client).values(client_memory=None, programme=None)
        )
        connection.execute(update(ProgrammeRow).values(programme=programme()))
    fresh.let_go(lease)
    assert words_heard(work_all(fresh, NOON, nothing)) == ["dip 8"]


def test_an_edit_names_the_message_as_first_sent_and_its_text_as_it_last_stood(store: Store) -> None:
    settled(store, "Noor", "Piet")
    store.receive(
        [
            text("telegram:Piet", "not hers", "7"),
            text("telegram:Noor", "dip 8", "7"),
            received("telegram:Noor", Edited(text="dip 9", key="7"), "e1"),
            received("telegram:Noor", Edited(text="dip 10", key="7"), "e2"),
            received("telegram:Noor", Edited(text="dip 11", key="8"), "e3"),
        ]
    )
    heards = [heard for _, heard in work_all(store, NOON, nothing) if heard is not None]
    first = next(heard for heard in heards if heard.incoming == Text(text="dip 8", key="7"))
    assert [heard.incoming for heard in heards if isinstance(heard.incoming, Edited)] == [
        Edited(text="dip 9", key="7", original=first.number, before="dip 8"),
        Edited(text="dip 10", key="7", original=first.number, before="dip 9"),
        Edited(text="dip 11", key="8"),
    ]


@pytest.mark.parametrize(
    ("who", "data", "action"),
    [
        ("Noor", "{}:0:shows", Words(text="look")),
        ("Noor", "{}:0", Words(text="look")),
        ("Noor", "{}:1", Words(text="no", once=True)),
        ("Noor", "{}:1:show", None),
        ("Noor", "{}:2", None),
        ("Noor", "{}:-1", None),
        ("Noor", "{}", None),
        ("Noor", "{}:0:0", None),
        ("Noor", "999{}:0", None),
        ("Noor", "99999999999999999999:0", None),
        ("Noor", "१:0", None),
        ("Noor", "", None),
        ("Piet", "{}:0", None),
    ],
)
def test_a_press_stands_for_what_was_sent_to_this_very_person(
    store: Store, who: str, data: str, action: Words | None
) -> None:
    people = settled(store, "Noor", "Piet")
    store.receive([text("telegram:Noor", "hello", "1")])
    asked = Say(to=people["Noor"], parts=(), buttons=(Words(text="look"), Words(text="no", once=True)))
    work_once(store, NOON, lambda _state, _heard: Outcome(says=(asked,)))
    lease = store.claim_chat(NOON, LEASE_SECONDS)
    assert lease is not None
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    assert outgoing.button_data == (f"{outgoing.number}:0:shows", f"{outgoing.number}:1")
    press = Pressed(button=data.format(outgoing.number))
    store.receive([received(f"telegram:{who}", press, "2")])
    _, heard = work_once(store, NOON, nothing)
    assert heard is not None
    assert isinstance(heard.incoming, Pressed)
    assert heard.incoming == press.model_copy(update={"action": action, "under": heard.incoming.under})
    assert (heard.incoming.under is None) == (action is None)


@pytest.mark.parametrize("incoming", [Started(code="no such code"), Started(), Text(text="hello")])
def test_a_stranger_without_an_invitation_has_none(store: Store, incoming: FromChat) -> None:
    store.receive([received("telegram:5", incoming, "1")])
    state, _ = work_once(store, NOON, nothing)
    assert isinstance(state, StrangerState)
    assert state.invitation is None


def test_who_blocks_the_bot_is_out_of_reach_until_they_let_it_in(store: Store, engine: Engine) -> None:
    people = settled(store, "Noor")

    def unreachable_since() -> datetime | None:
        with reading(engine) as connection:
            found = select(PersonRow.unreachable_since).where(PersonRow.number == people["Noor"])
            return connection.execute(found).scalar_one()

    assert unreachable_since() is None
    store.receive([received("telegram:Noor", Reachable(reachable=False), "1")])
    work_once(store, NOON, nothing)
    assert unreachable_since() == NOON
    store.receive([received("telegram:Noor", Reachable(reachable=True), "2")])
    work_once(store, NOON, nothing)
    assert unreachable_since() is None
