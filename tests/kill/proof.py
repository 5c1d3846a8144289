"""Clients report set after set while the bot is killed again and again; then everything is counted."""

import random
import re
import threading
import time
from dataclasses import dataclass
from itertools import groupby
from pathlib import Path

from persistence.engine import open_engine
from persistence.store import Store, open_store
from tests.bot.telegram.village import codes, inbox_count, journal
from tests.botapi.errors import Slow
from tests.botapi.people import Person
from tests.botapi.server import BotApi
from tests.kill.process import process, until

CLIENTS = ("Bram", "Chidi", "Dilnoza", "Emre")
FIRST_LOAD = 100
HURTS = "my left knee hurts"


@dataclass(frozen=True, slots=True)
class Proof:
    """What was found. `faults` says what is not as it must be; empty where all is."""

    kills: int
    seconds: float
    reports: int
    recorded: int
    alerts: int
    delivered: int
    again: int
    faults: tuple[str, ...]

    def __str__(self) -> str:
        """Say it in three lines, and each fault in one of its own."""
        return "\n".join(
            (
                f"{self.kills} kills in {self.seconds:.0f} s",
                f"{self.recorded} of {self.reports} reports recorded once, {self.again} answers again",
                f"{self.delivered} of {self.alerts} alerts delivered",
                *self.faults,
            )
        )


def prove(kills: int, seed: int, folder: Path) -> Proof:
    """Kill the bot so often, at moments drawn from `seed`; return what was found."""
    chance = random.Random(seed)
    url = f"sqlite:///{folder / 'kilopost.sqlite3'}"
    store = open_store(url)
    began = time.monotonic()
    with BotApi() as api:
        people = {name: api.person(number, name) for number, name in enumerate(("Ilse", *CLIENTS), start=1)}
        ilse, clients = people["Ilse"], {name: people[name] for name in CLIENTS}
        code = codes(store, *CLIENTS)
        api.fail("sendMessage", Slow(0.05), times=1_000_000)  # so that a kill finds something under way
        with process(folder, url, api) as bot:
            for name, person in people.items():
                person.says(f"/start {code[name]}")
            until(lambda: all(person.received for person in people.values()))
            done = threading.Event()
            said = dict.fromkeys(CLIENTS, 0)
            talking = threading.Thread(target=_talk, args=(clients, said, done, random.Random(seed + 1)))
            talking.start()
            for _ in range(kills):
                time.sleep(chance.uniform(0.5, 2.5))
                bot.kill_and_start_again()
            done.set()
            talking.join()
            until(lambda: api.world.waiting == 0, seconds=120)
            until(lambda: all(_last(clients[name], said[name]) for name in CLIENTS), seconds=300)
            until(lambda: all(_alerts(ilse, name) for name in CLIENTS), seconds=60)
            stopped = bot.stop()
        faults = [] if stopped == 0 else [f"stopped with {stopped}"]
        log = bot.log.read_text("utf-8")
        faults += [f"the log holds {words!r}" for words in _secret(log, api, code)]
        return _counted(store, url, clients, said, ilse, kills, time.monotonic() - began, faults)


def _talk(
    clients: dict[str, Person], said: dict[str, int], done: threading.Event, chance: random.Random
) -> None:
    """Let somebody report the next set, again and again; in the end everybody says that something hurts."""
    while not done.is_set():
        name = chance.choice(CLIENTS)
        clients[name].says(f"romanian deadlift {FIRST_LOAD + said[name]} kg x 6")
        said[name] += 1
        done.wait(chance.uniform(0.05, 0.4))
    for person in clients.values():
        person.says(HURTS)


def _loads(person: Person) -> list[int]:
    """Return the load that each answer to a report is about."""
    named = (re.match(r"Romanian deadlift: (\d+)\s*kg", message.text) for message in person.received)
    return [int(load[1]) for load in named if load is not None]


def _last(person: Person, said: int) -> bool:
    return said == 0 or FIRST_LOAD + said - 1 in _loads(person)


def _alerts(ilse: Person, name: str) -> bool:
    return any(name in message.text and "knee" in message.text for message in ilse.received)


def _secret(log: str, api: BotApi, code: dict[str, str]) -> list[str]:
    """Return what of the token, the codes, the names and the texts stands in the log."""
    words = (api.token.partition(":")[2], "deadlift", HURTS, "Traceback", *CLIENTS, *code.values())
    return [word for word in words if word in log]


def _counted(
    store: Store,
    url: str,
    clients: dict[str, Person],
    said: dict[str, int],
    ilse: Person,
    kills: int,
    seconds: float,
    faults: list[str],
) -> Proof:
    store.close()
    engine = open_engine(url)
    recorded = again = 0
    for name, person in clients.items():
        wanted = list(range(FIRST_LOAD, FIRST_LOAD + said[name]))
        kept = [int(float(each.load)) for each in journal(engine, name)]
        recorded += len(set(kept) & set(wanted))
        if kept != wanted:
            faults.append(f"{name}: recorded {kept} instead of {wanted}")
        if inbox_count(engine, name) != said[name] + 2:
            faults.append(f"{name}: {inbox_count(engine, name)} messages in the inbox, {said[name] + 2} sent")
        answered = _loads(person)
        again += len(answered) - len([*groupby(answered)])
        if [load for load, _ in groupby(answered)] != wanted:
            faults.append(f"{name}: answered {answered} instead of {wanted}")
    engine.dispose()
    if again > kills * len(clients):
        faults.append(f"{again} answers came again, at most one is under way in each chat at a kill")
    delivered = sum(_alerts(ilse, name) for name in clients)
    return Proof(kills, seconds, sum(said.values()), recorded, len(clients), delivered, again, tuple(faults))
