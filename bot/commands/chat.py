"""`chat`: the bot in this terminal."""

import asyncio
import sys
from datetime import UTC, datetime
from pathlib import Path

from rich.console import Console

from bot.commands.database import opened, passing
from bot.local import LocalChat
from bot.roster import RosterFault, read_roster
from bot.settings import load_settings
from persistence.store import Store


def chat_command(me: str | None, roster: Path | None) -> int:
    """Chat as `me` until the input ends; with a `roster`, on people who are gone again afterwards."""
    if roster is None:
        with opened(load_settings().database) as store:
            return converse(store, me)
    with passing() as store:
        try:
            store.load_roster(read_roster(roster, roster.parent), datetime.now(UTC))
        except RosterFault as fault:
            print(f"kilopost: {fault}", file=sys.stderr)
            return 1
        return converse(store, me)


def converse(store: Store, me: str | None) -> int:
    """Hold a conversation on the people of `store`."""
    if not store.people():
        print(
            "kilopost: there is nobody yet: bring people in with «load ROSTER», "
            "or try some with «chat --roster FILE»",
            file=sys.stderr,
        )
        return 1
    asyncio.run(LocalChat(store, Console(highlight=False), me).run())
    return 0
