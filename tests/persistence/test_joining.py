"""How strangers become clients and coaches by an invitation, and who prepared people turn out to be."""

import threading
from dataclasses import replace
from datetime import date, time

import pytest
from sqlalchemy import Engine, func, select, text

from domain.equipment import default_equipment
from domain.incoming import FromChat, Heard, Started, Text
from domain.memory import ClientMemory
from domain.outcome import Invited, Joined, Outcome
from domain.parts import Say, Urgent
from domain.state import ClientState, CoachState, Invitation, State, StrangerState
from persistence.engine import reading
from persistence.faults import ChatTaken, DatabaseTrouble, Undecided
from persistence.prepared import PreparedCoach, Roster
from persistence.store import Store
from persistence.tables import Base, InvitationRow, OutboxRow, PersonRow
from tests.persistence.people import (
    LEASE_SECONDS,
    NOON,
    after,
    client,
    programme,
    received,
    roster,
    settled,
    state_of,
    work_all,
    work_once,
)
from tests.persistence.people import (
    text as typed,
)


def invite(store: Store, name: str = "Noor") -> str:
    """Let Ilse invite somebody to her programme; return the code."""
    codes = []

    def decide(state: State, _heard: Heard | None) -> Outcome:
        assert isinstance(state, CoachState)
        codes.append(state.fresh_code)
        invitation = Invitation(state.fresh_code, name, after(days=7), state.coach, state.programmes[0])
        return Outcome(changes=(Invited(invitation),))

    store.receive([typed("telegram:1", "invite", f"invite {name}")])
    work_once(store, NOON, decide)
    return codes[0]


def take_up(state: State, heard: Heard | None) -> Outcome:
    """Take up the invitation that came in; say a word to whoever joined."""
    if not isinstance(state, StrangerState) or state.invitation is None or heard is None:
        return Outcome()
    return Outcome(
        changes=(Joined(state.invitation, heard.at),), says=(Say(to=state.number, parts=(Urgent(),)),)
    )


@pytest.mark.parametrize("how", ["a link", "a word typed by hand"])
def test_a_stranger_with_a_code_becomes_the_coach_s_client(store: Store, how: str) -> None:
    settled(store)
    code = invite(store)
    incoming: FromChat = Started(code=code) if how == "a link" else Text(text=f" {code}\n")
    late = after(hours=11.5)  # half past midnight in Amsterdam
    store.receive([received("telegram:5", incoming, "1", late)])
    work_all(store, late, take_up)
    state = state_of(store, "telegram:5", late)
    assert isinstance(state, ClientState)
    noor = state.client
    assert (noor.name, noor.coach.name, noor.unit, noor.zone) == ("Noor", "Ilse", "kg", "Europe/Amsterdam")
    assert (noor.starts, noor.remind_at) == (date(2026, 3, 3), time(8))
    assert (noor.equipment, noor.body_mass, noor.own_names) == (default_equipment("kg"), None, {})
    assert noor.programme is not None
    assert noor.programme.programme == programme()
    assert state.memory == ClientMemory()
    coach = state_of(store, "telegram:1", late)
    assert isinstance(coach, CoachState)
    assert [number for number, _ in coach.clients] == [noor.number]


def test_whoever_joins_is_woken_at_once_where_the_decision_does_not_say(store: Store) -> None:
    settled(store)
    store.receive([received("telegram:5", Started(code=invite(store)), "1")])
    seen = work_all(store, NOON, take_up)
    assert [heard is None for _, heard in seen] == [False, True]
    assert isinstance(seen[1][0], ClientState)


def test_a_code_is_kept_only_as_a_hash(store: Store, engine: Engine) -> None:
    settled(store)
    code = invite(store)
    with reading(engine) as connection:
        rows = connection.execute(select(InvitationRow)).all()
    assert len(rows) == 1
    assert code not in str(rows)


def test_an_invitation_is_taken_up_once(store: Store) -> None:
    settled(store)
    code = invite(store)
    store.receive([received("telegram:5", Started(code=code), "1")])
    work_all(store, NOON, take_up)
    store.receive([received("telegram:6", Started(code=code), "2")])
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    shown: list[State] = []

    def late(state: State, heard: Heard | None) -> Outcome:
        shown.append(state)
        return take_up(state, heard)

    with pytest.raises(Undecided, match="RecordMissing"):
        store.work(lease, NOON, late)
    assert isinstance(shown[0], StrangerState)
    assert shown[0].invitation is not None
    assert shown[0].invitation.used


def test_a_prepared_client_takes_over_the_chat_in_which_the_code_came(store: Store, engine: Engine) -> None:
    store.load_roster(replace(roster(), clients=(client("Noor", "local:Noor"),)), NOON)
    noor = {person.name: person.number for person in store.people()}["Noor"]
    work_all(store, NOON, lambda _state, _heard: Outcome(says=(Say(to=noor, parts=(Urgent(),)),)))
    former = store.claim_chat(NOON, LEASE_SECONDS, "local")
    assert former is not None
    arrived = store.next_message(former, NOON)
    assert arrived is not None
    store.sent(former, arrived.number, "words", ["1"], [], NOON)
    store.leave_chat(former, NOON)
    before = state_of(store, "local:Noor")
    code = store.invite(noor, NOON)
    store.receive([typed("telegram:5", "hello", "1"), received("telegram:5", Started(code=code), "2")])
    store.receive([typed("telegram:5", "dip 8", "3")])

    def decide(state: State, heard: Heard | None) -> Outcome:
        if isinstance(state, StrangerState) and state.invitation is None:
            return Outcome(says=(Say(to=state.number, parts=(Urgent(),)),))
        return take_up(state, heard)

    seen = work_all(store, NOON, decide)
    assert [type(state) for state, _ in seen[:2]] == [StrangerState, StrangerState]
    assert all(isinstance(state, ClientState) for state, _ in seen[2:])
    assert "dip 8" in [
        heard.incoming.text for _, heard in seen[2:] if heard and isinstance(heard.incoming, Text)
    ]
    assert state_of(store, "telegram:5") == before
    assert store.person_of_chat("local:Noor") is None
    with reading(engine) as connection:
        people = connection.execute(select(func.count()).select_from(PersonRow)).scalar_one()
        says = connection.execute(select(OutboxRow.person, OutboxRow.state).order_by(OutboxRow.number)).all()
    assert people == 2
    assert [tuple(say) for say in says if say.person == noor] == [
        (noor, "sent"),
        (noor, "failed"),  # what waited for the former chat
        (noor, "pending"),  # what was said to the stranger
        (noor, "pending"),
    ]
    lease = store.claim_chat(NOON, LEASE_SECONDS, "telegram")
    assert lease is not None
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    assert outgoing.chat == "telegram:5"


def test_what_was_said_before_there_was_a_chat_is_sent_once_there_is_one(store: Store) -> None:
    """As with the welcome of somebody from a roster, who is woken before the code comes in."""
    store.load_roster(replace(roster(), clients=(replace(client("Noor"), chat=None),)), NOON)
    noor = {person.name: person.number for person in store.people()}["Noor"]
    code = store.invite(noor, NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome(says=(Say(to=noor, parts=(Urgent(),)),)))
    waiting = store.queues(NOON).outbox.length
    assert waiting >= 1
    assert store.claim_chat(NOON, LEASE_SECONDS, "telegram") is None
    store.receive([received("telegram:5", Started(code=code), "1")])
    work_all(store, NOON, take_up)
    lease = store.claim_chat(NOON, LEASE_SECONDS, "telegram")
    assert lease is not None
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    assert (outgoing.chat, outgoing.number) == ("telegram:5", 1)
    assert store.queues(NOON).outbox.length == waiting + 1


def test_what_comes_in_while_the_stranger_is_joining_is_not_lost(store: Store) -> None:
    store.load_roster(replace(roster(), clients=(client("Noor", "local:Noor"),)), NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    noor = {person.name: person.number for person in store.people()}["Noor"]
    code = store.invite(noor, NOON)
    store.receive([received("telegram:5", Started(code=code), "start")])
    late = [typed("telegram:5", f"dip {number}", f"{number}") for number in range(30)]

    def bring() -> None:
        for each in late:
            while True:
                try:
                    store.receive([each])
                    break
                except DatabaseTrouble:
                    continue

    bringing = threading.Thread(target=bring)
    bringing.start()
    seen = work_all(store, NOON, take_up)
    bringing.join()
    seen += work_all(store, NOON, take_up)
    texts = [heard.incoming.text for _, heard in seen if heard and isinstance(heard.incoming, Text)]
    assert texts == [f"dip {number}" for number in range(30)]
    assert [person.number for person in store.people()] == [noor - 1, noor]


def test_a_new_code_for_a_prepared_person_ends_the_former_one(store: Store) -> None:
    store.load_roster(replace(roster(), clients=(client("Noor", "local:Noor"),)), NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    noor = {person.name: person.number for person in store.people()}["Noor"]
    former, code = store.invite(noor, NOON), store.invite(noor, NOON)
    store.receive([received("telegram:5", Started(code=former), "1")])
    state, _ = work_once(store, NOON, take_up)
    assert isinstance(state, StrangerState)
    assert state.invitation is None
    store.receive([received("telegram:5", Started(code=code), "2")])
    work_all(store, NOON, take_up)
    assert isinstance(state_of(store, "telegram:5"), ClientState)


def test_a_prepared_coach_comes_in_by_a_code(store: Store) -> None:
    coach = PreparedCoach("Ilse", "Europe/Amsterdam", "lb")
    (loaded,) = store.load_roster(Roster(coaches=(coach,)), NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    store.receive([received("telegram:1", Started(code=store.invite(loaded.person.number, NOON)), "1")])
    work_all(store, NOON, take_up)
    state = state_of(store, "telegram:1")
    assert isinstance(state, CoachState)
    assert (state.coach.name, state.coach.zone, state.coach.unit) == ("Ilse", "Europe/Amsterdam", "lb")


def test_a_coach_can_be_invited_who_was_not_prepared(store: Store) -> None:
    people = settled(store)

    def decide(state: State, _heard: Heard | None) -> Outcome:
        assert isinstance(state, CoachState)
        invitation = Invitation("code", "Tadeusz", after(days=7), state.coach, as_coach=True)
        return Outcome(changes=(Invited(invitation),))

    store.receive([typed("telegram:1", "invite", "1")])
    work_once(store, NOON, decide)
    store.receive([received("telegram:5", Started(code="code"), "1")])
    work_all(store, NOON, take_up)
    state = state_of(store, "telegram:5")
    assert isinstance(state, CoachState)
    assert state.coach.name == "Tadeusz"
    assert state.coach.number not in people.values()


def test_loading_a_roster_twice_is_as_loading_it_once(store: Store, engine: Engine) -> None:
    def counted() -> dict[str, int]:
        with reading(engine) as connection:
            return {
                table: connection.execute(text(f"SELECT count(*) FROM {table}")).scalar_one()  # noqa: S608 the names are those of our own tables
                for table in Base.metadata.tables
            }

    first = store.load_roster(roster("Noor", "Piet"), NOON)
    before = counted()
    second = store.load_roster(roster("Noor", "Piet"), after(days=1))
    assert counted() == before
    assert [each.person for each in second] == [each.person for each in first]
    assert ([each.new for each in first], [each.new for each in second]) == ([True] * 3, [False] * 3)


def test_a_changed_sheet_is_a_new_version_and_those_who_are_there_keep_theirs(store: Store) -> None:
    store.load_roster(roster("Noor"), NOON)
    store.load_roster(roster("Noor", "Piet", sheets=[programme(high=12)]), NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    versions = {}
    for name in ("Noor", "Piet"):
        state = state_of(store, f"telegram:{name}")
        assert isinstance(state, ClientState)
        assert state.client.programme is not None
        versions[name] = state.client.programme.version
    assert versions == {"Noor": 1, "Piet": 2}


def test_a_prepared_person_has_all_that_the_roster_says(store: Store) -> None:
    settled(store, "Noor")
    state = state_of(store, "telegram:Noor")
    assert isinstance(state, ClientState)
    noor, wanted = state.client, client("Noor")
    assert (noor.name, noor.unit, noor.zone) == (wanted.name, wanted.unit, wanted.zone)
    assert (noor.starts, noor.remind_at, noor.body_mass) == (wanted.starts, wanted.remind_at, None)
    assert noor.equipment == default_equipment("kg")


def test_a_stranger_who_wrote_before_becomes_the_prepared_person(store: Store) -> None:
    store.receive([typed("telegram:Noor", "hello?", "1")])
    people = settled(store, "Noor")
    assert isinstance(state_of(store, "telegram:Noor"), ClientState)
    found = store.person_of_chat("telegram:Noor")
    assert found is not None
    assert found.number == people["Noor"]


def test_a_chat_that_is_somebody_else_s_is_not_given_away(store: Store) -> None:
    settled(store, "Noor")
    with pytest.raises(ChatTaken) as fault:
        store.load_roster(replace(roster(), clients=(client("Piet", "telegram:Noor"),)), NOON)
    assert (fault.value.chat, fault.value.name) == ("telegram:Noor", "Noor")
    assert [person.name for person in store.people()] == ["Ilse", "Noor"]
