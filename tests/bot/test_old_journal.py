"""An old journal through the whole bot and the real store: taken beside others, sent out, erased."""

import asyncio
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta

import pytest
from sqlalchemy import func, select

from bot.channel import Rendered
from bot.commands.database import opened, passing
from bot.desk import decider
from bot.enclosing import made
from bot.files.writing import content_of
from bot.markup import plain
from bot.roster import read_roster
from bot.stage import Stage
from bot.textfile import LIMIT_BYTES, LIMIT_BYTES_OF_JOURNAL, read_document
from domain.incoming import Document, Pressed, Text
from domain.parts import File
from persistence.engine import reading
from persistence.inbox import Received
from persistence.outbox import Outgoing
from persistence.programmes import Programmes
from persistence.state import ENTRIES, WORKOUTS, client_state
from persistence.store import Store
from persistence.tables import EntryRow, InboxRow, PersonRow, WorkoutRow
from tests.bot.test_desk import ROSTER

BEGIN = datetime(2026, 3, 1, 10, tzinfo=UTC)
PIET = {**ROSTER["clients"][0], "name": "Piet"}


def table(days: int, first: date = date(2022, 1, 1)) -> str:
    """Return a journal of so many days with four sets each."""
    lines = ["date,exercise,load,unit,reps"]
    for at in range(days):
        day = (first + timedelta(days=at)).isoformat()
        lines += [f"{day},Leg press,{100 + at % 50},kg,{12 - n}" for n in range(3)]
        lines.append(f"{day},Dip,bw,,{5 + at % 9}")
    return "\n".join(lines)


class Room:
    """Mara with Noor and Piet, and all that was said, in order."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.heard: list[tuple[str, Rendered]] = []
        self.numbers: list[int] = []
        self.stage = Stage(store, BEGIN, self._watch, made(store))
        store.load_roster(read_roster({**ROSTER, "clients": [*ROSTER["clients"], PIET]}), BEGIN)
        asyncio.run(self.stage.settle())
        self.number = {person.name: person.number for person in store.people()}

    def _watch(self, _at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        self.heard.append((outgoing.name, rendered))
        self.numbers.append(outgoing.number)

    def decided(self, start: str) -> int:
        """Return when a message that begins so was decided on, by its place among all of them."""
        found = zip(self.heard, self.numbers, strict=True)
        return next(number for (_, rendered), number in found if plain(rendered.text_html).startswith(start))

    def sends(self, name: str, text: str) -> Rendered:
        asyncio.run(self.stage.bring("Mara", read_document(name, text.encode())))
        return self.last

    def presses(self, label: str) -> str:
        asyncio.run(self.stage.press("Mara", label))
        return plain(self.last.text_html)

    def takes(self, text: str, whose: str = "Noor") -> str:
        self.sends(f"{whose}.csv", text)
        return self.presses("Take it in")

    def file(self, what: str, of: str = "Noor") -> bytes:
        part = File.model_validate({"what": what, "of": self.number[of], "client": of})
        content = content_of(part, self.store, self.number["Mara"])
        assert content is not None
        return content

    def count(self, row: type[EntryRow | WorkoutRow], of: str = "Noor") -> int:
        with reading(self.store._engine) as connection:
            return connection.execute(
                select(func.count()).select_from(row).where(row.client == self.number[of])
            ).scalar_one()

    @property
    def last(self) -> Rendered:
        return next(rendered for name, rendered in reversed(self.heard) if name == "Mara")


@pytest.fixture
def room() -> Iterator[Room]:
    with passing() as store:
        yield Room(store)


def test_what_goes_out_comes_in_again_unchanged(room: Room) -> None:
    assert "Done: 40 sets" in room.takes(table(10))
    for what, ending in (("journal table", "csv"), ("journal data", "json")):
        out = room.file(what)
        text = out.decode("utf-8-sig").replace("Noor", "Piet")
        room.sends(f"piet.{ending}", text)
        assert "Done: 40 sets" in room.presses("Take it in")
        assert room.file(what, "Piet").decode("utf-8-sig") == text
        assert "Undone" in room.presses("Undo")
        assert (room.count(EntryRow, "Piet"), room.count(WorkoutRow, "Piet")) == (0, 0)


def test_others_are_answered_while_a_long_journal_is_taken(room: Room) -> None:
    room.sends("noor.csv", table(200))
    button = room.store.button(room.number["Mara"], "Take it in")
    assert button is not None
    now, chat = room.stage.now, room.stage.chat_of
    room.store.receive([Received("local", "press", chat("Mara"), now, Pressed(button=button))])
    for _ in ("the press", "the first portion"):
        lease = room.store.claim_person(now, 60)
        assert lease is not None
        room.store.work(lease, now, decider(now))
        room.store.let_go(lease)
    room.store.receive([Received("local", "piet", chat("Piet"), now, Text(text="leg press 100x10"))])
    asyncio.run(room.stage.settle())
    begins = ("Taking in 800 sets", "Leg press: 100", "Done: 800 sets")
    begun, piet, done = (room.decided(start) for start in begins)
    assert begun < piet < done
    assert (room.count(EntryRow), room.count(WorkoutRow)) == (800, 200)


def test_the_state_has_the_newest_by_day_in_the_order_of_days(room: Room) -> None:
    asyncio.run(room.stage.say("Noor", "leg press 100x10"))
    room.takes(table(500, date(2024, 6, 1)))
    room.takes(table(3, date(2020, 1, 1)))
    with reading(room.store._engine) as connection:
        person = connection.execute(select(PersonRow).where(PersonRow.name == "Noor")).one()
        state = client_state(connection, person, Programmes())
    assert room.count(EntryRow) == 2013
    assert (len(state.entries), len(state.workouts)) == (ENTRIES, WORKOUTS)
    days = [each.set.on for each in state.entries if each.set.on is not None]
    assert days == sorted(days)
    assert (days[-1], state.entries[-1].set.exercise) == (BEGIN.date(), "Leg press")
    assert min(days) > date(2024, 6, 1)


def test_what_is_not_understood_is_in_a_file_row_by_row(room: Room) -> None:
    text = "date,exercise,load,reps\n" + "soon,Dip,1,5\n" * 40 + "2026-02-01,=Leg press,1,5\n"
    shown = room.sends("noor.csv", text)
    while any(label.startswith("Keep") for label, _ in shown.buttons):
        room.presses(next(label for label, _ in shown.buttons if label.startswith("Keep")))
        shown = room.last
    words = plain(shown.text_html)
    assert "40 rows not taken" in words
    assert words.count("row ") == 8
    assert "and 32 more, in the file" in words
    assert shown.document is not None
    lines = shown.document.content.decode("utf-8-sig").split("\r\n")
    assert len([line for line in lines if line.split(",")[1:2] == ["no"]]) == 40
    assert not any(line.split(",")[2:3] == ["=Leg press"] for line in lines)


def test_no_cell_that_goes_out_is_a_formula(room: Room) -> None:
    names = ("=HYPERLINK(0)", "@SUM(1)", "-Wobbler")
    text = "date,exercise,load,reps\n" + "".join(f"2026-02-01,{name},1,5\n" for name in names)
    room.sends("noor.csv", text)
    room.presses("Keep all 3 as they are")
    room.presses("Take it in")
    rows = room.file("journal table").decode("utf-8-sig").split("\r\n")[1:-1]
    assert len(rows) == 3
    assert all(cell[:1] not in "=@-+" or cell == "" for line in rows for cell in line.split(","))


@pytest.mark.parametrize(
    ("name", "size", "fault"),
    [
        ("old.csv", LIMIT_BYTES_OF_JOURNAL, None),
        ("old.csv", LIMIT_BYTES_OF_JOURNAL + 1, "too large"),
        ("old.JSON", LIMIT_BYTES + 1, None),
        ("old.txt", LIMIT_BYTES + 1, "too large"),
    ],
)
def test_a_journal_may_be_larger_than_a_sheet_but_not_without_bounds(
    name: str, size: int, fault: str | None
) -> None:
    assert read_document(name, b"a" * size).fault == fault


def test_whoever_is_erased_is_in_no_file_that_the_coach_has_sent(room: Room) -> None:
    room.takes(table(2))
    room.sends("Noor.csv", table(3) + "\n2026-01-01,Quokka lift,1,1")
    asyncio.run(room.stage.say("Noor", "delete my data"))
    asyncio.run(room.stage.press("Noor", "Yes, erase everything"))
    with reading(room.store._engine) as connection:
        kept = connection.execute(select(InboxRow.incoming)).scalars().all()
    files = [each for each in kept if isinstance(each, Document)]
    assert len(files) == 2
    assert [(each.text, each.name) for each in files] == [(None, "")] * 2
    assert room.count(EntryRow) == 0


def test_on_postgresql_as_well(postgres_url: str) -> None:
    with opened(postgres_url) as store:
        room = Room(store)
        assert "Done: 400 sets" in room.takes(table(100))
        assert "Undone: the 400 sets" in room.presses("Undo")
        assert (room.count(EntryRow), room.count(WorkoutRow)) == (0, 0)
