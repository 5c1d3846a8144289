"""What follows from the sources of the program alone and takes long to work out, such as how each turn of
phrase is looked for.

The domain works it out by itself. An edge may bring what an earlier run has come to, before the rest of the
domain is imported, and keep what has come new for the next run; how it is kept is the edge's own matter.
"""

from collections.abc import Callable, Hashable
from typing import TypeVar

Kept = dict[tuple[str, Hashable], object]
"""Results by the module that makes them, by its dotted name, and by all that each was made from."""

Result = TypeVar("Result")

_BROUGHT: Kept = {}
_NEW: Kept = {}


def bring(kept: Kept) -> None:
    """Let these be the results of what they were made from. Whoever brings them sees to it that they are."""
    _BROUGHT.update(kept)


def come_new() -> Kept:
    """Return what has been worked out and was not brought."""
    return dict(_NEW)


def worked_out(maker: str, source: Hashable, make: Callable[[], Result]) -> Result:
    """Return what `make` of the module `maker` comes to, which hangs on nothing but `source` and its code.

    It is of tuples, frozen sets, texts, numbers and the like: nothing that has a class of its own. What of it
    can be changed is not.
    """
    key = (maker, source)
    if key in _BROUGHT:
        return _BROUGHT[key]  # type: ignore[return-value]  # what was made from the same by the same code
    result = _NEW[key] = make()
    return result
