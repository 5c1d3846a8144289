"""Whether a word of pain tells of none: denied, another's, a story's, long past, over, or thought of."""

from domain.reading.body_phrases import (
    ANSWERED_NO,
    CONDITIONAL,
    HAD_NONE,
    IF_MY,
    LONG_PAST,
    MAY_I,
    NO_TO_IT,
    OVER_NOW,
    SOMEBODY_ELSE,
    STILL,
    STORY,
)
from domain.reading.body_spans import spans
from domain.reading.body_words import ACHE, HURT, NEGATIONS, PART_FIRST, UNTIL
from domain.reading.danger_discounts import (
    ASKS_IN_GENERAL,
    IN_GENERAL,
    ME,
    NOT_OF_ME,
    READ_OF,
    SOMEBODY_DOES,
    SPEAKS_OF_ME,
)
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.tokens import SIGN
from domain.reading.words import words_of

_FREE = words_of("free killers killer relief meds")
DENIED_WITH = (
    HURT
    | ACHE
    | PART_FIRST
    | words_of(
        """
        a an the any much more most some single sort kind sign signs hint trace bit of in on at
        with from or and nor to for , / left right both my me is was were are be been being feel
        feels feeling felt have had has having get gets getting got give gives gave giving cause
        causes caused experience experienced notice noticed report mention really actually even
        quite so too very that all anything anywhere longer further real actual serious major big
        bad new weird joint joints muscle muscles back no not did do does it this as like ever
        once since yesterday today now anymore still during after think thing things trouble
        troubles issue issues problem problems discomfort complaint complaints
        former old usual earlier previous recent"""
    )
)
"""Words that can stand between a denial and what hurts, or is felt, that is denied."""
_ANY = Pattern("any|pain|no")
_MINE = words_of("i my ive im me")
_BUT_MY = Pattern("but my")
_NO_LONGER_THIS = Pattern("no longer [so|that|really|as]* !({of_pain}) _", of_pain=DENIED_WITH)
"""What is no more, and no pain: "no longer scared of squats"."""
_OVER_REACH = 8
"""How many tokens before a pain it can stand that something is over."""


def is_not_told(message: Message, at: int) -> bool:
    """Return whether the pain of a word is denied, another's, long past, over, or only thought of."""
    first, last, start, _ = spans(message, at)
    return is_denied(message, at, start) or _is_not_now(message, at, first, last, start)


def is_denied(message: Message, at: int, start: int) -> bool:
    """Return whether a word is denied in its clause: no pain, did not hurt, pain free, pain: none."""
    if message.text(at + 1) in _FREE or is_answered_no(message, at + 1):
        return True
    for i in range(at - 1, max(start, at - 7) - 1, -1):
        text = message.text(i)
        if text in {"and", "but", "just", "only"} and i < at - 1 and message.text(i - 1) != "not":
            return False
        if text in NEGATIONS:
            if _is_of_something_else(message, i, at):
                return False
            if text == "without" and not {"cant", "couldnt"}.isdisjoint(message.texts(start, i)):
                return False
            return UNTIL.isdisjoint(message.texts(i, min(len(message.tokens), at + 5)))
    return False


def _is_of_something_else(message: Message, no: int, at: int) -> bool:
    """Return whether a denial ends before a pain is told of: "no curls today my elbow hurts"."""
    return not DENIED_WITH.issuperset(message.texts(no + 1, at))


def is_answered_no(message: Message, end: int) -> bool:
    """Return whether what ends before the token `end` is only asked after, and answered with no: "knee pain:
    none", "any pain? no", "asked about pain, I have none"."""
    if ANSWERED_NO.at(message, end) is not None:
        return True
    first, last = message.sentence_span(end - 1)
    asked = _ANY.at(message, first) is not None and "?" in message.texts(end, last + 1)
    return HAD_NONE.is_in(message, end, last) or (asked and NO_TO_IT.at(message, last) is not None)


def _is_not_now(message: Message, at: int, first: int, last: int, start: int) -> bool:
    """Return whether the pain is another's, a story's, long past, over, or only thought of."""
    if any(
        other.start <= at and _MINE.isdisjoint(message.texts(other.end, at))
        for other in SOMEBODY_ELSE.find(message, start, last)
    ):
        return True
    if not STORY.isdisjoint(message.texts(start, at)):
        return True
    if _is_of_somebody(message, at, start) or is_asked_in_general(message, at, first, last):
        return True
    if CONDITIONAL.is_in(message, start, at) and not (
        IF_MY.is_in(message, start, at) and MAY_I.is_in(message, first, at)
    ):
        return True
    if STILL.is_in(message, first, last):
        return False
    return _is_over(message, at, first, last) or is_long_past(message, at)


def _is_of_somebody(message: Message, at: int, first: int) -> bool:
    """Return whether a clause tells of somebody else from its beginning on, or of what was read."""
    opening = SOMEBODY_DOES.at(message, first, at) or READ_OF.first(message, first, at)
    return opening is not None and not SPEAKS_OF_ME.is_in(message, opening.end, at)


def is_asked_in_general(message: Message, at: int, first: int, last: int) -> bool:
    """Return whether a sentence, or its clause around `at`, asks what happens to people: "is it common to
    faint?"."""
    asks = any(
        ASKS_IN_GENERAL.at(message, start) is not None
        and not IN_GENERAL.isdisjoint(message.texts(start, last))
        for start in (first, message.clause_span(at)[0])
    )
    return asks and (ME.isdisjoint(message.words) or NOT_OF_ME.is_in(message))


def _is_over(message: Message, at: int, first: int, last: int) -> bool:
    """Return whether a pain is gone; in "all gone, but my knee" or "good now, knee hurts" it is not."""
    over = OVER_NOW.first(message, first, last)
    if over is None or over.start < at - _OVER_REACH or _NO_LONGER_THIS.at(message, over.start) is not None:
        return False
    if over.end <= at and not {",", "but"}.isdisjoint(message.texts(over.end, at)):
        return False
    return not _BUT_MY.is_in(message, min(at, over.end), max(at, over.start))


def is_long_past(message: Message, at: int) -> bool:
    """Return whether the clause of a token tells of long ago, "years ago", "in 2015", or one beside it that
    says nothing else: "Years ago, my knee hurt"."""
    start, end = message.clause_span(at)
    turns = next((found.start for found in _AND_NOW.find(message, start, at + 1)), None)
    if _long_ago(message, start if turns is None else turns, end):
        return True
    first, last = message.sentence_span(at)
    beside = [message.clause_span(place) for place in (start - 1, end) if first <= place < last]
    return any(
        (words := _long_ago(message, first, last)) > 0 and last - first - words <= _MOST_BESIDE
        for first, last in beside
    )


def _long_ago(message: Message, first: int, last: int) -> int:
    """Return how many words tell of long ago that begin within a clause; 0 where none do."""
    past = LONG_PAST.first(message, first, message.sentence_span(first)[1])
    if past is not None and past.start < last:
        return past.end - past.start
    is_year = any(
        message.text(at - 1) in {"in", "since", "from"} and 1900 < (message.value(at) or 0) < 2100
        for at in range(first, last)
    )
    return 2 if is_year else 0


def _words(message: Message, first: int, last: int) -> int:
    return sum(token.kind != SIGN for token in message.tokens[first:last])


_AND_NOW = Pattern("now|and (my|i|im|ive|got|feel|have)")
"""What turns from long ago to now, within a clause: "used to love squats and my knee hurts"."""
_MOST_BESIDE = 1
"""So many words has a clause beside those that only tell when."""
