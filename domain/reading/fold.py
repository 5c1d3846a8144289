"""A group of numbers and phrases into single sets, for a known exercise: the contract's second to
thirteenth rule.

The outcome of each is a `Draft`: what load, how many reps, and what must be asked. Nothing is recorded here.
"""

from decimal import Decimal
from typing import Any, Literal, NamedTuple

from domain.reading.context import Known
from domain.reading.gather import Element, Item
from domain.reading.phrases import Mark, Quantity

Source = Quantity | Mark | Literal["body", "unknown"] | None
MOST_SETS = 12


class Draft(NamedTuple):
    """One set as far as it was said: where its load and its reps come from, and how it was done.

    `unclear` holds the other ways to take it; such a set must be confirmed. `bare` is a number that could be
    either load or reps.
    """

    load: Source = None
    amount: Quantity | Mark | None = None
    start: int = 0
    end: int = 0
    to_failure: bool | None = None
    rir: Decimal | None = None
    lowering: bool = False
    reps: int | None = None
    unclear: tuple["Draft", ...] = ()
    confirm: bool = False
    bare: Decimal | None = None


class Fold:
    """Takes the items of one group in order and makes drafts of them."""

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
        self.each_hand = False
        self.changing = False
        self.amount_may_change = False

    def run(self, items: list[Item]) -> list[Draft]:
        """Return the drafts of a group."""
        for i, item in enumerate(items):
            if isinstance(item, Mark):
                self._mark(item)
                continue
            following = items[i + 1] if i + 1 < len(items) else None
            if (
                isinstance(following, Mark)
                and following.kind in {"body", "same load", "up", "down"}
                and following.start - item.end <= 3
                and len(item.quantities) == 1
                and self.load_used
                and item.joints[0] in {"then", "and", ",", "name"}
            ):
                # "then 2 more at body weight": the load is yet to come.
                self.load, self.load_used = None, False
            if self._is_next_load(item, following):
                item = Element([item.quantities[0]._replace(role="load")], item.joints)  # noqa: PLW2901 - the same, typed
            self._element(item)
        self._finish()
        return self._with_flags()

    def _is_next_load(self, item: Element, following: Item | None) -> bool:
        """Return whether a bare number is the next load, as reps follow it: "17.5 (9 reps), 15 (10 reps)"."""
        q = item.quantities[0]
        return (
            len(item.quantities) == 1
            and q.role is None
            and self.load_used
            and isinstance(following, Element)
            and len(following.quantities) == 1
            and _is_amount(following.quantities[0])
            and self.known.load_fits(q) is not False
            and (q.value % 1 != 0 or not self.known.in_range(q))
        )

    # Elements

    def _element(self, element: Element) -> None:
        if self.changing:
            self.changing = False
            if self._changed(element):
                return
        for part in _split(element):
            self._part(part)

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

    def _part(self, element: Element) -> None:
        quantities, joints = list(element.quantities), list(element.joints)
        known = self.known
        if known.hold:
            quantities = [
                q._replace(role="seconds") if q.role == "pair" and q.kind is None else q for q in quantities
            ]
        quantities, joints = _pairs_of_dumbbells(quantities, joints, known)
        quantities = [
            q._replace(role="load")
            if q.minus and q.role is None and (known.kind == "assist" or known.load_fits(q) is False)
            else q
            for q in quantities
        ]
        if known.hold:
            pass
        elif any(q.role == "seconds" for q in quantities):
            kept = [(q, j) for q, j in zip(quantities, joints, strict=True) if q.role != "seconds"]
            if not kept:
                return
            quantities, joints = [q for q, _ in kept], [j for _, j in kept]
        quantities = _one_load(quantities, known)
        if (
            len(quantities) == 3
            and quantities[2].times
            and quantities[2].value <= 10
            and joints[2] in {"", "and"}
        ):
            # "80 for 8 three times": that many sets.
            self._part(Element(quantities[:2], joints[:2], element.after_at, element.next_to_name))
            if self.drafts:
                self.drafts.extend([self.drafts[-1]] * (_whole(quantities[2].value) - 1))
            return
        joints = joints[: len(quantities)]
        if len(quantities) == 1:
            self._single(quantities[0], element, joints[0])
            return
        if (
            element.after_at
            and quantities[0].role is None
            and joints[1] in {"for", "x", ""}
            and len(quantities) == 2
            and quantities[1].role is None
        ):
            quantities = [quantities[0]._replace(role="load"), quantities[1]]
        sets = next((i for i, q in enumerate(quantities) if q.role == "sets"), None)
        if sets is not None:
            self._sets_said(quantities, joints, sets)
            return
        at = next((i for i in range(1, len(quantities)) if joints[i] in {"@", "at"}), None)
        if at is not None:
            self._with_at(quantities, joints, at)
            return
        if len(quantities) == 2:
            self._two(quantities[0], quantities[1], joints[1])
        elif len(quantities) == 3 and "x" in joints[1:]:
            self._three(quantities, joints)
        else:
            self._list(quantities, joints)

    def _single(self, q: Quantity, element: Element, joint: str) -> None:
        if self._changes_relative(q):
            return
        if q.role == "sets":
            self._flush_amounts_if(loaded=True)
            self._count(q)
            return
        if q.role in {"load", "pair", "plates"}:
            self._take_load(q)
        elif (
            q.times
            and self.drafts
            and not (self.load is not None and not self.load_used)
            and q.value <= 6
            and not self.known.in_range(q)
        ):
            self.drafts.extend([self.drafts[-1]] * (_whole(q.value) - 1))
        elif q.role in {"reps", "seconds"}:
            self._take_amount(q)
        elif (
            self.drafts
            and _is_remark(self.drafts[-1].load)
            and self.known.load_fits(q)
            and not self.known.reps_fit(q)
        ):
            # "got 8, same 80": the load is said after all.
            last = self.drafts[-1].load
            self.load = q
            self.drafts = [d._replace(load=q) if d.load is last else d for d in self.drafts]
        elif (
            self.load is not None
            and (not self.load_used or self._goes_on(joint))
            and (self.known.reps_fit(q) or (q.value % 1 == Decimal("0.5") and not self.known.load_fits(q)))
        ):
            if element.after_at and self.load_used:
                self._take_load(q._replace(role="load"))
            else:
                self._take_amount(q)
        elif self.amounts and not self.bare and (element.after_at or joint not in {",", "and", "then", "/"}):
            self._take_load(q._replace(role="load"))
        elif (
            self.amounts
            and all(isinstance(a, Quantity) for a in self.amounts)
            and joint in {",", "and", "then", "/"}
            and self.known.reps_fit(q)
        ):
            if self.known.load_fits(q) and not self.count_said and not self.known.in_range(q):
                self._take_load(q._replace(role="load"))
            else:
                self.amounts.append(q)
        elif element.after_at and (not element.next_to_name or self.bare or self.amounts):
            self._take_load(q._replace(role="load"))
        else:
            if len(self.bare) == 1:
                self.second_is_result = element.result or joint in {"name", "for"}
            self.bare.append(q)

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

    def _goes_on(self, joint: str) -> bool:
        return joint in {",", "/", "and", "then", "-", "name"} and bool(self.drafts)

    def _take_load(self, q: Quantity) -> None:
        if self.bare:
            self.amounts.extend(self.bare)
            self.bare = []
        if self.amounts:
            self.load, self.load_used = q, True
            self._emit_amounts()
            return
        if self.load is not None and not self.load_used and isinstance(self.load, Quantity):
            if _same_mass(self.load, q):
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
                and (self.known.load_fits(self.bare[0]) is not False or not self.known.reps_fit(self.bare[0]))
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
        self.count_said = _whole(q.value)
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

    # Two numbers

    def _two(self, first: Quantity, second: Quantity, joint: str) -> None:
        load, amount = _typed(first, second)
        if load is not None and amount is not None:
            self._full(load, [amount])
            return
        if _is_amount(first) and _is_amount(second) and second.times and joint == "" and second.value <= 10:
            # "10 times twice".
            self._take_amount(first)
            self._count(second)
            return
        if _is_amount(first) and _is_amount(second):
            self._take_amount(first)
            self._take_amount(second)
            return
        if (
            second.role == "reps"
            and joint in {"/", "-"}
            and self.known.load_fits(first) is not True
            and self.known.reps_fit(first)
        ):
            if first.value < second.value and joint == "-":
                return
            self._bare_list([first, second])
            return
        if _is_amount(second) and joint == "x" and self._can_be_sets(first) and not (first.value > 10):
            self._sets_without_load(first, second)
            return
        if _is_amount(second):
            self._full(first, [second])
            return
        if _is_amount(first):
            self._full(second, [first])
            return
        if first.role in {"load", "pair", "plates"} and second.role in {"load", "pair", "plates"}:
            self._take_load(first)
            self._take_load(second)
            return
        if self.bare or self.amounts or (self.load is not None and not self.load_used):
            self._after_something(first, second, joint)
            return
        self._pair(first, second, joint)

    def _can_be_sets(self, q: Quantity) -> bool:
        """Return whether a number before "x" can be a number of sets, as it is no sensible load."""
        plain = q.role is None and not (q.plus or q.minus or q.each or q.kind)
        known = self.known
        return (
            plain
            and q.value == int(q.value)
            and q.value <= 10
            and (
                known.load_fits(q) is False
                or known.is_body
                or (known.load_fits(q) is None and known.target is None and known.last is None)
            )
        )

    def _after_something(self, first: Quantity, second: Quantity, joint: str) -> None:
        """Take two bare numbers after a load that still waits for its reps: "80: 3x8", "3 sets, 8 8"."""
        if self.load is not None and not self.load_used:
            if joint == "x":
                self._sets_of(first, second)
            else:
                self._take_amount(first)
                self._take_amount(second)
            return
        if joint in {"", "/", "-"} and (self.count_said or self.bare):
            self.bare.extend([first, second])
            return
        self.amounts, self.bare = [], []
        self._pair(first, second, joint)

    def _sets_of(self, first: Quantity, second: Quantity) -> None:
        """Take "3x8" beside a load: three sets of eight."""
        if first.value > 10 and second.value <= 10 and self.known.in_range(first):
            first, second = second, first
        self.load_used = True
        self._emit(self.load, second, times=_whole(first.value))

    def _pair(self, first: Quantity, second: Quantity, joint: str, more: tuple[Quantity, ...] = ()) -> None:
        known = self.known
        if self.order == "load first" and (known.reps_fit(second) or second.value % 1):
            self._full(first, [second, *more])
            return
        if self.order == "reps first" and known.reps_fit(first):
            self._full(second, [first])
            return
        small = (
            first.value == int(first.value) and first.value <= 10 and not first.each and first.kind is None
        )
        if (
            joint == "x"
            and small
            and known.reps_fit(second)
            and not more
            and (known.load_fits(first) is False or known.is_body)
        ):
            swapped = known.load_fits(second) is True and known.reps_fit(first)
            if not swapped or (known.in_range(second) and not known.in_range(first)):
                self._sets_without_load(first, second)
                return
            if known.in_range(second) and known.in_range(first):
                self._emit(
                    second, first, unclear=(Draft(None, second, first.start, second.end),), confirm=True
                )
                return
        half = second.value % 1 != 0 and not known.hold
        order = known.order(first, second._replace(value=Decimal(int(second.value))) if half else second)
        if order == "load first":
            self.order = order
            self._full(first, [second, *more])
        elif order == "reps first" and not more:
            self.order = order
            self._full(second, [first])
        else:
            other = (
                (Draft(second, first, first.start, second.end),) if known.reps_fit(first) and not more else ()
            )
            self._emit(first, second, unclear=other, confirm=True)
            for one in more:
                self._emit(first, one, confirm=True)

    def _sets_without_load(self, sets: Quantity, amount: Quantity) -> None:
        if self.load is not None and not self.load_used:
            self.load_used = True
        self._emit(self.load if self.load_used else None, amount, times=_whole(sets.value))

    def _full(self, load: Quantity, amounts: list[Quantity]) -> None:
        if isinstance(self.load, Quantity) and not self.load_used and _same_mass(self.load, load):
            load = load if load.unit == self.known.request.unit else self.load
            self.load = None
        self._drop_waiting()
        self.load, self.load_used = load, True
        for amount in amounts:
            self._emit(load, amount)

    def _drop_waiting(self) -> None:
        """Settle what still waits before a whole set: reps without a load take the load that now comes."""
        if self.load is not None and not self.load_used:
            self._emit(self.load, None)
            self.load = None
        waiting = [*self.bare, *self.amounts]
        self.bare, self.amounts = [], []
        self._waiting = waiting

    # Three numbers and more

    def _three(self, q: list[Quantity], joints: list[str]) -> None:
        a, b, c = q
        known = self.known
        if joints[1:] == ["x", "x"]:
            if a.role in {"load", "pair"} or (
                c.role is None and a.role is None and self._load_is_first(a, c)
            ):
                self._load_then_sets(a, b, c)
            elif c.role in {"load", "pair"} or (a.role is None and self._load_is_last(a, c)):
                self._drop_waiting()
                self.load, self.load_used = c, True
                self._emit(c, b, times=_whole(a.value))
            else:
                self._emit(a, b, confirm=True, unclear=(Draft(c, b, a.start, c.end),))
            return
        if joints[1] == "x" and joints[2] in {"/", "-", ",", ""}:
            if joints[2] == "" and (
                c.role == "load"
                or (not known.reps_fit(c))
                or (known.load_fits(c) and known.load_fits(a) is False)
            ):
                self._drop_waiting()
                self.load, self.load_used = c, True
                self._emit(c, b, times=_whole(a.value))
                return
            self._list(q, joints)
            return
        if joints[2] == "x" and joints[1] in {"", ":", "for", "-"}:
            self._drop_waiting()
            self.load, self.load_used = a, False
            if known.load_fits(a) is False and a.role is None:
                self._emit(a, c, confirm=True)
                self.load_used = True
                return
            if known.in_range(b) and not known.in_range(c) and b.value > c.value:
                self._emit(a, b, times=_whole(c.value), confirm=True)
                self.load_used = True
                return
            self._sets_of(b, c)
            return
        self._list(q, joints)

    def _load_is_first(self, a: Quantity, c: Quantity) -> bool:
        first, last = self.known.load_fits(a), self.known.load_fits(c)
        if first is None and last is None:
            return a.value > c.value and c.value <= 10
        return first is True and c.value <= 10 and (last is not True or a.value > c.value)

    def _load_is_last(self, a: Quantity, c: Quantity) -> bool:
        first, last = self.known.load_fits(a), self.known.load_fits(c)
        if first is None and last is None:
            return c.value > a.value and a.value <= 10
        return last is True and a.value <= 10

    def _load_then_sets(self, load: Quantity, b: Quantity, c: Quantity) -> None:
        """Take "80x8x3": eight reps three times, unless the plan's range says the other way round."""
        self._drop_waiting()
        self.load, self.load_used = load, True
        if self.known.in_range(c) and not self.known.in_range(b):
            self._emit(load, c, times=_whole(b.value), confirm=b.value > 10)
        elif c.value > 10:
            self._emit(load, b, confirm=True)
        else:
            self._emit(load, b, times=_whole(c.value))

    def _list(self, q: list[Quantity], joints: list[str]) -> None:
        """Take a load with several reps, or several reps: "80 x 8/7/6", "25 22 19"."""
        rest = q[1:]
        if q[0].role in {"load", "pair", "plates"}:
            self._full(q[0], rest)
        elif joints[1] in {"x", "for", ":"} or (
            self.load is None
            and self.known.load_fits(q[0])
            and all(self.known.reps_fit(r) for r in rest)
            and not self.known.reps_fit(q[0])
        ):
            self._pair(q[0], q[1], joints[1] if joints[1] != "" else "x", tuple(q[2:]))
        else:
            self._bare_list(q)

    def _bare_list(self, q: list[Quantity]) -> None:
        if self.load is not None and not self.load_used:
            for one in q:
                self._take_amount(one)
        else:
            self.bare.extend(q)

    def _sets_said(self, q: list[Quantity], joints: list[str], sets: int) -> None:
        """Take "3 sets of 8 with 80", "80 for 3 sets of 8", "2 sets 80x8"."""
        if sets == len(q) - 1 and len(q) >= 3:
            self._part(Element(q[:-1], joints[:-1]))
            if self.drafts:
                self.drafts.extend([self.drafts[-1]] * (_whole(q[sets].value) - 1))
            return
        self._count(q[sets])
        if (
            sets == 0
            and len(q) == 3
            and joints[2] in {"x", "for", "/"}
            and q[1].role is None
            and q[2].role is None
        ):
            self._two(q[1], q[2], joints[2])
            return
        others = [(one, joints[i]) for i, one in enumerate(q) if i != sets]
        load: Quantity | None = None
        amounts: list[Quantity] = []
        for i, (one, joint) in enumerate(others):
            after_sets = i >= sets
            if (
                one.role in {"load", "pair", "plates"}
                or (joint in {"@", "at"} and one.role is None and after_sets and (amounts or i > sets))
                or (one.role is None and not after_sets and load is None)
                or (
                    one.role is None
                    and joint in {"@", "at"}
                    and after_sets
                    and not amounts
                    and self.known.load_fits(one) is not False
                )
            ):
                load = one
            else:
                amounts.append(one)
        if load is None and len(amounts) > 1 and len(amounts) == self.count_said + 1:
            load, amounts = amounts[0], amounts[1:]
        if (
            load is None
            and len(amounts) == 2
            and self.count_said != 2
            and self.known.load_fits(amounts[1]) is not False
            and self.known.reps_fit(amounts[0])
            and not self.known.reps_fit(amounts[1])
        ):
            load, amounts = amounts[1], amounts[:1]
        if load is not None:
            self.amounts.extend(self.bare)
            self.bare = []
            amounts = [*[a for a in self.amounts if isinstance(a, Quantity)], *amounts]
            self.amounts = []
            self.load, self.load_used = load, False
            if amounts:
                self.load_used = True
                self.amounts = list(amounts)
                self._emit_amounts()
        else:
            for one in amounts:
                self._take_amount_of_sets(one)

    def _take_amount_of_sets(self, q: Quantity) -> None:
        if self.bare and self.load is None and len(self.bare) == 1:
            self.load, self.load_used, self.bare = self.bare[0], False, []
        if self.load is not None and not self.load_used:
            self.load_used = True
            self._emit(self.load, q)
        else:
            self.amounts.append(q)

    def _with_at(self, q: list[Quantity], joints: list[str], at: int) -> None:
        left, right = q[:at], q[at]
        if len(q) > at + 1 and joints[at + 1] in {"for", "x"} and len(left) == 1 and left[0].role is None:
            # "then with ten kilos on for nine" beside an earlier number: the later two belong together.
            self._single(left[0], Element(left, joints[:1]), joints[0])
            self._part(Element(q[at:], ["and", *joints[at + 1 :]]))
            return
        if _is_amount(right) and len(left) == 1:
            self._full(left[0], [right])
            return
        if len(left) == 1:
            only = left[0]
            if only.role in {"load", "pair"} and right.role is None:
                self._full(only, [right])
            elif only.role is None and not self.known.reps_fit(only) and only.value % 1 == 0:
                self._emit(only, right, confirm=True)
            else:
                waiting = [*self.bare] if not self.load_used else []
                amounts = [a for a in self.amounts if isinstance(a, Quantity)]
                self.bare, self.amounts = [], []
                if self.load is not None and not self.load_used:
                    self._emit(self.load, None)
                self.load, self.load_used = right, True
                self.amounts = [*waiting, *amounts, only]
                self._emit_amounts()
        elif len(left) == 2 and joints[1] in {"x", "for", "/", ""}:
            first, second = left
            if first.role in {"load", "pair"} or (
                first.value > 12 and right.value <= 10 and right.role is None
            ):
                self._two(first, second, joints[1])
                if right.role is None and right.value >= 5 and joints[at] == "@":
                    self.flags.append(
                        (len(self.drafts) - 1, Mark("rir", right.start, right.end, Decimal(10) - right.value))
                    )
            elif first.value <= 10 and first.value == int(first.value) and joints[1] == "x":
                self._drop_waiting()
                self.load, self.load_used = right, True
                self._emit(right, second, times=_whole(first.value))
            else:
                self._drop_waiting()
                self.load, self.load_used = right, True
                self._emit(right, first)
                self._emit(right, second)
        else:
            self._drop_waiting()
            self.load, self.load_used = right, True
            for one in left:
                self._emit(right, one)
        if len(q) > at + 1:
            self._part(Element(q[at + 1 :], ["", *joints[at + 2 :]]))

    # Phrases

    def _mark(self, mark: Mark) -> None:
        match mark.kind:
            case "failure" | "no failure" | "rir" | "lowering" | "every set":
                self.flags.append((len(self.drafts) + len(self.amounts) + len(self.bare) - 1, mark))
            case "failed on":
                self._failed_on(mark)
            case "body":
                self._body(mark)
            case "same load" | "up" | "down":
                self._relative_load(mark)
            case "same all" | "same again" | "target" | "target more" | "target fewer":
                self._relative_whole(mark)
            case "more reps" | "fewer reps":
                self._take_amount(mark)
            case "unknown load" | "pin":
                if self.load is None and not (
                    mark.kind == "pin"
                    and (self.bare or self.amounts)
                    and any(self.known.load_fits(b) for b in self.bare)
                ):
                    self._unknown()
            case "each hand":
                self.each_hand = True
            case "change":
                self.changing = True
            case "zero":
                self._zero(mark)
            case "done":
                self._emit(None, None)
            case _:
                pass

    def _zero(self, mark: Mark) -> None:
        """Take a missed attempt: the load with no rep."""
        q = Quantity(mark.value or Decimal(0), mark.start, mark.end, "load", mark.unit)
        self._full(q, [Quantity(Decimal(0), mark.start, mark.end, "reps")])

    def _unknown(self) -> None:
        self.amounts.extend(self.bare)
        self.bare = []
        self.load = "unknown"
        self.load_used = bool(self.amounts)
        if self.amounts:
            self._emit_amounts()

    def _relative_load(self, mark: Mark) -> None:
        if self.bare:
            self.amounts.extend(self.bare)
            self.bare = []
        if self.load is not None and not self.load_used and mark.kind == "same load":
            return
        self.load, self.load_used = mark, bool(self.amounts)
        if self.amounts:
            self._emit_amounts()

    def _relative_whole(self, mark: Mark) -> None:
        if self.load is not None and not self.load_used:
            self.load_used = True
            self._emit(self.load, mark)
            return
        if self.amounts and mark.kind in {"same all", "same again"}:
            self.load, self.load_used = mark, True
            self._emit_amounts()
            return
        self._emit(mark, mark)

    def _body(self, mark: Mark) -> None:
        self.amounts.extend(self.bare)
        self.bare = []
        if self.load is not None and not self.load_used:
            return
        if self.amounts:
            self.load, self.load_used = "body", True
            self._emit_amounts()
        elif self.drafts and self.drafts[-1].load is None:
            self.drafts = [d._replace(load="body") if d.load is None else d for d in self.drafts]
            self.load, self.load_used = "body", True
        else:
            self.load, self.load_used = "body", False
        del mark

    def _failed_on(self, mark: Mark) -> None:
        reps = int(mark.value or 1) - 1
        waiting = self.bare[-1] if self.bare else (self.amounts[-1] if self.amounts else None)
        if isinstance(waiting, Quantity) and waiting.value in {reps, reps + 1} and waiting.role != "load":
            self._settle_bare_as_amounts()
            self.flags.append((len(self.drafts) + len(self.amounts) - 1, mark))
            return
        if self.bare and len(self.bare) == 1 and self.load is None:
            self.load, self.load_used, self.bare = self.bare[0], False, []
        if self.load is not None and not self.load_used:
            self.load_used = True
            self._emit(self.load, mark, reps=reps, to_failure=True)
        elif self.drafts or self.amounts:
            self.flags.append((len(self.drafts) + len(self.amounts) - 1, mark))
        else:
            self.amounts.append(mark)

    def _settle_bare_as_amounts(self) -> None:
        self.amounts.extend(self.bare)
        self.bare = []

    # The end

    def _finish(self) -> None:
        if self.bare:
            self._settle_bare()
        if self.amounts:
            self._emit_amounts()
        elif self.load is not None and not self.load_used and not (self.drafts and _is_remark(self.load)):
            self._emit(self.load, None)
        elif self.count_said > 1 and not self.drafts:
            self.drafts.append(Draft())

    def _settle_bare(self) -> None:
        bare, self.bare = self.bare, []
        known = self.known
        if self.load is not None or self.amounts or self.count_said:
            if (
                len(bare) == self.count_said + 1
                and self.count_said
                and self.load is None
                and not self.amounts
            ):
                self._full(bare[0], bare[1:])
                return
            self.amounts.extend(bare)
            return
        if len(bare) == 1:
            what = known.lone(bare[0])
            if what == "reps":
                self.amounts.append(bare[0])
            elif what == "load":
                self._emit(bare[0], None)
            else:
                self._emit(
                    None,
                    bare[0],
                    unclear=(Draft(bare[0], None, bare[0].start, bare[0].end),),
                    confirm=True,
                    bare=bare[0].value,
                )
            return
        if len(bare) == 2 and self.second_is_result:
            self._pair(bare[0], bare[1], "for")
            return
        pairs = list(zip(bare[::2], bare[1::2], strict=False))
        if (
            len(bare) % 2 == 0
            and len(bare) >= 4
            and all(
                not known.reps_fit(a) and known.load_fits(a) is not False and known.reps_fit(b)
                for a, b in pairs
            )
        ):
            # Loads with their reps in brackets, 185 (6), 195 (4).
            for load, reps in pairs:
                self._full(load, [reps])
            return
        first_is_load = known.load_fits(bare[0])
        rest_are_reps = all(known.reps_fit(b) for b in bare[1:])
        if not known.reps_fit(bare[0]) and rest_are_reps and first_is_load is not False:
            self._full(bare[0], bare[1:])
        elif all(known.reps_fit(b) for b in bare):
            if first_is_load:
                for one in bare:
                    self._emit(None, one, confirm=True)
            else:
                self.amounts.extend(bare)
        else:
            for one in bare:
                self._emit(one, None, confirm=True)

    def _with_flags(self) -> list[Draft]:
        drafts, last_of = self._counted()
        if not drafts:
            return drafts
        every = any(m.kind == "every set" for _, m in self.flags)
        for index, mark in self.flags:
            at = last_of[min(index, len(last_of) - 1)] if index >= 0 else len(drafts) - 1
            match mark.kind:
                case "failure":
                    for i in range(len(drafts)) if every else (at,):
                        drafts[i] = drafts[i]._replace(to_failure=True)
                case "no failure":
                    drafts[at] = drafts[at]._replace(to_failure=False)
                case "rir":
                    drafts[at] = drafts[at]._replace(rir=mark.value)
                case "failed on":
                    drafts[at] = self._failed_draft(drafts[at], int(mark.value or 1) - 1)
                case "lowering":
                    drafts = [d._replace(lowering=True) for d in drafts]
                case _:
                    pass
        return drafts

    def _counted(self) -> tuple[list[Draft], list[int]]:
        """Return the drafts as often as they were counted, and for each said once the place of its last."""
        out: list[Draft] = []
        last_of: list[int] = []
        starts = [0, *(start for start, _ in self.counts), len(self.drafts)]
        numbers = [1, *(number for _, number in self.counts)]
        if self.counts and self.counts[-1][0] == len(self.drafts):
            # A count after the sets speaks of those before it.
            numbers = [*numbers[:-2], numbers[-1], 1] if len(numbers) == 2 or numbers[-2] == 1 else numbers
        for start, end, number in zip(starts[:-1], starts[1:], numbers, strict=True):
            part = self.drafts[start:end]
            times = (
                number
                if len(part) == 1
                or (len(part) > 1 and part[0].load is not part[1].load and len(part) != number)
                else 1
            )
            if times > MOST_SETS:
                part, times = [draft._replace(confirm=True) for draft in part], 1
            doubtful = number > 1 and len(part) > 1 and times == 1 and len(part) != number
            for i, draft in enumerate(part):
                out.extend([draft._replace(confirm=True) if doubtful else draft] * (times if i == 0 else 1))
                last_of.append(len(out) - 1)
        return out, last_of

    def _failed_draft(self, draft: Draft, reps: int) -> Draft:
        said = int(draft.amount.value) if isinstance(draft.amount, Quantity) else None
        if said is not None and said == reps + 1:
            return draft._replace(to_failure=True, confirm=True)
        if said is not None and said != reps:
            return draft._replace(to_failure=True)
        return draft._replace(to_failure=True, reps=reps)


def _is_remark(load: Source) -> bool:
    """Return whether a load beside whole sets only tells of them: "80x8, 5 kg more than in January"."""
    return isinstance(load, Mark) and load.kind in {"up", "down", "same load"}


def _whole(value: Decimal) -> int:
    return max(1, int(value))


def _is_amount(q: Quantity) -> bool:
    return q.role in {"reps", "seconds"}


def _typed(first: Quantity, second: Quantity) -> tuple[Quantity | None, Quantity | None]:
    """Return the load and the reps of two numbers, where the words settle which is which."""
    loads = {"load", "pair", "plates"}
    if first.role in loads and second.role not in loads:
        return first, second
    if second.role in loads and first.role not in loads:
        return second, first
    return None, None


def _same_mass(first: Quantity, second: Quantity) -> bool:
    """Return whether two loads are one load said in both units."""
    if {first.unit, second.unit} != {"kg", "lb"}:
        return False
    kg, lb = (first.value, second.value) if first.unit == "kg" else (second.value, first.value)
    return abs(kg - lb * Decimal("0.45359237")) <= max(Decimal("1.5"), kg * Decimal("0.03"))


def _one_load(q: list[Quantity], known: Known) -> list[Quantity]:
    """Drop the load in the other unit, where a load is said in both."""
    for i in range(len(q) - 1):
        if q[i].role == "load" and q[i + 1].role == "load" and _same_mass(q[i], q[i + 1]):
            return [*q[:i], q[i] if q[i].unit == known.request.unit else q[i + 1], *q[i + 2 :]]
    return q


def _pairs_of_dumbbells(
    q: list[Quantity], joints: list[str], known: Known
) -> tuple[list[Quantity], list[str]]:
    """Take "2x30kg dumbbells" and "2 x 30s" as a pair of thirties."""
    if (
        len(q) == 3
        and q[0].value == 2
        and q[0].role is None
        and joints[1] == "x"
        and joints[2] in {"for", "x", "@", "at"}
        and known.kind == "each"
        and known.load_fits(q[1]) is not False
        and not known.load_fits(q[0])
        and known.reps_fit(q[2])
        and not (joints[2] != "for" and known.load_fits(q[2]))
    ):
        return [q[1]._replace(kind="each"), *q[2:]], [joints[0], *joints[2:]]
    if (
        len(q) >= 2
        and q[0].value == 2
        and q[0].role is None
        and joints[1] in {"x", ""}
        and (q[1].kind == "each" or (q[1].role == "pair" and len(q) > 2))
    ):
        return [q[1]._replace(kind="each"), *q[2:]], [joints[0], *joints[2:]]
    return q, joints


def _split(element: Element) -> list[Element]:
    """Part numbers that run on into the next set: "80x8 85x5", "80 8 85 5" stays."""
    q, joints = element.quantities, element.joints
    if len(q) < 4:
        return [element]
    parts: list[Element] = []
    start = 0
    for i in range(2, len(q)):
        if (
            i - start >= 2
            and joints[i] in {"", "/", "-"}
            and i + 1 < len(q)
            and joints[i + 1] in {"x", "for", "@", "at"}
            and any(j in {"x", "for", "@", "at"} for j in joints[start + 1 : i])
        ):
            parts.append(
                Element(
                    q[start:i],
                    joints[start:i],
                    element.after_at and start == 0,
                    element.next_to_name,
                    element.result,
                )
            )
            start = i
    rest = Element(
        q[start:],
        [joints[start] if start == 0 else "then", *joints[start + 1 :]],
        element.after_at and start == 0,
        element.next_to_name,
        element.result,
    )
    return [*parts, rest]
