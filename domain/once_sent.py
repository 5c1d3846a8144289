"""What is kept of a message once it was sent: not the codes that let people in, nor a coach's notes.

A code is kept as a hash alone, and a note in one place alone, so that it is gone once it is forgotten.
"""

from typing import Any

from domain.parts import Notice, Part


def kept_of(parts: tuple[Part, ...]) -> tuple[Part, ...]:
    """Return a message as it is kept; the same where there is nothing in it to leave out."""
    return tuple(_kept(part) for part in parts)


def _kept(part: Part) -> Part:
    if not isinstance(part, Notice):
        return part
    facts: dict[str, Any] = {}
    match part.topic:
        case "invited":
            facts = {"code": ""}
        case "noted":
            facts = {"text": ""}
        case "notes":
            facts = {"noted": [{**row, "notes": []} for row in part.facts["noted"]]}
        case "card":
            facts = {"notes": []}
        case _:
            pass
    return part.model_copy(update={"facts": part.facts | facts}) if facts else part
