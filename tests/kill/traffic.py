"""What people do while the bot is killed or everything fails around it, and how it is counted in the end."""

import random
import re
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import groupby

from persistence.engine import open_engine
from persistence.store import open_store
from tests.bot.telegram.village import codes, inbox_count, journal
from tests.botapi.people import Person
from tests.botapi.server import BotApi

CLIENTS = ("Bram", "Chidi", "Dilnoza", "Emre")
FIRST_LOAD = 100
HURTS = "my left knee hurts"


@dataclass(frozen=True, slots=True)
class Counted:
    """What was found. `faults` says what is not as it must be; empty where all is."""

    reports: int
    recorded: int
    again: int
    alerts: int
    delivered: int
    alerts_again: int
    faults: tuple[str, ...]

    def __str__(self) -> str:
        """Say it in two lines, and each fault in one of its own."""
        return "\n".join(
            (
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

    def all_come_in(self) -> None:
        """Let everybody open the chat who has not yet."""
        for name, person in (*self.reporting.items(), ("Ilse", self.coach)):
            person.says(f"/start {self.code[name]}")

    def is_in(self) -> bool:
        """Return whether everybody has been welcomed."""
        return all(person.received for person in (*self.reporting.values(), self.coach))

    def sent(self) -> int:
        """Return how much the bot has said so far."""
        with self.api.world.changed:
            return len(self.api.world.sent)

    def all_answered(self) -> bool:
        """Return whether all last reports were answered, and the coach has heard of all that hurts."""
        last = {name: FIRST_LOAD + said - 1 for name, said in self.said.items() if said}
        return (
            self.api.world.waiting == 0
            and all(load in self.loads(name) for name, load in last.items())
            and all(self.alerts(name) for name in self.complained)
        )

    @contextmanager
    def talking(self, chance: random.Random) -> Iterator[None]:
        """Let one report follow the other while this lasts: hardly faster than a chat can be answered."""
        done = threading.Event()

        def talk() -> None:
            while not done.is_set():
                self.report(chance)
                done.wait(chance.uniform(0.05, 0.6))

        thread = threading.Thread(target=talk)
        thread.start()
        try:
            yield
        finally:
            done.set()
            thread.join()


def settled(api: BotApi, url: str, complaints: int) -> Village:
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


def secrets_in(log: str, village: Village) -> list[str]:
    """Return what of the token, the codes, the names and the texts stands in the log."""
    token = village.api.token.partition(":")[2]
    words = (token, "deadlift", HURTS, "Traceback", *CLIENTS, "Zora", *village.code.values())
    return [word for word in words if word in log]


def counted(url: str, village: Village, most_again: int, faults: list[str]) -> Counted:
    """Hold what was recorded and said against what was reported; `most_again` answers may have come twice."""
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
    if again + alerts_again > most_again:
        faults.append(f"{again + alerts_again} messages came again, {most_again} can have been under way")
    return Counted(
        reports=sum(village.said.values()),
        recorded=recorded,
        again=again,
        alerts=len(heard),
        delivered=sum(times > 0 for times in heard),
        alerts_again=alerts_again,
        faults=tuple(faults),
    )
