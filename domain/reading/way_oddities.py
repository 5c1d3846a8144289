"""What a way to say a set costs for itself, beside what its numbers and its joints cost."""

from collections.abc import Sequence

from domain.reading.context import Known
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.rule_two import can_be_sets
from domain.reading.way_costs import ON_BODY

_TIGHT_THREE = ("x", "x")


def oddity(way: str, pieces: Sequence[Piece], known: Known) -> float:
    """Return what a way costs for itself: "80x3x8" is three sets of eight only if the range says so."""
    if way in {"LAN", "LNA", "NLA"} and tuple(p.joint for p in pieces[1:]) == _TIGHT_THREE:
        reps = pieces[way.index("A")].what
        out_of_range = known.plan is not None and isinstance(reps, Quantity) and not known.in_range(reps)
        return 0.5 * out_of_range
    if way in {"LA", "AL"} and pieces[0].bare and pieces[1].bare and pieces[1].led != "at":
        if known.is_body:
            return _on_body(pieces, known)
        return _sets_of_two(pieces, known) if way == "AL" and pieces[1].joint == "x" else 0.0
    if way == "NA":
        reps = pieces[1].what
        return 0.0 if isinstance(reps, Quantity) and (known.in_range(reps) or known.plan is None) else 0.3
    if way.endswith("AL"):
        return _load_after(way, pieces, known)
    return 0.0


LATE_LOAD = 1.0
OF_ALL_OR_LAST = 0.4


def _load_after(way: str, pieces: Sequence[Piece], known: Known) -> float:
    """Return what it costs that a load is told after its reps."""
    load = pieces[-1]
    said = load.led == "at" or load.joint in {"@", "at"}
    if way == "AL":
        # "24s for 36s" on a hold
        both_pairs = all(isinstance(p.what, Quantity) and p.what.role == "pair" for p in pieces)
        return LATE_LOAD * (both_pairs and not said)
    if load.bare and not said and way != "NAL":
        return LATE_LOAD
    # "20, then 12 with 5 kg": the load is of the last alone.
    if way == "NAL" or not known.is_body or not isinstance(load.what, Quantity):
        return 0.0
    return LATE_LOAD if any(p.joint == "then" for p in pieces[1:]) else OF_ALL_OR_LAST


def _on_body(pieces: Sequence[Piece], known: Known) -> float:
    """Return what it costs that one of two bare numbers is a load where body weight is usual."""
    first, second = pieces[0].what, pieces[1]
    assert isinstance(first, Quantity)  # noqa: S101 - bare pieces are numbers
    if second.joint == "x":
        return ON_BODY if can_be_sets(first, known) else 0.0
    return 0.0 if second.joint in {"for", "at", "@"} else ON_BODY


def _sets_of_two(pieces: Sequence[Piece], known: Known) -> float:
    """Return what it costs that "3 x 24" is three reps at 24, and no sets."""
    first = pieces[0].what
    assert isinstance(first, Quantity)  # noqa: S101 - bare pieces are numbers
    if not can_be_sets(first, known):
        return 0.0
    return 0.0 if known.in_range(first) else 0.5
