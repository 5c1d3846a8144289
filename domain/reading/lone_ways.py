"""Numbers that stand alone: reps at the load told before or at that of the contract's tenth rule, a load that
waits for its reps, how often a set was done.
"""

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source, same_mass, whole
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.story import Next, Story, draft_of, load_of
from domain.reading.way_costs import AGAINST_RULE_TEN, GOES_ON, LONE_UNCLEAR, STRAINED, lone_cost
from domain.reading.ways import Said

LONE_LOAD = 1.5
"""What a load costs that stands alone, without its reps."""

LIKE_THE_LAST = 4
"""Reps that differ by no more from those of the set before go on a list."""
OF_A_SET = 1.0
OFTEN = 0.5
MAY_BE_LOAD = 0.8
MAY_BE_LOAD_IN_LIST = 0.3
MAY_BE_REPS_TOO = 0.4
IS_LOAD_AGAIN = 2.0
"""What it costs that a number is of more reps, where it may as well be something else."""


def lone_amount(story: Story, said: Said, known: Known, cut: float) -> Next:
    """Take reps at the load told before, or where none was, those of the contract's tenth rule."""
    piece = said.pieces[0]
    load = story.load
    if load is not None:
        more = GOES_ON.get(piece.joint, 0.0) + (1.0 if piece.led == "at" else 0.0)
        if piece.joint == "" and _may_be_reps_too(load, known):
            more += MAY_BE_REPS_TOO
        if isinstance(piece.what, Mark):
            more += OF_A_SET
        elif not known.in_range(piece.what):
            more += _no_further_reps(piece, piece.what, story, known)
        strained = more >= STRAINED
        return Next(
            story.cost + (said.cost + more),
            story,
            lambda: ([draft_of(load, piece)._replace(confirm=strained)], load),
            story.habit,
        )
    cost = story.cost + (said.cost + said.lone + cut)
    return Next(cost, story, lambda: ([_by_rule_ten(piece, said.lone)], None), story.habit)


def _may_be_reps_too(load: Source, known: Known) -> bool:
    """Return whether the load may be the first of a list of reps: "8 8 7"."""
    return (
        isinstance(load, Quantity) and load.role is None and known.in_range(load) and not known.is_exact(load)
    )


def _no_further_reps(piece: Piece, q: Quantity, story: Story, known: Known) -> float:
    """Return what it costs that a number out of the plan's range tells of more reps, and no next load."""
    if q.times:
        return OFTEN
    if not piece.bare or not known.load_fits(q):
        return 0.0
    if is_load_again(q, story, known):
        return IS_LOAD_AGAIN
    before = story.drafts[-1].amount if story.drafts else None
    goes_on = (
        story.habit is not None
        and story.habit.looseness == 0
        and isinstance(before, Quantity)
        and abs(before.value - q.value) <= LIKE_THE_LAST
    )
    return MAY_BE_LOAD_IN_LIST if goes_on or piece.joint in {"/", "-"} else MAY_BE_LOAD


def is_load_again(q: Quantity, story: Story, known: Known) -> bool:
    """Return whether a number is the load told before, and too far from its reps to go on with them: "40 for
    9, then 40 again, only 7"."""
    before = story.drafts[-1].amount if story.drafts else None
    if not (isinstance(story.load, Quantity) and isinstance(before, Quantity)) or known.in_range(q):
        return False
    return q.value == story.load.value and abs(before.value - q.value) > LIKE_THE_LAST


def _by_rule_ten(piece: Piece, cost: float) -> Draft:
    """Return reps without a load; at the cost of an unclear number, it may be the load as well."""
    draft = draft_of(None, piece)
    what = piece.what
    if cost != LONE_UNCLEAR or not isinstance(what, Quantity):
        return draft
    other = Draft(what, None, what.start, what.end)
    return draft._replace(unclear=(other,), confirm=True, bare=what.value)


def list_of_reps(story: Story, said: Said, known: Known, cut: float) -> Next | None:
    """Take reps that are told one after the other without a load: "25 22 19", "8, 7 and 6"."""
    if story.load is not None:
        return None
    return Next(
        story.cost + (said.cost + said.lone + cut),
        story,
        lambda: ([_by_rule_ten(piece, lone_cost(piece, known)) for piece in said.pieces], None),
        story.habit,
    )


def lone_load(story: Story, said: Said, known: Known, cut: float) -> Next:
    """Take a load whose reps are told later or must be asked."""
    piece = said.pieces[0]
    load = load_of(piece)
    if (
        piece.joint not in {"@", "at"}
        and isinstance(load, Quantity)
        and isinstance(story.load, Quantity)
        and same_mass(load, story.load)
    ):
        # "80 kg x 8 (176 lb)" says the load again; "7 @ 80 kg, 6 @ 177 lb" has one for each set.
        return Next(story.cost + said.cost, story, lambda: ([], story.load), story.habit)
    cost = LONE_LOAD
    if piece.bare and isinstance(piece.what, Quantity) and not (piece.led == "at" and not piece.named):
        lone = known.lone(piece.what)
        cost = {"load": LONE_LOAD, "unclear": LONE_LOAD + 0.3, "reps": AGAINST_RULE_TEN}[lone]
    spot = piece.what
    return Next(
        story.cost + (said.cost + cost + cut),
        story,
        lambda: ([Draft(load, None, spot.start, spot.end)], load),
        story.habit,
    )


def so_often(story: Story, said: Said) -> Next | None:
    """Take "twice" after a set as how often it was done."""
    piece = said.pieces[0]
    what = piece.what
    last = story.drafts[-1] if story.drafts else None
    if last is None or not isinstance(what, Quantity) or not isinstance(last.amount, Quantity):
        return None
    if piece.joint not in {"", ",", "and", "x"}:
        return None
    # "x5, x4" tells of two sets.
    cost = 0.1 + (0.6 if last.amount.times else 0.0)
    again = [last] * (whole(what.value) - 1)
    return Next(story.cost + cost, story, lambda: (again, story.load), story.habit)
