"""`load`: the people of a roster, into the database."""

import sys
from datetime import UTC, datetime
from pathlib import Path

from bot.commands.database import opened
from bot.roster import RosterFault, read_roster
from bot.settings import SettingsFault, load_settings
from persistence.prepared import Loaded
from persistence.store import Store


def load_command(path: Path) -> int:
    """Load the roster at `path`; return the exit status. Each fault is one line on standard error."""
    try:
        roster = read_roster(path)
        now = datetime.now(UTC)
        with opened(load_settings().database) as store:
            for loaded in store.load_roster(roster, now):
                print(_line(loaded, _code(store, loaded, now)))
    except (RosterFault, SettingsFault) as fault:
        for line in fault.faults:
            print(f"kilopost: {line}", file=sys.stderr)
        return 1
    return 0


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
