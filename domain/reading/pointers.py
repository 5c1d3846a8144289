"""Exercises that are pointed at by their number in the plan: "1) 60x10", "first exercise"."""

from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern
from domain.reading.tokens import LINE, NUMBER
from domain.reading.words import AT_WORDS, FOR_WORDS, NTHS, SET_WORDS, TIMES_SIGNS, words_of

_POINTER = Pattern(
    """
    bracket:# ')'
    listed:# (.|:) >(# [kg|lb] (x|for|*) #|_)
    <(№) listed:# >(# [kg|lb] (x|for|*) #|_)
    line:# (.|:)
    (exercise|ex|no|nr) [no|number|nr|#] n:# >(:|,|-|.|#)
    ordinal:({ordinal}) exercise
    n:# (st|nd|rd|th) exercise
    """,
    ordinal=frozenset(NTHS),
)
_LAST_PLACE = 15
"""Plans are no longer than that."""


def find_pointers(message: Message) -> dict[int, int]:
    """Return the places where an exercise is pointed at by its number in the plan, and mark those numbers."""
    found: dict[int, int] = {}
    for told in _POINTER.find(message):
        number = _place(message, told)
        if number is not None:
            found[told.start] = number
            message.take(told.start, told.end, "a place in the plan", over=True)
    if not found:
        return found
    _add_bare_ordinals(message, found)
    if len(found) == 1 and all(message.text(at + 1) == ":" for at in found):
        # A lone "80: 8, 7, 6" is a load with its reps.
        at = next(iter(found))
        message.taken[at] = message.taken[at + 1] = ""
        return {}
    return found


_BARE_ORDINAL = Pattern("n:({ordinal}) [one|was|:|,|-]* >(#)", ordinal=frozenset(NTHS))


def _add_bare_ordinals(message: Message, found: dict[int, int]) -> None:
    """Take the ordinals after "first exercise" as exercises too: "first exercise 200x13, second 110x9"."""
    if any(message.text(at) in NTHS for at in found):
        for told in _BARE_ORDINAL.find(message, min(found)):
            if not any(message.taken[told.start : told.end]):
                found[told.start] = NTHS[message.text(told.start)]
                message.take(told.start, told.start + 1, "a place in the plan")


def _place(message: Message, told: Found) -> int | None:
    """Return the place in the plan that is pointed at, None where it is no pointer."""
    if "ordinal" in told.parts:
        return NTHS[message.text(told.start)]
    (at, _) = next(iter(told.parts.values()))
    value = message.value(at)
    if value is None or value != int(value) or not 1 <= value <= _LAST_PLACE or message.taken[at]:
        return None
    if "bracket" in told.parts and _in_brackets(message, at):
        return None
    if "listed" in told.parts and at in _list_on_one_line(message):
        return int(value)
    if not {"listed", "line"}.isdisjoint(told.parts) and not (
        _begins_line(message, at) and _has_more(message, told.end)
    ):
        return None
    return int(value)


def _list_on_one_line(message: Message) -> list[int]:
    """Return the numbers of a list on one line: "bench 1. 80x8 2. 80x7", "1. bench 80x8 2. rows 60x9"."""
    listed: list[int] = []
    for found in _LISTED.find(message):
        at = found.start
        if message.value(at) == len(listed) + 1 and message.text(at - 1) not in _TIES:
            listed.append(at)
    return listed if len(listed) > 1 else []


_LISTED = Pattern(
    """
    # (.|:) >(# [kg|lb] (x|for|*) #|_)
    <(№) # >(# [kg|lb] (x|for|*) #|_)
    """
)
_TIES = TIMES_SIGNS | FOR_WORDS | AT_WORDS | SET_WORDS | words_of("+ / - : round day week workout exercise")
"""What stands right before a number that is no place in a list."""


def _begins_line(message: Message, at: int) -> bool:
    return at == 0 or message.tokens[at - 1].kind == LINE


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
