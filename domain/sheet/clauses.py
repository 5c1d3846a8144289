"""Reading a clause: one rule for each kind of phrase that a coach writes beside the name of an exercise.

A clause is read from left to right; the rules are tried in order, and the first that fits takes its words.
What no rule takes is handed back. Nothing here knows of exercises, workouts or of the lines around.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache
from typing import Literal

from domain.expressions import Expression
from domain.programme import Mass
from domain.sets import LoadKind
from domain.sheet.phrases import (
    MOST_REPS,
    MOST_SECONDS,
    MOST_SETS,
    MOST_SHORT,
    AddLoad,
    Amount,
    Counted,
    CueText,
    Effort,
    LadderRule,
    LoadFrom,
    LoweringOnly,
    Phrase,
    Sets,
    Times,
    Trouble,
)
from domain.sheet.vocabulary import (
    ABOVE,
    ADD,
    AMOUNT,
    BODY_WEIGHT,
    COUNT_UNIT,
    HOW_MUCH,
    LEAVE,
    LOAD,
    LOWERING,
    MASS,
    NUMBER,
    REACHED,
    REPS,
    SECONDS,
    SHORT_OF,
    THEN,
    TO,
    TOP,
    UNIT,
    number,
)
from domain.units import Unit


def _ladder(found: re.Match[str]) -> Phrase:
    below, up_to = number(found["below"]), number(found["up_to"])
    if below == 0 or up_to == 0:
        return Trouble("zero", found[0])
    if max(below, up_to) > MOST_REPS:
        return Trouble("too many reps", found[0], str(MOST_REPS))
    return LadderRule(below=below, up_to=up_to)


def _add_load(found: re.Match[str]) -> Phrase:
    groups = found.groupdict()
    if groups.get("mass") and not groups.get("unit"):
        return Trouble("load without unit", found[0], groups["mass"])
    by = _mass(found) if groups.get("mass") else None
    if groups.get("over"):
        over = number(found["over"])
    elif groups.get("reached"):
        over = number(found["reached"]) - 1
    else:
        return AddLoad(over=None, by=by)
    if over < 1:
        return Trouble("zero", found[0])
    if over > MOST_SECONDS:
        return Trouble("too many reps", found[0], str(MOST_REPS))
    return AddLoad(over=over, by=by)


def _load_from(found: re.Match[str]) -> Phrase:
    groups = found.groupdict()
    name = found["name"].strip(" .")
    if not groups.get("mass"):
        return LoadFrom(name=name, difference=Mass(amount=Decimal(0), unit="kg"), side="above")
    if not groups.get("unit"):
        return Trouble("load without unit", found[0], groups["mass"])
    below = re.match(r"below|under|lighter|less", found["side"], re.IGNORECASE)
    return LoadFrom(name=name, difference=_mass(found), side="below" if below else "above")


def _mass(found: re.Match[str]) -> Mass:
    unit: Unit = "kg" if found["unit"].casefold().startswith("k") else "lb"
    return Mass(amount=Decimal(found["mass"].replace(",", ".")), unit=unit)


def _amount(found: re.Match[str]) -> Phrase:
    groups = found.groupdict()
    low, high = number(found["low"]), number(groups.get("high") or found["low"])
    of: Literal["reps", "seconds"] | None = None
    if groups.get("minutes"):
        low, high, of = low * 60, high * 60, "seconds"
    elif groups.get("seconds") or ":" in found["low"] or (groups.get("hold") and not groups.get("reps")):
        of = "seconds"
    elif groups.get("reps"):
        of = "reps"
    if low == 0:
        return Trouble("zero", found[0])
    if low > high:
        return Trouble("range upside down", found[0], f"{high}-{low}")
    if of == "seconds" and high > MOST_SECONDS:
        return Trouble("too many seconds", found[0], str(MOST_SECONDS))
    if high > (MOST_REPS if of == "reps" else MOST_SECONDS):
        return Trouble("too many reps", found[0], str(MOST_REPS))
    return Amount(low=low, high=high, of=of)


def _held(found: re.Match[str]) -> Phrase:
    amount = _amount(found)
    if isinstance(amount, Amount) and found["held"] and amount.of is None:
        return replace(amount, of="seconds")
    return amount


def _sets(found: re.Match[str]) -> Phrase:
    count = number(found["count"])
    return Sets(count) if 1 <= count <= MOST_SETS else Trouble("sets out of range", found[0], str(MOST_SETS))


def _times(found: re.Match[str]) -> Phrase:
    count = number(found["count"])
    if not count:
        return Trouble("zero", found[0])
    return Times(count) if count <= MOST_REPS else Trouble("too many reps", found[0], str(MOST_REPS))


def _effort(found: re.Match[str]) -> Phrase:
    short = number(found["short"])
    return Effort(short) if short <= MOST_SHORT else Trouble("too many short", found[0], str(MOST_SHORT))


def _effort_from_rpe(found: re.Match[str]) -> Phrase:
    return Effort(10 - int(found["rpe"]))


def _counted_as(kind: LoadKind) -> Callable[[re.Match[str]], Phrase]:
    return lambda _: Counted(kind)


def _cue(found: re.Match[str]) -> Phrase:
    return CueText(re.sub(r"^(?:/|a\b)\s*", "each ", found[0].strip(" ,;()")))


Rule = tuple[Expression, Callable[[re.Match[str]], Phrase]]


def _rule(pattern: str, make: Callable[[re.Match[str]], Phrase]) -> Rule:
    """Return a rule whose phrase ends where a word ends."""
    return Expression(rf"(?:{pattern})(?=$|[\s,;:.)]|/\s*(?:side|leg|arm))", re.IGNORECASE), make


RULES: tuple[Rule, ...] = (
    # the ladder, and when to add load: they hold numbers that would else be taken for a range
    _rule(
        rf"(?:(?:if|when|while)\s+)?(?:you\s+(?:get\s+|do\s+|can\s+do\s+)?)?(?:below|under|fewer\s+than|less\s+than)\s+"
        rf"(?P<below>{NUMBER}){COUNT_UNIT}{THEN}(?:do|use|go\s+to|switch\s+to|start\s+with)?\s*{LOWERING},?\s*"
        rf"(?:up\s+to|until|till|to)\s+(?P<up_to>{NUMBER}){COUNT_UNIT}",
        _ladder,
    ),
    _rule(rf"{ABOVE}\s+(?P<over>{NUMBER}){COUNT_UNIT}{THEN}{ADD}{HOW_MUCH}", _add_load),
    _rule(rf"{TOP}{THEN}{ADD}{HOW_MUCH}", _add_load),
    _rule(rf"{REACHED}(?P<reached>{NUMBER}){COUNT_UNIT}{THEN}{ADD}{HOW_MUCH}", _add_load),
    _rule(rf"{ADD}{HOW_MUCH}\s+{ABOVE}\s+(?P<over>{NUMBER}){COUNT_UNIT}", _add_load),
    _rule(rf"{ADD}{HOW_MUCH}\s+{TOP}", _add_load),
    _rule(rf"{ADD}{HOW_MUCH}\s+{REACHED}(?P<reached>{NUMBER}){COUNT_UNIT}", _add_load),
    _rule(
        rf"(?:start|begin)(?:s|n?ing)?\s+(?:at\s+|with\s+)?{MASS}\s+(?P<side>above|over|heavier\s+than|more\s+than|on\s+top\s+of|"
        r"below|under|lighter\s+than|less\s+than)\s+(?:(?:the|your|her|his|their)\s+)?"
        r"(?:(?:last|latest|previous)\s+)?(?P<name>\S.*)",
        _load_from,
    ),
    _rule(
        r"start(?:s|ing)?\s+(?:at|from|with)\s+(?:the\s+|your\s+)?(?:last|latest|previous|same\s+load\s+as)\s+"
        r"(?P<name>\S.*)",
        _load_from,
    ),
    # words for the client that hold numbers of their own
    _rule(
        r"(?:rest(?:ing)?\s+(?=\d|as|until|till|between|about|up|for|well|long|one|two|three|four|five)"
        r"|(?:tempo|cadence|count)\s*:?\s*(?=\d)|pause\s+(?=\d|at|for|on|in|each|every|briefly)"
        r"|lower(?:ing)?\s+(?:over|in|for)\b)[^,;]*"
        r"|\d(?:[-/]\d){2,3}(?:\s+(?:tempo|cadence))?"
        r"|\d+\s*(?:s|secs?|seconds?|-?\s*second)\s+(?:up|down|lowering|pause|eccentric|negative|rest|each\s+way)\b"
        r"[^,;]*"
        r"|\d+\s*(?:min|mins|minutes)\s+rest(?:\s+[^,;]*)?",
        _cue,
    ),
    _rule(
        r"\(?(?:on\s+)?(?:each|per|every|both)\s+(?:sides?|legs?|arms?|way|direction|foot|feet)\)?"
        r"|(?:a|/)\s*(?:side|leg|arm)",
        _cue,
    ),
    _rule(r"(?:not|never)\s+(?:quite\s+)?to\s+failure", _cue),
    # effort
    _rule(
        r"(?:(?:all|each|every|both|taken|taking|take|go|going|done|push(?:ed)?|work|last|only|sets?|the|them|it)\s+)*"
        r"(?:to|till|til|until|\'til|at|@)\s*(?:(?:complete|muscular|absolute|technical|form|positive|full)\s+)?"
        r"(?:failure|fail|exhaustion)|as\s+many\s+(?:reps\s+)?as\s+(?:possible|you\s+can)|failure|amrap|max(?:imum)?\s+reps",
        lambda _: Effort(0),
    ),
    _rule(rf"{LEAVE}(?P<short>{NUMBER})\s*(?:more\s+)?(?:(?:reps?|seconds?)\s+)?{SHORT_OF}", _effort),
    _rule(r"(?:stop(?:ping)?\s+)?(?:just\s+)?short\s+of\s+failure", lambda _: Effort(1, vague=True)),
    _rule(rf"(?:@\s*)?rir\s*[:=]?\s*(?P<short>{NUMBER})", _effort),
    _rule(rf"(?:@\s*)?(?P<short>{NUMBER})\s*rir", _effort),
    _rule(
        r"(?:@\s*)?(?:(?:no\s+more\s+than|not\s+over|up\s+to|max\.?)\s+)?rpe\s*[:=@]?\s*(?P<rpe>10|[0-9])(?![.,]\d)",
        _effort_from_rpe,
    ),
    # sets and ranges
    _rule(
        rf"{NUMBER}\s*-\s*{NUMBER}\s*(?:(?:working|work|hard)\s+)?sets?\b(?:\s+of)?",
        lambda found: Trouble("sets not one number", found[0].strip(), "3 sets"),
    ),
    _rule(
        r"[1-6]\s*-\s*[1-6]\s*x\s*\d+(?:\s*-\s*\d+)?",
        lambda found: Trouble("sets not one number", found[0].strip(), "3 sets"),
    ),
    _rule(rf"(?:x\s*)(?P<count>{NUMBER})\s*sets?", _sets),
    _rule(rf"(?:x\s*)(?P<count>{NUMBER})", _times),
    _rule(
        rf"(?P<count>{NUMBER})\s*(?:(?:working|work|hard|straight|top|heavy|full|total)\s+)*sets?\b(?:\s+(?:of|x|for))?",
        _sets,
    ),
    (Expression(rf"(?P<count>{NUMBER})\s*x(?=\s*\d|\s)", re.IGNORECASE), _sets),
    _rule(
        rf"(?:between\s+)(?P<low>{AMOUNT})\s+and\s+(?P<high>{AMOUNT})(?:\s*-?\s*{UNIT})?"
        r"(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(
        rf"(?:(?P<hold>hold|held|holding)(?:\s+(?:it|for))*\s+)?(?P<low>{AMOUNT})\s*"
        rf"(?:(?:{REPS}|{SECONDS})\s*)?{TO}(?P<high>{AMOUNT})(?:\s*-?\s*{UNIT})?"
        r"(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(
        rf"(?:(?P<hold>hold|held|holding)(?:\s+(?:it|for))*\s+)?(?P<low>{AMOUNT})(?:\s*-?\s*{UNIT})?"
        r"(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(rf"(?:(?:do|as)\s+)?{LOWERING}", lambda _: LoweringOnly()),
    # how the load is counted
    _rule(
        rf"{LOAD}(?:counted\s+)?(?:per|each|in\s+each)\s+(?:hand|dumbbell|db|kettlebell|kb)",
        _counted_as("each"),
    ),
    _rule(
        r"(?:load|weight)\s+(?:counted\s+)?(?:in\s+total|as\s+a\s+whole)|total\s+(?:load|weight)",
        _counted_as("total"),
    ),
    _rule(
        rf"{LOAD}(?:counted\s+)?(?:on\s+top\s+of|added\s+to)\s+{BODY_WEIGHT}|added\s+(?:load|weight)",
        _counted_as("added"),
    ),
    _rule(
        rf"{LOAD}(?:counted\s+)?as\s+(?:help|assistance)|assisted|with\s+(?:help|assistance)",
        _counted_as("assist"),
    ),
    _rule(r"no\s+(?:added\s+)?(?:load|weight)", _counted_as("body")),
    _rule(
        rf"(?:with\s+)?(?:just\s+|only\s+)?{BODY_WEIGHT}(?:\s+only|\s+alone)?",
        lambda _: Counted("body", at_first=True),
    ),
)


_BETWEEN = Expression(
    r"\s+|[,.:;&@]|(?:and|for|of|then|with|at|do|doing|aim(?:ing)?\s+for|target|all|only|about|approximately|"
    r"per\s+set|each\s+set|per\s+round|a|set)\b|x(?=\s*\d)|->|=>|-(?=\s|$)|\+(?=\s)",
    re.IGNORECASE,
)
"""Words and marks that say nothing by themselves."""


@lru_cache(maxsize=4096)
def read_clause(text: str) -> tuple[tuple[Phrase, ...], str]:
    """Return the phrases that `text` begins with, in order, and the words that no rule takes.

    Kept, for the same words are looked at again: wherever a name may end, and as a sheet is said back.
    """
    phrases: list[Phrase] = []
    position = 0
    while position < len(text):
        if taken := _take(text, position):
            phrase, position = taken
            phrases.append(phrase)
        elif between := _BETWEEN.match(text, position):
            position = between.end()
        else:
            return tuple(phrases), text[position:].strip()
    return tuple(phrases), ""


def _take(text: str, position: int) -> tuple[Phrase, int] | None:
    """Return the phrase that stands at `position` and where it ends, by the first rule that fits."""
    if position and text[position - 1].isalpha() and text[position : position + 1].isalpha():
        return None
    for pattern, make in RULES:
        found = pattern.match(text, position)
        if found and found.end() > position:
            return make(found), found.end()
    return None
