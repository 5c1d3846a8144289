"""Joined numbers into drafts, for a known exercise: the contract's second, third and twelfth rule.

Here each element goes its way: a lone number, sets or a load that are said to be such; bare numbers side by
side and changes of what was said before have their own files.
"""

from decimal import Decimal

from domain.reading.drafts import (
    is_amount,
    is_remark,
    one_load,
    pairs_of_dumbbells,
    split,
    whole,
)
from domain.reading.elements import Element
from domain.reading.fold_changes import Changes
from domain.reading.fold_pairs import Pairs
from domain.reading.phrases import Mark
from domain.reading.quantities import MOST_SETS, Quantity

_APART = frozenset({"name", "then", "and", "gap", "stop", "line"})
"""Joints between numbers of two sets, rather than between a load and its reps."""


class Numbers(Changes, Pairs):
    """Takes elements, by what their numbers and joints allow."""

    def _element(self, element: Element) -> None:
        if self.changing:
            self.changing = False
            if self._changed(element):
                return
        for part in split(element):
            self._part(part)

    def _part(self, element: Element) -> None:
        quantities, joints = list(element.quantities), list(element.joints)
        known = self.known
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
            if joint in _APART and self.known.is_body and len(self.bare) == 1:
                self._settle_lone_reps()
            self._take_amount(q)
        elif (
            self.drafts
            and is_remark(self.drafts[-1].load)
            and joint not in _APART
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
        elif (
            element.after_for
            and element.next_to_name
            and self.known.reps_fit(q)
            and not (self.drafts or self.bare or self.amounts)
            and self.load is None
        ):
            # "rdl for 7": after "for" come the reps.
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

    def _settle_lone_reps(self) -> None:
        if self.known.lone(self.bare[0]) == "reps":
            self.amounts.extend(self.bare)
            self.bare = []

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
                or (one.role is None and not after_sets and load is None and not self._is_body_reps(one))
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

    def _is_body_reps(self, q: Quantity) -> bool:
        """Return whether a bare number can only be reps done with body weight: "15 x 3 sets" of push-ups."""
        return self.known.is_body and self.known.in_range(q) and self.known.load_fits(q) is None

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
                self._ask_about_waiting()
                self.load, self.load_used = right, True
                self._emit(right, second, times=whole(first.value))
            else:
                self._ask_about_waiting()
                self.load, self.load_used = right, True
                self._emit(right, first)
                self._emit(right, second)
        else:
            self._ask_about_waiting()
            self.load, self.load_used = right, True
            for one in left:
                self._emit(right, one)
        if len(q) > at + 1:
            self._part(Element(q[at + 1 :], ["", *joints[at + 2 :]]))
