"""Whether a client is in doubt of what was just told: "80x8?", "80 for 7 or 8", "80x7ish"."""

from collections.abc import Sequence

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.quantities import Quantity
from domain.reading.words import words_of

_EITHER = frozenset({"or", "maybe", "perhaps", "possibly"})
_ABOUT = frozenset(
    {"~", "around", "roughly", "approx", "approximately", "circa", "maybe", "perhaps", "nearly", "almost"}
)
"""Words right before a number that make it an approximate one."""
_OR_SO = Pattern("[-] ish|or so|or thereabouts|give or take|approx|approximately|roughly|-? odd")
"""What right after a number makes it an approximate one."""
_APPROXIMATELY = _ABOUT | frozenset({"ish", "+", "or", "give", "odd"})
_NEAR = 3
"""So near are the two numbers that the reps of one set could be: "8 maybe 9"."""
_NOT_FULL = Pattern(
    """
    (last|final|first) [#|one|two|couple|few|rep|reps|set|of (them|those|these)]* [{was}]* {not_full}
    (last|final) [#|one|two|couple|few|rep|reps]* (doesnt|didnt|shouldnt|dont|didnt) really? count
    if [you|we|i]* (dont|didnt|ignore|forget|leave) [count|out]* the (last|first|final)
    {some} [of (them|those|these|which)] {was} [{was}]* {not_full}
    {some} of (them|those|these|which) {not_full}
    (spotter|spotted|partner|mate|buddy|someone|guy) ..3 [on|with|for|through]* the? (last|final)
    (last|final) [#|one|two|couple|few|rep|reps]* [{was}]* (with|had|got) ..1 (spot|spotter|help)
    (with|needed|got|had) [a|some|a (bit|little) of]* (spot|help) [on|with|for|from]* ..2 (last|final)
    """,
    was="was|were|is|are|only|just|more|like|kind of|kinda|really|probably|basically|a|a bit",
    not_full="""
        half|halves|partial|partials|assisted|spotted|helped|forced|cheated|cheat|cheats
        not (full|locked|complete)|incomplete|quarter|quarters|shrug|shrugs|three quarter
    """,
    some="#|one|two|couple|few|some|most|half",
)
"""Reps of which some were no full ones, or not the client's alone."""
_SUM = Pattern(
    "<!(x|for|*|@|/|,|and|+) # [{unit}] [(a|each|per|/) side] + (#|[the|a]* bar) ..2 (x|for|*|@) #",
    unit=words_of("kg kgs lb lbs"),
)
"""A load that is told in parts, which may be what is on one side: "20 + 60 x 8"."""
_CONFIRMED = Pattern(
    """
    {wonders} {wonders} {wonders} (yes|yep|yeah|yup|definitely|exactly) [,|it was|definitely|it s|its|,]* #
    """,
    wonders="['?'|!|.|,|i think|i guess|i believe|hmm|maybe|hang on|let me (think|check)]*",
)
_ANSWER = Pattern("(no|nope|nah|wait|sorry|actually) [,|no|wait|i mean|it was|actually|the|my|make that]* #")


def is_doubtful(message: Message, numbers: Sequence[Quantity], end: int) -> bool:
    """Return whether there is doubt of a set with some numbers, or of what ends before the token `end`."""
    if not _EITHER.isdisjoint(message.words) and any(_is_one_or_other(message, q) for q in numbers):
        return True
    if not _APPROXIMATELY.isdisjoint(message.words) and any(_is_about(message, q) for q in numbers):
        return True
    if _NOT_FULL.is_in(message, end):
        return True
    if "+" in message.words and any(
        f.start < end for f in _SUM.find(message, numbers[0].start if numbers else 0)
    ):
        return True
    if "?" not in message.words:
        return False
    while message.text(end) in {"kg", "lb", "reps", "today"} or (message.taken[end : end + 1] == ["a day"]):
        end += 1
    # "142.5? No, I mean 140", "x 12?? I think. Yes 12": what was asked is answered in the same breath.
    answered = _ANSWER.at(message, end + 1) is not None or _CONFIRMED.at(message, end) is not None
    return message.text(end) == "?" and not answered


def _is_about(message: Message, number: Quantity) -> bool:
    """Return whether a number is only about what was done: "~80", "80-ish", "8 or so", "8+"."""
    if number.role == "seconds":
        return False
    if message.text(number.start - 1) in _ABOUT or _OR_SO.at(message, number.end) is not None:
        return True
    plus = message.tokens[number.end] if number.end < len(message.tokens) else None
    return plus is not None and plus.text == "+" and plus.glued and message.value(number.end + 1) is None


def _is_one_or_other(message: Message, number: Quantity) -> bool:
    """Return whether a number is one of two that it could be: "80x8 or maybe 7", "80x8 maybe 9"."""
    at = number.start - 1
    while message.text(at) in {"even", "just"}:
        at -= 1
    if message.text(at) not in _EITHER:
        return False
    while message.text(at) in _EITHER:
        at -= 1
    other = message.value(at) if message.value(at) is not None else message.value(at - 1)
    is_near = other is not None and abs(other - number.value) <= _NEAR
    return other is not None and (is_near or "or" in message.texts(at + 1, number.start))
