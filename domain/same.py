"""Reckoning something once for the very same objects.

What is frozen stays as it is, so what was made of it holds as long as it is that very object. Nothing is
compared but days: a journal of years is long, and is asked about many times within one decision.
"""

from collections.abc import Callable
from contextlib import suppress
from datetime import date
from functools import wraps
from typing import TypeVar, TypeVarTuple

Given = TypeVarTuple("Given")
Made = TypeVar("Made")

KEPT = 8
"""For how many journals, as a decision has changed them so far, what was made of them is kept."""


def once(function: Callable[[*Given], Made]) -> Callable[[*Given], Made]:
    """Let `function` of frozen objects and days, by place, be reckoned once for the same ones."""

    made: dict[tuple[object, ...], tuple[tuple[*Given], Made]] = {}

    @wraps(function)
    def asked(*given: *Given) -> Made:
        key = tuple([each if type(each) is date else id(each) for each in given])
        found = made.get(key)
        if found is None:
            found = made[key] = (given, function(*given))  # what is kept has its number for itself
            if len(made) > KEPT:
                with suppress(RuntimeError, KeyError, StopIteration):  # another thread makes room, too
                    del made[next(iter(made))]
        return found[1]

    return asked
