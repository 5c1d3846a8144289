"""The browser of the tests itself: it shows what it is given, and what is wrong with a page is found."""

import pytest
from playwright.async_api import Browser, expect

from tests.page.looking import violations

pytestmark = pytest.mark.asyncio(loop_scope="session")

GOOD = "<!doctype html><html lang='en'><title>Page</title><main><h1>Today</h1><p>{}</p></main></html>"


KEEPS_OUT = {
    "Two sets of squats.": set[str](),
    "<img src='data:,'>": {"image-alt"},
    "<span style='color:#999;background:#fff'>hardly to be read</span>": {"color-contrast"},
    "<button></button>": {"button-name"},
}


async def test_the_checker_finds_what_keeps_people_out(browser: Browser) -> None:
    page = await browser.new_page()
    for body, found in KEEPS_OUT.items():
        await page.set_content(GOOD.format(body))
        await expect(page.locator("h1")).to_be_visible()
        assert {line.split(":")[0] for line in await violations(page)} == found, body
    await page.close()
