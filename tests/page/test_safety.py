"""Nothing that anybody types, is called or sends can run on the page, and nobody else can use it."""

import pytest
from playwright.async_api import Browser, FilePayload, Page, expect
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import HTMLResponse, Response
from starlette.routing import Route

from bot.commands.database import passing
from bot.page.scenes import Scene
from bot.play.script import Script, Step
from bot.web.address import Address
from bot.web.server import listening
from tests.page.desk import FIRST_MOMENT, Desk, served
from tests.test_project import ROOT

pytestmark = pytest.mark.asyncio(loop_scope="session")

HOSTILE = (
    "<img src=x onerror='window.hit=true'><script>window.hit=true</script>",
    '"><svg onload=window.hit=true>',
    "javascript:window.hit=true",
    "</textarea><iframe srcdoc='<script>parent.hit=true</script>'></iframe>",
    "&lt;script&gt;window.hit=true&lt;/script&gt; &amp; <b>bold</b>",
)


async def ran(tab: Page) -> bool:
    """Return whether anything ran that should not, or markup that was typed became elements."""
    found: bool = await tab.evaluate(
        "window.hit !== undefined"
        " || document.querySelector('iframe, svg, embed, .words img, .words script, .about script') !== null"
    )
    return found


async def test_markup_in_a_message_is_shown_as_text(desk: Desk) -> None:
    for text in HOSTILE:
        await desk.left.say(text)
        await expect(desk.left.last("me").locator(".words")).to_have_text(text)
        await desk.left.turn_to("Reply", desk.left.last("me"))
        await desk.left.say(f"can I use straps? {text} ask Marit")
        await expect(desk.left.last("me").locator(".answers")).to_contain_text(text[:20])
        await expect(desk.right.last()).to_contain_text("hit=true" if "hit" in text else "bold")
        await desk.left.last("me").locator(".more").click()
        await expect(desk.left.last("me").locator(".behind")).to_contain_text(text[:20])
        assert not await ran(desk.tab), text


async def test_markup_in_names_sheets_buttons_and_names_of_files_is_shown_as_text(desk: Desk) -> None:
    hostile = "<img src=x onerror='window.hit=true'>"
    await desk.right.say(f"invite {HOSTILE[0]} to Orchard Light")
    sheet = f"{hostile}\nTrain every 3 days in turn: Pull\n\nPull\n1. <b onclick=x>Row</b>, 8-10 reps\n"
    name = "<img src=x onerror=window.hit=true>.txt"
    await desk.right.root.locator("input[type=file]").set_input_files(
        FilePayload(name=name, mimeType="text/plain", buffer=sheet.encode())
    )
    await expect(desk.right.last("me")).to_contain_text(name)
    await expect(desk.right.last()).to_contain_text("<b onclick=x>Row</b>: 8–10 reps")
    await desk.right.press("Store it")
    await expect(desk.right.last()).to_contain_text("Stored")
    await desk.right.say("invite Nia")
    button = desk.right.last().locator("[data-press]").filter(has_text=hostile)
    await expect(button).to_have_text(hostile)
    await button.click()
    await expect(desk.right.last()).to_contain_text("/start ")
    assert not await ran(desk.tab)


def hostile_people() -> Scene:
    """A scene whose people are called by markup."""
    setup = {
        "coaches": [{"name": HOSTILE[0], "zone": "Europe/Oslo", "unit": "kg"}],
        "sheets": ["sheets/orchard-base.txt"],
        "clients": [
            {"name": HOSTILE[1], "coach": HOSTILE[0], "programme": "Orchard Base", "unit": "kg",
             "zone": "Europe/Oslo", "starts": "2026-03-02", "remind_at": "08:00"}
        ],
    }  # fmt: skip
    return Scene(HOSTILE[0], passing, lambda: Script((Step(0, FIRST_MOMENT),), setup, ROOT / "demo"))


async def test_markup_in_the_names_of_people_and_scenes_is_shown_as_text(browser: Browser) -> None:
    async with served(hostile_people()) as page:
        tab = await browser.new_page()
        await tab.goto(page.url)
        left = tab.locator(".phone[data-phone='0']")
        await expect(left).to_have_attribute("aria-label", f"Phone of {HOSTILE[1]}")
        await left.get_by_role("textbox").fill("my left knee hurts")
        await left.get_by_role("textbox").press("Enter")
        await expect(tab.locator(".phone[data-phone='1'] .entry").last).to_contain_text(HOSTILE[1])
        await expect(tab.locator("#scenes option")).to_have_text([HOSTILE[0]])
        assert not await ran(tab)
        await tab.close()


async def test_another_site_cannot_do_anything_on_the_page(desk: Desk, url: str) -> None:
    async def site(_request: Request) -> Response:
        return HTMLResponse(
            f"<!doctype html><title>Another</title><form method=post action='{url}say' enctype='text/plain'>"
            '<input name=\'{"chat":"local:Adaeze","text":"typed by another","a":"\' value=\'"}\'></form>'
            f"<img id=picture src='{url}picture/1'>"
        )

    attack = """async url => {
      const body = JSON.stringify({chat: "local:Adaeze", text: "typed by another", replies_to: null});
      const tries = [
        fetch(url + "say", {method: "POST", mode: "no-cors", body, credentials: "include"}),
        fetch(url + "say", {method: "POST", body}),
        fetch(url + "state"),
      ];
      const ends = await Promise.allSettled(tries);
      return ends.map((end) => end.status === "rejected" ? "refused" : end.value.type);
    }"""
    async with listening(Starlette(routes=[Route("/", site)]), Address("127.0.0.1", 0)) as elsewhere:
        said = await desk.left.entries.count()
        other = await desk.tab.context.new_page()
        await other.goto(f"http://{elsewhere}/")
        assert await other.evaluate(attack, url) == ["refused", "refused", "refused"]
        async with other.expect_navigation() as navigation:
            await other.evaluate("document.querySelector('form').submit()")
        answer = await navigation.value
        assert answer is not None
        assert answer.status == 403
        await desk.left.say("squat 60x6")
        await expect(desk.left.entries).to_have_count(said + 2)
        await expect(desk.left.with_words("typed by another")).to_have_count(0)
        await other.close()


async def test_without_the_secret_there_is_nothing(browser: Browser, url: str) -> None:
    tab = await browser.new_page()
    host, secret = url.rstrip("/").rsplit("/", 1)
    for path in ("", "/", f"/{secret[:-1]}/", f"/{secret[:-1]}/page.js", "/page.js"):
        answer = await tab.goto(f"{host}{path}")
        assert answer is not None
        assert answer.status == 404
        assert "Adaeze" not in await tab.content()
    await tab.close()
