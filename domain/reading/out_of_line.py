"""Sets told at one load whose reps are far apart: one of the numbers was hardly meant as reps.

Set after set at the same load loses a rep or two. A number that is joined to a load named once, and is half
or twice the others, more often counts something else: "24x18, lampshades broken: 1". It is asked about.
"""

from collections.abc import Sequence
from decimal import Decimal

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity

_RATIO, _APART = Decimal("1.7"), 3
"""So far apart are reps at one load that are not all taken. Of 8,000 right readings of messages by many
writers 2 had such sets, and those named the load each time; of 225 wrong ones 38."""
_BODY_RATIO, _BODY_APART = Decimal(3), 5
"""The same of reps at the usual load or with body weight alone, and of holds: no load joins them."""
_USUAL = Decimal("1.5")


def with_doubts(drafts: Sequence[Draft], known: Known) -> Sequence[Draft]:
    """Return the drafts, those to be confirmed whose amount is out of line with the others at their load."""
    if len(drafts) < 2:
        return drafts
    by_load: dict[tuple[int | str | None, bool], list[tuple[int, Decimal]]] = {}
    for at, draft in enumerate(drafts):
        if isinstance(draft.amount, Quantity) and draft.load != "unknown":
            by_load.setdefault((_told_at(draft.load), draft.lowering), []).append((at, draft.amount.value))
    odd = {
        at
        for (load, _), amounts in by_load.items()
        if _are_far_apart(
            [value for _, value in amounts],
            falls_fast=known.hold or load in {None, "body"},
        )
        for at in _unusual(amounts, known)
    }
    return [d._replace(confirm=True) if at in odd else d for at, d in enumerate(drafts)] if odd else drafts


def _told_at(load: Source) -> int | str | None:
    """Return by what sets share a load: the place where it is told, or that it is the usual one."""
    return load.start if isinstance(load, Quantity | Mark) else load


def _are_far_apart(amounts: Sequence[Decimal], *, falls_fast: bool) -> bool:
    ratio, apart = (_BODY_RATIO, _BODY_APART) if falls_fast else (_RATIO, _APART)
    least, most = min(amounts), max(amounts)
    return most - least >= apart and most >= ratio * least


def _unusual(amounts: Sequence[tuple[int, Decimal]], known: Known) -> list[int]:
    """Return the places of the amounts that are far from what is usual; of all where nothing tells it."""
    reference = known.target or known.last
    usual = Decimal(reference.amount) if reference is not None else None
    far = [
        at
        for at, value in amounts
        if usual is not None and not usual <= value * _USUAL <= usual * _USUAL * _USUAL
    ]
    return far or [at for at, _ in amounts]
