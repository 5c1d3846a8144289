"""The page as it is served, on two people of a roster, and a way to ask it."""

from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, asynccontextmanager
from typing import Any

import httpx
import pytest

from bot.commands.database import passing
from bot.page.guard import Guard
from bot.page.scenes import Scene
from bot.page.serving import page
from bot.play.script import read_script
from tests.test_project import ROOT

FIRST_DAY = '{"setup": "roster.json"}\n{"at": "2026-03-02T16:30:00+01:00"}'


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

    async def said(self, chat: str) -> list[str]:
        """Return the words in a chat, in order."""
        found = await self.look("chat", of=chat)
        return ["".join(stretch[0] for stretch in entry["words"]) for entry in found["messages"]]


Opened = Callable[..., AbstractAsyncContextManager[Asking]]


@asynccontextmanager
async def on_page(*scenes: Scene) -> AsyncIterator[Asking]:
    first_day = Scene("first day", passing, lambda: read_script(FIRST_DAY, ROOT / "demo"))
    async with page(scenes or (first_day,)) as (address, guard, beginning):
        await beginning
        origin = f"http://{address}"
        async with httpx.AsyncClient(base_url=origin) as client:
            yield Asking(client, guard, origin)


@pytest.fixture
async def asking() -> AsyncIterator[Asking]:
    async with on_page() as opened:
        yield opened
