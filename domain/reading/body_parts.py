"""Parts of the body in a message: which place each is, and on which side. What hurts is told elsewhere."""

from collections.abc import Sequence
from dataclasses import dataclass

from domain.reading.body_words import (
    GEAR,
    HURT,
    LONGEST_PART,
    MIDDLE,
    NOT_TWO,
    ONE_OF_EACH,
    PART_FIRST,
    PARTS,
    PLURALS,
)
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.request import Place, Side
from domain.reading.tokens import Token
from domain.reading.words import words_of

_SIDES: dict[str, Side] = {
    "left": "left",
    "right": "right",
    "both": "both",
    "lft": "left",
    "lt": "left",
    "rigth": "right",
    "rt": "right",
}

_AFTER_BACK_AGAIN = words_of("on in from to at home off soon tomorrow squat squats extension extensions by")
"""Words after "back" that make it a return or an exercise, unless "my" or "the" stands before it."""
_BACK_OF = Pattern("back of [my|the|his|her|your|left|right|both]* {part}", part=PART_FIRST - {"back"})
"""The back of another part, which is that part."""
_PART_OF_BACK = Pattern(
    "(lower:(lower|low|bottom)|upper|top) (part|bit|half|end|area|region|portion|section|third) [of it] !(of)"
)
"""Which part of the back it is, said later: "my back in the lower part"."""
_NEAR = 9
_STANDING = Pattern("on (my|our) feet >(and|all|for|since|again|today|from|the|,|.|so)")
"""To be on one's feet, which is no pain of them."""
_BEFORE_BACK = words_of(
    "my the mid middle whole left right a your no of sore stiff bad tweaked hurt pulled strained jarred"
)
_AFTER_BACK = words_of(
    """pain pains hurts hurt ache aches is was feels felt still stiff sore issues issue trouble twinge spasm
    niggle hurting popped snapped cracked went gave"""
)
_RIGHT_IS_NO_SIDE = words_of("in on under at now after behind above below between through away where as")
"""Words after "right" that make it "just" or "at once"."""
_NO_SIDE_AFTER: dict[Side, frozenset[str]] = {
    "right": words_of(
        "now away after before in on at about there here up off behind under over as where through when"
    ),
    "left": words_of("in over out off alone behind me the it a to for them"),
    "both": frozenset(),
}
"""Words after a side that stands right behind a part ("hip left") and then is none ("back left out")."""
_INSIDE = words_of("inside outside front back joint top")
_MOVES = words_of("turn turning turned lift lifting move moving shake nod raise raising lower tilt rotate")
"""What is done with a head without its hurting."""
_ENDS = frozenset({"", ".", ",", "!", "\n", ")"})
_ADDS_SIDE = frozenset({"(", "the", ",", "-", "my"})
_ENDS_SIDE = _ENDS | {"side", "one", "ones", "sides", "-", "and"}
_AFTER_ON_THE_SIDE = words_of("since when after now again today from but because while during as i so")
_SAID_OF_IT = words_of("is was hurts hurt feels felt has aches flared started")
_ENDS_HURT = _ENDS | {"side", "leg", "arm", "hand", "foot", "one"}
_BESIDE = words_of("near by around above below")


@dataclass(frozen=True, slots=True)
class Part:
    """A part of the body in the message, from token `start` to before `end`."""

    start: int
    end: int
    place: Place
    side: Side | None
    word: str


def find_parts(message: Message, named: Sequence[Named]) -> list[Part]:
    """Return the parts of the body in the message, leaving out those inside an exercise's name."""
    inside = {
        at
        for n in named
        if n.names and n.end - n.start > 1 and message.text(n.start - 1) not in _SIDES
        for at in range(n.start, n.end)
    }
    found: list[Part] = []
    at = 0
    tokens = message.tokens
    while at < len(tokens):
        part = None
        if tokens[at].text in PART_FIRST or _without_is(tokens[at]) in PART_FIRST:
            part = _part_at(message, at, inside)
        if part is not None:
            found.append(part)
        at = part.end if part is not None else at + 1
    return found


def _part_at(message: Message, at: int, inside: set[int]) -> Part | None:
    """Return the longest part that begins at a token."""
    for length in range(LONGEST_PART, 0, -1):
        words = tuple(_without_is(t) for t in message.tokens[at : at + length])
        place = PARTS.get(words)
        if place is None or len(words) < length or (length == 1 and at in inside):
            continue
        if words == ("back",) and not _is_body_back(message, at):
            continue
        if words == ("feet",) and _STANDING.at(message, at - 2) is not None:
            continue
        if words == ("head",) and not _MOVES.isdisjoint(message.texts(max(0, at - 2), at)):
            continue
        if place == "back" and (told := _PART_OF_BACK.first(message, at + length, at + _NEAR)) is not None:
            place = "lower back" if "lower" in told.parts else "upper back"
        side = _side(message, at, at + length, place, words[-1])
        return Part(at, at + length, place, side, words[-1])
    return None


def is_of_gear(message: Message, part: Part) -> bool:
    """Return whether a part only tells where something is worn: "knee sleeves", "wrist straps"."""
    return message.text(part.end) in GEAR


def _without_is(token: Token) -> str:
    """Return a word without the "s" of "is": "knee's sore", "my necks stiff"."""
    text = token.text
    has_sign = token.end - token.start == len(text) + 1
    return text[:-1] if text in ONE_OF_EACH or (has_sign and text.endswith("s")) else text


def _is_body_back(message: Message, at: int) -> bool:
    """Return whether "back" is the body's, and not "back on Monday" or "came back"."""
    before, after = message.text(at - 1), message.text(at + 1)
    if message.text(at) == "backs" and before != "the":
        return True
    if _BACK_OF.at(message, at) is not None:
        return False
    if after in _AFTER_BACK_AGAIN and before not in {"my", "the"}:
        return False
    return before in _BEFORE_BACK or after in _AFTER_BACK


def _side(message: Message, start: int, end: int, place: Place, word: str) -> Side | None:
    """Return the side of a part: said before it, right behind it, or added later in its sentence."""
    first, last = message.sentence_span(start)
    sides = _sides_before(message, first, start)
    if (behind := _side_behind(message, end)) is not None and not sides:
        sides.add(behind)
    if not sides and (later := _side_later(message, end, last)) is not None:
        sides.add(later)
    if {"left", "right"} <= sides or "both" in sides:
        return "both"
    if sides:
        return sides.pop()
    two = word in PLURALS and word not in NOT_TWO and place not in MIDDLE and message.text(start - 2) != "of"
    return "both" if two else None


def _sides_before(message: Message, first: int, start: int) -> set[Side]:
    sides: set[Side] = set()
    for at in range(max(first, start - 4), start):
        text = message.text(at)
        if text in {"l", "r"} and at == start - 1:
            sides.add("left" if text == "l" else "right")
        side = _SIDES.get(text)
        if side is None or any(
            message.text(b) in PART_FIRST and message.text(b) != "back" for b in range(at + 1, start)
        ):
            continue
        if text == "right" and message.text(at + 1) in _RIGHT_IS_NO_SIDE:
            continue
        # "hip left and knee": this side is of the part before.
        if (message.text(at - 1),) in PARTS and message.text(at - 1) != "back" and at + 1 < start:
            continue
        sides.add(side)
    return sides


def _side_behind(message: Message, end: int) -> Side | None:
    """Return the side that stands right behind a part, as in other languages: "in the hip left"."""
    at = end + 1 if message.text(end) in _INSIDE else end
    side = _SIDES.get(message.text(at))
    following = message.text(at + 1)
    if side is None or following in _NO_SIDE_AFTER[side] or (following,) in PARTS:
        return None
    return side


def _is_on(message: Message, at: int) -> int | None:
    """Return where "on" or "on the" stands right before a token, None where neither does."""
    at -= 2 if message.text(at - 1) == "the" else 1
    return at if message.text(at) == "on" else None


def _side_later(message: Message, end: int, last: int) -> Side | None:
    """Return the side that is added after a part: "my knee hurts, the left one", "(right)"."""
    for at in range(end, min(last, end + 12)):
        text = message.text(at)
        if at > end and (text,) in PARTS and text != "back" and _BESIDE.isdisjoint(message.texts(at - 2, at)):
            return None
        before, after = message.text(at - 1), message.text(at + 1)
        on = _is_on(message, at)
        close = at < end + 6 or after in {"side", "one"} or on is not None
        if not close and not (before == "," and after in _ENDS):
            continue
        if on == end and after in _SAID_OF_IT | HURT | {"side"}:
            return _SIDES.get(text)
        if on is not None and after in _AFTER_ON_THE_SIDE:
            return _SIDES.get(text)
        if (
            text in {"left", "right", "both"}
            and ((before in _ADDS_SIDE and after in _ENDS_SIDE) or (before in HURT and after in _ENDS_HURT))
            and message.text(at - 2) not in {"all", "to"}
        ):
            return _SIDES[text]
    return None
