"""`chat`: the bot in this terminal."""

import asyncio
from datetime import UTC, datetime
from pathlib import Path

from rich.console import Console

from bot.commands.database import opened, passing
from bot.faults import OperatorFault
from bot.local import LocalChat
from bot.roster import read_roster
from bot.settings import load_settings
from persistence.store import Store

NOBODY = "there is nobody yet: bring people in with «load ROSTER», or try some with «chat --roster FILE»"


def chat_command(me: str | None, roster: Path | None) -> int:
    """Chat as `me` until the input ends; with a `roster`, on people who are gone again afterwards.

    Raises OperatorFault.
    """
    people = read_roster(roster) if roster else None
    with opened(load_settings().database) if people is None else passing() as store:
        if people is not None:
            store.load_roster(people, datetime.now(UTC))
        converse(store, me)
    return 0


def converse(store: Store, me: str | None) -> None:
    """Hold a conversation on the people of `store`."""
    if not store.people():
        raise OperatorFault((NOBODY,))
    asyncio.run(LocalChat(store, Console(highlight=False), me).run())
