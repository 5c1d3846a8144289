"""Fresh SQLite files with all tables and nothing in them: built once in a process, written when wanted.

The tables are built from `fresh.sql`, which is what all steps of the migrations come to: the steps one by one
take many times as long, and need Alembic. A test holds the two together.
"""

import sqlite3
import tempfile
from contextlib import closing
from functools import cache
from pathlib import Path

SCRIPT = Path(__file__).with_name("fresh.sql")
"""The statements that make a fresh database; `script_of` writes them."""


def write_fresh(path: Path) -> str:
    """Write a database at the latest step to `path`, which was not there, and return its URL."""
    with path.open("xb") as file:
        file.write(_fresh())
    return f"sqlite:///{path}"


def script_of(path: Path) -> str:
    """Return the statements that make a SQLite file like the one at `path`, which holds nothing but its step.

    They are the very texts by which its tables and indexes were made.
    """
    with closing(sqlite3.connect(path)) as database:
        texts = database.execute(
            "SELECT sql FROM sqlite_master WHERE name NOT GLOB 'sqlite_*' ORDER BY rowid"
        )
        made = [f"{text};" for (text,) in texts]
        (step,) = database.execute("SELECT version_num FROM alembic_version").fetchone()
    at_step = f"INSERT INTO alembic_version (version_num) VALUES ('{step}');"  # noqa: S608 our own step
    return "\n".join([*made, at_step, ""])


@cache
def _fresh() -> bytes:
    with tempfile.TemporaryDirectory(prefix="kilopost-") as folder:
        path = Path(folder) / "fresh.sqlite3"
        with closing(sqlite3.connect(path)) as database:
            database.execute("PRAGMA journal_mode = WAL")
            database.executescript(f"BEGIN;\n{SCRIPT.read_text('utf-8')}COMMIT;")
        return path.read_bytes()
