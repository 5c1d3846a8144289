"""Clients report sets and say what hurts while the bot is killed again and again; then all is counted.

On SQLite one process is killed at random moments; on PostgreSQL three workers share the work, and each second
one of them is killed.
"""

import random
import time
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path

from tests.botapi.errors import Slow
from tests.botapi.server import BotApi
from tests.kill.process import Process, process, until
from tests.kill.traffic import Counted, Village, counted, secrets_in, settled

SENDERS = 4
"""How many chats a worker sends into at once: so many messages may be under way at a kill."""


@dataclass(frozen=True, slots=True)
class Proof:
    """How often which workers were killed within which time, and what was found then."""

    workers: int
    kills: int
    seconds: float
    found: Counted

    def __str__(self) -> str:
        """Say it in three lines, and each fault in one of its own."""
        return f"{self.kills} kills of {self.workers} workers in {self.seconds:.0f} s\n{self.found}"


def prove(kills: int, seed: int, folder: Path, url: str, *, at_work: float = 0.0) -> Proof:
    """Kill the bot so often, at moments drawn from `seed`; return what was found.

    The share `at_work` of the kills waits until the bot has started. On a machine that others use, starting
    takes longer than a bot lives otherwise, and nothing else would ever be killed.
    """
    chance, began = random.Random(seed), time.monotonic()
    workers = 3 if url.startswith("postgresql") else 1
    with BotApi() as api, ExitStack() as stack:
        village = settled(api, url, kills)
        api.fail("sendMessage", Slow(0.05), times=1_000_000)  # so that a kill finds something under way
        bots = []
        for number in range(workers):
            own = folder / f"worker-{number}"
            own.mkdir()
            bots.append(stack.enter_context(process(own, url, api)))
        village.all_come_in()
        until(village.is_in)
        with village.talking(random.Random(kills)):
            _kill(bots, village, kills, chance, at_work)
        until(village.all_answered, going_on=village.sent)  # each chat at its pace: it takes a while
        for bot in bots:
            until(bot.serves)
        faults = [f"stopped with {status}" for bot in bots if (status := bot.stop()) != 0]
        for bot in bots:
            log = bot.log.read_text("utf-8")
            faults += [f"the log holds {words!r}" for words in secrets_in(log, village)]
        found = counted(url, village, kills * SENDERS, faults)
        return Proof(workers, kills, time.monotonic() - began, found)


def _kill(bots: list[Process], village: Village, kills: int, chance: random.Random, at_work: float) -> None:
    """Kill one of the bots so often, each time with a complaint on its way."""
    for _ in range(kills):
        bot = chance.choice(bots)
        if chance.random() < at_work:
            until(bot.serves)
        wait = 1.0 if len(bots) > 1 else chance.uniform(0.5, 2.5)
        before = chance.uniform(0, min(wait, 0.6))
        time.sleep(wait - before)
        village.complain()
        time.sleep(before)
        bot.kill_and_start_again()
