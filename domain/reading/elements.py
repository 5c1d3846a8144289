"""Numbers that are tightly joined, and how: by times signs, "for", "at", slashes, or nothing."""

from collections.abc import Sequence

from domain.reading.counted import is_counted
from domain.reading.element import LOOSE, Element, in_pairs, in_sets, is_whole
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.scope_words import THE_BODY
from domain.reading.tokens import LINE, NUMBER, WORD
from domain.reading.words import (
    AND_WORDS,
    AT_WORDS,
    BETWEEN,
    FOR_WORDS,
    LOAD_NOUNS,
    RESULT_VERBS,
    THEN_WORDS,
    TIMES_SIGNS,
    words_of,
)

TIGHT = frozenset({"x", "for", "@", "at", "/", ":", "-", ""})
"""Joints inside one element; the others stand between elements: , and then line stop gap."""


_TRYING = words_of("went going go gone tried trying aimed aiming settled settling opted")
"""Words before "for" and a load: "went for 20 and got 7"."""
_ENDINGS = frozenset({"st", "nd", "rd", "th"})
_LOAD_MOVES = words_of(
    """went moved flew felt came up off down well fast slowly smoothly easily quickly better fine heavy"""
)
"""How a load is said to move or feel before its reps: "82.5 went for 5", "80 felt heavy for 8"."""


def joint_between(message: Message, start: int, end: int, blank: set[int]) -> str:
    """Return how two numbers are joined by the tokens from `start` to before `end`."""
    joint = _joint(message, start, end, blank)
    return "gap" if joint == "moved" else joint


def _joint(message: Message, start: int, end: int, blank: set[int]) -> str:
    """Return the same, and "moved" where all that stands between tells how a load moved."""
    seen: str | None = None
    words = 0
    moved = False
    explained = [at for at in range(start, end) if message.taken[at] == "an explanation"]
    if explained:
        start = explained[-1] + 1
    for at in range(start, end):
        if at in blank or message.taken[at] == THE_BODY:
            continue
        token = message.tokens[at]
        text = token.text
        if message.taken[at] == "a day":
            seen = _stronger(seen, ",")
            continue
        if message.taken[at] == "a set's number" or (
            text in _ENDINGS and message.taken[at - 1] == "a set's number"
        ):
            seen = _stronger(seen, ",")
            continue
        if text == "on" and message.taken[at + 1] == "a day":
            continue
        if token.kind == LINE:
            return "line"
        if text in {".", "!", "?", ";"}:
            return "stop"
        if text == ")" and explained:
            continue
        if text == "," and _is_tight(message, at):
            seen = _stronger(seen, "/")
        elif text in {",", "(", ")"}:
            seen = ","
        elif text == "by":
            seen = _stronger(seen, "by")
        elif text in TIMES_SIGNS:
            seen = _stronger(seen, "x")
        elif text in FOR_WORDS:
            seen = "for" if seen in {None, "for", ","} else seen
        elif text in AT_WORDS or (text == "on" and message.text(at - 1) == "all" and at + 1 == end):
            seen = _stronger(seen, "@" if text == "@" else "at")
        elif text == "-" and not token.glued:
            seen = _stronger(seen, ":") if at == start and at + 1 == end else _stronger(seen, ",")
        elif text in {"/", ":", "-", "="}:
            seen = _stronger(seen, {"=": ":"}.get(text, text))
        elif text == "|":
            seen = ","
        elif text == "but":
            seen = _stronger(seen, ",")
        elif text in AND_WORDS or text in {"+", "or"}:
            seen = _stronger(seen, "and")
        elif text in {"first", "second", "third", "fourth", "fifth", "last", "final"}:
            seen = _stronger(seen, ",")
        elif text in THEN_WORDS or text == ">" or (text == "after" and message.text(at - 1) in AND_WORDS):
            seen = "then"
        elif text in _LOAD_MOVES:
            moved = True
        elif (
            text in BETWEEN
            or text in LOAD_NOUNS
            or (text in {"left", "right"} and message.text(at + 1) in TIMES_SIGNS)
            or (text == "on" and at + 1 == end)
            or (text == "on" and message.text(at + 1) in {"my", "the"} and message.text(at + 2) in LOAD_NOUNS)
            or (
                token.kind == WORD
                and text
                in {"you", "we", "next", "another", "again", "set", "sets", "too", "as", "well", "also"}
            )
        ):
            words += 1
            if words > 4:
                return "gap"
        elif token.kind == WORD or text in {"%", "€", "$", "£"}:
            return "gap"
    if moved and seen != "for":
        return "moved" if seen is None else "gap"
    return seen if seen is not None else ("" if words <= 2 else "gap")


def _is_tight(message: Message, at: int) -> bool:
    """Return whether a comma is written between two numbers without a blank: "82.5 6,6,5"."""
    tokens = message.tokens
    return (
        0 < at < len(tokens) - 1
        and tokens[at].glued
        and tokens[at + 1].glued
        and tokens[at - 1].kind == tokens[at + 1].kind == NUMBER
    )


_STRENGTH = {
    "": 0,
    "by": 1,
    "x": 1,
    "for": 1,
    ":": 1,
    "/": 1,
    "-": 1,
    "@": 2,
    "at": 2,
    "and": 3,
    ",": 3,
    "then": 4,
}


def _stronger(seen: str | None, new: str) -> str:
    return new if seen is None or _STRENGTH[new] > _STRENGTH[seen] else seen


def elements_of(
    message: Message,
    quantities: Sequence[Quantity],
    blank: set[int],
    name_tokens: set[int],
    pointers: dict[int, int],
    changes: set[int],
    loads: set[int],
) -> list[Element]:
    """Return the numbers of a message, joined where they are tightly joined.

    `loads` are the tokens of phrases that say a load, which part the numbers around them: "80x8, same for 7".
    """
    elements: list[Element] = []
    before: Quantity | None = None
    for quantity in quantities:
        joint = "gap"
        if before is not None:
            between = range(before.end, quantity.start)
            if any(at in name_tokens for at in between):
                last_name = max(at for at in between if at in name_tokens) + 1
                if any(at in changes for at in range(last_name, quantity.start)):
                    after_name = joint = "change"
                else:
                    after_name = joint_between(message, last_name, quantity.start, blank)
                    joint = after_name if after_name in {",", "and", "then", "line", "stop"} else "name"
            elif any(at in pointers for at in between):
                joint = "then"
            elif any(at in changes for at in between):
                joint = "change"
            else:
                joint = _joint(message, before.end, quantity.start, blank)
                if joint == "moved":
                    # "80 moved well 8 times" is a load and its reps, "80 felt heavy 8 in" is not.
                    of_load = quantity.role == "reps" and before.role in {None, "load", "pair"}
                    joint = "for" if of_load else "gap"
                if joint in {"/", "-"} and any(at in blank for at in between):
                    joint = "and"
                if joint in TIGHT and any(at in loads for at in between):
                    joint = ","
        if joint == "gap" and before is not None and _is_range(message, elements[-1], quantity):
            joint = "-"
        if joint == "and" and before is not None and _is_got_with(message, elements[-1], quantity):
            joint = "for"
        if joint == "by":
            # "80 by 8" is a set; "80x8 by 6" is an hour.
            begins = elements and (len(elements[-1].quantities) == 1 or elements[-1].joints[-1] == "")
            joint = "x" if begins else "gap"
        if joint == "/" and _is_parted(message, elements, quantity):
            joint = ","
        if elements and is_whole(elements[-1]) and _is_of_a_name(message, quantity):
            joint = ","
        if joint == ":" and message.text(quantity.start - 1) == "-" and elements and is_whole(elements[-1]):
            # "80x8 - 3 coffees in" goes on with something else.
            joint = ","
        if joint in LOOSE and _is_told(elements) and _begins_another(message, quantity, name_tokens):
            joint = ","
        whole = joint == "" and elements and is_whole(elements[-1]) and not quantity.times
        if whole and is_counted(message, quantity.end):
            # "80 kg 8 reps 3 people watching"
            joint = "gap"
        if joint in TIGHT and elements:
            elements[-1].quantities.append(quantity)
            elements[-1].joints.append(joint)
        else:
            elements.append(
                Element(
                    [quantity],
                    [joint],
                    after_at=_is_after_at(message, quantity.start),
                    after_for=message.text(quantity.start - 1) == "for"
                    and message.text(quantity.start - 2) not in _TRYING,
                    result=message.text(quantity.start - 1) in RESULT_VERBS,
                    so_often=_is_so_often(message, quantity, name_tokens),
                )
            )
        before = quantity
    for element in elements:
        element.joints = _of_a_list(element.joints)
    return [part for element in elements for pair in in_pairs(element) for part in in_sets(pair)]


def _is_told(elements: Sequence[Element]) -> bool:
    """Return whether the last numbers are a whole set, around their name or behind it: "9 incline at 30"."""
    if not elements:
        return False
    last = elements[-1]
    around = (
        len(elements) > 1 and last.after_at and last.joints == ["name"] and len(elements[-2].quantities) == 1
    )
    return around or is_whole(last)


def _begins_another(message: Message, number: Quantity, name_tokens: set[int]) -> bool:
    """Return whether a number behind a whole set begins the next: "80x8 / 7 overhead press", "80x8 got 7 on
    rows"."""
    if number.end in name_tokens or message.text(number.start - 1) in RESULT_VERBS:
        return True
    at = number.end
    while message.text(at) in _TO_A_NAME:
        at += 1
    return at > number.end and at in name_tokens


_TO_A_NAME = words_of("on of the my in at for")


def _is_so_often(message: Message, number: Quantity, name_tokens: set[int]) -> bool:
    """Return whether a number is one of reps by the verb before it, or by the plural that it counts."""
    at = number.start - 1
    while message.text(at) in {"only", "just", "even", "another"}:
        at -= 1
    if message.text(at) in {"got", "managed"}:
        return True
    end = number.end
    while end in name_tokens:
        end += 1
    last = message.text(end - 1)
    return end > number.end and last.endswith("s") and not last.endswith("ss")


_GOES_ON_WITH = FOR_WORDS | AT_WORDS | TIMES_SIGNS


def _is_got_with(message: Message, element: Element, following: Quantity) -> bool:
    """Return whether a number is what was got with the load before it: "twenty of help and got eight"."""
    load = element.quantities[-1]
    return (
        len(element.quantities) == 1
        and load.role == "load"
        and following.role in {None, "reps"}
        and message.text(following.start - 1) in FOR_WORDS
    )


def _is_parted(message: Message, elements: Sequence[Element], following: Quantity) -> bool:
    """Return whether a stroke parts two sets: "plank 50 sec / 60x8", "8 reps with 60 / 6 reps of dips"."""
    if not elements or message.tokens[following.start].glued:
        return False
    before = elements[-1]
    if before.quantities[-1].role == "seconds":
        return True
    after = message.text(following.end)
    of_a_name = following.role == "reps" and after == "of"
    if not (of_a_name or after in _GOES_ON_WITH or following.unit is not None):
        return False
    told_before = len(elements) > 1 and elements[-2].quantities[-1].role == "reps"
    return len(before.quantities) > 1 or (before.after_at and told_before)


def _is_of_a_name(message: Message, sets: Quantity) -> bool:
    """Return whether a count of sets begins what is told of an exercise: "did 3 sets of rows"."""
    if sets.role != "sets":
        return False
    at = sets.end if message.text(sets.end - 1) == "of" else sets.end + 1
    return message.text(at - 1) == "of" and message.value(at) is None


def _is_range(message: Message, element: Element, following: Quantity) -> bool:
    """Return whether "to" joins a number to the reps that were hoped for: "80 x 6 to 8", "6 to 8 reps"."""
    low = element.quantities[-1]
    if following.start - low.end != 1 or message.text(low.end) != "to" or low.role is not None:
        return False
    of_reps = following.role == "reps" or element.joints[-1] in {"x", "for"}
    return of_reps and low.value < following.value and message.text(low.start - 1) != "from"


def join_marks(message: Message, things: list[Named | Element | Mark], blank: set[int]) -> None:
    """Tell each phrase how it is joined to what stands before it, and each number to a phrase before it."""
    for at in range(1, len(things)):
        before, thing = things[at - 1], things[at]
        if isinstance(thing, Mark):
            joint = joint_between(message, before.end, thing.start, blank)
            things[at] = thing._replace(joint="name" if isinstance(before, Named) and joint == "" else joint)
        elif isinstance(thing, Element) and isinstance(before, Mark):
            thing.since_mark = joint_between(message, before.end, thing.start, blank)


_ARTICLES = frozenset({"a", "an", "the", "my"})


def _is_after_at(message: Message, at: int) -> bool:
    before = message.text(at - 1)
    return before in AT_WORDS or (before in _ARTICLES and message.text(at - 2) in AT_WORDS)


def _of_a_list(joints: list[str]) -> list[str]:
    """Take two colons or spaced dashes and more for the strokes of a list: "12 - 10 - 9"."""
    return ["/" if j == ":" else j for j in joints] if joints[1:].count(":") > 1 else joints
