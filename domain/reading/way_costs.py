"""What it costs to take a piece for a load, for reps or for a number of sets, and to join two pieces so.

Nought is what the words, the signs and the exercise bear out. Only the order of the costs counts, and that
none of them outweighs an exact rule of the contract (`rule_two.py`). The house's own choice.
"""

from decimal import Decimal

from domain.reading.context import Known
from domain.reading.limits import FEW_SETS, MOST_SETS
from domain.reading.phrases import Mark
from domain.reading.pieces import AMOUNT_MARKS, LOAD_MARKS, WHOLE_MARKS, Piece
from domain.reading.quantities import Quantity

UNTESTED = 0.2
ODD = 1.0
NO_REPS = 2.0
HALF_A_REP = 0.8
AGAINST_A_WORD = 1.2
MANY_SETS = 1.0
ON_BODY = 1.0
PART = 0.2
"""What each further set or list costs, so that what can be said in one is not taken apart."""
LONE_REPS = 0.4
LONE_UNCLEAR = 0.9
LONE_PHRASE = 0.8
AGAINST_RULE_TEN = 3.0
"""What reps cost that stand alone, without a load."""
STRAINED = 2.0
"""What costs so much is read against a sign that binds, and must be confirmed."""

_ROLES = {"load": "L", "plates": "L", "reps": "A", "seconds": "A"}

Costs = dict[str, float]
"""What each slot costs for a piece; a slot that is missing is impossible."""


def slots_of(piece: Piece, known: Known) -> Costs:
    """Return what a piece can be: L a load, A reps or seconds, N a number of sets, E an effort, W a whole
    set, X a number of something else."""
    what = piece.what
    if isinstance(what, Mark):
        return _slots_of_mark(what)
    if what.role == "pair":
        return _slots_of_pair(what, known)
    if what.role is not None:
        slots: Costs = {_ROLES[what.role]: 0.0}
        if what.role == "load" and known.load_fits(what) is False:
            slots["X"] = 0.5
        if what.times and what.value <= FEW_SETS and not known.in_range(what):
            slots["N"] = 0.0
        return slots
    return _slots_of_bare(piece, what, known)


def _slots_of_mark(mark: Mark) -> Costs:
    if mark.kind in LOAD_MARKS:
        return {"L": 0.0}
    if mark.kind in AMOUNT_MARKS:
        return {"A": 0.0}
    return {"W": 0.0} if mark.kind in WHOLE_MARKS else {}


def _slots_of_pair(q: Quantity, known: Known) -> Costs:
    """Take "30s": a pair of thirties, or on a hold thirty seconds, or there a pair all the same."""
    if not known.hold or q.kind is not None:
        return {"L": 0.0}
    if known.kind == "each" and known.load_fits(q) is not False:
        return {"A": 0.5, "L": 0.0}
    return {"A": 0.0}


def _slots_of_bare(piece: Piece, q: Quantity, known: Known) -> Costs:
    fits = known.load_fits(q)
    slots = {"L": load_cost(q, known, fits=fits), "A": amount_cost(q, known)}
    if q.a_side:
        slots["L"] = min(slots["L"], UNTESTED)
    if piece.led == "at":
        slots["L"] = min(slots["L"], UNTESTED)
        slots["A"] += AGAINST_A_WORD
    if q.value % 1 == 0 and 1 <= q.value <= MOST_SETS and not (q.plus or q.minus or q.each or q.kind):
        slots["N"] = 0.0 if q.value <= FEW_SETS else MANY_SETS
    if 5 <= q.value <= 10:
        slots["E"] = 0.0
    if piece.joint == "name" and piece.led != "at":
        slots["X"] = 0.2
    elif fits is False:
        slots["X"] = 0.5
    return slots


def load_cost(q: Quantity, known: Known, *, fits: bool | None) -> float:
    """Return what it costs to take a bare number for the load; `fits` as of `Known.load_fits`."""
    if known.is_body and fits is None and not (q.plus or q.minus or q.kind):
        return ON_BODY
    return UNTESTED if fits is None else 0.0 if fits else ODD


def amount_cost(q: Quantity, known: Known) -> float:
    """Return what it costs to take a bare number for reps, or for seconds on a hold."""
    if known.reps_fit(q):
        return 0.0
    return (
        HALF_A_REP if q.value % 1 == Decimal("0.5") and q.value <= MOST_HALF and not known.hold else NO_REPS
    )


def lone_cost(piece: Piece, known: Known) -> float:
    """Return what it costs to take a number alone for reps, by the contract's tenth rule."""
    what = piece.what
    if isinstance(what, Mark):
        return LONE_PHRASE
    if not piece.bare or piece.led in {"for", "sets"}:
        return LONE_REPS
    if piece.led == "so often" and known.is_usual(what):
        return LONE_REPS
    return {"reps": LONE_REPS, "load": AGAINST_RULE_TEN, "unclear": LONE_UNCLEAR}[known.lone(what)]


MOST_HALF = 30
"""More reps than this are not counted to the half."""

JOINS: dict[str, dict[str, float]] = {
    # Load, then reps.
    "LA": {
        "x": 0, "for": 0, ":": 0, "": 0, "/": 0.1, "-": 0.2, ",": 0.2, "and": 0.4, "name": 0.1, "gap": 0.2,
        "line": 0.4, "stop": 0.4, "then": 0.8, "@": 1.5, "at": 1.5,
    },
    # Reps, then the load.
    "AL": {
        "@": 0, "at": 0, "": 0, "x": 0, "for": 0, "/": 0.1, "-": 0.2, ":": 0.1, ",": 0.4, "and": 0.6,
        "name": 0.1, "gap": 0.3, "line": 0.4, "stop": 0.5, "then": 1.5,
    },
    # Reps of a list with one load after it.
    "AA": {",": 0, "/": 0, "and": 0, "": 0, "-": 0, "then": 0.1, ":": 1},
    # A number of sets, then their reps; reps, then how often.
    "NA": {"x": 0},
    "AN": {"x": 0, "": 0, "/": 0.2, ",": 0.1, "for": 0.2},
    "NL": {"x": 0},
    "LN": {"": 0, ":": 0, ",": 0.1, "for": 0, "-": 0.1, "x": 0.4, "@": 0.1, "gap": 0.3,
           "name": 0.1, "and": 0.6},
    "AE": {"@": 0},
    "AX": {"at": 0, "@": 0, "name": 0},
    "WA": {"": 0, ",": 0, "gap": 0, "for": 0, "x": 0.1, "and": 0.1, "stop": 0.5, "at": 0.1, "name": 0.1},
    "WL": {"": 0, ",": 0, "gap": 0, "at": 0, "@": 0, "and": 0.1, "stop": 0.5, "name": 0.1},
    "LW": {"": 0, ",": 0, "gap": 0.1, "and": 0.2, "stop": 0.5, "for": 0},
}  # fmt: skip
"""What it costs that a joint stands between two slots; one that is not here does not join them."""

CUT: dict[str, float] = {
    "x": 3, "for": 3, "@": 3, "at": 2, ":": 1.5, "/": 0.3, "-": 0.4, "": 0.4, ",": 0.1, "and": 0.1, "then": 0,
    "line": 0, "stop": 0, "gap": 0.1, "name": 0.1, "change": 0,
}  # fmt: skip
"""What it costs to part two sets at a joint."""

AFTER_PHRASE = 0.3

GOES_ON: dict[str, float] = {
    "x": 1, "for": 2, "@": 3, "at": 2, ":": 0.5, "/": 0, "-": 0, "": 0, ",": 0, "and": 0, "then": 0,
    "line": 0.2, "stop": 0.2, "gap": 0.2, "name": 0.8, "change": 0,
}  # fmt: skip
"""What it costs that a joint leads to more reps at the load told before: "80: 8, 7, 6"."""

REMARKS: dict[str, float] = {
    "same load": 0.8, "up": 0.6, "down": 0.6, "body": 1.2, "unknown load": 1.5, "pin": 0.6, "more reps": 0.6,
    "fewer reps": 0.6, "failed on": 0.3, "unknown reps": 0.3, "same all": 0.1, "same again": 0.9,
    "target": 0.1, "target more": 0.1, "target fewer": 0.1,
}  # fmt: skip
"""What it costs that a phrase only repeats, or remarks on, what is said beside it."""
