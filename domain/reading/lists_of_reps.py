"""Whether a number goes on with the reps told before it, whatever is said next: "80 x 8, 8, 7 see you"."""

from domain.reading.counted import is_counted, is_singular
from domain.reading.element import Element
from domain.reading.message import Message

_JOINTS = frozenset({",", "/", "and", "then", "&"})
_A_LIST = 3
_IN_LINE = 3
"""So near is the next of a list to the one before it."""


def goes_on_a_list(message: Message, before: object, element: Element) -> bool:
    """Return whether a number is the next of a list of reps, and what follows it is nothing that it counts.

    "80 x 8, 7 songs" has one set: songs are counted, while nobody counts seven "see".
    """
    if not isinstance(before, Element) or len(element.quantities) != 1 or before.end == element.start:
        return False
    last, one = before.quantities[-1], element.quantities[0]
    if one.role is not None or last.role not in {None, "reps"} or abs(last.value - one.value) > _IN_LINE:
        return False
    if len(before.quantities) < _A_LIST and before.joints[0] not in _JOINTS:
        # "80x8, 5 deep at the rack": one set is no list yet.
        return False
    if not _JOINTS.issuperset(message.texts(before.end, element.start)):
        return False
    return not is_counted(message, element.end) or is_singular(message.text(element.end))
