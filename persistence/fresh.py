"""Fresh SQLite files with all tables and nothing in them: built once in a process, written when wanted."""

import tempfile
from functools import cache
from pathlib import Path

from persistence.engine import open_engine
from persistence.migrate import migrate


def write_fresh(path: Path) -> str:
    """Write a migrated database to `path`, which was not there, and return its URL.

    The tables are built step by step, which takes much longer than a copy.
    """
    with path.open("xb") as file:
        file.write(_fresh())
    return f"sqlite:///{path}"


@cache
def _fresh() -> bytes:
    with tempfile.TemporaryDirectory(prefix="kilopost-") as folder:
        path = Path(folder) / "fresh.sqlite3"
        engine = open_engine(f"sqlite:///{path}", durable=False)
        try:
            migrate(engine)
        finally:
            engine.dispose()
        return path.read_bytes()
