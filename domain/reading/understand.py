"""One message into a reading: the order in which the rooms of this package are walked through.

Text → tokens → names, pain and warning signs, days → what is no record → phrases and numbers → groups → sets.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import date, datetime

from domain.reading import scope, wants
from domain.reading.body import find_pain
from domain.reading.correct import put_right
from domain.reading.correction_signs import is_correction, is_set_again, mark_old_numbers
from domain.reading.danger import danger_pain, signs
from domain.reading.days import Day, find_days
from domain.reading.draft_sets import DraftSets
from domain.reading.gather import Group, gather
from domain.reading.loads import Loads
from domain.reading.message import Message, message_of
from domain.reading.naming import Named, names_for
from domain.reading.phrases import Mark, find_marks
from domain.reading.pointers import find_pointers
from domain.reading.quantities import Quantity, find_quantities
from domain.reading.request import Heard, OpenSet, Reading, Request, Slot, Want
from domain.reading.resolve import Placed, Resolver
from domain.reading.tokens import LONGEST, NUMBER
from domain.reading.training_day import is_for_training, looks_back
from domain.reading.wanted import Wanted
from domain.reading.when import past_day
from domain.reading.which_exercise import Exercises
from domain.reading.words import FILLERS, words_of
from domain.sets import TrainingSet
from domain.units import Unit

_CHANGE = re.compile(
    r"(?:(?<=# )|(?<= ))(?:(?:no+|nope|wait|sorry|oops|whoops|ugh|er|erm|uh|um|hmm|hang on|hold on|i mean"
    r"|i meant|actually|correction|make that|make it|scratch that|scrap that|or rather|rather|my bad|typo"
    r"|should be|should say|it was|that was|i did|i got|its|it is|thats|was|meant|sry|eh|err|argh|,|-|:"
    r"|\.|\*|only|just|more like|in fact|lol|haha|for|at|with|x"
    r"|(?:i )?(?:only |actually |really )*had # (?:(?:kgs?|kilos?|lbs?|pounds?) )?on(?: the bar"
    r"| it)?) )+(?=#)"
)
_DEAD = frozenset(
    {"a question", "another's", "a plan", "a warm-up", "what was before", "body weight", "a body weight"}
)
_CHANGE_TRIGGERS = words_of(
    """no nope wait sorry oops mean meant actually correction make scratch scrap rather bad typo
    should noo nooo
    whoops sry"""
)
_CHANGE_STRONG = re.compile(
    r"\b(?:no+|nope|wait|sorry|oops|whoops|i mean|i meant|actually|correction|make that|make it"
    r"|scratch that|scrap that|rather|my bad|typo|should be|should say|meant|sry)\b"
)
_DONE = re.compile(
    r"\b(?:done|finished|completed|did|ticked off|complete|nailed|smashed|crushed|got through|in the bag"
    r"|sorted|knocked out|through with)\b"
)
_DONE_ALONE = re.compile(
    r"^(?:(?:ok|okay|all|yes|yep|and|just|it s|its|thats|im|i am|that s|set|sets|got it|there|phew|right"
    r"|now|coach|hi|well) )*(?:done|finished|completed|complete|did it|done it|did them"
    r"|did that)(?: (?:it|now|coach|that|one|set|thanks|!|\.|,|with that))*$"
)


def read(request: Request) -> Reading:
    """Return what the client's message means. Pure, and linear in the length of the text."""
    text = request.text
    cut = len(text) > LONGEST
    message = message_of(text[:LONGEST] if cut else text)
    if not message.tokens:
        return Reading(cut=cut)
    return replace(_read(request, message), cut=cut) if cut else _read(request, message)


def _read(request: Request, message: Message) -> Reading:
    names = names_for(tuple(p.name for p in request.plan), tuple(request.own_names.items()))
    named = all_named = names.find(message)
    found_signs = signs(message)
    pain = find_pain(message, named)
    if found_signs:
        pain = danger_pain(message, found_signs, pain)
    named = [n for n in named if not all(message.taken[at] for at in range(n.start, n.end))]
    days = find_days(message)
    for day in days:
        message.take(day.start, day.end, "a day")
    undo = wants.find_undo(message)
    correcting = is_correction(message, request, named)
    pointers = find_pointers(message)
    unit, ask_unit, marks = _units(request.unit, find_marks(message, named))
    if correcting:
        questions: list[tuple[int, int]] = []
        mark_old_numbers(message)
        named = [n for n in named if not n.weak]
    else:
        questions = scope.mark_what_is_no_record(message, named, _marked(marks))
    marks = [
        m
        for m in marks
        if not any(message.taken[at] in _DEAD for at in range(m.start, m.end)) and not _is_weighed(message, m)
    ]
    wanted = wants.find_wants(message, named, days, questions, request.sent)
    named = [n for n in named if n not in wanted.used_names]
    marks = _with_changes(message, marks)
    quantities = _without_plates(message, _sides(message, find_quantities(message, _marked(marks))))
    groups = gather(
        message, _outside(message, named, questions), marks, quantities, pointers, all_count=correcting
    )
    for_training = _training_days(message, days, quantities, named, request.sent, wanted)
    all_wants: list[Want] = list(wanted.wants)
    if (correcting or is_set_again(message, request, groups)) and not (undo and not quantities):
        fixed = put_right(message, request, groups, named, days if correcting else for_training)
        if fixed.sets or fixed.open:
            all_wants = [
                "correct",
                *(
                    w
                    for w in all_wants
                    if w == "skip_exercise" or (w == "ask_coach" and "?" in message.words)
                ),
            ]
            asks = [s for one in fixed.open for s in one.asks]
            reading = _reading(
                message, fixed.sets, fixed.open, pain, bool(found_signs), all_wants, wanted, asks, ()
            )
            return replace(reading, replaces=fixed.replaces, names=_spoken_of(all_named))
    if undo is not None and not any(q.start > undo[1] for q in quantities):
        all_wants.append("undo")
        groups = [g for g in groups if g.start > undo[1]]
    resolver = Resolver(
        request,
        Exercises(request, unit),
        DraftSets(Loads(request, unit), ask_unit),
        _day_finder(message, for_training, request.sent),
        lambda n: " ".join(message.texts(n.start, n.end)),
    )
    placed = resolver.run(groups)
    if not placed and not all_wants and not pain and not found_signs:
        placed = _done_without_numbers(message, request, resolver, named, questions)
    if (
        "skip_workout" in all_wants
        and any(isinstance(p.one, TrainingSet) for p in placed)
        and "rest" not in message.words
    ):
        all_wants.remove("skip_workout")
    sets = tuple(p.one for p in placed if isinstance(p.one, TrainingSet))
    opened = tuple(p.one for p in placed if isinstance(p.one, OpenSet))
    asks = [s for one in opened for s in one.asks]
    reading = _reading(message, sets, opened, pain, bool(found_signs), all_wants, wanted, asks, placed)
    return replace(reading, names=_spoken_of(all_named))


def _spoken_of(named: Sequence[Named]) -> tuple[str, ...]:
    """Return the exercises named without doubt, each once."""
    return tuple(dict.fromkeys(n.names[0] for n in named if len(n.names) == 1))


def _reading(
    message: Message,
    sets: tuple[TrainingSet, ...],
    opened: tuple[OpenSet, ...],
    pain: tuple,  # type: ignore[type-arg] # of Pain
    urgent: bool,  # noqa: FBT001 - one of the reading's fields
    all_wants: Sequence[Want],
    wanted: Wanted,
    asks: Sequence[Slot],
    placed: Sequence[Placed],
) -> Reading:
    heard = [
        *message.heard,
        *(
            (p.start, p.end, "a set" if isinstance(p.one, TrainingSet) else "an open set")
            for p in placed
            if p.end
        ),
    ]
    tokens = message.tokens
    words = tuple(sorted(Heard(tokens[s].start, tokens[e - 1].end, what) for s, e, what in heard if e > s))
    return Reading(
        sets=sets,
        pain=pain,
        urgent=urgent,
        wants=tuple(dict.fromkeys(all_wants)),
        skips=wanted.skips,
        on=wanted.on,
        asks=tuple(dict.fromkeys([*asks, *wanted.asks])),
        open=opened,
        words=words,
    )


def _marked(marks: Iterable[Mark]) -> set[int]:
    return {at for m in marks for at in range(m.start, m.end)}


def _units(usual: Unit, marks: list[Mark]) -> tuple[Unit, bool, list[Mark]]:
    """Return the unit of bare loads in this message, and whether it must be asked."""
    unit = usual
    ask = False
    kept: list[Mark] = []
    for mark in marks:
        if mark.kind == "all kg":
            unit = "kg"
        elif mark.kind == "all lb":
            unit = "lb"
        elif mark.kind == "unit unknown":
            ask = True
        kept.append(mark)
    return unit, ask, kept


_BEFORE_WEIGHT = words_of(": is was at this morning evening today now currently tonight yesterday")


def _is_weighed(message: Message, mark: Mark) -> bool:
    """Return whether the client tells what they weigh: "body weight this morning 64.2"."""
    at = mark.end
    while message.text(at) in _BEFORE_WEIGHT:
        at += 1
    return mark.kind == "body" and message.taken[at : at + 1] == ["body weight"]


def _with_changes(message: Message, marks: list[Mark]) -> list[Mark]:
    """Add the places where the client changes their mind within the message."""
    if not message.has(_CHANGE_TRIGGERS):
        return marks
    added: list[Mark] = []
    for match, start, end in message.find(_CHANGE):
        if not _CHANGE_STRONG.search(match.group()):
            continue
        number_before = any(
            message.value(at) is not None and not message.taken[at] for at in range(max(0, start - 8), start)
        )
        if number_before:
            added.append(Mark("change", start if "#" in match.group() else end - 1, end))
    if not added:
        return marks
    spans = {at for m in added for at in range(m.start - 6, m.end)}
    return sorted([*(m for m in marks if m.start not in spans), *added], key=lambda m: m.start)


def _without_plates(message: Message, quantities: list[Quantity]) -> list[Quantity]:
    """Leave out plates that only explain a load that is said in numbers: "140 (so 3 plates a side)"."""
    if not any(q.role == "plates" for q in quantities):
        return quantities
    kept: list[Quantity] = []
    for i, one in enumerate(quantities):
        beside = [
            q
            for q in quantities[max(0, i - 1) : i + 2]
            if q is not one and q.role in {None, "load"} and q.value >= 20
        ]
        if one.role == "plates" and any(
            message.sentence[q.start] == message.sentence[one.start] for q in beside
        ):
            message.take(one.start, one.end, "an explanation")
        else:
            kept.append(one)
    return kept


_SIDE_WORDS = {"left", "right", "l", "r", "lft", "rt"}


def _sides(message: Message, quantities: list[Quantity]) -> list[Quantity]:
    """Take different reps on two sides as the lower: "10 left, 8 right", "10/9 l/r"."""
    if message.words.isdisjoint(_SIDE_WORDS):
        return quantities
    kept: list[Quantity] = []
    i = 0
    while i < len(quantities):
        one = quantities[i]
        following = quantities[i + 1] if i + 1 < len(quantities) else None
        if following is not None and one.unit is None and following.unit is None:
            between = message.texts(one.end, following.start)
            after = message.texts(following.end, following.end + 4)
            each_sided = (
                {message.text(one.start - 1), *between} & _SIDE_WORDS
                and {*between, *after[:2]} & _SIDE_WORDS
                and _beside_side(message, one)
            ) or len({w[0] for w in after if w in _SIDE_WORDS}) == 2
            around = {message.text(one.start - 1), *between, *after}
            sided = (
                {w for w in around if w in _SIDE_WORDS}
                if each_sided and one.role in {None, "reps", "seconds"}
                else set()
            )
            near = len(between) <= 8 and all(
                w in _SIDE_WORDS
                or (w in FILLERS and w != "x")
                or w in {",", "/", "and", "on", "the", "side", "leg", "arm", "with", "but", "only", "&", "-"}
                for w in between
            )
            if near and len({w[0] for w in sided}) == 2:
                lower = min(one.value, following.value)
                kept.append(
                    one._replace(
                        value=lower, role=one.role or "reps", end=_after_sides(message, following.end)
                    )
                )
                i += 2
                continue
        kept.append(one)
        i += 1
    return kept


def _beside_side(message: Message, one: Quantity) -> bool:
    """Return whether a side stands right beside a number."""
    after = [w for w in message.texts(one.end, one.end + 4) if w not in {"on", "the", "my", "with", "reps"}]
    before = [
        w
        for w in message.texts(max(0, one.start - 3), one.start)
        if w not in {"on", "the", "my", ":", "with", "side", "leg", "arm"}
    ]
    return (after[:1] or [""])[0] in _SIDE_WORDS or (before[-1:] or [""])[0] in _SIDE_WORDS


def _after_sides(message: Message, at: int) -> int:
    while message.text(at) in _SIDE_WORDS or (
        message.text(at) in {"on", "the", "/", "side", "leg", "arm"}
        and message.text(at + 1) in _SIDE_WORDS | {"the"}
    ):
        at += 1
    return at


def _outside(message: Message, named: Sequence[Named], questions: Sequence[tuple[int, int]]) -> list[Named]:
    """Leave out the names inside questions, and those in what is no record."""
    inside = {at for s, e in questions for at in range(s, e)}
    no_record = {"another's", "a plan", scope.THE_BODY}
    return [n for n in named if n.start not in inside and message.taken[n.start] not in no_record]


def _training_days(
    message: Message,
    days: Sequence[Day],
    quantities: Sequence[Quantity],
    named: Sequence[Named],
    sent: datetime,
    wanted: Wanted,
) -> list[Day]:
    def has_set(start: int, end: int) -> bool:
        return any(start <= q.start < end for q in quantities) or any(
            start <= n.start < end and not n.weak for n in named
        )

    kept: list[Day] = []
    for day in days:
        if day.kind == "next weekday" or (day.kind == "offset" and day.values[0] > 0):
            continue
        if (
            {"move", "pause"} & set(wanted.wants)
            and day.kind in {"weekday", "day of month", "numbers"}
            and wanted.on is not None
            and not has_set(*message.clause_span(day.start))
        ):
            continue
        if is_for_training(message, day, has_set):
            kept.append(day)
    del sent
    return kept


def _day_finder(message: Message, days: Sequence[Day], sent: datetime):  # type: ignore[no-untyped-def] # see Resolver.day_at
    today = sent.date()
    if not days:
        return lambda _at: today

    def day_at(at: int) -> date | None:
        at = min(at, len(message.tokens) - 1)
        clause = message.clause[at]
        sentence = message.sentence[at]
        here = [d for d in days if message.clause[d.start] == clause]
        if here:
            before = [d for d in here if d.start <= at]
            return past_day(before[-1] if before else here[0], sent)
        before = [d for d in days if d.start <= at]
        following = [d for d in days if d.start > at and message.sentence[d.start] == sentence]
        if before:
            return past_day(before[-1], sent)
        if following:
            rest = range(following[0].end, len(message.tokens))
            if not any(
                message.tokens[i].kind == NUMBER and not message.taken[i] and message.sentence[i] == sentence
                for i in rest
            ):
                return past_day(following[0], sent)
        if (
            len(days) == 1
            and days[0].start > at
            and (message.sentence[days[0].start] == sentence + 1 or looks_back(message, days[0]))
            and not any(
                message.tokens[i].kind == NUMBER and not message.taken[i]
                for i in range(days[0].start, len(message.tokens))
            )
        ):
            return past_day(days[0], sent)
        return today

    return day_at


def _done_without_numbers(
    message: Message,
    request: Request,
    resolver: Resolver,
    named: Sequence[Named],
    questions: Sequence[tuple[int, int]],
) -> list[Placed]:
    """Return an open set where an exercise is only said to be done."""
    if questions:
        return []
    match = _DONE.search(message.line)
    if match is None:
        return []
    at, _ = message.span(match)
    exercise: str | None = None
    if _DONE_ALONE.match(message.line):
        exercise = resolver.exercises.next(resolver.exercises.day(request.sent.date()))
    else:
        near = [
            n
            for n in named
            if not n.weak and message.sentence[n.start] == message.sentence[at] and len(n.names) == 1
        ]
        if near and _says_done(message, near, at):
            exercise = near[0].names[0]
    if exercise is None:
        return []
    return resolver.run(
        [Group(Named(at, at, (exercise,)), [Mark("done", at, at + 1)], sentence=message.sentence[at])]
    )


def _says_done(message: Message, near: Sequence[Named], at: int) -> bool:
    inside = {i for n in near for i in range(n.start, n.end)}
    first, last = message.sentence_span(at)
    small = FILLERS | {
        "with",
        "finished",
        "completed",
        "nailed",
        "smashed",
        "crushed",
        "complete",
        "were",
        "are",
        "both",
        "off",
        "ticked",
        "through",
        "sorted",
    }
    return all(
        i in inside or message.text(i) in small or not message.text(i).isalpha() for i in range(first, last)
    )
