"""Numbers said for the left and the right side: the lower of the two counts. Other numbers pass unchanged."""

from typing import Literal

from domain.reading.described_sides import (
    BODY_SIDES,
    Side,
    are_two_sides,
    described_after,
    described_before,
)
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.quantities import Quantity
from domain.reading.words import KG_WORDS, LB_WORDS, TIMES_SIGNS, words_of

_Side = Literal["left", "right"]

_SIDES: dict[str, _Side] = {
    "left": "left",
    "l": "left",
    "lft": "left",
    "lh": "left",
    "right": "right",
    "r": "right",
    "rt": "right",
    "rh": "right",
    "rigth": "right",
}
_STRONG = words_of("good strong stronger better dominant")
_WEAK = words_of("bad weak weaker worse other")
"""Words that tell two sides apart where a limb follows: "10 good side, 8 bad side"."""
_LIMBS = words_of("side leg arm hand foot one")
_SAYS_A_SIDE = frozenset({*_SIDES, *_STRONG, *_WEAK, *BODY_SIDES})
_BEFORE_SIDE = words_of("( on the my with for reps rep in x of times each a side leg arm hand per and only")
"""What may stand between a number and the side that follows it: "10 reps on the right"."""
_AFTER_SIDE = words_of(
    """side leg arm hand foot one : - = did does got managed made stopped at only just barely had was were
    with gave could hit reached do even x for"""
)
"""What may stand between a side and the number that follows it: "the left only managed 9"."""
_UNITS = KG_WORDS | LB_WORDS
_FARTHEST = 4
_MOST_BETWEEN = 9
_STOPS = frozenset({".", "!", "?", ";", "\n", "@"})


def lower_of_sides(message: Message, quantities: list[Quantity]) -> list[Quantity]:
    """Take different reps on two sides as the lower: "10 left, 8 right", "10/9 l/r", "r 11, l 9"."""
    if message.words.isdisjoint(_SAYS_A_SIDE):
        return quantities
    kept: list[Quantity] = []
    at = 0
    while at < len(quantities):
        one = quantities[at]
        following = quantities[at + 1] if at + 1 < len(quantities) else None
        if following is not None and _can_be_of_sides(message, one, following):
            end = _end_of_sides(message, one, following)
            if end:
                lower = min(one.value, following.value)
                role = "seconds" if one.role == "pair" else one.role or "reps"
                kept.append(one._replace(value=lower, role=role, end=end))
                at += 2
                continue
        kept.append(_with_the_other(message, one))
        at += 1
    return kept


def _with_the_other(message: Message, one: Quantity) -> Quantity:
    """Return the number of one side with the other side, where that did the same: "right 10, left ditto"."""
    if one.unit is not None or one.role not in {None, "reps", "seconds"}:
        return one
    after = _side_after(message, one.end)
    end = one.end if after is None or _side_before(message, one.start) else after[1]
    alike = _ALIKE.at(message, end) if after or end == one.end else None
    return one if alike is None else one._replace(role=one.role or "reps", end=alike.end)


_ALIKE = Pattern(
    "[,|and|&|-|/]* [on|the|my]* (left|right|l|r|other) [side|arm|leg|hand|one] {was} {the_same}",
    was="[was|is|did|got|exactly|just|the|about]*",
    the_same="(same|ditto|equal|likewise|too|also|as well|identical)",
)


def _can_be_of_sides(message: Message, one: Quantity, following: Quantity) -> bool:
    """Return whether two numbers can be those of two sides: both of reps, both of seconds, or bare."""
    if one.role == following.role == "pair":
        # "40s left, 35s right" are seconds: nobody has other weights on the two sides.
        return len(message.texts(one.end, following.start)) <= _MOST_BETWEEN
    if one.unit is not None or following.unit is not None or one.role not in {None, "reps", "seconds"}:
        return False
    if following.role not in {None, one.role or "reps", "seconds"}:
        return False
    if 2 * min(one.value, following.value) < max(one.value, following.value):
        # "Right, 10 with 2 left" has 2 in reserve.
        return False
    between = message.texts(one.end, following.start)
    return len(between) <= _MOST_BETWEEN and _STOPS.isdisjoint(between)


def _end_of_sides(message: Message, one: Quantity, following: Quantity) -> int:
    """Return the token after the sides of two numbers, 0 where they are not of two sides."""
    if (end := _both_after(message, one, following)) or (end := _both_before(message, one, following)):
        return end
    before, after = _side_before(message, one.start), _side_after(message, one.end)
    before_next, after_next = _side_before(message, following.start), _side_after(message, following.end)
    for first, second in (
        (before, before_next),
        (after, after_next),
        (after, before_next),
        (before, after_next),
    ):
        if first is not None and second is not None and first[0] != second[0]:
            return max(second[1], following.end)
    first_side = _told(after) or described_after(message, one.end)
    second_side = _told(after_next) or described_after(message, following.end)
    if second_side is not None and are_two_sides(first_side, second_side):
        return second_side.end
    first_side = _told(before) or described_before(message, one.start)
    second_side = _told(before_next) or described_before(message, following.start)
    return following.end if are_two_sides(first_side, second_side) else 0


def _told(side: tuple[_Side, int] | None) -> Side | None:
    """Return a side that is called by its name, like one that is described."""
    return None if side is None else Side(side[0], is_limb=True, end=side[1])


def _both_after(message: Message, one: Quantity, following: Quantity) -> int:
    """Return the token after two sides that stand together behind two numbers: "10/9 l/r", "11 and 9 (right,
    left)"."""
    if not _ONLY_JOINED.issuperset(message.texts(one.end, following.start)):
        return 0
    sides: list[_Side] = []
    for at in range(following.end, following.end + _FARTHEST + 1):
        side = _SIDES.get(message.text(at))
        if side is not None:
            sides.append(side)
            if len(sides) == 2:
                return at + 1 if sides[0] != sides[1] else 0
        elif message.text(at) not in _BEFORE_SIDE | _ONLY_JOINED:
            return 0
    return 0


def _both_before(message: Message, one: Quantity, following: Quantity) -> int:
    """Return the token after two numbers behind two sides that stand together: "left/right 10/9"."""
    if not _ONLY_JOINED.issuperset(message.texts(one.end, following.start)):
        return 0
    sides = [s for w in message.texts(max(0, one.start - 5), one.start) if (s := _SIDES.get(w)) is not None]
    return following.end if len(set(sides)) == 2 else 0


_ONLY_JOINED = words_of("/ , & and - ( then |")


def _side_at(message: Message, at: int) -> _Side | None:
    word = message.text(at)
    if word in _SIDES:
        return _SIDES[word]
    if message.text(at + 1) in _LIMBS:
        return "right" if word in _STRONG else "left" if word in _WEAK else None
    return None


def _side_after(message: Message, end: int) -> tuple[_Side, int] | None:
    """Return the side said behind a number and the token after it: "10 reps on the right", "12R"."""
    if message.text(end - 1) in {"r", "l"}:
        return _SIDES[message.text(end - 1)], end
    for at in range(end, end + _FARTHEST):
        side = _side_at(message, at)
        if side is not None:
            return side, at + 1 + (message.text(at + 1) in _LIMBS)
        if message.text(at) not in _BEFORE_SIDE:
            return None
    return None


def _side_before(message: Message, start: int) -> tuple[_Side, int] | None:
    """Return the side said before a number and the token after it: "the left only got 9".

    In "16 right x 8" the side is of the 16.
    """
    for at in range(start - 1, max(-1, start - 1 - _FARTHEST), -1):
        side = _side_at(message, at)
        if side is not None:
            is_of_another = message.value(at - 1) is not None or message.text(at - 1) in _UNITS
            return None if is_of_another and message.text(start - 1) in TIMES_SIGNS else (side, at + 1)
        if message.text(at) not in _AFTER_SIDE:
            return None
    return None
