"""Several ways to say the same, taken as one: "did not" as "didn't", "this evening" and "tonight" as "today".

A rule written for one of them then holds for all.
"""

from collections.abc import Iterator
from decimal import Decimal

from domain.reading.number_words import TENS, UNITS
from domain.reading.tokens import NUMBER, SIGN, WORD, Token
from domain.reading.words import ORDINALS, words_of

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
_CHANGES = words_of("change turn turned make made switch convert put split")
_HELP = words_of("assist assistance help band support")
_GOT = words_of("got did made managed hit")
_SEEN_IN = (
    _OF_TODAY
    | {f"{word}s" for word in _OF_TODAY}
    | _ONE_WORD.keys()
    | _POINT
    | _WAY
    | _GOT
    | {
        "r",
        "l",
        "1",
        ">",
        "rep",
        "strength",
        "power",
        "force",
        "pressed",
        "pressing",
        "presses",
        "fist",
        "paw",
        "mitt",
        "one",
        "stop",
        "mark",
    }
    | {_NOT, ";", "\n", "pain", "have", "ive", "after", "into", "set"}
    | _HELP
)


def with_ways_as_one(tokens: list[Token]) -> list[Token]:
    """Return the tokens, what can be said in several ways said in one of them; each stands where it did."""
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
    beyond = 0
    for at, token in enumerate(tokens):
        if at < beyond:
            continue
        if at > 0 and tuple(said[at : at + 2]) in _DICTATED and said[at - 1 : at] not in _ARTICLES:
            beyond = at + 2
            yield token._replace(kind=SIGN, text=_DICTATED[said[at], said[at + 1]], end=tokens[at + 1].end)
            continue
        if token.text == "r" and 0 < at < len(tokens) - 1 and _stands_for_are(tokens, at):
            yield token._replace(text="are")
            continue
        if (end := _end_of_weakness(said, at)) is not None:
            beyond = end
            yield token._replace(text="weak", end=tokens[end - 1].end)
        elif token.text in _PLACES and said[at - 1 : at] == ["set"] and said[at + 1 : at + 2] in _TELLS:
            value = UNITS[token.text]
            yield token._replace(kind=NUMBER, text=str(value), value=Decimal(value), spoken=True)
        elif token.text in _SIDES and said[at + 1 : at + 2] in _LIMBS:
            yield token._replace(text=_SIDES[token.text])
        elif token.text == "one" and said[at - 1 : at] in _NTH and said[at + 1 : at + 2] in _TENS:
            # "Second one sixty for nine"
            yield token._replace(text="set")
        elif token.text in _PRESSED and said[at - 1 : at] in _KINDS_OF_PRESS:
            yield token._replace(text="press")
        elif token.text in _FISTS and said[at - 1 : at] in _EVERY:
            yield token._replace(text="hand")
        elif (
            token.text == "1"
            and at > 0
            and said[at - 1] in _BEFORE_ONE
            and said[at + 1 : at + 2] not in _TIES
        ):
            # "The last 1 to failure"
            yield token._replace(kind=WORD, text="one", value=None)
        elif token.text == "-" and said[at + 1 : at + 2] == [">"] and _leads_to_a_word(tokens, at):
            # "Today's workout -> Saturday"
            yield token._replace(kind=WORD, text="to")
        elif token.text == ">" and said[at - 1 : at] == ["-"] and _leads_to_a_word(tokens, at - 1):
            continue
        elif token.text in ORDINALS and said[at + 1 : at + 2] == ["rep"] and _is_reached(said, at):
            # "Squeezed out a tenth rep"
            value = ORDINALS[token.text]
            yield token._replace(kind=NUMBER, text=str(value), value=Decimal(value), spoken=True)
        elif said[at - 1 : at + 1] == ["after", "that"] and _is_then(tokens, at - 1):
            continue
        elif token.text in _CRIES and _is_behind_no_help(said, at):
            yield token._replace(text=",")
        elif token.text == "after" and _is_then(tokens, at):
            yield token._replace(text="then")
        elif token.text == "into" and _is_between_numbers(tokens, at) and _CHANGES.isdisjoint(said):
            # "67.5 into 7" is said for "67.5 times 7".
            yield token._replace(text="x")
        elif token.text not in _BREAKS or not 0 < at < len(tokens) - 1:
            yield token
        elif token.text == ";" or not (headed and said[at - 1] == ":"):
            goes_on = _goes_on(tokens, at, headed=headed or (token.text == ";" and not with_commas))
            yield token._replace(kind=SIGN, text=",") if goes_on else token


_STRENGTH = words_of("strength power force")
_NONE_OF = words_of("no without zero lost losing")


def _end_of_weakness(said: list[str], at: int) -> int | None:
    """Return where "no strength", or "without any force", ends that begins at a token; None where none does.

    "No strength left for dips" leaves out the dips.
    """
    end = at + 1 + (said[at + 1 : at + 2] in _ANY_OF)
    is_it = said[at] in _NONE_OF and end < len(said) and said[end] in _STRENGTH
    return end + 1 if is_it and said[end + 1 : end + 2] not in _FOR_SOMETHING else None


_ANY_OF = [[word] for word in ("any", "all", "the", "my", "much", "real")]
_FOR_SOMETHING = [["left"], ["for"], ["to"]]
_SIDES = {"r": "right", "l": "left"}
_LIMBS = [[limb] for limb in ("arm", "leg", "side", "hand", "foot", "arms", "legs")]
_ARTICLES = [["a"], ["an"], ["the"]]
_DICTATED = {("full", "stop"): ".", ("question", "mark"): "?", ("exclamation", "mark"): "!"}
"""Signs that are said where speech is written down."""


def _stands_for_are(tokens: list[Token], at: int) -> bool:
    """Return whether an "r" between words is the verb: "legs r cooked"."""
    before, after = tokens[at - 1], tokens[at + 1]
    return (
        before.kind == after.kind == WORD and [after.text] not in _LIMBS and before.text.endswith(("s", "e"))
    )


_NTH = [[word] for word in ("first", "second", "third", "fourth", "last", "next", "other")]
_TENS = [[word] for word in TENS]
_PRESSED = words_of("pressed pressing")
_KINDS_OF_PRESS = [[kind] for kind in ("overhead", "bench", "leg", "chest", "shoulder", "floor", "incline")]
_FISTS = words_of("fist paw mitt")
_EVERY = [["each"], ["every"], ["either"], ["per"]]
_BEFORE_ONE = words_of("last this that next other which")
_TIES = [[tie] for tie in ("x", "for", "kg", "lb", "rep", "reps", ".", "/", "*", "@")]


def _leads_to_a_word(tokens: list[Token], at: int) -> bool:
    return 0 < at < len(tokens) - 2 and WORD in {tokens[at + 2].kind} and tokens[at - 1].kind == WORD


def _is_reached(said: list[str], at: int) -> bool:
    """Return whether "a tenth rep" was done: behind "got a", "squeezed out a"."""
    is_one = said[at - 1 : at] in (["a"], ["an"], ["the"])
    return is_one and not _REACHED.isdisjoint(said[max(0, at - 3) : at - 1])


_REACHED = words_of("got out managed hit did made reached had")
_PLACES = words_of("one two three four")
_TELLS = [[word] for word in ("to", "was", "should", "is", ":")]
"""What follows on "set one" where it is the first set."""


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
_CRIES = frozenset({"!", "."})


def _is_behind_no_help(said: list[str], at: int) -> bool:
    """Return whether a sign stands behind "no assist", of which the reps may follow: "no help!! got 1"."""
    while at > 0 and said[at] in _CRIES:
        at -= 1
    return said[at] in _HELP and said[at - 1 : at] in (["no"], ["without"], ["zero"])


def _is_then(tokens: list[Token], at: int) -> bool:
    """Return whether an "after" tells that a number comes next: "10 and after 9", "10, after that 9"."""
    if at == 0 or tokens[at - 1].text not in {",", "and"}:
        return False
    following = [token.text for token in tokens[at + 1 : at + 2]]
    if following == ["that"]:
        return len(tokens) > at + 2 and tokens[at + 2].kind == NUMBER
    ends = len(tokens) == at + 2 or (len(tokens) > at + 2 and tokens[at + 2].text in _ENDS)
    return len(tokens) > at + 1 and tokens[at + 1].kind == NUMBER and ends


_ENDS = frozenset({".", ",", "!"})


def _is_between_numbers(tokens: list[Token], at: int) -> bool:
    return 0 < at < len(tokens) - 1 and {tokens[at - 1].kind, tokens[at + 1].kind} == {NUMBER}


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
