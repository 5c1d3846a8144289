"""The page, from its first request to Ctrl+C: the scene, the clock and the server put together."""

import asyncio
import contextlib
import signal
import sys
import webbrowser
from collections.abc import AsyncIterator, Mapping, Sequence
from contextlib import asynccontextmanager

from bot.page.guard import Guard
from bot.page.live import Live
from bot.page.moving import MovingClock
from bot.page.news import News
from bot.page.routes import Routes
from bot.page.scenes import Scene
from bot.web.address import Address
from bot.web.server import listening
from bot.wording.page import opening_words

LOOPBACK = "127.0.0.1"


async def serve_page(scenes: Sequence[Scene], port: int, *, opens: bool) -> None:
    """Serve the page until SIGTERM or SIGINT; open it in a browser where it `opens`. Raises OperatorFault."""
    stopping = asyncio.Event()
    for each in (signal.SIGTERM, signal.SIGINT):
        asyncio.get_running_loop().add_signal_handler(each, stopping.set)
    async with page(scenes, port) as (address, guard, live):
        print(opening_words(f"http://{address}{guard.path}", opens=opens), flush=True)
        if opens:
            await asyncio.to_thread(webbrowser.open, f"http://{address}{guard.path_once}")
        begun, halt = asyncio.create_task(live.begun()), asyncio.create_task(stopping.wait())
        await asyncio.wait({begun, halt}, return_when=asyncio.FIRST_COMPLETED)
        if begun.done():
            begun.result()
        await halt


@asynccontextmanager
async def page(scenes: Sequence[Scene], port: int = 0) -> AsyncIterator[tuple[Address, Guard, Live]]:
    """Serve the page while the block lasts: where it is, who guards it, and what is on it."""
    news = News()
    live = Live(scenes, news)
    clock = MovingClock(live)
    guard = Guard(Routes(live, clock, news).application)
    try:
        async with listening(guard, Address(LOOPBACK, port)) as address:
            guard.port = address.port
            live.begin(live.scene)
            running = asyncio.create_task(clock.run())
            try:
                yield address, guard, live
            finally:
                news.close()
                running.cancel()
                with contextlib.suppress(asyncio.CancelledError):
                    await running
    finally:
        await live.close()


def has_browser(environment: Mapping[str, str]) -> bool:
    """Return whether there is a browser with windows: one of text would take the terminal away."""
    has_windows = sys.platform in {"darwin", "win32"} or bool(
        {"DISPLAY", "WAYLAND_DISPLAY"} & {name for name, value in environment.items() if value}
    )
    if not has_windows:
        return False
    try:
        webbrowser.get()
    except webbrowser.Error:
        return False
    return True
