"""A reply finds the message it answers by its key: an own one, or one of the bot's and what that came of."""

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest
from sqlalchemy import Engine, select, text

from domain.incoming import Edited, Heard, ReplyTo, Text
from domain.journal import Entry, WorkoutRecord
from domain.outcome import Outcome, Recorded, WorkoutKept
from domain.parts import Notice, Question, Say
from domain.reading import Reading
from domain.sets import TrainingSet
from domain.state import ClientState, State
from domain.understood import Understood
from persistence import retention
from persistence.engine import reading, writing
from persistence.migrate import migrate
from persistence.store import Store
from persistence.tables import InboxRow, OutboxRow
from tests.persistence.people import LEASE_SECONDS, NOON, after, received, settled, work_all

CHAT = "telegram:Noor"
DIP = TrainingSet("Dip", Decimal(10), "kg", "added", reps=8)


def decide(state: State, heard: Heard | None) -> Outcome:
    """Record a set for «set», put the last one right for «right», ask for «ask»; say something to each."""
    if not isinstance(state, ClientState) or heard is None or not isinstance(heard.incoming, Text | Edited):
        return Outcome()
    word = heard.incoming.text.split()[0]
    last = max((entry.number for entry in state.entries), default=0)
    memory = state.memory.model_copy(update={"last_entry": state.memory.last_entry + 1})
    entry = Entry(memory.last_entry, 1, heard.number, DIP, heard.at)
    if isinstance(heard.incoming, Edited):
        entry = replace(entry, message=heard.incoming.original or 0)
    part = Question(slot="load", number=5) if word == "ask" else Notice(topic="heard")
    workout = WorkoutKept(WorkoutRecord(1, state.programmes[0].number, "Push", NOON.date(), "open", 1))
    says = (Say(to=state.client.number, parts=(part,)),)
    match word:
        case "set":
            known = Understood("a report", Reading())
            return Outcome(changes=(workout, Recorded(entry)), says=says, memory=memory, understood=known)
        case "right":
            place = next(each.order[0] for each in state.entries if each.number == last)
            return Outcome(
                changes=(Recorded(replace(entry, place=place), instead_of=last),), says=says, memory=memory
            )
        case _:
            return Outcome(says=says)


class Chat:
    """Noor's chat: she types, and what the bot answers arrives under the next key."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.keys = 100
        self.at = NOON

    def says(self, words: str, *, replies_to: str | None = None, edits: str | None = None) -> Heard:
        """Say something; return what the decision was shown."""
        self.keys += 1
        self.at += timedelta(minutes=1)
        key = edits or str(self.keys)
        said = Edited(text=words, key=key) if edits else Text(text=words, key=key, replies_to=replies_to)
        self.store.receive([received(CHAT, said, f"in {self.keys}", self.at)])
        ((_, heard),) = work_all(self.store, self.at, decide)
        assert heard is not None
        lease = self.store.claim_chat(self.at, LEASE_SECONDS, "telegram")
        assert lease is not None
        while (outgoing := self.store.next_message(lease, self.at)) is not None:
            self.store.sending(lease, outgoing.number, self.at)
            pieces = [f"{self.keys} a", f"{self.keys} b"]
            self.store.sent(lease, outgoing.number, "words", pieces, [], self.at)
        return heard

    def answered(self, key: str) -> ReplyTo | None:
        """Return what a reply to the message of that key is shown to answer."""
        incoming = self.says("hello", replies_to=key).incoming
        assert isinstance(incoming, Text)
        return incoming.reply


@pytest.fixture
def chat(store: Store) -> Chat:
    settled(store, "Noor", "Piet")
    return Chat(store)


@pytest.mark.parametrize("key", ["101", "101 a", "101 b"])
def test_a_reply_is_to_a_message_or_to_any_piece_of_its_answer(chat: Chat, key: str) -> None:
    first = chat.says("set")
    chat.says("set")
    assert chat.answered(key) == ReplyTo(message=first.number, places=(1,))


def test_what_has_put_a_set_right_has_its_place(chat: Chat) -> None:
    first = chat.says("set")
    right = chat.says("right")
    assert chat.answered("101") == ReplyTo(message=first.number, places=(1,))
    assert chat.answered("102 a") == ReplyTo(message=right.number, places=(1,))


def test_the_answer_to_an_edit_is_about_the_message_as_first_sent(chat: Chat) -> None:
    first = chat.says("set")
    chat.says("set again", edits="101")
    assert chat.answered("102 a") == ReplyTo(message=first.number, places=(1, 2))


def test_the_questions_that_a_message_asked_are_known(chat: Chat) -> None:
    asked = chat.says("ask")
    assert chat.answered("101 a") == ReplyTo(message=asked.number, questions=(5,))
    assert chat.answered("101") == ReplyTo(message=asked.number)


def test_an_edited_reply_answers_the_same_message_and_an_edit_knows_what_it_was_first_to_record(
    chat: Chat,
) -> None:
    first = chat.says("set")
    chat.says("right", replies_to="101")
    edited = chat.says("right", edits="102").incoming
    assert isinstance(edited, Edited)
    assert edited.reply == ReplyTo(message=first.number, places=(1,))
    assert edited.places == ()
    edited = chat.says("set", edits="101").incoming
    assert isinstance(edited, Edited)
    assert (edited.places, edited.reply) == ((1,), None)


def test_a_message_of_another_chat_or_an_unknown_one_is_not_answered(chat: Chat) -> None:
    chat.says("set")
    assert chat.answered("unknown") is None
    reply = Text(text="hello", key="1", replies_to="101 a")
    chat.store.receive([received("telegram:Piet", reply, "1", after(hours=1))])
    ((_, heard),) = work_all(chat.store, after(hours=1), decide)
    assert heard is not None
    assert heard.incoming == reply


def test_what_was_sent_before_there_were_keys_is_found(bare_engine: Engine) -> None:
    migrate(bare_engine)
    store = Store(bare_engine)
    settled(store, "Noor")
    chat = Chat(store)
    first = chat.says("set")
    migrate(bare_engine, "0001")
    migrate(bare_engine, "0002")
    migrate(bare_engine)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    with reading(bare_engine) as connection:
        keys = connection.execute(text("SELECT chat, message_key FROM sent_keys ORDER BY 2")).all()
    assert [tuple(each) for each in keys] == [(CHAT, "101 a"), (CHAT, "101 b")]
    assert chat.answered("101 a") == ReplyTo(message=first.number, places=(1,))
    with writing(bare_engine) as connection:
        connection.execute(text("DELETE FROM sent_keys"))
    assert chat.answered("101 a") is None


def test_old_words_are_let_go_and_a_reply_still_finds_its_sets(
    chat: Chat, engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(retention, "PORTION", 1)
    chat.says("set 1")
    before = chat.at + timedelta(seconds=1)
    known = chat.answered("101")
    assert known is not None
    assert known.places
    for _ in range(5):
        chat.store.forget_words(before)
    with reading(engine) as connection:
        came_in = select(InboxRow.incoming, InboxRow.understood).order_by(InboxRow.number)
        typed = connection.execute(came_in).all()
        said = connection.execute(select(OutboxRow).order_by(OutboxRow.number)).all()
    assert [each.incoming.text for each in typed if isinstance(each.incoming, Text)] == ["", "hello"]
    assert all(each.understood is None for each in typed)
    assert [(each.words, bool(each.parts)) for each in said] == [("", False), ("words", True)]
    assert chat.answered("101") == known == chat.answered("101 a")
