"""`backup`, `restore` and `copy`: what they say, and what they refuse in one clear line."""

import re
from pathlib import Path

import pytest

from bot.commands.backup import backup_command, copy_command, restore_command
from bot.commands.database import opened
from bot.faults import OperatorFault
from bot.roster import read_roster
from tests.bot.telegram.village import roster
from tests.persistence.people import NOON


@pytest.fixture
def there(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A database with a coach and a client, which is that of the settings."""
    path = tmp_path / "there.sqlite3"
    with opened(f"sqlite:///{path}") as store:
        store.load_roster(read_roster(roster("Bram")), NOON)
    monkeypatch.setenv("KILOPOST_DATABASE", f"sqlite:///{path}")
    return path


@pytest.mark.usefixtures("there")
def test_backed_up_put_back_and_moved(
    tmp_path: Path,
    postgres_url: str,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    backup_command(tmp_path / "backup")
    copy_command(postgres_url)
    monkeypatch.setenv("KILOPOST_DATABASE", f"sqlite:///{tmp_path / 'again.sqlite3'}")
    restore_command(tmp_path / "backup")
    out = capsys.readouterr()
    said, bars = out.out.splitlines(), re.findall(r"rows\D+(\d+)/(\d+)", out.err)
    assert len(bars) >= 3
    assert {done == total for done, total in bars[-1:]} == {True}
    assert [line.partition(" are in ")[0] for line in said] == ["2 people, 0 sets and 0 messages"] * 3
    for url in (postgres_url, f"sqlite:///{tmp_path / 'again.sqlite3'}"):
        with opened(url) as store:
            assert [person.name for person in store.people()] == ["Ilse", "Bram"]


def test_what_is_refused_is_one_line(there: Path, tmp_path: Path) -> None:
    (tmp_path / "notes.txt").write_text("no database\n" * 100)
    with pytest.raises(OperatorFault) as fault:
        backup_command(there)
    assert "is there already" in str(fault.value)
    with pytest.raises(OperatorFault) as fault:
        restore_command(tmp_path / "none")
    assert "no backup" in str(fault.value)
    with pytest.raises(OperatorFault) as fault:
        restore_command(tmp_path / "notes.txt")
    assert "not a database" in str(fault.value)
    backup_command(tmp_path / "backup")
    with pytest.raises(OperatorFault) as fault:
        restore_command(tmp_path / "backup")
    assert "holds something already" in str(fault.value)
    assert all("\n" not in line for line in fault.value.faults)


def test_a_damaged_database_is_refused_in_one_line(there: Path, tmp_path: Path) -> None:
    backup_command(tmp_path / "backup")
    content = bytearray((tmp_path / "backup").read_bytes())
    content[4096:40960] = bytes(36864)
    there.write_bytes(content)
    with pytest.raises(OperatorFault) as fault, opened(f"sqlite:///{there}") as store:
        store.check_whole()
    assert "damaged" in str(fault.value)
    assert "restore" in str(fault.value)
    assert len(fault.value.faults) == 1
