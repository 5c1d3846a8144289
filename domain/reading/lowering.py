"""Which of the sets of a group "negatives" and "lowering only" speak of.

Said right after a set, the words colour that set alone; said before any, or apart after the last, all of
them.
"""

from collections.abc import Sequence
from typing import NamedTuple

from domain.reading.drafts import Draft, is_amount
from domain.reading.element import Element, Item
from domain.reading.phrases import Mark


class Stretch(NamedTuple):
    """Tokens from `start` to before `end`; to the last of the message where `end` is None."""

    start: int
    end: int | None = None

    def holds(self, draft: Draft) -> bool:
        """Return whether the reps of a draft stand here."""
        at = draft.amount.start if draft.amount is not None else draft.start
        return self.start <= at and (self.end is None or at < self.end)


def stretch_of(items: Sequence[Item], place: int) -> Stretch:
    """Return the tokens that the lowering phrase at `place` of a group's items speaks of."""
    mark = items[place]
    before = [i for i in items[:place] if isinstance(i, Element)]
    if not before:
        return Stretch(0)
    last = before[-1]
    if mark.start > last.end:
        goes_on = any(isinstance(i, Element) for i in items[place:])
        return Stretch(mark.start if goes_on else 0)
    if len(last.quantities) == 1 and not is_amount(last.quantities[0]) and len(before) == 1:
        return Stretch(last.start)
    return Stretch(_start_of_list(before), last.end)


def _start_of_list(elements: Sequence[Element]) -> int:
    """Return where the list of reps that ends with the last element begins: "80: 8, 7, 6"."""
    at = len(elements) - 1
    while at > 0 and len(elements[at].quantities) == 1 and elements[at].joints[0] in {",", "and"}:
        at -= 1
    is_list = ":" in elements[at].joints[1:]
    return elements[at].start if is_list else elements[-1].start


def is_lowering(item: Item) -> bool:
    """Return whether an item is a phrase for lowering-only reps."""
    return isinstance(item, Mark) and item.kind == "lowering"
