"""Updates into the inbox, whichever way they come: understood, made whole, stored, and then acknowledged.

Nothing is acknowledged here. Whoever brings updates may do so once `take` has returned, and not before.
"""

import asyncio
import logging
from collections.abc import Callable, Coroutine, Sequence
from datetime import datetime
from functools import partial
from typing import Any, Final

from telegram import Bot, Update
from telegram.error import BadRequest, TelegramError

from bot.faults import told
from bot.telegram.errors import named
from bot.telegram.incoming import InGroup, WithFile, translate
from bot.textfile import read_document
from domain.incoming import Document, Pressed
from persistence.faults import StoreFault
from persistence.inbox import Received
from persistence.readers import Reader
from persistence.store import Store

FETCH_TRIES: Final = 3
FETCH_PAUSE_SECONDS: Final = 1.0

Cursor = tuple[str, str]
"""How far the platform was read: a name and a value."""

_log = logging.getLogger(__name__)


class Intake:
    """The way into one store for the updates of one bot.

    `on_received` is called after each commit that brought something new. `farewell` is said in a group that
    the bot is brought into, before it leaves. `clock` gives the moment, aware.
    """

    def __init__(
        self,
        bot: Bot,
        store: Store,
        clock: Callable[[], datetime],
        on_received: Callable[[], None],
        farewell: str = "",
    ) -> None:
        self._bot = bot
        self._store = store
        self._clock = clock
        self._on_received = on_received
        self._farewell = farewell
        self._asides: set[asyncio.Task[None]] = set()

    async def take(
        self, updates: Sequence[Update], cursor: Cursor | None = None, reader: Reader | None = None
    ) -> None:
        """Store what is new, and how far was read. Raises DatabaseTrouble, after which all may come again.

        Where a `reader` is named, it has to be the one still: otherwise raises ReaderLost.
        """
        now = self._clock()
        found = [self._understood(update, now) for update in updates]
        received = [
            await self._whole(one) if isinstance(one, WithFile) else one
            for one in found
            if isinstance(one, Received | WithFile)
        ]
        await self._stored(received, cursor, reader)
        if received:
            self._on_received()
        for group in {one.chat for one in found if isinstance(one, InGroup)}:
            self._aside(self._leave(group))
        for one in received:
            if isinstance(one.incoming, Pressed):
                self._aside(self._answer(one.incoming.query))

    def stop(self) -> None:
        """Let the courtesies be that are still under way."""
        for aside in self._asides:
            aside.cancel()

    def _understood(self, update: Update, now: datetime) -> Received | WithFile | InGroup | None:
        """Translate; what we fail on is passed over, since it would come again and hold up everybody."""
        try:
            return translate(update, self._bot.id, now)
        except Exception as error:  # noqa: BLE001 one odd update must not stop the rest
            _log.error("update %d is not understood, and is passed over: %s", update.update_id, told(error))
            return None

    async def _stored(
        self, received: Sequence[Received], cursor: Cursor | None, reader: Reader | None
    ) -> None:
        """Store all; where the database refuses one for what it is, the others all the same."""
        store = self._store.receive
        try:
            await _to_its_end(store, received, cursor, reader)
            return
        except StoreFault:
            raise
        except Exception as error:  # noqa: BLE001 it would come again and again, and hold up everybody
            _log.error("%d updates cannot be stored together: %s", len(received), told(error))
        for one in received:
            try:
                await _to_its_end(store, [one], None, reader)
            except StoreFault:
                raise
            except Exception as error:  # noqa: BLE001 one that cannot be stored must not hold up the rest
                _log.error("an update cannot be stored, and is passed over: %s", told(error))
        await _to_its_end(store, [], cursor, reader)

    async def _whole(self, document: WithFile) -> Received:
        """Return the document with what it says, or with the fault that it could not be had."""
        incoming = Document(name=document.name, fault="not fetched")
        for tries_left in reversed(range(FETCH_TRIES)):
            try:
                file = await self._bot.get_file(document.file_id)
                incoming = read_document(document.name, bytes(await file.download_as_bytearray()))
                break
            except BadRequest as error:
                _log.warning("a file cannot be had: %s", named(error))
                break
            except TelegramError as error:
                _log.warning("fetching a file failed, %d tries left: %s", tries_left, named(error))
                if tries_left:
                    await asyncio.sleep(FETCH_PAUSE_SECONDS)
            except Exception as error:  # noqa: BLE001 an answer of another shape, and its words stay unsaid
                _log.warning("a file cannot be had: %s", told(error))
                break
        before = document.received
        sent = before.incoming
        if isinstance(sent, Document):
            incoming = incoming.model_copy(update={"caption": sent.caption})
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
                _log.info("a courtesy failed: %s", named(error))
            except Exception as error:  # noqa: BLE001 an answer of another shape is no reason to stop
                _log.info("a courtesy failed: %s", told(error))

        task = asyncio.create_task(courtesy())
        self._asides.add(task)
        task.add_done_callback(self._asides.discard)


async def _to_its_end(unit: Callable[..., None], *facts: object) -> None:
    """Run a unit of work whole in a thread, even where the caller is cancelled meanwhile."""
    task = asyncio.ensure_future(asyncio.to_thread(partial(unit, *facts)))
    try:
        await asyncio.shield(task)
    except asyncio.CancelledError:
        await asyncio.wait([task])
        raise
