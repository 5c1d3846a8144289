"""Groups into sets, in the order mentioned. What is not clear becomes an open set with its questions.

Which exercise a group is of, and what a draft amounts to, is decided next door.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import date
from typing import NamedTuple

from domain.reading.context import Day
from domain.reading.down_the_plan import before_their_name, down_the_plan
from domain.reading.draft_sets import DraftSets, without_exercise
from domain.reading.drafts import Draft
from domain.reading.fold import fold
from domain.reading.gather import Group
from domain.reading.join_groups import joined_groups
from domain.reading.naming import Named
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

    `day_at` gives the day of a token, None where it must be asked; `word_of` gives a name as it was said.
    """

    request: Request
    exercises: Exercises
    sets: DraftSets
    day_at: Callable[[int], date | None]
    word_of: Callable[[Named], str]
    unexplained: Unexplained | None = None
    placed: list[Placed] = field(default_factory=list)

    def run(self, groups: Sequence[Group]) -> list[Placed]:
        """Return what the groups give."""
        named_before: Named | None = None
        exercise_before: str | None = None
        joined: Sequence[Group] = joined_groups(groups)
        if joined:
            first = self.exercises.day(self.day_at(joined[0].start) or self.request.sent.date())
            joined = before_their_name(down_the_plan(joined, self.exercises, first), self.exercises, first)
        for group in joined:
            day_on = self.day_at(group.start)
            day = self.exercises.day(day_on or self.request.sent.date())
            exercise, ambiguous = self.exercises.of_group(group, day, named_before, exercise_before)
            if group.named is not None:
                named_before = group.named
            if not group.items:
                exercise_before = exercise if group.named is not None else exercise_before
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
        told: TrainingSet | OpenSet | None = None
        for draft in fold(group.items, known):
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
            if self.unexplained is not None and self._is_doubted(one, draft, group):
                one = self.sets.one(draft._replace(confirm=True), known, exercise, on)
            if exercise is None:
                one = without_exercise(one, self.word_of(ambiguous) if ambiguous is not None else said)
            start, end = (draft.start, draft.end) if draft.end else (group.start, group.end)
            if told is not None and one == told and isinstance(draft.amount, Quantity):
                # "Like last time, 80 for 7" tells one set twice.
                told = None
                continue
            as_before = isinstance(draft.amount, Mark) and draft.amount.kind in _AS_BEFORE
            told = one if as_before else None
            self.placed.append(Placed(start, end, one))
            if isinstance(one, TrainingSet):
                self.exercises.day(one.on or day.on).add(one)

    def _is_doubted(self, one: TrainingSet | OpenSet, draft: Draft, group: Group) -> bool:
        return (
            self.unexplained is not None
            and isinstance(one, TrainingSet)
            and self.unexplained.is_doubted(one, draft.start if draft.end else group.start)
        )


_AS_BEFORE = frozenset({"same all", "target"})


def _place_of(draft: Draft, group: Group) -> int:
    """Return the token by which the day of a set is found: that of its reps where it has any."""
    if isinstance(draft.amount, Quantity | Mark):
        return draft.amount.start
    return draft.start if draft.end else group.start
