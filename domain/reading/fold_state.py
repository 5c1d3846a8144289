"""What is known while a group is folded: the load and the reps that wait for each other, and the drafts
so far."""

from typing import Any

from domain.reading.context import Known
from domain.reading.drafts import (
    Draft,
    Source,
    same_mass,
    whole,
)
from domain.reading.lowering import Stretch
from domain.reading.phrases import Mark
from domain.reading.quantities import MOST_SETS, Quantity


class State:
    """What waits, and the drafts so far. Loads and reps are taken one at a time."""

    def __init__(self, known: Known) -> None:
        self.known = known
        self.drafts: list[Draft] = []
        self.load: Source = None
        self.load_used = False
        self.amounts: list[Quantity | Mark] = []
        self.bare: list[Quantity] = []
        self.second_is_result = False
        self.count_said = 0
        self.counts: list[tuple[int, int]] = []
        self.order: str | None = None
        self.flags: list[tuple[int, Mark]] = []
        self.lowered: list[Stretch] = []
        self.each_hand = False
        self.changing = False
        self.amount_may_change = False

    def _goes_on(self, joint: str) -> bool:
        return joint in {",", "/", "and", "then", "-"} and bool(self.drafts)

    def _take_load(self, q: Quantity) -> None:
        if self.bare:
            self.amounts.extend(self.bare)
            self.bare = []
        if self.amounts:
            self.load, self.load_used = q, True
            self._emit_amounts()
            return
        if self.load is not None and not self.load_used and isinstance(self.load, Quantity):
            if same_mass(self.load, q):
                usual = self.known.request.unit
                self.load = q if q.unit == usual else self.load
                return
            self._emit(self.load, None)
        self.load, self.load_used = q, False

    def _take_amount(self, q: Quantity | Mark) -> None:
        if self.bare and self.load is None:
            if (
                len(self.bare) == 1
                and not self.count_said
                and (
                    self.known.load_fits(self.bare[0]) is not False
                    or not self.known.reps_fit(self.bare[0])
                    or self.bare[0].a_side
                )
            ):
                self.load, self.load_used, self.bare = self.bare[0], False, []
            else:
                self.amounts.extend(self.bare)
                self.bare = []
        if (
            isinstance(q, Quantity)
            and self.amounts
            and isinstance(self.amounts[-1], Mark)
            and self.amounts[-1].kind in {"more reps", "fewer reps"}
        ):
            # "one more than last time: 34 seconds" says it twice.
            self.amounts[-1] = q
            return
        last_amount = self.drafts[-1].amount if self.drafts else None
        if isinstance(q, Mark) and isinstance(last_amount, Mark) and last_amount.kind == "same all":
            # "same as last time plus one rep"
            self.drafts[-1] = self.drafts[-1]._replace(amount=q)
            return
        if self.amount_may_change and self.drafts:
            self.amount_may_change = False
            last = self.drafts[-1]
            self.drafts = [d._replace(amount=q) if d is last else d for d in self.drafts]
            return
        if self.load is not None:
            self.load_used = True
            self._emit(self.load, q)
        else:
            self.amounts.append(q)

    def _count(self, q: Quantity) -> None:
        """Keep a number of sets; which sets it counts is settled once all are known."""
        self.count_said = whole(q.value)
        self.counts.append((len(self.drafts), self.count_said))

    def _emit(self, load: Source, amount: Quantity | Mark | None, times: int = 1, **more: Any) -> None:
        spans = [s for s in (load, amount) if isinstance(s, Quantity | Mark)]
        start = min((s.start for s in spans), default=0)
        end = max((s.end for s in spans), default=0)
        lowering = any(isinstance(s, Quantity) and s.lowering for s in spans)
        if isinstance(amount, Mark) and amount.kind == "failed on":
            more = {"reps": int(amount.value or 1) - 1, "to_failure": True, **more}
        draft = Draft(load, amount, start, end, lowering=lowering)
        if more:
            draft = draft._replace(**more)
        if times > MOST_SETS:
            draft, times = draft._replace(confirm=True), 1
        self.drafts.extend([draft] * max(1, times))

    def _emit_amounts(self) -> None:
        amounts, self.amounts = self.amounts, []
        for amount in amounts:
            self._emit(self.load, amount)

    def _flush_amounts_if(self, *, loaded: bool) -> None:
        if self.amounts and self.load is not None and loaded:
            self._emit_amounts()

    def _full(self, load: Quantity, amounts: list[Quantity]) -> None:
        if isinstance(self.load, Quantity) and not self.load_used and same_mass(self.load, load):
            load = load if load.unit == self.known.request.unit else self.load
            self.load = None
        self._ask_about_waiting()
        self.load, self.load_used = load, True
        for amount in amounts:
            self._emit(load, amount)

    def _ask_about_waiting(self) -> None:
        """Ask about what still waits when a whole set comes: a load for its reps, reps for their load."""
        if self.load is not None and not self.load_used:
            self._emit(self.load, None)
            self.load = None
        waiting = [*self.bare, *self.amounts]
        self.bare, self.amounts = [], []
        for one in waiting:
            self._emit(None, one, confirm=True)
