"""Every message of the corpus is read as it should be; examples at hand are read as well as is promised."""

import pytest

from tests.corpus.rows import Row, compared, difference, got, own_rows, rows_in, wrong_sets

OWN = tuple(own_rows())


@pytest.mark.parametrize("row", OWN, ids=[row.id for row in OWN])
def test_a_message_is_read_as_it_should_be(row: Row) -> None:
    found = difference(row, got(row))
    assert not found, found


def test_the_corpus_is_large_and_has_no_row_twice() -> None:
    assert len(OWN) >= 800
    assert len({row.id for row in OWN}) == len(OWN)


@pytest.mark.apart
@pytest.mark.parametrize(
    ("folder", "exactly", "wrongly"),
    [
        ("examples", 0.97, 0.003),
        ("other_writers", 0.97, 0.01),
        ("other_writers_two", 0.97, 0.003),
        ("other_writers_three", 0.96, 0.01),
        ("other_writers_four", 0.97, 0.006),
        ("other_writers_five", 0.97, 0.012),
        ("other_writers_six", 0.94, 0.01),
        ("other_writers_seven", 0.96, 0.003),
        ("other_writers_eight", 0.97, 0.0),
        ("other_writers_nine", 0.99, 0.0),
        ("other_writers_ten", 0.99, 0.003),
        ("other_writers_eleven", 0.98, 0.0),
        ("other_writers_twelve", 0.99, 0.002),
        ("other_writers_thirteen", 0.98, 0.005),
        ("other_writers_fourteen", 0.98, 0.005),
        ("other_writers_fifteen", 0.97, 0.006),
        ("other_writers_sixteen", 0.96, 0.006),
        ("other_writers_seventeen", 0.98, 0.003),
        ("other_writers_eighteen", 0.97, 0.003),
        ("other_writers_nineteen", 0.92, 0.013),
        ("other_writers_twenty", 0.96, 0.01),
        ("other_writers_twenty_one", 0.97, 0.005),
        ("other_writers_twenty_two", 0.97, 0.007),
    ],
)
def test_what_others_wrote_is_read_as_well_as_promised(folder: str, exactly: float, wrongly: float) -> None:
    """At least that share is read exactly, and at most that share has a wrong record."""
    rows = rows_in(folder)
    assert len(rows) >= 100
    readings = [got(row) for row in rows]
    exact = sum(compared(row.gold) == compared(reading) for row, reading in zip(rows, readings, strict=True))
    wrong = sum(bool(wrong_sets(row, reading)) for row, reading in zip(rows, readings, strict=True))
    assert exact / len(rows) >= exactly
    assert wrong / len(rows) <= wrongly
