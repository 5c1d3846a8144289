"""A table is one test that tries each row, and tells of each that fails by its name."""

from collections.abc import Callable
from types import FunctionType
from typing import Any, cast

import pytest

from tests.gathering import rows_of, trying

Made = Callable[..., object]


def names(made: Made) -> list[str] | None:
    rows = rows_of(cast("FunctionType", made))
    return None if rows is None else [row.name for row in rows]


def test_every_row_is_tried_and_each_that_fails_is_told_of() -> None:
    tried: list[tuple[int, str]] = []

    @pytest.mark.parametrize("number", [1, 2, 3])
    @pytest.mark.parametrize("word", ["a", "b"])
    def table(number: int, word: str) -> None:
        tried.append((number, word))
        if number == 3:
            pytest.fail("three")
        if (number, word) == (1, "b"):
            pytest.skip("not here")
        assert (number, word) != (2, "a"), "two and a"

    rows = rows_of(cast("FunctionType", table))
    assert rows is not None
    with pytest.raises(ExceptionGroup) as raised:
        trying(cast("FunctionType", table), rows)()
    assert sorted(tried) == [(number, word) for number in (1, 2, 3) for word in ("a", "b")]
    failures = {each.__notes__[0]: str(each).splitlines()[0] for each in raised.value.exceptions}
    assert failures == {
        "row: 'a'-2": "two and a",
        "row: 'a'-3": "three",
        "row: 'b'-1": "skipped: not here",
        "row: 'b'-3": "three",
    }
    assert "4 of 6 rows fail" in str(raised.value)
    assert all(name.removeprefix("row: ") in str(raised.value) for name in failures)


def test_a_row_has_the_name_that_it_is_given() -> None:
    @pytest.mark.parametrize(("a", "b"), [(1, 2), pytest.param(3, 4, id="own")], ids=["first", "second"])
    def named(a: int, b: int) -> None:
        assert a < b

    @pytest.mark.parametrize("a", [1, 2], ids=lambda a: f"<{a}>")
    def by_rule(a: int) -> None:
        assert a

    assert names(named) == ["first", "own"]
    assert names(by_rule) == ["<1>", "<2>"]


def needs_more(a: int, folder: object) -> None:
    assert a != folder


async def awaits(a: int) -> None:
    assert a


def plain(a: int) -> None:
    assert a


def test_what_cannot_be_one_test_is_left_as_it_is() -> None:
    table: Any = pytest.mark.parametrize("a", [1, 2])
    marked: Any = pytest.mark.parametrize("a", [1, pytest.param(2, marks=pytest.mark.xfail)])
    through: Any = pytest.mark.parametrize("a", [1, 2], indirect=True)
    left = (
        table(needs_more),
        table(awaits),
        marked(_copy()),
        through(_copy()),
        pytest.mark.apart(table(_copy())),
    )
    assert [names(each) for each in left] == [None] * len(left)
    assert names(table(_copy())) == ["1", "2"]


def _copy() -> Made:
    """Return a function that has no marks yet."""
    return FunctionType(plain.__code__, plain.__globals__, plain.__name__)
