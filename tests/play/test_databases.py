"""The same conversation on both databases."""

import asyncio
import io
import re
from pathlib import Path

import pytest
from rich.console import Console

from bot.commands.database import opened, passing
from bot.commands.play import set_up
from bot.files.folder import Folder
from bot.play.engine import play
from bot.play.script import read_script
from bot.play.show import JsonLines
from persistence.store import Store
from tests.play.golden import SCRIPTS


@pytest.mark.parametrize("name", ["first_week", "sore_knee", "over_eager", "joining_doctor_first"])
def test_a_conversation_is_the_same_on_postgresql_and_sqlite(
    name: str, postgres_url: str, tmp_path: Path
) -> None:
    path = SCRIPTS / f"{name}.jsonl"
    with passing() as on_sqlite, opened(postgres_url) as on_postgresql:
        assert lines(path, on_postgresql, tmp_path) == lines(path, on_sqlite, tmp_path)


def lines(path: Path, store: Store, folder: Path) -> list[str]:
    """Return what the bot says to a script, as JSON lines, without the codes of invitations, which are
    random."""
    script = read_script(path.read_text(encoding="utf-8"), path.parent)
    printed = io.StringIO()
    set_up(store, script)
    asyncio.run(play(script, store, JsonLines(Console(file=printed, soft_wrap=True), Folder(folder))))
    said = re.sub(r"(?<![\w-])[\w-]{22}(?=[\"\\])", "CODE", printed.getvalue()).splitlines()
    assert len(said) > 5
    return said
