"""Golden conversations: each script in `scripts/` beside the chat that it prints.

`python -m tests.play.golden` writes the chats anew; read the difference before you commit it. The welcome is
printed in the first week only, and an invitation's code, which is random, as CODE.
"""

import asyncio
import io
import re
from collections.abc import Callable
from pathlib import Path

from rich.console import Console

from bot.commands.database import passing
from bot.commands.play import set_up
from bot.play.engine import Said, play
from bot.play.script import Step, read_script
from bot.play.show import WIDTH, Chat
from domain.parts import Notice
from persistence.store import Store

SCRIPTS = Path(__file__).parent / "scripts"
WITH_WELCOME = "first_week"

_CODE = re.compile(r"(?<=/start )[\w-]{22}(?![\w-])")


def scripts() -> list[Path]:
    """Return all scripts, in the order of their names."""
    return sorted(SCRIPTS.glob("*.jsonl"))


def chat_of(path: Path, look: Callable[[Store], None] = lambda _: None) -> str:
    """Return the chat that the script at `path` prints; `look` is shown what is kept at its end."""
    script = read_script(path.read_text(encoding="utf-8"), path.parent)
    printed = io.StringIO()
    with passing() as store:
        set_up(store, script)
        zones = {person.name.casefold(): person.zone for person in store.people()}
        chat = Chat(Console(file=printed, highlight=False, width=WIDTH), zones)

        def audience(event: Step | Said) -> None:
            if path.stem == WITH_WELCOME or not is_only_welcome(event):
                chat(event)

        asyncio.run(play(script, store, audience))
        look(store)
    lines = (line.rstrip() for line in printed.getvalue().splitlines())
    return _CODE.sub("CODE", "\n".join(lines)) + "\n"


def is_only_welcome(event: Step | Said) -> bool:
    """Return whether this is the first message to a client, and nothing else."""
    parts = event.outgoing.say.parts if isinstance(event, Said) else ()
    return bool(parts) and all(isinstance(part, Notice) and part.topic == "welcome" for part in parts)


def main() -> None:
    """Write all chats anew."""
    for path in scripts():
        path.with_suffix(".txt").write_text(chat_of(path), encoding="utf-8")


if __name__ == "__main__":
    main()
