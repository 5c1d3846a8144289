"""Numbers with the words that tell what they are numbers of: a load, reps, sets, seconds, plates, a pair."""

from collections.abc import Sequence
from decimal import Decimal
from typing import Literal, NamedTuple

from domain.reading.all_sets import is_of_all_sets
from domain.reading.counted import is_counted
from domain.reading.letter_behind import is_how_slowly, is_in_kilos
from domain.reading.message import Message
from domain.reading.number_labels import Role, is_label, is_labelled, label_before
from domain.reading.over_a_minute import OF_ANOTHER_NUMBER, SECONDS_FOLLOW, over_a_minute
from domain.reading.patterns import Pattern
from domain.reading.words import (
    AT_WORDS,
    KG_WORDS,
    LB_WORDS,
    MINUTE_WORDS,
    NEGATIVE_WORDS,
    REP_ADJECTIVES,
    REP_WORDS,
    SECOND_WORDS,
    SET_WORDS,
    STONE_WORDS,
    words_of,
)
from domain.units import Unit


class Quantity(NamedTuple):
    """A number of the message with the words that tell what it is, from token `start` to before `end`.

    `each` tells of a load that it is in each hand, and of a number of sets that all of them are spoken of.
    """

    value: Decimal
    start: int
    end: int
    role: Role | None = None
    unit: Unit | Literal["stone"] | None = None
    kind: Literal["each", "added", "assist"] | None = None
    lowering: bool = False
    a_side: bool = False
    each: bool = False
    minus: bool = False
    minutes: bool = False
    plus: bool = False
    times: bool = False


def find_quantities(message: Message, marked: set[int]) -> list[Quantity]:
    """Return the numbers of the message that can be of a set, in order, each with what its words tell."""
    found: list[Quantity] = []
    beyond = 0
    for at in message.places.get("#", ()):
        if at >= beyond and not message.taken[at] and at not in marked:
            quantity = _quantity(message, at)
            # "One set with 17.5, got 7" counts a set of which all is told.
            if not (
                quantity.role == "sets" and quantity.value == 1 and message.text(quantity.end) in AT_WORDS
            ):
                found.append(quantity)
            beyond = quantity.end
    return [_as_count(message, one, found[place + 1 :]) for place, one in enumerate(found)]


def _as_count(message: Message, one: Quantity, later: Sequence[Quantity]) -> Quantity:
    """Take "twice" for a number of sets where as many amounts follow: "the row twice at 40 kg, ten reps and
    then nine"."""
    if not (one.times and message.text(one.end - 1) == "times" and one.value <= _MOST_TOLD):
        return one
    sentence = message.sentence[one.start]
    beside = [q for q in later if message.sentence[q.start] == sentence]
    amounts = [q for q in beside if q.role in {"reps", None} and not q.plus]
    counts = len(amounts) == one.value and amounts[0].role == "reps" and not amounts[0].times
    loads, reps = amounts[::2], amounts[1::2]
    if len(loads) == len(reps) == one.value:
        # "The row twice, 20 for 11 and 20 for 10".
        counts = all(message.text(load.end) in _TIES for load in loads)
    return one._replace(role="sets", times=False) if counts else one


_TIES = frozenset({"x", "for", "*"})
_MOST_TOLD = 4
"""No more sets than that are told one by one after their number."""


def _quantity(message: Message, at: int) -> Quantity:
    """Return the number at token `at` with the words before and after it that tell what it is."""
    tokens = message.tokens
    value = tokens[at].value or Decimal(0)
    start, end = at, at + 1
    role: Role | None = None
    unit: Unit | Literal["stone"] | None = None
    kind: Literal["each", "added", "assist"] | None = None
    minus = lowering = each = a_side = minutes = plus = times = False

    after = message.text(end)
    glued = end < len(tokens) and tokens[end].glued
    if message.text(end + 1) in _SECONDS and _describes(message, end):
        # "32 glorious seconds"
        end += 1
        after, glued = message.text(end), False
    if (
        after == ":"
        and glued
        and end + 1 < len(tokens)
        and tokens[end + 1].glued
        and tokens[end + 1].value is not None
    ):
        clock = tokens[end + 1]
        if (
            len(clock.text) == 2
            and value <= 20
            and value == int(value)
            and clock.value is not None
            and clock.value < 60
        ):
            return Quantity(value * 60 + clock.value, start, end + 2, "seconds", minutes=True)
    if after in KG_WORDS:
        unit, role, end = "kg", "load", end + 1
    elif after in LB_WORDS or (after == "№" and glued):
        unit, role, end = "lb", "load", end + 1
    elif after == "k" and glued and is_in_kilos(message, at, value):
        unit, role, end = "kg", "load", end + 1
    elif after in STONE_WORDS and not (after == "st" and value in {1, 21, 31, 41}):
        unit, role, end = "stone", "load", end + 1
    elif after == "s" and (glued or message.value(end + 1) is None or not tokens[end + 1].glued):
        role, end = ("pair" if glued and not is_how_slowly(message, at) else "seconds"), end + 1
    elif (
        after in SECOND_WORDS
        and not (
            after == "second"
            and (
                message.text(end + 1) in {"set", "one", "rep", "round"} or message.value(end + 1) is not None
            )
        )
    ) or (after == '"' and glued and message.text(at - 1) != '"'):
        role, end = "seconds", end + 1
    elif after in MINUTE_WORDS or (
        after == "m" and glued and SECONDS_FOLLOW.at(message, end + 1) is not None
    ):
        over, end = over_a_minute(message, end + 1)
        value, role, minutes = value * 60 + over, "seconds", True
    elif after in REP_WORDS and (after != "r" or glued) and not is_label(message, end):
        role, end = "reps", end + 1
    elif (
        after in SET_WORDS
        and not is_labelled(message, end)
        and not (after == "set" and value > 1 and message.value(end + 1) is not None)
    ):
        role, end = "sets", end + 1
        if message.text(end) == "of":
            end += 1
    elif is_of_all_sets(message, at, value):
        role, end = "sets", end + (after == "x")
    elif after in _LOTS and message.text(end + 1) == "of" and message.value(end + 2) is not None:
        role, end = "sets", end + 2
    elif after in {"more", "further"} and message.text(end + 1) == "sets":
        role, end = "sets", end + 2
        if message.text(end) == "of":
            end += 1
    elif (end_of_reps := _after_reps(message, end)) is not None:
        role, lowering, end = "reps", message.text(end_of_reps - 1) in NEGATIVE_WORDS, end_of_reps
    elif after == "of" and message.text(end + 1) in {"them", "those", "these"}:
        role, end = ("sets" if message.text(end + 2) == ":" else "reps"), end + 2
    elif after == "plate" and (value > _MOST_PLATES or (value > 1 and message.text(at - 1) in _ONE)):
        role, end = "load", end + 1
    elif after in {"plate", "plates"}:
        role, end = "plates", end + 1
    elif _ON_THE_BAR.at(message, end) is not None:
        role = "load"
    elif (
        after in {"x", "times"}
        and (after == "times" or value % 1 == 0)
        and (message.value(end + 1) is None or message.text(end + 2) == "times")
        and message.text(end + 1) not in _AFTER_TIMES
        and _ABOUT_SO_MANY.at(message, end + 1) is None
    ):
        role, end, times = "reps", end + 1, after == "times"
    if role == "reps" and message.text(end) in NEGATIVE_WORDS:
        lowering, end = True, end + 1

    before = message.text(at - 1)
    if role == "reps" and lowering and before == "+" and tokens[at].glued and value % 1:
        # "+7.5 negatives" has a load.
        role, end = "load", at + 1
    if (
        before in {"+", "plus"}
        and role in {None, "load"}
        and (message.value(at - 2) is None or (at >= 2 and not tokens[at - 1].glued and tokens[at].glued))
    ):
        plus, start, role = True, at - 1, "load"
        if message.text(start - 1) in {"bw", "bodyweight", "weight", "body"}:
            kind, plus = "added", False
            start -= 1
            if message.text(start) == "weight" and message.text(start - 1) == "body":
                start -= 1
    elif before == "-" and tokens[at].glued and not tokens[at - 1].glued and role in {None, "load"}:
        minus, start = True, at - 1
    elif before == "minus" and role in {None, "load"}:
        minus, start, role = True, at - 1, "load"
    elif before in {"assisted", "assistance", "assist", "help"} and role in {None, "load"}:
        kind, start = "assist", at - 1
    elif (
        (before == "x" or (before == "*" and at >= 2 and (tokens[at - 1].glued or not tokens[at].glued)))
        and role is None
        and message.value(at - 2) is None
        and message.text(at - 2) not in {"kg", "kgs", "lb", "lbs", "s", "kilos", "each", "side", "hand"}
    ):
        role, times = "reps", True
    if role is None and before == "all" and _ALL_SETS.at(message, at) is not None:
        role = "sets"
    if role == "sets" and (before == "all" or tokens[at].text == "both"):
        each = True
    if role is None and (_is_more(message, at) or _is_of_a_set(message, at)):
        role = "reps"
    if role is None and (label := label_before(message, at)) is not None:
        role = label
    return _with_counting(
        message,
        Quantity(value, start, end, role, unit, kind, lowering, a_side, each, minus, minutes, plus, times),
    )


def _after_reps(message: Message, at: int) -> int | None:
    """Return the place after "clean reps", "slow ones", "negatives", None where no such thing stands here."""
    end = at
    while end < at + _MOST_ADJECTIVES and message.text(end) in REP_ADJECTIVES:
        end += 1
    word = message.text(end)
    if word in NEGATIVE_WORDS or (end > at and (word in REP_WORDS or word == "ones")):
        return end + 1
    unknown = at
    while unknown < at + 2 and is_counted(message, unknown) and message.text(unknown) not in _NOT_WHOLE:
        unknown += 1
    if unknown > at and message.text(unknown) in REP_WORDS - {"r"} and not is_label(message, unknown):
        return unknown + 1
    return None


_SECONDS = SECOND_WORDS - {"second"}


def _describes(message: Message, at: int) -> bool:
    """Return whether the word at a place only tells how the seconds behind it were."""
    word = message.text(at)
    return word not in _NOT_WHOLE and (word in REP_ADJECTIVES or is_counted(message, at))


_NOT_WHOLE = words_of(
    "partial partials forced assisted half cheat cheated warmup warm rest fewer less missed"
)
"""What is said of reps that are none of those that count, or of how many there were not."""


_MOST_ADJECTIVES = 3


def _is_more(message: Message, at: int) -> bool:
    """Return whether a bare number is of more reps: "short rest, then another two"."""
    if message.text(at - 1) != "another":
        return False
    value = message.value(at) or Decimal(0)
    after = message.text(at + 1)
    return (
        value % 1 == 0
        and value <= _MOST_MORE
        and after not in OF_ANOTHER_NUMBER
        and not is_counted(message, at + 1)
    )


_ALL_SETS = Pattern(
    "# [with|at|@|had|were|was|still|left]* (to (failure|fail)|rpe|rir|# ..2 (tank|left|reserve))"
)
"""What follows on "all" where a number is one of sets: "100x5x3, all three with 2 in the tank"."""
_MOST_MORE = 30
_ABOUT = words_of(
    """about like only just maybe around roughly approx approximately probably nearly almost possibly solid
    easy hard good clean another barely = ~"""
)
_LOTS = words_of("lots goes bouts turns")
"""Words for sets before the reps of each: "two lots of 12"."""
_ABOUT_SO_MANY = Pattern("{about} [{about}|a]* # !({unit})", about=_ABOUT, unit=KG_WORDS | LB_WORDS)
"""The reps after "80 x", with words before them that tell how sure or how hard they were."""
_AFTER_TIMES = words_of("( [ bw bodyweight body a an fail per lots loads plenty many some several few")
"""Words after a times sign with which the number before it is no number of reps."""
_MOST_PLATES = 4
"""More than so many plates a side nobody counts: "with a 20 plate" has one that weighs so much."""
_ONE = frozenset({"a", "the", "my", "one"})
_ON_THE_BAR = Pattern("on (the|my) (bar|barbell|stack|belt|sled|pin)")


def _is_of_a_set(message: Message, at: int) -> bool:
    """Return whether a bare number is how often a set was done: "a set of 8"."""
    return (
        message.text(at - 1) == "of"
        and message.text(at - 2) in SET_WORDS
        and (message.value(at) or 0) <= _MOST_MORE
        and message.text(at + 1) not in OF_ANOTHER_NUMBER
        and message.value(at + 1) is None
    )


_EACH_LIMB = words_of("leg side arm foot limb legs arms sides way direction")

_ON_TOP = frozenset({"belt", "vest", "backpack", "rucksack", "lap", "chains", "waist"})


_NAME_GOES_ON = words_of(
    """bend bends bridge bridges curl curls extension extensions ext lunge lunges lift lifts pl press presses
    plank planks pushdown pushdowns raise raises row rows squat squats swing swings"""
)
"""What makes "leg", "side" or "arm" before it the name of an exercise."""


_BEFORE_REPS = frozenset({"x", "for", "*"})


def _is_load_before(message: Message, at: int) -> bool:
    """Return whether a number with its unit ends at a place."""
    return message.text(at) in KG_WORDS | LB_WORDS and message.value(at - 1) is not None


def _with_counting(message: Message, q: Quantity) -> Quantity:
    """Add how a load is counted, from the words after it: each hand, a side, of help, on the belt."""
    text = message.text
    end = q.end
    word, second, third = text(end), text(end + 1), text(end + 2)
    if word == "of" and second in {"help", "assistance", "assist", "support"}:
        return q._replace(kind="assist", role=q.role or "load", end=end + 2)
    if word in {"assist", "assisted", "assistance", "help"} and q.role in {None, "load"}:
        return q._replace(kind="assist", role=q.role or "load", end=end + 1)
    if word in {"of", "off"} and second in {"added", "extra", "additional"}:
        return q._replace(kind="added", role=q.role or "load", end=end + 2 + (third in {"weight", "load"}))
    if word in {"added", "additional"} and (q.unit is not None or second in _BEFORE_REPS):
        return q._replace(kind="added", role="load", end=end + 1)
    if word == "extra" and q.unit is not None:
        return q._replace(plus=True, role="load", end=end + 1)
    if q.unit is not None and q.role == "load" and message.has(_ON_TOP):
        for near in message.texts(end, end + 5):
            if near in {",", ".", "x", "for", "\n", ";", ":"}:
                break
            if near in _ON_TOP:
                return q._replace(kind="added")
    if q.role in {None, "load", "pair"}:
        if (
            word in {"in", "per", "each", "a", "every", "for", "/"}
            and "hand" in {second, third}
            and (second == "hand" or second in {"each", "every", "either"})
        ):
            stop = end + (2 if second == "hand" else 3)
            if q.role is None and text(q.start - 1) in _BEFORE_REPS and _is_load_before(message, q.start - 2):
                # "8 kg x 8 each hand"
                return q._replace(role="reps", end=stop)
            return q._replace(kind="each", role="load", end=stop)
        if word in {"dumbbells", "dbs", "dumbells", "kettlebells", "kbs", "dumbels"} and (
            q.unit is not None or q.role == "pair"
        ):
            return q._replace(kind="each", role="load", end=end + 1)
        if word == "pair":
            return q._replace(kind="each", role="load", end=end + 1)
        if text(q.start - 1) == "of" and text(q.start - 2) == "pair":
            return q._replace(
                kind="each", role="load", start=q.start - (3 if text(q.start - 3) == "a" else 2)
            )
        if (
            word in {"each", "ea", "apiece", "e"}
            and second not in _EACH_LIMB
            and second not in {"set", "time", "one"}
        ):
            return q._replace(each=True, end=end + 1)
    if third in _NAME_GOES_ON:
        # "80x8 / leg press 150x10"
        return q
    if word in {"a", "per", "each", "either", "every", "/"} and second in {"side", "sides"}:
        return q._replace(a_side=True, end=end + 2)
    if word == "on" and second in {"each", "either", "both", "every"} and third in {"side", "sides"}:
        return q._replace(a_side=True, end=end + 3)
    if word in {"each", "per", "a", "every", "/"} and second in _EACH_LIMB:
        return q._replace(each=True, role=q.role or "reps", end=end + 2)
    if word in {"on", "with"} and second in {"each", "either", "both", "every"} and third in _EACH_LIMB:
        return q._replace(each=True, role=q.role or "reps", end=end + 3)
    return q
