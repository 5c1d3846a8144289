"""What a letter right behind a number stands for: "80k", which can be a way, "5s", which can be dumbbells."""

from decimal import Decimal

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import NEGATIVE_WORDS, words_of

_BESIDE_KILO = frozenset({"x", "for", "@", "*", "by", "times"})
"""What shows that "80k" is a load."""
_OF_A_WAY = words_of(
    """ran run runs running jog jogged jogging walk walked walking cycled cycling cycle bike biked ride rode
    rower rowed rowing erg swim swam swimming ski skied skating steps step race raced parkrun marathon mile
    miles km treadmill tempo warm hike hiked sprint sprints cardio pace followers views euro euros dollars
    quid salary words £ $ €"""
)
"""Words beside which "10k" is how far, or how much money."""
_LONGEST_ROW = 10
_SLOWLY = Pattern("# s (each|per rep|every rep|down|a rep|lowering)")
_LOWERED = NEGATIVE_WORDS | words_of("lower lowered lowering slow slowly")


def is_in_kilos(message: Message, at: int, value: Decimal) -> bool:
    """Return whether "k" right behind the number at a token stands for kilograms."""
    if message.text(at + 2) in _BESIDE_KILO or message.text(at - 1) in {"@", "at"}:
        return True
    said = message.texts(*message.clause_span(at))
    return _OF_A_WAY.isdisjoint(said) and not (value <= _LONGEST_ROW and "row" in said)


def is_how_slowly(message: Message, at: int) -> bool:
    """Return whether "5s" is how long each rep is lowered for: "5 negatives, about 5s each"."""
    if _SLOWLY.at(message, at) is None:
        return False
    return not _LOWERED.isdisjoint(message.texts(*message.sentence_span(at)))
