"""What is said around a set takes nothing of it away, and a second set told beside it is one."""

from decimal import Decimal

import pytest

from domain.reading import read
from tests.domain.reading.build import request, short


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("bench was 80 again for 8", [8]),
        ("bench 80x8 and out", [8]),
        ("bench 80 x 8 and home", [8]),
        ("bench 80x8 was boring", [8]),
        ("bench 80x8 was too much", [8]),
        ("all time best 80x8 on bench", [8]),
        ("not my best, that was 80 for 8 on bench", [8]),
        ("just kidding, bench 80x8", [8]),
        ("bench 80x8 out of 8", [8]),
        ("bench 80 (20 bar and 30 each side) for 8", [8]),
        ("bench 80 for 8 then only managed 7 after a long break", [8, 7]),
        ("bench 80x8, 7 with my phone ringing", [8, 7]),
        ("bench 80x8 & seven more pitifully", [8, 7]),
        ("bench 80x8, next 7 because the kids were shouting", [8, 7]),
        ("bench 80x8 and 10 on the bike after", [8]),
        ("bench 80x8, 9 slices of pizza on the way home", [8]),
    ],
)
def test_only_what_is_of_a_set_is_taken(text: str, reps: list[int]) -> None:
    found = read(request(text))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), each) for each in reps]
    assert not found.asks
