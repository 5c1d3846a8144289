"""What a touch on a message shows: which of its words became what, or the reasons of what it says."""

import pytest
from playwright.async_api import expect

from bot.wording.behind_coach import BROUGHT_BECAUSE
from tests.page.desk import Desk

pytestmark = pytest.mark.asyncio(loop_scope="session")


async def test_a_touch_shows_which_words_became_what_and_why_the_bot_says_what_it_says(desk: Desk) -> None:
    await desk.left.say("squat 60x6 felt great, left knee hurts 3/10")
    mine = desk.left.last("me")
    await mine.locator(".words").click()
    behind = mine.locator(".behind")
    await expect(behind.get_by_role("heading")).to_have_text("What was understood")
    became = {
        (await each.locator("span").inner_text()): await each.locator("small").inner_text()
        for each in await behind.locator(".stretch").all()
    }
    assert {"squat": "an exercise", "60x6": "a set", "knee": "pain"}.items() <= became.items()
    facts = behind.locator("dl")
    for words in (
        "A set",
        "Back squat: 60\u00a0kg × 6",
        "Pain",
        "left knee, 3 out of 10",
        "Left over",
        "great",
    ):
        await expect(facts).to_contain_text(words)
    await expect(facts).to_contain_text("from «60x6»")
    await mine.locator(".words").click()
    await expect(behind).to_be_hidden()

    await desk.left.say("bench 40x6")
    await desk.left.last().locator(".more").click()
    reasons = desk.left.last().locator(".behind")
    await expect(reasons.get_by_role("heading")).to_have_text("What is behind it")
    for words in ("Verdict, Bench press", "Target, Bench press", "Reckoned from 40\u00a0kg × 6"):
        await expect(reasons).to_contain_text(words)

    alert = desk.right.with_words("has pain")
    await alert.locator(".more").click()
    await expect(alert.locator(".behind dl")).to_contain_text(BROUGHT_BECAUSE["pain"])


async def test_a_coach_s_message_shows_what_was_asked_of_whom_and_the_overview_its_reasons(
    desk: Desk,
) -> None:
    await desk.left.say("squat 60x6, left knee hurts")
    await desk.right.say("no dips for Adaeze")
    mine = desk.right.with_words("no dips for Adaeze").and_(desk.right.root.locator(".me"))
    await mine.locator(".more").click()
    await expect(mine.locator(".stretch", has_text="dips")).to_contain_text("an exercise")
    facts = mine.locator(".behind dl")
    for words in ("to leave an exercise out", "Dip from «dips»", "Adaeze from «Adaeze»"):
        await expect(facts).to_contain_text(words)

    await desk.right.say("who needs me?")
    overview = desk.right.with_words("Needs you")
    await overview.locator(".more").click()
    await expect(overview.locator(".behind dl")).to_contain_text(BROUGHT_BECAUSE["pain"])
