"""The order of a client's entries: as the client told of them, after what came with an old journal, by days.

Whatever is said of the last set is about the last one told. What was brought in comes before that, however
late it was: a correction never reaches it by its place.
"""

from bisect import insort
from collections.abc import Iterable
from datetime import date

from domain.journal import Entry
from domain.memory import ClientMemory
from domain.state import ClientState


def in_order(entries: Iterable[Entry], memory: ClientMemory) -> tuple[Entry, ...]:
    """Return entries in their order."""
    if not memory.brought_in:
        return tuple(sorted(entries, key=lambda each: each.order))
    return tuple(sorted(entries, key=lambda each: _place(each, memory)))


def with_entry(entries: tuple[Entry, ...], entry: Entry, memory: ClientMemory) -> tuple[Entry, ...]:
    """Return entries that stand in their order with one more in its place."""
    together = list(entries)
    insort(together, entry, key=lambda each: _place(each, memory))
    return tuple(together)


def told(state: ClientState) -> tuple[Entry, ...]:
    """Return the entries that the client has told of, oldest first, without those of an old journal."""
    memory = state.memory
    if not memory.brought_in:
        return state.entries
    return tuple(each for each in state.entries if not memory.is_brought_in(each.number))


def within(number: int, ranges: Iterable[tuple[int, int]]) -> bool:
    """Return whether a number lies in one of the ranges, as (first, last)."""
    return any(first <= number <= last for first, last in ranges)


def _place(entry: Entry, memory: ClientMemory) -> tuple[bool, date, tuple[int, int]]:
    is_told = not memory.is_brought_in(entry.order[0])
    return is_told, date.min if is_told or entry.set.on is None else entry.set.on, entry.order
