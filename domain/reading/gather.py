"""Numbers, names and short phrases gathered into groups: what was said of one exercise in one stretch.

Which numbers are joined, and which name they belong to, is decided by the words and signs between them. A
lone
bare number counts only where it is anchored: beside a name, after a verb of doing, or alone in its clause.
"""

from bisect import bisect_left
from collections.abc import Callable, Container, Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

from domain.reading.anchors import anchored
from domain.reading.beside_a_set import without_others
from domain.reading.context import Known
from domain.reading.counted import is_counted
from domain.reading.doubt import is_doubtful
from domain.reading.element import Element, Item
from domain.reading.elements import elements_of, join_marks
from domain.reading.manner import manner_of
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.no_names import (
    is_a_chin,
    is_a_moment,
    is_a_streak,
    is_compared_to,
    is_no_name,
    is_not_done,
    is_where_it_is_done,
    is_worn,
    tells_the_order,
)
from domain.reading.other_loads import speaks_of_another_load
from domain.reading.patterns import Pattern
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.sharing import shared
from domain.reading.standing_alone import is_missed_again
from domain.reading.unknown_names import name_before, unknown_word


@dataclass(slots=True)
class Group:
    """What was said of one exercise in one stretch of a sentence. `pointer` is a number in the plan, from
    1."""

    named: Named | None
    items: list[Item] = field(default_factory=list)
    line: int = 0
    sentence: int = 0
    pointer: int | None = None
    again: bool = False
    first_on_line: bool = True
    unknown_word: str | None = None
    is_of_another: bool = False
    doubtful: bool = False
    other_load: bool = False

    @property
    def start(self) -> int:
        """The first token of what was said."""
        return min([i.start for i in self.items] + ([self.named.start] if self.named else []), default=0)

    @property
    def end(self) -> int:
        """The token after the last of what was said."""
        return max([i.end for i in self.items] + ([self.named.end] if self.named else []), default=0)


_GROUP_MARKS = frozenset(
    {
        "same all",
        "same load",
        "up",
        "down",
        "more reps",
        "fewer reps",
        "target",
        "target more",
        "target fewer",
        "body",
        "unknown load",
        "pin",
        "failed on",
        "failure",
        "no failure",
        "rir",
        "lowering",
        "unknown reps",
        "each hand",
        "every set",
        "again",
        "same again",
        "change",
        "zero",
    }
)


_SAYS_A_LOAD = frozenset({"same load", "up", "down", "body"})


def gather(
    message: Message,
    named: Sequence[Named],
    marks: Sequence[Mark],
    quantities: Sequence[Quantity],
    pointers: dict[int, int],
    known_of: Callable[[str], Known],
    *,
    all_count: bool = False,
) -> list[Group]:
    """Return the groups of the message, in order; with `all_count` no lone number is left out.

    Names alone make no group.
    """
    told = [m for m in marks if m.kind in _GROUP_MARKS and not _is_of_things(message, m)]
    if not quantities and not told:
        return []
    named = [
        n
        for n in named
        if not ((n.weak or is_a_streak(message, n)) and is_no_name(message, n))
        and not is_a_moment(message, n)
        and not is_a_chin(message, n)
        and not is_worn(message, n)
    ]
    named = [n for n in named if not (is_compared_to(message, n) or is_not_done(message, n))]
    named = [n for k, n in enumerate(named) if k == 0 or not tells_the_order(message, named[k - 1], n)]
    named = [n for k, n in enumerate(named) if k == 0 or not is_where_it_is_done(message, named[k - 1], n)]
    counted = {at for q in quantities for at in range(q.start, q.end)}
    named = [n for n in named if n.start not in counted]
    quantities = _held(message, named, quantities, known_of)
    blank = {at for m in marks for at in range(m.start, m.end)}
    name_tokens = {at for n in named for at in range(n.start, n.end)}
    changes = {at for m in marks if m.kind == "change" for at in range(m.start, m.end)}
    blank |= manner_of(message, name_tokens | blank)
    loads = {at for m in marks if m.kind in _SAYS_A_LOAD for at in range(m.start, m.end)}
    elements = elements_of(message, quantities, blank, name_tokens, pointers, changes, loads)
    things: list[Named | Element | Mark] = [*named, *elements, *told]
    things.sort(key=lambda t: t.start)
    things = [t for k, t in enumerate(things) if not is_missed_again(things, k)]
    join_marks(message, things, blank)
    kept = things if all_count else without_others(message, anchored(message, things, blank), blank)
    groups: list[Group] = []
    sentence: list[Named | Element | Mark] = []
    number = -1
    for thing in kept:
        now = message.sentence[thing.start]
        if now != number and sentence:
            groups.extend(_grouped(message, sentence, pointers, known_of))
            sentence = []
        number = now
        sentence.append(thing)
    if sentence:
        groups.extend(_grouped(message, sentence, pointers, known_of))
    groups = [part for group in groups for part in _with_unknown_names(message, group)]
    _number_lines(message, groups)
    for before, group in pairwise(groups):
        # "One more set because the rack was free. 77.5x9"
        says_only_again = before.again and not before.items and before.named is None
        if says_only_again and group.named is None and group.sentence - before.sentence <= 1:
            group.again = True
    for group in groups:
        numbers = [q for i in group.items if isinstance(i, Element) for q in i.quantities]
        group.doubtful = bool(group.items) and is_doubtful(message, numbers, group.end)
        group.other_load = bool(group.items) and speaks_of_another_load(message, group.start, group.end)
        if group.named is None and group.pointer is None and not group.again and group.items:
            group.unknown_word = group.unknown_word or unknown_word(message, group.items)
            group.is_of_another = group.is_of_another or name_before(message, group.items[0]) is not None
    return groups


def _is_of_things(message: Message, mark: Mark) -> bool:
    """Return whether what is the same is counted and no load: "same 12 songs on repeat"."""
    if mark.kind != "same load" or message.texts(mark.start, mark.end) != ["same"]:
        return False
    return message.value(mark.end) is not None and is_counted(message, mark.end + 1)


def _held(
    message: Message, named: Sequence[Named], quantities: Sequence[Quantity], known_of: Callable[[str], Known]
) -> Sequence[Quantity]:
    """Take "42s and 55s on the plank" for seconds, where a sentence names nothing but holds."""
    pairs = {message.sentence[q.start] for q in quantities if q.role == "pair" and q.kind is None}
    if not pairs:
        return quantities
    of_holds = {
        sentence
        for sentence in pairs
        if (names := [n for n in named if message.sentence[n.start] == sentence])
        and all(len(n.names) == 1 and _is_hold(known_of(n.names[0])) for n in names)
    }
    return [
        q._replace(role="seconds") if q.role == "pair" and message.sentence[q.start] in of_holds else q
        for q in quantities
    ]


def _is_hold(known: Known) -> bool:
    return known.hold and known.kind != "each"


def _with_unknown_names(message: Message, group: Group) -> list[Group]:
    """Part a group before each whole set that a word nobody knows stands before, where its own name would:
    "bench 80x8, db florps 20x10"."""
    parts = [group]
    told = {at for i in group.items if isinstance(i, Mark) for at in range(i.start, i.end)}
    for item in group.items[1:] if group.named is not None else ():
        word = None if item.start == _end_of(group.named) else name_before(message, item)
        if word is not None and item.start - 1 not in told:
            at = parts[-1].items.index(item)
            rest = replace(
                group, named=None, items=parts[-1].items[at:], unknown_word=word, is_of_another=True
            )
            parts[-1].items = parts[-1].items[:at]
            parts.append(rest)
    return parts


def _grouped(
    message: Message,
    things: list[Named | Element | Mark],
    pointers: dict[int, int],
    known_of: Callable[[str], Known],
) -> list[Group]:
    """Return the groups of one sentence: each number goes to the name before it, or to the one after it."""
    runs: list[list[Element | Mark]] = [[]]
    names: list[Named | None] = [None]
    for thing in things:
        if isinstance(thing, Named):
            names.append(thing)
            runs.append([])
        else:
            runs[-1].append(thing)
    count = len(names)
    owned = shared(message, runs, names, known_of, pointers) if count > 1 else [list(runs[0])]
    for k in range(2, count):
        if not owned[k] and _is_shared(message, owned[k - 1], names[k - 1], names[k]):
            owned[k] = list(owned[k - 1])
    for k in range(2, count):
        _spread(message, names, owned, k)
    groups: list[Group] = []
    for name, given in zip(names, owned, strict=True):
        items = [i for i in given if not _is_beside_the_tale(name, i, given)]
        if name is None and not items:
            continue
        items.sort(key=lambda t: t.start)
        groups.extend(_by_pointer(message, name, items, pointers))
    _give_to_all(message, groups)
    _tell_of_all(message, groups)
    return groups


_OF_ALL = Pattern(
    "(on|for|in|with|at|of) (all|both|each|every) [#|of|them|those|the|these|exercise|exercises]*"
)


def _give_to_all(message: Message, groups: Sequence[Group]) -> None:
    """Give each of several exercises with a load the reps of all: "80 on the press, 90 on the row, 12 reps on
    both"."""
    if len(groups) < 2 or not groups[-1].items or any(group.named is None for group in groups):
        return
    last = groups[-1].items[-1]
    if not _is_lone(last, {"reps", "seconds"}) or _OF_ALL.at(message, last.end) is None:
        return
    if all(len(group.items) == 1 and _is_lone(group.items[0], {"load", None}) for group in groups[:-1]):
        for group in groups[:-1]:
            group.items.append(last)


_OF_BOTH = {"both": 2, "all": None, "each": None}
_EFFORTS = frozenset({"failure", "no failure", "rir"})


def _tell_of_all(message: Message, groups: Sequence[Group]) -> None:
    """Let what is said of the effort "both" times be of both exercises, where each has one set: "standing
    calf 85x12, seated calf 40x15, both to failure"."""
    if len(groups) < 2 or any(group.named is None for group in groups):
        return
    marks = [i for i in groups[-1].items if isinstance(i, Mark)]
    every = next((m for m in marks if m.kind == "every set" and message.text(m.start) in _OF_BOTH), None)
    if every is None or any(sum(isinstance(i, Element) for i in group.items) != 1 for group in groups):
        return
    if _OF_BOTH[message.text(every.start)] in {None, len(groups)}:
        for group in groups[:-1]:
            group.items.extend(m for m in marks if m.kind in _EFFORTS)


def _is_lone(item: Item, roles: Container[str | None]) -> bool:
    """Return whether an item is just one number, of one of some roles."""
    return isinstance(item, Element) and len(item.quantities) == 1 and item.quantities[0].role in roles


def _is_beside_the_tale(name: Named | None, item: Element | Mark, items: Sequence[Element | Mark]) -> bool:
    """Return whether a lone number stands by a name that tells its own set: "dinner at 7 bench 80x8"."""
    if not isinstance(item, Element) or not item.only_by_name:
        return False
    return name is None or (
        item.start < name.start
        and any(isinstance(i, Element) and i.start >= name.end and len(i.quantities) > 1 for i in items)
    )


def _is_shared(
    message: Message, items: list[Element | Mark], name: Named | None, following: Named | None
) -> bool:
    """Return whether a phrase is said of two names at once: "hit the target on squats and thrusts"."""
    if name is None or following is None or not items:
        return False
    between = message.texts(name.end, following.start)
    return all(isinstance(i, Mark) and i.kind in {"target", "same all"} for i in items) and (
        bool(between) and all(w in {"and", ",", "the", "my", "&", "both", "on"} for w in between)
    )


def _spread(
    message: Message, names: Sequence[Named | None], owned: list[list[Element | Mark]], last: int
) -> None:
    """Give each of several names said in one go its own set: "squats and bench: 95x7, 77.5x7"."""
    items = owned[last]
    of_all = [i for i in items if isinstance(i, Mark) and i.kind in _OF_EACH]
    chain = [last]
    while (
        chain[0] > 1 and not owned[chain[0] - 1] and _chained(message, names[chain[0] - 1], names[chain[0]])
    ):
        chain.insert(0, chain[0] - 1)
    if len(chain) > 1 and of_all and len(of_all) == len(items):
        again = {name.names for k, name in enumerate(names) if name is not None and k not in chain}
        for k in chain[:-1]:
            name = names[k]
            owned[k] = list(items) if name is not None and name.names not in again else []
        return
    same = [i for i in items if isinstance(i, Mark) and i.kind == "same load"]
    if len(chain) > 1 and len(same) == 1 and items[0] is same[0] and len(items) == len(chain) + 1:
        numbers = items[1:]
        if all(isinstance(i, Element) and len(i.quantities) == 1 for i in numbers):
            # "bench and row same weight, 8 and 10"
            for k, item in zip(chain, numbers, strict=True):
                owned[k] = [*same, item]
            return
    sizes = {len(i.quantities) if isinstance(i, Element) else 0 for i in items}
    if len(chain) < 2 or len(items) != len(chain) or len(sizes) != 1 or 0 in sizes:
        return
    lead = message.texts(_end_of(names[last]), items[0].start)
    if all(word in {":", "-", "today", "were", "was", "at", "with", "for", "both", "="} for word in lead):
        for k, item in zip(chain, items, strict=True):
            owned[k] = [item]


_OF_EACH = frozenset({"target", "same all", "more reps", "fewer reps", "target more", "target fewer"})
"""What a whole set is told by, of each of several names: "bench and row exactly as planned"."""


def _chained(message: Message, name: Named | None, following: Named | None) -> bool:
    """Return whether nothing but an "and" or a comma stands between two names."""
    between = message.texts(_end_of(name), following.start if following is not None else 0)
    return bool(between) and all(word in {"and", ",", "&", "then", "the", "+", "n"} for word in between)


def _end_of(name: Named | None) -> int:
    return name.end if name is not None else 0


def _by_pointer(
    message: Message, name: Named | None, items: list[Element | Mark], pointers: dict[int, int]
) -> list[Group]:
    """Part items at the places that point at an exercise by its number."""
    start = min([i.start for i in items] + ([name.start] if name else []), default=0)
    sentence = message.sentence[start]
    groups = [Group(name, sentence=sentence)]
    for item in items:
        inside = [at for at in pointers if groups[-1].items and groups[-1].items[-1].end <= at < item.start]
        if inside:
            groups.append(Group(None, sentence=sentence))
        groups[-1].items.append(item)
    for group in groups:
        before = [
            at
            for at in pointers
            if at < group.start
            and group.start - at <= 6
            and message.sentence[at] in {message.sentence[group.start], message.sentence[group.start] - 1}
        ]
        if before:
            group.pointer = pointers[max(before)]
        group.again = any(isinstance(i, Mark) and i.kind in {"again", "same again"} for i in group.items)
        group.items = [i for i in group.items if not (isinstance(i, Mark) and i.kind == "again")]
    return groups


def _number_lines(message: Message, groups: list[Group]) -> None:
    breaks = message.places.get("\n", [])
    before = -1
    for group in groups:
        group.line = bisect_left(breaks, group.start)
        group.first_on_line = group.line != before
        before = group.line
