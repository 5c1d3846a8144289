"""A chat is read a stretch at a time, each message once, at its place and as it stands last."""

import asyncio
from collections.abc import Iterator
from datetime import timedelta

import pytest

from bot.commands.database import passing
from bot.roster import first_reminder, read_roster
from bot.stage import Stage
from persistence.chats import NEWEST, Before, BotMessage, OwnMessage
from persistence.store import Store
from tests.test_project import ROOT

DEEDS = (
    ("says", "squat 60x6"),
    ("edits", "squat 60x7"),
    ("says", "bench 40x8"),
    ("presses", "Undo"),
    ("says", "bench 40x7"),
    ("says", "dips 6"),
    ("edits", "dips 7"),
    ("edits", "dips 8"),
    ("presses", "What's next?"),
)


@pytest.fixture(scope="module")
def store() -> Iterator[Store]:
    """A day of Adaeze's: some sets, told, edited, taken back; no time passes between some of them."""
    roster = read_roster(ROOT / "demo" / "roster.json")
    begins = first_reminder(roster)
    assert begins is not None
    with passing() as opened:
        opened.load_roster(roster, begins)
        stage = Stage(opened, begins, lambda _at, _outgoing, _rendered: None)

        async def day() -> None:
            await stage.settle()
            for place, (deed, what) in enumerate(DEEDS):
                await stage.wait_until(begins + timedelta(seconds=1 + place // 2))
                await {"says": stage.say, "edits": stage.edit, "presses": stage.press}[deed]("Adaeze", what)

        asyncio.run(day())
        yield opened


def whole(store: Store, most: int) -> list[OwnMessage | BotMessage]:
    """Return Adaeze's chat, read in stretches of `most` rows."""
    person = store.person_of_chat("local:Adaeze")
    assert person is not None
    place: Before | None = NEWEST
    found: list[OwnMessage | BotMessage] = []
    while place is not None:
        stretch = store.chats.stretch(person.number, place, most)
        found = [*stretch.messages, *found]
        place = stretch.before
    return found


def said(message: OwnMessage | BotMessage) -> str | None:
    return getattr(message.said, "text", None) if isinstance(message, OwnMessage) else None


def test_what_was_said_stands_as_it_was_edited_last_and_before_its_answer(store: Store) -> None:
    chat = whole(store, 1000)
    own = [message for message in chat if isinstance(message, OwnMessage)]
    assert [said(message) for message in own] == ["squat 60x7", "bench 40x8", "bench 40x7", "dips 8"]
    assert [message.is_edited for message in own] == [True, False, False, True]
    assert isinstance(chat[0], BotMessage)
    assert chat[0].words.startswith("Welcome, <b>Adaeze</b>.")
    answers = [chat[chat.index(message) + 1] for message in own]
    for answer, name in zip(answers, ("Back squat", "Bench press", "Bench press", "Dip"), strict=True):
        assert isinstance(answer, BotMessage)
        assert name in answer.words


@pytest.mark.parametrize("most", [1, 2, 3, 5, 8, 13])
def test_in_stretches_it_is_the_same_chat(store: Store, most: int) -> None:
    assert whole(store, most) == whole(store, 1000)


def test_a_message_by_itself_is_as_it_stands_in_the_chat(store: Store) -> None:
    for message in whole(store, 1000):
        if isinstance(message, OwnMessage):
            assert store.chats.said(message.number) == message
        else:
            assert store.chats.heard(message.number) == message
            assert store.chats.heard(message.newest) == message


def test_what_was_changed_has_the_buttons_of_its_last_change(store: Store) -> None:
    changed = [
        each for each in whole(store, 1000) if isinstance(each, BotMessage) and each.newest != each.number
    ]
    assert changed
    for message in changed:
        assert all(data.startswith(f"{message.newest}:") for _, data in message.buttons)


def test_what_was_said_since_is_told_once_more_as_it_stands(store: Store) -> None:
    last = store.chats.last_said()
    assert store.chats.said_since(last) == ()
    everything = store.chats.said_since(0)
    assert {said(message) for message in everything} == {"squat 60x7", "bench 40x8", "bench 40x7", "dips 8"}
    assert len(everything) == sum(deed != "presses" for deed, _ in DEEDS)


def test_the_words_of_what_is_replied_to_are_found_by_its_key(store: Store) -> None:
    chat = whole(store, 1000)
    keys = {message.key: message for message in chat if message.key is not None}
    found = store.chats.words_of("local:Adaeze", keys)
    for key, message in keys.items():
        if isinstance(message, OwnMessage):
            assert found[key] == said(message)
    assert len(found) == len(keys)
    assert store.chats.words_of("local:Farah", keys) == {}
