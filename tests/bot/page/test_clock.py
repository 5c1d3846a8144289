"""The clock of the page: what falls due on the way happens, at its time, and is shown with it."""

import asyncio
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot.commands.database import passing
from bot.page.scenes import Scene
from bot.play.script import Script, Step
from bot.wording.page import NOTHING_AHEAD
from tests.bot.page.conftest import Asking, on_page
from tests.persistence.people import NOON

pytestmark = pytest.mark.asyncio(loop_scope="module")

ADAEZE, MARIT = "local:Adaeze", "local:Marit"
LAGOS = ZoneInfo("Africa/Lagos")


async def now(asking: Asking) -> datetime:
    return datetime.fromisoformat((await asking.look("state"))["now"])


async def leap(asking: Asking, to: str) -> str | None:
    answer = await asking.do("leap", leap=to, chats=[ADAEZE, MARIT])
    assert answer.status_code == 200
    note: str | None = answer.json()["note"]
    return note


async def test_it_leaps_to_the_next_message_to_either_phone(asking: Asking) -> None:
    before = [len(await asking.entries(chat)) for chat in (ADAEZE, MARIT)]
    assert await leap(asking, "next") is None
    after = [await asking.entries(chat) for chat in (ADAEZE, MARIT)]
    assert sum(map(len, after)) > sum(before)
    newest = max(entries[-1]["at"] for entries in after if entries)
    assert datetime.fromisoformat(newest) == await now(asking)


async def test_tomorrow_begins_at_six_where_the_client_lives(asking: Asking) -> None:
    before = (await now(asking)).astimezone(LAGOS)
    await leap(asking, "tomorrow")
    after = (await now(asking)).astimezone(LAGOS)
    assert (after.date() - before.date(), after.hour, after.minute) == (timedelta(days=1), 6, 0)


async def test_three_days_on_is_three_days_with_what_happens_in_them(asking: Asking) -> None:
    before, said = await now(asking), len(await asking.entries(ADAEZE))
    await leap(asking, "three days")
    assert await now(asking) - before == timedelta(days=3)
    fresh = (await asking.entries(ADAEZE))[said:]
    assert fresh
    moments = [datetime.fromisoformat(entry["at"]) for entry in fresh]
    assert moments == sorted(moments)
    assert before < moments[0] <= moments[-1] <= await now(asking)


async def test_it_plays_at_a_day_a_second_until_it_is_paused(asking: Asking) -> None:
    before = await now(asking)
    await asking.do("pace", pace="fast")
    while await now(asking) < before + timedelta(hours=10):  # noqa: ASYNC110 the page is asked, as a browser would
        await asyncio.sleep(0.02)
    assert (await asking.look("state"))["pace"] == "fast"
    await asking.do("pace", pace="still")
    await asking.do("say", chat=ADAEZE, text="what's next?")  # comes after what was under way
    stands = await now(asking)
    await asyncio.sleep(0.25)
    assert await now(asking) == stands


async def test_nobody_waits_for_what_does_not_come() -> None:
    nobody = Scene("nobody", passing, lambda: Script((Step(0, NOON),), None, Path()))
    async with on_page(nobody) as asking:
        assert await leap(asking, "next") == NOTHING_AHEAD
        assert await now(asking) == NOON
