"""The ways in which a set, or a list of sets at one load, is said: a short table, and what a stretch of
pieces costs if it is said in one of them.

A way is a row of slots: L the load, A reps (seconds on a hold), N a number of sets, E an effort out of ten, W
a whole set that is only pointed at ("same as last time").
"""

from collections.abc import Iterator, Sequence
from operator import contains
from typing import NamedTuple

from domain.reading.context import Known
from domain.reading.limits import FEW_SETS
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.rule_two import can_be_sets, is_first_ever
from domain.reading.way_costs import JOINS, LONE_REPS, PART, Costs
from domain.reading.way_oddities import oddity

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
    "NLA",  # 3 x 80 x 8
    "ALN",  # 8 @ 80 x 3
    "LAE",  # 80 x 8 @ 9
    "LAX",  # 80 x 8 on bench 2, with 5 kg to spare
)
_TIES_A_LOAD = frozenset({"x", "@", "at", "for"})
LISTS = frozenset("A" * length for length in range(3, MOST_IN_LIST + 1))
_LISTS_AT = ("A" * length + "L" for length in range(2, MOST_IN_LIST + 1))


Joins = tuple[dict[str, float], ...]
"""What each joint costs between the slots of a way, one after the other."""


def _by_length(ways: Sequence[str]) -> dict[int, tuple[tuple[str, Joins], ...]]:
    joined = [(way, tuple([JOINS[way[i : i + 2]] for i in range(len(way) - 1)])) for way in ways]
    return {n: tuple([one for one in joined if len(one[0]) == n]) for n in {len(w) for w in ways}}


WAYS = _by_length([*_SHORT, *sorted(LISTS), *_LISTS_AT])
LONGEST = max(WAYS)


class Said(NamedTuple):
    """A stretch of pieces said in one way, and what that costs apart from the order of bare numbers.

    `ordered` holds the load and the reps of which only the contract's second rule tells which is which.
    `lone` is what reps cost more where they have no load.
    """

    way: str
    pieces: tuple[Piece, ...]
    cost: float
    ordered: tuple[Piece, Piece] | None = None
    lone: float = 0.0

    @property
    def is_list(self) -> bool:
        """Whether only reps are said, several of them."""
        return len(self.pieces) > 2 and self.way[-1] == "A" and self.way in LISTS


def said_in(pieces: Sequence[Piece], slots: Sequence[Costs], known: Known) -> Iterator[Said]:
    """Yield the ways in which a stretch can be said."""
    for way, joins in WAYS.get(len(pieces), ()):
        if not all(map(contains, slots, way)):
            continue
        cost = _joined(joins, pieces)
        if cost is None or not _is_allowed(way, pieces, known):
            continue
        cost += oddity(way, pieces, known)
        if _is_unordered(way, pieces):
            first, second = pieces[0], pieces[1]
            cost += sum(costs[slot] for slot, costs in zip(way[2:], slots[2:], strict=True))
            yield Said(way, tuple(pieces), cost, (first, second) if way[0] == "L" else (second, first))
        else:
            cost += sum(costs[slot] for slot, costs in zip(way, slots, strict=True))
            lone = _lone(way, pieces, slots, known) if way[0] == "A" == way[-1] else 0.0
            yield Said(way, tuple(pieces), cost, lone=lone)


def _lone(way: str, pieces: Sequence[Piece], slots: Sequence[Costs], known: Known) -> float:
    """Return what it costs that reps have no load."""
    if way == "A":
        return slots[0]["alone"]
    in_range = all(isinstance(p.what, Quantity) and known.in_range(p.what) for p in pieces)
    return PART + (LONE_REPS if in_range else max(costs["alone"] for costs in slots))


def _joined(joins: Joins, pieces: Sequence[Piece]) -> float | None:
    """Return what the joints between the slots cost, None where one of them does not join."""
    cost = 0.0
    for at, join in enumerate(joins, 1):
        price = join.get(pieces[at].joint)
        if price is None:
            return None
        cost += price
    return cost


def _is_unordered(way: str, pieces: Sequence[Piece]) -> bool:
    """Return whether no word says which of the first two numbers is the load and which the reps."""
    if way not in {"LA", "AL", "LAE", "LAX"}:
        return False
    first, second = pieces[0], pieces[1]
    worded = first.led == "at" or second.led == "at" or second.joint in {"@", "at"}
    return first.bare and second.bare and not worded


def _is_allowed(way: str, pieces: Sequence[Piece], known: Known) -> bool:
    """Return whether numbers of sets can be meant: "3x12" alone only where 3 is no load."""
    if way in LISTS:
        return len({p.joint for p in pieces[1:-1]}) == 1 and pieces[-1].joint in {pieces[1].joint, "and"}
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
            if known.hold and pieces[1].joint == "x" and count.value <= FEW_SETS:
                return isinstance(reps, Quantity) and reps.role == "seconds"
            return (
                count.times
                and isinstance(reps, Quantity)
                and (reps.role in {"reps", "seconds"} or known.in_range(reps))
            )
        case "N":
            return count.times
        case "LAN":
            return count.times or (pieces[2].joint == "x" and pieces[1].joint in {"x", "for"})
        case "NLA":
            by_signs = pieces[1].joint == "x" and pieces[2].joint in {"x", "for"}
            return by_signs and count.value <= FEW_SETS and can_be_sets(count, known)
        case "ALN":
            return pieces[1].joint in _TIES_A_LOAD and (count.times or pieces[2].joint == "x")
        case "NAL":
            return known.load_fits(count) is not True or pieces[2].joint != "x" or count.value <= FEW_SETS
        case _:
            return True
