"""A browser for the session. Whatever it shows runs on the session's own loop, and so do the tests here."""

from collections.abc import AsyncIterator

import pytest
import pytest_asyncio
from playwright.async_api import Browser

from tests.browser import find_browser
from tests.conftest import IN_CI, NO_BROWSER
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
