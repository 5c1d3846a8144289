"""The contract's exact rules on bare numbers: which of two is the load, and what one alone is.

Where a rule decides, the other way costs so much that nothing else makes up for it; where it says to ask,
both ways cost the same.
"""

from domain.reading.context import Known, Order
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.way_costs import NO_REPS, ODD

AGAINST_THE_ORDER = 2.0
MAY_BE_REPS = 0.7
_LOOSE = frozenset({",", "and", "/", "-"})


def order_of(first: Quantity, second: Quantity, known: Known) -> Order:
    """Return the order of two bare numbers; half a rep counts as the whole one before it."""
    if second.value % 1 and not known.hold:
        second = second._replace(value=second.value // 1)
    return known.order(first, second)


def by_rule_two(
    load: Piece, amount: Piece, known: Known, *, load_first: bool, settled: str
) -> tuple[float, bool]:
    """Return what it costs that of two bare numbers one is the load and the other the reps.

    With it whether that must be confirmed, as they are sensible in neither order.
    """
    one, other = load.what, amount.what
    assert isinstance(one, Quantity) and isinstance(other, Quantity)  # noqa: S101, PT018 - bare pieces are numbers
    wanted = "load first" if load_first else "reps first"
    if settled:
        fits = 0.0 if known.reps_fit(other) or other.value % 1 else NO_REPS
        return (fits if settled == wanted else AGAINST_THE_ORDER + fits), False
    order = order_of(one, other, known) if load_first else order_of(other, one, known)
    if order == "neither":
        return (ODD if known.reps_fit(other) else ODD + NO_REPS), True
    if order not in {wanted, "unclear"}:
        return AGAINST_THE_ORDER, False
    joint = amount.joint if load_first else load.joint
    first = one if load_first else other
    return (MAY_BE_REPS if joint in _LOOSE and _may_be_reps(first, known) else 0.0), False


def _may_be_reps(q: Quantity, known: Known) -> bool:
    """Return whether the first of a loose list may be reps like the others: "12, 9"."""
    return not known.is_exact(q) and (known.in_range(q) or (known.load_fits(q) is None and known.reps_fit(q)))


def can_be_sets(q: Quantity, known: Known) -> bool:
    """Return whether the 3 of "3x12" is a number of sets, as it is no sensible load."""
    if q.role is not None:
        return False
    fits = known.load_fits(q)
    return (fits is False or known.is_body or is_first_ever(q, known)) and q.value <= MOST_BEFORE_X


def is_first_ever(q: Quantity, known: Known) -> bool:
    """Return whether nothing tests a load, as there is no set to beat and no target: it comes first, then
    the reps."""
    nothing_known = known.target is None and known.last is None
    return nothing_known and known.load_fits(q) is None and not known.is_body


MOST_BEFORE_X = 10
