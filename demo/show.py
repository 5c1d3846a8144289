"""The stories as they are printed: a heading for each, the chat in columns, a line for what is left out."""

from collections.abc import Iterator, Sequence
from datetime import datetime
from itertools import groupby
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.table import Table
from rich.text import Text

from bot.play.engine import Said
from bot.play.script import Step
from bot.play.show import formatted
from demo.stories import Story
from demo.tape import Happening
from domain.parts import Notice, VerdictPart

WIDTH = 100
NAMES = 9
"""How wide the column of names is."""
BESIDE_WORDS = 5 + NAMES + 6
"""What the time, the name and the gaps take."""


class Teller:
    """Prints stories from what was played."""

    def __init__(self, console: Console, zones: dict[str, str]) -> None:
        """`zones` are the people's IANA zones, by name."""
        self._console = console
        self._zones = zones

    def tell(self, story: Story, happenings: Sequence[Happening]) -> None:
        """Print one client's story out of all that happened."""
        zone = ZoneInfo(self._zones[story.client])
        own = [each for each in happenings if each.client == story.client]
        self.heading(story.heading, story.lead)
        told_until: datetime | None = None
        for stretch in story.stretches:
            since, until = stretch.since.replace(tzinfo=zone), stretch.until.replace(tzinfo=zone)
            if told_until is not None:
                left_out = [each for each in own if told_until <= each.event.at < since]
                self._aside(f"{summary(left_out)} {stretch.note}")
            self.chat([each for each in own if since <= each.event.at < until], zone)
            told_until = until

    def heading(self, heading: str, lead: str) -> None:
        """Print what begins here."""
        self._console.rule(Text(f" {heading} ", style="bold"), align="left", style="dim")
        self._console.print(Text(lead, style="italic"), "\n", sep="")

    def chat(self, happenings: Sequence[Happening], zone: ZoneInfo) -> None:
        """Print a stretch of chat, with times in `zone`."""
        table = Table.grid(padding=(0, 2, 0, 0))
        table.add_column(width=5, style="dim")
        table.add_column(width=NAMES)
        table.add_column()
        day = None
        for happening in in_reading_order(happenings):
            local = happening.event.at.astimezone(zone)
            if local.date() != day:
                day = local.date()
                table.add_row("", "", Text(f"{local:%A} {local.day} {local:%B}", style="dim"))
            table.add_row(f"{local:%H:%M}", *row(happening, self._console.width - BESIDE_WORDS))
            table.add_row()
        self._console.print(table)

    def _aside(self, words: str) -> None:
        self._console.print(Text(f"{words.strip()}\n", style="italic dim"))


def in_reading_order(happenings: Sequence[Happening]) -> Iterator[Happening]:
    """Give what happened in order; of several answers to one thing, the one to whoever did it comes first."""
    for _, together in groupby(happenings, key=lambda each: each.event.at):
        moment = list(together)
        actor = next((each.event.who for each in moment if isinstance(each.event, Step)), moment[0].client)
        yield from (each for each in moment if isinstance(each.event, Step))
        said = [(each, each.event.outgoing.name) for each in moment if isinstance(each.event, Said)]
        yield from (each for each, to in said if to == actor)
        yield from (each for each, to in said if to != actor)


def row(happening: Happening, width: int) -> tuple[Text, Text]:
    """Return who speaks, and the words, with buttons in lines of that width."""
    match happening.event:
        case Step(who=who, deed=deed, what=what):
            style = "green" if who == happening.client else "magenta"
            shown = {"presses": f"[{what}]", "edits": f"{what}  (edited)"}.get(deed or "", what)
            return Text(who or "", style=f"bold {style}"), Text(shown, style=style)
        case Said(outgoing=outgoing, rendered=rendered):
            words = formatted(rendered.text_html)
            if rendered.buttons:
                labels = [label for label, _ in rendered.buttons]
                words.append(f"\n{button_lines(labels, width)}", style="cyan")
            if outgoing.is_coach:
                return Text(f"to {outgoing.name}", style="bold magenta"), words
            return Text("Kilopost", style="bold blue"), words


def button_lines(labels: Sequence[str], width: int) -> str:
    """Return the buttons in lines of that width, each whole."""
    lines = [""]
    for label in labels:
        if lines[-1] and len(lines[-1]) + len(label) + 4 > width:
            lines.append("")
        lines[-1] += f"{'  ' if lines[-1] else ''}[{label}]"
    return "\n".join(lines)


def summary(happenings: Sequence[Happening]) -> str:
    """Say in a line what is left out: how many workouts, and how often the time before was beaten."""
    parts = [
        part
        for each in happenings
        if isinstance(each.event, Said) and not each.event.outgoing.is_coach
        for part in each.event.outgoing.say.parts
    ]
    done = sum(1 for part in parts if isinstance(part, Notice) and part.topic == "workout done")
    verdicts = [part for part in parts if isinstance(part, VerdictPart) and part.before is not None]
    beaten = sum(1 for part in verdicts if part.result == "beat")
    if not done:
        return "…"
    later = "One workout" if done == 1 else f"{done} workouts"
    return f"… {later} later, with {beaten} of {len(verdicts)} exercises better than the time before."
