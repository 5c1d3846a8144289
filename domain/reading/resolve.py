"""Groups into sets, in the order mentioned. What is not clear becomes an open set with its questions.

Which exercise a group is of, and what a draft amounts to, is decided next door.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date
from itertools import zip_longest
from typing import NamedTuple

from domain.reading.context import Day, Known
from domain.reading.down_the_plan import before_their_name, down_the_plan
from domain.reading.draft_sets import DraftSets, without_exercise
from domain.reading.drafts import Draft
from domain.reading.fold import fold
from domain.reading.gather import Group
from domain.reading.join_groups import joined_groups
from domain.reading.naming import Named
from domain.reading.out_of_line import with_doubts
from domain.reading.out_of_strength import is_out_of_strength
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.request import OpenSet, Request
from domain.reading.unexplained import Unexplained
from domain.reading.which_exercise import Exercises
from domain.sets import TrainingSet

_UNKNOWN_EXERCISE = ""


class Placed(NamedTuple):
    """A set or an open set with the tokens that it came from."""

    start: int
    end: int
    one: TrainingSet | OpenSet


@dataclass(slots=True)
class Resolver:
    """Turns groups into sets.

    `day_at` gives the day of a token, None where it must be asked; `word_of` gives a name as it was said;
    `begins_another` tells whether the tokens from one to before the other tell of one more set.
    """

    request: Request
    exercises: Exercises
    sets: DraftSets
    day_at: Callable[[int], date | None]
    word_of: Callable[[Named], str]
    begins_another: Callable[[int, int], bool]
    is_of_last_time: Callable[[int, int], bool]
    are_strange: Callable[[int, int], bool]
    unexplained: Unexplained | None = None
    asked_about: str | None = None
    """The only exercise that a question beside the sets names: theirs if nothing else tells whose."""
    placed: list[Placed] = field(default_factory=list)
    compared: Placed | None = None
    """What was told last, if that was by comparing it with another set."""
    told: Placed | None = None
    """What was told last, if that was in numbers."""

    def run(self, groups: Sequence[Group]) -> list[Placed]:
        """Return what the groups give."""
        named_before: Named | None = None
        exercise_before: str | None = None
        joined: Sequence[Group] = joined_groups(groups)
        if joined:
            first = self.exercises.day(self.day_at(joined[0].start) or self.request.sent.date())
            joined = before_their_name(down_the_plan(joined, self.exercises, first), self.exercises, first)
        for group, following in zip_longest(joined, joined[1:]):
            day_on = self.day_at(group.start)
            day = self.exercises.day(day_on or self.request.sent.date())
            exercise, ambiguous = self.exercises.of_group(group, day, named_before, exercise_before)
            if exercise is None and ambiguous is None and group.named is None and not group.unknown_word:
                exercise = self.asked_about
            if group.named is not None:
                named_before = group.named
            if not group.items:
                exercise_before = exercise if group.named is not None else exercise_before
                continue
            if following is not None and self._only_tells_ahead(group, following, day):
                continue
            before = len(self.placed)
            defaulted = (
                exercise is not None
                and group.named is None
                and named_before is None
                and group.pointer is None
                and not group.again
                and exercise != exercise_before
            )
            if defaulted and exercise is not None:
                exercise = self.exercises.pointed_by_kind(group, exercise, day)
            elif exercise is not None and group.named is None and group.line and group.first_on_line:
                exercise = self.exercises.counted_otherwise(group, exercise, day)
            self._resolve(group, exercise, ambiguous, day, said=group.unknown_word)
            if len(self.placed) > before:
                exercise_before = exercise
        return self.placed

    def _resolve(
        self,
        group: Group,
        exercise: str | None,
        ambiguous: Named | None,
        day: Day,
        said: str | None,
    ) -> None:
        known = self.exercises.known(exercise or _UNKNOWN_EXERCISE, day)
        for draft in with_doubts(fold(group.items, known), known):
            if (
                draft.load in {"unknown", "body"}
                and draft.amount is None
                and draft.reps is None
                and group.named is None
            ):
                continue
            if group.doubtful:
                draft = draft._replace(confirm=True)  # noqa: PLW2901 - the draft, in doubt
            if group.other_load and draft.load is None and isinstance(draft.amount, Quantity):
                draft = draft._replace(load="unknown")  # noqa: PLW2901 - the draft, without the usual load
            on = self.day_at(_place_of(draft, group))
            one = self.sets.one(draft, known, exercise, on)
            if isinstance(one, TrainingSet) and self._is_doubted(one, known, draft, group):
                one = self.sets.one(draft._replace(confirm=True), known, exercise, on)
            if exercise is None:
                one = without_exercise(one, self.word_of(ambiguous) if ambiguous is not None else said)
            start, end = (draft.start, draft.end) if draft.end else (group.start, group.end)
            if group.named is None and self._is_of_what_was_told(draft, start):
                continue
            if self._is_what_was_compared(one, draft, start) and self.compared is not None:
                if one == self.compared.one:
                    # "Like last time, 80 for 7" tells one set twice.
                    self.compared = None
                    continue
                # "5 more than last time, 85x6" tells the load before the set.
                self.placed.pop()
            self.placed.append(Placed(start, end, one))
            phrase = draft.amount if draft.amount is not None else draft.load
            compares = isinstance(phrase, Mark) and phrase.kind in _COMPARES
            self.compared = self.placed[-1] if compares else None
            self.told = self.placed[-1] if isinstance(draft.amount, Quantity) else None
            if isinstance(one, TrainingSet):
                self.exercises.day(one.on or day.on).add(one)

    def _is_what_was_compared(self, one: TrainingSet | OpenSet, draft: Draft, start: int) -> bool:
        """Return whether a set told in numbers is the one that the words before compared with another."""
        if self.compared is None or not isinstance(draft.amount, Quantity):
            return False
        is_same = one == self.compared.one or _is_begun(self.compared.one, one)
        return is_same and not self.begins_another(self.compared.end, start)

    def _is_of_what_was_told(self, draft: Draft, start: int) -> bool:
        """Return whether words only hold the set before beside its aim or the last: "80x8. Target met"."""
        phrase = draft.amount if draft.amount is not None else draft.load
        if self.told is None or not isinstance(self.told.one, TrainingSet) or not isinstance(phrase, Mark):
            return False
        held_beside = phrase.kind in _BESIDE_AN_AIM or (
            phrase.kind in _COMPARES and self.is_of_last_time(phrase.start, phrase.end)
        )
        return held_beside and not self.begins_another(self.told.end, start)

    def _only_tells_ahead(self, group: Group, following: Group, day: Day) -> bool:
        """Return whether words without a name only compare the set that is told next: "one more than last
        time, rows 60x9"."""
        name = following.named
        if group.named is not None or name is None or len(name.names) != 1:
            return False
        if not all(isinstance(item, Mark) and item.kind in _COMPARES for item in group.items):
            return False
        if self.begins_another(group.end, following.start):
            return False
        known = self.exercises.known(name.names[0], day)
        compared, told = (
            [self.sets.one(draft, known, name.names[0], day.on) for draft in fold(each.items, known)]
            for each in (group, following)
        )
        return len(compared) == 1 and any(compared[0] == one or _is_begun(compared[0], one) for one in told)

    def _is_doubted(self, one: TrainingSet, known: Known, draft: Draft, group: Group) -> bool:
        """Return whether something beside a set puts it in doubt."""
        start, end = (draft.start, draft.end) if draft.end else (group.start, group.end)
        if self.unexplained is not None and self.unexplained.is_doubted(one, start):
            return True
        return (
            isinstance(draft.load, Quantity)
            and is_out_of_strength(one, known)
            and self.are_strange(start, end)
        )


_BESIDE_AN_AIM = frozenset({"target", "target more", "target fewer"})
_COMPARES = frozenset(
    {"same all", "target", "target more", "target fewer", "more reps", "fewer reps", "up", "down"}
)


def _is_begun(compared: TrainingSet | OpenSet, one: TrainingSet | OpenSet) -> bool:
    """Return whether a comparison tells no more than the load of a set."""
    if not isinstance(compared, OpenSet) or not isinstance(one, TrainingSet):
        return False
    told = (compared.exercise, compared.load, compared.unit, compared.reps)
    return told == (one.exercise, one.load, one.unit, None)


def _place_of(draft: Draft, group: Group) -> int:
    """Return the token by which the day of a set is found: that of its reps where it has any."""
    if isinstance(draft.amount, Quantity | Mark):
        return draft.amount.start
    return draft.start if draft.end else group.start
