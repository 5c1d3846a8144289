"""The bot as a process of its own, which can be killed and started again."""

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from tests.botapi.server import BotApi

HUNG_SECONDS = 300
"""After this something hangs. On a machine that ten others use, a start alone has taken half a minute."""

ROOT = Path(__file__).resolve().parents[2]


class Process:
    """`python -m bot serve` in a folder of its own; what it logs goes to a file there."""

    def __init__(self, folder: Path, database: str, url: str, token: str, module: str = "bot") -> None:
        self.log = folder / "log.txt"
        self._began_at = 0
        self._module = module
        self._start = (folder, database, url, token)
        self._running = self._run()

    def _run(self) -> "subprocess.Popen[bytes]":
        folder, database, url, token = self._start
        self._began_at = self.log.stat().st_size if self.log.exists() else 0
        settings = {"KILOPOST_TOKEN": token, "KILOPOST_API_URL": url, "KILOPOST_DATABASE": database}
        with self.log.open("ab") as log:
            return subprocess.Popen(
                [sys.executable, "-m", self._module, "serve"],
                cwd=folder,
                env={**os.environ, **settings, "PYTHONPATH": str(ROOT)},
                stdout=log,
                stderr=log,
            )

    def serves(self) -> bool:
        """Whether it has come so far as to serve; before that a signal ends it at once."""
        return b"serving" in self.log.read_bytes()[self._began_at :]

    @property
    def number(self) -> int:
        """The number by which the machine knows it."""
        return self._running.pid

    def kill(self) -> None:
        self._running.kill()
        self._running.wait()

    def kill_and_start_again(self) -> None:
        self.kill()
        self._running = self._run()

    def stop(self) -> int:
        self._running.send_signal(signal.SIGTERM)
        return self.end()

    def end(self) -> int:
        """Wait until it ends by itself; return its exit status."""
        try:
            return self._running.wait(HUNG_SECONDS)
        finally:
            self.kill()


@contextmanager
def process(folder: Path, database: str, api: BotApi, module: str = "bot") -> Iterator[Process]:
    running = Process(folder, database, api.url, api.token, module)
    try:
        yield running
    finally:
        running.kill()


def until(true: Callable[[], object], going_on: Callable[[], object] = lambda: None) -> None:
    """Wait until `true()` holds; unlike the server's own waiting, this may look into the database.

    It hangs, and TimeoutError is raised, where what `going_on()` returns has not changed for so long.
    """
    before, limit = going_on(), time.monotonic() + HUNG_SECONDS
    while not true():
        if (now := going_on()) != before:
            before, limit = now, time.monotonic() + HUNG_SECONDS
        if time.monotonic() > limit:
            raise TimeoutError
        time.sleep(0.05)
