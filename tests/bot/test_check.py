"""`check`: one line for each part of the set-up, and an exit status that a script can go by."""

import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.commands.check import check_command
from persistence.store import open_store
from tests.botapi.server import BotApi


@pytest.fixture
def api(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Iterator[BotApi]:
    monkeypatch.chdir(tmp_path)
    with BotApi() as running:
        monkeypatch.setenv("KILOPOST_TOKEN", running.token)
        monkeypatch.setenv("KILOPOST_API_URL", running.url)
        monkeypatch.setenv("KILOPOST_DATABASE", f"sqlite:///{tmp_path / 'k.sqlite3'}")
        yield running


def found(capsys: pytest.CaptureFixture[str]) -> dict[str, tuple[bool, str]]:
    """Return of each part whether it will do, and what is said of it."""
    status = check_command()
    lines = [(*line[6:].partition(": "), line[:4] == "ok  ") for line in capsys.readouterr().out.splitlines()]
    parts = {part: (will_do, said) for part, _, said, will_do in lines}
    assert status == (0 if all(will_do for will_do, _ in parts.values()) else 1)
    return parts


@pytest.mark.usefixtures("api")
def test_a_set_up_that_will_do(capsys: pytest.CaptureFixture[str]) -> None:
    parts = found(capsys)
    assert list(parts) == ["settings", "token", "updates", "database", "clock", "zones", "pictures"]
    assert all(will_do for will_do, _ in parts.values())
    assert "@kilopost_test_bot" in parts["token"][1]
    assert "next start" in parts["database"][1]


def test_each_part_that_will_not_do_says_what_mends_it(
    api: BotApi, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    open_store(f"sqlite:///{tmp_path / 'k.sqlite3'}").close()
    assert found(capsys)["database"] == (True, "it is whole and up to date")
    (tmp_path / "k.sqlite3").chmod(0o644)
    assert "chmod 600" in found(capsys)["database"][1]
    (tmp_path / "k.sqlite3").write_bytes(b"no database")
    assert not found(capsys)["database"][0]
    monkeypatch.setenv("KILOPOST_WEBHOOK_URL", "https://bot.example/in")
    api.world.webhook_trouble = {"last_error_date": int(time.time()), "last_error_message": "Refused"}
    assert found(capsys)["updates"] == (
        False,
        "posting to https://bot.example/in fails: Refused; 0 updates wait there",
    )
    api.world.webhook_trouble = {"last_error_date": int(time.time()) - 7200, "last_error_message": "Refused"}
    assert found(capsys)["updates"][0]
    monkeypatch.setenv("KILOPOST_TOKEN", "4242:another")
    assert "does not know" in found(capsys)["token"][1]
    monkeypatch.setenv("KILOPOST_TOKEN", "")
    assert "missing" in found(capsys)["token"][1]


@pytest.mark.usefixtures("api")
def test_a_network_that_is_away_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    with BotApi() as gone:
        url = gone.url
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("KILOPOST_API_URL", url)
        parts = found(capsys)
    assert "no word from Telegram" in parts["token"][1]
    assert "updates" not in parts
    assert parts["clock"][0]
