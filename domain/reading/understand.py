"""One message into a reading: the order in which the rooms of this package are walked through.

Text → tokens → names, pain and warning signs, days → what is no record → phrases and numbers → groups → sets.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from domain.reading import scope, wants
from domain.reading.body import find_pain
from domain.reading.correct import put_right
from domain.reading.correction_signs import is_correction, is_set_again, mark_old_numbers
from domain.reading.correction_words import ASKED_FOR
from domain.reading.danger import danger_pain, signs
from domain.reading.days import find_days
from domain.reading.days_of_sets import day_finder, training_days
from domain.reading.done_only import done_beside, done_without_numbers
from domain.reading.draft_sets import DraftSets
from domain.reading.element import Element
from domain.reading.everything import of_everything
from domain.reading.failing_things import mark_failing_things
from domain.reading.gather import Group, gather
from domain.reading.greetings import is_greeting
from domain.reading.loads import Loads
from domain.reading.message import Message, message_of
from domain.reading.naming import Named, names_for
from domain.reading.out_of_strength import strange_words
from domain.reading.phrases import Mark, find_marks
from domain.reading.pointers import find_pointers
from domain.reading.quantities import Quantity, find_quantities
from domain.reading.request import Heard, OpenSet, Pain, Reading, Request, Slot, Want
from domain.reading.resolve import Placed, Resolver
from domain.reading.said_again import without_repeats
from domain.reading.scope_words import THE_BODY
from domain.reading.scores import score_spans
from domain.reading.second_thoughts import with_changes
from domain.reading.sides import lower_of_sides
from domain.reading.tokens import LONGEST
from domain.reading.told_later import with_what_is_meant
from domain.reading.unexplained import unexplained
from domain.reading.want_words import UNDO
from domain.reading.wanted import Wanted
from domain.reading.which_exercise import Exercises
from domain.reading.words import words_of
from domain.sets import TrainingSet
from domain.units import Unit

_DEAD = frozenset(
    {
        "a question",
        "another's",
        "a plan",
        "a warm-up",
        "what was before",
        "body weight",
        "a body weight",
        "long ago",
        "a setting",
        "a saying",
        "so many still to do",
    }
)

_ANOTHER = words_of("another again then second 2nd next nd third rd more also afterwards later after other")
"""Words between two sets told that make the second one more, though both are alike."""

_LAST_TIME = words_of("last before usual always previous yesterday")
"""Words by which "the same" is that of another day, and no set more."""


def read(request: Request) -> Reading:
    """Return what the client's message means. Pure, and linear in the length of the text."""
    text = request.text
    cut = len(text) > LONGEST
    message = message_of(text[:LONGEST] if cut else text)
    if not message.tokens:
        return Reading(cut=cut)
    return replace(_read(request, message), cut=cut) if cut else _read(request, message)


def _read(request: Request, message: Message) -> Reading:
    names = names_for(tuple([p.name for p in request.plan]), tuple(request.own_names.items()))
    found_names = [n for n in names.find(message) if not is_greeting(message, n, request)]
    named = all_named = with_what_is_meant(message, found_names)
    found_signs = signs(message)
    pain = find_pain(message, named)
    if found_signs:
        pain = danger_pain(message, found_signs, pain)
    named = [n for n in named if not all(message.taken[n.start : n.end])]
    for start, end in score_spans(message):
        message.take(start, end, "an effort")
    days = find_days(message, frozenset([n.start for n in named]))
    for day in days:
        message.take(day.start, day.end, "a day")
    undo = wants.find_undo(message, named, request.done[-1].exercise if request.done else None)
    correcting = is_correction(message, request, named, days)
    pointers = find_pointers(message)
    mark_failing_things(message)
    marks = find_marks(message, named)
    without_load = {at for mark in marks if mark.kind == "body" for at in range(mark.start, mark.end)}
    if without_load:
        # "Only with body weight" names no exercise, though one may be called by it.
        named = [n for n in named if not without_load.issuperset(range(n.start, n.end))]
    unit = _unit_said(marks) or request.unit
    ask_unit = "unit unknown" in [mark.kind for mark in marks]
    if correcting:
        questions: list[tuple[int, int]] = []
        mark_old_numbers(message, request, named)
        scope.mark_people_and_times(message)
        named = [n for n in named if not n.weak or _is_meant(message, n)]
    else:
        questions = scope.mark_what_is_no_record(message, named, _marked(marks), _aimed_for(request))
    marks = [
        m for m in marks if _DEAD.isdisjoint(message.taken[m.start : m.end]) and not _is_weighed(message, m)
    ]
    wanted = wants.find_wants(message, named, days, questions, request.sent)
    named = [n for n in named if n not in wanted.used_names]
    marks = with_changes(message, marks)
    quantities = without_repeats(
        message, lower_of_sides(message, find_quantities(message, _marked(marks))), named
    )
    quantities = _without_plates(message, _with_sets_of(message, quantities, named), named)
    if undo is not None:
        # "Sent twice" counts how often, and no reps.
        undone = {at for found in UNDO.find(message) for at in range(found.start, found.end)}
        quantities = [q for q in quantities if q.start not in undone]
    exercises = Exercises(request, unit)
    groups = gather(
        message,
        _outside(message, named, questions),
        marks,
        quantities,
        pointers,
        lambda name: exercises.known(name, exercises.day(request.sent.date())),
        all_count=correcting,
    )
    message.heard.extend(_used(groups))
    message.heard.extend((n.start, n.end, "an exercise to leave out") for n in wanted.used_names)
    for_training = training_days(message, days, quantities, named, wanted)
    all_wants: list[Want] = list(wanted.wants)
    if found_signs and wanted.on is None and "pause" in all_wants:
        # "I feel sick" beside a warning sign is part of it.
        all_wants.remove("pause")
    if (correcting or is_set_again(message, request, groups)) and not (undo and not quantities):
        fixed = put_right(message, request, groups, named, days if correcting else for_training)
        if (fixed.sets or fixed.open) and (quantities or fixed.changes(request)):
            all_wants = [
                "correct",
                *(
                    w
                    for w in all_wants
                    if w == "skip_exercise"
                    or (w == "ask_coach" and "?" in message.words and not ASKED_FOR.is_in(message))
                ),
            ]
            asks = [s for one in fixed.open for s in one.asks]
            return _reading(
                message,
                fixed.sets,
                fixed.open,
                pain,
                bool(found_signs),
                all_wants,
                wanted,
                asks,
                (),
                all_named,
                fixed.replaces,
            )
    if undo is not None and message.text(undo[0]) == "cancel" and _IS_OFF.intersection(wanted.wants):
        # "Can't come today, just cancel it" takes back no set.
        undo = None
    if undo is not None and not any(q.start > undo[1] and not q.times for q in quantities):
        all_wants.append("undo")
        groups = [g for g in groups if g.start > undo[1]]
    resolver = Resolver(
        request,
        exercises,
        DraftSets(Loads(request, unit), ask_unit),
        day_finder(message, for_training, request.sent),
        lambda n: " ".join(message.texts(n.start, n.end)),
        lambda start, end: not _ANOTHER.isdisjoint(message.texts(start, end)),
        lambda start, end: not _LAST_TIME.isdisjoint(message.texts(start, end)),
        strange_words(message, named, groups, marks),
        unexplained(message, groups, marks),
        _only_one_of([n for n in named if any(start <= n.start < end for start, end in questions)]),
    )
    placed = resolver.run(of_everything(message, groups, all_named, exercises))
    if not placed and not all_wants and not pain and not found_signs:
        placed = done_without_numbers(message, request, resolver, named, questions)
    placed.extend(done_beside(message, resolver, named, questions))
    if (
        "skip_workout" in all_wants
        and any(
            isinstance(p.one, TrainingSet)
            and (p.one.on == request.sent.date() or not message.has(_WILL_NOT_COME))
            for p in placed
        )
        and "rest" not in message.words
    ):
        all_wants.remove("skip_workout")
    message.heard.extend(_counts(groups, placed))
    sets = tuple(p.one for p in placed if isinstance(p.one, TrainingSet))
    opened = tuple(p.one for p in placed if isinstance(p.one, OpenSet))
    asks = [s for one in opened for s in one.asks]
    return _reading(
        message, sets, opened, pain, bool(found_signs), all_wants, wanted, asks, placed, all_named
    )


_WILL_NOT_COME = words_of("cant wont skip skipping coming making cancel cancelling")
"""Words of one who leaves a workout out, beside a set of another day too; "not today" only tells that day."""
_IS_OFF = frozenset({"skip_workout", "move", "pause"})


def _is_meant(message: Message, name: Named) -> bool:
    """Return whether a word that names an exercise only beside others is the one meant: "meant hack", "the
    third set of press"."""
    at = name.start - 1
    if message.text(at) == "of" or message.text(name.end) in {"set", "sets"}:
        return True
    while message.text(at) in {"the", "my"}:
        at -= 1
    return len(name.names) == 1 and message.text(at) in {"meant", "mean"}


_EFFORT = frozenset({"failure", "no failure", "failed on", "rir", "lowering", "every set"})


def _used(groups: Sequence[Group]) -> Iterator[tuple[int, int, str]]:
    """Return the names and the phrases about effort that sets are made of, with what they became."""
    named: Named | None = None
    for group in groups:
        named = group.named or named
        if named is not None and group.items:
            yield named.start, named.end, "an exercise"
        for item in group.items:
            if isinstance(item, Mark) and item.kind in _EFFORT:
                yield item.start, item.end, "effort"


def _counts(groups: Sequence[Group], placed: Sequence[Placed]) -> Iterator[tuple[int, int, str]]:
    """Return the numbers that became no part of a set, but say how many of them there were."""
    for element in (item for group in groups for item in group.items if isinstance(item, Element)):
        within = [place for place in placed if element.start <= place.start < place.end <= element.end]
        for each in element.quantities:
            is_beside = all(each.end <= place.start or place.end <= each.start for place in within)
            if within and is_beside and each.value == len(within):
                yield each.start, each.end, "how many sets"


def _spoken_of(named: Sequence[Named]) -> tuple[str, ...]:
    """Return the exercises named without doubt, each once."""
    return tuple(dict.fromkeys(n.names[0] for n in named if len(n.names) == 1))


def _reading(
    message: Message,
    sets: tuple[TrainingSet, ...],
    opened: tuple[OpenSet, ...],
    pain: tuple[Pain, ...],
    urgent: bool,  # noqa: FBT001 - one of the reading's fields
    all_wants: Sequence[Want],
    wanted: Wanted,
    asks: Sequence[Slot],
    placed: Sequence[Placed],
    named: Sequence[Named],
    replaces: tuple[int, ...] = (),
) -> Reading:
    heard = message.heard
    for place in placed:
        if place.end:
            what = "a set" if isinstance(place.one, TrainingSet) else "an open set"
            heard.append((place.start, place.end, what))
    tokens = message.tokens
    words = [Heard(tokens[s].start, tokens[e - 1].end, what) for s, e, what in heard if e > s]
    words.sort()
    told_in = tuple(
        (tokens[place.start].start, tokens[place.end - 1].end) if place.end else (0, 0)
        for place in placed
        if isinstance(place.one, TrainingSet)
    )
    return Reading(
        sets=sets,
        pain=pain,
        urgent=urgent,
        wants=tuple(dict.fromkeys(all_wants)),
        skips=wanted.skips,
        on=wanted.on,
        asks=tuple(dict.fromkeys([*asks, *wanted.asks])),
        open=opened,
        words=tuple(words),
        names=_spoken_of(named),
        replaces=replaces,
        told_in=told_in,
        absence=wanted.absence,
    )


_LIGHTEST_AIM = 20
"""A lighter load could be the reps of a warm-up set."""


def _aimed_for(request: Request) -> frozenset[Decimal]:
    """Return the loads of the sets that are aimed for or to be beaten."""
    sets = (*request.target.values(), *request.last.values())
    return frozenset(one.load for one in sets if one.load >= _LIGHTEST_AIM)


def _marked(marks: Iterable[Mark]) -> set[int]:
    return {at for m in marks for at in range(m.start, m.end)}


def _unit_said(marks: Sequence[Mark]) -> Unit | None:
    """Return the unit that is said of all loads of the message, the last one said."""
    said = [_UNITS[mark.kind] for mark in marks if mark.kind in _UNITS]
    return said[-1] if said else None


_UNITS: dict[str, Unit] = {"all kg": "kg", "all lb": "lb"}


_BEFORE_WEIGHT = words_of(": is was at this morning evening today now currently yesterday")


def _is_weighed(message: Message, mark: Mark) -> bool:
    """Return whether the client tells what they weigh: "body weight this morning 64.2"."""
    if mark.kind != "body":
        return False
    at = mark.end
    while message.text(at) in _BEFORE_WEIGHT:
        at += 1
    return message.taken[at : at + 1] == ["body weight"]


def _with_sets_of(message: Message, quantities: list[Quantity], named: Sequence[Named]) -> list[Quantity]:
    """Take the number before a name with "sets" for how many they are: "all 3 bench sets 85x6"."""
    of_sets = {n.start for n in named if message.text(n.end) == "sets"}
    return [q._replace(role="sets") if q.role is None and q.end in of_sets else q for q in quantities]


def _without_plates(message: Message, quantities: list[Quantity], named: Sequence[Named]) -> list[Quantity]:
    """Leave out plates that only explain a load that is said in numbers: "140 (so 3 plates a side)"."""
    if "plates" not in [q.role for q in quantities]:
        return quantities
    kept: list[Quantity] = []
    for i, one in enumerate(quantities):
        beside = [
            q
            for q in quantities[max(0, i - 2) : i + 2]
            if q is not one
            and q.role in {None, "load"}
            and q.value >= 20
            and not any(q.end <= n.start < one.start for n in named)
        ]
        if one.role == "plates" and any(
            message.sentence[q.start] == message.sentence[one.start] for q in beside
        ):
            message.take(one.start, one.end, "an explanation")
        else:
            kept.append(one)
    return kept


def _only_one_of(named: Sequence[Named]) -> str | None:
    names = {n.names for n in named if n.names}
    return names.pop()[0] if len(names) == 1 and len(next(iter(names))) == 1 else None


def _outside(message: Message, named: Sequence[Named], questions: Sequence[tuple[int, int]]) -> list[Named]:
    """Leave out the names inside questions, and those in what is no record."""
    inside = {at for s, e in questions for at in range(s, e)}
    return [
        n
        for n in named
        if n.start not in inside
        and message.taken[n.start] not in _NO_RECORD
        and (n.names or message.taken[n.end : n.end + 1] != ["another's"])
    ]


_NO_RECORD = frozenset({"another's", "a plan", THE_BODY})
