"""Groups that belong together: a load and its reps in two sentences, a phrase after the set it speaks of."""

from collections.abc import Sequence
from dataclasses import replace

from domain.reading.context import MOST_REPS
from domain.reading.gather import Group
from domain.reading.phrases import Mark


def joined_groups(groups: Sequence[Group]) -> list[Group]:
    """Join a group that goes on from the one before to it."""
    kept: list[Group] = []
    for group in groups:
        if kept and _says_all_again(kept[-1], group):
            kept[-1].items[-1:] = group.items
        elif kept and group.named is None and group.items and _goes_on(kept[-1], group):
            kept[-1].items.extend(group.items)
            kept[-1].doubtful = kept[-1].doubtful or group.doubtful
        elif kept and _puts_right(kept[-1], group):
            group.items[:0] = kept.pop().items
            kept.append(group)
        else:
            kept.append(group)
    return kept


def _says_all_again(before: Group, group: Group) -> bool:
    """Return whether a group tells whole what the one before only changed: "no, it was 30. 30 x 9"."""
    if group.named is not None or len(before.items) < _CHANGED or not group.items:
        return False
    change, number, whole = before.items[-2], before.items[-1], group.items[0]
    if not isinstance(change, Mark) or change.kind != "change":
        return False
    if isinstance(number, Mark) or isinstance(whole, Mark) or len(number.quantities) != 1:
        return False
    return len(whole.quantities) > 1 and whole.quantities[0].value == number.quantities[0].value


_CHANGED = 2
"""What was changed, and the change with its number."""


def _puts_right(before: Group, group: Group) -> bool:
    """Return whether a group takes back the lone number before it, whose exercise it names: "22.5 kg... no,
    20 kg for 14 on the crunch"."""
    first = group.items[0] if group.items else None
    changes = isinstance(first, Mark) and first.kind == "change"
    return changes and before.named is None and (_only_load(before) or _only_bare(before))


def _goes_on(before: Group, group: Group) -> bool:
    """Return whether a group without a name completes, changes or describes what was said before it."""
    first = group.items[0]
    if isinstance(first, Mark) and first.kind == "change":
        return True
    if not before.items:
        return False
    last = before.items[-1]
    if isinstance(last, Mark) and (last.kind == "change" or _only_without_load(before, group)):
        return True
    before = _changed(before)
    if all(isinstance(i, Mark) and i.kind not in _WHOLE for i in group.items):
        return True
    amount_before = _only_amount(before) or _only_bare(before)
    if _only_unknown_load(group):
        return amount_before
    return group.pointer is None and not group.again and _completes(before, group)


def _only_without_load(before: Group, group: Group) -> bool:
    """Return whether a group says no more than that there was no load, as the next one says again: "with no
    help! Bodyweight x 1"."""
    alone = len(before.items) == 1 and isinstance(before.items[0], Mark) and before.items[0].kind == "body"
    return alone and isinstance(first := group.items[0], Mark) and first.kind == "body"


def _changed(group: Group) -> Group:
    """Return a group with a lone number that was changed in one breath as what it was changed to."""
    said = [isinstance(i, Mark) and i.kind == "change" for i in group.items]
    if said != [False, True, False] or any(
        not isinstance(i, Mark) and len(i.quantities) > 1 for i in group.items
    ):
        return group
    return replace(group, items=group.items[2:])


def _completes(before: Group, group: Group) -> bool:
    """Return whether two groups are a load and its reps, in either order."""
    if _only_amount(group) and _only_body(before):
        # "Pull-ups with no help at all! 2 reps"
        return before.named is not None
    if _only_amount(group):
        return _only_load(before) or _only_bare(before) or _only_unknown_load(before)
    if _only_load(group):
        return _only_amount(before) or _only_unknown_amount(before)
    if not _only_bare(group):
        return False
    waits = (
        _only_unknown_load(before) or _is_heavy(before) or _only_load(before) or _is_heavier(before, group)
    )
    return waits and not _is_heavy(group)


_WHOLE = frozenset(
    {
        "same all",
        "same again",
        "zero",
        "same load",
        "up",
        "down",
        "more reps",
        "fewer reps",
        "target",
        "target more",
        "target fewer",
        "body",
        "unknown load",
        "pin",
    }
)


def _only_body(group: Group) -> bool:
    """Return whether a group says only that there was no load."""
    return bool(group.items) and all(isinstance(i, Mark) and i.kind == "body" for i in group.items)


def _only_unknown_load(group: Group) -> bool:
    """Return whether a group says only that the load is not known."""
    return all(isinstance(i, Mark) and i.kind == "unknown load" for i in group.items)


def _only_unknown_amount(group: Group) -> bool:
    """Return whether a group says only that the reps are not known."""
    return all(isinstance(i, Mark) and i.kind == "unknown reps" for i in group.items)


def _only_load(group: Group) -> bool:
    """Return whether a group says just one load, with its unit."""
    numbers = [i for i in group.items if not isinstance(i, Mark)]
    return len(numbers) == 1 and len(numbers[0].quantities) == 1 and numbers[0].quantities[0].role == "load"


def _is_heavy(group: Group) -> bool:
    """Return whether a lone bare number is far too large to be reps, so that it waits for them."""
    return (
        _only_bare(group)
        and not isinstance(group.items[0], Mark)
        and group.items[0].quantities[0].value > MOST_REPS
    )


_FAR_ABOVE = 3
"""A number so many times the next one is rather its load than reps of a set before."""


def _is_heavier(before: Group, group: Group) -> bool:
    """Return whether a lone bare number of a named exercise may be the load of the next: "50 on bench. 6"."""
    if before.named is None or not _only_bare(before):
        return False
    load, reps = before.items[0], group.items[0]
    if isinstance(load, Mark) or isinstance(reps, Mark):
        return False
    return load.quantities[0].value >= _FAR_ABOVE * reps.quantities[0].value


def _only_bare(group: Group) -> bool:
    """Return whether a group says just one bare number."""
    return (
        len(group.items) == 1
        and not isinstance(group.items[0], Mark)
        and [q.role for q in group.items[0].quantities] == [None]
    )


def _only_amount(group: Group) -> bool:
    """Return whether a group says just reps or seconds."""
    numbers = [i for i in group.items if not isinstance(i, Mark)]
    return (
        len(numbers) == 1
        and len(numbers[0].quantities) == 1
        and numbers[0].quantities[0].role in {"reps", "seconds"}
    )
