"""Sets without a name whose loads tell which exercise of the plan they are of: a whole workout in one line,
or what stands before the first name.

"80x8, 47.5x7, 30x9": each set has the load that its exercise of the plan was to have, and they cannot all be
of the first. Drop sets are not taken for that: their loads are not those of other exercises.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise, takewhile

from domain.reading.context import Day
from domain.reading.element import Element, Item
from domain.reading.gather import Group
from domain.reading.quantities import Quantity
from domain.reading.which_exercise import Exercises

_NEAR = Decimal("0.1")
"""How far a load may be from the one that was told, in parts of that, to tell whose it is."""
_MANY = 3
"""So many sets tell by loads near those told, half of them just those; fewer only by just those loads. Where
the load falls and the reps rise, as in drop sets, all are just those, and the reps those of the plan."""


def down_the_plan(groups: Sequence[Group], exercises: Exercises, day: Day) -> Sequence[Group]:
    """Return the groups, each set of such a line as a group of its own, as if it stood on its own line."""
    told = [group for group in groups if group.items or group.named is not None]
    told = list(takewhile(_is_without_a_name, told))
    if not told or any(group.line != told[0].line for group in told):
        return groups
    items = [item for group in told for item in group.items]
    loads = [load for item in items if (load := _load_of(item)) is not None]
    if len(loads) < 2 or len(loads) != len(items):
        return groups
    slots = _slots(loads, exercises, day)
    if slots is None or slots[0] == slots[-1] or not _tells_the_plan(items, slots, exercises, day):
        return groups
    apart = [
        replace(group, items=[item], pointer=slot + 1)
        for slot, (group, item) in zip(slots, ((g, i) for g in told for i in g.items), strict=True)
    ]
    return [*apart, *groups[groups.index(told[-1]) + 1 :]]


def _slots(loads: Sequence[Quantity], exercises: Exercises, day: Day) -> list[int] | None:
    """Return the place in the plan of each load, none left out; None where a load is of none."""
    plan = exercises.request.plan
    left = [p.sets - day.counts.get(p.name, 0) for p in plan]
    slots: list[int] = []
    at = next((k for k, sets in enumerate(left) if sets > 0), len(plan))
    for load in loads:
        if at < len(plan) and at in slots and (not left[at] or not _is_of(load, exercises, day, at)):
            at += 1
        if at >= len(plan) or left[at] <= 0 or not _is_of(load, exercises, day, at):
            return None
        left[at] -= 1
        slots.append(at)
    return slots


def _tells_the_plan(items: Sequence[Item], slots: Sequence[int], exercises: Exercises, day: Day) -> bool:
    """Return whether sets are of the plan's exercises in turn, and cannot be all of the first."""
    sets = [item.quantities for item in items if isinstance(item, Element)]
    knowns = [exercises.known(exercises.request.plan[slot].name, day) for slot in slots]
    first = knowns[0]
    if all(first.load_fits(load) and first.kind_of(load) == first.kind for load, _ in sets):
        return False
    exact = sum(known.is_exact(load) for known, (load, _) in zip(knowns, sets, strict=True))
    falls = all(one[0].value > two[0].value and one[1].value < two[1].value for one, two in pairwise(sets))
    if falls and not all(known.in_range(reps) for known, (_, reps) in zip(knowns, sets, strict=True)):
        return False
    return exact == len(sets) or (len(sets) >= _MANY and not falls and 2 * exact >= len(sets))


def before_their_name(groups: Sequence[Group], exercises: Exercises, day: Day) -> Sequence[Group]:
    """Return the groups, whole sets before the first name apart that are not of it by their load, but of the
    exercise whose turn it is: "80 kilos for 8 and then 47.5 for 6 on the overhead press"."""
    first = groups[0]
    if first.named is None or len(first.named.names) != 1 or first.pointer is not None or first.again:
        return groups
    ahead = [item for item in first.items if item.end <= first.named.start]
    turn = exercises.next(day)
    if turn is None or turn == first.named.names[0]:
        return groups
    named, due = exercises.known(first.named.names[0], day), exercises.known(turn, day)
    count = 0
    for item in ahead:
        load = _load_of(item)
        if load is None or named.load_fits(load) is not False or not due.load_fits(load):
            break
        count += 1
    if not 0 < count < len(first.items):
        return groups
    apart = replace(first, named=None, items=first.items[:count])
    return [apart, replace(first, items=first.items[count:]), *groups[1:]]


def _is_without_a_name(group: Group) -> bool:
    return (
        group.named is None
        and group.pointer is None
        and not group.again
        and not group.is_of_another
        and group.unknown_word is None
    )


def _load_of(item: Item) -> Quantity | None:
    """Return the load of a whole set: "80x8", "80/8"."""
    if not isinstance(item, Element) or len(item.quantities) != 2 or item.joints[1] not in _TIES:
        return None
    load, amount = item.quantities
    return load if load.role in {None, "load", "pair"} and amount.role in {None, "reps", "seconds"} else None


_TIES = frozenset({"x", "/", "for", ""})


def _is_of(load: Quantity, exercises: Exercises, day: Day, at: int) -> bool:
    """Return whether a load may be that of an exercise of the plan, by what it was to have."""
    known = exercises.known(exercises.request.plan[at].name, day)
    kind = known.kind_of(load)
    told = known.reference_load(
        kind, "lb" if load.unit == "lb" else "kg" if load.unit == "kg" else known.unit
    )
    return kind == known.kind and told is not None and abs(load.value - told) <= _NEAR * told
