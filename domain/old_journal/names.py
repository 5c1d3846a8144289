"""Which exercise a name in an old journal means: by the client's own names, the sheet, the catalogue.

A name is taken where it can mean one exercise only, however it is written: with the implement in brackets or
after a comma, too. All others are asked about, once each, with what they may mean.
"""

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, replace

from rapidfuzz import fuzz, process

from domain.exercises import catalogue, describe, lookup
from domain.expressions import Expression
from domain.names import name_key, name_words
from domain.old_journal.found import FoundSet, FoundWorkout, RowFault
from domain.reading.message import message_of
from domain.reading.naming import names_for
from domain.sets import LoadKind, TrainingSet

LEFT_OUT = ""
"""What a name means whose sets are not to be taken."""

MOST_OFFERED = 4
_NEAR = 78
"""How alike two names are, of 100, for one to be offered for the other. The house's own choice."""

_BRACKETS = Expression(r"\s*[(\[]([^)\]]*)[)\]]\s*")


@dataclass(frozen=True, slots=True)
class Meaning:
    """What a `name` means that `many` sets bear: an exercise, or (None) it may be one of those `near`."""

    name: str
    many: int
    exercise: str | None
    near: tuple[str, ...] = ()


def meanings_of(
    workouts: Iterable[FoundWorkout], known: tuple[str, ...], own_names: Mapping[str, str], *, is_ours: bool
) -> tuple[Meaning, ...]:
    """Return what each name means, in the order of the file.

    `known` are the exercises of the sheet and the journal. Where the file `is_ours`, its names are exercises.
    """
    counted = Counter(each.done.exercise for workout in workouts for each in workout.sets)
    finder = _Finder(known, own_names)
    return tuple(
        Meaning(name, many, name) if is_ours else Meaning(name, many, *finder.find(name))
        for name, many in counted.items()
    )


class _Finder:
    """Finds exercises by name, for one client."""

    def __init__(self, known: tuple[str, ...], own_names: Mapping[str, str]) -> None:
        self._exact = {name_key(name): exercise for name, exercise in own_names.items()}
        self._exact |= {name_key(name): name for name in known}
        self._names = names_for(known, tuple(own_names.items()))
        self._all = tuple(dict.fromkeys((*known, *(each.name for each in catalogue()))))

    def find(self, name: str) -> tuple[str | None, tuple[str, ...]]:
        """Return the exercise that a name means, or None and those that it may mean."""
        found = {exercise for way in _ways(name) if (exercise := self._exactly(way)) is not None}
        if len(found) == 1:
            return found.pop(), ()
        message = message_of(name)
        hits = self._names.find(message)
        read = [each for each in hits if each.names]
        words = len(name_words(name))
        if not found and len(read) == 1 and read[0].exact and read[0].end - read[0].start >= words:
            (first, *others) = read[0].names
            if not others:
                return first, ()
        near = [*found, *(each for hit in read for each in hit.names)]
        for other, _, _ in process.extract(
            name.casefold(),
            self._all,
            scorer=fuzz.token_sort_ratio,
            processor=str.casefold,
            score_cutoff=_NEAR,
        ):
            near.append(other)
        return None, tuple(dict.fromkeys(near))[:MOST_OFFERED]

    def _exactly(self, name: str) -> str | None:
        exercise = self._exact.get(name_key(name))
        if exercise is not None:
            return exercise
        entry = lookup(name)
        return None if entry is None else self._exact.get(name_key(entry.name), entry.name)


def _ways(name: str) -> Iterator[str]:
    """Give the ways to write a name: as it is, else with what is in brackets or after a comma before it.

    An implement that goes without saying can be left out: "Bench press (barbell)".
    """
    yield name
    first, comma, after = name.partition(",")
    aside = _BRACKETS.findall(name)
    plain = " ".join(_BRACKETS.sub(" ", name).split())
    if not aside and comma:
        plain, aside = first.strip(), [after.strip()]
    if len(aside) != 1 or not plain or not aside[0]:
        return
    entry = lookup(f"{aside[0]} {plain}")
    if entry is not None:
        yield f"{aside[0]} {plain}"
        return
    entry = lookup(plain)
    if entry is not None and name_key(entry.implement) == name_key(aside[0]):
        yield plain


def resolved(
    workouts: Iterable[FoundWorkout], exercises: Mapping[str, str], *, is_ours: bool
) -> tuple[tuple[FoundWorkout, ...], tuple[RowFault, ...]]:
    """Return the workouts with each name's exercise, and the rows that make no sense of it.

    Names that are not in `exercises`, or mean nothing, are left out. How a load is counted goes by the
    exercise where the file does not say it.
    """
    faults: list[RowFault] = []
    kinds = {each: describe(each) for each in set(exercises.values()) if each}

    def done(found: FoundSet) -> TrainingSet | None:
        exercise = exercises.get(found.done.exercise)
        if not exercise:
            return None
        about = kinds[exercise]
        if about.is_hold and found.done.seconds is None and not is_ours:
            faults.append(RowFault(found.row, "held", found.done.exercise))
            return None
        kind: LoadKind = found.kind or about.counted
        return replace(found.done, exercise=exercise, load_kind=kind)

    kept: list[FoundWorkout] = []
    for workout in workouts:
        sets = tuple(replace(each, done=made) for each in workout.sets if (made := done(each)) is not None)
        if sets or not workout.sets:
            kept.append(replace(workout, sets=sets))
    return tuple(kept), tuple(faults)
