"""What becomes of a coach's messages, and of those on their way, when a client is erased."""

from datetime import date

from sqlalchemy import Engine, select

from domain.actions import Treat
from domain.incoming import Heard, Text
from domain.outcome import Erased, Outcome
from domain.parts import AlertPart, ClientLine, Digest, Notice, Part, Say
from domain.state import ClientState, CoachState, State
from persistence.engine import reading
from persistence.store import Store
from persistence.tables import InboxRow, OutboxRow, PersonRow
from tests.persistence.people import LEASE_SECONDS, NOON, after, settled, text, work_once


def line(name: str) -> ClientLine:
    return ClientLine(name=name, programme=None, last_workout=None, due_on=None)


def tell(store: Store, *says: Say) -> None:
    """Let the coach's next message bring these messages to the coach."""
    store.receive([text("telegram:1", "…", f"tell {len(says)} {says[0]}")])
    work_once(store, NOON, lambda _state, _heard: Outcome(says=says))


def erase(store: Store) -> None:
    """Let Noor be erased."""

    def decide(state: State, heard: Heard | None) -> Outcome:
        assert isinstance(state, ClientState)
        assert heard is not None
        last = Notice(topic="erased", facts={"coach": "Ilse"})
        told = Notice(topic="client erased", facts={"client": "Noor"})
        says = (
            Say(to=state.client.number, parts=(last,)),
            Say(to=state.client.coach.number, parts=(told,), weight="alert"),
        )
        return Outcome(changes=(Erased(heard.at),), says=says, wake_at=after(hours=1))

    store.receive([text("telegram:Noor", "yes", "erase")])
    work_once(store, NOON, decide)


def to_coach(engine: Engine, coach: int) -> list[tuple[str, tuple[Part, ...], int]]:
    """Return the coach's messages: their state, their parts, and how many buttons they have."""
    with reading(engine) as connection:
        rows = connection.execute(
            select(OutboxRow.state, OutboxRow.parts, OutboxRow.actions)
            .where(OutboxRow.person == coach)
            .order_by(OutboxRow.number)
        ).all()
    return [(row.state, row.parts, len(row.actions)) for row in rows]


def test_an_overview_that_waits_stays_without_the_client(store: Store, engine: Engine) -> None:
    numbers = settled(store, "Noor", "Piet")
    coach = numbers["Ilse"]
    both = Digest(today=date(2026, 3, 2), clients=(line("Noor"), line("Piet")))
    of_noor = Digest(today=date(2026, 3, 2), clients=(line("Noor"),))
    pain = AlertPart(reason="pain", client="Noor")
    other = AlertPart(reason="question", client="Piet", evidence={"said": "does Noor train too?"})
    buttons = tuple(Treat(client=numbers[name], alert=1, remedy="seen") for name in ("Noor", "Piet"))
    tell(
        store,
        Say(to=coach, parts=(both,), buttons=buttons),
        Say(to=coach, parts=(of_noor,)),
        Say(to=coach, parts=(pain,)),
        Say(to=coach, parts=(other,)),
    )
    erase(store)
    kept = to_coach(engine, coach)
    assert kept[0] == ("pending", (Digest(today=both.today, clients=(line("Piet"),)),), 1)
    assert [part for _, parts, _ in kept[1:] for part in parts] == [
        other,
        Notice(topic="client erased", facts={"client": "Noor"}),
    ]


def test_what_is_on_its_way_while_its_client_is_erased_is_let_go(store: Store, engine: Engine) -> None:
    coach = settled(store, "Noor")["Ilse"]
    tell(store, Say(to=coach, parts=(AlertPart(reason="pain", client="Noor"),)))
    lease = store.claim_chat(NOON, LEASE_SECONDS)
    assert lease is not None
    outgoing = store.next_message(lease, NOON)
    assert outgoing is not None
    assert store.sending(lease, outgoing.number, NOON)
    erase(store)
    assert store.sent(lease, outgoing.number, "Noor has pain", ["77"], [], NOON)
    (left,) = to_coach(engine, coach)
    assert left[1] == (Notice(topic="client erased", facts={"client": "Noor"}),)


def test_a_coach_s_own_words_go_where_they_have_the_name(store: Store, engine: Engine) -> None:
    coach = settled(store, "Noor Visser", "Piet")["Ilse"]
    for at, words in enumerate(("tell noor: rest", "tell Piet: rest", "Is VISSER well?", "floor press")):
        store.receive([text("telegram:1", words, f"words {at}")])
        work_once(store, NOON, lambda _state, _heard: Outcome())
    store.receive([text("telegram:Noor Visser", "yes", "erase")])
    work_once(
        store,
        NOON,
        lambda _state, heard: (
            Outcome(changes=(Erased(heard.at),), wake_at=after(hours=1)) if heard else Outcome()
        ),
    )
    with reading(engine) as connection:
        kept = connection.execute(
            select(InboxRow.incoming).where(InboxRow.person == coach).order_by(InboxRow.number)
        ).scalars()
        assert [each.text for each in kept if isinstance(each, Text)] == [
            "",
            "tell Piet: rest",
            "",
            "floor press",
        ]


def test_the_coach_s_state_has_the_client_no_more(store: Store, engine: Engine) -> None:
    noor = settled(store, "Noor", "Piet")["Noor"]
    erase(store)
    store.receive([text("telegram:1", "who?", "who")])
    state, _ = work_once(store, NOON, lambda _state, _heard: Outcome())
    assert isinstance(state, CoachState)
    assert [each.name for _, each in state.clients] == ["Piet"]
    with reading(engine) as connection:
        row = connection.execute(select(PersonRow).where(PersonRow.number == noor)).one()
    assert (row.name, row.is_client, row.client_memory, row.equipment) == ("", False, None, None)
    assert row.wake_at == after(hours=1)
