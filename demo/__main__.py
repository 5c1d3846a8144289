"""The demo: weeks of an invented coach and her clients, played through the real bot and told as stories.

It plays on a passing database, so that nothing is left behind. On a terminal the local chat goes on from
where the weeks end, as any of the people.
"""

import argparse
import asyncio
import sys
from pathlib import Path
from zoneinfo import ZoneInfo

from rich.console import Console

from bot.commands.database import passing
from bot.commands.play import set_up
from bot.files.folder import Folder
from bot.local import LocalChat
from bot.play.engine import play
from bot.play.script import read_script
from bot.play.show import JsonLines
from demo.show import WIDTH, Teller
from demo.stories import read_stories
from demo.tape import Tape
from persistence.store import Store

HERE = Path(__file__).parent

WELCOME = """\
[bold]Kilopost[/bold] stands between a strength coach and the clients who train elsewhere. Marit \
coaches from Norway; her six clients live on five continents, and all that she sees of them is what \
they type. What follows is being played right now through the real bot, in virtual time. Everybody in \
it is invented. Times are the client's own.
"""

GOING_ON = """\
The weeks are over, but they go on from here for as long as you like, with the same people; nothing is \
kept. Try [bold]how is Farah doing?[/bold], or [bold]:as Mateus[/bold], and tell what you lifted.
"""


IN_A_BROWSER = """\
The same people on two phones in a browser, with a clock to move: [bold].venv/bin/kilopost page[/bold]
"""


def main() -> int:
    """Play the weeks; return the exit status."""
    parser = argparse.ArgumentParser(prog="demo/run", description="Play some weeks of an invented coach.")
    parser.add_argument("--json", action="store_true", help="print all that the bot said, as JSON lines")
    as_json: bool = parser.parse_args().json
    console = Console(highlight=False, soft_wrap=as_json)
    if not as_json:
        console.width = min(WIDTH, console.width) if console.is_terminal else WIDTH
    with passing() as store:
        asyncio.run(run(store, console, as_json=as_json))
    return 0


async def run(store: Store, console: Console, *, as_json: bool) -> None:
    """Play, tell, and on a terminal chat on."""
    file = HERE / "weeks.jsonl"
    script = read_script(file.read_text(encoding="utf-8"), HERE)
    set_up(store, script)
    if as_json:
        await play(script, store, JsonLines(console))
        return
    people = store.people()
    coach = next(person for person in people if person.is_coach)
    zones = {person.name: person.zone for person in people}
    tape = Tape(frozenset(person.name for person in people if person.is_client))
    console.print(WELCOME)
    stage = await play(script, store, tape)
    teller = Teller(console, zones)
    happenings = tuple(tape.happenings())
    for story in read_stories(HERE / "stories.toml"):
        teller.tell(story, happenings)
    teller.heading(f"{coach.name}: who needs me?", "A month later she asks just that, on a Saturday morning.")
    teller.chat([each for each in happenings if each.client is None], ZoneInfo(zones[coach.name]))
    console.print(IN_A_BROWSER)
    if sys.stdin.isatty() and sys.stdout.isatty():
        console.rule(style="dim")
        console.print(GOING_ON)
        await LocalChat(store, console, coach.name, stage.now, Folder()).run()


if __name__ == "__main__":
    sys.exit(main())
