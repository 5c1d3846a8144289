"""A draft into a set, or into an open one with its questions and the whole sets that it can mean.

The exercise and the day are known by then, or are among the questions.
"""

from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import NamedTuple

from domain.reading.context import MOST_KG, MOST_REPS_SAID, MOST_SECONDS, Known
from domain.reading.drafts import Draft
from domain.reading.loads import Loads, amount_of
from domain.reading.quantities import Quantity
from domain.reading.request import OpenSet, Slot
from domain.sets import TrainingSet
from domain.units import Unit, to_kg

_MOST_WITHOUT_LOAD = 100
"""Bare reps with body weight above which it is asked whether they are reps at all."""


class DraftSets(NamedTuple):
    """Makes sets of drafts. `ask_unit` tells that the unit of this message's loads is not clear."""

    loads: Loads
    ask_unit: bool

    def one(
        self,
        draft: Draft,
        known: Known,
        exercise: str | None,
        on: date | None,
        *,
        is_candidate: bool = False,
    ) -> TrainingSet | OpenSet:
        """Return the set of a draft, or the open set with what must be asked."""
        asks: list[Slot] = []
        if on is None:
            asks.append("date")
        if exercise is None:
            asks.append("exercise")
        said = draft.amount
        if isinstance(said, Quantity) and not known.hold and said.value % 1 not in {0, Decimal("0.5")}:
            draft = draft._replace(confirm=True)
        load, unit, kind, load_ask = self.loads.of(draft.load, known, draft)
        amount, amount_ask = amount_of(draft, known)
        reps = None if known.hold else amount
        seconds = amount if known.hold else None
        lowering = draft.lowering or (known.plan is not None and known.plan.lowering_only)
        failure = draft.to_failure
        if draft.rir == 0:
            failure = True
        elif draft.rir is not None and draft.rir >= 1 and failure is True:
            failure = None
        if (
            not asks
            and load is not None
            and unit is not None
            and kind is not None
            and amount is not None
            and load_ask is None
            and amount_ask is None
            and exercise is not None
            and not (
                amount > 50
                and isinstance(draft.amount, Quantity)
                and draft.amount.role is None
                and not (known.is_body and amount <= _MOST_WITHOUT_LOAD)
                and not known.hold
            )
            and not (draft.confirm or self.ask_unit or _is_out_of_reason(load, unit, reps, seconds))
        ):
            to_failure = None if reps == 0 else failure
            return TrainingSet(exercise, load, unit, kind, reps, seconds, lowering, to_failure, draft.rir, on)
        one = OpenSet(
            exercise=exercise,
            load=load,
            unit=unit,
            load_kind=kind,
            reps=reps,
            seconds=seconds,
            lowering_only=lowering,
            to_failure=None if reps == 0 else failure,
            rir=draft.rir,
            on=on,
            bare=draft.bare,
        )
        if load_ask == "unit" or self.ask_unit:
            return replace(one, asks=("unit",) if on is not None else ("date",))
        if (
            isinstance(draft.amount, Quantity)
            and draft.amount.role is None
            and not known.reps_fit(draft.amount)
            and amount is not None
            and amount > 50
            and not (known.is_body and amount <= _MOST_WITHOUT_LOAD)
        ):
            draft = draft._replace(confirm=True)
        if load_ask == "confirm" or draft.confirm:
            candidates = () if is_candidate else self._candidates(draft, known, exercise, on)
            return replace(one, asks=(*asks, "confirm"), candidates=candidates)
        if _is_out_of_reason(load, unit, reps, seconds):
            whole = replace(one, asks=()).complete()
            return replace(one, asks=(*asks, "confirm"), candidates=(whole,) if whole else ())
        if asks and asks[0] == "date":
            return replace(one, asks=("date",))
        if load_ask is not None:
            asks.append(load_ask)
        if amount_ask is not None:
            asks.append(amount_ask)
        complete = replace(one, asks=tuple(asks))
        return complete.complete() or complete

    def _candidates(
        self, draft: Draft, known: Known, exercise: str | None, on: date | None
    ) -> tuple[TrainingSet, ...]:
        """Return the whole sets that an unclear draft can mean, the likeliest first."""
        if exercise is None or on is None:
            return ()
        found: list[TrainingSet] = []
        for way in (draft, *draft.unclear):
            plain = way._replace(
                confirm=False, unclear=(), to_failure=draft.to_failure, rir=draft.rir, lowering=draft.lowering
            )
            if isinstance(plain.amount, Quantity) and plain.amount.role is None:
                plain = plain._replace(amount=plain.amount._replace(role="reps"))
            sources = [plain]
            if isinstance(way.load, Quantity) and way.load.role == "plates":
                count = way.load.value
                plate, bar = (
                    (Decimal(20), Decimal(20)) if self.loads.unit == "kg" else (Decimal(45), Decimal(45))
                )
                sources = [plain._replace(load=way.load._replace(value=bar + 2 * count * plate, role="load"))]
            elif isinstance(way.load, Quantity) and way.load.a_side and known.kind != "each":
                q = way.load._replace(a_side=False)
                sources = [plain._replace(load=q._replace(value=q.value * 2)), plain._replace(load=q)]
            for source in sources:
                one = self.one(source, known, exercise, on, is_candidate=True)
                if isinstance(one, TrainingSet) and one not in found:
                    found.append(one)
        return tuple(found)


def _is_out_of_reason(load: Decimal | None, unit: Unit | None, reps: int | None, seconds: int | None) -> bool:
    return (
        (load is not None and unit is not None and to_kg(load, unit) > MOST_KG)
        or (reps is not None and reps > MOST_REPS_SAID)
        or (seconds is not None and seconds > MOST_SECONDS)
    )


def without_exercise(one: TrainingSet | OpenSet, said: str | None) -> OpenSet:
    """Return an open set that asks only which exercise it was; what else is missing is asked once that is
    known."""
    if isinstance(one, OpenSet):
        asks: tuple[Slot, ...] = ("date",) if one.on is None else ("exercise",)
        if one.asks and one.asks[0] == "unit":
            asks = ("unit",)
        return replace(one, exercise=None, asks=asks, said_name=said)
    return OpenSet(
        exercise=None,
        load=one.load,
        unit=one.unit,
        load_kind=one.load_kind,
        reps=one.reps,
        seconds=one.seconds,
        lowering_only=one.lowering_only,
        to_failure=one.to_failure,
        rir=one.rir,
        on=one.on,
        asks=("exercise",),
        said_name=said,
    )
