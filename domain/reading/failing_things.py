"""What fails and is not the client: "the playlist died at rep 4", "my strap gave out on the 8th"."""

from domain.reading.body_words import GEAR, PARTS
from domain.reading.message import Message
from domain.reading.name_stems import stem_of, vocabulary
from domain.reading.patterns import Found, Pattern
from domain.reading.tokens import NUMBER, WORD
from domain.reading.words import FILLERS, INTERJECTIONS, RESULT_VERBS, SMALL_WORDS, words_of

_FAILED = Pattern(
    """
    ({verb}) [completely|totally|just|right|again|me|halfway|midway]* {where} n:({which}) [rep|reps|one]
    ({verb}) [completely|totally|just|right|again|me|halfway|midway]* ..1
        (on|at|after|by|before|during|in) (the|my) [very]
        (last|final|second|first|third) [#] [rep|reps|set|one|half]
    failed|gave out|broke|died
""",
    verb="""
        died|failed|stopped|gave (out|up)|collapsed|broke|broke down|crashed|cut (out|off)|froze|quit|ended
        dropped|stalled|snapped|ripped|tore|blew|packed up|ran out|went (off|out|dead|dark|down|flat|quiet)
    """,
    where="(on|at|after|by|before|during|in|around|from) [the|my|about|only|rep|number|second|minute]*",
    which="# [st|nd|rd|th]",
)
_ADVERBS = words_of(
    "just completely totally then finally all suddenly both have had has literally almost nearly also even"
)
_OF_THE_LIFTER = words_of(
    """i we me body strength energy form technique power engine tank will mojo muscle muscles lungs breath
    legs leg arms arm grip grips core everything bar barbell weight set sets rep reps it that this they those
    which what who there nothing last next one two three brain soul spirit motivation stamina cardio balance
    side right left speed lockout dumbbell dumbbells stack sled"""
)
"""What is or does the set, so that the set failed with it."""
_BEFORE_A_THING = words_of(
    "my the a our his her their and but cause because as so when then stupid bloody damn"
)
_PLAIN_WORDS = SMALL_WORDS | FILLERS | INTERJECTIONS | RESULT_VERBS | _ADVERBS
_PART_WORDS = frozenset(word for words in PARTS for word in words)


def mark_failing_things(message: Message) -> None:
    """Mark what tells that a thing failed: neither the set nor the client did, and its number is no rep."""
    for found in _FAILED.find(message):
        if not message.taken[found.start] and _is_of_a_thing(message, found):
            message.take(found.start, found.end, "a thing")


def _is_of_a_thing(message: Message, found: Found) -> bool:
    at = found.start - 1
    while message.text(at) in _ADVERBS:
        at -= 1
    if not (at >= 0 and message.tokens[at].kind == WORD) or message.taken[at]:
        return False
    thing = message.text(at)
    if thing in _OF_THE_LIFTER or thing in _PLAIN_WORDS or thing in _PART_WORDS:
        return False
    if stem_of(thing) in vocabulary() and thing not in GEAR:
        return False
    before = message.tokens[at - 1] if at else None
    return before is None or before.kind not in {WORD, NUMBER} or before.text in _BEFORE_A_THING
