"""How often a set was done, where its sets are counted beside it: "3 sets of 8 with 80", "80x8, both sets".

A count speaks of the sets after it, or, where none comes, of those before it. A single set is as many as
counted; of several that are told one by one there must be as many as counted.
"""

from collections.abc import Sequence

from domain.reading.drafts import Draft, whole
from domain.reading.limits import MOST_SETS
from domain.reading.pieces import Row

_MISCOUNTED = 1.5


def counted(drafts: Sequence[Draft], row: Row) -> tuple[list[Draft], float]:
    """Return the drafts as often as they were counted, and what it costs that a count does not fit them."""
    if not row.counts:
        return list(drafts), 0.0
    out: list[Draft] = []
    cost = 0.0
    for part, number in _stretches(drafts, row):
        times, fits = _times(part, number)
        if not fits:
            cost += _MISCOUNTED
            part = [draft._replace(confirm=True) for draft in part]  # noqa: PLW2901 - the same, in doubt
        out.extend(part[:1] * times + part[1:])
    return out, cost


def _stretches(drafts: Sequence[Draft], row: Row) -> list[tuple[list[Draft], int]]:
    """Return the drafts in the stretches that the counts speak of, each with its count."""
    starts = [0]
    numbers = [1]
    for before, q, _ in row.counts:
        at = row.pieces[before].what.start if before < len(row.pieces) else None
        start = len(drafts) if at is None else _first_after(drafts, at)
        if start == starts[-1] and numbers[-1] == 1:
            numbers[-1] = whole(q.value)
        elif start == len(drafts):
            # A count after the sets speaks of those before it.
            if numbers[-1] == 1:
                numbers[-1] = whole(q.value)
        else:
            starts.append(start)
            numbers.append(whole(q.value))
    ends = [*starts[1:], len(drafts)]
    return [(list(drafts[a:b]), n) for a, b, n in zip(starts, ends, numbers, strict=True)]


def _first_after(drafts: Sequence[Draft], at: int) -> int:
    """Return the place of the first draft of which a number stands at a token or later."""
    return next((k for k, draft in enumerate(drafts) if draft.end > at), len(drafts))


def _times(part: Sequence[Draft], number: int) -> tuple[int, bool]:
    """Return how often the first of a stretch was done, and whether the count fits the stretch."""
    if number == 1 or not part or len(part) == number:
        return 1, True
    if number > MOST_SETS:
        return 1, False
    if len(part) == 1 or part[0].load is not part[1].load:
        return number, True
    return 1, False
