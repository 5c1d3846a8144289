"""Which name each number of a sentence belongs to.

Numbers stand before their name, after it or around it ("ten on the leg press at 110"). Every way to share
out the numbers between two names is weighed by what the words between them say, and by whether each name gets
what makes a set of it; the cheapest way for the whole sentence is taken.
"""

from collections.abc import Callable, Container, Sequence
from dataclasses import replace
from typing import Literal, NamedTuple

from domain.reading.anchors import PROVIDERS
from domain.reading.context import Known
from domain.reading.element import Element, Item
from domain.reading.limits import FEW_SETS
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.tokens import LINE
from domain.reading.words import words_of

_PARTS = words_of(", : then and but ; . ( so & n + / - plus | followed later afterwards next finally lastly")
_AFTER_THAT = (["after", "that"], ["after", "this"], ["after", "which"])
"""Words and signs that part one thing told from the next."""
_TIES = words_of("on of in at for during doing with w")
"""Words that tie a name to the numbers before it."""
_ARTICLES = words_of("the my those that these some a an")

_OWN_TALE = 2
"""So many words behind a comma before "on the bench" are about something else."""
_POINTS = 3
"""How many words before its numbers an exercise can be pointed at: "second exercise today 80x8"."""

NOTHING_OWNED = 3.0
HALF_A_SET = 1.5
AROUND = 1.5
ACROSS = 3.0
CLOSE = 1.0
FOLLOWS = 0.2
LAGS = 0.1
UNLIKELY = 1.0
"""What each oddity costs; only their order counts. The house's own choice."""


def shared(
    message: Message,
    runs: Sequence[Sequence[Item]],
    names: Sequence[Named | None],
    known_of: Callable[[str], Known],
    pointers: Container[int],
) -> list[list[Item]]:
    """Return the items of each name; `runs[k]` stands after `names[k]`, the first of which is nobody's.

    At `pointers` an exercise is pointed at by its number in the plan.
    """
    if not any(runs[:-1]):
        return [list(run) for run in runs]
    best: list[_Way] = [_Way(0.0, ())]
    before: Sequence[Item] = ()
    for k, (name, run) in enumerate(zip(names, runs, strict=True)):
        following = names[k + 1] if k + 1 < len(names) else None
        splits = range(len(run) + 1) if following is not None else (len(run),)
        best = [
            min(
                (
                    _Way(
                        way.cost
                        + _cut(message, name, run, split, following)
                        + _cost(message, name, before[way.last :], run[:split], known_of, pointers),
                        (*way.splits, split),
                    )
                    for way in best
                ),
                key=lambda way: way.cost,
            )
            for split in splits
        ]
        before = run
    taken = best[0].splits
    return [[*(runs[k - 1][taken[k - 1] :] if k else ()), *run[: taken[k]]] for k, run in enumerate(runs)]


class _Way(NamedTuple):
    """A way to share out the runs so far: what it costs, and where each run is parted."""

    cost: float
    splits: tuple[int, ...]

    @property
    def last(self) -> int:
        return self.splits[-1] if self.splits else 0


def _cut(
    message: Message, name: Named | None, run: Sequence[Item], split: int, following: Named | None
) -> float:
    """Return what it costs to part a run at a place: little at a comma, much between close numbers."""
    if following is None or not run or (split == 0 and name is None):
        return 0.0
    left = run[split - 1].end if split else name.end if name is not None else 0
    right = run[split].start if split < len(run) else following.start
    if is_parted(message, left, right):
        return 0.0
    if 0 < split == len(run) - 1 and _tells_a_set(run[:split]) and _is_tied(message, run[split], following):
        return CLOSE
    return CLOSE if split in {0, len(run)} else ACROSS


def _tells_a_set(items: Sequence[Item]) -> bool:
    """Return whether a whole set is among the items, or a load and what it was lifted for."""
    return any(_is_whole(i) for i in items) or (
        len(items) > 1 and _is_lone(items[-1], "amount") and _is_lone(items[-2], "load")
    )


def _is_tied(message: Message, item: Item, name: Named) -> bool:
    """Return whether nothing but small words ties a number to the name after it: "13 pushdowns"."""
    return all(word in _TIES or word in _ARTICLES for word in message.texts(item.end, name.start))


def _cost(
    message: Message,
    name: Named | None,
    lead: Sequence[Item],
    tail: Sequence[Item],
    known_of: Callable[[str], Known],
    pointers: Container[int],
) -> float:
    """Return what it costs that a name has these items before it and those after it."""
    items = [*lead, *tail]
    gives = any(_gives(item) for item in items)
    if name is not None and len(name.names) == 1 and known_of(name.names[0]).hold:
        lead, tail = ([_in_seconds(item) for item in part] for part in (lead, tail))
        items = [*lead, *tail]
    if name is None:
        if items and any(at in pointers for at in range(max(0, items[0].start - _POINTS), items[0].start)):
            return 0.0
        return (HALF_A_SET if gives else ACROSS) * bool(items) + HALF_A_SET * _is_half(items)
    if not gives:
        # "To failure, delts are toast": what is told behind a set is not of a name that has none.
        return (0.5 if name.weak else NOTHING_OWNED) + LAGS * len(lead)
    cost = LAGS * sum(not _gives(item) for item in lead)
    completes = bool(lead) and _completes(lead, tail)
    if any(_gives(item) for item in lead):
        # What was told before goes on until something says otherwise.
        cost += FOLLOWS * len(lead)
        cost += min(_lead_cost(message, lead[-1].end, name.start), CLOSE if completes else ACROSS)
        if isinstance(lead[0], Mark) and lead[0].kind not in PROVIDERS:
            cost += AROUND
    if tail and _gives(tail[0]):
        cost += _tail_cost(message, name.end, tail[0].start)
    if any(_gives(i) for i in lead) and any(_gives(i) for i in tail) and not completes:
        cost += AROUND
    known = known_of(name.names[0]) if len(name.names) == 1 else None
    # "30s" on a hold is no pair of dumbbells.
    timed = known is not None and known.hold and any(_is_time(item) for item in items)
    cost += HALF_A_SET * (_is_half(items) and not timed)
    return cost if known is None else cost + _oddity(items, known)


def _in_seconds(item: Item) -> Item:
    """Return "42s" beside a hold as seconds."""
    if isinstance(item, Mark) or all(q.role != "pair" for q in item.quantities):
        return item
    seconds = [q._replace(role="seconds") if q.role == "pair" else q for q in item.quantities]
    return replace(item, quantities=seconds)


def _lead_cost(message: Message, start: int, end: int) -> float:
    words = message.texts(start, end)
    while words and words[-1] in _ARTICLES:
        words.pop()
    if words and words[-1] in _TIES:
        # "80x8, a man filming himself on the bench" tells of the man.
        told = sum(word.isalpha() for word in words) - 1
        return ACROSS if told >= _OWN_TALE and is_parted(message, start, end) else 0.0
    if is_parted(message, start, end):
        return ACROSS
    return 0.5 + 0.3 * len(words)


def _tail_cost(message: Message, start: int, end: int) -> float:
    if any(message.tokens[at].kind == LINE for at in range(start, end)):
        return 0.6
    words = message.texts(start, end)
    if "," in words or "and" in words or "then" in words:
        return 0.5
    return 0.0


def _oddity(items: Sequence[Item], known: Known) -> float:
    """Return what it costs that the numbers are no usual ones for the exercise."""
    return UNLIKELY * sum(_is_odd(item, known) for item in items if isinstance(item, Element))


def _is_odd(item: Element, known: Known) -> bool:
    quantities = item.quantities
    first = quantities[0]
    roles = {q.role for q in quantities}
    if ("seconds" in roles and not known.hold and not first.minutes) or ("reps" in roles and known.hold):
        return True
    load = next((q for q in quantities if q.role in {"load", "pair"}), None)
    if load is not None and not (known.hold and _is_time(item)):
        return known.load_fits(load) is False
    if roles != {None}:
        return False
    if len(quantities) == 2:
        return known.order(first, quantities[1]) == "neither" and not _can_be_sets(item)
    return len(quantities) == 1 and not known.reps_fit(first) and known.load_fits(first) is False


def _is_time(item: Item) -> bool:
    """Return whether a number like "30s" can be seconds."""
    return isinstance(item, Element) and all(q.role == "pair" and q.kind is None for q in item.quantities)


def _can_be_sets(item: Item) -> bool:
    """Return whether two numbers can be sets and reps without their load: "3x8"."""
    return (
        isinstance(item, Element)
        and len(item.quantities) == 2
        and item.joints[1] == "x"
        and item.quantities[0].role is None
        and item.quantities[0].value <= FEW_SETS
    )


def _gives(item: Item) -> bool:
    return isinstance(item, Element) or item.kind in PROVIDERS


def _is_half(items: Sequence[Item]) -> bool:
    """Return whether a load is among the items and nothing that says how often it was lifted."""
    loads = [i for i in items if isinstance(i, Element) and _is_said_load(i)]
    return (
        bool(loads)
        and not any(i not in loads and (_is_lone(i, "amount") or _is_whole(i)) for i in items)
        and not any(isinstance(i, Mark) and i.kind == "failed on" for i in items)
    )


def _is_whole(item: Item) -> bool:
    if isinstance(item, Mark):
        return item.kind in PROVIDERS
    return len(item.quantities) >= 2


def _is_lone(item: Item, what: Literal["load", "amount"]) -> bool:
    if isinstance(item, Mark) or len(item.quantities) != 1:
        return False
    role = item.quantities[0].role
    if what == "load":
        return role in {"load", "pair", "plates"}
    return role in {"reps", "seconds", None}


def _is_said_load(item: Element) -> bool:
    """Return whether a lone number is a load by a word, a sign or its unit."""
    return _is_lone(item, "load") or (item.after_at and _is_lone(item, "amount"))


def _completes(lead: Sequence[Item], tail: Sequence[Item]) -> bool:
    """Return whether what stands before a name and what stands after it make one set."""
    if isinstance(lead[-1], Element) and [q.role for q in lead[-1].quantities] == ["sets"]:
        return True
    if isinstance(lead[-1], Mark) and lead[-1].kind == "body":
        # "Bodyweight dips 5"
        return len(lead) == 1 and bool(tail) and _is_lone(tail[0], "amount")
    if _can_be_sets(lead[-1]) and tail and isinstance(tail[0], Element) and tail[0].after_at:
        return len(tail[0].quantities) == 1
    first = next((i for i in tail if _gives(i)), None)
    if isinstance(first, Element) and _is_said_load(first) and all(_is_lone(i, "amount") for i in lead):
        # "8, 8 and 7 on the press with 30s"
        return True
    if len(lead) > 2 or not isinstance(lead[-1], Element) or len(lead[-1].quantities) > 1:
        return False
    if isinstance(first, Mark):
        return True
    if first is not None and _is_told_with(first) and lead[-1].quantities[0].role != "load":
        # "8 then 7 hammer curls 14 for 11" tells the curls whole behind their name.
        return False
    return (
        first is not None
        and len(first.quantities) <= 2
        and (
            _is_lone(lead[-1], "load") != _is_lone(first, "load")
            or lead[-1].quantities[0].role is None
            or first.quantities[0].role is None
        )
    )


def _is_told_with(item: Element) -> bool:
    """Return whether a load stands with its reps, and no number of sets."""
    return len(item.quantities) == 2 and item.joints[1] in {"x", "for"} and not _can_be_sets(item)


def is_parted(message: Message, start: int, end: int) -> bool:
    """Return whether a comma, a break or a "then" stands between two places."""
    return any(
        message.text(at) in _PARTS
        or message.tokens[at].kind == LINE
        or (message.text(at) == "after" and message.texts(at, at + 2) in _AFTER_THAT)
        for at in range(start, end)
    )
