"""A desk with two phones as somebody has it: a tab of the browser on the page, and ways to use it.

Everything is found as a person finds it, by what it is called or by its words; each step waits for what is to
be seen and never for time.
"""

import asyncio
import atexit
import shutil
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Literal

import httpx
from playwright.async_api import Browser, BrowserContext, Locator, Page, expect

from bot.commands.database import opened
from bot.page.live import Live
from bot.page.scenes import Scene
from bot.page.serving import page
from bot.play.script import Script, Step
from bot.roster import read_roster
from bot.stage import Stage
from persistence.store import Store
from tests import loopback
from tests.test_project import ROOT

WIDE = (1280, 800)
NARROW = (390, 844)

FIRST_MOMENT = datetime(2026, 3, 2, 15, 30, tzinfo=UTC)


@cache
def first_day_file() -> Path:
    """Return a database of the demo's people on their first day of training, made once and only copied."""
    folder = TemporaryDirectory(prefix="kilopost-tests-")
    atexit.register(folder.cleanup)
    file = Path(folder.name) / "first-day.sqlite3"
    with opened(f"sqlite:///{file}", durable=False) as store:
        store.load_roster(read_roster(ROOT / "demo" / "roster.json"), FIRST_MOMENT)
        asyncio.run(Stage(store, FIRST_MOMENT, lambda *_: None).settle())
    return file


@contextmanager
def first_day() -> Iterator[Store]:
    """Open a copy of it."""
    with TemporaryDirectory(prefix="kilopost-tests-") as folder:
        copy = shutil.copy(first_day_file(), folder)
        with opened(f"sqlite:///{copy}", durable=False) as store:
            yield store


FIRST_DAY = Scene("The first day", first_day, lambda: Script((Step(0, FIRST_MOMENT),), None, ROOT / "demo"))
"""Adaeze and her coach Marit, on the first day of training, before anything was said back."""


# A slow machine is no failure.
expect.set_options(timeout=60_000)


class Phone:
    """One of the phones on a tab."""

    def __init__(self, tab: Page, place: int) -> None:
        self.tab = tab
        self.root = tab.locator(f".phone[data-phone='{place}']")
        self.entries = self.root.locator(".entry")
        self.text = self.root.get_by_role("textbox")

    async def say(self, words: str) -> None:
        """Type something and send it; it stands there when this returns."""
        before = await self.entries.count()
        await self.text.fill(words)
        await self.text.press("Enter")
        await expect(self.text).to_have_value("")
        await expect(self.entries.nth(before)).to_be_attached()

    def last(self, by: Literal["me", "bot"] = "bot") -> Locator:
        return self.root.locator(f".entry.{by}").last

    def with_words(self, words: str) -> Locator:
        return self.entries.filter(has_text=words).last

    async def press(self, label: str) -> None:
        """Press a button under the latest message that has it."""
        await self.root.locator("[data-press]").filter(has_text=label).last.click()

    async def turn_to(self, deed: Literal["Reply", "Edit"], entry: Locator) -> None:
        """Touch a message's time, and choose what to do with it."""
        await entry.locator(".more").click()
        await entry.get_by_role("button", name=deed).click()

    async def become(self, name: str) -> None:
        """Hold the phone of somebody else."""
        await self.root.locator(".who").select_option(label=name)
        await expect(self.root).to_have_attribute("aria-label", f"Phone of {name}")


class Desk:
    """A tab on the page, whose address is `url`; `left` is the client's phone and `right` the coach's."""

    def __init__(self, tab: Page, url: str) -> None:
        self.tab = tab
        self.url = url
        self.left = Phone(tab, 0)
        self.right = Phone(tab, 1)
        self.now = tab.locator("#now")
        self.faults: list[str] = []
        tab.on("pageerror", lambda error: self.faults.append(str(error)))
        tab.on("console", self._note)

    def _note(self, message: Any) -> None:
        if message.type in {"error", "warning"}:
            self.faults.append(message.text)

    async def open(self) -> None:
        """Open the page, and wait until the people and what was said are there."""
        await self.tab.goto(self.url)
        await expect(self.now).to_contain_text("20")
        await expect(self.right.root.locator(".who")).to_have_value("local:Marit")
        await expect(self.left.entries.first).to_be_attached()

    async def leaps(self, name: str) -> None:
        """Let time pass by one of the clock's buttons, until what it brings is there."""
        async with self.tab.expect_response(lambda answer: answer.url.endswith("/leap")) as answer:
            await self.tab.get_by_role("button", name=name, exact=True).click()
        assert (await answer.value).ok

    async def moment(self) -> str:
        """Return the moment on the page's clock, as the server tells it."""
        return await self.now.get_attribute("datetime") or ""

    async def resize(self, size: tuple[int, int]) -> None:
        """Make the window that wide and high."""
        width, height = size
        await self.tab.set_viewport_size({"width": width, "height": height})

    @asynccontextmanager
    async def another(self, url: str | None = None) -> AsyncIterator["Desk"]:
        """Open the page, or the one at `url`, in another tab of the same browser."""
        other = Desk(await self.tab.context.new_page(), self.url if url is None else url)
        try:
            await other.open()
            yield other
        finally:
            await other.tab.close()

    async def leave(self) -> None:
        """Leave the page, and let the browser forget what it keeps of it."""
        await self.tab.evaluate("addEventListener('pagehide', () => sessionStorage.clear())")
        await self.tab.goto("about:blank")


class Served:
    """The page as it is served at `url`."""

    def __init__(self, url: str, live: Live, client: httpx.AsyncClient) -> None:
        self.url = url
        self._live = live
        self._client = client

    async def begin_afresh(self) -> None:
        """Begin the scene afresh, as a press on the page's button does; the clock stands still."""
        origin = {"Origin": self.url.rsplit("/", 2)[0]}
        answer = await self._client.post(f"{self.url}begin", json={"scene": 0}, headers=origin)
        assert answer.status_code == 200
        await self._live.begun()


@asynccontextmanager
async def served(scene: Scene = FIRST_DAY) -> AsyncIterator[Served]:
    """Serve the page on a scene while the block lasts."""
    # A connection kept for the next test may just be closed by the server as it is used again.
    fresh = httpx.Limits(max_keepalive_connections=0)
    async with (
        page((scene,)) as (address, guard, live),
        loopback.client(timeout=60, limits=fresh) as client,
    ):
        await live.begun()
        yield Served(f"http://{address}{guard.path}", live, client)


@asynccontextmanager
async def looked_at(browser: Browser, url: str) -> AsyncIterator[Desk]:
    """Open the page in a wide window of its own."""
    width, height = WIDE
    context: BrowserContext = await browser.new_context(
        viewport={"width": width, "height": height}, color_scheme="light", reduced_motion="reduce"
    )
    try:
        desk = Desk(await context.new_page(), url)
        await desk.open()
        yield desk
    finally:
        await context.close()
