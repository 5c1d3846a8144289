"""`export`: the journals of clients as files in a folder, and in again from there."""

import re
from pathlib import Path

import pytest

from bot.command_line import app
from bot.commands.bring_journal import Wanted, import_command
from bot.commands.database import opened
from bot.commands.export import Form, export_command
from bot.faults import OperatorFault
from bot.roster import read_roster
from tests.bot.test_desk import NOW, ROSTER

PIET = {**ROSTER["clients"][0], "name": "Piet"}


@pytest.fixture
def url(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """A database with Noor, who has a set in her journal, and Piet; it is that of the settings."""
    found = f"sqlite:///{tmp_path}/kilopost.sqlite3"
    monkeypatch.setenv("KILOPOST_DATABASE", found)
    with opened(found) as store:
        store.load_roster(read_roster({**ROSTER, "clients": [*ROSTER["clients"], PIET]}), NOW)
    old = tmp_path / "old.csv"
    old.write_text("date,exercise,load,reps\n2026-02-01,Leg press,100,8\n")
    import_command(old, Wanted("Noor", dry_run=False, keep_names=False, month_first=None, report=None))
    return found


@pytest.mark.usefixtures("url")
@pytest.mark.parametrize(
    ("form", "begins"), [("csv", b"\xef\xbb\xbfclient,"), ("json", b"{"), ("pdf", b"%PDF")]
)
def test_each_journal_is_a_file(
    tmp_path: Path, form: Form, begins: bytes, capsys: pytest.CaptureFixture[str]
) -> None:
    assert export_command(tmp_path / "out", (), form) == 0
    names = sorted(path.name for path in (tmp_path / "out").iterdir())
    assert names == [f"journal-noor.{form}", f"journal-piet.{form}"]
    content = (tmp_path / "out" / names[0]).read_bytes()
    assert content.startswith(begins)
    out = capsys.readouterr()
    assert "2 journals are in" in out.out
    assert re.search(r"journals\D+2/2", out.err)


def test_what_goes_out_comes_in_again(url: str, tmp_path: Path) -> None:
    export_command(tmp_path, ("noor",), "json")
    first = (tmp_path / "journal-noor.json").read_text()
    piets = tmp_path / "piets.json"
    piets.write_text(first.replace('"Noor"', '"Piet"'))
    import_command(piets, Wanted("Piet", dry_run=False, keep_names=False, month_first=None, report=None))
    export_command(tmp_path / "again", ("Piet",), "json")
    again = (tmp_path / "again" / "journal-piet.json").read_text()
    assert again == first.replace('"Noor"', '"Piet"')
    assert url


@pytest.mark.usefixtures("url")
def test_nothing_is_written_over_and_nobody_is_made_up(tmp_path: Path) -> None:
    export_command(tmp_path, ("Noor",), "csv")
    with pytest.raises(OperatorFault, match="File exists"):
        export_command(tmp_path, ("Noor",), "csv")
    with pytest.raises(OperatorFault, match="there is no client «Ana»; there are: Noor, Piet"):
        export_command(tmp_path, ("Ana",), "csv")


def test_the_command_is_called_export() -> None:
    assert "export" in [
        each.name or each.callback.__name__ for each in app.registered_commands if each.callback
    ]
