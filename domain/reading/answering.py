"""A short answer to one question about an unfinished set, and the set as far as it is then known.

The answer is read with the same rules as a message; a text that is no answer to the question gives None,
so that
it can be read as a message of its own.
"""

from dataclasses import replace
from datetime import date, datetime
from decimal import Decimal

from domain.reading.context import Known, day_of
from domain.reading.day_with_date import day_meant
from domain.reading.days import find_days
from domain.reading.message import Message, message_of
from domain.reading.naming import names_for
from domain.reading.patterns import Pattern
from domain.reading.phrases import Mark, find_marks
from domain.reading.put_right import put_right
from domain.reading.quantities import Quantity, find_quantities
from domain.reading.request import OpenSet, Request, Slot
from domain.reading.tokens import LONGEST, SIGN
from domain.reading.when import days_of_next, past_day, possible_days
from domain.reading.words import FILLERS, KG_WORDS, LB_WORDS, words_of
from domain.sets import TrainingSet
from domain.units import Unit

_YES = words_of(
    """yes y yep yeah yup ya yea correct right exactly sure ok okay true yess yas jep aye indeed"""
)
_NO = words_of("no nope nah not wrong")
_ORDINALS = {
    "first": 0,
    "second": 1,
    "third": 2,
    "fourth": 3,
    "former": 0,
    "latter": 1,
    "1st": 0,
    "2nd": 1,
    "last": -1,
}
_SMALL = FILLERS | words_of(
    """one on was for to with than by each per hand side x added assisted help bar total
    prob probs probably like ish or"""
)
_A_WEEK_AGO = Pattern("^ (a week ago|last week) $")
_LONGEST_ANSWER = 12


def answer(open_set: OpenSet, slot: Slot, text: str, request: Request) -> OpenSet | None:
    """Return `open_set` with the answer to `slot` put in, or None where `text` is no answer to it.

    What is asked stands in the set's `asks`; what has become known leaves it, and what the answer shows to be
    missing enters it, so that `complete()` gives the set once nothing is left to ask.
    """
    message = message_of(text[:LONGEST])
    if not message.tokens or len(message.tokens) > _LONGEST_ANSWER:
        return None
    match slot:
        case "exercise":
            return _exercise(open_set, message, request)
        case "load":
            return _load(open_set, message, request)
        case "reps" | "seconds":
            return _amount(open_set, slot, message)
        case "unit":
            return _unit(open_set, message, request)
        case "date":
            return _date(open_set, message, request)
        case "confirm":
            return _confirm(open_set, message, request)


def is_lone_number(text: str) -> bool:
    """Return whether a text is one number and nothing else: "9", "82.5 kg", "8 reps!"."""
    message = message_of(text[:LONGEST])
    quantities = find_quantities(message, set())
    if len(quantities) != 1 or quantities[0].role in {"sets", "plates"}:
        return False
    (only,) = quantities
    return all(only.start <= at < only.end or t.kind == SIGN for at, t in enumerate(message.tokens))


def days_meant(text: str, sent: datetime) -> tuple[date, ...]:
    """Return the days of a set that the days in a text can mean."""
    days = find_days(message_of(text[:LONGEST]))
    return tuple(dict.fromkeys(meant for day in days for meant in possible_days(day, sent)))


def days_in_doubt(text: str, sent: datetime) -> tuple[date, ...]:
    """Return the days that a day to come in a text can mean, where it must be asked: both "next Fridays"."""
    days = find_days(message_of(text[:LONGEST]))
    return tuple(dict.fromkeys(meant for day in days for meant in days_of_next(day, sent)))


def days_to_come(text: str, sent: datetime) -> tuple[date, ...]:
    """Return the days from that of `sent` on that a text speaks of, in their order: "today or on Friday"."""
    message = message_of(text[:LONGEST])
    days = find_days(message)
    meant = {
        sent.date() if (day.kind, day.values) == ("offset", (0,)) else day_meant(message, day, days, sent)
        for day in days
    }
    return tuple(sorted(day for day in meant if day is not None))


def _asked(open_set: OpenSet, slot: Slot, request: Request) -> OpenSet:
    """Return the set with `slot` answered, and with what is still missing asked."""
    left = tuple(s for s in open_set.asks if s != slot)
    missing: list[Slot] = [*left]
    if open_set.exercise is None:
        missing.append("exercise")
    elif not left:
        if open_set.load is None:
            missing.append("load")
        if open_set.reps is None and open_set.seconds is None:
            missing.append("seconds" if _known(open_set, request).hold else "reps")
        if open_set.on is None:
            missing.append("date")
    return replace(open_set, asks=tuple(dict.fromkeys(missing)))


def _known(open_set: OpenSet, request: Request) -> Known:
    day = day_of(request, open_set.on or request.sent.date())
    return Known(request, open_set.exercise or "", day, request.unit)


def _exercise(open_set: OpenSet, message: Message, request: Request) -> OpenSet | None:
    plan = tuple(p.name for p in request.plan)
    named = names_for(plan, tuple(request.own_names.items())).find(message)
    names = {name for n in named if len(n.names) == 1 for name in n.names}
    if len(names) != 1:
        place = _ordinal(message)
        if names or place is None or not -1 <= place < len(plan) or not plan:
            return None
        names = {plan[place]}
    elif not _numbers_of(message) <= {open_set.load, open_set.reps, open_set.seconds}:
        # "bench 135x8" tells of another set.
        return None
    one = replace(open_set, exercise=names.pop())
    known = _known(one, request)
    if one.load_kind is None or one.load_kind == "total":
        one = replace(one, load_kind=known.kind if one.load else one.load_kind)
    if known.hold and one.seconds is None and one.reps is not None:
        one = replace(one, seconds=one.reps, reps=None)
    elif not known.hold and one.reps is None and one.seconds is not None:
        one = replace(one, reps=one.seconds, seconds=None)
    if known.plan is not None and known.plan.lowering_only:
        one = replace(one, lowering_only=True)
    if one.load is None and "load" not in open_set.asks and (one.reps is not None or one.seconds is not None):
        base = known.load_for_reps()
        if base is not None:
            one = replace(one, load=base.load, unit=base.unit, load_kind=base.load_kind)
    return _asked(one, "exercise", request)


def _numbers_of(message: Message) -> set[Decimal | None]:
    """Return the numbers of a message, without those of a name like "3 way raise"."""
    return {q.value for q in _quantities(message)[0]}


def _ordinal(message: Message) -> int | None:
    for token in message.tokens:
        if token.text in _ORDINALS:
            return _ORDINALS[token.text]
    values = [t.value for t in message.tokens if t.value is not None]
    if (
        len(values) == 1
        and values[0] == int(values[0])
        and all(t.text in _SMALL or t.value is not None for t in message.tokens)
    ):
        return int(values[0]) - 1
    return None


def _quantities(message: Message) -> tuple[list[Quantity], list[Mark]]:
    marks = find_marks(message)
    covered = {at for m in marks for at in range(m.start, m.end)}
    return find_quantities(message, covered), marks


def _is_short(message: Message, quantities: list[Quantity], marks: list[Mark]) -> bool:
    spans = [*((q.start, q.end) for q in quantities), *((m.start, m.end) for m in marks)]
    covered = {at for start, end in spans for at in range(start, end)}
    return all(
        at in covered or t.text in _SMALL or not t.text.isalpha() for at, t in enumerate(message.tokens)
    )


def _load(open_set: OpenSet, message: Message, request: Request) -> OpenSet | None:
    quantities, marks = _quantities(message)
    known = _known(open_set, request)
    if not _is_short(message, quantities, marks):
        return None
    loads = [q for q in quantities if q.role in {None, "load", "pair"}]
    if len(quantities) == 1 and len(loads) == 1 and loads[0].unit != "stone":
        q = loads[0]
        unit: Unit = q.unit if q.unit in {"kg", "lb"} else request.unit
        kind = known.kind_of(q)
        if q.value == 0 or kind == "body":
            return _asked(
                replace(open_set, load=Decimal(0), unit=request.unit, load_kind="body"), "load", request
            )
        return _asked(replace(open_set, load=q.value, unit=unit, load_kind=kind), "load", request)
    if quantities:
        return None
    for mark in marks:
        if mark.kind == "body":
            return _asked(
                replace(open_set, load=Decimal(0), unit=request.unit, load_kind="body"), "load", request
            )
        base = known.target if mark.kind == "target" else known.base(from_last=mark.from_last)
        if base is None or mark.kind not in {"same load", "same all", "target", "up", "down"}:
            continue
        step = mark.value or Decimal(0)
        load = (
            base.load + step if mark.kind == "up" else base.load - step if mark.kind == "down" else base.load
        )
        if load >= 0:
            return _asked(
                replace(open_set, load=load, unit=base.unit, load_kind=base.load_kind), "load", request
            )
    if {t.text for t in message.tokens} <= {"none", "no", "zero", "nothing", "."}:
        return _asked(
            replace(open_set, load=Decimal(0), unit=request.unit, load_kind="body"), "load", request
        )
    return None


def _amount(open_set: OpenSet, slot: Slot, message: Message) -> OpenSet | None:
    quantities, marks = _quantities(message)
    if not _is_short(message, quantities, marks) or len(quantities) != 1:
        return None
    q = quantities[0]
    if (
        q.role not in {None, "reps", "seconds", "pair"}
        or q.unit is not None
        or (slot == "reps" and q.role == "seconds")
    ):
        return None
    amount = int(q.value)
    asks = tuple(s for s in open_set.asks if s not in {slot, "reps", "seconds"})
    one = replace(open_set, asks=asks)
    for mark in marks:
        if mark.kind == "failure":
            one = replace(one, to_failure=True)
        elif mark.kind == "no failure":
            one = replace(one, to_failure=False)
        elif mark.kind == "rir":
            one = replace(one, rir=mark.value, to_failure=True if mark.value == 0 else one.to_failure)
    if slot == "seconds":
        return replace(one, seconds=amount) if amount <= 3600 else None
    return replace(one, reps=amount, lowering_only=one.lowering_only or q.lowering) if amount <= 300 else None


def _unit(open_set: OpenSet, message: Message, request: Request) -> OpenSet | None:
    words = {t.text for t in message.tokens}
    kg, lb = bool(words & KG_WORDS), bool(words & LB_WORDS)
    quantities, marks = _quantities(message)
    if quantities and quantities[0].unit in {"kg", "lb"}:
        return _asked(replace(_load(open_set, message, request) or open_set), "unit", request)
    del marks
    if kg == lb:
        return None
    unit: Unit = "kg" if kg else "lb"
    return _asked(replace(open_set, unit=unit), "unit", request)


def _date(open_set: OpenSet, message: Message, request: Request) -> OpenSet | None:
    for day in find_days(message):
        on: date | None = past_day(day, request.sent)
        if on is None and day.kind in {"weekday", "last weekday"}:
            # Today's own weekday: "last Monday" is a week ago; "Monday" alone stays unclear.
            on = date.fromordinal(request.sent.date().toordinal() - 7) if day.kind == "last weekday" else None
        if on is not None:
            return _asked(replace(open_set, on=on), "date", request)
    if _A_WEEK_AGO.is_in(message):
        return _asked(
            replace(open_set, on=date.fromordinal(request.sent.date().toordinal() - 7)), "date", request
        )
    return None


def _confirm(open_set: OpenSet, message: Message, request: Request) -> OpenSet | None:
    candidates = open_set.candidates
    words = [t.text for t in message.tokens]
    if _names_another(open_set, message, request):
        return None
    if words and words[0] in _YES and len(words) <= 4 and candidates:
        return _chosen(candidates[0])
    place = _ORDINALS.get(next((w for w in words if w in _ORDINALS), ""))
    if place is not None and len(words) <= 4 and candidates and place < len(candidates):
        return _chosen(candidates[place])
    quantities, marks = _quantities(message)
    matching = [c for c in candidates if _says(c, quantities)]
    if len(matching) == 1:
        return _chosen(matching[0])
    says_otherwise = bool(words) and words[0] in _NO
    if len(quantities) == 1 and open_set.bare is None and quantities[0].unit in {None, open_set.unit}:
        # "60" to "62.5 for 7, right?" needs no "no" before it.
        says_otherwise = says_otherwise or _is_short(message, quantities, marks)
    if candidates and not matching and says_otherwise:
        right = put_right(candidates[0], quantities, _known(open_set, request))
        if right is not None:
            return _chosen(right)
    if len(quantities) == 1 and open_set.bare is not None and not matching:
        q = quantities[0]
        if q.role == "reps" and q.value == open_set.bare and open_set.exercise is not None:
            return _asked(replace(open_set, reps=int(q.value), candidates=()), "confirm", request)
        if q.role == "load" and q.value == open_set.bare:
            unit: Unit = q.unit if q.unit in {"kg", "lb"} else request.unit
            known = _known(open_set, request)
            return _asked(
                replace(
                    open_set, load=q.value, unit=unit, load_kind=known.kind_of(q), reps=None, candidates=()
                ),
                "confirm",
                request,
            )
        if _is_short(message, quantities, marks):
            return _with_the_other_number(open_set, open_set.bare, q, request)
    return None


def _names_another(open_set: OpenSet, message: Message, request: Request) -> bool:
    """Return whether an answer names another exercise, and so tells of another set."""
    if open_set.exercise is None:
        return False
    plan = tuple(p.name for p in request.plan)
    named = names_for(plan, tuple(request.own_names.items())).find(message)
    return any(not n.weak and n.names and open_set.exercise not in n.names for n in named)


def _with_the_other_number(open_set: OpenSet, said: Decimal, q: Quantity, request: Request) -> OpenSet | None:
    """Return the set of the lone number that was asked about, and the number now added to it: "14", "10"."""
    known = _known(open_set, request)
    first = Quantity(said, 0, 0)
    if open_set.exercise is None or q.value == said or q.role not in {None, "load", "reps", "seconds"}:
        return None
    if q.role is None:
        order = known.order(first, q)
        if order == "neither":
            return None
        load, amount = (q, first) if order == "reps first" else (first, q)
    else:
        load, amount = (q, first) if q.role == "load" else (first, q)
    if not known.reps_fit(amount) or (amount.role == "seconds") > known.hold or load.unit == "stone":
        return None
    unit: Unit = load.unit if load.unit in {"kg", "lb"} else request.unit
    one = replace(
        open_set,
        load=load.value,
        unit=unit,
        load_kind=known.kind_of(load),
        reps=None if known.hold else int(amount.value),
        seconds=int(amount.value) if known.hold else None,
        candidates=(),
    )
    return _asked(one, "confirm", request)


def _says(one: TrainingSet, quantities: list[Quantity]) -> bool:
    """Return whether the numbers of an answer are those of a candidate: "15 kg for 12", "12 reps", "100
    kg"."""
    if not quantities:
        return False
    for i, q in enumerate(quantities):
        if q.role == "load" and q.value != one.load:
            return False
        if q.unit is not None and q.unit != one.unit:
            return False
        if q.role == "pair" and q.value != (one.load if one.seconds is None else one.seconds):
            return False
        if q.role in {"reps", "seconds"} and q.value != one.amount:
            return False
        if (
            q.role is None
            and q.value != (one.load if i == 0 and len(quantities) > 1 else one.amount if i else None)
            and (len(quantities) > 1 or q.value != one.load)
        ):
            return False
    return True


def _chosen(one: TrainingSet) -> OpenSet:
    return OpenSet(
        exercise=one.exercise,
        load=one.load,
        unit=one.unit,
        load_kind=one.load_kind,
        reps=one.reps,
        seconds=one.seconds,
        lowering_only=one.lowering_only,
        to_failure=one.to_failure,
        rir=one.rir,
        on=one.on,
    )
