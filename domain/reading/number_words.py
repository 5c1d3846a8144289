"""The words that numbers are said with, and where two numbers follow on each other: "eighty six reps"."""

from domain.reading.tokens import NUMBER, Token
from domain.reading.words import words_of

UNITS = {
    "zero": 0,
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
}
TEENS = {
    "ten": 10,
    "eleven": 11,
    "twelve": 12,
    "thirteen": 13,
    "fourteen": 14,
    "fifteen": 15,
    "sixteen": 16,
    "seventeen": 17,
    "eighteen": 18,
    "nineteen": 19,
}
TENS = {
    "twenty": 20,
    "thirty": 30,
    "forty": 40,
    "fourty": 40,
    "fifty": 50,
    "sixty": 60,
    "seventy": 70,
    "eighty": 80,
    "ninety": 90,
}
PLURALS = {
    **{word + "s": value for word, value in {**UNITS, **TEENS}.items() if value >= 4 and word != "six"},
    **{word[:-1] + "ies": value for word, value in TENS.items()},
    "sixes": 6,
}
"""Dumbbells by their weight: "a pair of thirties"."""
UNITS_IN_PLURAL = {word: value for word, value in PLURALS.items() if value < 10}
"""The end of such a weight: "twenty sixes"."""

BEGIN = frozenset({*UNITS, *TEENS, *TENS, *PLURALS, "hundred", "dozen"})
REPS = words_of("rep reps repetition repetitions")
_LEAST_LOAD_BESIDE_REPS = 50
"""Of so many reps nobody tells, so that "eighty six reps" are six."""
_REPS_COME_AFTER = words_of("for x times kg kgs kilo kilos lb lbs pound pounds by of to")
_WITH_THE_BODY = words_of(
    "push pushups pressups situps sit crunches bodyweight bw body burpees jumps skips air"
)
"""Words of what is done with the body alone, so often too."""


def is_how_often(tokens: list[Token], at: int) -> bool:
    """Return whether "times" tells how often, and does not stand between a load and its reps."""
    return text_at(tokens, at) == "times" and not (
        text_at(tokens, at + 1) in BEGIN or (at + 1 < len(tokens) and tokens[at + 1].kind == NUMBER)
    )


def is_load_and_reps(tokens: list[Token], at: int) -> bool:
    """Return whether tens and a unit before "reps" are a load and its reps: "eighty six reps", "one fifty
    nine reps". Nobody does so many reps, unless of what is done with the body alone.
    """
    before = text_at(tokens, at - 1)
    if before in UNITS or before in {"hundred", "and"}:
        return True
    return (
        TENS[tokens[at].text] >= _LEAST_LOAD_BESIDE_REPS
        and before not in _REPS_COME_AFTER
        and (at == 0 or tokens[at - 1].kind != NUMBER)
        and _WITH_THE_BODY.isdisjoint([t.text for t in tokens])
    )


def text_at(tokens: list[Token], at: int) -> str:
    """Return the text of a token, nothing outside the message."""
    return tokens[at].text if 0 <= at < len(tokens) else ""
