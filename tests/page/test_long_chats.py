"""Ten thousand messages in one chat: the newest at once, the rest as one scrolls."""

import pytest
from playwright.async_api import Browser, expect

from tests.page.desk import looked_at, served
from tests.page.long_past import MESSAGES, long_past

pytestmark = pytest.mark.asyncio(loop_scope="session")


async def test_a_long_chat_opens_at_its_end_and_loads_more_as_one_scrolls(browser: Browser) -> None:
    async with served(long_past()) as page, looked_at(browser, page.url) as desk:
        await expect(desk.left.with_words(f"words {MESSAGES // 2 - 1}")).to_be_attached()
        await expect(desk.left.last()).to_be_in_viewport()
        at_first = await desk.left.entries.count()
        assert at_first < 200
        scroller = desk.left.root.locator(".scroller")
        oldest = await desk.left.entries.first.text_content()
        for _ in range(5):
            before = await desk.left.entries.first.get_attribute("data-id")
            await scroller.evaluate("element => { element.scrollTop = 0; }")
            await expect(desk.left.entries.first).not_to_have_attribute("data-id", before or "")
            # What was read stays where it was, with more of it above.
            assert await scroller.evaluate("element => element.scrollTop") > 0
        assert await desk.left.entries.first.text_content() != oldest
        numbers = await desk.left.root.locator(".entry.me .words").all_text_contents()
        counted = [int(words.removeprefix("words ")) for words in numbers]
        assert counted == list(range(counted[0], counted[0] + len(counted)))
        await desk.left.say("squat 60x6")
        await expect(desk.left.last()).to_contain_text("Back squat")
        await expect(desk.left.last()).to_be_in_viewport()
        assert desk.faults == []
