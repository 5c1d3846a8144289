"""The desk: what it does with a message of which nothing comes."""

import logging
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from bot import desk
from bot.commands.database import passing
from bot.roster import read_roster
from domain import decide
from domain.client import waking
from domain.incoming import Text
from domain.parts import Notice
from domain.state import ClientState
from persistence.faults import DatabaseTrouble
from persistence.inbox import Received
from persistence.work import SET_ASIDE_WAKE

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
ROSTER: dict[str, Any] = {
    "coaches": [{"name": "Mara", "zone": "UTC", "unit": "kg"}],
    "sheets": ["Base\nTrain every 3 days in turn: A\n\nA\n1. Leg press, 8-12 reps\n"],
    "clients": [
        {
            "name": "Noor",
            "coach": "Mara",
            "programme": "Base",
            "unit": "kg",
            "zone": "UTC",
            "starts": "2026-03-02",
            "remind_at": "08:00",
        }
    ],
}


def test_a_message_that_breaks_a_rule_is_kept_answered_and_does_not_hold_up_the_next(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """The log says where it went wrong, and nothing of what the person wrote."""

    def hear(state: Any, heard: Any) -> Any:
        if "private" in heard.incoming.text:
            raise ValueError(heard.incoming.text)
        return decide.hear(state, heard)

    monkeypatch.setattr(desk, "hear", hear)
    with passing() as store, caplog.at_level(logging.DEBUG):
        store.load_roster(read_roster(ROSTER), NOW)
        the_desk = desk.Desk(store, lambda: NOW)
        the_desk.clear()
        for number, text in enumerate(("my private words", "100 x 10")):
            store.receive([Received("local", str(number), "local:Noor", NOW, Text(text=text))])
        the_desk.clear()
        said = [part for message in sent(store) for part in message]

    assert Notice(topic="went wrong") in said
    assert "verdict" in [part.kind for part in said]
    assert "ValueError at test_desk.py" in caplog.text
    assert "private words" not in caplog.text
    assert "Noor" not in caplog.text


def test_who_writes_much_rests_between_turns_and_holds_up_nobody() -> None:
    """With many messages of one person waiting, another's is answered after one turn at most."""
    moment = NOW
    with passing() as store:
        store.load_roster(read_roster(ROSTER), NOW)
        the_desk = desk.Desk(store, lambda: moment)
        the_desk.clear()
        flood = [Received("local", str(n), "local:Noor", NOW, Text(text="hello")) for n in range(25)]
        other = Received("local", "one", "local:Mara", NOW, Text(text="who needs me?"))
        store.receive([*flood, other])
        assert the_desk.clear() == desk.TURN_STEPS + 1
        assert the_desk.clear() == 0
        rested = NOW + timedelta(seconds=desk.REST_SECONDS)
        assert store.next_due(NOW) == rested
        moment = rested
        assert the_desk.clear() == desk.TURN_STEPS
        moment += timedelta(seconds=desk.REST_SECONDS)
        assert the_desk.clear() == 25 - 2 * desk.TURN_STEPS


def test_a_turn_goes_on_at_once_when_the_database_is_back(monkeypatch: pytest.MonkeyPatch) -> None:
    with passing() as store:
        store.load_roster(read_roster(ROSTER), NOW)
        the_desk = desk.Desk(store, lambda: NOW)
        the_desk.clear()
        said = [
            Received("local", words, "local:Noor", NOW, Text(text=words)) for words in ("100 x 10", "hello")
        ]
        store.receive(said)
        work = store.work

        def away(*_facts: Any) -> bool:
            raise DatabaseTrouble("away")

        monkeypatch.setattr(store, "work", away)
        with pytest.raises(DatabaseTrouble):
            the_desk.clear()
        monkeypatch.setattr(store, "work", work)
        assert the_desk.clear() == 1


def test_who_cannot_be_woken_holds_up_nobody_who_is_woken_in_the_same_breath(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """All of them are due at once: the others are welcomed once, and the one is let be for an hour."""
    names = [f"Client {number}" for number in range(30)]
    many = {**ROSTER, "clients": [{**ROSTER["clients"][0], "name": name} for name in names]}

    def wake(state: Any, now: datetime) -> Any:
        if isinstance(state, ClientState) and state.client.name == names[7]:
            raise ValueError
        return decide.wake(state, now)

    monkeypatch.setattr(desk, "wake", wake)
    with passing() as store:
        store.load_roster(read_roster(many), NOW)
        desk.Desk(store, lambda: NOW).clear()
        heard = []
        while (lease := store.claim_chat(NOW, 60)) is not None:
            while (outgoing := store.next_message(lease, NOW)) is not None:
                heard.append(outgoing.name)
                store.sent(lease, outgoing.number, "", [], [], NOW)
        assert sorted(heard) == sorted([*names[:7], *names[8:]])
        assert store.next_due(NOW) == NOW + SET_ASIDE_WAKE


def sent(store: Any) -> list[tuple[Any, ...]]:
    """Return the parts of all messages that wait for Noor, in order."""
    messages = []
    while (lease := store.claim_chat(NOW, 60)) is not None:
        while (outgoing := store.next_message(lease, NOW)) is not None:
            if outgoing.name == "Noor":
                messages.append(outgoing.say.parts)
            store.sent(lease, outgoing.number, "", [], [], NOW)
    return messages


def test_an_event_that_would_be_due_without_an_end_is_logged_and_ends(
    monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    """Once, and by its number: the person is woken again an hour later, and for nothing else meanwhile."""
    monkeypatch.setattr(waking, "welcome", lambda _draft: None)
    with passing() as store:
        store.load_roster(read_roster(ROSTER), NOW)
        desk.Desk(store, lambda: NOW).clear()
        assert store.next_due(NOW) == NOW + waking.STUCK_FOR
        client = next(person.number for person in store.people() if person.name == "Noor")
    told = [record.getMessage() for record in caplog.records if record.levelno == logging.ERROR]
    assert told == [desk.STUCK % (client, "welcome")]
