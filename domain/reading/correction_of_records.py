"""Whether a message speaks of what is recorded, so that it can only put that right."""

import itertools
from collections.abc import Sequence
from decimal import Decimal

from domain.reading.correction_claims import MAY_CLAIM, claims, is_said_again_of_another
from domain.reading.correction_of_days import is_of_another_day
from domain.reading.correction_words import (
    ALL_FEW_ARE,
    COUNTING,
    INSTEAD,
    LAST_FEW_ARE,
    NO_FIRST,
    NTH_SET,
    POINTING,
    SORRY,
    UNIT_AFTER,
    VALUE_AFTER,
)
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern, words_needed
from domain.reading.request import Request
from domain.reading.when import past_day
from domain.reading.words import words_of

_IS = words_of("was were should")
_SAYS_OF_EXERCISE = _IS | {"is", "are"}
_MAY_SPEAK_OF_RECORDS = (
    words_needed(NO_FIRST, INSTEAD, LAST_FEW_ARE, ALL_FEW_ARE, SORRY, UNIT_AFTER)
    | MAY_CLAIM
    | _SAYS_OF_EXERCISE
    | {"not"}
)
"""Words without which, and without a day, nothing recorded is spoken of."""


def is_of_what_is_recorded(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day]
) -> bool:
    """Return whether the message can only mean something recorded."""
    if not days and not message.has(_MAY_SPEAK_OF_RECORDS):
        return False
    return (
        _is_of_a_full_exercise(message, request, named)
        or _is_of_a_recorded_day(message, request, named, days)
        or _is_one_exercise_not_another(message, named)
        or _is_no_and_a_number(message)
        or _is_instead_of_what_is_recorded(message, request, named)
        or LAST_FEW_ARE.is_in(message)
        or _is_of_all_recorded(message, request, named)
        or is_of_another_day(message, request, named, days)
        or is_said_again_of_another(message, request, named)
        or _is_sorry_of_a_record(message, request, named)
        or _is_in_another_unit(message, request, named)
        or next(claims(message, request, named), None) is not None
    )


def _is_of_a_full_exercise(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "the plank was 50 seconds" speaks of an exercise whose sets are all recorded already.

    "That plank set was …", "both squat sets were …" speak of what is recorded, however many sets are left.
    """
    if not named or any(len(n.names) != 1 for n in named) or not _stand_together(message, named):
        return False
    last = named[-1].end
    after = [w for w in message.texts(last, last + 3) if w not in {"set", "sets", "one", "ones"}]
    if _SAYS_OF_EXERCISE.isdisjoint(after[:1]):
        return False
    place = NTH_SET.first(message)
    numbers = [
        i
        for i, t in enumerate(message.tokens)
        if t.value is not None and (place is None or not place.start <= i < place.end)
    ]
    if len(numbers) > 1 or (not numbers and not message.has(COUNTING)) or len(message.tokens) > 12:
        return False
    pointed = _DENIES.at(message, 0) is not None or not POINTING.isdisjoint(
        message.texts(max(0, named[0].start - 2), named[0].start)
    )
    return all(_is_full(request, name.names[0], pointed=pointed) for name in named)


_DENIES = Pattern(
    "[oh|ah|hang on|um|uh|,]* (no|nope|nah|wait|sorry|oops|whoops) [no|,|wait|hang on|actually|that]*"
)
"""What a message begins with that takes back what was told."""


def _is_full(request: Request, name: str, *, pointed: bool) -> bool:
    """Return whether all sets of an exercise are recorded today; of one that is pointed at, any."""
    today = request.sent.date()
    count = sum(1 for one in request.done if one.exercise == name and (one.on or today) == today)
    planned = next((p.sets for p in request.plan if p.name == name), 1)
    return count >= (1 if pointed else planned)


def _stand_together(message: Message, named: Sequence[Named]) -> bool:
    """Return whether the exercises are told in one breath: "squat and bench"."""
    return all(
        _JOINS.issuperset(message.texts(one.end, other.start)) and other.start > one.end
        for one, other in itertools.pairwise(named)
    )


_JOINS = words_of(", and & plus + the my also")


def _is_of_all_recorded(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether "all three sets were 80" speaks of sets that are recorded, so many of them."""
    found = ALL_FEW_ARE.first(message)
    if found is None:
        return False
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    count = sum(1 for one in request.done if one.exercise in names)
    return count >= (message.value(found.parts["n"][0]) or 0)


def _is_sorry_of_a_record(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether one is sorry for what was told of a recorded exercise: "sorry, rows were with 9s"."""
    if not SORRY.is_in(message) or len(named) != 1 or len(named[0].names) != 1:
        return False
    return _is_recorded(named[0], request) and VALUE_AFTER.at(message, named[0].end) is not None


def _is_in_another_unit(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a unit alone is said of a recorded exercise: "the rows were in pounds"."""
    if not named or len(named[-1].names) != 1 or message.numbers(0, len(message.tokens)):
        return False
    return _is_recorded(named[-1], request) and UNIT_AFTER.at(message, named[-1].end) is not None


def _is_recorded(name: Named, request: Request) -> bool:
    return any(one.exercise == name.names[0] for one in request.done)


def _is_of_a_recorded_day(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day]
) -> bool:
    """Return whether "yesterday the rdl was 82.5" speaks of an exercise recorded on that day."""
    if len(named) != 1 or len(named[0].names) != 1 or len(days) != 1 or len(message.tokens) > 12:
        return False
    end = days[0].end if 0 <= days[0].start - named[0].end <= 1 else named[0].end
    if not _IS.intersection(message.texts(end, end + 2)):
        return False
    on = past_day(days[0], request.sent)
    numbers = [at for at, token in enumerate(message.tokens) if token.value is not None]
    said = [at for at in numbers if not message.taken[at]]
    return len(said) == 1 and any(
        one.exercise == named[0].names[0] and one.on == on and on != request.sent.date()
        for one in request.done
    )


def _is_one_exercise_not_another(message: Message, named: Sequence[Named]) -> bool:
    """Return whether just one exercise is said against another: "cable row, not barbell"."""
    if not named or named[0].start > 3 or len(message.tokens) > 9:
        return False
    after = message.texts(named[0].end, named[0].end + 2)
    said_of_it = message.text(named[0].end + 1 + (after[:1] == [","]))
    if said_of_it.endswith("ing") or said_of_it in _NO_EXERCISE or message.has(_ASKS_WHY):
        return False
    return "not" in after and all(t.value is None for t in message.tokens) and after[:1] in (["not"], [","])


_NO_EXERCISE = words_of("up so that too good great bad sure my easy done today yet enough much very at in on")
"""Words after "not" of which none is another exercise: "squats not good today"."""
_ASKS_WHY = words_of("why how when ?")


def _is_no_and_a_number(message: Message) -> bool:
    """Return whether a short message denies the last record and says another number: "no, 3 reps"."""
    found = NO_FIRST.at(message, 0)
    if found is None:
        return False
    _, end = message.sentence_span(0)
    left = [at for at in message.numbers(end, len(message.tokens)) if message.text(at + 1) not in _NTH]
    return len(message.tokens) <= _SHORT or (end <= _SHORT and not left and message.text(found.end) == ".")


_NTH = words_of("st nd rd th")
_SHORT = 10
"""Of how many words and signs a message is that has nothing but a denial and what is right."""


def _is_instead_of_what_is_recorded(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a number is to stand instead of a recorded one: "put 8 for the rows instead of 11"."""
    found = INSTEAD.first(message)
    if found is None or len(message.numbers(0, len(message.tokens))) != 2:
        return False
    value = message.value(found.parts["n"][0])
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    return any(one.exercise in names and value in {one.load, Decimal(one.amount)} for one in request.done)
