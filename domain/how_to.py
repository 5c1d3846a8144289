"""How to write here, for a client who asks: one line each. The lines stand in `how_to.toml`."""

from dataclasses import dataclass
from functools import cache

from domain.own_data import own_data
from domain.reading.patterns import Pattern
from domain.whole_messages import short_message, wholes


@dataclass(frozen=True, slots=True)
class HowTo:
    """One thing that can be asked, by its `name`, the ways to ask it, and what is answered."""

    name: str
    asked: tuple[Pattern, ...]
    says: str


@cache
def how_tos() -> tuple[HowTo, ...]:
    """Return all lines, in the order in which they are looked through."""
    found = own_data("how_to.toml")
    language = found["language"]["names"]
    return tuple(
        HowTo(each["name"], wholes(each["asked"], language=language), each["says"]) for each in found["line"]
    )


def how_to_asked(text: str) -> HowTo | None:
    """Return what `text` as a whole asks about writing here; None where it asks something else."""
    message = short_message(text, how_tos)
    if message is None:
        return None
    return next((each for each in how_tos() if any(way.at(message, 0) for way in each.asked)), None)
