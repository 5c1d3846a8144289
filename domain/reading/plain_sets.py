"""The short way for what most messages say: loads with their reps, of which nothing is in doubt.

"80 x 8", "80 kg 8 reps", "80x8, 80x7", "80 kg: 8, 7, 6", "12 reps". All else is weighed (`fold.py`), which
would give these just as well.
"""

from collections.abc import Sequence

from domain.reading.context import Known
from domain.reading.drafts import Draft, is_amount
from domain.reading.limits import MOST_SETS
from domain.reading.pieces import Piece, Row
from domain.reading.quantities import Quantity
from domain.reading.story import draft_of, load_of

_TIES = frozenset({"x", "for"})
_TWO_PAIRS = 4
_TIES_ALONE = _TIES | {""}
_BETWEEN_SAID = frozenset({"x", "for", "", ",", ":"})
_IN_LIST = frozenset({",", "/"})
_BETWEEN_SETS = frozenset({",", "and", "then", "line", "stop", "gap", ""})


def plain_sets(row: Row, known: Known) -> list[Draft] | None:
    """Return the sets of a row of loads, each with its reps; None where anything must be weighed."""
    pieces = row.pieces
    if row.counts or not pieces:
        return None
    if len(pieces) == 1 and isinstance(what := pieces[0].what, Quantity) and is_amount(what):
        return [draft_of(None, pieces[0])]
    if _is_list_at_one_load(pieces, known):
        said = load_of(pieces[0])
        return [draft_of(said, amount) for amount in pieces[1:]]
    if len(pieces) % 2:
        return None
    if _goes_in_pairs(pieces, known):
        return [
            draft_of(load_of(load), amount) for load, amount in zip(pieces[::2], pieces[1::2], strict=True)
        ]
    drafts: list[Draft] = []
    for at in range(0, len(pieces), 2):
        load, amount = pieces[at], pieces[at + 1]
        if at and load.joint not in _BETWEEN_SETS:
            return None
        if not _is_plain(load, amount, known, settled=at > 0, alone=len(pieces) == 2):
            return None
        drafts.append(draft_of(load_of(load), amount))
    return drafts


def _is_list_at_one_load(pieces: Sequence[Piece], known: Known) -> bool:
    """Return whether a load and its reps go on with more reps, all in the plan's range: "80 kg: 8, 7, 6"."""
    return (
        len(pieces) > 2
        and not known.hold
        and all(p.joint in _IN_LIST and _is_in_range(p, known) for p in pieces[2:])
        and _is_plain(pieces[0], pieces[1], known, settled=False, alone=False)
    )


def _is_in_range(amount: Piece, known: Known) -> bool:
    q = amount.what
    if not isinstance(q, Quantity) or amount.led == "at" or q.times or q.role not in {None, "reps"}:
        return False
    return known.in_range(q) and known.reps_fit(q)


def _goes_in_pairs(pieces: Sequence[Piece], known: Known) -> bool:
    """Return whether bare numbers are loads and reps by turns, however light: "80 6 60 8", "80/6, 60/8".

    The first two settle the order, and no load of the row could be reps of it.
    """
    if len(pieces) < _TWO_PAIRS or known.is_body or known.hold:
        return False
    if any(not p.bare or p.led == "at" for p in pieces):
        return False
    within = {p.joint for p in pieces[1::2]}
    between = _BETWEEN_SETS | {"/"} if within == {""} else _BETWEEN_SETS - {""} if within == {"/"} else set()
    if any(p.joint not in between for p in pieces[2::2]):
        return False
    loads = [p.what for p in pieces[::2] if isinstance(p.what, Quantity)]
    reps = [p.what for p in pieces[1::2] if isinstance(p.what, Quantity)]
    lightest = min(q.value for q in loads)
    return (
        known.order(loads[0], reps[0]) == "load first"
        and all(known.reps_fit(q) for q in reps)
        and lightest > MOST_SETS
        and lightest > max(q.value for q in reps)
    )


def _is_plain(load: Piece, amount: Piece, known: Known, *, settled: bool, alone: bool) -> bool:
    """Return whether two numbers are a load and its reps, by their words or by the second rule."""
    one, other = load.what, amount.what
    if not isinstance(one, Quantity) or not isinstance(other, Quantity) or amount.led == "at":
        return False
    if other.role == "reps":
        of_load = one.role == "load" or (one.role == "pair" and not known.hold)
        return of_load and amount.joint in _BETWEEN_SAID
    if other.role is not None or amount.joint not in (_TIES if settled or not alone else _TIES_ALONE):
        return False
    if one.role is not None:
        return known.reps_fit(other) and (one.role == "load" or (one.role == "pair" and not known.hold))
    if one.value <= MOST_SETS or known.is_body:
        return False
    if settled:
        return known.reps_fit(other)
    return known.order(one, other) == "load first"
