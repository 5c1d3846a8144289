"""A played script as a chat to read, or as JSON lines."""

import json
from datetime import datetime
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.padding import Padding
from rich.text import Text

from bot.changing import only_adds, shows_choice
from bot.channel import Attachment, Rendered
from bot.files.folder import Folder
from bot.markup import runs
from bot.play.about import about
from bot.play.engine import Said
from bot.play.script import Step
from persistence.outbox import Outgoing

INDENT = 4
WIDTH = 92


class JsonLines:
    """Prints what the bot says, a JSON object a line, with times in the reader's zone."""

    def __init__(self, console: Console, folder: Folder | None = None) -> None:
        """Print to `console`; pictures and files go into `folder`, without one their names are all."""
        self._console = console
        self._folder = folder

    def __call__(self, event: Step | Said) -> None:
        """Print one event."""
        if isinstance(event, Step):
            return
        outgoing, rendered = event.outgoing, event.rendered
        if shows_choice(outgoing):
            return
        line = {
            "at": event.at.astimezone(ZoneInfo(outgoing.zone)).isoformat(),
            "to": named(outgoing),
            "text": "".join(run.text for run in runs(rendered.text_html)),
            "buttons": [label for label, _ in rendered.buttons],
            "image": self._kept(rendered.photo),
            "file": self._kept(rendered.document),
            "about": [about(part) for part in outgoing.say.parts],
        }
        self._console.out(json.dumps(line, ensure_ascii=False), highlight=False)

    def _kept(self, attachment: Attachment | None) -> str | None:
        if attachment is None:
            return None
        return attachment.name if self._folder is None else str(self._folder.keep(attachment))


class Chat:
    """Prints a chat, as one would read it over the shoulder of everybody at once."""

    def __init__(self, console: Console, zones: dict[str, str], folder: Folder | None = None) -> None:
        """`zones` are the people's IANA zones at first, by lower-case name.

        Pictures and files go into `folder`; without one, their names are all that is shown.
        """
        self._console = console
        self._zones = dict(zones)
        self._folder = folder
        self._day = ""

    def __call__(self, event: Step | Said) -> None:
        """Print one event."""
        match event:
            case Step(at=at, who=who, deed=deed, what=what, to=to) if who is not None:
                local = self._local(at, self._zones.get(who.casefold(), "UTC"))
                did = {"edits": " edits", "presses": " presses", "sends": " sends"}.get(deed or "", "")
                if deed == "replies":
                    did = f" replies to «{to}»"
                self._head(local, f"{who}{did}", "bold green")
                shown = f"[{what}]" if deed == "presses" else what
                self._console.print(Padding(Text(shown, style="green"), (0, 0, 1, INDENT)))
            case Step(at=at, off_until=until) if until is not None:
                self._head(self._local(at, "UTC"), f"Kilopost is off until {until:%-d %B %H:%M} UTC", "red")
                self._console.print()
            case Said(outgoing=outgoing) if shows_choice(outgoing):
                pass
            case Said(at=at, outgoing=outgoing, rendered=rendered):
                self._zones[named(outgoing).casefold()] = outgoing.zone
                local = self._local(at, outgoing.zone)
                self._head(
                    local,
                    f"Kilopost to {named(outgoing)}{changes(outgoing)}",
                    "bold blue" if not outgoing.is_coach else "bold magenta",
                )
                self._console.print(Padding(formatted(rendered.text_html), (0, 0, 0, INDENT)))
                for line in enclosed_lines(rendered, self._folder):
                    self._console.print(Padding(Text(line, style="cyan"), (0, 0, 0, INDENT)))
                if rendered.buttons:
                    labels = "  ".join(f"[{label}]" for label, _ in rendered.buttons)
                    self._console.print(Padding(Text(labels, style="cyan"), (0, 0, 0, INDENT)))
                self._console.print()
            case _:
                pass

    def _local(self, at: datetime, zone: str) -> datetime:
        return at.astimezone(ZoneInfo(zone))

    def _head(self, local: datetime, name: str, style: str) -> None:
        day = f"{local:%A} {local.day} {local:%B %Y}"
        if day != self._day:
            self._day = day
            self._console.rule(Text(day, style="dim"), style="dim", align="left")
        self._console.print(Text.assemble((f"{local:%H:%M}  ", "dim"), (name, style)))


def enclosed_lines(rendered: Rendered, folder: Folder | None) -> list[str]:
    """Return a line for each picture and file of a message: its name, or where in `folder` it went."""
    enclosed = (("picture", rendered.photo), ("file", rendered.document))
    return [
        f"({what}: {each.name if folder is None else folder.keep(each)})"
        for what, each in enclosed
        if each is not None
    ]


def changes(outgoing: Outgoing) -> str:
    """Say where a message is shown that changes an earlier one; empty where it does not."""
    if only_adds(outgoing):
        return ", under the message with the button"
    return "" if outgoing.earlier is None else ", in place of its last message"


def named(outgoing: Outgoing) -> str:
    """Return whom a message is to; a stranger goes by the name of the chat."""
    return outgoing.name or outgoing.chat.partition(":")[2]


def formatted(text_html: str) -> Text:
    """Return a message's words with their markup, for a terminal."""
    styles = {"b": "bold", "i": "italic", "u": "underline", "s": "strike", "code": "cyan", "pre": "cyan"}
    return Text.assemble(*((run.text, " ".join(styles[tag] for tag in run.tags)) for run in runs(text_html)))
