"""The load and the reps of a draft in numbers, relative ones counted from what they are relative to.

What must be asked of them is told with them; whether the set as a whole is clear is decided elsewhere.
"""

from dataclasses import dataclass, field
from decimal import Decimal

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.request import Request, Slot
from domain.sets import LoadKind
from domain.units import Unit

Loading = tuple[Decimal | None, Unit | None, LoadKind | None, Slot | None]
"""A load, its unit, how it is counted, and what must be asked of it."""


@dataclass(slots=True)
class Loads:
    """The loads of one message, in `unit` where none is said. One said for several sets counts once."""

    request: Request
    unit: Unit
    counted: dict[tuple[str, Mark | Quantity], Loading] = field(default_factory=dict)

    def of(self, source: Source, known: Known, draft: Draft) -> Loading:
        """Return the load, its unit, how it is counted, and what must be asked of it."""
        request = self.request
        match source:
            case Quantity():
                if not (source.plus or source.minus):
                    return self._said_load(source, known)
                place = (known.exercise, source)
                if place not in self.counted:
                    self.counted[place] = self._said_load(source, known)
                return self.counted[place]
            case Mark():
                # "up 2.5 for 7, 6" is one load for both sets, counted once.
                key = (known.exercise, source)
                if key not in self.counted:
                    self.counted[key] = self._relative_load(source, known)
                return self.counted[key]
            case "body":
                return Decimal(0), request.unit, "body", None
            case "unknown":
                return None, None, None, "load"
            case _:
                pass
        if isinstance(draft.amount, Mark) and draft.amount.kind in {"more reps", "fewer reps"}:
            base = known.base(from_last=draft.amount.from_last)
            return (base.load, base.unit, base.load_kind, None) if base else (None, None, None, "load")
        if draft.amount is None and draft.reps is None:
            target = known.target
            return (
                (target.load, target.unit, target.load_kind, None) if target else (None, None, None, "load")
            )
        base = known.load_for_reps()
        return (base.load, base.unit, base.load_kind, None) if base else (None, None, None, "load")

    def _said_load(self, q: Quantity, known: Known) -> Loading:
        if q.unit == "stone":
            return None, None, None, "unit"
        unit: Unit = q.unit or self.unit
        if q.role == "plates":
            return None, None, None, "confirm"
        kind = known.kind_of(q)
        if q.a_side and known.kind != "each":
            return q.value, unit, kind, "confirm"
        if q.value == 0:
            if kind in {"added", "assist"} or known.is_body:
                return Decimal(0), self.request.unit, "body", None
            return q.value, unit, kind, "confirm"
        if (
            (q.plus or (q.minus and known.load_fits(q) is False))
            and known.kind in {"total", "each"}
            and not known.is_body
        ):
            # "+2.5 for 7" on a bar counts from the load to beat.
            base = known.base(from_last=False)
            if base is None:
                return None, None, None, "load"
            if q.unit is not None and q.unit != base.unit:
                return None, None, None, "load"
            step = q.value
            load = base.load + step if q.plus else base.load - step
            return (load, base.unit, base.load_kind, None) if load > 0 else (None, None, None, "load")
        return q.value, unit, kind, None

    def _relative_load(self, mark: Mark, known: Known) -> Loading:
        if mark.kind in {"target", "target more", "target fewer"}:
            base = known.target
        else:
            base = known.base(from_last=mark.from_last)
        is_pointed_at = mark.kind not in {"up", "down"} or mark.value is None
        if base is None and is_pointed_at and known.is_body:
            return Decimal(0), self.request.unit, "body", None
        if base is None:
            return None, None, None, "load"
        if is_pointed_at or mark.value is None:
            return base.load, base.unit, base.load_kind, None
        step = mark.value
        if mark.unit is not None and mark.unit != base.unit:
            return None, None, None, "load"
        load = base.load + step if mark.kind == "up" else base.load - step
        kind: LoadKind = base.load_kind
        if kind == "body":
            kind = "added" if load > 0 else known.kind
            if load < 0:
                return None, None, None, "load"
        if load < 0:
            return None, None, None, "confirm"
        if load == 0 and kind in {"added", "assist"}:
            return Decimal(0), base.unit, "body", None
        return load, base.unit, kind, None


def amount_of(draft: Draft, known: Known) -> tuple[int | None, Slot | None]:
    """Return the reps or seconds, and what must be asked of them."""
    slot: Slot = "seconds" if known.hold else "reps"
    if draft.reps is not None:
        return draft.reps, None
    amount = draft.amount
    if isinstance(amount, Quantity):
        return int(amount.value), None
    if amount is None:
        return None, slot
    if amount.kind == "failed on":
        return int(amount.value or 1) - 1, None
    target_like = amount.kind in {"target", "target more", "target fewer"}
    base = known.target if target_like else known.base(from_last=amount.from_last)
    if base is None:
        return None, slot
    step = int(amount.value or 0)
    if amount.kind in {"more reps", "target more"}:
        return base.amount + step, None
    if amount.kind in {"fewer reps", "target fewer"}:
        return (base.amount - step, None) if base.amount >= step else (None, slot)
    return base.amount, None
