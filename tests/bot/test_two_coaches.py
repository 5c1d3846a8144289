"""Two coaches and their clients in one database: who sees what, before and after a client is handed over."""

import asyncio
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from typing import get_args

import pytest

from bot.channel import Rendered, Sent, TryAgain
from bot.commands.database import opened, passing
from bot.enclosing import made
from bot.files.writing import content_of
from bot.markup import plain
from bot.roster import read_roster
from bot.stage import Stage
from domain.parts import File, FileKind, Notice
from persistence.outbox import Outgoing
from persistence.store import Store
from tests.play.golden import SCRIPTS

BEGIN = datetime(2026, 3, 2, 10, tzinfo=UTC)


class Harbour(Stage):
    """A stage on which nothing reaches the chats that are `away`."""

    away: frozenset[str] = frozenset()

    async def send(self, chat: str, message: Rendered) -> Sent | TryAgain:  # type: ignore[override] # it can fail
        if chat in self.away:
            return TryAgain(60.0, surely_not_sent=True)
        return await super().send(chat, message)


class Town:
    """Mara with Noor and Piet, and Ines with Ana, as in the golden scripts of two coaches."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.heard: list[tuple[str, str]] = []
        self.code = ""
        self.stage = Harbour(store, BEGIN, self._watch, made(store))
        store.load_roster(read_roster(SCRIPTS / "two_coaches.json"), BEGIN)

    def _watch(self, _at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        self.heard.append((outgoing.name, plain(rendered.text_html).replace("\u00a0", " ")))
        for part in outgoing.say.parts:
            if isinstance(part, Notice) and part.topic == "invited":
                self.code = str(part.facts["code"])

    def say(self, who: str, *texts: str) -> list[tuple[str, str]]:
        """Let somebody say something; return all that was said then, and to whom."""
        before = len(self.heard)
        for text in texts:
            asyncio.run(self.stage.wait_until(self.stage.now + timedelta(minutes=1)))
            asyncio.run(self.stage.say(who, text))
        return self.heard[before:]

    def number(self, name: str) -> int:
        return next(person.number for person in self.store.people() if person.name == name)

    def can_read(self, who: str, client: str) -> set[str]:
        """Return which files on a client somebody can have."""
        number = self.number(client)
        return {
            kind
            for kind in get_args(FileKind)
            if content_of(File(what=kind, of=number, client=client), self.store, self.number(who)) is not None
        }


@pytest.fixture(params=["sqlite", "postgresql"])
def town(request: pytest.FixtureRequest) -> Iterator[Town]:
    """Two coaches with their clients; Noor has trained once."""
    store = passing() if request.param == "sqlite" else opened(request.getfixturevalue("postgres_url"))
    with store as each:
        found = Town(each)
        found.say("Noor", "row 60x9, pulldown 45x6, rdl 80x7, hammer curl 14x10")
        yield found


OF_THE_COACH = {"journal table", "journal pages", "journal data"}
OF_A_FILE_SENT = {"journal reading"}
"""How a file that a coach sent was read, which there is only where one was."""


def test_files_are_for_the_client_and_the_coach_now(town: Town) -> None:
    assert town.can_read("Noor", "Noor") == set(get_args(FileKind)) - OF_A_FILE_SENT
    readers = {who: town.can_read(who, "Noor") for who in ("Mara", "Ines", "Piet", "Ana")}
    assert readers == {"Mara": OF_THE_COACH, "Ines": set(), "Piet": set(), "Ana": set()}
    town.say("Mara", "hand Noor over to Ines", "yes")
    town.say("Ines", "take Noor")
    readers = {who: town.can_read(who, "Noor") for who in ("Mara", "Ines", "Piet", "Ana")}
    assert readers == {"Mara": set(), "Ines": OF_THE_COACH, "Piet": set(), "Ana": set()}


def test_the_former_coach_hears_nothing_of_the_client_any_more(town: Town) -> None:
    town.say("Mara", "hand Noor over to Ines", "yes")
    town.say("Ines", "take Noor")
    said = town.say("Noor", "my left knee hurts", "can I use straps?", "row 60x10")
    assert {who for who, _ in said} == {"Noor", "Ines"}
    for text in ("how is Noor?", "tell Noor: hi", "notes on Noor", "who needs me?", "journal of Noor"):
        assert not [words for who, words in town.say("Mara", text) if who == "Noor" or "60 kg" in words]
    before = len(town.heard)
    asyncio.run(town.stage.wait_until(town.stage.now + timedelta(days=15)))
    assert not [words for who, words in town.heard[before:] if who == "Mara" and "Noor" in words]
    assert [words for who, words in town.heard[before:] if who == "Ines" and "Noor" in words]


def test_what_has_not_reached_the_former_coach_yet_is_the_new_coachs_alone(town: Town) -> None:
    town.say("Mara", "hand Noor over to Ines", "yes")
    town.stage.away = frozenset({town.stage.chat_of("Mara")})
    town.say("Noor", "can I use straps?")
    town.say("Piet", "my left knee hurts")
    taken_on = town.say("Ines", "take Noor")
    assert "can I use straps?" in str([words for who, words in taken_on if who == "Ines"])
    town.stage.away = frozenset()
    before = len(town.heard)
    asyncio.run(town.stage.wait_until(town.stage.now + timedelta(minutes=30)))
    read = [words for who, words in town.heard[before:] if who == "Mara"]
    assert ["left knee" in read[0], read[1].startswith("Ines has taken Noor on")] == [True, True]
    assert "straps" not in str(read)


def test_a_coach_who_trains_stays_a_coach_when_the_own_journal_is_erased(town: Town) -> None:
    town.say("Ines", "invite Mara to Harbour Light")
    (first, *_) = town.say("Mara", f"/start {town.code}")
    assert "You train here now, with Ines as your coach" in first[1]
    town.say("Mara", "yes", "41", "none", "kg", "Lisbon", "7:00", "a full gym", "today")
    said = town.say("Mara", "chest press 40x12")
    assert [who for who, words in said if "40 kg × 12" in words] == ["Mara"]
    assert [who for who, words in town.say("Mara", "tell Noor: well done") if "well done" in words] == [
        "Noor"
    ]
    assert "Mara" in str(town.say("Ines", "who needs me?"))
    town.say("Mara", "note on Noor: works nights", "delete my data", "yes, erase everything")
    assert town.can_read("Mara", "Noor") == OF_THE_COACH
    person = town.store.person(town.number("Mara"))
    assert person is not None
    assert (person.is_coach, person.is_client, person.name) == (True, False, "Mara")
    assert "works nights" in str(town.say("Mara", "notes on Noor"))
    assert "Mara" not in str(town.say("Ines", "who needs me?"))
    asyncio.run(town.stage.wait_until(town.stage.now + timedelta(days=3)))
    assert "Noor" in str(town.say("Mara", "who needs me?"))


def test_a_client_can_become_a_coach_and_train_on(town: Town) -> None:
    town.say("Mara", "invite Noor as a coach")
    assert "is a coach here now" in str(town.say("Noor", f"/start {town.code}"))
    assert "60 kg × 10" in str(town.say("Noor", "row 60x10"))
    assert "No clients yet" in str(town.say("Noor", "who needs me?"))
    assert town.can_read("Mara", "Noor") == OF_THE_COACH
