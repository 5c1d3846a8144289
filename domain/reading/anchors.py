"""Which numbers count: a lone bare number only beside a name, after a verb of doing, or alone in its
clause."""

from collections.abc import Sequence

from domain.reading.context import MOST_REPS
from domain.reading.counted import ends_here, has_moved_to, has_stopped_at, is_counted, is_led
from domain.reading.element import Element
from domain.reading.lists_of_reps import goes_on_a_list
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.standing_alone import alone, is_of_a_hold, is_range
from domain.reading.tokens import LINE, NUMBER
from domain.reading.words import (
    AT_WORDS,
    BETWEEN,
    FILLERS,
    FOR_WORDS,
    LOAD_NOUNS,
    RESULT_VERBS,
    TIMES_SIGNS,
    words_of,
)

_HELD = words_of("held hold holding hung hanging")
_NO_HOLD, _NO_HOLD_ALONE = 900, 180
"""Seconds from which a number of minutes tells the time that was spent, and no hold: beside a name, and away
from one."""

PROVIDERS = frozenset(
    {
        *("same all", "same load", "up", "down", "more reps"),
        *("fewer reps", "target", "target more", "target fewer", "body"),
        *("unknown load", "pin", "zero", "same again"),
    }
)
"""Phrases that give a load or reps of their own."""


def anchored(
    message: Message, things: list[Named | Element | Mark], blank: set[int]
) -> list[Named | Element | Mark]:
    """Leave out lone bare numbers that nothing anchors, and weak names away from a number."""
    kept: list[Named | Element | Mark] = []
    for i, thing in enumerate(things):
        before = things[i - 1] if i else None
        after = things[i + 1] if i + 1 < len(things) else None
        if isinstance(before, Mark) and i > 1 and before.end <= things[i - 2].end:
            # "16 per hand x 12 on hammers" has a phrase within its numbers.
            before = things[i - 2]
        if isinstance(thing, Named):
            if thing.weak and _is_body_part(message, thing):
                continue
            remarked = (
                not thing.names
                and isinstance(after, Element)
                and _close(message, thing.end, after.start, blank)
            )
            if thing.weak and not (
                remarked or _beside(message, before, thing) or _beside(message, thing, after)
            ):
                continue
            kept.append(thing)
        elif isinstance(thing, Element):
            beside_before = _past_marks(things, i, -1)
            beside_after = _past_marks(things, i, 1)
            if isinstance(beside_before, Named) and _close(
                message, beside_before.end, thing.start, blank, days=True
            ):
                thing.next_to_name = True
            after = beside_after
            if isinstance(after, Named) and _close(message, thing.end, after.start, blank, of=True):
                thing.next_to_name = True
            if _is_anchored(message, thing, kept, things, i, blank) or _begins_a_list(
                message, things, i, blank
            ):
                kept.append(thing)
        else:
            kept.append(thing)
    return kept


def _begins_a_list(message: Message, things: list[Named | Element | Mark], i: int, blank: set[int]) -> bool:
    """Return whether a lone bare number goes on to others, the last of which stands beside a name: "7 and
    6 on squats"."""
    at = i
    while at + 1 < len(things):
        thing, following = things[at], things[at + 1]
        if not isinstance(thing, Element) or [q.role for q in thing.quantities] != [None]:
            return False
        if isinstance(following, Named):
            return at > i and _close(message, thing.end, following.start, blank, of=True)
        if not isinstance(following, Element) or following.joints[0] not in {",", "and", "/", "then"}:
            return False
        at += 1
    return False


_BEYOND = words_of("over above past beyond")
"""Words before a number that is gone beyond, and so is not what was done: "first time over 50"."""
_STATES = words_of("""is are was were feels felt feel still hurts so looks got gets really""")


def _is_body_part(message: Message, name: Named) -> bool:
    """Return whether a word is a part of the body here, and no exercise: "my chest is pumped"."""
    return message.text(name.start - 1) == "my" and message.text(name.end) in _STATES


def _past_marks(things: list[Named | Element | Mark], i: int, step: int) -> Named | Element | Mark | None:
    """Return the next thing in a direction that is not a phrase which only describes."""
    at = i + step
    while 0 <= at < len(things):
        thing = things[at]
        if not isinstance(thing, Mark) or (thing.kind in PROVIDERS and not _is_in_name(things, at)):
            return thing
        at += step
    return None


def _is_in_name(things: list[Named | Element | Mark], at: int) -> bool:
    """Return whether a phrase is a word of the name before it: "bodyweight dips"."""
    before = things[at - 1] if at else None
    return isinstance(before, Named) and things[at].end <= before.end


_RIGHT_BESIDE = words_of(
    """: - was were at = for with w / my x today on the of | thing things one ones drop dropset set sets left
    right"""
)


_OPENS_CLAUSE = words_of(", . ! : ; - and then the my on did") | {"", "\n"}
"""What stands before a word that names an exercise; in "jelly legs, 100x6" it is no name."""


def _beside(message: Message, left: object, right: object) -> bool:
    """Return whether a number stands right beside a word that names an exercise only there."""
    if (isinstance(left, Named) and isinstance(right, Element)) or (
        isinstance(left, Element) and isinstance(right, Named)
    ):
        between = [message.text(i) for i in range(left.end, right.start) if message.taken[i] != "a day"]
        opens = isinstance(left, Named) and message.text(left.start - 1) in _OPENS_CLAUSE
        small = _RIGHT_BESIDE | {","} if opens else _RIGHT_BESIDE
        return len(between) <= 3 and all(w in small for w in between)
    if isinstance(left, Named) and isinstance(right, Mark):
        return right.kind in PROVIDERS and right.start - left.end <= 2
    if isinstance(left, Mark) and isinstance(right, Named):
        return left.kind in PROVIDERS and right.start - left.end <= 2
    return False


_CLOSE = (
    FILLERS
    | AT_WORDS
    | FOR_WORDS
    | TIMES_SIGNS
    | words_of(
        """: - = ( ) but were feels went each their reps up to both & , ended came gave max straight plus
        machine stack cable bar barbell
    total also there says even -> > | / * weight weighed using loaded today be been as well warm topped out
    set sets st nd rd th round top best main working work back off heavy drop dropset dropsets drops strip
    super giant cluster amrap"""
    )
)


def _close(
    message: Message, start: int, end: int, blank: set[int], *, of: bool = False, days: bool = False
) -> bool:
    """Return whether only small words stand between two places, and days where `days` says so."""
    allowed = 6
    for at in range(start, end):
        if at in blank or (days and message.taken[at] == "a day"):
            continue
        token = message.tokens[at]
        if token.kind == LINE:
            if of:
                return False
            continue
        if token.text in {".", "!", "?", ";"} or (of and token.text == ","):
            return False
        if token.kind == NUMBER:
            if message.taken[at] in {"a set's number", "how many are held"}:
                continue
            return False
        if (
            token.text in _CLOSE
            or (of and token.text in {"of", "on", "the", "in", "a"})
            or token.text in {"on", "my", "i"}
        ):
            allowed -= 1
            if allowed < 0:
                return False
            continue
        return False
    return True


def _is_anchored(
    message: Message,
    element: Element,
    kept: list[Named | Element | Mark],
    things: list[Named | Element | Mark],
    i: int,
    blank: set[int],
) -> bool:
    quantities = element.quantities
    first = quantities[0]
    if first.minutes and first.value >= (
        _NO_HOLD if element.next_to_name or message.has(_HELD) else _NO_HOLD_ALONE
    ):
        return False
    if len(quantities) > 1:
        joints = set(element.joints[1:])
        if not joints & {"x", "for", "@", "at", ":"} and all(
            q.role in {"pair", "plates"} for q in quantities
        ):
            return element.next_to_name
        if joints & {"x", "for", "@", "at", ":"} or any(q.role is not None for q in quantities):
            return not (joints == {"-"} and is_range(quantities))
        if joints == {"-"} and is_range(quantities):
            return False
    elif first.role == "reps" and not (first.times and message.text(first.end - 1) == "times"):
        return True
    if element.joints[0] == "change":
        return True
    if len(quantities) == 1 and first.role is None and message.text(first.start - 1) in _BEYOND:
        return False
    following = things[i + 1] if i + 1 < len(things) else None
    if isinstance(following, Mark) and following.kind == "change":
        return True
    if element.next_to_name and not (
        len(quantities) == 1
        and first.role is None
        and is_counted(message, element.end)
        and not _begins(things, i + 1, element.end)
    ):
        if len(quantities) == 1 and first.role in {None, "reps"}:
            element.only_by_name = not _is_told(message, element, kept, things, i, blank)
        return True
    return _is_told(message, element, kept, things, i, blank)


def _is_told(
    message: Message,
    element: Element,
    kept: list[Named | Element | Mark],
    things: list[Named | Element | Mark],
    i: int,
    blank: set[int],
) -> bool:
    """Return whether a lone number is told of, whatever name stands beside it."""
    quantities = element.quantities
    first = quantities[0]
    sentence = message.sentence[element.start]
    beside = [t for t in things if t is not element and message.sentence[t.start] == sentence]
    named = any(isinstance(t, Named) for t in beside)
    if first.role in {"load", "plates"} and len(quantities) == 1 and _is_aside(message, element, kept, blank):
        return False
    if first.role in {"load", "sets", "plates"} and (first.unit is not None or first.role != "load"):
        if named or any(
            isinstance(t, Element) and any(q.role == "reps" for q in t.quantities) for t in beside
        ):
            return True
        if any(isinstance(t, Mark) and t.kind in PROVIDERS | {"failed on"} for t in beside):
            return True
    if first.role == "reps":
        if (
            first.times
            and message.text(first.end - 1) == "times"
            and not _is_told_here(message, element, things, blank)
        ):
            return alone(message, element, blank) or _goes_on_from_load(element, kept)
        return (
            named
            or alone(message, element, blank)
            or any(isinstance(t, Element) and t.quantities[0].role == "load" for t in beside)
        )
    if first.role == "load" and (first.kind is not None or first.each):
        return True
    if len(quantities) > 1 and first.kind is not None:
        return True
    if first.role == "pair" and is_led(message, first.start):
        return True
    if has_moved_to(message, first.start) and _amount_follows(things, i):
        element.after_at = True
        return True
    if first.role == "seconds" and not first.minutes:
        return True
    if first.role == "seconds":
        return is_of_a_hold(message, element.start, things) or alone(message, element, blank)
    before = kept[-1] if kept else None
    if goes_on_a_list(message, before, element):
        return True
    if isinstance(before, Element) and element.joints[0] in {",", "/", "and", "then", "-", "x"}:
        if (
            len(quantities) == 1
            and is_counted(message, element.end)
            and not _begins(things, i + 1, element.end)
        ):
            return False
        return (
            ends_here(message, element.end)
            or element.joints[0] != ","
            or len(quantities) > 1
            or _begins(things, i + 1, element.end)
        )
    if (
        isinstance(before, Mark)
        and before.kind in PROVIDERS
        and _close(message, before.end, element.start, blank)
    ):
        # "Same 12 songs on repeat" tells of no reps.
        return len(quantities) > 1 or first.role is not None or not is_counted(message, element.end)
    if i + 1 < len(things):
        after = things[i + 1]
        if (
            isinstance(after, Mark)
            and after.kind in {"failed on", "failure", "rir", "same load", "no failure", "lowering", "body"}
            and _close(message, element.end, after.start, blank)
        ):
            return True
    verb_at = element.start - 1
    while verb_at >= 0 and message.text(verb_at) in BETWEEN | {"about", "another", "me", "us"}:
        verb_at -= 1
    stopped = has_stopped_at(message, element.start)
    if (
        (message.text(verb_at) in RESULT_VERBS or stopped)
        and message.sentence[max(verb_at, 0)] == sentence
        and ends_here(message, element.end)
    ):
        element.result = True
        element.after_at = element.after_at and not stopped
        return True
    return alone(message, element, blank)


def _amount_follows(things: Sequence[Named | Element | Mark], i: int) -> bool:
    """Return whether the next thing is a number that can be the reps of a load."""
    following = things[i + 1] if i + 1 < len(things) else None
    return isinstance(following, Element) and following.quantities[0].role in {None, "reps"}


def _goes_on_from_load(element: Element, kept: Sequence[Named | Element | Mark]) -> bool:
    """Return whether a number of times stands right behind a load, or such a number: "26 kg, 10 times"."""
    before = kept[-1] if kept else None
    if not isinstance(before, Element) or element.joints[0] not in {",", "then", "and"}:
        return False
    last = before.quantities[-1]
    return last.role in {"load", "pair"} or last.times or (last.role is None and last.value > MOST_REPS)


def _is_told_here(
    message: Message, element: Element, things: Sequence[Named | Element | Mark], blank: set[int]
) -> bool:
    """Return whether an exercise or another number stands by a number of times, in its clause."""
    start, end = message.clause_span(element.start)
    blank = blank | {at for at in range(start, end) if message.text(at) in LOAD_NOUNS}
    return any(
        start <= t.start < end
        and t is not element
        and not (isinstance(t, Mark) and t.kind not in PROVIDERS)
        and _close(message, min(t.end, element.end), max(t.start, element.start), blank)
        for t in things
    )


def _begins(things: Sequence[Named | Element | Mark], i: int, at: int) -> bool:
    """Return whether a name, a number or a phrase begins right at a place."""
    return i < len(things) and things[i].start == at


def _is_aside(
    message: Message, element: Element, kept: Sequence[Named | Element | Mark], blank: set[int]
) -> bool:
    """Return whether a load after a whole set is only spoken of: "80x8, that makes 1920 kg in total"."""
    before = kept[-1] if kept else None
    whole = isinstance(before, Element) and len(before.quantities) >= 2
    same = whole and before is not None and message.sentence[before.start] == message.sentence[element.start]
    return same and not alone(message, element, blank)
