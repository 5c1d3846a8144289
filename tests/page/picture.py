"""The README's picture of the page, taken anew: `python -m tests.page.picture` writes `demo/page.png`.

A day of Adaeze's is typed in a real browser, as somebody would who tries the page.
"""

import asyncio
import sys
from pathlib import Path

from playwright.async_api import Page

from bot.page.scenes import scenes
from bot.page.serving import page
from tests.browser import find_browser
from tests.conftest import NO_BROWSER
from tests.page.looking import running
from tests.test_project import ROOT

SIZE = (1240, 780)
TYPED = ("squat 60x6", "bench 40 for 7", "dips 5 but my left shoulder hurts, 4 out of 10")


async def take(program: Path, to: Path) -> None:
    """Type what is typed, open what lies behind the last message, and take the picture."""
    nobody = "sqlite:////no/such/database.sqlite3"
    async with page(scenes(nobody, None)) as (address, guard, live), running(program) as browser:
        await live.begun()
        width, height = SIZE
        tab = await browser.new_page(viewport={"width": width, "height": height}, color_scheme="light")
        await tab.goto(f"http://{address}{guard.path}")
        for count, text in enumerate(TYPED, start=1):
            await type_in(tab, text)
            await tab.locator("[data-phone='0'] .entry.bot").nth(count).wait_for()
        await tab.locator("[data-phone='0'] .entry.me .more").last.click()
        await tab.locator("[data-phone='0'] .behind dl").wait_for()
        await tab.locator("[data-phone='1'] .entry").first.wait_for()
        await tab.locator("[data-phone='0'] .entry.me").last.evaluate("item => item.scrollIntoView()")
        await tab.screenshot(path=to)


async def type_in(tab: Page, text: str) -> None:
    """Type on the first phone, and send it."""
    field = tab.locator("[data-phone='0'] textarea")
    await field.fill(text)
    await field.press("Enter")


def main() -> int:
    """Take the picture; return the exit status."""
    program = find_browser()
    if program is None:
        print(NO_BROWSER, file=sys.stderr)
        return 1
    asyncio.run(take(program, ROOT / "demo" / "page.png"))
    return 0


if __name__ == "__main__":
    sys.exit(main())
