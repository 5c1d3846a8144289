"""`load` puts people into the database once, and prints the code with which each can come in."""

import json
import re
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.commands.load import load_command
from bot.roster import RosterFault
from domain.incoming import Started
from domain.outcome import Outcome
from domain.state import State, StrangerState
from persistence.inbox import Received
from persistence.store import open_store
from tests.bot.test_roster import ROSTER


@pytest.fixture
def url(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    """The database that the command will use, which does not exist yet."""
    url = f"sqlite:///{tmp_path / 'kilopost.sqlite3'}"
    monkeypatch.setenv("KILOPOST_DATABASE", url)
    return url


def write(folder: Path, roster: object) -> Path:
    path = folder / "roster.json"
    path.write_text(json.dumps(roster), encoding="utf-8")
    return path


def test_who_has_no_chat_of_a_platform_yet_gets_a_code_that_lets_them_in(
    url: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = write(tmp_path, ROSTER)
    assert load_command(path) == 0
    coach, noor = capsys.readouterr().out.splitlines()
    assert coach == "Ilse (coach)"
    code = re.fullmatch(r"Noor \(client\), comes in with /start ([\w-]{22})", noor)
    assert code is not None
    store = open_store(url)
    now = datetime.now(UTC)
    store.receive([Received("telegram", "1", "telegram:5", now, Started(code=code[1]))])
    shown: list[State] = []

    def look(state: State, _heard: object) -> Outcome:
        shown.append(state)
        return Outcome()

    lease = store.claim_person(now, 30)
    while lease is not None:
        store.work(lease, now, look)
        lease = store.claim_person(now, 30)
    store.close()
    (stranger,) = [state for state in shown if isinstance(state, StrangerState)]
    assert stranger.invitation is not None
    assert stranger.invitation.name == "Noor"
    assert not stranger.invitation.used


def test_loading_again_says_who_was_there_and_gives_a_new_code(
    url: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = write(tmp_path, ROSTER)
    load_command(path)
    first = capsys.readouterr().out.splitlines()
    load_command(path)
    second = capsys.readouterr().out.splitlines()
    assert second[0] == "Ilse (coach, was there already)"
    assert second[1].startswith("Noor (client, was there already), comes in with /start ")
    assert second[1].split()[-1] != first[1].split()[-1]
    store = open_store(url)
    assert [person.name for person in store.people()] == ["Ilse", "Noor"]
    store.close()


def test_a_roster_with_a_fault_leaves_no_database_behind(url: str, tmp_path: Path) -> None:
    with pytest.raises(RosterFault):
        load_command(write(tmp_path, {**ROSTER, "sheets": []}))
    assert not Path(url.removeprefix("sqlite:///")).exists()
