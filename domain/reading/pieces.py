"""The items of a group as one row of pieces: numbers and phrases that say a load, reps or a whole set.

Phrases about effort and counts of sets are put beside: they are no part of what was lifted, and are attached
to the sets that they stand by once those are known.
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import Literal, NamedTuple

from domain.reading.context import Known
from domain.reading.drafts import is_amount, pairs_of_dumbbells, same_mass
from domain.reading.element import Element, Item
from domain.reading.limits import FEW_SETS, MOST_SETS
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity

Led = Literal["at", "for", "got", "so often", "sets", ""]
"""The word that leads to a number: "with 80", "rows for 7", "got 9", "3 sets of 8"."""

LOAD_MARKS = frozenset({"body", "same load", "up", "down", "unknown load", "pin"})
AMOUNT_MARKS = frozenset({"more reps", "fewer reps", "failed on", "unknown reps"})
WHOLE_MARKS = frozenset(
    {"same all", "same again", "target", "target more", "target fewer", "zero", "done", "change"}
)
_SAYS_SOMETHING = LOAD_MARKS | AMOUNT_MARKS | WHOLE_MARKS


_TIES = frozenset({"x", "for", ""})
_LOAD_AND_LIST = 4
_LIST_JOINTS = frozenset({"", ",", "and", "/", "then", "-"})


class Piece(NamedTuple):
    """A number or a phrase. `joint` joins it to the piece before, `across` to the number before."""

    what: Quantity | Mark
    joint: str
    across: str
    led: Led = ""
    named: bool = False

    @property
    def bare(self) -> bool:
        """Whether it is a number of which no word says what it is of."""
        return isinstance(self.what, Quantity) and self.what.role is None


class Row(NamedTuple):
    """The pieces of a group, and what stands beside them: phrases about effort, and counts of sets.

    A count is kept with the number of pieces before it and how it is joined to them.
    """

    pieces: list[Piece]
    beside: list[Mark]
    counts: list[tuple[int, Quantity, str]]


def row_of(items: Sequence[Item], known: Known) -> Row:
    """Return the pieces of a group."""
    row = Row([], [], [])
    items = _with_times_as_sets(items, known)
    after_mark = counted = False
    held = ""
    for item in items:
        if isinstance(item, Mark):
            if item.kind in _SAYS_SOMETHING:
                row.pieces.append(Piece(item, item.joint, item.joint))
                after_mark = True
            else:
                row.beside.append(item)
            continue
        numbers = _numbers(item, known)
        hoped_for = _range_of_reps(numbers, known)
        for at, (q, joint) in enumerate(numbers[:-2] if hoped_for is not None else numbers):
            if q.role == "sets":
                row.counts.append((len(row.pieces), q, joint))
                counted, held = True, joint
                continue
            first = at == 0
            between = item.since_mark if first and after_mark else joint
            if counted and joint == "":
                # "80 for 3 sets of 8": the count stands between two numbers that are joined across it.
                between = held
            led = _led(item, counted=counted, first=first)
            across = held if counted and joint == "" else joint
            row.pieces.append(Piece(q, between, across, led, item.next_to_name))
            after_mark = counted = False
        if hoped_for is not None:
            row.pieces.append(Piece(hoped_for, numbers[-2][1], numbers[-2][1]))
            after_mark = True
    row = row._replace(pieces=list(_with_one_load(row.pieces, known)))
    return _with_reps_of_sets(row, known) if row.counts else row


def _with_times_as_sets(items: Sequence[Item], known: Known) -> Sequence[Item]:
    """Take "twice" for a number of sets where just so many lone numbers follow it: "80 twice, 7 and 6"."""
    numbers = [(item, q) for item in items if isinstance(item, Element) for q in item.quantities]
    times = next((at for at, (_, q) in enumerate(numbers) if q.times and q.value > 1), None)
    if times is None:
        return items
    element, often = numbers[times]
    rest = numbers[times + 1 :]
    if len(rest) != often.value or any(q.role is not None or not known.reps_fit(q) for _, q in rest):
        return items
    if any(item.joints[0] not in _LIST_JOINTS for item, _ in rest) or often is not element.quantities[-1]:
        return items
    counted = replace(element, quantities=[*element.quantities[:-1], often._replace(role="sets")])
    return [counted if item is element else item for item in items]


def _with_reps_of_sets(row: Row, known: Known) -> Row:
    """Take as many numbers as sets were counted before them for the reps: "3 sets, 15 13 and 12"."""
    pieces = list(row.pieces)
    for at, count, _ in row.counts:
        end = at
        while end < len(pieces) and _can_be_reps_of_list(pieces[end], known, first=end == at):
            end += 1
        if count.value > 1 and end - at == count.value:
            for k in range(at, end):
                what = pieces[k].what
                if isinstance(what, Quantity) and what.role is None:
                    pieces[k] = pieces[k]._replace(what=what._replace(role="reps"))
    return row._replace(pieces=pieces)


def _can_be_reps_of_list(piece: Piece, known: Known, *, first: bool) -> bool:
    what = piece.what
    if not isinstance(what, Quantity) or piece.led == "at" or not (first or piece.joint in _LIST_JOINTS):
        return False
    return what.role == "reps" or (what.role is None and known.reps_fit(what))


def _led(element: Element, *, counted: bool, first: bool) -> Led:
    if counted:
        return "sets"
    if not first:
        return ""
    if element.after_at:
        return "at"
    if element.after_for and element.next_to_name:
        return "for"
    if element.so_often and len(element.quantities) == 1:
        return "so often"
    return "got" if element.result else ""


def _numbers(element: Element, known: Known) -> list[tuple[Quantity, str]]:
    """Return the numbers of an element with their joints, each as far as it tells by itself what it is."""
    if _is_range(element, known):
        return []
    quantities = _counted_alike([_timed(q, known) for q in element.quantities], known)
    quantities, joints = pairs_of_dumbbells(quantities, list(element.joints), known)
    numbers = _with_unit_of_load(list(zip(quantities, joints, strict=True)), known)
    if not known.hold:
        # Beside reps, a time tells how long they took.
        numbers = [(q, joint) for q, joint in numbers if q.role != "seconds"]
    numbers = _with_list(_with_count_ahead(numbers, known), known)
    alone = len(element.quantities) == 1
    return [(_typed(q, known, alone=alone), joint) for q, joint in numbers]


def _with_unit_of_load(numbers: list[tuple[Quantity, str]], known: Known) -> list[tuple[Quantity, str]]:
    """Take the unit behind a whole set for that of its load where only that is sensible: "185x5 lb"."""
    for at in range(len(numbers) - 1):
        (first, joint), (second, times) = numbers[at : at + 2]
        if times != "x" or first.role is not None or first.unit is not None or second.role != "load":
            continue
        load = first._replace(role="load", unit=second.unit)
        reps = second._replace(role="reps", unit=None)
        is_load = known.load_fits(load) or (known.load_fits(load) is None and not known.reps_fit(first))
        if is_load and not known.load_fits(second) and known.reps_fit(reps):
            numbers[at : at + 2] = [(load, joint), (reps, times)]
    return numbers


def _range_of_reps(numbers: Sequence[tuple[Quantity, str]], known: Known) -> Mark | None:
    """Return a range after a load as reps that are not known: "60 x 10-12" is what was to be done."""
    if len(numbers) != 3 or numbers[1][1] not in _TIES or numbers[2][1] != "-":
        return None
    (load, _), (low, _), (high, _) = numbers
    if load.role not in {None, "load", "pair"} or low.role is not None or high.role not in {None, "reps"}:
        return None
    if low.value >= high.value or not known.reps_fit(low) or not known.reps_fit(high):
        return None
    return Mark("unknown reps", low.start, high.end)


def _with_list(numbers: list[tuple[Quantity, str]], known: Known) -> list[tuple[Quantity, str]]:
    """Take "80 x8 x7 x6" for a list of reps at one load; two of them only where no such number of sets is.

    "20 x 16/14/13" is one load whatever its reps are.
    """
    if _is_told_of_one_load(numbers, known):
        return [*numbers[:1], *((q._replace(role="reps"), joint) for q, joint in numbers[1:])]
    if len(numbers) < 3 or any(joint != "x" for _, joint in numbers[1:]):
        return numbers
    reps = [q for q, _ in numbers[1:]]
    if any(q.role not in {None, "reps"} or not known.reps_fit(q) for q in reps):
        return numbers
    load = numbers[0][0]
    if load.role not in {None, "load", "pair"} or (load.role is None and load.value <= MOST_SETS):
        return numbers
    if len(reps) == 2 and not reps[0].value > reps[1].value > max(FEW_SETS, _sets_planned(known)):
        return numbers
    return [*numbers[:2], *((q, "/") for q, _ in numbers[2:])]


def _with_count_ahead(numbers: list[tuple[Quantity, str]], known: Known) -> list[tuple[Quantity, str]]:
    """Take the number before a colon for how many sets were done where so many follow: "rows 3: 9, 9, 8"."""
    if len(numbers) < 3 or numbers[1][1] != ":" or numbers[0][0].role is not None:
        return numbers
    count = numbers[0][0]
    if count.value != len(numbers) - 1 or known.load_fits(count) is not False:
        return numbers
    if any(q.role not in {None, "reps"} or not known.reps_fit(q) for q, _ in numbers[1:]):
        return numbers
    return [(count._replace(role="sets"), numbers[0][1]), *numbers[1:]]


def _is_told_of_one_load(numbers: Sequence[tuple[Quantity, str]], known: Known) -> bool:
    """Return whether a list of reps stands after one load by its signs: "20 x 16/14/13"."""
    if len(numbers) < _LOAD_AND_LIST or numbers[1][1] not in _TIES | {":"}:
        return False
    if any(joint != "/" for _, joint in numbers[2:]) or numbers[0][0].role is not None or known.hold:
        return False
    reps = [q for q, _ in numbers[1:]]
    return all(q.role is None and known.reps_fit(q) for q in reps) and known.load_fits(numbers[0][0]) is True


def _sets_planned(known: Known) -> int:
    return known.plan.sets if known.plan is not None else 0


def _timed(q: Quantity, known: Known) -> Quantity:
    """Take "30s" for seconds on a hold, unless loads are per hand there, which makes it a pair or seconds;
    and "twice" there for how many sets."""
    if q.times and known.hold:
        return q._replace(role="sets")
    if q.role == "pair" and q.kind is None and known.hold and known.kind != "each":
        return q._replace(role="seconds")
    return q


def _counted_alike(quantities: list[Quantity], known: Known) -> list[Quantity]:
    """Take what can be either for what it is beside the other number: "32 x 40s" of a hold in seconds, "14
    each arm 11 reps" with 14 in each hand."""
    if len(quantities) != 2 or known.kind != "each":
        return quantities
    first, second = quantities
    if known.hold and second.role == "pair" and second.kind is None and first.role in {None, "load", "pair"}:
        return [first, second._replace(role="seconds")]
    swapped = first.role is None and second.role == "reps" and second.each and known.in_range(first)
    if swapped and known.load_fits(first) is False and known.load_fits(second):
        # "Lunges 12x30 each leg"
        return [first._replace(role="reps"), second._replace(role="load")]
    if first.role == second.role == "reps" and first.each and known.load_fits(first):
        return [first._replace(role="load"), second]
    return quantities


def _typed(q: Quantity, known: Known, *, alone: bool) -> Quantity:
    if q.role is None and q.minus and (known.kind == "assist" or known.load_fits(q) is False):
        return q._replace(role="load")
    if alone and q.value == 0 and q.role is None:
        # No load is nought.
        return q._replace(role="reps")
    return q


def _is_range(element: Element, known: Known) -> bool:
    """Return whether an element is no set but what was to be done: "8-10 reps"."""
    if len(element.quantities) != 2 or element.joints[1] != "-":
        return False
    first, second = element.quantities
    return (
        first.role is None
        and is_amount(second)
        and first.value < second.value
        and known.reps_fit(first)
        and known.load_fits(first) is not True
    )


_LOAD_AND_REPS = 2


def _with_one_load(pieces: Sequence[Piece], known: Known) -> list[Piece]:
    """Return the pieces, a load that is said in both units once, in the usual one: "80 kg (176 lb)"."""
    told: list[Piece] = []
    for at, piece in enumerate(pieces):
        following = pieces[at + 1].joint if at + 1 < len(pieces) else ""
        if told and _is_load_as_before(told[-1], piece, known):
            told[-1] = piece._replace(joint=told[-1].joint, across=told[-1].across, led="at")
            continue
        again = _said_already(told, piece, following)
        if again is None:
            told.append(piece)
        elif isinstance(piece.what, Quantity) and piece.what.unit == known.request.unit:
            told[again] = told[again]._replace(what=piece.what)
    return told


def _said_already(told: Sequence[Piece], piece: Piece, following: str) -> int | None:
    """Return which of the last pieces is the same load in the other unit: "200 lb for 5, that is 90.7 kg"."""
    latest = range(len(told) - 1, max(-1, len(told) - 1 - _LOAD_AND_REPS), -1)
    return next(
        (
            at
            for at in latest
            if not (piece.joint and at < latest[0]) and _is_load_again(told[at], piece, following)
        ),
        None,
    )


def _is_load_as_before(piece: Piece, following: Piece, known: Known) -> bool:
    """Return whether the load that is the same is told right after that: "same 70, but only 5"."""
    if not (isinstance(piece.what, Mark) and piece.what.kind == "same load"):
        return False
    load = following.what
    if following.joint or not (isinstance(load, Quantity) and load.role in {None, "load"}):
        return False
    return known.is_exact(load) and not known.in_range(load)


def _is_load_again(piece: Piece, following: Piece, joint: str) -> bool:
    """Return whether a load is said again; in "7 @ 80 kg, 177 lb x 6" each set has its own, by `joint`."""
    if piece.joint in {"@", "at"} and joint in {"x", "for"}:
        return False
    first, second = piece.what, following.what
    return isinstance(first, Quantity) and isinstance(second, Quantity) and same_mass(first, second)
