"""The ways in which a set, or a list of sets at one load, is said: a short table, and what a stretch of
pieces costs if it is said in one of them.

A way is a row of slots: L the load, A reps (seconds on a hold), N a number of sets, E an effort out of ten, W
a whole set that is only pointed at ("same as last time").
"""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from operator import contains
from typing import NamedTuple

from domain.reading.context import Known
from domain.reading.pieces import Piece
from domain.reading.quantities import FEW_SETS, Quantity
from domain.reading.rule_two import can_be_sets, is_first_ever
from domain.reading.way_costs import JOINS, ON_BODY, Costs

MOST_IN_LIST = 12
"""So many reps are taken for one list before their load; later ones go on from the load told before."""

_SHORT = (
    "A",  # reps; the load was told before, or is the target's (rule 10)
    "L",  # a load that waits for its reps
    "W",  # "same as last time"
    "N",  # "twice", after a set
    "LA",  # 80 x 8
    "AL",  # 8 at 80
    "NA",  # 3 x 12
    "AN",  # 11 twice
    "WA",  # same as last time but 6
    "WL",  # same reps with 57.5
    "LW",  # 57.5, reps as last time
    "NAL",  # 3 x 8 @ 80
    "LNA",  # 80 3x8
    "LAN",  # 80 x 8 x 3
    "LAE",  # 80 x 8 @ 9
    "LAX",  # 80 x 8 on bench 2, with 5 kg to spare
)
_LISTS = ("A" * length for length in range(3, MOST_IN_LIST + 1))
_LISTS_AT = ("A" * length + "L" for length in range(2, MOST_IN_LIST + 1))


def _by_length(ways: Sequence[str]) -> dict[int, tuple[str, ...]]:
    return {n: tuple(w for w in ways if len(w) == n) for n in {len(w) for w in ways}}


WAYS = _by_length([*_SHORT, *_LISTS, *_LISTS_AT])
LONGEST = max(WAYS)


class Said(NamedTuple):
    """A stretch of pieces said in one way, and what that costs apart from the order of bare numbers.

    `ordered` holds the load and the reps of which only the contract's second rule tells which is which.
    """

    way: str
    pieces: tuple[Piece, ...]
    cost: float
    ordered: tuple[Piece, Piece] | None = None


def said_in(pieces: Sequence[Piece], slots: Sequence[Costs], known: Known) -> Iterator[Said]:
    """Yield the ways in which a stretch can be said."""
    for way in WAYS.get(len(pieces), ()):
        if not all(map(contains, slots, way)):
            continue
        cost = _joined(way, pieces)
        if cost is None or not _is_allowed(way, pieces, known):
            continue
        cost += _oddity(way, pieces, known)
        if _is_unordered(way, pieces):
            first, second = pieces[0], pieces[1]
            cost += sum(costs[slot] for slot, costs in zip(way[2:], slots[2:], strict=True))
            yield Said(way, tuple(pieces), cost, (first, second) if way[0] == "L" else (second, first))
        else:
            cost += sum(costs[slot] for slot, costs in zip(way, slots, strict=True))
            yield Said(way, tuple(pieces), cost)


def _joined(way: str, pieces: Sequence[Piece]) -> float | None:
    """Return what the joints between the slots cost, None where one of them does not join."""
    cost = 0.0
    for pair, piece in zip(_pairs(way), pieces[1:], strict=True):
        price = JOINS[pair].get(piece.joint)
        if price is None:
            return None
        cost += price
    return cost


@lru_cache(maxsize=128)
def _pairs(way: str) -> tuple[str, ...]:
    return tuple(way[i : i + 2] for i in range(len(way) - 1))


def _is_unordered(way: str, pieces: Sequence[Piece]) -> bool:
    """Return whether no word says which of the first two numbers is the load and which the reps."""
    if way not in {"LA", "AL", "LAE", "LAX"}:
        return False
    first, second = pieces[0], pieces[1]
    worded = first.led == "at" or second.led == "at" or second.joint in {"@", "at"}
    return first.bare and second.bare and not worded


def _is_allowed(way: str, pieces: Sequence[Piece], known: Known) -> bool:
    """Return whether numbers of sets can be meant: "3x12" alone only where 3 is no load."""
    if "N" not in way:
        return True
    count = pieces[way.index("N")].what
    if not isinstance(count, Quantity):
        return False
    match way:
        case "NA":
            amount_is_bare = pieces[way.index("A")].bare
            return can_be_sets(count, known) and not (amount_is_bare and is_first_ever(count, known))
        case "AN":
            reps = pieces[0].what
            return (
                count.times and isinstance(reps, Quantity) and (reps.role == "reps" or known.in_range(reps))
            )
        case "N":
            return count.times
        case "LAN":
            return count.times or (pieces[2].joint == "x" and pieces[1].joint in {"x", "for"})
        case "NAL":
            return known.load_fits(count) is not True or pieces[2].joint != "x" or count.value <= FEW_SETS
        case _:
            return True


_TIGHT_THREE = ("x", "x")


def _oddity(way: str, pieces: Sequence[Piece], known: Known) -> float:
    """Return what a way costs for itself: "80x3x8" is three sets of eight only if the range says so."""
    if way in {"LAN", "LNA"} and tuple(p.joint for p in pieces[1:]) == _TIGHT_THREE:
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
