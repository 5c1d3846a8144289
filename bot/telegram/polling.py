"""The way in from Telegram: get updates, store them, commit, and only then ask beyond them.

The server forgets an update once it is asked for what lies beyond it, so nothing is lost wherever this stops;
what is fetched twice is stored once, by its key. How far it got stands in the database, in the same
transaction as what was stored.
"""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Coroutine, Sequence
from datetime import UTC, datetime
from functools import partial
from typing import Any, Final, TypeVar

from telegram import Bot, Update
from telegram.error import BadRequest, Conflict, InvalidToken, RetryAfter, TelegramError

from bot.telegram.errors import wait_seconds
from bot.telegram.incoming import KINDS_OF_UPDATE, PLATFORM, InGroup, WithFile, translate
from bot.textfile import read_document
from domain.incoming import Document, Pressed
from persistence.faults import DatabaseTrouble
from persistence.inbox import Received
from persistence.store import Store

LONG_POLL_SECONDS: Final = 30
LONGEST_PAUSE_SECONDS: Final = 30.0
CONFLICT_PAUSE_SECONDS: Final = 5.0
FETCH_TRIES: Final = 3
FETCH_PAUSE_SECONDS: Final = 1.0

_log = logging.getLogger(__name__)

T = TypeVar("T")


class TokenRefusedError(Exception):
    """The server does not know the token. Never says which token it was."""


class Polling:
    """The polling loop of one bot over one store.

    `on_received` is called after each commit that brought something new. `farewell` is said in a group that
    the bot is brought into, before it leaves; `commands` (name, description) are shown in the chat's menu.
    """

    def __init__(
        self,
        bot: Bot,
        store: Store,
        on_received: Callable[[], None],
        farewell: str = "",
        commands: Sequence[tuple[str, str]] = (),
    ) -> None:
        self._bot = bot
        self._store = store
        self._on_received = on_received
        self._farewell = farewell
        self._commands = tuple(commands)
        self._asides: set[asyncio.Task[None]] = set()

    async def run(self) -> None:
        """Poll until cancelled. Raises TokenRefusedError; every other trouble is waited out."""
        try:
            await self._insist(self._begin)
            offset = await self._insist(self._stored_offset)
            while True:
                offset = await self._insist(partial(self.step, offset))
        finally:
            for aside in self._asides:
                aside.cancel()

    async def step(self, offset: int) -> int:
        """Fetch what waits beyond `offset`, store it, and return the next offset."""
        updates = await self._bot.get_updates(
            offset=offset, timeout=LONG_POLL_SECONDS, allowed_updates=KINDS_OF_UPDATE
        )
        if not updates:
            return offset
        now = datetime.now(UTC)
        found = [self._understood(update, now) for update in updates]
        received = [
            await self._whole(one) if isinstance(one, WithFile) else one
            for one in found
            if isinstance(one, Received | WithFile)
        ]
        after = updates[-1].update_id + 1
        # A unit of work is never left half-way: when cancelled, wait for it.
        await _to_its_end(asyncio.to_thread(self._store.receive, received, (self._cursor_name, str(after))))
        if received:
            self._on_received()
        for group in {one.chat for one in found if isinstance(one, InGroup)}:
            self._aside(self._leave(group))
        for one in received:
            if isinstance(one.incoming, Pressed):
                self._aside(self._answer(one.incoming.query))
        return after

    async def _begin(self) -> None:
        """Make ourselves known; a webhook that stands would forbid polling."""
        await self._bot.initialize()
        await self._bot.delete_webhook()
        if self._commands:
            await self._bot.set_my_commands(self._commands)

    async def _stored_offset(self) -> int:
        return int(await asyncio.to_thread(self._store.cursor, self._cursor_name) or 0)

    def _understood(self, update: Update, now: datetime) -> Received | WithFile | InGroup | None:
        """Translate; what we fail on is passed over, since it would come again and hold up everybody."""
        try:
            return translate(update, self._bot.id, now)
        except Exception:  # noqa: BLE001 one odd update must not stop the rest
            _log.exception("update %d is not understood, and is passed over", update.update_id)
            return None

    @property
    def _cursor_name(self) -> str:
        return f"{PLATFORM}:{self._bot.id}"

    async def _whole(self, document: WithFile) -> Received:
        """Return the document with what it says, or with the fault that it could not be had."""
        incoming = Document(name=document.name, fault="not fetched")
        for tries_left in reversed(range(FETCH_TRIES)):
            try:
                file = await self._bot.get_file(document.file_id)
                incoming = read_document(document.name, bytes(await file.download_as_bytearray()))
                break
            except BadRequest as error:
                _log.warning("a file cannot be had: %s", error)
                break
            except TelegramError as error:
                _log.warning("fetching a file failed, %d tries left: %s", tries_left, error)
                if tries_left:
                    await asyncio.sleep(FETCH_PAUSE_SECONDS)
        before = document.received
        return Received(before.source, before.key, before.chat, before.at, incoming)

    async def _leave(self, group: int) -> None:
        if self._farewell:
            await self._bot.send_message(group, self._farewell)
        await self._bot.leave_chat(group)

    async def _answer(self, query: str) -> None:
        """Stop the waiting sign on a pressed button; the server wants this within seconds, or not at all."""
        await self._bot.answer_callback_query(query)

    def _aside(self, work: Coroutine[Any, Any, None]) -> None:
        """Do a courtesy on the side; where it fails, nothing is lost."""

        async def courtesy() -> None:
            try:
                await work
            except TelegramError as error:
                _log.info("a courtesy failed: %s", error)

        task = asyncio.create_task(courtesy())
        self._asides.add(task)
        task.add_done_callback(self._asides.discard)

    async def _insist(self, step: Callable[[], Awaitable[T]]) -> T:
        """Do a step until it succeeds, with growing pauses. Raises TokenRefusedError."""
        pause_seconds = 0.5
        while True:
            pause_seconds = min(pause_seconds * 2, LONGEST_PAUSE_SECONDS)
            try:
                return await step()
            except InvalidToken:
                raise TokenRefusedError from None  # its words, and its cause's, hold the token
            except Conflict as error:
                _log.error("another copy of this bot is polling with the same token; only one may: %s", error)
                await asyncio.sleep(CONFLICT_PAUSE_SECONDS)
            except RetryAfter as error:
                await asyncio.sleep(wait_seconds(error))
            except TelegramError as error:
                _log.warning("no word from Telegram (%s), next try in %.0f s", error, pause_seconds)
                await asyncio.sleep(pause_seconds)
            except DatabaseTrouble as trouble:  # nothing is acknowledged, so nothing is lost
                _log.error("updates cannot be stored (%s), next try in %.0f s", trouble.why, pause_seconds)
                await asyncio.sleep(pause_seconds)


async def _to_its_end(unit: Coroutine[Any, Any, None]) -> None:
    """Run `unit` whole, even where the caller is cancelled meanwhile."""
    task = asyncio.ensure_future(unit)
    try:
        await asyncio.shield(task)
    except asyncio.CancelledError:
        await asyncio.wait([task])
        raise
