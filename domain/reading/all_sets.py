"""How many sets there were, told behind or ahead of them: "80 for 8 on all three", "3x: 80x8, 80x8, 80x7"."""

from decimal import Decimal

from domain.reading.limits import FEW_SETS
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import KG_WORDS, LB_WORDS, REP_WORDS, words_of

_ON = words_of("on in for across")
_ENDS = frozenset({"", ",", ".", "!", ";", ")", "\n", "and", "then"})
_SETS_FOLLOW = Pattern("x [# [{unit}]] :", unit=KG_WORDS | LB_WORDS)
_A_SET = 2
"""So many numbers tell one set."""


def is_of_all_sets(message: Message, at: int, value: Decimal) -> bool:
    """Return whether the number `value` at a token is one of sets: "on all three", "3x 80kg: 8, 8, 7"."""
    if value > FEW_SETS:
        return False
    if _SETS_FOLLOW.at(message, at + 1) is not None:
        return True
    if message.text(at - 1) != "all" or message.text(at + 1) not in _ENDS:
        return False
    told = [n for n in message.numbers(message.sentence_span(at)[0], at) if not message.taken[n]]
    before = message.text(at - 2)
    # "100 on the press, 80 on the squat, 8 reps on all three" tells of three exercises.
    behind_a_set = before in _ON or before in REP_WORDS or message.value(at - 2) is not None
    return behind_a_set and len(told) <= _A_SET
