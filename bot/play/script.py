"""A script: JSON lines of what people do, in time order. Read whole and checked before anything is played."""

import json
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import Any, Literal


class ScriptFault(Exception):
    """A script that cannot be played: which line, and what would mend it."""

    def __init__(self, line: int, what: str) -> None:
        """`line` counts from 1; 0 stands for the script as a whole."""
        super().__init__(f"line {line}: {what}" if line else what)
        self.line = line
        self.what = what


Deed = Literal["says", "edits", "presses", "sends", "replies"]
DEEDS: tuple[Deed, ...] = ("says", "edits", "presses", "sends", "replies")


@dataclass(frozen=True, slots=True)
class Step:
    """At `at` (aware, UTC), `who` does something; without a `who`, time only passes until then.

    With `off_until` (aware, UTC) the bot is off from `at` until then: people's messages wait for it.

    `what` is the text said, the new text of an edit, a button's label or a file's path; a reply is one `to`
    the latest message in the chat that has these words.
    """

    line: int
    at: datetime
    who: str | None = None
    deed: Deed | None = None
    what: str = ""
    to: str = ""
    off_until: datetime | None = None


@dataclass(frozen=True, slots=True)
class Script:
    """A script's steps, and the roster it begins with: a path, the roster itself, or nothing."""

    steps: tuple[Step, ...]
    setup: str | dict[str, Any] | None
    folder: Path
    """Paths in the script are relative to this."""


def read_script(text: str, folder: Path) -> Script:
    """Read a script. Raises ScriptFault at the first line that cannot be played."""
    steps: list[Step] = []
    setup: str | dict[str, Any] | None = None
    for number, line in enumerate(text.splitlines(), start=1):
        if not line.strip():
            continue
        found = _object(number, line)
        if "setup" in found:
            if steps or setup is not None:
                raise ScriptFault(number, "the setup comes once, in the first line")
            setup = _setup(number, found)
            continue
        step = _step(number, found)
        if steps and step.at < steps[-1].at:
            raise ScriptFault(
                number, f"time runs backwards: {step.at.isoformat()} comes after a later moment"
            )
        steps.append(step)
    if not steps:
        raise ScriptFault(
            0,
            "the script has no steps: a line is like "
            '{"at": "2026-03-02T08:00:00+01:00", "who": "Noor", "says": "80 x 8"}',
        )
    return Script(tuple(steps), setup, folder)


def _object(number: int, line: str) -> dict[str, Any]:
    try:
        found = json.loads(line)
    except ValueError as fault:
        raise ScriptFault(number, f"not JSON ({fault})") from None
    if not isinstance(found, dict):
        raise ScriptFault(number, "a line is a JSON object")
    return found


def _setup(number: int, found: dict[str, Any]) -> str | dict[str, Any]:
    setup = found["setup"]
    if len(found) > 1 or not isinstance(setup, str | dict):
        raise ScriptFault(number, "a setup is a line of its own: a roster's path, or the roster itself")
    return setup


def _step(number: int, found: dict[str, Any]) -> Step:
    unknown = set(found) - {"at", "who", "to", "off_until", *DEEDS}
    if unknown:
        raise ScriptFault(number, f"unknown: {', '.join(sorted(unknown))}")
    at = _moment(number, found.get("at"))
    if "off_until" in found:
        until = _moment(number, found["off_until"])
        if set(found) != {"at", "off_until"} or until <= at:
            raise ScriptFault(number, '"off_until" stands alone beside "at", and is later')
        return Step(number, at, off_until=until)
    deeds = [deed for deed in DEEDS if deed in found]
    who = found.get("who")
    if not deeds and who is None:
        return Step(number, at)
    if len(deeds) != 1:
        raise ScriptFault(number, f"just one of {', '.join(DEEDS)}")
    if not isinstance(who, str) or not who.strip():
        raise ScriptFault(number, '"who" is the name of a person')
    what = found[deeds[0]]
    if not isinstance(what, str):
        raise ScriptFault(number, f'"{deeds[0]}" is a text')
    to = found.get("to", "")
    if ("to" in found) != (deeds[0] == "replies") or not isinstance(to, str):
        raise ScriptFault(
            number, 'who "replies" does so "to" a message with some words, and nobody else does'
        )
    return Step(number, at, who, deeds[0], what, to)


def _moment(number: int, value: object) -> datetime:
    try:
        at = datetime.fromisoformat(value) if isinstance(value, str) else None
    except ValueError:
        at = None
    if at is None or at.tzinfo is None:
        raise ScriptFault(
            number, '"at" is an ISO date and time with its offset, like 2026-03-02T08:00:00+01:00'
        )
    return at.astimezone(UTC)
