"""Corrections: which recorded set is meant, and what of it is put right. Nothing new is recorded here.

What is not said of the set stays as it was recorded; how its load is counted follows the exercise.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal

from domain.reading.context import HEAVIEST, LIGHTEST, MOST_REPS, Known, day_of
from domain.reading.days import Day
from domain.reading.elements import Element
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.request import OpenSet, Request
from domain.reading.when import past_day
from domain.reading.words import KG_WORDS, LB_WORDS, words_of
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit

_THING = (
    r"(?:that|it|this|the last(?: one| set| entry)?|last(?: one| set)|that last(?: one| set)?"
    r"|my last(?: one| set)?|the previous(?: one| set)?|those|they|these|both|all of (?:them|those)"
    r"|all (?:three|two|four|five|#)|the (?:first|second|third|fourth|fifth|other|top|middle)(?: one"
    r"| set)?|(?:set|number) #|# (?:st|nd|rd|th) (?:set|one)|the # (?:st|nd|rd|th)(?: set| one)?"
    r"|first set|second set|third set|last weight|the weight|the reps|the load|weight|reps)"
)
_BE = (
    r"(?:was|were|is|are|should be|should have been|shouldve been|should say|should read|needs to be"
    r"|has to be|must be|ought to be|s supposed to be|was supposed to be|was meant to be"
    r"|were meant to be)"
)
_MARKERS = re.compile(
    rf"\bmake (?:that|it|those|them|the last(?: one| set)?)(?: a| an)? (?=#|\w|\+|-)|\b(?:should|shouldve"
    rf"|should have|supposed to|meant to|ought to) (?:be|been|have been|say|read|have said)\b|\b(?:i "
    rf"|actually )?meant\b(?! to (?:do|train|go|say hi|ask|text|send|tell))|\bi mean\b"
    r"|\b(?:correction|typo|mistyped|misread|miscounted|mis typed|typed (?:that |it )?wrong"
    r"|wrote (?:that |it )?wrong|wrong (?:number|exercise|weight|reps|load|name|one|unit|day|date)"
    r"|got (?:that|it) wrong|fat fingers?|fat fingered|my mistake|i mixed up|mixed up|mixed them up"
    r"|autocorrect)\b"
    r"|\b(?:oops|whoops|oopsie|sorry|my bad|woops)(?: \S+){0,3}? (?:#|that|it|the last|last)(?![^ ])"
    rf"|\b{_THING}(?: \w+)? {_BE}(?: (?:actually|really|in fact|only|just|from|on|at|done|meant|for|the|a"
    rf"|an|not|with|all))* (?:#|\w+|\+|-)"
    r"|# (?:\w+ ){0,3}?(?:,|\(|-)? ?(?:and )?not (?:the |a )?(?:#|\w+)|\bnot (?:the |a )?#"
    r"|\b(?:change|correct|fix|edit|update|amend|adjust|replace|switch|put|set|swap)(?: \w+){0,5} (?:to"
    r"|into|with|as|from) (?:#|\w+)"
    r"|^\* ?#|# (?:\w+ )?\*|^\* ?\w+|\bactually (?:(?:it|that) (?:was|is|should be)|it s|i (?:did|got"
    r"|only did|only got|used|had)|(?:did|got|only|its|thats|was|a|used|more like|about|the))* ?(?=#)"
    r"|\b(?:it|that|they|those|these) (?:was|were) (?=#)|\b(?:log|count|record|save|put|mark|file) (?:it"
    r"|that|them|those|this)(?: \w+)? (?:as|under|for|on|down as|to)\b"
    r"|\b(?:instead of|rather than) (?:#|\w+)|\bnot \w+(?: \w+)? (?:but|it was)\b"
)
_TRIGGERS = words_of(
    """no nope nah wait make should shouldve supposed meant mean correction typo mistyped misread
    miscounted typed wrote wrong
    got fat mistake mixed autocorrect oops whoops oopsie sorry bad woops that it this last those they
    these both all not change correct fix edit update amend adjust replace switch put set * actually log
    count record save mark file was were second first third instead rather"""
)
_STRONG = re.compile(
    r"\b(?:make (?:that|it|those|them)|should (?:be|say|read|have been|have said)|shouldve been"
    r"|supposed to be|meant|i mean|correction|typo|mistyped|misread|miscounted|typed|wrote|wrong"
    r"|fat finger\w*|my mistake|mixed|autocorrect|oops|whoops|oopsie|woops|my bad|change|correct|fix|edit"
    r"|update|amend|adjust|replace|actually)\b|\*"
)
_COMPARISON = re.compile(
    r"\b(?:not (?:to failure|sure|bad|easy|great|good|too|so|really|ideal|happy|much|feeling|today|yet"
    r"|only|even|a|the best|my|going|doing|quite|gonna|at all|that|very|sore|tired|pain))\b"
)
_ALL = re.compile(
    r"\b(?:both(?! (?:sides|legs|arms|hands))|all (?:of (?:them|those|these|it)|three|two|four|five|sets"
    r"|the sets|my \w+)|(?:those|they|these|the sets|all) (?:were|are|should)|every set|each set"
    r"|make (?:those|them))\b"
)
_NTH = re.compile(
    r"\b(?:the )?(?P<w>first|second|third|fourth|fifth|sixth)(?: (?:one|set)|(?= (?:was|should|is"
    r"|were)))\b(?! exercise)|\b(?:set|number) (?P<n>#)(?= (?:was|should|is|:))|(?P<m>#) (?:st|nd|rd"
    r"|th) (?:set|one)\b"
)
LAST_FEW = re.compile(r"\bthe last (?P<n>#)(?: (?:sets?|ones?))?(?= (?:were|was|are|should|both|all|need))")
_NTHS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6}
_NOT = re.compile(
    r"\b(?:not|instead of|rather than)(?: the| a| an| for| at| with| my)? (?P<n>#)(?! ?(?:%"
    r"|percent))"
)
_DAY_FIXED = re.compile(
    r"\b(?:was|were|from|actually|done|did|on|for|meant|is|should be|happened|be|that s)(?: (?:from|on"
    r"|actually|done|for|the|of))* ?$"
)
_UNIT_FIXED = re.compile(
    r"\b(?:(?:was|were|is|are|be|in|meant|as|been|to|should be)(?: (?:in|actually|all|meant|the))*"
    r"|not) (?P<u>kgs?|kilos?|kilograms?|lbs?|pounds?)\b|^(?P<v>kgs?|kilos?|lbs?|pounds?)(?: (?:not|sorry"
    r"|instead|i mean|, not)|$)|\b(?:sorry|oops|meant|mean)(?: ,)? (?P<w>kgs?|kilos?|lbs?|pounds?)\b"
)


@dataclass(frozen=True, slots=True)
class Corrected:
    """The corrected sets, or the open ones where it is not clear what is meant."""

    sets: tuple[TrainingSet, ...] = ()
    open: tuple[OpenSet, ...] = ()
    replaces: tuple[int, ...] = ()
    """For each of `sets`, the place in `done` of the set that it puts right."""


def is_correction(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether the message puts right something recorded, rather than reporting something new."""
    if not request.done or not message.has(_TRIGGERS):
        return False
    line = message.line
    if (
        _is_of_a_full_exercise(message, request, named)
        or _is_one_exercise_not_another(message, named)
        or _is_no_and_a_number(message)
        or _is_instead_of_what_is_recorded(message, request, named)
        or LAST_FEW.search(line) is not None
    ):
        return True
    match = _MARKERS.search(line)
    if match is None:
        return False
    said = match.group()
    numbers_before = any(
        t.value is not None and not message.taken[i]
        for i, t in enumerate(message.tokens)
        if message.starts[i] < match.start()
    )
    strong = _STRONG.search(line) is not None
    if (
        numbers_before
        and not strong
        and not said.startswith(("#", "not"))
        and not re.match(r"(?:that|the|it)", said)
    ):
        return False
    numbers = [i for i, t in enumerate(message.tokens) if t.value is not None and not message.taken[i]]
    if (
        re.match(r"(?:oops|whoops|sorry|my bad|woops|oopsie)", said)
        and re.search(
            r"\b(?:late|delay|wait|forgot|slow|busy|lot|no reply|silence|missed|cant|wont|bother)\b", line
        )
        and not re.search(r"\bnot #|# not|should|meant|typo|wrong\b", line)
    ):
        return False
    if (
        said.startswith(("sorry", "oops", "whoops"))
        and len(numbers) >= 2
        and any(len(n.names) == 1 for n in named)
        and not any(one.exercise in n.names for n in named for one in request.done)
        and not re.search(r"\bnot\b|should|meant|typo|wrong|\bwas\b|\bwere\b", line)
    ):
        # "sorry, rows only 60x10 today" tells of an exercise that nothing is recorded of.
        return False
    if re.match(rf"(?:{_THING}|it|that|they|those|these)\b", said) and not strong:
        return _is_put_right(message, match, named)
    if said.startswith(("#", "not")) and not strong:
        return _is_this_not_that(message, numbers, named)
    if re.match(
        r"(?:change|correct|fix|edit|update|amend|adjust|replace|switch|put|set|swap|log|count|record"
        r"|save|mark|file)\b",
        said,
    ):
        return bool(numbers) or (
            bool(named)
            and bool(re.match(r"(?:change|correct|fix|edit|log|count|record|put|mark|file|switch)", said))
            and "as skipped" not in line
        )
    if said.startswith(("instead", "rather")):
        return False
    if said.startswith("actually"):
        return bool(numbers)
    if (
        not numbers
        and not named
        and _UNIT_FIXED.search(line) is None
        and not re.search(
            r"\b(?:yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|last night"
            r"|each hand|per hand|failure|negatives|bodyweight|assist\w*)\b",
            line,
        )
    ):
        return False
    if re.match(r"make (?:that|it|them|those)", said) and not numbers and not named:
        return _UNIT_FIXED.search(line) is not None
    return not (
        numbers_before
        and re.match(r"(?:i mean|sorry|oops|whoops|actually|make|no)", said)
        and not re.search(r"\bnot #", line)
    )


def _is_one_exercise_not_another(message: Message, named: Sequence[Named]) -> bool:
    """Return whether just one exercise is said against another: "cable row, not barbell"."""
    if not named or named[0].start > 3 or len(message.tokens) > 9:
        return False
    after = message.texts(named[0].end, named[0].end + 2)
    return "not" in after and all(t.value is None for t in message.tokens) and after[:1] in (["not"], [","])


_NO_FIRST = re.compile(
    r"^(?:no|nope|nah|wait)(?: ,)?(?: (?:it was|only|just|it is|its|i did|i got|actually"
    r"|wait))* #"
)
_INSTEAD = re.compile(r"\binstead of(?: the| a)? (?P<n>#)")


def _is_no_and_a_number(message: Message) -> bool:
    """Return whether a short message denies the last record and says another number: "no, 3 reps"."""
    return len(message.tokens) <= 7 and _NO_FIRST.match(message.line) is not None


def _is_instead_of_what_is_recorded(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a number is to stand instead of a recorded one: "put 8 for the rows instead of 11"."""
    match = _INSTEAD.search(message.line)
    if match is None or sum(t.value is not None for t in message.tokens) != 2:
        return False
    at, _ = message.span(match, "n")
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    return any(
        one.exercise in names and message.value(at) in {one.load, Decimal(one.amount)} for one in request.done
    )


def _is_of_a_full_exercise(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "the plank was 50 seconds" speaks of an exercise whose sets are all recorded already.

    "That plank set was …", "both squat sets were …" speak of what is recorded, however many sets are left.
    """
    if len(named) != 1 or len(named[0].names) != 1:
        return False
    after = [
        w for w in message.texts(named[0].end, named[0].end + 3) if w not in {"set", "sets", "one", "ones"}
    ]
    if after[:1] not in (["was"], ["were"], ["should"], ["is"], ["are"]):
        return False
    numbers = [i for i, t in enumerate(message.tokens) if t.value is not None]
    if len(numbers) > 1 or (not numbers and not message.has(_COUNTING)) or len(message.tokens) > 12:
        return False
    today = request.sent.date()
    name = named[0].names[0]
    count = sum(1 for one in request.done if one.exercise == name and (one.on or today) == today)
    planned = next((p.sets for p in request.plan if p.name == name), 1)
    pointed = message.text(named[0].start - 1) in _POINTING
    return count >= (1 if pointed else planned)


_POINTING = frozenset(
    {"that", "both", "all", "first", "second", "third", "last", "previous", "those", "these"}
)
_COUNTING = frozenset({"bodyweight", "bw", "assisted", "failure", "negatives", "weight"})


def _is_put_right(message: Message, match: re.Match[str], named: Sequence[Named]) -> bool:
    """Return whether "that was …" goes on with a number, an exercise, a unit or a day, and not with a
    remark."""
    start, end = message.span(match)
    tail = message.texts(end - 1, min(len(message.tokens), end + 2))
    first = tail[0] if tail else ""
    value = message.value(end - 1)
    if value is not None:
        after = message.text(end)
        return (
            after
            not in {"years", "days", "weeks", "minutes", "min", "mins", "hours", "hrs", "degrees", "of", "%"}
            and not (message.taken[end - 1])
        )
    if first in KG_WORDS | LB_WORDS:
        return True
    if first in {
        "yesterday",
        "yesterdays",
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
        "last",
    }:
        return len(message.tokens) - end <= 6
    before = message.texts(start, end)
    rest = message.line[message.starts[end - 1] :]
    if re.match(
        r"(?:(?:to|at) failure|failure|each hand|per hand|in each hand|bodyweight|bw|body weight"
        r"|negatives|lowering only|assisted|without weight|no weight|lbs?|kgs?|\+ #|- #)\b",
        rest,
    ) or re.match(r"[+-] #", rest):
        return True
    if any(n.start in {end - 1, end} and not n.weak for n in named) and before[0] in {
        "that",
        "it",
        "this",
        "those",
        "they",
        "the",
        "last",
        "these",
    }:
        after_name = next(n.end for n in named if n.start in {end - 1, end})
        following = message.texts(after_name, len(message.tokens))
        return len(following) <= 8 and not any(
            w in {"is", "was", "felt", "hurts", "day", "today"} for w in following[:1]
        )
    return False


def _is_this_not_that(message: Message, numbers: list[int], named: Sequence[Named]) -> bool:
    """Return whether one number is said against another: "9 not 8"."""
    if _COMPARISON.search(message.line) and not _NOT.search(message.line):
        return False
    if not _NOT.search(message.line):
        return (
            bool(numbers)
            and bool(named)
            and re.search(r"\bnot (?:the |a )?\w+", message.line) is not None
            and any(message.text(n.start - 1) == "not" or message.text(n.start - 2) == "not" for n in named)
        )
    return len(numbers) >= 2


def put_right(
    message: Message,
    request: Request,
    groups: Sequence[Group],
    named: Sequence[Named],
    days: Sequence[Day],
    unit: Unit,
) -> Corrected:
    """Return the corrected sets."""
    del unit
    old = {v for m, s, e in message.find(_NOT) if (v := message.value(e - 1)) is not None for m in (m,)}
    new_names = [n for n in named if not _after_not(message, n)]
    denied = [n for n in named if _after_not(message, n)]
    elements = [i for g in groups for i in g.items if isinstance(i, Element)]
    marks = [i for g in groups for i in g.items if isinstance(i, Mark)]
    fixed_unit = _fixed_unit(message)
    fixed_day, pointed_day = _days(
        message, request, days, has_values=bool(elements) or fixed_unit is not None
    )
    records = _records(message, request, new_names, denied, elements, pointed_day, old)
    if not records:
        return Corrected()
    quoted = [e for e in elements if _quotes(message, e, records[-1])]
    elements = [e for e in elements if e not in quoted]
    exercise = _new_exercise(
        request,
        records[-1],
        new_names,
        has_values=bool(elements) or fixed_unit is not None or fixed_day is not None,
    )
    if exercise == "":
        asked = _open(records[-1], request, ("exercise",))
        return Corrected(open=(replace(asked, replaces=_place(request, records[-1])),))
    about = (
        "load"
        if re.search(r"\b(?:wrong|the|correct) (?:weight|load)\b", message.line)
        else "amount"
        if re.search(
            r"\b(?:wrong|the|correct) (?:reps|number of reps|rep count|count|seconds|time)\b|\bmiscounted\b",
            message.line,
        )
        else ""
    )
    fixed: list[TrainingSet] = []
    opened: list[OpenSet] = []
    places: list[int] = []
    for record in records:
        one = _with_values(record, request, elements, marks, old, exercise, fixed_unit, fixed_day, about)
        if isinstance(one, TrainingSet):
            fixed.append(one)
            places.append(_place(request, record))
        else:
            opened.append(replace(one, replaces=_place(request, record)))
    return Corrected(tuple(fixed), tuple(opened), tuple(places))


def _place(request: Request, record: TrainingSet) -> int:
    """Return the place of this very record in `done`; sets that are equal are told apart."""
    return next(place for place, one in enumerate(request.done) if one is record)


def _after_not(message: Message, name: Named) -> bool:
    return any(
        message.text(at) in {"not", "of", "than", "no"}
        and (message.text(at) in {"not"} or message.text(at - 1) in {"instead", "rather"})
        for at in range(max(0, name.start - 3), name.start)
        if not any(message.value(b) is not None for b in range(at, name.start))
    )


def _fixed_unit(message: Message) -> Unit | None:
    for match in _UNIT_FIXED.finditer(message.line):
        word = match["u"] or match["v"] or match["w"]
        if match.group().startswith("not "):
            continue
        return "kg" if word in KG_WORDS else "lb"
    return None


def _days(
    message: Message, request: Request, days: Sequence[Day], *, has_values: bool
) -> tuple[date | None, date | None]:
    """Return the day that is put right, and the day that points at a record."""
    known = {(one.on or request.sent.date()) for one in request.done}
    fixed: date | None = None
    pointed: date | None = None
    for day in days:
        on = past_day(day, request.sent)
        if on is None or message.text(day.start - 1) in {"not"}:
            continue
        before = " ".join(message.texts(max(0, day.start - 4), day.start))
        if _DAY_FIXED.search(before) and not has_values:
            fixed = on if fixed is None else fixed
        elif on in known and has_values:
            pointed = on
        elif not has_values:
            fixed = on if fixed is None else fixed
        elif _DAY_FIXED.search(before) and on not in known and message.text(day.start - 1) in {"from", "on"}:
            fixed = on
    return fixed, pointed


def _records(
    message: Message,
    request: Request,
    names: Sequence[Named],
    denied: Sequence[Named],
    elements: Sequence[Element],
    on: date | None,
    old: set[Decimal],
) -> list[TrainingSet]:
    """Return the recorded sets that are meant."""
    today = request.sent.date()
    done = [one for one in request.done if on is None or (one.on or today) == on]
    if not done:
        done = list(request.done)
    pool = done
    said = [n for n in [*names, *denied] if n.names]
    for name in said:
        of_it = [one for one in done if one.exercise in name.names]
        if (
            of_it
            and (
                elements
                or name in denied
                or on is not None
                or re.search(r"\b(?:kgs?|kilos?|lbs?|pounds?|yesterday|failure)\b", message.line)
            )
            and not _meant(message, name)
        ):
            pool = of_it
            break
    else:
        for element in elements:
            matching = [one for one in done if _quotes(message, element, one)]
            if matching:
                pool = matching[-1:]
                break
        else:
            pool = [one for one in done if one.exercise == done[-1].exercise and one.on == done[-1].on]
    last = LAST_FEW.search(message.line)
    if last is not None:
        count = int(message.value(message.span(last, "n")[0]) or 1)
        return done[-count:]
    nth = _NTH.search(message.line)
    if nth is not None:
        if nth["w"]:
            number = _NTHS[nth["w"]]
        else:
            at, _ = message.span(nth, "n" if nth["n"] else "m")
            number = int(message.value(at) or 0)
        if 1 <= number <= len(pool):
            return [pool[number - 1]]
    if _ALL.search(message.line) and len(pool) > 1:
        day = pool[-1].on
        return [one for one in pool if one.exercise == pool[-1].exercise and one.on == day]
    if old and len(old) == 1:
        value = next(iter(old))
        matching = [one for one in pool if value in {one.load, Decimal(one.amount)}]
        if matching and value not in {pool[-1].load, Decimal(pool[-1].amount)}:
            return matching[-1:]
    return pool[-1:]


def _meant(message: Message, name: Named) -> bool:
    """Return whether a name is what was meant instead, and does not point at a record."""
    before = message.texts(max(0, name.start - 4), name.start)
    return any(w in {"meant", "mean"} for w in before)


def _quotes(message: Message, element: Element, one: TrainingSet) -> bool:
    """Return whether an element says again what was recorded: "that 50x15 was the seated calf raise"."""
    values = [q.value for q in element.quantities]
    before = message.text(element.start - 1)
    return (
        len(values) == 2
        and values == [one.load, Decimal(one.amount)]
        and before in {"that", "the", "those", "my", "a", ""}
    )


def _new_exercise(
    request: Request, record: TrainingSet, names: Sequence[Named], *, has_values: bool
) -> str | None:
    """Return the exercise that was meant instead, "" where it must be asked, None where it stays."""
    other = [n for n in names if record.exercise not in n.names]
    if not other:
        return None
    name = other[0]
    if len(name.names) != 1:
        return ""
    if (
        has_values
        and any(one.exercise == name.names[0] for one in request.done)
        and record.exercise == name.names[0]
    ):
        return None
    return name.names[0]


def _with_values(
    record: TrainingSet,
    request: Request,
    elements: Sequence[Element],
    marks: Sequence[Mark],
    old: set[Decimal],
    exercise: str | None,
    unit: Unit | None,
    on: date | None,
    about: str,
) -> TrainingSet | OpenSet:
    """Return a record with what was said put in its place."""
    today = request.sent.date()
    one = replace(record, on=on or record.on or today)
    known = Known(request, exercise or record.exercise, day_of(request, today), request.unit)
    if exercise is not None:
        kind: LoadKind = known.kind
        if one.load_kind == "body" or one.load == 0:
            kind = "body" if kind in {"added", "body"} else kind
        one = replace(
            one,
            exercise=exercise,
            load_kind=kind,
            lowering_only=bool(known.plan and known.plan.lowering_only),
        )
        if kind != "body" and one.load == 0:
            return _open(one, request, ("load",), drop_load=True)
    if unit is not None:
        one = replace(one, unit=unit)
    candidates: list[TrainingSet] = []
    for element in elements:
        outcome = _one_value(one, element, old, known, about)
        if len(outcome) == 1:
            one = outcome[0]
        elif outcome:
            candidates = outcome
    for mark in marks:
        if not (elements and mark.kind in {"more reps", "fewer reps", "up", "down"}):
            one = _with_mark(one, mark, request)
    if candidates:
        return replace(_open(one, request, ("confirm",)), candidates=tuple(candidates))
    return one


def _with_mark(one: TrainingSet, mark: Mark, request: Request) -> TrainingSet:
    match mark.kind:
        case "failure":
            return replace(one, to_failure=True)
        case "no failure":
            return replace(one, to_failure=False)
        case "rir":
            return replace(one, rir=mark.value)
        case "failed on":
            return replace(one, reps=int(mark.value or 1) - 1, to_failure=True)
        case "lowering":
            return replace(one, lowering_only=True)
        case "each hand":
            return replace(one, load_kind="each")
        case "body":
            return replace(one, load=Decimal(0), load_kind="body", unit=request.unit)
        case "up" if mark.value is not None:
            return replace(one, load=one.load + mark.value)
        case "down" if mark.value is not None:
            return replace(one, load=one.load - mark.value)
        case "more reps" if one.reps is not None:
            return replace(one, reps=one.reps + int(mark.value or 1))
        case "fewer reps" if one.reps is not None:
            return replace(one, reps=max(0, one.reps - int(mark.value or 1)))
        case _:
            return one


def _one_value(
    one: TrainingSet, element: Element, old: set[Decimal], known: Known, about: str
) -> list[TrainingSet]:
    """Return the record with an element's numbers in their place; two where either is possible."""
    holds = known.hold or one.seconds is not None
    q = [x for x in element.quantities if x.role != "sets" and (holds or x.role != "seconds")]
    if len(q) >= 2:
        load, amount = _load_and_amount(q[0], q[1], element.joints[1], one, known)
        return [_with_amount(_with_load(one, load, known), amount, known)]
    if not q:
        return []
    only = q[0]
    if only.role in {"load", "pair", "plates"}:
        return [_with_load(one, only, known)]
    if only.role in {"reps", "seconds"}:
        return [_with_amount(one, only, known)]
    as_load, as_amount = _with_load(one, only, known), _with_amount(one, only, known)
    if about in {"load", "amount"}:
        return [as_load] if about == "load" else [as_amount]
    if old:
        matches_load = one.load in old and one.load_kind != "body"
        matches_amount = Decimal(one.amount) in old
        if matches_load != matches_amount:
            return [as_load] if matches_load else [as_amount]
    fits_amount = only.value == int(only.value) and only.value <= (MOST_REPS if not known.hold else 600)
    fits_load = (
        one.load_kind != "body" and one.load > 0 and LIGHTEST * one.load <= only.value <= HEAVIEST * one.load
    )
    if fits_amount and fits_load:
        return [as_load, as_amount]
    if fits_load or (not fits_amount and one.load_kind != "body"):
        return [as_load]
    if only.value != int(only.value):
        return [as_amount] if one.load_kind == "body" and only.value < 50 else [as_load]
    return [as_amount]


def _load_and_amount(
    first: Quantity, second: Quantity, joint: str, one: TrainingSet, known: Known
) -> tuple[Quantity, Quantity]:
    if first.role in {"reps", "seconds"} or second.role == "load" or joint == "@":
        return second, first
    if first.role is None and second.role is None and known.order(first, second) == "reps first":
        return second, first
    if first.role is None and second.role is None and one.load_kind != "body" and one.load > 0:
        fits = LIGHTEST * one.load <= first.value <= HEAVIEST * one.load
        if (
            not fits
            and LIGHTEST * one.load <= second.value <= HEAVIEST * one.load
            and first.value <= MOST_REPS
        ):
            return second, first
    return first, second


def _with_load(one: TrainingSet, q: Quantity, known: Known) -> TrainingSet:
    unit: Unit = q.unit if q.unit in {"kg", "lb"} else one.unit
    kind: LoadKind = one.load_kind if one.load_kind != "body" else known.kind
    if q.kind is not None or q.each or q.role == "pair":
        kind = known.kind_of(q)
    if kind == "body" or (q.value == 0 and one.load_kind in {"added", "assist"}):
        return replace(one, load=Decimal(0), load_kind="body", unit=unit)
    return replace(one, load=q.value, unit=unit, load_kind=kind)


def _with_amount(one: TrainingSet, q: Quantity, known: Known) -> TrainingSet:
    if one.seconds is not None or (known.hold and one.reps is None):
        return replace(one, seconds=int(q.value))
    return replace(one, reps=int(q.value), lowering_only=one.lowering_only or q.lowering)


def _open(one: TrainingSet, request: Request, asks: tuple[str, ...], *, drop_load: bool = False) -> OpenSet:
    return OpenSet(
        exercise=None if "exercise" in asks else one.exercise,
        load=None if drop_load else one.load,
        unit=one.unit,
        load_kind=None if drop_load else one.load_kind,
        reps=one.reps,
        seconds=one.seconds,
        lowering_only=one.lowering_only,
        to_failure=one.to_failure,
        rir=one.rir,
        on=one.on or request.sent.date(),
        asks=asks,  # type: ignore[arg-type] # literals of the callers
    )
