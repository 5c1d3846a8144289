"""What a stretch that is said in one way adds to the sets told so far."""

from decimal import Decimal
from typing import NamedTuple

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source, same_mass, whole
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import MOST_SETS, Quantity
from domain.reading.rule_two import by_rule_two
from domain.reading.way_costs import GOES_ON
from domain.reading.ways import Said

PART = 0.2
LONE_REPS = 0.4
LONE_UNCLEAR = 0.9
LONE_PHRASE = 0.8
LONE_LOAD = 1.5
AGAINST_RULE_TEN = 3.0
"""What a number costs that stands alone, without the other half of its set."""


AGAIN = 1.0
OF_A_SET = 1.0
OFTEN = 0.5
MAY_BE_LOAD = 0.8
MAY_BE_LOAD_IN_LIST = 0.3
MAY_BE_REPS_TOO = 0.4
FAR_BELOW = 0.5
"""What it costs that a phrase which can be of the set before it is of another."""
_OF_THE_SET = frozenset({"same all", "target", "target more", "target fewer"})


STRAINED = 2.0
"""What costs so much is read against a sign that binds, and must be confirmed."""


class Story(NamedTuple):
    """The sets told so far with what it costs to read them so.

    `load` is the one told last, at which further reps are meant. `order` is how the first bare pair of a list
    stands, which the others follow.
    """

    cost: float = 0.0
    drafts: tuple[Draft, ...] = ()
    load: Source = None
    order: str = ""


def told(story: Story, said: Said, known: Known, cut: float) -> Story | None:
    """Return the story with what a stretch says, None where it cannot go on so."""
    match said.way:
        case "A":
            return _lone_amount(story, said, known, cut)
        case "L":
            return _lone_load(story, said, known, cut)
        case "N":
            return _so_often(story, said)
        case "W":
            # "40 seconds, target met" tells of the set, and is no other one.
            told_already = story.drafts and isinstance(story.drafts[-1].amount, Quantity)
            cut += AGAIN if told_already and _kind(said.pieces[0]) in _OF_THE_SET else 0.0
        case _ if set(said.way) == {"A"}:
            return _list(story, said, known, cut)
        case _:
            pass
    cost = said.cost + PART + cut
    order = story.order
    confirm = cut >= STRAINED
    if said.ordered is not None:
        load_first = said.way[0] == "L"
        more, is_neither = by_rule_two(*said.ordered, known, load_first=load_first, settled=order)
        cost += more + (FAR_BELOW if _is_far_below(said.ordered[0], story.load) else 0.0)
        confirm = confirm or is_neither
        order = order or ("" if is_neither else "load first" if load_first else "reps first")
    elif said.way.startswith("L"):
        order = "load first"
    load_of, drafts = _drafts(story, said)
    if confirm:
        drafts = [draft._replace(confirm=True) for draft in drafts]
    return _with(story, cost, drafts, load_of, order)


def _is_far_below(load: Piece, before: Source) -> bool:
    """Return whether a load is no drop from the one before it, but a number of sets: "80 2x8, 1x6"."""
    return (
        isinstance(before, Quantity)
        and isinstance(load.what, Quantity)
        and load.what.value * 4 < before.value
    )


def _with(story: Story, cost: float, drafts: list[Draft], load: Source, order: str) -> Story:
    return Story(story.cost + cost, (*story.drafts, *drafts), load, order)


def _drafts(story: Story, said: Said) -> tuple[Source, list[Draft]]:
    """Return the load of a stretch and its drafts."""
    slots = list(zip(said.way, said.pieces, strict=True))
    if "W" in said.way:
        return _pointed_at(slots)
    load: Source = next((load_of(piece) for slot, piece in slots if slot == "L"), None)
    if "L" not in said.way:
        load = story.load
    count = next((piece.what for slot, piece in slots if slot == "N"), None)
    effort = next((piece.what for slot, piece in slots if slot == "E"), None)
    times = whole(count.value) if isinstance(count, Quantity) else 1
    drafts = [draft_of(load, piece) for slot, piece in slots if slot == "A"]
    if times > MOST_SETS:
        drafts, times = [draft._replace(confirm=True) for draft in drafts], 1
    if isinstance(effort, Quantity):
        drafts = [draft._replace(rir=10 - effort.value) for draft in drafts]
    return load, drafts * times


def _pointed_at(slots: list[tuple[str, Piece]]) -> tuple[Source, list[Draft]]:
    """Return a set that is only pointed at, with the load or the reps that are told beside it."""
    mark = next(piece.what for slot, piece in slots if slot == "W")
    assert isinstance(mark, Mark)  # noqa: S101 - only phrases point at whole sets
    if mark.kind == "done":
        return None, [Draft()]
    if mark.kind == "zero":
        load = Quantity(mark.value or Decimal(0), mark.start, mark.end, "load", mark.unit)
        reps = Quantity(Decimal(0), mark.start, mark.end, "reps")
        return load, [Draft(load, reps, mark.start, mark.end)]
    load_said = next((load_of(piece) for slot, piece in slots if slot == "L"), None)
    amount = next((piece for slot, piece in slots if slot == "A"), None)
    source: Source = load_said or mark
    if amount is not None:
        return None, [draft_of(source, amount)]
    start = min(piece.what.start for _, piece in slots)
    end = max(piece.what.end for _, piece in slots)
    return None, [Draft(source, mark, start, end)]


def _kind(piece: Piece) -> str:
    return piece.what.kind if isinstance(piece.what, Mark) else ""


def load_of(piece: Piece) -> Source:
    """Return where the load of a set comes from."""
    what = piece.what
    if isinstance(what, Quantity):
        return what._replace(role="load", kind=what.kind or "each") if what.role == "pair" else what
    if what.kind == "body":
        return "body"
    return "unknown" if what.kind in {"unknown load", "pin"} else what


def draft_of(load: Source, piece: Piece) -> Draft:
    """Return a set of reps, or of seconds, at a load."""
    amount = piece.what
    if isinstance(amount, Quantity) and amount.role == "pair":
        amount = amount._replace(role="seconds")
    start, end = piece.what.start, piece.what.end
    lowering = isinstance(amount, Quantity) and amount.lowering
    if isinstance(load, Quantity | Mark):
        start, end = min(start, load.start), max(end, load.end)
        lowering = lowering or (isinstance(load, Quantity) and load.lowering)
    if isinstance(amount, Mark) and amount.kind == "unknown reps":
        return Draft(load, None, start, end)
    if isinstance(amount, Mark) and amount.kind == "failed on":
        return Draft(load, amount, start, end, reps=int(amount.value or 1) - 1, to_failure=True)
    return Draft(load, amount, start, end, lowering=lowering)


def _lone_amount(story: Story, said: Said, known: Known, cut: float) -> Story:
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
        return _with(story, said.cost + more, [draft], story.load, story.order)
    cost, draft = _by_rule_ten(piece, known)
    return _with(story, said.cost + cost + cut, [draft], None, story.order)


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


def _list(story: Story, said: Said, known: Known, cut: float) -> Story | None:
    """Take reps that are told one after the other without a load: "25 22 19", "8, 7 and 6"."""
    joints = [piece.joint for piece in said.pieces[1:]]
    if story.load is not None or len({*joints[:-1]}) > 1 or joints[-1] not in {joints[0], "and"}:
        return None
    taken = [_by_rule_ten(piece, known) for piece in said.pieces]
    in_range = all(isinstance(p.what, Quantity) and known.in_range(p.what) for p in said.pieces)
    cost = said.cost + PART + (LONE_REPS if in_range else max(cost for cost, _ in taken))
    return _with(story, cost + cut, [draft for _, draft in taken], None, story.order)


def _lone_load(story: Story, said: Said, known: Known, cut: float) -> Story:
    """Take a load whose reps are told later or must be asked."""
    piece = said.pieces[0]
    load = load_of(piece)
    if isinstance(load, Quantity) and isinstance(story.load, Quantity) and same_mass(load, story.load):
        # "80 kg x 8 (176 lb)" says the load again.
        return _with(story, said.cost, [], story.load, story.order)
    cost = LONE_LOAD
    if piece.bare and isinstance(piece.what, Quantity) and not (piece.led == "at" and not piece.named):
        lone = known.lone(piece.what)
        cost = {"load": LONE_LOAD, "unclear": LONE_LOAD + 0.3, "reps": AGAINST_RULE_TEN}[lone]
    spot = piece.what
    draft = Draft(load, None, spot.start, spot.end)
    return _with(story, said.cost + cost + cut, [draft], load, story.order)


def _so_often(story: Story, said: Said) -> Story | None:
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
    return _with(story, cost, [last] * (whole(what.value) - 1), story.load, story.order)
