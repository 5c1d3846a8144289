"""Golden conversations: each script in `scripts/` beside the chat that it prints.

`python -m tests.play.golden` writes the chats anew; read the difference before you commit it.
"""

import asyncio
import io
from pathlib import Path

from rich.console import Console

from bot.commands.database import passing
from bot.commands.play import set_up
from bot.play.engine import play
from bot.play.script import read_script
from bot.play.show import WIDTH, Chat

SCRIPTS = Path(__file__).parent / "scripts"


def scripts() -> list[Path]:
    """Return all scripts, in the order of their names."""
    return sorted(SCRIPTS.glob("*.jsonl"))


def chat_of(path: Path) -> str:
    """Return the chat that the script at `path` prints."""
    script = read_script(path.read_text(encoding="utf-8"), path.parent)
    printed = io.StringIO()
    with passing() as store:
        set_up(store, script)
        zones = {person.name.casefold(): person.zone for person in store.people()}
        console = Console(file=printed, highlight=False, width=WIDTH)
        asyncio.run(play(script, store, Chat(console, zones)))
    return "\n".join(line.rstrip() for line in printed.getvalue().splitlines()) + "\n"


def main() -> None:
    """Write all chats anew."""
    for path in scripts():
        path.with_suffix(".txt").write_text(chat_of(path), encoding="utf-8")


if __name__ == "__main__":
    main()
