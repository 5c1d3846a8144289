"""`load`: the people of a roster, into the database."""

from datetime import UTC, datetime
from pathlib import Path

from bot.commands.database import opened
from bot.roster import read_roster
from bot.settings import load_settings
from persistence.prepared import Loaded, Roster
from persistence.store import Store


def load_command(path: Path) -> int:
    """Load the roster at `path`; return the exit status. Raises OperatorFault."""
    bring_in(read_roster(path))
    return 0


def bring_in(roster: Roster) -> None:
    """Put the people of `roster` into the database, and print how each one opens the chat."""
    now = datetime.now(UTC)
    with opened(load_settings().database) as store:
        for loaded in store.load_roster(roster, now):
            print(_line(loaded, _code(store, loaded, now)))


def _code(store: Store, loaded: Loaded, now: datetime) -> str | None:
    """Return a code for whoever has no chat on a platform yet."""
    chat = loaded.person.chat
    if chat is not None and not chat.startswith("local:"):
        return None
    return store.invite(loaded.person.number, now)


def _line(loaded: Loaded, code: str | None) -> str:
    role = "coach" if loaded.person.is_coach else "client"
    there = "" if loaded.new else ", was there already"
    way_in = f", comes in with /start {code}" if code else ""
    return f"{loaded.person.name} ({role}{there}){way_in}"
