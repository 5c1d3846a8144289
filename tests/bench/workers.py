"""How two workers on PostgreSQL compare with one. `python -m tests.bench.workers URL` is one of them.

The machine may be used by others, too. So beside the time on the clock stands the time without what a worker,
or the server process that serves it, was ready and only waited for a processor (/proc/PID/schedstat on
Linux): what is left is work, and waiting for each other.
"""

import json
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Engine

from bot.desk import Desk
from bot.roster import read_roster
from persistence.engine import open_engine
from persistence.inbox import Received
from persistence.migrate import migrate
from persistence.store import Store
from tests.bot.telegram.village import roster
from tests.postgres import find_programs, running


@dataclass(frozen=True, slots=True)
class Times:
    """What one worker did: steps, seconds by the clock; at work and kept waiting, of it and its server."""

    steps: int
    seconds: float
    worked: float
    waited: float
    served: float
    serving_waited: float

    @property
    def unhindered(self) -> float:
        """The seconds that it would have taken with a processor always free.

        Worker and server can both have waited at the same moment, but what they did takes its time.
        """
        return max(self.worked + self.served, self.seconds - self.waited - self.serving_waited)


def two_workers(said: Callable[[str, str], Received], messages: int = 20, clients: int = 60) -> float | None:
    """Return how many times as fast two workers are as one, with processors free; None without PostgreSQL."""
    programs = find_programs()
    if programs is None:
        return None
    rates = {}
    with running(programs) as server:
        for workers in (1, 2):
            with server.database(f"bench{workers}") as url:
                engine = open_engine(url)
                migrate(engine)
                store = Store(engine)
                chats = {f"Client {n}": f"telegram:{n + 100}" for n in range(clients)}
                store.load_roster(read_roster(roster(chats=chats)), datetime.now(UTC))
                Desk(store, lambda: datetime.now(UTC)).clear()
                for chat in chats.values():
                    store.receive([said(chat, f"romanian deadlift {60 + n} kg x 6") for n in range(messages)])
                rates[workers] = _told(_raced(url, workers))
                store.close()
    return rates[2] / rates[1]


def _raced(url: str, workers: int) -> list[Times]:
    command = [sys.executable, "-m", "tests.bench.workers", url]
    started = [
        subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        for _ in range(workers)
    ]
    for each in started:
        assert each.stdout is not None
        each.stdout.readline()
    for each in started:
        assert each.stdin is not None
        each.stdin.write("\n")
        each.stdin.flush()
    return [Times(**json.loads(each.communicate()[0])) for each in started]


def _told(times: list[Times]) -> float:
    """Print what so many workers took, and return their steps a second with processors free."""
    steps = sum(each.steps for each in times)
    rate = steps / max(each.unhindered for each in times)
    by_clock = steps / max(each.seconds for each in times)
    of_worker, of_server = (
        1000 * sum(each) / steps for each in ([one.worked for one in times], [one.served for one in times])
    )
    waits = 1000 * sum(each.unhindered for each in times) / steps - of_worker - of_server
    print(
        f"PostgreSQL, {len(times)} at work: {by_clock:.0f} reports a second by the clock, {rate:.0f} alone;"
    )
    print(f"a report takes {of_worker:.1f} ms of a worker, {of_server:.1f} of the server, waits {waits:.1f}")
    return rate


def work(url: str) -> Times:
    """Do all there is to do, once told to on standard input."""
    engine = open_engine(url)
    store = Store(engine)
    desk = Desk(store, lambda: datetime.now(UTC))
    server = _serving(engine)
    print("ready", flush=True)
    sys.stdin.readline()
    own, other, began = _scheduled("self"), _scheduled(server), time.perf_counter()
    steps = desk.clear()
    seconds = time.perf_counter() - began
    (worked, waited), (served, serving_waited) = _since(own, "self"), _since(other, server)
    return Times(steps, seconds, worked, waited, served, serving_waited)


def _serving(engine: Engine) -> str:
    """Return the number of the server process that serves the one connection of this worker."""
    with engine.connect() as connection:
        return str(connection.exec_driver_sql("SELECT pg_backend_pid()").scalar())


def _scheduled(process: str) -> tuple[float, float]:
    """Return the seconds a process has been at work, and ready without a processor; 0 if unknown."""
    try:
        worked, waited, _ = Path(f"/proc/{process}/schedstat").read_text("ascii").split()
    except OSError:
        return 0.0, 0.0
    return int(worked) / 1e9, int(waited) / 1e9


def _since(before: tuple[float, float], process: str) -> tuple[float, float]:
    worked, waited = _scheduled(process)
    return worked - before[0], waited - before[1]


if __name__ == "__main__":
    print(json.dumps(asdict(work(sys.argv[1]))))
