"""`python -m tests.persistence.fresh_script`: write `persistence/fresh.sql` anew, after a new step."""

import tempfile
from pathlib import Path

from persistence.engine import open_engine
from persistence.fresh import SCRIPT, script_of
from persistence.migrate import migrate


def migrated(folder: Path) -> str:
    """Return the statements of a SQLite file that has gone through all steps, one by one."""
    path = folder / "migrated.sqlite3"
    engine = open_engine(f"sqlite:///{path}", durable=False)
    try:
        migrate(engine)
    finally:
        engine.dispose()
    return script_of(path)


if __name__ == "__main__":
    with tempfile.TemporaryDirectory(prefix="kilopost-") as name:
        SCRIPT.write_text(migrated(Path(name)), "utf-8")
