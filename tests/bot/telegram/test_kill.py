"""The bot as its own process: killed while it answers, started again, stopped politely, refused.

The Bot API server runs here and outlives each of them, as the real one does.
"""

import re
from pathlib import Path

import pytest
from sqlalchemy import Engine

from persistence.store import Store
from tests.bot.telegram.village import codes, inbox_count
from tests.botapi.people import Person
from tests.botapi.server import BotApi
from tests.kill.process import Process, process, until

pytestmark = pytest.mark.waits


def loads_answered(person: Person) -> list[int]:
    """Return the load that each answer is about, which it names first; other messages name none."""
    named = (re.search(r"(\d+)\s*kg", message.text) for message in person.received)
    return [int(load[1]) for load in named if load is not None]


def test_a_press_that_was_being_answered_counts_once_after_a_kill(
    tmp_path: Path, database: str, store: Store, engine: Engine, api: BotApi
) -> None:
    """The same press, handed out again under a new update after the kill, is known again."""
    code = codes(store, "Bram")
    bram = api.person(2, "Bram")
    with process(tmp_path, database, api) as bot:
        bram.says(f"/start {code['Bram']}")
        until(lambda: bram.received)
        data = "1:0"
        bram.presses_data(bram.received[0], data)
        until(lambda: inbox_count(engine, "Bram") == 2)
        bot.kill_and_start_again()
        bram.presses_data(bram.received[0], data)
        bram.says("romanian deadlift 100 kg x 6")
        until(lambda: loads_answered(bram) == [100])
        assert inbox_count(engine, "Bram") == 3
        assert bot.stop() == 0


def test_a_token_that_is_refused_is_one_clear_line(tmp_path: Path, database: str, api: BotApi) -> None:
    running = Process(tmp_path, database, api.url, "4242:a-revoked-secret")
    assert running.end() == 1
    log = running.log.read_text()
    *before, said = log.splitlines()
    assert "KILOPOST_TOKEN" in said
    assert all(line.endswith("INFO bot.serve: serving") for line in before)
    assert "a-revoked-secret" not in log


def test_it_waits_for_a_server_that_is_not_there_yet(tmp_path: Path, database: str) -> None:
    with BotApi() as gone:
        url = gone.url
    running = Process(tmp_path, database, url, "4242:a-secret")
    until(lambda: "no word from Telegram" in running.log.read_text())
    assert running.stop() == 0
    assert "a-secret" not in running.log.read_text()
