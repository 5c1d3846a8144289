"""`chat`: the bot in this terminal."""

import asyncio
from datetime import UTC, datetime
from pathlib import Path

from rich.console import Console

from bot.commands.database import opened, passing
from bot.faults import OperatorFault
from bot.files.folder import Folder
from bot.local import LocalChat
from bot.roster import first_reminder, read_roster
from persistence.store import Store

NOBODY = "there is nobody yet: bring people in with «load ROSTER», or try some with «chat --roster FILE»"


def chat_command(me: str | None, roster: Path | None, files: Path | None = None) -> int:
    """Chat as `me` until the input ends; with a `roster`, on people who are gone again afterwards.

    With a roster the time is that of the first reminder in it. Pictures and files go into the folder `files`,
    or a fresh one. Raises OperatorFault.
    """
    if roster is None:
        from bot.settings import load_settings  # noqa: PLC0415 - slow to load, and of no use to those who try it

        with opened(load_settings().database) as store:
            converse(store, me, datetime.now(UTC), Folder(files))
        return 0
    people = read_roster(roster)
    now = first_reminder(people) or datetime.now(UTC)
    with passing() as store:
        store.load_roster(people, now)
        converse(store, me, now, Folder(files))
    return 0


def converse(store: Store, me: str | None, now: datetime, folder: Folder) -> None:
    """Hold a conversation on the people of `store`, beginning at `now`; what is sent goes into `folder`."""
    if not store.people():
        raise OperatorFault((NOBODY,))
    asyncio.run(LocalChat(store, Console(highlight=False), me, now, folder).run())
