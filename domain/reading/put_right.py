"""The set that was asked about, put right in the answer: "no, 62.5"."""

from dataclasses import replace

from domain.reading.context import Known
from domain.reading.quantities import Quantity
from domain.sets import TrainingSet
from domain.units import Unit


def put_right(asked: TrainingSet, quantities: list[Quantity], known: Known) -> TrainingSet | None:
    """Return the set asked about with what is said instead: "no, 62.5", "no, 62.5 x 5"; None if unclear."""
    load: Quantity | None = None
    amount: Quantity | None = None
    match quantities:
        case [one] if (one.role or known.lone(one)) == "load":
            load = one
        case [one] if (one.role or known.lone(one)) in {"reps", "seconds"}:
            amount = one
        case [one, other] if known.order(one, other) == "load first":
            load, amount = one, other
    if amount is not None and not known.reps_fit(amount):
        return None
    right = asked
    if load is not None:
        right = replace(right, load=load.value, unit=_unit_of(load, asked))
    if amount is not None and asked.seconds is None:
        right = replace(right, reps=int(amount.value))
    elif amount is not None:
        right = replace(right, seconds=int(amount.value))
    return None if right == asked else right


def _unit_of(q: Quantity, asked: TrainingSet) -> Unit:
    return q.unit if q.unit in {"kg", "lb"} else asked.unit
