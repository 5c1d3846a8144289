"""`python -m tests.bench.work [--sets N] [--clients N]`: how long the bot takes for what it does all day.

Each line is a ratio in one run on one machine, beside what it has to reach: a report against a bare durable
commit of as many rows, two workers against one, a journal of many sets against one of few.
"""

import argparse
import resource
import sqlite3
import statistics
import sys
import tempfile
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from itertools import count
from pathlib import Path
from time import perf_counter

from sqlalchemy import Engine, text

from bot.delivery import render
from bot.desk import Desk
from bot.roster import read_roster
from domain.incoming import Text
from persistence.engine import open_engine, writing
from persistence.inbox import Received
from persistence.migrate import migrate
from persistence.store import Store
from tests.bench.workers import two_workers
from tests.bot.telegram.village import roster

ROUNDS = 40
KEYS = count(1)
REPORTING = 200
"""How many clients report in turn."""
SETS_EACH = 6
"""How many sets one of them reports, a message a set: as many as a workout has of an exercise at most."""
TURNS = count()
SETS_OF_ONE, SETS_OF_WORKOUT = 2_000, 10
AT_ONCE = 250
"""Of how many clients the sets are put in at once."""
ROWS = 7
"""What one report writes: the message, its end, the set, the workout, the answer, the chat, the person."""


def main() -> int:
    """Measure, and print a table; 1 where something misses what it has to reach."""
    arguments = argparse.ArgumentParser(description="Measure what the bot does all day.")
    arguments.add_argument("--sets", type=int, default=10_000_000)
    arguments.add_argument("--clients", type=int, default=100_000)
    said = arguments.parse_args()
    lines: list[tuple[str, str, float, float, bool]] = []

    def told(what: str, unit: str, got: float, reach: float, *, most: bool) -> None:
        lines.append((what, unit, got, reach, got <= reach if most else got >= reach))
        sign = "≤" if most else "≥"
        print(
            f"{what:<66}{got:>9.2f}  {sign} {reach:g} {unit}  {'' if lines[-1][-1] else 'MISSED'}", flush=True
        )

    with tempfile.TemporaryDirectory(prefix="kilopost-bench-") as name:
        folder = Path(name)
        with village(folder / "small.sqlite3", REPORTING) as (engine, store):
            add_sets(engine, 10_000)
            report(store, 5)
            few, bare = in_turn(lambda: report(store, 12), lambda: bare_commit(folder / f"bare-{next(KEYS)}"))
            print(f"a report {few * 1000:.2f} ms, a bare durable commit {bare * 1000:.2f} ms")
            told("a report on SQLite against a bare durable commit", "times", few / bare, 4, most=True)
        with village(folder / "large.sqlite3", REPORTING) as (engine, store):
            add_sets(engine, said.sets)
            with village(folder / "small2.sqlite3", REPORTING) as (small_engine, small):
                add_sets(small_engine, 10_000)
                few, many = in_turn(lambda: report(small, 12), lambda: report(store, 12))
            told(f"a report with {said.sets:,} sets against 10,000", "times", many / few, 1.2, most=True)
        (folder / "large.sqlite3").unlink()
        in_days = datetime.now(UTC).date() + timedelta(days=3)
        with village(folder / "crowd.sqlite3", said.clients, in_days) as (engine, store):
            a_second, sent, grown = wakes(engine, store)
            told(
                f"of {said.clients:,} clients woken, their messages queued and rendered",
                "/s",
                a_second,
                500,
                most=False,
            )
            print(f"sending them to nobody, one by one: {sent:.0f} a second")
            told("memory grown meanwhile", "MB", grown, 20, most=True)
    ratio = two_workers(said_just_now)
    if ratio is not None:
        told("two workers against one on PostgreSQL", "times", ratio, 1.6, most=False)
    return 0 if all(line[-1] for line in lines) else 1


@contextmanager
def village(path: Path, clients: int, starts: date | None = None) -> Iterator[tuple[Engine, Store]]:
    """A database with a coach and so many clients, all settled, who begin on that day (None: today)."""
    engine = open_engine(f"sqlite:///{path}")
    migrate(engine)
    store = Store(engine)
    settle(engine, store, clients, starts)
    yield engine, store
    store.close()


def settle(engine: Engine, store: Store, clients: int, starts: date | None) -> None:
    """Bring in a client, let the bot welcome her, and make the others like her."""
    people = roster("Bram", chats={"Chidi": "telegram:10"})
    if starts is not None:
        people["clients"] = [{**each, "starts": starts.isoformat()} for each in people["clients"]]
    store.load_roster(read_roster(people), datetime.now(UTC))
    Desk(store, lambda: datetime.now(UTC)).clear()
    with writing(engine) as connection:
        like = connection.execute(text("SELECT * FROM people WHERE name = 'Chidi'")).mappings().one()
        rows = [
            {**like, "number": 1000 + each, "name": f"Client {each}", "chat": f"telegram:{1000 + each}"}
            for each in range(clients - 1)
        ]
        columns = ", ".join(map(str, like))
        values = ", ".join(f":{name}" for name in like)
        if rows:
            connection.execute(text(f"INSERT INTO people ({columns}) VALUES ({values})"), rows)  # noqa: S608 our own names


def add_sets(engine: Engine, sets: int) -> None:
    """Give other clients so many recorded sets, `SETS_OF_ONE` each: the work of the database alone."""
    Desk(Store(engine), lambda: datetime.now(UTC)).clear()
    store = Store(engine)
    store.receive([said_just_now("telegram:10", "romanian deadlift 60 kg x 6")])
    Desk(store, lambda: datetime.now(UTC)).clear()
    with writing(engine) as connection:
        like = connection.execute(text("SELECT * FROM people WHERE name = 'Chidi'")).mappings().one()
        others = max(1, sets // SETS_OF_ONE)
    people = {"number": "10000 + n", "name": "'Other ' || n", "chat": "'o:' || n"}
    multiply(engine, "people", f"number = {like['number']}", others, 1, people)
    for first in range(0, others, AT_ONCE):
        clients, moved = min(AT_ONCE, others - first), 10_000 + first
        workout = {"client": f"{moved} + n", "number": "1 + m"}
        multiply(engine, "workouts", "client < 10000", clients, SETS_OF_ONE // SETS_OF_WORKOUT, workout)
        entry = {"client": f"{moved} + n", "number": "1 + m", "workout": f"1 + m / {SETS_OF_WORKOUT}"}
        multiply(engine, "entries", "client < 10000", clients, SETS_OF_ONE, entry)


def multiply(engine: Engine, table: str, like: str, clients: int, each: int, own: Mapping[str, str]) -> None:
    """Copy the first row of a table that is `like` this, `each` times for each of so many clients.

    What is a copy's own is told by `n`, which client it is, and `m`, which of the copies; both begin at 0.
    The database does it by itself: ten million rows would take Python a quarter of an hour.
    """
    with engine.connect() as connection:
        named = [row.name for row in connection.execute(text(f"PRAGMA table_info({table})"))]
    columns = ", ".join(f'"{name}"' for name in named)
    values = ", ".join(own.get(name, f'o."{name}"') for name in named)
    raw = engine.raw_connection()
    try:
        cursor = raw.cursor()
        cursor.execute("PRAGMA synchronous = OFF")
        cursor.execute(
            "WITH RECURSIVE"  # noqa: S608 our own names
            f" ns(n) AS (VALUES (0) UNION ALL SELECT n + 1 FROM ns WHERE n < {clients - 1}),"
            f" ms(m) AS (VALUES (0) UNION ALL SELECT m + 1 FROM ms WHERE m < {each - 1}),"
            f" o AS (SELECT * FROM {table} WHERE {like} LIMIT 1)"
            f" INSERT INTO {table} ({columns})"
            f" SELECT {values} FROM ns, ms, o"
        )
        raw.commit()
        cursor.execute("PRAGMA synchronous = FULL")
    finally:
        raw.close()


def said_just_now(chat: str, words: str) -> Received:
    """Return something typed just now."""
    key = str(next(KEYS))
    return Received("telegram", f"{chat}:{key}:bench", chat, datetime.now(UTC), Text(text=words, key=key))


def report(store: Store, rounds: int = ROUNDS) -> float:
    """Return the seconds from a report's coming in to its committed answer, the median."""
    desk = Desk(store, lambda: datetime.now(UTC))
    times = []
    for number in range(rounds):
        words = f"romanian deadlift {60 + number % 5} kg x 6"
        chat = f"telegram:{1000 + next(TURNS) // SETS_EACH % (REPORTING - 1)}"
        began = perf_counter()
        store.receive([said_just_now(chat, words)])
        desk.clear()
        times.append(perf_counter() - began)
    return statistics.median(times)


def in_turn(*what: Callable[[], float], rounds: int = 3) -> list[float]:
    """Return the best of each of several measurements, taken in turn: what else runs hits all alike."""
    taken = [[each() for each in what] for _ in range(rounds)]
    return [min(column) for column in zip(*taken, strict=True)]


def bare_commit(path: Path) -> float:
    """Return the seconds that a durable commit of as many rows takes with nothing around it, the median."""
    connection = sqlite3.connect(path, isolation_level=None)
    for pragma in ("journal_mode = WAL", "synchronous = FULL"):
        connection.execute(f"PRAGMA {pragma}")
    connection.execute("CREATE TABLE rows (number INTEGER PRIMARY KEY, words TEXT)")
    times = []
    for _ in range(ROUNDS):
        began = perf_counter()
        connection.execute("BEGIN IMMEDIATE")
        for _row in range(ROWS):
            connection.execute("INSERT INTO rows (words) VALUES (?)", ["x" * 300])
        connection.execute("COMMIT")
        times.append(perf_counter() - began)
    connection.close()
    return statistics.median(times)


def wakes(engine: Engine, store: Store, most: int = 3_000) -> tuple[float, float, float]:
    """Let a part of all clients be due for a reminder, and nobody else.

    Return how many are done a second, how many messages are then sent a second, and the megabytes grown.
    """
    with writing(engine) as connection:
        wake_at = connection.execute(text("SELECT wake_at FROM people WHERE number = 1000")).scalar_one()
        connection.execute(text("UPDATE people SET wake_at = NULL"))
    reminded = datetime.fromisoformat(wake_at)
    now = reminded.replace(tzinfo=UTC) + timedelta(minutes=30)
    desk = Desk(store, lambda: now)
    send_all(store, now)
    waking = sending = rendering = before = 0.0
    for first, last in ((1000, 1200), (1200, 1200 + most)):  # the first ones only warm up
        with writing(engine) as connection:
            connection.execute(
                text("UPDATE people SET wake_at = :moment WHERE number >= :first AND number < :last"),
                {"moment": reminded, "first": first, "last": last},
            )
        before, began = _peak(), perf_counter()
        desk.clear()
        waking = perf_counter() - began
        messages, sending, rendering = send_all(store, now)
        if messages != last - first:
            raise SystemExit(f"{last - first} were due, and {messages} reminders came of it")
    return most / (waking + rendering), most / sending, _peak() - before


def send_all(store: Store, now: datetime) -> tuple[int, float, float]:
    """Send all that waits to nobody; return how many reminders, and the seconds of sending and rendering."""
    messages, rendering, began = 0, 0.0, perf_counter()
    while (chat := store.claim_chat(now, 60, "telegram")) is not None:
        while (outgoing := store.next_message(chat, now)) is not None:
            began_to_render = perf_counter()
            words = render(outgoing).text_html
            rendering += perf_counter() - began_to_render
            store.sending(chat, outgoing.number, now)
            store.sent(chat, outgoing.number, words, [str(outgoing.number)], [], now)
            messages += "Training day." in words
    return messages, perf_counter() - began - rendering, rendering


def _peak() -> float:
    """Return how many megabytes this process had at most."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


if __name__ == "__main__":
    sys.exit(main())
