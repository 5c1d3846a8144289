"""What a coach says in a line beside the name of the exercise: one rule for each kind of phrase.

A clause is read from left to right; the rules are tried in order, and the first that fits takes its words. What no
rule takes is handed back. Nothing here knows of exercises, workouts or of the lines around.
"""

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

from domain.programme import Mass
from domain.sets import LoadKind
from domain.sheet.result import FaultCode
from domain.units import Unit

MOST_REPS = 100
MOST_SECONDS = 3600
MOST_SETS = 20
MOST_SHORT = 10


@dataclass(frozen=True, slots=True)
class Amount:
    """Reps or seconds from `low` to `high`; `of` is None where no word says which."""

    low: int
    high: int
    of: Literal["reps", "seconds"] | None


@dataclass(frozen=True, slots=True)
class Sets:
    """How many sets."""

    count: int


@dataclass(frozen=True, slots=True)
class Effort:
    """How many reps short of failure to stop; 0 is failure. `vague` where no number was said."""

    stop_short: int
    vague: bool = False


@dataclass(frozen=True, slots=True)
class LoweringOnly:
    """The reps are lowering-only ones."""


@dataclass(frozen=True, slots=True)
class AddLoad:
    """Add load once more than `over` are done; None: once the top of the range is done. `by` None: the usual step."""

    over: int | None
    by: Mass | None


@dataclass(frozen=True, slots=True)
class LoadFrom:
    """Start from the last load of the exercise called `name`, as the coach wrote it."""

    name: str
    difference: Mass
    side: Literal["above", "below"]


@dataclass(frozen=True, slots=True)
class LadderRule:
    """Below `below` full reps, lowering-only reps up to `up_to`."""

    below: int
    up_to: int


@dataclass(frozen=True, slots=True)
class Counted:
    """How the load is counted."""

    kind: LoadKind


@dataclass(frozen=True, slots=True)
class CueText:
    """Words for the client that ask nothing of the bot: "each leg", "rest 2 minutes"."""

    text: str


@dataclass(frozen=True, slots=True)
class Trouble:
    """A phrase that is recognised but cannot be taken."""

    what: FaultCode
    part: str
    hint: str = ""


Phrase = Amount | Sets | Effort | LoweringOnly | AddLoad | LoadFrom | LadderRule | Counted | CueText | Trouble

_WORDS = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
    "seventeen eighteen nineteen twenty"
).split()
_NUMBERS = {word: value for value, word in enumerate(_WORDS)} | {"dozen": 12, "a dozen": 12, "thirty": 30}
NUMBER = rf"(?:\d{{1,6}}|{'|'.join(sorted(_NUMBERS, key=len, reverse=True))})"

_AMOUNT = rf"(?:\d{{1,2}}:\d\d|(?<![\d.,]){NUMBER}(?![\d]|[.,]\d))"
_REPS = (
    r"(?:(?:full|clean|good|strict|controlled|slow|hard|total|proper)\s+)*(?:reps?|repetitions?|times)\b|r\b"
)
_SECONDS = r"seconds?\b|secs?\b|s\b|\"|''"
_MINUTES = r"minutes?\b|mins?\b"
_UNIT = rf"(?:(?P<reps>{_REPS})|(?P<seconds>{_SECONDS})|(?P<minutes>{_MINUTES}))"
_TO = r"(?:\s*-\s*|\s*(?:to|or|up\s+to|until)\s+)"
_MASS = r"(?P<mass>\d{1,4}(?:[.,]\d{1,3})?)\s*(?P<unit>kgs?\b|kilos?\b|kilograms?\b|lbs?\b|pounds?\b|\#)?"
_LOWERING = (
    r"(?:lowering(?:[-\s]only)?(?:\s+(?:phase|part))?|negatives?(?:[-\s]only)?|eccentrics?(?:[-\s]only)?)"
    r"(?:\s+(?:reps?|repetitions?|ones|version))?(?:\s+only)?"
)
_ADD = (
    r"(?:add(?:ing)?|put\s+on|increase|raise|go\s+up(?:\s+in)?|move\s+up(?:\s+in)?|up|bump)"
    r"(?:\s+(?:it|the|your))?(?:\s+(?:load|weight|resistance))?(?:\s+(?:by|up\s+by|up))?"
)
_HOW_MUCH = (
    rf"(?:\s*\+?\s*(?:{_MASS}|(?:more\s+|some\s+|a\s+little\s+|the\s+)?(?:load|weight|resistance|plates?)|"
    r"(?:the\s+|a\s+|one\s+)?(?:usual|smallest|small|next)\s+(?:step|jump|plate|increment)))?"
)
_OVER = r"(?:(?:once|if|when|whenever|after)\s+)?(?:you\s+)?(?:get\s+|do\s+|can\s+do\s+|are\s+)?"
_ABOVE = rf"{_OVER}(?:over|above|past|beyond|more\s+than|exceeding|exceed)"
_REACHED = (
    r"(?:(?:once|if|when|whenever|after|upon|on|as\s+soon\s+as)\s+)?(?:you\s+|you've\s+)?"
    r"(?:(?:can\s+)?(?:hit|get|got|reach|reached|reaching|hitting|do|done|make|manage|get\s+to)\s+(?:all\s+)?|at\s+)"
)
_TOP = (
    r"(?:(?:once|if|when|whenever|after|upon)\s+)?(?:you\s+)?(?:(?:can\s+)?(?:hit|get|reach|reached|reaching|hitting|"
    r"are\s+at|get\s+to)\s+|at\s+)(?:the\s+)?top(?:\s+end)?(?:\s+of\s+(?:the|your|its)\s+(?:rep\s+)?range)?"
)
_COUNT_UNIT = r"(?:\s*(?:(?:full\s+)?reps?|repetitions|seconds?|secs?|s\b|times))?"
_THEN = r"\s*[,:]?\s*(?:->|=>)?\s*(?:then\s+|you\s+|we\s+|please\s+)*"


def number(text: str) -> int:
    """Return the number that digits, a word or a time of minutes and seconds ("1:30") stand for."""
    if ":" in text:
        minutes, seconds = text.split(":")
        return int(minutes) * 60 + int(seconds)
    return int(text) if text.isdigit() else _NUMBERS[text.casefold()]


def number_word(value: int) -> str:
    """Return a small number as a word, as it is written on a sheet."""
    return _WORDS[value] if value < len(_WORDS) else str(value)


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


def _effort(found: re.Match[str]) -> Phrase:
    short = number(found["short"])
    return Effort(short) if short <= MOST_SHORT else Trouble("too many short", found[0], str(MOST_SHORT))


def _effort_from_rpe(found: re.Match[str]) -> Phrase:
    return Effort(10 - int(found["rpe"]))


def _counted_as(kind: LoadKind) -> Callable[[re.Match[str]], Phrase]:
    return lambda _: Counted(kind)


def _cue(found: re.Match[str]) -> Phrase:
    return CueText(found[0].strip(" ,;"))


Rule = tuple[re.Pattern[str], Callable[[re.Match[str]], Phrase]]


def _rule(pattern: str, make: Callable[[re.Match[str]], Phrase]) -> Rule:
    """Return a rule whose phrase ends where a word ends."""
    return re.compile(rf"(?:{pattern})(?=$|[\s,;:.)])", re.IGNORECASE), make


_LEAVE = (
    r"(?:(?:stop(?:ping)?|leav(?:e|ing)|keep(?:ing)?|finish(?:ing)?|end(?:ing)?|with|about|at\s+least)\s+)*"
)
_SHORT_OF = (
    r"(?:short(?:\s+of\s+(?:failure|your\s+limit))?|in\s+reserve|in\s+the\s+tank|left(?:\s+in\s+the\s+tank)?|"
    r"(?:before|shy\s+of|away\s+from|from|off)\s+failure|shy)"
)

RULES: tuple[Rule, ...] = (
    # the ladder, and when to add load: they hold numbers that would else be taken for a range
    _rule(
        rf"(?:(?:if|when|while)\s+)?(?:you\s+(?:get\s+|do\s+|can\s+do\s+)?)?(?:below|under|fewer\s+than|less\s+than)\s+"
        rf"(?P<below>{NUMBER}){_COUNT_UNIT}{_THEN}(?:do|use|go\s+to|switch\s+to|start\s+with)?\s*{_LOWERING},?\s*"
        rf"(?:up\s+to|until|till|to)\s+(?P<up_to>{NUMBER}){_COUNT_UNIT}",
        _ladder,
    ),
    _rule(rf"{_ABOVE}\s+(?P<over>{NUMBER}){_COUNT_UNIT}{_THEN}{_ADD}{_HOW_MUCH}", _add_load),
    _rule(rf"{_TOP}{_THEN}{_ADD}{_HOW_MUCH}", _add_load),
    _rule(rf"{_REACHED}(?P<reached>{NUMBER}){_COUNT_UNIT}{_THEN}{_ADD}{_HOW_MUCH}", _add_load),
    _rule(rf"{_ADD}{_HOW_MUCH}\s+{_ABOVE}\s+(?P<over>{NUMBER}){_COUNT_UNIT}", _add_load),
    _rule(rf"{_ADD}{_HOW_MUCH}\s+{_TOP}", _add_load),
    _rule(rf"{_ADD}{_HOW_MUCH}\s+{_REACHED}(?P<reached>{NUMBER}){_COUNT_UNIT}", _add_load),
    _rule(
        rf"start(?:s|ing)?\s+(?:at\s+|with\s+)?{_MASS}\s+(?P<side>above|over|heavier\s+than|more\s+than|on\s+top\s+of|"
        r"below|under|lighter\s+than|less\s+than)\s+(?:the\s+|your\s+)?(?:(?:last|latest|previous)\s+)?(?P<name>\S.*)",
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
        r"|\d+\s*(?:s|secs?|seconds?|-?\s*second)\s+(?:up|down|lowering|pause|eccentric|negative|rest|each\s+way)\b[^,;]*"
        r"|\d+\s*(?:min|mins|minutes)\s+rest(?:\s+[^,;]*)?",
        _cue,
    ),
    _rule(
        r"\(?(?:on\s+)?(?:each|per|every|both)\s+(?:sides?|legs?|arms?|way|direction|foot|feet)\)?|(?:a|/)\s*(?:side|leg|arm)",
        _cue,
    ),
    _rule(r"(?:not|never)\s+(?:quite\s+)?to\s+failure", _cue),
    # effort
    _rule(
        r"(?:(?:all|each|every|both|taken|taking|take|go|going|done|push(?:ed)?|work|last|only|sets?|the|them|it)\s+)*"
        r"(?:to|till|til|until|\'til)\s+(?:(?:complete|muscular|absolute|technical|form|positive|full)\s+)?"
        r"(?:failure|fail|exhaustion)|as\s+many\s+(?:reps\s+)?as\s+(?:possible|you\s+can)|amrap|max(?:imum)?\s+reps",
        lambda _: Effort(0),
    ),
    _rule(rf"{_LEAVE}(?P<short>{NUMBER})\s*(?:more\s+)?(?:(?:reps?|seconds?)\s+)?{_SHORT_OF}", _effort),
    _rule(r"(?:stop(?:ping)?\s+)?(?:just\s+)?short\s+of\s+failure", lambda _: Effort(1, vague=True)),
    _rule(rf"(?:@\s*)?rir\s*[:=]?\s*(?P<short>{NUMBER})", _effort),
    _rule(rf"(?:@\s*)?(?P<short>{NUMBER})\s*rir", _effort),
    _rule(r"(?:@\s*)?rpe\s*[:=@]?\s*(?P<rpe>10|[0-9])(?![.,]\d)", _effort_from_rpe),
    # sets and ranges
    _rule(
        rf"{NUMBER}\s*-\s*{NUMBER}\s*(?:x(?=\s*\d)|(?:(?:working|work|hard)\s+)?sets?\b)(?:\s+of)?",
        lambda found: Trouble("sets not one number", found[0].strip(), "3 sets"),
    ),
    _rule(rf"(?:x\s*)(?P<count>{NUMBER})\s*(?:sets?\b)?", _sets),
    _rule(rf"(?P<count>{NUMBER})\s*(?:(?:working|work|hard|straight|top|heavy|full|total)\s+)*sets?\b(?:\s+(?:of|x|for))?", _sets),
    (re.compile(rf"(?P<count>{NUMBER})\s*x(?=\s*\d|\s)", re.IGNORECASE), _sets),
    _rule(
        rf"(?:between\s+)(?P<low>{_AMOUNT})\s+and\s+(?P<high>{_AMOUNT})(?:\s*-?\s*{_UNIT})?"
        r"(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(
        rf"(?:(?P<hold>hold|held|holding)(?:\s+(?:it|for))*\s+)?(?P<low>{_AMOUNT})\s*"
        rf"(?:(?:{_REPS}|{_SECONDS})\s*)?{_TO}(?P<high>{_AMOUNT})(?:\s*-?\s*{_UNIT})?(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(
        rf"(?:(?P<hold>hold|held|holding)(?:\s+(?:it|for))*\s+)?(?P<low>{_AMOUNT})(?:\s*-?\s*{_UNIT})?"
        r"(?:\s+(?P<held>hold|holds|holding))?",
        _held,
    ),
    _rule(rf"(?:(?:do|as)\s+)?{_LOWERING}", lambda _: LoweringOnly()),
    # how the load is counted
    _rule(r"(?:load\s+|weight\s+)?(?:counted\s+)?(?:per|each|in\s+each)\s+(?:hand|dumbbell|db|kettlebell|kb)", _counted_as("each")),
    _rule(r"(?:load|weight)\s+(?:counted\s+)?(?:in\s+total|as\s+a\s+whole)|total\s+(?:load|weight)", _counted_as("total")),
    _rule(r"(?:(?:load|weight)\s+)?(?:counted\s+)?(?:on\s+top\s+of|added\s+to)\s+body\s*-?\s*weight|added\s+(?:load|weight)", _counted_as("added")),
    _rule(r"(?:load\s+|weight\s+)?(?:counted\s+)?as\s+(?:help|assistance)|assisted|with\s+(?:help|assistance)", _counted_as("assist")),
    _rule(r"no\s+(?:added\s+)?(?:load|weight)|(?:with\s+)?(?:just\s+|only\s+)?(?:body\s*-?\s*weight|bw)(?:\s+only|\s+alone)?", _counted_as("body")),
)  # fmt: skip


_BETWEEN = re.compile(
    r"(?:[\s,.:;&@]|\b(?:and|for|of|then|with|at|do|doing|aim(?:ing)?\s+for|target|all|only|about|approximately|"
    r"per\s+set|each\s+set|per\s+round|a|set)\b|->|=>|-(?=\s|$)|\+(?=\s))+",
    re.IGNORECASE,
)


def read_clause(text: str) -> tuple[tuple[Phrase, ...], str]:
    """Return the phrases from the beginning of `text` in order, and the words from the first that no rule takes."""
    phrases: list[Phrase] = []
    position = 0
    while True:
        if between := _BETWEEN.match(text, position):
            taken = _take(text, position)
            if taken is None:
                position = between.end()
        if position >= len(text):
            return tuple(phrases), ""
        taken = _take(text, position)
        if taken is None:
            return tuple(phrases), text[position:].strip()
        phrase, position = taken
        phrases.append(phrase)


def _take(text: str, position: int) -> tuple[Phrase, int] | None:
    """Return the phrase that stands at `position` and where it ends, by the first rule that fits."""
    if position and text[position - 1].isalpha() and text[position : position + 1].isalpha():
        return None
    for pattern, make in RULES:
        found = pattern.match(text, position)
        if found and found.end() > position:
            return make(found), found.end()
    return None
