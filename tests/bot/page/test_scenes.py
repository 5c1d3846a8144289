"""Which people are on the page: a roster's, a script's, a copy of the operator's; each can begin afresh."""

from functools import partial
from pathlib import Path

import pytest

from bot.commands.database import copied, has_people, opened, passing
from bot.desk import Desk
from bot.faults import OperatorFault
from bot.page.scenes import Scene, scenes
from bot.play.script import Script, Step
from bot.roster import read_roster
from bot.wording.page import SCENE_NAMES
from persistence.store import Store
from tests.bot.page.conftest import first_day, on_page
from tests.bot.telegram.village import roster
from tests.persistence.people import NOON

BRAM = "telegram:7"


@pytest.fixture
def url(tmp_path: Path) -> str:
    """The database of an operator: a client who is on Telegram, and to whom something is to be sent."""
    url = f"sqlite:///{tmp_path / 'kilopost.sqlite3'}"
    with opened(url, durable=False) as store:
        store.load_roster(read_roster(roster(chats={"Bram": BRAM})), NOON)
        Desk(store, lambda: NOON).clear()
        assert waiting(store) > 0
    return url


def rows(url: str) -> list[tuple[object, ...]]:
    with opened(url, durable=False) as store:
        return [(each.number, each.chat, store.chats.last_said(), waiting(store)) for each in store.people()]


def waiting(store: Store) -> int:
    return store.queues(NOON).outbox.length


def test_without_a_database_the_demo_is_shown_and_none_is_made(tmp_path: Path) -> None:
    file = tmp_path / "missing.sqlite3"
    assert [scene.name for scene in scenes(f"sqlite:///{file}", None)] == [
        SCENE_NAMES["first day"],
        SCENE_NAMES["weeks later"],
    ]
    assert not file.exists()


def test_a_database_without_people_counts_as_none(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'empty.sqlite3'}"
    with opened(url, durable=False):
        pass
    assert not has_people(url)


def test_a_database_with_people_is_shown_as_a_copy(url: str) -> None:
    (scene,) = scenes(url, None)
    assert scene.is_copy
    assert scene.script().steps[0].who is None


async def test_a_script_that_cannot_be_played_is_one_clear_line() -> None:
    script = Script((Step(3, NOON, "Bram", "presses", "No such button"),), None, Path())
    with pytest.raises(OperatorFault, match="line 3: Bram has no button «No such button»"):
        async with on_page(Scene("broken", passing, lambda: script)):
            pass


@pytest.mark.parametrize("name", ["missing.jsonl", "missing.json"])
def test_a_scene_that_cannot_be_read_is_one_clear_line(tmp_path: Path, name: str) -> None:
    with pytest.raises(OperatorFault, match=name):
        scenes("", tmp_path / name)


async def test_on_a_copy_nobody_real_is_written_to_and_nothing_is_lost(url: str) -> None:
    before = rows(url)
    copy = Scene("own", partial(copied, url), lambda: Script((Step(0, NOON),), None, Path()), is_copy=True)
    async with on_page(copy) as asking:
        state = await asking.look("state")
        assert "copy" in state["about"]
        assert BRAM in [person["chat"] for person in state["people"]]
        begun = await asking.said(BRAM)
        assert begun[0].startswith("Welcome, Bram.")
        await asking.do("say", chat=BRAM, text="hello")
        await asking.do("leap", leap="three days", chats=[BRAM])
        assert len(await asking.said(BRAM)) > len(begun) + 1
    assert rows(url) == before


async def test_a_scene_begins_afresh_and_nothing_is_left_of_what_was_done() -> None:
    async with on_page(first_day(), first_day()) as asking:
        chat = "local:Adaeze"
        begun = await asking.said(chat)
        first = await asking.look("state")
        await asking.do("say", chat=chat, text="squat 60x6")
        await asking.do("leap", leap="three days", chats=[chat])
        assert (await asking.do("begin", scene=1)).status_code == 200
        await asking.begun()
        second = await asking.look("state")
        assert (second["now"], second["scene"], second["heard"]) == (first["now"], 1, {})
        assert second["run"] != first["run"]
        assert await asking.said(chat) == begun
