"""Clients report sets and say what hurts while one thing after the other fails; then all is counted."""

import random
import resource
import time
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import TypeAlias

import psycopg
import psycopg.sql
from sqlalchemy import Engine, make_url

from persistence.engine import open_engine, writing
from persistence.faults import DatabaseTrouble
from tests.botapi.errors import Broken, Cut, Failure, Nonsense, Odd, Slow, TooMany
from tests.botapi.server import BotApi
from tests.faults.skewed import BUSY_SECONDS
from tests.kill.process import Process, process, until
from tests.kill.traffic import Counted, counted, secrets_in, settled

PLATFORM: tuple[Failure, ...] = (
    TooMany(1),
    Broken(500),
    Broken(502, done=True),
    Cut(),
    Cut(done=True),
    Nonsense(),
    Odd({"ok": True, "result": []}),
    Slow(1),
)
ASKING: tuple[Failure, ...] = (Broken(502, done=True), Cut(done=True), Nonsense(), TooMany(1))
TIME_OUT = Slow(22)
"""Longer than the bot waits for an answer."""

LOCKED_SECONDS = BUSY_SECONDS + 0.5
"""Longer than the bot waits for a lock."""
AWAY_SECONDS = 1.5
JUMPS = (3600.0, -1800.0, 0.0)
"""Where the clock is set to, in seconds from the true time, one after the other."""

Trouble: TypeAlias = tuple[str, Callable[[], AbstractContextManager[None]]]
"""What it is called, and what lets it last."""


@dataclass(frozen=True, slots=True)
class Proof:
    """How often each thing failed within which time, and what was found then."""

    failed: dict[str, int]
    seconds: float
    found: Counted

    def __str__(self) -> str:
        """Say it in three lines, and each fault in one of its own."""
        failed = ", ".join(f"{name} {times}" for name, times in self.failed.items())
        return f"failed in {self.seconds:.0f} s: {failed}\n{self.found}"


def prove(rounds: int, seed: int, folder: Path, url: str, *, long: bool) -> Proof:
    """Let everything fail so often, at moments drawn from `seed`; the `long` form has time-outs, too."""
    chance, began = random.Random(seed), time.monotonic()
    failed: dict[str, int] = {}
    (folder / "skew").write_text("0", "utf-8")
    with BotApi() as api:
        village = settled(api, url, rounds)
        with process(folder, url, api, module="tests.faults.skewed") as bot:
            village.all_come_in()
            until(village.is_in)
            with village.talking(random.Random(rounds)):
                for _ in range(rounds):
                    village.complain()
                    kinds = (*PLATFORM, TIME_OUT) if long else PLATFORM
                    kinds = tuple(chance.sample(kinds, len(kinds)))
                    half = len(kinds) // 2
                    _fails(api, chance, kinds[:half], ASKING[:2], _of_database(url, bot), failed)
                    _fails(api, chance, kinds[half:], ASKING[2:], _of_clock(folder), failed)
            until(village.all_answered, going_on=village.sent)
            faults = [] if (status := bot.stop()) == 0 else [f"stopped with {status}"]
            faults += [
                f"the log holds {words!r}" for words in secrets_in(bot.log.read_text("utf-8"), village)
            ]
        unclear = sum(times for name, times in failed.items() if "unclear" in name)
        found = counted(url, village, unclear, faults)
    return Proof(failed, time.monotonic() - began, found)


def _fails(
    api: BotApi,
    chance: random.Random,
    sending: tuple[Failure, ...],
    asking: tuple[Failure, ...],
    troubles: Iterator[Trouble],
    failed: dict[str, int],
) -> None:
    """Let the platform fail in these ways, and beside it what else there is, until all of it has failed."""
    _platform(api, sending, asking, failed)
    for name, trouble in troubles:
        with trouble():
            time.sleep(chance.uniform(0.2, 1.0))
        failed[name] = failed.get(name, 0) + 1
    # Else they pile up: the more in a row, the longer the bot waits before it tries again.
    until(lambda: not api.world.failures, going_on=lambda: len(api.world.failures))


def _platform(
    api: BotApi, sending: tuple[Failure, ...], asking: tuple[Failure, ...], failed: dict[str, int]
) -> None:
    """Let sending fail in each of these ways, and asking for updates in those."""
    for failure in sending:
        api.fail("sendMessage", failure)
        surely = isinstance(failure, TooMany) or (failure != TIME_OUT and isinstance(failure, Slow))
        name = type(failure).__name__ + (f" {failure.code}" if isinstance(failure, Broken) else "")
        name = ("time-out" if failure == TIME_OUT else name.lower()) + ("" if surely else " (unclear)")
        failed[name] = failed.get(name, 0) + 1
    for failure in asking:
        api.fail("getUpdates", failure)


def _of_database(url: str, bot: Process) -> Iterator[Trouble]:
    if url.startswith("sqlite"):
        yield "locked database", lambda: _locked(url)
        yield "full disk", lambda: _full_disk(bot)
    else:
        yield "database gone and back", lambda: _away(url)


def _of_clock(folder: Path) -> Iterator[Trouble]:
    for jump in JUMPS:
        yield "clock set", lambda jump=jump: _clock_set(folder, jump)  # type: ignore[misc]  # mypy wants it spelled out


@contextmanager
def _locked(url: str) -> Iterator[None]:
    engine = open_engine(url)
    until(lambda: _held(engine))
    engine.dispose()
    yield


def _held(engine: Engine) -> bool:
    """Hold the lock for a while; return False where nobody let go of it on a busy disk."""
    try:
        with writing(engine):
            time.sleep(LOCKED_SECONDS)
    except DatabaseTrouble:
        return False
    return True


@contextmanager
def _full_disk(bot: Process) -> Iterator[None]:
    """Let no file of the bot's grow: what is written then fails as on a disk that is full."""
    before = resource.prlimit(bot.number, resource.RLIMIT_FSIZE)
    resource.prlimit(bot.number, resource.RLIMIT_FSIZE, (1024, before[1]))
    try:
        time.sleep(AWAY_SECONDS)
        yield
    finally:
        resource.prlimit(bot.number, resource.RLIMIT_FSIZE, before)


@contextmanager
def _away(url: str) -> Iterator[None]:
    """Throw everybody out of the database, and let nobody in for a while."""
    parsed = make_url(url)
    host, user = str(parsed.query["host"]), parsed.username
    name = psycopg.sql.Identifier(str(parsed.database))
    allow = psycopg.sql.SQL("ALTER DATABASE {} WITH ALLOW_CONNECTIONS {}")
    out = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = %s"
    with psycopg.connect(host=host, user=user, dbname="postgres", autocommit=True) as connection:
        connection.execute(allow.format(name, psycopg.sql.SQL("false")))
        connection.execute(out, [parsed.database])
        time.sleep(AWAY_SECONDS)
        connection.execute(allow.format(name, psycopg.sql.SQL("true")))
    yield


@contextmanager
def _clock_set(folder: Path, seconds: float) -> Iterator[None]:
    new = folder / "skew.new"
    new.write_text(str(seconds), "utf-8")
    new.replace(folder / "skew")
    yield
