"""A letter right behind a number: kilograms or a way, dumbbells or seconds."""

from dataclasses import replace
from decimal import Decimal

import pytest

from domain.reading import read
from tests.domain.reading.build import DIP, reading, request

KILOS = (
    ("bench 80k, 8 reps", "80"),
    ("bench 80k 8", "80"),
    ("dips with 10k on the belt, 8", "10"),
    ("ran 5k, bench 80x8", "80"),
    ("row 5k easy, bench 80x8", "80"),
    ("bench 80x8, 10k tomorrow", "80"),
)


@pytest.mark.parametrize(("text", "load"), KILOS)
def test_kilograms_are_told_from_a_way(text: str, load: str) -> None:
    found = reading(text)
    assert [(one.load, one.reps) for one in found.sets] == [(Decimal(load), 8)]
    assert found.asks == ()


@pytest.mark.parametrize(
    "text", ["did a quick 5k", "5k in 24 min", "10k this weekend", "did 5k on the treadmill"]
)
def test_a_way_alone_is_no_record(text: str) -> None:
    found = reading(text)
    assert (found.sets, found.asks) == ((), ())


@pytest.mark.parametrize(
    "text", ["5 negatives, about 5s each", "dips 5 slow lowers, 5s each", "5 lowers, 8s down"]
)
def test_how_slowly_it_was_lowered_is_no_load(text: str) -> None:
    lowered = replace(DIP, lowering_only=True)
    found = read(request(text, plan=(lowered,), target={}))
    assert [(one.load, one.reps) for one in found.sets] == [(Decimal(0), 5)]


def test_a_pair_of_dumbbells_stays_one() -> None:
    assert [one.load for one in reading("incline 26s each 10").sets] == [Decimal(26)]
