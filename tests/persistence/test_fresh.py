"""Fresh databases: the very one that all steps of the migrations come to, statement by statement."""

from pathlib import Path

import pytest

from persistence.engine import open_engine
from persistence.fresh import SCRIPT, script_of, write_fresh
from persistence.migrate import require_current
from tests.persistence.fresh_script import migrated


def test_a_fresh_file_is_what_the_steps_come_to(tmp_path: Path) -> None:
    wanted = migrated(tmp_path)
    assert SCRIPT.read_text("utf-8") == wanted, "after a step: python -m tests.persistence.fresh_script"
    write_fresh(tmp_path / "fresh.sqlite3")
    assert script_of(tmp_path / "fresh.sqlite3") == wanted


def test_a_fresh_file_is_at_the_latest_step_and_none_is_written_over(tmp_path: Path) -> None:
    engine = open_engine(write_fresh(tmp_path / "fresh.sqlite3"))
    require_current(engine)
    engine.dispose()
    with pytest.raises(FileExistsError):
        write_fresh(tmp_path / "fresh.sqlite3")
