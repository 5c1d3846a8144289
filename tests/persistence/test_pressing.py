"""A press brings the message it stood under; what changes a message knows it as it stands in the chat."""

from datetime import timedelta

import pytest

from domain.actions import Words
from domain.incoming import Edited, Heard, Pressed, ReplyTo, Text
from domain.outcome import Outcome
from domain.parts import Chosen, Notice, Say
from domain.state import ClientState, State
from persistence.outbox import Outgoing
from persistence.store import Store
from tests.persistence.people import LEASE_SECONDS, NOON, received, settled, work_all

CHAT = "telegram:Noor"
STOP, GO, LOOK = Words(text="Stop", once=True), Words(text="Go", once=True), Words(text="Look")


def decide(state: State, heard: Heard | None) -> Outcome:
    """Answer with three buttons; show a press under its message, and answer an edit in place."""
    if not isinstance(state, ClientState) or heard is None:
        return Outcome()
    answer = Say(to=state.client.number, parts=(Notice(topic="heard"),), buttons=(STOP, GO, LOOK))
    match heard.incoming:
        case Pressed(action=Words() as action, under=under) if under is not None:
            shown = answer.model_copy(update={"parts": (Chosen(action=action),), "buttons": (LOOK,)})
            return Outcome(says=(answer, shown.model_copy(update={"edits": under.number, "weight": "nudge"})))
        case Edited(answered=answered):
            return Outcome(says=(answer.model_copy(update={"edits": answered}),))
        case _:
            return Outcome(says=(answer,))


class Chat:
    """Noor's chat, in which all that is sent arrives."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.at = NOON
        self.person = next(each.number for each in store.people() if each.name == "Noor")
        self.sent: list[Outgoing] = []

    def brings(self, incoming: Text | Edited | Pressed) -> Heard:
        """Let something come in, and send what is said to it; return what the decision was shown."""
        self.at += timedelta(minutes=1)
        self.store.receive([received(CHAT, incoming, f"in {self.at}", self.at)])
        ((_, heard),) = work_all(self.store, self.at, decide)
        assert heard is not None
        lease = self.store.claim_chat(self.at, LEASE_SECONDS, "telegram")
        assert lease is not None
        while (outgoing := self.store.next_message(lease, self.at)) is not None:
            self.store.sending(lease, outgoing.number, self.at)
            keys = (
                () if outgoing.say.edits and outgoing.say.weight == "nudge" else (f"key {outgoing.number}",)
            )
            labels = [getattr(each, "text", "") for each in outgoing.say.buttons]
            words = "→ Stop" if not keys else f"words {outgoing.number}"
            self.store.sent(lease, outgoing.number, words, keys, labels, self.at)
            self.sent.append(outgoing)
        return heard


@pytest.fixture
def chat(store: Store) -> Chat:
    settled(store, "Noor", "Piet")
    return Chat(store)


def press(chat: Chat, label: str) -> Pressed:
    """Press that button of Noor's; return the press as the decision was shown it."""
    data = chat.store.button(chat.person, label)
    assert data is not None
    pressed = chat.brings(Pressed(button=data)).incoming
    assert isinstance(pressed, Pressed)
    return pressed


def test_a_press_brings_its_message_with_all_buttons_and_what_it_came_of(chat: Chat) -> None:
    first = chat.brings(Text(text="hello", key="1"))
    pressed = press(chat, "Stop")
    assert pressed.action == STOP
    assert pressed.under is not None
    assert pressed.under.number == chat.sent[0].number
    assert pressed.under.buttons == (STOP, GO, LOOK)
    assert pressed.under.reply == ReplyTo(message=first.number)


def test_a_button_left_under_a_changed_message_still_belongs_to_it(chat: Chat) -> None:
    chat.brings(Text(text="hello", key="1"))
    number = chat.sent[0].number
    press(chat, "Stop")
    shown = chat.sent[-1]
    assert shown.earlier is not None
    assert (shown.say.edits, shown.earlier.words) == (number, f"words {number}")
    pressed = chat.brings(Pressed(button=f"{shown.number}:0")).incoming
    assert isinstance(pressed, Pressed)
    assert pressed.under is not None
    assert (pressed.under.number, pressed.under.buttons) == (number, (LOOK,))
    # What was put under the words before stands there still.
    assert chat.sent[-1].earlier is not None
    assert chat.sent[-1].earlier.words == f"words {number}\n→ Stop"


def test_the_buttons_of_a_changed_message_are_those_it_has_now(chat: Chat) -> None:
    chat.brings(Text(text="hello", key="1"))
    first = chat.sent[0].number
    press(chat, "Stop")
    answer, shown = chat.sent[1:]
    assert [data for _, data in chat.store.latest_buttons(chat.person)] == [f"{shown.number}:0"]
    assert chat.store.button(chat.person, "Go") == f"{answer.number}:1"
    assert first < answer.number < shown.number


def test_an_edit_knows_its_answer_only_as_long_as_nothing_was_said_since(chat: Chat) -> None:
    chat.brings(Text(text="hello", key="1"))
    edited = chat.brings(Edited(text="hello you", key="1")).incoming
    assert isinstance(edited, Edited)
    assert edited.answered == chat.sent[0].number
    again = chat.brings(Edited(text="hello all", key="1")).incoming
    assert isinstance(again, Edited)
    assert again.answered == chat.sent[1].number
    chat.brings(Text(text="more", key="2"))
    late = chat.brings(Edited(text="hello", key="1")).incoming
    assert isinstance(late, Edited)
    assert late.answered is None


def test_what_another_person_was_sent_is_not_to_be_pressed(chat: Chat) -> None:
    chat.brings(Text(text="hello", key="1"))
    data = chat.store.button(chat.person, "Stop")
    chat.store.receive([received("telegram:Piet", Pressed(button=str(data)), "piet", chat.at)])
    ((_, heard),) = work_all(chat.store, chat.at, decide)
    assert heard is not None
    assert isinstance(heard.incoming, Pressed)
    assert (heard.incoming.action, heard.incoming.under) == (None, None)
