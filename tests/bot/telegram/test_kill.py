"""The bot as its own process: killed in the middle of traffic, started again, stopped politely, refused.

The Bot API server runs here and outlives each of them, as the real one does.
"""

import os
import re
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from itertools import groupby
from pathlib import Path

from sqlalchemy import Engine

from persistence.store import Store
from tests.bot.telegram.village import codes, inbox_count, journal
from tests.botapi.errors import Slow
from tests.botapi.people import Person
from tests.botapi.server import BotApi

ROOT = Path(__file__).resolve().parents[3]
CLIENTS = ("Bram", "Chidi", "Dilnoza")
SETS_EACH = 6
KILLS = 3


class Process:
    """`python -m bot serve` in a folder of its own; what it logs goes to a file there."""

    def __init__(self, folder: Path, database: str, url: str, token: str) -> None:
        self.log = folder / "log.txt"
        self._start = (folder, database, url, token)
        self._running = self._run()

    def _run(self) -> "subprocess.Popen[bytes]":
        folder, database, url, token = self._start
        settings = {"KILOPOST_TOKEN": token, "KILOPOST_API_URL": url, "KILOPOST_DATABASE": database}
        with self.log.open("ab") as log:
            return subprocess.Popen(
                [sys.executable, "-m", "bot", "serve"],
                cwd=folder,
                env={**os.environ, **settings, "PYTHONPATH": str(ROOT)},
                stdout=log,
                stderr=log,
            )

    def kill(self) -> None:
        self._running.kill()
        self._running.wait()

    def kill_and_start_again(self) -> None:
        self.kill()
        self._running = self._run()

    def stop(self) -> int:
        self._running.send_signal(signal.SIGTERM)
        return self.end(15)

    def end(self, seconds: float) -> int:
        """Wait until it ends by itself; return its exit status."""
        try:
            return self._running.wait(seconds)
        finally:
            self.kill()


@contextmanager
def process(folder: Path, database: str, api: BotApi) -> Iterator[Process]:
    running = Process(folder, database, api.url, api.token)
    try:
        yield running
    finally:
        running.kill()


def until(true: Callable[[], object], seconds: float = 60) -> None:
    """Wait until `true()` holds; unlike the server's own waiting, this may look into the database."""
    limit = time.monotonic() + seconds
    while not true():
        if time.monotonic() > limit:
            raise TimeoutError
        time.sleep(0.02)


def loads_answered(person: Person) -> list[int]:
    """Return the load that each answer is about, which it names first; other messages name none."""
    named = (re.search(r"(\d+)\s*kg", message.text) for message in person.received)
    return [int(load[1]) for load in named if load is not None]


def test_killed_in_the_middle_of_traffic_nothing_is_lost_and_nothing_recorded_twice(
    tmp_path: Path, database: str, store: Store, engine: Engine, api: BotApi
) -> None:
    code = codes(store, *CLIENTS)
    people = {name: api.person(number, name) for number, name in enumerate(CLIENTS, start=2)}
    api.fail("sendMessage", Slow(0.1), times=10_000)  # so that a kill finds something under way
    with process(tmp_path, database, api) as bot:
        for name, person in people.items():
            person.says(f"/start {code[name]}")
        until(lambda: all(person.received for person in people.values()))
        for number in range(SETS_EACH):
            for person in people.values():
                person.says(f"romanian deadlift {100 + number} kg x 6")
            if number % 2 == 1:
                before = len(api.sent)
                until(lambda before=before: len(api.sent) > before)  # type: ignore[misc]  # a lambda's default
                bot.kill_and_start_again()
        expected = list(range(100, 100 + SETS_EACH))
        until(lambda: all(loads_answered(p)[-1:] == expected[-1:] for p in people.values()))
        until(lambda: api.world.waiting == 0)
        assert bot.stop() == 0
    for name, person in people.items():
        assert inbox_count(engine, name) == 1 + SETS_EACH
        assert [int(each.load) for each in journal(engine, name)] == expected
        answered = loads_answered(person)
        assert [load for load, _ in groupby(answered)] == expected  # in order, none missing
        assert len(answered) <= len(expected) + KILLS  # one that was being sent may come again
    log = bot.log.read_text()
    assert api.token.partition(":")[2] not in log
    assert "Traceback" not in log


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
    assert running.end(30) == 1
    said = running.log.read_text().splitlines()
    assert len(said) == 1
    assert "KILOPOST_TOKEN" in said[0]
    assert "a-revoked-secret" not in said[0]


def test_it_waits_for_a_server_that_is_not_there_yet(tmp_path: Path, database: str) -> None:
    with BotApi() as gone:
        url = gone.url
    running = Process(tmp_path, database, url, "4242:a-secret")
    until(lambda: "no word from Telegram" in running.log.read_text())
    assert running.stop() == 0
    assert "a-secret" not in running.log.read_text()
