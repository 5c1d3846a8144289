"""A backup: one SQLite file with all of a database in it, whichever kind that is.

It is written beside its place and moved there when it is whole and on the disk, so that what lies there
never is half a backup. Only its owner can read it.
"""

import os
from pathlib import Path

from sqlalchemy import Engine

from persistence.copying import Copied, Progress, copy_database
from persistence.engine import open_engine, shown_url, telling_trouble
from persistence.faults import BackupMissing, BackupThere, DatabaseBroken
from persistence.migrate import migrate


def back_up(source: Engine, to: Path, progress: Progress | None = None) -> Copied:
    """Write a backup; others may go on working meanwhile. Raises BackupThere, or as `copy_database` does."""
    if to.exists():
        raise BackupThere(str(to))
    unfinished = to.with_name(f"{to.name}.unfinished")
    unfinished.unlink(missing_ok=True)
    target = open_engine(f"sqlite:///{unfinished}")
    try:
        copied = copy_database(source, target, progress)
        check_whole(target)
        with target.connect() as connection:  # one file is all there is: nothing is left in a log beside it
            connection.connection.execute("PRAGMA journal_mode = DELETE")
    finally:
        target.dispose()
    with unfinished.open("rb") as written:
        os.fsync(written.fileno())
    unfinished.rename(to)
    return copied


def restore(backup: Path, target: Engine, progress: Progress | None = None) -> Copied:
    """Put a backup into an empty database, and bring that up to date. Raises BackupMissing, DatabaseBroken,
    or as `copy_database` does.
    """
    if not backup.is_file():
        raise BackupMissing(str(backup))
    source = open_engine(f"sqlite:///{backup}")
    try:
        check_whole(source)
        copied = copy_database(source, target, progress)
    finally:
        source.dispose()
    migrate(target)
    return copied


def check_whole(engine: Engine) -> None:
    """Look through all of a SQLite file for damage. Raises DatabaseBroken."""
    if engine.dialect.name != "sqlite":
        return
    with telling_trouble(), engine.connect() as connection:
        (found,) = connection.connection.execute("PRAGMA quick_check(1)").fetchone() or ("",)
    if found != "ok":
        raise DatabaseBroken(str(found).partition("\n")[0], shown_url(engine))
