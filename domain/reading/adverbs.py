"""Adverbs that say nothing of what was done, left out before the words are looked at: "I honestly did".

The words around them are then beside each other, as the turns of phrase have them.
"""

from domain.reading.tokens import WORD, Token
from domain.reading.words import words_of

_NEVER_MATTER = words_of(
    """honestly basically literally frankly obviously genuinely truly luckily thankfully surprisingly
    legitimately tbh tbf ngl imho"""
)
_BEFORE_A_VERB = words_of(
    "really just also finally somehow kinda sorta totally definitely eventually actually"
)
"""What is left out only between who does something and the verb."""
_WHO = words_of("i we it that this he she they what how why which who where when could can did")
_VERBS = words_of(
    """am are can cant could couldnt did do does feel feels felt forgot get gets got had has have hit hurt
    hurts is made managed missed move moved need pulled pushed skip skipped skipping tweaked
    want was went were"""
)


def without_adverbs(tokens: list[Token]) -> list[Token]:
    """Leave out adverbs that say nothing, unless there is nothing else."""
    said = [token.text for token in tokens]
    if _ANY.isdisjoint(said):
        return tokens
    kept = [
        token
        for at, token in enumerate(tokens)
        if not (token.kind == WORD and (token.text in _NEVER_MATTER or _stands_before_a_verb(said, at)))
    ]
    return kept or tokens


_ANY = _NEVER_MATTER | _BEFORE_A_VERB


def _stands_before_a_verb(said: list[str], at: int) -> bool:
    return (
        said[at] in _BEFORE_A_VERB
        and at > 0
        and said[at - 1] in _WHO
        and at + 1 < len(said)
        and said[at + 1] in _VERBS
    )
