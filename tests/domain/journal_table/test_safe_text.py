"""Cells that no spreadsheet takes for a formula, and that come back as they were."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.journal_table.safe_text import guarded, unguarded

BEGINNINGS = "=+-@\t\r\n＝＋－＠"


@pytest.mark.parametrize(
    ("text", "cell"),
    [
        ("Noor", "Noor"),
        ("", ""),
        ("O'Neill", "O'Neill"),
        ("'tis", "'tis"),
        ("=1+1", "'=1+1"),
        ("@cmd", "'@cmd"),
        ("'=1", "''=1"),
        ("-5", "'-5"),
        ("\t=1", "'\t=1"),
        ("＝1", "'＝1"),
    ],
)
def test_a_cell_is_written_like_this(text: str, cell: str) -> None:
    assert guarded(text) == cell
    assert unguarded(cell) == text


@given(st.one_of(st.text(), st.text(alphabet=BEGINNINGS + "'a1")))
def test_every_text_is_safe_and_comes_back(text: str) -> None:
    cell = guarded(text)
    assert not cell or cell[0] not in BEGINNINGS
    assert unguarded(cell) == text
