"""Which stretches of the weeks are told, and in which order: one story for each client.

The weeks themselves are played whole; what is left untold is summed up in a line.
"""

import tomllib
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path


@dataclass(frozen=True, slots=True)
class Stretch:
    """What is told: from `since` up to `until`, both local times of the client; `note` leads into it."""

    since: datetime
    until: datetime
    note: str = ""


@dataclass(frozen=True, slots=True)
class Story:
    """One client's story."""

    client: str
    heading: str
    lead: str
    stretches: tuple[Stretch, ...]


def read_stories(path: Path) -> tuple[Story, ...]:
    """Return the stories of a file, in its order."""
    found = tomllib.loads(path.read_text(encoding="utf-8"))
    return tuple(
        Story(
            client=story["client"],
            heading=story["heading"],
            lead=" ".join(story["lead"].split()),
            stretches=tuple(
                Stretch(stretch["since"], stretch["until"], stretch.get("note", ""))
                for stretch in story["stretch"]
            ),
        )
        for story in found["story"]
    )
