"""A set that is changed by what is said after it: "80 for 8, no, 7", "same as last time but 6".

Sets that are simply the next are taken elsewhere.
"""

from decimal import Decimal

from domain.reading.drafts import (
    Draft,
)
from domain.reading.elements import Element
from domain.reading.fold_state import State
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity


class Changes(State):
    """Takes a number in the place of one that was taken before."""

    def _changed(self, element: Element) -> bool:
        """Take an element after "no, wait" in the place of what it changes; False where it is simply the
        next."""
        q = element.quantities
        if len(q) > 1:
            if self.drafts and not (
                self.bare or self.amounts or (self.load is not None and not self.load_used)
            ):
                last = self.drafts[-1]
                while self.drafts and self.drafts[-1] is last:
                    self.drafts.pop()
            self.bare, self.amounts = [], []
            if not self.load_used:
                self.load = None
            return False
        only = q[0]
        if self.bare:
            self.bare[-1] = only
            return True
        if self.load is not None and not self.load_used:
            self.load = only if only.role is None or only.role == "load" else self.load
            return only.role in {None, "load", "pair"}
        if self.amounts:
            if only.role in {"load", "pair"}:
                return False
            self.amounts[-1] = only
            return True
        if not self.drafts:
            return False
        last = self.drafts[-1]
        changed = self._changed_draft(last, only)
        self.drafts = [changed if d is last else d for d in self.drafts]
        self.amount_may_change = changed.amount is last.amount
        return True

    def _changed_draft(self, last: Draft, only: Quantity) -> Draft:
        if only.role in {"reps", "seconds"}:
            return last._replace(amount=only, confirm=False, unclear=())
        if only.role in {"load", "pair"}:
            self.load = only
            return last._replace(load=only, confirm=False, unclear=())
        near = (
            isinstance(last.amount, Quantity)
            and self.known.reps_fit(only)
            and abs(only.value - last.amount.value) <= 4
        )
        if near:
            return last._replace(amount=only)
        if isinstance(last.load, Quantity) and last.load.value * Decimal(
            "0.6"
        ) <= only.value <= last.load.value * Decimal("1.6"):
            self.load = only._replace(unit=last.load.unit, kind=last.load.kind, role="load")
            return last._replace(load=self.load)
        if self.known.reps_fit(only):
            return last._replace(amount=only)
        return last._replace(confirm=True)

    def _changes_relative(self, q: Quantity) -> bool:
        """Take "same as last time but 6": the reps, or the load, of a set that was only pointed at."""
        last = self.drafts[-1] if self.drafts else None
        if (
            last is None
            or not isinstance(last.amount, Mark)
            or last.amount.kind not in {"same all", "same again", "target"}
            or self.bare
            or self.amounts
        ):
            return False
        fits_load, fits_reps = self.known.load_fits(q) is True, self.known.reps_fit(q)
        if q.role in {"reps", "seconds"} or (q.role is None and fits_reps and not fits_load):
            self.drafts[-1] = last._replace(amount=q)
        elif q.role in {"load", "pair"} or (q.role is None and not fits_reps):
            self.drafts[-1] = last._replace(load=q)
        else:
            self.drafts[-1] = last._replace(amount=q, confirm=True)
        return True
