"""The page is for everybody: by keyboard alone, by a screen reader, in light and dark, on any width."""

from typing import Literal

import pytest
from playwright.async_api import expect

from tests.page.desk import NARROW, WIDE, Desk
from tests.page.looking import violations

pytestmark = pytest.mark.asyncio(loop_scope="session")


SCHEMES: tuple[Literal["light", "dark"], ...] = ("light", "dark")


async def test_nothing_keeps_anybody_out(desk: Desk) -> None:
    await desk.left.say("squat 60x6 but my left knee hurts")
    await expect(desk.left.last()).to_contain_text("left knee")
    await desk.left.last("me").locator(".more").click()
    await expect(desk.left.last("me").locator(".behind dl")).to_be_visible()
    await desk.right.become("Dana")
    await expect(desk.tab.get_by_role("button", name="Marit: 1 new")).to_be_hidden()
    await desk.left.say("my right shoulder hurts")
    await expect(desk.tab.get_by_role("button", name="Marit: 1 new")).to_be_visible()
    await desk.left.turn_to("Reply", desk.left.last())
    await expect(desk.left.last().locator(".behind dl")).to_be_visible()
    for size in (WIDE, NARROW):
        await desk.resize(size)
        await expect(desk.right.root).to_be_visible(visible=size == WIDE)
        if size == NARROW:
            await desk.tab.get_by_role("button", name="Pace and scene").click()
        for scheme in SCHEMES:
            await desk.tab.emulate_media(color_scheme=scheme)
            light = await desk.tab.evaluate(LIGHT)
            assert light < 0.1 if scheme == "dark" else light > 0.8
            assert await violations(desk.tab) == [], (size, scheme)


LIGHT = """() => {
  const [red, green, blue] = getComputedStyle(document.querySelector(".phone")).backgroundColor
    .match(/[\\d.]+/g).map((part) => (part / 255) ** 2.2);
  return .2126 * red + .7152 * green + .0722 * blue;
}"""
"""How light a phone is, from 0 to 1: relative luminance, with the simple exponent for sRGB."""


async def test_all_can_be_done_by_keyboard(desk: Desk) -> None:
    async def tab_to(name: str, *, back: bool = False) -> None:
        """Go along with the tab key to what goes by this name, and see that one sees where one is."""
        for _ in range(60):
            await desk.tab.keyboard.press("Shift+Tab" if back else "Tab")
            if await desk.tab.evaluate(FOCUSED) == name:
                assert await desk.tab.evaluate(OUTLINED)
                return
        raise AssertionError(name)

    await tab_to("What Adaeze says")
    await desk.tab.keyboard.type("squat 60x6")
    await desk.tab.keyboard.press("Enter")
    await expect(desk.left.last()).to_contain_text("Back squat: 60\u00a0kg × 6.")
    mine = desk.left.last("me").locator(".more")
    await tab_to((await mine.get_attribute("aria-label")) or "", back=True)
    while not await mine.evaluate("element => element === document.activeElement"):
        await tab_to((await mine.get_attribute("aria-label")) or "", back=True)
    await desk.tab.keyboard.press("Enter")
    await expect(mine).to_have_attribute("aria-expanded", "true")
    await tab_to("Edit")
    await desk.tab.keyboard.press("Enter")
    await expect(desk.left.text).to_be_focused()
    await desk.tab.keyboard.press("ControlOrMeta+A")
    await desk.tab.keyboard.type("squat 60x8")
    await desk.tab.keyboard.press("Enter")
    await expect(desk.left.last()).to_contain_text("60\u00a0kg × 8.")
    await tab_to("Tomorrow", back=True)
    await desk.tab.keyboard.press("Enter")
    await expect(desk.now).to_contain_text("3 Mar")
    await tab_to("Whose phone this is")
    await desk.tab.keyboard.type("Dana")
    await expect(desk.left.root).to_have_attribute("aria-label", "Phone of Dana")


FOCUSED = """() => {
  const element = document.activeElement;
  const whole = element.labels?.[0];
  const label = (whole?.querySelector(".hidden") ?? whole)?.textContent.trim();
  return element.getAttribute("aria-label") ?? label ?? element.textContent.trim();
}"""
OUTLINED = """() => {
  const style = getComputedStyle(document.activeElement);
  return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
}"""


async def test_a_screen_reader_hears_what_comes_and_knows_where_it_is(desk: Desk) -> None:
    await desk.left.say("my left knee hurts")
    heard = desk.tab.get_by_role("log", name="New messages")
    await expect(heard).to_have_attribute("aria-live", "polite")
    await expect(heard).to_contain_text("Adaeze says: my left knee hurts")
    await expect(heard).to_contain_text("To Adaeze: Sorry to hear that your left knee hurts.")
    await expect(heard).to_contain_text("To Marit: Adaeze has pain: left knee.")
    await expect(desk.tab.get_by_role("region", name="Phone of Adaeze")).to_be_visible()
    await expect(desk.tab.get_by_role("combobox", name="Whose phone this is").first).to_be_visible()
    await expect(desk.tab.get_by_role("textbox", name="What Marit says")).to_be_visible()
    await expect(desk.tab.get_by_role("group", name="Pace of the clock")).to_be_visible()


async def test_it_is_the_machines_own_and_asks_for_nothing_from_elsewhere(desk: Desk) -> None:
    asked: list[str] = []
    desk.tab.on("request", lambda request: asked.append(request.url))
    await desk.tab.reload()
    await desk.left.say("squat 60x6")
    origin = desk.url.rsplit("/", 2)[0]
    assert asked
    assert [each for each in asked if not each.startswith(origin)] == []
