"""The running bot: what comes in is stored, the desk decides, delivery sends, and a clock ticks.

APScheduler ticks once a second; all that is due stands in the database, so a tick that is lost loses nothing.
What has just come in does not wait for the tick. A step that has begun is always finished: stopping drains.
"""

import asyncio
import contextlib
import logging
import signal
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime

from apscheduler.schedulers.asyncio import AsyncIOScheduler

from bot.delivery import Delivery
from bot.desk import Desk
from bot.enclosing import made
from bot.telegram.connection import Connection, closing
from bot.telegram.incoming import PLATFORM
from bot.telegram.polling import Polling
from bot.telegram.sending import TelegramSender
from bot.wording.menu import FAREWELL, MENU
from persistence.faults import DatabaseTrouble
from persistence.store import Store

TICK_SECONDS = 1
DRAIN_SECONDS = 8.0
SENDERS = 4
"""How many chats are sent into at once, so that a slow one holds up few others."""

log = logging.getLogger(__name__)


def utc_now() -> datetime:
    """Return the moment, aware and in UTC: the one place that looks at the machine's clock."""
    return datetime.now(UTC)


async def serve(store: Store, bot: Connection) -> None:
    """Run on Telegram until SIGTERM or SIGINT. Raises TokenRefusedError."""
    deciding, sending = asyncio.Event(), tuple(asyncio.Event() for _ in range(SENDERS))
    desk = Desk(store)
    delivery = Delivery(store, TelegramSender(bot), platform=PLATFORM, clock=utc_now, enclose=made(store))
    polling = Polling(bot, store, deciding.set, FAREWELL, MENU)

    async def decide() -> None:
        if await asyncio.to_thread(desk.clear, utc_now()):
            wake_senders()

    async def send() -> None:
        await delivery.clear()

    def wake_senders() -> None:
        for each in sending:
            each.set()

    def tick() -> None:
        deciding.set()
        wake_senders()

    clock = AsyncIOScheduler(timezone=UTC)
    clock.add_job(tick, "interval", seconds=TICK_SECONDS, coalesce=True, misfire_grace_time=None)
    stopping = asyncio.Event()
    for each in (signal.SIGTERM, signal.SIGINT):
        asyncio.get_running_loop().add_signal_handler(each, stopping.set)

    await asyncio.to_thread(store.take_over)
    async with closing(bot):  # polling opens it, and waits where there is no network yet
        clock.start()
        poll = asyncio.create_task(polling.run())
        work = asyncio.create_task(
            _all(
                _whenever(deciding, decide, stopping),
                *(_whenever(each, send, stopping) for each in sending),
            )
        )
        halt = asyncio.create_task(_all(stopping.wait()))
        try:
            done, _ = await asyncio.wait({poll, work, halt}, return_when=asyncio.FIRST_COMPLETED)
        finally:
            stopping.set()
            tick()
            clock.shutdown(wait=False)
            poll.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await asyncio.gather(poll, return_exceptions=True)
            await asyncio.wait({work}, timeout=DRAIN_SECONDS)
        for task in done:
            task.result()


async def _all(*steps: Awaitable[object]) -> None:
    await asyncio.gather(*steps)


async def _whenever(
    event: asyncio.Event, step: Callable[[], Awaitable[None]], stopping: asyncio.Event
) -> None:
    """Do `step` each time `event` is set, until stopping; a database that is away is tried again."""
    while not stopping.is_set():
        await event.wait()
        event.clear()
        try:
            await step()
        except DatabaseTrouble as fault:
            log.warning("the database is away: %s", fault.why)
