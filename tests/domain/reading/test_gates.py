"""A search ends at once where none of some words is said: those must be words of all that it looks for."""

from collections.abc import Callable, Iterator
from types import CodeType, FunctionType

import pytest

from domain.reading import correction_of_records, days, questions, skips
from domain.reading.pattern_tables import Table
from domain.reading.patterns import Pattern

Search = Callable[..., object]

GATES: list[tuple[Search, frozenset[str], set[str]]] = [
    (days.find_days, days._MAY_NAME_A_DAY, {"FULL_SET", "IN_WEEKS", "OF_NEXT_WEEK"}),
    (
        skips.exercises_left_out,
        skips._MAY_LEAVE_OUT,
        # All of them tell apart what only sounds as if it left something out.
        {
            "END_OF_NONE",
            "LONG_AGO",
            "NEARLY_SKIPPED",
            "NOT_SKIPPED",
            "NO_GAIN",
            "_SET_ENDS",
            "SOMEBODY_ELSE",
            "_TOLD_OF",
        },
    ),
    (
        correction_of_records.is_of_what_is_recorded,
        correction_of_records._MAY_SPEAK_OF_RECORDS,
        # All but the first two are looked for only beside a day, with which the gate is open.
        {"NTH_SET"} | {"_DID", "_PUT", "_SAYS_WHAT_DAY_IT_IS", "_SENT_BEFORE", "_SENT_LATE", "_WAS"},
    ),
    (
        questions.find_questions,
        questions._MAY_ASK,
        # Help alone is looked for before the gate.
        {"HELP_ALONE", "NOT_REQUEST", "SMALL_TALK", "STOP", "UNDO", "WONDERED_AT"},
    ),
]
"""A search, the words without which it ends at once, and what it looks for all the same that those words need
not be of, as it only tells apart what something else has found."""


def names_in(code: CodeType) -> Iterator[str]:
    yield from code.co_names
    for inner in code.co_consts:
        if isinstance(inner, CodeType):
            yield from names_in(inner)


def behind(thing: object, name: str, seen: set[int]) -> Iterator[tuple[str, Pattern | Table[object]]]:
    """Return what is looked for by a function and by all that it calls, under the names it has there."""
    if id(thing) in seen:
        return
    seen.add(id(thing))
    if isinstance(thing, Pattern | Table):
        yield name, thing
    elif isinstance(thing, tuple):
        for one in thing:
            yield from behind(one, name, seen)
    elif isinstance(thing, FunctionType) and thing.__module__.startswith("domain.reading"):
        for used in sorted(set(names_in(thing.__code__))):
            yield from behind(thing.__globals__.get(used), used, seen)
    elif isinstance(thing, type) and thing.__module__.startswith("domain.reading"):
        for one in vars(thing).values():
            yield from behind(one, name, seen)


@pytest.mark.parametrize(("search", "gate", "only_tells_apart"), GATES)
def test_a_search_ends_at_once_only_where_nothing_it_looks_for_can_be_said(
    search: Search, gate: frozenset[str], only_tells_apart: set[str]
) -> None:
    beyond = {
        name
        for name, one in behind(search, search.__name__, set())
        if one.needs is None or not one.needs <= gate
    }
    assert beyond == only_tells_apart


def test_what_a_function_looks_for_is_found_through_all_that_it_calls() -> None:
    names = {name for name, _ in behind(questions.find_questions, "", set())}
    assert {"REQUEST", "_UNASKED_TOPICS", "NUMBER_ASKED"} <= names
