"""How a table of cases becomes one test, which tries every row and tells of each that fails.

A test of its own for each of many thousand rows costs more than what most rows try: each is made, handed out
to a worker and reported on by itself, and every worker does all of the making. What is gathered stays written
as pytest wants it, with `parametrize`.

Left as they are: rows that need a fixture, or are drawn, awaited or marked; and a table with the mark
`apart`, whose rows are long, so that the workers can share in them. `--apart` leaves all as they are, to
choose a row by its name.
"""

import inspect
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from itertools import product
from types import FunctionType
from typing import Any

import pytest

ROWS = "rows"
"""Under this name a report says how many rows its test has tried."""

OF_THE_SESSION = {"event_loop_policy"}
"""Fixtures that come with every test and are made once for all."""

LEFT_ALONE = {"apart", "usefixtures", "skip", "skipif", "xfail", "filterwarnings"}
LONGEST = 120


@dataclass(frozen=True, slots=True)
class Row:
    """One row of a table: what a test is called with, and by what name it is told of."""

    arguments: dict[str, Any]
    name: str


def gathered(collector: pytest.Module, name: str, made: object) -> pytest.Function | None:
    """Return one test for all rows of a table; None where `made` is no table, or is to be left as it is."""
    if not isinstance(made, FunctionType) or not collector.istestfunction(made, name):
        return None
    rows = rows_of(made)
    if rows is None:
        return None
    if not rows:
        raise collector.CollectError(f"{name} has no rows, and would try nothing")
    test = pytest.Function.from_parent(collector, name=name, callobj=trying(made, rows))
    test.user_properties.append((ROWS, len(rows)))
    return test if OF_THE_SESSION.issuperset(test.fixturenames) else None


def rows_of(made: FunctionType) -> list[Row] | None:
    """Return the rows that a function is parametrised with, None where it takes more than those hold."""
    marks: list[pytest.Mark] = list(getattr(made, "pytestmark", ()))
    tables = [mark for mark in marks if mark.name == "parametrize"]
    is_plain = not (inspect.iscoroutinefunction(made) or hasattr(made, "is_hypothesis_test"))
    if not tables or not is_plain or LEFT_ALONE & {mark.name for mark in marks}:
        return None
    parts = []
    for mark in tables:
        part = part_of(*mark.args, **mark.kwargs)
        if part is None:
            return None
        parts.append(part)
    rows = [joined(several) for several in product(*parts)]
    needed = set(inspect.signature(made).parameters)
    return rows if all(set(row.arguments) == needed for row in rows) else None


def part_of(
    names: str | list[str] | tuple[str, ...],
    values: Iterable[Any],
    ids: Iterable[Any] | Callable[[Any], object] | None = None,
    **others: object,
) -> list[Row] | None:
    """Return the rows of one `parametrize`; None where one of them is marked, or goes through a fixture."""
    several = [name.strip() for name in names.split(",")] if isinstance(names, str) else [*names]
    sets = [_as_set(value, is_alone=len(several) == 1) for value in values]
    if others or any(each.marks for each in sets):
        return None
    own = [None] * len(sets) if ids is None or callable(ids) else [*ids]
    told = ids if callable(ids) else shortened
    return [
        Row(
            dict(zip(several, each.values, strict=True)),
            str(each.id or name or "-".join(str(told(value)) for value in each.values)),
        )
        for each, name in zip(sets, own, strict=True)
    ]


def _as_set(value: Any, *, is_alone: bool) -> Any:
    """Return what `pytest.param` makes of a value, or of several in a row."""
    if isinstance(value, type(pytest.param())):
        return value
    return pytest.param(value) if is_alone else pytest.param(*value)


def shortened(value: object) -> str:
    """Return how a value is told that has no name: whole where it is not long."""
    told = repr(value)
    return told if len(told) <= LONGEST else f"{told[:LONGEST]}…"


def joined(parts: Iterable[Row]) -> Row:
    """Return one row of what stands in the same row of several tables."""
    parts = [*parts]
    arguments = {name: value for part in parts for name, value in part.arguments.items()}
    return Row(arguments, "-".join(part.name for part in parts))


def trying(made: FunctionType, rows: list[Row]) -> Callable[[], None]:
    """Return a function that calls `made` with each row, and raises together whatever went wrong.

    Raises ExceptionGroup: its message names every row that fails, and each failure in it has a note with the
    name of its row. A row that would be skipped fails: nobody would see that it was not tried.
    """

    def whole() -> None:
        failures: list[Exception] = []
        names = []
        for row in rows:
            try:
                made(**row.arguments)
            except pytest.skip.Exception as skipped:
                failures.append(RuntimeError(f"skipped: {skipped.msg}"))
            except pytest.fail.Exception as failed:
                failures.append(AssertionError(str(failed)).with_traceback(failed.__traceback__))
            except Exception as failure:  # noqa: BLE001 - whatever a row raises is told of, beside the others
                failures.append(failure)
            else:
                continue
            names.append(row.name)
            failures[-1].add_note(f"row: {row.name}")
        if failures:
            told = "\n  ".join(names)
            raise ExceptionGroup(f"{len(names)} of {len(rows)} rows fail:\n  {told}\n", failures)

    whole.__name__, whole.__doc__, whole.__module__ = made.__name__, made.__doc__, made.__module__
    return whole


def tried(reports: Iterable[object]) -> Iterator[int]:
    """Yield how many cases each report of a test's own call is about."""
    for report in reports:
        if isinstance(report, pytest.TestReport) and report.when == "call":
            yield int(dict(report.user_properties).get(ROWS, 1))  # type: ignore[call-overload]  # object there
