"""A page as the browser has it, Chromium driven by Playwright, and what is wrong with it.

Whether everybody can use a page is asked of axe-core, whose one script comes with the package
`axe-playwright-python`: it is handed over by the debugging protocol, so a page that lets no foreign script in
is checked as it is.
"""

import importlib.resources
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from functools import cache
from pathlib import Path
from typing import Any

from playwright.async_api import Browser, Page, async_playwright


@asynccontextmanager
async def running(program: Path) -> AsyncIterator[Browser]:
    """Start the browser without a window, and stop it at the end."""
    async with async_playwright() as playwright:
        browser = await playwright.chromium.launch(executable_path=program)
        try:
            yield browser
        finally:
            await browser.close()


@cache
def checker() -> str:
    """Return the script of axe-core."""
    return (importlib.resources.files("axe_playwright_python") / "axe.min.js").read_text("utf-8")


async def violations(page: Page) -> list[str]:
    """Return what axe-core finds wrong with a page as it now stands, a line for each place."""
    await page.evaluate(checker())
    found: list[dict[str, Any]] = await page.evaluate(
        "axe.run({resultTypes: ['violations']}).then(results => results.violations)"
    )
    return [
        f"{each['id']}: {' '.join(map(str, node['target']))}: {node['failureSummary']}"
        for each in found
        for node in each["nodes"]
    ]
