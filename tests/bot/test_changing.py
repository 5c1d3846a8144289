"""Which message of the chat changes, how, and what is sent instead where none can."""

import asyncio
from dataclasses import dataclass, field

import pytest

from bot.changing import deliver
from bot.channel import Delivered, Final, Rendered, Sent, TryAgain
from domain.actions import Words
from domain.parts import CameOf, Chosen, File, Notice, Part, Say
from domain.reach import Reach
from persistence.outbox import Earlier, Outgoing
from tests.persistence.people import NOON

WORDS = Notice(topic="heard")
FILE = File(what="journal table", of=2, client="Noor")
CHOICE, RESULT = Chosen(action=Words(text="Seen")), CameOf(notice=WORDS)
REFUSED, LATER = Final("refused"), TryAgain(1.0, surely_not_sent=True)


@dataclass
class Chat:
    """A sender that answers changes as it was told; keeps what it did, in short."""

    answers: list[Delivered]
    did: list[str] = field(default_factory=list)

    async def send(self, chat: str, message: Rendered) -> Delivered:
        assert chat == "telegram:1"
        self.did.append(f"sends {message.text_html}")
        return Sent(("9",))

    async def change(self, chat: str, message_key: str, message: Rendered) -> Delivered:
        assert chat == "telegram:1"
        what = "buttons" if not message.text_html else "caption" if message.is_caption else "text"
        self.did.append(f"{what} of {message_key}: {message.text_html}".strip(": "))
        return self.answers.pop(0) if self.answers else Sent((message_key,))


def outgoing(part: Part, earlier: Earlier | None) -> Outgoing:
    say = Say(to=1, parts=(part,), edits=5)
    return Outgoing(6, "telegram:1", "Mara", "UTC", "kg", True, say, 0, False, NOON, earlier=earlier)


TEXT = Earlier((WORDS,), "Old.", ("3",))
PICTURE = Earlier((WORDS, FILE), "Old.", ("3",))
PIECES = Earlier((WORDS,), "Old.", ("3", "4"))


@pytest.mark.parametrize(
    ("part", "earlier", "answers", "did"),
    [
        (WORDS, TEXT, [], ["text of 3: New."]),
        (WORDS, TEXT, [REFUSED], ["text of 3: New.", "sends New."]),
        (WORDS, TEXT, [LATER], ["text of 3: New."]),
        (WORDS, PICTURE, [], ["sends New."]),
        (WORDS, PIECES, [], ["sends New."]),
        (WORDS, None, [], ["sends New."]),
        (CHOICE, TEXT, [], ["text of 3: Old.\nNew."]),
        (CHOICE, PICTURE, [], ["caption of 3: Old.\nNew."]),
        (CHOICE, PIECES, [], ["buttons of 4"]),
        (CHOICE, TEXT, [REFUSED, REFUSED], ["text of 3: Old.\nNew.", "buttons of 3"]),
        (CHOICE, None, [], []),
        (RESULT, TEXT, [], ["text of 3: Old.\nNew."]),
        (RESULT, PICTURE, [], ["caption of 3: Old.\nNew."]),
        (RESULT, PICTURE, [REFUSED], ["caption of 3: Old.\nNew.", "buttons of 3", "sends New."]),
        (RESULT, PIECES, [], ["buttons of 4", "sends New."]),
        (RESULT, PIECES, [LATER], ["buttons of 4"]),
        (RESULT, None, [], ["sends New."]),
        (Reach(total=2), TEXT, [], ["text of 3: New."]),
    ],
)
def test_what_is_changed_and_what_is_sent(
    part: Part, earlier: Earlier | None, answers: list[Delivered], did: list[str]
) -> None:
    chat = Chat(list(answers))
    asyncio.run(deliver(chat, outgoing(part, earlier), Rendered("New.")))
    assert chat.did == did
