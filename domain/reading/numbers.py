"""Number words into numbers, and halves that stand beside a number.

"eighty two and a half", "one hundred and five", "one twenty", "two seventy five", "one oh five", "a dozen",
"seventy two point five" become one number each. What a number is a number of is not decided here.
"""

from decimal import Decimal

from domain.reading.number_words import (
    BEGIN,
    PLURALS,
    REPS,
    TEENS,
    TENS,
    UNITS,
    UNITS_IN_PLURAL,
    is_how_often,
    is_load_and_reps,
    text_at,
)
from domain.reading.spoken_minutes import ARTICLES, half_a_minute, is_time_spent
from domain.reading.tokens import NUMBER, WORD, Token
from domain.reading.words import words_of

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
_BEFORE_REPS = words_of("for x times by")
_AFTER_A_LOAD = words_of("for x times by kg kgs kilo kilos lb lbs pound pounds point and")
_ONE_COUNTS_BEFORE = words_of(
    """rep repetition kg kilo lb set negative second minute min more fewer less hundred short x in over above
    below under better shy left"""
)
_ONE_COUNTS_AFTER = frozenset({"for", "x", "times", "rir", "by"})
_HALF = frozenset({"half", "1/2"})
_MAY_CHANGE = (
    BEGIN
    | {*_TIMES, *_FEW_REPS, *_SETS_OF_FEW, "both", "minute"}
    | {"half", "1", "2", ".5", "0.5", "0.25", "0.75", ".25", ".75"}
)
_LIMB = frozenset({"arm", "arms", "leg", "legs", "armed", "legged", "handed", "hand"})


def with_number_words(tokens: list[Token]) -> list[Token]:
    """Return the tokens with each number in words as one number token, and halves added to their number."""
    if _MAY_CHANGE.isdisjoint([t.text for t in tokens]):
        return tokens
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        token = tokens[at]
        if token.text in TENS and (day := _day_of_month(tokens, at)) and _is_day(out):
            last = tokens[at + 1]
            out.append(
                Token(NUMBER, token.text, token.start, last.end, token.glued, Decimal(day), spoken=True)
            )
            out.append(Token(WORD, "th", last.end - 1, last.end, glued=True))
            at += 2
            continue
        if token.kind == WORD and (token.text in BEGIN or token.text in ARTICLES):
            value, after = _spoken(tokens, at)
            if value is not None and (value != 1 or after > at + 1 or _one_is_number(tokens, at)):
                value, after = _with_half(tokens, after, value)
                last = tokens[after - 1]
                plural = token.text in PLURALS or last.text in PLURALS
                out.append(Token(NUMBER, token.text, token.start, last.end, token.glued, value, spoken=True))
                if plural:
                    out.append(Token(WORD, "s", last.end - 1, last.end, glued=True))
                at = after
                continue
        elif token.text == "both" and text_at(tokens, at + 1) == "sets":
            out.append(token._replace(kind=NUMBER, value=Decimal(2), spoken=True))
            at += 1
            continue
        elif token.text == "both" and text_at(tokens, at + 1) == "times" and _is_a_whole_set(out):
            out.append(token._replace(kind=NUMBER, value=Decimal(2), spoken=True))
            out.append(tokens[at + 1]._replace(text="sets"))
            at += 2
            continue
        elif token.text == "half" and (length := half_a_minute(tokens, at)):
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
            and not _is_told_again(tokens, at)
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
    ordinal = _ORDINALS.get(text_at(tokens, at + 1), 0)
    day = TENS[tokens[at].text] + ordinal
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


def _is_told_again(tokens: list[Token], at: int) -> bool:
    """Return whether a load with just so many reps follows: "a double 245x2"."""
    loads = range(at + 1, min(at + 4, len(tokens) - 2))
    load = next((k for k in loads if tokens[k].value is not None), None)
    if load is None or tokens[load + 1].text not in _TIMES_OR_FOR:
        return False
    return tokens[load + 2].value == _FEW_REPS[tokens[at].text]


_TIMES_OR_FOR = frozenset({"x", "for"})


def _is_before_load(tokens: list[Token], at: int) -> bool:
    """Return whether a load follows right after: "a triple at 105", "heavy single 115"."""
    if text_at(tokens, at) in {"at", "@", "with", "w"}:
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


def _next_word(tokens: list[Token], at: int) -> str:
    """Return the word after `at`, past a hyphen."""
    after = text_at(tokens, at + 1)
    return text_at(tokens, at + 2) if after == "-" else after


def _one_is_number(tokens: list[Token], at: int) -> bool:
    """Return whether "one" is a number here, and not "that one", "another one", "one arm", "one of
    them"."""
    after = text_at(tokens, at + 1)
    points = text_at(tokens, at - 1) in _POINTS_AT_ONE and text_at(tokens, at + 1) in TEENS
    return (
        text_at(tokens, at - 1) != "another"
        and not points
        and (
            text_at(tokens, at) in ARTICLES
            or (after.removesuffix("s") in _ONE_COUNTS_BEFORE and not _is_one_set_more(tokens, at))
            or (text_at(tokens, at - 1) in _ONE_COUNTS_AFTER and _next_word(tokens, at) not in _LIMB)
            or after in BEGIN
            or (after in {"still", "left", "was"} and text_at(tokens, at + 2) in {"in", "left", "still"})
            or (after == "to" and text_at(tokens, at + 2) == "spare")
            or (after in _SORTS_OF_REP and text_at(tokens, at + 2) in {"rep", "more"})
            or (after == "and" and text_at(tokens, at + 2) == "a" and text_at(tokens, at + 3) == "half")
        )
    )


_SORTS_OF_REP = words_of(
    "clean good full strict solid proper decent honest ugly half forced assisted partial"
)


def _with_half(tokens: list[Token], at: int, value: Decimal) -> tuple[Decimal, int]:
    """Add "and a half", "and half" or a fraction that follows."""
    word = text_at(tokens, at)
    if word == "and":
        step = at + 2 if text_at(tokens, at + 1) in ARTICLES else at + 1
        if text_at(tokens, step) == "half":
            return value + Decimal("0.5"), step + 1
        if (
            text_at(tokens, at + 1) == "1"
            and text_at(tokens, at + 2) == "/"
            and text_at(tokens, at + 3) == "2"
        ):
            return value + Decimal("0.5"), at + 4
    if word == "a" and text_at(tokens, at + 1) == "half":
        return value + Decimal("0.5"), at + 2
    if (
        word == "1"
        and text_at(tokens, at + 1) == "/"
        and text_at(tokens, at + 2) == "2"
        and not tokens[at].glued
    ):
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
    word = text_at(tokens, at)
    after = text_at(tokens, at + 1)
    if word in ARTICLES:
        if after == "dozen":
            return Decimal(12), at + 2
        if after == "hundred":
            return _hundreds(tokens, at + 2, 100)
        if after == "minute" and is_time_spent(tokens, at):
            return Decimal(1), at + 1
        return None, at
    if word == "hundred":
        return _hundreds(tokens, at + 1, 100)
    if word == "dozen":
        return None, at
    if word == "zero" and _is_no_amount(tokens, at):
        return None, at
    if word in PLURALS:
        return Decimal(PLURALS[word]), at + 1
    value, place = _below_hundred(tokens, at)
    if value is None:
        return None, at
    following = text_at(tokens, place)
    if following == "dozen":
        return Decimal(value * 12), place + 1
    if following == "hundred" and value < 20:
        return _hundreds(tokens, place + 1, value * 100)
    if value < 10 and place == at + 1:
        joined = _joined(tokens, at, value)
        if joined is not None:
            return _point(tokens, joined[1], joined[0])
    return _point(tokens, place, value)


def _is_no_amount(tokens: list[Token], at: int) -> bool:
    """Return whether "zero" only says that there is none of something that is not counted: "zero drama"."""
    if at + 1 >= len(tokens) or tokens[at + 1].kind != WORD:
        return False
    return text_at(tokens, at + 1) not in _COUNTED_FROM_ZERO and text_at(tokens, at - 1) not in _BEFORE_REPS


_COUNTED_FROM_ZERO = (
    REPS
    | BEGIN
    | words_of(
        """kg kgs kilo kilos lb lbs pound pounds plates weight left in at for x more rir reserve and but then
        seconds sec secs s added extra assist assistance help today again this point out on with"""
    )
)


def _below_hundred(tokens: list[Token], at: int) -> tuple[int | None, int]:
    """Return a number from 0 to 99 in words."""
    word = text_at(tokens, at)
    if word in TENS:
        step = at + 2 if text_at(tokens, at + 1) == "-" else at + 1
        unit = UNITS.get(text_at(tokens, step), 0) or UNITS_IN_PLURAL.get(text_at(tokens, step), 0)
        if unit and step == at + 1 and text_at(tokens, step + 1) in REPS and is_load_and_reps(tokens, at):
            unit = 0
        return (TENS[word] + unit, step + 1) if unit else (TENS[word], at + 1)
    value = UNITS.get(word, TEENS.get(word))
    return (value, at + 1) if value is not None else (None, at)


def _hundreds(tokens: list[Token], at: int, value: int) -> tuple[Decimal, int]:
    """Return hundreds with what follows: "one hundred and five", "two hundred ten"."""
    step = at + 1 if text_at(tokens, at) == "and" else at
    rest, after = _below_hundred(tokens, step)
    if rest and (
        step > at or rest >= 10 or (text_at(tokens, after) not in REPS and not is_how_often(tokens, after))
    ):
        return _point(tokens, after, value + rest)
    return _point(tokens, at, value)


def _joined(tokens: list[Token], at: int, hundreds: int) -> tuple[int, int] | None:
    """Return a load said in two halves: "one twenty", "two seventy five", "one oh five"."""
    if text_at(tokens, at + 1) in {"oh", "o"} and (unit := UNITS.get(text_at(tokens, at + 2))):
        return hundreds * 100 + unit, at + 3
    rest, after = _below_hundred(tokens, at + 1)
    if rest is None or rest < 10 or hundreds == 0:
        return None
    if hundreds == 1 and rest < _LEAST_TENS and text_at(tokens, at - 1) in _POINTS_AT_ONE:
        # In "make the last one ten" one set is pointed at.
        return None
    value = hundreds * 100 + rest
    if text_at(tokens, at - 1) in _BEFORE_REPS and text_at(tokens, after) in _AFTER_A_LOAD:
        # In "for five eighty for four" five are the reps.
        return None
    # "five twelve" is rather two numbers; loads go up in fives, or in halves after a point.
    loadable = value % 5 == 0 or text_at(tokens, after) in {"point", "and"}
    return (value, after) if loadable and (hundreds <= 5) else None


def _is_a_whole_set(out: list[Token]) -> bool:
    """Return whether what stands right before are the reps of a load, told once."""
    at = len(out) - 2 if out and out[-1].text in REPS else len(out) - 1
    if at < 2 or out[at].value is None or out[at - 1].text not in {"x", "for", "*"}:
        return False
    return not any(token.text == "both" for token in out)


def _is_one_set_more(tokens: list[Token], at: int) -> bool:
    """Return whether "one more" is another set: "then one more of 45 sec"."""
    return text_at(tokens, at + 1) == "more" and text_at(tokens, at + 2) in {"of", "at", "with"}


_LEAST_TENS = 20
_POINTS_AT_ONE = words_of("last first second third other that this final middle next top which")


def _point(tokens: list[Token], at: int, value: int) -> tuple[Decimal, int]:
    """Add the digits after "point"."""
    if text_at(tokens, at) in {"point", "comma"}:
        digits = ""
        step = at + 1
        while (unit := UNITS.get(text_at(tokens, step))) is not None and digits + str(unit) in _DECIMALS:
            digits += str(unit)
            step += 1
        if not digits and text_at(tokens, step) in {"twenty"} and text_at(tokens, step + 1) == "five":
            return Decimal(f"{value}.25"), step + 2
        if digits:
            return Decimal(f"{value}.{digits}"), step
    return Decimal(value), at
