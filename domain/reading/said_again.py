"""A set told once more, for joy or to be sure, which is no second one: "10x10. Ten kilos, ten reps!"."""

from collections.abc import Iterator, Sequence

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.quantities import Quantity
from domain.reading.words import words_of

_LEADS = Pattern("""
    i repeat|let me repeat|repeat that|thats right|thats|that is|in words|in other words
    you (read|heard) (that|it|me) (right|correctly)|i said
    (yes|yep|yeah) ,? # [kg|kilos|lb|pounds]* , (yes|yep|yeah)
""")
"""What leads to a set that is only said again."""
_ANOTHER = words_of(
    """then again and another second third next same too also set sets more twice after followed plus left
    right"""
)
"""Words that make a set with the same numbers another one."""
_MOST_BETWEEN = 6


def without_repeats(message: Message, quantities: list[Quantity], named: Sequence[Named]) -> list[Quantity]:
    """Leave out a load and reps that only say again, in other words, those right before them."""
    if len(quantities) > 2:
        quantities = list(_without_first_joy(message, quantities, named))
    if len(quantities) > 1:
        quantities = list(_without_cries(message, quantities))
    if len(quantities) < 4 or not _may_repeat(message, quantities):
        return quantities
    kept = list(quantities[:2])
    at = 2
    while at < len(quantities):
        pair = quantities[at : at + 2]
        if len(pair) == 2 and len(kept) >= 2 and _is_repeat(message, kept[-2:], pair, named):
            message.take(pair[0].start, pair[1].end, "said again")
            at += 2
        else:
            kept.append(quantities[at])
            at += 1
    return kept


def _without_first_joy(
    message: Message, quantities: Sequence[Quantity], named: Sequence[Named]
) -> Iterator[Quantity]:
    """Leave out a load that is told once before its set: "benched 85 too haha, 85x6"."""
    for at, q in enumerate(quantities):
        following = quantities[at + 1 : at + 3]
        if len(following) == _A_SET and _is_told_before(message, q, *following):
            between = [n for n in named if q.end <= n.start < following[0].start]
            if not between and message.text(q.start - 1) not in _TIES:
                message.take(q.start, q.end, "said again")
                continue
        yield q


_A_SET = 2
_TIES = words_of("x for * @ , and /")


def _is_told_before(message: Message, q: Quantity, load: Quantity, reps: Quantity) -> bool:
    if q.value != load.value or q.role not in {None, "load"} or "sets" in {load.role, reps.role}:
        return False
    between = message.texts(q.end, load.start)
    if not any(word in {",", ".", "!", "\n"} for word in between) or not _ANOTHER.isdisjoint(between):
        return False
    is_told = sum(word.isalpha() for word in between) > 0
    return is_told and message.text(load.end) in {"x", "for", "*"} and reps.start == load.end + 1


def _without_cries(message: Message, quantities: Sequence[Quantity]) -> Iterator[Quantity]:
    """Leave out reps that are only said once more in words, for joy: "40x10, TEN!"."""
    before: tuple[Quantity, ...] = ()
    for q in quantities:
        if (len(before) == 2 and _is_cry(message, *before, q)) or (
            before and before[-1].role in {None, "reps"} and _is_what_it_comes_to(message, before[-1], q)
        ):
            message.take(q.start, q.end, "said again")
            continue
        before = (*before[-1:], q)
        yield q


def _is_cry(message: Message, load: Quantity, reps: Quantity, again: Quantity) -> bool:
    if _is_what_it_comes_to(message, reps, again):
        return True
    if reps.value == again.value and any(
        found.end == again.start for found in _FIRST_TIME.find(message, reps.end, again.start)
    ):
        return True
    between = [message.text(at) for at in range(reps.end, again.start) if message.taken[at] != "said again"]
    if (
        again.value in {load.value, reps.value}
        and _CONFIRMS.issuperset(between)
        and not _YES.isdisjoint(between)
    ):
        return message.text(again.end) in _ENDS
    alike = reps.value == again.value and not _is_spoken(message, reps) and not _is_spoken(message, load)
    tight = message.text(load.end) in {"x", "for", "*", "@"}
    return (
        alike
        and tight
        and _is_spoken(message, again)
        and again.role in {None, "reps"}
        and bool(between)
        and all(word in {",", ".", "!", "yes", "yep", "yeah", "reps"} for word in between)
        and message.text(again.end) in _ENDS
    )


def _is_what_it_comes_to(message: Message, reps: Quantity, again: Quantity) -> bool:
    """Return whether a clause of its own only tells the reps just told once more: "8 and a half, so 8"."""
    if int(reps.value) != again.value or again.role not in {None, "reps"}:
        return False
    between = message.texts(reps.end, again.start)
    if not _ANOTHER.isdisjoint(between):
        return False
    if between == ["only"]:
        return True
    return message.text(again.end) in _ENDS | _EVER and any(
        found.end == again.start for found in _COMES_TO.find(message, reps.end, again.start)
    )


_EVER = words_of("before until till ever")
_COMES_TO = Pattern(
    "(,|.|!) [i|ive]* (never|not) [ever|once|managed|even]* (did|done|got|had|hit|made|reached)\n"
    "(,|.|!|-|'('|but) [so|but|and]* (it|that|i) [was|is|s|only|really|say|call it|count]*\n"
    "(,|.|!|-|rep|reps) only\n"
    "so [that is|thats|its|it is|that makes|it was|call it|say|just|only]*"
)
"""What leads to reps that were told before."""
_YES = words_of("yes yeah yep yup")
_CONFIRMS = _YES | words_of(", . ! ? definitely it was is i think guess believe hmm")
_ENDS = frozenset({"", ",", ".", "!", "\n", "reps"})
_FIRST_TIME = Pattern("first time [ever|that|i|ive|we|have|,]* (got|did|hit|made|managed|had|reached|gotten)")
"""Joy over reps that were told before: "15x11! First time I got 11"."""


def _may_repeat(message: Message, quantities: Sequence[Quantity]) -> bool:
    spoken = [_is_spoken(message, q) for q in quantities]
    return (any(spoken) and not all(spoken)) or _LEADS.is_in(message)


def _is_spoken(message: Message, q: Quantity) -> bool:
    return message.tokens[q.start].spoken


def _is_repeat(
    message: Message, before: Sequence[Quantity], pair: Sequence[Quantity], named: Sequence[Named]
) -> bool:
    """Return whether a pair has the numbers of the one before, and is in words where that is in digits, or is
    led to by words for saying it again."""
    if [q.value for q in before] != [q.value for q in pair] or "sets" in {q.role for q in (*before, *pair)}:
        return False
    if before[0].unit != pair[0].unit and None not in {before[0].unit, pair[0].unit}:
        return False
    last = message.sentence_span(pair[1].start)[1]
    if any(before[1].end <= n.start < last for n in named):
        return False
    between = message.texts(before[1].end, pair[0].start)
    if len(between) > _MOST_BETWEEN or not _ANOTHER.isdisjoint(between) or "\n" in between:
        return False
    told = [_is_spoken(message, q) for q in (*before, *pair)]
    return told == [False, False, True, True] or _LEADS.is_in(message, before[1].end, pair[1].end)
