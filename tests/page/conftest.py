"""A browser for the session, and the page in it. All of it runs on the session's own loop, as tests do."""

from collections.abc import AsyncIterator

import pytest
import pytest_asyncio
from playwright.async_api import Browser

from tests.browser import find_browser
from tests.conftest import IN_CI, NO_BROWSER
from tests.page.desk import WIDE, Desk, Served, looked_at, served
from tests.page.looking import running


@pytest_asyncio.fixture(scope="session", loop_scope="session")
async def browser() -> AsyncIterator[Browser]:
    """The browser; without one the test is left out, or fails in CI."""
    program = find_browser()
    if program is None:
        if IN_CI:
            pytest.fail("no Chromium can be had here, and CI must test the page with it")
        pytest.skip(NO_BROWSER)
    async with running(program) as started:
        yield started


@pytest_asyncio.fixture(scope="session", loop_scope="session")
async def first_day() -> AsyncIterator[Served]:
    """The page on the first day; each test begins it afresh."""
    async with served() as page:
        yield page


@pytest_asyncio.fixture(loop_scope="session")
async def url(first_day: Served) -> str:
    """The address of the page on a fresh first day."""
    await first_day.begin_afresh()
    return first_day.url


@pytest_asyncio.fixture(scope="session", loop_scope="session")
async def window(browser: Browser, first_day: Served) -> AsyncIterator[Desk]:
    """A wide window that the tests have one after the other."""
    async with looked_at(browser, first_day.url) as opened:
        await opened.leave()
        yield opened


@pytest_asyncio.fixture(loop_scope="session")
async def desk(window: Desk, url: str) -> AsyncIterator[Desk]:
    """The page on a fresh first day, in a wide window of a browser that has not seen it.

    Whatever the browser finds to complain of fails the test.
    """
    assert url == window.url
    window.faults.clear()
    await window.open()
    yield window
    await window.leave()
    await window.resize(WIDE)
    await window.tab.emulate_media(color_scheme="light")
    assert window.faults == []
