"""Scenes: which people are on the page, and what has happened to them before somebody looks.

A scene is a script, played on a database that is gone again afterwards: so it can begin afresh, and nothing
that is tried on the page reaches anybody. Whoever has a database of their own sees a copy of it.
"""

from collections.abc import Callable
from contextlib import AbstractContextManager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from bot.commands.database import copied, has_people, passing
from bot.commands.play import told_to_the_operator
from bot.faults import OperatorFault
from bot.play.script import Script, Step, read_script
from bot.roster import first_reminder, read_roster
from bot.wording.page import NO_DEMO, SCENE_NAMES
from persistence.store import Store

DEMO = Path(__file__).parent.parent.parent / "demo"
"""The demo of the checkout. What is installed by itself has none."""


@dataclass(frozen=True, slots=True)
class Scene:
    """A `name` for people, how its database is had, and what is played on it before it begins."""

    name: str
    opened: Callable[[], AbstractContextManager[Store]]
    script: Callable[[], Script]
    is_copy: bool = False


def scenes(database: str, file: Path | None) -> tuple[Scene, ...]:
    """Return the scenes there are, the one to begin with first. Raises OperatorFault.

    That of the roster or script `file` where it is named; else the people of `database`, or where nobody is
    in it yet, those of the demo.
    """
    if file is not None:
        return (of_file(file.stem, file),)
    if has_people(database):
        return (Scene(SCENE_NAMES["own"], lambda: copied(database), _from_now, is_copy=True),)
    first, later = DEMO / "roster.json", DEMO / "weeks.jsonl"
    if not first.is_file():
        raise OperatorFault((NO_DEMO,))
    return of_file(SCENE_NAMES["first day"], first), of_file(SCENE_NAMES["weeks later"], later)


def of_file(name: str, file: Path) -> Scene:
    """Return the scene of a script, or of a roster from the first reminder on. Raises OperatorFault."""
    with told_to_the_operator(file):
        script = _read(file)
    return Scene(name, passing, lambda: script)


def _read(file: Path) -> Script:
    if file.suffix == ".jsonl":
        return read_script(file.read_text(encoding="utf-8"), file.parent)
    begins = first_reminder(read_roster(file)) or datetime.now(UTC)
    return Script((Step(0, begins),), file.name, file.parent)


def _from_now() -> Script:
    return Script((Step(0, datetime.now(UTC)),), None, Path())
