"""Numbers that are tightly joined, and into how many sets they part."""

from dataclasses import dataclass, replace

from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity

LOOSE = frozenset({"", "/", ":", "-"})
"""Joints that may also stand between two sets."""


@dataclass(slots=True)
class Element:
    """Numbers that are tightly joined. `joints[i]` stands before `quantities[i]`; the first one before
    them all. `since_mark` joins them to a phrase that stands between."""

    quantities: list[Quantity]
    joints: list[str]
    after_at: bool = False
    next_to_name: bool = False
    result: bool = False
    after_for: bool = False
    since_mark: str = "gap"
    so_often: bool = False
    """Whether the words around a lone number tell that it is how often: "got 7", "7 hammer curls"."""
    only_by_name: bool = False
    """Whether a lone number counts only if it is of the name beside it."""

    @property
    def start(self) -> int:
        """The first token."""
        return self.quantities[0].start

    @property
    def end(self) -> int:
        """The token after the last."""
        return self.quantities[-1].end


Item = Element | Mark


def is_whole(element: Element) -> bool:
    """Return whether a set is told whole: with its reps, or in two numbers joined by a sign."""
    return any(q.role in {"reps", "seconds"} for q in element.quantities) or (
        len(element.quantities) > 1 and element.joints[-1] in {"x", "for", "@"}
    )


def in_sets(element: Element) -> list[Element]:
    """Part sets that nothing stands between, each in two numbers joined by a sign: "80x8 35 for 13"."""
    starts = [0]
    for at in range(1, len(element.joints) - 1):
        if element.joints[at] in LOOSE and element.joints[at + 1] in _JOINS_A_SET:
            before = slice(starts[-1], at)
            if is_whole(Element(element.quantities[before], element.joints[before])):
                starts.append(at)
    if len(starts) == 1:
        return [element]
    return [
        replace(
            element,
            quantities=element.quantities[start:end],
            joints=element.joints[start:end],
            after_at=element.after_at and start == 0,
        )
        for start, end in zip(starts, [*starts[1:], len(element.joints)], strict=True)
    ]


_JOINS_A_SET = frozenset({"x", "for", "@", "at"})
_LEAST_PAIRS = 2


def in_pairs(element: Element) -> list[Element]:
    """Part numbers that a stroke joins two by two into as many sets: "80/8 47.5/7"."""
    pairs = len(element.joints) // 2
    if pairs < _LEAST_PAIRS or element.joints[1:] != (["/", ""] * pairs)[:-1]:
        return [element]
    return [
        replace(
            element,
            quantities=element.quantities[at : at + 2],
            joints=[element.joints[0] if at == 0 else ",", "x"],
            after_at=element.after_at and at == 0,
        )
        for at in range(0, 2 * pairs, 2)
    ]
