"""What people tell beside a clear set changes nothing in it, whatever numbers it has: `asides.txt`."""

from decimal import Decimal
from pathlib import Path

import pytest

from domain.reading import read
from tests.domain.reading.build import request, short

ASIDES = (Path(__file__).parent / "asides.txt").read_text(encoding="utf-8").splitlines()
AROUND_A_SET = (
    "bench 80x8, {}",
    "{}, bench 80x8",
    "{}. bench 80 x 8",
    "bench 80 kg for 8 reps. {}",
    "bench 80x8 ({})",
    "bench 80 for 8 and {}",
    "bench 80x8 - {}",
    "{}\nbench 80x8",
)


@pytest.mark.parametrize("aside", ASIDES)
def test_a_number_told_beside_a_set_is_none_of_its_numbers(aside: str) -> None:
    for around in AROUND_A_SET:
        found = read(request(around.format(aside)))
        assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 8)], around
        assert not found.asks
        assert not found.pain
        assert not found.wants
