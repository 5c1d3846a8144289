"""Every message of the corpus is read as it should be; examples at hand are read as well as is promised."""

import pytest

from tests.corpus.rows import Row, compared, difference, example_rows, got, own_rows, wrong_sets

OWN = tuple(own_rows())


@pytest.mark.parametrize("row", OWN, ids=[row.id for row in OWN])
def test_a_message_is_read_as_it_should_be(row: Row) -> None:
    found = difference(row, got(row))
    assert not found, found


def test_the_corpus_is_large_and_has_no_row_twice() -> None:
    assert len(OWN) >= 800
    assert len({row.id for row in OWN}) == len(OWN)


def test_examples_at_hand_are_read_as_well_as_promised() -> None:
    """The promise: 97% exact, at most 0.3% with a wrong record. Nothing is claimed where no file is at
    hand."""
    rows = example_rows()
    if not rows:
        pytest.skip("KILOPOST_EXAMPLES names no file")
    readings = [got(row) for row in rows]
    exact = sum(compared(row.gold) == compared(reading) for row, reading in zip(rows, readings, strict=True))
    wrong = sum(bool(wrong_sets(row, reading)) for row, reading in zip(rows, readings, strict=True))
    assert exact / len(rows) >= 0.97
    assert wrong / len(rows) <= 0.003
