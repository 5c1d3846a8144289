"""Ten thousand messages in one chat: the newest at once, the rest as one scrolls; the page stays small."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta

import pytest
from playwright.async_api import Browser, expect
from sqlalchemy import insert

from bot.commands.database import passing
from bot.page.scenes import Scene
from bot.play.script import Script, Step
from bot.roster import read_roster
from domain.incoming import Text
from domain.parts import Notice
from persistence.engine import writing
from persistence.store import Store
from persistence.tables import InboxRow, OutboxRow
from tests.page.desk import looked_at, served
from tests.test_project import ROOT

pytestmark = pytest.mark.asyncio(loop_scope="session")

MESSAGES = 10_000
BEGAN = datetime(2024, 3, 2, 8, tzinfo=UTC)
NOW = BEGAN + timedelta(hours=MESSAGES)


def long_past() -> Scene:
    """A scene in which Adaeze has said half of ten thousand messages, and the bot has answered each."""
    return Scene("A long past", with_messages, lambda: Script((Step(0, NOW),), None, ROOT / "demo"))


@contextmanager
def with_messages() -> Iterator[Store]:
    with passing() as store:
        loaded = store.load_roster(read_roster(ROOT / "demo" / "roster.json"), NOW)
        assert loaded
        person = store.person_of_chat("local:Adaeze")
        assert person is not None
        said, answers = [], []
        for count in range(MESSAGES // 2):
            at = BEGAN + timedelta(hours=2 * count)
            said.append(
                {"source": "local", "key": f"past:{count}", "person": person.number, "chat": "local:Adaeze",
                 "message_key": f"past:{count}", "incoming": Text(text=f"words {count}", key=f"past:{count}"),
                 "received_at": at, "done_at": at}
            )  # fmt: skip
            answers.append(
                {"person": person.number, "weight": "answer", "parts": (Notice(topic="heard"),),
                 "actions": (), "created_at": at, "state": "sent", "attempts": 1, "sent_at": at,
                 "words": f"heard {count}", "labels": (), "message_keys": (f"answer:{count}",)}
            )  # fmt: skip
        with writing(store._engine) as connection:
            connection.execute(insert(InboxRow), said)
            connection.execute(insert(OutboxRow), answers)
        yield store


async def test_a_long_chat_opens_at_its_end_and_loads_more_as_one_scrolls(browser: Browser) -> None:
    async with served(long_past()) as url, looked_at(browser, url) as desk:
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
        assert await desk.left.entries.count() <= 600
        await desk.left.say("squat 60x6")
        await expect(desk.left.last()).to_contain_text("Back squat")
        await expect(desk.left.last()).to_be_in_viewport()
        assert desk.faults == []
