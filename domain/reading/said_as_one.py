"""Several ways to say the same, taken as one: "did not" as "didn't", "this evening" and "tonight" as "today".

A rule written for one of them then holds for all.
"""

from domain.reading.tokens import Token
from domain.reading.words import words_of

_NOT = "not"
_WITH_NOT = {
    **{word: f"{word}nt" for word in words_of("did do does is was are were could would should have has had")},
    "can": "cant",
    "will": "wont",
}
"""What stands before "not", and both as one."""
_OF_TODAY = words_of("morning afternoon arvo evening eve")
_ONE_WORD = {
    **dict.fromkeys(("tonight", "tonite"), "today"),
    **dict.fromkeys(("tonights", "tonites"), "todays"),
    "cannot": "cant",
}
_SEEN_IN = _OF_TODAY | {f"{word}s" for word in _OF_TODAY} | _ONE_WORD.keys() | {_NOT}


def with_ways_as_one(tokens: list[Token]) -> list[Token]:
    """Return the tokens, what can be said in several ways said in one of them; each stands where it did."""
    if _SEEN_IN.isdisjoint([token.text for token in tokens]):
        return tokens
    kept: list[Token] = []
    for token in tokens:
        text = token.text
        before = kept[-1] if kept else None
        if before is not None and text == _NOT and before.text in _WITH_NOT:
            kept[-1] = before._replace(text=_WITH_NOT[before.text], end=token.end)
        elif before is not None and before.text == "this" and text.removesuffix("s") in _OF_TODAY:
            said = "today" if text in _OF_TODAY else "todays"
            kept[-1] = before._replace(text=said, end=token.end)
        elif text in _ONE_WORD:
            kept.append(token._replace(text=_ONE_WORD[text]))
        else:
            kept.append(token)
    return kept
