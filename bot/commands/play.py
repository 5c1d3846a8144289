"""`play`: a script of what people do, played in virtual time, and what the bot says to it."""

import asyncio
import sys
from pathlib import Path
from typing import Any

from rich.console import Console

from bot.commands.database import opened, passing
from bot.play.engine import play
from bot.play.script import Script, ScriptFault, read_script
from bot.play.show import WIDTH, Chat, JsonLines
from bot.roster import RosterFault, read_roster
from persistence.store import Store


def play_command(path: Path, *, as_json: bool, database: str | None) -> int:
    """Play the script at `path`; return the exit status. A fault is one line on standard error."""
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as fault:
        print(f"kilopost: cannot read {path}: {fault}", file=sys.stderr)
        return 1
    try:
        script = read_script(text, path.parent)
        with opened(database) if database else passing() as store:
            set_up(store, script)
            asyncio.run(_played(store, script, as_json=as_json))
    except ScriptFault as fault:
        print(f"kilopost: {path}: {fault}", file=sys.stderr)
        return 1
    except RosterFault as fault:
        print(f"kilopost: {fault}", file=sys.stderr)
        return 1
    return 0


async def _played(store: Store, script: Script, *, as_json: bool) -> None:
    console = Console(highlight=False, soft_wrap=as_json, width=None if as_json else WIDTH)
    zones = {person.name.casefold(): person.zone for person in store.people()}
    await play(script, store, JsonLines(console) if as_json else Chat(console, zones))


def set_up(store: Store, script: Script) -> None:
    """Load the roster that the script begins with, as of the script's first moment."""
    setup: str | dict[str, Any] | None = script.setup
    if setup is None:
        return
    source = script.folder / setup if isinstance(setup, str) else setup
    store.load_roster(read_roster(source, script.folder), script.steps[0].at)
