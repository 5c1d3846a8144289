"""`python -m tests.bench.page`: how soon the page is seen after its start, and a message answered on it.

The page is started as anybody starts it, and looked at in the browser of the tests. Seen means the browser's
own first contentful paint (https://www.w3.org/TR/paint-timing/). The aims are a second from the address to
it, and 100 ms from the key that sends to the answer under the message. Beside each stands a plain thing of
the same run: a page of one line from such a server, the same words said at the same desk alone, and for a
chat of ten thousand messages, opened at its end, then read to its beginning and back, a chat of a few.
"""

import asyncio
import os
import re
import statistics
import sys
import time
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from playwright.async_api import Browser, Page, expect
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import Route

from bot.stage import Stage
from bot.web.address import Address
from bot.web.server import listening
from tests.browser import find_browser
from tests.page.desk import FIRST_MOMENT, Desk, first_day, first_day_file, served
from tests.page.long_past import long_past
from tests.page.looking import running
from tests.test_project import ROOT

ROUNDS = 15
MOST_SECONDS_TO_PAINT = 1.0
MOST_MILLISECONDS_TO_ANSWER = 100.0

PAINTED = """() => new Promise((resolve) => new PerformanceObserver((list) => {
  for (const each of list.getEntries()) if (each.name === "first-contentful-paint") resolve(each.startTime);
}).observe({type: "paint", buffered: true}))"""

ANSWERED = """words => new Promise((resolve) => {
  const phone = document.querySelector(".phone");
  const text = phone.querySelector("textarea");
  const newest = () => phone.querySelector(".journal").lastElementChild;
  const before = newest();
  new MutationObserver((_, watch) => {
    if (newest() === before || !newest().matches(".bot")) return;
    watch.disconnect();
    resolve(performance.now() - began);
  }).observe(phone.querySelector(".journal"), {childList: true});
  text.value = words;
  const began = performance.now();
  text.dispatchEvent(new KeyboardEvent("keydown", {key: "Enter", bubbles: true, cancelable: true}));
})"""


READ_BACK_AND_FORTH = """async () => {
  const [scroller, older] = [".scroller", ".older"].map((each) => document.querySelector(each));
  const newest = () => scroller.querySelector(".journal").lastElementChild.dataset.id;
  const end = newest();
  const to = async (place) => { scroller.scrollTop = place; await new Promise(requestAnimationFrame); };
  while (!older.hidden) await to(0);
  while (newest() !== end) await to(scroller.scrollHeight);
}"""
"""Scrolls to the beginning of the chat, and to its end: then as much stands in the page as ever does."""


def words(count: int) -> str:
    """Return the words of one round: a set that is answered with a verdict and a target."""
    return f"squat {60 + count}x6"


@asynccontextmanager
async def started() -> AsyncIterator[tuple[str, float]]:
    """Start the page as a program of its own; yield its address and the seconds until it told that."""
    environment = {**os.environ, "KILOPOST_DATABASE": "sqlite:///none-there.sqlite3"}
    began = time.perf_counter()
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "bot", "page", "--no-browser", "--scene", "demo/roster.json",
        cwd=ROOT, env=environment, stdout=asyncio.subprocess.PIPE,
    )  # fmt: skip
    try:
        assert process.stdout is not None
        async for line in process.stdout:
            found = re.search(rb"http://\S+", line)
            if found:
                yield found[0].decode(), time.perf_counter() - began
                break
    finally:
        process.terminate()
        await process.wait()


@asynccontextmanager
async def plain_page() -> AsyncIterator[str]:
    """Serve one line."""

    async def line(_request: Request) -> Response:
        return HTMLResponse("<!doctype html><title>Plain</title><p>One line.")

    async with listening(Starlette(routes=[Route("/", line)]), Address("127.0.0.1", 0)) as address:
        yield f"http://{address}/"


async def milliseconds_to_paint(tab: Page, url: str) -> float:
    """Return how long after it was asked for the first of a page was seen."""
    await tab.goto(url)
    painted: float = await tab.evaluate(PAINTED)
    return painted


async def milliseconds_at_the_desk() -> float:
    """Return how long the same words take at the desk alone, on the same people."""
    await asyncio.to_thread(first_day_file)
    with first_day() as store:
        stage = Stage(store, FIRST_MOMENT, lambda *_: None)
        times = []
        for count in range(ROUNDS + 1):
            began = time.perf_counter()
            await stage.say("Adaeze", words(count))
            times.append((time.perf_counter() - began) * 1000)
    return statistics.median(times[1:])


async def milliseconds_to_answer(tab: Page) -> list[float]:
    """Return how long each answer on the page took, without the first."""
    return [float(await tab.evaluate(ANSWERED, words(count))) for count in range(ROUNDS + 1)][1:]


async def measure_long(browser: Browser) -> None:
    """Print how long answers take in a long chat, beside a short one of the same run."""
    async with served() as short, served(long_past()) as long:
        desks = [Desk(await browser.new_page(), each.url) for each in (short, long, long)]
        for desk in desks:
            await desk.open()
        await desks[2].tab.evaluate(READ_BACK_AND_FORTH)
        medians = []
        for desk in desks:
            await expect(desk.left.entries.first).to_be_attached()
            count = await desk.left.entries.count()
            times = await milliseconds_to_answer(desk.tab)
            medians.append(statistics.median(times))
            print(
                f"with {count} messages standing: {medians[-1]:.0f} ms in the middle, "
                f"{max(times):.0f} ms at most, {medians[-1] / medians[0]:.1f} times the short chat"
            )


async def measure(browser: Browser) -> None:
    """Print what was measured."""
    async with plain_page() as plain_url, started() as (url, to_start):
        tab = await browser.new_page()
        await milliseconds_to_paint(tab, plain_url)
        plain = await milliseconds_to_paint(tab, plain_url)
        first = await milliseconds_to_paint(tab, url)
        desk = Desk(tab, url)
        await expect(desk.left.entries.first).to_be_attached()
        times = await milliseconds_to_answer(tab)
    alone = await milliseconds_at_the_desk()
    answer = statistics.median(times)
    print(f"started, and told where it is: {to_start:.1f} s")
    print(
        f"first paint: {first:.0f} ms, {first / plain:.1f} times one line from such a server ({plain:.0f} ms)"
        f"{'' if first < 1000 * MOST_SECONDS_TO_PAINT else '; too slow'}"
    )
    print(
        f"an answer on the page: {answer:.0f} ms in the middle, {max(times):.0f} ms at most, "
        f"{answer / alone:.1f} times the desk alone ({alone:.0f} ms)"
        f"{'' if answer < MOST_MILLISECONDS_TO_ANSWER else '; too slow'}"
    )


async def main() -> None:
    """Measure in the browser that is there."""
    program = find_browser()
    if program is None:
        sys.exit("no Chromium can be had here; .setup/browser brings it")
    async with running(program) as browser:
        await measure(browser)
        await measure_long(browser)


if __name__ == "__main__":
    asyncio.run(main())
