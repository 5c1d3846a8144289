"""The local chat: one terminal in which you are a client or the coach, and can let time pass.

What you type is what the person says; a line that begins with a colon is for the terminal itself. What
others hear because of you is shown in a line each; what they hear as time passes is only counted. Whoever you
become, you see the latest message to that person whole.
"""

import asyncio
import re
from datetime import datetime, timedelta
from pathlib import Path
from typing import NamedTuple
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.padding import Padding
from rich.text import Text

from bot.changing import shows_choice
from bot.channel import Rendered
from bot.enclosing import made
from bot.files.folder import Folder
from bot.markup import plain
from bot.play.show import INDENT, changes, enclosed_lines, formatted, named
from bot.stage import NoSuchButtonError, NoSuchMessageError, NothingToEditError, Stage
from bot.textfile import read_document
from bot.wording.reader import listed
from domain.expressions import Expression
from persistence.outbox import Outgoing
from persistence.store import Store

COMMANDS = """\
:next            let time pass until you hear from the bot
:wait 3 days     let time pass (minutes, hours, days, weeks)
:as NAME         be somebody else; :who lists the people
:1               press the first button under your last message that has any
:edit TEXT       type your last message anew
:to WORDS        let what you type next be a reply to the latest message with these words
:send FILE       send a text file, such as a sheet
:quit            leave\
"""

_SPAN = Expression(
    r"(?:(?P<count>\d{1,4}|an?|one) ?)?(?P<unit>minute|min|m|hour|h|day|d|week|w)s?", re.IGNORECASE
)
_SECONDS = {"m": 60, "h": 3600, "d": 86400, "w": 604800}


MOST_STEPS = 1000
"""After so many things that happen to others, nothing more is expected for oneself."""


class Message(NamedTuple):
    """A message as it came: when, to whom, and in which words."""

    at: datetime
    outgoing: Outgoing
    rendered: Rendered


class LocalChat:
    """One terminal and the stage behind it."""

    def __init__(self, store: Store, console: Console, me: str | None, now: datetime, folder: Folder) -> None:
        """`me` is the name of the person to be, without one the first client; `now` is when it begins.

        The pictures and files that are shown go into `folder`.
        """
        self._store = store
        self._console = console
        self._stage = Stage(store, now, self._heard, made(store))
        self._me = me or next((person.name for person in store.people() if person.is_client), "You")
        self._my_chat = self._stage.chat_of(self._me)
        self._folder = folder
        self._latest: dict[str, Message] = {}
        self._mine_heard = 0
        self._replies_to: str | None = None
        self._meanwhile: list[str] | None = None

    async def run(self) -> None:
        """Read lines until the input ends."""
        self._console.print(f"You are {self._me}. Type what {self._me} says; a line with a colon is for me:")
        self._console.print(Padding(Text(COMMANDS, style="dim"), (0, 0, 1, INDENT)))
        self._meanwhile = []
        await self._stage.settle()
        self._meanwhile = None
        while True:
            self._console.print(Text(self._clock(), style="dim"), end=" ")
            try:
                line = await asyncio.to_thread(self._console.input, Text(f"{self._me}> ", style="bold green"))
            except (EOFError, KeyboardInterrupt):
                self._console.print()
                return
            if line.strip() in {":quit", ":q", ":exit"}:
                return
            await self._take(line)

    async def _take(self, line: str) -> None:
        words = line.strip()
        if not words:
            return
        if not words.startswith(":"):
            replies_to, self._replies_to = self._replies_to, None
            await self._stage.say(self._me, line, replies_to)
            return
        command, _, rest = words[1:].partition(" ")
        rest = rest.strip()
        match command.casefold():
            case "wait":
                await self._wait(rest)
            case "next":
                await self._next()
            case "as":
                self._become(rest)
            case "who":
                self._who()
            case "edit":
                await self._edit(rest)
            case "to":
                self._reply(rest)
            case "send":
                await self._send(rest)
            case _ if command.isdecimal():
                await self._press(int(command))
            case _:
                self._note(COMMANDS)

    async def _wait(self, span: str) -> None:
        found = _SPAN.fullmatch(span)
        if found is None:
            self._note("Say how long, as in :wait 3 days or :wait 2 hours.")
            return
        count = found["count"] or "1"
        many = int(count) if count.isdecimal() else 1
        seconds = many * _SECONDS[found["unit"][0].casefold()]
        self._meanwhile = []
        await self._stage.wait_until(self._stage.now + timedelta(seconds=seconds))
        self._sum_up()

    async def _next(self) -> None:
        self._meanwhile = []
        heard = self._mine_heard
        for _ in range(MOST_STEPS):
            due = self._store.next_due(self._stage.now)
            if due is None or self._mine_heard > heard:
                break
            await self._stage.wait_until(due)
        self._sum_up()
        if self._mine_heard == heard:
            self._note(f"Nothing lies ahead for {self._me}.")

    def _sum_up(self) -> None:
        others, self._meanwhile = self._meanwhile or [], None
        if others:
            many = f"{len(others)} message{'' if len(others) == 1 else 's'}"
            self._note(f"Meanwhile {many} went to {listed(sorted(set(others)))}; :as NAME shows the latest.")
            self._console.print()

    def _become(self, name: str) -> None:
        known = {person.name.casefold(): person.name for person in self._store.people()}
        self._me = known.get(name.casefold(), name or self._me)
        self._my_chat = self._stage.chat_of(self._me)
        self._replies_to = None
        if name and name.casefold() not in known:
            self._note(f"{name} is not known to the bot: a stranger, who can only bring an invitation.")
        elif (latest := self._latest.get(self._me.casefold())) is not None:
            self._show(latest)

    def _who(self) -> None:
        for person in self._store.people():
            self._note(f"{person.name}, {'coach' if person.is_coach else 'client'}, {person.zone}")

    async def _edit(self, text: str) -> None:
        try:
            await self._stage.edit(self._me, text)
        except NothingToEditError:
            self._note("You have not said anything yet.")

    def _reply(self, words: str) -> None:
        try:
            message = self._stage.message(self._me, words)
        except NoSuchMessageError:
            self._note("There is no such message in this chat.")
            return
        self._replies_to = message.key
        self._note(f"What you type next answers «{' '.join(message.words.split())[:60]}».")

    async def _send(self, name: str) -> None:
        try:
            content = await asyncio.to_thread(_content, name)
        except OSError as fault:
            self._note(f"Cannot read {name}: {fault.strerror}.")
            return
        await self._stage.bring(self._me, read_document(Path(name).name, content))

    async def _press(self, place: int) -> None:
        buttons = self._stage.buttons(self._me)
        if not 1 <= place <= len(buttons):
            self._note("There is no such button.")
            return
        try:
            await self._stage.press(self._me, buttons[place - 1][0])
        except NoSuchButtonError:
            self._note("There is no such button.")

    def _heard(self, at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        message = Message(at, outgoing, rendered)
        is_mine = outgoing.chat == self._my_chat
        if is_mine:
            self._me = named(outgoing)  # I may be called something else from now on
        if shows_choice(outgoing):
            if is_mine and rendered.text_html:
                self._note(f"(under that message now: {plain(rendered.text_html)})")
            return
        self._latest[named(outgoing).casefold()] = message
        if is_mine:
            self._mine_heard += 1
            self._show(message)
        elif self._meanwhile is not None:
            self._meanwhile.append(named(outgoing))
        else:
            words = " ".join(plain(rendered.text_html).split())
            line = self._head(message).append(f": {words}", style="dim")
            self._console.print(line, no_wrap=True, overflow="ellipsis")

    def _show(self, message: Message) -> None:
        rendered = message.rendered
        self._console.print(self._head(message))
        self._console.print(Padding(formatted(rendered.text_html), (0, 0, 0, INDENT)))
        for line in enclosed_lines(rendered, self._folder):
            self._console.print(Padding(Text(line, style="cyan"), (0, 0, 0, INDENT)))
        for place, (label, _) in enumerate(rendered.buttons, start=1):
            self._console.print(Padding(Text(f":{place} {label}", style="cyan"), (0, 0, 0, INDENT)))
        self._console.print()

    def _head(self, message: Message) -> Text:
        local = message.at.astimezone(ZoneInfo(message.outgoing.zone))
        to = named(message.outgoing)
        style = "bold blue" if to.casefold() == self._me.casefold() else "magenta"
        return Text.assemble(
            (f"{local:%a %d %b %H:%M}  ", "dim"), (f"Kilopost to {to}{changes(message.outgoing)}", style)
        )

    def _clock(self) -> str:
        person = self._store.person_of_chat(self._stage.chat_of(self._me))
        local = self._stage.now.astimezone(ZoneInfo(person.zone if person else "UTC"))
        return f"{local:%a %d %b %H:%M}"

    def _note(self, words: str) -> None:
        self._console.print(Padding(Text(words, style="dim"), (0, 0, 0, INDENT)))


def _content(name: str) -> bytes:
    return Path(name).expanduser().read_bytes()
