"""What becomes of a message whose sending goes wrong, and of one whose outcome cannot be noted."""

import asyncio
from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

import pytest

from bot import delivery
from bot.channel import Delivered, Final, Rendered, Sent, TryAgain
from bot.commands.database import passing
from bot.delivery import NUDGE_LASTS, Delivery, wait
from bot.enclosing import made
from bot.roster import read_roster
from domain.outcome import Outcome
from domain.parts import Notice, Say, Weight
from persistence.faults import DatabaseTrouble
from persistence.store import Store
from tests.bot.telegram.village import roster
from tests.persistence.people import LEASE_SECONDS, NOON, after, text

SENT = Sent(("1",))


class Platform:
    """A sender that answers as it was told, and then lets all arrive; keeps what it was given."""

    def __init__(self, *results: Delivered) -> None:
        self.results = list(results)
        self.given: list[str] = []
        self.asked = asyncio.Event()

    async def send(self, chat: str, message: Rendered) -> Delivered:
        self.given.append(f"{chat} {message.text_html}")
        self.asked.set()
        return self.results.pop(0) if self.results else SENT

    async def change(self, chat: str, message_key: str, message: Rendered) -> Delivered:
        self.given.append(f"{chat} {message_key}: {message.text_html}")
        return self.results.pop(0) if self.results else SENT


@pytest.fixture
def store() -> Iterator[Store]:
    with passing() as opened:
        opened.load_roster(read_roster(roster("Bram")), NOON)
        lease = opened.claim_person(NOON, LEASE_SECONDS)
        while lease is not None:  # nobody has anything to say of their own
            while opened.work(lease, NOON, lambda _state, _heard: Outcome()):
                pass
            lease = opened.claim_person(NOON, LEASE_SECONDS)
        yield opened


def say(store: Store, *weights: Weight) -> None:
    """Let Bram be told one message of each weight."""
    (bram,) = (person for person in store.people() if person.name == "Bram")
    notice = Notice(topic="went wrong")
    says = tuple(Say(to=bram.number, parts=(notice,), weight=weight) for weight in weights)
    store.receive([text(str(bram.chat), "x", f"{store.next_due(NOON)}{weights}", NOON)])
    lease = store.claim_person(NOON, LEASE_SECONDS)
    assert lease is not None
    store.work(lease, NOON, lambda _state, _heard: Outcome(says=says))


def sending(store: Store, platform: Platform, at: datetime = NOON) -> Delivery:
    return Delivery(store, platform, clock=lambda: at, enclose=made(store))


UNCLEAR = TryAgain(2, surely_not_sent=False)
SURELY_NOT = TryAgain(2, surely_not_sent=True)


@pytest.mark.parametrize(
    ("weight", "result", "goes_again"),
    [
        ("answer", UNCLEAR, True),
        ("alert", UNCLEAR, True),
        ("nudge", UNCLEAR, False),
        ("answer", SURELY_NOT, True),
        ("alert", SURELY_NOT, True),
        ("nudge", SURELY_NOT, True),
        ("answer", Final("blocked"), False),
        ("answer", Final("chat gone"), False),
        ("answer", Final("refused"), False),
    ],
)
async def test_what_did_not_arrive_goes_again_or_not(
    store: Store, weight: Weight, result: Delivered, *, goes_again: bool
) -> None:
    say(store, weight)
    platform = Platform(result)
    assert await sending(store, platform).clear() == 1
    assert await sending(store, platform, after(seconds=1)).clear() == 0
    assert await sending(store, platform, after(hours=1)).clear() == goes_again
    assert len(platform.given) == 1 + goes_again


async def test_a_nudge_whose_day_is_over_is_dropped_and_an_answer_never(store: Store) -> None:
    say(store, "nudge", "answer", "alert")
    platform = Platform()
    assert await sending(store, platform, NOON + NUDGE_LASTS + timedelta(seconds=1)).clear() == 3
    assert len(platform.given) == 2


@pytest.mark.parametrize(
    ("asked_seconds", "attempts", "waited_seconds"),
    [
        (2, 0, 2),
        (2, 1, 2),
        (2, 4, 16),
        (2, 10, 1024),
        (2, 11, 30 * 60),
        (2, 500, 30 * 60),
        (35, 0, 35),
        (4000, 0, 4000),  # what the platform asks for is always kept, however long
    ],
)
def test_each_wait_is_twice_as_long_but_never_shorter_than_asked(
    asked_seconds: float, attempts: int, waited_seconds: int
) -> None:
    assert wait(asked_seconds, attempts) == timedelta(seconds=waited_seconds)


async def test_that_a_message_was_sent_is_noted_however_long_the_database_is_away(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Otherwise it would be sent again, although it is known to have arrived."""
    monkeypatch.setattr(delivery, "AWAY_SECONDS", 0.001)
    say(store, "answer", "answer")
    away = 3
    sent = store.sent

    def note(*facts: Any, **more: Any) -> bool:
        nonlocal away
        if away:
            away -= 1
            raise DatabaseTrouble("away")
        return sent(*facts, **more)

    monkeypatch.setattr(store, "sent", note)
    platform = Platform()
    assert await sending(store, platform).clear() == 2
    assert len(platform.given) == 2
    assert away == 0


async def test_nothing_is_begun_while_something_cannot_be_noted(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(delivery, "AWAY_SECONDS", 0.001)
    say(store, "answer")
    is_away = True
    sent = store.sent

    def note(*facts: Any, **more: Any) -> bool:
        if is_away:
            raise DatabaseTrouble("away")
        return sent(*facts, **more)

    monkeypatch.setattr(store, "sent", note)
    platform = Platform()
    sender = Delivery(store, platform, clock=lambda: after(days=1), enclose=made(store))
    first = asyncio.create_task(sender.clear())
    await platform.asked.wait()
    assert await sender.clear() == 0
    is_away = False
    assert await first == 1
    assert len(platform.given) == 1


async def test_a_chat_goes_on_at_once_when_the_database_is_back(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    say(store, "answer")
    begin = store.sending

    def fail(*_facts: Any) -> bool:
        raise DatabaseTrouble("away")

    monkeypatch.setattr(store, "sending", fail)
    platform = Platform()
    sender = sending(store, platform)
    with pytest.raises(DatabaseTrouble):
        await sender.clear()
    monkeypatch.setattr(store, "sending", begin)
    assert await sender.clear() == 1
    assert len(platform.given) == 1


async def test_a_message_without_words_holds_up_nobody(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    say(store, "answer", "answer")
    broken = [True, False]

    def put(*_facts: Any) -> str:
        if broken.pop(0):
            raise KeyError("no words")
        return "words"

    monkeypatch.setattr(delivery, "message_words", put)
    platform = Platform()
    assert await sending(store, platform).clear() == 2
    assert len(platform.given) == 1


async def test_a_sender_that_is_stopped_leaves_the_rest_to_the_next_process(store: Store) -> None:
    say(store, "answer", "answer", "answer")
    platform = Platform()
    sender = sending(store, platform)
    sender._on_claimed = sender.stop
    assert await sender.clear() == 0
    assert await sending(store, platform).clear() == 3
