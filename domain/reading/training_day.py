"""Whether a day is the day of the training, and not of tennis, a party or a sore back."""

from collections.abc import Callable

from domain.reading.body_phrases import SOMEBODY_ELSE
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import ACTIVITIES, TRAINING, words_of

_NOT_OF_A_SET = words_of("than since after like before as until till til by vs")
_SORE = words_of("sore tired stiff hungover wrecked doms fatigued exhausted aching pain")
_HEADER_WORDS = words_of(
    """am pm at oclock around about session workout evening morning afternoon s late early night on last for
    from this so ok and hi hey hello sorry update the log results training numbers coach just my in
    here are i was there too also went again"""
)
_FEELINGS = words_of(
    """felt feel strong good great was hard tough easy went well really so bad ok okay awful fine tired
    amazing better best weak super pretty very quite rough brilliant decent not too alright nice horrible
    heavy light ! . smooth solid it surprisingly a bit day quick slow"""
)
_OF_THE_TRAINING = words_of("workout workouts session training sets numbers results log")
"""Words right beside a day that make it the training's."""
_OTHER_DOINGS = words_of("saw played playing play watched visited babysat hosted mowed shovelled rode raced")
"""What a client did on a day that is not the coach's training."""
_LOOKS_BACK = Pattern("""
    (that|this|it|those|these|all|both|which) ..1 (was|were|is|are|s) ..1 [on|from|of|for] $
    (thats|its) [on|from|of|for] $
""")
_NUMBER = Pattern("#")
_ALL = Pattern("(all|both|everything) [on|from|of|for] $")
"""What a clause begins with that says nothing but the day: "all on Monday"."""


def is_for_training(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether a day is said of the training.

    `has_set(start, end)` tells whether a set or an exercise is named between two tokens.
    """
    before = message.text(day.start - 1)
    compared = message.text(day.start - 2) if before == "on" else before
    if compared in _NOT_OF_A_SET:
        return False
    start, end = message.clause_span(day.start)
    words = set(message.texts(start, end))
    after = message.text(day.end)
    if words & _SORE and (before in {"from", "of"} or after == "s"):
        return False
    if not _OF_THE_TRAINING.isdisjoint({before, after}) or before in {"for", "from"}:
        return True
    heads = message.text(end - 1) == ":" and day.start - start <= 2
    return heads or looks_back(message, day) or _is_of_its_clause(message, day, start, end, has_set)


def _is_of_its_clause(
    message: Message, day: Day, start: int, end: int, has_set: Callable[[int, int], bool]
) -> bool:
    """Return whether the clause of a day tells of a set, or of nothing but the training."""
    # "Last night after shift" is the training's; "after shift" only tells the hour.
    stop = next((at for at in range(day.end, end) if message.text(at) in {"after", "before"}), end)
    near = message.texts(max(start, day.start - 2), min(stop, day.end + 3))
    if not ACTIVITIES.isdisjoint(near) or not _OTHER_DOINGS.isdisjoint(message.texts(start, end)):
        return False
    if SOMEBODY_ELSE.is_in(message, start, day.start) and not _NUMBER.is_in(message, start, end):
        return False
    if has_set(start, end):
        return True
    others = {*message.texts(start, day.start), *message.texts(day.end, stop)}
    if all(word in _HEADER_WORDS or not word.isalpha() for word in others):
        return True
    if others <= _FEELINGS and (start == 0 or message.text(start - 1) in {"\n", ","}):
        return True
    return not others.isdisjoint(TRAINING) and others.isdisjoint(ACTIVITIES)


def looks_back(message: Message, day: Day) -> bool:
    """Return whether a day is said of what was told before it: "that was yesterday"."""
    start, _ = message.clause_span(day.start)
    if start == 0:
        return False
    return _LOOKS_BACK.is_in(message, start, day.start) or _ALL.at(message, start, day.start) is not None
