"""A group of numbers and phrases into single sets, for a known exercise: the contract's second to
thirteenth rule.

The outcome of each is a `Draft`: what load, how many reps, and what must be asked. Nothing is recorded here.
"""

from decimal import Decimal

from domain.reading.drafts import (
    Draft,
    is_amount,
    is_remark,
)
from domain.reading.elements import Element, Item
from domain.reading.fold_numbers import Numbers
from domain.reading.fold_typed import typed_by_group
from domain.reading.lowering import is_lowering, stretch_of
from domain.reading.phrases import Mark
from domain.reading.quantities import MOST_SETS, Quantity


class Fold(Numbers):
    """Takes the items of one group in order and makes drafts of them."""

    def run(self, items: list[Item]) -> list[Draft]:
        """Return the drafts of a group."""
        items = typed_by_group(items, self.known)
        for i, item in enumerate(items):
            if is_lowering(item):
                self.lowered.append(stretch_of(items, i))
                continue
            if isinstance(item, Mark):
                self._mark(item)
                continue
            following = next((one for one in items[i + 1 :] if not is_lowering(one)), None)
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
            if self._is_whole_beside_reps(item):
                self._settle_bare()
                self._emit_amounts()
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
            and is_amount(following.quantities[0])
            and self.known.load_fits(q) is not False
            and (q.value % 1 != 0 or not self.known.in_range(q))
        )

    def _is_whole_beside_reps(self, item: Element) -> bool:
        """Return whether a loaded set follows reps with body weight: "chins 8, then +10 x 5"."""
        waiting = [*self.bare, *self.amounts]
        base = self.known.load_for_reps()
        return (
            bool(waiting)
            and self.load is None
            and not self.count_said
            and item.joints[0] in {"then", "and", ",", "stop"}
            and (len(item.quantities) == 2 or (item.joints[0] == "then" and not self.bare))
            and _names_a_load(item)
            and base is not None
            and base.load_kind == "body"
            and all(isinstance(q, Quantity) and self.known.reps_fit(q) for q in waiting)
        )

    def _mark(self, mark: Mark) -> None:
        match mark.kind:
            case "failure" | "no failure" | "rir" | "every set":
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
            case "unknown reps" if self.load is None and len(self.bare) == 1:
                self.load, self.load_used = self.bare.pop(), False
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
        if self.drafts and isinstance(self.drafts[-1].amount, Quantity) and mark.kind != "same again":
            # "40 seconds, target met" tells of the set, and is no other one.
            return
        told = any(isinstance(a, Quantity) for a in (*self.amounts, *self.bare))
        if told and mark.kind in {"target", "same all"}:
            return
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
        elif self.drafts and self.drafts[-1].load == "body":
            return
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
        if len(self.bare) == 1 and (self.load is None or self.load_used):
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

    def _finish(self) -> None:
        if self.bare:
            self._settle_bare()
        if self.amounts:
            self._emit_amounts()
        elif self.load is not None and not self.load_used and not (self.drafts and is_remark(self.load)):
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
        if (
            known.order(bare[0], bare[1]) == "load first"
            and all(known.reps_fit(b) for b in bare[1:])
            and not (known.load_fits(bare[0]) is None and known.reps_fit(bare[0]))
            and (known.is_exact(bare[0]) or not known.in_range(bare[0]))
        ):
            self._full(bare[0], bare[1:])
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
        for stretch in self.lowered:
            spoken_of = [stretch.holds(d) for d in drafts]
            drafts = [
                d._replace(lowering=True) if held or not any(spoken_of) else d
                for d, held in zip(drafts, spoken_of, strict=True)
            ]
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


def _names_a_load(item: Element) -> bool:
    return any(q.role == "load" or q.plus for q in item.quantities) or bool(
        {"@", "at"} & set(item.joints[1:])
    )
