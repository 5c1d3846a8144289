"""Numbers that stand alone: reps at the load told before or at that of the contract's tenth rule, a load that
waits for its reps, how often a set was done.
"""

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source, same_mass, whole
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.story import Story, draft_of, grown, load_of
from domain.reading.way_costs import GOES_ON, PART, STRAINED
from domain.reading.ways import Said

LONE_REPS = 0.4
LONE_UNCLEAR = 0.9
LONE_PHRASE = 0.8
LONE_LOAD = 1.5
AGAINST_RULE_TEN = 3.0
"""What a number costs that stands alone, without the other half of its set."""

OF_A_SET = 1.0
OFTEN = 0.5
MAY_BE_LOAD = 0.8
MAY_BE_LOAD_IN_LIST = 0.3
MAY_BE_REPS_TOO = 0.4
"""What it costs that a number is of more reps, where it may as well be something else."""


def lone_amount(story: Story, said: Said, known: Known, cut: float) -> Story:
    """Take reps at the load told before, or where none was, those of the contract's tenth rule."""
    piece = said.pieces[0]
    if story.load is not None:
        more = GOES_ON.get(piece.joint, 0.0) + (1.0 if piece.led == "at" else 0.0)
        if piece.joint == "" and _may_be_reps_too(story.load, known):
            more += MAY_BE_REPS_TOO
        if isinstance(piece.what, Mark):
            more += OF_A_SET
        elif not known.in_range(piece.what):
            more += _no_further_reps(piece, piece.what, known)
        draft = draft_of(story.load, piece)._replace(confirm=more >= STRAINED)
        return grown(story, said.cost + more, [draft], story.load, story.order)
    cost, draft = _by_rule_ten(piece, known)
    return grown(story, said.cost + cost + cut, [draft], None, story.order)


def _may_be_reps_too(load: Source, known: Known) -> bool:
    """Return whether the load may be the first of a list of reps: "8 8 7"."""
    return (
        isinstance(load, Quantity) and load.role is None and known.in_range(load) and not known.is_exact(load)
    )


def _no_further_reps(piece: Piece, q: Quantity, known: Known) -> float:
    """Return what it costs that a number out of the plan's range tells of more reps, and no next load."""
    if q.times:
        return OFTEN
    if not piece.bare or not known.load_fits(q):
        return 0.0
    return MAY_BE_LOAD_IN_LIST if piece.joint in {"/", "-"} else MAY_BE_LOAD


def _by_rule_ten(piece: Piece, known: Known) -> tuple[float, Draft]:
    """Return reps without a load, and what it costs to take a number alone for them."""
    draft = draft_of(None, piece)
    what = piece.what
    if isinstance(what, Mark):
        return LONE_PHRASE, draft
    if not piece.bare or piece.led in {"for", "sets"} or not isinstance(what, Quantity):
        return LONE_REPS, draft
    match known.lone(what):
        case "reps":
            return LONE_REPS, draft
        case "load":
            return AGAINST_RULE_TEN, draft
        case _:
            other = Draft(what, None, what.start, what.end)
            return LONE_UNCLEAR, draft._replace(unclear=(other,), confirm=True, bare=what.value)


def list_of_reps(story: Story, said: Said, known: Known, cut: float) -> Story | None:
    """Take reps that are told one after the other without a load: "25 22 19", "8, 7 and 6"."""
    joints = [piece.joint for piece in said.pieces[1:]]
    if story.load is not None or len({*joints[:-1]}) > 1 or joints[-1] not in {joints[0], "and"}:
        return None
    taken = [_by_rule_ten(piece, known) for piece in said.pieces]
    in_range = all(isinstance(p.what, Quantity) and known.in_range(p.what) for p in said.pieces)
    cost = said.cost + PART + (LONE_REPS if in_range else max(cost for cost, _ in taken))
    return grown(story, cost + cut, [draft for _, draft in taken], None, story.order)


def lone_load(story: Story, said: Said, known: Known, cut: float) -> Story:
    """Take a load whose reps are told later or must be asked."""
    piece = said.pieces[0]
    load = load_of(piece)
    if isinstance(load, Quantity) and isinstance(story.load, Quantity) and same_mass(load, story.load):
        # "80 kg x 8 (176 lb)" says the load again.
        return grown(story, said.cost, [], story.load, story.order)
    cost = LONE_LOAD
    if piece.bare and isinstance(piece.what, Quantity) and not (piece.led == "at" and not piece.named):
        lone = known.lone(piece.what)
        cost = {"load": LONE_LOAD, "unclear": LONE_LOAD + 0.3, "reps": AGAINST_RULE_TEN}[lone]
    spot = piece.what
    draft = Draft(load, None, spot.start, spot.end)
    return grown(story, said.cost + cost + cut, [draft], load, story.order)


def so_often(story: Story, said: Said) -> Story | None:
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
    return grown(story, cost, [last] * (whole(what.value) - 1), story.load, story.order)
