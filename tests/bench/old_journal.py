"""`python -m tests.bench.old_journal`: how fast an old journal is taken in, beside bare inserts of its rows.

The journal goes the whole way: read, held against the client's, named, in portions through inbox, decision
and outcome. Bare inserts are SQLAlchemy's own, as many rows at a time, into the same tables of a database of
the same kind, in transactions of the same size. Each is done a few times in turn, and the least processor
time counts. `--rows N`.
"""

import argparse
import time
from datetime import date, timedelta

from sqlalchemy import insert

from bot.commands.database import passing
from bot.desk import LEASE_SECONDS, decider
from bot.roster import read_roster
from domain.client.old_journal import PORTION
from domain.incoming import Document, JournalSent
from domain.old_journal import read_journal
from persistence.engine import writing
from persistence.journal import _entry
from persistence.store import Store
from persistence.tables import EntryRow, WorkoutRow
from tests.bot.test_desk import NOW, ROSTER

TIMES = 3
LIFTS = ("Leg press", "Bench press", "Back squat", "Lat pulldown", "Deadlift")


def table(rows: int) -> str:
    """Return a journal of so many sets, ten a day."""
    lines = ["date,exercise,load,unit,reps"]
    for at in range(rows):
        day = date(2012, 1, 1) + timedelta(days=at // 10)
        lines.append(f"{day},{LIFTS[at // 2 % 5]},{50 + at // 200 * 0.5},kg,{5 + at % 7}")
    return "\n".join(lines)


def taking(text: str, rows: int) -> tuple[float, float]:
    """Return how many seconds a journal takes the whole way, and how many the same rows bare."""
    with passing() as store:
        store.load_roster(read_roster(ROSTER), NOW)
        client = next(person for person in store.people() if person.is_client)
        assert client.coach is not None
        order = JournalSent(coach=client.coach, file=0, name="old.csv", step="begin")
        read_journal.cache_clear()
        begun = time.process_time()
        store.bring_journal(client.number, Document(name="old.csv", text=text), order, NOW)
        while (lease := store.claim_person(NOW, LEASE_SECONDS)) is not None:
            while store.work(lease, NOW, decider(NOW)):
                pass
        whole = time.process_time() - begun
        state = store.whole_client(client.number, client.number)
        assert state is not None
        assert len(state.entries) == rows
        return whole, bare(store, client.number)


def bare(store: Store, client: int) -> float:
    """Return how many seconds it takes to insert what the client has once more, under another's number."""
    other = next(person.number for person in store.people() if person.is_coach)
    state = store.whole_client(client, client)
    assert state is not None
    workouts = [
        {
            "client": other,
            "number": each.number,
            "programme": None,
            "name": each.name,
            "day": each.on,
            "state": each.state,
            "round": each.round,
            "skipped": each.skipped,
        }
        for each in state.workouts
    ]
    entries = [_entry(other, each) for each in state.entries]
    begun = time.process_time()
    with writing(store._engine) as connection:
        connection.execute(insert(WorkoutRow), workouts)
    for at in range(0, len(entries), PORTION):
        with writing(store._engine) as connection:
            connection.execute(insert(EntryRow), entries[at : at + PORTION])
    return time.process_time() - begun


def main() -> None:
    """Print rows a second, and the ratio to bare inserts."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--rows", type=int, default=5_000)
    rows = parser.parse_args().rows
    text = table(rows)
    measured = [taking(text, rows) for _ in range(TIMES)]
    whole, inserts = min(each[0] for each in measured), min(each[1] for each in measured)
    begun = time.process_time()
    read_journal.cache_clear()
    read_journal(text, "Noor", "kg", NOW.date(), month_first=None)
    read = time.process_time() - begun
    print(f"{rows} rows: {rows / whole:,.0f} a second the whole way, {rows / inserts:,.0f} bare inserts")
    print(
        f"the whole way takes {whole / inserts:.1f} times as long as bare inserts; reading alone {read:.2f} s"
    )


if __name__ == "__main__":
    main()
