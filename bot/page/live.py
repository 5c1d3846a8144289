"""What is on the page: one scene on a stage, and everything that can be done there, one thing at a time.

It adds nothing of its own: what somebody types goes through the stage's inbox, and what is shown is what then
stands in the chats. Whatever changes is told as news.
"""

import asyncio
from collections import Counter
from collections.abc import AsyncIterator, Iterable, Sequence
from contextlib import AbstractContextManager, asynccontextmanager
from datetime import datetime, timedelta
from typing import Any
from uuid import uuid4

from bot.channel import Attachment
from bot.commands.play import set_up
from bot.delivery import as_kept
from bot.faults import OperatorFault
from bot.page.entries import bot_entry, file_of, moment, own_entry, picture_of
from bot.page.news import News
from bot.page.scenes import Scene
from bot.page.understood import behind_bot, behind_own
from bot.play.engine import Said, play
from bot.play.script import Script, ScriptFault, Step
from bot.stage import PLATFORM, Stage
from bot.textfile import LIMIT_BYTES, LIMIT_BYTES_OF_JOURNAL, read_document
from bot.wording.page import ABOUT_COPY, ABOUT_DEMO, STRANGER
from domain.decide import hear
from domain.incoming import Document, Edited, Heard, Pressed, Text
from persistence.chats import NEWEST, Before, OwnMessage
from persistence.people import Person
from persistence.store import Store

AT_ONCE = 60
"""How many rows of a chat are looked through for one stretch of it."""

NEWCOMER = f"{PLATFORM}:newcomer-"


class NotReadyError(Exception):
    """What came before the scene is still being played."""


class Live:
    """A scene that is being played, and the way in for whoever holds a phone on it."""

    def __init__(self, scenes: Sequence[Scene], news: News) -> None:
        """Nothing is there before `begin`."""
        self.scenes = scenes
        self.scene = scenes[0]
        self.one_at_a_time = asyncio.Lock()
        self.heard: Counter[str] = Counter()
        """How many messages have come into each chat since the scene began."""
        self._news = news
        self._beginning: asyncio.Task[None] | None = None
        self._run = ""
        self._opened: AbstractContextManager[Store] | None = None
        self._store: Store | None = None
        self._stage: Stage | None = None
        self._last_said = 0
        self._codes: dict[int, str] = {}
        self._newcomers: list[str] = []
        self._people: list[dict[str, Any]] = []

    @property
    def store(self) -> Store:
        """The scene's database. Raises NotReadyError."""
        if self._stage is None or self._store is None:
            raise NotReadyError
        return self._store

    @property
    def is_ready(self) -> bool:
        """Whether what came before the scene has been played."""
        return self._stage is not None

    @property
    def stage(self) -> Stage:
        """The stage. Raises NotReadyError."""
        if self._stage is None:
            raise NotReadyError
        return self._stage

    def begin(self, scene: Scene) -> None:
        """Begin to open a scene, in place of the one before, and to play what came before it.

        Where it cannot be had, that is told as news, too.
        """
        before, self._beginning = self._beginning, asyncio.create_task(self._begin(scene, self._beginning))
        self._beginning.add_done_callback(self._begun)
        if before is not None:
            before.cancel()

    async def begun(self) -> None:
        """Wait until the scene is ready. Raises OperatorFault where it cannot be had."""
        if self._beginning is not None:
            await self._beginning

    def _begun(self, beginning: asyncio.Task[None]) -> None:
        if not beginning.cancelled() and (fault := beginning.exception()) is not None:
            self._news.tell("fault", words=str(fault))

    async def _begin(self, scene: Scene, before: asyncio.Task[None] | None) -> None:
        if before is not None:
            await asyncio.wait({before})
        async with self.one_at_a_time:
            await self._end()
            self.scene, self._run = scene, uuid4().hex
            self._news.tell("anew")
            opened = scene.opened()
            store = await asyncio.to_thread(opened.__enter__)
            self._opened, self._store = opened, store
            script = await asyncio.to_thread(_set_up, store, scene)
            try:
                self._stage = await play(script, store, self._follow)
            except ScriptFault as fault:
                raise OperatorFault((f"{scene.name}: {fault}",)) from None
            self._last_said = store.chats.last_said()
            self._people = self._all_people()
            self._news.tell("anew")
        await asyncio.to_thread(_warm_up, self.store, self.stage.now)

    async def close(self) -> None:
        """End the scene, and leave nothing behind."""
        if self._beginning is not None:
            self._beginning.cancel()
            await asyncio.wait({self._beginning})
        async with self.one_at_a_time:
            await self._end()

    async def _end(self) -> None:
        opened, self._opened, self._store, self._stage = self._opened, None, None, None
        self.heard.clear()
        self._codes.clear()
        self._newcomers.clear()
        if opened is not None:
            await asyncio.to_thread(opened.__exit__, None, None, None)

    # What is looked at

    def facts(self) -> dict[str, Any]:
        """Return what a page begins with."""
        facts: dict[str, Any] = {
            "news": self._news.last,
            "largestFile": max(LIMIT_BYTES, LIMIT_BYTES_OF_JOURNAL),
            "scenes": [scene.name for scene in self.scenes],
            "scene": self.scenes.index(self.scene),
            "ready": self.is_ready,
        }
        if self.is_ready:
            facts |= {
                "run": self._run,
                "people": self._people,
                "heard": dict(self.heard),
                "now": moment(self.stage.now),
                "about": ABOUT_COPY if self.scene.is_copy else ABOUT_DEMO,
            }
        return facts

    async def chat(self, chat: str, before: Before | None) -> dict[str, Any]:
        """Return a stretch of a chat, its messages in order, and where it begins if there is more."""
        store = self.store
        person = await asyncio.to_thread(store.person_of_chat, chat)
        if person is None:
            return {"messages": [], "before": None}
        place: Before | None = before or NEWEST
        entries: list[dict[str, Any]] = []
        while place is not None and not entries:
            found = await asyncio.to_thread(store.chats.stretch, person.number, place, AT_ONCE)
            own = [each for each in found.messages if isinstance(each, OwnMessage)]
            quotes = await asyncio.to_thread(_quotes, store, chat, own)
            entries = [
                own_entry(each, quotes)
                if isinstance(each, OwnMessage)
                else bot_entry(each, self._codes.get(each.newest))
                for each in found.messages
            ]
            place = found.before
        return {"messages": entries, "before": None if place is None else [place.inbox, place.outbox]}

    async def behind(self, entry: str) -> dict[str, Any] | None:
        """Return what lies behind the message of that identifier; None where there is none such."""
        store, number = self.store, int(entry[1:])
        if entry.startswith("i"):
            told = await asyncio.to_thread(store.told, number)
            return None if told is None else await asyncio.to_thread(behind_own, told)
        message = await asyncio.to_thread(store.chats.heard, number)
        return None if message is None else await asyncio.to_thread(behind_bot, message.parts)

    async def picture(self, number: int) -> Attachment | None:
        """Return the picture of that message of the bot's; None where it has none."""
        message = await asyncio.to_thread(self.store.chats.heard, number)
        return None if message is None else await asyncio.to_thread(picture_of, message)

    async def file(self, number: int) -> Attachment | None:
        """Return the file of that message of the bot's; None where it has none that may be seen."""
        store = self.store
        message = await asyncio.to_thread(store.chats.heard, number)
        return None if message is None else await asyncio.to_thread(file_of, message, store)

    # What is done

    async def say(self, chat: str, text: str, replies_to: str | None) -> None:
        """Somebody types something."""
        async with self._deed() as stage:
            await stage.say_in(chat, text, replies_to)

    async def edit(self, chat: str, key: str, text: str) -> None:
        """Somebody types a message of theirs anew."""
        async with self._deed() as stage:
            await stage.bring_in(chat, Edited(text=text, key=key))

    async def press(self, chat: str, button: str) -> None:
        """Somebody presses a button, known by its data."""
        async with self._deed() as stage:
            await stage.bring_in(chat, Pressed(button=button))

    async def send(self, chat: str, name: str, content: bytes | None) -> None:
        """Somebody sends a file; None: it is too large."""
        file = Document(name=name, fault="too large") if content is None else read_document(name, content)
        async with self._deed() as stage:
            await stage.bring_in(chat, file)

    @asynccontextmanager
    async def _deed(self) -> AsyncIterator[Stage]:
        """One thing that somebody does. A second passes with it, so that no two have the same moment."""
        async with self.one_at_a_time:
            stage = self.stage
            await stage.wait_until(stage.now + timedelta(seconds=1))
            yield stage
            self.tell()
            self.tell_time()

    async def bring_newcomer(self) -> str:
        """Return the chat of somebody whom nobody knows yet."""
        async with self.one_at_a_time:
            chat = f"{NEWCOMER}{len(self._newcomers) + 1}"
            self._newcomers.append(chat)
            self.tell()
        return chat

    def is_known(self, chat: str) -> bool:
        """Return whether this is a chat that the page has."""
        return any(person["chat"] == chat for person in self._people)

    def zone_of(self, chats: Sequence[str]) -> str:
        """Return the zone of the first of these chats that is known."""
        zones = {person["chat"]: str(person["zone"]) for person in self._people}
        return next((zones[chat] for chat in chats if chat in zones), "UTC")

    # What is told

    def tell(self) -> None:
        """Tell what was said and has not been told, and who is there now."""
        self._tell_said()
        people = self._all_people()
        if people != self._people:
            self._people = people
            self._news.tell("people", people=people)

    def tell_time(self, **more: Any) -> None:
        """Tell what time it is on the stage."""
        self._news.tell("clock", now=moment(self.stage.now), **more)

    def _follow(self, event: Step | Said) -> None:
        """Tell of each message as it is said; what came before the scene is only counted on."""
        if isinstance(event, Step):
            if self._stage is None:
                self._news.tell("before", now=moment(event.at))
            return
        kept = as_kept(event.outgoing)
        if kept is not event.outgoing:
            self._codes[event.outgoing.number] = event.rendered.text_html
        if self._stage is None:
            return
        self._tell_said()
        message = self.store.chats.heard(event.outgoing.number)
        if message is None:
            return
        if message.newest == message.number:
            self.heard[event.outgoing.chat] += 1
        self._news.tell(
            "message",
            chat=event.outgoing.chat,
            entry=bot_entry(message, self._codes.get(message.newest)),
            heard=self.heard[event.outgoing.chat],
        )

    def _tell_said(self) -> None:
        store = self.store
        found = store.chats.said_since(self._last_said)
        self._last_said = store.chats.last_said()
        for message in found:
            quotes = _quotes(store, message.chat, [message])
            self._news.tell("message", chat=message.chat, entry=own_entry(message, quotes))

    def _all_people(self) -> list[dict[str, Any]]:
        people = [_person(each) for each in self.store.people() if each.chat is not None]
        known = {each["chat"] for each in people}
        for count, chat in enumerate(self._newcomers, start=1):
            if chat not in known:
                name = f"{STRANGER} ({count})" if count > 1 else STRANGER
                people.append(
                    {"chat": chat, "name": name, "role": "new", "zone": "UTC", "number": 0, "coach": None}
                )
        return people


def _warm_up(store: Store, now: datetime) -> None:
    """Decide on a message that nobody has sent, and forget it: so the first that somebody sends is quick."""
    client = next((each.number for each in store.people() if each.is_client), None)
    state = None if client is None else store.whole_client(client, client)
    if state is not None:
        hear(state, Heard(0, now, Text(text="squat 60x6"), answered=now))


def _set_up(store: Store, scene: Scene) -> Script:
    script = scene.script()
    set_up(store, script)
    return script


def _person(person: Person) -> dict[str, Any]:
    roles = {(True, False): "coach", (False, True): "client", (True, True): "both"}
    role = roles.get((person.is_coach, person.is_client), "new")
    return {
        "chat": person.chat,
        "name": person.name,
        "role": role,
        "zone": person.zone,
        "number": person.number,
        "coach": person.coach,
    }


def _quotes(store: Store, chat: str, messages: Iterable[OwnMessage]) -> dict[str, str]:
    keys = {each.answers for each in messages if each.answers is not None}
    return store.chats.words_of(chat, keys) if keys else {}
