"""What goes out beside the words: made as the message is sent, for whoever may see it by then."""

import asyncio
import json
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

import pytest
from sqlalchemy import update

from bot import enclosing
from bot.channel import Attachment, Rendered
from bot.commands.database import passing
from bot.commands.play import play_command
from bot.enclosing import made
from bot.files.folder import Folder
from bot.play.show import enclosed_lines
from bot.roster import read_roster
from bot.stage import Stage
from bot.wording.enclosed import MISSING, file_name
from persistence.engine import writing
from persistence.outbox import Outgoing
from persistence.store import Store
from persistence.tables import PersonRow
from tests.bot.test_desk import NOW, ROSTER

WANTED = "Noor's journal as a spreadsheet"


class Room:
    """The coach Mara, Noor, who has trained once, and all that was sent to Mara."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.sent: list[Rendered] = []
        self.stage = Stage(store, NOW, self._watch, made(store))
        store.load_roster(read_roster({**ROSTER, "coaches": [*ROSTER["coaches"], OTHER]}), NOW)
        asyncio.run(self.stage.say("Noor", "leg press 100 x 10, 100 x 9"))

    def _watch(self, _at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        if outgoing.name == "Mara":
            self.sent.append(rendered)

    def asks(self, text: str) -> Rendered:
        asyncio.run(self.stage.say("Mara", text))
        return self.sent[-1]


OTHER = {"name": "Ilse", "zone": "UTC", "unit": "kg"}


@pytest.fixture
def room() -> Iterator[Room]:
    with passing() as store:
        yield Room(store)


def test_a_coach_gets_a_clients_journal(room: Room) -> None:
    document = room.asks(WANTED).document
    assert document is not None
    assert document.name == "journal-noor.csv"
    rows = document.content.decode("utf-8-sig").split("\r\n")
    assert rows[1].startswith("Noor,2026-03-02,Leg press,100,kg,10,,total,,,,A,1,2026-03-02T12:00:00+00:00")
    assert len(rows) == 4


def test_what_is_sent_is_asked_again_as_it_goes_out(room: Room, monkeypatch: pytest.MonkeyPatch) -> None:
    """A client who has gone to another coach since the decision is not to be seen by the old one."""
    real = room.stage._delivery._enclose

    def handed_over_meanwhile(outgoing: Outgoing, rendered: Rendered) -> Rendered:
        others = {person.name: person.number for person in room.store.people()}
        with writing(room.store._engine) as connection:
            to_other = update(PersonRow).where(PersonRow.name == "Noor").values(coach=others["Ilse"])
            connection.execute(to_other)
        return real(outgoing, rendered)

    monkeypatch.setattr(room.stage._delivery, "_enclose", handed_over_meanwhile)
    answer = room.asks(WANTED)
    assert answer.document is None
    assert "can no longer be sent to you" in answer.text_html


def test_where_a_file_cannot_be_made_its_words_go_and_say_so(
    room: Room, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def broken(*_: object) -> bytes:
        raise ValueError("Noor")

    monkeypatch.setattr(enclosing, "content_of", broken)
    answer = room.asks(WANTED)
    assert answer.document is None
    assert answer.text_html.endswith(MISSING)
    assert "ValueError" in caplog.text
    assert "Noor" not in caplog.text


def test_a_played_script_puts_files_into_a_folder(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    steps = [
        {"setup": ROSTER},
        {"at": "2026-03-02T12:00:00+00:00", "who": "Noor", "says": "leg press 100 x 10"},
        {"at": "2026-03-02T12:01:00+00:00", "who": "Mara", "says": WANTED},
    ]
    script = tmp_path / "script.jsonl"
    script.write_text("\n".join(map(json.dumps, steps)), encoding="utf-8")
    kept = tmp_path / "files" / "001-journal-noor.csv"

    play_command(script, as_json=True, database=None, files=kept.parent)
    lines = [json.loads(line) for line in capsys.readouterr().out.splitlines()]
    assert lines[-1]["file"] == str(kept)
    assert lines[-1]["image"] is None
    (about,) = lines[-1]["about"]
    assert about.items() >= {"kind": "file", "what": "journal table", "of": 2, "client": "Noor"}.items()
    assert b"Leg press,100,kg,10" in kept.read_bytes()

    play_command(script, as_json=False, database=None)
    assert "(file: journal-noor.csv)" in capsys.readouterr().out


def test_a_folder_numbers_what_comes(tmp_path: Path) -> None:
    folder = Folder(tmp_path)
    rendered = Rendered("x", (), Attachment("a.png", b"1"), Attachment("b.csv", b"2"))
    assert enclosed_lines(rendered, folder) == [
        f"(picture: {tmp_path / '001-a.png'})",
        f"(file: {tmp_path / '002-b.csv'})",
    ]
    assert (tmp_path / "002-b.csv").read_bytes() == b"2"


@pytest.mark.parametrize(
    ("words", "name"),
    [
        (("journal", "Noor"), "journal-noor.csv"),
        (("journal", "Zoë / ../Ål"), "journal-zoe-al.csv"),
        (("journal", "李 小龙"), "journal-李-小龙.csv"),
        (("journal", "Γιώργος"), "journal-γιωργος.csv"),
        (("journal", "अनिता शर्मा"), "journal-अनिता-शर्मा.csv"),
        (("journal", "김민준"), "journal-김민준.csv"),
        (("journal", "نور"), "journal-نور.csv"),
        (("", "../.. \u202e\x00"), "file.csv"),
        (("journal", "x" * 500), f"journal-{'x' * 52}.csv"),
    ],
)
def test_a_file_has_a_name_that_any_system_takes(words: tuple[str, ...], name: str) -> None:
    assert file_name(*words, ending="csv") == name
