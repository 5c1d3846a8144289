"""News reaches whoever listens, in order, and whoever comes back gets what was missed."""

import asyncio
from collections.abc import AsyncIterator

import pytest

from bot.page import news as module
from bot.page.news import News
from tests.bot.page.conftest import Asking


async def kinds(stream: AsyncIterator[str], count: int) -> list[str]:
    """Return the kinds of the next items; none may be long in coming."""
    found: list[str] = []
    async with asyncio.timeout(5):
        async for chunk in stream:
            found += [line[7:] for line in chunk.splitlines() if line.startswith("event: ")]
            if len(found) >= count:
                break
    return found


async def test_who_listens_hears_what_comes_and_who_comes_back_what_was_missed() -> None:
    news = News()
    news.tell("one")
    since = news.last
    listener = news.since(since)
    news.tell("two")
    news.tell("three")
    assert await kinds(listener, 2) == ["two", "three"]
    news.tell("four")
    assert await kinds(listener, 1) == ["four"]
    assert await kinds(news.since(since), 3) == ["two", "three", "four"]


@pytest.mark.parametrize("had", [None, "", "nonsense", "other-1", "{name}-7", "{name}--1", "{name}-x"])
async def test_who_has_had_something_unknown_looks_at_all_anew(had: str | None) -> None:
    news = News()
    news.tell("one")
    stream = news.since(had.format(name=news.name) if had is not None else None)
    assert await kinds(stream, 1) == ["anew"]
    news.tell("two")
    assert await kinds(stream, 1) == ["two"]


async def test_who_was_away_for_too_long_looks_at_all_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(module, "KEPT", 3)
    news = News()
    since = news.last
    for count in range(5):
        news.tell(f"number {count}")
    assert await kinds(news.since(since), 1) == ["anew"]


async def test_listening_ends_when_the_page_does() -> None:
    news = News()
    listening = asyncio.create_task(kinds(news.since(news.last), 1))
    await asyncio.sleep(0)
    news.close()
    assert await listening == []


async def test_a_word_with_a_line_break_stays_one_item() -> None:
    news = News()
    since = news.last
    news.tell("message", words="one\n\ndata: {}\nevent: two")
    assert await kinds(news.since(since), 1) == ["message"]


@pytest.mark.asyncio(loop_scope="module")
async def test_the_page_tells_what_is_said_as_it_is_said(asking: Asking) -> None:
    since = (await asking.look("state"))["news"]
    await asking.do("say", chat="local:Yuki", text="bench 40x8")
    lines: list[str] = []
    headers = {"Last-Event-ID": since}
    async with (
        asyncio.timeout(10),
        asking.client.stream("GET", f"{asking.guard.path}news", headers=headers) as got,
    ):
        assert got.headers["Content-Type"].startswith("text/event-stream")
        async for line in got.aiter_lines():
            lines.append(line)
            if line == "event: clock":
                break
    told = [line for line in lines if line.startswith("data: ") and "local:Yuki" in line]
    assert ['"by":"me"' in each for each in told] == [True, False]
