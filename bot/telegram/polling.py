"""One way in from Telegram: get updates, store them, commit, and only then ask beyond them.

The server forgets an update once it is asked for what lies beyond it, so nothing is lost wherever this stops;
what is fetched twice is stored once, by its key. How far it got stands in the database, in the same
transaction as what was stored.

Of many workers one polls, under a lease that it renews; where it dies, another one takes over.
"""

import asyncio
import contextlib
import logging
from collections.abc import Awaitable, Callable, Sequence
from datetime import datetime
from functools import partial
from typing import Final, TypeVar

from telegram import Bot
from telegram.error import Conflict, InvalidToken, RetryAfter, TelegramError

from bot.faults import told
from bot.telegram.errors import named, wait_seconds
from bot.telegram.incoming import KINDS_OF_UPDATE, PLATFORM
from bot.telegram.intake import Intake
from persistence.faults import DatabaseTrouble, ReaderLost
from persistence.readers import Reader
from persistence.store import Store

LONG_POLL_SECONDS: Final = 30
LONGEST_PAUSE_SECONDS: Final = 30.0
CONFLICT_PAUSE_SECONDS: Final = 5.0
LEASE_SECONDS: Final = 6.0
"""How long a lost poller is waited for; a living one renews its lease three times as often."""
LEASE_SECONDS_ALONE: Final = 300.0
"""The same where there are no others: whoever starts then ends all leases."""

_log = logging.getLogger(__name__)

T = TypeVar("T")


class TokenRefusedError(Exception):
    """The server does not know the token. Never says which token it was."""


class Polling:
    """The polling loop of one bot, into `intake`. `commands` (name, description) stand in the chat's menu."""

    def __init__(
        self,
        bot: Bot,
        store: Store,
        intake: Intake,
        clock: Callable[[], datetime],
        commands: Sequence[tuple[str, str]] = (),
    ) -> None:
        self._bot = bot
        self._store = store
        self._intake = intake
        self._clock = clock
        self._commands = tuple(commands)
        self.heard = asyncio.Event()
        """Set once all that had waited for us is stored, or another worker polls."""
        self._lease_seconds = LEASE_SECONDS if store.is_shared else LEASE_SECONDS_ALONE

    async def run(self) -> None:
        """Poll whenever this worker is the one, until cancelled.

        Raises TokenRefusedError; every other trouble is waited out.
        """
        await insist(self._begin)
        while True:
            reader = await insist(self._claimed)
            try:
                await self._while_held(reader)
            finally:
                with contextlib.suppress(DatabaseTrouble):  # then it runs out by itself
                    await asyncio.to_thread(self._store.end_reader, reader)

    async def step(self, reader: Reader, offset: int) -> int:
        """Fetch what waits beyond `offset`, store it, and return the next offset. Raises ReaderLost."""
        seconds = LONG_POLL_SECONDS if self.heard.is_set() else 0
        updates = await self._bot.get_updates(offset=offset, timeout=seconds, allowed_updates=KINDS_OF_UPDATE)
        if not updates:
            self.heard.set()
            return offset
        after = updates[-1].update_id + 1
        await self._intake.take(updates, (self._cursor_name, str(after)), reader)
        return after

    async def _begin(self) -> None:
        """Make ourselves known; a webhook that stands would forbid polling."""
        await self._bot.initialize()
        await self._bot.delete_webhook()
        if self._commands:
            await self._bot.set_my_commands(self._commands)

    async def _claimed(self) -> Reader:
        """Wait until this worker is the one to poll."""
        claim, seconds = self._store.claim_reader, self._lease_seconds
        while True:
            reader = await asyncio.to_thread(claim, self._cursor_name, self._clock(), seconds)
            if reader is not None:
                return reader
            self.heard.set()
            await asyncio.sleep(seconds / 3)

    async def _while_held(self, reader: Reader) -> None:
        """Poll for as long as the lease is renewed. Raises TokenRefusedError."""
        tasks = [asyncio.create_task(each(reader)) for each in (self._poll, self._renew)]
        try:
            await asyncio.wait(tasks, return_when=asyncio.FIRST_COMPLETED)
        finally:
            for task in tasks:
                task.cancel()
            await asyncio.gather(*tasks, return_exceptions=True)
        for task in tasks:
            if not task.cancelled() and isinstance(task.exception(), TokenRefusedError):
                task.result()
        _log.warning("this worker polls no longer")

    async def _poll(self, reader: Reader) -> None:
        offset = await insist(self._stored_offset)
        while True:
            offset = await insist(partial(self.step, reader, offset))

    async def _renew(self, reader: Reader) -> None:
        """Renew the lease until it is lost, or may have been: a database that is away says nothing."""
        while self._clock() < reader.until:
            await asyncio.sleep(self._lease_seconds / 3)
            try:
                reader = await asyncio.to_thread(self._store.renew_reader, reader, self._clock())
            except DatabaseTrouble as trouble:
                _log.warning("whether this worker may poll on is unknown: %s", trouble.why)

    async def _stored_offset(self) -> int:
        return int(await asyncio.to_thread(self._store.cursor, self._cursor_name) or 0)

    @property
    def _cursor_name(self) -> str:
        return f"{PLATFORM}:{self._bot.id}"


async def insist(step: Callable[[], Awaitable[T]]) -> T:
    """Do a step until it succeeds, with growing pauses. Raises TokenRefusedError and ReaderLost."""
    pause_seconds = 0.5
    while True:
        pause_seconds = min(pause_seconds * 2, LONGEST_PAUSE_SECONDS)
        try:
            return await step()
        except InvalidToken:
            raise TokenRefusedError from None  # its words, and its cause's, hold the token
        except ReaderLost:  # whoever reads now is given the same updates again
            raise
        except Conflict:
            _log.error("another copy of this bot is polling with the same token; only one may")
            await asyncio.sleep(CONFLICT_PAUSE_SECONDS)
        except RetryAfter as error:
            await asyncio.sleep(wait_seconds(error))
        except TelegramError as error:
            _log.warning("no word from Telegram (%s), next try in %.0f s", named(error), pause_seconds)
            await asyncio.sleep(pause_seconds)
        except DatabaseTrouble as trouble:  # nothing is acknowledged, so nothing is lost
            _log.error("updates cannot be stored (%s), next try in %.0f s", trouble.why, pause_seconds)
            await asyncio.sleep(pause_seconds)
        except Exception as error:  # noqa: BLE001 an answer of another shape is no reason to stop
            _log.error("an answer is not understood (%s), next try in %.0f s", told(error), pause_seconds)
            await asyncio.sleep(pause_seconds)
