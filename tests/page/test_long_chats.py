"""Ten thousand messages in one chat: the newest at once, the rest as one scrolls, and never all of them."""

import pytest
from playwright.async_api import expect

from tests.page.desk import Desk, served
from tests.page.long_past import MESSAGES, long_past

pytestmark = pytest.mark.asyncio(loop_scope="session")

MOST_STANDING = 240


async def standing(desk: Desk) -> range:
    """Return the numbers of what Adaeze has said and stands in the page; it has no gap."""
    said = await desk.left.root.locator(".entry.me .words").all_text_contents()
    numbers = [int(words.removeprefix("words ")) for words in said if words.startswith("words ")]
    found = range(numbers[0], numbers[-1] + 1)
    assert numbers == list(found)
    assert await desk.left.entries.count() <= MOST_STANDING
    return found


async def test_a_long_chat_opens_at_its_end_and_is_read_back_and_forth(window: Desk) -> None:
    async with served(long_past()) as page, window.another(page.url) as desk:
        scroller = desk.left.root.locator(".scroller")
        await expect(desk.left.with_words(f"words {MESSAGES // 2 - 1}")).to_be_attached()
        await expect(desk.left.last()).to_be_in_viewport()
        newest = await standing(desk)
        assert len(newest) < 100

        while (await standing(desk)).stop >= newest.start:
            first = desk.left.entries.first
            before = await first.get_attribute("data-id") or ""
            await scroller.evaluate("element => { element.scrollTop = 0; }")
            await expect(first).not_to_have_attribute("data-id", before)
            # What was read stays where it was, with more of it above.
            await expect(desk.left.root.locator(f"[data-id='{before}']")).to_be_in_viewport()

        # What comes meanwhile waits at the end, and so does what changes there.
        reads = await standing(desk)
        async with desk.another() as beside:
            await beside.left.say("squat 60x6")
            await expect(desk.left.root.get_by_role("button", name="New messages below")).to_be_visible()
            await beside.left.turn_to("Edit", beside.left.last("me"))
            await beside.left.text.fill("squat 60x8")
            await beside.left.text.press("Enter")
            await expect(beside.left.last()).to_contain_text("60\u00a0kg × 8.")
        assert await standing(desk) == reads

        while (await standing(desk)).stop <= newest.start:
            last = await desk.left.entries.last.get_attribute("data-id") or ""
            await scroller.evaluate("element => { element.scrollTop = element.scrollHeight; }")
            await expect(desk.left.entries.last).not_to_have_attribute("data-id", last)
            await expect(desk.left.root.locator(f"[data-id='{last}']")).to_be_in_viewport()

        await desk.left.root.get_by_role("button", name="New messages below").click()
        await expect(desk.left.last()).to_contain_text("60\u00a0kg × 8.")
        await expect(desk.left.last()).to_be_in_viewport()
        await expect(desk.left.last("me")).to_contain_text("squat 60x8")
        assert (await standing(desk)).stop == newest.stop
        assert desk.faults == []
