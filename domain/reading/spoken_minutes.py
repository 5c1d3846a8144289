"""Minutes in words: "half a minute", and whether "a minute" is a time that something took."""

from domain.reading.number_words import text_at
from domain.reading.tokens import Token
from domain.reading.words import words_of

ARTICLES = frozenset({"a", "an"})


def half_a_minute(tokens: list[Token], at: int) -> int:
    """Return how many tokens stand before the minute of "half a minute", 0 where it is something else."""
    step = 2 if text_at(tokens, at + 1) in ARTICLES else 1
    return step if text_at(tokens, at + step) in {"minute", "min"} else 0


def is_time_spent(tokens: list[Token], at: int) -> bool:
    """Return whether "a minute" tells how long something went on, and not when it is: "in a minute"."""
    return text_at(tokens, at - 1) not in _POINTS_IN_TIME and text_at(tokens, at + 2) not in _FROM_NOW


_POINTS_IN_TIME = words_of(
    "in wait give just me got per took take within have hang under over almost nearly about around"
)
_FROM_NOW = words_of("ago later late before after to please")
