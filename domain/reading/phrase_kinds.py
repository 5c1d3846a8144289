"""What short phrases about a set there are, and the shape of a rule that recognises one.

The rules themselves stand in the files beside this one, by what they speak of.
"""

from decimal import Decimal
from typing import Literal, NamedTuple

from domain.reading.patterns import Pattern
from domain.reading.words import words_of

MarkKind = Literal[
    "failure",
    "no failure",
    "failed on",
    "rir",
    "body",
    "lowering",
    "same all",
    "same load",
    "up",
    "down",
    "more reps",
    "fewer reps",
    "target",
    "target more",
    "target fewer",
    "done",
    "unknown load",
    "unknown reps",
    "again",
    "same again",
    "zero",
    "all kg",
    "all lb",
    "unit unknown",
    "change",
    "each hand",
    "pin",
    "every set",
    "no set",
]


class Rule(NamedTuple):
    """Recognises a phrase by `pattern`, and says where the same words mean something else.

    The pattern names its number `n`, and the unit of it `u`; a number named `rpe` counts down from ten, and
    one named `fraction` is meant only if it is no whole number.
    """

    kind: MarkKind
    pattern: Pattern
    not_after: frozenset[str] = frozenset()
    not_before: frozenset[str] = frozenset()
    goes_on: frozenset[str] | None = None
    """Words of which one must follow a number without a unit, if a word follows at all."""
    unless: frozenset[str] = frozenset()
    """Words that must not be said anywhere in the message."""
    within: tuple[int, int] | None = None
    """From where to where its number can go."""
    whole: bool = False
    """Whether its number must be a whole one."""
    beside: bool = False
    """Whether its number is one beside the set's own, before which no "x" or "for" stands."""
    after_set: bool = False
    """Whether a load with its reps must stand right before."""
    otherwise: Decimal | None = None
    """Its number where none is said."""


UNIT = words_of("kg kgs kilo kilos lb lbs pound pounds")
