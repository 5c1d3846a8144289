"""The running bot: what comes in is stored, the desk decides, delivery sends, and a clock ticks.

All that is due stands in the database, so a tick that is lost loses nothing. What has just come in does not
wait for the tick. A step that has begun is always finished: stopping drains.
"""

import asyncio
import contextlib
import gc
import logging
import signal
from collections.abc import Awaitable, Callable
from contextlib import AsyncExitStack
from datetime import timedelta
from typing import TYPE_CHECKING

from bot.clock import Clock, clock_of
from bot.delivery import Delivery
from bot.desk import Desk
from bot.enclosing import made
from bot.faults import told
from bot.telegram.connection import Connection, closing
from bot.telegram.incoming import PLATFORM
from bot.telegram.intake import Intake
from bot.telegram.polling import Polling
from bot.telegram.posting import Posting
from bot.telegram.sending import PACE, TelegramSender
from bot.ticking import TICK_SECONDS, Ticking
from bot.web.address import Address
from bot.wording.menu import FAREWELL, MENU
from persistence.faults import DatabaseTrouble
from persistence.store import Store

if TYPE_CHECKING:
    from bot.telegram.webhook import Webhook
    from bot.web.figures import Figures

DRAIN_SECONDS = 8.0
SENDERS = 4
"""How many chats are sent into at once, so that a slow one holds up few others."""

HEARS_FIRST_SECONDS = 10.0
"""How long at most nobody is woken after a start, so that what was written meanwhile is heard first."""

FORGET_SECONDS = 20.0
"""How often a portion of old messages is let go, where they are not kept for ever."""

log = logging.getLogger(__name__)


async def serve(
    store: Store,
    bot: Connection,
    posting: Posting | None = None,
    monitor: Address | None = None,
    keep_days: int | None = None,
) -> None:
    """Run on Telegram until SIGTERM or SIGINT.

    Updates are polled, or posted to us where `posting` says how. Health and figures are served on `monitor`.
    Messages are kept for `keep_days`, where that is given.
    Raises TokenRefusedError, OperatorFault where nothing can listen, and DatabaseTrouble at the start.
    """
    deciding, sending = asyncio.Event(), tuple(asyncio.Event() for _ in range(SENDERS))
    stopping = asyncio.Event()
    clock = await asyncio.to_thread(clock_of, store)
    await asyncio.to_thread(store.take_over, clock())
    desk = Desk(store, clock)

    figures = _figures(store, clock) if monitor else None

    def wake_senders() -> None:
        for each in sending:
            each.set()

    delivery = Delivery(
        store,
        TelegramSender(bot),
        platform=PLATFORM,
        pace=PACE,
        clock=clock,
        enclose=made(store),
        watcher=figures.sent if figures else None,
        on_claimed=wake_senders,
    )
    intake = Intake(bot, store, clock, deciding.set, FAREWELL)
    way_in = _posted(bot, intake, posting) if posting else Polling(bot, store, intake, clock, MENU)

    async def decide() -> None:
        if await asyncio.to_thread(desk.clear):
            wake_senders()

    async def send() -> None:
        await delivery.clear()
        if delivery.room_at is not None:
            wait = (delivery.room_at - clock()).total_seconds()
            asyncio.get_running_loop().call_later(wait, sending[0].set)

    loop = asyncio.get_running_loop()
    heard_by = loop.time() + HEARS_FIRST_SECONDS

    async def tick() -> None:
        # A webhook is not told how much still waits, so nothing waits for it.
        if not isinstance(way_in, Polling) or way_in.heard.is_set() or loop.time() > heard_by:
            deciding.set()
        sending[0].set()  # who finds something wakes the others

    ticking = Ticking(tick)

    async def look_at_ticks() -> None:
        ticking.catch_up()

    async def look_at_clock() -> None:
        if await asyncio.to_thread(clock.look):
            log.warning("the clock was set back: nothing waits for the time that it was")
            await asyncio.to_thread(store.clock_was_set_back, clock())

    async def forget() -> None:
        if keep_days is not None:
            await asyncio.to_thread(store.forget_words, clock() - timedelta(days=keep_days))

    for each in (signal.SIGTERM, signal.SIGINT):
        asyncio.get_running_loop().add_signal_handler(each, stopping.set)
    # What is loaded by now stays for good; going through it at each collection took a fifth of the time.
    gc.collect()
    gc.freeze()
    log.info("serving")

    async with AsyncExitStack() as stack:
        await stack.enter_async_context(closing(bot))  # the way in opens it, and waits for the network
        if monitor is not None and figures is not None:
            from bot.web.server import listening  # noqa: PLC0415 - as what follows here

            stack.enter_context(figures.counting_log())
            address = await stack.enter_async_context(listening(figures.application, monitor))
            log.info("health and figures on %s", address)
        ticking.start()
        poll = asyncio.create_task(way_in.run())
        work = asyncio.create_task(
            _all(
                _whenever(deciding, decide, stopping),
                *(_whenever(each, send, stopping) for each in sending),
                _every(TICK_SECONDS, look_at_ticks, stopping),
                _every(clock.look_seconds, look_at_clock, stopping),
                _every(FORGET_SECONDS, forget, stopping),
            )
        )
        halt = asyncio.create_task(_all(stopping.wait()))
        try:
            done, _ = await asyncio.wait({poll, work, halt}, return_when=asyncio.FIRST_COMPLETED)
        finally:
            stopping.set()
            ticking.stop()
            desk.stop()
            delivery.stop()
            deciding.set()
            wake_senders()
            poll.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await asyncio.gather(poll, return_exceptions=True)
            intake.stop()
            await asyncio.wait({work}, timeout=DRAIN_SECONDS)
        for task in done:
            task.result()


# What listens is some megabytes that a bot which only asks has no use for.


def _figures(store: Store, clock: Clock) -> "Figures":
    from bot.web.figures import Figures  # noqa: PLC0415

    return Figures(store, clock)


def _posted(bot: Connection, intake: Intake, posting: Posting) -> "Webhook":
    from bot.telegram.webhook import Webhook  # noqa: PLC0415

    return Webhook(bot, intake, posting, MENU)


async def _all(*steps: Awaitable[object]) -> None:
    await asyncio.gather(*steps)


async def _whenever(
    event: asyncio.Event, step: Callable[[], Awaitable[None]], stopping: asyncio.Event
) -> None:
    """Do `step` each time `event` is set, until stopping."""
    while not stopping.is_set():
        await event.wait()
        event.clear()
        await _outlived(step)


async def _every(seconds: float, step: Callable[[], Awaitable[None]], stopping: asyncio.Event) -> None:
    """Do `step` each `seconds`, until stopping."""
    while not stopping.is_set():
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(seconds):
                await stopping.wait()
        await _outlived(step)


async def _outlived(step: Callable[[], Awaitable[None]]) -> None:
    """Do `step`; what it fails on is left for the next time, and never ends the bot."""
    try:
        await step()
    except DatabaseTrouble as fault:
        log.warning("the database is away: %s", fault.why)
    except Exception as error:  # noqa: BLE001 what nobody has thought of must not silence everybody
        log.error("a step failed: %s", told(error))
