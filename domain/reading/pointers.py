"""Exercises that are pointed at by their number in the plan: "1) 60x10", "first exercise"."""

import re

from domain.reading.message import Message
from domain.reading.tokens import LINE, NUMBER

_POINTER = re.compile(
    r"(?:(?<=\n )|^|(?<= ))(?P<n>#) \)|(?:(?<=\n )|^)(?P<m>#) [.:](?= )|\b(?:exercise|ex|no|nr) (?:no "
    r"|number |nr |# )?(?P<k>#)(?= [:,\-.]| #|\b)|\b(?P<o>first|second|third|fourth|fifth"
    r"|sixth) exercise\b|(?P<q>#) (?:st|nd|rd|th) exercise\b"
)

_ORDINALS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6}


def find_pointers(message: Message) -> dict[int, int]:
    """Return the places where an exercise is pointed at by its number in the plan, and mark those numbers."""
    found: dict[int, int] = {}
    if not message.has(frozenset({")", ".", ":", "exercise", "ex", "no", "nr"})):
        return found
    for match, start, end in message.find(_POINTER):
        if match["o"]:
            number = _ORDINALS[match["o"]]
        else:
            group = next(g for g in ("n", "m", "k", "q") if match[g])
            at, _ = message.span(match, group)
            value = message.value(at)
            if value is None or value != int(value) or not 1 <= value <= 15 or message.taken[at]:
                continue
            if group == "n" and _in_brackets(message, at):
                continue
            if group == "m" and (end >= len(message.tokens) or not _has_more(message, end)):
                continue
            number = int(value)
        found[start] = number
        message.take(start, end, "a place in the plan", over=True)
    if len(found) == 1 and all(message.text(at + 1) == ":" for at in found):
        # A lone "80: 8, 7, 6" is a load with its reps.
        at = next(iter(found))
        message.taken[at] = message.taken[at + 1] = ""
        return {}
    return found


def _in_brackets(message: Message, at: int) -> bool:
    """Return whether a bracket is open at a token of its line."""
    depth = 0
    for i in range(at - 1, -1, -1):
        if message.tokens[i].kind == LINE:
            break
        depth += (message.text(i) == "(") - (message.text(i) == ")")
    return depth > 0


def _has_more(message: Message, start: int) -> bool:
    """Return whether more of the line follows, with a number in it."""
    for at in range(start, len(message.tokens)):
        if message.tokens[at].kind == LINE:
            return False
        if message.tokens[at].kind == NUMBER:
            return True
    return False
