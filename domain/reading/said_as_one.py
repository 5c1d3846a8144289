"""Several ways to say the same, taken as one: "did not" as "didn't", "this evening" and "tonight" as "today".

A rule written for one of them then holds for all.
"""

from collections.abc import Iterator
from decimal import Decimal

from domain.reading.by_neighbours import with_neighbours_heard
from domain.reading.number_words import UNITS
from domain.reading.tokens import NUMBER, SIGN, WORD, Token
from domain.reading.words import words_of

_NOT = "not"
_WITH_NOT = {
    **{word: f"{word}nt" for word in words_of("did do does is was are could would should have has had")},
    "can": "cant",
    "will": "wont",
}
"""What stands before "not", and both as one; "were not" can be "we're not" as well."""
_POINT = words_of("point dot")
_OF_TODAY = words_of("morning afternoon arvo evening eve")
_WAY = words_of("way direction")
"""What "14 each way" has for each side."""
_ONE_WORD = {
    **dict.fromkeys(("tonight", "tonite"), "today"),
    **dict.fromkeys(("tonights", "tonites"), "todays"),
    "cannot": "cant",
    "aint": "not",
    "em": "them",
    "&": "and",
}
_HAVE_DONE = [[have, done] for have in ("have", "ive") for done in ("done", "do")]
_COULD = words_of("could would should might must may to")
_GOT = words_of("got did made managed hit")
_SEEN_IN = (
    _OF_TODAY
    | {f"{word}s" for word in _OF_TODAY}
    | _ONE_WORD.keys()
    | _POINT
    | _WAY
    | _GOT
    | {_NOT, ";", "\n", "pain", "have", "ive"}
)


def with_ways_as_one(tokens: list[Token]) -> list[Token]:
    """Return the tokens, what can be said in several ways said in one of them; each stands where it did."""
    tokens = with_neighbours_heard(tokens)
    if _SEEN_IN.isdisjoint([token.text for token in tokens]):
        return tokens
    kept: list[Token] = []
    for token in _in_rows(tokens):
        text = token.text
        before = kept[-1] if kept else None
        if before is None:
            kept.append(_in_one_word(token))
        elif text == _NOT and before.text in _WITH_NOT:
            kept[-1] = before._replace(text=_WITH_NOT[before.text], end=token.end)
        elif before.text == "this" and text.removesuffix("s") in _OF_TODAY:
            said = "today" if text in _OF_TODAY else "todays"
            kept[-1] = before._replace(text=said, end=token.end)
        elif token.kind == NUMBER and _is_what_a_load_got(kept):
            kept[-2:] = [before._replace(text="for"), token]
        elif token.kind == NUMBER and _is_what_was_done(kept):
            kept[-2:] = [kept[-2]._replace(text="did", end=before.end), token]
        elif before.text == "pain" and text == "free":
            kept[-1] = before._replace(text="painless", end=token.end)
        elif before.text == "each" and text in _WAY:
            kept.append(token._replace(text="side"))
        elif (whole := _with_its_half(kept, token)) is not None:
            kept[-2:] = [whole]
        else:
            kept.append(_in_one_word(token))
    return kept


_BREAKS = frozenset({";", "\n"})
_ENDS_A_SET = words_of("reps rep kg kgs lb lbs s sec secs seconds ) sets")
_BEGINS_A_SET = words_of("right left r l then and")
_OF_A_LIST = frozenset({")", ".", ":"})
_HEADS = words_of("sets warm warmup warmups ramp working work real")
"""Words that head sets on lines of their own: "2 sets:", "warm up:"."""


def _in_rows(tokens: list[Token]) -> Iterator[Token]:
    """Yield the tokens with commas for the semicolons and new lines that only part the sets of one exercise.

    A semicolon is none where commas part what is within a set. A new line only is before a side, or below a
    head: elsewhere each line can be an exercise.
    """
    said = [token.text for token in tokens]
    headed = not _HEADS.isdisjoint(said)
    with_commas = "," in said
    for at, token in enumerate(tokens):
        if token.text not in _BREAKS or not 0 < at < len(tokens) - 1:
            yield token
        elif token.text == ";" or not (headed and said[at - 1] == ":"):
            goes_on = _goes_on(tokens, at, headed=headed or (token.text == ";" and not with_commas))
            yield token._replace(kind=SIGN, text=",") if goes_on else token


def _is_what_was_done(tokens: list[Token]) -> bool:
    """Return whether tokens end in "I have done", and not in what could have been."""
    said = [token.text for token in tokens[-3:]]
    return said[-2:] in _HAVE_DONE and said[0] not in _COULD


def _is_what_a_load_got(tokens: list[Token]) -> bool:
    """Return whether tokens end in a load and "and got": "then 25 and got 9"."""
    said = [token.text for token in tokens[-5:]]
    if len(tokens) < 3 or said[-2] not in _AND or said[-1] not in _GOT:
        return False
    at = -4 if said[-3] in _MASS and len(said) > 3 else -3
    return tokens[at].kind == NUMBER and (len(said) < 1 - at or said[at - 1] not in _TIED)


_AND = words_of("and n")
_MASS = words_of("kg kgs kilo kilos lb lbs pound pounds")
_TIED = words_of(
    "x for * / : , got did made and dropped down up added took less more minus plus + - by increased went"
)


def _goes_on(tokens: list[Token], at: int, *, headed: bool) -> bool:
    """Return whether what follows a break goes on with the sets before it, a number only where `headed`."""
    before, after = tokens[at - 1], tokens[at + 1]
    if before.kind != NUMBER and before.text not in _ENDS_A_SET:
        return False
    then = tokens[at + 2].text if at + 2 < len(tokens) else ""
    return after.text in _BEGINS_A_SET or (headed and after.kind == NUMBER and then not in _OF_A_LIST)


def _in_one_word(token: Token) -> Token:
    word = _ONE_WORD.get(token.text)
    return token if word is None else token._replace(kind=WORD if word.isalpha() else token.kind, text=word)


def _with_its_half(kept: list[Token], token: Token) -> Token | None:
    """Return a number in digits with what is said after "point", "82 point 5"; None where there is none."""
    if len(kept) < 2 or kept[-1].text not in _POINT or kept[-2].kind != NUMBER:
        return None
    digits = token.text if token.kind == NUMBER else str(UNITS.get(token.text, ""))
    whole = kept[-2].value
    if whole is None or whole % 1 or digits not in _DECIMALS:
        return None
    value = Decimal(f"{whole}.{digits}")
    return kept[-2]._replace(text=str(value), value=value, end=token.end)


_DECIMALS = frozenset({*map(str, range(1, 10)), "25", "75", "50"})
