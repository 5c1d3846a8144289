"""The browser of the tests itself: it shows what it is given, and what is wrong with a page is found."""

import pytest
from playwright.async_api import Browser, expect

from tests.page.looking import violations

pytestmark = pytest.mark.asyncio(loop_scope="session")

GOOD = "<!doctype html><html lang='en'><title>Page</title><main><h1>Today</h1><p>{}</p></main></html>"


@pytest.mark.parametrize(
    ("body", "found"),
    [
        ("Two sets of squats.", ""),
        ("<img src='data:,'>", "image-alt"),
        ("<span style='color:#999;background:#fff'>hardly to be read</span>", "color-contrast"),
        ("<button></button>", "button-name"),
    ],
)
async def test_the_checker_finds_what_keeps_people_out(browser: Browser, body: str, found: str) -> None:
    page = await browser.new_page()
    await page.set_content(GOOD.format(body))
    await expect(page.locator("h1")).to_be_visible()
    assert {line.split(":")[0] for line in await violations(page)} == ({found} if found else set())
    await page.close()
