"""`play`: a script of what people do, played in virtual time, and what the bot says to it."""

import asyncio
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from rich.console import Console

from bot.commands.database import opened, passing
from bot.enclosing import made, named
from bot.faults import OperatorFault
from bot.files.folder import Folder
from bot.play.engine import play
from bot.play.script import Script, ScriptFault, read_script
from bot.play.show import WIDTH, Chat, JsonLines
from bot.roster import read_roster
from persistence.store import Store


def play_command(path: Path, *, as_json: bool, database: str | None, files: Path | None = None) -> int:
    """Play the script at `path`; return the exit status. Raises OperatorFault.

    Pictures and files go into the folder `files`; where there is none, into a fresh one for JSON, and are
    only named in the chat to read.
    """
    with told_to_the_operator(path):
        script = read_script(path.read_text(encoding="utf-8"), path.parent)
        with opened(database) if database else passing() as store:
            set_up(store, script)
            asyncio.run(_played(store, script, files, as_json=as_json))
    return 0


@contextmanager
def told_to_the_operator(path: Path) -> Iterator[None]:
    """Raise what is wrong with the script at `path`, and with reading it, as OperatorFault."""
    try:
        yield
    except OSError as fault:
        raise OperatorFault((f"{fault.filename or path}: {fault.strerror}",)) from None
    except UnicodeDecodeError:
        raise OperatorFault((f"{path} is not a text file in UTF-8",)) from None
    except ScriptFault as fault:
        raise OperatorFault((f"{path}: {fault}",)) from None


async def _played(store: Store, script: Script, files: Path | None, *, as_json: bool) -> None:
    console = Console(highlight=False, soft_wrap=as_json, width=None if as_json else WIDTH)
    zones = {person.name.casefold(): person.zone for person in store.people()}
    folder = Folder(files) if files or as_json else None
    audience = JsonLines(console, folder or Folder()) if as_json else Chat(console, zones, folder)
    await play(script, store, audience, named if folder is None else made(store))


def set_up(store: Store, script: Script) -> None:
    """Load the roster that the script begins with, as of the script's first moment."""
    if script.setup is None:
        return
    source = script.folder / script.setup if isinstance(script.setup, str) else script.setup
    store.load_roster(read_roster(source, script.folder), script.steps[0].at)
