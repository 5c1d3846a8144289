"""Settings said beside other things in one message: "I work nights this week, remind me at 22:30"."""

import re

from domain.client.draft import Draft
from domain.client.settings import plainly, take_hour, take_return, take_unit, take_zone

_BETWEEN = re.compile(r"(?:[,;!?\n]|\.(?!\d))\s*(?:(?:and|so|but|then|please)\b,?\s*)*|\s(?:and|so|but)\s")
"""What parts one thing that is said from the next."""

_NOT_YET = re.compile(r"\b(?:but|still|though|although|not|\w+n['’]t|yet|almost|nearly)\b")
"""Beside these nobody is well, or back, for good."""

MOST_LETTERS = 300
"""In a longer message no settings are looked for: that is a story. The house's own choice."""


def take_settings(draft: Draft, text: str, *, has_sets: bool) -> str | None:
    """Change the hour, the place and the unit that parts of `text` say, and end a pause; beside sets, a unit
    is theirs alone.

    Return what else it says, empty where that is nothing; None where no part of it is a setting, or all of it
    may be one.
    """
    parts = [part for part in _BETWEEN.split(text) if part.strip()]
    if len(parts) < 2 or len(text) > MOST_LETTERS:
        return None
    takes = [take_hour, take_zone] if has_sets else [take_hour, take_zone, take_unit]
    if draft.memory.is_away and not _NOT_YET.search(text.casefold()):
        takes.append(take_return)
    taken = [any(take(draft, plainly(part)) for take in takes) for part in parts]
    if not any(taken):
        return None
    return ", ".join(part for part, is_taken in zip(parts, taken, strict=True) if not is_taken)
