"""Reckoning something once for the very same objects.

What is frozen stays as it is, so what was made of it holds as long as it is that very object. Nothing is
compared: a journal of years is long, and is asked about many times within one decision.
"""

from collections.abc import Callable
from functools import lru_cache, wraps
from typing import TypeVar, TypeVarTuple

Given = TypeVarTuple("Given")
Made = TypeVar("Made")

KEPT = 8
"""For how many journals, as a decision has changed them so far, what was made of them is kept."""


def once(function: Callable[[*Given], Made]) -> Callable[[*Given], Made]:
    """Let `function` of frozen objects, by place, be reckoned once for the same ones."""

    plain: Callable[..., Made] = function

    @lru_cache(maxsize=KEPT)
    def made(*given: _Same) -> Made:
        return plain(*(each.it for each in given))

    @wraps(function)
    def asked(*given: *Given) -> Made:
        return made(*map(_Same, given))

    return asked


class _Same:
    """Stands for an object, and is equal to what stands for the very same one."""

    __slots__ = ("it",)

    def __init__(self, it: object) -> None:
        self.it = it

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and self.it is other.it

    def __hash__(self) -> int:
        return id(self.it)
