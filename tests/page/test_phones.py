"""What people do on the two phones, in the browser: sets, buttons, edits, replies, files, pictures, tabs."""

import asyncio

import pytest
from playwright.async_api import FilePayload, expect

from tests.page.desk import NARROW, Desk

pytestmark = pytest.mark.asyncio(loop_scope="session")

SHEET = """\
Quay Base
Train every 3 days in turn: Pull

Pull
1. Seated cable row, 8-10 reps to failure
2. Hammer curl, 8-12 reps
"""


async def test_a_set_is_answered_and_the_coach_hears_what_hurts(desk: Desk) -> None:
    await desk.left.say("squat 60x6")
    await expect(desk.left.last()).to_contain_text("Back squat: 60\u00a0kg × 6.")
    await expect(desk.right.entries).to_have_count(0)
    await desk.left.say("bench 40x6 but my left shoulder hurts 4/10")
    await expect(desk.left.last()).to_contain_text("Sorry to hear that your left shoulder hurts.")
    alert = desk.right.with_words("has pain")
    await expect(alert).to_contain_text("Adaeze has pain: left shoulder, 4 out of 10.")
    await desk.right.press("Keep it aside")
    await expect(alert).to_contain_text("→ Keep it aside")
    await expect(alert.locator("[data-press]")).to_have_count(0)


async def test_a_set_can_be_typed_anew(desk: Desk) -> None:
    await desk.left.say("squat 60x6")
    mine = desk.left.last("me")
    await desk.left.turn_to("Edit", mine)
    await expect(desk.left.text).to_have_value("squat 60x6")
    await expect(desk.left.text).to_be_focused()
    await desk.left.text.fill("squat 60x8")
    await desk.left.text.press("Enter")
    await expect(mine).to_contain_text("squat 60x8")
    await expect(mine).to_contain_text("edited")
    await expect(desk.left.last()).to_contain_text("Back squat: 60\u00a0kg × 8.")


async def test_an_edit_can_be_left_off(desk: Desk) -> None:
    await desk.left.say("squat 60x6")
    await desk.left.turn_to("Edit", desk.left.last("me"))
    await desk.left.text.press("Escape")
    await expect(desk.left.text).to_have_value("")
    await desk.left.say("make that 7")
    await expect(desk.left.last("me")).to_contain_text("make that 7")


async def test_a_coach_replies_to_a_question_and_the_client_sees_to_what(desk: Desk) -> None:
    await desk.left.say("can I use straps for the rows? ask Marit")
    question = desk.right.with_words("straps")
    await expect(question).to_contain_text("Reply to this message to answer.")
    await desk.right.turn_to("Reply", question)
    await desk.right.text.fill("Yes, for the last set.")
    await desk.right.text.press("Enter")
    await expect(desk.right.last("me")).to_contain_text("In answer to:")
    await expect(desk.left.last()).to_contain_text("Yes, for the last set.")


async def test_a_coach_sends_a_sheet_as_a_file(desk: Desk) -> None:
    file = FilePayload(name="quay-base.txt", mimeType="text/plain", buffer=SHEET.encode())
    await desk.right.root.locator("input[type=file]").set_input_files(file)
    await expect(desk.right.last("me")).to_contain_text("quay-base.txt")
    await expect(desk.right.last()).to_contain_text("Quay Base")
    await expect(desk.right.last()).to_contain_text("Seated cable row")
    assert await desk.right.entries.count() == 2


async def test_a_coach_sends_an_old_journal_as_a_file(desk: Desk) -> None:
    table = "date,exercise,load,unit,reps\n2026-01-05,Back squat,50,kg,6\n2026-01-09,Back squat,52.5,kg,6\n"
    file = FilePayload(name="Adaeze.csv", mimeType="text/csv", buffer=table.encode())
    await desk.right.root.locator("input[type=file]").set_input_files(file)
    await expect(desk.right.last("me")).to_contain_text("Adaeze.csv")
    await desk.right.press("Take it in")
    await desk.left.say("history of squat")
    await expect(desk.left.last()).to_contain_text("52.5\u00a0kg × 6")


async def test_a_file_that_is_too_large_is_told_of_kindly(desk: Desk) -> None:
    file = FilePayload(name="long.txt", mimeType="text/plain", buffer=b"row\n" * 500_000)
    await desk.right.root.locator("input[type=file]").set_input_files(file)
    await expect(desk.right.last()).to_contain_text("long.txt")
    assert await desk.right.entries.count() == 2


async def test_a_picture_stands_in_its_place_and_can_be_seen(desk: Desk) -> None:
    await desk.left.say("squat 60x6")
    await desk.left.say("picture of my squat")
    picture = desk.left.last().locator("img")
    await expect(picture).to_be_visible()
    await expect(picture).to_have_js_property("complete", value=True)
    assert await picture.evaluate("image => image.naturalWidth") > 300
    assert "words beside it" in (await picture.get_attribute("alt") or "")


async def test_what_was_said_is_there_after_a_reload_with_the_marks_of_what_is_new(desk: Desk) -> None:
    await desk.left.become("Dana")
    await desk.right.become("Farah")
    await desk.left.say("my left knee hurts")
    await expect(desk.left.last()).to_contain_text("left knee")
    mark = desk.tab.get_by_role("button", name="Marit: 1 new")
    await expect(mark).to_be_visible()
    said = await desk.left.entries.all_inner_texts()
    await desk.tab.reload()
    await expect(desk.left.entries).to_have_count(len(said))
    await expect(desk.left.root).to_have_attribute("aria-label", "Phone of Dana")
    assert await desk.left.entries.all_inner_texts() == said
    await mark.click()
    await expect(desk.right.last()).to_contain_text("Dana has pain")
    await expect(mark).to_have_count(0)
    await desk.tab.reload()
    await expect(desk.right.last()).to_contain_text("Dana has pain")
    await expect(mark).to_have_count(0)


async def test_on_a_narrow_screen_there_is_one_phone_at_a_time(desk: Desk) -> None:
    await desk.resize(NARROW)
    await expect(desk.left.root).to_be_visible()
    await expect(desk.right.root).to_be_hidden()
    await desk.left.say("my left knee hurts")
    other = desk.tab.get_by_role("button", name="Marit: 1 new")
    await other.click()
    await expect(desk.right.root).to_be_visible()
    await expect(desk.left.root).to_be_hidden()
    await expect(desk.right.last()).to_be_in_viewport()
    await expect(desk.tab.locator(".switch").get_by_role("button", name="Marit")).to_have_text("Marit")
    assert await desk.tab.evaluate("document.documentElement.scrollWidth") == NARROW[0]


async def test_two_tabs_are_both_alive_and_show_each_message_once(desk: Desk) -> None:
    one = desk
    async with one.another() as other:
        before = await one.left.entries.count()
        await asyncio.gather(one.left.say("squat 60x6"), other.left.say("bench 40x6"))
        await one.left.say("dips 5")
        for each in (one, other):
            await expect(each.left.entries).to_have_count(before + 6)
            for words in ("squat 60x6", "bench 40x6", "dips 5"):
                await expect(each.left.root.locator(".entry.me").filter(has_text=words)).to_have_count(1)
        assert await one.left.entries.all_inner_texts() == await other.left.entries.all_inner_texts()
        assert other.faults == []


async def test_somebody_new_comes_in_by_an_invitation(desk: Desk) -> None:
    await desk.right.say("invite Nia to Orchard Light")
    words = await desk.right.last().inner_text()
    code = words.split("/start ")[1].split()[0]
    await desk.left.root.locator(".who").select_option("+")
    await expect(desk.left.entries).to_have_count(0)
    await desk.left.say(f"/start {code}")
    await expect(desk.left.last()).to_contain_text("Nia")
    await expect(desk.left.root).to_have_attribute("aria-label", "Phone of Nia")
