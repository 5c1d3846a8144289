"""One client's loads in one exercise: the next up or down, how great a step that is, what it costs in reps.

The body is part of the load here: less help is more load, from no help to the body alone to added weight
is one scale, and a step is measured against all that is moved wherever the body mass is known.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from domain.comparison import NOMINAL_BODY_KG, Body, extra_kg
from domain.endurance import GENERAL
from domain.equipment import Equipment, loadable, nearest_loadable, next_below, next_load_above
from domain.exercises import Exercise
from domain.programme import Range
from domain.sets import LoadKind, TrainingSet
from domain.strength import one_rep_max, repetitions_at, tested_reps
from domain.units import Unit, convert, to_kg


@dataclass(frozen=True, slots=True)
class Load:
    """A load and how it is counted, in the client's unit."""

    amount: Decimal
    kind: LoadKind


@dataclass(frozen=True, slots=True)
class Loading:
    """What a client can put on for one exercise. `reserve` is the reps left in a set done as prescribed."""

    exercise: Exercise
    equipment: Equipment
    unit: Unit
    body: Body
    reserve: int = 0

    def of(self, one: TrainingSet) -> Load:
        """Return the load of a set in the client's unit; where it was said in another, one that exists."""
        if one.unit == self.unit or one.load_kind == "body":
            return _plain_body(Load(one.load, one.load_kind))
        return self.nearest(Load(convert(one.load, one.unit, self.unit), one.load_kind))

    def nearest(self, load: Load) -> Load:
        """Return the nearest load that exists, counted in the same way."""
        amount = nearest_loadable(load.amount, self.unit, self.exercise, self.equipment, load.kind)
        return _plain_body(Load(amount, load.kind))

    def heavier(self, load: Load) -> Iterator[Load]:
        """Yield the heavier loads that exist, in order."""
        while True:
            match load.kind:
                case "assist":
                    amount = next_below(load.amount, self.unit, self.exercise, self.equipment, "assist")
                    found = None if amount is None else _plain_body(Load(amount, "assist"))
                case "body":
                    found = self._above(Load(Decimal(0), "added"))
                case _:
                    found = self._above(load)
            if found is None:
                return
            yield found
            load = found

    def lighter(self, load: Load) -> Load | None:
        """Return the next lighter load that exists, or None; the body alone is the lightest without help."""
        match load.kind:
            case "assist":
                return self._above(load)
            case "body":
                return None
            case _:
                amount = next_below(load.amount, self.unit, self.exercise, self.equipment, load.kind)
                return None if amount is None else _plain_body(Load(amount, load.kind))

    def moved_kg(self, load: Load) -> Decimal:
        """Return all that is moved, in kilograms, with the body's share; never less than 1.

        Where the body mass is not known, it is reckoned with a nominal one: good enough to choose a step by.
        """
        one = self._as_set(load)
        known = self.body.system_kg(one)
        return max(Decimal(1), NOMINAL_BODY_KG + extra_kg(one) if known is None else known)

    def knows(self, load: Load) -> bool:
        """Whether all that is moved is really known."""
        return self.body.system_kg(self._as_set(load)) is not None

    def step(self, load: Load, other: Load) -> float:
        """Return the step from one load to another as a fraction of what is moved; negative downwards."""
        return float(self.moved_kg(other) / self.moved_kg(load)) - 1

    def expected(self, done: TrainingSet, load: Load) -> float:
        """Return the reps or seconds to be expected at `load` after the set `done`, with as much in reserve.

        Epley's equation for reps, the pooled endurance model for holds. It answers outside the tested range
        too, for choosing what to aim for; only where `is_tested` may it be told as what is to be expected.
        """
        here = self.of(done)
        if done.seconds is not None:
            return done.seconds * math.pow(1 + self.step(here, load), GENERAL.exponent)
        reserve = self._reserve(done)
        maximum = one_rep_max(self.moved_kg(here), max(1, done.amount + reserve))
        return repetitions_at(self.moved_kg(load), maximum) - reserve

    def is_tested(self, done: TrainingSet) -> bool:
        """Whether the relation between loads has been tested for a set like this, and its load is known."""
        return (
            done.seconds is None
            and not done.lowering_only
            and self.knows(self.of(done))
            and done.amount + self._reserve(done) in tested_reps("epley")
        )

    def for_amount(self, done: TrainingSet, amount: int) -> Load:
        """Return the heaviest load that exists at which at least `amount` is to be expected after `done`.

        Counted as in `done`; the lightest that exists where even that is too heavy. A missed rep is taken as
        one done, which still is too much.
        """
        load = self.of(done)
        here = self.moved_kg(load)
        if done.seconds is not None:
            wanted = float(here) * math.pow(amount / max(1, done.seconds), 1 / GENERAL.exponent)
        else:
            reserve = self._reserve(done)
            wanted = one_rep_max(here, max(1, done.amount + reserve)) / one_rep_max(1, amount + reserve)
        extra = Decimal(round(wanted, 6)) - (here - extra_kg(self._as_set(load)))
        return self._at_most(extra, load.kind)

    def amount_needed(self, here: Load, there: Load, aimed: Range) -> int:
        """Return how many reps (seconds) at `here` let the bottom of the range be expected at `there`."""
        step = self.step(here, there)
        if aimed.of == "seconds":
            return math.ceil(aimed.low * math.pow(1 + step, -GENERAL.exponent) - 1e-9)
        maximum = one_rep_max(1 + step, aimed.low + self.reserve)
        return math.ceil(repetitions_at(1, maximum) - self.reserve - 1e-9)

    def raised_by(self, load: Load, by: Decimal) -> Load | None:
        """Return the load that is nearest to so much more, in the client's unit; None if it is no heavier."""
        match load.kind:
            case "assist":
                raised = self.nearest(Load(max(Decimal(0), load.amount - by), "assist"))
            case "body":
                raised = self.nearest(Load(by, "added"))
            case _:
                raised = self.nearest(Load(load.amount + by, load.kind))
        return raised if extra_kg(self._as_set(raised)) > extra_kg(self._as_set(load)) else None

    def scaled(self, load: Load, factor: Decimal) -> Load:
        """Return the heaviest load that exists and is at most `factor` of this; help grows instead."""
        if load.kind == "body":
            return load
        if load.kind == "assist":
            return self._at_most(-to_kg(load.amount * (2 - factor), self.unit), "assist")
        return self._at_most(to_kg(load.amount * factor, self.unit), load.kind)

    def _at_most(self, extra_kg_wanted: Decimal, kind: LoadKind) -> Load:
        """Return the heaviest load of this kind that is not above so many kilograms, or else the lightest."""
        wanted = convert(abs(extra_kg_wanted), "kg", self.unit)
        exist = [self._said(each) for each in loadable(self.exercise, self.equipment, kind)]
        if kind == "assist":
            enough = [each for each in exist if each >= wanted] if extra_kg_wanted < 0 else [Decimal(0)]
            return _plain_body(Load(min(enough, default=exist[-1]), kind))
        fitting = [each for each in exist if each <= wanted] if extra_kg_wanted > 0 else []
        return _plain_body(Load(max(fitting, default=exist[0]), kind))

    def _said(self, mass: Decimal) -> Decimal:
        if self.unit == self.equipment.unit:
            return mass
        return round(convert(mass, self.equipment.unit, self.unit), 2)

    def _above(self, load: Load) -> Load | None:
        amount = next_load_above(load.amount, self.unit, self.exercise, self.equipment, load.kind)
        return None if amount is None else Load(amount, load.kind)

    def _reserve(self, done: TrainingSet) -> int:
        return self.reserve if done.rir is None else int(done.rir)

    def _as_set(self, load: Load) -> TrainingSet:
        return TrainingSet(self.exercise.name, load.amount, self.unit, load.kind, reps=1)


def _plain_body(load: Load) -> Load:
    """No help, or nothing added, is the body alone."""
    return Load(Decimal(0), "body") if load.kind in ("added", "assist") and load.amount == 0 else load
