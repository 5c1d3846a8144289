"""Somebody who is erased is in no table any more: the whole bot, on both databases."""

import asyncio
import shutil
import zipfile
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from io import BytesIO
from pathlib import Path
from uuid import uuid4

import pytest
from sqlalchemy import func, select

from bot.channel import Rendered
from bot.commands.database import opened, passing
from bot.enclosing import made
from bot.journal_file import read_journal
from bot.markup import plain
from bot.roster import read_roster
from bot.stage import Stage
from domain.parts import Notice
from domain.state import ClientState
from persistence.archive import KeptArchive
from persistence.engine import reading
from persistence.outbox import Outgoing
from persistence.store import Store
from persistence.tables import (
    AlertRow,
    Base,
    EntryRow,
    ErasureRow,
    HoldRow,
    InboxRow,
    InvitationRow,
    PersonRow,
    SentKeyRow,
    WordsRow,
    WorkoutRow,
)
from tests.play.golden import SCRIPTS
from tests.postgres import Server

BEGIN = datetime(2026, 3, 1, 10, tzinfo=UTC)
ROSTER = {
    "coaches": [
        {"name": "Mara", "zone": "Europe/Lisbon", "unit": "kg"},
        {"name": "Ines", "zone": "Europe/Lisbon", "unit": "kg"},
    ],
    "sheets": ["sheets/base.txt"],
    "clients": [
        {"name": "Piet", "coach": "Mara", "programme": "Harbour Base", "unit": "kg", "zone": "Europe/Lisbon",
         "starts": "2026-03-02", "remind_at": "08:00"}
    ],
}  # fmt: skip
WORDS = ("noor", "quokka", "lisbon is lovely", "marimba", "sousaphone", "theremin", "ocarina", "my knee")
"""What Noor is called and has written, and what others have written about her."""


@dataclass(frozen=True)
class Past:
    """A village in which everybody has lived for some weeks: where its database is, to be copied, and what
    else a village knows."""

    kept: Path | str
    now: datetime
    heard: tuple[tuple[str, Rendered], ...]
    code: str


class Village:
    """Mara, her client Piet, and Noor, who joins by an invitation."""

    def __init__(self, store: Store, past: Past | None = None) -> None:
        """Begin anew, or where the `past` has led to, which must be that of this store's database."""
        self.store = store
        self.heard = [*past.heard] if past else []
        self.code = past.code if past else ""
        self.stage = Stage(store, past.now if past else BEGIN, self._watch, made(store))
        if past is None:
            store.load_roster(read_roster(ROSTER, SCRIPTS), BEGIN)

    def _watch(self, _at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        self.heard.append((outgoing.name or outgoing.chat, rendered))
        for part in outgoing.say.parts:
            if isinstance(part, Notice) and part.topic == "invited":
                self.code = str(part.facts["code"])

    def say(self, who: str, *texts: str) -> str:
        """Let somebody say something; return what was last heard."""
        for text in texts:
            self.passes(timedelta(minutes=1))
            asyncio.run(self.stage.say(who, text))
        return plain(self.heard[-1][1].text_html)

    def press(self, who: str, label: str) -> None:
        asyncio.run(self.stage.press(who, label))

    def passes(self, time: timedelta) -> None:
        asyncio.run(self.stage.wait_until(self.stage.now + time))

    def lives(self) -> None:
        """Let Noor join, train, stall, be hurt, ask, correct and be written to, and Piet train beside her."""
        self.say("Mara", "invite Noor to Harbour Base")
        self.say("Noor", f"/start {self.code}", "quokka?")
        self.say("Noor", "yes", "18", "none", "kg", "Lisbon", "7:00", "a full gym", "tomorrow")
        for day in range(1, 16):
            self.passes(BEGIN + timedelta(days=day, hours=8) - self.stage.now)
            if day % 3 == 1:
                self.say("Noor", "row 60x9, pulldown 45x6", "rdl 80x7", "make that 8", "hammer curl 14x10")
                self.say("Piet", "row 80x9, pulldown 65x6, rdl 90x7, hammer curl 16x10")
            if day == 4:
                self.say("Noor", "I did marimba curls 20 x 8", "never mind", "my knee hurts, like a quokka")
                self.say("Noor", "can I train with a sousaphone?")
                self.say(
                    "Mara", "tell Noor: no theremin either", "how is Noor doing?", "noor", "who needs me?"
                )
                self.say(
                    "Mara", "note on Noor: collects ocarinas", "how is Noor?", "note on her: an ocarina fan"
                )
                self.say("Mara", "notes on Noor", "hand Noor over to Ines", "with my notes")
                self.say("Ines", "decline Noor")
                self.say("Piet", "can I use straps?")
                self.say("Noor", "thanks, Lisbon is lovely", "I call rows quokkas", "I weigh 66 kg")
        self.passes(timedelta(days=4))
        self.say("Mara", "who needs me?", "how is Piet doing?")

    def found(self, *words: str) -> list[str]:
        """Return where any of these words stand in the database, in whatever table and column."""
        places = []
        with reading(self.store._engine) as connection:
            for table in Base.metadata.sorted_tables:
                for row in connection.execute(select(*table.columns)):
                    text = "|".join(map(str, row)).casefold()
                    places += [f"{table.name}: {word}" for word in words if word in text]
        return places

    def counts(self, person: int) -> dict[str, int]:
        """Return how many rows of each kind there are of a person."""
        kinds = {EntryRow: "client", WorkoutRow: "client", HoldRow: "client", AlertRow: "client",
                 WordsRow: "client", InboxRow: "person", PersonRow: "number"}  # fmt: skip
        with reading(self.store._engine) as connection:
            return {
                row.__tablename__: connection.execute(
                    select(func.count()).select_from(row).where(getattr(row, column) == person)
                ).scalar_one()
                for row, column in kinds.items()
            }

    def number(self, name: str) -> int:
        return next(person.number for person in self.store.people() if person.name == name)


@pytest.fixture(params=["sqlite", "postgresql"])
def new_village(request: pytest.FixtureRequest) -> Iterator[Village]:
    """A village in which nothing has happened yet."""
    if request.param == "sqlite":
        with passing() as store:
            yield Village(store)
    else:
        with opened(request.getfixturevalue("postgres_url")) as store:
            yield Village(store)


def lived(url: str, kept: Path | str) -> Past:
    """Let everybody live in an empty database; whoever copies it finds it closed."""
    with opened(url, durable=False) as store:
        village = Village(store)
        village.lives()
        return Past(kept, village.stage.now, tuple(village.heard), village.code)


@pytest.fixture(scope="module")
def lived_in_sqlite(tmp_path_factory: pytest.TempPathFactory) -> Past:
    path = tmp_path_factory.mktemp("lived") / "kilopost.sqlite3"
    return lived(f"sqlite:///{path}", path)


@pytest.fixture(scope="module")
def lived_in_postgresql(postgres_server: Server) -> Iterator[Past]:
    with postgres_server.database("lived") as url:
        yield lived(url, "lived")


@pytest.fixture(params=["sqlite", "postgresql"])
def village(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Village]:
    """A village in which everybody has lived for some weeks: living takes long, so each is a copy of one."""
    past: Past = request.getfixturevalue(f"lived_in_{request.param}")
    if request.param == "sqlite":
        with opened(f"sqlite:///{shutil.copy(past.kept, tmp_path)}", durable=False) as store:
            yield Village(store, past)
        return
    server: Server = request.getfixturevalue("postgres_server")
    with server.database(f"test_{uuid4().hex}", template=str(past.kept)) as url, opened(url) as store:
        yield Village(store, past)


def test_nothing_of_who_is_erased_is_left_in_any_table(village: Village) -> None:
    noor, piet = village.number("Noor"), village.number("Piet")
    assert {word for word in WORDS if village.found(word)} == set(WORDS)
    piets, of_noor = village.counts(piet), village.counts(noor)
    assert min(of_noor.values()) > 0

    village.say("Noor", "erase my data")
    village.say("Noor", "yes")
    told = dict(village.heard[-2:])
    assert "Noor has had everything erased" in plain(told["Mara"].text_html)
    assert "Everything is erased" in plain(told["local:Noor"].text_html)
    assert village.found(*WORDS[1:]) == []

    village.passes(timedelta(hours=2))
    assert village.found(*WORDS) == []
    assert sum(village.counts(noor).values()) == 0
    assert village.counts(piet) == piets
    with reading(village.store._engine) as connection:
        (left,) = connection.execute(select(ErasureRow)).all()
        assert connection.execute(select(InvitationRow)).all() == []
        assert connection.execute(select(SentKeyRow).where(SentKeyRow.chat == "local:Noor")).all() == []
    assert (left.workouts, left.sets) == (of_noor["workouts"], of_noor["entries"])


def test_the_coach_goes_on_with_the_others(village: Village) -> None:
    village.say("Noor", "erase my data", "yes")
    assert "Noor" not in village.say("Mara", "who needs me?")
    assert "I know no client called noor" in village.say("Mara", "tell noor: hello")
    assert "Piet asks: «can I use chalk?»" in village.say("Piet", "can I use chalk?")
    village.passes(timedelta(days=14))
    assert "Piet" in village.say("Mara", "who needs me?")


def test_an_old_invitation_lets_nobody_in_again_and_a_new_one_does(village: Village) -> None:
    old = village.code
    village.say("Noor", "erase my data", "yes")
    assert "Nothing is kept about you" in village.say("Noor", f"/start {old}")
    village.say("Mara", "invite Noor to Harbour Base")
    assert "Welcome, Noor" in village.say("Noor", f"/start {village.code}")
    village.passes(timedelta(hours=3))
    assert village.number("Noor")
    assert village.counts(village.number("Noor"))["entries"] == 0


def test_the_chat_is_remembered_until_the_last_words_have_arrived(village: Village) -> None:
    noor = village.number("Noor")
    village.say("Noor", "erase my data", "yes")
    village.passes(timedelta(minutes=30))
    assert village.counts(noor)["people"] == 1
    assert "Nothing is kept about you" in village.say("Noor", "hello")
    village.passes(timedelta(hours=2))
    assert village.counts(noor)["people"] == 0
    assert "invited people only" in village.say("Noor", "hello")


def test_everything_can_be_had_as_a_file(village: Village) -> None:
    village.say("Noor", "send me my data")
    document = village.heard[-1][1].document
    assert document is not None
    assert document.name == "everything-noor.zip"
    with zipfile.ZipFile(BytesIO(document.content)) as files:
        texts = {name: files.read(name).decode("utf-8-sig") for name in files.namelist()}
    assert set(texts) == {"read me.txt", "journal.csv", "messages.txt", "everything.json"}
    for word in ("quokka", "marimba", "sousaphone", "theremin"):
        assert word in texts["messages.txt"]
        assert word in texts["everything.json"]
    assert "Piet" not in "".join(texts.values())
    kept = KeptArchive.model_validate_json(texts["everything.json"])
    counts = village.counts(village.number("Noor"))
    assert (len(kept.sets), len(kept.workouts)) == (counts["entries"], counts["workouts"])
    standing = [each for each in kept.sets if each.superseded_by is None and each.taken_back_at is None]
    journal = read_journal(texts["journal.csv"])
    assert journal.faults == []
    state = village.store.whole_client(village.number("Noor"), village.number("Noor"))
    assert isinstance(state, ClientState)
    assert sum(map(len, journal.clients["Noor"].values())) == len(standing) == len(state.entries) > 10


def test_the_file_is_for_nobody_else(village: Village) -> None:
    assert village.store.archive(village.number("Noor"), village.number("Mara")) is None
    assert village.store.archive(village.number("Noor"), village.number("Piet")) is None


def test_notes_are_told_of_in_the_file_and_not_told(village: Village) -> None:
    village.say("Noor", "send me my data")
    document = village.heard[-1][1].document
    assert document is not None
    with zipfile.ZipFile(BytesIO(document.content)) as files:
        texts = {name: files.read(name).decode("utf-8-sig") for name in files.namelist()}
    assert not [name for name, text in texts.items() if "ocarina" in text]
    kept = KeptArchive.model_validate_json(texts["everything.json"])
    assert len(kept.coach_notes) == 2
    assert "2 notes" in texts["read me.txt"]


def test_a_code_is_not_kept_once_it_was_told(new_village: Village) -> None:
    new_village.say("Mara", "invite Noor to Harbour Base")
    assert len(new_village.code) >= 22
    assert new_village.found(new_village.code.casefold()) == []
    new_village.say("Noor", new_village.code)
    assert new_village.number("Noor")
    assert new_village.found(new_village.code.casefold()) == []


def test_a_coach_lets_in_another_who_sees_nobody_else_s_clients(new_village: Village) -> None:
    new_village.say("Mara", "invite Zoe as a coach")
    new_village.say("Mara", "revoke that invitation")
    assert "invited people only" in new_village.say("Zoe", f"/start {new_village.code}")
    new_village.say("Mara", "invite Zoe as a coach")
    new_village.say("Zoe", f"/start {new_village.code}")
    told = [(who, plain(each.text_html)) for who, each in new_village.heard[-2:]]
    assert [who for who, text in told if "is a coach here now" in text] == ["Mara"]
    assert new_village.found(new_village.code.casefold()) == []
    assert "No clients yet" in new_village.say("Zoe", "who needs me?")
    assert "no clients yet" in new_village.say("Zoe", "how is Piet?")


def test_an_erasure_reaches_the_coach_now_and_the_one_before(village: Village) -> None:
    village.say("Mara", "hand Noor over to Ines", "without my notes")
    village.say("Ines", "take Noor")
    assert village.found("ocarina") == []
    assert "no client" in village.say("Mara", "how is Noor?")
    village.say("Ines", "note on Noor: plays the ocarina", "how is Noor?")
    assert {each.split(":")[0] for each in village.found("ocarina")} == {"notes", "inbox"}
    village.say("Noor", "erase my data", "yes")
    assert village.found(*WORDS[1:]) == []
    village.passes(timedelta(hours=2))
    assert village.found(*WORDS) == []
