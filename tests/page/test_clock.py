"""The clock on the page, each of its controls, and beginning afresh."""

import re
from datetime import datetime, timedelta

import pytest
from playwright.async_api import expect

from tests.page.desk import Desk

pytestmark = pytest.mark.asyncio(loop_scope="session")

NOW = "document.querySelector('#now').dateTime"


async def moment(desk: Desk) -> datetime:
    return datetime.fromisoformat(await desk.moment())


async def test_next_event_goes_to_what_the_bot_says_next_on_one_of_these_phones(desk: Desk) -> None:
    said = await desk.left.entries.count() + await desk.right.entries.count()
    began = await moment(desk)
    await desk.leaps("Next event")
    await expect(desk.tab.locator(".phone .entry")).to_have_count(said + 1)
    latest = desk.tab.locator(f".entry time[datetime='{await desk.moment()}']")
    await expect(latest).to_have_count(1)
    assert await moment(desk) > began


async def test_tomorrow_begins_in_the_morning_where_the_client_lives(desk: Desk) -> None:
    await desk.leaps("Tomorrow")
    await expect(desk.now).to_have_text(re.compile("Tue.* 3 Mar.* 2026, 06:00"))
    await expect(desk.left.root.locator(".there")).to_contain_text("Lagos 06:00")


async def test_three_days_on_all_that_falls_due_has_happened_at_its_time(desk: Desk) -> None:
    began = await moment(desk)
    await desk.leaps("Three days on")
    assert await moment(desk) == began + timedelta(days=3)
    days = await desk.left.root.locator(".day").all_inner_texts()
    assert len(days) >= 2
    times = [
        datetime.fromisoformat(await each.get_attribute("datetime") or "")
        for each in await desk.left.root.locator(".entry time").all()
    ]
    assert times == sorted(times)
    assert began < times[-1] <= began + timedelta(days=3)


async def test_time_goes_by_at_a_pace_until_it_is_paused(desk: Desk) -> None:
    began = await desk.moment()
    await desk.tab.get_by_role("button", name="A day a second").click()
    await desk.tab.wait_for_function(f"began => Date.parse({NOW}) - Date.parse(began) > 864e5", arg=began)
    pause = desk.tab.get_by_role("button", name="Pause", exact=True)
    await pause.click()
    await expect(pause).to_have_attribute("aria-pressed", "true")
    await desk.leaps("Tomorrow")
    stood = await moment(desk)
    await desk.leaps("Three days on")
    assert await moment(desk) == stood + timedelta(days=3)


async def test_time_passes_as_it_does(desk: Desk) -> None:
    began = await desk.moment()
    button = desk.tab.get_by_role("button", name="As it passes")
    await button.click()
    await desk.tab.wait_for_function(f"began => {NOW} !== began", arg=began)
    assert await moment(desk) - datetime.fromisoformat(began) < timedelta(minutes=1)
    await expect(button).to_have_attribute("aria-pressed", "true")


async def test_a_scene_begins_afresh(desk: Desk) -> None:
    said = await desk.left.entries.all_inner_texts()
    await desk.left.say("squat 60x6")
    await desk.leaps("Tomorrow")
    await desk.tab.get_by_role("button", name="Start afresh").click()
    await expect(desk.now).to_have_text(re.compile("Mon.* 2 Mar.* 2026, 16:30"))
    await expect(desk.left.entries).to_have_count(len(said))
    assert await desk.left.entries.all_inner_texts() == said
