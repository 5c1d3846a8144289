"""Two or three numbers side by side, or a list of them: which is the load, which the reps, which the sets.

Lone numbers and numbers whose words already say what they are, are taken elsewhere.
"""

from decimal import Decimal

from domain.reading.drafts import (
    Draft,
    is_amount,
    typed,
    whole,
)
from domain.reading.fold_state import State
from domain.reading.quantities import FEW_SETS, Quantity


class Pairs(State):
    """Takes numbers that stand side by side, by what fits the exercise."""

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
        if first.role is None and self._is_so_often(first, second):
            self._take_amount(first._replace(role="reps"))
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

    def _is_so_often(self, first: Quantity, second: Quantity) -> bool:
        """Return whether reps are told with how often they were done: "11 twice"."""
        in_range = self.known.in_range
        return second.times and second.value <= FEW_SETS and in_range(first) and not in_range(second)

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
                self._ask_about_waiting()
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
                self._ask_about_waiting()
                self.load, self.load_used = c, True
                self._emit(c, b, times=whole(a.value))
                return
            self._list(q, joints)
            return
        if joints[2] == "x" and joints[1] in {"", ":", "for", "-"}:
            self._ask_about_waiting()
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
        self._ask_about_waiting()
        self.load, self.load_used = load, True
        if self.known.in_range(c) and not self.known.in_range(b):
            self._emit(load, c, times=whole(b.value), confirm=b.value > 10)
        elif c.value > 10 or (c.value > FEW_SETS and self.known.in_range(c)):
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
