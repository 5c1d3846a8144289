"""One way in from Telegram: get updates, store them, commit, and only then ask beyond them.

The server forgets an update once it is asked for what lies beyond it, so nothing is lost wherever this stops;
what is fetched twice is stored once, by its key. How far it got stands in the database, in the same
transaction as what was stored.
"""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Sequence
from functools import partial
from typing import Final, TypeVar

from telegram import Bot
from telegram.error import Conflict, InvalidToken, RetryAfter, TelegramError

from bot.faults import told
from bot.telegram.errors import named, wait_seconds
from bot.telegram.incoming import KINDS_OF_UPDATE, PLATFORM
from bot.telegram.intake import Intake
from persistence.faults import DatabaseTrouble
from persistence.store import Store

LONG_POLL_SECONDS: Final = 30
LONGEST_PAUSE_SECONDS: Final = 30.0
CONFLICT_PAUSE_SECONDS: Final = 5.0

_log = logging.getLogger(__name__)

T = TypeVar("T")


class TokenRefusedError(Exception):
    """The server does not know the token. Never says which token it was."""


class Polling:
    """The polling loop of one bot, into `intake`. `commands` (name, description) stand in the chat's menu."""

    def __init__(
        self, bot: Bot, store: Store, intake: Intake, commands: Sequence[tuple[str, str]] = ()
    ) -> None:
        self._bot = bot
        self._store = store
        self._intake = intake
        self._commands = tuple(commands)

    async def run(self) -> None:
        """Poll until cancelled. Raises TokenRefusedError; every other trouble is waited out."""
        await insist(self._begin)
        offset = await insist(self._stored_offset)
        while True:
            offset = await insist(partial(self.step, offset))

    async def step(self, offset: int) -> int:
        """Fetch what waits beyond `offset`, store it, and return the next offset."""
        updates = await self._bot.get_updates(
            offset=offset, timeout=LONG_POLL_SECONDS, allowed_updates=KINDS_OF_UPDATE
        )
        if not updates:
            return offset
        after = updates[-1].update_id + 1
        await self._intake.take(updates, (self._cursor_name, str(after)))
        return after

    async def _begin(self) -> None:
        """Make ourselves known; a webhook that stands would forbid polling."""
        await self._bot.initialize()
        await self._bot.delete_webhook()
        if self._commands:
            await self._bot.set_my_commands(self._commands)

    async def _stored_offset(self) -> int:
        return int(await asyncio.to_thread(self._store.cursor, self._cursor_name) or 0)

    @property
    def _cursor_name(self) -> str:
        return f"{PLATFORM}:{self._bot.id}"


async def insist(step: Callable[[], Awaitable[T]]) -> T:
    """Do a step until it succeeds, with growing pauses. Raises TokenRefusedError."""
    pause_seconds = 0.5
    while True:
        pause_seconds = min(pause_seconds * 2, LONGEST_PAUSE_SECONDS)
        try:
            return await step()
        except InvalidToken:
            raise TokenRefusedError from None  # its words, and its cause's, hold the token
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
