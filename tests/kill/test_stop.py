"""Told to stop under traffic, the bot finishes what is under way: nothing is left unclear, as a kill may."""

import random
from pathlib import Path

import pytest

from tests.botapi.errors import Slow
from tests.botapi.server import BotApi
from tests.kill.process import process, until
from tests.kill.traffic import counted, settled

pytestmark = pytest.mark.waits


def test_told_to_stop_under_traffic_it_loses_nothing_and_says_nothing_twice(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'k.sqlite3'}"
    with BotApi() as api:
        village = settled(api, url, complaints=1)
        api.fail("sendMessage", Slow(0.2), times=1_000_000)  # so that there is always something under way
        with process(tmp_path, url, api) as bot:
            village.all_come_in()
            until(village.is_in)
            chance = random.Random(1)
            for _ in range(12):
                village.report(chance)
            until(lambda: any(village.loads(name) for name in village.said))
            village.complain()
            assert bot.stop() == 0
            village.report(chance)  # while nobody listens
            bot.kill_and_start_again()
            until(village.all_answered, going_on=village.sent)
            assert bot.stop() == 0
        found = counted(url, village, most_again=0, faults=[])
    assert (found.faults, found.again, found.alerts_again) == ((), 0, 0)
    assert found.recorded == found.reports > 0
    assert found.delivered == found.alerts == 1
