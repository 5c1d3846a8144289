"""What somebody sees when something goes wrong: the page is cut off, begins afresh elsewhere, or is empty."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from playwright.async_api import Browser, expect

from bot.commands.database import passing
from bot.page.scenes import Scene
from bot.page.serving import LOOPBACK, page
from bot.play.script import Script, Step
from bot.wording.page import NO_SUCH_PLACE
from tests.page.desk import FIRST_DAY, FIRST_MOMENT, Desk, looked_at, served

pytestmark = pytest.mark.asyncio(loop_scope="session")


class Line:
    """The line between a browser and a page, which can be cut and mended."""

    def __init__(self, page_port: int) -> None:
        self.port = 0
        self._page_port = page_port
        self._server: asyncio.Server | None = None
        self._ends: set[asyncio.StreamWriter] = set()

    async def mend(self) -> None:
        self._server = await asyncio.start_server(self._join, LOOPBACK, self.port)
        self.port = self._server.sockets[0].getsockname()[1]

    async def cut(self) -> None:
        assert self._server is not None
        self._server.close()
        for end in list(self._ends):
            end.transport.abort()
        await self._server.wait_closed()

    async def _join(self, here: asyncio.StreamReader, back: asyncio.StreamWriter) -> None:
        there, on = await asyncio.open_connection(LOOPBACK, self._page_port)
        self._ends |= {back, on}
        try:
            async with asyncio.TaskGroup() as both:
                both.create_task(_carry(here, on))
                both.create_task(_carry(there, back))
        finally:
            self._ends -= {back, on}


async def _carry(source: asyncio.StreamReader, to: asyncio.StreamWriter) -> None:
    try:
        while content := await source.read(65536):
            to.write(content)
            await to.drain()
    except ConnectionError:
        pass  # the line was cut
    to.close()


@asynccontextmanager
async def line_to(page_port: int) -> AsyncIterator[Line]:
    line = Line(page_port)
    await line.mend()
    try:
        yield line
    finally:
        await line.cut()


async def test_a_page_that_is_cut_off_says_so_keeps_what_was_typed_and_goes_on_by_itself(
    browser: Browser,
) -> None:
    async with page((FIRST_DAY,)) as (address, guard, live):
        await live.begun()
        async with line_to(address.port) as line:
            guard.port = line.port
            async with looked_at(browser, f"http://{LOOPBACK}:{line.port}{guard.path}") as desk:
                note = desk.tab.get_by_role("status")
                await line.cut()
                await expect(note).to_contain_text("Nothing comes from the bot any more.")
                await desk.left.text.fill("squat 60x6")
                await desk.left.text.press("Enter")
                await expect(desk.left.root.get_by_role("alert")).to_contain_text("what is typed here stays")
                await expect(desk.left.text).to_have_value("squat 60x6")
                await live.say("local:Adaeze", "my left knee hurts", None)
                await line.mend()
                await expect(desk.left.last()).to_contain_text("your left knee hurts")
                await expect(desk.right.last()).to_contain_text("Adaeze has pain")
                await expect(note).to_have_text("")
                await desk.left.text.press("Enter")
                await expect(desk.left.last()).to_contain_text("Back squat")
                await expect(desk.left.root.get_by_role("alert")).to_have_text("")


async def test_an_address_of_before_says_kindly_where_the_new_one_is(browser: Browser, url: str) -> None:
    tab = await browser.new_page()
    host, secret = url.rstrip("/").rsplit("/", 1)
    await tab.goto(f"{host}/{'A' * len(secret)}/")
    assert await tab.inner_text("body") == NO_SUCH_PLACE
    await tab.close()


async def test_a_scene_begun_afresh_in_another_window_is_so_in_this_one_with_the_same_people(
    desk: Desk,
) -> None:
    await desk.left.become("Dana")
    said = await desk.left.entries.all_inner_texts()
    await desk.left.say("my left knee hurts")
    await desk.left.text.fill("half typed")
    async with desk.another() as other:
        await other.tab.get_by_role("button", name="Start afresh").click()
        await expect(desk.left.entries).to_have_count(len(said))
        assert await desk.left.entries.all_inner_texts() == said
        await expect(desk.left.root).to_have_attribute("aria-label", "Phone of Dana")
        await expect(desk.left.text).to_have_value("half typed")
        await expect(desk.tab.locator("#unread button")).to_have_count(0)
        assert other.faults == []


async def test_where_nobody_is_yet_somebody_new_can_still_be_tried(browser: Browser) -> None:
    nobody = Scene("Nobody yet", passing, lambda: Script((Step(0, FIRST_MOMENT),), None, Path()))
    async with served(nobody) as empty:
        desk = Desk(await browser.new_page(), empty.url)
        await desk.tab.goto(empty.url)
        await desk.left.root.locator(".who").select_option(label="Somebody new…")
        await expect(desk.left.root).to_have_attribute("aria-label", "Phone of Somebody new")
        await desk.left.text.fill("hello")
        await desk.left.text.press("Enter")
        await expect(desk.left.last()).to_contain_text("invit")
        assert desk.faults == []
        await desk.tab.close()
