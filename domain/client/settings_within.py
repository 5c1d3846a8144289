"""Settings said beside other things in one message: "I work nights this week, remind me at 22:30"."""

from collections.abc import Callable

from domain.client.draft import Draft
from domain.client.equipping import take_equipment
from domain.client.later import take_later
from domain.client.sentences import sentences
from domain.client.settings import plainly, take_hour, take_return, take_trip, take_unit, take_zone
from domain.expressions import Expression
from domain.later_words import later_of

_BETWEEN = Expression(r"(?:[,;!?\n]|\.(?!\d))\s*(?:(?:and|so|but|then|please)\b,?\s*)*|\s(?:and|so|but)\s")
"""What parts one thing that is said from the next."""

_NOT_YET = Expression(r"\b(?:but|still|though|although|not|\w+n['’]t|yet|almost|nearly)\b")
"""Beside these nobody is well, or back, for good."""

_FOR_ONCE = Expression(
    r"\b(?:running (?:a (?:bit|little) )?late|late today|stuck (?:at|in)|in a meeting|(?:just|only) today|"
    r"for once|overslept)\b"
)
"""Beside these an hour is meant for today alone."""

MOST_LETTERS = 300
"""In a longer message no settings are looked for: that is a story. The house's own choice."""
MOST_ALONE = 2
"""So many parts are needed for a setting to be said beside something else."""


def take_settings(draft: Draft, text: str, *, has_sets: bool, goes_away: bool) -> str | None:
    """Change the hour, the place and the unit that parts of `text` say, the equipment that sentences of it
    say, and end a pause; beside sets, a unit is theirs alone.
    Where somebody `goes_away` without training, a trip is told of by that.

    Return what else it says, empty where that is nothing; None where no part of it is a setting, or all of it
    may be one.
    """
    if len(text) > MOST_LETTERS:
        return None
    told = sentences(text)
    left = [each for each in told if has_sets or len(told) == 1 or not take_equipment(draft, each)]
    parts = [part for part in _BETWEEN.split(" ".join(left)) if part.strip()]
    if len(left) == len(told) and len(parts) < MOST_ALONE:
        return None
    takes: list[Callable[[Draft, str], bool]] = [take_hour, take_zone]
    if _FOR_ONCE.search(text.casefold()):
        takes.insert(0, lambda draft, part: take_later(draft, f"not now, {part}"))
    if not goes_away:
        takes.append(take_trip)
    if draft.memory.is_away and not _NOT_YET.search(text.casefold()):
        takes.append(take_return)
    if not has_sets:
        takes.append(take_unit)
    if not has_sets and later_of(text) is None:
        takes.append(take_later)
    taken = [any(take(draft, plainly(part)) for take in takes) for part in parts]
    if not any(taken) and len(left) == len(told):
        return None
    return ", ".join(part for part, is_taken in zip(parts, taken, strict=True) if not is_taken)
