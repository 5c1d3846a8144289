"""Whether a day is the day of the training, and not of tennis, a party or a sore back."""

import re
from collections.abc import Callable

from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.words import ACTIVITIES, TRAINING, words_of

_NOT_OF_A_SET = words_of("than since after like before as until till til by vs")
_SORE = words_of("sore tired stiff hungover wrecked doms fatigued exhausted aching pain")
_HEADER_WORDS = words_of(
    """am pm at oclock around about session workout evening morning afternoon s late early night on last for
    from this so ok and hi hey hello sorry update the log results training numbers coach just my in
    here are"""
)
_FEELINGS = words_of(
    """felt feel strong good great was hard tough easy went well really so bad ok okay awful fine tired
    amazing better best weak super pretty very quite rough brilliant decent not too alright nice horrible
    heavy light ! . smooth solid it surprisingly a bit day quick slow"""
)
_OF_THE_TRAINING = words_of("workout workouts session training sets numbers results log")
"""Words right beside a day that make it the training's."""
_OTHER_DOINGS = words_of("played playing play watched visited babysat hosted mowed shovelled rode raced")
"""What a client did on a day that is not the coach's training."""
_LOOKS_BACK = re.compile(
    r"\b(?:that|this|it|those|these|all|both|which) (?:\w+ )?(?:was|were|is|are|s) "
    r"(?:\w+ )?(?:on |from |of |for )?$"
)
_THATS = re.compile(r"(?:\b(?:thats|its)|^(?:all|both|everything)) (?:on |from |of |for )?$")


def is_for_training(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether a day is said of the training.

    `has_set(start, end)` tells whether a set or an exercise is named between two tokens.
    """
    before = message.text(day.start - 1)
    if before in _NOT_OF_A_SET:
        return False
    start, end = message.clause_span(day.start)
    words = set(message.texts(start, end))
    if words & _SORE and (before in {"from", "of"} or message.text(day.end) == "s"):
        return False
    if not _OF_THE_TRAINING.isdisjoint({before, message.text(day.end)}):
        return True
    if message.text(end - 1) == ":" and day.start - start <= 2:
        return True
    if looks_back(message, day) or before in {"for", "from"}:
        return True
    # "Last night after shift" is the training's; "after shift" only tells the hour.
    stop = next((at for at in range(day.end, end) if message.text(at) in {"after", "before"}), end)
    near = set(message.texts(max(start, day.start - 2), min(stop, day.end + 2)))
    if near & ACTIVITIES or words & _OTHER_DOINGS:
        return False
    if has_set(start, end):
        return True
    others = set(message.texts(start, day.start)) | set(message.texts(day.end, stop))
    if all(w in _HEADER_WORDS or not w.isalpha() for w in others):
        return True
    if others <= _FEELINGS and (start == 0 or message.text(start - 1) in {"\n", ","}):
        return True
    return bool(others & TRAINING) and not others & ACTIVITIES


def looks_back(message: Message, day: Day) -> bool:
    """Return whether a day is said of what was told before it: "that was yesterday"."""
    start, _ = message.clause_span(day.start)
    before = message.line[message.starts[start] : message.starts[day.start]]
    return start > 0 and bool(_LOOKS_BACK.search(before) or _THATS.search(before))
