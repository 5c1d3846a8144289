"""A browser for the session, and the page in it. All of it runs on the session's own loop, as tests do."""

from collections.abc import AsyncIterator

import pytest
import pytest_asyncio
from playwright.async_api import Browser

from tests.browser import find_browser
from tests.conftest import IN_CI, NO_BROWSER
from tests.page.desk import Desk, looked_at, served
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


@pytest_asyncio.fixture(loop_scope="session")
async def url() -> AsyncIterator[str]:
    """The address of the page on a fresh first day."""
    async with served() as address:
        yield address


@pytest_asyncio.fixture(loop_scope="session")
async def desk(browser: Browser, url: str) -> AsyncIterator[Desk]:
    """A wide window on the page. Whatever the browser found to complain of fails the test."""
    async with looked_at(browser, url) as opened:
        yield opened
        assert opened.faults == []
