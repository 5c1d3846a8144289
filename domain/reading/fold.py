"""A group of numbers and phrases into single sets, for a known exercise: the contract's second to
thirteenth rule.

The pieces of the group are parted into stretches, each said in one of the ways of a table (`ways.py`). Every
parting is weighed, and the cheapest is taken; where two that give different sets cost nearly the same, what
differs must be confirmed. The outcome of each set is a `Draft`. Nothing is recorded here.
"""

from collections.abc import Iterator, Sequence
from functools import partial
from itertools import pairwise
from operator import itemgetter
from typing import NamedTuple

from domain.reading.context import Known
from domain.reading.draft_ways import told
from domain.reading.drafts import Draft, Source
from domain.reading.element import Item
from domain.reading.fold_beside import with_beside
from domain.reading.fold_changes import changed_rows
from domain.reading.fold_counts import counted
from domain.reading.phrases import Mark
from domain.reading.pieces import WHOLE_MARKS, Piece, Row, row_of
from domain.reading.plain_sets import plain_sets
from domain.reading.quantities import Quantity
from domain.reading.same_sets import asked, same_sets
from domain.reading.story import Next, Story
from domain.reading.way_costs import AFTER_PHRASE, CUT, REMARKS, Costs, lone_cost, slots_of
from domain.reading.ways import LONGEST, said_in

NEAR = 0.25
"""Two ways whose costs differ by less are told apart by nothing that was said."""
_OUT_OF_REACH = 2 * NEAR
"""A way to tell all of a group that costs so much more than the cheapest is no rival to it."""
_KEPT = 4
"""So many ways to tell the pieces so far are carried on with."""
_NO_SET = 4.0


_HOPELESS = 2.5
"""What costs so much more than another way up to some piece is not carried on with."""
MOST = 1e9
MOST_WEIGHED = 60
"""So many numbers and phrases are weighed in one group; with more, every number is asked about."""


_COST = itemgetter(0)
_AHEAD = 0.8
"""What it costs that "target hit" stands before the set that it remarks on."""


class Stretch(NamedTuple):
    """Pieces side by side, what each can be, and what it costs to part them from those before."""

    pieces: Sequence[Piece]
    slots: Sequence[Costs]
    cut: float


class Weighed(NamedTuple):
    """Drafts and what it costs to read them from the pieces."""

    cost: float
    drafts: tuple[Draft, ...]


def fold(items: Sequence[Item], known: Known) -> list[Draft]:
    """Return the drafts of the sets that a group tells of, in order."""
    row = row_of(items, known)
    if (plain := plain_sets(row, known)) is not None:
        return with_beside(plain, items, row.beside)
    if len(row.pieces) > MOST_WEIGHED:
        return [_unweighed(piece.what) for piece in row.pieces if isinstance(piece.what, Quantity)]
    best: Weighed | None = None
    for pieces, more in changed_rows(row.pieces):
        if best is None or more < best.cost:
            weighed = _weighed(row._replace(pieces=pieces), known, more)
            best = weighed if best is None or weighed.cost < best.cost else best
    return with_beside(list(best.drafts) if best is not None else [], items, row.beside)


def _unweighed(q: Quantity) -> Draft:
    return Draft(None, q, q.start, q.end, confirm=True)


def _weighed(row: Row, known: Known, more: float) -> Weighed:
    """Return the cheapest drafts of a row; what another way tells as well must be confirmed."""
    if not row.pieces:
        return Weighed(more, (Draft(),) if any(q.value > 1 for _, q, _ in row.counts) else ())
    stories = _stories(row.pieces, known, MOST if row.counts else _OUT_OF_REACH)
    ways: list[Weighed] = []
    for story in stories:
        drafts, cost = counted(story.drafts, row)
        ways.append(Weighed(story.cost + cost + _NO_SET * (not drafts) + more, tuple(drafts)))
    ways.sort(key=lambda way: way.cost)
    best = ways[0]
    rival = next((way for way in ways[1:] if not same_sets(way.drafts, best.drafts, known)), None)
    if rival is None or rival.cost - best.cost >= NEAR:
        return best
    return best._replace(drafts=tuple(asked(best.drafts, rival.drafts, known)))


def _stories(pieces: Sequence[Piece], known: Known, reach: float) -> list[Story]:
    """Return the cheapest ways to tell all the pieces, those that cost no more than `reach` above the
    cheapest."""
    slots = [slots_of(piece, known) for piece in pieces]
    for costs, piece in zip(slots, pieces, strict=True):
        if "A" in costs:
            costs["alone"] = lone_cost(piece, known)
    cuts = [0.0, *(_cut(before, piece) for before, piece in pairwise(pieces))]
    upto: list[list[Story]] = [[Story()]]
    for end in range(1, len(pieces) + 1):
        found: list[Next] = []
        for start in range(max(0, end - LONGEST), end):
            stretch = Stretch(pieces[start:end], slots[start:end], cuts[start])
            hopeless = min(map(_COST, found), default=MOST) + _HOPELESS
            found.extend(_told_from(upto[start], stretch, known, hopeless))
        upto.append(_cheapest(found, known, reach if end == len(pieces) else MOST))
    return upto[-1]


def _cut(before: Piece, piece: Piece) -> float:
    """Return what it costs to part two pieces; a phrase binds no number to itself."""
    cost = CUT.get(piece.joint, 0.0)
    return min(cost, AFTER_PHRASE) if isinstance(before.what, Mark) else cost


def _told_from(stories: Sequence[Story], stretch: Stretch, known: Known, hopeless: float) -> Iterator[Next]:
    """Yield the stories that go on with a stretch, said in any way, its phrases counted or only remarks."""
    pieces, slots, cut = stretch
    for kept, remarks in _with_remarks(pieces):
        if not kept:
            for story in stories:
                ahead = _ahead(pieces[0]) if not story.drafts else 0.0
                yield Next(story.cost + remarks + ahead, story, partial(_nothing, story), story.habit)
            continue
        counting, costs = pieces, slots
        if len(kept) != len(pieces):
            counting = [_across(pieces, kept, at) for at in kept]
            costs = [slots[at] for at in kept]
        for said in said_in(counting, costs, known):
            for story in stories:
                if story.cost + said.cost + remarks > hopeless:
                    break
                going_on = told(story, said, known, cut)
                if going_on is not None:
                    yield going_on._replace(cost=going_on.cost + remarks) if remarks else going_on


def _nothing(story: Story) -> tuple[list[Draft], Source]:
    return [], story.load


def _ahead(piece: Piece) -> float:
    return _AHEAD if isinstance(piece.what, Mark) and piece.what.kind in WHOLE_MARKS else 0.0


def _across(pieces: Sequence[Piece], kept: Sequence[int], at: int) -> Piece:
    """Return a piece, joined across the remarks before it."""
    piece = pieces[at]
    return piece if at - 1 in kept or at == 0 else piece._replace(joint=piece.across)


def _with_remarks(pieces: Sequence[Piece]) -> Iterator[tuple[list[int], float]]:
    """Yield which pieces of a stretch say something, with what it costs that the others only remark on it."""
    everything = list(range(len(pieces)))
    yield everything, 0.0
    marks = [
        at for at, piece in enumerate(pieces) if isinstance(piece.what, Mark) and piece.what.kind in REMARKS
    ]
    if not marks:
        return
    leave_out = [marks] if len(marks) == 1 or len(marks) > 3 else [marks, *([at] for at in marks)]
    for left_out in leave_out:
        cost = sum(REMARKS[what.kind] for at in left_out if isinstance(what := pieces[at].what, Mark))
        cost += _ahead(pieces[0]) if left_out[0] == 0 else 0.0
        yield [at for at in everything if at not in left_out], cost


def _cheapest(ways: list[Next], known: Known, reach: float) -> list[Story]:
    ways.sort(key=_COST)
    kept: list[Story] = []
    for way in ways:
        if kept and kept[0].drafts and way.cost > kept[0].cost + reach:
            break
        story = way.told()
        if not any(
            same_sets(story.drafts, other.drafts, known) and story.load == other.load for other in kept
        ):
            kept.append(story)
            if len(kept) == _KEPT:
                break
    return kept
