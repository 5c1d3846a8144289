"""What the numbers of a group are by what else is said in it, before they are folded one after the other.

A number alone may be taken two ways where the group as a whole leaves but one: "80s for 45 sec" is a pair
and a time, "3x10 shrugs at 185" is sets with their load.
"""

from collections.abc import Sequence
from itertools import pairwise

from domain.reading.context import Known
from domain.reading.drafts import is_amount
from domain.reading.elements import Element, Item
from domain.reading.quantities import FEW_SETS, Quantity


def typed_by_group(items: Sequence[Item], known: Known) -> list[Item]:
    """Return the items, each number typed as far as the others of the group tell."""
    if len(items) == 1 and not known.hold and isinstance(items[0], Element) and len(items[0].joints) == 2:
        return list(items)
    items = _with_led_load([_with_no_rep(item) for item in items], known)
    typed = _with_sets_before_name(_with_pairs(items, known) if known.hold else list(items), known)
    return _with_reps(typed, _amounts_of_sets(typed, known) or _list_without_load(typed, known))


def _with_no_rep(item: Item) -> Item:
    """Take a lone nought for reps: no load is nought."""
    if not isinstance(item, Element) or len(item.quantities) > 1:
        return item
    only = item.quantities[0]
    return _with(item, [only._replace(role="reps")]) if only.value == 0 and only.role is None else item


def _with_led_load(items: list[Item], known: Known) -> list[Item]:
    """Take a lone number after "with" for the load where the next one is said to be the reps."""
    out = list(items)
    for at, (item, following) in enumerate(pairwise(items)):
        if (
            isinstance(item, Element)
            and isinstance(following, Element)
            and item.after_at
            and [q.role for q in item.quantities] == [None]
            and (
                is_amount(following.quantities[0]) or (known.hold and following.quantities[0].role == "pair")
            )
        ):
            out[at] = _with(item, [item.quantities[0]._replace(role="load")])
    return out


def _with_pairs(items: Sequence[Item], known: Known) -> list[Item]:
    """Take "80s" on a hold for seconds, unless the seconds are told beside it, so that it is the load."""
    said = any(isinstance(i, Element) and any(q.role == "seconds" for q in i.quantities) for i in items)
    out: list[Item] = []
    for item in items:
        if not isinstance(item, Element):
            out.append(item)
            continue
        pairs = [at for at, q in enumerate(item.quantities) if q.role == "pair" and q.kind is None]
        after = pairs[0] + 1 if pairs else 0
        tied = 0 < after < len(item.quantities) and item.joints[after] in {"", "x", "for"}
        loads = set()
        if known.kind == "each" and (said or tied):
            loads = {at for at in pairs[:1] if known.load_fits(item.quantities[at]) is not False}
        out.append(
            _with(
                item,
                [
                    q._replace(
                        role="load" if at in loads else "seconds", kind="each" if at in loads else None
                    )
                    if at in pairs
                    else q
                    for at, q in enumerate(item.quantities)
                ],
            )
        )
    return out


def _with_sets_before_name(items: list[Item], known: Known) -> list[Item]:
    """Take "3x10 shrugs at 185" as sets of ten: the load is told after the name."""
    out: list[Item] = []
    for item in items:
        before = out[-1] if out else None
        if isinstance(before, Element) and isinstance(item, Element) and _are_sets(before, item, known):
            out[-1] = Element(
                [*before.quantities, *item.quantities], [*before.joints, "at"], result=before.result
            )
        else:
            out.append(item)
    return out


def _are_sets(before: Element, load: Element, known: Known) -> bool:
    if len(before.quantities) != 2 or before.joints[1] != "x" or len(load.quantities) != 1:
        return False
    sets, reps = before.quantities
    said = load.quantities[0]
    return (
        load.joints[0] == "name"
        and (load.after_at or said.role == "load")
        and not is_amount(said)
        and sets.role is None
        and sets.value <= FEW_SETS
        and sets.value % 1 == 0
        and reps.role in {None, "reps"}
        and known.load_fits(sets) is not True
        and known.load_fits(said) is not False
    )


_Place = tuple[int, int]
"""A number by its item and its place in that."""
_LIST_JOINTS = frozenset({"", ",", "and", "/", "then", "-"})


def _amounts_of_sets(items: Sequence[Item], known: Known) -> set[_Place]:
    """Return the reps of "3 sets, 15 13 and 12": as many bare numbers as there are sets."""
    numbers = [
        (i, j) for i, item in enumerate(items) if isinstance(item, Element) for j in range(len(item.joints))
    ]
    for at, place in enumerate(numbers):
        sets = _number(items, place)
        if sets.role == "sets" and sets.value > 1:
            run = _run_of_list(items, numbers[at + 1 :])
            if len(run) == sets.value and all(known.reps_fit(_number(items, p)) for p in run):
                return set(run)
    return set()


def _list_without_load(items: Sequence[Item], known: Known) -> set[_Place]:
    """Return the reps of "19 15 and 12" on an exercise that is done with body weight."""
    if not known.is_body or not all(isinstance(i, Element) for i in items):
        return set()
    numbers = [
        (i, j) for i, item in enumerate(items) if isinstance(item, Element) for j in range(len(item.joints))
    ]
    run = _run_of_list(items, numbers)
    can_be = all(known.reps_fit(q) and known.load_fits(q) is None for q in (_number(items, p) for p in run))
    return set(run) if len(run) == len(numbers) > 2 and can_be else set()


def _run_of_list(items: Sequence[Item], places: Sequence[_Place]) -> list[_Place]:
    """Return the places up to the first number that is not a bare one of a list."""
    run: list[_Place] = []
    for i, j in places:
        item = items[i]
        if not isinstance(item, Element) or item.quantities[j].role is not None or (j == 0 and item.after_at):
            break
        if run and item.joints[j] not in _LIST_JOINTS:
            return []
        run.append((i, j))
    return run


def _number(items: Sequence[Item], place: _Place) -> Quantity:
    item = items[place[0]]
    assert isinstance(item, Element)  # noqa: S101 - places are only made of elements
    return item.quantities[place[1]]


def _with_reps(items: list[Item], places: set[_Place]) -> list[Item]:
    if not places:
        return items
    return [
        _with(
            item,
            [q._replace(role="reps") if (i, j) in places else q for j, q in enumerate(item.quantities)],
        )
        if isinstance(item, Element)
        else item
        for i, item in enumerate(items)
    ]


def _with(element: Element, quantities: list[Quantity]) -> Element:
    return Element(
        quantities,
        element.joints,
        element.after_at,
        element.next_to_name,
        element.result,
        element.after_for,
    )
