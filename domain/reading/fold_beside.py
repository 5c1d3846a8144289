"""What is said beside the sets, attached to those that it stands by: effort, failure, how reps were done,
how the load is counted.
"""

from collections.abc import Sequence

from domain.reading.drafts import Draft
from domain.reading.element import Element, Item
from domain.reading.lowering import is_lowering, stretch_of
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity


def with_beside(drafts: list[Draft], items: Sequence[Item], beside: Sequence[Mark]) -> list[Draft]:
    """Return the drafts with what is said of each of them."""
    if not drafts:
        return drafts
    drafts = _lowered(_told_once(drafts), items)
    for item in items:
        if isinstance(item, Mark) and item.kind == "failed on" and not any(d.amount is item for d in drafts):
            at = _stands_by(drafts, item)
            is_before = item.start < _place(drafts[at])
            drafts[at] = _failed(drafts[at], int(item.value or 1) - 1, is_before=is_before)
    all_sets: list[Mark | Quantity] = [mark for mark in beside if mark.kind == "every set"]
    all_sets += [q for item in items if isinstance(item, Element) for q in item.quantities if _is_of_all(q)]
    for mark in beside:
        if mark.kind == "each hand":
            drafts = [_each_hand(draft) for draft in drafts]
            continue
        last = _stands_by(drafts, mark)
        is_of_all = any(_stand_together(mark, all_of_them) for all_of_them in all_sets)
        for at in range(len(drafts)) if is_of_all else (last,):
            drafts[at] = _with_effort(drafts[at], mark)
    return drafts


def _told_once(drafts: list[Draft]) -> list[Draft]:
    """Leave out a failed rep beside the set that it ended: "couldn't get 8, 7 at 80", "got 8,
    failed on 9, 80 kg"."""
    kept: list[Draft] = []
    drafts = list(drafts)
    for at, draft in enumerate(drafts):
        mark = draft.amount
        if isinstance(mark, Mark) and mark.kind == "failed on":
            ended = next(
                (
                    k
                    for k in (at - 1, at + 1)
                    if 0 <= k < len(drafts) and _is_ended_by(drafts[k], mark) and _one_load(draft, drafts[k])
                ),
                None,
            )
            if ended is not None:
                drafts[ended] = drafts[ended]._replace(load=drafts[ended].load or draft.load)
                if ended < at:
                    kept[-1] = drafts[ended]
                continue
        kept.append(draft)
    return kept


def _is_ended_by(draft: Draft, failed: Mark) -> bool:
    """Return whether the reps of a set end right before the one that failed."""
    return isinstance(draft.amount, Quantity) and draft.amount.value + 1 == failed.value


def _one_load(failed: Draft, other: Draft) -> bool:
    """Return whether no more than one load is told of two."""
    return failed.load is None or other.load is None or failed.load is other.load


def _is_of_all(q: Quantity) -> bool:
    return q.role == "sets" and q.each


def _stand_together(mark: Mark, other: Mark | Quantity) -> bool:
    """Return whether no more than a comma stands between two phrases: "each set, the last to failure" does
    not say that of all sets."""
    return max(mark.start - other.end, other.start - mark.end) <= 1


def _stands_by(drafts: Sequence[Draft], mark: Mark) -> int:
    """Return the place of the last draft before a phrase; of the last of all where none is."""
    before = [at for at, draft in enumerate(drafts) if _place(draft) < mark.start]
    return before[-1] if before else len(drafts) - 1


def _place(draft: Draft) -> int:
    return draft.amount.start if draft.amount is not None else draft.start


def _with_effort(draft: Draft, mark: Mark) -> Draft:
    if mark.kind == "failure":
        return draft._replace(to_failure=True)
    if mark.kind == "no failure":
        return draft._replace(to_failure=False)
    if mark.kind == "rir":
        return draft._replace(rir=mark.value)
    return draft


def _each_hand(draft: Draft) -> Draft:
    if isinstance(draft.load, Quantity) and draft.load.kind is None:
        return draft._replace(load=draft.load._replace(kind="each"))
    return draft


def _lowered(drafts: list[Draft], items: Sequence[Item]) -> list[Draft]:
    """Mark the drafts that were lowering only."""
    for at, item in enumerate(items):
        if is_lowering(item):
            stretch = stretch_of(items, at)
            spoken_of = [stretch.holds(draft) for draft in drafts]
            drafts = [
                draft._replace(lowering=True) if held or not any(spoken_of) else draft
                for draft, held in zip(drafts, spoken_of, strict=True)
            ]
    return drafts


def _failed(draft: Draft, reps: int, *, is_before: bool) -> Draft:
    """Return a draft that failed after so many reps; what else was said of them must agree."""
    said = int(draft.amount.value) if isinstance(draft.amount, Quantity) else None
    if said is None:
        return draft._replace(to_failure=True, reps=reps)
    if is_before and said != reps:
        return draft
    return draft._replace(to_failure=True, confirm=draft.confirm or said == reps + 1)
