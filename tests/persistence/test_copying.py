"""A database copied whole: into a backup and out of it, from one kind to the other, with weeks in it."""

import asyncio
import threading
from collections.abc import Callable, Iterator
from itertools import count
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine, insert, inspect, select, text

from bot.commands.play import set_up
from bot.enclosing import named
from bot.play.engine import play
from bot.play.script import read_script
from persistence.backup import back_up, restore
from persistence.copying import copy_database
from persistence.engine import open_engine, reading, writing
from persistence.faults import (
    BackupMissing,
    BackupThere,
    DatabaseBroken,
    DatabaseEmpty,
    DatabaseNotEmpty,
)
from persistence.migrate import known_steps, migrate
from persistence.migrations import HEAD
from persistence.store import Store
from persistence.tables import Base, CursorRow, PersonRow
from tests.persistence.people import NOON, settled
from tests.play.golden import SCRIPTS
from tests.test_project import ROOT

PLAYED = SCRIPTS / "sore_knee.jsonl", ROOT / "demo" / "weeks.jsonl"
"""Two coaches and their clients, none of one name."""

BETWEEN_SECONDS = 0.005
"""Between one commit and the next while a backup is made: without, they grow faster than it copies them."""

Opener = Callable[[str], Engine]


@pytest.fixture
def opener() -> Iterator[Opener]:
    opened: list[Engine] = []

    def open_one(url: str) -> Engine:
        opened.append(open_engine(url))
        return opened[-1]

    yield open_one
    for engine in opened:
        engine.dispose()


@pytest.fixture(scope="module")
def lived_in(tmp_path_factory: pytest.TempPathFactory) -> str:
    """The URL of a SQLite database with some weeks of several chats in it; not to be changed."""
    url = f"sqlite:///{tmp_path_factory.mktemp('lived') / 'kilopost.sqlite3'}"
    engine = open_engine(url)
    migrate(engine)
    for path in PLAYED:
        script = read_script(path.read_text("utf-8"), path.parent)
        set_up(Store(engine), script)
        asyncio.run(play(script, Store(engine), lambda _happening: None, named))
    with writing(engine) as connection:  # the last number given away may belong to nobody any more
        connection.execute(text("UPDATE sqlite_sequence SET seq = seq + 1000 WHERE name = 'people'"))
    engine.dispose()
    return url


def rows(engine: Engine, without: str = "") -> dict[str, list[tuple[Any, ...]]]:
    """Return all that stands in the tables, as the models read it; `without` columns of a name."""
    with reading(engine) as connection:
        return {
            table.name: sorted(
                (
                    tuple(row)
                    for row in connection.execute(select(*(each for each in table.c if each.name != without)))
                ),
                key=repr,
            )
            for table in Base.metadata.sorted_tables
        }


def test_from_sqlite_to_postgresql_and_back_everything_is_the_same(
    lived_in: str, postgres_url: str, tmp_path: Path, opener: Opener
) -> None:
    first, second, third = (
        opener(url) for url in (lived_in, postgres_url, f"sqlite:///{tmp_path / 'third.sqlite3'}")
    )
    copied = copy_database(first, second)
    assert copied == copy_database(second, third)
    wanted = rows(first)
    assert rows(second) == wanted
    assert rows(third) == wanted
    assert {name: len(found) for name, found in wanted.items()} == copied.rows
    assert min(copied.rows[name] for name in ("people", "entries", "inbox", "outbox", "workouts")) > 3


def test_numbers_go_on_where_they_were(lived_in: str, url: str, opener: Opener) -> None:
    source, target = opener(lived_in), opener(url)
    copy_database(source, target)
    with writing(target) as connection:
        last = connection.execute(text("SELECT max(number) FROM people")).scalar_one()
    settled(Store(target), "Somebody new")
    with reading(target) as connection:
        new = connection.execute(text("SELECT min(number) FROM people WHERE number > :last"), {"last": last})
        assert new.scalar_one() > last + 1000


def test_a_backup_is_one_file_for_its_owner_and_is_put_back_whole(
    lived_in: str, url: str, tmp_path: Path, opener: Opener
) -> None:
    source, target, file = opener(lived_in), opener(url), tmp_path / "backup"
    copy_database(source, target)
    back_up(target, file)
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith("backup")] == ["backup"]
    assert file.stat().st_mode & 0o777 == 0o600
    again = opener(f"sqlite:///{tmp_path / 'again.sqlite3'}")
    restore(file, again)
    assert rows(again) == rows(source)


def test_a_backup_is_of_one_moment_while_others_write(engine: Engine, tmp_path: Path) -> None:
    """Each commit writes to two tables, of which one is read first and the other last."""
    stopping = threading.Event()

    def write() -> None:
        for number in count():
            if stopping.wait(BETWEEN_SECONDS):
                return
            with writing(engine) as connection:
                connection.execute(insert(CursorRow).values(name=str(number), value="x"))
                person = {"chat": f"telegram:{number}", "name": "", "created_at": NOON}
                connection.execute(insert(PersonRow).values(**person))

    writer = threading.Thread(target=write)
    writer.start()
    try:
        copies = [back_up(engine, tmp_path / f"backup {number}").rows for number in range(3)]
    finally:
        stopping.set()
        writer.join()
    assert [rows["cursors"] for rows in copies] == [rows["people"] for rows in copies]
    assert copies[0]["people"] < copies[-1]["people"]


def test_leases_stay_behind(engine: Engine, tmp_path: Path, opener: Opener) -> None:
    store = Store(engine)
    settled(store, "Noor")
    with writing(engine) as connection:
        connection.execute(text("UPDATE people SET wake_at = :now"), {"now": NOON.replace(tzinfo=None)})
    assert store.claim_person(NOON, 600) is not None
    target = opener(f"sqlite:///{tmp_path / 'copy.sqlite3'}")
    copy_database(engine, target)
    with reading(target) as connection:
        assert (
            connection.execute(text("SELECT count(*) FROM people WHERE lease_token IS NOT NULL")).scalar()
            == 0
        )


@pytest.mark.parametrize("step", known_steps())
def test_each_step_back_and_forwards_keeps_what_people_said_and_did(
    step: str, lived_in: str, url: str, opener: Opener
) -> None:
    source, target = opener(lived_in), opener(url)
    copy_database(source, target)
    kept = ("entries", "workouts", "alerts", "exercise_holds", "inbox", "programmes")
    # What a message was taken for goes with the step that takes it back.
    before = rows(target, without="understood")
    migrate(target, step)
    migrate(target, HEAD)
    after = rows(target, without="understood")
    assert {name: after[name] for name in kept} == {name: before[name] for name in kept}
    assert len(after["people"]) == len(before["people"])


def test_an_older_backup_is_brought_up_to_date(
    lived_in: str, url: str, tmp_path: Path, opener: Opener
) -> None:
    older = opener(f"sqlite:///{tmp_path / 'older.sqlite3'}")
    copy_database(opener(lived_in), older)
    migrate(older, known_steps()[1])
    back_up(older, tmp_path / "backup")
    target = opener(url)
    restore(tmp_path / "backup", target)
    assert rows(target)["entries"] == rows(opener(lived_in))["entries"]


def test_what_cannot_be_copied_is_refused(lived_in: str, url: str, tmp_path: Path, opener: Opener) -> None:
    source, target = opener(lived_in), opener(url)
    with pytest.raises(DatabaseEmpty):
        copy_database(target, source)
    copy_database(source, target)
    with pytest.raises(DatabaseNotEmpty):
        copy_database(source, target)
    with pytest.raises(BackupMissing):
        restore(tmp_path / "none", target)
    back_up(source, tmp_path / "backup")
    with pytest.raises(BackupThere):
        back_up(source, tmp_path / "backup")
    assert rows(target) == rows(source)


def test_a_damaged_file_is_told(lived_in: str, tmp_path: Path, opener: Opener) -> None:
    back_up(opener(lived_in), tmp_path / "backup")
    damaged = bytearray((tmp_path / "backup").read_bytes())
    damaged[8192:20480] = bytes(12288)
    (tmp_path / "backup").write_bytes(damaged)
    with pytest.raises(DatabaseBroken):
        restore(tmp_path / "backup", opener(f"sqlite:///{tmp_path / 'target.sqlite3'}"))


def test_a_missing_table_is_told_at_the_start(engine: Engine, tmp_path: Path, opener: Opener) -> None:
    settled(Store(engine), "Noor")
    broken = opener(f"sqlite:///{tmp_path / 'broken.sqlite3'}")
    copy_database(engine, broken)
    with writing(broken) as connection:
        connection.execute(text("DROP TABLE sent_keys"))
    with pytest.raises(DatabaseBroken, match="sent_keys"):
        migrate(broken)
    assert "sent_keys" not in inspect(broken).get_table_names()
