"""`python -m tests.bench.start`: how soon the bot answers after its start, and what it costs while idle.

Where others use the machine, too, a start is told in seconds of a processor: so long it would take alone.
"""

import asyncio
import resource
import subprocess
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path
from typing import Any

from sqlalchemy import event

from bot.serve import serve
from bot.telegram.connection import make_bot
from persistence.engine import open_engine
from persistence.store import Store
from tests.botapi.server import BotApi
from tests.kill.process import ROOT, process, until
from tests.kill.traffic import settled

IDLE_SECONDS = 20


def main() -> int:
    """Measure, and print a table; 1 where something misses what it has to reach."""
    with tempfile.TemporaryDirectory(prefix="kilopost-start-") as name, BotApi() as api:
        folder = Path(name)
        url = f"sqlite:///{folder / 'k.sqlite3'}"
        village = settled(api, url, 0)
        with process(folder, url, api) as bot:
            until(bot.serves)
            village.all_come_in()
            until(village.is_in)
            time.sleep(IDLE_SECONDS)
            megabytes = _resident(bot.number)
            bot.stop()
        often = asyncio.run(_most_often(url, api))
    found = (
        ("`read TEXT`", _started("read", "squat 60x8"), 0.4, "s"),
        ("the local chat's first answer", _started("chat", "--roster", "demo/roster.json"), 1.0, "s"),
        ("idle, after everybody has come in", megabytes, 120, "MB"),
        ("the query asked most often while idle", often, 1.1, "a second"),
    )
    for what, got, reach, unit in found:
        print(f"{what:<42}{got:>8.2f}  ≤ {reach:g} {unit}  {'' if got <= reach else 'MISSED'}")
    return 0 if all(got <= reach for _, got, reach, _ in found) else 1


def _started(*command: str, runs: int = 3) -> float:
    """Return the seconds of a processor from the start to the end of a command that says just one thing."""
    taken = []
    for _ in range(runs):
        before = _children()
        subprocess.run(
            [sys.executable, "-m", "bot", *command],
            cwd=ROOT,
            input="what's next?\n",
            capture_output=True,
            text=True,
            check=True,
        )
        taken.append(_children() - before)
    return min(taken)


def _children() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def _resident(process_number: int) -> float:
    """Return the megabytes that a process has in memory."""
    lines = Path(f"/proc/{process_number}/status").read_text("ascii").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS")) / 1024


async def _most_often(url: str, api: BotApi) -> float:
    """Return how often a second the query comes that comes most often, with nothing to do."""
    asked: Counter[str] = Counter()
    engine = open_engine(url)

    def count(_connection: object, _cursor: object, statement: str, *_more: Any) -> None:
        asked[statement] += not statement.startswith(("BEGIN", "PRAGMA"))

    store = Store(engine)
    bot = asyncio.create_task(serve(store, make_bot(api.token, api.url)))
    await asyncio.sleep(2)
    event.listen(engine, "before_cursor_execute", count)
    await asyncio.sleep(IDLE_SECONDS)
    bot.cancel()
    await asyncio.gather(bot, return_exceptions=True)
    store.close()
    return max(asked.values(), default=0) / IDLE_SECONDS


if __name__ == "__main__":
    sys.exit(main())
