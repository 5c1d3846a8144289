"""Places where a client changes their mind within a message: "80 for 8, no wait, 7".

What the new number stands in place of is decided when the numbers are folded.
"""

import re

from domain.reading.message import Message
from domain.reading.phrases import Mark
from domain.reading.words import words_of

_CHANGE = re.compile(
    r"(?:(?<=# )|(?<= ))(?:(?:no+|nope|wait|sorry|oops|whoops|ugh|er|erm|uh|um|hmm|hang on|hold on|i mean"
    r"|i meant|actually|correction|make that|make it|scratch that|scrap that|or rather|rather|my bad|typo"
    r"|should be|should say|it was|that was|i did|i got|its|it is|thats|was|meant|sry|eh|err|argh|,|-|:"
    r"|\.|\*|only|just|more like|in fact|lol|haha|for|at|with|x"
    r"|(?:i )?(?:only |actually |really )*had # (?:(?:kgs?|kilos?|lbs?|pounds?) )?on(?: the bar"
    r"| it)?) )+(?=#)"
)
_CHANGE_TRIGGERS = words_of(
    """no nope wait sorry oops mean meant actually correction make scratch scrap rather bad typo
    should noo nooo
    whoops sry"""
)
_CHANGE_STRONG = re.compile(
    r"\b(?:no+|nope|wait|sorry|oops|whoops|i mean|i meant|actually|correction|make that|make it"
    r"|scratch that|scrap that|rather|my bad|typo|should be|should say|meant|sry)\b"
)


def with_changes(message: Message, marks: list[Mark]) -> list[Mark]:
    """Add the places where the client changes their mind within the message."""
    if not message.has(_CHANGE_TRIGGERS):
        return marks
    added: list[Mark] = []
    for match, start, end in message.find(_CHANGE):
        if not _CHANGE_STRONG.search(match.group()):
            continue
        number_before = any(
            message.value(at) is not None and not message.taken[at] for at in range(max(0, start - 8), start)
        )
        if number_before:
            added.append(Mark("change", start if "#" in match.group() else end - 1, end))
    if not added:
        return marks
    spans = {at for m in added for at in range(m.start - 6, m.end)}
    return sorted([*(m for m in marks if m.start not in spans), *added], key=lambda m: m.start)
