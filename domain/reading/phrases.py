"""The small rules over tokens: what each number is a number of, and the short phrases beside the numbers.

A rule is named for what it recognises and looks at a few tokens around it. Rules stand in one immutable
tuple; the longest match goes first, then the listed order. What the numbers mean for today's plan
is decided later.
"""

import re
from collections.abc import Sequence
from decimal import Decimal
from typing import NamedTuple

from domain.reading.effort_rules import ORDINALS
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrase_kinds import MarkKind
from domain.reading.phrase_rules import ANY_TRIGGER, RULES
from domain.reading.tokens import WORD
from domain.reading.words import KG_WORDS, LB_WORDS, words_of
from domain.units import Unit


class Mark(NamedTuple):
    """A short phrase about a set, from token `start` to before `end`, with its number where it has one."""

    kind: MarkKind
    start: int
    end: int
    value: Decimal | None = None
    unit: Unit | None = None
    from_last: bool = False


_UNITS: dict[str, Unit] = {**dict.fromkeys(KG_WORDS, "kg"), **dict.fromkeys(LB_WORDS, "lb")}


def find_marks(message: Message, named: Sequence[Named] = ()) -> list[Mark]:
    """Return the short phrases of the message, in order; the longer of two that overlap, then the earlier
    rule."""
    if not message.has(ANY_TRIGGER):
        return []
    inside = {at for n in named if n.end - n.start > 1 for at in range(n.start + 1, n.end)}
    found: list[tuple[int, int, Mark]] = []
    words = message.words
    for order, (kind, triggers, pattern) in enumerate(RULES):
        if words.isdisjoint(triggers):
            continue
        for match, start, end in message.find(pattern):
            if message.taken[start] and message.taken[start] not in {
                "exercise",
                "a plan",
                "what it is not",
                "what was before",
                "a setting",
                "a set's number",
                "a number of something else",
            }:
                continue
            if start in inside and kind in {"up", "down"}:
                continue
            mark = _mark(message, kind, match, start, end)
            if mark is not None:
                found.append((start - end, order, mark))
    found.sort(key=lambda f: f[:2])
    used: set[int] = set()
    kept: list[Mark] = []
    for _, _, mark in found:
        span = range(mark.start, mark.end)
        if used.isdisjoint(span):
            kept.append(mark)
            used.update(span)
    kept.sort(key=lambda m: m.start)
    return kept


def _mark(message: Message, kind: MarkKind, match: re.Match[str], start: int, end: int) -> Mark | None:
    groups = match.groupdict()
    value: Decimal | None = None
    name = next((g for g in groups if groups[g] is not None and g not in {"u", "v", "w"}), None)
    if name is not None:
        value = _number_in(message, *message.span(match, name))
    unit_word = groups.get("u") or groups.get("v") or groups.get("w")
    unit = _UNITS.get(unit_word.strip()) if unit_word else None
    if kind == "zero" and "tried" in match.group() and "failed" not in match.group():
        return None
    if (
        message.value(start) is not None
        and kind in {"more reps", "fewer reps", "target more", "target fewer", "up", "down", "rir"}
        and (
            message.text(start - 1) in {"x", "for", "@", "*", "/", "times", "at"}
            or (message.value(start - 1) is not None and (value or 0) > 4)
        )
        and not (kind == "rir" and message.text(start - 1) == "@")
    ):
        return None
    if kind == "rir" and value is not None:
        if name in {"rpe", "rpe2"}:
            value = Decimal(10) - value
        if not 0 <= value <= 10:
            return None
    if kind in {"up", "down"} and value is None:
        return None
    if kind in {"up", "down"}:
        if message.text(end) in {"reps", "rep", "repetitions", "sets", "negatives"} and unit is None:
            return None
        if message.text(start - 1) in {
            "warm",
            "warmed",
            "pull",
            "push",
            "chin",
            "sit",
            "step",
            "pulls",
            "set",
            "get",
            "next",
            "woke",
            "racked",
            "warming",
            "pull-",
            "lay",
            "lie",
            "lying",
            "sat",
            "break",
            "broke",
            "calm",
            "cool",
            "cooled",
            "wound",
        }:
            return None
        following = message.tokens[end] if end < len(message.tokens) else None
        if (
            unit is None
            and following is not None
            and following.kind == WORD
            and following.text not in _AFTER_STEP
        ):
            return None
        bare_more = (
            name == "m" and unit is None and value is not None and value % 1 == 0 and "more" in match.group()
        )
        if bare_more and not re.search(r"weight|load|heavier", match.group()):
            return None
    if kind == "rir" and name == "l" and not {"right", "r"}.isdisjoint(message.words):
        return None
    if kind == "failed on" and (value is None or value < 1):
        return None
    if kind in _COUNTED_FROM and value is not None and (value % 1 or value > MOST_MORE):
        return None
    if kind in {"more reps", "fewer reps"} and value is None:
        value = Decimal(1)
    if kind == "failure" and message.text(start - 1) in {"not", "no", "without", "never", "didnt"}:
        return None
    if kind == "body" and message.text(end) in {"+", "plus"}:
        return None
    from_last = bool(re.search(r"\b(?:last|before|previous)\b", match.group()))
    return Mark(kind, start, end, value, unit, from_last)


_COUNTED_FROM = frozenset({"more reps", "fewer reps", "target more", "target fewer"})
MOST_MORE = 20
"""Nobody does more reps than that beyond another set; a greater number is a load, or a slip."""
_AFTER_STEP = words_of(
    """for x from on since than to and but then today this with at again got did more heavier lighter so
    yesterday compared by which as over now finally still only just i it times_"""
)


def _number_in(message: Message, start: int, end: int) -> Decimal | None:
    for at in range(start, end):
        if message.value(at) is not None:
            return message.value(at)
        if message.text(at) in ORDINALS:
            return Decimal(ORDINALS[message.text(at)])
    return None
