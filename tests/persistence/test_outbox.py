"""What is to be said is sent in order, until it arrives or is given up, by one sender a chat at a time."""

from datetime import datetime

import pytest
from sqlalchemy import Engine, select

from domain.actions import Words
from domain.incoming import Decided, Heard, Reachable, SendingFailed
from domain.outcome import Order, Outcome
from domain.parts import Nudge, Question, Say, Urgent, Weight
from domain.state import ClientState, CoachState
from persistence.engine import reading
from persistence.faults import Undecided
from persistence.leases import ChatLease
from persistence.outbox import Outgoing
from persistence.store import Store
from persistence.tables import OutboxRow
from tests.persistence.people import (
    LEASE_SECONDS,
    NOON,
    after,
    settled,
    text,
    work_all,
    work_once,
)


def say(store: Store, *says: Say, at: datetime = NOON) -> None:
    """Let Noor's next decision say this."""
    store.receive([text("telegram:Noor", "x", f"{at}", at)])
    work_once(store, at, lambda _state, _heard: Outcome(says=says))


def message(to: int, name: str, weight: Weight = "answer") -> Say:
    return Say(to=to, parts=(Question(slot="who", facts={"name": name}),), weight=weight)


def name_of(outgoing: Outgoing | None) -> str | None:
    if outgoing is None:
        return None
    part = outgoing.say.parts[0]
    assert isinstance(part, Question)
    return str(part.facts["name"])


def chat(store: Store, at: datetime = NOON, platform: str | None = None) -> ChatLease:
    lease = store.claim_chat(at, LEASE_SECONDS, platform)
    assert lease is not None
    return lease


def send(store: Store, lease: ChatLease, at: datetime = NOON) -> str | None:
    """Send the next message of a chat; return its name."""
    outgoing = store.next_message(lease, at)
    if outgoing is not None:
        assert store.sending(lease, outgoing.number, at)
        assert store.sent(lease, outgoing.number, "words", ["9"], [], at)
    return name_of(outgoing)


def sent_in_order(store: Store, at: datetime = NOON) -> list[tuple[int, str | None]]:
    sent: list[tuple[int, str | None]] = []
    while (lease := store.claim_chat(at, LEASE_SECONDS)) is not None:
        while (name := send(store, lease, at)) is not None:
            sent.append((lease.person, name))
    return sent


def test_what_is_said_is_sent_once_and_in_order(store: Store) -> None:
    people = settled(store, "Noor")
    noor, ilse = people["Noor"], people["Ilse"]
    say(store, message(noor, "1"), message(ilse, "2"), message(noor, "3"))
    say(store, message(noor, "4"), at=after(seconds=1))
    sent = sent_in_order(store, after(seconds=2))
    assert sent == [(noor, "1"), (noor, "3"), (noor, "4"), (ilse, "2")]
    assert store.claim_chat(after(days=1), LEASE_SECONDS) is None


def test_a_message_has_all_that_its_words_need(store: Store) -> None:
    people = settled(store, "Noor")
    said = Say(
        to=people["Noor"],
        parts=(Urgent(), Nudge(workout="Push", on=NOON.date())),
        buttons=(Words(text="done"),),
        weight="alert",
    )
    say(store, said)
    outgoing = store.next_message(chat(store), NOON)
    assert outgoing is not None
    assert outgoing.say == said
    assert (outgoing.chat, outgoing.name, outgoing.zone) == ("telegram:Noor", "Noor", "Europe/Lisbon")
    assert (outgoing.unit, outgoing.is_coach) == ("kg", False)
    assert (outgoing.attempts, outgoing.unclear, outgoing.created_at) == (0, False, NOON)


def test_a_decision_that_is_rolled_back_says_nothing(store: Store) -> None:
    people = settled(store, "Noor")
    store.receive([text("telegram:Noor", "x", "1")])
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    to_nobody = message(999, "to nobody")
    with pytest.raises(Undecided, match="IntegrityError"):
        store.work(lease, NOON, lambda _s, _h: Outcome(says=(message(people["Noor"], "1"), to_nobody)))
    assert store.claim_chat(NOON, LEASE_SECONDS) is None


def test_a_chat_is_with_one_sender_until_the_lease_runs_out(store: Store) -> None:
    people = settled(store, "Noor")
    say(store, message(people["Noor"], "1"))
    lost = chat(store)
    first = store.next_message(lost, NOON)
    assert first is not None
    assert store.sending(lost, first.number, NOON)
    assert store.claim_chat(after(seconds=LEASE_SECONDS - 1), LEASE_SECONDS) is None
    later = after(seconds=LEASE_SECONDS)
    second = chat(store, later)
    again = store.next_message(second, later)
    assert again is not None
    assert (again.number, again.attempts, again.unclear) == (first.number, 1, True)
    assert not store.sending(lost, first.number, later)
    assert not store.sent(lost, first.number, "words", [], [], later)
    assert not store.try_again(lost, first.number, later, later)
    assert not store.failed(lost, first.number, "blocked", later, unreachable=True)
    assert store.next_message(lost, later) is None
    assert store.sending(second, first.number, later)
    assert store.sent(second, first.number, "words", ["9"], [], later)
    assert sent_in_order(store, after(days=1)) == []


def test_what_waits_holds_up_what_is_behind_it_in_its_chat_and_no_other(store: Store) -> None:
    people = settled(store, "Noor")
    noor, ilse = people["Noor"], people["Ilse"]
    say(store, message(noor, "1"), message(noor, "2"))
    lease = chat(store)
    first = store.next_message(lease, NOON)
    assert first is not None
    assert store.sending(lease, first.number, NOON)
    assert store.try_again(lease, first.number, after(minutes=5), NOON)
    assert store.next_message(lease, NOON) is None
    say(store, message(noor, "3"), message(ilse, "4"), at=after(minutes=1))
    assert sent_in_order(store, after(minutes=4)) == [(ilse, "4")]
    assert store.next_due(after(minutes=4)) == after(minutes=5)
    again = store.next_message(chat(store, after(minutes=5)), after(minutes=5))
    assert again is not None
    assert (again.number, again.attempts, again.unclear) == (first.number, 1, False)
    assert sent_in_order(store, after(minutes=6)) == [(noor, "1"), (noor, "2"), (noor, "3")]


def test_an_answer_is_never_behind_a_crowd_of_nudges(store: Store) -> None:
    people = settled(store, "Noor", "Piet", "Ana")
    nudges = [message(people[name], "nudge", "nudge") for name in ("Noor", "Piet")]
    say(store, *nudges)
    say(store, message(people["Ana"], "answer"), at=after(minutes=1))
    say(store, message(people["Piet"], "alert", "alert"), at=after(minutes=2))
    persons = [chat(store, after(minutes=3)).person for _ in range(3)]
    assert persons[2] == people["Noor"]
    assert set(persons[:2]) == {people["Ana"], people["Piet"]}


def test_a_nudge_behind_an_answer_does_not_hold_the_answer_up(store: Store) -> None:
    people = settled(store, "Noor", "Piet")
    say(store, message(people["Noor"], "answer"))
    say(store, message(people["Noor"], "nudge", "nudge"), at=after(seconds=1))
    say(store, message(people["Piet"], "answer"), at=after(seconds=2))
    assert chat(store, after(seconds=3)).person == people["Noor"]


def test_a_chat_with_only_nudges_left_gives_way_again(store: Store) -> None:
    people = settled(store, "Noor", "Piet")
    say(store, message(people["Noor"], "answer"), message(people["Noor"], "nudge", "nudge"))
    lease = chat(store)
    assert send(store, lease) == "answer"
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    store.try_again(lease, outgoing.number, after(seconds=1), NOON)
    say(store, message(people["Piet"], "answer"), at=after(seconds=2))
    assert chat(store, after(seconds=3)).person == people["Piet"]


def test_each_platform_has_its_own_senders(store: Store) -> None:
    people = settled(store, "Noor")
    store.receive([text("telegram:Noor", "x", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(says=(message(people["Noor"], "1"),)))
    assert store.claim_chat(NOON, LEASE_SECONDS, "local") is None
    assert chat(store, platform="telegram").person == people["Noor"]


def heard_by_client(store: Store, at: datetime) -> list[object]:
    seen = work_all(store, at, lambda _state, _heard: Outcome())
    return [heard.incoming for state, heard in seen if isinstance(state, ClientState) and heard is not None]


def test_that_a_client_is_out_of_reach_comes_in_once_until_something_arrives_again(store: Store) -> None:
    people = settled(store, "Noor")
    noor = people["Noor"]
    say(store, message(noor, "1"), message(noor, "2"))
    lease = chat(store)
    for _ in range(2):
        outgoing = store.next_message(lease, NOON)
        assert outgoing is not None
        assert store.failed(lease, outgoing.number, "blocked", NOON, unreachable=True)
    assert store.next_message(lease, NOON) is None
    assert heard_by_client(store, NOON) == [SendingFailed(person=noor, why="blocked")]
    say(store, message(noor, "3"), at=after(days=1))
    assert sent_in_order(store, after(days=1)) == [(noor, "3")]
    assert heard_by_client(store, after(days=1)) == [Reachable(reachable=True)]
    say(store, message(noor, "4"), at=after(days=2))
    lease = chat(store, after(days=2))
    outgoing = store.next_message(lease, after(days=2))
    assert outgoing is not None
    assert store.failed(lease, outgoing.number, "chat gone", after(days=2), unreachable=True)
    assert heard_by_client(store, after(days=2)) == [SendingFailed(person=noor, why="chat gone")]


def test_what_is_given_up_for_another_reason_is_told_to_nobody(store: Store) -> None:
    people = settled(store, "Noor")
    noor, ilse = people["Noor"], people["Ilse"]
    say(store, message(noor, "1", "nudge"), message(ilse, "2"), message(noor, "3"))
    for _ in range(2):
        lease = chat(store)
        outgoing = store.next_message(lease, NOON)
        assert outgoing is not None
        is_coach = lease.person == ilse
        assert store.failed(lease, outgoing.number, "unclear", NOON, unreachable=is_coach)
        assert send(store, lease) == (None if is_coach else "3")
    assert heard_by_client(store, NOON) == []


def test_the_words_as_sent_are_kept(store: Store, engine: Engine) -> None:
    people = settled(store, "Noor")
    say(store, message(people["Noor"], "1"))
    lease = chat(store)
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    store.sending(lease, outgoing.number, NOON)
    store.sent(lease, outgoing.number, "<b>Dip</b> 8", ["17", "18"], ["Yes"], after(seconds=1))
    with reading(engine) as connection:
        row = connection.execute(select(OutboxRow)).one()
    assert (row.words, row.message_keys, row.labels) == ("<b>Dip</b> 8", ("17", "18"), ("Yes",))
    assert (row.state, row.sent_at, row.attempts, row.trying_since) == ("sent", after(seconds=1), 1, None)
    assert row.about_message is not None


def test_the_newest_message_with_a_button_is_the_one_that_is_pressed(store: Store) -> None:
    people = settled(store, "Noor")
    noor = people["Noor"]
    data: list[tuple[str, ...]] = []
    for labels in (["Yes", "No"], ["Yes"], []):
        buttons = tuple(Words(text=label, once=True) for label in labels)
        say(store, Say(to=noor, parts=(Urgent(),), buttons=buttons), at=after(minutes=len(data)))
        lease = chat(store, after(minutes=9))
        outgoing = store.next_message(lease, after(minutes=9))
        assert outgoing is not None
        data.append(outgoing.button_data)
        store.sent(lease, outgoing.number, "words", ["9"], labels, after(minutes=9))
    assert store.button(noor, "Yes") == data[1][0]
    assert store.button(noor, "No") == data[0][1]
    assert store.button(noor, "Maybe") is None
    assert store.button(people["Ilse"], "Yes") is None
    assert store.latest_buttons(noor) == (("Yes", data[1][0]),)


def test_an_order_reaches_the_other_person_once_with_the_moment_of_the_decision(store: Store) -> None:
    people = settled(store, "Noor")
    decided = Decided(coach=people["Ilse"], alert=1, remedy="seen")
    store.receive([text("telegram:1", "x", "1")])

    def decide(state: object, _heard: Heard | None) -> Outcome:
        orders = (Order(people["Noor"], decided), Order(people["Noor"], decided))
        return Outcome(orders=orders if isinstance(state, CoachState) else ())

    seen = work_all(store, after(minutes=1), decide)
    heards = [heard for state, heard in seen if not isinstance(state, CoachState)]
    assert [(heard.incoming, heard.at) for heard in heards if heard] == [(decided, after(minutes=1))] * 2


def test_what_shows_how_far_something_is_goes_in_order_and_what_is_overtaken_is_not_sent(
    store: Store,
) -> None:
    person = settled(store, "Noor")["Noor"]
    store.receive([text("telegram:Noor", "x", "first", NOON)])
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    numbers: list[int] = []

    def begins(_state: object, heard: Heard | None) -> Outcome:
        assert heard is not None
        numbers.append(heard.number)
        steps = [
            message(person, str(at), "nudge").model_copy(update={"instead_of": heard.number}) for at in (1, 2)
        ]
        return Outcome(says=(message(person, "0"), steps[0], message(person, "file"), steps[1]))

    def goes_on(_state: object, _heard: Heard | None) -> Outcome:
        return Outcome(says=(message(person, "3", "nudge").model_copy(update={"instead_of": numbers[0]}),))

    store.work(lease, NOON, begins)
    assert sent_in_order(store) == [(person, "0"), (person, "1"), (person, "file"), (person, "2")]
    for at in ("second", "third"):
        store.receive([text("telegram:Noor", "x", at, NOON)])
        lease = store.claim_person(NOON, LEASE_SECONDS)
        assert lease is not None
        store.work(lease, NOON, goes_on)
    assert sent_in_order(store) == [(person, "3")]
