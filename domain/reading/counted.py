"""What the words beside a lone number tell of it: that it counts something else, or that it is a result.

A word that nobody knows right after a number is what it counts ("15 people"), unless it is one that cannot be
counted: a small word, an adverb, a verb that goes on with the tale.
"""

from domain.reading.english import is_english
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.tokens import WORD
from domain.reading.words import (
    AND_WORDS,
    AT_WORDS,
    FILLERS,
    FOR_WORDS,
    LOAD_NOUNS,
    PERSON_WORDS,
    REP_ADJECTIVES,
    RESULT_VERBS,
    THEN_WORDS,
    TIMES_SIGNS,
    words_of,
)

_JOINING = words_of(
    """about after against although as at because before but by cause cos cuz despite during even except from
    if in instead like no nor not off on or out over past per since than though through till til to
    towards under unlike until up upon when where whereas which while who with within without"""
)
"""Words that go on after a number and are no thing that is counted."""
_NEVER_COUNTED = words_of(
    """again all also always anyway anyways barely best both bye cant cheers cool couldnt dead didnt done
    dont down each easily easy ended enough ever exhausted felt final finally finished first flat flew
    fourth fresh good great happy hard he here honestly how i im innit is ish it its last left less
    max me meh moved my never new next now ok okay once one only our pb pleased pr proper really right
    same second set she smooth solid somehow still struggled sweaty that the their then there these
    they third this those tired today too total tough unfortunately was we well went were wow
    yesterday you your"""
)
_NO_THING = (
    _JOINING
    | _NEVER_COUNTED
    | AND_WORDS
    | AT_WORDS
    | FILLERS
    | FOR_WORDS
    | LOAD_NOUNS
    | REP_ADJECTIVES
    | RESULT_VERBS
    | THEN_WORDS
    | TIMES_SIGNS
    | words_of("be been were ended came gave straight plus machine weight weighed using loaded")
)


def is_counted(message: Message, at: int) -> bool:
    """Return whether the word at a place, right after a number, is what it counts: "15 people"."""
    if message.text(at) == "more":
        at += 1
    token = message.tokens[at] if at < len(message.tokens) else None
    return (
        token is not None
        and token.kind == WORD
        and token.text not in _NO_THING
        and not (token.text in PERSON_WORDS and _is_one(token.text) and message.value(at - 1) != 1)
        and not token.text.endswith(("ly", "ing"))
        and not message.taken[at]
        and not (message.text(at - 2) in _LEADS_TO_REPS and is_singular(token.text))
    )


_LEADS_TO_REPS = words_of("x * for")
_COUNTED_IN_THE_SINGULAR = words_of(
    """people men women children feet teeth mice sheep fish percent km cm mm ml bpm mph kph quid euro dollar
    buck pound year month week day hour minute mile metre meter litre liter gram degree thousand million
    hundred grand pack min sec hr am pm yr wk"""
)


_SHORT = 4
"""The list of English has no shorter words."""


def is_singular(word: str) -> bool:
    """Return whether a word is English, and one of a thing at most, so that no eight of it are counted."""
    return (
        not word.endswith("s")
        and word not in _COUNTED_IN_THE_SINGULAR
        and (len(word) < _SHORT or is_english(word))
    )


def _is_one(person: str) -> bool:
    """Return whether a word is of one person: of "8 roommate filmed it" nobody is counted."""
    return not person.endswith("s") and person not in {"kid", "people"}


BEGINS_ANEW = words_of("i im ive id ill he she they we it its")
"""Words that begin to tell something else: "8, 8, 6 im a puddle"."""
_ENDS = (
    AND_WORDS
    | THEN_WORDS
    | words_of(
        """about after again all also although anyway anyways as at barely because before but bye cause
        clean coach cos cuz despite done each easily easy felt fifth final finally first for fourth from
        good great haha hard i if innit instead just k kg last lol max more new no not now ok okay on
        only or out pb per phew please pr reps sadly second set since so solid somehow still than that
        the third this tho though til till today too total tough unfortunately unless until when where
        which while who with without wow x yesterday"""
    )
)


def ends_here(message: Message, at: int) -> bool:
    """Return whether nothing that can be counted follows: the clause ends, or goes on with a small word."""
    if at >= len(message.tokens):
        return True
    token = message.tokens[at]
    if token.text == "more" and is_counted(message, at):
        return False
    if _OF_SO_MANY.at(message, at) is not None:
        return True
    if token.text == "to" and message.value(at + 1) is None:
        return True
    if token.text in BEGINS_ANEW or (
        token.text in PERSON_WORDS and _is_one(token.text) and message.value(at - 1) != 1
    ):
        return True
    says_when = message.taken[at] == "a day"
    return token.kind != WORD or says_when or token.text in _ENDS or token.text.endswith(("ly", "ing"))


_OF_SO_MANY = Pattern("[out] of [the|my|planned|target|possible]* #")
"""What follows on what was reached of what was planned: "7 of 8"."""
_STOPPED = Pattern(
    """
    {stopped} [it|there|a day]* (at|after|on|with) [about|around|my|the|a|rep|number|just|only]* >(#)
    """,
    stopped="stopped|quit|called it|gave (up|in)|ended|ended up|tapped out|maxed out|topped out|made it",
)


def has_stopped_at(message: Message, at: int) -> bool:
    """Return whether what stands before a number tells that it was the last: "stopped at 14"."""
    start, _ = message.clause_span(at)
    return any(found.end == at for found in _STOPPED.find(message, start, at + 1))


_MOVED_TO = Pattern(
    """
    {moved} {what} to [a|the|just|only]* >(#)
    (settled|opted|stuck|settling) (for|with|at) [a|the|just|only]* >(#)
    {tried} [a|the|just|only|with|at]* >(#)
    (i|we|ive) [only|just|actually|then|still]* {took} [a|the|just|only|about]* >(#)
    """,
    tried="tried|attempted|unracked|loaded|opened with|walked out",
    took="used|loaded|took|chose|picked|grabbed|lifted|pressed|pushed|pulled|had",
    moved="dropped|drop|went|go|moved|back|up|down|lowered|reduced|switched|changed|bumped|raised|upped|increased",
    what="[it|the weight|the load|weight|the (help|assistance|support|assist)|back|down|up|over|again]*",
)
_DOERS = words_of("i we ive")
_LED = Pattern("(with|w|using|at|@|for|on|holding) ['/'] [the|my|a|two|pair|of|some|both]* >(#)")


def has_moved_to(message: Message, at: int) -> bool:
    """Return whether a number is told to be the next load: "dropped to 135"."""
    start, _ = message.clause_span(at)
    return any(
        found.end == at
        and (message.text(found.start) not in _DOERS or not is_counted(message, at + 1))
        and not (message.value(found.start - 2) is not None and is_counted(message, found.start - 1))
        for found in _MOVED_TO.find(message, start, at + 1)
    )


def is_led(message: Message, at: int) -> bool:
    """Return whether a word before a number leads to it: "with the 36s", "for 50s"."""
    return any(found.end == at for found in _LED.find(message, max(0, at - _MOST_LEAD), at + 1))


_MOST_LEAD = 6
