"""Number words into numbers, and halves that stand beside a number.

"eighty two and a half", "one hundred and five", "one twenty", "two seventy five", "one oh five", "a dozen",
"seventy two point five" become one number each. What a number is a number of is not decided here.
"""

from decimal import Decimal

from domain.reading.tokens import NUMBER, WORD, Token
from domain.reading.words import words_of

_UNITS = {
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
_TEENS = {
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
_TENS = {
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
_PLURALS = {
    **{word + "s": value for word, value in {**_UNITS, **_TEENS}.items() if value >= 4 and word != "six"},
    **{word[:-1] + "ies": value for word, value in _TENS.items()},
    "sixes": 6,
}
"""Dumbbells by their weight: "a pair of thirties"."""
_UNITS_IN_PLURAL = {word: value for word, value in _PLURALS.items() if value < 10}
"""The end of such a weight: "twenty sixes"."""

_DECIMALS = frozenset({*map(str, range(10)), "25", "75"})
"""What is said after "point": one digit, or a quarter of a plate."""

_ORDINALS = {
    word: number
    for number, word in enumerate(
        ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth"), 1
    )
}
"""The end of a day of the month: "the twenty eighth"."""
_LAST_OF_MONTH = 31
_DAY_COMES_AFTER = words_of("the of till until from back")
_TIMES = {"twice": 2, "thrice": 3}
_FEW_REPS = {"single": 1, "double": 2, "triple": 3}
_SETS_OF_FEW = {f"{word}s": reps for word, reps in _FEW_REPS.items()}
_MOST_SETS_OF_FEW = 10
_LEAST_LOAD = 20
_BEGIN = frozenset({*_UNITS, *_TEENS, *_TENS, *_PLURALS, "hundred", "dozen"})
_ONE_COUNTS_BEFORE = words_of(
    """rep repetition kg kilo lb set negative second minute min more fewer less hundred short x in over above
    below under better shy left"""
)
_ONE_COUNTS_AFTER = frozenset({"for", "x", "times", "rir", "by"})
_HALF = frozenset({"half", "1/2"})
_MAY_CHANGE = (
    _BEGIN
    | {*_TIMES, *_FEW_REPS, *_SETS_OF_FEW, "both", "minute"}
    | {"half", "1", "2", ".5", "0.5", "0.25", "0.75", ".25", ".75"}
)
_ARTICLES = frozenset({"a", "an"})
_LIMB = frozenset({"arm", "arms", "leg", "legs", "armed", "legged", "handed", "hand"})


def with_number_words(tokens: list[Token]) -> list[Token]:
    """Return the tokens with each number in words as one number token, and halves added to their number."""
    if _MAY_CHANGE.isdisjoint([t.text for t in tokens]):
        return tokens
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        if token.text in _TENS and (day := _day_of_month(tokens, at)) and _is_day(out):
            last = tokens[at + 1]
            out.append(
                Token(NUMBER, token.text, token.start, last.end, token.glued, Decimal(day), spoken=True)
            )
            out.append(Token(WORD, "th", last.end - 1, last.end, glued=True))
            at += 2
            continue
        if token.kind == WORD and (token.text in _BEGIN or token.text in _ARTICLES):
            value, after = _spoken(tokens, at)
            if value is not None and (value != 1 or after > at + 1 or _one_is_number(tokens, at)):
                value, after = _with_half(tokens, after, value)
                last = tokens[after - 1]
                plural = token.text in _PLURALS or last.text in _PLURALS
                out.append(Token(NUMBER, token.text, token.start, last.end, token.glued, value, spoken=True))
                if plural:
                    out.append(Token(WORD, "s", last.end - 1, last.end, glued=True))
                at = after
                continue
        elif token.text == "both" and _text(tokens, at + 1) == "sets":
            out.append(token._replace(kind=NUMBER, value=Decimal(2), spoken=True))
            at += 1
            continue
        elif token.text == "half" and (length := _half_a_minute(tokens, at)):
            out.append(token._replace(kind=NUMBER, value=Decimal("0.5"), spoken=True))
            at += length
            continue
        elif token.kind == WORD and token.text in _TIMES:
            out.append(token._replace(kind=NUMBER, value=Decimal(_TIMES[token.text]), spoken=True))
            out.append(Token(WORD, "times", token.end - 1, token.end, glued=True))
            at += 1
            continue
        elif token.kind == WORD and token.text in _SETS_OF_FEW and _is_of_sets(tokens, at, out):
            reps = Decimal(_SETS_OF_FEW[token.text])
            out.append(Token(WORD, "sets", token.start, token.start + 1, glued=False))
            out.append(token._replace(kind=NUMBER, value=reps, spoken=True, glued=False))
            out.append(Token(WORD, "reps", token.end - 1, token.end, glued=True))
            at += 1
            continue
        elif (
            token.kind == WORD
            and token.text in _FEW_REPS
            and (_is_after_load(out) or _is_before_load(tokens, at + 1))
            and _next_word(tokens, at) not in _LIMB
        ):
            out.append(token._replace(kind=NUMBER, value=Decimal(_FEW_REPS[token.text]), spoken=True))
            out.append(Token(WORD, "reps", token.end - 1, token.end, glued=True))
            at += 1
            continue
        elif token.kind == NUMBER and token.value is not None:
            if token.text == "1" and at + 1 < len(tokens) and _next_word(tokens, at) in _LIMB:
                out.append(token._replace(kind=WORD, text="one", value=None))
                at += 1
                continue
            value, after = _with_half(tokens, at + 1, token.value)
            if after > at + 1:
                token = token._replace(value=value, end=tokens[after - 1].end)
            out.append(token)
            at = after
            continue
        out.append(token)
        at += 1
    return out


def _day_of_month(tokens: list[Token], at: int) -> int:
    """Return the day that "twenty eighth" would be, 0 where it would be none."""
    ordinal = _ORDINALS.get(_text(tokens, at + 1), 0)
    day = _TENS[tokens[at].text] + ordinal
    return day if ordinal and day <= _LAST_OF_MONTH else 0


def _is_day(out: list[Token]) -> bool:
    """Return whether what comes next can be a day of the month."""
    return bool(out) and out[-1].text in _DAY_COMES_AFTER


def _is_after_load(out: list[Token]) -> bool:
    """Return whether a load stands right before: "140 for a triple", "145 kg single", "140 for a triple and
    a double".
    """
    at = len(out) - 1
    while at >= 2 and out[at].text in {"a", "and", "then", ","}:
        at -= 1
    while at >= 1 and out[at].text == "reps" and out[at - 1].text in _FEW_REPS:
        at -= 2
    while at >= 0 and out[at].text in {
        "for",
        "a",
        "x",
        "kg",
        "kgs",
        "lb",
        "lbs",
        "kilos",
        "pounds",
        "an",
        "easy",
        "hard",
        "solid",
    }:
        at -= 1
    value = out[at].value if at >= 0 else None
    return value is not None and value >= 20


def _is_before_load(tokens: list[Token], at: int) -> bool:
    """Return whether a load follows right after: "a triple at 105", "heavy single 115"."""
    if _text(tokens, at) in {"at", "@", "with", "w"}:
        at += 1
    value = tokens[at].value if at < len(tokens) else None
    return value is not None and value >= _LEAST_LOAD


def _is_of_sets(tokens: list[Token], at: int, out: list[Token]) -> bool:
    """Return whether a number of sets stands right before, and a load beside: "3 singles at 90"."""
    place = len(out) - 1
    while place >= 0 and out[place].text in {"heavy", "easy", "hard", "solid", "good", "clean", "more"}:
        place -= 1
    value = out[place].value if place >= 0 else None
    if value is None or value % 1 or not 1 < value <= _MOST_SETS_OF_FEW:
        return False
    return _is_before_load(tokens, at + 1) or _is_after_load(out[:place])


def _text(tokens: list[Token], at: int) -> str:
    return tokens[at].text if 0 <= at < len(tokens) else ""


def _next_word(tokens: list[Token], at: int) -> str:
    """Return the word after `at`, past a hyphen."""
    after = _text(tokens, at + 1)
    return _text(tokens, at + 2) if after == "-" else after


def _one_is_number(tokens: list[Token], at: int) -> bool:
    """Return whether "one" is a number here, and not "that one", "another one", "one arm", "one of
    them"."""
    after = _text(tokens, at + 1)
    return _text(tokens, at - 1) != "another" and (
        _text(tokens, at) in _ARTICLES
        or after.removesuffix("s") in _ONE_COUNTS_BEFORE
        or (_text(tokens, at - 1) in _ONE_COUNTS_AFTER and _next_word(tokens, at) not in _LIMB)
        or after in _BEGIN
        or (after == "and" and _text(tokens, at + 2) == "a" and _text(tokens, at + 3) == "half")
    )


def _half_a_minute(tokens: list[Token], at: int) -> int:
    """Return how many tokens stand before the minute of "half a minute", 0 where it is something else."""
    step = 2 if _text(tokens, at + 1) in _ARTICLES else 1
    return step if _text(tokens, at + step) in {"minute", "min"} else 0


def _is_time_spent(tokens: list[Token], at: int) -> bool:
    """Return whether "a minute" tells how long something went on, and not when it is: "in a minute"."""
    return _text(tokens, at - 1) not in _POINTS_IN_TIME and _text(tokens, at + 2) not in _FROM_NOW


_POINTS_IN_TIME = words_of(
    "in wait give just me got per took take within have hang under over almost nearly about around"
)
_FROM_NOW = words_of("ago later late before after to please")


def _with_half(tokens: list[Token], at: int, value: Decimal) -> tuple[Decimal, int]:
    """Add "and a half", "and half" or a fraction that follows."""
    word = _text(tokens, at)
    if word == "and":
        step = at + 2 if _text(tokens, at + 1) in _ARTICLES else at + 1
        if _text(tokens, step) == "half":
            return value + Decimal("0.5"), step + 1
        if _text(tokens, at + 1) == "1" and _text(tokens, at + 2) == "/" and _text(tokens, at + 3) == "2":
            return value + Decimal("0.5"), at + 4
    if word == "a" and _text(tokens, at + 1) == "half":
        return value + Decimal("0.5"), at + 2
    if word == "1" and _text(tokens, at + 1) == "/" and _text(tokens, at + 2) == "2" and not tokens[at].glued:
        return value + Decimal("0.5"), at + 3
    if (
        at < len(tokens)
        and tokens[at].kind == NUMBER
        and word.startswith(("0.", "."))
        and value == int(value)
    ):
        fraction = tokens[at].value
        if fraction in {Decimal("0.5"), Decimal("0.25"), Decimal("0.75")} and value > 1:
            return value + fraction, at + 1
    return value, at


def _spoken(tokens: list[Token], at: int) -> tuple[Decimal | None, int]:
    """Return the number that begins at `at` and the place after it; None where there is none."""
    word = _text(tokens, at)
    after = _text(tokens, at + 1)
    if word in _ARTICLES:
        if after == "dozen":
            return Decimal(12), at + 2
        if after == "hundred":
            return _hundreds(tokens, at + 2, 100)
        if after == "minute" and _is_time_spent(tokens, at):
            return Decimal(1), at + 1
        return None, at
    if word == "hundred":
        return _hundreds(tokens, at + 1, 100)
    if word == "dozen":
        return None, at
    if word in _PLURALS:
        return Decimal(_PLURALS[word]), at + 1
    value, place = _below_hundred(tokens, at)
    if value is None:
        return None, at
    following = _text(tokens, place)
    if following == "dozen":
        return Decimal(value * 12), place + 1
    if following == "hundred" and value < 20:
        return _hundreds(tokens, place + 1, value * 100)
    if value < 10 and place == at + 1:
        joined = _joined(tokens, at, value)
        if joined is not None:
            return _point(tokens, joined[1], joined[0])
    return _point(tokens, place, value)


def _below_hundred(tokens: list[Token], at: int) -> tuple[int | None, int]:
    """Return a number from 0 to 99 in words."""
    word = _text(tokens, at)
    if word in _TENS:
        step = at + 2 if _text(tokens, at + 1) == "-" else at + 1
        unit = _UNITS.get(_text(tokens, step), 0) or _UNITS_IN_PLURAL.get(_text(tokens, step), 0)
        return (_TENS[word] + unit, step + 1) if unit else (_TENS[word], at + 1)
    value = _UNITS.get(word, _TEENS.get(word))
    return (value, at + 1) if value is not None else (None, at)


def _hundreds(tokens: list[Token], at: int, value: int) -> tuple[Decimal, int]:
    """Return hundreds with what follows: "one hundred and five", "two hundred ten"."""
    step = at + 1 if _text(tokens, at) == "and" else at
    rest, after = _below_hundred(tokens, step)
    if rest and (
        step > at or rest >= 10 or _text(tokens, after) not in {"rep", "reps", "times", "repetitions"}
    ):
        return _point(tokens, after, value + rest)
    return _point(tokens, at, value)


def _joined(tokens: list[Token], at: int, hundreds: int) -> tuple[int, int] | None:
    """Return a load said in two halves: "one twenty", "two seventy five", "one oh five"."""
    if _text(tokens, at + 1) in {"oh", "o"} and (unit := _UNITS.get(_text(tokens, at + 2))):
        return hundreds * 100 + unit, at + 3
    rest, after = _below_hundred(tokens, at + 1)
    if rest is None or rest < 10 or hundreds == 0:
        return None
    value = hundreds * 100 + rest
    # "five twelve" is rather two numbers; loads go up in fives, or in halves after a point.
    loadable = value % 5 == 0 or _text(tokens, after) in {"point", "and"}
    return (value, after) if loadable and (hundreds <= 5) else None


def _point(tokens: list[Token], at: int, value: int) -> tuple[Decimal, int]:
    """Add the digits after "point"."""
    if _text(tokens, at) in {"point", "comma"}:
        digits = ""
        step = at + 1
        while (unit := _UNITS.get(_text(tokens, step))) is not None and digits + str(unit) in _DECIMALS:
            digits += str(unit)
            step += 1
        if not digits and _text(tokens, step) in {"twenty"} and _text(tokens, step + 1) == "five":
            return Decimal(f"{value}.25"), step + 2
        if digits:
            return Decimal(f"{value}.{digits}"), step
    return Decimal(value), at
