"""What a stretch that is said in one way adds to the sets told so far."""

from decimal import Decimal
from functools import cache

from domain.reading.context import Known
from domain.reading.drafts import Draft, Source, whole
from domain.reading.limits import MOST_SETS
from domain.reading.lone_ways import is_load_again, list_of_reps, lone_amount, lone_load, so_often
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity
from domain.reading.rule_two import by_rule_two
from domain.reading.story import Habit, Next, Story, draft_of, load_of, looseness_of
from domain.reading.way_costs import PART, STRAINED
from domain.reading.ways import Said

AGAIN = 1.0
"""What it costs that a phrase which can be of the set before it is of another."""
FAR_BELOW = 0.5
LOOSER = 0.7
"""What it costs that a set is told unlike the first, its load tied more loosely: "10s: 14, 13, 11"."""
_OF_THE_SET = frozenset({"same all", "target", "target more", "target fewer"})


def told(story: Story, said: Said, known: Known, cut: float) -> Next | None:
    """Return the story with what a stretch says, None where it cannot go on so."""
    match said.way:
        case "A":
            return lone_amount(story, said, known, cut)
        case "L":
            return lone_load(story, said, known, cut)
        case "N":
            return so_often(story, said)
        case "W":
            # "40 seconds, target met" tells of the set, and is no other one.
            told_already = story.drafts and isinstance(story.drafts[-1].amount, Quantity)
            cut += AGAIN if told_already and _kind(said.pieces[0]) in _OF_THE_SET else 0.0
        case _ if said.is_list:
            return list_of_reps(story, said, known, cut)
        case _:
            pass
    cost = said.cost + PART + cut
    order = story.habit.order if story.habit else ""
    confirm = cut >= STRAINED
    if said.ordered is not None:
        load_first = said.way[0] == "L"
        more, is_neither = by_rule_two(*said.ordered, known, load_first=load_first, settled=order)
        cost += more + (FAR_BELOW if _is_far_below(said.ordered[0], story.load) else 0.0)
        confirm = confirm or is_neither
        order = order or ("" if is_neither else "load first" if load_first else "reps first")
    elif said.way.startswith("L"):
        order = "load first"
    looseness = _looseness(said)
    if story.habit is None:
        habit = Habit(order) if looseness is None else Habit(order, looseness)
    else:
        habit = story.habit._replace(order=order)
        cost += _unlike(said, story, story.habit, looseness, known)
    return Next(story.cost + cost, story, lambda: _drafts(story, said, known, confirm=confirm), habit)


def _unlike(said: Said, story: Story, habit: Habit, looseness: int | None, known: Known) -> float:
    """Return what it costs that a stretch is said in another way than the first set was."""
    bare_load = any(piece.bare for slot, piece in zip(said.way, said.pieces, strict=True) if slot == "L")
    if looseness is not None and looseness > habit.looseness and bare_load:
        first = said.pieces[0].what
        again = said.way[0] == "L" and isinstance(first, Quantity) and is_load_again(first, story, known)
        return 0.0 if again else LOOSER
    # "10x12 6x10" with the reps first is no six sets, and "7.5x8, 5x7" a drop set.
    follows = habit.order == "reps first" or (habit.order and not _is_far_below(said.pieces[0], story.load))
    return LOOSER if said.way == "NA" and follows else 0.0


def _looseness(said: Said) -> int | None:
    """Return how loosely a load is tied to its reps in a stretch; None where it is not told beside them."""
    at = _load_by_reps(said.way)
    if at is None:
        return None
    load = said.pieces[at if said.way[at] == "L" else at + 1]
    return looseness_of(load, said.pieces[at + 1])


@cache
def _load_by_reps(way: str) -> int | None:
    """Return the first of the two slots of a way that are a load and its reps side by side."""
    return next((i for i in range(len(way) - 1) if set(way[i : i + 2]) == {"L", "A"}), None)


def _is_far_below(load: Piece, before: Source) -> bool:
    """Return whether a load is no drop from the one before it, but a number of sets: "80 2x8, 1x6"."""
    return (
        isinstance(before, Quantity)
        and isinstance(load.what, Quantity)
        and load.what.value * 4 < before.value
    )


def _drafts(story: Story, said: Said, known: Known, *, confirm: bool) -> tuple[list[Draft], Source]:
    """Return the drafts of a stretch and its load."""
    slots = list(zip(said.way, said.pieces, strict=True))
    load, drafts = _pointed_at(slots, known) if "W" in said.way else _load_and_reps(story, said, slots)
    return [draft._replace(confirm=True) for draft in drafts] if confirm else drafts, load


def _load_and_reps(story: Story, said: Said, slots: list[tuple[str, Piece]]) -> tuple[Source, list[Draft]]:
    """Return the load of a stretch and its drafts."""
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


def _pointed_at(slots: list[tuple[str, Piece]], known: Known) -> tuple[Source, list[Draft]]:
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
    if amount is not None and isinstance(amount.what, Quantity) and _is_how_often(amount.what, mark, known):
        return None, [Draft(source, mark, mark.start, mark.end)] * int(amount.what.value)
    if amount is not None:
        return None, [draft_of(source, amount)]
    start = min(piece.what.start for _, piece in slots)
    end = max(piece.what.end for _, piece in slots)
    return None, [Draft(source, mark, start, end)]


_FEW_TIMES = 3


def _is_how_often(amount: Quantity, mark: Mark, known: Known) -> bool:
    """Return whether a number of times tells how often a whole set was done: "hit the target twice"."""
    if mark.kind not in _OF_THE_SET or not amount.times:
        return False
    return 1 < amount.value <= _FEW_TIMES and not known.in_range(amount)


def _kind(piece: Piece) -> str:
    return piece.what.kind if isinstance(piece.what, Mark) else ""
