"""What is known of one exercise today: its plan, the set to beat, the target, what was just done, how
load counts.

The questions of the contract's second rule are answered here: is a load sensible, which order of two
numbers is.
"""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from functools import lru_cache
from typing import Literal

from domain.exercises import lookup
from domain.reading.quantities import Quantity
from domain.reading.request import Planned, Request
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit, convert

LIGHTEST, HEAVIEST = Decimal("0.6"), Decimal("1.6")
"""Between which shares of the reference a load is sensible."""
MOST_REPS = 50
MOST_REPS_SAID = 300
MOST_KG = 700
MOST_SECONDS = 3600

Order = Literal["load first", "reps first", "unclear", "neither"]


@lru_cache(maxsize=2048)
def _counted(name: str) -> tuple[LoadKind, bool] | None:
    """Return how the catalogue counts the load of an exercise, and whether it is a hold."""
    entry = lookup(name)
    return (entry.counted, entry.is_hold) if entry else None


@dataclass(slots=True)
class Day:
    """The sets of each exercise on one day, those recorded and those of this message."""

    on: date
    counts: dict[str, int]
    latest: dict[str, TrainingSet]
    last_exercise: str | None = None

    def add(self, one: TrainingSet) -> None:
        """Add a set of this day."""
        self.counts[one.exercise] = self.counts.get(one.exercise, 0) + 1
        self.latest[one.exercise] = one
        self.last_exercise = one.exercise


def day_of(request: Request, on: date) -> Day:
    """Return what is recorded of a day; a set without a day is of the day of the message."""
    day = Day(on, {}, {})
    today = request.sent.date()
    for one in request.done:
        if (one.on or today) == on:
            day.add(one)
    return day


class Known:
    """What is known of one exercise on one day."""

    __slots__ = ("day", "exercise", "hold", "kind", "last", "plan", "request", "target", "unit")

    def __init__(self, request: Request, exercise: str, day: Day, unit: Unit) -> None:
        self.request = request
        self.exercise = exercise
        self.day = day
        self.unit = unit
        self.plan: Planned | None = next((p for p in request.plan if p.name == exercise), None)
        self.target = request.target.get(exercise)
        self.last = request.last.get(exercise)
        reference = self.target or self.last
        counted = _counted(exercise)
        if self.plan is not None:
            self.hold = self.plan.of == "seconds"
        elif reference is not None:
            self.hold = reference.seconds is not None
        else:
            self.hold = counted[1] if counted else False
        self.kind = self._usual_kind(counted[0] if counted else None)

    def _usual_kind(self, counted: LoadKind | None) -> LoadKind:
        """Return how a load is counted of which nothing more is said."""
        references = [r for r in (self.target, self.last) if r is not None]
        if any(r.load_kind == "assist" for r in references):
            return "assist"
        if self.plan is not None and self.plan.load_kind is not None:
            return self.plan.load_kind
        for reference in references:
            if reference.load_kind != "body":
                return reference.load_kind
        if references and counted in {"added", "assist"}:
            return counted
        if self.plan is None and counted is not None:
            return counted
        return "total"

    @property
    def latest(self) -> TrainingSet | None:
        """The set just done of this exercise on the day."""
        return self.day.latest.get(self.exercise)

    @property
    def is_body(self) -> bool:
        """Whether the exercise is done with body weight."""
        reference = self.target or self.last
        if reference is not None:
            return reference.load_kind == "body"
        counted = self.plan.load_kind if self.plan is not None else self.kind
        return counted == "added"

    def kind_of(self, q: Quantity) -> LoadKind:
        """Return how the load `q` is counted."""
        if q.kind is not None:
            return q.kind
        if q.each or q.role == "pair" or (q.a_side and self.kind == "each"):
            return "each"
        if q.plus and self.is_body:
            return "added"
        if q.minus and self.kind != "each" and self.kind != "total":
            return "assist"
        return self.kind

    def reference_load(self, kind: LoadKind, unit: Unit) -> Decimal | None:
        """Return the load that tests another, in `unit`; None where there is none of that kind."""
        reference = self.target or self.last
        if reference is None or reference.load_kind != kind or reference.load == 0:
            return None
        return convert(reference.load, reference.unit, unit)

    def load_fits(self, q: Quantity) -> bool | None:
        """Return whether `q` is sensible as a load; None where nothing tests it."""
        unit: Unit = q.unit if q.unit in {"kg", "lb"} else self.unit
        load = self.reference_load(self.kind_of(q), unit)
        if load is None:
            return None
        return LIGHTEST * load <= q.value <= HEAVIEST * load

    def reps_fit(self, q: Quantity) -> bool:
        """Return whether `q` is sensible as reps."""
        if self.hold:
            return q.value == int(q.value) and q.value <= 600
        half = self.is_body and self.plan is not None and q.value >= self.plan.range_low and q.role is None
        # "Push-ups, 10 and a half" are 10.
        return (q.value == int(q.value) or (half and q.value % 1 == Decimal("0.5"))) and q.value <= MOST_REPS

    def in_range(self, q: Quantity) -> bool:
        """Return whether `q` lies in the plan's range."""
        return self.plan is not None and self.plan.range_low <= q.value <= self.plan.range_high

    def is_usual(self, q: Quantity) -> bool:
        """Return whether `q` is no more than twice the most reps of the plan."""
        return self.plan is not None and self.reps_fit(q) and q.value <= 2 * self.plan.range_high

    def is_exact(self, q: Quantity) -> bool:
        """Return whether `q` is exactly the load of the target or of the set to beat."""
        unit: Unit = q.unit if q.unit in {"kg", "lb"} else self.unit
        kind = self.kind_of(q)
        return any(
            r is not None and r.load_kind == kind and r.load != 0 and convert(r.load, r.unit, unit) == q.value
            for r in (self.target, self.last)
        )

    def order(self, first: Quantity, second: Quantity) -> Order:
        """Return which of two bare numbers is the load, by the contract's second rule."""
        if self.hold:
            return (
                "load first"
                if self.load_fits(first) is not False and self.reps_fit(second)
                else self._swapped_hold(first, second)
            )
        forward = self.load_fits(first) is not False and self.reps_fit(second)
        backward = self.load_fits(second) is not False and self.reps_fit(first)
        if forward and not backward:
            return "load first"
        if backward and not forward:
            return "reps first"
        if not forward:
            return "neither"
        if first.value == second.value:
            return "load first"
        if self.is_exact(first) != self.is_exact(second):
            return "load first" if self.is_exact(first) else "reps first"
        if (
            self.load_fits(first) is None
            and self.load_fits(second) is None
            and self.target is None
            and self.last is None
        ):
            return "load first"
        if self.in_range(second) and not self.in_range(first):
            return "load first"
        return "unclear"

    def _swapped_hold(self, first: Quantity, second: Quantity) -> Order:
        if self.load_fits(second) and self.reps_fit(first) and first.unit is None:
            return "reps first"
        return "neither"

    def lone(self, q: Quantity) -> Literal["reps", "load", "unclear"]:
        """Return what one bare number is, by the contract's tenth rule."""
        fits = self.load_fits(q)
        reps = self.reps_fit(q) and not (fits and self._is_too_long(q))
        if not reps:
            if fits is not True and self.kind in {"added", "assist"} and q.value == int(q.value):
                return "reps"
            return "load" if fits is not False else "unclear"
        if fits is None:
            reference = self.target or self.last
            if reference is not None or self.is_body:
                return "reps"
            return "unclear"
        return "unclear" if fits else "reps"

    def _is_too_long(self, q: Quantity) -> bool:
        """Return whether a number is far beyond the seconds that the plan asks for."""
        longest = self.plan.range_high if self.hold and self.plan is not None else None
        return longest is not None and q.value > MOST_REPS and q.value > 2 * longest

    def load_for_reps(self) -> TrainingSet | None:
        """Return the set whose load is meant where only reps are said; None where it must be asked."""
        if self.latest is not None:
            return self.latest
        if self.target is not None:
            return self.target
        if (self.plan.load_kind if self.plan is not None else self.kind) == "added" or (
            self.last is not None and self.last.load_kind == "body"
        ):
            return TrainingSet(self.exercise, Decimal(0), self.request.unit, "body", reps=0)
        return None

    def base(self, *, from_last: bool) -> TrainingSet | None:
        """Return the set that "same", "up" and "one more" count from."""
        if from_last:
            return self.last
        return self.latest or self.last
