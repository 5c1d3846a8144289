"""The lines beside the workouts: the days, the workouts in turn, the review, when to tell the coach."""

import re
from dataclasses import dataclass

from domain.expressions import Expression
from domain.names import name_key
from domain.programme import Weekday
from domain.sheet.phrases import Trouble
from domain.sheet.vocabulary import NUMBER, number

MOST_DAYS = 30


@dataclass(frozen=True, slots=True)
class Every:
    """A workout every `days` days."""

    days: int


@dataclass(frozen=True, slots=True)
class OnDays:
    """A workout on each of these days."""

    days: tuple[Weekday, ...]


@dataclass(frozen=True, slots=True)
class DayWorkout:
    """The workout `name` on these days of the week."""

    days: tuple[Weekday, ...]
    name: str


@dataclass(frozen=True, slots=True)
class Order:
    """The workouts in turn."""

    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class ReviewAfter:
    """Look back after so many rounds."""

    rounds: int


@dataclass(frozen=True, slots=True)
class SwitchTo:
    """The programme to change to where strength has not risen."""

    name: str


@dataclass(frozen=True, slots=True)
class TellAfter:
    """Tell the coach after so many workouts without a beat."""

    workouts: int


HeaderPart = Every | OnDays | DayWorkout | Order | ReviewAfter | SwitchTo | TellAfter | Trouble

_DAYS: tuple[tuple[str, Weekday], ...] = (
    ("mon", "monday"),
    ("tue", "tuesday"),
    ("wed", "wednesday"),
    ("thu", "thursday"),
    ("fri", "friday"),
    ("sat", "saturday"),
    ("sun", "sunday"),
)
_DAY = (
    r"(?:mon(?:day)?s?|tue(?:s(?:day)?)?s?|wed(?:s|nesday)?s?|thu(?:r(?:s(?:day)?)?)?s?|fri(?:day)?s?|sat(?:urday)?s?|"
    r"sun(?:day)?s?)\b\.?"
)
_DAY_LIST = rf"{_DAY}(?:\s*(?:,|/|&|\+|\band\b|;)+\s*(?:and\s+)?(?:on\s+)?{_DAY})*"
_ORDINALS = {
    "other": 2,
    "second": 2,
    "third": 3,
    "fourth": 4,
    "fifth": 5,
    "sixth": 6,
    "seventh": 7,
    "2nd": 2,
    "3rd": 3,
} | {f"{day}th": day for day in range(4, 31)}
_OPENING = (
    r"(?:(?:a\s+)?rotation\s+of\s+(?:\w+\s+)?workouts?\s*[,:-]\s*)?"
    r"(?:(?:schedule|rotation|training(?:\s+days)?|frequency|days|when|workouts?|sessions?|plan)\s*[:-]\s*)?"
    r"(?:(?:please|we|you|they|clients?|always)\s+)*(?:(?:will\s+)?(?:train(?:ing)?s?|lifts?|works?\s*out|working\s+out|"
    r"rotates?|(?:one|1|an?)\s+(?:workout|session)|one|workouts?|sessions?|once)\s*(?:is|are|comes?|falls?)?\s*[:-]?\s*)?"
    r"(?:on\s+)?"
)
_EVERY = Expression(
    rf"{_OPENING}(?:every|each)\s+(?:(?P<ordinal>{'|'.join(_ORDINALS)})\s+day|(?P<number>{NUMBER})\s+days?|(?P<one>day))\b"
    rf"|{_OPENING}(?P<daily>daily)\b"
    rf"|{_OPENING}(?:with\s+)?(?P<rest>{NUMBER})\s+(?:full\s+|whole\s+|complete\s+)?(?:rest\s+days?|days?\s+(?:of\s+|off\s*|rest\s*)+)"
    r"\s*(?:in\s+)?between(?:\s+(?:the\s+)?(?:workouts|sessions))?",
    re.IGNORECASE,
)
_TIMES_A_WEEK = (
    rf"(?:{NUMBER}|twice|once)\s*(?:x|times|days?|workouts?|sessions?)?\s*(?:a|per|each|every|/)\s*week\b"
)
_PER_WEEK = Expression(
    rf"{_OPENING}{_TIMES_A_WEEK}.*",
    re.IGNORECASE,
)
_ON_DAYS = Expression(
    rf"{_OPENING}(?:{_TIMES_A_WEEK}\s*[,:]?\s*(?:on\s+)?)?(?P<days>(?>{_DAY_LIST}))(?=(?<=\.)\s|\s*(?:$|[.,;:(-]|(?:in|taking|turns?|rotating|alternat\w+|through|each|"
    r"every|per)\b))(?:\s*(?:each|every|per)\s+week)?",
    re.IGNORECASE,
)
_DAY_WORKOUTS = Expression(
    rf"{_OPENING}(?P<all>{_DAY_LIST}\s*(?::|=|->|\s-)\s*[^;.]+?(?:\s*[;,.]\s*{_DAY_LIST}\s*(?::|=|->|\s-)\s*[^;.]+?)*)\s*\.?$",
    re.IGNORECASE,
)
_ONE_DAY_WORKOUT = Expression(
    rf"(?P<days>{_DAY_LIST})\s*(?::|=|->|\s-)\s*(?P<name>.+?)(?=\s*[;,.]\s*{_DAY_LIST}\s*(?::|=|->|\s-)|$)",
    re.IGNORECASE,
)
_IN_TURN = Expression(
    r"[\s,:;-]*(?:(?:counted\s+)?(?:from|after)\s+the\s+last\s+(?:one|workout|session)(?:\s+done)?[\s,:;-]*)?"
    r"(?P<words>(?:(?:taking\s+)?turns?|in\s+turns?|in\s+rotation|in\s+this\s+order|in\s+order|rotating(?:\s+through)?|"
    r"alternat(?:e|ing)(?:\s+between)?|through|the\s+workouts)?)[\s,:;-]*(?P<list>.*)$",
    re.IGNORECASE,
)
_AFTER_LIST = Expression(
    r"[\s,]*\b(?:and\s+|then\s+)*(?:repeat|start\s+(?:over|again)|back\s+to\s+the\s+(?:start|beginning)|in\s+turns?|"
    r"alternat(?:e|ing|ely)|in\s+rotation|in\s+(?:this|that)\s+order)\.?\s*$",
    re.IGNORECASE,
)
_SEPARATORS = (
    Expression(r"\s*(?:[,;|]|\bthen\b|\bfollowed\s+by\b)\s*", re.IGNORECASE),
    Expression(r"\s*(?:->|=>|>|/|\s-\s)\s*"),
    Expression(r"\s+(?:and|&|\+)\s+", re.IGNORECASE),
)
"""What stands between the names of a list; the later ones may also be part of a name ("Push/Pull")."""
_ORDER = Expression(
    r"(?:(?:(?:the\s+)?(?:workouts?|sessions?|days)\s+)?(?:in\s+turn|in\s+this\s+order|in\s+rotation|order|rotation|"
    r"sequence|cycle)(?:\s+of\s+(?:the\s+)?workouts)?(?:\s+is)?\s*[:-]?\s*"
    r"|(?:alternat(?:e|ing)(?:\s+between)?|rotate(?:\s+(?:through|between))?)\s*[:-]?\s*"
    r"|(?:workouts|sessions)\s*:\s*)(?P<list>\S.*)$",
    re.IGNORECASE,
)
_ROUNDS = (
    r"(?:full\s+|whole\s+)?(?P<{unit}>rounds?|rotations?|cycles?|times\s+(?:through|round)|laps?|weeks?|months?|days?|"
    r"workouts?|sessions?)(?:\s+of\s+(?:the|this)\s+\w+)?"
)
_REVIEW = Expression(
    r"(?:programme\s+|progress\s+)?reviews?(?:\s+(?:it|this|strength|progress|the\s+programme))?\s*[:-]?\s*"
    rf"(?:(?:is|due|after|every|each|at|in)\s+)*(?P<rounds>{NUMBER})\s*{_ROUNDS.format(unit='unit')}"
    rf"|(?:after|every)\s+(?P<rounds2>{NUMBER})\s*{_ROUNDS.format(unit='unit2')}\s*[,:-]?\s*"
    r"(?:(?:we|let's|do\s+a|there\s+is\s+a|a)\s+)*reviews?",
    re.IGNORECASE,
)
_CHANGE = r"(?:switch|change|move|go|swap|progress)(?:\s+(?:on|over|them|it|back|you|the\s+client))*\s+to"
_SWITCH = Expression(
    rf"[,:-]?\s*(?:and\s+|then\s+)*(?:(?:if|should|unless|when|where)\b[^:.;]*?[,:]?\s*(?:then\s+|we\s+|please\s+)*)?{_CHANGE}\s+"
    r"(?P<name>\S.*?)(?:\s+(?:if|unless|when)\s+(?:strength|progress|not|no|nothing|there|they|you)\b[^.;]*)?(?=\s*[.;]\s|\s*[.;]?$)",
    re.IGNORECASE,
)
_OVER_AGAIN = Expression(
    r"(?:(?:and|then)\s+)*(?:repeat|start\s+(?:over|again)|back\s+to\s+the\s+(?:start|beginning))\b"
)
_TELL_IF = Expression(
    rf"if\b[^.;]*?\b(?P<workouts>{NUMBER})\s+(?:workouts?|sessions?|times)\b[^.;]*?(?:tell|alert|let|warn)\s+me\b[^.;]*",
    re.IGNORECASE,
)
_TELL = Expression(
    rf"(?:please\s+)?(?:tell|alert|warn|message|notify|ping|let)\s+me(?:\s+know)?\s+(?:after|when|if|once)\s+(?:[a-z]+\s+){{0,6}}?"
    rf"(?P<workouts>{NUMBER})\s+(?:(?:workouts?|sessions?|times|exposures?|goes|tries|attempts)\b|(?=without\b))[^.;]*",
    re.IGNORECASE,
)
_FEWEST_WORKOUTS, _MOST_WORKOUTS = 2, 100
"""Without a beat. One workout tells nothing; more than that are not lived through on one programme."""


def read_rule(text: str) -> TellAfter | Trouble | None:
    """Return the rule for a stall that a text as a whole names, None where it is none."""
    found = _TELL.fullmatch(text) or _TELL_IF.fullmatch(text)
    return _rule(found) if found else None


def read_header(text: str, headings: frozenset[str]) -> tuple[HeaderPart, ...]:
    """Return the parts of a line beside the workouts, in order; nothing where the line is no such line.

    `headings` are the keys of all lines that may head a workout: they tell which "and" belongs to a name.
    """
    parts: list[HeaderPart] = []
    rest = text.strip()
    while rest:
        taken = _take(rest, headings, within=bool(parts))
        if taken is None:
            return (*parts, Trouble("not understood", rest)) if parts else ()
        found, rest = taken
        parts.extend(found)
        rest = rest.lstrip(" .;,:->")
    return tuple(parts)


def weekday_heading(text: str) -> tuple[tuple[Weekday, ...], str] | None:
    """Return the days and the name of a heading like "Monday: Upper"; without a name, the day is it."""
    found = re.fullmatch(
        rf"(?P<days>{_DAY_LIST})\s*(?:(?::|-|\||\()\s*(?P<name>.*?)\)?)?", text.strip(), re.IGNORECASE
    )
    if not found or re.search(rf"[;,]\s*{_DAY_LIST}\s*(?::|=|->|\s-)", found["name"] or "", re.IGNORECASE):
        return None
    return weekdays(found["days"]), (found["name"] or "").strip() or text.strip()


def weekdays(text: str) -> tuple[Weekday, ...]:
    """Return the days named in `text`, each once, in the order of the week."""
    named = {found[0][:3].casefold() for found in re.finditer(_DAY, text, re.IGNORECASE)}
    return tuple(day for short, day in _DAYS if short in named)


def split_names(text: str, headings: frozenset[str]) -> tuple[str, ...]:
    """Return the names in a list of workouts, such as "Pull, Push and Legs" or "A -> B -> A -> C"."""
    names = [_AFTER_LIST.sub("", text)]
    for separator in _SEPARATORS:
        names = [
            part
            for name in names
            for part in ([name] if name_key(name) in headings else separator.split(name))
        ]
    bare = (re.sub(r"^(?:and|&)\s+", "", name.strip(" .:"), flags=re.IGNORECASE).strip() for name in names)
    return tuple(name for name in bare if name)


def _rule(found: re.Match[str]) -> TellAfter | Trouble:
    workouts = number(found["workouts"])
    if _FEWEST_WORKOUTS <= workouts <= _MOST_WORKOUTS:
        return TellAfter(workouts)
    return Trouble("too few workouts", found[0])


def _take(text: str, headings: frozenset[str], *, within: bool) -> tuple[list[HeaderPart], str] | None:
    """Return what stands at the beginning of `text`, and the text after it."""
    if within and (found := _OVER_AGAIN.match(text.casefold())):
        return [], text[found.end() :]
    if found := _TELL.match(text) or _TELL_IF.match(text):
        return [_rule(found)], text[found.end() :]
    if found := _REVIEW.match(text):
        return [_review(found)], text[found.end() :]
    if (found := _SWITCH.match(text)) and (
        within or re.match(r"\W*(?:if|should|unless|then|switch|change)\b", text, re.I)
    ):
        return [SwitchTo(found["name"].strip(" .\"'"))], text[found.end() :]
    if found := _DAY_WORKOUTS.match(text):
        return list(_day_workouts(found["all"], headings)), ""
    if found := _EVERY.match(text):
        return _with_order(_every(found), text[found.end() :], headings)
    if found := _ON_DAYS.match(text):
        return _with_order(OnDays(weekdays(found["days"])), text[found.end() :], headings)
    if found := _PER_WEEK.match(text):
        return [Trouble("weekdays missing", found[0])], ""
    if found := _ORDER.match(text):
        listed, rest = _up_to_sentence_end(found["list"])
        return [Order(split_names(listed, headings))], rest
    if _AFTER_LIST.search(text):
        names = split_names(text, headings)
        return ([Order(names)], "") if names and all(name_key(name) in headings for name in names) else None
    return None


def _day_workouts(text: str, headings: frozenset[str]) -> tuple[HeaderPart, ...]:
    """Return the workout of each day; several workouts beside one list of days are taken in turn."""
    each = [(weekdays(one["days"]), one["name"].strip(" ,;.")) for one in _ONE_DAY_WORKOUT.finditer(text)]
    if len(each) == 1 and len(names := split_names(each[0][1], headings)) > 1:
        return OnDays(each[0][0]), Order(names)
    return tuple(DayWorkout(days, name) for days, name in each)


def _every(found: re.Match[str]) -> HeaderPart:
    if found["ordinal"]:
        days = _ORDINALS[found["ordinal"].casefold()]
    elif found["number"]:
        days = number(found["number"])
    elif found["rest"]:
        days = number(found["rest"]) + 1
    else:
        days = 1
    return Every(days) if 1 <= days <= MOST_DAYS else Trouble("too many days", found[0], str(MOST_DAYS))


def _with_order(schedule: HeaderPart, rest: str, headings: frozenset[str]) -> tuple[list[HeaderPart], str]:
    """Return the schedule, and the list of workouts where one follows in the same sentence."""
    sentence, after = _up_to_sentence_end(re.sub(r"\([^()]*\)", " ", rest))
    found = _IN_TURN.match(sentence)
    names = split_names(found["list"], headings) if found else ()
    return [schedule, *([Order(names)] if names else [])], after


def _up_to_sentence_end(text: str) -> tuple[str, str]:
    end = re.search(
        r"\.\s+(?=[A-Za-z])|;\s+(?=(?:review|tell|alert|warn|let|notify|if|switch|after|in\s+turn|order)\b)|\.?\s*$",
        text,
        re.IGNORECASE,
    )
    return (text[: end.start()], text[end.end() :]) if end else (text, "")


def _review(found: re.Match[str]) -> HeaderPart:
    rounds = number(found["rounds"] or found["rounds2"])
    unit = (found["unit"] or found["unit2"]).casefold()
    if unit.startswith(("week", "month", "day", "workout", "session")):
        return Trouble("review not in rounds", found[0])
    return ReviewAfter(rounds) if rounds else Trouble("zero", found[0])
