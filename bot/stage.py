"""A stage: the real desk, store and delivery under a clock that is moved by hand.

Played scripts, the local chat and the demo all stand on one. People are known by name; whoever is not in the
store is a stranger with a local chat of that name.
"""

import uuid
from collections import defaultdict, deque
from collections.abc import Callable
from datetime import datetime
from typing import NamedTuple

from bot.channel import Rendered, Sent
from bot.delivery import Delivery
from bot.desk import Desk
from bot.enclosing import Enclose, named
from bot.markup import plain
from domain.incoming import Edited, FromChat, Pressed, Started, Text
from persistence.inbox import Received
from persistence.outbox import Outgoing
from persistence.store import Store

PLATFORM = "local"

LOOKED_THROUGH = 1000
"""How many of the newest messages in a chat can be replied to."""

Watcher = Callable[[datetime, Outgoing, Rendered], None]
"""Called with each message that the bot says: when, what, and in which words."""


class NoSuchButtonError(Exception):
    """There is no message with that button; `labels` are those of the latest message that has any."""

    def __init__(self, wanted: str, labels: tuple[str, ...]) -> None:
        """`wanted` is the label that was looked for."""
        super().__init__(wanted)
        self.wanted = wanted
        self.labels = labels


class NothingToEditError(Exception):
    """The person has not said anything yet."""


class NoSuchMessageError(Exception):
    """No message in the person's chat has those words."""


class InChat(NamedTuple):
    """A message in somebody's chat, their own or the bot's: its key there, and its words."""

    key: str
    words: str


class Stage:
    """People, and the time it is for them."""

    def __init__(self, store: Store, now: datetime, watcher: Watcher, enclose: Enclose = named) -> None:
        """Begin at the moment `now` (aware); pictures and files are only named where `enclose` makes none."""
        self.now = now
        self._store = store
        self._watcher = watcher
        self._off_until: datetime | None = None
        self._desk = Desk(store, clock=lambda: self.now)
        self._delivery = Delivery(store, self, clock=lambda: self.now, enclose=enclose, watcher=self._heard)
        self._last_said: dict[str, str] = {}
        self._chats: defaultdict[str, deque[InChat]] = defaultdict(lambda: deque(maxlen=LOOKED_THROUGH))

    async def send(self, chat: str, message: Rendered) -> Sent:
        """Take a message as delivered: here everybody is always reachable."""
        key = uuid.uuid4().hex
        self._chats[chat].append(InChat(key, words_of(message)))
        return Sent((key,))

    async def change(self, chat: str, message_key: str, message: Rendered) -> Sent:
        """Take a message as changed."""
        kept = self._chats[chat]
        for at, each in enumerate(kept):
            if each.key == message_key and message.text_html:
                kept[at] = InChat(message_key, words_of(message))
        return Sent((message_key,))

    def _heard(self, outgoing: Outgoing, rendered: Rendered) -> None:
        self._watcher(self.now, outgoing, rendered)

    async def settle(self) -> None:
        """Do all that is to be done at this moment; nothing while the bot is off."""
        if self._off_until is not None:
            return
        while self._desk.clear() + await self._delivery.clear():
            pass

    async def wait_until(self, moment: datetime) -> None:
        """Let time pass until `moment`; all that falls due on the way happens at its time."""
        if self._off_until is not None:
            if moment < self._off_until:
                self.now = max(self.now, moment)
                return
            self.now, self._off_until = self._off_until, None
        await self.settle()
        while (due := self._store.next_due(self.now)) is not None and due <= moment:
            self.now = max(due, self.now)
            await self.settle()
        self.now = max(self.now, moment)

    def goes_off(self, until: datetime) -> None:
        """Let the bot be off until that moment: what people send waits, and so does what is due."""
        self._off_until = until

    async def say(self, who: str, text: str, replies_to: str | None = None) -> None:
        """Somebody types something, as a reply to the message of that key if there is one."""
        chat = self.chat_of(who)
        key = await self.say_in(chat, text, replies_to)
        if key is not None:
            self._last_said[who] = key

    async def say_in(self, chat: str, text: str, replies_to: str | None = None) -> str | None:
        """Something is typed in that chat; return its key, None where it opened the chat."""
        words = text.strip().split(maxsplit=1)
        if words and words[0] == "/start":
            await self.bring_in(chat, Started(code=words[1].strip() if len(words) > 1 else ""))
            return None
        key = uuid.uuid4().hex
        self._chats[chat].append(InChat(key, text))
        await self.bring_in(chat, Text(text=text, key=key, replies_to=replies_to))
        return key

    def message(self, who: str, words: str) -> InChat:
        """Return the latest message in somebody's chat with these words, whatever the case and the spaces.

        Raises NoSuchMessageError.
        """
        wanted = " ".join(words.casefold().split())
        for message in reversed(self._chats[self.chat_of(who)]):
            if wanted and wanted in " ".join(message.words.casefold().split()):
                return message
        raise NoSuchMessageError(words)

    async def edit(self, who: str, text: str) -> None:
        """Somebody types the last message anew. Raises NothingToEditError where there is none."""
        if who not in self._last_said:
            raise NothingToEditError(who)
        await self.bring(who, Edited(text=text, key=self._last_said[who]))

    async def press(self, who: str, label: str) -> None:
        """Somebody presses a button of the latest message that has it; raises NoSuchButtonError."""
        await self.bring(who, Pressed(button=self._button(who, label)))

    async def bring(self, who: str, incoming: FromChat) -> None:
        """Something comes in from somebody's chat, now."""
        await self.bring_in(self.chat_of(who), incoming)

    async def bring_in(self, chat: str, incoming: FromChat) -> None:
        """Something comes in from that chat, now."""
        received = Received(PLATFORM, uuid.uuid4().hex, chat, self.now, incoming)
        self._store.receive([received])
        await self.settle()

    def chat_of(self, who: str) -> str:
        """Return the chat of the person of that name, whatever the case."""
        for person in self._store.people():
            if person.name.casefold() == who.casefold() and person.chat is not None:
                return person.chat
        return f"{PLATFORM}:{who}"

    def buttons(self, who: str) -> tuple[tuple[str, str], ...]:
        """Return the buttons, as label and data, of the latest message to somebody that has any."""
        person = self._store.person_of_chat(self.chat_of(who))
        if person is None:
            return ()
        return self._store.latest_buttons(person.number)

    def _button(self, who: str, label: str) -> str:
        person = self._store.person_of_chat(self.chat_of(who))
        data = None if person is None else self._store.button(person.number, label)
        if data is None:
            raise NoSuchButtonError(label, tuple(text for text, _ in self.buttons(who)))
        return data


def words_of(rendered: Rendered) -> str:
    """Return a message's words without markup."""
    return plain(rendered.text_html)
