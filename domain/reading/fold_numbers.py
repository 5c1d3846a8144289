"""Joined numbers into drafts, for a known exercise: the contract's second, third and twelfth rule."""

from decimal import Decimal

from domain.reading.drafts import (
    MOST_SETS,
    Draft,
    is_amount,
    is_remark,
    one_load,
    pairs_of_dumbbells,
    split,
    typed,
    whole,
)
from domain.reading.elements import Element
from domain.reading.fold_state import State
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity

_MANY_SETS = 6
"""Sets above which a number that could be reps as well is asked about: "60 x 10 x 10"."""


class Numbers(State):
    """Takes elements, by what their numbers and joints allow."""

    def _element(self, element: Element) -> None:
        if self.changing:
            self.changing = False
            if self._changed(element):
                return
        for part in split(element):
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
        quantities, joints = pairs_of_dumbbells(quantities, joints, known)
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
        quantities = one_load(quantities, known)
        if (
            len(quantities) == 3
            and quantities[2].times
            and quantities[2].value <= 10
            and joints[2] in {"", "and"}
        ):
            # "80 for 8 three times": that many sets.
            self._part(Element(quantities[:2], joints[:2], element.after_at, element.next_to_name))
            if self.drafts:
                self.drafts.extend([self.drafts[-1]] * (whole(quantities[2].value) - 1))
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
            self.drafts.extend([self.drafts[-1]] * (whole(q.value) - 1))
        elif q.role in {"reps", "seconds"}:
            self._take_amount(q)
        elif (
            self.drafts
            and is_remark(self.drafts[-1].load)
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
            if self.drafts and joint == "name" and not self.bare:
                # "80x8 on bench 2": the number belongs to the name.
                return
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

    def _two(self, first: Quantity, second: Quantity, joint: str) -> None:
        load, amount = typed(first, second)
        if load is not None and amount is not None:
            self._full(load, [amount])
            return
        if is_amount(first) and is_amount(second) and second.times and joint == "" and second.value <= 10:
            # "10 times twice".
            self._take_amount(first)
            self._count(second)
            return
        if is_amount(first) and is_amount(second):
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
        if is_amount(second) and joint == "x" and self._can_be_sets(first) and not (first.value > 10):
            self._sets_without_load(first, second)
            return
        if is_amount(second):
            self._full(first, [second])
            return
        if is_amount(first):
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
        self._emit(self.load, second, times=whole(first.value))

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
        self._emit(self.load if self.load_used else None, amount, times=whole(sets.value))

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
                self._emit(c, b, times=whole(a.value))
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
                self._emit(c, b, times=whole(a.value))
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
                self._emit(a, b, times=whole(c.value), confirm=True)
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
            self._emit(load, c, times=whole(b.value), confirm=b.value > 10)
        elif c.value > 10 or (c.value > _MANY_SETS and self.known.in_range(c)):
            self._emit(load, b, confirm=True)
        else:
            self._emit(load, b, times=whole(c.value))

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
                self.drafts.extend([self.drafts[-1]] * (whole(q[sets].value) - 1))
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
        if is_amount(right) and len(left) == 1:
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
            if right.role == "load" and first.value > MOST_SETS and self.known.load_fits(first) is not False:
                # "80x8 with 5 kg to spare": the set is whole without it.
                self._two(first, second, joints[1])
                return
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
                self._emit(right, second, times=whole(first.value))
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
