"""Clients report sets and say what hurts while the bot is killed again and again; then all is counted.

On SQLite one process is killed at random moments; on PostgreSQL three workers share the work, and each second
one of them is killed.
"""

import random
import re
import threading
import time
from contextlib import ExitStack
from dataclasses import dataclass, field
from itertools import groupby
from pathlib import Path

from persistence.engine import open_engine
from persistence.store import open_store
from tests.bot.telegram.village import codes, inbox_count, journal
from tests.botapi.errors import Slow
from tests.botapi.people import Person
from tests.botapi.server import BotApi
from tests.kill.process import Process, process, until

CLIENTS = ("Bram", "Chidi", "Dilnoza", "Emre")
FIRST_LOAD = 100
HURTS = "my left knee hurts"
SENDERS = 4
"""How many chats a worker sends into at once: so many messages may be under way at a kill."""


@dataclass(frozen=True, slots=True)
class Proof:
    """What was found. `faults` says what is not as it must be; empty where all is."""

    workers: int
    kills: int
    seconds: float
    reports: int
    recorded: int
    again: int
    alerts: int
    delivered: int
    alerts_again: int
    faults: tuple[str, ...]

    def __str__(self) -> str:
        """Say it in three lines, and each fault in one of its own."""
        return "\n".join(
            (
                f"{self.kills} kills of {self.workers} workers in {self.seconds:.0f} s",
                f"{self.recorded} of {self.reports} reports recorded once, {self.again} answers again",
                f"{self.delivered} of {self.alerts} alerts delivered, {self.alerts_again} again",
                *self.faults,
            )
        )


@dataclass
class Village:
    """The coach, four clients who report, and as many as there are kills who say once what hurts."""

    api: BotApi
    coach: Person
    reporting: dict[str, Person]
    hurting: dict[str, Person]
    code: dict[str, str]
    said: dict[str, int] = field(default_factory=lambda: dict.fromkeys(CLIENTS, 0))
    complained: list[str] = field(default_factory=list)

    def report(self, chance: random.Random) -> None:
        """Let somebody report the next set."""
        name = chance.choice(CLIENTS)
        self.reporting[name].says(f"romanian deadlift {FIRST_LOAD + self.said[name]} kg x 6")
        self.said[name] += 1

    def complain(self) -> None:
        """Let the next one say what hurts."""
        name = [*self.hurting][len(self.complained)]
        self.hurting[name].says(HURTS)
        self.complained.append(name)

    def loads(self, name: str) -> list[int]:
        """Return the load that each answer to a report is about."""
        received = self.reporting[name].received
        named = (re.match(r"Romanian deadlift: (\d+)\s*kg", message.text) for message in received)
        return [int(load[1]) for load in named if load is not None]

    def alerts(self, name: str) -> int:
        """Return how often the coach has heard of what hurts somebody."""
        about = [message for message in self.coach.received if "knee" in message.text]
        return sum(re.search(rf"\b{name}\b", message.text) is not None for message in about)

    def all_answered(self) -> bool:
        """Return whether the last report of everybody was answered."""
        last = {name: FIRST_LOAD + said - 1 for name, said in self.said.items() if said}
        return all(load in self.loads(name) for name, load in last.items())


def prove(kills: int, seed: int, folder: Path, url: str) -> Proof:
    """Kill the bot so often, at moments drawn from `seed`; return what was found."""
    chance, began = random.Random(seed), time.monotonic()
    workers = 3 if url.startswith("postgresql") else 1
    with BotApi() as api, ExitStack() as stack:
        village = _settled(api, url, kills)
        api.fail("sendMessage", Slow(0.05), times=1_000_000)  # so that a kill finds something under way
        bots = []
        for number in range(workers):
            own = folder / f"worker-{number}"
            own.mkdir()
            bots.append(stack.enter_context(process(own, url, api)))
        for name, person in village.reporting.items():
            person.says(f"/start {village.code[name]}")
        village.coach.says(f"/start {village.code['Ilse']}")
        until(lambda: all(person.received for person in (*village.reporting.values(), village.coach)))
        _kill_under_traffic(bots, village, kills, chance)
        until(lambda: api.world.waiting == 0)
        until(village.all_answered)
        until(lambda: all(village.alerts(name) for name in village.complained))
        for bot in bots:
            until(bot.serves)
        faults = [f"stopped with {status}" for bot in bots if (status := bot.stop()) != 0]
        for bot in bots:
            log = bot.log.read_text("utf-8")
            faults += [f"the log holds {words!r}" for words in _secret(log, village)]
        return _counted(url, village, workers, kills, time.monotonic() - began, faults)


def _settled(api: BotApi, url: str, complaints: int) -> Village:
    """Prepare everybody; those who will complain have the chat open already."""
    names = tuple(f"Zora{number}" for number in range(complaints))
    store = open_store(url)
    hurting = {name: api.person(1000 + number, name) for number, name in enumerate(names)}
    for person in hurting.values():
        api.world.started.add(person.number)
    code = codes(store, *CLIENTS, chats={name: f"telegram:{each.number}" for name, each in hurting.items()})
    store.close()
    reporting = {name: api.person(number, name) for number, name in enumerate(CLIENTS, start=2)}
    return Village(api, api.person(1, "Ilse"), reporting, hurting, code)


def _kill_under_traffic(bots: list[Process], village: Village, kills: int, chance: random.Random) -> None:
    """Kill one of the bots so often, each with a complaint on its way, and traffic all the while."""
    done = threading.Event()

    def talk() -> None:
        talks = random.Random(kills)
        while not done.is_set():
            village.report(talks)
            done.wait(talks.uniform(0.05, 0.4))

    talking = threading.Thread(target=talk)
    talking.start()
    for _ in range(kills):
        wait = 1.0 if len(bots) > 1 else chance.uniform(0.5, 2.5)
        before = chance.uniform(0, min(wait, 0.6))
        time.sleep(wait - before)
        village.complain()
        time.sleep(before)
        chance.choice(bots).kill_and_start_again()
    done.set()
    talking.join()


def _secret(log: str, village: Village) -> list[str]:
    """Return what of the token, the codes, the names and the texts stands in the log."""
    token = village.api.token.partition(":")[2]
    words = (token, "deadlift", HURTS, "Traceback", *CLIENTS, "Zora", *village.code.values())
    return [word for word in words if word in log]


def _counted(
    url: str, village: Village, workers: int, kills: int, seconds: float, faults: list[str]
) -> Proof:
    engine = open_engine(url)
    recorded = again = 0
    for name, said in village.said.items():
        wanted = list(range(FIRST_LOAD, FIRST_LOAD + said))
        kept = [int(float(each.load)) for each in journal(engine, name)]
        recorded += len(set(kept) & set(wanted))
        if kept != wanted:
            faults.append(f"{name}: recorded {kept} instead of {wanted}")
        if (stored := inbox_count(engine, name)) != said + 1:
            faults.append(f"{name}: {stored} messages in the inbox, {said + 1} sent")
        answered = village.loads(name)
        again += len(answered) - len([*groupby(answered)])
        if [load for load, _ in groupby(answered)] != wanted:
            faults.append(f"{name}: answered {answered} instead of {wanted}")
    engine.dispose()
    heard = [village.alerts(name) for name in village.complained]
    alerts_again = sum(heard) - sum(times > 0 for times in heard)
    if again + alerts_again > kills * SENDERS:
        faults.append(
            f"{again + alerts_again} messages came again, {kills * SENDERS} can have been under way"
        )
    return Proof(
        workers=workers,
        kills=kills,
        seconds=seconds,
        reports=sum(village.said.values()),
        recorded=recorded,
        again=again,
        alerts=len(heard),
        delivered=sum(times > 0 for times in heard),
        alerts_again=alerts_again,
        faults=tuple(faults),
    )
