"""What was out of the ordinary of late: sleep, illness, food and strain, told from a joint's trouble."""

from domain.reading.away import speaks_of_illness
from domain.reading.body_denials import is_denied
from domain.reading.body_parts import find_parts
from domain.reading.body_words import ACHE, HURT
from domain.reading.message import Message, message_of
from domain.reading.patterns import Pattern
from domain.reading.tokens import LONGEST
from domain.reading.words import words_of

_OF_LATE = Pattern(
    """{word}
    (at|of|from|with) work|uni|school|home
    work (is|was|has|had|got|been)
    (bad|rough|short|broken|late|no) night|nights
    (under|off) (the|my) weather|food""",
    word=words_of(
        """sleep sleeping sleepless slept asleep insomnia nap naps tired tiring exhausted exhausting knackered
        shattered wrecked drained jetlag jetlagged awake
        ate eat eats eating eaten meal meals appetite diet dieting fasting fasted hungry calories skipped
        stress stressed stressful busy hectic overtime shift shifts nightshift deadline deadlines exam exams
        travel travels travelled traveled travelling traveling moving moved newborn baby holiday holidays
        wedding party hungover hangover drank drinking ill sick unwell flu virus fever"""
    ),
)
_OF_A_JOINT = (
    HURT
    | ACHE
    | words_of(
        """joint joints pain pains painful sore stiff clicks clicking pops popping pinch pinches
        pinching twinge twinges niggle niggles odd weird funny numb tingling swollen"""
    )
)
_OF_TROUBLE = _OF_A_JOINT | words_of("trouble troubles problem problems issue issues")


def speaks_of_late(text: str) -> bool:
    """Return whether the words tell of sleep, illness, food or strain, and of no joint."""
    message = message_of(text[:LONGEST])
    if not message.tokens or False in _denials(message, _OF_A_JOINT) or find_parts(message, ()):
        return False
    return _OF_LATE.is_in(message) or speaks_of_illness(text)


def denies_trouble(text: str) -> bool:
    """Return whether the words deny that something hurts, and tell of nothing that does."""
    return _denials(message_of(text[:LONGEST]), _OF_TROUBLE) == {True}


def _denials(message: Message, words: frozenset[str]) -> set[bool]:
    """Return of each of `words` that is said whether it is denied."""
    return {
        is_denied(message, at, message.clause_span(at)[0])
        for at, token in enumerate(message.tokens)
        if token.text in words
    }
