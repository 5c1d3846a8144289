"""The page as it is served, on two people of a roster, and a way to ask it."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any

import httpx
import pytest_asyncio

from bot.commands.database import passing
from bot.page.guard import Guard
from bot.page.scenes import Scene
from bot.page.serving import page
from bot.play.script import read_script
from tests import loopback
from tests.test_project import ROOT

FIRST_DAY = '{"setup": "roster.json"}\n{"at": "2026-03-02T16:30:00+01:00"}'


def words(entry: dict[str, Any]) -> str:
    """Return the words of a message without their markup."""
    return "".join(stretch[0] for stretch in entry["words"])


class Asking:
    """A browser on the page, as far as its requests go."""

    def __init__(self, client: httpx.AsyncClient, guard: Guard, origin: str) -> None:
        self.client = client
        self.guard = guard
        self.origin = origin

    async def look(self, path: str, **query: Any) -> Any:
        answer = await self.client.get(f"{self.guard.path}{path}", params=query)
        assert answer.status_code == 200, answer.text
        return answer.json()

    async def do(self, path: str, **body: Any) -> httpx.Response:
        return await self.client.post(f"{self.guard.path}{path}", json=body, headers={"Origin": self.origin})

    async def entries(self, chat: str) -> list[dict[str, Any]]:
        """Return the newest messages of a chat, in order."""
        found: list[dict[str, Any]] = (await self.look("chat", of=chat))["messages"]
        return found

    async def said(self, chat: str) -> list[str]:
        """Return the words in a chat, in order."""
        return [words(entry) for entry in await self.entries(chat)]

    async def begun(self) -> None:
        """Wait until the scene is ready."""
        while not (await self.look("state"))["ready"]:  # noqa: ASYNC110 the page is asked, as a browser would
            await asyncio.sleep(0.02)


def first_day() -> Scene:
    """Return the demo's people at the first reminder that any of them gets."""
    return Scene("first day", passing, lambda: read_script(FIRST_DAY, ROOT / "demo"))


@asynccontextmanager
async def on_page(*scenes: Scene) -> AsyncIterator[Asking]:
    """Serve these scenes, and wait until the first one is ready."""
    async with page(scenes or (first_day(),)) as (address, guard, live):
        await live.begun()
        origin = f"http://{address}"
        async with loopback.client(base_url=origin, timeout=60) as client:
            yield Asking(client, guard, origin)


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def asking() -> AsyncIterator[Asking]:
    """One page for the tests of a module: each has people of its own on it."""
    async with on_page() as opened:
        yield opened
