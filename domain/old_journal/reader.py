"""A file with an old journal, whichever form it has: a table, or our own data."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date
from functools import lru_cache

from domain.old_journal.data import client_of, is_data, read_data
from domain.old_journal.found import MOST_NAMES, Found
from domain.old_journal.table import Given, clients_of, is_table, read_table
from domain.units import Unit


def looks_like_a_journal(name: str, text: str) -> bool:
    """Return whether a file is meant to be a journal rather than a sheet."""
    ending = name.rpartition(".")[2].casefold()
    return ending in {"csv", "tsv", "json"} or is_table(text)


def clients_named(text: str) -> tuple[str, ...]:
    """Return whose journals a file says that it has; none where it does not say."""
    return client_of(text) if is_data(text) else clients_of(text)


def named_alike(name: str, clients: Iterable[str]) -> frozenset[str]:
    """Return those of a file's clients who bear this name, however it is written."""
    wanted = " ".join(name.casefold().split())
    return frozenset(each for each in clients if " ".join(each.casefold().split()) == wanted)


@lru_cache(maxsize=2)
def read_journal(text: str, client: str, unit: Unit, today: date, *, month_first: bool | None) -> Found:
    """Return what a file holds of the client of that name.

    Rows of others are left out where it has several clients; where it has one only, under whatever name, all
    are taken. `unit` is that of loads without one. Kept for the last files, which are taken in portions.
    """
    found = _read(text, client, Given(unit, today, month_first))
    names = {each.done.exercise for workout in found.workouts for each in workout.sets}
    return Found(head_fault="too many names", shown=str(len(names))) if len(names) > MOST_NAMES else found


def _read(text: str, client: str, given: Given) -> Found:
    if is_data(text):
        return read_data(text, given)
    clients = clients_of(text)
    if len(clients) > 1:
        own = named_alike(client, clients)
        if not own:
            return Found(head_fault="nobody", shown=", ".join(clients[:10])[:200])
        given = replace(given, clients=own)
    return read_table(text, given)
